//! What stands in the place of a step for a while: a length that is measured, the place of a fault,
//! a new cord that is joined. Each is told like a step, and answered by next and back, or by digits.

mod fault_place;
mod join_guide;
mod measuring;
mod tally;

use super::controller::Session;
use super::page::Keys;
use super::walk::{Mode, Walk, WalkAction};
use crate::bench::Millimetres;
use crate::guide::{Joining, Place, Script};
use crate::knot::PassLeg;
use crate::picture::Subject;
use crate::words::{Sentence, Shown, Spoken, Words};

use fault_place::FaultPlace;
use join_guide::JoinGuide;
use measuring::Measuring;
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
}

/// What a press on it came to.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Came {
    /// A number is another one.
    Counted,
    /// Something else is asked, or told.
    Asked,
    /// There is no crossing where the fault should be.
    NothingThere,
    /// It is over, and nothing came of it.
    Left,
    /// Nothing at all was measured.
    NothingMeasured,
    /// So much was measured.
    Measured(Millimetres),
    /// A leg is to be taken back.
    TakeBack,
    /// Two cords are joined, of a kind that melts or does not.
    Joined(Box<Joining>, bool),
}

impl Aside {
    pub(super) fn press(&mut self, is_next: bool, script: &Script, place: Place) -> Came {
        match self {
            Self::Measuring(measuring) => measuring.press(is_next),
            Self::Fault(fault) => fault.press(is_next, script, place),
            Self::Joining(joining) => joining.press(is_next),
        }
    }

    fn type_in(&mut self, key: &str) -> bool {
        match self {
            Self::Measuring(measuring) => measuring.type_in(key),
            Self::Fault(fault) => fault.type_in(key),
            Self::Joining(_) => false,
        }
    }

    pub(super) fn show(&self, script: &Script, words: &Words) -> Shown {
        match self {
            Self::Measuring(measuring) => measuring.show(words),
            Self::Fault(fault) => fault.show(script, words),
            Self::Joining(joining) => joining.show(words),
        }
    }

    pub(super) fn say(&self, script: &Script, words: &Words) -> Spoken {
        match self {
            Self::Measuring(measuring) => measuring.say(words),
            Self::Fault(fault) => fault.say(script, words),
            Self::Joining(joining) => joining.say(words),
        }
    }

    fn say_briefly(&self, script: &Script, words: &Words) -> Spoken {
        match self {
            Self::Measuring(measuring) => measuring.say_briefly(words),
            Self::Fault(fault) => fault.say_briefly(script, words),
            Self::Joining(joining) => joining.say(words),
        }
    }

    pub(super) const fn keys(&self) -> Keys {
        match self {
            Self::Fault(fault) if fault.is_found() => Keys::FaultFound,
            Self::Measuring(_) | Self::Fault(_) => Keys::Counting,
            Self::Joining(joining) if joining.is_question() => Keys::Searching,
            Self::Joining(_) => Keys::Joining,
        }
    }

    /// What there is to see meanwhile: the step, with what is named pointed at.
    pub(super) fn mark(&self, script: &Script, subject: Subject) -> Subject {
        match self {
            Self::Measuring(_) | Self::Joining(_) => subject,
            Self::Fault(fault) => fault.mark(script, subject),
        }
    }
}

impl Walk {
    /// Has something stand in the place of the step.
    pub(super) fn turn_aside(&mut self, aside: Aside, words: &Words) -> WalkAction {
        self.shown = aside.show(&self.script, words);
        self.say = aside.say(&self.script, words);
        self.mode = Mode::Aside(Box::new(aside));
        WalkAction::Again
    }

    /// The place of a fault is to be named.
    pub(super) fn name_fault(&mut self, words: &Words) -> WalkAction {
        let fault = FaultPlace::new(self.script.plan().knot());
        self.turn_aside(Aside::Fault(fault), words)
    }

    pub(super) fn press_aside(
        &mut self,
        mut aside: Aside,
        is_next: bool,
        words: &Words,
    ) -> WalkAction {
        let came = aside.press(is_next, &self.script, self.place);
        match came {
            Came::Counted => {
                let briefly = aside.say_briefly(&self.script, words);
                self.turn_aside(aside, words);
                WalkAction::Say(briefly)
            }
            Came::Asked => self.turn_aside(aside, words),
            Came::NothingThere => {
                self.turn_aside(aside, words);
                let nothing = words.notice("fault-nothing-there", &[]);
                self.answer = Some(nothing.to_string());
                self.say = nothing.spoken().clone().then(&self.say);
                WalkAction::Again
            }
            Came::Left => {
                self.stand_at(self.place, words);
                WalkAction::Again
            }
            Came::NothingMeasured => {
                self.stand_at(self.place, words);
                let nothing = words.notice("measured-nothing", &[]);
                self.answer = Some(nothing.to_string());
                WalkAction::Say(nothing.into())
            }
            Came::Measured(measured) => self.note_measure(measured, words),
            Came::TakeBack => {
                self.learn_again_from(self.place);
                self.take_back(words)
            }
            Came::Joined(joining, melts) => self.note_join(&joining, melts, words),
        }
    }

