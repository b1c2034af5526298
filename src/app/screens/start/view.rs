//! What the start screen looks like: the tie that was left off and how to go on with it, or the form of a
//! knot; the ways that lead on; and beside them the knot, as it lies now or as it will be.

use iced::widget::{button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, Length, Shrink};

use super::knot_form::minutes_left;
use super::ways::Way;
use super::{FORM, Message, State};
use crate::app::key_guide::cap;
use crate::app::widgets::key_bar::keycap;
use crate::app::{theme, widgets};
use crate::shelf::Shelved;
use crate::words::{Words, shown_name};

/// The width of what stands beside the picture: a share of the room, within bounds.
const SHARE: f32 = 0.55;
const WIDTHS: [f32; 2] = [440.0, 700.0];
/// The most of the height that it takes above the picture, where it is high.
const MOST_ABOVE: f32 = 0.6;
const GAP: f32 = 24.0;
/// Ways that stand beside one another.
const ABREAST: usize = 2;

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let page = widgets::page(14);
        page.push(responsive(move |room| {
            let picture = container(self.picture.view()).height(Fill);
            if room.height > room.width {
                let parts = container(self.parts(Shrink, words));
                let parts = parts.max_height(room.height * MOST_ABOVE);
                return column![parts, picture].spacing(GAP).into();
            }
            let [least, most] = WIDTHS;
            let width = (room.width * SHARE).clamp(least, most);
            let parts = container(self.parts(Fill, words)).width(width);
            row![parts, picture].spacing(GAP).into()
        }))
        .into()
    }

    /// The first tie, with one way to begin it and a quiet way past it.
    fn welcome<'a>(height: Length, words: &Words) -> Element<'a, Message> {
        let begin = row![
            keycap(words.plainly("key-cap", &[("key", "Space")])),
            text(words.plainly("first-start-begin", &[]))
                .size(26)
                .font(theme::BOLD),
        ];
        let begin = button(begin.spacing(12).align_y(Center))
            .padding([12, 20])
            .style(theme::pressable(true))
            .on_press(Message::First);
        let past = row![
            keycap("Tab".to_owned()),
            text(words.plainly("first-start-past", &[])).size(theme::BODY),
        ];
        let past = button(past.spacing(12).align_y(Center))
            .padding([9, 20])
            .style(theme::pressable(false))
            .on_press(Message::Way(Way::Form));
        let parts = column![
            heading(words.plainly("first-start-heading", &[])),
            text(words.plainly("first-start-what", &[])).size(theme::BODY),
            text(words.plainly("first-start-needs", &[])).size(theme::BODY),
            begin,
            past,
        ];
        scrollable(parts.spacing(16))
            .spacing(8)
            .width(Fill)
            .height(height)
            .into()
    }

    /// What was left off, or the form; and the ways that lead on.
    fn parts<'a>(&'a self, height: Length, words: &Words) -> Element<'a, Message> {
        if self.is_new {
            return Self::welcome(height, words);
        }
        let parts = column![].spacing(14);
        let parts = match self.waiting.split_first() {
            Some((first, others)) if self.focus.is_none() => {
                let others = others.iter().enumerate();
                let others = others.map(|(nth, other)| Self::other(nth + 1, other, words));
                parts
                    .push(Self::left_off(first, words))
                    .push(Self::ways(words))
                    .push(column(others).spacing(10))
            }
            _ => parts
                .push(heading(words.plainly("start-heading", &[])))
                .push(Self::ways(words))
                .push(self.form(words)),
        };
        scrollable(parts)
            .id(FORM)
            .spacing(8)
            .width(Fill)
            .height(height)
            .into()
    }

    /// The tie that one press takes up: which it is, how far it is, what is left of it.
    fn left_off<'a>(tie: &Shelved, words: &Words) -> Element<'a, Message> {
        let mut face = column![].spacing(4);
        face = face.push(widgets::quiet(
            words.plainly("start-left-off", &[]),
            theme::SMALL,
        ));
        if !tie.tie.name.trim().is_empty() {
            let name = text(shown_name(&tie.tie.name)).size(theme::HEADING);
            face = face.push(name.font(theme::BOLD));
        }
        let go_on = row![
            keycap(words.plainly("key-cap", &[("key", "Space")])),
            text(words.plainly("start-go-on", &[]))
                .size(26)
                .font(theme::BOLD),
        ];
        let face = face
            .push(
                text(words.tie_line(&tie.tie.plan))
                    .size(26)
                    .font(theme::BOLD),
            )
            .push(text(words.tie_progress(tie.progress, tie.days)).size(theme::SMALL))
            .push(text(words.time_left(minutes_left(tie))).size(theme::SMALL))
            .push(container(go_on.spacing(12).align_y(Center)).padding([4, 0]));
        button(face)
            .width(Fill)
            .padding([10, 18])
            .style(theme::pressable(true))
            .on_press(Message::TakeUp(0))
            .into()
    }

    /// Another tie that waits, by its place among them from 0, with the digit that takes it up.
    fn other<'a>(place: usize, tie: &Shelved, words: &Words) -> Element<'a, Message> {
        let digit = (place < 9).then(|| keycap((place + 1).to_string()));
        let mut face = column![].spacing(2).width(Fill);
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
            .push(widgets::quiet(
                words.tie_progress(tie.progress, tie.days),
                theme::SMALL,
            ));
        button(row![].push(digit).push(face).spacing(14).align_y(Center))
            .width(Fill)
            .padding([8, 14])
            .style(theme::pressable(false))
            .on_press(Message::TakeUp(place))
            .into()
    }

    /// The ways that lead on, each with its key.
    fn ways<'a>(words: &Words) -> Element<'a, Message> {
        let rows = Way::ALL.chunks(ABREAST).map(|ways| {
            let ways = ways.iter().map(|way| {
                let key = words.plainly("key-cap", &[("key", &cap(way.key()))]);
                let label = text(words.plainly(way.label(), &[])).size(theme::SMALL);
                let face = row![keycap(key), label].spacing(10).align_y(Center);
                // Two lines of it where it is narrow; with these ends a finger has its 44 pixels (WCAG
                // 2.2, success criterion 2.5.5).
                let way_on = button(face)
                    .width(Fill)
                    .padding([11, 12])
                    .style(theme::pressable(false))
                    .on_press(Message::Way(*way));
                container(way_on).id(way.label()).into()
            });
            row(ways).spacing(8).into()
        });
        column(rows).spacing(8).into()
    }
}

fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
