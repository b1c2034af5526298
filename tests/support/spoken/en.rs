//! English, heard.

use super::ear::{Ear, RowStarts};
use super::frame::{
    Brief, Cords, Grammar, Heading, LandingWords, Landings, Language, part, share, step,
};
use super::meaning::{Lane, Mark, Met, Pin, Rim, Spoken, Way};

/// How English is understood.
pub const ENGLISH: Language = Language {
    tag: "en",
    step: step::<English>,
    staggered: "Each top pin stands half way between two bottom pins.",
    straight: "Each top pin stands straight above a bottom pin",
    laying: &[" The cord stands at ", " The cord is "],
};

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

struct English;

impl Grammar for English {
    const HEADING: Heading = Heading {
        passes: [
            "Second pass",
            "Third pass",
            "Fourth pass",
            "Fifth pass",
            "Sixth pass",
            "Seventh pass",
            "Eighth pass",
            "Ninth pass",
        ],
        strand: ["Strand ", ", strand "],
        quotes: [", “", "”"],
        leg: ["Leg ", ", leg "],
        of: " of ",
        part: ", part ",
        on_the_way: ", from ",
    };

    const BRIEF: Brief = Brief {
        pass: "Pass ",
        strand: ["Strand ", ", strand "],
        clear: " Clear.",
        first: ["Over ", "Under "],
        next: ["over ", "under "],
        landings: [
            " Inside.",
            " Outside.",
            " Home, and on.",
            " Home, to wait.",
            " Home, to end.",
        ],
    };

    const CORDS: Cords = Cords {
        clear: " The cord crosses nothing.",
        start: " On the way: ",
        between: ", then ",
        clear_by_pins: " Nothing lies in its way yet, so there is nothing to cross.",
        starts: RowStarts {
            only: " You meet ",
            first: " First you meet ",
            next: " Next ",
            last: " And last ",
        },
    };

    const LANDINGS: Landings = Landings {
        plain: LandingWords {
            hold: " Hold it there.",
            round: [" Round ", "."],
            turns: [
                " turn inside the bight already there.",
                " turn outside the bight already there.",
            ],
        },
        teach: LandingWords {
            hold: " Hold it there with a finger.",
            round: [" Lead it round the outside of ", ", and hold it snug."],
            turns: [
                " turn inside the bight already there, between it and the middle of the knot, \
                 and hold it snug.",
                " turn outside the bight already there, beyond it, and hold it snug.",
            ],
        },
        at: " At ",
        homes: [
            " the cord is back where it began; it goes on round the pin.",
            " the cord is back where it began. Tape it down there, to wait for its next pass.",
            " the cord is back where it began. Leave its end hanging there.",
        ],
    };

    fn pin(ear: &mut Ear) -> Result<Pin, String> {
        ear.pin_of(&[
            ("bottom pin ", Rim::Bottom),
            ("top pin ", Rim::Top),
            ("Bottom pin ", Rim::Bottom),
            ("Top pin ", Rim::Top),
        ])
    }

    fn lane(ear: &mut Ear) -> Result<Lane, String> {
        ear.must_one_of("lane", &[("below", Lane::Below), ("above", Lane::Above)])
    }

    fn brief_way(ear: &mut Ear) -> Result<Spoken, String> {
        let from = Self::pin(ear)?;
        ear.must(", ")?;
        up_or_down(ear, from)?;
        ear.must(" to ")?;
        let to = Self::pin(ear)?;
        let turns = if ear.hears(", once round") {
            1
        } else if ear.hears(", twice round") {
            2
        } else if ear.rest().starts_with(Self::HEADING.part) || !ear.hears(", ") {
            0
        } else {
            let turns = ear.number()?;
            ear.must(" times round")?;
            turns
        };
        let part = part(ear, &Self::HEADING)?;
        let mut mark = None;
        if ear.hears(", past ") {
            mark = Some(Mark::past(Self::pin(ear)?));
        }
        Ok(Spoken {
            part,
            turns: mark.is_none().then_some(turns),
            mark,
            ..Spoken::bare(from, to, None, None)
        })
    }

