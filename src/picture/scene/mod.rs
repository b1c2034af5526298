//! What is to be seen of a tie at one moment: which cords lie where on the tube, where they go
//! under and leave a gap, which leg is in hand, where the pins stand.
//!
//! A [`Scene`] knows lengths and positions but no shapes, letters or colours: those are drawn of
//! it by [`DisplayList`](super::DisplayList).

mod active_cord;
mod active_leg;
mod cord_path;
mod cords;
mod crossings;
mod ends;
mod far_numbers;
mod focus;
mod illustration;
mod knot;
mod laid_cords;
mod layout;
mod layout_room;
mod lie;
mod mark;
mod mark_shapes;
mod meridian;
mod model;
mod moment;
mod outlines;
mod pins;
mod projection;
mod rim_form;
mod rings;
mod sheet_point;
mod subject;
mod surface;
mod view;
mod visible_legs;

pub use crossings::CrossingPoint;
pub use illustration::IllustrationError;
pub use mark::Mark;
pub use model::Scene;
pub use moment::Moment;
pub use subject::Subject;
pub use view::{View, Viewport, single};

pub(super) use active_leg::ActiveLeg;
pub(super) use cord_path::Limit;
pub(super) use far_numbers::{FarSign, POINTER};
pub(super) use knot::{KnotScene, Viewpoint};
pub(super) use laid_cords::ShownPins;
pub(super) use layout::NUMBER_RING;
pub(super) use lie::{CLEAR_OF_NUMBERS, SMALLEST_WORD, involutes};
pub(super) use mark_shapes::MarkShape;
pub(super) use model::Content;
pub(super) use outlines::Outlines;
pub(super) use pins::VisiblePin;
pub(super) use projection::Span;
pub(super) use rings::{Ring, RingTold, RingsScene, count};
pub(super) use sheet_point::SheetPoint;
pub(super) use surface::Surface;
pub(super) use view::{coordinates, point};
pub(super) use visible_legs::VisibleLeg;
