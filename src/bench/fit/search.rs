//! All knots of ordinary size, and which of them answer.

use super::candidate::{
    Candidate, DrawnTo, MOST_LEADS_AND_BIGHTS, MOST_PASSES, counts, is_even, job,
};
use super::grounds;
use super::order::fault;
use super::{FitAnswer, FitSection, FitWish, OneKnot, WeaveChoice};
use crate::bench::bands::Measured;
use crate::bench::braid::{Spacings, most};
use crate::bench::in_place::has_room_in_place;
use crate::bench::rig::cord_on_tube;
use crate::bench::tube_rules::{check_length, is_hampered, takes};
use crate::bench::{Consumption, Counts, KnotShape, Millimetres, Tube, WidthRange, bight_turn};

/// Every answer, in no order.
pub(super) fn answers(wish: &FitWish) -> Vec<FitAnswer> {
    if let Some(only) = wish.only {
        let answer = one(wish, only.counts).and_then(|candidate| answer(wish, &candidate));
        return answer
            .map(|answer| told_of(wish, only, answer))
            .into_iter()
            .collect();
    }
    let mut answers = untimed_answers(wish);
    for answer in &mut answers {
        time(wish, answer);
    }
    answers
}

/// The same before tucks and time are told, which the order does not go by and which takes long.
pub(super) fn untimed_answers(wish: &FitWish) -> Vec<FitAnswer> {
    let ground = wish.object.ground;
    if ground.round().is_none() {
        return grounds::candidates(wish)
            .filter(|candidate| wish.filter.takes(candidate.counts))
            .filter_map(|candidate| answer(wish, &candidate))
            .collect();
    }
    let is_taken = |round: &Round| {
        if wish.in_place {
            return has_room_in_place(round.two, wish.cord, ground);
        }
        wish.tube
            .is_none_or(|tube| takes(round.two, tube, wish.cord))
    };
    rounds(wish)
        .filter(is_taken)
        .flat_map(|round| candidates(wish, round))
        .filter(|candidate| wish.filter.takes(candidate.counts))
        .filter_map(|candidate| answer(wish, &candidate))
        .collect()
}

/// The knot that is asked about, as near to the length to be covered as it goes; none when its cords do not
/// go round.
fn one(wish: &FitWish, counts: Counts) -> Option<Candidate> {
    if wish.object.ground.round().is_none() {
        return grounds::one(wish, counts);
    }
    let spacings = wish.braid(counts).spacings().ok()?;
    let goes_round = !spacings.is_too_steep();
    goes_round
        .then(|| drawn_up(wish, &spacings, counts))
        .flatten()
}

/// With the tucks that it has, and the minutes that they take.
fn told_of(wish: &FitWish, only: OneKnot, answer: FitAnswer) -> FitAnswer {
    FitAnswer {
        tucks: only.tucks,
        other_tucks: only.other_tucks,
        minutes: wish.pace.minutes(answer.counts.legs(), only.tucks),
        ..answer
    }
}

fn answer(wish: &FitWish, candidate: &Candidate) -> Option<FitAnswer> {
    let Candidate { counts, range, .. } = candidate;
    let shape = candidate.shape();
    let (cord, is_hampered) = cord_for_shape(wish, *counts, &shape)?;
    if wish.cord_at_hand.is_some_and(|at_hand| cord > at_hand) {
        return None;
    }
    Some(FitAnswer {
        counts: *counts,
        run: wish.weave.run(counts.nested()),
        is_twin: false,
        shape,
        range: *range,
        cord,
        tucks: 0,
        other_tucks: 0,
        minutes: 0.0,
        fault: fault(wish, *counts, &shape, range),
        is_hampered,
        section: FitSection::Further,
    })
}

/// Counts the tucks of an answer, begun so that they are fewest where that is wished for, and the minutes
/// that they take.
pub(super) fn time(wish: &FitWish, answer: &mut FitAnswer) {
    let [begun_with_over, twin] = answer.counts.tucks(answer.run);
    answer.is_twin = wish.weave == WeaveChoice::FewestTucks && twin < begun_with_over;
    (answer.tucks, answer.other_tucks) = if answer.is_twin {
        (twin, begun_with_over)
    } else {
        (begun_with_over, twin)
    };
    answer.minutes = wish.pace.minutes(answer.counts.legs(), answer.tucks);
}

/// Every knot of the right width and cover, whatever its tube and cord, and whether it is wanted.
pub(super) fn shapes(wish: &FitWish) -> impl Iterator<Item = Candidate> {
    let only = wish.only.and_then(|only| one(wish, only.counts));
    let is_round = wish.object.ground.round().is_some();
    let all = rounds(wish).filter(move |_| wish.only.is_none() && is_round);
    let others = (wish.only.is_none() && !is_round).then(|| grounds::candidates(wish));
    only.into_iter()
        .chain(all.flat_map(|round| candidates(wish, round)))
        .chain(others.into_iter().flatten())
}

