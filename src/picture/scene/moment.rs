//! How far the tie has come: what lies on the tube, and what is in hand.

use std::ops::Range;

use crate::guide::{
    BeginStep, FinishStep, FinishTask, FollowStep, LiftTask, Place, Script, Step, TakeBack, What,
};
use crate::knot::{Crossing, Leg, PassLeg};

/// How far the tie has come.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Moment {
    /// No cord is on the tube.
    #[default]
    Bare,
    /// Every leg before this one is laid, and none is in hand.
    Before(PassLeg),
    /// Every leg before this one is laid.
    At {
        /// The leg in hand.
        pass_leg: PassLeg,
        /// Which of its crossings are being told, counted from 0 in the order in which
        /// [`Laying::crossings`](crate::knot::Laying::crossings) gives them. All of them for
        /// a leg that is told at once.
        crossings: Range<usize>,
    },
    /// All is laid, and the slack of this leg is being drawn out.
    Fairing(PassLeg),
    /// All is laid, and an end is tucked away: from a bottom bight it goes once more beside the cords
    /// of a leg.
    Tucking {
        /// The leg it goes along, up from its bottom pin.
        along: Leg,
        /// What it crosses from there on; at the last it is held.
        crossings: Vec<Crossing>,
    },
    /// This leg was laid last, and the work is looked at.
    Looking(PassLeg),
    /// A leg is taken back: what of it lies is in hand, and goes the way it came.
    TakingBack {
        /// The leg in hand.
        pass_leg: PassLeg,
        /// How many of its crossings lie.
        crossings: usize,
    },
    /// All is laid, and the pins are still there.
    Laid,
    /// All is laid, and the pins at the top are out.
    TopPinsOut,
    /// All is laid and the pins are out, and no leg is looked at more than another.
    Finished,
    /// The knot is done: its ends are hidden.
    Done,
}

impl Moment {
    /// With `pass_leg` in hand, all of it told at once.
    pub const fn at(pass_leg: PassLeg) -> Self {
        Self::At {
            pass_leg,
            crossings: 0..usize::MAX,
        }
    }

    /// What lies on the tube, and what is in hand, while this step is told.
    pub fn of_step(step: &Step) -> Self {
        match &step.what {
            What::Kit(_) | What::Rig(_) => Self::Bare,
            What::Begin(BeginStep { strand, .. }) => Self::Before(PassLeg {
                pass: 1,
                strand: *strand,
                leg: 1,
            }),
            What::Follow(FollowStep { pass, strand, .. }) => Self::Before(PassLeg {
                pass: *pass,
                strand: *strand,
                leg: 1,
            }),
            What::Lay(lay) => {
                let told = usize::from(step.place.crossings_behind());
                Self::At {
                    pass_leg: lay.pass_leg,
                    crossings: told..told + lay.crossings.len(),
                }
            }
            What::Check(check) => Self::Looking(check.after),
            What::Fair(fair) if fair.in_round.is_some() => Self::Finished,
            What::Fair(fair) => Self::Fairing(fair.pass_leg),
            What::Finish(FinishStep {
                task: FinishTask::Tuck(tuck),
                ..
            }) if !tuck.crossings.is_empty() => Self::Tucking {
                along: tuck.along,
                crossings: tuck.crossings.clone(),
            },
            What::Lift(lift) => match lift.task {
                LiftTask::Secure | LiftTask::TopPins | LiftTask::Marks | LiftTask::DrawPins => {
                    Self::Laid
                }
                LiftTask::SlideRing | LiftTask::BottomPins => Self::TopPinsOut,
                LiftTask::SlipOff | LiftTask::OverBall => Self::Finished,
            },
            What::Finish(FinishStep {
                task: FinishTask::Seal { .. } | FinishTask::Done { .. },
                ..
            }) => Self::Done,
            What::Finish(_) => Self::Finished,
        }
    }

    /// What lies on the tube at a place of a script; bare when the script has no such place.
    pub fn of_place(script: &Script, place: Place) -> Self {
        script
            .step(place)
            .map_or(Self::Bare, |step| Self::of_step(&step))
    }

    /// While a leg is taken back: it is in hand again, as far as it was laid.
    pub fn of_take_back(back: &TakeBack) -> Self {
        Self::TakingBack {
            pass_leg: back.pass_leg,
            crossings: back.crossings.len(),
        }
    }
}
