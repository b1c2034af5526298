//! The chosen knot in full: its picture large, what it comes to, and what to take care of.

use iced::widget::{column, container, row, text};
use iced::{Center, Element};

use super::form::{Message, State};
use crate::app::widgets::leaves::leaves;
use crate::app::widgets::range_bar::range_bar;
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// Below this height there is no room for a picture beside the words.
const LOW: f32 = 190.0;
/// What it is scrolled in where it has no room whole, and between two of its lines.
const DETAIL: &str = "plan-detail";
const LINE_GAP: f32 = 4.0;

impl State {
    /// The picture above and what is to be said of it below, in a column of its own of this height.
    pub(super) fn detail_column<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        height: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let told = self.told_of(question, answers, true, words);
        let told = leaves(DETAIL, told, LINE_GAP, height, false);
        column![self.chosen_picture(answers)]
            .push(told)
            .spacing(14)
            .into()
    }

    /// The same side by side in a strip of this height: a low one has what is not on the card of the knot.
    pub(super) fn detail_strip<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        height: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let is_high = height >= LOW;
        let picture = self.chosen_picture(answers).filter(|_| is_high);
        let picture = picture.map(|picture| container(picture).width(height));
        let told = self.told_of(question, answers, is_high, words);
        let told = leaves(DETAIL, told, LINE_GAP, height, true);
        row![].push(picture).push(told).spacing(16).into()
    }

    /// What is to be said of it alone, on leaves of this height.
    pub(super) fn detail_told<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        height: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let told = self.told_of(question, answers, true, words);
        leaves(DETAIL, told, LINE_GAP, height, true)
    }

    /// Its figures alone, on leaves of this height.
    pub(super) fn detail_facts<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        height: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let facts = self.facts(question, answers, words);
        leaves(DETAIL, facts, LINE_GAP, height, true)
    }

    fn chosen_picture<'a>(&'a self, answers: &[FitAnswer]) -> Option<Element<'a, Message>> {
        let answer = answers.get(self.chosen)?;
        self.pictures.chosen(answer, (self.hand, self.side))
    }

    /// What the chosen knot comes to, line by line, with its name and range first where they are wanted.
    fn told_of<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        is_named: bool,
        words: &Words,
    ) -> Vec<Element<'a, Message>> {
        let mut told = Vec::new();
        if let Some(answer) = answers.get(self.chosen).filter(|_| is_named) {
            let name = text(words.answer_line(answer)).size(24).font(theme::BOLD);
            told.extend([name.into(), range(answer, words)]);
        }
        // What the knot is not for stands in sight; the figures are on its card too.
        told.extend(self.cautions(question, answers, words));
        told.extend(self.facts(question, answers, words));
        told
    }

    /// What was complained of, and what to take care of with the chosen knot.
    pub(super) fn cautions<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Vec<Element<'a, Message>> {
        let mut lines = Vec::new();
        if let Some(complaint) = &self.complaint {
            let complaint = complaint.shown().to_owned();
            lines.push(widgets::notice_of(complaint, theme::SMALL));
        }
        let Some(answer) = answers.get(self.chosen) else {
            return lines;
        };
        let cautions = question.cautions(answer).into_iter();
        let cautions = cautions.map(|caution| words.caution(&caution).to_string());
        let cautions = cautions.chain([words.choice_caution().to_string()]);
        lines.extend(cautions.map(|caution| {
            let caution = text(caution).size(theme::SMALL).style(theme::alert);
            caution.into()
        }));
        lines
    }

    /// The figures of the chosen knot, and what is to be said of all of them.
    pub(super) fn facts<'a>(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Vec<Element<'a, Message>> {
        let Some(answer) = answers.get(self.chosen) else {
            return Vec::new();
        };
        let facts = words.answer_facts(answer, self.prices).into_iter();
        let facts = facts.map(|fact| text(fact).size(theme::SMALL).into());
        let mut told: Vec<Element<'a, Message>> = facts.collect();
        let mut notes = Vec::new();
        notes.extend(words.fit_corrected(question, answers));
        notes.push(words.fit_times(question));
        if question.tube.is_none() && !question.in_place {
            notes.push(words.plainly("plan-without-tube", &[]));
        }
        let notes = notes.into_iter();
        told.extend(notes.map(|note| widgets::quiet(note, theme::SMALL)));
        told
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
