//! The spoken steps of laying, understood as a tyer understands them: from the English words
//! and from nothing else. Shares no code with the program.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

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

/// Where a later part of a leg begins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// The way that lies behind, in words.
    pub share: Option<&'static str>,
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

const PASSES: [(&str, u64); 8] = [
    ("Second pass", 2),
    ("Third pass", 3),
    ("Fourth pass", 4),
    ("Fifth pass", 5),
    ("Sixth pass", 6),
    ("Seventh pass", 7),
    ("Eighth pass", 8),
    ("Ninth pass", 9),
];

const SHARES: [&str; 7] = [
    "a little way",
    "about a quarter of the way",
    "about a third of the way",
    "about half way",
    "about two thirds of the way",
    "about three quarters of the way",
    "most of the way",
];

const LEG_EXPLAINED: &str = " A leg is the cord from a pin on one rim to a pin on the other.";
const PARTS_EXPLAINED: &str =
    " A long leg is laid in parts, each no longer than you can hold in your head.";

/// Understands a spoken step of laying, or says which words it does not.
pub fn listen(text: &str, depth: Depth) -> Result<Spoken, String> {
    let mut ear = Ear { rest: text };
    let spoken = match depth {
        Depth::Brief => ear.brief(),
        Depth::Plain | Depth::Teach => ear.full(depth),
    };
    match spoken {
        Ok(spoken) if ear.rest.is_empty() => Ok(spoken),
        Ok(_) => Err(format!("more is said: {:?} in {text:?}", ear.rest)),
        Err(why) => Err(format!("{why} at {:?} in {text:?}", ear.rest)),
    }
}

struct Ear<'t> {
    rest: &'t str,
}

