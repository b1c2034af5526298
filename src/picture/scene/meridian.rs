//! The line from rim to rim of a knot that lies on something else than a straight tube: how far from
//! the axis, and how far on, it is at every height of the sheet.
//!
//! Cords that lie side by side all the way are as far apart everywhere when `r · cos α` is the same
//! all along a leg, `r` its distance from the axis and α its angle from the line. So the sheet, on
//! which legs are straight, is bent by `dσ/dy = cos β / cos α'` from rim to rim, with β the angle of a
//! leg on the sheet and α' its angle from the rim there; then cords keep their width. On a board the
//! legs are involutes of a circle. *Derived; on a straight tube nothing is bent.*

use std::f32::consts::FRAC_1_SQRT_2;

use crate::knot::Rim;

/// The least cosine of the angle between a leg and a rim: where the bands would not go round side by
/// side, they run straight on.
const FLATTEST: f32 = 0.34;
/// How far toward a pole of a ball anything is drawn, in radians.
const POLE: f32 = 1.45;
/// Steps of the way from the middle to a rim.
const STEPS: u8 = 40;
/// The rims of a ball that is tied on: so much farther from its axis than bights could lie.
const BALL_RIMS: f32 = 1.3;

/// The form of the line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bend {
    /// Straight, and nearer to the axis or farther from it by so much for each step along it.
    Taper(f32),
    /// A half circle.
    Ball,
    /// From an outer circle straight to one of this radius.
    Board(f32),
}

/// The line from rim to rim. Lengths are in radii of a tube on which the sheet would close.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meridian {
    /// Its form.
    pub bend: Bend,
    /// Distance from the axis at which legs would run along the line: the sine of their angle on the
    /// sheet.
    least: f32,
    /// The cosine of that angle.
    cos: f32,
    /// Height of the sheet between the lines of the rims.
    pub height: f32,
    /// How far along it the line of the bottom rim is, and that of the top rim: from the middle of the
    /// sheet, or of a board from its inner circle.
    ends: [f32; 2],
}

impl Meridian {
    /// For legs that go so far round, in radians, and stand at this tangent to the rims of the sheet.
    pub fn new(bend: Bend, angle: f32, tangent: f32) -> Self {
        let cos = 1.0 / tangent.hypot(1.0);
        let mut meridian = Self {
            bend,
            least: tangent * cos,
            cos,
            height: angle * tangent,
            ends: [0.0; 2],
        };
        meridian.ends = match bend {
            Bend::Board(_) => [meridian.walk(0.0, -meridian.height), 0.0],
            _ => [-0.5, 0.5].map(|half| meridian.walk(0.0, half * meridian.height)),
        };
        meridian
    }

    /// A board whose inner circle is so many times as wide as one on which bights would lie close.
    pub fn board(angle: f32, open: f32) -> Self {
        Self::new(Bend::Board(open * FRAC_1_SQRT_2), angle, 1.0)
    }

    /// A board with circles of these radii, as far as legs can keep side by side between them.
    pub fn between(angle: f32, outer: f32, inner: f32) -> Self {
        let ratio = |open: f32| {
            let board = Self::board(angle, open);
            let [far, near] = [Rim::Bottom, Rim::Top].map(|rim| board.rim(rim, 0.0)[0]);
            far / near
        };
        // The wider the inner circle, the less the outer one is wider.
        let (mut close, mut wide) = (TIGHTEST, 60.0);
        for _ in 0..24 {
            let open = f32::midpoint(close, wide);
            if ratio(open) > outer / inner {
                close = open;
            } else {
                wide = open;
            }
        }
        Self::board(angle, wide)
    }

    /// A ball with its rims well on this side of where bights could lie.
    pub fn ball(angle: f32) -> Self {
        // The way from the equator to where a leg has `BALL_RIMS`, in closed form.
        let way = |least: f32| {
            let rim = (BALL_RIMS * least).min(1.0);
            let (high, most) = ((1.0 - rim * rim).sqrt(), (1.0 - least * least).sqrt());
            let rest = (most * most - high * high).max(0.0).sqrt();
            (high / most).min(1.0).asin() - least * (least * high).atan2(rest)
        };
        let (mut low, mut high) = (0.0, 1.0 / BALL_RIMS);
        for _ in 0..24 {
            let least = f32::midpoint(low, high);
            if way(least) > angle * least / 2.0 {
                low = least;
            } else {
                high = least;
            }
        }
        let least = f32::midpoint(low, high);
        Self::new(Bend::Ball, angle, least / (1.0 - least * least).sqrt())
    }

    /// The line of this form with so much between the lines of its rims, along it.
    pub fn reaching(bend: Bend, angle: f32, along: f32) -> Self {
        let (mut low, mut high) = (0.02, 12.0_f32);
        for _ in 0..24 {
            let tangent = f32::midpoint(low, high);
            let [from, to] = Self::new(bend, angle, tangent).ends;
            if to - from < along {
                low = tangent;
            } else {
                high = tangent;
            }
        }
        Self::new(bend, angle, f32::midpoint(low, high))
    }

    /// Whether it is a board, looked at from above.
    pub const fn is_board(&self) -> bool {
        matches!(self.bend, Bend::Board(_))
    }

    /// How wide the inner circle of a board is, in that on which bights would lie close.
    pub fn opening(&self) -> f32 {
        self.end(Rim::Top)[0] / self.least
    }

    /// Cosine of the angle between a leg and a rim, so far up the sheet inside its line.
    pub fn rim_cos(&self, rim: Rim, inside: f32) -> f32 {
        let [around, along] = self.rim(rim, inside);
        1.0 / (along * self.tangent() / around).hypot(1.0)
    }

