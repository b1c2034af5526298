//! The braid on the cylinder, in whole numbers.
//!
//! Unroll the tube. Round it run `2 × bights` *half pitches*, counted to the tyer's right
//! (to the left for a left-handed tyer, who sees the same picture mirrored); up it run
//! `leads` rows. Every leg climbs or falls one row per half pitch and always travels the
//! same way round, so everything about the knot follows from remainders: which pin a leg
//! lands on, which leg it meets in which row, and what lies there already.
//!
//! Where bights are nested there are as many rows of pins at each rim, and so many times as many half
//! pitches and rows ([`Lattice`]). A plain knot is the case of one nest; nothing is worked out
//! in another way for it.
//!
//! Nothing is stored per crossing. A [`Knot`] keeps one number per pin; a leg and its
//! crossings are worked out when they are asked for, so the last leg of a 999 lead 998 bight
//! knot is as quick to tell as the first.

mod braid;
mod crossed;
mod error;
mod lattice;
mod laying;
mod pin;
mod quantity;
mod reading;
mod spot;
mod tucks;
mod weave;

pub use braid::{Heading, Knot, Leg};
pub use error::KnotError;
pub use lattice::{Lattice, Nest};
pub use laying::{Crossing, Laying, LayingOrder, PassLeg};
pub use pin::{Hand, Pin, PinRow, Rim, Side};
pub use quantity::Quantity;
pub use spot::Spot;
pub use tucks::lead_tucks;
pub use weave::Weave;
