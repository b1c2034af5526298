//! What stands in the place of a step for a while: a length that is measured, the place of a fault,
//! a new cord that is joined. Each is told like a step, and answered by next and back, or by digits.

mod fault_place;
mod join_guide;
mod measuring;
mod tally;

use super::page::Keys;
use crate::bench::Millimetres;
use crate::guide::{Joining, Place, Script};
use crate::picture::Subject;
use crate::words::{Shown, Spoken, Words};

pub(super) use fault_place::FaultPlace;
pub(super) use join_guide::JoinGuide;
pub(super) use measuring::Measuring;
pub(super) use tally::{Counted, Tally};

/// Something that stands in the place of a step.
#[derive(Clone, Debug)]
pub(super) enum Aside {
    /// What is in the hand is measured.
    Measuring(Measuring),
    /// The place of a fault is named.
    Fault(FaultPlace),
    /// A new cord takes the place of another.
    Joining(JoinGuide),
    /// By what was measured the cord ends in this leg: whether it does.
    CordEnds,
}

/// What a press on it came to.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Came {
    /// A number is another one.
    Counted,
    /// Something else is asked, or told.
    Asked,
    /// It is over, and nothing came of it.
    Left,
    /// Nothing at all was measured.
    NothingMeasured,
    /// So much was measured.
    Measured(Millimetres),
    /// A leg is to be taken back.
    TakeBack,
    /// The cord ends here, and a new one is to be joined.
    CordEnds,
    /// It reaches farther than was measured.
    Reaches,
    /// Two cords are joined, of a kind that melts or does not.
    Joined(Box<Joining>, bool),
}

impl Aside {
    pub(super) fn press(&mut self, is_next: bool, script: &Script, place: Place) -> Came {
        match self {
            Self::Measuring(measuring) => measuring.press(is_next),
            Self::Fault(fault) => fault.press(is_next, script, place),
            Self::Joining(joining) => joining.press(is_next),
            Self::CordEnds if is_next => Came::CordEnds,
            Self::CordEnds => Came::Reaches,
        }
    }

    pub(super) fn type_in(&mut self, key: &str) -> bool {
        match self {
            Self::Measuring(measuring) => measuring.type_in(key),
            Self::Fault(fault) => fault.type_in(key),
            Self::Joining(_) | Self::CordEnds => false,
        }
    }

    pub(super) fn show(&self, script: &Script, words: &Words) -> Shown {
        let words = &words.on(script.plan().rims());
        match self {
            Self::Measuring(measuring) => measuring.show(words),
            Self::Fault(fault) => fault.show(script, words),
            Self::Joining(joining) => joining.show(words),
            Self::CordEnds => words.show_cord_ends(),
        }
    }

    pub(super) fn say(&self, script: &Script, words: &Words) -> Spoken {
        let words = &words.on(script.plan().rims());
        match self {
            Self::Measuring(measuring) => measuring.say(words),
            Self::Fault(fault) => fault.say(script, words),
            Self::Joining(joining) => joining.say(words),
            Self::CordEnds => words.say_cord_ends(),
        }
    }

    pub(super) fn say_briefly(&self, script: &Script, words: &Words) -> Spoken {
        let words = &words.on(script.plan().rims());
        match self {
            Self::Measuring(measuring) => measuring.say_briefly(words),
            Self::Fault(fault) => fault.say_briefly(script, words),
            Self::Joining(joining) => joining.say(words),
            Self::CordEnds => words.say_cord_ends(),
        }
    }

    /// Where the tyer is beside the tie itself, where that is more than a question to be answered.
    pub(super) fn whereabouts(&self, words: &Words) -> Option<Spoken> {
        match self {
            Self::Joining(joining) => Some(joining.whereabouts(words)),
            Self::Measuring(_) | Self::Fault(_) | Self::CordEnds => None,
        }
    }

    pub(super) const fn keys(&self) -> Keys {
        match self {
            Self::Fault(fault) if fault.is_found() => Keys::FaultFound,
            Self::Measuring(measuring) if measuring.is_typed() => Keys::Typing,
            Self::Fault(fault) if fault.is_typed() => Keys::Typing,
            Self::Measuring(_) | Self::Fault(_) => Keys::Counting,
            Self::Joining(joining) if joining.is_question() => Keys::Searching,
            Self::CordEnds => Keys::Searching,
            Self::Joining(_) => Keys::Joining,
        }
    }

    /// What there is to see meanwhile: the step, with what is named pointed at.
    pub(super) fn mark(&self, script: &Script, subject: Subject) -> Subject {
        match self {
            Self::Measuring(_) | Self::CordEnds => subject,
            Self::Fault(fault) => fault.mark(script, subject),
            Self::Joining(joining) => joining.mark(script, subject),
        }
    }
}
