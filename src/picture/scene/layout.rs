//! The layout of a picture of a knot: how large everything is, the pitch of the pins, the cords, the room at the rims.
//!
//! The picture is laid out on a *sheet*: the surface of the tube, unrolled, in pixels, `x` to
//! the right and `y` upwards from the line where the bottom bights would meet in a point.
//!
//! Every leg is a straight line of one slope, so the cords of a cable (a lead and its
//! followers) are parallels and a crossing is always the same lozenge. A pin stands in the
//! corner between a rising and a falling cable, so far in that the innermost cord touches it;
//! bights are arcs round the pin.

use super::meridian::Meridian;
use super::view::single;
use crate::bench::{Bands, KnotShape};
use crate::knot::{Hand, Knot, Rim, Side};

/// Half pitches shown again beyond either edge of the rolled-out picture.
pub const REPEAT: f32 = 1.6;
/// A half pitch or a row smaller than this many pixels is too small to follow by eye.
pub const SMALLEST: f32 = 14.0;
/// A row may be as small as this where the rims are in the picture for it.
pub const SMALLEST_WITH_RIMS: f32 = 9.0;
/// A half pitch that is easy to follow.
pub const COMFORTABLE: f32 = 30.0;
/// The least half pitch or row of a finished knot, where nothing is to be followed.
pub const SMALLEST_FINISHED: f32 = 5.0;
/// A half pitch larger than this many pixels helps nobody.
pub const LARGEST: f32 = 420.0;
/// The height of a row in half pitches as long as all is easy to follow: a knot has one form, however wide
/// or high its picture is.
const USUAL_STEEPNESS: f32 = 0.9;
/// A picture smaller than this either way is an icon: numbers would be all that is seen of it.
const ICON: f32 = 72.0;
/// Radius of the ring round a short number, in sizes of its type.
pub const NUMBER_RING: f32 = 0.82;
/// Width of a digit in sizes of its type: the bold face's, from its file.
pub const DIGIT: f32 = 0.64;
/// Type of what is looked up, where it has room: a pixel of it is a minute of arc at the tyer's distance.
pub const USUAL_TEXT: f32 = 22.0;
/// Between the ring of a number and a plain number beside it, in pixels.
const BESIDE_RING: f32 = 3.0;
/// Bounds for the height of a row in half pitches; outside them crossings get too slanted.
pub const STEEPNESS: [f32; 2] = [0.8, 1.3];

/// The measures of one picture. Lengths in pixels.
#[derive(Clone, Debug)]
pub struct SceneLayout {
    /// Rows of crossings and one more: a leg rises over so many rows.
    pub height: i32,
    /// Pins of a ring.
    pub bights: i32,
    /// Bights nested at each rim, and so rows of pins there.
    pub nested: i32,
    /// Half pitches by which top pins stand off: 0 or 1.
    pub stagger: i32,
    /// Half the distance between two pins of a ring.
    pub half_pitch: f32,
    /// Height of a row of crossings.
    pub row: f32,
    /// Length of a leg from one row to the next.
    pub diagonal: f32,
    /// Sine of the angle between a leg and the rim.
    pub sin: f32,
    /// Cosine of that angle.
    pub cos: f32,
    /// Tangent of that angle.
    pub tan: f32,
    /// Cotangent of that angle.
    pub cot: f32,
    /// Distance between the middles of two cords that run side by side.
    pub spacing: f32,
    /// Width of a cord.
    pub cord: f32,
    /// Clear space on either side of an over cord, where the under cord is not drawn.
    pub gap: f32,
    /// Radius of a pin.
    pub pin: f32,
    /// Radius of a bight at the middle of its cable.
    pub bend: f32,
    /// Cords side by side for which there is room.
    pub passes: u16,
    /// 1 when followers lie to the right of a rising leg on the sheet, −1 when to the left.
    pub toward: f32,
    /// Half pitches between two pin numbers where they stand closest.
    pub number_pitch: f32,
    /// Digits of the largest pin number, or letters of the longest name of a bight.
    pub digits: f32,
    /// Radius of the ring round the widest number, in sizes of its type; of a name, half the height of its plate.
    pub ring_in_type: f32,
    /// The largest that type of a pin number becomes; nought where none are shown.
    pub largest_text: f32,
    /// Size of the type of a pin number.
    pub text: f32,
    /// Size of the type of the numbers of the two pins of the leg in hand.
    pub large_text: f32,
    /// Whether the whole knot was too small for the picture, and only a part of it is drawn.
    pub zoomed: bool,
    /// The measures of the finished knot, when it is drawn as it comes out and not as it is easy to
    /// follow.
    pub finished: Option<Proportions>,
    /// The line from rim to rim, where it lies on something else than a straight tube.
    pub meridian: Option<Meridian>,
}

