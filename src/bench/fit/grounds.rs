//! Knots for what is not as thick all along, and for what they are tied on in place.

use super::FitWish;
use super::candidate::{
    Candidate, DrawnTo, MOST_LEADS_AND_BIGHTS, MOST_PASSES, counts, is_even, job,
};
use crate::bench::in_place::lay;
use crate::bench::on_ground::OnGround;
use crate::bench::{Counts, Ground, KnotShape, Millimetres, Tube, WidthRange};

/// The bare poles of a ball, and a hole that nobody asked for, are no wider than this share of the whole:
/// with as many bights as leads a ball has about half. *Common practice, no source.*
const MOST_OPEN: f64 = 0.55;

/// Every knot that lies on a taper, a ball or a mat as it is wished for, whatever it is tied on.
///
/// A knot for a taper comes as near to the length to be covered as that is asked for. One for a ball
/// reaches to the poles, and a mat to its hole, or as far inward as its bights let it, and hides enough
/// there.
pub(super) fn candidates(wish: &FitWish) -> impl Iterator<Item = Candidate> {
    (1..=MOST_PASSES)
        .flat_map(move |passes| {
            (2..=MOST_LEADS_AND_BIGHTS).map_while(move |bights| lying(wish, bights, passes))
        })
        .flat_map(move |lying| {
            // Most leads first: with fewer a knot has to be opened further, so that the first that
            // hides too little is followed by none that hides enough.
            let lying = lying.into_iter().rev();
            lying.map_while(move |ground| near(wish, &ground))
        })
}

/// The knots of so many bights and passes that lie there, fewest leads first; none when not even that of
/// two leads does.
fn lying(wish: &FitWish, bights: u16, passes: u16) -> Option<Vec<OnGround>> {
    let nested = wish.nested();
    let run = wish.weave.run(nested);
    let two = counts(wish, 2, bights, passes)?;
    OnGround::of(&wish.braid(two)).ok()??;
    let is_taper = matches!(wish.object.ground, Ground::Taper { .. });
    let widest = wish.object.cover.get() + wish.tolerance.get();
    let all = (2..=MOST_LEADS_AND_BIGHTS)
        .filter(|leads| nested > 1 || (leads - 1).is_multiple_of(run))
        .filter_map(|leads| counts(wish, leads, bights, passes))
        .filter(|counts| run == nested || is_even(*counts, run))
        .map_while(|counts| OnGround::of(&wish.braid(counts)).ok().flatten())
        .take_while(|ground| !is_taper || ground.tight_rise + ground.band <= widest);
    Some(all.collect())
}

/// The knot, when it comes near enough to what is wished for.
fn near(wish: &FitWish, ground: &OnGround) -> Option<Candidate> {
    let tolerance = wish.tolerance.get();
    match wish.object.ground {
        // Where it is tied on the ball itself its cords lie a cord's thickness apart before they are drawn
        // up: singles that hide enough from pole to pole leave no room for that, and those that leave it
        // hide enough when they stop a little short of the poles.
        Ground::Ball(_) if wish.in_place => {}
        Ground::Ball(_) | Ground::Flat { hole: None, .. } => {
            // Quicker than to look for how far it may be opened.
            if !ground.hides_at_reach(wish.least_cover) {
                return None;
            }
        }
        Ground::Flat { outer, hole } => {
            let hole = hole.map_or(0.0, Millimetres::get);
            let short = (outer.get() - hole) / 2.0 - (ground.reach() + ground.band);
            if short > tolerance || !ground.hides_at_reach(wish.least_cover) {
                return None;
            }
        }
        Ground::Round(_) | Ground::Taper { .. } => {
            let candidate = drawn_up(wish, ground)?;
            let width = candidate.range.nearest(wish.object.cover);
            let miss = (width.get() - wish.object.cover.get()).abs();
            return (miss <= tolerance).then_some(candidate);
        }
    }
    let candidate = drawn_up(wish, ground)?;
    let across = match wish.object.ground {
        Ground::Ball(ball) => ball.get() + 2.0 * wish.cord.get(),
        // Who names a hole wants it.
        Ground::Flat { hole: Some(_), .. } => f64::INFINITY,
        ground => ground.thickest().get(),
    };
    let open = candidate.shape().bare.map_or(0.0, Millimetres::get);
    (open <= MOST_OPEN * across).then_some(candidate)
}

/// The knot that is asked about, as near to what is wished for as it goes; none when it does not lie there.
pub(super) fn one(wish: &FitWish, counts: Counts) -> Option<Candidate> {
    let ground = OnGround::of(&wish.braid(counts)).ok()??;
    drawn_up(wish, &ground)
}

fn drawn_up(wish: &FitWish, ground: &OnGround) -> Option<Candidate> {
    let range = WidthRange::on_ground(ground, wish.least_cover)?;
    let width = match wish.object.ground {
        Ground::Round(_) | Ground::Taper { .. } => range.nearest(wish.object.cover),
        Ground::Ball(_) | Ground::Flat { .. } => range.widest,
    };
    Some(Candidate {
        counts: ground.braid.counts,
        range,
        drawn_up: DrawnTo::Other(ground.shape(width.get() - ground.band)),
    })
}

/// Cord to cut where a knot is tied in place or on a board; none when there is no room to tuck.
pub(super) fn cord_in_place(
    wish: &FitWish,
    counts: Counts,
    shape: &KnotShape,
) -> Option<Millimetres> {
    let ground = wish.object.ground;
    let tube = Tube::plain(ground.thickest());
    let (job, _) = job(wish, &tube, counts);
    let placed = lay(&job, ground, shape).ok()?;
    Some(placed.cord.to_cut())
}
