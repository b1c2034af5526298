//! Where the pins go: holes of the rings, or marks on a strip round a tube without rings.

use std::f64::consts::PI;

use super::{Board, Millimetres, Tapes, Tube};
use crate::knot::Lattice;

/// The pins of one ring.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Layout, Millimetres, Tube, pinning};
/// use marlinspeak::knot::Lattice;
///
/// // The bell rope's five bights go into every fourth hole of the second row.
/// let tube = Tube::ringed(Millimetres::new(45.0).unwrap(), &[14, 20]).unwrap();
/// let bell_rope = Lattice::plain(3, 5).unwrap();
/// let Some(Layout::Rings { bottom, top, .. }) = pinning(&tube, bell_rope) else {
///     panic!("the tube has rings, and a row that divides");
/// };
/// assert_eq!((bottom.row, bottom.holes), (2, vec![1, 5, 9, 13, 17]));
/// // With odd leads the top pins stand half way between.
/// assert_eq!(top.holes, [3, 7, 11, 15, 19]);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RingPins {
    /// Which row of the ring, 1 … rows.
    pub row: usize,
    /// All holes of that row, those without a pin too.
    pub holes_in_row: u16,
    /// The hole for each pin, pin 1 first; holes are numbered 1 … as pins are, the way the
    /// cord travels.
    pub holes: Vec<u16>,
}

/// A strip as long as the tube is round, with marks for the pins.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Layout, Millimetres, Tube, pinning};
/// use marlinspeak::knot::Lattice;
///
/// // A bottle without rings has the boathook ring's seven pins of each rim along one strip.
/// let bottle = Tube::plain(Millimetres::new(70.0).unwrap());
/// let Some(Layout::Strip(strip)) = pinning(&bottle, Lattice::plain(4, 7).unwrap()) else {
///     panic!("it has no rings");
/// };
/// assert_eq!(strip.length, bottle.circumference());
/// assert!((strip.pitch.get() - 31.4).abs() < 0.1);
/// assert_eq!(strip.bottom, strip.top, "with even leads the pins stand opposite each other");
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// Its length: the circumference of the tube.
    pub length: Millimetres,
    /// From a mark to the next.
    pub pitch: Millimetres,
    /// Rows of pins at each rim, in line: the marks serve for all of them.
    pub nested: u16,
    /// How far along the strip each bottom pin stands, from 0, pin 1 first. Pins are numbered
    /// the way the cord travels.
    pub bottom: Vec<Millimetres>,
    /// Where the top pins stand along the strip.
    pub top: Vec<Millimetres>,
}

/// How a tube is pinned for a knot.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Layout, Millimetres, Tube, pinning};
/// use marlinspeak::knot::Lattice;
///
/// let tube = Tube::ringed(Millimetres::new(45.0).unwrap(), &[14, 20]).unwrap();
/// let turned = |leads, bights| match pinning(&tube, Lattice::plain(leads, bights).unwrap()) {
///     Some(Layout::Rings { turn_half_hole, .. }) => Some(turn_half_hole),
///     _ => None,
/// };
/// // Half of the way between seven pins of fourteen holes is a hole; between four pins of twenty it
/// // is two and a half.
/// assert_eq!(turned(5, 7), Some(false));
/// assert_eq!(turned(5, 4), Some(true));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum Layout {
    /// In the holes of two rings that begin with equal holes opposite each other.
    Rings {
        /// The pins of the bottom ring.
        bottom: RingPins,
        /// The pins of the top ring.
        top: RingPins,
        /// Of nested bights the further rows, the bottom and the top one of each, from the outside
        /// in; none in a plain knot.
        inner: Vec<[RingPins; 2]>,
        /// First turn the top ring half a hole on, the way the cord travels.
        turn_half_hole: bool,
    },
    /// By marks, on a tube without rings, or on a rail on which the knot is tied.
    Strip(Strip),
    /// By marks on a tape at each rim, on a thing that is not as thick all along, on which the knot is
    /// tied.
    Tapes(Tapes),
    /// By two circles of T-pins on a board.
    Board(Board),
}

