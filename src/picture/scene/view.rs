//! How the tube is looked at, and in how many pixels.

/// How the tube is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum View {
    /// Cut open and laid flat, and a little of it shown again beyond both edges.
    #[default]
    RolledOut,
    /// As it stands before the tyer, turned so that the leg in hand is in front.
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

    /// The same, brought within what can be worked with: 64 to 16 384 pixels each way.
    pub(super) fn usable(self) -> Self {
        let usable = |length: f32| {
            if length.is_finite() {
                length.clamp(64.0, 16384.0)
            } else {
                64.0
            }
        };
        Self {
            width: usable(self.width),
            height: usable(self.height),
        }
    }
}

/// A point of the picture, in pixels: `x` grows to the right, `y` downwards.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// Pixels from the left edge.
    pub x: f32,
    /// Pixels from the top edge.
    pub y: f32,
}

impl Point {
    /// The point with these coordinates.
    pub const fn new(x: f32, y: f32) -> Self {
        Self { x, y }
    }
}
