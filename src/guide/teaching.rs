//! What is taught to who learns: everything when it is new, and not again once the hands have it.

use super::{AtOnce, Place, Script};
use crate::knot::PassLeg;

/// Legs that cross something on which the hands learn. *Common practice, no source.*
const LEARNT_ON: u16 = 4;
/// Crossings that there is always breath for, whatever else a part of a leg has to say.
const LEAST_IN_PARTS: u16 = 2;
/// From this leg on nothing is new any more, however seldom it comes: some weaves never go under.
const NEW_BEFORE: u16 = 24;
/// Legs that are taught again from where something was wrong: a round. *Common practice, no source.*
const LEARNT_AGAIN: u16 = 2;

impl Script {
    /// The same for who learns: the legs that the hands learn on are told one crossing at a press.
    #[must_use]
    pub const fn teaching(mut self, teaches: bool) -> Self {
        self.teaches = teaches;
        self
    }

    /// The same with a round taught again from this leg on, where something was wrong.
    #[must_use]
    pub const fn learning_again(mut self, from: Option<PassLeg>) -> Self {
        self.learns_again = from;
        self
    }

    /// The leg from which a round is taught again, when something was wrong there.
    pub const fn learns_again(&self) -> Option<PassLeg> {
        self.learns_again
    }

    /// How much of a leg is told at once. Each part of a long leg has to say where the cord is, so that there
    /// is breath for a crossing fewer; and for two fewer where there is yet more to say: turns of the
    /// tube, rows of pins, counts of many cords, which strand follows, or what to do back at the start.
    pub(super) fn told_at_once(&self, pass_leg: PassLeg) -> AtOnce {
        if self.teaches && self.is_learnt_on(pass_leg) {
            return AtOnce::UpTo(1);
        }
        match self.at_once {
            AtOnce::UpTo(most) if most > LEAST_IN_PARTS && self.met(pass_leg) > most => {
                let knot = self.plan.knot();
                let leg = self.plan.laying().leg(pass_leg);
                let is_wordy = leg.is_some_and(|leg| knot.turns_of(leg) > 0)
                    || knot.lattice().is_interwoven()
                    || pass_leg.pass > 2
                    || pass_leg.pass > 1 && knot.strands() > 1
                    || self.ends_a_pass(pass_leg);
                let fewer = 1 + u16::from(is_wordy);
                AtOnce::UpTo((most - fewer).max(LEAST_IN_PARTS))
            }
            at_once => at_once,
        }
    }

    /// Whether the hands learn on this leg: it is one of the first that cross anything, or the first
    /// with an over or an under, or lies where something was wrong.
    pub(super) fn is_learnt_on(&self, pass_leg: PassLeg) -> bool {
        let PassLeg { pass, strand, leg } = pass_leg;
        let crosses = |leg: u16| leg > 0 && self.met(PassLeg { leg, ..pass_leg }) > 0;
        let is_early = (pass, strand) == (1, 1)
            && (!crosses(leg.saturating_sub(LEARNT_ON)) || !self.first_met(pass_leg).is_empty());
        let is_again = self.learns_again.is_some_and(|from| {
            (from.pass, from.strand) == (pass, strand)
                && (from.leg..from.leg.saturating_add(LEARNT_AGAIN)).contains(&leg)
        });
        is_early || is_again
    }

    /// Which crossings of a leg, counted from 0, are the first over and the first under of the tie.
    pub(super) fn first_met(&self, pass_leg: PassLeg) -> Vec<usize> {
        if (pass_leg.pass, pass_leg.strand) != (1, 1) || pass_leg.leg >= NEW_BEFORE {
            return Vec::new();
        }
        let mut met = [false, false];
        let mut new = Vec::new();
        for leg in 1..=pass_leg.leg {
            let crossings = self.plan.laying().crossings(PassLeg { leg, ..pass_leg });
            for (index, crossing) in crossings.enumerate() {
                let is_new = !std::mem::replace(&mut met[usize::from(crossing.over)], true);
                if is_new && leg == pass_leg.leg {
                    new.push(index);
                }
            }
        }
        new
    }

    /// Whether who learns is told the step here with its reasons: nothing of the kind came before.
    pub(super) fn is_taught(&self, place: Place) -> bool {
        match place {
            Place::Kit { .. } | Place::Rig { .. } | Place::Lift { .. } => true,
            Place::Begin { pass, strand } => {
                pass <= 2 && strand == 1 || pass == 1 && self.begins_a_nest(strand)
            }
            Place::Lay { pass_leg, .. } => self.is_learnt_on(pass_leg),
            Place::Check { pass_leg } => self.is_first_look(pass_leg),
            Place::Fair { round, pass_leg } => round == 1 && pass_leg == PassLeg::FIRST,
            // Of the ends, the first is taught, and all that comes when they are tucked.
            Place::Finish { task } => task == 1 || task + 3 > self.finishes(),
        }
    }

    /// Whether a strand is the first of the cords that are nested in those before.
    pub(super) fn begins_a_nest(&self, strand: u16) -> bool {
        let nests = self.plan.knot().nests();
        nests.iter().skip(1).any(|nest| nest.before + 1 == strand)
    }

    /// Whether a look is the first of all, or the first at a whole pass.
    fn is_first_look(&self, pass_leg: PassLeg) -> bool {
        if (pass_leg.pass, pass_leg.strand) != (1, 1) {
            return false;
        }
        let mut rounds = (2..=pass_leg.leg).step_by(2);
        let first = rounds.find(|leg| {
            self.is_checked(PassLeg {
                leg: *leg,
                ..pass_leg
            })
        });
        first.is_none_or(|first| first == pass_leg.leg) || self.ends_a_pass(pass_leg)
    }
}
