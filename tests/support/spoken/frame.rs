//! What the steps of all languages have in common: which sentences there are, in which order, and
//! which of them are lists. The words are those of the [`Grammar`].

use super::ear::{Ear, RowStarts};
use super::meaning::{Depth, Landing, Lane, Met, Pin, Share, Spoken};

/// How a language is understood.
pub struct Language {
    /// The name of its folder of messages.
    pub tag: &'static str,
    /// Understands a spoken step of laying from its beginning; what is left in the ear was not
    /// understood.
    pub step: fn(&mut Ear, Depth) -> Result<Spoken, String>,
    /// What the words that teach say, where the first strand begins, of top pins half way between
    /// the bottom ones.
    pub staggered: &'static str,
    /// What they say there of top pins straight above the bottom ones.
    pub straight: &'static str,
    /// Words of which one stands in every step of laying that teaches, and in no other step of a
    /// job.
    pub laying: &'static [&'static str],
}

impl Language {
    /// Whether the words that begin the first strand call the top pins staggered, or straight.
    pub fn is_staggered(&self, begin: &str) -> Option<bool> {
        let says = |words| begin.contains(words);
        says(self.staggered)
            .then_some(true)
            .or_else(|| says(self.straight).then_some(false))
    }

    /// Whether what teaches is a step of laying.
    pub fn is_lay(&self, text: &str) -> bool {
        self.laying.iter().any(|words| text.contains(words))
    }
}

/// How a language puts what a step of laying says.
pub trait Grammar {
    const HEADING: Heading;
    const BRIEF: Brief;
    const CORDS: Cords;
    const LANDINGS: Landings;

    fn pin(ear: &mut Ear) -> Result<Pin, String>;

    fn lane(ear: &mut Ear) -> Result<Lane, String>;

    /// In brief: the pins, the turns, the part, and the pin that lies behind, without the full
    /// stop.
    fn brief_way(ear: &mut Ear) -> Result<Spoken, String>;

    /// The first part of a leg.
    fn beginning(ear: &mut Ear, teaches: bool) -> Result<Spoken, String>;

    /// A later part of a leg.
    fn on_the_way(ear: &mut Ear, teaches: bool) -> Result<Spoken, String>;

    /// Cords that are met together, in plain words.
    fn cords(ear: &mut Ear) -> Result<Met, String>;

    /// Cords that are met together, by the pins of their leg.
    fn cords_by_their_pins(ear: &mut Ear) -> Result<Met, String>;
}

