//! A step, before any language.

mod caution;
mod off_the_tube;
mod on_the_tube;
mod rigging;

pub use caution::Caution;
pub use off_the_tube::{
    FairStep, FairWay, FinishStep, FinishTask, JoinEnds, LiftStep, LiftTask, Tuck, WholeRound,
};
pub use on_the_tube::{BeginStep, CheckStep, DrawThrough, FollowStep, Landing, LastLeg, LayStep};
pub use rigging::{KitStep, RigStep, Task};

use super::{Place, RimNames};
use crate::knot::PassLeg;

/// One step: one press, one thing said, one thing shown.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Caution, Plan, Script};
///
/// // The tail is left at the first pin, and the pins stand proud there.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let step = script.step(script.first()).unwrap();
/// assert!(step.cautions_to_say().contains(&Caution::Pins));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Where in the job it belongs.
    pub place: Place,
    /// What is to be done.
    pub what: What,
    /// Whether who learns is told why and how: the hands have not done the like before.
    pub is_taught: bool,
    /// What the two rims are called where the knot is tied.
    pub rims: RimNames,
}

/// What a step asks for.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // The tail is left, fourteen legs are laid with seven looks at them, the knot is lifted and
/// // faired, the ends are hidden.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::WholeLeg);
/// let laid = script.steps().filter(|step| matches!(step.what, What::Lay(_))).count();
/// assert_eq!(laid, 14);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// Put things into the bag.
    Kit(KitStep),
    /// Do something to the tube.
    Rig(RigStep),
    /// Begin a strand at its pin.
    Begin(BeginStep),
    /// Begin a later pass along the first.
    Follow(FollowStep),
    /// Lay a leg, or part of one.
    Lay(LayStep),
    /// Look at the work.
    Check(CheckStep),
    /// Take the knot off the tube.
    Lift(LiftStep),
    /// Draw the slack out of a leg.
    Fair(FairStep),
    /// Hide and seal the ends.
    Finish(FinishStep),
}

impl Step {
    /// What can hurt here: it stands on the screen as long as the step does.
    pub fn cautions(&self) -> Vec<Caution> {
        let mut cautions = self.cautions_with_pins();
        cautions.retain(|caution| match caution {
            Caution::Pins => self.rims.has_pins(),
            // Round the hand a fingertip opens the way.
            Caution::Pick => self.rims != RimNames::WristTips,
            _ => true,
        });
        cautions
    }

    /// The same where pins stand out of what the knot is tied on.
    fn cautions_with_pins(&self) -> Vec<Caution> {
        match &self.what {
            What::Kit(kit) => kit.cautions(),
            What::Rig(step) => step.caution().into_iter().collect(),
            What::Begin(begin) if begin.finger.is_some() => vec![Caution::Fingers],
            What::Begin(begin) if begin.strand == 1 => vec![Caution::Pins],
            What::Follow(follow) if follow.strand == 1 => vec![Caution::Rest],
            What::Lift(lift) => match lift.task {
                LiftTask::TopPins => vec![Caution::Pins],
                LiftTask::SlipOff | LiftTask::OverBall | LiftTask::Marks => vec![Caution::Children],
                LiftTask::DrawPins => vec![Caution::Pins, Caution::Children],
                _ => Vec::new(),
            },
            What::Fair(_) => vec![Caution::Pull],
            What::Finish(finish) => match finish.task {
                FinishTask::Tuck(_) | FinishTask::Join(_) => vec![Caution::Pick],
                FinishTask::Trim { .. } => vec![Caution::Blades],
                FinishTask::Seal { .. } => vec![Caution::Heat],
                FinishTask::Press => vec![Caution::Needle],
                FinishTask::Done { .. } => vec![Caution::Load],
            },
            What::Begin(_) | What::Follow(_) | What::Lay(_) | What::Check(_) => Vec::new(),
        }
    }

    /// The cautions when this is the step to speak them: of several steps that can hurt alike, the first.
    pub fn cautions_to_say(&self) -> Vec<Caution> {
        let was_said = |caution: &Caution| match (caution, &self.what) {
            (Caution::Blades, What::Kit(kit)) => kit.is_later_blade(),
            (Caution::Pins, What::Rig(step)) => step.is_top(),
            (Caution::Pick, _) => self.place != Place::Finish { task: 1 },
            (Caution::Pull, _) => self.place != Place::fair(1, PassLeg::FIRST),
            _ => false,
        };
        let mut cautions = self.cautions();
        cautions.retain(|caution| !was_said(caution));
        cautions
    }
}
