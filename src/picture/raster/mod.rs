//! A display list as pixels: exact coverage, painted in bands on several threads, and of one
//! picture after another only what differs.

mod band;
mod buffer;
mod contours;
mod coverage;
mod damage;
mod image;
mod painter;

pub use image::Image;
pub use painter::Painter;
