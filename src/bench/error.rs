//! What can be wrong with the cord, tube or factor that somebody describes.

use thiserror::Error;

use strum::IntoStaticStr;

/// A count that is described at the bench.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{BenchError, Counted, Millimetres, Tube};
///
/// // One hole makes no row.
/// let error = Tube::ringed(Millimetres::new(45.0).unwrap(), &[14, 1]).unwrap_err();
/// let counted = Counted::Holes;
/// assert_eq!(error, BenchError::OutOfRange { counted, given: 1, least: 2, most: 1998 });
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Counted {
    /// Rows of holes in a ring.
    Rows,
    /// Holes in one row.
    Holes,
}

/// Why a description cannot be used. The words for it that a tyer reads are made elsewhere; its
/// own are for logs and for users of the library.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{BenchError, Thread, Tube};
///
/// // What was typed comes back, to be shown beside what would do.
/// let given = "m7".to_owned();
/// assert_eq!(Thread::parse(" m7 ").unwrap_err(), BenchError::UnknownThread { given });
/// let error = Tube::parse_rows("14 and 20").unwrap_err();
/// assert_eq!(error.to_string(), "rows are whole numbers and commas, not \"14 and 20\"");
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
pub enum BenchError {
    /// A count outside its bounds.
    #[error("{counted:?} must be {least} to {most}, not {given}")]
    OutOfRange {
        /// Which count.
        counted: Counted,
        /// The count as given.
        given: usize,
        /// The smallest allowed.
        least: usize,
        /// The largest allowed.
        most: usize,
    },
    /// The list of rows holds something other than whole numbers.
    #[error("rows are whole numbers and commas, not {given:?}")]
    RowsUnreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// A set-screw thread that is not in the table of hex keys.
    #[error("{given:?} is not a set-screw thread in the table")]
    UnknownThread {
        /// The text as given, trimmed.
        given: String,
    },
    /// A correction factor outside [`super::Correction::BOUNDS`] or not a number.
    #[error("a correction must be {} to {}, not {given}", super::Correction::BOUNDS.start(), super::Correction::BOUNDS.end())]
    Correction {
        /// The factor as given.
        given: f64,
    },
    /// A pace that is not a positive time.
    #[error("a pace must be more than 0 seconds a leg, not {given}")]
    Pace {
        /// Seconds for a leg as given.
        given: f64,
    },
    /// The passes shared out among cords do not add up to the passes of the knot.
    #[error("the cords make {shared} passes, the knot has {passes}")]
    PassesShared {
        /// Passes that the cords make together.
        shared: usize,
        /// Passes of the knot.
        passes: u16,
    },
    /// How closely a cord lies: not a number within [`super::Give::BOUNDS`].
    #[error("a cord's give must be {} to {}, not {given:?}", super::Give::BOUNDS.start(), super::Give::BOUNDS.end())]
    Give {
        /// The text as given, trimmed.
        given: String,
    },
    /// A share of waste that is no number within [`super::Waste::BOUNDS`].
    #[error("waste must be {} to {} per cent, not {given:?}", super::Waste::BOUNDS.start(), super::Waste::BOUNDS.end())]
    Waste {
        /// The text as given, trimmed.
        given: String,
    },
    /// A price that is no number of 0 or more.
    #[error("a price must be 0 to {}, not {given:?}", super::Prices::BOUNDS.end())]
    Price {
        /// The text as given, trimmed.
        given: String,
    },
}
