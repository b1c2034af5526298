//! Spanish, heard.

use super::ear::Ear;
use super::{Depth, Landing, Lane, Language, Mark, Met, Pin, Rim, Share, Spoken, Way};

/// How Spanish is understood.
pub const SPANISH: Language = Language {
    tag: "es",
    step: |ear, depth| match depth {
        Depth::Brief => brief(ear),
        Depth::Plain => full(ear, false),
        Depth::Teach => full(ear, true),
    },
    staggered: "Cada clavija de la cabeza queda a medio camino entre dos clavijas del pie.",
    straight: "Cada clavija de la cabeza queda en línea recta con una clavija del pie,",
    laying: &[" El cabo está en la clavija ", " El cabo lleva "],
};

const PASSES: [(&str, u64); 8] = [
    ("Segunda pasada", 2),
    ("Tercera pasada", 3),
    ("Cuarta pasada", 4),
    ("Quinta pasada", 5),
    ("Sexta pasada", 6),
    ("Séptima pasada", 7),
    ("Octava pasada", 8),
    ("Novena pasada", 9),
];

const SHARES: [(&str, Share); 7] = [
    ("un poco de ", Share::Little),
    ("cerca de un cuarto de ", Share::Quarter),
    ("cerca de un tercio de ", Share::Third),
    ("cerca de la mitad de ", Share::Half),
    ("cerca de dos tercios de ", Share::TwoThirds),
    ("cerca de tres cuartos de ", Share::ThreeQuarters),
    ("la mayor parte de ", Share::Most),
];

const LEG_EXPLAINED: &str =
    " Un tramo es el cabo que va de una clavija de un borde a una clavija del otro.";
const PARTS_EXPLAINED: &str =
    " Un tramo largo se tiende por partes, cada una lo bastante corta para retenerla de memoria.";

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

/// The first of two words from the foot, the second from the head.
fn by_rim(ear: &mut Ear, from: Pin, up: &str, down: &str) -> Result<(), String> {
    ear.must(match from.0 {
        Rim::Bottom => up,
        Rim::Top => down,
    })
}

fn way(ear: &mut Ear) -> Result<Way, String> {
    let ways = [("derecha", Way::Right), ("izquierda", Way::Left)];
    ear.must_one_of("way", &ways)
}

fn lane(ear: &mut Ear) -> Result<Lane, String> {
    let lanes = [("del pie", Lane::Below), ("de la cabeza", Lane::Above)];
    ear.must("lado ")?;
    ear.must_one_of("lane", &lanes)
}

/// "2 vueltas", with these words after it.
fn turns(ear: &mut Ear, one: &str, many: &str) -> Result<u64, String> {
    let words = [("una", 1), ("dos", 2)];
    let turns = match ear.one_of(&words) {
        Some(turns) => turns,
        None => ear.number()?,
    };
    ear.must(if turns == 1 { one } else { many })?;
    Ok(turns)
}

fn part(ear: &mut Ear) -> Result<(u64, u64), String> {
    if ear.hears(", parte ") {
        ear.pair(" de ")
    } else {
        Ok((1, 1))
    }
}

fn brief(ear: &mut Ear) -> Result<Spoken, String> {
    let (mut pass, mut strand, mut side) = (None, None, None);
    if ear.hears("Pasada ") {
        pass = Some(ear.number()?);
        ear.must(", ")?;
        if ear.hears("hebra ") {
            strand = Some(ear.number()?);
            ear.must(", ")?;
        }
        side = Some(lane(ear)?);
        ear.must(". ")?;
    } else if ear.hears("Hebra ") {
        strand = Some(ear.number()?);
        ear.must(". ")?;
    }
    let from = pin(ear)?;
    by_rim(ear, from, ", sube a la ", ", baja a la ")?;
    let to = pin(ear)?;
    let round = if ear.rest().starts_with(", parte ") || !ear.hears(", ") {
        0
    } else {
        turns(ear, " vuelta", " vueltas")?
    };
    let part = part(ear)?;
    let mark = if ear.hears(", tras la ") {
        Some(Mark {
            share: None,
            past: pin(ear)?,
            made: None,
        })
    } else {
        None
    };
    ear.must(".")?;
    let met = brief_cords(ear)?;
    let landings = [
        (" Por dentro.", Landing::Inside),
        (" Por fuera.", Landing::Outside),
        (" En casa, y sigue.", Landing::HomeAndOn),
        (" En casa, a esperar.", Landing::HomeToWait),
        (" En casa, y termina.", Landing::HomeToEnd),
    ];
    Ok(Spoken {
        pass,
        strand,
        part,
        turns: mark.is_none().then_some(round),
        mark,
        met,
        landing: ear.one_of(&landings),
        ..Spoken::bare(from, to, None, side)
    })
}

