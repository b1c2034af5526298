//! What the form of the start screen looks like: the numbers of a knot, what is wrong with them at their
//! fields, and what the knot comes to.

use iced::widget::{button, column, container, mouse_area, row, text, text_input};
use iced::{Bottom, Element, Fill};

use super::fields::text_slot;
use super::{Message, StartField, State, TiedOn, id};
use crate::app::{theme, widgets};
use crate::guide::{AtOnce, Plan, Script};
use crate::knot::{Hand, KnotError, Quantity, Rim};
use crate::words::Words;

impl State {
    /// A knot by its numbers, and what it comes to, row by row.
    pub(super) fn form<'a>(&'a self, words: &Words) -> Vec<Element<'a, Message>> {
        let numbers = [
            (StartField::Leads, "start-leads"),
            (StartField::Bights, "start-bights"),
            (StartField::Passes, "start-passes"),
        ];
        let numbers =
            numbers.map(|(field, label)| self.text_field(field, words.plainly(label, &[])));
        // Where the ways stand above it.
        let or = self
            .focus
            .is_none()
            .then(|| text(words.plainly("start-by-numbers", &[])).size(theme::BODY));
        let mut form: Vec<Element<'a, Message>> = or.into_iter().map(Into::into).collect();
        form.push(row(numbers).spacing(20).align_y(Bottom).into());
        form.push(self.wrong_in(&NUMBERS, words));
        let begin = container(self.begin_button(words)).id(id(StartField::Begin));
        form.push(begin.into());
        form.push(self.facts(words));
        let choices = [
            (StartField::Hand, "start-hand", hand_label(self.hand)),
            (StartField::Side, "start-side", self.side_label()),
        ];
        let weave = self.text_field(StartField::Weave, words.plainly("start-weave", &[]));
        let choices = choices.map(|(field, label, value)| {
            self.choice(field, words.plainly(label, &[]), words.plainly(value, &[]))
        });
        let woven = row([weave].into_iter().chain(choices));
        form.push(woven.spacing(20).align_y(Bottom).into());
        form.push(self.wrong_in(&[StartField::Weave], words));
        if self.focus == Some(StartField::Weave) {
            form.push(widgets::quiet(
                words.plainly("start-weave-hint", &[("example", &self.row_code())]),
                theme::SMALL,
            ));
        }
        let nests = [
            (StartField::Nested, "start-nested"),
            (StartField::Lands, "start-lands"),
        ];
        let nests = nests.map(|(field, label)| self.text_field(field, words.plainly(label, &[])));
        let tied = self.choice(
            StartField::RoundHand,
            words.plainly("start-tied", &[]),
            words.plainly(
                if self.tied_on == TiedOn::Hand {
                    "start-tied-hand"
                } else {
                    "start-tied-tube"
                },
                &[],
            ),
        );
        let nested = row(nests.into_iter().chain([tied]));
        form.push(nested.spacing(20).align_y(Bottom).into());
        let last = [StartField::Nested, StartField::Lands, StartField::RoundHand];
        form.push(self.wrong_in(&last, words));
        form
    }

    /// The button that begins the knot that the form names.
    pub(super) fn begin_button<'a>(&self, words: &Words) -> Element<'a, Message> {
        let is_chosen = self.focus == Some(StartField::Begin)
            || self.focus.is_none() && self.waiting.is_empty();
        button(
            text(words.plainly("start-begin", &[]))
                .size(28)
                .font(theme::BOLD),
        )
        .padding([10, 24])
        .style(theme::pressable(is_chosen))
        .on_press(Message::Begin)
        .into()
    }

    /// What that knot comes to, or that it is asked back; what is wrong stands at its field.
    pub(super) fn facts<'a>(&self, words: &Words) -> Element<'a, Message> {
        let facts = match (self.plan(), &self.asked_back) {
            (Ok(_), Some(asks)) => text(asks.shown().to_owned()).style(theme::alert),
            (Ok(plan), None) => text(words.choice(&Script::new(plan, AtOnce::default()))),
            (Err(_), _) => text(""),
        };
        facts.size(theme::SMALL).into()
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

    /// The row code of what is woven where the tyer says nothing of the weave, a letter for each row; as
    /// much of a long one as can be taken in.
    fn row_code(&self) -> String {
        let [leads, bights, passes, _, nested, lands] = &self.texts;
        let unsaid = Plan::read_nested([leads, bights, nested, lands], passes, "");
        // While the numbers name no knot there is an example.
        let example = || Plan::read("5", "7", "1", "");
        let Ok(plan) = unsaid.or_else(|_| example()) else {
            return String::new();
        };
        let knot = plan.knot();
        let letter = |row| {
            if knot.weave().rising_over(row) {
                'o'
            } else {
                'u'
            }
        };
        let letters = (1..=knot.rows()).map(letter);
        if knot.rows() > LONGEST_CODE {
            letters.take(LONGEST_CODE.into()).chain(['…']).collect()
        } else {
            letters.collect()
        }
    }

    fn text_field(&self, field: StartField, label: String) -> Element<'_, Message> {
        let typed = text_slot(field).map_or("", |slot| self.texts[slot].as_str());
        // What is woven where nothing is said stands there until something is.
        let usual = match field {
            StartField::Weave if typed.is_empty() => self.row_code(),
            _ => String::new(),
        };
        let input = text_input(&usual, typed)
            .id(id(field))
            .size(28)
            .padding(8)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Begin);
        // A click on its name, or between the two, is one into the field.
        mouse_area(labelled(label, input.into()))
            .on_release(Message::Pointed(field))
            .into()
    }

    fn choice(&self, field: StartField, label: String, value: String) -> Element<'_, Message> {
        let switch = button(text(value).size(theme::BODY).width(Fill))
            // As high as a field beside it.
            .padding([12, 9])
            .style(theme::pressable(self.focus == Some(field)))
            .on_press(Message::Switched(field));
        container(labelled(label, switch.into()))
            .id(id(field))
            .into()
    }
}

