//! The knot on the tube, before it is lifted off: how far apart the rings stand, and the
//! slack that this leaves in each leg.

use std::f64::consts::PI;

use super::leg::{LEAST_ANGLE_COS, between_rows, diagonal};
use super::{Counts, KnotShape, Millimetres, Tube, crimp};

/// The legs as they lie on the tube.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let laid = |ring_width| {
///     let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap().with_ring_width(ring_width);
///     rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0))).unwrap().laid
/// };
/// // Rings of 80 mm cannot stand nearer than that, and the knot on them has slack to be drawn out.
/// let (near, wide) = (laid(None), laid(Some(mm(80.0))));
/// assert!(!near.rings_touch() && wide.rings_touch());
/// assert_eq!(wide.ring_spacing, mm(80.0));
/// assert!(near.slack < wide.slack);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnTube {
    /// From the pins of one ring to those of the other, centre to centre along the tube.
    pub ring_spacing: Millimetres,
    /// From a row of pins to the next one inside it, where bights are nested.
    pub rows_apart: Option<Millimetres>,
    /// The same distance as rings of no width would need it.
    pub needed: Millimetres,
    /// Angle of a leg from the axis, in radians.
    pub angle: f64,
    /// A leg measured straight, pin to pin.
    pub leg: Millimetres,
    /// Cord in a leg, crimp included.
    pub cord_in_leg: Millimetres,
    /// What fairing draws out of each leg; never less than nought.
    pub slack: Millimetres,
}

/// Cosine of the angle that legs have at the most where there is just room to tuck: neighbouring
/// bands of one heading stand a cord's thickness apart besides the band itself, for all passes.
/// Measured round the bare tube, where the pins stand: `B·(P + 1)·w / πD`. *Derived.*
pub(super) fn tuck_cosine(counts: Counts, cord: Millimetres, tube: Millimetres) -> f64 {
    let cords = f64::from(counts.bands()) * (f64::from(counts.passes()) + 1.0);
    cords * cord.get() / (PI * tube.get())
}

impl OnTube {
    /// Slack in a leg that is more than this share of it is tedious to draw out, and the bights
    /// do not keep their shape. *Common practice, no source.*
    pub const MOST_SLACK: f64 = 0.25;

    /// Spaces the rings for a knot that is to have `shape` when finished, on a tube that
    /// has room for it. The spacing is the largest of five:
    ///
    /// - the rim distance of the finished knot: fairing draws rims together, not apart; but not for a ball,
    ///   round whose poles the rims close in, so that they may stand nearer on the tube;
    /// - room to tuck with all passes laid: bands a cord's thickness apart;
    /// - length: fairing takes cord out of a leg and cannot put any in, so a leg must hold
    ///   what the finished leg holds, and enough more to lift one crossing by a cord's
    ///   diameter, which is what a follower needs to be tucked under it: a lift of `w` over
    ///   two crossing spacings takes `2 (hypot(p, w) − p)`;
    /// - the rows of pins of nested bights, two rows of crossings apart, that stand clear of one
    ///   another: a bight of all passes goes round each pin;
    /// - the width of a ring, since two rings cannot stand in one place.
    ///
    /// *Derived; common practice sets rings by eye.*
    pub(super) fn new(counts: Counts, cord: Millimetres, tube: &Tube, shape: &KnotShape) -> Self {
        let leads = f64::from(counts.height());
        let half_pitches = leads / f64::from(2 * counts.bands());
        let run = half_pitches * PI * (tube.diameter.get() + 2.0 * cord.get());

        let cosine = tuck_cosine(counts, cord, tube.diameter).min(LEAST_ANGLE_COS);
        let bare_run = half_pitches * tube.circumference().get();
        let for_room = bare_run * cosine / (1.0 - cosine * cosine).sqrt();

        let finished = shape.cord_in_leg().get();
        let p = shape.spacing.get();
        let lift = 2.0 * (diagonal(p, cord.get()) - p);
        let between = Millimetres::computed((finished + lift) / leads);
        let leg = leads * crimp::spacing_holding(between, cord).get();
        let for_length = (leg * leg - run * run).max(0.0).sqrt();

        let for_rows = if counts.lattice().is_interwoven() {
            leads / 2.0 * between_rows(counts, cord, tube.pin())
        } else {
            0.0
        };
        let rims_apart = if shape.bare.is_some() {
            0.0
        } else {
            shape.rise.get()
        };
        let needed = for_room.max(for_length).max(for_rows).max(rims_apart);
        let rings = tube.ring_width().map_or(0.0, Millimetres::get);
        let rise = needed.max(rings);
        let leg = diagonal(run, rise);
        let spacing = Millimetres::computed(leg / leads);
        let held = leg * (1.0 + crimp::crimp(spacing, cord));
        Self {
            ring_spacing: Millimetres::computed(rise),
            rows_apart: counts
                .lattice()
                .is_interwoven()
                .then(|| Millimetres::computed(2.0 * rise / leads)),
            needed: Millimetres::computed(needed),
            angle: run.atan2(rise),
            leg: Millimetres::computed(leg),
            cord_in_leg: Millimetres::computed(held),
            slack: Millimetres::computed((held - finished).max(0.0)),
        }
    }

    /// Whether the rings are so wide that they cannot stand as near as the knot could.
    pub fn rings_touch(&self) -> bool {
        self.ring_spacing > self.needed
    }

    /// Slack over what a leg holds, 0 … 1.
    pub fn slack_share(&self) -> f64 {
        self.slack.get() / self.cord_in_leg.get()
    }

    /// Length that the tube takes up: the rings as wide as they are, or, with no rings, the pins
    /// and what lies round them outside.
    pub(super) fn tube_needed(
        &self,
        counts: Counts,
        cord: Millimetres,
        tube: &Tube,
    ) -> Millimetres {
        let outside = 2.0 * f64::from(counts.passes()) * cord.get() + tube.pin().get();
        let beyond = tube
            .ring_width()
            .map_or(outside, |width| width.get().max(outside));
        Millimetres::computed(self.ring_spacing.get() + beyond)
    }
}
