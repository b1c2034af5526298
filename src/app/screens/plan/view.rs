//! What the plan screen looks like: the form on the left, the knots on the right.

use iced::widget::{
    button, column, container, progress_bar, responsive, row, scrollable, text, text_input,
};
use iced::{Element, Fill, FillPortion, Size};

use super::fields::id;
use super::filters::PlanFilter;
use super::findings::Findings;
use super::form::{Message, State};
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::SetupField;
use crate::words::Words;

/// Below this width the knots stand under the form.
const NARROW: f32 = 760.0;
/// Knots in sight at once, at the most.
const MOST_SHOWN: usize = 6;
/// Height of a knot on the screen, with the gap below it.
const KNOT_HEIGHT: f32 = 136.0;
/// Height of the bar that shows how far a knot is opened.
const BAR: f32 = 6.0;

impl State {
    /// The screen. `notices` stand above everything else.
    pub(super) fn page<'a>(
        &'a self,
        words: &'a Words,
        notices: Vec<String>,
    ) -> Element<'a, Message> {
        let mut page = widgets::page_below(notices, 12);
        if let Some(error) = &self.presets_trouble {
            page = page.push(widgets::notice(words.presets_failed(error)));
        }
        page.push(responsive(move |size| {
            let (form, knots) = (self.fields(words), self.knots(words));
            if size.width < NARROW {
                column![
                    container(form).height(FillPortion(3)),
                    container(knots).height(FillPortion(2)),
                ]
                .spacing(12)
                .into()
            } else {
                row![
                    container(form).width(FillPortion(9)),
                    container(knots).width(FillPortion(11)),
                ]
                .spacing(36)
                .into()
            }
        }))
        .push(widgets::quiet(words.plainly("plan-keys", &[]), theme::BODY))
        .into()
    }

    fn fields<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let object = if self.is_girth {
            "plan-girth"
        } else {
            "plan-object"
        };
        let pairs = [
            [
                (SetupField::Object, object),
                (SetupField::Cover, "plan-cover"),
            ],
            [
                (SetupField::Cord, "plan-cord"),
                (SetupField::Have, "plan-have"),
            ],
            [
                (SetupField::Tube, "plan-tube"),
                (SetupField::Rows, "plan-rows"),
            ],
            [
                (SetupField::Pin, "plan-pin"),
                (SetupField::Thread, "plan-thread"),
            ],
        ];
        let mut form = column![heading(words.plainly("plan-heading", &[]))].spacing(14);
        let mut is_wrong = false;
        for pair in pairs {
            form = form
                .push(row(pair.map(|(field, label)| self.field(field, label, words))).spacing(18));
            // Below both, where it has room.
            for (field, _) in pair {
                if let Some(sentence) = self.wrong_in(field, words) {
                    is_wrong = true;
                    form = form.push(
                        text(sentence.to_string())
                            .size(theme::SMALL)
                            .style(theme::alert),
                    );
                }
            }
        }
        if !is_wrong {
            let hint = words.plainly("plan-hint", &[]);
            form = form.push(widgets::quiet(hint, theme::SMALL));
        }
        scrollable(form).spacing(8).width(Fill).height(Fill).into()
    }

    fn field<'a>(&'a self, field: SetupField, label: &str, words: &Words) -> Element<'a, Message> {
        let input = text_input("", self.form.text(self.said_as(field)))
            .id(id(field))
            .size(26)
            .padding(7)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Take);
        let mut part = column![text(words.plainly(label, &[])).size(theme::SMALL), input]
            .spacing(4)
            .width(Fill);
        let choices = match field {
            SetupField::Object => vec![
                words.plainly("plan-measure-across", &[]),
                words.plainly("plan-measure-round", &[]),
            ],
            _ => self.picks(field),
        };
        if !choices.is_empty() {
            let chips = choices.into_iter().enumerate().map(|(index, name)| {
                let is_taken = match field {
                    SetupField::Object => self.is_girth == (index == 1),
                    _ => self.form.text(field) == name,
                };
                button(text(name).size(theme::SMALL))
                    .padding([2, 10])
                    .style(theme::pressable(is_taken))
                    .on_press(Message::Picked(field, index))
                    .into()
            });
            part = part.push(row(chips).spacing(8).wrap());
        }
        part.into()
    }

    fn knots<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let mut side = column![heading(words.plainly("plan-answers", &[]))].spacing(12);
        let chips = PlanFilter::ALL.into_iter().map(|filter| {
            let choice = self.filters.choice(filter);
            let chip = words.filter(filter.name(), filter.key(), choice);
            button(text(chip).size(theme::SMALL))
                .padding([2, 10])
                .style(theme::pressable(choice != 0))
                .on_press(Message::Filter(filter))
                .into()
        });
        side = side.push(row(chips).spacing(8).wrap());
        match &self.found {
            Findings::Knots(question, answers) => {
                let notes = words.fit_corrected(question, answers);
                for note in notes
                    .into_iter()
                    .chain(answers.first().map(|_| words.fit_times(question)))
                {
                    side = side.push(widgets::quiet(note, theme::SMALL));
                }
                if let Some(complaint) = &self.complaint {
                    side = side.push(widgets::notice(complaint.shown()));
                }
                if question.tube.is_none() && !answers.is_empty() {
                    let hint = words.plainly("plan-without-tube", &[]);
                    side = side.push(widgets::quiet(hint, theme::SMALL));
                }
                side = side.push(responsive(move |size| {
                    self.picture
                        .below(size, |size| self.list(answers, size, words))
                }));
            }
            // The sentence stands beside its field.
            Findings::Wrong(_) => {}
            Findings::Wanting(_) | Findings::Nothing(_) => {
                side = side.push(text(self.sentence(words).to_string()).size(28));
            }
        }
        side.into()
    }

    /// As many knots as there is room for, the chosen one among them.
    fn list<'a>(
        &'a self,
        answers: &'a [FitAnswer],
        size: Size,
        words: &Words,
    ) -> Element<'a, Message> {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate"
        )]
        let room = ((size.height - 30.0) / KNOT_HEIGHT).max(1.0) as usize;
        let room = room.min(MOST_SHOWN);
        let first = (self.chosen + 1).saturating_sub(room);
        let mut list = column![].spacing(10);
        for (index, answer) in answers.iter().enumerate().skip(first).take(room) {
            let [shape, work] = words.answer_facts(answer, self.prices);
            let face = column![
                text(words.answer_line(answer)).size(30).font(theme::BOLD),
                openness(answer),
                text(shape).size(theme::BODY),
                text(work).size(theme::BODY),
            ]
            .spacing(2);
            let is_chosen = index == self.chosen;
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
        if !answers.is_empty() {
            let last = (first + room).min(answers.len());
            let count = words.answers_shown(first + 1, last, answers.len());
            list = list.push(widgets::quiet(count, theme::SMALL));
        }
        list.into()
    }
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

fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
