//! How far the tyer is with the part of the job that is in hand.

use super::{Phase, Place, Progress, Rigging, Script};
use crate::knot::Order;

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
                // Along each strand, pass after pass.
                let laying = self.plan().laying();
                let faired = laying.legs_before_in(Order::StrandByStrand, place.turn());
                let rounds = u32::from(self.fair_rounds());
                let round = u32::from(place.crossing.max(1)) - 1;
                (round * laying.legs() + faired, rounds * laying.legs())
            }
            Phase::Finish => (before, u32::from(self.finishes()) - 1),
        };
        let of = of.max(1);
        Headway {
            done: done.min(of),
            of,
        }
    }
}