/// The measures of a finished knot, in one unit: half of the way from a bight to the next, the width of
/// a band, and the radius of the middle line of a bight.
#[derive(Clone, Copy, Debug)]
pub struct Proportions {
    /// Half of the way from a bight to the next, on a tube on which the sheet would close.
    pub half_pitch: f32,
    /// Width of a band.
    pub band: f32,
    /// Radius of the middle line of a bight.
    pub bend: f32,
}

impl From<Bands> for Proportions {
    fn from(bands: Bands) -> Self {
        Self {
            half_pitch: single(bands.half_pitch()),
            band: single(bands.band()),
            bend: single(bands.bend()),
        }
    }
}

/// The pixels there are, and what has to fit into them.
#[derive(Clone, Copy, Debug)]
pub struct Constraints {
    /// Width of the picture in pixels.
    pub width: f32,
    /// Height of the picture in pixels.
    pub height: f32,
    /// Half pitches that must fit side by side, for the whole to be drawn.
    pub across: f32,
    /// Rows the part in hand takes.
    pub rows_in_hand: f32,
    /// Whether the knot has one form in every picture; where it is rolled out it fills the height instead.
    pub has_one_form: bool,
    /// How much closer numbers stand at the sides than in the middle, 1 for no closer.
    pub crowding: f32,
    /// Letters of the longest name of a bight, where bights have names in the place of numbers.
    pub letters: Option<f32>,
    /// Letters of the word within the inner circle of a board; 0 for none.
    pub inner_word: f32,
}

impl SceneLayout {
    /// The measures of a knot that is being tied: as large as fits, and no smaller than the eye
    /// can follow.
    pub fn new(knot: &Knot, passes: u16, side: Side, hand: Hand, constraints: Constraints) -> Self {
        let mut layout = Self::unset(knot, passes, side, hand, constraints);
        let widest = (constraints.width / constraints.across).min(LARGEST);
        // The room at the rims depends on the size of a cell, so the largest that fits is
        // looked for: in the usual form, or else first as wide as can be, then as steep.
        let height = |layout: &mut Self, half_pitch: f32, steepness: f32| {
            layout.set(half_pitch, half_pitch * steepness);
            layout.top() + layout.above() + layout.below()
        };
        let half_pitch = largest([1.0, widest], |half_pitch| {
            height(&mut layout, half_pitch, USUAL_STEEPNESS) <= constraints.height
        });
        if constraints.has_one_form && half_pitch >= COMFORTABLE {
            layout.set(half_pitch, half_pitch * USUAL_STEEPNESS);
            return layout;
        }
        let half_pitch = largest([1.0, widest], |half_pitch| {
            height(&mut layout, half_pitch, STEEPNESS[0]) <= constraints.height
        });
        let steepness = largest(STEEPNESS, |steepness| {
            height(&mut layout, half_pitch, steepness) <= constraints.height
        });
        let row = half_pitch * steepness;
        layout.set(half_pitch, row);
        if half_pitch.min(row) >= SMALLEST {
            return layout;
        }
        layout.zoomed = true;
        // The picture is cut off at the sides rather than at the rims, where the pins are.
        let by_rims = largest([1.0, COMFORTABLE], |half_pitch| {
            height(&mut layout, half_pitch, STEEPNESS[0]) <= constraints.height
        });
        if by_rims * STEEPNESS[0] >= SMALLEST_WITH_RIMS {
            let steepness = largest(STEEPNESS, |steepness| {
                height(&mut layout, by_rims, steepness) <= constraints.height
            });
            layout.set(by_rims, by_rims * steepness);
        } else {
            let rows = constraints.rows_in_hand + 4.0;
            let cell = (constraints.width.min(constraints.height) / rows).clamp(SMALLEST, 44.0);
            layout.set(cell, cell);
        }
        layout
    }

    /// The measures of a finished knot, in its own proportions and as large as fits.
    pub fn proportioned(
        knot: &Knot,
        passes: u16,
        side: Side,
        hand: Hand,
        constraints: Constraints,
        shape: &KnotShape,
    ) -> Self {
        let mut layout = Self::unset(knot, passes, side, hand, constraints);
        layout.finished = Some(shape.bands.into());
        let steepness = single(shape.bands.row() / shape.bands.half_pitch());
        let widest = constraints.width / constraints.across;
        let half_pitch = largest([1.0, widest], |half_pitch| {
            layout.set(half_pitch, half_pitch * steepness);
            layout.top() + layout.above() + layout.below() <= constraints.height
        });
        layout.set(half_pitch, half_pitch * steepness);
        if half_pitch.min(layout.row) < SMALLEST_FINISHED {
            let larger = SMALLEST_FINISHED / half_pitch.min(layout.row);
            layout.set(half_pitch * larger, layout.row * larger);
            layout.zoomed = true;
        }
        layout
    }

