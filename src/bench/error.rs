//! What can be wrong with the cord, tube or factor that somebody describes.

use std::error::Error;
use std::fmt;

/// A count that is described at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Counted {
    /// Rows of holes in a ring.
    Rows,
    /// Holes in one row.
    Holes,
}

/// Why a description cannot be used. The words for it that a tyer reads are made elsewhere;
/// [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Debug, PartialEq)]
pub enum BenchError {
    /// A count outside its bounds.
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
    RowsUnreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// A set-screw thread that is not in the table of hex keys.
    UnknownThread {
        /// The text as given, trimmed.
        given: String,
    },
    /// A correction factor outside [`super::Correction::BOUNDS`] or not a number.
    Correction {
        /// The factor as given.
        given: f64,
    },
    /// A pace that is not a positive time.
    Pace {
        /// Seconds for a leg as given.
        given: f64,
    },
    /// The passes shared out among cords do not add up to the passes of the knot.
    PassesShared {
        /// Passes that the cords make together.
        shared: usize,
        /// Passes of the knot.
        passes: u16,
    },
}

impl fmt::Display for BenchError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutOfRange {
                counted,
                given,
                least,
                most,
            } => write!(f, "{counted:?} must be {least} to {most}, not {given}"),
            Self::RowsUnreadable { given } => {
                write!(f, "rows are whole numbers and commas, not {given:?}")
            }
            Self::UnknownThread { given } => {
                write!(f, "{given:?} is not a set-screw thread in the table")
            }
            Self::Correction { given } => write!(
                f,
                "a correction must be {} to {}, not {given}",
                super::Correction::BOUNDS.start(),
                super::Correction::BOUNDS.end()
            ),
            Self::Pace { given } => {
                write!(f, "a pace must be more than 0 seconds a leg, not {given}")
            }
            Self::PassesShared { shared, passes } => {
                write!(f, "the cords make {shared} passes, the knot has {passes}")
            }
        }
    }
}

impl Error for BenchError {}