/// "Encima 1, debajo 2."
fn brief_cords(ear: &mut Ear) -> Result<Vec<Met>, String> {
    let mut met = Vec::new();
    if ear.hears(" Libre.") {
        return Ok(met);
    }
    ear.must(" ")?;
    loop {
        let words = if met.is_empty() {
            [("Encima ", true), ("Debajo ", false)]
        } else {
            [("encima ", true), ("debajo ", false)]
        };
        let over = ear.must_one_of("over or under", &words)?;
        met.push(Met {
            over,
            cords: ear.number()?,
            of: None,
        });
        if !ear.hears(", ") {
            ear.must(".")?;
            return Ok(met);
        }
    }
}

/// A step in plain words or in those that teach.
fn full(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
    let (pass, mut strand) = match ear.one_of(&PASSES) {
        Some(pass) => (pass, None),
        None if ear.hears("Hebra ") => (1, Some(ear.number()?)),
        None => (1, None),
    };
    if pass > 1 && ear.hears(", hebra ") {
        strand = Some(ear.number()?);
    }
    let cord = if ear.hears(", «") {
        Some(ear.until('»')?.to_owned())
    } else {
        None
    };
    ear.must(if pass == 1 && strand.is_none() {
        "Tramo "
    } else {
        ", tramo "
    })?;
    let leg = Some(ear.pair(" de ")?);
    let part = part(ear)?;
    let spoken = if ear.hears(", que ") {
        on_the_way(ear, teaches)?
    } else {
        ear.must(".")?;
        beginning(ear, teaches)?
    };
    let met = if teaches {
        cords_by_their_pins(ear)?
    } else {
        cords(ear)?
    };
    let landing = Some(landing(ear, spoken.to, teaches)?);
    Ok(Spoken {
        pass: Some(pass),
        strand,
        cord,
        leg,
        part,
        met,
        landing,
        ..spoken
    })
}

/// The first part of a leg.
fn beginning(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
    if teaches {
        ear.hears(LEG_EXPLAINED);
    }
    ear.must(if teaches {
        " El cabo está en la "
    } else {
        " Desde la "
    })?;
    let from = pin(ear)?;
    if teaches {
        by_rim(ear, from, ". Súbelo", ". Bájalo")?;
    } else {
        by_rim(ear, from, " sube", " baja")?;
    }
    ear.must(" hacia la ")?;
    let way = Some(way(ear)?);
    ear.must(",")?;
    let round = if ear.hears(" da ") {
        let (one, many) = (" vuelta entera", " vueltas enteras");
        let round = turns(ear, one, many)?;
        ear.must(" al tubo y sigue,")?;
        round
    } else {
        0
    };
    ear.must(if teaches {
        " rumbo a la "
    } else {
        " hasta la "
    })?;
    let to = pin(ear)?;
    let side = if teaches && ear.hears(", bien arrimado al cabo que ya está ahí, por el ") {
        Some(lane(ear)?)
    } else {
        beside(ear)?
    };
    ear.must(".")?;
    Ok(Spoken {
        turns: Some(round),
        ..Spoken::bare(from, to, way, side)
    })
}

/// On which side of the cord that is followed, if one is.
fn beside(ear: &mut Ear) -> Result<Option<Lane>, String> {
    if !ear.hears(", por el ") {
        return Ok(None);
    }
    let side = lane(ear)?;
    ear.must(" del cabo que ya está ahí")?;
    Ok(Some(side))
}

