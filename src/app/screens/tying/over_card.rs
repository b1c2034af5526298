//! What comes over the step in large type: where the tyer is, or that the tie is held.

use iced::widget::{column, container, responsive, row, text};
use iced::{Center, Element, Fill};

use super::page_frame::Over;
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::theme;
use crate::app::widgets::key_bar;
use crate::app::widgets::repaint_layer::layer;

/// The largest type of a word that has its keys below it, and of an answer.
const LARGEST_WORD: f32 = 112.0;
const LARGEST_ANSWER: f32 = 64.0;
/// Left and right of the words, and above and below them, with the border of the card.
const SIDES: f32 = 60.0;
const ENDS: f32 = 50.0;

/// The card, as large as the step that it covers.
pub(super) fn card<'a, M: 'a>(over: &Over) -> Element<'a, M> {
    let turned = (over.told.clone(), over.caps.clone(), over.way.clone());
    let (told, caps, way) = turned.clone();
    let card = responsive(move |room| {
        let mut letters = TextMetrics::new(&told, theme::BOLD);
        // A word stands in one row, as large as it can, with a row below it for the keys that go on.
        let is_word = !caps.is_empty();
        let mut size = if is_word {
            LARGEST_WORD
        } else {
            (room.width / 14.0).clamp(theme::BODY, LARGEST_ANSWER)
        };
        let (width, height) = (room.width - SIDES, room.height - ENDS);
        let fits = |letters: &mut TextMetrics, size: f32| {
            let taken = letters.at(size, width).height;
            if is_word {
                letters.ems() * size <= width && taken + size <= height
            } else {
                taken <= height
            }
        };
        while size > theme::BODY && !fits(&mut letters, size) {
            size *= 0.95;
        }
        let answer = text(told.clone()).size(size).font(theme::BOLD);
        let mut face = column![answer].spacing(size * 0.3).align_x(Center);
        if is_word {
            let of_key = (size * 0.4).max(theme::BODY);
            let keys = caps.iter().cloned();
            let keys = keys.map(|cap| key_bar::keycap_of(cap, of_key));
            let keys = row(keys).push(text(way.clone()).size(of_key));
            face = face.push(keys.spacing(of_key * 0.5).align_y(Center));
        }
        container(face)
            .padding(24)
            .center(Fill)
            .style(theme::card)
            .into()
    });
    layer(turned, card)
}
