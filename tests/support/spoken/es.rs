//! Spanish, heard.

use super::ear::{Ear, RowStarts};
use super::frame::{
    Brief, Cords, Grammar, Heading, LandingWords, Landings, Language, part, share, step,
};
use super::meaning::{Lane, Mark, Met, Pin, Rim, Spoken, Way};

/// How Spanish is understood.
pub const SPANISH: Language = Language {
    tag: "es",
    step: step::<Spanish>,
    staggered: "Cada clavija de la cabeza queda a medio camino entre dos clavijas del pie.",
    straight: "Cada clavija de la cabeza queda en línea recta con una clavija del pie,",
    laying: &[" El cabo está en la clavija ", " El cabo lleva "],
};

const SHARES: [&str; 7] = [
    "un poco de ",
    "cerca de un cuarto de ",
    "cerca de un tercio de ",
    "cerca de la mitad de ",
    "cerca de dos tercios de ",
    "cerca de tres cuartos de ",
    "la mayor parte de ",
];

const LEG_EXPLAINED: &str =
    " Un tramo es el cabo que va de una clavija de un borde a una clavija del otro.";
const PARTS_EXPLAINED: &str =
    " Un tramo largo se tiende por partes, cada una lo bastante corta para retenerla de memoria.";

struct Spanish;

impl Grammar for Spanish {
    const HEADING: Heading = Heading {
        passes: [
            "Segunda pasada",
            "Tercera pasada",
            "Cuarta pasada",
            "Quinta pasada",
            "Sexta pasada",
            "Séptima pasada",
            "Octava pasada",
            "Novena pasada",
        ],
        strand: ["Hebra ", ", hebra "],
        quotes: [", «", "»"],
        leg: ["Tramo ", ", tramo "],
        of: " de ",
        part: ", parte ",
        on_the_way: ", que ",
    };

    const BRIEF: Brief = Brief {
        pass: "Pasada ",
        strand: ["Hebra ", ", hebra "],
        clear: " Libre.",
        first: ["Encima ", "Debajo "],
        next: ["encima ", "debajo "],
        landings: [
            " Por dentro.",
            " Por fuera.",
            " En casa, y sigue.",
            " En casa, a esperar.",
            " En casa, y termina.",
        ],
    };

    const CORDS: Cords = Cords {
        clear: " El cabo no cruza nada.",
        start: " En el camino: ",
        between: ", luego ",
        clear_by_pins: " Todavía no hay nada en su camino, así que no cruza nada.",
        starts: RowStarts {
            only: " Encuentras ",
            first: " Primero encuentras ",
            next: " Después, ",
            last: " Y por último, ",
        },
    };

    const LANDINGS: Landings = Landings {
        plain: LandingWords {
            hold: " Sujétalo ahí.",
            round: [" Rodea la ", "."],
            turns: [
                " gira por dentro del seno que ya está ahí.",
                " gira por fuera del seno que ya está ahí.",
            ],
        },
        teach: LandingWords {
            hold: " Sujétalo ahí con un dedo.",
            round: [
                " Llévalo alrededor de la ",
                ", por el lado de fuera, y mantenlo ceñido.",
            ],
            turns: [
                " gira por dentro del seno que ya está ahí, entre él y el centro del nudo, y \
                 mantén el cabo ceñido.",
                " gira por fuera del seno que ya está ahí, más allá de él, y mantén el cabo \
                 ceñido.",
            ],
        },
        at: " En la ",
        homes: [
            " el cabo está de nuevo donde empezó; rodea la clavija y sigue.",
            " el cabo está de nuevo donde empezó. Sujétalo ahí con cinta, a la espera de su \
             próxima pasada.",
            " el cabo está de nuevo donde empezó. Deja ahí el chicote colgando.",
        ],
    };

    /// "clavija 4 del pie".
    fn pin(ear: &mut Ear) -> Result<Pin, String> {
        if !ear.hears("clavija ") {
            ear.must("Clavija ")?;
        }
        let number = ear.number()?;
        let rims = [(" del pie", Rim::Bottom), (" de la cabeza", Rim::Top)];
        let rim = ear.must_one_of("rim", &rims)?;
        Ok((rim, number))
    }

    fn lane(ear: &mut Ear) -> Result<Lane, String> {
        let lanes = [("del pie", Lane::Below), ("de la cabeza", Lane::Above)];
        ear.must("lado ")?;
        ear.must_one_of("lane", &lanes)
    }

    fn brief_way(ear: &mut Ear) -> Result<Spoken, String> {
        let from = Self::pin(ear)?;
        by_rim(ear, from, ", sube a la ", ", baja a la ")?;
        let to = Self::pin(ear)?;
        let round = if ear.rest().starts_with(Self::HEADING.part) || !ear.hears(", ") {
            0
        } else {
            turns(ear, " vuelta", " vueltas")?
        };
        let part = part(ear, &Self::HEADING)?;
        let mut mark = None;
        if ear.hears(", tras la ") {
            mark = Some(Mark::past(Self::pin(ear)?));
        }
        Ok(Spoken {
            part,
            turns: mark.is_none().then_some(round),
            mark,
            ..Spoken::bare(from, to, None, None)
        })
    }

