//! French, heard.

use super::ear::{Ear, RowStarts};
use super::frame::{
    Brief, Cords, Grammar, Heading, LandingWords, Landings, Language, part, share, step,
};
use super::meaning::{Lane, Mark, Met, Pin, Rim, Spoken, Way};

/// How French is understood.
pub const FRENCH: Language = Language {
    tag: "fr",
    step: step::<French>,
    staggered: "Chaque picot de tête est à mi-chemin entre deux picots de base.",
    straight: "Chaque picot de tête est à l’aplomb d’un picot de base",
    laying: &[". Menez-le en ", ". Il continue de "],
};

const SHARES: [&str; 7] = [
    "au début",
    "à peu près au quart",
    "à peu près au tiers",
    "à peu près au milieu",
    "à peu près aux deux tiers",
    "à peu près aux trois quarts",
    "presque à la fin",
];

const LEG_EXPLAINED: &str =
    " Un trajet est le cordon qui va d’un picot d’un bord à un picot de l’autre.";
const PARTS_EXPLAINED: &str =
    " Un long trajet se pose par parties, chacune assez courte pour tenir en mémoire.";

/// The two crossings, each by a verb of its own.
const CROSSINGS: [(&str, bool); 2] = [("enjambez ", true), ("glissez sous ", false)];

struct French;

impl Grammar for French {
    const HEADING: Heading = Heading {
        passes: [
            "Deuxième passe",
            "Troisième passe",
            "Quatrième passe",
            "Cinquième passe",
            "Sixième passe",
            "Septième passe",
            "Huitième passe",
            "Neuvième passe",
        ],
        strand: ["Circuit ", ", circuit "],
        quotes: [", «\u{a0}", "\u{a0}»"],
        leg: ["Trajet ", ", trajet "],
        of: " sur ",
        part: ", partie ",
        on_the_way: ", en ",
    };

    const BRIEF: Brief = Brief {
        pass: "Passe ",
        strand: ["Circuit ", ", circuit "],
        clear: " Rien à croiser.",
        first: ["Enjambez ", "Glissez sous "],
        next: ["enjambez ", "glissez sous "],
        landings: [
            " En dedans.",
            " En dehors.",
            " Revenu, il continue.",
            " Revenu, il attend.",
            " Revenu, il s’arrête.",
        ],
    };

    const CORDS: Cords = Cords {
        clear: " Le cordon ne croise rien.",
        start: " En route\u{a0}: ",
        between: ", puis ",
        clear_by_pins: " Aucun cordon n’est encore sur son chemin\u{a0}: il n’y a rien à croiser.",
        starts: RowStarts {
            only: " Vous rencontrez ",
            first: " Vous rencontrez d’abord ",
            next: " Puis ",
            last: " Enfin ",
        },
    };

    const LANDINGS: Landings = Landings {
        plain: LandingWords {
            hold: " Tenez-le là.",
            round: [" Contournez le ", "."],
            turns: [
                ", tournez en dedans de la ganse en place.",
                ", tournez en dehors de la ganse en place.",
            ],
        },
        teach: LandingWords {
            hold: " Tenez-le là du bout du doigt.",
            round: [" Faites-lui contourner le ", ", et gardez-le bien ajusté."],
            turns: [
                ", tournez en dedans de la ganse en place, entre elle et le milieu du nœud, et \
                 gardez le cordon bien ajusté.",
                ", tournez en dehors de la ganse en place, au-delà d’elle, et gardez le cordon \
                 bien ajusté.",
            ],
        },
        at: " Au ",
        homes: [
            ", le cordon est revenu à son départ\u{a0}; il continue autour du picot.",
            ", le cordon est revenu à son départ. Fixez-le là avec du ruban, en attendant sa \
             prochaine passe.",
            ", le cordon est revenu à son départ. Laissez pendre là son extrémité.",
        ],
    };

    fn pin(ear: &mut Ear) -> Result<Pin, String> {
        ear.pin_of(&[
            ("picot de base ", Rim::Bottom),
            ("picot de tête ", Rim::Top),
        ])
    }

    fn lane(ear: &mut Ear) -> Result<Lane, String> {
        ear.must("côté ")?;
        ear.must_one_of("lane", &[("base", Lane::Below), ("tête", Lane::Above)])
    }

