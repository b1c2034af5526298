//! Where to write the numbers of the pins of a leg that cannot be seen, and what says that they are not there.

use kurbo::{Point, Vec2};

use super::active_leg::ActiveLeg;
use super::cord_path::CordPath;
use super::knot::KnotScene;
use super::layout::SceneLayout;
use super::sheet_point::SheetPoint;
use crate::knot::{Heading, Rim};

/// From the ring or disc of a number to the tip that says that its pin lies beyond the picture, in sizes of
/// its type.
pub const POINTER: f32 = 0.34;
/// Between the ring of a number and the edge of the picture.
const TO_THE_EDGE: f32 = 1.5;

/// The number of a pin that is not seen: where it stands in the place of being at its pin.
#[derive(Clone, Copy, Debug)]
pub struct FarNumber {
    /// Its middle.
    pub at: Point,
    /// What says that the pin is not there.
    pub sign: FarSign,
}

/// Where a pin is that is not seen.
#[derive(Clone, Copy, Debug)]
pub enum FarSign {
    /// Round the back; and where its ring goes there, when that is in the picture.
    Behind(Option<Point>),
    /// Beyond the edge of the picture, this way.
    Beyond(Vec2),
}

impl KnotScene {
    /// Where to write the numbers of the first and the last pin of a leg, or `None` where they can be seen at
    /// the pin itself: for the copy in the middle of the picture.
    pub fn far_numbers(&self, active: &ActiveLeg) -> [Option<FarNumber>; 2] {
        let (base, rows) = self.rows_of(active.leg);
        let path = CordPath {
            layout: &self.layout,
            rising: active.leg.heading() == Heading::Rising,
            start: self.focus.start,
            base,
            rows,
            offset: self.layout.offset(active.beside + 1),
            head: 0.0,
        };
        [true, false].map(|at_start| {
            let pin = path.pin(at_start);
            if self.shows_number(pin) {
                None
            } else if self.projection.board().is_some() {
                self.leaves(path, at_start)
            } else if let Some(beside) = self
                .beside_ring(path, at_start)
                .or_else(|| self.beside_tube(path, at_start))
            {
                Some(beside)
            } else {
                // Where its cord goes out of the picture; among the numbers of its rim it would be taken for
                // that of the pin there.
                self.leaves(path, at_start)
                    .or_else(|| Some(self.at_the_side(pin)))
            }
        })
    }

    /// The place at the side of the picture, level with the numbers of its rim, for a pin beyond
    /// that side whose cord is not seen to go out of the picture.
    fn at_the_side(&self, pin: SheetPoint) -> FarNumber {
        let layout = &self.layout;
        let height = layout.number_height(rim_at(pin, layout));
        let inset = f64::from(layout.ring() + POINTER * layout.large_text + TO_THE_EDGE);
        let level = self.point((self.projection.middle, height)).y;
        let is_right = (pin.0 > self.projection.middle) != self.projection.mirrored;
        let (x, way) = if is_right {
            (f64::from(self.viewport.width) - inset, 1.0)
        } else {
            (inset, -1.0)
        };
        FarNumber {
            at: Point::new(x, level),
            sign: FarSign::Beyond(Vec2::new(way, 0.0)),
        }
    }

    /// The last point of the leg in hand that can be seen on the way to one of its pins.
    fn leaves(&self, path: CordPath<'_>, at_start: bool) -> Option<FarNumber> {
        let layout = &self.layout;
        let inset = layout.ring() + POINTER * layout.large_text + TO_THE_EDGE;
        let picture = self.viewport.rect().inset(-f64::from(inset));
        let goal = path.straight()[usize::from(!at_start)];
        let step = if at_start { -4.0 } else { 4.0 };
        let mut along = self.focus.row_on_the_way() * layout.diagonal;
        let mut last: Option<Point> = None;
        let mut way = Vec2::ZERO;
        while (along - goal) * step < 0.0 {
            let on_sheet = path.at(along, path.offset);
            let point = self.point(on_sheet);
            if !picture.contains(point) || self.projection.turned(on_sheet.0) >= 1.0 {
                break;
            }
            way = last.map_or(way, |last| point - last);
            last = Some(point);
            along += step;
        }
        last.map(|at| FarNumber {
            at,
            sign: FarSign::Beyond(way),
        })
    }

