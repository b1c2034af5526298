//! The knots of the plan screen: what narrows the list, and those that fit, the chosen one in full.

use iced::widget::{Column, button, column, progress_bar, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, Size};

use super::filters::PlanFilter;
use super::findings::Findings;
use super::form::{Message, State};
use super::pictures::{MORE, MOST_SHOWN};
use super::view::heading;
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// The widget that the knots are scrolled in.
pub(super) const LIST: &str = "plan-knots";
/// Height of a knot that is not chosen, with the gap below it.
const KNOT_HEIGHT: f32 = 104.0;
/// Height of the chosen one without what it comes to, with the gap below it.
const CHOSEN_HEIGHT: f32 = 80.0;
/// Height of the heading of a section, with the gap below it.
const SECTION_HEIGHT: f32 = 35.0;
/// Height of the line below them that counts them.
const COUNT_HEIGHT: f32 = 30.0;
/// Height of a line, in sizes of its type.
const LINE: f32 = 1.3;
/// Width of a letter, in sizes of its type: hardly one of a fact is wider on average.
const LETTER: f32 = 0.52;
/// What a knot needs beside its text: its picture, and left and right together.
const PADDING: f32 = 150.0;
/// Height of the bar that shows how far a knot is opened.
const BAR: f32 = 6.0;

impl State {
    /// What narrows the list, and below it the knots, or what stands in their place; or the knots first,
    /// where there is little room.
    pub(super) fn knots<'a>(&'a self, knots_first: bool, words: &'a Words) -> Element<'a, Message> {
        let mut side = column![].spacing(12);
        if !knots_first {
            side = side
                .push(heading(words.plainly("plan-answers", &[])))
                .push(self.chips(words));
        }
        let Findings::Knots(question, answers) = &self.found else {
            // What is wrong stands beside its field.
            if !matches!(self.found, Findings::Wrong(_)) {
                side = side.push(text(self.sentence(words).to_string()).size(28));
            }
            if knots_first {
                side = side.push(self.chips(words));
            }
            return scrolled(side);
        };
        if let Some(complaint) = &self.complaint {
            side = side.push(widgets::notice(complaint.shown()));
        }
        side.push(responsive(move |size| {
            self.pictures.chosen.below(size, |size| {
                let list = self.list(question, answers, size, words);
                scrolled(if knots_first {
                    list.push(self.chips(words))
                } else {
                    list
                })
            })
        }))
        .into()
    }

    fn chips<'a>(&self, words: &Words) -> Element<'a, Message> {
        let chips = PlanFilter::ALL.into_iter().map(|filter| {
            let choice = self.filters.choice(filter);
            let chip = words.filter(filter.name(), filter.key(), choice);
            button(text(chip).size(theme::SMALL))
                .padding([2, 10])
                .style(theme::pressable(choice != 0))
                .on_press(Message::Filter(filter))
                .into()
        });
        row(chips).spacing(8).wrap().into()
    }

    /// As many knots as there is room for, the chosen one among them, and what holds for all of them.
    fn list<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        size: Size,
        words: &Words,
    ) -> Column<'a, Message> {
        let mut list = column![].spacing(10);
        let Some(chosen) = answers.get(self.chosen) else {
            return list;
        };
        let facts = self.facts(question, chosen, words);
        let room = size.height
            - COUNT_HEIGHT
            - CHOSEN_HEIGHT
            - SECTION_HEIGHT
            - height(&facts, size.width);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate"
        )]
        // Of the others every second has a heading, where they have most.
        let others = (room / (KNOT_HEIGHT + SECTION_HEIGHT / 2.0)).max(0.0) as usize;
        let others = others.min(MOST_SHOWN - 1);
        let first = self.chosen.saturating_sub(others);
        let mut section = None;
        for (index, answer) in answers
            .iter()
            .enumerate()
            .skip(first)
            .take(others + 1 + MORE)
        {
            if section != Some(answer.section) {
                section = Some(answer.section);
                let line = words.fit_section(question, answer.section);
                list = list.push(text(line).size(theme::SMALL).font(theme::BOLD));
            }
            let is_chosen = index == self.chosen;
            let mut face = column![
                text(words.answer_line(answer)).size(30).font(theme::BOLD),
                openness(answer),
            ]
            .spacing(2);
            if is_chosen {
                for (line, is_caution) in facts.clone() {
                    let line = text(line).size(theme::SMALL);
                    face = face.push(if is_caution {
                        line.style(theme::alert)
                    } else {
                        line
                    });
                }
            } else {
                face = face.push(text(words.answer_in_short(answer)).size(theme::SMALL));
            }
            let picture = self.pictures.small(index);
            let face = row![].push(picture).push(face).spacing(14).align_y(Center);
            list = list.push(
                button(face)
                    .width(Fill)
                    .padding([8, 14])
                    .style(theme::pressable(is_chosen))
                    .on_press(if is_chosen {
                        Message::Take
                    } else {
                        Message::Choose(index)
                    }),
            );
        }
        let last = (first + others + 1 + MORE).min(answers.len());
        let mut notes = vec![words.answers_shown(first + 1, last, answers.len())];
        notes.extend(words.fit_corrected(question, answers));
        notes.push(words.fit_times(question));
        if question.tube.is_none() {
            notes.push(words.plainly("plan-without-tube", &[]));
        }
        let quiet = |note| widgets::quiet(note, theme::SMALL);
        list.extend(notes.into_iter().map(quiet))
    }

    /// What the chosen knot comes to, line by line, and whether it is a caution, which stands out.
    fn facts(
        &self,
        question: &FitQuestion,
        answer: &FitAnswer,
        words: &Words,
    ) -> Vec<(String, bool)> {
        let facts = words.answer_facts(answer, self.prices);
        let facts = facts.into_iter().map(|fact| (fact, false));
        let cautions = question.cautions(answer).into_iter();
        let cautions = cautions.map(|caution| words.caution(&caution).to_string());
        let cautions = cautions.chain([words.choice_caution().to_string()]);
        facts
            .chain(cautions.map(|caution| (caution, true)))
            .collect()
    }
}

fn scrolled(side: Column<'_, Message>) -> Element<'_, Message> {
    scrollable(side)
        .id(LIST)
        .spacing(8)
        .width(Fill)
        .height(Fill)
        .into()
}

/// About how high the lines are when they are broken to a width.
fn height(lines: &[(String, bool)], width: f32) -> f32 {
    let one = |(line, _): &(String, bool)| {
        #[expect(clippy::cast_precision_loss, reason = "a line of text")]
        let letters = line.chars().count() as f32;
        let lines = (letters * LETTER * theme::SMALL / (width - PADDING).max(1.0)).ceil();
        lines * theme::SMALL * LINE
    };
    lines.iter().map(one).sum()
}

/// Where in its range of widths a knot is drawn up to: an empty bar for tight, a full one for open.
fn openness<'a>(answer: &FitAnswer) -> Element<'a, Message> {
    #[expect(clippy::cast_possible_truncation, reason = "a bar needs no more")]
    let share = answer.range.openness(answer.shape.width) as f32;
    progress_bar(0.0..=1.0, share)
        .girth(BAR)
        .style(theme::progress)
        .into()
}
