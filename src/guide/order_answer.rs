//! What an order comes to: what to buy, what to pack, hours, money, places on a stick.

use super::{Labour, OrderRead, PieceRead, Rigging};
use crate::bench::{
    CordCut, CordToBuy, KitItem, Millimetres, Prices, Stick, StickKnot, TyingPace, one_bag, to_buy,
};

/// What a piece of an order comes to.
///
/// ```
/// use marlinspeak::bench::{Correction, Prices};
/// use marlinspeak::guide::{Order, OrderAnswer, PieceField, Presets, SetupField};
///
/// let mut order = Order { stick: "1m".to_owned(), ..Order::default() };
/// let ring = order.add();
/// for (field, text) in [
///     (PieceField::Count, "3"),
///     (PieceField::Leads, "4"),
///     (PieceField::Bights, "7"),
///     (PieceField::Gap, "20mm"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     ring.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// let answer = OrderAnswer::of(read, None, Prices::default());
/// // For one of them: all three take three times as long.
/// assert!((answer.minutes - 3.0 * answer.pieces[0].minutes).abs() < 1e-9);
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct PieceAnswer {
    /// The piece.
    pub piece: PieceRead,
    /// Finished width of one.
    pub width: Millimetres,
    /// Cord to cut for one, in millimetres, all its cords together.
    pub cord: f64,
    /// How many cords that is.
    pub cords: u16,
    /// Minutes for one.
    pub minutes: f64,
}

/// What an order comes to.
///
/// ```
/// use marlinspeak::bench::{Correction, Prices};
/// use marlinspeak::guide::{Order, OrderAnswer, PieceField, Presets, SetupField};
///
/// let mut order = Order::default();
/// for count in ["10", "3"] {
///     let ring = order.add();
///     for (field, text) in [
///         (PieceField::Count, count),
///         (PieceField::Leads, "4"),
///         (PieceField::Bights, "7"),
///         (PieceField::Setup(SetupField::Cord), "4mm"),
///         (PieceField::Setup(SetupField::Tube), "45mm"),
///     ] {
///         ring.say(field, text);
///     }
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// let answer = OrderAnswer::of(read, None, Prices::default());
/// // One cord on the list, cut in thirteen pieces of one length.
/// assert_eq!(answer.to_buy.len(), 1);
/// assert_eq!(answer.to_buy[0].cuts[0].0, 13);
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct OrderAnswer {
    /// Each piece.
    pub pieces: Vec<PieceAnswer>,
    /// The cords to buy.
    pub to_buy: Vec<CordToBuy>,
    /// Cord on a spool, when it was said.
    pub spool: Option<Millimetres>,
    /// What is packed, without the cord.
    pub bag: Vec<KitItem>,
    /// Minutes for all of it.
    pub minutes: f64,
    /// Whether they are at the tyer's own pace, not at [`TyingPace::USUAL`].
    pub is_own_pace: bool,
    /// In the tyer's own money, when prices are set: the metres that are bought, and the work.
    pub cost: Option<f64>,
    /// The stick that all sit on, and the places on it.
    pub stick: Option<(Millimetres, Stick)>,
}

impl OrderAnswer {
    /// What an order comes to at the tyer's own pace, when that is known, and prices.
    pub fn of(order: OrderRead, own_pace: Option<TyingPace>, prices: Prices) -> Self {
        let mut cuts = Vec::new();
        let mut bags = Vec::new();
        let mut pieces = Vec::new();
        for piece in order.pieces {
            // The plan of a piece was rigged when it was read.
            let (Some(rigging), Ok(Some(rig))) = (Rigging::of(&piece.plan), piece.plan.rig())
            else {
                continue;
            };
            cuts.extend(rigging.items().iter().filter_map(|item| match item {
                KitItem::Cord {
                    cord,
                    pieces,
                    length,
                    ..
                } => Some(CordCut {
                    cord: cord.clone(),
                    pieces: u32::from(*pieces) * u32::from(piece.count),
                    length: *length,
                }),
                _ => None,
            }));
            bags.push(rigging.items().to_vec());
            pieces.push(PieceAnswer {
                width: rig.shape.width,
                cord: rigging.to_cut(),
                cords: rigging.items().iter().map(cords_of).sum(),
                minutes: Labour::of(&piece.plan, own_pace, Prices::default()).minutes,
                piece,
            });
        }
        let list = to_buy(cuts, order.waste, order.spool);
        let minutes = pieces
            .iter()
            .map(|one| one.minutes * f64::from(one.piece.count))
            .sum();
        let metres: f64 = list.iter().map(|cord| f64::from(cord.metres)).sum();
        let of_cord = prices.metre.map(|price| price * metres);
        let of_work = prices.cost_of_work(minutes);
        let cost = (of_cord.is_some() || of_work.is_some())
            .then(|| of_cord.unwrap_or(0.0) + of_work.unwrap_or(0.0));
        let stick = order.stick.map(|length| {
            let knots: Vec<StickKnot> = pieces
                .iter()
                .flat_map(|one| {
                    let knot = StickKnot {
                        width: one.width,
                        gap: one.piece.gap,
                    };
                    std::iter::repeat_n(knot, usize::from(one.piece.count))
                })
                .collect();
            (length, Stick::of(length, &knots))
        });
        Self {
            bag: one_bag(bags),
            pieces,
            to_buy: list,
            spool: order.spool,
            minutes,
            is_own_pace: own_pace.is_some(),
            cost,
            stick,
        }
    }

    /// How many are to be tied in all.
    pub fn count(&self) -> u32 {
        let counts = self.pieces.iter().map(|one| u32::from(one.piece.count));
        counts.sum()
    }
}

/// How many pieces of cord a thing of the bag is.
const fn cords_of(item: &KitItem) -> u16 {
    match item {
        KitItem::Cord { pieces, .. } => *pieces,
        _ => 0,
    }
}
