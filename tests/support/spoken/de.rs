//! German, heard.

use super::ear::{Ear, RowStarts};
use super::frame::{
    Brief, Cords, Grammar, Heading, LandingWords, Landings, Language, part, share, step,
};
use super::meaning::{Lane, Mark, Met, Pin, Rim, Spoken, Way};

/// How German is understood.
pub const GERMAN: Language = Language {
    tag: "de",
    step: step::<German>,
    staggered: "Jeder Kopf-Stift steht auf Lücke zwischen zwei Fuß-Stiften.",
    straight: "Jeder Kopf-Stift steht gerade über einem Fuß-Stift",
    laying: &[" Die Schnur steht an ", " Die Schnur hat "],
};

const SHARES: [&str; 7] = [
    "ein kleines Stück des Weges",
    "etwa ein Viertel des Weges",
    "etwa ein Drittel des Weges",
    "etwa die Hälfte des Weges",
    "etwa zwei Drittel des Weges",
    "etwa drei Viertel des Weges",
    "den größten Teil des Weges",
];

const LEG_EXPLAINED: &str =
    " Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am anderen.";
const PARTS_EXPLAINED: &str =
    " Eine lange Bahn wird in Teilen gelegt, jeder nicht länger, als man sich merken kann.";

struct German;

impl Grammar for German {
    const HEADING: Heading = Heading {
        passes: [
            "Zweiter Durchgang",
            "Dritter Durchgang",
            "Vierter Durchgang",
            "Fünfter Durchgang",
            "Sechster Durchgang",
            "Siebter Durchgang",
            "Achter Durchgang",
            "Neunter Durchgang",
        ],
        strand: ["Strang ", ", Strang "],
        quotes: [", „", "“"],
        leg: ["Bahn ", ", Bahn "],
        of: " von ",
        part: ", Teil ",
        on_the_way: ", von ",
    };

    const BRIEF: Brief = Brief {
        pass: "Durchgang ",
        strand: ["Strang ", ", Strang "],
        clear: " Frei.",
        first: ["Über ", "Tauch unter "],
        next: ["über ", "tauch unter "],
        landings: [
            " Innen.",
            " Außen.",
            " Am Anfang, und weiter.",
            " Am Anfang, warten lassen.",
            " Am Anfang, hängen lassen.",
        ],
    };

    const CORDS: Cords = Cords {
        clear: " Die Schnur kreuzt nichts.",
        start: " Auf dem Weg: ",
        between: ", dann ",
        clear_by_pins: " Noch liegt nichts im Weg, also ist nichts zu kreuzen.",
        starts: RowStarts {
            only: " Auf dem Weg ",
            first: " Zuerst ",
            next: " Dann ",
            last: " Zuletzt ",
        },
    };

    const LANDINGS: Landings = Landings {
        plain: LandingWords {
            hold: " Halt deine Schnur dort fest.",
            round: [" Um ", " herum."],
            turns: [
                " wende innen in der Bucht, die schon liegt.",
                " wende außen um die Bucht herum, die schon liegt.",
            ],
        },
        teach: LandingWords {
            hold: " Halt deine Schnur dort mit einem Finger fest.",
            round: [
                " Führe deine Schnur außen um ",
                " herum, und lass sie satt anliegen.",
            ],
            turns: [
                " wende innen in der Bucht, die schon liegt, zwischen ihr und der Mitte des \
                 Knotens, und lass deine Schnur satt anliegen.",
                " wende außen um die Bucht herum, die schon liegt, weiter draußen als sie, und \
                 lass deine Schnur satt anliegen.",
            ],
        },
        at: " An ",
        homes: [
            " ist die Schnur wieder am Anfang; sie läuft um den Stift weiter.",
            " ist die Schnur wieder am Anfang. Klebe sie dort fest, bis ihr nächster Durchgang \
             kommt.",
            " ist die Schnur wieder am Anfang. Lass ihr Ende dort hängen.",
        ],
    };

    fn pin(ear: &mut Ear) -> Result<Pin, String> {
        ear.pin_of(&[("Fuß-Stift ", Rim::Bottom), ("Kopf-Stift ", Rim::Top)])
    }

    fn lane(ear: &mut Ear) -> Result<Lane, String> {
        let sides = [("Fuß-Seite", Lane::Below), ("Kopf-Seite", Lane::Above)];
        ear.must_one_of("side", &sides)
    }