/// Distance between neighbouring pins in a straight line, `D sin(π/n)`, for `pins` of them
/// evenly spaced round a circle.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, pin_chord};
///
/// // Six pins round a circle stand as far apart as its radius.
/// let tube = Millimetres::new(45.0).unwrap();
/// assert!((pin_chord(tube, 6).get() - 22.5).abs() < 1e-9);
/// assert!((pin_chord(tube, 7).get() - 19.5).abs() < 0.1);
/// ```
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

/// Pins a knot: in every row at each rim as many as it has bights, the top ones half a pitch on with
/// odd leads; `None` when the rings have not as many rows of holes that divide evenly as bights are
/// nested.
///
/// Half a pitch is `H/2B` holes. When `H/B` is odd, that is some holes and a half: the top
/// ring is turned by the half, and its holes are counted on by the rest. Of several rows that
/// do, one that needs no half hole goes first, then the first as the rows are given. Nested bights
/// stand in line, so all their rows need no half hole, or the same: then they have equally many
/// holes.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Layout, Millimetres, Tube, pinning};
/// use marlinspeak::knot::Lattice;
///
/// let tube = Tube::ringed(Millimetres::new(45.0).unwrap(), &[14, 20]).unwrap();
/// let pinned = |bights| pinning(&tube, Lattice::plain(5, bights).unwrap());
/// assert!(matches!(pinned(7), Some(Layout::Rings { .. })));
/// assert_eq!(pinned(9), None, "neither 14 nor 20 holes divide by nine");
/// ```
pub fn pinning(tube: &Tube, lattice: Lattice) -> Option<Layout> {
    let (bights, staggered) = (lattice.bights(), lattice.is_staggered());
    let Some(rows) = tube.rows() else {
        return Some(Layout::Strip(strip(tube, lattice)));
    };
    let nested = usize::from(lattice.nested());
    let dividing: Vec<(usize, u16)> = rows
        .iter()
        .copied()
        .enumerate()
        .filter(|(_, holes)| holes.is_multiple_of(bights))
        .collect();
    let is_whole = |holes: u16| !staggered || (holes / bights).is_multiple_of(2);
    let chosen = |serves: &dyn Fn(u16) -> bool| {
        let rows = dividing.iter().filter(|(_, holes)| serves(*holes));
        let rows: Vec<(usize, u16)> = rows.take(nested).copied().collect();
        (rows.len() == nested).then_some(rows)
    };
    let of_equal = || {
        let equal = |(_, like): &(usize, u16)| chosen(&|holes| holes == *like);
        dividing.iter().find_map(equal)
    };
    let rows = chosen(&is_whole).or_else(of_equal)?;
    let turn_half_hole = rows.iter().any(|(_, holes)| !is_whole(*holes));
    let ring = |(index, holes): (usize, u16), is_top: bool| {
        let step = holes / bights;
        let first = if is_top && staggered { 1 + step / 2 } else { 1 };
        RingPins {
            row: index + 1,
            holes_in_row: holes,
            holes: (0..bights).map(|pin| first + pin * step).collect(),
        }
    };
    // Outermost first: at the bottom that is the lowest row, and the rings are alike, the top one the
    // other way up.
    let mut rows = rows
        .into_iter()
        .map(|row| [ring(row, false), ring(row, true)]);
    let [bottom, top] = rows.next()?;
    Some(Layout::Rings {
        bottom,
        top,
        inner: rows.collect(),
        turn_half_hole,
    })
}

fn strip(tube: &Tube, lattice: Lattice) -> Strip {
    let (bights, staggered) = (lattice.bights(), lattice.is_staggered());
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
        nested: lattice.nested(),
        bottom: marks(0.0),
        top: marks(if staggered { 0.5 } else { 0.0 }),
    }
}
