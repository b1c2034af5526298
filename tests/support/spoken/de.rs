//! German, heard.

use std::ops::{Deref, DerefMut};

use super::ear::Ear;
use super::{Depth, Landing, Lane, Language, Mark, Met, Pin, Rim, Share, Spoken, Way};

/// How German is understood.
pub const GERMAN: Language = Language {
    tag: "de",
    step: |ear, depth| match depth {
        Depth::Brief => German(ear).brief(),
        Depth::Plain | Depth::Teach => German(ear).full(depth),
    },
    staggered: "Jeder Kopf-Stift steht auf Lücke zwischen zwei Fuß-Stiften.",
    straight: "Jeder Kopf-Stift steht gerade über einem Fuß-Stift",
    laying: &[" Die Schnur steht an ", " Die Schnur hat "],
};

const PASSES: [(&str, u64); 8] = [
    ("Zweiter Durchgang", 2),
    ("Dritter Durchgang", 3),
    ("Vierter Durchgang", 4),
    ("Fünfter Durchgang", 5),
    ("Sechster Durchgang", 6),
    ("Siebter Durchgang", 7),
    ("Achter Durchgang", 8),
    ("Neunter Durchgang", 9),
];

const SHARES: [(&str, Share); 7] = [
    ("ein kleines Stück des Weges", Share::Little),
    ("etwa ein Viertel des Weges", Share::Quarter),
    ("etwa ein Drittel des Weges", Share::Third),
    ("etwa die Hälfte des Weges", Share::Half),
    ("etwa zwei Drittel des Weges", Share::TwoThirds),
    ("etwa drei Viertel des Weges", Share::ThreeQuarters),
    ("den größten Teil des Weges", Share::Most),
];

const RIMS: [(&str, Rim); 2] = [("Fuß-Stift ", Rim::Bottom), ("Kopf-Stift ", Rim::Top)];

const WAYS: [(&str, Way); 2] = [("rechts", Way::Right), ("links", Way::Left)];

const LANES: [(&str, Lane); 2] = [("Fuß-Seite", Lane::Below), ("Kopf-Seite", Lane::Above)];

const LEG_EXPLAINED: &str =
    " Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am anderen.";
const PARTS_EXPLAINED: &str =
    " Eine lange Bahn wird in Teilen gelegt, jeder nicht länger, als man sich merken kann.";

/// What a follower is beside, in every depth but the brief.
const BESIDE: &str = " der Schnur, die schon liegt";

/// An ear that understands German.
struct German<'e, 't>(&'e mut Ear<'t>);

impl<'t> Deref for German<'_, 't> {
    type Target = Ear<'t>;

    fn deref(&self) -> &Ear<'t> {
        self.0
    }
}

impl DerefMut for German<'_, '_> {
    fn deref_mut(&mut self) -> &mut Self::Target {
        self.0
    }
}

impl German<'_, '_> {
    fn pin(&mut self) -> Result<Pin, String> {
        self.pin_of(&RIMS)
    }

    /// "hoch" from the foot, "hinab" from the head.
    fn up_or_down(&mut self, from: Rim) -> Result<(), String> {
        self.must(match from {
            Rim::Bottom => "hoch",
            Rim::Top => "hinab",
        })
    }

    /// A leg, from pin to pin across the knot; `start` is already heard.
    fn across(&mut self, start: Pin, between: &str) -> Result<Pin, String> {
        self.must(between)?;
        self.up_or_down(start.0)?;
        self.must(" zu ")?;
        let end = self.pin()?;
        if end.0 == start.0 {
            return Err("it stays on its rim".to_owned());
        }
        Ok(end)
    }

    /// "einmal", "zweimal", "5-mal", when such a word comes next.
    fn times(&mut self) -> Result<Option<u64>, String> {
        if let Some(times) = self.one_of(&[("einmal", 1), ("zweimal", 2)]) {
            return Ok(Some(times));
        }
        if !self.has_number() {
            return Ok(None);
        }
        let times = self.number()?;
        self.must("-mal")?;
        Ok(Some(times))
    }

    fn part(&mut self) -> Result<(u64, u64), String> {
        if self.hears(", Teil ") {
            self.pair(" von ")
        } else {
            Ok((1, 1))
        }
    }