    fn brief_way(ear: &mut Ear) -> Result<Spoken, String> {
        let from = Self::pin(ear)?;
        let to = across(ear, from, ", ")?;
        let mut turns = 0;
        if !ear.rest().starts_with(Self::HEADING.part) && ear.hears(", ") {
            turns = times(ear)?.ok_or("no turns")?;
            ear.must(" herum")?;
        }
        let part = part(ear, &Self::HEADING)?;
        let mut mark = None;
        if ear.hears(", an ") {
            mark = Some(Mark::past(Self::pin(ear)?));
            ear.must(" vorbei")?;
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
            ear.must(" Die Schnur steht an ")?;
        } else {
            ear.must(" Von ")?;
        }
        let from = Self::pin(ear)?;
        ear.must(if teaches {
            ". Führe sie nach "
        } else {
            " nach "
        })?;
        let way = Some(way(ear)?);
        ear.must(" ")?;
        up_or_down(ear, from)?;
        ear.must(", ")?;
        let turns = times(ear)?;
        if turns.is_some() {
            ear.must(" ganz um das Rohr herum und weiter, ")?;
        }
        ear.must(if teaches { "auf " } else { "zu " })?;
        let to = Self::pin(ear)?;
        if teaches {
            ear.must(" zu")?;
        }
        let begin = if teaches {
            ", dicht auf der "
        } else {
            ", immer auf der "
        };
        let lane = beside(ear, begin)?;
        ear.must(".")?;
        Ok(Spoken {
            turns: Some(turns.unwrap_or(0)),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        let from = Self::pin(ear)?;
        let to = across(ear, from, " ")?;
        ear.must(".")?;
        if teaches {
            ear.hears(PARTS_EXPLAINED);
        }
        ear.must(" Die Schnur hat ")?;
        let share = Some(share(ear, SHARES)?);
        ear.must(" hinter sich")?;
        let mut made = 0;
        if ear.hears(", ist ") {
            made = times(ear)?.ok_or("no turns")?;
            ear.must(" ganz um das Rohr gelaufen und")?;
        } else {
            ear.must(" und ist")?;
        }
        ear.must(" gerade an ")?;
        let past = Self::pin(ear)?;
        ear.must(" vorbei. Von dort geht es nach ")?;
        let way = Some(way(ear)?);
        ear.must(" ")?;
        up_or_down(ear, from)?;
        let lane = beside(ear, ", immer auf der ")?;
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
        let words = [("über ", true), ("tauch unter ", false)];
        let over = ear.must_one_of("over or under", &words)?;
        // The number and the case: "über 2 Schnüre", but "unter 2 Schnüren durch".
        let one = if over { "eine Schnur" } else { "einer Schnur" };
        let cords = if ear.hears(one) {
            1
        } else {
            let cords = ear.number()?;
            ear.must(if over { " Schnüre" } else { " Schnüren" })?;
            if cords < 2 {
                return Err("one cord as if it were several".to_owned());
            }
            cords
        };
        if !over {
            ear.must(" durch")?;
        }
        Ok(Met::unnamed(over, cords))
    }

    fn cords_by_their_pins(ear: &mut Ear) -> Result<Met, String> {
        let cords = if ear.hears("kommt die Schnur, die von ") {
            1
        } else {
            ear.must("kommen die ")?;
            let cords = ear.number()?;
            ear.must(" Schnüre, die von ")?;
            cords
        };
        let from = Self::pin(ear)?;
        let to = across(ear, from, " ")?;
        ear.must(if cords == 1 { " läuft: " } else { " laufen: " })?;
        let words = [("Geh über ", true), ("Tauch unter ", false)];
        let over = ear.must_one_of("over or under", &words)?;
        let them = match (over, cords) {
            (true, 1) => "sie.".to_owned(),
            (true, 2) => "beide.".to_owned(),
            (true, _) => format!("alle {cords}."),
            (false, 1) => "ihr durch.".to_owned(),
            (false, 2) => "beiden durch.".to_owned(),
            (false, _) => format!("allen {cords} durch."),
        };
        ear.must(&them)?;
        Ok(Met {
            over,
            cords,
            of: Some((from, to)),
        })
    }
}

fn way(ear: &mut Ear) -> Result<Way, String> {
    ear.must_one_of("way", &[("rechts", Way::Right), ("links", Way::Left)])
}

/// "hoch" from the foot, "hinab" from the head.
fn up_or_down(ear: &mut Ear, from: Pin) -> Result<(), String> {
    ear.must(match from.0 {
        Rim::Bottom => "hoch",
        Rim::Top => "hinab",
    })
}

/// The end of a leg that goes across the knot; its start is already heard.
fn across(ear: &mut Ear, start: Pin, between: &str) -> Result<Pin, String> {
    ear.must(between)?;
    up_or_down(ear, start)?;
    ear.must(" zu ")?;
    let end = German::pin(ear)?;
    if end.0 == start.0 {
        return Err("it stays on its rim".to_owned());
    }
    Ok(end)
}

/// "einmal", "zweimal", "5-mal", when such a word comes next.
fn times(ear: &mut Ear) -> Result<Option<u64>, String> {
    if let Some(times) = ear.one_of(&[("einmal", 1), ("zweimal", 2)]) {
        return Ok(Some(times));
    }
    if !ear.has_number() {
        return Ok(None);
    }
    let times = ear.number()?;
    ear.must("-mal")?;
    Ok(Some(times))
}

/// The side of the cord that is followed, when there is one.
fn beside(ear: &mut Ear, begin: &str) -> Result<Option<Lane>, String> {
    if !ear.hears(begin) {
        return Ok(None);
    }
    let lane = German::lane(ear)?;
    ear.must(" der Schnur, die schon liegt")?;
    Ok(Some(lane))
}
