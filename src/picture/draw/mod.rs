//! A scene as shapes: outlines with a [`Role`] each, back to front, the letters among them.
//!
//! A [`DisplayList`] knows nothing of how its shapes come to a surface, and a [`Palette`] says in
//! which colour.

mod active_leg;
mod captions;
mod cords;
mod display_list;
mod far_pins;
mod item;
mod knot;
mod lettering;
mod marks;
mod palette;
mod pins;
mod rings;
mod tube;

pub use display_list::DisplayList;
pub use item::{DisplayItem, Outline, Paint, Role};
pub use palette::{Colour, DefaultPalette, Palette, okabe_ito};

pub(super) use lettering::{Weight, file, glyphs, line, width};
