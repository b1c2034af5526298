//! The JSON documents of `marlinspeak order`.

use jiff::Timestamp;
use serde::Serialize;

use super::print::rounded;
use super::rigging_forms::ItemForm;
use crate::bench::{CordToBuy, Spools};
use crate::files::Fields;
use crate::guide::{Order, OrderAnswer, PieceAnswer};
use crate::shelf::{DocumentError, KeptOrder, OrderId, order_fields};

#[derive(Serialize)]
pub(super) struct ListForm {
    pub orders: Vec<KeptForm>,
    pub troubles: Vec<String>,
}

#[derive(Serialize)]
pub(super) struct KeptForm {
    id: String,
    name: String,
    note: String,
    pieces: usize,
    knots: u32,
    touched: Timestamp,
}

impl KeptForm {
    pub fn of(kept: &KeptOrder) -> Self {
        Self {
            id: kept.id.as_str().to_owned(),
            name: kept.order.name.clone(),
            note: kept.order.note.clone(),
            pieces: kept.order.pieces.len(),
            knots: kept.order.count(),
            touched: kept.touched,
        }
    }
}

/// What an order comes to, with the order itself as it may be read again.
#[derive(Serialize)]
pub(super) struct AnswerForm<'a> {
    id: Option<&'a str>,
    order: Fields,
    pieces: Vec<PieceForm<'a>>,
    to_buy: Vec<CordForm<'a>>,
    bag: Vec<ItemForm>,
    stick: Option<StickForm>,
    minutes: f64,
    /// When prices are set.
    #[serde(skip_serializing_if = "Option::is_none")]
    cost: Option<f64>,
}

#[derive(Serialize)]
struct PieceForm<'a> {
    number: u16,
    name: &'a str,
    count: u16,
    /// Of an order that is kept.
    #[serde(skip_serializing_if = "Option::is_none")]
    tied: Option<u16>,
    leads: u16,
    bights: u16,
    nested: u16,
    lands: u16,
    passes: u16,
    weave: String,
    width_mm: f64,
    cord_mm: f64,
    cords: u16,
    minutes: f64,
}

#[derive(Serialize)]
struct CordForm<'a> {
    name: Option<&'a str>,
    diameter_mm: f64,
    cuts: Vec<CutForm>,
    cord_mm: f64,
    metres: u32,
    spools: Option<u32>,
    grams: Option<f64>,
}

#[derive(Serialize)]
struct CutForm {
    pieces: u32,
    length_mm: f64,
}

#[derive(Serialize)]
struct StickForm {
    length_mm: f64,
    fits: bool,
    left_mm: f64,
    places: Vec<PlaceForm>,
}

#[derive(Serialize)]
struct PlaceForm {
    from_mm: f64,
    to_mm: f64,
}

impl<'a> AnswerForm<'a> {
    pub fn of(
        id: Option<&'a OrderId>,
        order: &Order,
        answer: &'a OrderAnswer,
        tied: &[Option<u16>],
    ) -> Result<Self, DocumentError> {
        Ok(Self {
            id: id.map(OrderId::as_str),
            order: order_fields(order)?,
            pieces: answer
                .pieces
                .iter()
                .zip(tied)
                .map(|(piece, tied)| PieceForm::of(piece, *tied))
                .collect(),
            to_buy: answer.to_buy.iter().map(CordForm::of).collect(),
            bag: answer.bag.iter().map(ItemForm::of).collect(),
            stick: answer.stick.as_ref().map(|(length, stick)| StickForm {
                length_mm: rounded(length.get(), 3),
                fits: stick.fits(),
                left_mm: rounded(stick.left, 3),
                places: stick
                    .places
                    .iter()
                    .map(|[from, to]| PlaceForm {
                        from_mm: rounded(*from, 3),
                        to_mm: rounded(*to, 3),
                    })
                    .collect(),
            }),
            minutes: rounded(answer.minutes, 1),
            cost: answer.cost.map(|cost| rounded(cost, 2)),
        })
    }
}

impl<'a> PieceForm<'a> {
    fn of(answer: &'a PieceAnswer, tied: Option<u16>) -> Self {
        let piece = &answer.piece;
        let knot = piece.plan.knot();
        Self {
            number: piece.number,
            name: &piece.name,
            count: piece.count,
            tied,
            leads: knot.leads(),
            bights: knot.bights(),
            nested: knot.nested(),
            lands: knot.lattice().lands(),
            passes: piece.plan.laying().passes(),
            weave: knot.weave().to_string(),
            width_mm: rounded(answer.width.get(), 3),
            cord_mm: rounded(answer.cord, 1),
            cords: answer.cords,
            minutes: rounded(answer.minutes, 1),
        }
    }
}

impl<'a> CordForm<'a> {
    fn of(cord: &'a CordToBuy) -> Self {
        Self {
            name: cord.cord.name.as_deref(),
            diameter_mm: rounded(cord.cord.diameter.get(), 3),
            cuts: cord
                .cuts
                .iter()
                .map(|(pieces, length)| CutForm {
                    pieces: *pieces,
                    length_mm: rounded(length.get(), 1),
                })
                .collect(),
            cord_mm: rounded(cord.bare, 1),
            metres: cord.metres,
            spools: match cord.spools {
                Some(Spools::Enough(spools)) => Some(spools),
                _ => None,
            },
            grams: cord.grams.map(|grams| rounded(grams, 1)),
        }
    }
}
