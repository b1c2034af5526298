//! What the start screen looks like: what waits and the form, and beside them the knot: of the tie
//! that waits as it lies now, of the form as it will be.

use iced::widget::{button, column, mouse_area, responsive, row, scrollable, text, text_input};
use iced::{Center, Element, Fill};

use super::{FORM, Message, StartField, State, id, text_slot};
use crate::app::widgets::key_bar::keycap;
use crate::app::{theme, widgets};
use crate::guide::{AtOnce, Script};
use crate::knot::{Hand, KnotError, Quantity, Rim};
use crate::words::{Words, shown_name};

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let page = widgets::page(14);
        page.push(responsive(move |room| {
            self.picture.next_to(room, self.parts(words))
        }))
        .into()
    }

    /// The first tie, with one way to begin it and a quiet way past it.
    fn welcome<'a>(words: &Words) -> Element<'a, Message> {
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
            .on_press(Message::PastFirst);
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
            .height(Fill)
            .into()
    }

    /// What waits, and the form.
    fn parts<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        if self.is_new {
            return Self::welcome(words);
        }
        let mut parts = column![].spacing(20);
        if !self.waiting.is_empty() {
            parts = parts.push(self.ties(words));
        }
        scrollable(parts.push(self.form(words)))
            .id(FORM)
            .spacing(8)
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn ties<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        let mut list = column![heading(words.plainly("start-waiting", &[]))].spacing(14);
        for (index, waiting) in self.waiting.iter().enumerate() {
            let progress = words.tie_progress(waiting.progress, waiting.days);
            let key = match index {
                0 => words.plainly("start-take-up", &[]),
                1..=8 => {
                    let digit = (index + 1).to_string();
                    words.plainly("start-take-up-digit", &[("key", &digit)])
                }
                _ => words.plainly("start-take-up-plain", &[]),
            };
            let mut face = column![].spacing(4);
            if !waiting.tie.name.trim().is_empty() {
                face = face.push(
                    text(shown_name(&waiting.tie.name))
                        .size(28)
                        .font(theme::BOLD),
                );
            }
            let face = face
                .push(
                    text(words.tie_line(&waiting.tie.plan))
                        .size(28)
                        .font(theme::BOLD),
                )
                .push(text(progress).size(theme::SMALL).style(theme::quiet))
                .push(text(key).size(theme::BODY));
            list = list.push(
                button(face)
                    .width(Fill)
                    .padding(14)
                    .style(theme::pressable(index == 0 && self.focus.is_none()))
                    .on_press(Message::TakeUp(index)),
            );
        }
        list.into()
    }

    fn form<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        // First what a first knot may be, or what is to be covered; then the numbers, for those who
        // know them.
        let ways = [
            ("start-course", Message::Course),
            ("start-plan", Message::Plan),
        ];
        let ways = row(ways.map(|(label, message)| {
            button(text(words.plainly(label, &[])).size(theme::BODY))
                .padding([10, 14])
                .style(theme::pressable(false))
                .on_press(message)
                .into()
        }));
        let numbers = [
            (StartField::Leads, "start-leads"),
            (StartField::Bights, "start-bights"),
            (StartField::Passes, "start-passes"),
        ];
        let numbers =
            numbers.map(|(field, label)| self.text_field(field, words.plainly(label, &[])));
        let mut form = column![
            heading(words.plainly("start-heading", &[])),
            ways.spacing(12).wrap(),
            text(words.plainly("start-by-numbers", &[])).size(theme::BODY),
            row(numbers).spacing(20),
            self.wrong_in(&NUMBERS, words),
        ]
        .spacing(10);
        let asked_back = self.asked_back.as_ref();
        let facts = match self.plan() {
            Ok(_) if asked_back.is_some() => {
                let asks = asked_back.map(|asks| asks.shown().to_owned());
                text(asks.unwrap_or_default()).style(theme::alert)
            }
            Ok(plan) => text(words.choice(&Script::new(plan, AtOnce::default()))),
            // It stands at its field.
            Err(_) => text(""),
        };
        let is_chosen = self.focus == Some(StartField::Begin)
            || self.focus.is_none() && self.waiting.is_empty();
        let begin = button(
            text(words.plainly("start-begin", &[]))
                .size(28)
                .font(theme::BOLD),
        )
        .padding([10, 24])
        .style(theme::pressable(is_chosen))
        .on_press(Message::Begin);
        form = form.push(begin).push(facts.size(theme::SMALL));
        let choices = [
            (StartField::Hand, "start-hand", hand_label(self.hand)),
            (StartField::Side, "start-side", self.side_label()),
        ];
        let weave = self.text_field(StartField::Weave, words.plainly("start-weave", &[]));
        form = form.push(
            row([weave]
                .into_iter()
                .chain(choices.map(|(field, label, value)| {
                    self.choice(field, words.plainly(label, &[]), words.plainly(value, &[]))
                })))
            .spacing(20),
        );
        form = form.push(self.wrong_in(
            &[StartField::Weave, StartField::Nested, StartField::Lands],
            words,
        ));
        let nests = [
            (StartField::Nested, "start-nested"),
            (StartField::Lands, "start-lands"),
        ];
        let nests = nests.map(|(field, label)| self.text_field(field, words.plainly(label, &[])));
        form = form.push(row(nests).spacing(20));
        if self.focus == Some(StartField::Weave) {
            form = form.push(widgets::quiet(
                words.plainly("start-weave-hint", &[("example", &self.row_code())]),
                theme::SMALL,
            ));
        }
        form.into()
    }

    /// The side is told by the rim it lies towards: left and right of a cord turn about with every leg.
    fn side_label(&self) -> &'static str {
        if self.side.turns_inside(Rim::Top, self.hand) {
            "start-side-bottom"
        } else {
            "start-side-top"
        }
    }

    /// What is wrong in any of these fields, below their row: its place is there whether anything is
    /// wrong or not.
    fn wrong_in<'a>(&self, fields: &[StartField], words: &Words) -> Element<'a, Message> {
        let wrong = self.plan().err();
        let here = wrong.filter(|error| fields.contains(&field_of(error)));
        widgets::wrong(here.map(|error| words.knot_error(&error).into()))
    }

    /// A row code for the leads that stand in the form: a letter for each row.
    fn row_code(&self) -> String {
        let leads = Quantity::Leads.parse(&self.texts[0]);
        let rows = usize::from(leads.unwrap_or(5).clamp(2, 9)) - 1;
        "ou".chars().cycle().take(rows).collect()
    }

    fn text_field(&self, field: StartField, label: String) -> Element<'_, Message> {
        let typed = text_slot(field).map_or("", |slot| self.texts[slot].as_str());
        let input = text_input("", typed)
            .id(id(field))
            .size(28)
            .padding(8)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Begin);
        let input = mouse_area(input).on_release(Message::Pointed(field));
        labelled(label, input.into())
    }

    fn choice(&self, field: StartField, label: String, value: String) -> Element<'_, Message> {
        let switch = button(text(value).size(theme::BODY).width(Fill))
            .padding(8)
            .style(theme::pressable(self.focus == Some(field)))
            .on_press(Message::Switched(field));
        labelled(label, switch.into())
    }
}

/// The numbers of the form, in one row.
const NUMBERS: [StartField; 3] = [StartField::Leads, StartField::Bights, StartField::Passes];

/// The field that an error is about.
const fn field_of(error: &KnotError) -> StartField {
    match error {
        KnotError::NotANumber { quantity, .. } | KnotError::OutOfRange { quantity, .. } => {
            match quantity {
                Quantity::Leads => StartField::Leads,
                Quantity::Bights => StartField::Bights,
                Quantity::Passes => StartField::Passes,
                Quantity::Nested => StartField::Nested,
                Quantity::Lands => StartField::Lands,
            }
        }
        _ => StartField::Weave,
    }
}

fn hand_label(hand: Hand) -> &'static str {
    match hand {
        Hand::Right => "start-hand-right",
        Hand::Left => "start-hand-left",
    }
}

/// A part of the form under its name.
fn labelled(label: String, part: Element<'_, Message>) -> Element<'_, Message> {
    column![text(label).size(theme::SMALL), part]
        .spacing(4)
        .width(Fill)
        .into()
}

fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