/// A later part of a leg.
fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
    let rises = ear.hears("sube de la ");
    if !rises {
        ear.must("baja de la ")?;
    }
    let from = pin(ear)?;
    if rises != (from.0 == Rim::Bottom) {
        return Err("a leg that leaves the knot".to_owned());
    }
    ear.must(" a la ")?;
    let to = pin(ear)?;
    ear.must(".")?;
    if teaches {
        ear.hears(PARTS_EXPLAINED);
    }
    ear.must(" El cabo lleva ")?;
    let share = Some(ear.must_one_of("share of the way", &SHARES)?);
    by_rim(ear, from, "la subida", "la bajada")?;
    ear.must(", justo después de la ")?;
    let past = pin(ear)?;
    let made = if ear.hears(", y ha dado ") {
        turns(ear, " vuelta al tubo", " vueltas al tubo")?
    } else {
        0
    };
    ear.must(". Sigue ")?;
    by_rim(ear, from, "subiendo", "bajando")?;
    ear.must(" hacia la ")?;
    let way = Some(way(ear)?);
    let side = beside(ear)?;
    ear.must(".")?;
    Ok(Spoken {
        mark: Some(Mark {
            share,
            past,
            made: Some(made),
        }),
        ..Spoken::bare(from, to, way, side)
    })
}

/// Over or under, each by its own verb.
fn over(ear: &mut Ear) -> Result<bool, String> {
    let words = [
        ("pasa por encima de ", true),
        ("mete por debajo de ", false),
    ];
    ear.must_one_of("over or under", &words)
}

fn cords(ear: &mut Ear) -> Result<Vec<Met>, String> {
    let mut met = Vec::new();
    if ear.hears(" El cabo no cruza nada.") {
        return Ok(met);
    }
    ear.must(" En el camino: ")?;
    loop {
        let over = over(ear)?;
        let cords = if ear.hears("un cabo") {
            1
        } else {
            let cords = ear.number()?;
            ear.must(" cabos")?;
            cords
        };
        met.push(Met {
            over,
            cords,
            of: None,
        });
        if !ear.hears(", luego ") {
            ear.must(".")?;
            return Ok(met);
        }
    }
}

fn cords_by_their_pins(ear: &mut Ear) -> Result<Vec<Met>, String> {
    let mut met = Vec::new();
    if ear.hears(" Todavía no hay nada en su camino, así que no cruza nada.") {
        return Ok(met);
    }
    // Whether this is the first, and whether more follow.
    let starts = [
        (" Encuentras ", (true, false)),
        (" Primero encuentras ", (true, true)),
        (" Después, ", (false, true)),
        (" Y por último, ", (false, false)),
    ];
    loop {
        let (is_first, more) = ear.must_one_of("cord", &starts)?;
        if is_first != met.is_empty() {
            return Err("out of order".to_owned());
        }
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
        let from = pin(ear)?;
        ear.must(" a la ")?;
        let to = pin(ear)?;
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

fn landing(ear: &mut Ear, to: Pin, teaches: bool) -> Result<Landing, String> {
    if ear.hears(if teaches {
        " Sujétalo ahí con un dedo."
    } else {
        " Sujétalo ahí."
    }) {
        return Ok(Landing::Hold);
    }
    let is_round = ear.hears(if teaches {
        " Llévalo alrededor de la "
    } else {
        " Rodea la "
    });
    if !is_round {
        ear.must(" En la ")?;
    }
    if pin(ear)? != to {
        return Err("it lands elsewhere".to_owned());
    }
    if is_round {
        ear.must(if teaches {
            ", por el lado de fuera, y mantenlo ceñido."
        } else {
            "."
        })?;
        return Ok(Landing::Round);
    }
    if ear.hears(" el cabo está de nuevo donde empezó") {
        let homes = [
            ("; rodea la clavija y sigue.", Landing::HomeAndOn),
            (
                ". Sujétalo ahí con cinta, a la espera de su próxima pasada.",
                Landing::HomeToWait,
            ),
            (". Deja ahí el chicote colgando.", Landing::HomeToEnd),
        ];
        return ear.must_one_of("end", &homes);
    }
    let sides = [
        (" gira por dentro", Landing::Inside),
        (" gira por fuera", Landing::Outside),
    ];
    let landing = ear.must_one_of("turn", &sides)?;
    ear.must(" del seno que ya está ahí")?;
    if teaches {
        ear.must(match landing {
            Landing::Inside => ", entre él y el centro del nudo, y mantén el cabo ceñido",
            _ => ", más allá de él, y mantén el cabo ceñido",
        })?;
    }
    ear.must(".")?;
    Ok(landing)
}
