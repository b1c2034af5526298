//! Drawing the slack through, round after round.

use super::Script;
use super::step::{FairStep, FairWay, WholeRound};
use super::{Plan, Setup};
use crate::bench::{Ground, Millimetres};
use crate::knot::{PassLeg, Rim};

/// How often a knot is gone through when nothing is known of the tube and the object. *Common
/// practice, no source.*
const USUAL_ROUNDS: u16 = 3;

/// Of how many cord thicknesses a leg is relieved in one round at the most: more at once and
/// the crossings behind it slide out of place. *Common practice, no source.*
const MOST_AT_ONCE: f64 = 2.0;

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

    /// How wide the knot is to be left, when that is not as tight as it goes.
    fn left_open(&self) -> Option<Millimetres> {
        let shape = self.rig()?.shape;
        (!shape.is_tight()).then_some(shape.width)
    }

    pub(super) fn fair(&self, round: u16, pass_leg: PassLeg) -> Option<FairStep> {
        let laying = self.plan.laying();
        let leg = laying.leg(pass_leg)?;
        let rounds = self.fair_rounds();
        let first_pass = (1..=pass_leg.pass)
            .rev()
            .find(|pass| self.plan.begins_a_cord(*pass, pass_leg.strand))?;
        let legs = self.plan.knot().legs_of(pass_leg.strand);
        let behind =
            f64::from(pass_leg.pass - first_pass) * f64::from(legs) + f64::from(pass_leg.leg);
        let draw = self
            .rig()
            .and_then(|rig| Millimetres::new(rig.laid.slack.get() / f64::from(rounds)).ok());
        let ends_cord = pass_leg.pass == laying.passes()
            || self.plan.begins_a_cord(pass_leg.pass + 1, pass_leg.strand);
        let is_told = pass_leg == PassLeg::FIRST && (round == 1 || round == rounds);
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
            in_round: (!self.fairs_by_leg()).then(|| WholeRound {
                legs: laying.legs(),
                cords: self.plan.runs().len(),
            }),
            way: way(&self.plan).filter(|_| is_told),
            left_open: self.left_open().filter(|_| is_told),
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
        if pass_leg.leg < knot.legs_of(pass_leg.strand) {
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
        if pass_leg.leg > 1 {
            Some(PassLeg {
                leg: pass_leg.leg - 1,
                ..pass_leg
            })
        } else if pass_leg.pass > 1 {
            Some(PassLeg {
                pass: pass_leg.pass - 1,
                leg: knot.legs_of(pass_leg.strand),
                ..pass_leg
            })
        } else if pass_leg.strand > 1 {
            Some(PassLeg {
                pass: laying.passes(),
                strand: pass_leg.strand - 1,
                leg: knot.legs_of(pass_leg.strand - 1),
            })
        } else {
            None
        }
    }

    /// Where the last step of a round stands.
    pub(super) fn fair_last(&self) -> PassLeg {
        if !self.fairs_by_leg() {
            return PassLeg::FIRST;
        }
        let knot = self.plan.knot();
        PassLeg {
            pass: self.plan.laying().passes(),
            strand: knot.strands(),
            leg: knot.legs_of(knot.strands()),
        }
    }
}

/// Where a knot of this plan is drawn snug first; nowhere before another on what is as thick all along.
fn way(plan: &Plan) -> Option<FairWay> {
    let ground = plan.setup().map(Setup::ground)?;
    match ground {
        Ground::Round(_) => None,
        Ground::Taper { .. } => match ground.thick_rim() {
            Some(Rim::Top) => Some(FairWay::TaperDown),
            _ => Some(FairWay::Taper),
        },
        Ground::Ball(_) => Some(FairWay::Ball),
        Ground::Flat { .. } => Some(FairWay::Mat),
    }
}
