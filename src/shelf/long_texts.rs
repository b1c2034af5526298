//! How long the texts are that are kept: names and notes, and what is said of an order.

use super::order_document::StoredOrder;
use super::tie::{LONGEST_NAME, LONGEST_NOTE, cut_to};
use crate::guide::PieceField;

/// The longest weave, row by row, that any knot has is shorter.
const LONGEST_WEAVE: usize = 9999;

/// How many letters may be said for a field of a piece.
pub const fn longest_said(field: PieceField) -> usize {
    match field {
        PieceField::Name => LONGEST_NAME,
        PieceField::Weave => LONGEST_WEAVE,
        _ => LONGEST_NOTE,
    }
}

/// A text of an order that is longer than what is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LongText {
    /// Its field, as the document has it.
    pub field: &'static str,
    /// The piece it stands in, counted from 1.
    pub piece: Option<usize>,
    /// So many letters are kept.
    pub most: usize,
}

impl StoredOrder {
    /// The first text that is longer than what is kept.
    pub fn first_long(&self) -> Option<LongText> {
        let order = &self.order;
        let is_long = |text: &str, most: usize| text.chars().nth(most).is_some();
        let of_order = [
            ("name", &order.name, LONGEST_NAME),
            ("note", &order.note, LONGEST_NOTE),
            ("stick", &order.stick, LONGEST_NAME),
            ("waste", &order.waste, LONGEST_NAME),
            ("spool", &order.spool, LONGEST_NAME),
        ];
        let mut of_order = of_order.into_iter();
        let long = of_order.find(|(_, text, most)| is_long(text, *most));
        if let Some((field, _, most)) = long {
            let piece = None;
            return Some(LongText { field, piece, most });
        }
        (1..).zip(&order.pieces).find_map(|(at, piece)| {
            let mut said = piece.said();
            let (field, _) = said.find(|(field, text)| is_long(text, longest_said(*field)))?;
            Some(LongText {
                field: field.name(),
                piece: Some(at),
                most: longest_said(field),
            })
        })
    }

    /// Cuts every text to what is kept of those that come from outside; whether something was cut.
    pub(super) fn shorten(&mut self) -> bool {
        let order = &mut self.order;
        let mut is_cut = cut_to(&mut order.note, LONGEST_NOTE);
        for text in [
            &mut order.name,
            &mut order.stick,
            &mut order.waste,
            &mut order.spool,
        ] {
            is_cut |= cut_to(text, LONGEST_NAME);
        }
        for piece in &mut order.pieces {
            let said: Vec<(PieceField, String)> = piece
                .said()
                .map(|(field, text)| (field, text.to_owned()))
                .collect();
            for (field, mut text) in said {
                if cut_to(&mut text, longest_said(field)) {
                    piece.say(field, text);
                    is_cut = true;
                }
            }
        }
        is_cut
    }
}
