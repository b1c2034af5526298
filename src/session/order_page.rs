//! What stands on a page of the book of orders, line by line.

use super::order_jobs::{OpenOrder, OrderStock};
use crate::guide::{
    OrderEntry, OrderError, OrderFault, OrderField, OrderPiece, PieceField, SetupField,
};
use crate::words::{Sentence, Words};

/// What a line of the page is, and so what a press of next does there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Row {
    /// An order, by its place.
    Order(usize),
    /// A field.
    Entry(OrderEntry),
    /// A piece, by its number.
    Piece(u16),
    /// What is wrong, and the field where that is put right.
    Mend(OrderEntry),
    /// What is wrong with a piece, in a field that its page does not have.
    MendPiece(u16),
    /// That there is no piece yet.
    NoPieces,
    /// The name of what follows.
    Heading,
    /// A line of what the order comes to.
    Fact,
}

/// A line of a page of the book of orders, as it is shown and said.
///
/// ```
/// use marlinspeak::bench::Prices;
/// use marlinspeak::session::{OrderBook, OrderJob, do_order_job};
/// use marlinspeak::shelf::Shelf;
/// use marlinspeak::words::Words;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path().join("ties")).unwrap();
/// let (mut book, words) = (OrderBook::default(), Words::english());
/// let new = do_order_job(&shelf, Prices::default(), OrderJob::New).untroubled().unwrap();
/// book.take_in(new, &words).unwrap();
/// assert_eq!(book.lines()[0].text.shown(), "Name of the order: not said");
/// assert!(!book.lines()[0].is_fact());
/// ```
#[derive(Clone, Debug)]
pub struct OrderLine {
    /// What it says.
    pub text: Sentence,
    pub(super) row: Row,
}

impl OrderLine {
    /// Whether there is nothing to open or to change in it.
    pub const fn is_fact(&self) -> bool {
        matches!(self.row, Row::Fact | Row::Heading)
    }

    /// Whether it names what follows.
    pub const fn is_heading(&self) -> bool {
        matches!(self.row, Row::Heading)
    }
}

/// What is asked of a piece on its page; the rarer fields are said in the JSON form.
const ASKED: [PieceField; 15] = [
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
    PieceField::Setup(SetupField::Ball),
    PieceField::Setup(SetupField::Mat),
    PieceField::Setup(SetupField::InPlace),
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
    pub fn lines(self, words: &Words) -> Vec<OrderLine> {
        let line = |(row, text)| OrderLine { text, row };
        let field = |entry| {
            (
                Row::Entry(entry),
                words.order_entry(entry, &self.text_of(entry)),
            )
        };
        match (&self.stock.open, self.piece) {
            (None, _) => {
                let orders = self.stock.orders.iter().enumerate();
                let orders = orders.map(|(at, kept)| {
                    let heading = words.order_heading(&kept.order.name, kept.order.count());
                    line((Row::Order(at), heading))
                });
                orders.collect()
            }
            (Some(open), None) => {
                let pieces = open.kept.order.pieces.iter();
                let pieces = pieces.map(|piece| {
                    (
                        Row::Piece(piece.number),
                        self.piece_line(piece.number, words),
                    )
                });
                let rest = [OrderField::Stick, OrderField::Spool, OrderField::Waste];
                std::iter::once(field(OrderEntry::Of(OrderField::Name)))
                    .chain(pieces)
                    .chain(rest.map(OrderEntry::Of).map(field))
                    .chain(told(open, words))
                    .map(line)
                    .collect()
            }
            (Some(open), Some(number)) => {
                let piece = piece(open, number);
                let asked = ASKED
                    .into_iter()
                    .filter(|asked| piece.is_none_or(|piece| applies(piece, *asked)));
                let fields = asked.map(|asked| field(OrderEntry::Piece(number, asked)));
                // On the page of a piece only what is wrong.
                let wrong = open.answer.as_ref().err();
                let wrong = wrong.map(|error| told_wrong(error, words));
                fields.chain(wrong).map(line).collect()
            }
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

/// What the open order comes to, or why nobody can tell, a line each.
fn told(open: &OpenOrder, words: &Words) -> Vec<(Row, Sentence)> {
    match &open.answer {
        Ok(answer) => {
            let lines = words.order_told(answer).into_iter();
            lines
                .map(|(is_heading, text)| {
                    let row = if is_heading { Row::Heading } else { Row::Fact };
                    (row, text)
                })
                .collect()
        }
        Err(error) => vec![told_wrong(error, words)],
    }
}

/// What is wrong with an order, and where it leads.
fn told_wrong(error: &OrderError, words: &Words) -> (Row, Sentence) {
    let row = match (&error.what, error.entry()) {
        (OrderFault::NoPieces, _) => Row::NoPieces,
        (_, Some(entry)) if is_asked(entry) => Row::Mend(entry),
        (_, Some(OrderEntry::Piece(number, _))) => Row::MendPiece(number),
        _ => Row::Fact,
    };
    (row, words.order_error(error))
}

/// Whether a field stands on a page.
fn is_asked(entry: OrderEntry) -> bool {
    match entry {
        OrderEntry::Of(_) => true,
        OrderEntry::Piece(_, field) => ASKED.contains(&field),
    }
}

/// Whether a field is one of what the piece covers. One of which something is said stands there all the
/// same: else nobody could take it back.
fn applies(piece: &OrderPiece, field: PieceField) -> bool {
    let says = |field| !piece.text(PieceField::Setup(field)).is_empty();
    let is_round = says(SetupField::Object) || says(SetupField::Girth);
    let (is_ball, is_mat) = (says(SetupField::Ball), says(SetupField::Mat));
    let place = PieceField::Setup(SetupField::InPlace);
    let is_in_place = is_mat || piece.text(place) == "yes";
    let is_one_of_it = match field {
        PieceField::Setup(SetupField::Ball) => !is_round && !is_mat,
        PieceField::Setup(SetupField::Mat) => !is_round && !is_ball,
        PieceField::Setup(SetupField::InPlace) => !is_mat,
        PieceField::Setup(SetupField::Tube | SetupField::Rows) => !is_in_place,
        // Of what has an end all is covered, and it is no part of a stick.
        PieceField::Setup(SetupField::Object | SetupField::Cover) | PieceField::Gap => {
            !is_ball && !is_mat
        }
        _ => true,
    };
    is_one_of_it || !piece.text(field).is_empty()
}

/// The piece of this number.
pub(super) fn piece(open: &OpenOrder, number: u16) -> Option<&OrderPiece> {
    let mut pieces = open.kept.order.pieces.iter();
    pieces.find(|piece| piece.number == number)
}