/// The beginning of a step that is not brief.
pub struct Heading {
    /// The second pass to the ninth.
    pub passes: [&'static str; 8],
    /// Before the number of a strand: on the first pass, on a later one.
    pub strand: [&'static str; 2],
    /// Before the name of a cord, and after it.
    pub quotes: [&'static str; 2],
    /// Before the number of a leg: at the beginning, after something else.
    pub leg: [&'static str; 2],
    /// Between a number and how many there are.
    pub of: &'static str,
    /// Before a part of a leg.
    pub part: &'static str,
    /// Before a leg of which the beginning lies behind.
    pub on_the_way: &'static str,
}

/// The words of a brief step.
pub struct Brief {
    /// Before the number of a pass.
    pub pass: &'static str,
    /// Before the number of a strand: on the first pass, on a later one.
    pub strand: [&'static str; 2],
    /// That nothing is crossed.
    pub clear: &'static str,
    /// Over and under, at the beginning of the sentence.
    pub first: [&'static str; 2],
    /// Over and under, further on.
    pub next: [&'static str; 2],
    /// Inside, outside, home and on, home to wait, home to end.
    pub landings: [&'static str; 5],
}

/// What is said of the cords that are met.
pub struct Cords {
    /// That nothing is crossed, in plain words.
    pub clear: &'static str,
    /// Before the first cord.
    pub start: &'static str,
    /// Between one and the next.
    pub between: &'static str,
    /// That nothing is crossed, in the words that teach.
    pub clear_by_pins: &'static str,
    /// How the sentences begin that teach.
    pub starts: RowStarts,
}

/// What is said of the pin where a step ends.
pub struct Landings {
    pub plain: LandingWords,
    pub teach: LandingWords,
    /// Before the pin, where the cord is not led round it.
    pub at: &'static str,
    /// After the pin where the cord began: it goes on, waits, ends.
    pub homes: [&'static str; 3],
}

pub struct LandingWords {
    /// That the cord is held between two pins.
    pub hold: &'static str,
    /// Before and after a pin that the cord is led round.
    pub round: [&'static str; 2],
    /// After a pin where the cord turns inside or outside the bight that is there.
    pub turns: [&'static str; 2],
}

/// Understands a step of laying.
pub fn step<G: Grammar>(ear: &mut Ear, depth: Depth) -> Result<Spoken, String> {
    match depth {
        Depth::Brief => brief::<G>(ear),
        Depth::Plain => full::<G>(ear, false),
        Depth::Teach => full::<G>(ear, true),
    }
}

/// How much of a leg lies behind, by the words for each from a little to most of it.
pub fn share(ear: &mut Ear, words: [&str; 7]) -> Result<Share, String> {
    let [
        little,
        quarter,
        third,
        half,
        two_thirds,
        three_quarters,
        most,
    ] = words;
    let shares = [
        (little, Share::Little),
        (quarter, Share::Quarter),
        (third, Share::Third),
        (half, Share::Half),
        (two_thirds, Share::TwoThirds),
        (three_quarters, Share::ThreeQuarters),
        (most, Share::Most),
    ];
    ear.must_one_of("share of the way", &shares)
}

/// Which part of how many, when a leg has several.
pub fn part(ear: &mut Ear, words: &Heading) -> Result<(u64, u64), String> {
    if ear.hears(words.part) {
        ear.pair(words.of)
    } else {
        Ok((1, 1))
    }
}

fn brief<G: Grammar>(ear: &mut Ear) -> Result<Spoken, String> {
    let words = &G::BRIEF;
    let (mut pass, mut strand, mut lane) = (None, None, None);
    if ear.hears(words.pass) {
        pass = Some(ear.number()?);
        if ear.hears(words.strand[1]) {
            strand = Some(ear.number()?);
        }
        ear.must(", ")?;
        lane = Some(G::lane(ear)?);
        ear.must(". ")?;
    } else if ear.hears(words.strand[0]) {
        strand = Some(ear.number()?);
        ear.must(". ")?;
    }
    let way = G::brief_way(ear)?;
    ear.must(".")?;
    let met = if ear.hears(words.clear) {
        Vec::new()
    } else {
        ear.must(" ")?;
        ear.list(", ", |ear, is_first| {
            let [over, under] = if is_first { words.first } else { words.next };
            let over = ear.must_one_of("over or under", &[(over, true), (under, false)])?;
            Ok(Met::unnamed(over, ear.number()?))
        })?
    };
    let [inside, outside, on, wait, end] = words.landings;
    let landing = ear.one_of(&[
        (inside, Landing::Inside),
        (outside, Landing::Outside),
        (on, Landing::HomeAndOn),
        (wait, Landing::HomeToWait),
        (end, Landing::HomeToEnd),
    ]);
    Ok(Spoken {
        pass,
        strand,
        lane,
        met,
        landing,
        ..way
    })
}

/// A step in plain words or in those that teach.
fn full<G: Grammar>(ear: &mut Ear, teaches: bool) -> Result<Spoken, String> {
    let words = &G::HEADING;
    let later = words
        .passes
        .iter()
        .zip(2..)
        .find(|(pass, _)| ear.hears(pass));
    let pass = later.map_or(1, |(_, pass)| pass);
    let mut strand = None;
    if ear.hears(words.strand[usize::from(pass > 1)]) {
        strand = Some(ear.number()?);
    }
    let mut cord = None;
    if ear.hears(words.quotes[0]) {
        cord = Some(ear.until(words.quotes[1])?.to_owned());
    }
    let is_first = pass == 1 && strand.is_none();
    ear.must(words.leg[usize::from(!is_first)])?;
    let leg = Some(ear.pair(words.of)?);
    let part = part(ear, words)?;
    let way = if ear.hears(words.on_the_way) {
        G::on_the_way(ear, teaches)?
    } else {
        ear.must(".")?;
        G::beginning(ear, teaches)?
    };
    let met = if teaches {
        by_pins::<G>(ear)?
    } else {
        cords::<G>(ear)?
    };
    let landing = Some(landing::<G>(ear, way.to, teaches)?);
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

fn cords<G: Grammar>(ear: &mut Ear) -> Result<Vec<Met>, String> {
    if ear.hears(G::CORDS.clear) {
        return Ok(Vec::new());
    }
    ear.must(G::CORDS.start)?;
    ear.list(G::CORDS.between, |ear, _| G::cords(ear))
}

fn by_pins<G: Grammar>(ear: &mut Ear) -> Result<Vec<Met>, String> {
    if ear.hears(G::CORDS.clear_by_pins) {
        return Ok(Vec::new());
    }
    ear.row(&G::CORDS.starts, G::cords_by_their_pins)
}

fn landing<G: Grammar>(ear: &mut Ear, to: Pin, teaches: bool) -> Result<Landing, String> {
    let all = &G::LANDINGS;
    let words = if teaches { &all.teach } else { &all.plain };
    if ear.hears(words.hold) {
        return Ok(Landing::Hold);
    }
    let is_round = ear.hears(words.round[0]);
    if !is_round {
        ear.must(all.at)?;
    }
    if G::pin(ear)? != to {
        return Err("it lands elsewhere".to_owned());
    }
    if is_round {
        ear.must(words.round[1])?;
        return Ok(Landing::Round);
    }
    let ([on, wait, end], [inside, outside]) = (all.homes, words.turns);
    ear.must_one_of(
        "turn or end",
        &[
            (on, Landing::HomeAndOn),
            (wait, Landing::HomeToWait),
            (end, Landing::HomeToEnd),
            (inside, Landing::Inside),
            (outside, Landing::Outside),
        ],
    )
}
