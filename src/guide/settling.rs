//! Where a place that was kept stands in this job.

use super::{Place, Script};
use crate::knot::PassLeg;

impl Script {
    /// The nearest place that this job has: the beginning of the part in which `place` lies, when it
    /// is one of this job.
    pub fn settle(&self, place: Place) -> Place {
        match place {
            // Without a rigging any more, the job begins with its first leg.
            Place::Kit { .. } | Place::Rig { .. } => self
                .rigging()
                .map_or(self.first(), |rigging| rigging.settle(place)),
            Place::Begin { pass, strand } => {
                let PassLeg { pass, strand, .. } = self.nearest_leg(PassLeg {
                    pass,
                    strand,
                    leg: 1,
                });
                Place::begin(pass, strand)
            }
            Place::Lay { pass_leg, crossing } => {
                let pass_leg = self.nearest_leg(pass_leg);
                let crossings = self.met(pass_leg);
                let told = self.told_at_once(pass_leg);
                let part = told.part_of(crossing.min(crossings), crossings);
                Place::Lay {
                    pass_leg,
                    crossing: told.begins(part, crossings),
                }
            }
            // A round can be looked at even when it is not asked for, and ends with an even leg.
            Place::Check { pass_leg } => {
                let pass_leg = self.nearest_leg(pass_leg);
                Place::check(PassLeg {
                    leg: (pass_leg.leg - pass_leg.leg % 2).max(2),
                    ..pass_leg
                })
            }
            // How many things there are to do, and how many rounds, follows from rules of the
            // bench that may be others than when the place was kept.
            Place::Lift { task } => Place::Lift {
                task: task.clamp(1, self.lifts()),
            },
            Place::Fair { round, pass_leg } => Place::fair(
                round.clamp(1, self.fair_rounds()),
                if self.fairs_by_leg() {
                    self.nearest_leg(pass_leg)
                } else {
                    PassLeg::FIRST
                },
            ),
            Place::Finish { task } => Place::Finish {
                task: task.clamp(1, self.finishes()),
            },
        }
    }

    fn nearest_leg(&self, pass_leg: PassLeg) -> PassLeg {
        let knot = self.plan.knot();
        let strand = pass_leg.strand.clamp(1, knot.strands());
        PassLeg {
            pass: pass_leg.pass.clamp(1, self.plan.laying().passes()),
            strand,
            leg: pass_leg.leg.clamp(1, knot.legs_of(strand)),
        }
    }
}
