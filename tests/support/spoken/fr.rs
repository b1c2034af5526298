//! French, heard.

use std::ops::{Deref, DerefMut};

use super::ear::Ear;
use super::{Depth, Landing, Lane, Language, Mark, Met, Pin, Rim, Share, Spoken, Way};

/// How French is understood.
pub const FRENCH: Language = Language {
    tag: "fr",
    step: |ear, depth| match depth {
        Depth::Brief => French(ear).brief(),
        Depth::Plain | Depth::Teach => French(ear).full(depth),
    },
    staggered: "Chaque picot de tête est à mi-chemin entre deux picots de base.",
    straight: "Chaque picot de tête est à l’aplomb d’un picot de base",
    laying: &[". Menez-le en ", ". Il continue de "],
};

const PASSES: [(&str, u64); 8] = [
    ("Deuxième passe", 2),
    ("Troisième passe", 3),
    ("Quatrième passe", 4),
    ("Cinquième passe", 5),
    ("Sixième passe", 6),
    ("Septième passe", 7),
    ("Huitième passe", 8),
    ("Neuvième passe", 9),
];

const SHARES: [(&str, Share); 7] = [
    ("au début", Share::Little),
    ("à peu près au quart", Share::Quarter),
    ("à peu près au tiers", Share::Third),
    ("à peu près au milieu", Share::Half),
    ("à peu près aux deux tiers", Share::TwoThirds),
    ("à peu près aux trois quarts", Share::ThreeQuarters),
    ("presque à la fin", Share::Most),
];

const LEG_EXPLAINED: &str =
    " Un trajet est le cordon qui va d’un picot d’un bord à un picot de l’autre.";
const PARTS_EXPLAINED: &str =
    " Un long trajet se pose par parties, chacune assez courte pour tenir en mémoire.";

const RIMS: [(&str, Rim); 2] = [
    ("picot de base ", Rim::Bottom),
    ("picot de tête ", Rim::Top),
];

/// The two crossings, each by a verb of its own.
const CROSSINGS: [(&str, bool); 2] = [("enjambez ", true), ("glissez sous ", false)];

/// An ear that understands French.
struct French<'e, 't>(&'e mut Ear<'t>);

impl<'t> Deref for French<'_, 't> {
    type Target = Ear<'t>;

    fn deref(&self) -> &Ear<'t> {
        self.0
    }
}

impl DerefMut for French<'_, '_> {
    fn deref_mut(&mut self) -> &mut Self::Target {
        self.0
    }
}

impl French<'_, '_> {
    fn pin(&mut self) -> Result<Pin, String> {
        self.pin_of(&RIMS)
    }

    /// A leg between two pins on opposite rims, and the two words before and between them.
    fn to(&mut self, from: Pin, before: &str) -> Result<Pin, String> {
        self.must(before)?;
        let to = self.pin()?;
        if to.0 == from.0 {
            return Err("it stays on one rim".to_owned());
        }
        Ok(to)
    }

    fn way(&mut self) -> Result<Way, String> {
        self.must(" vers la ")?;
        self.must_one_of("way", &[("droite", Way::Right), ("gauche", Way::Left)])
    }

    fn lane(&mut self) -> Result<Lane, String> {
        self.must("côté ")?;
        self.must_one_of("lane", &[("base", Lane::Below), ("tête", Lane::Above)])
    }

    /// Climbing from the base, coming down from the head.
    fn heads(&mut self, from: Pin, up: &str, down: &str) -> Result<(), String> {
        self.must(match from.0 {
            Rim::Bottom => up,
            Rim::Top => down,
        })
    }

    fn part(&mut self) -> Result<(u64, u64), String> {
        if self.hears(", partie ") {
            self.pair(" sur ")
        } else {
            Ok((1, 1))
        }
    }