    /// From here on the new cord runs, with ends of its own.
    fn note_join(&mut self, joining: &Joining, melts: bool, words: &Words) -> WalkAction {
        let place = self.script.after_join(self.place, joining);
        let history = self.script.joined(joining, melts);
        let plan = self.script.plan().clone().with_cord_history(history);
        self.script = self.script.with_plan(plan);
        self.stand_at(self.script.settle(place), words);
        let told = words.notice("join-noted", &[]);
        self.answer = Some(told.to_string());
        WalkAction::Noted(Spoken::from(told).then(&self.say))
    }

    /// Another cord is to take the place of the one in hand.
    fn ask_join(&mut self, words: &Words) -> WalkAction {
        if let Some(joining) = JoinGuide::new(&self.script, self.place) {
            self.answer = None;
            self.is_whereabouts = false;
            return self.turn_aside(Aside::Joining(joining), words);
        }
        let why = if self.script.is_off_pins(self.place) {
            "join-off-the-pins"
        } else {
            "join-nothing-laid"
        };
        let told = words.notice(why, &[]);
        self.answer = Some(told.to_string());
        self.is_whereabouts = false;
        WalkAction::Say(told.into())
    }

    /// Joins in what is taken back, from this leg on, are gone with it.
    pub(super) fn lose_joins(&mut self, from: PassLeg) {
        if let Some(history) = self.script.joins_before(from) {
            let plan = self.script.plan().clone().with_cord_history(history);
            self.script = self.script.with_plan(plan);
        }
    }

    /// What is measured is noted, and told how far it reaches.
    fn note_measure(&mut self, measured: Millimetres, words: &Words) -> WalkAction {
        if let Some(history) = self.script.measured(self.place, measured) {
            let plan = self.script.plan().clone().with_cord_history(history);
            self.script = self.script.with_plan(plan);
        }
        self.stand_at(self.place, words);
        let told = self.cord_told(words);
        self.answer = Some(told.to_string());
        self.is_whereabouts = true;
        WalkAction::Noted(told.into())
    }

    /// What the cord still has to do, and whether it will.
    fn cord_told(&self, words: &Words) -> Sentence {
        words.cord_left(self.script.remaining(self.place).as_ref())
    }

    /// Says whether the cord will do; asked once more, what is in the hand is measured. Where legs
    /// have no length there is nothing to measure for.
    fn ask_cord(&mut self, words: &Words) -> WalkAction {
        let remaining = self.script.remaining(self.place);
        let is_measured = remaining.is_some_and(|remaining| remaining.takes.is_some());
        if self.is_cord_told && is_measured {
            self.is_cord_told = false;
            self.answer = None;
            self.is_whereabouts = false;
            return self.turn_aside(Aside::Measuring(Measuring::new(words)), words);
        }
        let told = self.cord_told(words);
        self.answer = Some(told.to_string());
        self.is_whereabouts = true;
        self.is_cord_told = true;
        WalkAction::Say(told.into())
    }

    /// What must be known before a pass: that the cord, by what was measured of it, does not reach
    /// to its end.
    pub(super) fn cord_warning(&self, words: &Words) -> Option<Sentence> {
        if !self.is_telling_steps() || !matches!(self.place, Place::Begin { .. }) {
            return None;
        }
        let remaining = self.script.remaining(self.place)?;
        let legs = self.script.plan().knot().legs_of(remaining.next.strand);
        remaining
            .is_short(legs)
            .then(|| words.cord_not_through(&remaining))
    }
}

impl Session {
    /// Keys of what stands aside of the steps: digits of a number that is counted, C for what the cord still has to do, J
    /// for a new one in its place.
    /// Whether the key was one of them.
    pub(super) fn key_aside(&mut self, key: &str) -> bool {
        let Some(tie) = &mut self.tie else {
            return false;
        };
        let walk = &mut tie.walk;
        if let Mode::Aside(aside) = &mut walk.mode
            && aside.type_in(key)
        {
            let aside = aside.as_ref().clone();
            let briefly = aside.say_briefly(&walk.script, &self.words);
            walk.answer = None;
            walk.turn_aside(aside, &self.words);
            self.tell(briefly);
            return true;
        }
        if !walk.is_telling_steps() {
            return false;
        }
        let action = match key {
            "c" => walk.ask_cord(&self.words),
            "j" => walk.ask_join(&self.words),
            _ => return false,
        };
        self.hold();
        match action {
            WalkAction::Say(told) => self.tell(told),
            _ => self.say_step(),
        }
        true
    }
}
