//! What the start screen says of itself.

use super::fields::{StartField, text_slot};
use super::{State, TiedOn};
use crate::guide::{AtOnce, Script};
use crate::knot::{Hand, Rim};
use crate::words::{Remark, Spoken, Words};

impl State {
    /// What is said when the screen appears.
    pub(super) fn say(&self, words: &Words) -> Spoken {
        if self.is_new {
            return words.remark(Remark::FirstStartSay);
        }
        match (self.waiting.first(), self.plan()) {
            (Some(first), _) => words.say_opening(&first.tie.plan, Some(first.progress)),
            (None, Ok(plan)) => words.say_opening(&plan, None),
            (None, Err(error)) => words.knot_error(&error).into(),
        }
    }

    /// The part of the form that has the focus, as it is said: name, value, what can be
    /// pressed. What the knot comes to is said on the way to beginning it.
    pub(super) fn say_focus(&self, words: &Words) -> Spoken {
        let Some(field) = self.focus else {
            return self.say(words);
        };
        let typed = text_slot(field).map_or("", |slot| self.texts[slot].as_str());
        let choice = match field {
            StartField::Hand if self.hand == Hand::Left => "left",
            StartField::Hand => "right",
            StartField::RoundHand if self.tied_on == TiedOn::Hand => "hand",
            StartField::RoundHand => "tube",
            _ if self.side.turns_inside(Rim::Top, self.hand) => "bottom",
            _ => "top",
        };
        let said = words.say_form_field(field.name(), typed, choice);
        match (field, self.plan()) {
            (StartField::Begin, Ok(plan)) => {
                let facts = words.facts(&Script::new(plan, AtOnce::default()));
                said.then(facts.spoken())
                    .then(words.choice_caution().spoken())
            }
            (StartField::Begin, Err(error)) => said.then(words.knot_error(&error).spoken()),
            _ => said,
        }
    }
}
