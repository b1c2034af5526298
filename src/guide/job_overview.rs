//! The whole job at a look: its parts, how far each is, and the time that is left.

use super::{Phase, Place, Progress, Rigging, Script};
use crate::bench::TyingPace;

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
            if is_over || index < here {
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

    /// How much of the part in hand is done.
    fn share_of(&self, phase: Phase, place: Place) -> f64 {
        let laying = self.plan().laying();
        let in_a_pass = laying.legs() / u32::from(laying.passes().max(1));
        let (done, of) = match phase {
            Phase::Lead => (self.progress(place).laid, in_a_pass),
            Phase::Follow => (
                self.progress(place).laid.saturating_sub(in_a_pass),
                laying.legs() - in_a_pass,
            ),
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
        let Progress { laid, legs } = self.progress(place);
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
