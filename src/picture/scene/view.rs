//! How the tube is looked at, and in how many pixels.

use kurbo::{Point, Rect};

/// How the tube is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum View {
    /// Cut open and laid flat, and a little of it shown again beyond both edges.
    RolledOut,
    /// As it stands before the tyer, turned so that the leg in hand is in front.
    #[default]
    RoundTheTube,
}

/// The size of a picture in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Viewport {
    /// Pixels from the left edge to the right one.
    pub width: f32,
    /// Pixels from the top edge to the bottom one.
    pub height: f32,
}

impl Viewport {
    /// A picture of so many pixels, which need not be whole ones.
    pub const fn new(width: f32, height: f32) -> Self {
        Self { width, height }
    }

    /// All of the picture.
    pub(in crate::picture) fn rect(self) -> Rect {
        Rect::new(0.0, 0.0, self.width.into(), self.height.into())
    }

    /// The viewport brought within what can be worked with: 24 to 16 384 pixels each way.
    pub(super) fn usable(self) -> Self {
        let usable = |length: f32| {
            // What is laid out for more than there is would be cut at its edges.
            if length.is_finite() {
                length.clamp(SMALLEST, 16384.0)
            } else {
                SMALLEST
            }
        };
        Self {
            width: usable(self.width),
            height: usable(self.height),
        }
    }
}

/// The smallest picture: of an icon.
const SMALLEST: f32 = 24.0;

/// The point of the picture so many pixels from its left and its top edge.
pub fn point(x: f32, y: f32) -> Point {
    Point::new(x.into(), y.into())
}

/// How far right and how far down a point lies, in the precision of [`single`].
pub const fn coordinates(point: Point) -> (f32, f32) {
    (single(point.x), single(point.y))
}

/// A length in the precision that pixels are worked out in.
#[expect(
    clippy::cast_possible_truncation,
    reason = "no picture is larger than 16 384 pixels, no paper than a metre"
)]
pub const fn single(length: f64) -> f32 {
    length as f32
}
