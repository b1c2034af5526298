//! Where the pins go: holes of the rings, or marks on a strip round a tube without rings.

use std::f64::consts::PI;

use super::{Millimetres, Tube};

/// The pins of one ring.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RingPins {
    /// Which row of the ring, 1 … rows.
    pub row: usize,
    /// Holes in that row.
    pub holes_in_row: u16,
    /// The hole for each pin, pin 1 first; holes are numbered 1 … as pins are, the way the
    /// cord travels.
    pub holes: Vec<u16>,
}

/// A strip as long as the tube is round, with marks for the pins.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// Its length: the circumference of the tube.
    pub length: Millimetres,
    /// From a mark to the next.
    pub pitch: Millimetres,
    /// How far along the strip each bottom pin stands, from 0, pin 1 first. Pins are numbered
    /// the way the cord travels.
    pub bottom: Vec<Millimetres>,
    /// Where the top pins stand along the strip.
    pub top: Vec<Millimetres>,
}

/// How a tube is pinned for a knot.
#[derive(Clone, Debug, PartialEq)]
pub enum Layout {
    /// In the holes of two rings that begin with equal holes opposite each other.
    Rings {
        /// The bottom ring.
        bottom: RingPins,
        /// The top ring.
        top: RingPins,
        /// First turn the top ring half a hole on, the way the cord travels.
        turn_half_hole: bool,
    },
    /// By marks, on a tube without rings.
    Strip(Strip),
}

/// Distance between neighbouring pins in a straight line, `D sin(π/n)`, for `pins` of them
/// evenly spaced round a circle.
pub fn pin_chord(circle: Millimetres, pins: u16) -> Millimetres {
    Millimetres::computed(circle.get() * (PI / f64::from(pins)).sin())
}

/// What is left between neighbouring pins of this tube, from edge to edge: `chord − d`. All the
/// cords of a bight have to pass there. Nought where the pins touch.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, Tube, pin_gap};
///
/// let tube = Tube::ringed(Millimetres::new(40.0).unwrap(), &[16]).unwrap();
/// // 16 screws of 4 mm round 40 mm: a cord of 4 mm does not go between.
/// assert!((pin_gap(&tube, 16).get() - 3.8).abs() < 0.01);
/// ```
pub fn pin_gap(tube: &Tube, bights: u16) -> Millimetres {
    let clear = pin_chord(tube.diameter, bights).get() - tube.pin().get();
    Millimetres::computed(clear.max(0.0))
}

/// Pins `bights` of them on each ring, the top ones half a pitch on when `staggered`; `None`
/// when no row of holes divides evenly.
///
/// Half a pitch is `H/2B` holes. When `H/B` is odd, that is some holes and a half: the top
/// ring is turned by the half, and its holes are counted on by the rest. Of several rows that
/// do, one that needs no half hole goes first, then the first as the rows are given.
pub fn pinning(tube: &Tube, bights: u16, staggered: bool) -> Option<Layout> {
    let Some(rows) = tube.rows() else {
        return Some(Layout::Strip(strip(tube, bights, staggered)));
    };
    let dividing = || {
        rows.iter()
            .enumerate()
            .filter(|(_, holes)| holes.is_multiple_of(bights))
    };
    let (index, &holes) = dividing()
        .find(|(_, holes)| !staggered || (*holes / bights).is_multiple_of(2))
        .or_else(|| dividing().next())?;
    let step = holes / bights;
    let ring = |first: u16| RingPins {
        row: index + 1,
        holes_in_row: holes,
        holes: (0..bights).map(|pin| first + pin * step).collect(),
    };
    Some(Layout::Rings {
        bottom: ring(1),
        top: ring(if staggered { 1 + step / 2 } else { 1 }),
        turn_half_hole: staggered && !step.is_multiple_of(2),
    })
}

fn strip(tube: &Tube, bights: u16, staggered: bool) -> Strip {
    let length = tube.circumference();
    let pitch = length.get() / f64::from(bights);
    let marks = |offset: f64| {
        (0..bights)
            .map(|pin| Millimetres::computed(pitch * (f64::from(pin) + offset)))
            .collect()
    };
    Strip {
        length,
        pitch: Millimetres::computed(pitch),
        bottom: marks(0.0),
        top: marks(if staggered { 0.5 } else { 0.0 }),
    }
}
