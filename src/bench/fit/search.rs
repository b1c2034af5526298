//! All knots of ordinary size, and which of them answer.

use super::order::fault;
use super::{FitAnswer, FitWish, WeaveChoice};
use crate::bench::on_tube::LEAST_ANGLE;
use crate::bench::rig::cord_on_tube;
use crate::bench::tube_rules::{check_length, is_hampered, takes};
use crate::bench::{
    Consumption, Counts, Finish, KnotShape, Millimetres, RigJob, Tube, WidthRange, bight_turn,
};
use crate::knot::{Weave, lead_tucks};

/// Leads and bights are looked for from 2 to this many.
pub const MOST_LEADS_AND_BIGHTS: u16 = 60;
/// Passes are looked for from 1 to this many.
pub const MOST_PASSES: u16 = 4;

/// A knot of the right width and cover.
#[derive(Clone, Copy, Debug)]
pub(super) struct Candidate {
    pub counts: Counts,
    pub shape: KnotShape,
    pub range: WidthRange,
}

/// Every answer, in no order.
pub(super) fn answers(wish: &FitWish) -> Vec<FitAnswer> {
    let mut answers = Vec::new();
    for_each_shape(wish, |candidate| {
        if wish.filter.takes(candidate.counts) {
            answers.extend(answer(wish, candidate));
        }
        true
    });
    answers
}

fn answer(wish: &FitWish, candidate: &Candidate) -> Option<FitAnswer> {
    let Candidate {
        counts,
        shape,
        range,
    } = candidate;
    let (cord, is_hampered) = cord_for(wish, candidate)?;
    if wish.cord_at_hand.is_some_and(|at_hand| cord > at_hand) {
        return None;
    }
    let run = wish.weave.run();
    let lead = lead_tucks(counts.leads(), counts.bights(), &Weave::Run(run));
    let crossings = u32::from(counts.bights()) * u32::from(counts.leads() - 1);
    let followers = (u32::from(counts.passes()) - 1) * crossings;
    let is_twin = wish.weave == WeaveChoice::FewestTucks && 2 * lead > crossings;
    let tucks = [lead, crossings - lead].map(|lead| lead + followers);
    Some(FitAnswer {
        counts: *counts,
        run,
        is_twin,
        shape: *shape,
        range: *range,
        cord,
        tucks: tucks[usize::from(is_twin)],
        other_tucks: tucks[usize::from(!is_twin)],
        minutes: wish.pace.minutes(counts.legs()),
        fault: fault(wish, *counts, shape, range),
        is_hampered,
        dealt: 0,
    })
}

/// Calls `found` with every knot of the right width and cover, whatever its tube and cord, and
/// whether it is wanted, until it returns false.
pub(super) fn for_each_shape(wish: &FitWish, mut found: impl FnMut(&Candidate) -> bool) {
    let (wanted, tolerance) = (wish.object.cover.get(), wish.tolerance.get());
    let interlacing = wish.weave.interlacing();
    for passes in 1..=MOST_PASSES {
        for bights in 2..=MOST_LEADS_AND_BIGHTS {
            let counts = |leads| {
                let counts = Counts::new(leads, bights, passes).ok()?;
                Some(counts.interlaced(interlacing))
            };
            // Whether the bands go round, and at what angle, does not depend on the leads.
            let narrowest = counts(2).and_then(|counts| wish.braid(counts).tight().ok());
            if narrowest.is_none_or(|shape| shape.angle < LEAST_ANGLE) {
                break;
            }
            for leads in 2..=MOST_LEADS_AND_BIGHTS {
                if !(leads - 1).is_multiple_of(wish.weave.run()) {
                    continue;
                }
                let Some(counts) = counts(leads) else {
                    continue;
                };
                let braid = wish.braid(counts);
                // The cheap questions first: most knots are too wide or far too open.
                let Some(narrowest) = braid.tight_width() else {
                    break;
                };
                if narrowest > wanted + tolerance {
                    break;
                }
                let near = wanted - tolerance;
                if near > narrowest
                    && braid.cover_at(near) < wish.least_cover.of(braid.cover_at(narrowest))
                {
                    continue;
                }
                let Ok(tight) = braid.tight() else {
                    break;
                };
                let range = WidthRange::from_tight(&braid, &tight, wish.least_cover);
                let Some(range) = range else { continue };
                let width = range.nearest(wish.object.cover);
                if (width.get() - wanted).abs() > tolerance {
                    continue;
                }
                let Ok(shape) = braid.opened(width) else {
                    continue;
                };
                let candidate = Candidate {
                    counts,
                    shape,
                    range,
                };
                if !found(&candidate) {
                    return;
                }
            }
        }
    }
}

/// Cord to cut, and whether the tube hampers the work; `None` when the tube does not take the knot.
pub(super) fn cord_for(wish: &FitWish, candidate: &Candidate) -> Option<(Millimetres, bool)> {
    let Candidate { counts, shape, .. } = *candidate;
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
    let (laid, cord) = cord_on_tube(&job, &shape);
    check_length(counts, tube, wish.cord, &laid).ok()?;
    Some((cord.to_cut(), is_hampered(&job, finish, &laid)))
}

fn job<'a>(wish: &FitWish, tube: &'a Tube, counts: Counts) -> (RigJob<'a>, Finish) {
    let job = RigJob {
        give: wish.give,
        allowances: wish.allowances,
        correction: wish.corrections.of(counts.passes()),
        ..RigJob::new(counts, tube, wish.cord)
    };
    let finish = Finish {
        around: wish.object.diameter,
        open_to: None,
    };
    (job, finish)
}

/// The length of tube that a knot takes up, when it is laid on this one.
pub(super) fn tube_length(wish: &FitWish, tube: &Tube, candidate: &Candidate) -> Millimetres {
    let (job, _) = job(wish, tube, candidate.counts);
    let (laid, _) = cord_on_tube(&job, &candidate.shape);
    laid.tube_needed(candidate.counts, wish.cord, tube)
}