    fn brief(&mut self) -> Result<Spoken, String> {
        let (mut pass, mut strand, mut lane) = (None, None, None);
        if self.hears("Passe ") {
            pass = Some(self.number()?);
            self.must(", ")?;
            if self.hears("circuit ") {
                strand = Some(self.number()?);
                self.must(", ")?;
            }
            lane = Some(self.lane()?);
            self.must(". ")?;
        } else if self.hears("Circuit ") {
            strand = Some(self.number()?);
            self.must(". ")?;
        }
        let rims = [
            ("Picot de base ", Rim::Bottom),
            ("Picot de tête ", Rim::Top),
        ];
        let from = self.pin_of(&rims)?;
        self.heads(from, ", montez", ", descendez")?;
        let to = self.to(from, " au ")?;
        let part = self.part()?;
        let (part, turns) = if part == (1, 1) {
            let turns = self.turns_in_brief()?;
            (self.part()?, turns)
        } else {
            (part, 0)
        };
        let mark = if self.hears(", après le ") {
            Some(Mark {
                share: None,
                past: self.pin()?,
                made: None,
            })
        } else {
            None
        };
        self.must(".")?;
        let met = self.crossings_in_brief()?;
        let landings = [
            (" En dedans.", Landing::Inside),
            (" En dehors.", Landing::Outside),
            (" Revenu, il continue.", Landing::HomeAndOn),
            (" Revenu, il attend.", Landing::HomeToWait),
            (" Revenu, il s’arrête.", Landing::HomeToEnd),
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

    fn turns_in_brief(&mut self) -> Result<u64, String> {
        if self.hears(", un tour complet") {
            return Ok(1);
        }
        if self.rest().starts_with(", après ") || !self.hears(", ") {
            return Ok(0);
        }
        let turns = self.number()?;
        self.must(" tours complets")?;
        Ok(turns)
    }

    fn crossings_in_brief(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Rien à croiser.") {
            return Ok(met);
        }
        self.must(" ")?;
        let first = [("Enjambez ", true), ("Glissez sous ", false)];
        let mut over = self.must_one_of("crossing", &first)?;
        loop {
            let cords = self.number()?;
            met.push(Met {
                over,
                cords,
                of: None,
            });
            if !self.hears(", ") {
                self.must(".")?;
                return Ok(met);
            }
            over = self.must_one_of("crossing", &CROSSINGS)?;
        }
    }

    /// A step in plain words or in those that teach.
    fn full(&mut self, depth: Depth) -> Result<Spoken, String> {
        let teaches = depth == Depth::Teach;
        let (pass, mut strand) = match self.one_of(&PASSES) {
            Some(pass) => (pass, None),
            None if self.hears("Circuit ") => (1, Some(self.number()?)),
            None => (1, None),
        };
        if pass > 1 && self.hears(", circuit ") {
            strand = Some(self.number()?);
        }
        let cord = if self.hears(", «\u{a0}") {
            let name = self.until('»')?;
            let name = name.strip_suffix('\u{a0}').ok_or("a name run together")?;
            Some(name.to_owned())
        } else {
            None
        };
        self.must(if pass == 1 && strand.is_none() {
            "Trajet "
        } else {
            ", trajet "
        })?;
        let leg = Some(self.pair(" sur ")?);
        let part = self.part()?;
        let mut spoken = if self.hears(", en ") {
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
        let from = if teaches {
            self.hears(LEG_EXPLAINED);
            self.must(" Le cordon est au ")?;
            let from = self.pin()?;
            self.must(". Menez-le ")?;
            self.heads(from, "en montant", "en descendant")?;
            from
        } else {
            self.must(" Du ")?;
            let from = self.pin()?;
            self.heads(from, ", montez", ", descendez")?;
            from
        };
        let way = Some(self.way()?);
        let turns = if !self.hears(", faites ") {
            0
        } else if self.hears("un tour complet du tube et continuez") {
            1
        } else {
            let turns = self.number()?;
            self.must(" tours complets du tube et continuez")?;
            turns
        };
        let to = self.to(
            from,
            if teaches {
                " en direction du "
            } else {
                " jusqu’au "
            },
        )?;
        let lane = if teaches && self.hears(", tout contre le cordon en place, ") {
            Some(self.lane()?)
        } else if !teaches {
            self.keeping()?
        } else {
            None
        };
        self.must(".")?;
        Ok(Spoken {
            turns: Some(turns),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn keeping(&mut self) -> Result<Option<Lane>, String> {
        if !self.hears(", en restant ") {
            return Ok(None);
        }
        let lane = self.lane()?;
        self.must(" du cordon en place")?;
        Ok(Some(lane))
    }

    /// A later part of a leg.
    fn on_the_way(&mut self, teaches: bool) -> Result<Spoken, String> {
        let moves = [("montant du ", Rim::Bottom), ("descendant du ", Rim::Top)];
        let rim = self.must_one_of("climb", &moves)?;
        let from = self.pin()?;
        if from.0 != rim {
            return Err("it goes off the tube".to_owned());
        }
        let to = self.to(from, " au ")?;
        self.must(".")?;
        if teaches {
            self.hears(PARTS_EXPLAINED);
        }
        self.must(" Le cordon est ")?;
        let share = Some(self.must_one_of("share of the way", &SHARES)?);
        self.heads(from, " de la montée", " de la descente")?;
        self.must(", juste après le ")?;
        let past = self.pin()?;
        let made = if self.hears(", et il a fait un tour du tube") {
            1
        } else if self.hears(", et il a fait ") {
            let made = self.number()?;
            self.must(" tours du tube")?;
            made
        } else {
            0
        };
        self.must(". Il continue de ")?;
        self.heads(from, "monter", "descendre")?;
        let way = Some(self.way()?);
        let lane = self.keeping()?;
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
        if self.hears(" Le cordon ne croise rien.") {
            return Ok(met);
        }
        self.must(" En route\u{a0}: ")?;
        loop {
            let over = self.must_one_of("crossing", &CROSSINGS)?;
            let cords = self.number()?;
            self.must(if cords == 1 { " cordon" } else { " cordons" })?;
            met.push(Met {
                over,
                cords,
                of: None,
            });
            if !self.hears(", puis ") {
                self.must(".")?;
                return Ok(met);
            }
        }
    }

    fn cords_by_their_pins(&mut self) -> Result<Vec<Met>, String> {
        let mut met = Vec::new();
        if self.hears(" Aucun cordon n’est encore sur son chemin\u{a0}: il n’y a rien à croiser.")
        {
            return Ok(met);
        }
        // Whether this is the first, and whether more follow.
        let starts = [
            (" Vous rencontrez d’abord ", (true, true)),
            (" Vous rencontrez ", (true, false)),
            (" Puis ", (false, true)),
            (" Enfin ", (false, false)),
        ];
        loop {
            let (is_first, more) = self.must_one_of("cord", &starts)?;
            if is_first != met.is_empty() {
                return Err("out of order".to_owned());
            }
            met.push(self.cord_by_its_pins()?);
            if !more {
                return Ok(met);
            }
        }
    }

    fn cord_by_its_pins(&mut self) -> Result<Met, String> {
        let cords = if self.hears("le cordon qui ") {
            1
        } else {
            self.must("les ")?;
            let cords = self.number()?;
            self.must(" cordons qui ")?;
            cords
        };
        let moves: [(&str, Rim); 2] = if cords == 1 {
            [("monte du ", Rim::Bottom), ("descend du ", Rim::Top)]
        } else {
            [("montent du ", Rim::Bottom), ("descendent du ", Rim::Top)]
        };
        let rim = self.must_one_of("climb", &moves)?;
        let from = self.pin()?;
        if from.0 != rim {
            return Err("what is met goes off the tube".to_owned());
        }
        let to = self.to(from, " au ")?;
        self.must("\u{a0}: ")?;
        let over = if cords == 1 {
            self.must_one_of(
                "crossing",
                &[("enjambez-le", true), ("glissez dessous", false)],
            )?
        } else {
            let over = self.must_one_of("crossing", &CROSSINGS)?;
            if cords == 2 {
                self.must("les deux")?;
            } else {
                self.must(&format!("les {cords} ensemble"))?;
            }
            over
        };
        self.must(".")?;
        Ok(Met {
            over,
            cords,
            of: Some((from, to)),
        })
    }

    fn landing(&mut self, to: Pin, teaches: bool) -> Result<Landing, String> {
        if self.hears(if teaches {
            " Tenez-le là du bout du doigt."
        } else {
            " Tenez-le là."
        }) {
            return Ok(Landing::Hold);
        }
        let is_round = self.hears(if teaches {
            " Faites-lui contourner le "
        } else {
            " Contournez le "
        });
        if !is_round {
            self.must(" Au ")?;
        }
        if self.pin()? != to {
            return Err("it lands elsewhere".to_owned());
        }
        if is_round {
            self.must(if teaches {
                ", et gardez-le bien ajusté."
            } else {
                "."
            })?;
            return Ok(Landing::Round);
        }
        self.must(", ")?;
        if self.hears("le cordon est revenu à son départ") {
            let homes = [
                ("\u{a0}; il continue autour du picot.", Landing::HomeAndOn),
                (
                    ". Fixez-le là avec du ruban, en attendant sa prochaine passe.",
                    Landing::HomeToWait,
                ),
                (". Laissez pendre là son extrémité.", Landing::HomeToEnd),
            ];
            return self.must_one_of("end", &homes);
        }
        let turns = [
            ("tournez en dedans de la ganse en place", Landing::Inside),
            ("tournez en dehors de la ganse en place", Landing::Outside),
        ];
        let landing = self.must_one_of("turn", &turns)?;
        if teaches {
            self.must(match landing {
                Landing::Inside => ", entre elle et le milieu du nœud",
                _ => ", au-delà d’elle",
            })?;
            self.must(", et gardez le cordon bien ajusté")?;
        }
        self.must(".")?;
        Ok(landing)
    }
}
