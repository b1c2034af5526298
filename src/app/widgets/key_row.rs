//! A row of keys on a page, each a button: what can be done there besides what stands in the bar.

use iced::widget::{button, container, row, text};
use iced::{Center, Element, Fill};

use super::key_bar::{KeyFace, keycap};
use crate::app::key_guide::KeyHint;
use crate::app::theme;
use crate::pedal::Bindings;
use crate::words::Words;

/// Height of a button: a finger needs 44 pixels (WCAG 2.2, success criterion 2.5.5).
const BUTTON: f32 = 44.0;

/// These keys, each with what it does beside it.
pub fn key_row<'a, M: Clone + 'a>(
    hints: &[KeyHint],
    words: &Words,
    bindings: &Bindings,
    on_press: fn(KeyHint) -> M,
) -> Element<'a, M> {
    let keys = hints.iter().map(|hint| {
        let KeyFace { cap, label, .. } = KeyFace::new(*hint, words, bindings);
        let label = text(label).size(theme::SMALL);
        let face = row![keycap(cap), label].spacing(8).align_y(Center);
        button(container(face).center_y(Fill))
            .height(BUTTON)
            .padding([0, 10])
            .style(theme::pressable(false))
            .on_press(on_press(*hint))
            .into()
    });
    row(keys).spacing(8).wrap().vertical_spacing(8).into()
}
