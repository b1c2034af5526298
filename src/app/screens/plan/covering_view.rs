//! What the first question of the plan screen looks like: its answers as large choices, each with its
//! picture.

use iced::widget::{Column, Row, button, column, container, row, text};
use iced::{Center, Element, Fill, Size};
use strum::VariantArray as _;

use super::cards::BAR;
use super::covering::Covered;
use super::fields::{PlanField, id};
use super::form::{Message, State};
use super::pictures::Choice;
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::theme;
use crate::words::Words;

/// The picture of an answer: so low that the field below the question is seen whole with it.
const PICTURE: Size = Size::new(48.0, 36.0);
/// So many answers stand side by side above the cards, and beside them.
const ABREAST: usize = 4;
const ABREAST_BESIDE: usize = 2;
/// Between two of them.
const GAP: f32 = 8.0;
/// Round the face of an answer, and from its picture to its name.
const ENDS: f32 = 6.0;
const TO_NAME: f32 = 10.0;

/// Whether each of these names, of so many side by side in this width, has room beside its picture with
/// none of its words cut.
fn are_beside(names: &[String], abreast: usize, width: f32) -> bool {
    #[expect(clippy::cast_precision_loss, reason = "a few answers")]
    let each = (width + GAP) / abreast as f32 - GAP;
    let room = each - 2.0 * ENDS - PICTURE.width - TO_NAME;
    let mut words = names.iter().flat_map(|name| name.split_whitespace());
    words.all(|word| TextMetrics::new(word, theme::FACE).ems() * theme::SMALL < room)
}

impl State {
    /// The parts of the question, one below the other in this width; `is_wide` where the form has all of the
    /// screen's.
    pub(super) fn covering<'a>(
        &'a self,
        is_wide: bool,
        width: f32,
        words: &Words,
    ) -> Vec<Element<'a, Message>> {
        let abreast = if is_wide { ABREAST } else { ABREAST_BESIDE };
        // The bar beside the form takes some of it.
        let width = width - BAR;
        let covers =
            |covered: &Covered| words.plainly("plan-covers", &[("covered", covered.name())]);
        let labels: Vec<String> = Covered::VARIANTS.iter().map(covers).collect();
        let is_beside = are_beside(&labels, abreast, width);
        let covered = Covered::VARIANTS.iter().zip(labels);
        let covered = covered.map(|(&covered, label)| {
            self.answer(
                Choice::Covers(covered),
                label,
                covered == self.covering.covered,
                is_beside,
                Message::Covers(covered),
            )
        });
        let covered = covered.collect();
        let labels =
            ["on", "place"].map(|slides| words.plainly("plan-slides", &[("slides", slides)]));
        let is_beside = are_beside(&labels, labels.len(), width);
        let slides = labels.into_iter().zip([false, true]);
        let slides = slides.map(|(label, in_place)| {
            self.answer(
                Choice::Slides(in_place),
                label,
                in_place == self.covering.in_place,
                is_beside,
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
        let covered = container(rows(covered, abreast)).id(id(PlanField::Covers));
        if self.covering.covered == Covered::Mat {
            return vec![covered.into()];
        }
        let slides = column![asks, Row::with_children(slides).spacing(GAP)].spacing(4);
        let slides = container(slides).id(id(PlanField::Slides));
        vec![covered.into(), slides.into()]
    }

    fn answer(
        &self,
        choice: Choice,
        label: String,
        is_chosen: bool,
        is_beside: bool,
        message: Message,
    ) -> Element<'_, Message> {
        let picture = self.pictures.choice(choice, PICTURE);
        let label = text(label).size(theme::SMALL);
        let face = if is_beside {
            let face = row![]
                .push(picture)
                .push(label.width(Fill))
                .spacing(TO_NAME);
            container(face.align_y(Center))
        } else {
            let face = column![].push(picture).push(label.center()).spacing(2);
            container(face.align_x(Center)).center_x(Fill)
        };
        let answer = button(face)
            .width(Fill)
            .padding(ENDS)
            .style(theme::pressable(is_chosen))
            .on_press(message);
        container(answer).id(choice.id()).width(Fill).into()
    }
}

fn rows(answers: Vec<Element<'_, Message>>, abreast: usize) -> Column<'_, Message> {
    let mut answers = answers.into_iter();
    let mut rows = column![].spacing(GAP);
    loop {
        let abreast: Vec<_> = answers.by_ref().take(abreast).collect();
        if abreast.is_empty() {
            return rows;
        }
        rows = rows.push(row(abreast).spacing(GAP));
    }
}
