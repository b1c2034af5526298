//! The picture of the knot.
//!
//! Data goes one way through four folders: `scene` works out what is to be seen of the knot from
//! how far it is laid, `draw` makes shapes of it, back to front, each with a [`Role`], `raster`
//! paints them as pixels, and `export` makes files.
//!
//! Only `scene` knows of knots. A [`Palette`] turns roles into colours, and a painter puts the
//! shapes of a [`DisplayList`] on a surface: the [`Painter`] here makes an [`Image`], the window
//! has one of its own.

mod draw;
mod export;
mod raster;
mod scene;

pub use draw::{
    Colour, DefaultPalette, DisplayItem, DisplayList, Outline, Paint, Palette, Role, okabe_ito,
};
pub use export::{ExportError, ICON_SIZES, icon_png, icon_svg, reel, sheet, svg};
pub use raster::{Image, Painter};
pub use scene::{
    CrossingPoint, IllustrationError, Mark, Moment, Scene, Subject, View, Viewport, single,
};
