//! What the first question of the plan screen looks like: its answers as large choices, each with its
//! picture.

use iced::widget::{Column, Row, button, column, container, row, text};
use iced::{Center, Element, Fill, Size};
use strum::VariantArray as _;

use super::covering::Covered;
use super::fields::PlanField;
use super::form::{Message, State};
use super::pictures::Choice;
use crate::app::theme;
use crate::words::Words;

/// The picture of an answer: so low that the field below the question is seen whole with it.
const PICTURE: Size = Size::new(48.0, 36.0);
/// So many answers stand side by side above the cards, and beside them.
const ABREAST: usize = 4;
const ABREAST_BESIDE: usize = 2;

impl State {
    /// Both parts of the question; `is_wide` where the form has the whole width.
    pub(super) fn covering<'a>(&'a self, is_wide: bool, words: &Words) -> Element<'a, Message> {
        let covered = Covered::VARIANTS.iter().map(|&covered| {
            let label = words.plainly("plan-covers", &[("covered", covered.name())]);
            self.answer(
                Choice::Covers(covered),
                label,
                covered == self.covering.covered,
                Message::Covers(covered),
            )
        });
        let covered = covered.collect();
        let slides = [("on", false), ("place", true)].map(|(name, in_place)| {
            let label = words.plainly("plan-slides", &[("slides", name)]);
            self.answer(
                Choice::Slides(in_place),
                label,
                in_place == self.covering.in_place,
                Message::Slides(in_place),
            )
        });
        let asks = text(words.plainly("plan-slides-asked", &[])).size(theme::SMALL);
        // Which part of the question the keys answer.
        let asks = if self.focus == PlanField::Slides {
            asks.font(theme::BOLD)
        } else {
            asks
        };
        if self.covering.covered == Covered::Mat {
            return rows(covered, if is_wide { ABREAST } else { ABREAST_BESIDE }).into();
        }
        if is_wide {
            let slides = column![asks, Row::with_children(slides).spacing(8)].spacing(4);
            let covered = rows(covered, ABREAST).width(Fill);
            return column![covered, slides].spacing(8).into();
        }
        column![
            rows(covered, ABREAST_BESIDE),
            asks,
            Row::with_children(slides).spacing(8),
        ]
        .spacing(8)
        .into()
    }

    fn answer(
        &self,
        choice: Choice,
        label: String,
        is_chosen: bool,
        message: Message,
    ) -> Element<'_, Message> {
        let picture = self.pictures.choice(choice, PICTURE);
        let label = text(label).size(theme::SMALL).center();
        let face = column![].push(picture).push(label).spacing(2);
        let face = container(face.align_x(Center)).center_x(Fill);
        let answer = button(face)
            .width(Fill)
            .padding([6, 6])
            .style(theme::pressable(is_chosen))
            .on_press(message);
        container(answer).id(choice.id()).width(Fill).into()
    }
}

fn rows(answers: Vec<Element<'_, Message>>, abreast: usize) -> Column<'_, Message> {
    let mut answers = answers.into_iter();
    let mut rows = column![].spacing(8);
    loop {
        let abreast: Vec<_> = answers.by_ref().take(abreast).collect();
        if abreast.is_empty() {
            return rows;
        }
        rows = rows.push(row(abreast).spacing(8));
    }
}
