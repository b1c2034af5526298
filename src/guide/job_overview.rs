//! The whole job at a look: its parts, how far each is, and the time that is left.

use super::{LegsLaid, Phase, Place, Rigging, Script};
use crate::bench::TyingPace;
use crate::knot::LayingOrder;

/// A part of the job: the bag, the rigging, the lead pass, the passes that follow, the lifting, the
/// fairing, the finish.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Phase, Plan, Script};
///
/// // With no tube named there is nothing to pack or to rig, and a single knot has no pass to follow.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let parts: Vec<_> = script.job(script.first()).iter().map(|part| part.phase).collect();
/// assert_eq!(parts, [Phase::Lead, Phase::Lift, Phase::Fair, Phase::Finish]);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JobPart {
    /// Which part; never a look, which belongs to its pass.
    pub phase: Phase,
    /// How much of it is done, 0 to 1.
    pub done: f64,
    /// Whether the tyer is at it.
    pub is_now: bool,
}

impl Script {
    /// The parts that this job has, in their order, when the tyer stands before the step at `place`.
    pub fn job(&self, place: Place) -> Vec<JobPart> {
        let (items, tasks) = self.rigging().map_or((0, 0), Rigging::counts);
        let has = |phase: Phase| match phase {
            Phase::Kit => items > 0,
            Phase::Rig => tasks > 0,
            Phase::Follow => self.plan().laying().passes() > 1,
            Phase::Lift => self.lifts() > 0,
            Phase::Lead | Phase::Fair | Phase::Finish => true,
            Phase::Check => false,
        };
        let now = part_of(place);
        let parts: Vec<Phase> = PARTS.into_iter().filter(|phase| has(*phase)).collect();
        let here = parts.iter().position(|phase| *phase == now).unwrap_or(0);
        let is_over = self.next(place).is_none();
        let share = |index: usize, phase: Phase| {
            if is_over {
                1.0
            } else if matches!(phase, Phase::Lead | Phase::Follow) {
                self.share_of(phase, place)
            } else if index < here {
                1.0
            } else if index > here {
                0.0
            } else {
                self.share_of(phase, place)
            }
        };
        parts
            .iter()
            .enumerate()
            .map(|(index, phase)| JobPart {
                phase: *phase,
                done: share(index, *phase),
                is_now: index == here,
            })
            .collect()
    }

    /// Legs that lie of all lead passes, and of all passes that follow.
    fn laid(&self, place: Place) -> [u32; 2] {
        let laying = self.plan().laying();
        let knot = laying.knot();
        let mut left = self.progress(place).laid;
        // Pass by pass all strands are laid as if they were one.
        let (strands, legs): (u16, &dyn Fn(u16) -> u32) = match laying.order() {
            LayingOrder::PassByPass => (1, &|_| laying.legs() / u32::from(laying.passes())),
            LayingOrder::StrandByStrand => {
                (knot.strands(), &|strand| u32::from(knot.legs_of(strand)))
            }
        };
        let mut laid = [0, 0];
        for strand in 1..=strands {
            let in_lead = legs(strand).min(left);
            let in_all = (legs(strand) * u32::from(laying.passes())).min(left);
            laid[0] += in_lead;
            laid[1] += in_all - in_lead;
            left -= in_all;
        }
        laid
    }

    /// How much of a part is done: of the laying, or of the part in hand.
    fn share_of(&self, phase: Phase, place: Place) -> f64 {
        let laying = self.plan().laying();
        let in_a_pass = laying.legs() / u32::from(laying.passes().max(1));
        let [in_lead, following] = self.laid(place);
        let (done, of) = match phase {
            Phase::Lead => (in_lead, in_a_pass),
            Phase::Follow => (following, laying.legs() - in_a_pass),
            _ => {
                let progress = self.phase_progress(place);
                (progress.done, progress.of)
            }
        };
        (f64::from(done) / f64::from(of.max(1))).min(1.0)
    }

    /// Minutes that the rest of the job takes at a pace: its share of the laying, and of all the other
    /// work what its parts have left, as much for each.
    ///
    /// ```
    /// use marlinspeak::bench::TyingPace;
    /// use marlinspeak::guide::{AtOnce, Plan, Script};
    ///
    /// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
    /// let pace = TyingPace::USUAL;
    /// let all = script.minutes_left(script.first(), pace);
    /// assert!((all - pace.minutes(14, script.plan().laying().tucks())).abs() < 1e-9);
    /// assert!(script.minutes_left(script.last(), pace) < 1e-9);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn minutes_left(&self, place: Place, pace: TyingPace) -> f64 {
        let LegsLaid { laid, legs } = self.progress(place);
        let tucks = self.plan().laying().tucks();
        let laying = pace.laying_minutes(legs, tucks);
        let beside = pace.minutes(legs, tucks) - laying;
        let parts = self.job(place);
        let others = parts
            .iter()
            .filter(|part| !matches!(part.phase, Phase::Lead | Phase::Follow));
        let (mut left, mut count) = (0.0, 0.0);
        for part in others {
            left += 1.0 - part.done;
            count += 1.0;
        }
        laying * f64::from(legs - laid) / f64::from(legs.max(1))
            + beside * left / f64::max(count, 1.0)
    }
}

/// All the parts that a job can have.
const PARTS: [Phase; 7] = [
    Phase::Kit,
    Phase::Rig,
    Phase::Lead,
    Phase::Follow,
    Phase::Lift,
    Phase::Fair,
    Phase::Finish,
];

/// The part of the job that a place belongs to.
fn part_of(place: Place) -> Phase {
    let pass = match place {
        Place::Begin { pass, .. } => pass,
        Place::Lay { pass_leg, .. } | Place::Check { pass_leg } => pass_leg.pass,
        _ => return place.phase(),
    };
    if pass > 1 { Phase::Follow } else { Phase::Lead }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{AtOnce, Plan};

    /// Strand by strand, the lead pass of the second is laid after the first was followed.
    #[test]
    fn lead_and_follow_are_counted_apart_in_every_order() {
        for order in [LayingOrder::PassByPass, LayingOrder::StrandByStrand] {
            let plan = Plan::read("4", "6", "2", "1").unwrap().with_order(order);
            let script = Script::new(plan, AtOnce::WholeLeg);
            let mut before = [0.0, 0.0];
            for place in script.places() {
                let laid = script.progress(place).laid;
                let [in_lead, following] = script.laid(place);
                assert_eq!(in_lead + following, laid, "{order:?} {place:?}");
                let done = |phase: Phase| {
                    let parts = script.job(place);
                    parts.iter().find(|part| part.phase == phase).unwrap().done
                };
                let now = [done(Phase::Lead), done(Phase::Follow)];
                assert!(now[0] >= before[0] && now[1] >= before[1], "{place:?}");
                if let Place::Lay { pass_leg, .. } = place {
                    let of_first = pass_leg.pass == 1;
                    assert!(now[usize::from(!of_first)] < 1.0, "{order:?} {place:?}");
                }
                before = now;
            }
            assert!(
                before.iter().all(|done| *done >= 1.0),
                "{order:?} {before:?}"
            );
        }
    }
}
