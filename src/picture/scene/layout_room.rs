//! What lies round the cords of a picture: bights beyond the rims, ends, numbers, and the room that
//! they take.

use super::layout::SceneLayout;
use super::sheet_point::real;
use crate::knot::Rim;

/// Between the ring of a number and the cords.
const CLEAR: f32 = 3.0;
/// Between it and the edge of the picture.
pub(super) const AT_THE_EDGE: f32 = 2.0;

impl SceneLayout {
    /// How far to the right of the middle of its cable the cord of `pass` lies, on a rising
    /// leg of the sheet looking along it; a falling leg likewise.
    pub fn offset(&self, pass: u16) -> f32 {
        self.toward * (f32::from(pass) - f32::midpoint(f32::from(self.passes), 1.0)) * self.spacing
    }

    /// Height of the bottom pins on the sheet; top pins stand as far below the top.
    pub fn pin_height(&self, rim: Rim) -> f32 {
        let form = self.rim_form(rim, 0);
        self.bend / form.cos / form.along
    }

    /// Radius of the outer edge of the outermost bight.
    pub fn outermost(&self) -> f32 {
        self.bend + (f32::from(self.passes) - 1.0) / 2.0 * self.spacing + self.cord / 2.0
    }

    /// How far bights reach beyond the line of a rim, on the sheet.
    pub fn overhang(&self, rim: Rim) -> f32 {
        self.outermost() / self.rim_form(rim, 0).along - self.pin_height(rim)
    }

    /// How far the ends reach beyond the bottom bights.
    pub fn end_length(&self) -> f32 {
        (0.3 * self.half_pitch).clamp(5.0, 36.0)
    }

    /// From the outermost bights of the top rim to the middle of its numbers: clear of a head at the top
    /// of a bight.
    fn number_above(&self) -> f32 {
        0.4 * self.head_length() + self.ring() + CLEAR
    }

    /// From the outermost bights of the bottom rim to the middle of its numbers: clear of the ends.
    fn number_below(&self) -> f32 {
        let head = self.head_length();
        // With the edge that sets the head off.
        let hangs = self.end_length() + 1.1 * head - self.head_within_end();
        hangs + self.ring() + CLEAR
    }

    /// How much of the head of a loose end lies within the length of an end: the cord stops so much sooner.
    pub fn head_within_end(&self) -> f32 {
        self.head_length().min(self.end_length())
    }

    /// Radius of the ring or disc round the number of a pin of the leg in hand, whatever its digits.
    pub fn ring(&self) -> f32 {
        self.large_text * self.ring_in_type
    }

    /// Height on the sheet of the middle of a rim's numbers.
    pub fn number_height(&self, rim: Rim) -> f32 {
        match rim {
            Rim::Bottom => -(self.overhang(rim) + self.number_below()),
            Rim::Top => self.top() + self.overhang(rim) + self.number_above(),
        }
    }

    /// The same for a number that is no pin's of the leg in hand. Within the inner circle of a board, where
    /// they stand closest, it is as near to its pin as its own size lets it.
    pub fn plain_number_height(&self, rim: Rim) -> f32 {
        let is_board = self.meridian.is_some_and(|line| line.is_board());
        match rim {
            Rim::Top if is_board => {
                let near = 0.4 * self.head_length() + 0.9 * self.text;
                self.top() + self.overhang(rim) + near.min(self.number_above())
            }
            _ => self.number_height(rim),
        }
    }

    /// Room needed above the top rim line, in the picture.
    pub fn above(&self) -> f32 {
        self.beyond(Rim::Top) + self.number_above() + self.ring() + AT_THE_EDGE
    }

    /// Room needed below the bottom rim line, in the picture.
    pub fn below(&self) -> f32 {
        self.beyond(Rim::Bottom) + self.number_below() + self.ring() + AT_THE_EDGE
    }

    /// How far bights reach beyond the line of a rim, on the surface.
    pub fn beyond(&self, rim: Rim) -> f32 {
        self.overhang(rim) * self.rim_form(rim, 0).along
    }

    /// Length of the head of the cord in hand.
    pub fn head_length(&self) -> f32 {
        if self.finished.is_some() {
            return 0.0;
        }
        1.1 * self.cord.max(6.0)
    }

    /// Height of the top rim line on the sheet.
    pub fn top(&self) -> f32 {
        real(self.height) * self.row
    }

    /// Once round the tube.
    pub fn round(&self) -> f32 {
        real(self.turn()) * self.half_pitch
    }

    /// Half pitches from a pin to the next of its row.
    pub const fn pin_pitch(&self) -> i32 {
        2 * self.nested
    }

    /// Half pitches once round the tube.
    pub const fn turn(&self) -> i32 {
        self.pin_pitch() * self.bights
    }

    /// How tall it is between the rim lines, seen from the side, and how far below the lower of them and
    /// above it a picture goes.
    pub fn upright(&self) -> [f32; 3] {
        let Some(meridian) = &self.meridian else {
            return [self.below(), self.top(), self.above()];
        };
        let unit = self.unit();
        let [bottom, top] = [Rim::Bottom, Rim::Top].map(|rim| meridian.end(rim)[1] * unit);
        let (mut below, mut above) = if self.finished.is_some() {
            // No numbers stand there, and what it lies on is seen beyond it.
            let beyond = 0.06 * (top - bottom);
            (
                self.beyond(Rim::Bottom) + beyond,
                self.beyond(Rim::Top) + beyond,
            )
        } else {
            (self.below(), self.above())
        };
        if matches!(meridian.bend, super::meridian::Bend::Ball) {
            // All of the ball is seen, and a little of what is round it.
            below = below.max(1.03 * unit + bottom);
            above = above.max(1.03 * unit - top);
        }
        [below, top - bottom, above]
    }
}
