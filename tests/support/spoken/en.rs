//! English, heard.

use std::ops::{Deref, DerefMut};

use super::ear::Ear;
use super::{Depth, Landing, Lane, Language, Mark, Met, Pin, Rim, Share, Spoken, Way};

/// How English is understood.
pub const ENGLISH: Language = Language {
    tag: "en",
    step: |ear, depth| match depth {
        Depth::Brief => English(ear).brief(),
        Depth::Plain | Depth::Teach => English(ear).full(depth),
    },
    staggered: "Each top pin stands half way between two bottom pins.",
    straight: "Each top pin stands straight above a bottom pin",
    laying: &[" The cord stands at ", " The cord is "],
};

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

const SHARES: [(&str, Share); 7] = [
    ("a little way", Share::Little),
    ("about a quarter of the way", Share::Quarter),
    ("about a third of the way", Share::Third),
    ("about half way", Share::Half),
    ("about two thirds of the way", Share::TwoThirds),
    ("about three quarters of the way", Share::ThreeQuarters),
    ("most of the way", Share::Most),
];

const LEG_EXPLAINED: &str = " A leg is the cord from a pin on one rim to a pin on the other.";
const PARTS_EXPLAINED: &str =
    " A long leg is laid in parts, each no longer than you can hold in your head.";

const RIMS: [(&str, Rim); 4] = [
    ("bottom pin ", Rim::Bottom),
    ("top pin ", Rim::Top),
    ("Bottom pin ", Rim::Bottom),
    ("Top pin ", Rim::Top),
];

/// An ear that understands English.
struct English<'e, 't>(&'e mut Ear<'t>);

impl<'t> Deref for English<'_, 't> {
    type Target = Ear<'t>;

    fn deref(&self) -> &Ear<'t> {
        self.0
    }
}

impl DerefMut for English<'_, '_> {
    fn deref_mut(&mut self) -> &mut Self::Target {
        self.0
    }
}

impl English<'_, '_> {
    fn pin(&mut self) -> Result<Pin, String> {
        self.pin_of(&RIMS)
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
        } else if self.rest().starts_with(", part ") || !self.hears(", ") {
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
            Some(self.until('”')?.to_owned())
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
        } else if self.has_number() {
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
            ..Spoken::bare(from, to, way, lane)
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
        let share = Some(self.must_one_of("share of the way", &SHARES)?);
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
            ..Spoken::bare(from, to, way, lane)
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
