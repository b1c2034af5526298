//! A step, before any language.

use crate::knot::{Crossing, Hand, Leg, Side, Turn};

use super::{Landmark, Place};

/// One step: one press, one thing said, one thing shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Where in the job it belongs.
    pub place: Place,
    /// What is to be done.
    pub what: What,
}

/// What a step asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// Begin a strand at its pin.
    Begin(Begin),
    /// Begin to follow.
    Follow(Follow),
    /// Lay a leg, or part of one.
    Lay(Lay),
    /// Look at the work.
    Check(Check),
    /// The last step.
    Finish(Finish),
}

/// The beginning of a strand's lead pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Begin {
    /// The strand, 1 … `strands`.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The bottom pin where its tail is left.
    pub pin: u16,
    /// Which way the tyer works.
    pub hand: Hand,
    /// Whether the weave leaves a fault at the rims, to be told once.
    pub uneven: bool,
}

/// The beginning of a later pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Follow {
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
}

/// What to do with the cord where a leg lands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Landing {
    /// The leg goes on in a part still to be told.
    OnTheWay,
    /// Round the pin, to leave it again.
    Round,
    /// Round the pin, inside the bight already there.
    Inside,
    /// Round the pin, outside the bight already there.
    Outside,
    /// At the pin where the strand began.
    Home,
}

/// A leg, or one part of a long one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lay {
    /// Which leg of which pass.
    pub turn: Turn,
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
}

/// What should be seen after a pass of a strand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Check {
    /// The leg just laid.
    pub after: Turn,
    /// Passes the tie is to have.
    pub passes: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// Bights, and so pins on each rim.
    pub bights: u16,
    /// Cords round each of this strand's pins.
    pub cords: u16,
    /// Rows of crossings that can be counted from rim to rim between strands all laid.
    pub rows: u16,
    /// Whether every strand has this many cords down by now.
    pub is_whole: bool,
}

/// The end of laying.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Finish {
    /// Leads of the finished knot.
    pub leads: u16,
    /// Its bights.
    pub bights: u16,
    /// Its passes.
    pub passes: u16,
    /// Its strands.
    pub strands: u16,
}
