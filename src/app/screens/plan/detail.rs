//! The chosen knot in full: its picture large, what it comes to, and what to take care of.

use iced::widget::{column, container, row, scrollable, text};
use iced::{Center, Element, Fill, Size};

use super::form::{Message, State};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::widgets::range_bar::range_bar;
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// Below this height there is no room for a picture beside the words.
const LOW: f32 = 190.0;
/// Size of the type of its name, and the room between two lines.
const NAME: f32 = 24.0;
const LINE_GAP: f32 = 4.0;
/// Between picture and words, and what the words are scrolled by with the space beside it.
const STRIP_GAP: f32 = 16.0;
const SCROLL_BAR: f32 = 20.0;

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

    /// The same side by side in a strip of about this height, in this width: as high as whole sentences take.
    pub(super) fn detail_strip<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        room: Size,
        words: &Words,
    ) -> Element<'a, Message> {
        let picture = self.chosen_picture(answers);
        let picture = picture.filter(|_| room.height >= LOW);
        let picture = picture.map(|picture| container(picture).width(room.height));
        let beside = picture.as_ref().map_or(0.0, |_| room.height + STRIP_GAP);
        let told = Size::new(room.width - beside - SCROLL_BAR, room.height);
        let height = self.height_told(question, answers, told, words);
        let told = container(self.told_of(question, answers, words)).id("plan-told");
        let strip = row![].push(picture).push(told).spacing(STRIP_GAP);
        container(strip).height(height).into()
    }

    /// The height of what is told of the chosen knot, as far as whole sentences go in this room; of what is to
    /// be taken care of all, in any room.
    fn height_told(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        room: Size,
        words: &Words,
    ) -> f32 {
        let Some(answer) = answers.get(self.chosen) else {
            return room.height;
        };
        let tall = |told: &str, size: f32, font| {
            TextMetrics::new(told, font).at(size, room.width).height + LINE_GAP
        };
        let mut height = tall(&words.answer_line(answer), NAME, theme::BOLD);
        height += 1.3 * theme::SMALL + LINE_GAP;
        if let Some(complaint) = &self.complaint {
            let mut complaint = TextMetrics::new(complaint.shown(), theme::BOLD);
            height += widgets::notice_height(&mut complaint, theme::SMALL, room.width) + LINE_GAP;
        }
        for caution in cautions_of(question, answer, words) {
            height += tall(&caution, theme::SMALL, theme::FACE);
        }
        let facts = self.facts_of(question, answers, answer, words);
        for (fact, _) in facts {
            let more = tall(&fact, theme::SMALL, theme::FACE);
            if height + more > room.height {
                break;
            }
            height += more;
        }
        height
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
        let mut told = column![].spacing(LINE_GAP).width(Fill);
        if let Some(answer) = answers.get(self.chosen) {
            let name = text(words.answer_line(answer)).size(NAME).font(theme::BOLD);
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
        let mut lines = column![].spacing(LINE_GAP).width(Fill);
        if let Some(complaint) = &self.complaint {
            let complaint = complaint.shown().to_owned();
            lines = lines.push(widgets::notice_of(complaint, theme::SMALL));
        }
        let Some(answer) = answers.get(self.chosen) else {
            return lines.into();
        };
        for caution in cautions_of(question, answer, words) {
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
        let mut told = column![].spacing(LINE_GAP).width(Fill);
        let Some(answer) = answers.get(self.chosen) else {
            return told.into();
        };
        for (fact, is_its_own) in self.facts_of(question, answers, answer, words) {
            let fact = text(fact).size(theme::SMALL);
            told = told.push(if is_its_own {
                fact
            } else {
                fact.style(theme::quiet)
            });
        }
        told.into()
    }

    /// The figures of a knot, and what is to be said of all that are found; whether each is of this one.
    fn facts_of(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        answer: &FitAnswer,
        words: &Words,
    ) -> Vec<(String, bool)> {
        let facts = words.answer_facts(answer, self.prices).into_iter();
        let mut told: Vec<(String, bool)> = facts.map(|fact| (fact, true)).collect();
        let corrected = words.fit_corrected(question, answers);
        told.extend(corrected.map(|note| (note, false)));
        told.push((words.fit_times(question), false));
        if question.tube.is_none() && !question.in_place {
            told.push((words.plainly("plan-without-tube", &[]), false));
        }
        told
    }
}

/// What to take care of with a knot.
fn cautions_of(question: &FitQuestion, answer: &FitAnswer, words: &Words) -> Vec<String> {
    let cautions = question.cautions(answer).into_iter();
    let cautions = cautions.map(|caution| words.caution(&caution).to_string());
    cautions
        .chain([words.choice_caution().to_string()])
        .collect()
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
