//! A new cord in place of one that ran out or frayed, step by step.

use super::Came;
use crate::guide::{JoinStep, Joining, Place, Script};
use crate::knot::Heading;
use crate::picture::{Mark, Subject};
use crate::words::{Shown, Spoken, Words};

/// How far the two are joined.
#[derive(Clone, Debug)]
pub(in crate::session) struct JoinGuide {
    joining: Joining,
    step: JoinStep,
    melts: bool,
}

impl JoinGuide {
    /// Before the first step; none where there is nothing to be joined to.
    pub fn new(script: &Script, place: Place) -> Option<Self> {
        Some(Self {
            joining: script.joining(place)?,
            step: JoinStep::Melts,
            melts: true,
        })
    }

    /// Whether next and back answer a question.
    pub const fn is_question(&self) -> bool {
        matches!(self.step, JoinStep::Melts)
    }

    pub(super) fn press(&mut self, is_next: bool) -> Came {
        if self.is_question() {
            self.melts = is_next;
            self.step = JoinStep::Cut;
            return Came::Asked;
        }
        let step = if is_next {
            self.step.next()
        } else {
            self.step.back()
        };
        match step {
            Some(step) => {
                self.step = step;
                Came::Asked
            }
            None if is_next => Came::Joined(Box::new(self.joining.clone()), self.melts),
            None => Came::Left,
        }
    }

    /// A ring round the crossing that hides both ends.
    pub(super) fn mark(&self, script: &Script, subject: Subject) -> Subject {
        let (leg, row) = (self.joining.leg, self.joining.under.row);
        let rising = match leg.heading() {
            Heading::Rising => Some(leg),
            Heading::Falling => {
                let mut crossed = script.plan().knot().crossings_of(leg);
                crossed.find(|(at, _)| *at == row).map(|(_, rising)| rising)
            }
        };
        match rising {
            Some(rising) => subject.marked(Mark::Crossing(rising.from, row)),
            None => subject,
        }
    }

    pub(super) fn show(&self, words: &Words) -> Shown {
        words.show_join(&self.joining, self.step, self.melts)
    }

    /// Where the tyer is while this goes on.
    pub(super) fn whereabouts(&self, words: &Words) -> Spoken {
        words.say_join_whereabouts(self.step)
    }

    pub(super) fn say(&self, words: &Words) -> Spoken {
        words.say_join(&self.joining, self.step, self.melts)
    }
}
