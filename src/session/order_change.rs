//! Changes to an order, and what comes of them.

use super::batch::NextOfOrder;
use crate::guide::{Order, OrderField, OrderPiece, PieceField};
use crate::shelf::OrderId;

/// What came of it.
///
/// ```
/// use marlinspeak::bench::Prices;
/// use marlinspeak::guide::OrderField;
/// use marlinspeak::session::{OrderChange, OrderJob, OrderOutcome, do_order_job};
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path().join("ties")).unwrap();
/// let done = |job| do_order_job(&shelf, Prices::default(), job).untroubled().unwrap();
/// let open = done(OrderJob::New).stock.unwrap().open.unwrap();
/// let name = OrderChange::Field(OrderField::Name, "the club".to_owned());
/// let report = done(OrderJob::Change(open.kept.id, name));
/// assert!(matches!(report.outcome, Ok(OrderOutcome::Looked)));
/// let stock = report.stock.unwrap();
/// assert!(stock.open.is_some());
/// ```
#[derive(Debug)]
pub enum OrderOutcome {
    /// All were looked through, or one was changed.
    Looked,
    /// A piece of this number is new.
    Added(u16),
    /// A piece has gone from an order.
    Removed(OrderId, OrderPiece),
    /// A piece that had gone is back.
    PutBack,
    /// The piece that was meant has gone meanwhile, and nothing was changed.
    NoPiece,
    /// It is deleted.
    Deleted(OrderId),
    /// It is back.
    Undone,
    /// The next knot of a piece; none while the order cannot be tied.
    Next(Option<NextOfOrder>),
}

/// A change to an order.
///
/// ```
/// use marlinspeak::bench::Prices;
/// use marlinspeak::guide::OrderField;
/// use marlinspeak::session::{OrderChange, OrderJob, OrderOutcome, do_order_job};
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path().join("ties")).unwrap();
/// let done = |job| do_order_job(&shelf, Prices::default(), job).untroubled().unwrap();
/// let open = done(OrderJob::New).stock.unwrap().open.unwrap();
/// let name = OrderChange::Field(OrderField::Name, "the club".to_owned());
/// let report = done(OrderJob::Change(open.kept.id, name));
/// assert!(matches!(report.outcome, Ok(OrderOutcome::Looked)));
/// let stock = report.stock.unwrap();
/// assert_eq!(stock.orders[0].order.name, "the club");
/// ```
#[derive(Clone, Debug)]
pub enum OrderChange {
    /// A field of the order is said anew.
    Field(OrderField, String),
    /// A field of a piece is said anew.
    PieceField(u16, PieceField, String),
    /// Another piece, like the last one but for its name.
    AddPiece,
    /// A piece goes.
    RemovePiece(u16),
    /// One that went comes back.
    PutBack(OrderPiece),
}

impl OrderChange {
    /// Makes it, and gives what that comes to.
    pub(super) fn make(self, id: &OrderId, order: &mut Order) -> OrderOutcome {
        match self {
            Self::Field(OrderField::Name, text) => order.name = text,
            Self::Field(OrderField::Stick, text) => order.stick = text,
            Self::Field(OrderField::Spool, text) => order.spool = text,
            Self::Field(OrderField::Waste, text) => order.waste = text,
            Self::PieceField(number, field, text) => match order.piece_mut(number) {
                Some(piece) => piece.say(field, text),
                None => return OrderOutcome::NoPiece,
            },
            Self::AddPiece => {
                let like = order.pieces.last().cloned();
                let piece = order.add();
                // Cord, tube and object are mostly those of the piece before.
                for (field, text) in like.iter().flat_map(OrderPiece::said) {
                    if matches!(field, PieceField::Setup(_)) {
                        piece.say(field, text);
                    }
                }
                return OrderOutcome::Added(piece.number);
            }
            Self::RemovePiece(number) => {
                let mut pieces = order.pieces.iter();
                return match pieces.position(|piece| piece.number == number) {
                    Some(at) => OrderOutcome::Removed(id.clone(), order.pieces.remove(at)),
                    None => OrderOutcome::NoPiece,
                };
            }
            Self::PutBack(piece) => {
                order.put_back(piece);
                return OrderOutcome::PutBack;
            }
        }
        OrderOutcome::Looked
    }
}
