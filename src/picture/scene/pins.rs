//! The pins that can be seen, and whether there is room for their numbers.

use kurbo::Point;

use super::knot::KnotScene;
use super::projection::Span;
use super::sheet_point::{SheetPoint, real, whole};
use crate::knot::{Pin, Rim};

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
        let (seams, knot) = (self.projection.seams, self.laying.knot());
        let shift = if rim == Rim::Top { layout.stagger } else { 0 };
        let columns = self.columns(across, shift, [1, 1]);
        columns.flat_map(move |half_pitch| {
            let x = real(half_pitch) * layout.half_pitch;
            let turned = self.projection.turned(x);
            let number = self.number(half_pitch - shift);
            let is_seen = self.projection.is_in_sight(x);
            let rows = (1..=knot.nested()).filter(move |_| is_seen);
            rows.filter_map(move |row| {
                let pin = knot.pin(rim, row, number)?;
                let stands = knot.stands_at(pin).0.into();
                let height = real(stands) * layout.row;
                let inside = match rim {
                    Rim::Bottom => layout.rim_form(rim, stands),
                    Rim::Top => layout.rim_form(rim, layout.height - stands),
                };
                let inside = layout.bend / inside.cos / inside.along;
                Some(VisiblePin {
                    pin,
                    at: match rim {
                        Rim::Bottom => (x, height + inside),
                        Rim::Top => (x, height - inside),
                    },
                    within: seams.is_none_or(|turn| turn.contains(x)),
                    turned,
                })
            })
        })
    }

    /// The half pitches from one edge of a span to the other, and so many beyond both, at which pins stand
    /// that are `shift` half pitches from those at the bottom. A board has each of them once.
    pub fn columns(
        &self,
        span: Span,
        shift: i32,
        [before, after]: [i32; 2],
    ) -> impl Iterator<Item = i32> + use<> {
        let layout = &self.layout;
        let pitch = layout.pin_pitch();
        let (first, last) = if self.projection.board().is_some() {
            (0, layout.turn() - 1)
        } else {
            (
                whole(span.from / layout.half_pitch) - before,
                whole(span.to / layout.half_pitch) + after,
            )
        };
        let first = first + (shift - first).rem_euclid(pitch);
        (first..=last).step_by(usize::try_from(pitch).unwrap_or(1))
    }

    /// Where the number of the pin at this point of the sheet stands in the picture, at a height of the
    /// sheet: above or below its pin, however the ground beyond that goes on.
    pub fn number_point(&self, pin: SheetPoint, height: f32) -> Point {
        let at = self.point((pin.0, height));
        if self.projection.is_bent() {
            Point::new(self.point(pin).x, at.y)
        } else {
            at
        }
    }

    /// Whether the numbers of a rim are in the picture with all of a ring round them: half a number
    /// can be read as another.
    pub fn number_fits(&self, rim: Rim) -> bool {
        if self.projection.board().is_some() {
            return true;
        }
        let Span { from, to } = self.projection.upright;
        let ring = self.layout.ring();
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
        if projection.board().is_some() {
            return self.is_whole_at((pin.0, self.layout.number_height(rim)));
        }
        let across = projection.seams.is_some() || projection.is_in_sight(pin.0);
        across && self.number_fits(rim)
    }

    /// Whether a number at this point of the sheet is in the picture with all of its ring.
    pub fn is_whole_at(&self, at: SheetPoint) -> bool {
        let ring = f64::from(self.layout.ring());
        self.viewport.rect().inset(-ring).contains(self.point(at))
    }
}
