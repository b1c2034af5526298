//! What can be wrong with a knot that somebody asks for.

use std::error::Error;
use std::fmt;

use super::Quantity;

/// Why no knot can be built from what was given. The words for it that a tyer reads are in
/// `i18n/`; [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KnotError {
    /// The text for a count holds something other than digits.
    NotANumber {
        /// Which count.
        quantity: Quantity,
        /// The text as given, trimmed.
        given: String,
    },
    /// The count is a number outside [`Quantity::bounds`].
    OutOfRange {
        /// Which count.
        quantity: Quantity,
        /// The number as given.
        given: String,
    },
    /// Neither a run length nor a row code.
    WeaveUnreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// An over-n-under-n weave whose run is longer than the rows there are.
    RunTooLong {
        /// The run length as given.
        given: String,
        /// Rows of crossings in the knot: leads − 1.
        rows: u16,
    },
    /// A row code that has not one letter for each row.
    CodeLength {
        /// Letters in the code.
        letters: usize,
        /// Rows of crossings in the knot: leads − 1.
        rows: u16,
    },
}

impl fmt::Display for KnotError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotANumber { quantity, given } => {
                write!(f, "{quantity:?} must be a whole number, not {given:?}")
            }
            Self::OutOfRange { quantity, given } => {
                let bounds = quantity.bounds();
                write!(
                    f,
                    "{quantity:?} must be {} to {}, not {given}",
                    bounds.start(),
                    bounds.end()
                )
            }
            Self::WeaveUnreadable { given } => {
                write!(
                    f,
                    "a weave is a run length or a row code of o and u, not {given:?}"
                )
            }
            Self::RunTooLong { given, rows } => {
                write!(f, "a run of {given} does not fit {rows} rows of crossings")
            }
            Self::CodeLength { letters, rows } => {
                write!(
                    f,
                    "a row code of {letters} letters does not fit {rows} rows of crossings"
                )
            }
        }
    }
}

impl Error for KnotError {}
