//! Widgets that more than one screen uses.

pub mod gallery;
pub mod key_bar;
pub mod key_row;
pub mod key_sheet;
pub mod leaves;
pub mod picker;
pub mod range_bar;
pub mod repaint_layer;

use iced::widget::scrollable::RelativeOffset;
use iced::widget::{
    Column, Id, button, column, container, operation, row, scrollable, space, stack, text,
    text_input,
};
use iced::{Center, Element, Fill, Padding, Task};

use super::text_layout::text_metrics::TextMetrics;
use super::theme;
use crate::words::Words;
use key_bar::keycap;

/// A line of quiet text.
pub fn quiet<'a, M: 'a>(line: impl text::IntoFragment<'a>, size: f32) -> Element<'a, M> {
    text(line).size(size).style(theme::quiet).into()
}

/// The line that is typed into where there is but one: a name, a note, what a field of an order says.
pub fn line<'a, M: Clone + 'a>(
    id: Id,
    typed: &str,
    on_input: impl Fn(String) -> M + 'a,
    on_submit: M,
) -> Element<'a, M> {
    text_input("", typed)
        .id(id)
        .size(28)
        .padding(8)
        .style(theme::field)
        .on_input(on_input)
        .on_submit(on_submit)
        .into()
}

/// What begins the first tie, with its key.
pub fn first_tie<'a, M: Clone + 'a>(on_press: M, words: &Words) -> Element<'a, M> {
    let begin = row![
        keycap(words.plainly("key-cap", &[("key", "Space")])),
        text(words.plainly("first-start-begin", &[]))
            .size(26)
            .font(theme::BOLD),
    ];
    button(begin.spacing(12).align_y(Center))
        .padding([12, 20])
        .style(theme::pressable(true))
        .on_press(on_press)
        .into()
}

/// The parts of a screen, one below the other.
pub fn page<'a, M: 'a>(spacing: u32) -> Column<'a, M> {
    column![].spacing(spacing).padding([12, 20])
}

/// What the tyer must know, above the bar of keys: what stands above it stays where it is, and many
/// notices are scrolled.
pub fn notices<'a, M: 'a>(sentences: Vec<String>) -> Element<'a, M> {
    if sentences.is_empty() {
        return space().into();
    }
    let notices = sentences
        .into_iter()
        .map(|sentence| notice_of(sentence, theme::SMALL));
    let notices = container(column(notices).spacing(6)).padding([0, 20]);
    container(scrollable(notices).spacing(4))
        .max_height(MOST_NOTICES)
        .padding(Padding::ZERO.bottom(10))
        .into()
}

/// What is wrong with the field above it, or nothing in the same place.
pub fn wrong<'a, M: 'a>(sentence: Option<String>) -> Element<'a, M> {
    let Some(sentence) = sentence else {
        return space().into();
    };
    text(sentence).size(theme::SMALL).style(theme::alert).into()
}

/// A text after a key that no field took: with its letter, or one letter shorter. None for a key
/// that types nothing.
pub fn typed_on(text: &str, key: &str) -> Option<String> {
    let mut text = text.to_owned();
    let mut letters = key.chars();
    match (key, letters.next(), letters.next()) {
        ("Backspace", ..) => {
            text.pop();
        }
        (_, Some(letter), None) if !letter.is_control() => text.push(letter),
        _ => return None,
    }
    Some(text)
}

/// The height that notices may take.
const MOST_NOTICES: f32 = 150.0;

/// Something the tyer must know, in a frame of its own across the screen.
pub fn notice<'a, M: 'a>(sentence: impl text::IntoFragment<'a>) -> Element<'a, M> {
    notice_of(sentence, theme::BODY)
}

/// A notice in this size of type.
pub fn notice_of<'a, M: 'a>(sentence: impl text::IntoFragment<'a>, size: f32) -> Element<'a, M> {
    container(text(sentence).size(size).font(theme::BOLD))
        .padding(NOTICE_PADDING)
        .width(Fill)
        .style(theme::notice)
        .into()
}

/// The height of such a notice, shaped in the bold face, in this width.
pub fn notice_height(sentence: &mut TextMetrics, size: f32, width: f32) -> f32 {
    let [ends, sides] = NOTICE_PADDING;
    sentence.at(size, width - 2.0 * sides).height + 2.0 * ends
}

/// Above and below, left and right.
const NOTICE_PADDING: [f32; 2] = [8.0, 14.0];

/// A page, with a frame round it while it flashes, and over it a sheet, if there is one.
pub fn edged<'a, M: 'a>(
    page: Element<'a, M>,
    is_flashing: bool,
    sheet: Option<Element<'a, M>>,
) -> Element<'a, M> {
    let frame: Element<'a, M> = if is_flashing {
        container(space())
            .width(Fill)
            .height(Fill)
            .style(theme::flash)
            .into()
    } else {
        space().into()
    };
    let sheet = sheet.unwrap_or_else(|| space().into());
    stack![page, frame, sheet].width(Fill).height(Fill).into()
}

/// Scrolls a list so that the line at this place of so many comes into view.
pub fn bring_into_view<M: 'static>(list: &'static str, place: usize, lines: usize) -> Task<M> {
    #[expect(clippy::cast_precision_loss, reason = "a place on a scroll bar")]
    let share = place as f32 / lines.saturating_sub(1).max(1) as f32;
    let y = share.clamp(0.0, 1.0);
    operation::snap_to(Id::new(list), RelativeOffset { x: 0.0, y })
}

/// Scrolls a form so that one of its fields comes into view.
pub fn bring_field_into_view<M: 'static, F: PartialEq>(
    form: &'static str,
    fields: &[F],
    field: &F,
) -> Task<M> {
    let place = fields.iter().position(|one| one == field);
    bring_into_view(form, place.unwrap_or(0), fields.len())
}
