//! What can be wrong with what was said of an order.

use thiserror::Error;

use super::{CordsError, OrderEntry, OrderField, PieceField, SetupError, SetupField};
use crate::bench::{BenchError, LengthError, RigError};
use crate::knot::{KnotError, Quantity};

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
    /// The number of the piece it is about, and what that is called.
    pub piece: Option<(u16, String)>,
    /// What is wrong.
    #[source]
    pub what: OrderFault,
}

impl OrderError {
    /// The field in which it is put right; none where a piece more or less is what it takes.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::Correction;
    /// use marlinspeak::guide::{Order, OrderEntry, PieceField, Presets};
    ///
    /// let mut order = Order::default();
    /// order.add().say(PieceField::Count, "a dozen");
    /// let error = order.read(&Presets::default(), |_, _| Correction::default()).unwrap_err();
    /// assert_eq!(error.entry(), Some(OrderEntry::Piece(1, PieceField::Count)));
    /// ```
    pub fn entry(&self) -> Option<OrderEntry> {
        let field = match &self.what {
            OrderFault::NoPieces | OrderFault::TooManyPieces { .. } => return None,
            OrderFault::Length { of, .. } => match of {
                OrderLength::Gap => PieceField::Gap,
                OrderLength::Stick => return Some(OrderEntry::Of(OrderField::Stick)),
                OrderLength::Spool => return Some(OrderEntry::Of(OrderField::Spool)),
            },
            OrderFault::NotOnStick => return Some(OrderEntry::Of(OrderField::Stick)),
            OrderFault::Bench(_) => return Some(OrderEntry::Of(OrderField::Waste)),
            OrderFault::Count { .. } => PieceField::Count,
            OrderFault::Choice { field, .. } => *field,
            OrderFault::CordNames { .. } | OrderFault::Cords(_) => PieceField::Cords,
            OrderFault::Knot(error) => counted(error),
            OrderFault::Setup(error) => PieceField::Setup(error.field()),
            OrderFault::Rig(_) => PieceField::Setup(SetupField::Tube),
        };
        let (number, _) = self.piece.as_ref()?;
        Some(OrderEntry::Piece(*number, field))
    }
}

/// The count or the weave of which no knot can be made.
const fn counted(error: &KnotError) -> PieceField {
    match error {
        KnotError::NotANumber { quantity, .. } | KnotError::OutOfRange { quantity, .. } => {
            match quantity {
                Quantity::Leads => PieceField::Leads,
                Quantity::Bights => PieceField::Bights,
                Quantity::Passes => PieceField::Passes,
                Quantity::Nested => PieceField::Nested,
                Quantity::Lands => PieceField::Lands,
            }
        }
        KnotError::LandsBeyond { .. } => PieceField::Lands,
        KnotError::NoLeadsLeft { .. } | KnotError::NotRoundHand { .. } => PieceField::Leads,
        KnotError::WeaveUnreadable { .. }
        | KnotError::RunTooLong { .. }
        | KnotError::CodeLength { .. }
        | KnotError::WeaveNested { .. } => PieceField::Weave,
    }
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
    /// A mat or a ball in an order of which all pieces sit on a stick.
    #[error("neither a mat nor a ball sits on a stick")]
    NotOnStick,
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
