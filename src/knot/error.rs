//! What can be wrong with a knot that somebody asks for.

use thiserror::Error;

use super::Quantity;

/// Why no knot can be built from what was given. The words for it that a tyer reads are in
/// `i18n/`; the text here is for logs and for users of the library.
///
/// ```
/// use marlinspeak::knot::{Knot, KnotError, Weave};
///
/// // Five leads have four rows of crossings, so over five under five never comes to an under.
/// let error = Knot::new(5, 7, Weave::Run(5)).unwrap_err();
/// assert_eq!(error.to_string(), "a run of 5 does not fit 4 rows of crossings");
/// assert_eq!(error, KnotError::RunTooLong { given: "5".to_owned(), rows: 4 });
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum KnotError {
    /// The text for a count holds something other than digits.
    #[error("{quantity:?} must be a whole number, not {given:?}")]
    NotANumber {
        /// The count that was asked for.
        quantity: Quantity,
        /// The text as given, trimmed.
        given: String,
    },
    /// The count is a number outside [`Quantity::bounds`].
    #[error(
        "{quantity:?} must be {} to {}, not {given}",
        quantity.bounds().start(),
        quantity.bounds().end()
    )]
    OutOfRange {
        /// The count that was asked for.
        quantity: Quantity,
        /// The number as given.
        given: String,
    },
    /// Neither a run length nor a row code.
    #[error("a weave is a run length or a row code of o and u, not {given:?}")]
    WeaveUnreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// An over-n-under-n weave whose run is longer than the rows there are.
    #[error("a run of {given} does not fit {rows} rows of crossings")]
    RunTooLong {
        /// The run length as given.
        given: String,
        /// Rows of crossings in the knot; of a plain one leads − 1.
        rows: u16,
    },
    /// A row code that has not one letter for each row.
    #[error("a row code of {letters} letters does not fit {rows} rows of crossings")]
    CodeLength {
        /// Letters in the code.
        letters: usize,
        /// Rows of crossings in the knot; of a plain one leads − 1.
        rows: u16,
    },
    /// A weave that does not fit the rows of an interwoven knot.
    #[error("the weave does not fit {rows} rows of crossings")]
    WeaveNested {
        /// Rows of crossings in the knot.
        rows: u16,
    },
    /// The first cord is to land in a row of pins that there is not.
    #[error("there are {nested} rows of pins at each rim, and no row {given}")]
    LandsBeyond {
        /// The row as given.
        given: String,
        /// Rows there are.
        nested: u16,
    },
    /// With so few leads there are none left for the further cords, unless the first lands in the
    /// innermost row.
    #[error("{leads} leads leave none for further cords unless the first lands in row {nested}")]
    NoLeadsLeft {
        /// Leads of the first cord.
        leads: u16,
        /// Rows of pins at each rim.
        nested: u16,
    },
    /// Four fingers do not hold it: it is to be tied round the hand, and wants pins.
    #[error(
        "{leads} lead {bights} bight, {nested} nested, in {passes} passes is not tied round the hand"
    )]
    NotRoundHand {
        /// Leads of the knot.
        leads: u16,
        /// Bights of the knot.
        bights: u16,
        /// Bights nested at each rim.
        nested: u16,
        /// Passes it is to have.
        passes: u16,
    },
}
