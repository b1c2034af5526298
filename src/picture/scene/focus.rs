//! Where on the tube the eye rests.

use super::laid_cords::LaidCords;
use super::layout::SceneLayout;
use super::sheet_point::real;
use crate::knot::{Knot, Leg, Pin, Rim};

/// The share of the half of a tube in front that a leg may go round, to be seen well at both ends.
const IN_FRONT: f32 = 0.85;

/// Where on the tube the eye rests, in half pitches and rows.
#[derive(Clone, Copy, Debug)]
pub struct Focus {
    /// Half pitch at which the leg in hand starts.
    pub start: i32,
    /// Half pitch and row of the middle of the part in hand.
    pub middle: (f32, f32),
}

impl Focus {
    /// On the part in hand, or where the cord stands when there is none.
    pub fn new(layout: &SceneLayout, laid: &LaidCords, knot: &Knot) -> Self {
        let rows = |leg: Leg| {
            let [low, high] = knot.nest_from(leg.from).heights.map(f32::from);
            high - low
        };
        if let Some((_, leg)) = laid.lit {
            return Self::on_the_way(knot, leg.from, rows(leg) / 2.0);
        }
        let Some(active) = &laid.active else {
            let (start, row) = laid
                .stands_at
                .map_or((0.0, real(layout.height) / 2.0), |pin| {
                    let (row, start) = knot.stands_at(pin);
                    (f32::from(start), f32::from(row))
                });
            return Self {
                start: 0,
                middle: (start, row),
            };
        };
        let rows = rows(active.leg);
        // A leg that is in front whole is looked at whole: the tube stands still while it goes in.
        let is_in_front = rows <= IN_FRONT * real(layout.turn()) / 2.0;
        let nth = if is_in_front && !layout.zoomed {
            rows / 2.0
        } else {
            let told = [active.rows.start, active.rows.end];
            let [start, end] = told.map(|row| row.clamp(0.0, rows));
            f32::midpoint(start, end)
        };
        Self::on_the_way(knot, active.leg.from, nth)
    }

    /// On the `nth` row on the way of the leg from a pin.
    fn on_the_way(knot: &Knot, from: Pin, nth: f32) -> Self {
        let (base, start) = knot.stands_at(from);
        let row = match from.rim {
            Rim::Bottom => f32::from(base) + nth,
            Rim::Top => f32::from(base) - nth,
        };
        Self {
            start: start.into(),
            middle: (f32::from(start) + nth, row),
        }
    }

    /// The row on the way of the leg in hand, counted from the pin it leaves.
    pub fn row_on_the_way(self) -> f32 {
        self.middle.0 - real(self.start)
    }
}
