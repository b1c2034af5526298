//! Where heights of the sheet come to in a picture of a taper, a ball or a board.

use super::layout::SceneLayout;
use super::meridian::{Bend, Meridian};
use super::rings::count;
use crate::knot::Rim;

/// Heights of the sheet of which the place is kept; between them it is straight.
const KEPT: u16 = 400;

/// Distances from the axis, and how far on these are in a picture from the side, for every height of
/// the sheet. Lengths in pixels.
#[derive(Clone, Debug)]
pub struct Surface {
    /// The line from rim to rim.
    pub meridian: Meridian,
    /// The radius on which the sheet closes.
    pub unit: f32,
    /// The lowest height that is kept.
    low: f32,
    step: f32,
    points: Vec<[f32; 2]>,
}

impl Surface {
    /// For the measures of a picture that have a line from rim to rim; none of a straight tube.
    pub fn new(layout: &SceneLayout) -> Option<Self> {
        let meridian = layout.meridian?;
        let unit = layout.round() / std::f32::consts::TAU;
        let [below, above] = [Rim::Bottom, Rim::Top].map(|rim| layout.overhang(rim));
        let bottom = meridian.end(Rim::Bottom)[1];
        let points = meridian.points(below / unit, above / unit, KEPT);
        Some(Self {
            meridian,
            unit,
            low: -below,
            step: (layout.top() + below + above) / f32::from(KEPT - 1),
            points: points
                .into_iter()
                .map(|[radius, lift]| [radius * unit, (lift - bottom) * unit])
                .collect(),
        })
    }

    /// Whether it is a board, looked at from above.
    pub const fn is_board(&self) -> bool {
        matches!(self.meridian.bend, Bend::Board(_))
    }

    /// Whether it is a ball.
    pub const fn is_ball(&self) -> bool {
        matches!(self.meridian.bend, Bend::Ball)
    }

    /// How far on the middle of a ball is, from the bottom rim line.
    pub fn equator(&self) -> f32 {
        -self.meridian.end(Rim::Bottom)[1] * self.unit
    }

    /// Distance from the axis at a height of the sheet, and how far on from the bottom rim line that is.
    /// Beyond the bights one goes straight on: up and down beside a ball and a taper, along a board.
    pub fn at(&self, y: f32) -> [f32; 2] {
        let (cell, share) = self.cell(y);
        let [one, other] = [self.points[cell], self.points[cell + 1]];
        let beyond = if share < 0.0 {
            share * self.step
        } else {
            (share - 1.0).max(0.0) * self.step
        };
        let share = share.clamp(0.0, 1.0);
        let [radius, on] = [0, 1].map(|of| one[of] + (other[of] - one[of]) * share);
        if self.is_board() {
            [(radius - beyond).max(0.0), on]
        } else {
            [radius, on + beyond]
        }
    }

    /// How fast both of [`Self::at`] change for a step up the sheet.
    pub fn slope(&self, y: f32) -> [f32; 2] {
        let (cell, share) = self.cell(y);
        if (0.0..=1.0).contains(&share) {
            let [one, other] = [self.points[cell], self.points[cell + 1]];
            [0, 1].map(|of| (other[of] - one[of]) / self.step)
        } else if self.is_board() {
            [-1.0, 0.0]
        } else {
            [0.0, 1.0]
        }
    }

    /// The height kept below this one, or the nearest there is, and how much of the step to the next it
    /// is above it.
    fn cell(&self, y: f32) -> (usize, f32) {
        let steps = (y - self.low) / self.step;
        let last = self.points.len() - 2;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate, and there are a few hundred"
        )]
        let cell = (steps.max(0.0) as usize).min(last);
        let before = self.low + self.step * count(cell);
        (cell, (y - before) / self.step)
    }
}
