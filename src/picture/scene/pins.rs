//! The pins that can be seen, and whether there is room for their numbers.

use super::knot::KnotScene;
use super::projection::Span;
use super::sheet_point::{SheetPoint, real, whole};
use crate::knot::{Pin, Rim};

/// Radius of the ring round a short number, in sizes of its type.
pub const NUMBER_RING: f32 = 0.82;

/// A pin as it is met while looking over the sheet from left to right.
#[derive(Clone, Copy, Debug)]
pub struct VisiblePin {
    /// Which pin of which rim.
    pub pin: Pin,
    /// Where it stands on the sheet.
    pub at: SheetPoint,
    /// Whether it belongs to the one turn of the tube that is shown, and not to what the picture
    /// repeats beyond it.
    pub within: bool,
    /// How far it is turned away from the eye: 0 in front, 1 at the edge of the tube.
    pub turned: f32,
}

impl KnotScene {
    /// The pins of a rim that can be seen, from left to right.
    pub fn visible_pins(&self, rim: Rim) -> impl Iterator<Item = VisiblePin> + '_ {
        let (layout, across) = (&self.layout, self.projection.across);
        let inner = self.inner();
        let (shift, height) = match rim {
            Rim::Bottom => (0, layout.pin_height()),
            Rim::Top => (layout.stagger, layout.top() - layout.pin_height()),
        };
        let first = whole(across.from / layout.half_pitch) - 1;
        let last = whole(across.to / layout.half_pitch) + 1;
        let even = first + (first - shift).rem_euclid(2);
        (even..=last).step_by(2).filter_map(move |half_pitch| {
            let number = u16::try_from(self.index(half_pitch - shift) + 1).ok()?;
            let x = real(half_pitch) * layout.half_pitch;
            let turned = self.projection.turned(x);
            (across.contains(x) && turned <= 1.0).then_some(VisiblePin {
                pin: Pin { rim, number },
                at: (x, height),
                within: inner.contains(x),
                turned,
            })
        })
    }

    /// Whether the numbers of a rim are in the picture with all of a ring round them: half a number
    /// can be read as another.
    pub fn number_fits(&self, rim: Rim) -> bool {
        let Span { from, to } = self.projection.upright;
        let ring = self.layout.text * NUMBER_RING;
        (from + ring..=to - ring).contains(&self.layout.number_height(rim))
    }

    /// Whether the number of the pin at this point of the sheet is within the picture, on this copy
    /// or, where the picture repeats itself, on another.
    pub fn shows_number(&self, pin: SheetPoint) -> bool {
        let rim = if pin.1 > self.layout.top() / 2.0 {
            Rim::Top
        } else {
            Rim::Bottom
        };
        let projection = &self.projection;
        let across = projection.seams.is_some()
            || projection.across.contains(pin.0) && projection.turned(pin.0) <= 1.0;
        across && self.number_fits(rim)
    }
}
