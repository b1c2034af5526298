//! Turning aside from the steps and back to them: the rest of the cord, a new cord, a fault far back.

use super::{Mode, Walk, WalkAction};
use crate::bench::Millimetres;
use crate::guide::{CordReach, Joining, Place};
use crate::knot::PassLeg;
use crate::session::asides::{Aside, Came, FaultPlace, JoinGuide, Measuring};
use crate::words::{Sentence, Spoken, Words};

impl Walk {
    /// Has something stand in the place of the step.
    pub(in crate::session) fn turn_aside(&mut self, aside: Aside, words: &Words) -> WalkAction {
        self.shown = aside.show(&self.script, words);
        self.say = aside.say(&self.script, words);
        self.mode = Mode::Aside(Box::new(aside));
        WalkAction::Again
    }

    /// The place of a fault is to be named.
    pub(in crate::session) fn name_fault(&mut self, words: &Words) -> WalkAction {
        let fault = FaultPlace::new(self.script.plan().knot());
        self.turn_aside(Aside::Fault(fault), words)
    }

    pub(in crate::session) fn press_aside(
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
            Came::CordEnds => self.ask_join(words),
            Came::Reaches => self.forget_measure(words),
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
    pub(in crate::session) fn ask_join(&mut self, words: &Words) -> WalkAction {
        let words = &self.words_here(words);
        if let Some(joining) = JoinGuide::new(&self.script, self.place) {
            return self.turn_aside(Aside::Joining(joining), words);
        }
        let why = if self.script.is_off_pins(self.place) {
            "join-off-the-pins"
        } else {
            "join-nothing-laid"
        };
        let told = words.notice(why, &[]);
        self.answer = Some(told.to_string());
        WalkAction::Say(told.into())
    }

    /// Joins in what is taken back, from this leg on, are gone with it.
    pub(in crate::session) fn lose_joins(&mut self, from: PassLeg) {
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

    /// Asks whether the cord ends here when by what was measured of it the leg that was just turned to
    /// is one too many; not where there is nothing that a new one could be joined to.
    pub(in crate::session) fn ask_cord_end(&mut self, words: &Words) -> bool {
        let is_at_its_pin = matches!(self.place, Place::Lay { crossing: 0, .. });
        let reach = || self.script.remaining(self.place)?.reach;
        let asks = self.is_telling_steps()
            && is_at_its_pin
            && reach() == Some(CordReach::NotOneLeg)
            && self.script.joining(self.place).is_some();
        if asks {
            self.turn_aside(Aside::CordEnds, words);
        }
        asks
    }

    /// The cord reaches farther than what was measured: that says nothing any more.
    fn forget_measure(&mut self, words: &Words) -> WalkAction {
        if let Some(history) = self.script.unmeasured(self.place) {
            let plan = self.script.plan().clone().with_cord_history(history);
            self.script = self.script.with_plan(plan);
        }
        self.stand_at(self.place, words);
        let told = words.notice("cord-reaches", &[]);
        self.answer = Some(told.to_string());
        WalkAction::Noted(Spoken::from(told).then(&self.say))
    }

    /// Whether the place of something is pointed at that is to be seen, however briefly steps are told.
    pub fn points_at_a_place(&self) -> bool {
        let Mode::Aside(aside) = &self.mode else {
            return false;
        };
        matches!(**aside, Aside::Fault(_) | Aside::Joining(_))
    }

    /// Where the tyer is while something else is done beside the steps of the tie.
    pub(super) fn whereabouts_beside(&self, words: &Words) -> Option<Spoken> {
        let Mode::Aside(aside) = &self.mode else {
            return None;
        };
        aside.whereabouts(&self.words_here(words))
    }

    /// What the cord still has to do, and whether it will.
    fn cord_told(&self, words: &Words) -> Sentence {
        let words = self.words_here(words);
        words.cord_left(self.script.remaining(self.place).as_ref())
    }

    /// Says whether the cord will do; asked once more, what is in the hand is measured. Where legs
    /// have no length there is nothing to measure for.
    pub(in crate::session) fn ask_cord(&mut self, was_told: bool, words: &Words) -> WalkAction {
        let remaining = self.script.remaining(self.place);
        let is_measured = remaining.is_some_and(|remaining| remaining.takes.is_some());
        if was_told && is_measured {
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
    pub(in crate::session) fn cord_warning(&self, words: &Words) -> Option<Sentence> {
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