/// So many bights and passes: whether their bands go round, and whether a tube has room for them,
/// does not depend on the leads.
struct Round {
    /// With two leads.
    two: Counts,
    spacings: Spacings,
}

/// All whose bands go round.
fn rounds(wish: &FitWish) -> impl Iterator<Item = Round> {
    (1..=MOST_PASSES).flat_map(move |passes| {
        (2..=MOST_LEADS_AND_BIGHTS).map_while(move |bights| {
            let two = counts(wish, 2, bights, passes)?;
            let spacings = wish.braid(two).spacings().ok()?;
            (!spacings.is_too_steep()).then_some(Round { two, spacings })
        })
    })
}

/// The knots of so many bights and passes that reach the length to be covered, most leads first:
/// with fewer leads a knot is narrower and has to be opened further, so that the first that hides
/// too little is followed by none that hides enough.
fn candidates(wish: &FitWish, Round { two, spacings }: Round) -> impl Iterator<Item = Candidate> {
    let widest = wish.object.cover.get() + wish.tolerance.get();
    // One more, for the sake of rounding.
    let most = most(spacings.leads_of(widest) + 2.0, 2).unwrap_or(0);
    let nested = wish.nested();
    let run = wish.weave.run(nested);
    // The rows of a knot are its leads, or of nested ones so many times as many and more.
    (2..=(most / nested).min(MOST_LEADS_AND_BIGHTS))
        .rev()
        .filter(move |leads| nested > 1 || (leads - 1).is_multiple_of(run))
        .filter_map(move |leads| counts(wish, leads, two.bights(), two.passes()))
        // Among nested cords each is by itself over one, under one, or as evenly as was asked for.
        .filter(move |counts| run == nested || is_even(*counts, run))
        .filter(move |counts| spacings.tight_width(counts.height()) <= widest)
        .map_while(move |counts| candidate(wish, spacings, counts))
}

/// The knot, when it comes near enough to the length to be covered.
fn candidate(wish: &FitWish, spacings: Spacings, counts: Counts) -> Option<Candidate> {
    let wanted = wish.object.cover;
    let miss = |candidate: &Candidate| candidate.range.nearest(wanted).get() - wanted.get();
    drawn_up(wish, &spacings, counts)
        .filter(|candidate| miss(candidate).abs() <= wish.tolerance.get())
}

/// The knot, drawn up to the length to be covered, or as near to it as it goes.
fn drawn_up(wish: &FitWish, spacings: &Spacings, counts: Counts) -> Option<Candidate> {
    let (leads, wanted) = (counts.height(), wish.object.cover);
    let at = |width: Millimetres| Measured::from(spacings.bands(leads, width.get()));
    let is_opened = wanted.get() > spacings.tight_width(leads);
    let known = is_opened.then(|| at(wanted));
    let range = WidthRange::spaced(spacings, leads, wish.least_cover, known)?;
    let width = range.nearest(wanted);
    let known = known.filter(|_| width == wanted);
    Some(Candidate {
        counts,
        range,
        drawn_up: DrawnTo::Round(*spacings, known.unwrap_or_else(|| at(width))),
    })
}

/// Cord to cut, and whether the tube hampers the work; `None` when the tube does not take the knot.
pub(super) fn cord_for(wish: &FitWish, candidate: &Candidate) -> Option<(Millimetres, bool)> {
    cord_for_shape(wish, candidate.counts, &candidate.shape())
}

fn cord_for_shape(
    wish: &FitWish,
    counts: Counts,
    shape: &KnotShape,
) -> Option<(Millimetres, bool)> {
    if wish.in_place || wish.object.ground.is_flat() {
        return Some((grounds::cord_in_place(wish, counts, shape)?, false));
    }
    let correction = wish.corrections.of(counts.passes());
    let Some(tube) = wish.tube else {
        let turn = bight_turn(wish.cord, None, shape.angle);
        let leg = shape.cord_in_leg();
        let cord = Consumption::new(counts, leg, turn, correction, wish.allowances);
        return Some((cord.to_cut(), false));
    };
    if !takes(counts, tube, wish.cord) {
        return None;
    }
    let (job, finish) = job(wish, tube, counts);
    let (laid, cord) = cord_on_tube(&job, shape);
    check_length(counts, tube, wish.cord, &laid).ok()?;
    Some((cord.to_cut(), is_hampered(&job, finish, &laid)))
}

/// The length of tube that a knot takes up, when it is laid on this one.
pub(super) fn tube_length(wish: &FitWish, tube: &Tube, candidate: &Candidate) -> Millimetres {
    let (job, _) = job(wish, tube, candidate.counts);
    let (laid, _) = cord_on_tube(&job, &candidate.shape());
    laid.tube_needed(candidate.counts, wish.cord, tube)
}
