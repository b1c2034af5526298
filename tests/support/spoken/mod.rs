//! The spoken steps of laying, understood as a tyer understands them: from the words of a
//! language and from nothing else. Shares no code with the program.
//!
//! Every language has a reader of its own beside this file, which is handed the text and says
//! what it means, however the language puts it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

mod de;
mod en;
mod es;
mod fr;
mod grammar;
mod grounds;
pub mod on_hand;

use grammar::{Grammar, Notes, understand};
#[allow(unused_imports)]
pub use grounds::as_on_a_tube;

/// How a language is understood.
pub struct Language {
    /// The name of its folder of messages.
    pub tag: &'static str,
    /// How a spoken step of laying is put: under `brief`, `plain` and `teach`.
    pub grammar: Grammar,
    /// What the words say, where the first strand begins, of top pins half way between the bottom
    /// ones.
    pub staggered: &'static [&'static str],
    /// The same of top pins straight above the bottom ones.
    pub straight: &'static [&'static str],
    /// How every step of laying begins: with the number of a leg, of a pass, or of a strand and a
    /// comma.
    pub laying: [&'static str; 3],
}

impl Language {
    /// Whether the words that begin the first strand call the top pins staggered, or straight.
    pub fn is_staggered(&self, begin: &str) -> Option<bool> {
        let says = |words: &[&str]| words.iter().any(|words| begin.contains(words));
        says(self.staggered)
            .then_some(true)
            .or_else(|| says(self.straight).then_some(false))
    }

    /// Whether this is a step of laying.
    pub fn is_lay(&self, text: &str) -> bool {
        let [leg, pass, strand] = self.laying.map(|word| text.strip_prefix(word));
        let counts_strands = |rest: &str| {
            let rest = rest.trim_start_matches(|letter: char| letter.is_ascii_digit());
            rest.starts_with(',')
        };
        leg.or(pass).is_some() || strand.is_some_and(counts_strands)
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
    let depth = match depth {
        Depth::Brief => "brief",
        Depth::Plain => "plain",
        Depth::Teach => "teach",
    };
    let notes = understand(language(tag).grammar, depth, text)?;
    Spoken::of(&notes).ok_or_else(|| format!("not enough is said: {notes:?} in {text:?}"))
}

/// One of the two edges of the knot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rim {
    Bottom,
    Top,
}

/// A pin: its rim and its number, with [`ROW`] more for every row outside its own.
pub type Pin = (Rim, u64);

/// More than there are pins in a row.
pub const ROW: u64 = 10_000;

/// A way round the tube, or a side of a cord.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    Right,
    Left,
}

/// The rim towards which a follower lies of the first cord.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lane {
    Bottom,
    Top,
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
    /// Unless it is the pin where the leg began.
    pub past: Option<Pin>,
    /// Whole turns made so far.
    pub made: Option<u64>,
}

/// All that a spoken step of laying says. What its depth leaves out is `None`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spoken {
    pub pass: Option<u64>,
    pub strand: Option<u64>,
    pub cord: Option<String>,
    pub leg: u64,
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
    /// The step that these notes tell, if they tell a whole one.
    fn of(notes: &Notes) -> Option<Self> {
        let text = |name| {
            notes
                .iter()
                .find(|(known, _)| *known == name)
                .map(|(_, value)| *value)
        };
        let number = |name| text(name)?.parse::<u64>().ok();
        // Of several rows of pins, one inside the other, every pin is told with its row.
        let pin_of = |name, row| {
            let row = number(row).unwrap_or(1) - 1;
            number(name).map(|number| ROW * row + number)
        };
        let rises = text("h")? == "rising";
        let (from, to) = if rises {
            (Rim::Bottom, Rim::Top)
        } else {
            (Rim::Top, Rim::Bottom)
        };
        let met = notes
            .iter()
            .filter(|(name, _)| ["over", "under"].contains(name));
        let mark = || {
            let share = text("share").and_then(|share| {
                SHARES
                    .iter()
                    .find(|(name, _)| *name == share)
                    .map(|(_, share)| *share)
            });
            let past = text("rim")
                .zip(pin_of("past", "past-row"))
                .map(|(rim, past)| {
                    let rim = if rim == "top" { Rim::Top } else { Rim::Bottom };
                    (rim, past)
                });
            let made = number("made");
            let is_told = share.is_some() || past.is_some() || made.is_some_and(|made| made > 0);
            is_told.then_some(Mark { share, past, made })
        };
        // Where it lands is said twice.
        let to_pin = pin_of("to", "to-row");
        if number("landed").is_some() && pin_of("landed", "landed-row") != to_pin {
            return None;
        }
        Some(Self {
            pass: number("pass"),
            strand: number("strand"),
            cord: text("cord").map(str::to_owned),
            leg: number("leg")?,
            part: (number("part").unwrap_or(1), number("parts").unwrap_or(1)),
            from: (from, pin_of("from", "from-row")?),
            to: (to, to_pin?),
            way: text("way").map(|way| if way == "left" { Way::Left } else { Way::Right }),
            // In a later part nothing is said of the turns of the whole leg.
            turns: number("turns").filter(|_| number("part").is_none_or(|part| part == 1)),
            lane: text("lane").map(|lane| {
                if lane == "top" {
                    Lane::Top
                } else {
                    Lane::Bottom
                }
            }),
            mark: mark(),
            met: met
                .map(|(name, cords)| {
                    let cords = cords.parse().ok()?;
                    Some(Met {
                        over: *name == "over",
                        cords,
                    })
                })
                .collect::<Option<_>>()?,
            landing: text("landing").and_then(|landing| {
                LANDINGS
                    .iter()
                    .find(|(name, _)| *name == landing)
                    .map(|(_, landing)| *landing)
            }),
        })
    }
}

/// Shares of the way by their names in the grammars.
const SHARES: [(&str, Share); 7] = [
    ("little", Share::Little),
    ("quarter", Share::Quarter),
    ("third", Share::Third),
    ("half", Share::Half),
    ("two-thirds", Share::TwoThirds),
    ("three-quarters", Share::ThreeQuarters),
    ("most", Share::Most),
];

/// Landings by their names in the grammars.
const LANDINGS: [(&str, Landing); 7] = [
    ("hold", Landing::Hold),
    ("round", Landing::Round),
    ("inside", Landing::Inside),
    ("outside", Landing::Outside),
    ("on", Landing::HomeAndOn),
    ("wait", Landing::HomeToWait),
    ("end", Landing::HomeToEnd),
];
