//! What comes when everything is laid: lifting, fairing, finishing.

use crate::bench::Millimetres;
use crate::knot::{Heading, Laying, LayingOrder, Leg, PassLeg, Pin, Rim};

use super::plan::CordRun;
use super::script::FIRST;
use super::step::{FairStep, FinishStep, FinishTask, LiftStep, LiftTask, Tuck};
use super::{Plan, Script, What};

/// How often a knot is gone through when nothing is known of the tube and the object. *Common
/// practice, no source.*
const USUAL_ROUNDS: u16 = 3;

/// Of how many cord thicknesses a leg is relieved in one round at the most: more at once and
/// the crossings behind it slide out of place. *Common practice, no source.*
const MOST_AT_ONCE: f64 = 2.0;

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
        // Without a tube that was named, rings are what there usually is.
        let has_rings = plan.setup().is_none_or(|setup| setup.tube.rows().is_some());
        let ends = ends(&plan.runs());
        [
            Some(LiftTask::Secure),
            Some(LiftTask::TopPins),
            has_rings.then_some(LiftTask::SlideRing),
            Some(LiftTask::BottomPins),
            Some(LiftTask::SlipOff),
        ]
        .into_iter()
        .flatten()
        .map(|task| {
            Self::Lift(LiftStep {
                task,
                of: 4 + u16::from(has_rings),
                bights: plan.knot().bights(),
                ends,
            })
        })
        .collect()
    }

    /// What there is to do to finish it.
    pub(super) fn finish(plan: &Plan) -> Vec<Self> {
        let (knot, runs) = (plan.knot(), plan.runs());
        let ends = ends(&runs);
        let mut items = Vec::new();
        for run in &runs {
            items.push(FinishTask::Tuck(tuck(plan, run, true)));
            items.push(FinishTask::Tuck(tuck(plan, run, false)));
        }
        items.push(FinishTask::Trim { ends });
        items.push(FinishTask::Seal { ends });
        items.push(FinishTask::Done {
            leads: knot.leads(),
            bights: knot.bights(),
            passes: plan.laying().passes(),
        });
        let of = u16::try_from(items.len()).unwrap_or(u16::MAX);
        items
            .into_iter()
            .map(|task| Self::Finish(FinishStep { task, of }))
            .collect()
    }
}

fn ends(runs: &[CordRun]) -> u16 {
    u16::try_from(2 * runs.len()).unwrap_or(u16::MAX)
}

/// Where an end goes. It comes out at the bight where the cord began. The working end goes on
/// along the leg that leaves there, the standing end back along the leg that lands there, to
/// the first crossing where that leg goes under: there it is hidden.
fn tuck(plan: &Plan, run: &CordRun, is_working: bool) -> Tuck {
    let (laying, knot) = (plan.laying(), plan.knot());
    let pin = Pin {
        rim: Rim::Bottom,
        number: run.pin,
    };
    let along: Leg = if is_working {
        knot.leg_from(pin)
    } else {
        knot.leg_to(pin)
    };
    // A second pass would meet every cord there is, so it leaves out no crossing.
    let mut crossings: Vec<_> = Laying::new(knot.clone(), 2, LayingOrder::PassByPass)
        .map(|all| all.crossings(all.pass_leg_of(2, along)).collect())
        .unwrap_or_default();
    if along.heading() == Heading::Falling {
        // From the bottom up, against the way it was laid.
        crossings.reverse();
    }
    let under = crossings.into_iter().find(|crossing| !crossing.over);
    Tuck {
        strand: run.strand,
        strands: knot.strands(),
        cord: run.cord.clone(),
        is_working,
        pin: run.pin,
        along,
        // All the cords of the finished knot lie there by now.
        under: under.map(|crossing| crate::knot::Crossing {
            cords: laying.passes(),
            ..crossing
        }),
    }
}

impl Script {
    /// How often to go through the knot to fair it.
    pub fn fair_rounds(&self) -> u16 {
        let (Some(rig), Some(setup)) = (self.rig(), self.plan.setup()) else {
            return USUAL_ROUNDS;
        };
        let rounds = rig.laid.slack.get() / (MOST_AT_ONCE * setup.cord.diameter.get());
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "2 to 9"
        )]
        let rounds = rounds.ceil().clamp(2.0, 9.0) as u16;
        rounds
    }

    pub(super) fn fair(&self, round: u16, pass_leg: PassLeg) -> Option<FairStep> {
        let laying = self.plan.laying();
        let leg = laying.leg(pass_leg)?;
        let rounds = self.fair_rounds();
        let first_pass = (1..=pass_leg.pass)
            .rev()
            .find(|pass| self.plan.begins_a_cord(*pass, pass_leg.strand))?;
        let legs = self.plan.knot().legs_per_strand();
        let behind =
            f64::from(pass_leg.pass - first_pass) * f64::from(legs) + f64::from(pass_leg.leg);
        let draw = self
            .rig()
            .and_then(|rig| Millimetres::new(rig.laid.slack.get() / f64::from(rounds)).ok());
        let ends_cord = pass_leg.pass == laying.passes()
            || self.plan.begins_a_cord(pass_leg.pass + 1, pass_leg.strand);
        Some(FairStep {
            round,
            rounds,
            pass_leg,
            leg,
            legs,
            passes: laying.passes(),
            strands: self.plan.knot().strands(),
            draw,
            gathered: draw.and_then(|draw| Millimetres::new(draw.get() * behind).ok()),
            in_round: (!self.fairs_by_leg()).then(|| laying.legs()),
            is_first: pass_leg.pass == first_pass && pass_leg.leg == 1,
            is_last: ends_cord && pass_leg.leg == legs,
            cord: self
                .plan
                .cord(pass_leg.pass, pass_leg.strand)
                .map(str::to_owned),
        })
    }

    /// The next leg to fair: along the cord, pass after pass, then the next strand. None when a round
    /// is told once.
    pub(super) fn fair_after(&self, pass_leg: PassLeg) -> Option<PassLeg> {
        if !self.fairs_by_leg() {
            return None;
        }
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        if pass_leg.leg < knot.legs_per_strand() {
            Some(PassLeg {
                leg: pass_leg.leg + 1,
                ..pass_leg
            })
        } else if pass_leg.pass < laying.passes() {
            Some(PassLeg {
                pass: pass_leg.pass + 1,
                leg: 1,
                ..pass_leg
            })
        } else if pass_leg.strand < knot.strands() {
            Some(PassLeg {
                pass: 1,
                strand: pass_leg.strand + 1,
                leg: 1,
            })
        } else {
            None
        }
    }

    /// The leg faired before.
    pub(super) fn fair_before(&self, pass_leg: PassLeg) -> Option<PassLeg> {
        if !self.fairs_by_leg() {
            return None;
        }
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let last = knot.legs_per_strand();
        if pass_leg.leg > 1 {
            Some(PassLeg {
                leg: pass_leg.leg - 1,
                ..pass_leg
            })
        } else if pass_leg.pass > 1 {
            Some(PassLeg {
                pass: pass_leg.pass - 1,
                leg: last,
                ..pass_leg
            })
        } else if pass_leg.strand > 1 {
            Some(PassLeg {
                pass: laying.passes(),
                strand: pass_leg.strand - 1,
                leg: last,
            })
        } else {
            None
        }
    }

    /// Where the last step of a round stands.
    pub(super) fn fair_last(&self) -> PassLeg {
        if !self.fairs_by_leg() {
            return FIRST;
        }
        let knot = self.plan.knot();
        PassLeg {
            pass: self.plan.laying().passes(),
            strand: knot.strands(),
            leg: knot.legs_per_strand(),
        }
    }
}
