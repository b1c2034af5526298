//! What the tyer chose, and every step that follows from it.
//!
//! A [`Plan`] is all that was chosen. A [`Script`] knows every step of it and keeps none: a
//! step is worked out from its [`Place`], and so are the next and the one before. A place
//! names the leg and the crossing, not the number of a step, so it means the same when the
//! tyer changes how much is told at once.

mod after;
mod asked;
mod at_once;
mod course;
mod headway;
mod landmark;
mod laying;
mod mend;
mod place;
mod plan;
mod rack;
mod rigging;
mod script;
mod search;
mod setup;
mod step;

pub use asked::{AskError, Asked, Asking, Wanted};
pub use at_once::{AtOnce, Checks};
pub use course::{COURSE, Lesson, LessonState};
pub use headway::Headway;
pub use landmark::{Landmark, Share};
pub use mend::{TakeBack, Whereabouts};
pub use place::{Phase, Place};
pub use plan::{CordsError, Plan, Run};
pub use rack::{NameError, Rack};
pub use rigging::{Kit, RigStep, Rigging, Task};
pub use script::{Progress, Script};
pub use search::{Question, Search};
pub use setup::Setup;
pub use step::{
    Begin, Caution, Check, Fair, Finish, FinishTask, Follow, Landing, LastLeg, Lay, Lift, LiftTask,
    Step, Tuck, What,
};
