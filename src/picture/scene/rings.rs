//! The two rings with their holes, their pins and the numbers, rolled out flat.

use super::view::Viewport;
use crate::bench::{Circle, Layout, Millimetres, RimTape, RingPins, Strip};
use crate::knot::Hand;

/// Where along a ring its holes and pins are, as shares of the way round.
#[derive(Clone, Debug)]
pub struct Ring {
    /// The holes of every row, the outermost row first.
    pub rows: Vec<Vec<f32>>,
    /// The row that the pins stand in.
    pub used: usize,
    /// Every pin: how far round it stands, and the number of its hole.
    pub pins: Vec<(f32, Option<u16>)>,
    /// Where bights are nested, the further rows with pins: the number of the row, from 0, and
    /// where its pins stand.
    pub inner: Vec<(usize, Vec<f32>)>,
}

/// How a ring is shown: only what the step tells is lit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RingTold {
    /// Its pins are told now.
    Now,
    /// They stand already, or will.
    Besides,
    /// They are told later: it has nothing but its holes.
    Later,
}

/// Both rings of a tube cut open and laid flat, the top one above.
#[derive(Clone, Debug)]
pub struct RingsScene {
    /// The ring whose pins begin the knot.
    pub bottom: Ring,
    /// The ring at the other end of the tube.
    pub top: Ring,
    /// How the bottom ring is shown, and the top one.
    pub told: [RingTold; 2],
    /// Height of the letters of a pin number.
    pub text: f32,
    viewport: Viewport,
    mirrored: bool,
}

impl RingsScene {
    /// The rings of a tube pinned like this, with so many holes in every row of a ring; without
    /// rows it shows the marks of the pins alone. Numbers run the way the cord of a tyer of this
    /// hand travels.
    pub fn new(layout: &Layout, rows: &[u16], hand: Hand, viewport: Viewport) -> Self {
        let [bottom, top] = match layout {
            Layout::Rings {
                bottom,
                top,
                inner,
                turn_half_hole,
            } => {
                let half = if *turn_half_hole { 0.5 } else { 0.0 };
                let [lower, upper] = [0, 1].map(|rim| inner.iter().map(move |rows| &rows[rim]));
                [ring(bottom, lower, rows, 0.0), ring(top, upper, rows, half)]
            }
            Layout::Strip(strip) => marks(strip),
            Layout::Tapes(tapes) => of_shares(
                &tapes
                    .rows()
                    .map(|row| row.map(tape_shares))
                    .collect::<Vec<_>>(),
            ),
            Layout::Board(board) => of_shares(
                &board
                    .rows()
                    .map(|row| row.map(circle_shares))
                    .collect::<Vec<_>>(),
            ),
        };
        Self {
            bottom,
            top,
            told: [RingTold::Now; 2],
            text: (viewport.height / 14.0).clamp(12.0, 30.0),
            viewport,
            mirrored: hand == Hand::Left,
        }
    }

    /// Left and right edge of the rings.
    pub fn edges(&self) -> (f32, f32) {
        let margin = self.text * 2.0;
        (margin, self.viewport.width - margin)
    }

    /// How far right a share of the way round lies.
    pub fn across(&self, share: f32) -> f32 {
        let share = if self.mirrored { 1.0 - share } else { share };
        let margin = self.text * 2.0;
        margin + share * (self.viewport.width - 2.0 * margin)
    }

    /// Pixels from one of so many holes or pins of a ring to the next.
    pub fn apart(&self, things: usize) -> f32 {
        (self.viewport.width - 2.0 * self.text * 2.0) / count(things.max(1))
    }

    /// Top and bottom edge of a ring's band.
    pub fn band(&self, is_top: bool) -> (f32, f32) {
        let (height, numbers) = (self.viewport.height, self.text * 2.4);
        let band = ((height - 2.0 * numbers) * 0.42).max(self.text);
        if is_top {
            (numbers, numbers + band)
        } else {
            (height - numbers - band, height - numbers)
        }
    }

    /// How far down the middle of a row lies; the first lies next to the rim.
    pub fn row(&self, ring: &Ring, row: usize, is_top: bool) -> f32 {
        let (high, low) = self.band(is_top);
        let share = (count(row) + 0.5) / count(ring.rows.len().max(1));
        if is_top {
            high + share * (low - high)
        } else {
            low - share * (low - high)
        }
    }

