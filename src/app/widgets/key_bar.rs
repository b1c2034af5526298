//! The bar at the foot of every screen: what can be pressed, each key a button, each in its place.

use iced::widget::{button, column, container, responsive, row, space, text};
use iced::{Center, Element, Fill, Padding};

use crate::app::key_guide::{BarSlot, KeyHint, Tapped, cap};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::theme;
use crate::pedal::Bindings;
use crate::words::Words;

/// Height of a button: a finger needs 44 pixels (WCAG 2.2, success criterion 2.5.5).
const BUTTON: f32 = 54.0;
/// Left and right of the bar, and below it.
const MARGIN: f32 = 16.0;
const BELOW: f32 = 10.0;
/// Between two buttons.
const GAP: f32 = 8.0;
/// Left and right of what stands on a button.
const SIDES: f32 = 9.0;
/// Left and right of the letters on a key.
const CAP_SIDES: f32 = 6.0;
/// The least width of a button.
const LEAST: f32 = 44.0;

/// The id of the button that shows all keys, and of the sign of a lost voice.
const ALL_KEYS: &str = "bar-keys";
const VOICE: &str = "bar-voice";

/// A key as it stands on a button.
#[derive(Clone, Debug)]
pub struct KeyFace {
    /// What it is.
    pub hint: KeyHint,
    /// What is printed on it.
    pub cap: String,
    /// What it does.
    pub label: String,
}

impl KeyFace {
    /// A key with what is printed on it.
    pub fn new(hint: KeyHint, words: &Words, bindings: &Bindings) -> Self {
        let key = hint.key_by(bindings);
        Self {
            hint,
            cap: key.map_or_else(String::new, |key| {
                words.plainly("key-cap", &[("key", &cap(&key))])
            }),
            label: words.plainly(hint.label, &[]),
        }
    }
}

/// How much of a key stands on its button.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shape {
    /// The key, and beside it what it does.
    Beside,
    /// The key, and below it what it does.
    Below,
    /// The key alone.
    Cap,
}

/// The bar with these keys. `no_voice` stands there while the voice is lost.
pub fn key_bar<'a>(
    hints: &[KeyHint],
    no_voice: Option<String>,
    words: &Words,
    bindings: &Bindings,
) -> Element<'a, Tapped> {
    let in_bar = hints.iter().filter(|hint| hint.slot.is_some());
    let keys: Vec<KeyFace> = in_bar
        .map(|hint| KeyFace::new(*hint, words, bindings))
        .collect();
    let bar = responsive(move |room| {
        let shapes = [Shape::Beside, Shape::Below, Shape::Cap];
        let fits = |shape: &Shape| width(&keys, no_voice.as_deref(), *shape) <= room.width;
        let shape = shapes.into_iter().find(fits).unwrap_or(Shape::Cap);
        let at = |slot: BarSlot| {
            let key = keys.iter().find(|key| key.hint.slot == Some(slot));
            key.map(|key| in_bar_button(key, slot, shape))
        };
        let left = [
            BarSlot::Back,
            BarSlot::Wrong,
            BarSlot::Where,
            BarSlot::Again,
        ];
        let mut bar = row(left.into_iter().filter_map(at)).push(space::horizontal());
        if let Some(sentence) = no_voice.clone() {
            bar = bar.push(lost_voice(sentence));
        }
        bar = bar.push(all_keys());
        bar.extend([BarSlot::Leave, BarSlot::Next].into_iter().filter_map(at))
            .spacing(GAP)
            .into()
    });
    container(bar.height(BUTTON))
        .padding(Padding::ZERO.horizontal(MARGIN).bottom(BELOW))
        .width(Fill)
        .into()
}

/// The width of the bar when its keys are shown so.
fn width(keys: &[KeyFace], no_voice: Option<&str>, shape: Shape) -> f32 {
    let ems = |text: &str| TextMetrics::new(text, theme::FACE).ems() * theme::SMALL;
    let one = |key: &KeyFace| {
        let cap = ems(&key.cap) + 2.0 * CAP_SIDES + 2.0;
        // What goes on is in bold letters.
        let label = ems(&key.label) * 1.08;
        let inside = match shape_of(key, shape) {
            Shape::Beside => cap + label + GAP,
            Shape::Below => cap.max(label),
            Shape::Cap => cap,
        };
        (inside + 2.0 * SIDES).max(LEAST)
    };
    let sign = no_voice.map_or(0.0, |sentence| ems(sentence) + 2.0 * SIDES + GAP);
    keys.iter().map(|key| one(key) + GAP).sum::<f32>() + LEAST + sign + 4.0
}

/// What goes on always says what it does.
fn shape_of(key: &KeyFace, shape: Shape) -> Shape {
    if shape == Shape::Cap && key.hint.slot == Some(BarSlot::Next) {
        Shape::Below
    } else {
        shape
    }
}

fn in_bar_button<'a>(key: &KeyFace, slot: BarSlot, shape: Shape) -> Element<'a, Tapped> {
    let is_next = slot == BarSlot::Next;
    let face = face(key, shape_of(key, shape), is_next);
    let press = button(container(face).center_y(Fill))
        .height(BUTTON)
        .padding([0.0, SIDES])
        .style(theme::pressable(is_next))
        .on_press(Tapped::Key(key.hint));
    container(press).id(slot.id()).into()
}

/// A key with what it does beside it or below it.
fn face<'a>(key: &KeyFace, shape: Shape, is_bold: bool) -> Element<'a, Tapped> {
    let label = text(key.label.clone())
        .size(theme::SMALL)
        .wrapping(text::Wrapping::None);
    let label = if is_bold {
        label.font(theme::BOLD)
    } else {
        label
    };
    let cap = (!key.cap.is_empty()).then(|| keycap(key.cap.clone()));
    match shape {
        Shape::Beside => row(cap).push(label).spacing(GAP).align_y(Center).into(),
        Shape::Below => column(cap).push(label).align_x(Center).into(),
        Shape::Cap => column(cap).into(),
    }
}

/// A key as it lies on a keyboard.
pub fn keycap<'a, M: 'a>(letters: String) -> Element<'a, M> {
    container(
        text(letters)
            .size(theme::SMALL)
            .line_height(1.15)
            .wrapping(text::Wrapping::None),
    )
    .padding([0.0, CAP_SIDES])
    .style(theme::keycap)
    .into()
}

fn all_keys<'a>() -> Element<'a, Tapped> {
    let sign = text("?").size(theme::BODY).font(theme::BOLD).center();
    let press = button(container(sign).center(Fill))
        .width(LEAST)
        .height(BUTTON)
        .padding(0)
        .style(theme::pressable(false))
        .on_press(Tapped::AllKeys);
    container(press).id(ALL_KEYS).into()
}

/// That the voice is lost: what that means stands above all the keys.
fn lost_voice<'a>(sentence: String) -> Element<'a, Tapped> {
    let sign = text(sentence)
        .size(theme::SMALL)
        .font(theme::BOLD)
        .style(theme::alert)
        .wrapping(text::Wrapping::None);
    let press = button(container(sign).center_y(Fill))
        .height(BUTTON)
        .padding([0.0, SIDES])
        .style(theme::bare)
        .on_press(Tapped::AllKeys);
    container(press).id(VOICE).into()
}
