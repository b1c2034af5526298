//! How large text is set: for the tyer's distance, and for the room there is.

pub mod text_metrics;
pub mod type_fitting;
pub mod type_size;
