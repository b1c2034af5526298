//! A step, before any language.

use strum::IntoStaticStr;

use crate::bench::Millimetres;
use crate::knot::{Crossing, Hand, Leg, PassLeg, Pin, Side};

use super::{KitStep, Landmark, Place, RigStep};

/// One step: one press, one thing said, one thing shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Where in the job it belongs.
    pub place: Place,
    /// What is to be done.
    pub what: What,
}

/// What a step asks for.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// Put something into the bag.
    Kit(KitStep),
    /// Rig the tube.
    Rig(RigStep),
    /// Begin a strand at its pin.
    Begin(BeginStep),
    /// Begin to follow.
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

/// Something that can hurt, told where it belongs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Caution {
    /// Pins stand proud.
    Pins,
    /// Knives, picks and needles.
    Blades,
    /// Hot knife and flame.
    Heat,
    /// Never to hold a person or a load.
    Load,
    /// Cords and small parts near small children.
    Children,
    /// Hands tire.
    Rest,
}

/// The beginning of a strand's lead pass.
#[derive(Clone, Debug, PartialEq)]
pub struct BeginStep {
    /// The strand, 1 … `strands`.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The bottom pin where its tail is left.
    pub pin: u16,
    /// Which way the tyer works.
    pub hand: Hand,
    /// Whether the top pins stand half way between the bottom ones.
    pub is_staggered: bool,
    /// Whether the weave leaves a fault at the rims, to be told once.
    pub is_uneven: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The tail to leave, when it is known.
    pub tail: Option<Millimetres>,
}

/// The beginning of a later pass.
#[derive(Clone, Debug, PartialEq)]
pub struct FollowStep {
    /// The pass that begins, from 2.
    pub pass: u16,
    /// The strand, 1 … `strands`.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The bottom pin it begins at.
    pub pin: u16,
    /// The side of the cord already there to keep to.
    pub side: Side,
    /// Whether it turns inside the bight already there at the top; at the bottom it does the
    /// opposite.
    pub inside_at_top: bool,
    /// Whether another cord begins here.
    pub is_added: bool,
    /// Whether no other cord of the strand begins at this pin.
    pub is_apart: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The tail to leave on an added cord, when it is known.
    pub tail: Option<Millimetres>,
}

/// What to do with the cord where a leg lands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Landing {
    /// The leg goes on in a part still to be told.
    OnTheWay,
    /// Round the pin, to leave it again.
    Round,
    /// Round the pin, inside the bight already there.
    Inside,
    /// Round the pin, outside the bight already there.
    Outside,
    /// At the pin where this pass began, and on into the next.
    HomeAndOn,
    /// At the pin where this pass began, to wait there until other strands are laid.
    HomeToWait,
    /// At the pin where the cord began: its end.
    HomeToEnd,
}

/// A leg, or one part of a long one.
#[derive(Clone, Debug, PartialEq)]
pub struct LayStep {
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// How many strands the knot has.
    pub strands: u16,
    /// Legs in this strand's pass.
    pub legs: u16,
    /// The leg.
    pub leg: Leg,
    /// Whole turns of the tube on the whole leg.
    pub turns: u16,
    /// The side to keep to in a later pass; none in the lead pass.
    pub side: Option<Side>,
    /// Which way the tyer works.
    pub hand: Hand,
    /// This part, 1 … `parts`.
    pub part: u16,
    /// Parts the leg is told in.
    pub parts: u16,
    /// Where the hand is when this part begins; none in the first.
    pub landmark: Option<Landmark>,
    /// The crossings of this part in the order they are met.
    pub crossings: Vec<Crossing>,
    /// How the part ends.
    pub landing: Landing,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
}

/// What should be seen after a round or a pass of a strand.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckStep {
    /// The leg just laid.
    pub after: PassLeg,
    /// Rounds laid in this pass, of `rounds`.
    pub round: u16,
    /// Rounds in a pass of one strand.
    pub rounds: u16,
    /// Passes the tie is to have.
    pub passes: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The pin where the cord stands now.
    pub at: Pin,
    /// Cords round each pin that this pass has reached.
    pub cords: u16,
    /// Crossings on the tube now, when all of them belong to this strand's lead pass.
    pub crossings: Option<u32>,
    /// Crossings between two neighbouring pins from rim to rim, once the whole knot is laid.
    pub rows: u16,
    /// The last leg, and what it crossed: so many cords over and so many under.
    pub last: LastLeg,
    /// Whether every strand has this many cords down by now.
    pub is_whole: bool,
}

/// What the leg laid last should look like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LastLeg {
    /// The leg.
    pub leg: Leg,
    /// Crossings where it goes over.
    pub over: u16,
    /// Crossings where it goes under.
    pub under: u16,
}

impl CheckStep {
    /// Whether the pass is complete with this leg.
    pub const fn ends_pass(&self) -> bool {
        self.round == self.rounds
    }
}

/// Taking the knot off the tube, one thing at a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LiftStep {
    /// What to do.
    pub task: LiftTask,
    /// How many things there are to do.
    pub of: u16,
    /// Bights, and so pins in each ring.
    pub bights: u16,
    /// Ends of cord that hang out.
    pub ends: u16,
}

/// What there is to do to lift a knot.
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
}

/// Drawing the slack out of one leg in one round of fairing.
#[derive(Clone, Debug, PartialEq)]
pub struct FairStep {
    /// This round, 1 … `rounds`.
    pub round: u16,
    /// How many times to go through the knot.
    pub rounds: u16,
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// The leg.
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
    /// Whether the cord's own end is here: begin at the tail.
    pub is_first: bool,
    /// Whether the cord ends with this leg: what was gathered hangs out.
    pub is_last: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
}

/// Hiding and sealing the ends, one thing at a time.
#[derive(Clone, Debug, PartialEq)]
pub struct FinishStep {
    /// What to do.
    pub task: FinishTask,
    /// How many things there are to do.
    pub of: u16,
}

/// What there is to do to finish a knot.
#[derive(Clone, Debug, PartialEq)]
pub enum FinishTask {
    /// Tuck an end away.
    Tuck(Tuck),
    /// Trim the ends.
    Trim {
        /// Ends of cord.
        ends: u16,
    },
    /// Seal them.
    Seal {
        /// Ends of cord.
        ends: u16,
    },
    /// It is done.
    Done {
        /// Leads of the finished knot.
        leads: u16,
        /// Its bights.
        bights: u16,
        /// Its passes.
        passes: u16,
    },
}

/// An end of cord, and where it is hidden.
#[derive(Clone, Debug, PartialEq)]
pub struct Tuck {
    /// Its strand.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The working end, or the standing end left at the start.
    pub is_working: bool,
    /// The bottom pin, now a bight, where it comes out.
    pub pin: u16,
    /// The leg to go along, away from that bight.
    pub along: Leg,
    /// The first crossing on the way where that leg goes under, if it ever does.
    pub under: Option<Crossing>,
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
