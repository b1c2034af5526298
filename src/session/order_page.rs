//! What stands on a page of the book of orders, line by line.

use super::order_jobs::{OpenOrder, OrderStock};
use crate::guide::{OrderEntry, OrderField, OrderPiece, PieceField, SetupField};
use crate::words::{Sentence, Words};

/// A line of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Row {
    /// An order, by its place.
    Order(usize),
    /// A field.
    Entry(OrderEntry),
    /// A piece, by its number.
    Piece(u16),
    /// A line of what the order comes to, by its place.
    Told(usize),
}

/// What is asked of a piece on its page; the rarer fields are said in the JSON form.
const ASKED: [PieceField; 12] = [
    PieceField::Name,
    PieceField::Count,
    PieceField::Leads,
    PieceField::Bights,
    PieceField::Passes,
    PieceField::Weave,
    PieceField::Setup(SetupField::Cord),
    PieceField::Setup(SetupField::Tube),
    PieceField::Setup(SetupField::Rows),
    PieceField::Setup(SetupField::Object),
    PieceField::Setup(SetupField::Cover),
    PieceField::Gap,
];

/// The list of the orders, one of them, or a piece of it.
#[derive(Clone, Copy)]
pub(super) struct OrderPage<'a> {
    /// All orders, and the open one.
    pub stock: &'a OrderStock,
    /// The piece whose page it is.
    pub piece: Option<u16>,
}

impl OrderPage<'_> {
    /// The heading of the page.
    pub fn heading(self, words: &Words) -> Sentence {
        match (&self.stock.open, self.piece) {
            (None, _) => words.order_list_heading(self.stock.orders.len()),
            (Some(open), None) => {
                words.order_heading(&open.kept.order.name, open.kept.order.count())
            }
            (Some(open), Some(number)) => {
                let name = piece(open, number).map_or("", |piece| piece.text(PieceField::Name));
                words.order_piece_heading(number, name)
            }
        }
    }

    /// Every line of the page.
    pub fn lines(self, words: &Words) -> Vec<Sentence> {
        let told = self.told(words);
        self.numbered(told.len())
            .into_iter()
            .map(|row| self.line(row, &told, words))
            .collect()
    }

    /// What the open order comes to, or why nobody can tell, a line each.
    fn told(self, words: &Words) -> Vec<Sentence> {
        match (&self.stock.open, self.piece) {
            (Some(open), None) => match &open.answer {
                Ok(answer) => words.order_told(answer),
                Err(error) => vec![words.order_error(error)],
            },
            // On the page of a piece only what is wrong with it.
            (Some(open), Some(_)) => match &open.answer {
                Ok(_) => Vec::new(),
                Err(error) => vec![words.order_error(error)],
            },
            (None, _) => Vec::new(),
        }
    }

    /// What every line of the page is.
    pub fn rows(self, words: &Words) -> Vec<Row> {
        self.numbered(self.told(words).len())
    }

    fn numbered(self, told: usize) -> Vec<Row> {
        let told = (0..told).map(Row::Told);
        match (&self.stock.open, self.piece) {
            (None, _) => (0..self.stock.orders.len()).map(Row::Order).collect(),
            (Some(open), None) => {
                let field = |field| Row::Entry(OrderEntry::Of(field));
                let pieces = open.kept.order.pieces.iter();
                [field(OrderField::Name)]
                    .into_iter()
                    .chain(pieces.map(|piece| Row::Piece(piece.number)))
                    .chain([OrderField::Stick, OrderField::Spool, OrderField::Waste].map(field))
                    .chain(told)
                    .collect()
            }
            (Some(_), Some(number)) => {
                let entry = |field| Row::Entry(OrderEntry::Piece(number, field));
                ASKED.into_iter().map(entry).chain(told).collect()
            }
        }
    }

    fn line(self, row: Row, told: &[Sentence], words: &Words) -> Sentence {
        match row {
            Row::Order(at) => self
                .stock
                .orders
                .get(at)
                .map_or_else(Sentence::default, |kept| {
                    words.order_heading(&kept.order.name, kept.order.count())
                }),
            Row::Entry(entry) => words.order_entry(entry, &self.text_of(entry)),
            Row::Piece(number) => self.piece_line(number, words),
            Row::Told(at) => told.get(at).cloned().unwrap_or_default(),
        }
    }

    fn piece_line(self, number: u16, words: &Words) -> Sentence {
        let Some(open) = &self.stock.open else {
            return Sentence::default();
        };
        let answers = open.answer.iter().flat_map(|answer| &answer.pieces);
        let answered = answers.zip(&open.tied);
        let found = answered
            .into_iter()
            .find(|(one, _)| one.piece.number == number);
        if let Some((answer, tied)) = found {
            return words.order_piece_now(answer, *tied);
        }
        let name = piece(open, number).map_or("", |piece| piece.text(PieceField::Name));
        words.order_piece_heading(number, name)
    }

    /// What was said for a field.
    pub fn text_of(self, entry: OrderEntry) -> String {
        let Some(open) = &self.stock.open else {
            return String::new();
        };
        let order = &open.kept.order;
        match entry {
            OrderEntry::Of(OrderField::Name) => order.name.clone(),
            OrderEntry::Of(OrderField::Stick) => order.stick.clone(),
            OrderEntry::Of(OrderField::Spool) => order.spool.clone(),
            OrderEntry::Of(OrderField::Waste) => order.waste.clone(),
            OrderEntry::Piece(number, field) => {
                piece(open, number).map_or_else(String::new, |piece| piece.text(field).to_owned())
            }
        }
    }
}

/// The piece of this number.
pub(super) fn piece(open: &OpenOrder, number: u16) -> Option<&OrderPiece> {
    let mut pieces = open.kept.order.pieces.iter();
    pieces.find(|piece| piece.number == number)
}