    fn brief(&mut self) -> Result<Spoken, String> {
        let (mut pass, mut strand, mut lane) = (None, None, None);
        if self.hears("Durchgang ") {
            pass = Some(self.number()?);
            if self.hears(", Strang ") {
                strand = Some(self.number()?);
            }
            self.must(", ")?;
            lane = Some(self.must_one_of("side", &LANES)?);
            self.must(". ")?;
        } else if self.hears("Strang ") {
            strand = Some(self.number()?);
            self.must(". ")?;
        }
        let from = self.pin()?;
        let to = self.across(from, ", ")?;
        let mut turns = 0;
        if !self.rest().starts_with(", Teil ") && self.hears(", ") {
            turns = self.times()?.ok_or("no turns")?;
            self.must(" herum")?;
        }
        let part = self.part()?;
        let mut mark = None;
        if self.hears(", an ") {
            mark = Some(Mark {
                share: None,
                past: self.pin()?,
                made: None,
            });
            self.must(" vorbei")?;
        }
        self.must(".")?;
        let met = self.counts()?;
        let landings = [
            (" Innen.", Landing::Inside),
            (" Außen.", Landing::Outside),
            (" Am Anfang, und weiter.", Landing::HomeAndOn),
            (" Am Anfang, warten lassen.", Landing::HomeToWait),
            (" Am Anfang, hängen lassen.", Landing::HomeToEnd),
        ];
        Ok(Spoken {
            pass,
            strand,
            part,
            turns: mark.is_none().then_some(turns),
            mark,
            met,
            landing: self.one_of(&landings),
            ..Spoken::bare(from, to, None, lane)
        })
    }

