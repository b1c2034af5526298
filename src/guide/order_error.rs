//! What can be wrong with what was said of an order.

use thiserror::Error;

use super::{CordsError, PieceField, SetupError};
use crate::bench::{BenchError, LengthError, RigError};
use crate::knot::KnotError;

/// A length of an order.
///
/// ```
/// use marlinspeak::guide::OrderLength;
///
/// assert_eq!(<&str>::from(OrderLength::Stick), "stick");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum OrderLength {
    /// What stays bare before a knot.
    Gap,
    /// The stick that all sit on.
    Stick,
    /// Cord on a spool.
    Spool,
}

/// Why an order cannot be used. The words for it that a tyer reads are in `i18n/`; the text here is
/// for logs and for users of the library.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, OrderFault, PieceField, Presets};
///
/// let mut order = Order::default();
/// order.add().say(PieceField::Count, "a dozen");
/// let error = order.read(&Presets::default(), |_, _| Correction::default()).unwrap_err();
/// assert_eq!(error.piece, Some((1, String::new())));
/// assert_eq!(error.what, OrderFault::Count { given: "a dozen".to_owned() });
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
#[error("piece {piece:?}: {what}")]
pub struct OrderError {
    /// The piece it is about, counted from 1, and what that is called.
    pub piece: Option<(usize, String)>,
    /// What is wrong.
    #[source]
    pub what: OrderFault,
}

/// What is wrong with an order or a piece of it.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, OrderFault, Presets};
///
/// let order = Order::default();
/// let error = order.read(&Presets::default(), |_, _| Correction::default()).unwrap_err();
/// assert_eq!(error.what, OrderFault::NoPieces);
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
pub enum OrderFault {
    /// There is no piece in it.
    #[error("an order has a piece at the least")]
    NoPieces,
    /// More pieces than [`super::Order::MOST_PIECES`].
    #[error("{given} pieces are more than an order has")]
    TooManyPieces {
        /// How many there are.
        given: usize,
    },
    /// No whole number from 1 to [`super::OrderPiece::MOST`].
    #[error("{given:?} is no number of pieces")]
    Count {
        /// The text as given.
        given: String,
    },
    /// No length.
    #[error("{of:?}: {error}")]
    Length {
        /// Which length.
        of: OrderLength,
        /// What is wrong with it.
        error: LengthError,
    },
    /// A choice that there is not.
    #[error("{field:?} is not {given:?}")]
    Choice {
        /// What is chosen.
        field: PieceField,
        /// The text as given.
        given: String,
        /// What there is.
        allowed: &'static [&'static str],
    },
    /// A list of names with nothing between two commas.
    #[error("{given:?} is no list of names")]
    CordNames {
        /// The text as given.
        given: String,
    },
    /// No such knot.
    #[error(transparent)]
    Knot(#[from] KnotError),
    /// Names that do not go with the knot.
    #[error(transparent)]
    Cords(#[from] CordsError),
    /// Object, cord or tube.
    #[error(transparent)]
    Setup(#[from] SetupError),
    /// A tube that does not take the knot, or a knot that does not go on the object.
    #[error(transparent)]
    Rig(#[from] RigError),
    /// No share of waste.
    #[error(transparent)]
    Bench(#[from] BenchError),
}
