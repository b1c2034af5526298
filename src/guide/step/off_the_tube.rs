//! The steps when all is laid: lifting the knot, fairing it, finishing its ends.

use strum::IntoStaticStr;

use crate::bench::Millimetres;
use crate::knot::{Crossing, Lattice, Leg, PassLeg, Pin, Rim};

/// Taking the knot off the tube, one thing at a time.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // Both ends of the one cord hang out.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Lift(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert_eq!((step.pins, step.ends), (7, 2));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LiftStep {
    /// What is to be done now.
    pub task: LiftTask,
    /// How many things there are to do.
    pub of: u16,
    /// Pins at each rim.
    pub pins: u16,
    /// Ends of cord that hang out.
    pub ends: u16,
    /// The rim that goes to the thick end, when what is covered tapers.
    pub thick: Option<Rim>,
}

/// What there is to do to lift a knot.
///
/// ```
/// use marlinspeak::guide::LiftTask;
///
/// // The bottom pins hold the knot until the top ring is off.
/// let name: &str = LiftTask::BottomPins.into();
/// assert_eq!(name, "bottom-pins");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum LiftTask {
    /// See that no end slips back, and mark the first bight.
    Secure,
    /// Take the pins out at the top.
    TopPins,
    /// Slide the top ring off.
    SlideRing,
    /// Take the pins out at the bottom.
    BottomPins,
    /// Slip the knot off the tube and onto the object.
    SlipOff,
    /// Slip the knot off the tube and over a ball: the rims close on the way, the middle stays.
    OverBall,
    /// Take the taped marks off from under the cords of a knot that is tied on what it covers.
    Marks,
    /// Draw the T-pins out of the board, the mat kept flat.
    DrawPins,
}

/// Drawing the slack out of one leg in one round of fairing, or out of all of them.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // A knot is gone through several times: never all the slack at once.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Fair(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert!(step.is_first && step.rounds > 1);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FairStep {
    /// This round, 1 … `rounds`.
    pub round: u16,
    /// How many times to go through the knot.
    pub rounds: u16,
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// The leg that is drawn through.
    pub leg: Leg,
    /// Legs in this strand's pass.
    pub legs: u16,
    /// Passes of the tie.
    pub passes: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// What to draw out of this leg in this round, when the tube and the object are known.
    pub draw: Option<Millimetres>,
    /// What is in the hand behind this leg then.
    pub gathered: Option<Millimetres>,
    /// The whole round, when it is told once for all legs and `leg` is only its first.
    pub in_round: Option<WholeRound>,
    /// Where the slack is worked first, when the ground asks for it: told in the first round and in the
    /// last.
    pub way: Option<FairWay>,
    /// How wide the knot is left, when it is not drawn up as tight as it goes: told in the first round and in
    /// the last.
    pub left_open: Option<Millimetres>,
    /// Whether the cord's own end is here: begin at the tail.
    pub is_first: bool,
    /// Whether the cord ends with this leg: what was gathered hangs out.
    pub is_last: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
}

/// A round of fairing that is told once for all legs.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // Two strands are two cords, each drawn through from its own tail.
/// let script = Script::new(Plan::read("4", "6", "1", "1")?, AtOnce::default());
/// let round = script.steps().find_map(|step| match step.what {
///     What::Fair(step) => step.in_round,
///     _ => None,
/// });
/// assert_eq!(round.map(|round| (round.legs, round.cords)), Some((12, 2)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WholeRound {
    /// Legs of all passes of all strands.
    pub legs: u32,
    /// Cords, each with a tail of its own.
    pub cords: usize,
}

