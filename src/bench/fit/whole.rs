//! What counts of a knot that is to cover a ball or a mat whole.

use super::FitWish;
use crate::bench::{Counts, Ground, KnotShape};

/// What it counts on a ball to have fewer leads than bights. Hard cord without friction that is drawn up by
/// a simulation stays on a ball with one lead more than bights, its bights round the poles; with one less
/// it slips off over a pole (`tests/data/simulated_balls.csv`).
const SLIPPERY: f64 = 0.3;

/// What counts of a knot for a ball or a mat besides its own faults.
pub(super) struct Whole {
    /// The share of the whole of it that stays bare, poles or hole and all.
    pub bare: f64,
    /// By how many more than one its leads and bights differ, on a ball: *common practice* has one more
    /// or one less. A little more with fewer leads than bights: see [`SLIPPERY`].
    pub aside: f64,
}

/// The same of a shape that closes in on a pole or on the middle of a mat; none of any other.
pub(super) fn whole(wish: &FitWish, counts: Counts, shape: &KnotShape) -> Option<Whole> {
    let bare = shape.bare?.get();
    let (share, aside) = match wish.object.ground {
        Ground::Ball(ball) => {
            // The poles are cut off a ball where it is so wide.
            let cosine = bare / ball.get();
            let nested = f64::from(counts.nested());
            let apart = f64::from(counts.height()) - f64::from(counts.bands());
            let zone = (1.0 - cosine * cosine).max(0.0).sqrt();
            let slips = if apart < 0.0 { SLIPPERY } else { 0.0 };
            (zone, (apart.abs() / nested - 1.0).max(0.0) + slips)
        }
        Ground::Flat { outer, hole: None } => (1.0 - (bare / outer.get()).powi(2), 0.0),
        _ => (1.0, 0.0),
    };
    Some(Whole {
        bare: 1.0 - share * shape.cover,
        aside,
    })
}