    fn beginning(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        if teaches {
            ear.hears(LEG_EXPLAINED);
        }
        ear.must(if teaches {
            " El cabo está en la "
        } else {
            " Desde la "
        })?;
        let from = Self::pin(ear)?;
        if teaches {
            by_rim(ear, from, ". Súbelo", ". Bájalo")?;
        } else {
            by_rim(ear, from, " sube", " baja")?;
        }
        ear.must(" hacia la ")?;
        let way = Some(way(ear)?);
        ear.must(",")?;
        let mut round = 0;
        if ear.hears(" da ") {
            round = turns(ear, " vuelta entera", " vueltas enteras")?;
            ear.must(" al tubo y sigue,")?;
        }
        ear.must(if teaches {
            " rumbo a la "
        } else {
            " hasta la "
        })?;
        let to = Self::pin(ear)?;
        let lane = if teaches && ear.hears(", bien arrimado al cabo que ya está ahí, por el ") {
            Some(Self::lane(ear)?)
        } else {
            beside(ear)?
        };
        ear.must(".")?;
        Ok(Spoken {
            turns: Some(round),
            ..Spoken::bare(from, to, way, lane)
        })
    }

    fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
        let rises = ear.hears("sube de la ");
        if !rises {
            ear.must("baja de la ")?;
        }
        let from = Self::pin(ear)?;
        if rises != (from.0 == Rim::Bottom) {
            return Err("a leg that leaves the knot".to_owned());
        }
        ear.must(" a la ")?;
        let to = Self::pin(ear)?;
        ear.must(".")?;
        if teaches {
            ear.hears(PARTS_EXPLAINED);
        }
        ear.must(" El cabo lleva ")?;
        let share = Some(share(ear, SHARES)?);
        by_rim(ear, from, "la subida", "la bajada")?;
        ear.must(", justo después de la ")?;
        let past = Self::pin(ear)?;
        let mut made = 0;
        if ear.hears(", y ha dado ") {
            made = turns(ear, " vuelta al tubo", " vueltas al tubo")?;
        }
        ear.must(". Sigue ")?;
        by_rim(ear, from, "subiendo", "bajando")?;
        ear.must(" hacia la ")?;
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
        let over = over(ear)?;
        let cords = if ear.hears("un cabo") {
            1
        } else {
            let cords = ear.number()?;
            ear.must(" cabos")?;
            cords
        };
        Ok(Met::unnamed(over, cords))
    }

    fn cords_by_their_pins(ear: &mut Ear) -> Result<Met, String> {
        let cords = if ear.hears("el cabo que ") {
            1
        } else {
            ear.must("los ")?;
            let cords = ear.number()?;
            ear.must(" cabos que ")?;
            cords
        };
        let moves = [
            ("sube de la ", (1, Rim::Bottom)),
            ("baja de la ", (1, Rim::Top)),
            ("suben de la ", (2, Rim::Bottom)),
            ("bajan de la ", (2, Rim::Top)),
        ];
        let (verb, rim) = ear.must_one_of("up or down", &moves)?;
        let from = Self::pin(ear)?;
        ear.must(" a la ")?;
        let to = Self::pin(ear)?;
        if verb != cords.min(2) || from.0 != rim || to.0 == rim {
            return Err("what is met goes neither up nor down".to_owned());
        }
        ear.must(": ")?;
        let over = over(ear)?;
        match cords {
            1 => ear.must("él.")?,
            2 => ear.must("los dos.")?,
            _ => ear.must(&format!("los {cords}."))?,
        }
        Ok(Met {
            over,
            cords,
            of: Some((from, to)),
        })
    }
}

fn way(ear: &mut Ear) -> Result<Way, String> {
    ear.must_one_of("way", &[("derecha", Way::Right), ("izquierda", Way::Left)])
}

/// The first of two words from the foot, the second from the head.
fn by_rim(ear: &mut Ear, from: Pin, up: &str, down: &str) -> Result<(), String> {
    ear.must(match from.0 {
        Rim::Bottom => up,
        Rim::Top => down,
    })
}

/// "2 vueltas", with these words after it.
fn turns(ear: &mut Ear, one: &str, many: &str) -> Result<u64, String> {
    let turns = match ear.one_of(&[("una", 1), ("dos", 2)]) {
        Some(turns) => turns,
        None => ear.number()?,
    };
    ear.must(if turns == 1 { one } else { many })?;
    Ok(turns)
}

/// On which side of the cord that is followed, if one is.
fn beside(ear: &mut Ear) -> Result<Option<Lane>, String> {
    if !ear.hears(", por el ") {
        return Ok(None);
    }
    let lane = Spanish::lane(ear)?;
    ear.must(" del cabo que ya está ahí")?;
    Ok(Some(lane))
}

/// Over or under, each by its own verb.
fn over(ear: &mut Ear) -> Result<bool, String> {
    let words = [
        ("pasa por encima de ", true),
        ("mete por debajo de ", false),
    ];
    ear.must_one_of("over or under", &words)
}
