//! How far the tyer is with the part of the job that is in hand.

use super::{LegsLaid, Place, Rigging, Script};
use crate::knot::LayingOrder;

/// How much of a part of the job is done: of the bag, the rigging, the tying, the lifting, the
/// fairing or the finishing.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
///
/// // Single, 5 lead 7 bight has fourteen legs to lay; at the very end nothing is left to do.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let begun = script.phase_progress(script.first());
/// assert_eq!((begun.done, begun.of), (0, 14));
/// let ended = script.phase_progress(script.last());
/// assert_eq!(ended.done, ended.of);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PhaseProgress {
    /// Done: steps, and of the tying legs.
    pub done: u32,
    /// All there are; one at least.
    pub of: u32,
}

impl Script {
    /// How far the part of the job is when the tyer stands before the step at `place`. The last
    /// step of the job says that it is done.
    pub fn phase_progress(&self, place: Place) -> PhaseProgress {
        let before = |number: u16| u32::from(number.max(1)) - 1;
        let (items, tasks) = self.rigging().map_or((1, 1), Rigging::counts);
        let (done, of) = match place {
            Place::Kit { item } => (before(item), items.into()),
            Place::Rig { task } => (before(task), tasks.into()),
            Place::Begin { .. } | Place::Lay { .. } | Place::Check { .. } => {
                let LegsLaid { laid, legs } = self.progress(place);
                (laid, legs)
            }
            Place::Lift { task } => (before(task), self.lifts().into()),
            Place::Fair { round, .. } if !self.fairs_by_leg() => {
                (before(round), self.fair_rounds().into())
            }
            Place::Fair { round, pass_leg } => {
                // Along each strand, pass after pass.
                let laying = self.plan().laying();
                let faired = laying.legs_before_in(LayingOrder::StrandByStrand, pass_leg);
                let rounds = u32::from(self.fair_rounds());
                (
                    before(round) * laying.legs() + faired,
                    rounds * laying.legs(),
                )
            }
            Place::Finish { task } => (before(task), u32::from(self.finishes()) - 1),
        };
        let of = of.max(1);
        PhaseProgress {
            done: done.min(of),
            of,
        }
    }
}
