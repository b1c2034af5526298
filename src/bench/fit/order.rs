//! In which order knots are offered: the numbers that decide it, all of them, in one place.
//!
//! What a good master would offer comes first. Each knot has faults, weighed against one
//! another ([`fault`]); the best of every usual group (long single, doubled, tripled) are
//! dealt out before the rest, so that the first handful is a choice between kinds of work and not
//! five of a kind. The best interwoven knots follow them. What only comes near the length asked for follows those that come out so long,
//! and a knot that the tube hampers comes after all others. All weights are *common
//! practice, no source*; the tests hold the order to what a tyer would take for a stick, a fob, a
//! bottle, a tiller and a rail.

use super::whole::whole;
use super::{FitAnswer, FitGroup, FitSection, FitWish};
use crate::bench::{Counts, KnotShape, WidthRange};

/// Faults that lie within such a step are as good as each other, and the knot that takes less
/// cord goes first.
pub const FAULT_STEP: f64 = 0.02;

/// So many of every group are dealt out …
const DEALT: usize = 2;
/// … unless their fault is so much more than the least of all.
const REACH: f64 = 0.35;
/// Where the sections come that follow those of the three usual groups: the first of them that of the
/// interwoven knots.
const LAST: usize = 3;
/// The place of an interwoven knot among the groups that are dealt out.
const INTERWOVEN: usize = 4;

/// What each fault weighs.
struct Weights {
    /// A width that misses by the whole length to be covered.
    miss: f64,
    /// Ground left bare, all of it.
    bare: f64,
    /// Opened as far as it goes.
    open: f64,
    /// A leg that stands a right angle beyond what is usual.
    angle: f64,
    /// More than one strand, for each time that they double.
    strands: f64,
    /// Two leads, which make no braid but a twist.
    two_leads: f64,
    /// Two bights, which hardly hold a shape.
    two_bights: f64,
    /// A single of fewer leads than [`LONG`], which is a mere ring of cord.
    short_single: f64,
    /// Four passes and more, for each beyond the third.
    many_passes: f64,
    /// Bights and leads further apart than [`SQUARE`], for each time they double from there.
    lopsided: f64,
    /// Leads and bights of a ball that differ by one more than one.
    aside: f64,
    /// Work: for each time that the crossings to be made double beyond [`QUICK`].
    work: f64,
}

const WEIGHTS: Weights = Weights {
    miss: 2.0,
    bare: 0.6,
    open: 0.35,
    angle: 0.8,
    strands: 0.2,
    two_leads: 0.8,
    two_bights: 0.5,
    short_single: 0.1,
    many_passes: 0.2,
    lopsided: 0.06,
    aside: 0.1,
    work: 0.03,
};

/// Angles of a leg from the axis between which any is as good as another, in degrees.
const USUAL_ANGLES: [f64; 2] = [45.0, 78.0];
/// Leads from which on a single is a long one.
const LONG: u16 = 7;
/// Leads and bights that differ by no more than this factor make a knot of usual proportions.
const SQUARE: f64 = 1.6;
/// Crossings that take no time to speak of.
const QUICK: f64 = 40.0;

/// What a knot falls short of: 0 is perfect.
pub(super) fn fault(wish: &FitWish, counts: Counts, shape: &KnotShape, range: &WidthRange) -> f64 {
    let whole = whole(wish, counts, shape);
    let [miss, bare, open, aside] = match &whole {
        None => {
            let wanted = wish.object.cover.get();
            let miss = (shape.width.get() - wanted).abs() / wanted;
            [miss, 1.0 - shape.cover, range.openness(shape.width), 0.0]
        }
        // It has the width that it is to have, however far that is open.
        Some(whole) => [0.0, whole.bare, 0.0, whole.aside],
    };
    let degrees = shape.angle_degrees();
    let [least, most] = USUAL_ANGLES;
    let angle = (least - degrees).max(degrees - most).max(0.0) / 90.0;
    let (leads, bights) = (f64::from(counts.leads()), f64::from(counts.bights()));
    let is_single = counts.passes() == 1;
    // A single is long by its nature.
    let ratio = if is_single {
        1.0
    } else {
        (leads / bights).max(bights / leads)
    };
    let crossings = f64::from(counts.passes()) * f64::from(counts.lattice().crossings());
    let when = |is_so: bool, weight: f64| if is_so { weight } else { 0.0 };
    WEIGHTS.miss * miss
        + WEIGHTS.bare * bare
        + WEIGHTS.open * open
        + WEIGHTS.angle * angle
        // A cord for every nest is what was asked for.
        + WEIGHTS.strands * doublings(f64::from(counts.strands() / counts.nested()))
        + when(counts.leads() == 2, WEIGHTS.two_leads)
        + when(counts.bights() == 2, WEIGHTS.two_bights)
        + when(
            is_single && counts.leads() < LONG && whole.is_none(),
            WEIGHTS.short_single,
        )
        + WEIGHTS.aside * aside
        + WEIGHTS.many_passes * f64::from(counts.passes().saturating_sub(3))
        + WEIGHTS.lopsided * doublings(ratio / SQUARE)
        + WEIGHTS.work * doublings(crossings / QUICK)
}

