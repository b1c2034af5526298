//! What the plan screen tells who only hears, besides what is chosen: what was typed, and what it comes
//! to, once typing rests.

use super::findings::Findings;
use super::form::State;
use crate::words::{Remark, Spoken, Words};

impl State {
    /// The screen, the field in turn, and what the form has come to.
    pub(super) fn say_here(&self, words: &Words) -> Spoken {
        words
            .remark(Remark::PlanSay)
            .then(&self.say_field(words))
            .then(&self.say_found(words))
    }

    /// What stands in the field that was typed into, and what came of it. Where the knots are still being
    /// looked for, they are told when they are found.
    pub(super) fn say_typed(&mut self, words: &Words) -> Spoken {
        let field = self.say_field(words);
        let is_looking = matches!(self.found, Findings::Knots(..)) && self.answered != self.asked;
        self.tells_found = is_looking;
        if is_looking {
            return field;
        }
        field.then(&self.say_found(words))
    }

    /// What comes of the knot in mind, where there is one; the chosen knot among those found, or why there
    /// is none.
    pub(super) fn say_found(&self, words: &Words) -> Spoken {
        let mut said = self.say_known(words);
        if self.known.are_others && !self.known.fits.is_empty() {
            said = said.then(words.notice("known-others", &[]).spoken());
        }
        said.then(&match &self.found {
            Findings::Knots(question, answers) => self.say_chosen(question, answers, words),
            _ => self.sentence(words).into(),
        })
    }

    /// What comes of the knot in mind, in each number of passes.
    fn say_known(&self, words: &Words) -> Spoken {
        let known = self.known.fits.iter();
        let said = known.map(|known| Spoken::from(words.known_fit(known, self.cover())));
        said.collect()
    }
}
