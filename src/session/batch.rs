//! Several of the same: which piece a tie is, how long the pieces took, and which comes next.

use crate::bench::{BatchPace, PieceTime};
use crate::guide::{AtOnce, OrderAnswer, PieceAnswer, PieceRead, Script};
use crate::shelf::{
    Batch, KeptOrder, Ledger, OfOrder, OrderId, Shelved, Tie, TieId, TieStatus, WorkTime,
};

/// How long the finished pieces of a batch took, but for one of them. What the tyer logged comes
/// before what was measured; a piece that was pressed through and not tied does not count.
pub(super) fn pace_of(ties: &[Tie], ledger: &Ledger, series: &str, except: &TieId) -> BatchPace {
    let mut pieces: Vec<(u16, PieceTime)> = ties
        .iter()
        .filter(|tie| tie.id() != except)
        .filter_map(|tie| {
            let batch = tie.batch.as_ref();
            // The tie that the second piece was begun from is the first one.
            let number = match batch {
                Some(batch) if batch.series() == series => batch.number(),
                None if tie.id().as_str() == series => 1,
                _ => return None,
            };
            is_done(tie).then_some(())?;
            Some((number, time_of(tie, ledger.minutes_of(tie.id()))?))
        })
        .collect();
    pieces.sort_by_key(|(number, _)| *number);
    BatchPace::new(pieces.into_iter().map(|(_, time)| time).collect())
}

/// How long a finished piece took.
pub(super) fn time_of(tie: &Tie, logged: Option<f64>) -> Option<PieceTime> {
    let seconds = tie.work_time.seconds();
    let quickest = WorkTime::QUICKEST_LEG * f64::from(tie.plan.laying().legs());
    let measured = (seconds >= quickest).then_some(seconds / 60.0);
    Some(PieceTime {
        minutes: logged.or(measured)?,
        tube_stood: tie.plan.tube_stands,
    })
}

fn is_done(tie: &Tie) -> bool {
    let script = Script::new(tie.plan.clone(), AtOnce::default());
    script.settle(tie.place) == script.last()
}

/// How many of a piece of an order are tied.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
/// use marlinspeak::session::{NextOfOrder, next_of_order, tied};
/// use marlinspeak::shelf::OrderId;
///
/// let mut order = Order::default();
/// let rope = order.add();
/// for (field, text) in [
///     (PieceField::Leads, "3"),
///     (PieceField::Bights, "5"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     rope.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// let id = OrderId::parse("bellrope").unwrap();
/// // Nothing of it is tied or begun.
/// assert_eq!(tied(&[], &id, &read.pieces[0]), 0);
/// assert!(matches!(next_of_order(&[], &id, &read.pieces[0]), NextOfOrder::Begin(_)));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
pub fn tied(ties: &[Tie], order: &OrderId, piece: &PieceRead) -> u16 {
    let tied = pieces_of(ties, order, piece).filter(|tie| is_done(tie));
    u16::try_from(tied.count()).unwrap_or(u16::MAX)
}

fn pieces_of<'a>(
    ties: &'a [Tie],
    order: &OrderId,
    piece: &'a PieceRead,
) -> impl Iterator<Item = &'a Tie> {
    let series = Batch::series_of(order, piece.number);
    ties.iter().filter(move |tie| {
        let batch = tie.batch.as_ref();
        // A number written by hand may be one that was given before: the knot tells them apart.
        batch.is_some_and(|batch| batch.series() == series)
            && tie.plan.laying() == piece.plan.laying()
    })
}

/// The first piece of which some are still to be tied, or the last one when all are. None where there
/// are no pieces. `tied` says how many of each are, in the same order.
///
/// ```
/// // An order without pieces has none to tie.
/// assert!(marlinspeak::session::unfinished_piece(&[], &[]).is_none());
/// ```
pub fn unfinished_piece<'a>(pieces: &'a [PieceAnswer], tied: &[u16]) -> Option<&'a PieceAnswer> {
    let mut each = pieces.iter().zip(tied);
    let unfinished = each.find(|(one, tied)| **tied < one.piece.count);
    unfinished.map(|(one, _)| one).or(pieces.last())
}

/// What comes next of a piece of an order.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
/// use marlinspeak::session::{NextOfOrder, next_of_order, tied};
/// use marlinspeak::shelf::OrderId;
///
/// let mut order = Order::default();
/// let rope = order.add();
/// for (field, text) in [
///     (PieceField::Leads, "3"),
///     (PieceField::Bights, "5"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     rope.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// let id = OrderId::parse("bellrope").unwrap();
/// // Nothing of it is tied or begun.
/// assert_eq!(tied(&[], &id, &read.pieces[0]), 0);
/// assert!(matches!(next_of_order(&[], &id, &read.pieces[0]), NextOfOrder::Begin(_)));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Debug)]
pub enum NextOfOrder {
    /// One is begun and waits.
    TakeUp(TieId),
    /// One is to be begun.
    Begin(Box<Tie>),
    /// All are tied.
    AllTied,
}