/// How often 1 is doubled to come to this; 0 for less.
fn doublings(number: f64) -> f64 {
    // Most numbers asked about are no more than 1, and a logarithm takes long.
    if number > 1.0 { number.log2() } else { 0.0 }
}

/// The answers in the order in which they are offered, each in its section.
///
/// Of interwoven knots beside plain ones only those stay that are dealt out: who wants more of them
/// asks for them.
pub(super) fn sorted(wish: &FitWish, mut answers: Vec<FitAnswer>) -> Vec<FitAnswer> {
    // Answers are large, so their places are sorted and they themselves are moved once.
    let mut places: Vec<(ByFault, usize)> = answers.iter().map(ByFault::of).zip(0..).collect();
    places.sort_unstable();
    let reaches = |answer: &FitAnswer| answer.reaches(wish.object.cover);
    let is_beside = |answer: &FitAnswer| {
        wish.filter.nested.is_none() && answer.counts.lattice().is_interwoven()
    };
    let good = || {
        let answers = places.iter().map(|&(_, at)| &answers[at]);
        answers.filter(|answer| reaches(answer) && !answer.is_hampered)
    };
    let best = good().find(|answer| !is_beside(answer));
    let least = best
        .or_else(|| good().next())
        .map_or(0.0, |best| best.fault);
    let mut met = [0; INTERWOVEN + 1];
    // The groups' sections, in the order of their best.
    let mut dealt: Vec<FitSection> = Vec::new();
    for &(_, at) in &places {
        let answer = &mut answers[at];
        answer.section = if answer.is_hampered {
            FitSection::Hampered
        } else if reaches(answer) {
            let turn = &mut met[if is_beside(answer) {
                INTERWOVEN
            } else {
                answer.group() as usize
            }];
            *turn += 1;
            let is_dealt = *turn <= DEALT && answer.fault <= least + REACH;
            match answer.group() {
                _ if is_dealt && is_beside(answer) => FitSection::Interwoven,
                FitGroup::Single if is_dealt => FitSection::Single,
                FitGroup::Doubled if is_dealt => FitSection::Doubled,
                FitGroup::Tripled if is_dealt => FitSection::Tripled,
                _ => FitSection::Further,
            }
        } else {
            FitSection::Near
        };
        let is_usual = matches!(
            answer.section,
            FitSection::Single | FitSection::Doubled | FitSection::Tripled
        );
        if is_usual && !dealt.contains(&answer.section) {
            dealt.push(answer.section);
        }
    }
    places.retain(|&(_, at)| {
        let answer = &answers[at];
        !is_beside(answer) || answer.section == FitSection::Interwoven
    });
    let nth = |section: FitSection| match section {
        FitSection::Interwoven => LAST,
        FitSection::Further => LAST + 1,
        FitSection::Near => LAST + 2,
        FitSection::Hampered => LAST + 3,
        group => dealt
            .iter()
            .position(|other| *other == group)
            .unwrap_or(LAST),
    };
    // In their order within a section.
    places.sort_by_key(|&(_, at)| nth(answers[at].section));
    places.iter().map(|&(_, at)| answers[at]).collect()
}

/// The order of the faults: those that the tube hampers last, then by steps of fault, then by cord.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct ByFault {
    is_hampered: bool,
    step: u32,
    /// In micrometres.
    cord: u64,
    /// Passes, leads and bights.
    counts: [u16; 3],
}

impl ByFault {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "casts from floats saturate, and the numbers are positive"
    )]
    fn of(answer: &FitAnswer) -> Self {
        let counts = answer.counts;
        Self {
            is_hampered: answer.is_hampered,
            step: (answer.fault / FAULT_STEP) as u32,
            cord: (1000.0 * answer.cord.get()) as u64,
            counts: [counts.passes(), counts.leads(), counts.bights()],
        }
    }
}
