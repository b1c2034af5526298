//! The crossings of two cords, for whoever reads a picture back.

use kurbo::{Point, Vec2};

use super::knot::KnotScene;
use crate::knot::{Heading, PassLeg};

/// A crossing of two cords that can be seen in a [`Scene`](super::Scene).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossingPoint {
    /// Where their middles meet, in pixels of the picture.
    pub at: Point,
    /// The row it lies in, 1 … leads − 1 from the bottom.
    pub row: u16,
    /// The cord that rises there.
    pub rising: PassLeg,
    /// The cord that falls there.
    pub falling: PassLeg,
    /// The way the rising cord travels through the point, per pixel of its length.
    pub rising_way: Vec2,
    /// The way the falling cord travels through the point, per pixel of its length.
    pub falling_way: Vec2,
}

impl KnotScene {
    /// Every crossing of two cords that can be seen, once each. The cord in hand counts as
    /// laid.
    pub fn crossing_points(&self) -> Vec<CrossingPoint> {
        let (layout, projection) = (&self.layout, &self.projection);
        let (inner, picture) = (self.inner(), self.viewport.rect());
        let mut points = Vec::new();
        for rising in self.visible_legs(Heading::Rising, inner) {
            let knot = self.laying.knot();
            for (row, falling) in knot.crossings_of(rising.leg) {
                let nth = i32::from(row) - rising.base;
                let cords = self.laid.cords(falling);
                if cords == 0 || !(rising.seen.0..=rising.seen.1).contains(&nth) {
                    continue;
                }
                for (one, other) in
                    (1..=rising.cords).flat_map(|one| (1..=cords).map(move |other| (one, other)))
                {
                    let path = self.cord_path(&rising, one);
                    let along = path.meets(nth, path.offset, layout.offset(other));
                    let on_sheet = path.at(along, path.offset);
                    let at = self.point(on_sheet);
                    let shown = inner.contains(on_sheet.0)
                        && projection.turned(on_sheet.0) < 0.85
                        && picture.contains(at);
                    if shown {
                        points.push(CrossingPoint {
                            at,
                            row,
                            rising: self.laying.pass_leg_of(one, rising.leg),
                            falling: self.laying.pass_leg_of(other, falling),
                            rising_way: projection.direction(on_sheet, layout.cos, layout.sin),
                            falling_way: projection.direction(on_sheet, layout.cos, -layout.sin),
                        });
                    }
                }
            }
        }
        points
    }
}
