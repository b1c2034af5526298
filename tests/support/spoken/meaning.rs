//! What a spoken step of laying can mean.

/// One of the two edges of the knot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rim {
    Bottom,
    Top,
}

/// A pin: its rim and its number.
pub type Pin = (Rim, u64);

/// A way round the tube, or a side of a cord.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    Right,
    Left,
}

/// Where a follower lies beside the cord it follows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lane {
    Below,
    Above,
}

/// How much is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Depth {
    Brief,
    Plain,
    Teach,
}

/// What to do where the words end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Landing {
    Hold,
    Round,
    Inside,
    Outside,
    HomeAndOn,
    HomeToWait,
    HomeToEnd,
}

/// Cords that are met together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Met {
    pub over: bool,
    pub cords: u64,
    /// The pins of the leg they belong to, in its own direction.
    pub of: Option<(Pin, Pin)>,
}

impl Met {
    /// Cords of which the pins are not named.
    pub fn unnamed(over: bool, cords: u64) -> Self {
        let of = None;
        Self { over, cords, of }
    }
}

/// How much of a leg lies behind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Share {
    Little,
    Quarter,
    Third,
    Half,
    TwoThirds,
    ThreeQuarters,
    Most,
}

/// Where a later part of a leg begins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// The way that lies behind.
    pub share: Option<Share>,
    pub past: Pin,
    /// Whole turns made so far.
    pub made: Option<u64>,
}

impl Mark {
    /// A pin that lies behind, and nothing more.
    pub fn past(pin: Pin) -> Self {
        Self {
            share: None,
            past: pin,
            made: None,
        }
    }
}

/// All that a spoken step of laying says. What its depth leaves out is `None`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spoken {
    pub pass: Option<u64>,
    pub strand: Option<u64>,
    pub cord: Option<String>,
    /// The leg's number and how many there are.
    pub leg: Option<(u64, u64)>,
    /// The part and how many there are.
    pub part: (u64, u64),
    pub from: Pin,
    pub to: Pin,
    pub way: Option<Way>,
    /// Whole turns of the tube on the leg.
    pub turns: Option<u64>,
    pub lane: Option<Lane>,
    pub mark: Option<Mark>,
    pub met: Vec<Met>,
    pub landing: Option<Landing>,
}

impl Spoken {
    /// A step of which only this is known so far.
    pub fn bare(from: Pin, to: Pin, way: Option<Way>, lane: Option<Lane>) -> Self {
        Self {
            pass: None,
            strand: None,
            cord: None,
            leg: None,
            part: (1, 1),
            from,
            to,
            way,
            turns: None,
            lane,
            mark: None,
            met: Vec::new(),
            landing: None,
        }
    }
}