/// The most letters of a row code that stand in its field, and as an example below it.
const LONGEST_CODE: u16 = 12;

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
        KnotError::NotRoundHand { .. } => StartField::RoundHand,
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

#[cfg(test)]
mod tests {
    use super::super::ways::Typed;
    use super::*;

    /// A form in which leads, bights, passes and nested bights stand.
    fn form([leads, bights, passes, nested]: [&str; 4]) -> State {
        let texts = [leads, bights, passes, "", nested, ""].map(str::to_owned);
        State::new(Typed {
            texts,
            ..Typed::default()
        })
    }

    #[test]
    fn the_code_in_the_empty_field_is_of_the_knot_that_is_begun() {
        let mut begun_with_under = 0;
        for leads in ["3", "4", "5", "6", "8", "11"] {
            for bights in ["3", "5", "7", "9"] {
                for (passes, nested) in [("1", ""), ("3", ""), ("1", "2")] {
                    let state = form([leads, bights, passes, nested]);
                    let Ok(plan) = state.plan() else {
                        continue;
                    };
                    let code = state.row_code();
                    if plan.knot().rows() > LONGEST_CODE {
                        assert!(code.ends_with('…'), "{code}");
                        continue;
                    }
                    let mut typed = form([leads, bights, passes, nested]);
                    typed.texts[3].clone_from(&code);
                    let (typed, usual) = (typed.plan().unwrap(), plan.knot());
                    let over = |row| usual.weave().rising_over(row);
                    let alike = (1..=usual.rows())
                        .all(|row| typed.knot().weave().rising_over(row) == over(row));
                    assert!(alike, "{leads} {bights} {passes} {nested}: {code}");
                    assert_eq!(typed.laying().tucks(), plan.laying().tucks());
                    // What is told below of tucks begun with over says the same.
                    let is_other = plan.tucks_begun_with_over().is_some();
                    assert_eq!(is_other, code.starts_with('u'), "{code}");
                    begun_with_under += usize::from(is_other);
                }
            }
        }
        assert!(begun_with_under > 5);
        assert_eq!(form(["5", "7", "1", ""]).row_code(), "uouo");
    }

    #[test]
    fn while_the_numbers_name_no_knot_there_is_an_example() {
        assert_eq!(form(["", "7", "1", ""]).row_code(), "uouo");
    }
}