impl Ear<'_> {
    fn hears(&mut self, words: &str) -> bool {
        let rest = self.rest.strip_prefix(words);
        self.rest = rest.unwrap_or(self.rest);
        rest.is_some()
    }

    fn must(&mut self, words: &str) -> Result<(), String> {
        if self.hears(words) {
            Ok(())
        } else {
            Err(format!("no {words:?}"))
        }
    }

    fn one_of<T: Copy>(&mut self, choices: &[(&str, T)]) -> Option<T> {
        let heard = choices.iter().find(|(words, _)| self.hears(words))?;
        Some(heard.1)
    }

    fn number(&mut self) -> Result<u64, String> {
        let digits = self.rest.bytes().take_while(u8::is_ascii_digit).count();
        let (number, rest) = self.rest.split_at(digits);
        let number = number.parse().map_err(|_| "no number".to_owned())?;
        self.rest = rest;
        Ok(number)
    }

    fn pair(&mut self, between: &str) -> Result<(u64, u64), String> {
        let first = self.number()?;
        self.must(between)?;
        Ok((first, self.number()?))
    }

    fn pin(&mut self) -> Result<Pin, String> {
        let rims = [
            ("bottom pin ", Rim::Bottom),
            ("top pin ", Rim::Top),
            ("Bottom pin ", Rim::Bottom),
            ("Top pin ", Rim::Top),
        ];
        let rim = self.one_of(&rims).ok_or("no pin")?;
        Ok((rim, self.number()?))
    }

    fn way(&mut self) -> Result<Way, String> {
        let ways = [("right", Way::Right), ("left", Way::Left)];
        self.one_of(&ways).ok_or_else(|| "no way".to_owned())
    }

    fn lane(&mut self) -> Result<Lane, String> {
        let lanes = [("below", Lane::Below), ("above", Lane::Above)];
        self.one_of(&lanes).ok_or_else(|| "no lane".to_owned())
    }

    /// "up" from the bottom, "down" from the top.
    fn up_or_down(&mut self, from: Pin) -> Result<(), String> {
        self.must(match from.0 {
            Rim::Bottom => "up",
            Rim::Top => "down",
        })
    }

    fn part(&mut self) -> Result<(u64, u64), String> {
        if self.hears(", part ") {
            self.pair(" of ")
        } else {
            Ok((1, 1))
        }
    }

    fn brief(&mut self) -> Result<Spoken, String> {
        let (mut pass, mut strand, mut lane) = (None, None, None);
        if self.hears("Pass ") {
            pass = Some(self.number()?);
            self.must(", ")?;
            if self.hears("strand ") {
                strand = Some(self.number()?);
                self.must(", ")?;
            }
            lane = Some(self.lane()?);
            self.must(". ")?;
        } else if self.hears("Strand ") {
            strand = Some(self.number()?);
            self.must(". ")?;
        }
        let from = self.pin()?;
        self.must(", ")?;
        self.up_or_down(from)?;
        self.must(" to ")?;
        let to = self.pin()?;
        let turns = if self.hears(", once round") {
            1
        } else if self.hears(", twice round") {
            2
        } else if self.rest.starts_with(", part ") || !self.hears(", ") {
            0
        } else {
            let turns = self.number()?;
            self.must(" times round")?;
            turns
        };
        let part = self.part()?;
        let mark = if self.hears(", past ") {
            Some(Mark {
                share: None,
                past: self.pin()?,
                made: None,
            })
        } else {
            None
        };
        self.must(".")?;
        let mut met = Vec::new();
        if !self.hears(" Clear.") {
            self.must(" ")?;
            loop {
                let words = [
                    ("Over ", true),
                    ("Under ", false),
                    ("over ", true),
                    ("under ", false),
                ];
                let over = self.one_of(&words).ok_or("neither over nor under")?;
                let cords = self.number()?;
                met.push(Met {
                    over,
                    cords,
                    of: None,
                });
                if !self.hears(", ") {
                    self.must(".")?;
                    break;
                }
            }
        }
        let landings = [
            (" Inside.", Landing::Inside),
            (" Outside.", Landing::Outside),
            (" Home, and on.", Landing::HomeAndOn),
            (" Home, to wait.", Landing::HomeToWait),
            (" Home, to end.", Landing::HomeToEnd),
        ];
        Ok(Spoken {
            pass,
            strand,
            cord: None,
            leg: None,
            part,
            from,
            to,
            way: None,
            turns: mark.is_none().then_some(turns),
            lane,
            mark,
            met,
            landing: self.one_of(&landings),
        })
    }

    /// A step in plain words or in those that teach.
    fn full(&mut self, depth: Depth) -> Result<Spoken, String> {
        let teaches = depth == Depth::Teach;
        let (pass, mut strand) = match self.one_of(&PASSES) {
            Some(pass) => (pass, None),
            None if self.hears("Strand ") => (1, Some(self.number()?)),
            None => (1, None),
        };
        if pass > 1 && self.hears(", strand ") {
            strand = Some(self.number()?);
        }
        let cord = if self.hears(", “") {
            let (cord, rest) = self.rest.split_once('”').ok_or("an endless name")?;
            self.rest = rest;
            Some(cord.to_owned())
        } else {
            None
        };
        self.must(if pass == 1 && strand.is_none() {
            "Leg "
        } else {
            ", leg "
        })?;
        let leg = Some(self.pair(" of ")?);
        let part = self.part()?;
        let mut spoken = if self.hears(", from ") {
            self.on_the_way(teaches)?
        } else {
            self.must(".")?;
            self.beginning(teaches)?
        };
        spoken.met = if teaches {
            self.cords_by_their_pins()?
        } else {
            self.cords()?
        };
        spoken.landing = Some(self.landing(spoken.to, teaches)?);
        Ok(Spoken {
            pass: Some(pass),
            strand,
            cord,
            leg,
            part,
            ..spoken
        })
    }

    /// The first part of a leg.
    fn beginning(&mut self, teaches: bool) -> Result<Spoken, String> {
        if teaches {
            self.hears(LEG_EXPLAINED);
        }
        self.must(if teaches {
            " The cord stands at "
        } else {
            " From "
        })?;
        let from = self.pin()?;
        self.must(if teaches { ". Take it " } else { " go " })?;
        self.up_or_down(from)?;
        self.must(" and to the ")?;
        let way = Some(self.way()?);
        self.must(", ")?;
        let turns = if self.hears("once all round the tube and on, ") {
            1
        } else if self.hears("twice all round the tube and on, ") {
            2
        } else if self.rest.starts_with(|first: char| first.is_ascii_digit()) {
            let turns = self.number()?;
            self.must(" times all round the tube and on, ")?;
            turns
        } else {
            0
        };
        self.must(if teaches { "towards " } else { "to " })?;
        let to = self.pin()?;
        let lane = if self.hears(if teaches { ", close " } else { ", keeping " }) {
            let lane = self.lane()?;
            self.must(" the cord already there")?;
            Some(lane)
        } else {
            None
        };
        self.must(".")?;
        Ok(Spoken {
            turns: Some(turns),
            ..bare(from, to, way, lane)
        })
    }

    /// A later part of a leg.
    fn on_the_way(&mut self, teaches: bool) -> Result<Spoken, String> {
        let from = self.pin()?;
        self.must(" ")?;
        self.up_or_down(from)?;
        self.must(" to ")?;
        let to = self.pin()?;
        self.must(".")?;
        if teaches {
            self.hears(PARTS_EXPLAINED);
        }
        self.must(" The cord is ")?;
        let share = SHARES.into_iter().find(|share| self.hears(share));
        share.ok_or("no share of the way")?;
        self.must(" ")?;
        self.up_or_down(from)?;
        self.must(", just past ")?;
        let past = self.pin()?;
        let made = if self.hears(", and has been once round the tube") {
            1
        } else if self.hears(", and has been twice round the tube") {
            2
        } else if self.hears(", and has been ") {
            let made = self.number()?;
            self.must(" times round the tube")?;
            made
        } else {
            0
        };
        self.must(". It goes on ")?;
        self.up_or_down(from)?;
        self.must(" and to the ")?;
        let way = Some(self.way()?);
        let lane = if self.hears(", keeping ") {
            let lane = self.lane()?;
            self.must(" the cord already there")?;
            Some(lane)
        } else {
            None
        };
        self.must(".")?;
        Ok(Spoken {
            mark: Some(Mark {
                share,
                past,
                made: Some(made),
            }),
            ..bare(from, to, way, lane)
        })
    }

    fn cords(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" The cord crosses nothing.") {
            return Ok(met);
        }
        self.must(" On the way: ")?;
        loop {
            let words = [("over ", true), ("under ", false)];
            let over = self.one_of(&words).ok_or("neither over nor under")?;
            let cords = self.number()?;
            self.must(if cords == 1 { " cord" } else { " cords" })?;
            met.push(Met {
                over,
                cords,
                of: None,
            });
            if !self.hears(", then ") {
                self.must(".")?;
                return Ok(met);
            }
        }
    }

    fn cords_by_their_pins(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Nothing lies in its way yet, so there is nothing to cross.") {
            return Ok(met);
        }
        // Whether this is the first, and whether more follow.
        let starts = [
            (" You meet ", (true, false)),
            (" First you meet ", (true, true)),
            (" Next ", (false, true)),
            (" And last ", (false, false)),
        ];
        loop {
            let (is_first, more) = self.one_of(&starts).ok_or("no cord")?;
            if is_first != met.is_empty() {
                return Err("out of order".to_owned());
            }
            self.must("the ")?;
            let cords = if self.hears("cord that ") {
                1
            } else {
                let cords = self.number()?;
                self.must(" cords that ")?;
                cords
            };
            let moves = [
                ("goes up from ", (1, Rim::Bottom)),
                ("comes down from ", (1, Rim::Top)),
                ("go up from ", (2, Rim::Bottom)),
                ("come down from ", (2, Rim::Top)),
            ];
            let (verb, rim) = self.one_of(&moves).ok_or("neither up nor down")?;
            let from = self.pin()?;
            self.must(" to ")?;
            let to = self.pin()?;
            if verb != cords.min(2) || from.0 != rim || to.0 == rim {
                return Err("what is met goes neither up nor down".to_owned());
            }
            self.must(": ")?;
            let words = [("go over ", true), ("tuck under ", false)];
            let over = self.one_of(&words).ok_or("neither over nor under")?;
            match cords {
                1 => self.must("it.")?,
                2 => self.must("both.")?,
                _ => self.must(&format!("all {cords}."))?,
            }
            met.push(Met {
                over,
                cords,
                of: Some((from, to)),
            });
            if !more {
                return Ok(met);
            }
        }
    }

    fn landing(&mut self, to: Pin, teaches: bool) -> Result<Landing, String> {
        if self.hears(if teaches {
            " Hold it there with a finger."
        } else {
            " Hold it there."
        }) {
            return Ok(Landing::Hold);
        }
        let is_round = self.hears(if teaches {
            " Lead it round the outside of "
        } else {
            " Round "
        });
        if !is_round {
            self.must(" At ")?;
        }
        if self.pin()? != to {
            return Err("it lands elsewhere".to_owned());
        }
        if is_round {
            self.must(if teaches { ", and hold it snug." } else { "." })?;
            return Ok(Landing::Round);
        }
        let homes = [
            (
                " the cord is back where it began; it goes on round the pin.",
                Landing::HomeAndOn,
            ),
            (
                " the cord is back where it began. Tape it down there, to wait for its next pass.",
                Landing::HomeToWait,
            ),
            (
                " the cord is back where it began. Leave its end hanging there.",
                Landing::HomeToEnd,
            ),
        ];
        if let Some(home) = self.one_of(&homes) {
            return Ok(home);
        }
        let turns = [
            (" turn inside the bight already there", Landing::Inside),
            (" turn outside the bight already there", Landing::Outside),
        ];
        let landing = self.one_of(&turns).ok_or("no turn")?;
        if teaches {
            self.must(match landing {
                Landing::Inside => ", between it and the middle of the knot, and hold it snug",
                _ => ", beyond it, and hold it snug",
            })?;
        }
        self.must(".")?;
        Ok(landing)
    }
}

fn bare(from: Pin, to: Pin, way: Option<Way>, lane: Option<Lane>) -> Spoken {
    Spoken {
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
