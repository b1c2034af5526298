//! The projection of the sheet onto the picture: which part of the tube is looked at, and how the
//! surface is bent away from the eye.

use std::f32::consts::FRAC_PI_2;

use kurbo::{Point, Vec2};

use super::focus::Focus;
use super::layout::{REPEAT, SceneLayout};
use super::sheet_point::real;
use super::view::{View, Viewport, point};

/// A range of the sheet, in its pixels: across or upwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The coordinate at its lower end.
    pub from: f32,
    /// The coordinate at its upper end.
    pub to: f32,
}

impl Span {
    /// Whether a coordinate lies in it, its ends among them.
    pub fn contains(self, x: f32) -> bool {
        (self.from..=self.to).contains(&x)
    }
}

/// How points of the sheet come to the picture.
#[derive(Clone, Debug)]
pub struct Projection {
    /// Sheet range across that is drawn.
    pub across: Span,
    /// Sheet range up and down that is drawn.
    pub upright: Span,
    /// The range of one turn of the tube, where the picture repeats itself beyond it.
    pub seams: Option<Span>,
    /// Radius of the tube, when it is shown round.
    pub radius: Option<f32>,
    /// How far right on the sheet the middle of the picture lies.
    pub middle: f32,
    /// How far down in the picture the bottom rim line lies.
    pub base: f32,
    /// The middle of the picture, in its own pixels.
    centre: f32,
    /// Whether left and right are exchanged.
    pub mirrored: bool,
}

impl Projection {
    /// The projection in which the part in focus can be seen best, with left and right exchanged
    /// when `mirrored`.
    pub fn new(
        view: View,
        layout: &SceneLayout,
        focus: Focus,
        viewport: Viewport,
        mirrored: bool,
    ) -> Self {
        let (base, upright) = Self::heights(layout, focus, viewport);
        let round = layout.round();
        let mut projection = Self {
            across: Span { from: 0.0, to: 0.0 },
            upright,
            seams: None,
            radius: None,
            middle: focus.middle.0 * layout.half_pitch,
            centre: viewport.width / 2.0,
            base,
            mirrored,
        };
        let half = match view {
            View::RoundTheTube => {
                let radius = round / (2.0 * std::f32::consts::PI);
                projection.radius = Some(radius);
                radius * (viewport.width / 2.0 / radius).min(1.0).asin()
            }
            View::RolledOut => {
                let with_repeats = round / 2.0 + REPEAT * layout.half_pitch;
                if with_repeats <= viewport.width / 2.0 + 1.0 {
                    let from = left_edge(layout, focus) * layout.half_pitch;
                    projection.middle = from + round / 2.0;
                    projection.seams = Some(Span {
                        from,
                        to: from + round,
                    });
                    with_repeats
                } else {
                    viewport.width / 2.0
                }
            }
        };
        projection.across = Span {
            from: projection.middle - half,
            to: projection.middle + half,
        };
        projection
    }

    /// How far down the bottom rim line lies, and what of the sheet is seen: all of it in
    /// the middle of the picture, or as much as fits round the part in hand.
    fn heights(layout: &SceneLayout, focus: Focus, viewport: Viewport) -> (f32, Span) {
        let (low, high) = (-layout.below(), layout.top() + layout.above());
        let spare = viewport.height - (high - low);
        let base = if spare >= 0.0 {
            viewport.height + low - spare / 2.0
        } else {
            let wanted = viewport.height / 2.0 + focus.middle.1 * layout.row;
            wanted.clamp(viewport.height + low, high)
        };
        let seen = Span {
            from: base - viewport.height,
            to: base,
        };
        (base, seen)
    }

    /// Where a point of the sheet is in the picture.
    pub fn place(&self, x: f32, y: f32) -> Point {
        let run = x - self.middle;
        let run = match self.radius {
            Some(radius) => radius * (run / radius).sin(),
            None => run,
        };
        let run = if self.mirrored { -run } else { run };
        point(self.centre + run, self.base - y)
    }

    /// The direction in the picture of a small step on the sheet from `x`: not of unit length
    /// where the tube bends away.
    pub fn direction(&self, x: f32, run: f32, rise: f32) -> Vec2 {
        let run = match self.radius {
            Some(radius) => run * ((x - self.middle) / radius).cos(),
            None => run,
        };
        point(if self.mirrored { -run } else { run }, -rise).to_vec2()
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
fn left_edge(layout: &SceneLayout, focus: Focus) -> f32 {
    let (turn, half) = (layout.turn(), layout.pin_pitch() * (layout.bights / 2));
    if focus.start + layout.height < turn {
        -0.5
    } else if layout.height <= half {
        real(half) - 0.5
    } else {
        // Half way between two pins, never through one.
        let spare = (turn - layout.height).max(0) / 2;
        real(focus.start - spare) - 0.5
    }
}
