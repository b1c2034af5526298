//! Marks as they lie on the sheet.

use super::knot::KnotScene;
use super::mark::Mark;
use super::sheet_point::{SheetPoint, real};
use crate::knot::{Heading, Pin, Rim};

/// From the middle of the line of a ring to the edge of the picture, at the least: half of the widest line
/// that a ring is drawn with, and a little.
const RING_EDGE: f32 = 9.0;

/// A mark as it lies on the sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MarkShape {
    /// A straight line.
    Line(SheetPoint, SheetPoint),
    /// A ring of this radius.
    Ring(SheetPoint, f32),
    /// A number beside what is counted: a dot there, and a line from it out to the number.
    Number(SheetPoint, u16),
}

impl KnotScene {
    /// The shapes of a mark, as far as they can be seen.
    pub fn mark_shapes(&self, mark: Mark) -> Vec<MarkShape> {
        match mark {
            Mark::Leads => self.leads(),
            Mark::Bight(pin) => self.ring_round(pin, 0.0),
            Mark::StandingEnd(pin) => {
                let down = self.layout.pin_height(Rim::Bottom) + self.layout.overhang(Rim::Bottom);
                self.ring_round(pin, -down)
            }
            Mark::WorkingEnd => self.working_end().into_iter().collect(),
            Mark::Rims => {
                let [from, to] = if self.projection.board().is_some() {
                    [0.0, self.layout.round()]
                } else {
                    [self.inner().from, self.inner().to]
                };
                let [low, high] = self.edges_of_rims();
                [low, high]
                    .map(|y| MarkShape::Line((from, y), (to, y)))
                    .to_vec()
            }
            Mark::Crossings(row) => self.crossing_rings(None, row.map(i32::from)),
            Mark::Crossing(from, row) => self.crossing_rings(Some(from), Some(row.into())),
            Mark::Pins => [Rim::Bottom, Rim::Top]
                .into_iter()
                .flat_map(|rim| self.visible_pins(rim))
                .filter(|visible| visible.within && visible.turned < 0.8)
                .map(|visible| MarkShape::Ring(visible.at, 2.2 * self.layout.pin))
                .collect(),
            Mark::Stagger(pin) => self
                .visible(pin)
                .map(|at| MarkShape::Line(at, (at.0, -self.layout.overhang(Rim::Bottom))))
                .into_iter()
                .collect(),
        }
    }

    /// Heights of the outer edges of the bights, at the bottom and at the top.
    fn edges_of_rims(&self) -> [f32; 2] {
        let layout = &self.layout;
        [
            -layout.overhang(Rim::Bottom),
            layout.top() + layout.overhang(Rim::Top),
        ]
    }

    /// Where a pin stands, when it is in front.
    fn visible(&self, pin: Pin) -> Option<SheetPoint> {
        let mut pins = self.visible_pins(pin.rim);
        let found = pins.find(|visible| visible.pin == pin && visible.within);
        found.map(|visible| visible.at)
    }

    fn ring_round(&self, pin: Pin, up: f32) -> Vec<MarkShape> {
        // Where a knot of few bights has all the width, a ring round one of them is still whole.
        let room = self.viewport.width.min(self.viewport.height) / 2.0 - RING_EDGE;
        let radius = (0.85 * self.layout.half_pitch).min(room);
        let ring = |at: SheetPoint| MarkShape::Ring((at.0, at.1 + up), radius);
        self.visible(pin).map(ring).into_iter().collect()
    }

    /// A line half way between two half pitches meets every lead once, each a row above the last.
    fn leads(&self) -> Vec<MarkShape> {
        let layout = &self.layout;
        let x = (self.projection.middle / layout.half_pitch).floor() + 0.5;
        let x = x * layout.half_pitch;
        let ends = self.edges_of_rims();
        let line = MarkShape::Line((x, ends[0]), (x, ends[1]));
        let numbers = (1..)
            .zip(0..layout.height)
            .map(|(number, row)| MarkShape::Number((x, (real(row) + 0.5) * layout.row), number));
        std::iter::once(line).chain(numbers).collect()
    }

    /// Rings round the crossings, of the leg from this pin or of all, in this row or in all.
    fn crossing_rings(&self, from: Option<Pin>, row: Option<i32>) -> Vec<MarkShape> {
        let layout = &self.layout;
        let inner = self.inner();
        let mut rings = Vec::new();
        let rising = self.visible_legs(Heading::Rising, inner);
        let rising = rising.filter(|rising| from.is_none_or(|from| rising.leg.from == from));
        for rising in rising {
            for (at_row, _) in self.laying.knot().crossings_of(rising.leg) {
                let at_row = i32::from(at_row);
                let nth = at_row - rising.base;
                let at = (
                    real(rising.start + nth) * layout.half_pitch,
                    real(at_row) * layout.row,
                );
                let is_seen = (rising.seen.0..=rising.seen.1).contains(&nth);
                let is_meant = is_seen && row.is_none_or(|row| row == at_row);
                if is_meant && inner.contains(at.0) && self.projection.turned(at.0) < 0.8 {
                    rings.push(MarkShape::Ring(at, 0.42 * layout.half_pitch));
                }
            }
        }
        rings
    }

    fn working_end(&self) -> Option<MarkShape> {
        let active = self.laid.active.as_ref()?;
        let visible = self.visible_active(active).next()?;
        let [tip, left, right] = {
            let length = self.layout.head_length();
            self.head(&visible, active, length / 2.0, length, 0.0)
        };
        let middle = (
            (tip.0 + left.0 + right.0) / 3.0,
            (tip.1 + left.1 + right.1) / 3.0,
        );
        Some(MarkShape::Ring(middle, 0.7 * self.layout.half_pitch))
    }
}
