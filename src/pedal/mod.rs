//! From a press to what the tyer means by it. Pure: nothing here knows of a window or a knot.

mod binding;
mod intent;

pub use binding::{Bindings, Press};
pub use intent::Intent;