    fn brief_way(ear: &mut Ear) -> Result<Spoken, String> {
        let rims = [
            ("Picot de base ", Rim::Bottom),
            ("Picot de tête ", Rim::Top),
        ];
        let from = ear.pin_of(&rims)?;
        by_rim(ear, from, ", montez", ", descendez")?;
        let to = across(ear, from, " au ")?;
        let turns = if ear.rest().starts_with(Self::HEADING.part) {
            0
        } else {
            turns_in_brief(ear)?
        };
        let part = part(ear, &Self::HEADING)?;
        let mut mark = None;
        if ear.hears(", après le ") {
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
        let from = if teaches {
            ear.hears(LEG_EXPLAINED);
            ear.must(" Le cordon est au ")?;
            let from = Self::pin(ear)?;
            ear.must(". Menez-le ")?;
            by_rim(ear, from, "en montant", "en descendant")?;
            from
        } else {
            ear.must(" Du ")?;
            let from = Self::pin(ear)?;
            by_rim(ear, from, ", montez", ", descendez")?;
            from
        };
        let way = Some(way(ear)?);
        let turns = if !ear.hears(", faites ") {
            0
        } else if ear.hears("un tour complet du tube et continuez") {
            1
        } else {
            let turns = ear.number()?;
            ear.must(" tours complets du tube et continuez")?;
            turns
        };
        let before = if teaches {
            " en direction du "
        } else {
            " jusqu’au "
        };
        let to = across(ear, from, before)?;
        let lane = if !teaches {
            beside(ear)?
        } else if ear.hears(", tout contre le cordon en place, ") {
            Some(Self::lane(ear)?)
        } else {
            None
        };
        ear.must(".")?;
        Ok(Spoken {
            turns: Some(turns),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        let moves = [("montant du ", Rim::Bottom), ("descendant du ", Rim::Top)];
        let rim = ear.must_one_of("climb", &moves)?;
        let from = Self::pin(ear)?;
        if from.0 != rim {
            return Err("it goes off the tube".to_owned());
        }
        let to = across(ear, from, " au ")?;
        ear.must(".")?;
        if teaches {
            ear.hears(PARTS_EXPLAINED);
        }
        ear.must(" Le cordon est ")?;
        let share = Some(share(ear, SHARES)?);
        by_rim(ear, from, " de la montée", " de la descente")?;
        ear.must(", juste après le ")?;
        let past = Self::pin(ear)?;
        let made = if ear.hears(", et il a fait un tour du tube") {
            1
        } else if ear.hears(", et il a fait ") {
            let made = ear.number()?;
            ear.must(" tours du tube")?;
            made
        } else {
            0
        };
        ear.must(". Il continue de ")?;
        by_rim(ear, from, "monter", "descendre")?;
        let way = Some(way(ear)?);
        let lane = beside(ear)?;
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
        let over = ear.must_one_of("crossing", &CROSSINGS)?;
        let cords = ear.number()?;
        ear.must(if cords == 1 { " cordon" } else { " cordons" })?;
        Ok(Met::unnamed(over, cords))
    }

    fn cords_by_their_pins(ear: &mut Ear) -> Result<Met, String> {
        let cords = if ear.hears("le cordon qui ") {
            1
        } else {
            ear.must("les ")?;
            let cords = ear.number()?;
            ear.must(" cordons qui ")?;
            cords
        };
        let moves = if cords == 1 {
            [("monte du ", Rim::Bottom), ("descend du ", Rim::Top)]
        } else {
            [("montent du ", Rim::Bottom), ("descendent du ", Rim::Top)]
        };
        let rim = ear.must_one_of("climb", &moves)?;
        let from = Self::pin(ear)?;
        if from.0 != rim {
            return Err("what is met goes off the tube".to_owned());
        }
        let to = across(ear, from, " au ")?;
        ear.must("\u{a0}: ")?;
        let over = if cords == 1 {
            let words = [("enjambez-le", true), ("glissez dessous", false)];
            ear.must_one_of("crossing", &words)?
        } else {
            let over = ear.must_one_of("crossing", &CROSSINGS)?;
            if cords == 2 {
                ear.must("les deux")?;
            } else {
                ear.must(&format!("les {cords} ensemble"))?;
            }
            over
        };
        ear.must(".")?;
        Ok(Met {
            over,
            cords,
            of: Some((from, to)),
        })
    }
}

/// The end of a leg that goes across the knot, with these words before it.
fn across(ear: &mut Ear, from: Pin, before: &str) -> Result<Pin, String> {
    ear.must(before)?;
    let to = French::pin(ear)?;
    if to.0 == from.0 {
        return Err("it stays on one rim".to_owned());
    }
    Ok(to)
}

fn way(ear: &mut Ear) -> Result<Way, String> {
    ear.must(" vers la ")?;
    ear.must_one_of("way", &[("droite", Way::Right), ("gauche", Way::Left)])
}

/// The first of two words from the base, the second from the head.
fn by_rim(ear: &mut Ear, from: Pin, up: &str, down: &str) -> Result<(), String> {
    ear.must(match from.0 {
        Rim::Bottom => up,
        Rim::Top => down,
    })
}

fn turns_in_brief(ear: &mut Ear) -> Result<u64, String> {
    if ear.hears(", un tour complet") {
        return Ok(1);
    }
    if ear.rest().starts_with(", après ") || !ear.hears(", ") {
        return Ok(0);
    }
    let turns = ear.number()?;
    ear.must(" tours complets")?;
    Ok(turns)
}

/// The side of the cord that is followed, when there is one.
fn beside(ear: &mut Ear) -> Result<Option<Lane>, String> {
    if !ear.hears(", en restant ") {
        return Ok(None);
    }
    let lane = French::lane(ear)?;
    ear.must(" du cordon en place")?;
    Ok(Some(lane))
}