/// Where a knot is drawn snug first.
///
/// ```
/// use marlinspeak::bench::{Cord, Ground, Millimetres};
/// use marlinspeak::guide::{AtOnce, FairWay, Plan, Script, Setup, What};
///
/// // A ball is worked tight from the middle to the poles.
/// let mm = |length| Millimetres::new(length).unwrap();
/// let knob = Setup::in_place(Ground::Ball(mm(38.0)), Cord::new(mm(3.0)));
/// let plan = Plan::read("5", "7", "1", "")?.with_setup(Some(knob));
/// let script = Script::new(plan, AtOnce::default());
/// let way = script.steps().find_map(|step| match step.what {
///     What::Fair(fair) => fair.way,
///     _ => None,
/// });
/// assert_eq!(way, Some(FairWay::Ball));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum FairWay {
    /// The middle first and the rims last, so that they close over the poles.
    Ball,
    /// The thick end, that of the bottom rim, first and the thin one last: what is loose creeps to the thin
    /// end, and what is snug at the thick one holds it. *Common practice, no source.*
    Taper,
    /// The same where the top rim lies at the thick end.
    TaperDown,
    /// The outer circle first and the inner one last, the mat kept flat. *Common practice, no source.*
    Mat,
}

/// Hiding and sealing the ends, one thing at a time.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // Two ends to tuck, then to trim and to seal, and it is done.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Finish(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert_eq!(step.of, 5);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FinishStep {
    /// What is to be done now.
    pub task: FinishTask,
    /// How many things there are to do.
    pub of: u16,
}

/// What there is to do to finish a knot.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // The working end comes first: it is in the hand.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Finish(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert!(matches!(step.task, marlinspeak::guide::FinishTask::Tuck(tuck) if tuck.is_working));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum FinishTask {
    /// Tuck an end away.
    Tuck(Tuck),
    /// See to the ends of two cords that were joined.
    Join(JoinEnds),
    /// Trim the ends close to the knot.
    Trim {
        /// How many ends there are.
        ends: u16,
    },
    /// Seal the ends with heat.
    Seal {
        /// How many ends there are.
        ends: u16,
    },
    /// Press a mat flat, and sew or glue it where its cords cross.
    Press,
    /// Everything is done, and this is what it has become.
    Done {
        /// Leads, bights and nests of the finished knot.
        lattice: Lattice,
        /// Passes of the finished knot.
        passes: u16,
    },
}

/// The two ends of a join, hidden under one crossing.
///
/// ```
/// use marlinspeak::guide::{AtOnce, CordHistory, FinishTask, Join, Plan, Script, What};
/// use marlinspeak::knot::PassLeg;
///
/// let join = Join { at: PassLeg::FIRST, row: 2, melts: false };
/// let plan = Plan::read("5", "7", "1", "1")?;
/// let plan = plan.with_cord_history(CordHistory::new(Vec::new(), vec![join]));
/// let script = Script::new(plan, AtOnce::default());
/// let is_join = |step: &marlinspeak::guide::Step| matches!(
///     &step.what, What::Finish(finish) if matches!(finish.task, FinishTask::Join(_))
/// );
/// assert_eq!(script.steps().filter(is_join).count(), 1);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct JoinEnds {
    /// The leg in whose middle they are.
    pub pass_leg: PassLeg,
    /// That leg, from pin to pin.
    pub leg: Leg,
    /// The row of the crossing, 1 the lowest.
    pub row: u16,
    /// How many strands the knot has.
    pub strands: u16,
}

/// An end of cord, and where it is hidden.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // It comes out where the cord began, and hides under the cords that lie over its way.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Finish(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// let marlinspeak::guide::FinishTask::Tuck(tuck) = step.task else { panic!() };
/// assert_eq!(tuck.pin.number, 1);
/// assert!(tuck.crossings.last().is_some_and(|crossing| !crossing.over));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Tuck {
    /// The strand it is an end of.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The working end, or the standing end left at the start.
    pub is_working: bool,
    /// The bottom pin, now a bight, where it comes out.
    pub pin: Pin,
    /// The leg to go along, away from that bight.
    pub along: Leg,
    /// The rim towards which the end lies of the cords that are there: where one more follower
    /// would.
    pub lane: Rim,
    /// How many cords lie along that leg.
    pub beside: u16,
    /// What it crosses from the bight up: what it goes over, and at last where it goes under and is
    /// held. Nothing when that leg goes under nowhere.
    pub crossings: Vec<Crossing>,
}
