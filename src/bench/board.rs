//! Where a knot is held that is not tied on a tube: circles of T-pins on a board, tapes with marks
//! round a thing that is not as thick all along.

use std::f64::consts::TAU;

use super::Millimetres;

/// A circle of T-pins on a board.
///
/// # Examples
/// ```
/// use std::f64::consts::FRAC_PI_2;
///
/// use marlinspeak::bench::{Circle, Millimetres};
///
/// // Four pins, a quarter of the circle apart, the first where the circle begins.
/// let circle = Circle::of(Millimetres::new(60.0).unwrap(), 4, 0.0);
/// assert_eq!(circle.angles.len(), 4);
/// assert!((circle.angles[1] - FRAC_PI_2).abs() < 1e-12);
/// assert_eq!(circle.share(1), 0.25);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Circle {
    /// From the middle of the board to the pins.
    pub radius: Millimetres,
    /// Where each pin stands, pin 1 first, in radians from pin 1 of the outer circle, the way the cord
    /// travels.
    pub angles: Vec<f64>,
}

impl Circle {
    /// So many pins evenly spaced, the first so many pitches on.
    pub fn of(radius: Millimetres, pins: u16, on: f64) -> Self {
        let angle = |pin: u16| TAU * (f64::from(pin) + on) / f64::from(pins);
        Self {
            radius,
            angles: (0..pins).map(angle).collect(),
        }
    }

    /// Across it, from pin to pin.
    pub fn across(&self) -> Millimetres {
        Millimetres::computed(2.0 * self.radius.get())
    }

    /// How far round a pin stands, 0 … 1; pins counted from 0. Nought for one that is not there.
    pub fn share(&self, pin: usize) -> f64 {
        self.angles.get(pin).map_or(0.0, |angle| angle / TAU)
    }
}

/// Circles of T-pins on a board.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Board, Circle, Counts, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let board = Board {
///     outer: Circle::of(mm(70.0), 7, 0.0),
///     inner: Circle::of(mm(20.0), 7, 0.5),
///     nested: Vec::new(),
/// };
/// assert_eq!(board.across(), mm(140.0));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Board {
    /// The circle of the bottom rim.
    pub outer: Circle,
    /// The circle of the top rim.
    pub inner: Circle,
    /// Of nested bights the further circles, that of the bottom and that of the top rim of each, from the
    /// rims towards the middle of the knot; none in a plain knot.
    pub nested: Vec<[Circle; 2]>,
}

impl Board {
    /// Across the outer circle, from pin to pin.
    pub fn across(&self) -> Millimetres {
        self.outer.across()
    }

    /// How many pages of A4 its printed sheet goes on over: 186 mm by 181 mm of it stand on each, 15 mm of
    /// which the next one shows again, and there are 10 mm for the numbers outside the outer circle.
    pub fn sheet_pages(&self) -> u16 {
        let across = self.across().get() + 2.0 * 10.0;
        let over = |room: f64| {
            let (mut pages, mut reached) = (1, room);
            while reached < across && pages < 1000 {
                reached += room - 15.0;
                pages += 1;
            }
            pages
        };
        over(186.0_f64) * over(181.0)
    }

    /// The circles of the outer rim and of the inner rim, from the rims towards the middle of the knot.
    pub fn rows(&self) -> impl Iterator<Item = [&Circle; 2]> {
        let nested = self.nested.iter().map(|[outer, inner]| [outer, inner]);
        [[&self.outer, &self.inner]].into_iter().chain(nested)
    }
}

/// A tape once round a thing, with a mark for every pin of a row.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, RimTape};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Five marks, begun half of the way from one to the next.
/// let tape = RimTape::of(mm(100.0), 5, 0.5);
/// assert_eq!(tape.pitch, mm(20.0));
/// assert_eq!(tape.marks[0], mm(10.0));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct RimTape {
    /// Its length: the way round the thing there.
    pub length: Millimetres,
    /// From a mark to the next.
    pub pitch: Millimetres,
    /// How far along it each pin stands, pin 1 first, the way the cord travels. All tapes begin in one
    /// line along the thing.
    pub marks: Vec<Millimetres>,
}

impl RimTape {
    /// So many marks evenly spaced, the first so many pitches on.
    pub fn of(length: Millimetres, pins: u16, on: f64) -> Self {
        let pitch = length.get() / f64::from(pins);
        let mark = |pin: u16| Millimetres::computed(pitch * (f64::from(pin) + on));
        Self {
            length,
            pitch: Millimetres::computed(pitch),
            marks: (0..pins).map(mark).collect(),
        }
    }
}

/// Tapes round a thing that is not as thick all along.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, RimTape, Tapes};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tapes = Tapes {
///     bottom: RimTape::of(mm(100.0), 5, 0.0),
///     top: RimTape::of(mm(80.0), 5, 0.5),
///     inner: Vec::new(),
/// };
/// assert_eq!(tapes.rows().count(), 1);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Tapes {
    /// The tape of the bottom rim.
    pub bottom: RimTape,
    /// The tape of the top rim.
    pub top: RimTape,
    /// Of nested bights the further tapes, that of the bottom and that of the top rim of each, from the
    /// rims towards the middle of the knot; none in a plain knot.
    pub inner: Vec<[RimTape; 2]>,
}

impl Tapes {
    /// The tapes of the bottom rim and of the top rim, from the rims towards the middle of the knot.
    pub fn rows(&self) -> impl Iterator<Item = [&RimTape; 2]> {
        let inner = self.inner.iter().map(|[bottom, top]| [bottom, top]);
        [[&self.bottom, &self.top]].into_iter().chain(inner)
    }
}
