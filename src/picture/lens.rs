//! From the sheet to the frame: which part of the tube is looked at, and how it is bent.

use std::f32::consts::FRAC_PI_2;

use super::gauge::{Gauge, REPEAT, real};
use super::shape::Point;
use super::{Frame, View};

/// A range of sheet pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Span {
    pub from: f32,
    pub to: f32,
}

impl Span {
    pub fn contains(self, x: f32) -> bool {
        (self.from..=self.to).contains(&x)
    }
}

/// Where on the tube the eye rests, in half pitches and rows.
#[derive(Clone, Copy, Debug)]
pub(super) struct Focus {
    /// Half pitch at which the leg in hand starts.
    pub start: i32,
    /// Half pitch and row of the middle of the part in hand.
    pub middle: (f32, f32),
}

/// The way from the sheet to the frame.
#[derive(Clone, Debug)]
pub(super) struct Lens {
    /// Sheet range across that is drawn.
    pub across: Span,
    /// Sheet range up and down that is drawn.
    pub upright: Span,
    /// The range of one turn of the tube, where the picture repeats itself beyond it.
    pub seams: Option<Span>,
    /// Radius of the tube, when it is shown round.
    pub radius: Option<f32>,
    /// The sheet coordinates in the middle of the frame and at its top.
    pub middle: f32,
    pub base: f32,
    centre: f32,
    /// Whether left and right are exchanged.
    pub mirrored: bool,
}

impl Lens {
    pub fn new(view: View, gauge: &Gauge, focus: Focus, frame: Frame, mirrored: bool) -> Self {
        let (base, upright) = Self::heights(gauge, focus, frame);
        let round = gauge.round();
        let mut lens = Self {
            across: Span { from: 0.0, to: 0.0 },
            upright,
            seams: None,
            radius: None,
            middle: focus.middle.0 * gauge.half_pitch,
            centre: frame.width / 2.0,
            base,
            mirrored,
        };
        let half = match view {
            View::RoundTheTube => {
                let radius = round / (2.0 * std::f32::consts::PI);
                lens.radius = Some(radius);
                radius * (frame.width / 2.0 / radius).min(1.0).asin()
            }
            View::RolledOut => {
                let with_repeats = round / 2.0 + REPEAT * gauge.half_pitch;
                if with_repeats <= frame.width / 2.0 + 1.0 {
                    let from = left_edge(gauge, focus) * gauge.half_pitch;
                    lens.middle = from + round / 2.0;
                    lens.seams = Some(Span {
                        from,
                        to: from + round,
                    });
                    with_repeats
                } else {
                    frame.width / 2.0
                }
            }
        };
        lens.across = Span {
            from: lens.middle - half,
            to: lens.middle + half,
        };
        lens
    }

    /// The frame height of the bottom rim line, and what of the sheet is seen: all of it in
    /// the middle of the frame, or as much as fits round the part in hand.
    fn heights(gauge: &Gauge, focus: Focus, frame: Frame) -> (f32, Span) {
        let (low, high) = (-gauge.below(), gauge.top() + gauge.above());
        let spare = frame.height - (high - low);
        let base = if spare >= 0.0 {
            frame.height + low - spare / 2.0
        } else {
            let wanted = frame.height / 2.0 + focus.middle.1 * gauge.row;
            wanted.clamp(frame.height + low, high)
        };
        let seen = Span {
            from: base - frame.height,
            to: base,
        };
        (base, seen)
    }

    /// Where a point of the sheet is in the frame.
    pub fn place(&self, x: f32, y: f32) -> Point {
        let run = x - self.middle;
        let run = match self.radius {
            Some(radius) => radius * (run / radius).sin(),
            None => run,
        };
        let run = if self.mirrored { -run } else { run };
        Point::new(self.centre + run, self.base - y)
    }

    /// The direction in the frame of a small step on the sheet from `x`: not of unit length
    /// where the tube bends away.
    pub fn direction(&self, x: f32, run: f32, rise: f32) -> Point {
        let run = match self.radius {
            Some(radius) => run * ((x - self.middle) / radius).cos(),
            None => run,
        };
        Point::new(if self.mirrored { -run } else { run }, -rise)
    }

    /// How far `x` is turned away from the eye: 0 in front, 1 at the edge of the tube. Always
    /// 0 when rolled out.
    pub fn turned(&self, x: f32) -> f32 {
        self.radius
            .map_or(0.0, |radius| ((x - self.middle) / radius).abs() / FRAC_PI_2)
    }

    /// The longest step along the sheet that may be drawn as a straight line.
    pub fn step(&self) -> f32 {
        self.radius
            .map_or(f32::MAX, |radius| (radius * 0.1).max(4.0))
    }
}

/// The half pitch at which the surface of the tube is cut open.
///
/// Just before pin 1, as a rule, or else just before the pin half way round: one of the two
/// shows a leg that goes no further than half round the tube in one piece, and the picture stays
/// put from leg to leg. A longer leg is brought to the middle.
fn left_edge(gauge: &Gauge, focus: Focus) -> f32 {
    let (turn, half) = (2 * gauge.bights, 2 * (gauge.bights / 2));
    if focus.start + gauge.leads < turn {
        -0.5
    } else if gauge.leads <= half {
        real(half) - 0.5
    } else {
        // Half way between two pins, never through one.
        let spare = (turn - gauge.leads).max(0) / 2;
        real(focus.start - spare) - 0.5
    }
}
