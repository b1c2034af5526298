//! The projection of the sheet onto the picture: which part of the tube is looked at, and how the
//! surface is bent away from the eye.

use std::f32::consts::FRAC_PI_2;

use kurbo::{Point, Vec2};

use super::focus::Focus;
use super::layout::{REPEAT, SceneLayout};
use super::sheet_point::{SheetPoint, real};
use super::surface::Surface;
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
    /// A taper or a ball that is shown round, or a board from above.
    pub surface: Option<Surface>,
    /// How far right on the sheet the middle of the picture lies.
    pub middle: f32,
    /// How far down in the picture the bottom rim line lies; of a board, its middle.
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
        if let Some(surface) = Surface::new(layout).filter(Surface::is_board) {
            return Self::of_board(surface, layout, focus, viewport, mirrored);
        }
        let (base, upright) = Self::heights(layout, focus, viewport);
        let round = layout.round();
        let mut projection = Self {
            across: Span { from: 0.0, to: 0.0 },
            upright,
            seams: None,
            radius: None,
            surface: Surface::new(layout),
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

    /// Moves a straight tube to the left as far as it must, to end at `right` where it has room there.
    pub fn leave_free(&mut self, right: f32) {
        let straight = self.radius.filter(|_| self.surface.is_none());
        if let Some(radius) = straight.filter(|radius| 2.0 * radius <= right) {
            self.centre = self.centre.min(right - radius);
        }
    }

    /// A board is turned as the tyer turns it: what is in hand is on the near side. One that is too large for
    /// the picture is cut off beyond that.
    fn of_board(
        surface: Surface,
        layout: &SceneLayout,
        focus: Focus,
        viewport: Viewport,
        mirrored: bool,
    ) -> Self {
        let down = if layout.zoomed {
            let [radius, _] = surface.at(focus.middle.1 * layout.row);
            radius.min((layout.board() - viewport.height / 2.0).max(0.0))
        } else {
            0.0
        };
        let beyond = layout.round() * EVERYWHERE;
        Self {
            across: Span {
                from: -beyond,
                to: beyond,
            },
            upright: Span {
                from: -layout.below() - layout.top(),
                to: 2.0 * layout.top() + layout.above(),
            },
            seams: None,
            radius: None,
            surface: Some(surface),
            middle: focus.middle.0 * layout.half_pitch,
            centre: viewport.width / 2.0,
            base: viewport.height / 2.0 - down,
            mirrored,
        }
    }

    /// The board, when it is one.
    pub fn board(&self) -> Option<&Surface> {
        self.surface.as_ref().filter(|surface| surface.is_board())
    }

    /// Whether it is bent from rim to rim and looked at from the side: a taper or a ball.
    pub fn is_bent(&self) -> bool {
        self.surface.is_some() && self.board().is_none()
    }

    /// How far down the bottom rim line lies, and what of the sheet is seen: all of it in
    /// the middle of the picture, or as much as fits round the part in hand.
    fn heights(layout: &SceneLayout, focus: Focus, viewport: Viewport) -> (f32, Span) {
        let [below, tall, above] = layout.upright();
        let (low, high) = (-below, tall + above);
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
        if layout.meridian.is_some() && spare >= 0.0 {
            // All of the sheet is seen, however far its rows are bent together.
            let seen = Span {
                from: seen.from - layout.top(),
                to: seen.to + layout.top(),
            };
            return (base, seen);
        }
        (base, seen)
    }

    /// Where a point of the sheet is in the picture.
    pub fn place(&self, x: f32, y: f32) -> Point {
        if let Some(surface) = &self.surface {
            return self.place_on(surface, x, y);
        }
        let run = x - self.middle;
        let run = match self.radius {
            Some(radius) => radius * (run / radius).sin(),
            None => run,
        };
        point(self.centre + self.mirror(run), self.base - y)
    }

    fn place_on(&self, surface: &Surface, x: f32, y: f32) -> Point {
        let [radius, on] = surface.at(y);
        let (sin, cos) = ((x - self.middle) / surface.unit).sin_cos();
        let across = self.centre + self.mirror(radius * sin);
        if surface.is_board() {
            point(across, self.base + radius * cos)
        } else {
            point(across, self.base - on)
        }
    }

    /// A length to the right on the sheet, as one in the picture.
    fn mirror(&self, run: f32) -> f32 {
        if self.mirrored { -run } else { run }
    }

    /// The direction in the picture of a small step on the sheet from a point: not of unit length
    /// where what it lies on bends away.
    pub fn direction(&self, (x, y): SheetPoint, run: f32, rise: f32) -> Vec2 {
        if let Some(surface) = &self.surface {
            let ([radius, _], [wider, on]) = (surface.at(y), surface.slope(y));
            let (sin, cos) = ((x - self.middle) / surface.unit).sin_cos();
            let (round, out) = (radius * run / surface.unit, wider * rise);
            let across = self.mirror(round * cos + out * sin);
            let down = if surface.is_board() {
                out * cos - round * sin
            } else {
                -on * rise
            };
            return point(across, down).to_vec2();
        }
        let run = match self.radius {
            Some(radius) => run * ((x - self.middle) / radius).cos(),
            None => run,
        };
        point(self.mirror(run), -rise).to_vec2()
    }

    /// How far `x` is turned away from the eye: 0 in front, 1 at the edge of the tube. Always
    /// 0 when rolled out.
    pub fn turned(&self, x: f32) -> f32 {
        self.radius
            .map_or(0.0, |radius| ((x - self.middle) / radius).abs() / FRAC_PI_2)
    }

    /// Whether what stands at `x` is on this side of the tube. At its very edge it is, half of it: in every
    /// picture, however the edge is rounded there.
    pub fn is_in_sight(&self, x: f32) -> bool {
        let hair = self.radius.map_or(0.0, |radius| radius * AT_THE_VERY_EDGE);
        let Span { from, to } = self.across;
        (from - hair..=to + hair).contains(&x) && self.turned(x) <= 1.0 + AT_THE_VERY_EDGE
    }

    /// The longest step along the sheet that may be drawn as a straight line.
    pub fn step(&self) -> f32 {
        if let Some(board) = self.board() {
            return (board.unit * 0.05).max(3.0);
        }
        let bent = if self.surface.is_some() { 0.06 } else { 0.1 };
        self.radius
            .map_or(f32::MAX, |radius| (radius * bent).max(4.0))
    }
}

/// So close to the edge of a tube, in quarters of it, what stands on it is seen.
const AT_THE_VERY_EDGE: f32 = 1e-3;

/// Turns of a board beyond which nothing of it is looked for: every leg is seen whole, and once.
const EVERYWHERE: f32 = 1000.0;

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
