//! What there is to do to lift the knot, and to finish its ends.

use super::Setup;
use super::plan::Plan;
use super::plan_cords::CordRun;
use super::step::{FinishStep, FinishTask, JoinEnds, LiftStep, LiftTask, Tuck, What};
use crate::bench::Ground;
use crate::knot::{Crossing, Heading, Leg};

/// One thing of a short list: to lift the knot, or to finish it.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum FinishingItem {
    Lift(LiftStep),
    Finish(FinishStep),
}

impl FinishingItem {
    pub(super) fn what(&self) -> What {
        match self {
            Self::Lift(lift) => What::Lift(*lift),
            Self::Finish(finish) => What::Finish(finish.clone()),
        }
    }

    /// What there is to do to lift the knot of a plan.
    pub(super) fn lift(plan: &Plan) -> Vec<Self> {
        let tasks = lift_tasks(plan);
        let of = u16::try_from(tasks.len()).unwrap_or(u16::MAX);
        let item = |task| {
            Self::Lift(LiftStep {
                task,
                of,
                pins: plan.knot().nested() * plan.knot().bights(),
                ends: plan.ends(),
                thick: plan.setup().and_then(|setup| setup.ground().thick_rim()),
            })
        };
        tasks.into_iter().map(item).collect()
    }

    /// What there is to do to finish it.
    pub(super) fn finish(plan: &Plan) -> Vec<Self> {
        let (knot, ends) = (plan.knot(), plan.ends());
        let mut items = Vec::new();
        for run in &plan.runs() {
            items.push(FinishTask::Tuck(tuck(plan, run, true)));
            items.push(FinishTask::Tuck(tuck(plan, run, false)));
        }
        items.extend(plan.cord_history().joins().iter().filter_map(|join| {
            Some(FinishTask::Join(JoinEnds {
                pass_leg: join.at,
                leg: plan.laying().leg(join.at)?,
                row: join.row,
                strands: knot.strands(),
            }))
        }));
        items.push(FinishTask::Trim { ends });
        items.push(FinishTask::Seal { ends });
        let is_mat = plan.setup().is_some_and(|setup| setup.ground().is_flat());
        items.extend(is_mat.then_some(FinishTask::Press));
        items.push(FinishTask::Done {
            lattice: knot.lattice(),
            passes: plan.laying().passes(),
        });
        let of = u16::try_from(items.len()).unwrap_or(u16::MAX);
        items
            .into_iter()
            .map(|task| Self::Finish(FinishStep { task, of }))
            .collect()
    }
}

/// What there is to do to lift a knot, in the order of the hands. On what it covers it stays where it is,
/// and only its marks or pins come away.
fn lift_tasks(plan: &Plan) -> Vec<LiftTask> {
    if plan.is_round_hand() {
        return vec![LiftTask::Secure, LiftTask::SlipOff];
    }
    let setup = plan.setup();
    let ground = setup.map(Setup::ground);
    if setup.is_some_and(|setup| setup.in_place) {
        let is_flat = ground.is_some_and(|ground| ground.is_flat());
        let out = if is_flat {
            LiftTask::DrawPins
        } else {
            LiftTask::Marks
        };
        return vec![LiftTask::Secure, out];
    }
    // Without a tube that was named, rings are what there usually is.
    let has_rings = setup.is_none_or(|setup| setup.tube.rows().is_some());
    let mut tasks = vec![LiftTask::Secure, LiftTask::TopPins];
    tasks.extend(has_rings.then_some(LiftTask::SlideRing));
    tasks.push(LiftTask::BottomPins);
    tasks.push(match ground {
        Some(Ground::Ball(_)) => LiftTask::OverBall,
        _ => LiftTask::SlipOff,
    });
    tasks
}

/// Leads from which on an end is held twice: along a long leg there is room, and one tuck alone works loose in
/// a hand. *Common practice, no source.*
const LEADS_HELD_TWICE: u16 = 5;

/// How many crossings further that may be: no end is led along half a knot for it. *Common practice, no source.*
const FURTHER_AT_MOST: usize = 4;

/// Whether the end that was left is long enough for so many of the parts of a finished leg, and for two fingers to
/// draw on it; taken for granted where lengths are not known.
fn reaches(plan: &Plan, parts: usize, of: usize) -> bool {
    const TO_DRAW_ON: f64 = 30.0;
    let Ok(Some(rig)) = plan.rig() else {
        return true;
    };
    #[expect(clippy::cast_precision_loss, reason = "rows of a knot are few")]
    let share = parts as f64 / of as f64;
    let leg = rig.laid.cord_in_leg.get() - rig.laid.slack.get();
    leg * share + TO_DRAW_ON <= rig.tail.get()
}

/// Where an end goes. It comes out at the bight where the cord began. The working end goes on
/// along the leg that leaves there, the standing end back along the leg that lands there, to
/// the first crossing where that leg goes under, in a broad knot to the second: there it is hidden.
fn tuck(plan: &Plan, run: &CordRun, is_working: bool) -> Tuck {
    let (laying, knot) = (plan.laying(), plan.knot());
    let pin = run.pin;
    let along: Leg = if is_working {
        knot.leg_from(pin)
    } else {
        knot.leg_to(pin)
    };
    // All the cords of the finished knot lie there by now.
    let beside = laying.passes();
    let met = knot.crossings_of(along).map(|(row, of)| Crossing {
        row,
        over: knot.goes_over(along.heading(), row),
        cords: beside,
        of,
    });
    let mut crossings: Vec<Crossing> = met.collect();
    if along.heading() == Heading::Falling {
        // From the bottom up, against the way it was laid.
        crossings.reverse();
    }
    let under = crossings.iter().enumerate();
    let mut under = under
        .filter(|(_, crossing)| !crossing.over)
        .map(|(at, _)| at);
    let held = under.next();
    let again = under.next().zip(held).filter(|(again, held)| {
        let is_near = again - held <= FURTHER_AT_MOST;
        knot.leads() >= LEADS_HELD_TWICE && is_near && reaches(plan, again + 1, crossings.len() + 1)
    });
    let last = again.map(|(again, _)| again).or(held);
    crossings.truncate(last.map_or(0, |last| last + 1));
    Tuck {
        strand: run.strand,
        strands: knot.strands(),
        cord: run.cord.clone(),
        is_working,
        pin,
        along,
        lane: plan.lane(),
        beside,
        crossings,
    }
}
