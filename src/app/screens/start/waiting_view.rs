//! The ties that wait, as the start screen shows them: the one that was left off large, and of the others
//! as many as have room, whole.

use iced::widget::{button, column, container, responsive, row, text};
use iced::{Center, Element, Fill, Size};

use super::knot_form::minutes_left;
use super::{Message, State};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::widgets::key_bar::keycap;
use crate::app::{theme, widgets};
use crate::bench::TyingPace;
use crate::shelf::Shelved;
use crate::words::{Words, shown_name};

/// The type of the tie that was left off.
const LARGE: f32 = 26.0;
/// Between two of them.
const GAP: f32 = 10.0;
/// Above and below, left and right of one of the others, and between its lines.
const ENDS: f32 = 8.0;
const SIDES: f32 = 14.0;
const LINES: f32 = 2.0;
/// The width of a digit on its key, with what stands beside it.
const DIGIT: f32 = 46.0;
/// The height of a line of text in sizes of its type: the toolkit's own.
const ROW: f32 = 1.3;

impl State {
    /// The tie that one press takes up: which it is, how far it is, what is left of it.
    pub(super) fn left_off<'a>(
        tie: &Shelved,
        pace: Option<TyingPace>,
        is_low: bool,
        words: &Words,
    ) -> Element<'a, Message> {
        // Where it is low a line that would go on a second row of the larger type has one of the smaller.
        let large = if is_low { theme::BODY } else { LARGE };
        let mut face = column![].spacing(if is_low { 2 } else { 4 });
        if !is_low {
            let label = words.plainly("start-left-off", &[]);
            face = face.push(widgets::quiet(label, theme::SMALL));
        }
        if !tie.tie.name.trim().is_empty() {
            let name = text(shown_name(&tie.tie.name)).size(theme::HEADING);
            face = face.push(name.font(theme::BOLD));
        }
        let go_on = row![
            keycap(words.plainly("key-cap", &[("key", "Space")])),
            text(words.plainly("start-go-on", &[]))
                .size(large)
                .font(theme::BOLD),
        ];
        let face = face
            .push(
                text(words.tie_line(&tie.tie.plan))
                    .size(large)
                    .font(theme::BOLD),
            )
            .push(text(words.tie_progress(tie)).size(theme::SMALL))
            .push(text(words.time_left(minutes_left(tie, pace))).size(theme::SMALL))
            .push(container(go_on.spacing(12).align_y(Center)).padding([4, 0]));
        button(face)
            .width(Fill)
            .padding([if is_low { 8 } else { 10 }, 18])
            .style(theme::pressable(true))
            .on_press(Message::TakeUp(0))
            .into()
    }

    /// The others that wait, in what room is left.
    pub(super) fn others<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        responsive(move |room| self.others_in(room, words)).into()
    }

    /// As many of the others as have room, whole, and how many more there are.
    pub(super) fn others_in<'a>(&'a self, room: Size, words: &Words) -> Element<'a, Message> {
        let others = self.waiting.get(1..).unwrap_or_default();
        let heights = others.iter().map(|tie| height(tie, room.width, words));
        let heights: Vec<f32> = heights.collect();
        let fit = fitting(&heights, room.height);
        let shown = others[..fit].iter().enumerate();
        let shown = shown.map(|(nth, other)| Self::other(nth + 1, other, words));
        let more = others.len() - fit;
        let more = (more > 0).then(|| widgets::quiet(words.ties_on_shelf(more), theme::SMALL));
        column(shown.chain(more)).spacing(GAP).into()
    }

    /// Another tie that waits, by its place among them from 0, with the digit that takes it up.
    fn other<'a>(place: usize, tie: &Shelved, words: &Words) -> Element<'a, Message> {
        let digit = (place < 9).then(|| keycap((place + 1).to_string()));
        let mut face = column![].spacing(LINES).width(Fill);
        if !tie.tie.name.trim().is_empty() {
            let name = text(shown_name(&tie.tie.name)).size(theme::BODY);
            face = face.push(name.font(theme::BOLD));
        }
        let face = face
            .push(
                text(words.tie_line(&tie.tie.plan))
                    .size(theme::BODY)
                    .font(theme::BOLD),
            )
            .push(widgets::quiet(words.tie_progress(tie), theme::SMALL));
        let other = button(row![].push(digit).push(face).spacing(14).align_y(Center))
            .width(Fill)
            .padding([ENDS, SIDES])
            .style(theme::pressable(false))
            .on_press(Message::TakeUp(place));
        container(other).id(format!("waiting {place}")).into()
    }
}

/// How high another tie that waits stands in this width.
fn height(tie: &Shelved, width: f32, words: &Words) -> f32 {
    let width = width - 2.0 * SIDES - DIGIT;
    let of = |line: &str, size: f32, font| TextMetrics::new(line, font).at(size, width).height;
    let name = tie.tie.name.trim();
    let name = if name.is_empty() {
        0.0
    } else {
        of(&shown_name(name), theme::BODY, theme::BOLD) + LINES
    };
    let knot = of(&words.tie_line(&tie.tie.plan), theme::BODY, theme::BOLD);
    let progress = words.tie_progress(tie);
    name + knot + LINES + of(&progress, theme::SMALL, theme::FACE) + 2.0 * ENDS
}

/// How many of these heights fit below one another, with a line below them where they are not all.
fn fitting(heights: &[f32], room: f32) -> usize {
    let taken = |count: usize| -> f32 { heights[..count].iter().map(|height| height + GAP).sum() };
    if taken(heights.len()) - GAP <= room {
        return heights.len();
    }
    let line = theme::SMALL * ROW;
    let fits = |count: &usize| taken(*count) + line <= room;
    (0..heights.len()).rev().find(fits).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn those_that_have_no_room_are_counted_below_those_that_have() {
        let three = [70.0, 70.0, 70.0];
        assert_eq!(fitting(&three, 230.0), 3);
        // Two and the line that counts the third.
        assert_eq!(fitting(&three, 229.0), 2);
        assert_eq!(fitting(&three, 80.0), 0);
        assert_eq!(fitting(&three, 0.0), 0);
        assert_eq!(fitting(&[], 0.0), 0);
    }
}
