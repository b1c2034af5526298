//! From the step that is told to what lies on the tube.

use super::Progress;
use crate::guide::{Place, Script, Step, TakeBack, What};
use crate::knot::Turn;

impl Progress {
    /// What lies on the tube, and what is in hand, while this step of a script is told.
    pub fn of_step(script: &Script, step: &Step) -> Self {
        match &step.what {
            What::Kit(_) | What::Rig(_) => Self::Bare,
            What::Begin(_) | What::Follow(_) => Self::Before(Turn {
                leg: 1,
                ..step.place.turn()
            }),
            What::Lay(lay) => {
                let told = usize::from(step.place.crossing);
                Self::At {
                    turn: lay.turn,
                    crossings: told..told + lay.crossings.len(),
                }
            }
            What::Check(check) => {
                let laying = script.plan().laying();
                let next = laying.legs_before(check.after) + 1;
                laying.turn(next).map_or(Self::Finished, Self::Before)
            }
            What::Fair(fair) => Self::Fairing(fair.turn),
            What::Lift(_) | What::Finish(_) => Self::Finished,
        }
    }

    /// The same at a place of a script; bare when the script has no such place.
    pub fn of_place(script: &Script, place: Place) -> Self {
        script
            .step(place)
            .map_or(Self::Bare, |step| Self::of_step(script, &step))
    }

    /// While a leg is taken back: it is in hand again, as far as it was laid.
    pub fn of_take_back(back: &TakeBack) -> Self {
        Self::At {
            turn: back.turn,
            crossings: 0..back.crossings.len(),
        }
    }
}
