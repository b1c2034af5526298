//! How far the tyer is with the part of the job that is in hand.

use super::{Phase, Place, Progress, Rigging, Script};
use crate::knot::Turn;

/// How much of a part of the job is done: of the bag, the rigging, the tying, the lifting, the
/// fairing or the finishing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Headway {
    /// Done: steps, and of the tying legs.
    pub done: u32,
    /// All there are; one at least.
    pub of: u32,
}

impl Script {
    /// How far the part of the job is when the tyer stands before the step at `place`. The last
    /// step of the job says that it is done.
    pub fn headway(&self, place: Place) -> Headway {
        let before = u32::from(place.leg.max(1)) - 1;
        let (items, tasks) = self.rigging().map_or((1, 1), Rigging::counts);
        let (done, of) = match place.phase {
            Phase::Kit => (before, items.into()),
            Phase::Rig => (before, tasks.into()),
            Phase::Lead | Phase::Follow | Phase::Check => {
                let Progress { laid, legs } = self.progress(place);
                (laid, legs)
            }
            Phase::Lift => (before, self.lifts().into()),
            Phase::Fair => {
                let legs = self.plan().laying().legs();
                let rounds = u32::from(self.fair_rounds());
                let round = u32::from(place.crossing.max(1)) - 1;
                (
                    round * legs + self.faired_before(place.turn()),
                    rounds * legs,
                )
            }
            Phase::Finish => (before, u32::from(self.finishes()) - 1),
        };
        let of = of.max(1);
        Headway {
            done: done.min(of),
            of,
        }
    }

    /// Legs that are faired before this one in a round: along each strand, pass after pass.
    fn faired_before(&self, turn: Turn) -> u32 {
        let plan = self.plan();
        let legs = u32::from(plan.knot().legs_per_strand());
        let passes = u32::from(plan.laying().passes());
        let [strand, pass, leg] =
            [turn.strand, turn.pass, turn.leg].map(|number| u32::from(number.max(1)) - 1);
        (strand * passes + pass) * legs + leg
    }
}
