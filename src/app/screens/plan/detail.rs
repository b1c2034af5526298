//! The chosen knot in full: its picture large, what it comes to, and what to take care of.

use iced::widget::{column, container, row, scrollable, text};
use iced::{Center, Element, Fill};

use super::form::{Message, State};
use crate::app::widgets::range_bar::range_bar;
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// Below this height there is no room for a picture beside the words.
const LOW: f32 = 190.0;

impl State {
    /// The picture above and what is to be said of it below, in a column of its own.
    pub(super) fn detail_column<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Element<'a, Message> {
        column![]
            .push(self.chosen_picture(answers))
            .push(self.told_of(question, answers, words))
            .spacing(14)
            .into()
    }

    /// The same side by side in a strip of this height.
    pub(super) fn detail_strip<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        height: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let picture = self.chosen_picture(answers).filter(|_| height >= LOW);
        let picture = picture.map(|picture| container(picture).width(height));
        let told = self.told_of(question, answers, words);
        row![].push(picture).push(told).spacing(16).into()
    }

    fn chosen_picture<'a>(&'a self, answers: &[FitAnswer]) -> Option<Element<'a, Message>> {
        let answer = answers.get(self.chosen)?;
        self.pictures.chosen(answer, (self.hand, self.side))
    }

    /// What the chosen knot comes to, line by line, scrolled.
    pub(super) fn told_of<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Element<'a, Message> {
        let mut told = column![].spacing(4).width(Fill);
        if let Some(answer) = answers.get(self.chosen) {
            let name = text(words.answer_line(answer)).size(24).font(theme::BOLD);
            told = told.push(name).push(range(answer, words));
        }
        // What the knot is not for stands in sight; the figures are on its card too.
        let told = told
            .push(self.cautions(question, answers, words))
            .push(self.facts(question, answers, words));
        scrollable(told).spacing(8).width(Fill).height(Fill).into()
    }

    /// What was complained of, and what to take care of with the chosen knot.
    pub(super) fn cautions<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Element<'a, Message> {
        let mut lines = column![].spacing(4).width(Fill);
        if let Some(complaint) = &self.complaint {
            let complaint = complaint.shown().to_owned();
            lines = lines.push(widgets::notice_of(complaint, theme::SMALL));
        }
        let Some(answer) = answers.get(self.chosen) else {
            return lines.into();
        };
        let cautions = question.cautions(answer).into_iter();
        let cautions = cautions.map(|caution| words.caution(&caution).to_string());
        for caution in cautions.chain([words.choice_caution().to_string()]) {
            let caution = text(caution).size(theme::SMALL).style(theme::alert);
            lines = lines.push(caution);
        }
        lines.into()
    }

    /// The figures of the chosen knot, and what is to be said of all of them.
    pub(super) fn facts<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Element<'a, Message> {
        let mut told = column![].spacing(4).width(Fill);
        let Some(answer) = answers.get(self.chosen) else {
            return told.into();
        };
        for fact in words.answer_facts(answer, self.prices) {
            told = told.push(text(fact).size(theme::SMALL));
        }
        let mut notes = Vec::new();
        notes.extend(words.fit_corrected(question, answers));
        notes.push(words.fit_times(question));
        if question.tube.is_none() && !question.in_place {
            notes.push(words.plainly("plan-without-tube", &[]));
        }
        for note in notes {
            told = told.push(widgets::quiet(note, theme::SMALL));
        }
        told.into()
    }
}

/// The range of widths of a knot, with the width that it has marked on it.
fn range<'a>(answer: &FitAnswer, words: &Words) -> Element<'a, Message> {
    let [tight, widest] = words.answer_range(answer);
    let share = answer.range.openness(answer.shape.width);
    let end = |end: String| text(end).size(theme::SMALL).style(theme::quiet);
    row![end(tight), range_bar(share), end(widest)]
        .spacing(10)
        .align_y(Center)
        .into()
}