    /// The place beside a round tube, level with the numbers of its rim, for a pin round the back of it: on the
    /// side on which the cord goes there. `None` where those numbers are out of the picture, or no tube is
    /// seen from the side.
    fn beside_ring(&self, path: CordPath<'_>, at_start: bool) -> Option<FarNumber> {
        let radius = self.projection.radius?;
        let pin = path.pin(at_start);
        let rim = rim_at(pin, &self.layout);
        if !self.number_fits(rim) {
            return None;
        }
        let radius = match &self.projection.surface {
            Some(surface) => surface.at(pin.1)[0],
            None => radius,
        };
        if radius > self.viewport.width / 2.0 {
            return None;
        }
        let aside = self.clear_of_tube(radius);
        // A leg comes in on the side it travels from.
        let from_left = at_start != self.projection.mirrored;
        let way = if from_left { -1.0 } else { 1.0 };
        let middle = self.viewport.width / 2.0;
        let level = self.number_point(pin, self.layout.number_height(rim)).y;
        let edge = Point::new((middle + way * radius).into(), self.point(pin).y);
        Some(FarNumber {
            at: Point::new((middle + way * aside).into(), level),
            sign: FarSign::Behind(Some(edge)),
        })
    }

    /// From the middle of a tube of this radius to a number beside it, or over its edge where it has nearly
    /// all the width: there is no room further out.
    fn clear_of_tube(&self, radius: f32) -> f32 {
        let (ring, text) = (self.layout.ring(), self.layout.large_text);
        (radius + ring + 0.5 * text).min(self.viewport.width / 2.0 - ring - TO_THE_EDGE)
    }

    /// The place at the side of a round tube where the cord comes round its edge from a pin on the far
    /// side, or goes round it to one: beside the tube, or over its edge where the tube has all the width;
    /// `None` when the edge, or the place, is out of the picture. It is for a rim that is out of the picture:
    /// at the height of the pin the number would stand beside another pin, the last that is seen.
    fn beside_tube(&self, path: CordPath<'_>, at_start: bool) -> Option<FarNumber> {
        let (ring, viewport) = (self.layout.ring() + TO_THE_EDGE, self.viewport);
        let radius = self.projection.radius?;
        let at = self.round_the_edge(path, at_start);
        let radius = match &self.projection.surface {
            Some(surface) => surface.at(at.1)[0],
            None => radius,
        };
        let clear = self.clear_of_tube(radius);
        let at = self.point(at);
        let pin = path.pin(at_start);
        let at = self.clear_of_pins(at, pin);
        let (low, high) = (f64::from(ring), f64::from(viewport.height - ring));
        let is_seen = radius <= viewport.width / 2.0 && (low..=high).contains(&at.y);
        // A leg comes in on the side it travels from.
        let from_left = at_start != self.projection.mirrored;
        let aside = if from_left { -clear } else { clear };
        let x = f64::from(viewport.width / 2.0 + aside);
        let sign = if self.projection.turned(pin.0) > 1.0 {
            FarSign::Behind(None)
        } else {
            let way = match rim_at(pin, &self.layout) {
                Rim::Bottom => 1.0,
                Rim::Top => -1.0,
            };
            FarSign::Beyond(Vec2::new(0.0, way))
        };
        is_seen.then_some(FarNumber {
            at: Point::new(x, at.y),
            sign,
        })
    }

    /// A point beside the tube, so far from the height of a pin on its far side that a number there does
    /// not stand beside the pin of that rim which is seen at the edge.
    fn clear_of_pins(&self, at: Point, pin: SheetPoint) -> Point {
        if self.projection.turned(pin.0) <= 1.0 {
            return at;
        }
        let height = self.point(pin).y;
        let clear = f64::from(self.layout.large_text) * 1.1;
        let y = match rim_at(pin, &self.layout) {
            Rim::Bottom => at.y.min(height - clear),
            Rim::Top => at.y.max(height + clear),
        };
        Point::new(at.x, y)
    }

    /// The last point of the leg in hand before the edge of the tube, on the way to one of its pins; the
    /// pin itself where it is this side of the edge.
    fn round_the_edge(&self, path: CordPath<'_>, at_start: bool) -> SheetPoint {
        let pin = path.pin(at_start);
        if self.projection.turned(pin.0) <= 1.0 {
            return pin;
        }
        let goal = path.straight()[usize::from(!at_start)];
        let middle = self.focus.row_on_the_way() * self.layout.diagonal;
        // A leg is straight on the sheet, so halving finds the edge.
        let (mut seen, mut hidden) = (middle, goal);
        for _ in 0..20 {
            let between = f32::midpoint(seen, hidden);
            if self.projection.turned(path.at(between, path.offset).0) < 1.0 {
                seen = between;
            } else {
                hidden = between;
            }
        }
        path.at(seen, path.offset)
    }
}

/// The rim that a pin on the sheet stands on.
fn rim_at(pin: SheetPoint, layout: &SceneLayout) -> Rim {
    if pin.1 > layout.top() / 2.0 {
        Rim::Top
    } else {
        Rim::Bottom
    }
}
