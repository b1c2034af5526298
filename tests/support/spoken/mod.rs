//! The spoken steps of laying, understood as a tyer understands them: from the words of a
//! language and from nothing else. Shares no code with the program.
//!
//! Every language has a reader of its own beside this file, which is handed the text and says
//! what it means, however the language puts it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

mod de;
pub mod ear;
mod en;
mod es;
mod fr;

use ear::Ear;

/// How a language is understood.
pub struct Language {
    /// The name of its folder of messages.
    pub tag: &'static str,
    /// Understands a spoken step of laying from its beginning; what is left in the ear was not
    /// understood.
    pub step: fn(&mut Ear, Depth) -> Result<Spoken, String>,
    /// What the words that teach say, where the first strand begins, of top pins half way between
    /// the bottom ones.
    pub staggered: &'static str,
    /// The same of top pins straight above the bottom ones.
    pub straight: &'static str,
    /// Words of which one stands in every step of laying that teaches, and in no other step of a
    /// job.
    pub laying: &'static [&'static str],
}

impl Language {
    /// Whether the words that begin the first strand call the top pins staggered, or straight.
    pub fn is_staggered(&self, begin: &str) -> Option<bool> {
        let says = |words| begin.contains(words);
        says(self.staggered)
            .then_some(true)
            .or_else(|| says(self.straight).then_some(false))
    }

    /// Whether what teaches is a step of laying.
    pub fn is_lay(&self, text: &str) -> bool {
        self.laying.iter().any(|words| text.contains(words))
    }
}

/// The languages that are understood here.
pub const LANGUAGES: &[Language] = &[en::ENGLISH, de::GERMAN, es::SPANISH, fr::FRENCH];

/// The language of that tag.
pub fn language(tag: &str) -> &'static Language {
    let found = LANGUAGES.iter().find(|language| language.tag == tag);
    found.unwrap_or_else(|| {
        panic!("nobody here understands {tag}: add tests/support/spoken/{tag}.rs")
    })
}

/// Understands a spoken step of laying, or says which words it does not.
pub fn listen(tag: &str, text: &str, depth: Depth) -> Result<Spoken, String> {
    let mut ear = Ear::new(text);
    match (language(tag).step)(&mut ear, depth) {
        Ok(spoken) if ear.rest().is_empty() => Ok(spoken),
        Ok(_) => Err(format!("more is said: {:?} in {text:?}", ear.rest())),
        Err(why) => Err(format!("{why} at {:?} in {text:?}", ear.rest())),
    }
}

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
