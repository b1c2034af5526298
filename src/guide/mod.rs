//! What the tyer chose, and every step that follows from it.
//!
//! A [`Plan`] is all that was chosen. A [`Script`] knows every step of it and keeps none: a
//! step is worked out from its [`Place`], and so are the next and the one before. A place
//! names the leg and the crossing, not the number of a step, so it means the same when the
//! tyer changes how much is told at once.

mod at_once;
mod captions;
mod colours;
mod cord_history;
mod course;
mod drawing_through;
mod fairing;
mod fault;
mod fingers;
mod finishing;
mod fit_question;
mod glossary;
mod job_overview;
mod joining;
mod known_knot;
mod labour;
mod landmark;
mod laying;
mod numbering;
mod order;
mod order_answer;
mod order_error;
mod order_field;
mod order_piece;
mod phase_progress;
mod place;
mod plan;
mod plan_cords;
mod presets;
mod remaining;
mod rigging;
mod rims;
mod script;
mod search;
mod settling;
mod setup;
mod setup_form;
mod step;
mod take_back;
mod teaching;

pub use at_once::{AtOnce, Checks};
pub use captions::Captions;
pub use colours::ColoursFound;
pub use cord_history::{CordHistory, CordMeasure, Join};
pub use course::{COURSE, Lesson, LessonState};
pub use fault::{EndMend, Fault, Suspect};
pub use fingers::{FingerLeg, FingerPlace, FingerWay, Fingers};
pub use fit_question::FitQuestion;
pub use glossary::GlossaryWord;
pub use job_overview::JobPart;
pub use joining::{Hiding, JoinStep, Joining};
pub use known_knot::{KnownFit, KnownKnot, KnownVerdict};
pub use labour::Labour;
pub use landmark::{Landmark, LegShare};
pub use order::{Order, OrderRead};
pub use order_answer::{OrderAnswer, PieceAnswer};
pub use order_error::{OrderError, OrderFault, OrderLength};
pub use order_field::{OrderEntry, OrderField, PieceField};
pub use order_piece::{OrderPiece, PieceRead};
pub use phase_progress::PhaseProgress;
pub use place::{Phase, Place};
pub use plan::Plan;
pub use plan_cords::{CordRun, CordsError};
pub use presets::{PresetNameError, Presets};
pub use remaining::{CordReach, CordTakes, Remaining};
pub use rigging::Rigging;
pub use rims::RimNames;
pub use script::{LegsLaid, Script};
pub use search::{Question, Search};
pub use setup::Setup;
pub use setup_form::{GroundError, SetupError, SetupField, SetupForm};
pub use step::{
    BeginStep, Caution, CheckStep, DrawThrough, FairStep, FairWay, FinishStep, FinishTask,
    FollowStep, JoinEnds, KitStep, Landing, LastLeg, LayStep, LiftStep, LiftTask, RigStep, Step,
    Task, Tuck, What, WholeRound,
};
pub use take_back::{TakeBack, Whereabouts};
