//! Widgets that more than one screen uses.

pub mod repaint_layer;

use iced::widget::scrollable::RelativeOffset;
use iced::widget::{Column, Id, column, container, operation, space, stack, text};
use iced::{Element, Fill, Task};

use super::text_layout::text_metrics::TextMetrics;
use super::theme;

/// A line of quiet text.
pub fn quiet<'a, M: 'a>(line: impl text::IntoFragment<'a>, size: f32) -> Element<'a, M> {
    text(line).size(size).style(theme::quiet).into()
}

/// A page that begins with what the tyer must know, each in a frame of its own.
pub fn page_below<'a, M: 'a>(notices: Vec<String>, spacing: u32) -> Column<'a, M> {
    let page = column![].spacing(spacing).padding(20);
    notices
        .into_iter()
        .fold(page, |page, sentence| page.push(notice(sentence)))
}

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

/// A page, with a frame round it while it flashes.
pub fn edged<'a, M: 'a>(page: Element<'a, M>, is_flashing: bool) -> Element<'a, M> {
    let frame: Element<'a, M> = if is_flashing {
        container(space())
            .width(Fill)
            .height(Fill)
            .style(theme::flash)
            .into()
    } else {
        space().into()
    };
    stack![page, frame].width(Fill).height(Fill).into()
}

/// Scrolls a list so that the line at this place of so many comes into view.
pub fn bring_into_view<M: 'static>(list: &'static str, place: usize, lines: usize) -> Task<M> {
    #[expect(clippy::cast_precision_loss, reason = "a place on a scroll bar")]
    let share = place as f32 / lines.saturating_sub(1).max(1) as f32;
    let y = share.clamp(0.0, 1.0);
    operation::snap_to(Id::new(list), RelativeOffset { x: 0.0, y })
}