    fn beginning(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        if teaches {
            ear.hears(LEG_EXPLAINED);
        }
        ear.must(if teaches {
            " The cord stands at "
        } else {
            " From "
        })?;
        let from = Self::pin(ear)?;
        ear.must(if teaches { ". Take it " } else { " go " })?;
        up_or_down(ear, from)?;
        ear.must(" and to the ")?;
        let way = Some(way(ear)?);
        ear.must(", ")?;
        let turns = if ear.hears("once all round the tube and on, ") {
            1
        } else if ear.hears("twice all round the tube and on, ") {
            2
        } else if ear.has_number() {
            let turns = ear.number()?;
            ear.must(" times all round the tube and on, ")?;
            turns
        } else {
            0
        };
        ear.must(if teaches { "towards " } else { "to " })?;
        let to = Self::pin(ear)?;
        let lane = beside(ear, if teaches { ", close " } else { ", keeping " })?;
        ear.must(".")?;
        Ok(Spoken {
            turns: Some(turns),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        let from = Self::pin(ear)?;
        ear.must(" ")?;
        up_or_down(ear, from)?;
        ear.must(" to ")?;
        let to = Self::pin(ear)?;
        ear.must(".")?;
        if teaches {
            ear.hears(PARTS_EXPLAINED);
        }
        ear.must(" The cord is ")?;
        let share = Some(share(ear, SHARES)?);
        ear.must(" ")?;
        up_or_down(ear, from)?;
        ear.must(", just past ")?;
        let past = Self::pin(ear)?;
        let made = if ear.hears(", and has been once round the tube") {
            1
        } else if ear.hears(", and has been twice round the tube") {
            2
        } else if ear.hears(", and has been ") {
            let made = ear.number()?;
            ear.must(" times round the tube")?;
            made
        } else {
            0
        };
        ear.must(". It goes on ")?;
        up_or_down(ear, from)?;
        ear.must(" and to the ")?;
        let way = Some(way(ear)?);
        let lane = beside(ear, ", keeping ")?;
        ear.must(".")?;
        Ok(Spoken {
            mark: Some(Mark {
                share,
                past,
                made: Some(made),
            }),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn cords(ear: &mut Ear) -> Result<Met, String> {
        let words = [("over ", true), ("under ", false)];
        let over = ear.must_one_of("over or under", &words)?;
        let cords = ear.number()?;
        ear.must(if cords == 1 { " cord" } else { " cords" })?;
        Ok(Met::unnamed(over, cords))
    }

    fn cords_by_their_pins(ear: &mut Ear) -> Result<Met, String> {
        ear.must("the ")?;
        let cords = if ear.hears("cord that ") {
            1
        } else {
            let cords = ear.number()?;
            ear.must(" cords that ")?;
            cords
        };
        let moves = [
            ("goes up from ", (1, Rim::Bottom)),
            ("comes down from ", (1, Rim::Top)),
            ("go up from ", (2, Rim::Bottom)),
            ("come down from ", (2, Rim::Top)),
        ];
        let (verb, rim) = ear.must_one_of("up or down", &moves)?;
        let from = Self::pin(ear)?;
        ear.must(" to ")?;
        let to = Self::pin(ear)?;
        if verb != cords.min(2) || from.0 != rim || to.0 == rim {
            return Err("what is met goes neither up nor down".to_owned());
        }
        ear.must(": ")?;
        let words = [("go over ", true), ("tuck under ", false)];
        let over = ear.must_one_of("over or under", &words)?;
        match cords {
            1 => ear.must("it.")?,
            2 => ear.must("both.")?,
            _ => ear.must(&format!("all {cords}."))?,
        }
        Ok(Met {
            over,
            cords,
            of: Some((from, to)),
        })
    }
}

fn way(ear: &mut Ear) -> Result<Way, String> {
    ear.must_one_of("way", &[("right", Way::Right), ("left", Way::Left)])
}

/// "up" from the bottom, "down" from the top.
fn up_or_down(ear: &mut Ear, from: Pin) -> Result<(), String> {
    ear.must(match from.0 {
        Rim::Bottom => "up",
        Rim::Top => "down",
    })
}

/// The lane beside the cord that is followed, when there is one.
fn beside(ear: &mut Ear, begin: &str) -> Result<Option<Lane>, String> {
    if !ear.hears(begin) {
        return Ok(None);
    }
    let lane = English::lane(ear)?;
    ear.must(" the cord already there")?;
    Ok(Some(lane))
}
