//! The counts a knot is named by, and their bounds.

use std::ops::RangeInclusive;

use strum::IntoStaticStr;

/// A count that names a knot.
///
/// ```
/// use marlinspeak::knot::{KnotError, Quantity};
///
/// assert_eq!(Quantity::Leads.parse(" 5 "), Ok(5));
/// // A knot of one lead is no braid.
/// assert!(matches!(Quantity::Leads.parse("1"), Err(KnotError::OutOfRange { .. })));
/// assert!(matches!(Quantity::Bights.parse("seven"), Err(KnotError::NotANumber { .. })));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Quantity {
    /// Cords met on a straight line from rim to rim.
    Leads,
    /// Scallops along a rim; also pins on a ring.
    Bights,
    /// Trips of the cord round the whole pattern.
    Passes,
    /// Bights nested one inside the other at each rim.
    Nested,
    /// The top row of pins in which the first cord lands.
    Lands,
}

impl Quantity {
    /// The values this count may take, both ends allowed.
    pub const fn bounds(self) -> RangeInclusive<u16> {
        match self {
            Self::Leads | Self::Bights => 2..=999,
            Self::Passes | Self::Nested | Self::Lands => 1..=9,
        }
    }
}
