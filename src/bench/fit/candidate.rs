//! A knot that may answer, on whatever ground, and what it is made from.

use super::FitWish;
use crate::bench::bands::Measured;
use crate::bench::braid::Spacings;
use crate::bench::{Counts, Finish, KnotShape, RigJob, Tube, WidthRange};
use crate::knot::{Knot, Lattice, Weave};

/// Leads and bights are looked for from 2 to this many.
pub const MOST_LEADS_AND_BIGHTS: u16 = 60;
/// Passes are looked for from 1 to this many.
pub const MOST_PASSES: u16 = 4;

/// A knot of the right width and cover.
#[derive(Clone, Copy, Debug)]
pub(super) struct Candidate {
    pub counts: Counts,
    pub range: WidthRange,
    /// Drawn up to the length to be covered, or as near as it goes.
    pub drawn_up: DrawnTo,
}

/// A knot drawn up to some width.
#[derive(Clone, Copy, Debug)]
pub(super) enum DrawnTo {
    /// On a round thing, of which more is worked out when it is asked for.
    Round(Spacings, Measured),
    /// On another ground.
    Other(KnotShape),
}

impl Candidate {
    pub(super) fn shape(&self) -> KnotShape {
        match self.drawn_up {
            DrawnTo::Round(spacings, measured) => spacings.shape(self.counts.height(), measured),
            DrawnTo::Other(shape) => shape,
        }
    }
}

/// A knot of so many leads, bights and passes, woven as it is wished for; none when there is no such knot.
pub(super) fn counts(wish: &FitWish, leads: u16, bights: u16, passes: u16) -> Option<Counts> {
    let nested = wish.nested();
    let lattice = Lattice::plain(leads, bights).ok()?;
    let counts = Counts::on(lattice.interwoven(nested, nested).ok()?, passes).ok()?;
    Some(counts.interlaced(wish.weave.interlacing(nested)))
}

/// Whether over and under run evenly along every cord of an interwoven knot, or of a plain one.
pub(super) fn is_even(counts: Counts, run: u16) -> bool {
    Knot::woven(counts.lattice(), Weave::Run(run)).is_ok_and(|knot| knot.is_even())
}

/// It tied on a tube for what is to be covered.
pub(super) fn job<'a>(wish: &FitWish, tube: &'a Tube, counts: Counts) -> (RigJob<'a>, Finish) {
    let job = RigJob {
        give: wish.give,
        allowances: wish.allowances,
        correction: wish.corrections.of(counts.passes()),
        ..RigJob::new(counts, tube, wish.cord)
    };
    let finish = Finish {
        around: wish.object.ground,
        open_to: None,
    };
    (job, finish)
}
