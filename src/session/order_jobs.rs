//! What is done with orders on the disk. Nothing here is for a thread that somebody waits for.

use super::batch::{next_knot, tied, unfinished_piece};
use super::job_page::JobPage;
use super::listing::ListingNumber;
use super::order_change::{OrderChange, OrderOutcome};
use crate::bench::Prices;
use crate::files::Gathering;
use crate::guide::{Order, OrderAnswer, OrderError, Presets};
use crate::shelf::{
    KeptOrder, Ledger, OrderId, Orders, PresetsFile, Shelf, ShelfError, ShelfReading, ShelfTrouble,
    Tie,
};

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
    /// Keep a new one, with nothing said of it; or open one of which nothing was ever said.
    New,
    /// Look all through, and drop this one if nothing was said of it.
    Close(OrderId),
    /// Change one.
    Change(OrderId, OrderChange),
    /// Delete one.
    Delete(OrderId),
    /// Bring one back.
    Undo(OrderId),
    /// Find the next knot of a piece.
    Next(OrderId, u16),
}

impl OrderJob {
    /// The page that it belongs to.
    pub fn page(&self) -> JobPage {
        match self {
            Self::Look(id) => JobPage::Leads(id.clone()),
            Self::New => JobPage::New,
            Self::Close(_) => JobPage::Leads(None),
            Self::Change(id, _) | Self::Next(id, _) => JobPage::Stays(Some(id.clone())),
            Self::Delete(_) | Self::Undo(_) => JobPage::Stays(None),
        }
    }
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

impl OpenOrder {
    /// The piece that is tied next; where nobody can tell what the order comes to, the first. None of
    /// an order without pieces.
    pub(super) fn next_piece(&self) -> Option<u16> {
        let first = self.kept.order.pieces.first().map(|piece| piece.number);
        let answer = self.answer.as_ref().ok();
        let next = answer.and_then(|answer| unfinished_piece(&answer.pieces, &self.tied));
        next.map(|one| one.piece.number).or(first)
    }
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
    /// Which listing it is.
    pub listing: ListingNumber,
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
    /// The page that the job belongs to.
    pub page: JobPage,
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
    let page = job.page();
    ShelfReading::gather(|gathering| {
        let mut open = match &job {
            OrderJob::Look(id) => id.clone(),
            OrderJob::Change(id, _) | OrderJob::Next(id, _) => Some(id.clone()),
            OrderJob::New | OrderJob::Close(_) | OrderJob::Delete(_) | OrderJob::Undo(_) => None,
        };
        let change = match &job {
            OrderJob::Change(_, change) => Some(change.clone()),
            _ => None,
        };
        let outcome = outcome(shelf, &orders, job, &mut open, gathering);
        OrderReport {
            refused: change.filter(|_| outcome.is_err()),
            outcome,
            page,
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
            // One is left over where the window was closed on it.
            let all = orders.list()?.hand_on(gathering);
            let blank = all.into_iter().find(|kept| kept.order.is_blank());
            let kept = match blank {
                Some(kept) => kept,
                None => orders.keep(Order::default())?,
            };
            *open = Some(kept.id);
            OrderOutcome::Looked
        }
        OrderJob::Close(id) => {
            match orders.look(&id) {
                Ok(looked) => {
                    if looked.hand_on(gathering).order.is_blank() {
                        orders.delete(&id)?;
                    }
                }
                // It has gone meanwhile.
                Err(ShelfError::NoSuchOrder { .. }) => {}
                Err(error) => return Err(error),
            }
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
            let next = answer
                .ok()
                .and_then(|answer| next_knot(&ties, &kept, &answer, number));
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
    Ok(answer_order(order, &presets, &ledger, prices))
}

/// What an order comes to with what is kept by name and what the log has learnt.
///
/// # Errors
/// An [`OrderError`]: the first thing that cannot be used.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Prices;
/// use marlinspeak::guide::{Order, OrderFault, Presets};
/// use marlinspeak::session::answer_order;
/// use marlinspeak::shelf::Ledger;
///
/// let nothing = (Presets::default(), Ledger::default());
/// let error = answer_order(&Order::default(), &nothing.0, &nothing.1, Prices::default());
/// assert_eq!(error.unwrap_err().what, OrderFault::NoPieces);
/// ```
pub fn answer_order(
    order: &Order,
    presets: &Presets,
    ledger: &Ledger,
    prices: Prices,
) -> Result<OrderAnswer, OrderError> {
    let read = order.read(presets, |cord, kind| ledger.correction(cord, kind))?;
    Ok(OrderAnswer::of(read, ledger.pace(), prices))
}

fn stock(
    shelf: &Shelf,
    orders: &Orders,
    prices: Prices,
    open: Option<OrderId>,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<OrderStock, ShelfError> {
    let listing = ListingNumber::draw();
    let all = orders.list()?.hand_on(gathering);
    let open = open.and_then(|id| all.iter().find(|kept| kept.id == id).cloned());
    let open = match open {
        None => None,
        Some(kept) => {
            let answer = answer(shelf, &kept.order, prices, gathering)?;
            let ties: Vec<Tie> = shelf.list()?.hand_on(gathering);
            let pieces = answer.iter().flat_map(|answer| &answer.pieces);
            let tied = pieces
                .map(|one| tied(&ties, &kept.id, &one.piece))
                .collect();
            Some(OpenOrder { kept, answer, tied })
        }
    };
    Ok(OrderStock {
        orders: all,
        open,
        listing,
    })
}
