//! A step, before any language.

mod caution;
mod off_the_tube;
mod on_the_tube;
mod rigging;

pub use caution::Caution;
pub use off_the_tube::{FairStep, FinishStep, FinishTask, LiftStep, LiftTask, Tuck};
pub use on_the_tube::{BeginStep, CheckStep, FollowStep, Landing, LastLeg, LayStep};
pub use rigging::{KitStep, RigStep, Task};

use super::Place;

/// One step: one press, one thing said, one thing shown.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Caution, Plan, Script};
///
/// // The tail is left at the first pin, and the pins stand proud there.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let step = script.step(script.first()).unwrap();
/// assert_eq!(step.caution_to_say(), Some(Caution::Pins));
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
    pub fn caution(&self) -> Option<Caution> {
        match &self.what {
            What::Kit(kit) => kit.caution(),
            What::Rig(step) => step.caution(),
            What::Begin(begin) if begin.strand == 1 => Some(Caution::Pins),
            What::Follow(follow) if follow.strand == 1 => Some(Caution::Rest),
            What::Lift(lift) if lift.task == LiftTask::TopPins => Some(Caution::Pins),
            What::Lift(lift) if lift.task == LiftTask::SlipOff => Some(Caution::Children),
            What::Finish(finish) => Some(match finish.task {
                FinishTask::Tuck(_) | FinishTask::Trim { .. } => Caution::Blades,
                FinishTask::Seal { .. } => Caution::Heat,
                FinishTask::Done { .. } => Caution::Load,
            }),
            _ => None,
        }
    }

    /// The caution when this is the step to speak it: of several tucks and rings, the first.
    pub fn caution_to_say(&self) -> Option<Caution> {
        let is_later_tuck = matches!(&self.what, What::Finish(finish)
            if matches!(finish.task, FinishTask::Tuck(_)) && self.place != Place::Finish { task: 1 });
        let is_later_ring = matches!(&self.what, What::Rig(step) if step.is_top());
        self.caution().filter(|_| !is_later_tuck && !is_later_ring)
    }
}