    /// From a row to the numbers of its holes, and how large these are, where they keep nearer to it than to
    /// the next.
    pub fn hole_numbers(&self, ring: &Ring, radius: f32, is_top: bool) -> Option<(f32, f32)> {
        let (high, low) = self.band(is_top);
        let tall = (low - high) / count(ring.rows.len().max(1));
        let is_last = ring.used + 1 == ring.rows.len();
        // Beyond the last row comes the edge of the band.
        let room = if is_last { tall / 2.0 } else { tall - radius };
        let size = (self.text * 0.75).min(room - radius - 8.0);
        (size >= SMALLEST_HOLE_NUMBER).then_some((radius + 3.0 + size / 2.0, size))
    }

    /// The radius of a hole when there are so many in a row of this ring.
    pub fn radius(&self, ring: &Ring, holes: usize, is_top: bool) -> f32 {
        let (high, low) = self.band(is_top);
        let tall = (low - high) / count(ring.rows.len().max(1));
        (self.apart(holes) * 0.3).min(tall * 0.28).clamp(1.2, 9.0)
    }
}

/// Smaller than this nobody reads the number of a hole.
const SMALLEST_HOLE_NUMBER: f32 = 9.0;

/// The holes of a ring, begun a quarter hole from the cut so that no hole lies on it.
fn ring<'a>(
    pins: &RingPins,
    inner: impl Iterator<Item = &'a RingPins>,
    rows: &[u16],
    turned: f32,
) -> Ring {
    let at = |holes: u16, hole: u16| {
        (f32::from(hole) - 1.0 + 0.25 + turned).rem_euclid(f32::from(holes)) / f32::from(holes)
    };
    Ring {
        rows: rows
            .iter()
            .map(|&holes| (1..=holes).map(|hole| at(holes, hole)).collect())
            .collect(),
        used: pins.row.saturating_sub(1),
        pins: pins
            .holes
            .iter()
            .map(|&hole| (at(pins.holes_in_row, hole), Some(hole)))
            .collect(),
        inner: inner
            .map(|pins| {
                let holes = pins.holes.iter();
                let shares = holes.map(|&hole| at(pins.holes_in_row, hole)).collect();
                (pins.row.saturating_sub(1), shares)
            })
            .collect(),
    }
}

/// The marks of a strip as two rings without holes, begun a quarter pitch from the cut.
fn marks(strip: &Strip) -> [Ring; 2] {
    let share =
        |mark: &Millimetres| single((mark.get() + strip.pitch.get() / 4.0) / strip.length.get());
    let nested = usize::from(strip.nested);
    [&strip.bottom, &strip.top].map(|pins| Ring {
        rows: vec![Vec::new(); nested],
        used: 0,
        pins: pins.iter().map(|mark| (share(mark), None)).collect(),
        inner: (1..nested)
            .map(|row| (row, pins.iter().map(share).collect()))
            .collect(),
    })
}

/// How far round the marks of a tape stand, begun a quarter pitch from the cut.
fn tape_shares(tape: &RimTape) -> Vec<f32> {
    let share = |mark: &Millimetres| (mark.get() + tape.pitch.get() / 4.0) / tape.length.get();
    tape.marks.iter().map(share).map(single).collect()
}

/// The same of the pins of a circle.
fn circle_shares(circle: &Circle) -> Vec<f32> {
    let pins = circle.angles.len();
    let quarter = 0.25 / f64::from(count(pins.max(1)));
    (0..pins)
        .map(|pin| single(circle.share(pin) + quarter))
        .collect()
}

/// Two rings without holes: of every row, from the rim inwards, how far round its pins stand.
fn of_shares(rows: &[[Vec<f32>; 2]]) -> [Ring; 2] {
    [0, 1].map(|rim| {
        let mut all = rows.iter().map(|row| &row[rim]);
        let pins = all.next().into_iter().flatten();
        Ring {
            rows: vec![Vec::new(); rows.len()],
            used: 0,
            pins: pins.map(|share| (*share, None)).collect(),
            inner: (1..).zip(all.cloned()).collect(),
        }
    })
}

/// A share of a picture.
#[expect(clippy::cast_possible_truncation, reason = "a share of a picture")]
const fn single(share: f64) -> f32 {
    share as f32
}

/// A number of holes, pins or rows, to measure with.
#[expect(clippy::cast_precision_loss, reason = "two thousand at most")]
pub const fn count(things: usize) -> f32 {
    things as f32
}
