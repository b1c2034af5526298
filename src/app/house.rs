//! Widgets that more than one screen uses.

use iced::widget::{container, text};
use iced::{Element, Fill};

use super::theme;

/// A line of quiet text.
pub fn quiet<'a, M: 'a>(line: impl text::IntoFragment<'a>, size: f32) -> Element<'a, M> {
    text(line).size(size).color(theme::QUIET).into()
}

/// Something the tyer must know, in a frame of its own across the screen.
pub fn notice<'a, M: 'a>(sentence: impl text::IntoFragment<'a>) -> Element<'a, M> {
    container(text(sentence).size(theme::BODY).font(theme::BOLD))
        .padding([8, 14])
        .width(Fill)
        .style(theme::notice)
        .into()
}