    /// Crossings as bare counts.
    fn counts(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Frei.") {
            return Ok(met);
        }
        loop {
            let words = if met.is_empty() {
                [(" Über ", true), (" Tauch unter ", false)]
            } else {
                [(" über ", true), (" tauch unter ", false)]
            };
            met.push(Met {
                over: self.must_one_of("over or under", &words)?,
                cords: self.number()?,
                of: None,
            });
            if !self.hears(",") {
                self.must(".")?;
                return Ok(met);
            }
        }
    }

    /// A step in plain words or in those that teach.
    fn full(&mut self, depth: Depth) -> Result<Spoken, String> {
        let teaches = depth == Depth::Teach;
        let (pass, mut strand) = match self.one_of(&PASSES) {
            Some(pass) => (pass, None),
            None if self.hears("Strang ") => (1, Some(self.number()?)),
            None => (1, None),
        };
        if pass > 1 && self.hears(", Strang ") {
            strand = Some(self.number()?);
        }
        let mut cord = None;
        if self.hears(", „") {
            cord = Some(self.until('“')?.to_owned());
        }
        let is_alone = pass == 1 && strand.is_none();
        self.must(if is_alone { "Bahn " } else { ", Bahn " })?;
        let leg = Some(self.pair(" von ")?);
        let part = self.part()?;
        let way = if self.hears(", von ") {
            self.on_the_way(teaches)?
        } else {
            self.must(".")?;
            self.beginning(teaches)?
        };
        let met = if teaches {
            self.cords_by_their_pins()?
        } else {
            self.cords()?
        };
        let landing = Some(self.landing(way.to, teaches)?);
        Ok(Spoken {
            pass: Some(pass),
            strand,
            cord,
            leg,
            part,
            met,
            landing,
            ..way
        })
    }

    /// The first part of a leg.
    fn beginning(&mut self, teaches: bool) -> Result<Spoken, String> {
        if teaches {
            self.hears(LEG_EXPLAINED);
            self.must(" Die Schnur steht an ")?;
        } else {
            self.must(" Von ")?;
        }
        let from = self.pin()?;
        self.must(if teaches {
            ". Führe sie nach "
        } else {
            " nach "
        })?;
        let way = Some(self.must_one_of("way", &WAYS)?);
        self.must(" ")?;
        self.up_or_down(from.0)?;
        self.must(", ")?;
        let turns = self.times()?;
        if turns.is_some() {
            self.must(" ganz um das Rohr herum und weiter, ")?;
        }
        self.must(if teaches { "auf " } else { "zu " })?;
        let to = self.pin()?;
        if teaches {
            self.must(" zu")?;
        }
        let lane = self.lane(if teaches {
            ", dicht auf der "
        } else {
            ", immer auf der "
        })?;
        self.must(".")?;
        Ok(Spoken {
            turns: Some(turns.unwrap_or(0)),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    /// The side of the cord that is followed, when there is one.
    fn lane(&mut self, begin: &str) -> Result<Option<Lane>, String> {
        if !self.hears(begin) {
            return Ok(None);
        }
        let lane = self.must_one_of("side", &LANES)?;
        self.must(BESIDE)?;
        Ok(Some(lane))
    }

    /// A later part of a leg.
    fn on_the_way(&mut self, teaches: bool) -> Result<Spoken, String> {
        let from = self.pin()?;
        let to = self.across(from, " ")?;
        self.must(".")?;
        if teaches {
            self.hears(PARTS_EXPLAINED);
        }
        self.must(" Die Schnur hat ")?;
        let share = Some(self.must_one_of("share of the way", &SHARES)?);
        self.must(" hinter sich")?;
        let mut made = 0;
        if self.hears(", ist ") {
            made = self.times()?.ok_or("no turns")?;
            self.must(" ganz um das Rohr gelaufen und")?;
        } else {
            self.must(" und ist")?;
        }
        self.must(" gerade an ")?;
        let past = self.pin()?;
        self.must(" vorbei. Von dort geht es nach ")?;
        let way = Some(self.must_one_of("way", &WAYS)?);
        self.must(" ")?;
        self.up_or_down(from.0)?;
        let lane = self.lane(", immer auf der ")?;
        self.must(".")?;
        let mark = Some(Mark {
            share,
            past,
            made: Some(made),
        });
        Ok(Spoken {
            mark,
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn cords(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Die Schnur kreuzt nichts.") {
            return Ok(met);
        }
        self.must(" Auf dem Weg: ")?;
        loop {
            let words = [("über ", true), ("tauch unter ", false)];
            let over = self.must_one_of("over or under", &words)?;
            // The number and the case: "über 2 Schnüre", but "unter 2 Schnüren durch".
            let one = if over { "eine Schnur" } else { "einer Schnur" };
            let cords = if self.hears(one) {
                1
            } else {
                let cords = self.number()?;
                self.must(if over { " Schnüre" } else { " Schnüren" })?;
                if cords < 2 {
                    return Err("one cord as if it were several".to_owned());
                }
                cords
            };
            if !over {
                self.must(" durch")?;
            }
            met.push(Met {
                over,
                cords,
                of: None,
            });
            if !self.hears(", dann ") {
                self.must(".")?;
                return Ok(met);
            }
        }
    }

    fn cords_by_their_pins(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Noch liegt nichts im Weg, also ist nichts zu kreuzen.") {
            return Ok(met);
        }
        // Whether this is the first, and whether more follow.
        let starts = [
            (" Auf dem Weg ", (true, false)),
            (" Zuerst ", (true, true)),
            (" Dann ", (false, true)),
            (" Zuletzt ", (false, false)),
        ];
        loop {
            let (is_first, more) = self.must_one_of("cord", &starts)?;
            if is_first != met.is_empty() {
                return Err("out of order".to_owned());
            }
            let cords = if self.hears("kommt die Schnur, die von ") {
                1
            } else {
                self.must("kommen die ")?;
                let cords = self.number()?;
                self.must(" Schnüre, die von ")?;
                cords
            };
            let from = self.pin()?;
            let to = self.across(from, " ")?;
            self.must(if cords == 1 { " läuft: " } else { " laufen: " })?;
            let words = [("Geh über ", true), ("Tauch unter ", false)];
            let over = self.must_one_of("over or under", &words)?;
            let them = match (over, cords) {
                (true, 1) => "sie.".to_owned(),
                (true, 2) => "beide.".to_owned(),
                (true, _) => format!("alle {cords}."),
                (false, 1) => "ihr durch.".to_owned(),
                (false, 2) => "beiden durch.".to_owned(),
                (false, _) => format!("allen {cords} durch."),
            };
            self.must(&them)?;
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
        let hold = if teaches {
            " Halt deine Schnur dort mit einem Finger fest."
        } else {
            " Halt deine Schnur dort fest."
        };
        if self.hears(hold) {
            return Ok(Landing::Hold);
        }
        let round = if teaches {
            " Führe deine Schnur außen um "
        } else {
            " Um "
        };
        let is_round = self.hears(round);
        if !is_round {
            self.must(" An ")?;
        }
        if self.pin()? != to {
            return Err("it lands elsewhere".to_owned());
        }
        if is_round {
            self.must(" herum")?;
            self.must(if teaches {
                ", und lass sie satt anliegen."
            } else {
                "."
            })?;
            return Ok(Landing::Round);
        }
        if self.hears(" ist die Schnur wieder am Anfang") {
            let homes = [
                ("; sie läuft um den Stift weiter.", Landing::HomeAndOn),
                (
                    ". Klebe sie dort fest, bis ihr nächster Durchgang kommt.",
                    Landing::HomeToWait,
                ),
                (". Lass ihr Ende dort hängen.", Landing::HomeToEnd),
            ];
            return self.must_one_of("home", &homes);
        }
        let turns = [
            (
                " wende innen in der Bucht, die schon liegt",
                Landing::Inside,
            ),
            (
                " wende außen um die Bucht herum, die schon liegt",
                Landing::Outside,
            ),
        ];
        let landing = self.must_one_of("turn", &turns)?;
        if teaches {
            self.must(match landing {
                Landing::Inside => ", zwischen ihr und der Mitte des Knotens",
                _ => ", weiter draußen als sie",
            })?;
            self.must(", und lass deine Schnur satt anliegen")?;
        }
        self.must(".")?;
        Ok(landing)
    }
}
