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

/// How much smaller the letters are where all keys have one form in little room.
const SMALLER: f32 = 0.85;

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

/// How a key stands on its button.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shape {
    /// The key, and beside it what it does.
    Beside,
    /// The key, and below it what it does.
    Below,
    /// The same in smaller letters, so that all keys have one form.
    Small,
    /// The key, and beside it what it does in two lines.
    Folded,
    /// The key alone.
    Cap,
}

/// Where room is short, the words of these stay the longest.
const BY_WEIGHT: [BarSlot; 6] = [
    BarSlot::Next,
    BarSlot::Back,
    BarSlot::Wrong,
    BarSlot::Where,
    BarSlot::Leave,
    BarSlot::Again,
];

/// The bar with these keys. `no_voice` stands there while the voice is lost.
pub fn key_bar<'a>(
    hints: &[KeyHint],
    no_voice: Option<String>,
    words: &Words,
    bindings: &Bindings,
) -> Element<'a, Tapped> {
    let in_bar = hints.iter().filter(|hint| hint.slot.is_some());
    let keys: Vec<KeyFace> = in_bar
        .map(|hint| KeyFace {
            label: words.plainly(hint.label_in_bar, &[]),
            ..KeyFace::new(*hint, words, bindings)
        })
        .collect();
    let bar = responsive(move |room| {
        let shapes = shapes(&keys, no_voice.as_deref(), room.width);
        let at = |slot: BarSlot| {
            let mut faces = keys.iter().zip(&shapes);
            let (key, shape) = faces.find(|(key, _)| key.hint.slot == Some(slot))?;
            shape.map(|shape| in_bar_button(key, slot, shape))
        };
        let left = [
            BarSlot::Back,
            BarSlot::Wrong,
            BarSlot::Where,
            BarSlot::Again,
            BarSlot::Picture,
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

/// How each key stands in a bar of this width: all in one way, or each in the narrowest, or with as many
/// words as there is room for. The key of the picture is left out before another loses its words.
fn shapes(keys: &[KeyFace], no_voice: Option<&str>, room: f32) -> Vec<Option<Shape>> {
    let sign = no_voice.map_or(0.0, |sentence| ems(sentence) + 2.0 * SIDES + GAP);
    let rest = room - LEAST - sign - 4.0;
    let fits = |shapes: &[Option<Shape>]| {
        let faces = keys.iter().zip(shapes);
        let widths = faces.filter_map(|(key, shape)| Some(width(key, (*shape)?) + GAP));
        widths.sum::<f32>() <= rest
    };
    let of_picture = keys
        .iter()
        .position(|key| key.hint.slot == Some(BarSlot::Picture));
    let without = |mut shapes: Vec<Option<Shape>>| {
        if let Some(place) = of_picture {
            shapes[place] = None;
        }
        shapes
    };
    for shape in [Shape::Beside, Shape::Below] {
        let alike = vec![Some(shape); keys.len()];
        if fits(&alike) {
            return alike;
        }
    }
    for shape in [Shape::Below, Shape::Small] {
        let alike = without(vec![Some(shape); keys.len()]);
        if fits(&alike) {
            return alike;
        }
    }
    let mut shapes = without(vec![Some(Shape::Cap); keys.len()]);
    for slot in BY_WEIGHT {
        let Some(place) = keys.iter().position(|key| key.hint.slot == Some(slot)) else {
            continue;
        };
        shapes[place] = Some(narrowest(&keys[place]));
        // What goes on always says what it does.
        if slot != BarSlot::Next && !fits(&shapes) {
            shapes[place] = Some(Shape::Cap);
        }
    }
    if let Some(place) = of_picture {
        // By its letter alone, where all others have what they have.
        let mut with_picture = shapes.clone();
        with_picture[place] = Some(Shape::Cap);
        if fits(&with_picture) {
            return with_picture;
        }
    }
    shapes
}

/// The narrowest way to say what a key does.
fn narrowest(key: &KeyFace) -> Shape {
    if width(key, Shape::Folded) < width(key, Shape::Below) {
        Shape::Folded
    } else {
        Shape::Below
    }
}

fn ems(text: &str) -> f32 {
    TextMetrics::new(text, theme::FACE).ems() * theme::SMALL
}

/// The width of a button.
fn width(key: &KeyFace, shape: Shape) -> f32 {
    let cap = ems(&key.cap) + 2.0 * CAP_SIDES + 2.0;
    // What goes on is in bold letters.
    let label = |label: &str| ems(label) * 1.08;
    let inside = match shape {
        Shape::Beside => cap + label(&key.label) + GAP,
        Shape::Below => cap.max(label(&key.label)),
        Shape::Small => cap.max(label(&key.label) * SMALLER),
        Shape::Folded => {
            let lines = folded(&key.label);
            cap + lines.lines().map(label).fold(0.0, f32::max) + GAP
        }
        Shape::Cap => cap,
    };
    (inside + 2.0 * SIDES).max(LEAST)
}

/// A label in two lines, as even as its words allow; in one where it is one word.
fn folded(label: &str) -> String {
    let spaces = label.match_indices(' ').map(|(at, _)| at);
    let longer = |at: &usize| (*at).max(label.len() - at);
    match spaces.min_by_key(longer) {
        Some(at) => format!("{}\n{}", &label[..at], &label[at + 1..]),
        None => label.to_owned(),
    }
}

fn in_bar_button<'a>(key: &KeyFace, slot: BarSlot, shape: Shape) -> Element<'a, Tapped> {
    let is_next = slot == BarSlot::Next;
    let face = face(key, shape, is_next);
    let press = button(container(face).center_y(Fill))
        .height(BUTTON)
        .padding([0.0, SIDES])
        .style(theme::pressable(is_next))
        .on_press(Tapped::Key(key.hint));
    container(press).id(slot.id()).into()
}

/// A key with what it does beside it or below it.
fn face<'a>(key: &KeyFace, shape: Shape, is_bold: bool) -> Element<'a, Tapped> {
    let label = match shape {
        Shape::Folded => text(folded(&key.label)).line_height(1.1),
        _ => text(key.label.clone()),
    };
    let size = match shape {
        Shape::Small => theme::SMALL * SMALLER,
        _ => theme::SMALL,
    };
    let label = label.size(size).wrapping(text::Wrapping::None);
    let label = if is_bold {
        label.font(theme::BOLD)
    } else {
        label
    };
    let cap = (!key.cap.is_empty()).then(|| keycap(key.cap.clone()));
    match shape {
        Shape::Beside | Shape::Folded => row(cap).push(label).spacing(GAP).align_y(Center).into(),
        Shape::Below | Shape::Small => column(cap).push(label).align_x(Center).into(),
        Shape::Cap => column(cap).into(),
    }
}

/// A key as it lies on a keyboard.
pub fn keycap<'a, M: 'a>(letters: String) -> Element<'a, M> {
    keycap_of(letters, theme::SMALL)
}

/// The same with letters of this size.
pub fn keycap_of<'a, M: 'a>(letters: String, size: f32) -> Element<'a, M> {
    container(
        text(letters)
            .size(size)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::key_guide::KeyGroup;

    fn faces(labels: &[&str]) -> Vec<KeyFace> {
        let slots = [
            BarSlot::Back,
            BarSlot::Wrong,
            BarSlot::Where,
            BarSlot::Again,
            BarSlot::Leave,
            BarSlot::Next,
            BarSlot::Picture,
        ];
        let face = |(slot, label): (BarSlot, &&str)| KeyFace {
            hint: KeyHint::new(KeyGroup::Steps, "a", "key-next").at(slot),
            cap: "A".to_owned(),
            label: (*label).to_owned(),
        };
        slots.into_iter().zip(labels).map(face).collect()
    }

    #[test]
    fn where_room_is_short_the_words_of_what_is_pressed_most_stay() {
        let keys = faces(&[
            "find my place",
            "leave it as it is",
            "where am I",
            "again",
            "leave",
            "take back",
        ]);
        let at = |width: f32| shapes(&keys, None, width);
        assert!(at(2000.0).iter().all(|shape| *shape == Some(Shape::Beside)));
        // The narrowest window has room for all of them.
        assert!(!at(768.0).contains(&Some(Shape::Cap)), "{:?}", at(768.0));
        let few = at(420.0);
        assert_ne!(few[5], Some(Shape::Cap), "{few:?}");
        assert_eq!(few[3], Some(Shape::Cap), "{few:?}");
        // What goes on says so in any room.
        assert_ne!(at(10.0)[5], Some(Shape::Cap));
    }

    #[test]
    fn keys_have_one_form_in_a_row_where_smaller_letters_make_the_room() {
        let keys = faces(&[
            "retrouver l’endroit",
            "laisser en l’état",
            "ailleurs",
            "répéter",
            "à l’étape",
            "défaire",
        ]);
        let shapes = shapes(&keys, None, 768.0);
        assert!(shapes.iter().all(|shape| *shape == shapes[0]), "{shapes:?}");
    }

    #[test]
    fn the_key_of_the_picture_goes_before_another_loses_its_words() {
        let labels = ["back", "wrong", "where am I", "again", "leave", "next"];
        let keys = faces(&[&labels[..], &["large picture"]].concat());
        assert_eq!(shapes(&keys, None, 768.0)[6], Some(Shape::Below));
        let others = faces(&labels);
        for width in 300..2000_u16 {
            let (with, alone) = (
                shapes(&keys, None, width.into()),
                shapes(&others, None, width.into()),
            );
            if with[6].is_none() {
                let loses = with[..6].contains(&Some(Shape::Cap));
                assert_eq!(loses, alone.contains(&Some(Shape::Cap)), "{width}");
            } else {
                assert!(!with.contains(&Some(Shape::Cap)), "{width}: {with:?}");
            }
        }
    }

    #[test]
    fn a_label_is_folded_where_its_halves_are_most_alike() {
        assert_eq!(folded("leave it as it is"), "leave it\nas it is");
        assert_eq!(folded("retrouver l’endroit"), "retrouver\nl’endroit");
        assert_eq!(folded("weiter"), "weiter");
    }
}
