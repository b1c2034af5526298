//! In which order knots are offered: the numbers that decide it, all of them, in one place.
//!
//! What a good master would offer comes first. Each knot has faults, weighed against one
//! another ([`fault`]); the best of every usual group (long single, doubled, tripled) are
//! dealt out before the rest, so that the first handful is a choice between kinds of work and not
//! five of a kind. A knot that the tube hampers comes after all others. All weights are *common
//! practice, no source*; the tests hold the order to what a tyer would take for a stick, a fob, a
//! bottle, a tiller and a rail.

use std::cmp::Ordering;

use super::{FitAnswer, FitGroup, FitWish};
use crate::bench::{Counts, KnotShape, WidthRange};

/// Faults that lie within such a step are as good as each other, and the knot that takes less
/// cord goes first.
pub const FAULT_STEP: f64 = 0.02;

/// So many of every group are dealt out in turn …
const DEALT: usize = 2;
/// … unless their fault is so much more than the least of all.
const REACH: f64 = 0.35;

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
    let wanted = wish.object.cover.get();
    let miss = (shape.width.get() - wanted).abs() / wanted;
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
    let crossings = f64::from(counts.passes()) * bights * (leads - 1.0);
    let when = |is_so: bool, weight: f64| if is_so { weight } else { 0.0 };
    WEIGHTS.miss * miss
        + WEIGHTS.bare * (1.0 - shape.cover)
        + WEIGHTS.open * range.openness(shape.width)
        + WEIGHTS.angle * angle
        + WEIGHTS.strands * f64::from(counts.strands()).log2()
        + when(counts.leads() == 2, WEIGHTS.two_leads)
        + when(counts.bights() == 2, WEIGHTS.two_bights)
        + when(is_single && counts.leads() < LONG, WEIGHTS.short_single)
        + WEIGHTS.many_passes * f64::from(counts.passes().saturating_sub(3))
        + WEIGHTS.lopsided * (ratio / SQUARE).log2().max(0.0)
        + WEIGHTS.work * (crossings / QUICK).log2().max(0.0)
}

/// Puts the answers in the order in which they are offered.
pub(super) fn sort(answers: &mut [FitAnswer]) {
    answers.sort_unstable_by(by_fault);
    let least = answers.first().map_or(0.0, |answer| answer.fault);
    let mut dealt = [0; 4];
    for answer in answers.iter_mut() {
        let place = &mut dealt[answer.group() as usize];
        let is_usual = answer.group() != FitGroup::MorePasses && answer.fault <= least + REACH;
        let is_dealt = is_usual && !answer.is_hampered && *place < DEALT;
        answer.dealt = if is_dealt { *place } else { DEALT };
        *place += 1;
    }
    answers.sort_unstable_by(|one, other| {
        let hampered = one.is_hampered.cmp(&other.is_hampered);
        let dealt = one.dealt.cmp(&other.dealt);
        hampered.then(dealt).then_with(|| by_fault(one, other))
    });
}

fn by_fault(one: &FitAnswer, other: &FitAnswer) -> Ordering {
    let step = |answer: &FitAnswer| (answer.fault / FAULT_STEP).floor();
    let key = |answer: &FitAnswer| {
        let counts = answer.counts;
        (counts.passes(), counts.leads(), counts.bights())
    };
    one.is_hampered
        .cmp(&other.is_hampered)
        .then(step(one).total_cmp(&step(other)))
        .then(one.cord.get().total_cmp(&other.cord.get()))
        .then_with(|| key(one).cmp(&key(other)))
}
