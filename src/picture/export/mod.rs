//! Pictures as files: sheets of paper, PDF, PNG, SVG and the icon of the program.

mod error;
mod icon;
mod png;
pub mod reel;
pub mod sheet;
mod svg;

pub use error::ExportError;
pub use icon::{ICON_SIZES, icon_png, icon_svg};
pub use svg::svg;