    /// Everything but the size.
    pub fn unset(
        knot: &Knot,
        passes: u16,
        side: Side,
        hand: Hand,
        constraints: Constraints,
    ) -> Self {
        // A follower on the right hand of a tyer who works to the right turns inside at the
        // top; on the sheet that is the same as for a left-hand follower of a mirrored tyer.
        let toward = if side.turns_inside(Rim::Top, hand) {
            1.0
        } else {
            -1.0
        };
        let digits = match knot.bights() {
            0..10 => 1.0,
            10..100 => 2.0,
            _ => 3.0,
        };
        Self {
            height: i32::from(knot.lattice().height()),
            bights: i32::from(knot.bights()),
            nested: i32::from(knot.nested()),
            stagger: i32::from(knot.nested()) * i32::from(knot.is_staggered()),
            half_pitch: 1.0,
            row: 1.0,
            diagonal: 1.0,
            sin: 1.0,
            cos: 1.0,
            tan: 1.0,
            cot: 1.0,
            spacing: 1.0,
            cord: 1.0,
            gap: 1.0,
            pin: 1.0,
            bend: 1.0,
            passes,
            toward,
            number_pitch: constraints.crowding * 2.0 * f32::from(knot.nested()),
            digits: constraints.letters.unwrap_or(digits),
            ring_in_type: if constraints.letters.is_some() {
                NUMBER_RING
            } else {
                NUMBER_RING.max(DIGIT / 2.0 * digits + 0.3)
            },
            largest_text: if constraints.width.min(constraints.height) < ICON {
                0.0
            } else {
                42.0
            },
            text: 1.0,
            large_text: 1.0,
            zoomed: false,
            finished: None,
            meridian: None,
        }
    }

    /// Works out everything that follows from the size of a cell.
    pub fn set(&mut self, half_pitch: f32, row: f32) {
        self.half_pitch = half_pitch;
        self.row = row;
        self.diagonal = half_pitch.hypot(row);
        self.sin = row / self.diagonal;
        self.cos = half_pitch / self.diagonal;
        self.tan = self.sin / self.cos;
        self.cot = self.cos / self.sin;
        // Distance between two neighbouring legs of one heading.
        let pitch = 2.0 * half_pitch * self.sin;
        match self.finished {
            Some(finished) => self.fill_as_finished(pitch, finished),
            None => self.fill_to_follow(pitch),
        }
    }

    /// Cords so thin that a tyer sees between them.
    fn fill_to_follow(&mut self, pitch: f32) {
        let passes = f32::from(self.passes);
        let (fill, thickness) = match self.passes {
            1 => (0.34, 0.9),
            2 => (0.54, 0.8),
            _ => (0.66, 0.8),
        };
        self.spacing = fill * pitch / passes;
        self.cord = self.spacing * thickness;
        self.gap = (0.09 * pitch)
            .min(0.36 * self.cord)
            .max(1.6)
            .min(0.14 * pitch);
        self.pin = (0.12 * pitch).min(0.5 * self.cord).max(1.5);
        // 22 minutes of arc for what is looked up, 42 for what is looked for, where the pins stand far
        // enough apart.
        let room = self.number_pitch * self.half_pitch;
        let half = DIGIT / 2.0 * self.digits;
        self.text = (room / (2.0 * half + 0.4)).clamp(12.0, USUAL_TEXT);
        let ring = NUMBER_RING.max(half + 0.3);
        let beside = room - half * self.text - BESIDE_RING;
        self.large_text =
            (beside / ring).clamp(1.2 * self.text, self.largest_text.max(1.2 * self.text));
        if self.largest_text <= 0.0 {
            (self.text, self.large_text) = (1.0, 1.0);
        }
        let inner = self.pin + self.gap.min(0.2 * self.cord) + self.cord / 2.0;
        self.bend = inner + (passes - 1.0) / 2.0 * self.spacing;
    }

    /// Bands that hide as much of the ground as was computed for the finished knot, which has no
    /// pins. Cords of a band lie so close that only a line is left between them.
    fn fill_as_finished(&mut self, pitch: f32, finished: Proportions) {
        let passes = f32::from(self.passes);
        let scale = self.half_pitch / finished.half_pitch;
        let band = scale * finished.band;
        self.cord = if self.passes == 1 {
            band
        } else {
            0.94 * band / passes
        };
        self.spacing = (band - self.cord) / (passes - 1.0).max(1.0);
        self.gap = (0.06 * self.cord).clamp(0.6, 3.0).min(0.14 * pitch);
        self.pin = (0.12 * pitch).min(0.5 * self.cord).max(1.5);
        self.text = 6.0;
        self.large_text = 6.0;
        self.bend = scale * finished.bend;
    }
}

/// The largest value between two bounds that `fits`, or the lower one when none does. What is
/// smaller than one that fits must fit too.
pub fn largest([mut low, mut high]: [f32; 2], mut fits: impl FnMut(f32) -> bool) -> f32 {
    if fits(high) {
        return high;
    }
    for _ in 0..20 {
        let middle = f32::midpoint(low, high);
        if fits(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}
