//! The knot on the tube, before it is lifted off: how far apart the rings stand, and the
//! slack that this leaves in each leg.

use std::error::Error;
use std::f64::consts::PI;
use std::fmt;

use super::faired::most;
use super::{Counts, Millimetres, Shape, crimp};

/// The most that cords may fill the tube once every pass is laid. Beyond it there is no way
/// in for the last followers. *Common practice, no source.*
pub const MOST_FILL: f64 = 0.85;

/// The smallest angle of a leg from the axis on the tube, in radians (20°). Steeper, the
/// bights hardly hold on to their pins. *Common practice, no source.*
pub const LEAST_ANGLE: f64 = PI / 9.0;

/// The legs as they lie on the tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Laid {
    /// Between the pins of the two rings, centre to centre.
    pub ring_spacing: Millimetres,
    /// Angle of a leg from the axis, in radians.
    pub angle: f64,
    /// A leg measured straight, pin to pin.
    pub leg: Millimetres,
    /// Cord in a leg, crimp included.
    pub cord_in_leg: Millimetres,
    /// What fairing draws out of each leg; never less than nought.
    pub slack: Millimetres,
}

/// The cords of a knot do not go round the tube with room to lay them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubeTooFull {
    /// Bights as given.
    pub bights: u16,
    /// Passes as given.
    pub passes: u16,
    /// The most bights that go round the tube with so many passes, if any do.
    pub most_bights: Option<u16>,
    /// The most passes that go round the tube with so many bights, if any do.
    pub most_passes: Option<u16>,
    /// A tube at least this thick would do.
    pub tube_at_least: Millimetres,
}

impl fmt::Display for TubeTooFull {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{} bights of {} cords leave no room on the tube; {} or more would do",
            self.bights, self.passes, self.tube_at_least
        )
    }
}

impl Error for TubeTooFull {}

/// The share of the way round that cords may take: `B·P·w / C` at the fullest and steepest.
fn most_cosine() -> f64 {
    MOST_FILL * LEAST_ANGLE.cos()
}

/// `B·P·w / C` on the tube, checked.
pub(super) fn cosine_on_tube(
    counts: Counts,
    cord: Millimetres,
    tube: Millimetres,
) -> Result<f64, TubeTooFull> {
    let circumference = PI * (tube.get() + 2.0 * cord.get());
    let (bights, passes) = (counts.bights(), counts.passes());
    let cords = f64::from(bights) * f64::from(passes);
    let cosine = cords * cord.get() / circumference;
    if cosine < most_cosine() {
        return Ok(cosine);
    }
    let fitting = most_cosine() * circumference / cord.get();
    let needed = cords * cord.get() / most_cosine() / PI - 2.0 * cord.get();
    Err(TubeTooFull {
        bights,
        passes,
        most_bights: most(fitting / f64::from(passes), 2),
        most_passes: most(fitting / f64::from(bights), 1),
        tube_at_least: Millimetres::computed(needed * (1.0 + 1e-9)),
    })
}

impl Laid {
    /// Spaces the rings for a knot that is to have `shape` when finished. The spacing is the
    /// largest of three:
    ///
    /// - the rim distance of the finished knot: fairing draws rims together, not apart;
    /// - room: with all passes laid, cords fill at most [`MOST_FILL`] of the tube;
    /// - length: fairing takes cord out of a leg and cannot put any in, so a leg must hold
    ///   what the finished leg holds, and enough more to lift one crossing by a cord's
    ///   diameter, which is what a follower needs to be tucked under it: a lift of `w` over
    ///   two crossing spacings takes `2 (hypot(p, w) − p)`.
    ///
    /// *Derived; common practice sets rings by eye.*
    ///
    /// # Errors
    /// [`TubeTooFull`] when the tube is too thin for the second rule.
    pub fn new(
        counts: Counts,
        cord: Millimetres,
        tube: Millimetres,
        shape: &Shape,
    ) -> Result<Self, TubeTooFull> {
        let cosine = cosine_on_tube(counts, cord, tube)? / MOST_FILL;
        let leads = f64::from(counts.leads());
        let circumference = PI * (tube.get() + 2.0 * cord.get());
        let run = leads * circumference / f64::from(2 * counts.bights());
        let for_room = run * cosine / (1.0 - cosine * cosine).sqrt();

        let finished = shape.cord_in_leg().get();
        let p = shape.spacing.get();
        let lift = 2.0 * (p.hypot(cord.get()) - p);
        let between = Millimetres::computed((finished + lift) / leads);
        let leg = leads * crimp::spacing_holding(between, cord).get();
        let for_length = (leg * leg - run * run).max(0.0).sqrt();

        let rise = for_room.max(for_length).max(shape.rise.get());
        let leg = run.hypot(rise);
        let spacing = Millimetres::computed(leg / leads);
        let held = leg * (1.0 + crimp::crimp(spacing, cord));
        Ok(Self {
            ring_spacing: Millimetres::computed(rise),
            angle: run.atan2(rise),
            leg: Millimetres::computed(leg),
            cord_in_leg: Millimetres::computed(held),
            slack: Millimetres::computed((held - finished).max(0.0)),
        })
    }
}