    /// The tangent of the angle of legs on the sheet.
    pub fn tangent(&self) -> f32 {
        self.least / self.cos
    }

    /// Distance from the axis so far along the line.
    pub fn radius(&self, along: f32) -> f32 {
        match self.bend {
            Bend::Taper(slope) => (1.0 + slope * along).max(0.05),
            Bend::Ball => along.clamp(-POLE, POLE).cos(),
            Bend::Board(inner) => (inner - along).max(0.0),
        }
    }

    /// How far on, seen from the side, it is so far along the line.
    pub fn lift(&self, along: f32) -> f32 {
        match self.bend {
            Bend::Taper(slope) => along * (1.0 - slope * slope).max(0.0).sqrt(),
            Bend::Ball => along.clamp(-POLE, POLE).sin(),
            Bend::Board(_) => 0.0,
        }
    }

    /// How far along the line one gets for a step up the sheet.
    fn rate(&self, along: f32) -> f32 {
        let sine = self.least / self.radius(along).max(1e-3);
        self.cos / (1.0 - sine * sine).max(FLATTEST * FLATTEST).sqrt()
    }

    /// Where one comes from `along` by going up the sheet by `rise` (Runge and Kutta's fourth order).
    fn walk(&self, mut along: f32, rise: f32) -> f32 {
        let step = rise / f32::from(STEPS);
        for _ in 0..STEPS {
            along = self.step(along, step);
        }
        along
    }

    fn step(&self, along: f32, step: f32) -> f32 {
        let first = self.rate(along);
        let second = self.rate(along + step / 2.0 * first);
        let third = self.rate(along + step / 2.0 * second);
        let fourth = self.rate(along + step * third);
        along + step / 6.0 * (first + 2.0 * (second + third) + fourth)
    }

    /// Distance from the axis, and how far one gets along for a step up the sheet, so far up the sheet
    /// inside the line of a rim.
    pub fn rim(&self, rim: Rim, inside: f32) -> [f32; 2] {
        let (end, inwards) = match rim {
            Rim::Bottom => (self.ends[0], 1.0),
            Rim::Top => (self.ends[1], -1.0),
        };
        let along = self.step(end, inwards * inside);
        [self.radius(along), self.rate(along)]
    }

    /// The line of a rim: distance from the axis, and how far on it is, seen from the side.
    pub fn end(&self, rim: Rim) -> [f32; 2] {
        let along = self.ends[usize::from(rim == Rim::Top)];
        [self.radius(along), self.lift(along)]
    }

    /// Distance from the axis and how far on, seen from the side, at so many evenly spaced heights of
    /// the sheet, from `below` under the bottom rim line to `above` over the top one.
    pub fn points(&self, below: f32, above: f32, count: u16) -> Vec<[f32; 2]> {
        let step = (self.height + below + above) / f32::from(count - 1);
        let rates = self.ends.map(|end| self.rate(end));
        let (mut along, mut reached) = (self.ends[0], 0.0);
        (0..count)
            .map(|nth| {
                let y = f32::from(nth) * step - below;
                let here = if y <= 0.0 {
                    self.ends[0] + y * rates[0]
                } else if y >= self.height {
                    self.ends[1] + (y - self.height) * rates[1]
                } else {
                    along = self.step(along, y - reached);
                    reached = y;
                    along
                };
                [self.radius(here), self.lift(here)]
            })
            .collect()
    }
}

/// The narrowest inner circle of a board, in those on which bights would lie close.
pub const TIGHTEST: f32 = 1.07;

#[cfg(test)]
mod tests {
    use super::*;

    /// How far round an involute of a circle is where it is so many radii from its middle.
    fn involute(radii: f32) -> f32 {
        (radii * radii - 1.0).sqrt() - (1.0 / radii).acos()
    }

    #[test]
    fn legs_of_a_board_are_involutes_between_its_circles() {
        for (angle, open) in [(2.2, 1.2), (2.7, 1.07), (1.3, 2.0), (6.0, 1.5)] {
            let board = Meridian::board(angle, open);
            let [outer, inner] =
                [Rim::Bottom, Rim::Top].map(|rim| board.end(rim)[0] / FRAC_1_SQRT_2);
            let round = involute(outer) - involute(inner);
            assert!((round - angle).abs() < 0.01, "{angle} {open}: {round}");
            assert!((inner - open).abs() < 1e-4);
        }
    }

    #[test]
    fn a_ball_holds_leads_and_bights_by_its_law() {
        // L + B = 2 π R / s: here as the way along between rims where the legs run to the pole, against
        // the closed form, for a ball whose rims lie where its bights close.
        for (leads, bights) in [(5.0_f32, 7.0), (7.0, 8.0), (9.0, 10.0)] {
            let least: f32 = bights / (leads + bights);
            let tangent = least / (1.0 - least * least).sqrt();
            let angle = std::f32::consts::PI * leads / bights;
            let ball = Meridian::new(Bend::Ball, angle, tangent);
            let [rim, _] = ball.end(Rim::Top);
            assert!((rim / least - 1.0).abs() < 0.13, "{leads} {bights}: {rim}");
        }
    }

    #[test]
    fn a_taper_of_one_girth_is_a_tube() {
        let tube = Meridian::new(Bend::Taper(0.0), 2.0, 0.9);
        let [radius, lift] = tube.end(Rim::Top);
        assert!(
            (radius - 1.0).abs() < 1e-5 && (lift - 0.9).abs() < 1e-4,
            "{lift}"
        );
    }
}
