//! Where on the tube the eye rests.

use super::laid_cords::LaidCords;
use super::layout::SceneLayout;
use super::sheet_point::real;
use crate::knot::{Pin, Rim};

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
    pub fn new(layout: &SceneLayout, laid: &LaidCords) -> Self {
        let leads = real(layout.leads);
        if let Some((_, leg)) = laid.faired {
            return Self::on_the_way(layout, leg.from, leads / 2.0);
        }
        let Some(active) = &laid.active else {
            let (start, row) = laid.stands_at.map_or((0, leads / 2.0), |pin| {
                let start = 2 * (i32::from(pin.number) - 1);
                match pin.rim {
                    Rim::Bottom => (start, 0.0),
                    Rim::Top => (start + layout.stagger, leads),
                }
            });
            return Self {
                start: 0,
                middle: (real(start), row),
            };
        };
        // A leg that is in front whole is looked at whole: the tube stands still while it goes in.
        let is_in_front = leads <= IN_FRONT * real(layout.bights);
        let nth = if is_in_front && !layout.zoomed {
            leads / 2.0
        } else {
            let rows = [active.rows.start, active.rows.end];
            let [start, end] = rows.map(|row| row.clamp(0.0, leads));
            f32::midpoint(start, end)
        };
        Self::on_the_way(layout, active.leg.from, nth)
    }

    /// On the `nth` row on the way of the leg from a pin.
    fn on_the_way(layout: &SceneLayout, from: Pin, nth: f32) -> Self {
        let index = i32::from(from.number) - 1;
        let (start, row) = match from.rim {
            Rim::Bottom => (2 * index, nth),
            Rim::Top => (2 * index + layout.stagger, real(layout.leads) - nth),
        };
        Self {
            start,
            middle: (real(start) + nth, row),
        }
    }

    /// The row on the way of the leg in hand, counted from the pin it leaves.
    pub fn row_on_the_way(self) -> f32 {
        self.middle.0 - real(self.start)
    }
}
