//! The picture of the knot.
//!
//! A [`Scene`] is worked out from the knot and from how far it is laid: flat shapes, back to
//! front, each with a [`Role`]. A [`Palette`] turns roles into colours, a painter puts the
//! shapes on a surface; neither knows anything of knots. The painter here makes [`Image`]s,
//! and from them PNG files.

mod band;
mod changes;
mod cords;
mod course;
mod coverage;
mod ends;
mod gauge;
mod hand;
mod icon;
mod laid;
mod lens;
mod lettering;
mod moment;
mod palette;
mod pins;
mod raster;
mod rings;
mod scene;
mod shape;
pub mod sheet;
mod subject;
mod svg;
mod wanted;

use std::ops::Range;

pub use icon::{ICON_SIZES, icon_png, icon_svg};
pub use palette::{Colour, Palette, Tones, okabe_ito};
pub use raster::{Image, Painter, RasterError};
pub use scene::{CrossingPoint, Scene};
pub use shape::{Outline, Paint, Point, Role, Segment, Shape};
pub use subject::Subject;
pub use svg::svg;

use crate::knot::Turn;

/// How the tube is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum View {
    /// Cut open and laid flat, and a little of it shown again beyond both edges.
    #[default]
    RolledOut,
    /// As it stands before the tyer, turned so that the leg in hand is in front.
    RoundTheTube,
}

/// How far the tie has come.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Progress {
    /// No cord is on the tube.
    #[default]
    Bare,
    /// Every turn before this one is laid, and none is in hand.
    Before(Turn),
    /// Every turn before this one is laid.
    At {
        /// The turn in hand.
        turn: Turn,
        /// Which of its crossings are being told, counted from 0 in the order in which
        /// [`Laying::crossings`](crate::knot::Laying::crossings) gives them. All of them for
        /// a leg that is told at once.
        crossings: Range<usize>,
    },
    /// All is laid, and the slack of this turn is being drawn out.
    Fairing(Turn),
    /// All is laid.
    Finished,
}

impl Progress {
    /// With `turn` in hand, all of it told at once.
    pub const fn at(turn: Turn) -> Self {
        Self::At {
            turn,
            crossings: 0..usize::MAX,
        }
    }
}

/// The size of a picture in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// From left to right.
    pub width: f32,
    /// From top to bottom.
    pub height: f32,
}

impl Frame {
    /// A frame of this size.
    pub const fn new(width: f32, height: f32) -> Self {
        Self { width, height }
    }

    /// The same, brought within what can be worked with: 64 to 16 384 pixels each way.
    fn usable(self) -> Self {
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
