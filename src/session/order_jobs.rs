//! What is done with orders on the disk. Nothing here is for a thread that somebody waits for.

use super::batch::{NextOfOrder, next_of_order, tied};
use crate::bench::Prices;
use crate::files::Gathering;
use crate::guide::{Order, OrderAnswer, OrderError, OrderField, OrderPiece, PieceField, Presets};
use crate::shelf::{
    KeptOrder, OrderId, Orders, PresetsFile, Shelf, ShelfError, ShelfReading, ShelfTrouble, Tie,
};

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
    fn make(self, id: &OrderId, order: &mut Order) -> OrderOutcome {
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

/// Something to be done.
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
/// assert_eq!(stock.orders.len(), 1);
/// ```
#[derive(Clone, Debug)]
pub enum OrderJob {
    /// Look them through, and one of them closely.
    Look(Option<OrderId>),
    /// Keep a new one, with nothing said of it.
    New,
    /// Change one.
    Change(OrderId, OrderChange),
    /// Delete one.
    Delete(OrderId),
    /// Bring one back.
    Undo(OrderId),
    /// Find the next knot of a piece.
    Next(OrderId, u16),
}

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

/// An order that is looked at closely.
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
/// // There is no piece in it yet.
/// assert!(stock.open.unwrap().answer.is_err());
/// ```
#[derive(Clone, Debug)]
pub struct OpenOrder {
    /// The order.
    pub kept: KeptOrder,
    /// What it comes to, or why nobody can tell.
    pub answer: Result<OrderAnswer, OrderError>,
    /// How many of each piece are tied, by the order of the answer.
    pub tied: Vec<u16>,
}

/// All that is shown of orders.
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
/// assert_eq!(stock.orders[0].id, stock.open.unwrap().kept.id);
/// ```
#[derive(Clone, Debug, Default)]
pub struct OrderStock {
    /// All of them, the one that was changed last first.
    pub orders: Vec<KeptOrder>,
    /// The one that is looked at closely.
    pub open: Option<OpenOrder>,
}

/// What came of a job, and the orders after it.
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
#[derive(Debug)]
pub struct OrderReport {
    /// What came of it.
    pub outcome: Result<OrderOutcome, ShelfError>,
    /// The change that could not be made.
    pub refused: Option<OrderChange>,
    /// The orders after it.
    pub stock: Result<OrderStock, ShelfError>,
}

/// Does a job, and looks the orders through.
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
pub fn do_order_job(shelf: &Shelf, prices: Prices, job: OrderJob) -> ShelfReading<OrderReport> {
    let orders = Orders::beside(shelf);
    ShelfReading::gather(|gathering| {
        let mut open = match &job {
            OrderJob::Look(id) => id.clone(),
            OrderJob::Change(id, _) | OrderJob::Next(id, _) => Some(id.clone()),
            OrderJob::New | OrderJob::Delete(_) | OrderJob::Undo(_) => None,
        };
        let change = match &job {
            OrderJob::Change(_, change) => Some(change.clone()),
            _ => None,
        };
        let outcome = outcome(shelf, &orders, job, &mut open, gathering);
        OrderReport {
            refused: change.filter(|_| outcome.is_err()),
            outcome,
            stock: stock(shelf, &orders, prices, open, gathering),
        }
    })
}

fn outcome(
    shelf: &Shelf,
    orders: &Orders,
    job: OrderJob,
    open: &mut Option<OrderId>,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<OrderOutcome, ShelfError> {
    Ok(match job {
        OrderJob::Look(_) => OrderOutcome::Looked,
        OrderJob::New => {
            *open = Some(orders.keep(Order::default())?.id);
            OrderOutcome::Looked
        }
        OrderJob::Change(id, change) => {
            let mut made = OrderOutcome::Looked;
            let changed = orders.change(&id, |order| made = change.make(&id, order))?;
            changed.hand_on(gathering);
            made
        }
        OrderJob::Delete(id) => {
            orders.delete(&id)?;
            OrderOutcome::Deleted(id)
        }
        OrderJob::Undo(id) => {
            orders.undo_delete(&id)?.hand_on(gathering);
            OrderOutcome::Undone
        }
        OrderJob::Next(id, number) => {
            let kept = orders.look(&id)?.hand_on(gathering);
            if !kept.order.pieces.iter().any(|piece| piece.number == number) {
                return Ok(OrderOutcome::NoPiece);
            }
            let answer = answer(shelf, &kept.order, Prices::default(), gathering)?;
            let ties = shelf.list()?.hand_on(gathering);
            let next = answer.ok().and_then(|answer| {
                let mut pieces = answer.pieces.iter();
                let piece = pieces.find(|one| one.piece.number == number)?;
                Some(next_of_order(&ties, &id, &piece.piece))
            });
            OrderOutcome::Next(next)
        }
    })
}

/// What an order comes to, with what is kept by name and what the log has learnt.
fn answer(
    shelf: &Shelf,
    order: &Order,
    prices: Prices,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<Result<OrderAnswer, OrderError>, ShelfError> {
    let presets = if order.may_name_a_preset() {
        PresetsFile::beside(shelf).read()?.hand_on(gathering)
    } else {
        Presets::default()
    };
    let ledger = shelf.ledger()?.hand_on(gathering);
    let read = order.read(&presets, |cord, kind| ledger.correction(cord, kind));
    Ok(read.map(|read| OrderAnswer::of(read, ledger.pace(), prices)))
}

fn stock(
    shelf: &Shelf,
    orders: &Orders,
    prices: Prices,
    open: Option<OrderId>,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<OrderStock, ShelfError> {
    let all = orders.list()?.hand_on(gathering);
    let open = open.and_then(|id| all.iter().find(|kept| kept.id == id).cloned());
    let open = match open {
        None => None,
        Some(kept) => {
            let answer = answer(shelf, &kept.order, prices, gathering)?;
            let ties: Vec<Tie> = shelf.list()?.hand_on(gathering);
            let tied = answer.iter().flat_map(|answer| &answer.pieces);
            let tied = tied.map(|one| tied_of(&ties, &kept.id, one)).collect();
            Some(OpenOrder { kept, answer, tied })
        }
    };
    Ok(OrderStock { orders: all, open })
}

fn tied_of(ties: &[Tie], id: &OrderId, one: &crate::guide::PieceAnswer) -> u16 {
    tied(ties, id, &one.piece)
}
