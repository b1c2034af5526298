//! What the form of the start screen comes to: which knot it names, and whether that can be begun.

use super::fields::FIELDS;
use super::{Action, StartField, State, TiedOn};
use crate::bench::TyingPace;
use crate::guide::{AtOnce, Plan, Script};
use crate::knot::{Hand, KnotError, Side};
use crate::picture::Subject;
use crate::session::first_tie;
use crate::shelf::Shelved;
use crate::words::{Sentence, Words};

/// More legs, or more leads, than anybody ties in a few evenings: asked back, as they may be a slip of
/// the hand.
const MANY_LEGS: u32 = 200;
const MANY_LEADS: u16 = 30;

impl State {
    /// Puts the focus on the next part of the form, or so many further.
    pub(super) fn move_focus(&mut self, by: usize) -> Action {
        self.is_new = false;
        let here = FIELDS.iter().position(|field| Some(*field) == self.focus);
        let next = match here {
            Some(here) => (here + by) % FIELDS.len(),
            None if by == 1 => 0,
            None => FIELDS.len() - 1,
        };
        self.focus = Some(FIELDS[next]);
        self.show_knot();
        Action::Focus(self.focus)
    }

    pub(super) fn switch(&mut self, field: StartField) {
        match field {
            StartField::Hand => {
                self.hand = match self.hand {
                    Hand::Right => Hand::Left,
                    Hand::Left => Hand::Right,
                }
            }
            StartField::Side => {
                self.side = match self.side {
                    Side::Right => Side::Left,
                    Side::Left => Side::Right,
                }
            }
            StartField::RoundHand => {
                self.tied_on = self.tied_on.other();
                self.asked_back = None;
            }
            _ => {}
        }
        self.show_knot();
    }

    /// Another knot is named.
    pub(super) fn changed(&mut self) {
        self.asked_back = None;
        if self.plan().is_ok() {
            self.readable.clone_from(&self.texts);
        }
        self.show_knot();
    }

    /// What the form says of the knot that it names, for it to be a slip of the hand rather than a
    /// wish: a knot of many evenings.
    pub(super) fn huge(plan: &Plan, words: &Words) -> Option<Sentence> {
        let legs = plan.laying().legs();
        let is_huge = legs > MANY_LEGS || plan.knot().leads() > MANY_LEADS;
        is_huge.then(|| words.huge_knot(plan, legs))
    }

    /// The first tie of the course, begun.
    pub(super) fn first(words: &Words) -> Action {
        match first_tie() {
            Ok(tie) => Action::First(Box::new(tie)),
            Err(error) => Action::Complain(words.knot_error(&error).into()),
        }
    }

    pub(super) fn begin(&mut self, words: &Words) -> Action {
        match self.plan() {
            Ok(plan) => {
                let asks = Self::huge(&plan, words).filter(|_| self.asked_back.is_none());
                match asks {
                    Some(asks) => {
                        self.asked_back = Some(asks.clone());
                        Action::Complain(asks.into())
                    }
                    None => Action::Begin(Box::new(plan)),
                }
            }
            Err(error) => {
                let sentence = words.knot_error(&error);
                Action::Complain(sentence.into())
            }
        }
    }

    /// The plan that the form names.
    pub(super) fn plan(&self) -> Result<Plan, KnotError> {
        let [leads, bights, passes, weave, nested, lands] = &self.texts;
        let plan = Plan::read_nested([leads, bights, nested, lands], passes, weave)?;
        let plan = plan.with_hand(self.hand).with_side(self.side);
        match self.tied_on {
            TiedOn::Hand => plan.with_round_hand(),
            TiedOn::Tube => Ok(plan),
        }
    }
}

/// What there is to see of a tie that waits.
pub(super) fn as_it_lies(waiting: &Shelved) -> Option<Subject> {
    let script = Script::new(waiting.tie.plan.clone(), AtOnce::default());
    let step = script.step(waiting.place)?;
    Some(Subject::of(&script, &step))
}

/// Minutes that the rest of a tie takes at a pace, or else at a usual one.
pub(super) fn minutes_left(tie: &Shelved, pace: Option<TyingPace>) -> f64 {
    let script = Script::new(tie.tie.plan.clone(), AtOnce::default());
    script.minutes_left(tie.place, pace.unwrap_or(TyingPace::USUAL))
}