/// What comes next of a piece of an order, by the ties on the shelf.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
/// use marlinspeak::session::{NextOfOrder, next_of_order, tied};
/// use marlinspeak::shelf::OrderId;
///
/// let mut order = Order::default();
/// let rope = order.add();
/// for (field, text) in [
///     (PieceField::Leads, "3"),
///     (PieceField::Bights, "5"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     rope.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// let id = OrderId::parse("bellrope").unwrap();
/// // Nothing of it is tied or begun.
/// assert_eq!(tied(&[], &id, &read.pieces[0]), 0);
/// assert!(matches!(next_of_order(&[], &id, &read.pieces[0]), NextOfOrder::Begin(_)));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
pub fn next_of_order(ties: &[Tie], order: &OrderId, piece: &PieceRead) -> NextOfOrder {
    let now = crate::shelf::now();
    let begun: Vec<Shelved> = pieces_of(ties, order, piece)
        .map(|tie| Shelved::new(tie.clone(), now, false))
        .collect();
    let waiting = begun
        .iter()
        .find(|shelved| shelved.status() == TieStatus::Waiting);
    if let Some(waiting) = waiting {
        return NextOfOrder::TakeUp(waiting.tie.id().clone());
    }
    if tied(ties, order, piece) >= piece.count {
        return NextOfOrder::AllTied;
    }
    let newest = begun
        .iter()
        .filter_map(|shelved| shelved.tie.batch.as_ref())
        .max_by_key(|batch| batch.number());
    let stands = newest.and_then(|batch| batch.tube_stands);
    let plan = piece.plan.clone();
    let plan = plan.with_standing_tube(stands == Some(true));
    let first = Script::new(plan.clone(), AtOnce::default()).first();
    let mut tie = Tie::begin(plan, first);
    piece.name.clone_into(&mut tie.name);
    let mut batch = Batch::of_order(order, piece.number, piece.count);
    batch.tube_stands = stands;
    tie.batch = Some(batch);
    NextOfOrder::Begin(Box::new(tie))
}

/// What comes next of the piece of this number of a kept order, which knows from then on where in the
/// order it is. None when the order has no such piece.
///
/// ```
/// use marlinspeak::bench::Prices;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
/// use marlinspeak::session::{NextOfOrder, answer_order, next_knot};
/// use marlinspeak::shelf::{Ledger, Orders};
///
/// let folder = tempfile::tempdir().unwrap();
/// let mut order = Order { name: "boathook".to_owned(), ..Order::default() };
/// let ring = order.add();
/// for (field, text) in [
///     (PieceField::Leads, "4"),
///     (PieceField::Bights, "7"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     ring.say(field, text);
/// }
/// let kept = Orders::at(folder.path().join("orders")).keep(order).unwrap();
/// let (presets, ledger) = (Presets::default(), Ledger::default());
/// let answer = answer_order(&kept.order, &presets, &ledger, Prices::default())?;
/// let Some(NextOfOrder::Begin(tie)) = next_knot(&[], &kept, &answer, 1) else {
///     panic!("none is begun yet");
/// };
/// assert_eq!(tie.batch.unwrap().order.unwrap().name, "boathook");
/// assert!(next_knot(&[], &kept, &answer, 2).is_none());
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
pub fn next_knot(
    ties: &[Tie],
    kept: &KeptOrder,
    answer: &OrderAnswer,
    number: u16,
) -> Option<NextOfOrder> {
    let mut pieces = answer.pieces.iter().map(|one| &one.piece);
    let at = pieces.position(|piece| piece.number == number)?;
    let knots = |pieces: &[PieceAnswer]| {
        let counts = pieces.iter().map(|one| u32::from(one.piece.count));
        u16::try_from(counts.sum::<u32>()).unwrap_or(u16::MAX)
    };
    let mut next = next_of_order(ties, &kept.id, &answer.pieces[at].piece);
    if let NextOfOrder::Begin(tie) = &mut next
        && let Some(batch) = &mut tie.batch
    {
        batch.order = Some(OfOrder {
            name: kept.order.name.clone(),
            before: knots(&answer.pieces[..at]),
            knots: knots(&answer.pieces),
            on_stick: answer.stick.is_some(),
        });
    }
    Some(next)
}
