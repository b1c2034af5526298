//! The orders as a face shows them: a list of them, one of them, a piece of it; worked by presses.

use super::batch::NextOfOrder;
use super::order_jobs::{OrderChange, OrderJob, OrderOutcome, OrderReport, OrderStock};
use super::order_page::{OrderPage, Row, piece};
use crate::guide::{OrderEntry, OrderPiece};
use crate::pedal::{Intent, Press};
use crate::shelf::{OrderId, ShelfError, Tie, TieId};
use crate::words::{Sentence, Spoken, Words};

/// The orders, and where in them the tyer is.
///
/// ```
/// use marlinspeak::pedal::{Intent, Press};
/// use marlinspeak::session::{OrderAction, OrderBook};
/// use marlinspeak::words::Words;
///
/// let (mut book, words) = (OrderBook::default(), Words::english());
/// assert!(book.is_empty());
/// let action = book.press(&Press::default(), Some(Intent::Leave), &words);
/// assert!(matches!(action, OrderAction::Leave));
/// ```
#[derive(Debug, Default)]
pub struct OrderBook {
    stock: OrderStock,
    /// The piece whose page it is.
    piece: Option<u16>,
    focus: usize,
    /// The field that is typed into, and what stands there.
    typing: Option<(OrderEntry, String)>,
    /// Whether the page was said since the book was opened.
    is_said: bool,
    /// Another line was clicked while one was typed into: it is its turn once that one is kept.
    is_clicked: bool,
    /// What the last job came to.
    report: Option<Sentence>,
    /// What was deleted last, an order or a piece of the open one.
    deleted: Option<OrderId>,
    removed: Option<(OrderId, OrderPiece)>,
}

/// What a press comes to.
///
/// ```
/// use marlinspeak::pedal::{Intent, Press};
/// use marlinspeak::session::{OrderAction, OrderBook};
/// use marlinspeak::words::Words;
///
/// let (mut book, words) = (OrderBook::default(), Words::english());
/// assert!(book.is_empty());
/// let action = book.press(&Press::default(), Some(Intent::Leave), &words);
/// assert!(matches!(action, OrderAction::Leave));
/// ```
#[derive(Debug)]
pub enum OrderAction {
    /// Nothing.
    None,
    /// Say this.
    Say(Spoken),
    /// Say this and put the focus of the window on the line.
    Ask(Spoken),
    /// Have this done on the disk.
    Do(OrderJob),
    /// Begin a tie.
    Begin(Box<Tie>),
    /// Take a tie up.
    TakeUp(TieId),
    /// Go back to the start screen.
    Leave,
}

impl OrderBook {
    /// The job that opens it.
    pub const fn opening() -> OrderJob {
        OrderJob::Look(None)
    }

    /// What is typed into the line, when one is open.
    pub fn typed(&self) -> Option<&str> {
        self.typing.as_ref().map(|(_, text)| text.as_str())
    }

    /// The line was changed.
    pub fn type_in(&mut self, text: String) {
        if let Some((_, typed)) = &mut self.typing {
            *typed = text;
        }
    }

    /// The label of the line that is typed into.
    pub fn asked(&self, words: &Words) -> Option<Sentence> {
        let (entry, _) = self.typing.as_ref()?;
        Some(words.order_label(*entry))
    }

    /// Nothing of what was asked for can be done: this is shown.
    pub fn refuse(&mut self, why: Sentence) {
        self.report = Some(why);
    }

    /// What the last job came to.
    pub const fn report(&self) -> Option<&Sentence> {
        self.report.as_ref()
    }

    /// The line in the focus, by its place.
    pub const fn focus(&self) -> usize {
        self.focus
    }

    /// Whether an order is open, and whether a piece of it is.
    pub const fn depth(&self) -> (bool, bool) {
        (self.stock.open.is_some(), self.piece.is_some())
    }

    /// Whether there is anything in the list.
    pub fn is_empty(&self) -> bool {
        self.stock.orders.is_empty()
    }

    fn page(&self) -> OrderPage<'_> {
        OrderPage {
            stock: &self.stock,
            piece: self.piece,
        }
    }

    /// The heading of the page.
    pub fn heading(&self, words: &Words) -> Sentence {
        self.page().heading(words)
    }

    /// Every line of the page.
    pub fn lines(&self, words: &Words) -> Vec<Sentence> {
        self.page().lines(words)
    }

    fn row(&self, words: &Words) -> Option<Row> {
        self.page().rows(words).get(self.focus).copied()
    }

    /// The line in the focus, as it is said.
    pub fn say_here(&self, words: &Words) -> Spoken {
        let line = self.lines(words).into_iter().nth(self.focus);
        line.map(Spoken::from).unwrap_or_default()
    }

    /// The page, as it is said when it comes up.
    pub fn say_page(&self, words: &Words) -> Spoken {
        let keys = match self.depth() {
            (false, _) => "order-keys-list",
            (true, false) => "order-keys-order",
            (true, true) => "order-keys-piece",
        };
        Spoken::from(self.heading(words))
            .then(words.notice(keys, &[]).spoken())
            .then(&self.say_here(words))
    }

    /// Takes in what came of a job, and gives what follows.
    ///
    /// # Errors
    /// Why it was not done, or why the orders cannot be read.
    pub fn take_in(
        &mut self,
        report: OrderReport,
        words: &Words,
    ) -> Result<OrderAction, ShelfError> {
        let was_open = self.open_id();
        let is_first = !std::mem::replace(&mut self.is_said, true);
        let is_clicked = std::mem::take(&mut self.is_clicked);
        let stock = report.stock.map(|stock| self.stock = stock);
        let is_other = was_open != self.open_id();
        if is_other {
            (self.piece, self.focus, self.typing) = (None, 0, None);
        }
        if let Some(change) = report.refused {
            self.give_back(change);
        }
        // What was done is done, whether or not the orders can be read after it.
        let outcome = report.outcome?;
        self.report = None;
        match outcome {
            OrderOutcome::Looked | OrderOutcome::Added(_) if is_other || is_first => {
                stock?;
                return Ok(OrderAction::Say(self.say_page(words)));
            }
            // What is asked of a new piece stands on its page; a line that is typed into stays.
            OrderOutcome::Added(number) if stock.is_ok() && self.typing.is_none() => {
                (self.piece, self.focus) = (Some(number), 0);
                return Ok(OrderAction::Say(self.say_page(words)));
            }
            OrderOutcome::Looked if stock.is_ok() && is_clicked && self.typing.is_none() => {
                return Ok(self.go_on(words));
            }
            OrderOutcome::Looked | OrderOutcome::Added(_) => {}
            OrderOutcome::Removed(id, piece) => self.removed = Some((id, piece)),
            OrderOutcome::PutBack => self.removed = None,
            OrderOutcome::NoPiece => {
                let is_there = |number| {
                    self.stock
                        .open
                        .as_ref()
                        .and_then(|open| piece(open, number))
                };
                self.piece = self.piece.filter(|number| is_there(*number).is_some());
                self.report = Some(words.notice("order-piece-gone", &[]));
            }
            OrderOutcome::Deleted(id) => {
                self.deleted = Some(id);
                self.report = Some(words.notice("order-is-deleted", &[]));
            }
            OrderOutcome::Undone => {
                self.deleted = None;
                self.report = Some(words.notice("order-is-back", &[]));
            }
            OrderOutcome::Next(Some(NextOfOrder::Begin(tie))) => {
                return Ok(OrderAction::Begin(tie));
            }
            OrderOutcome::Next(Some(NextOfOrder::TakeUp(id))) => {
                return Ok(OrderAction::TakeUp(id));
            }
            OrderOutcome::Next(Some(NextOfOrder::AllTied)) => {
                self.report = Some(words.notice("order-piece-done", &[]));
            }
            OrderOutcome::Next(None) => {
                let error = self.stock.open.as_ref();
                let error = error.and_then(|open| open.answer.as_ref().err());
                self.report = error.map(|error| words.order_error(error));
            }
        }
        stock?;
        let last = self.page().rows(words).len().saturating_sub(1);
        self.focus = self.focus.min(last);
        let report = self.report.clone().map(Spoken::from).unwrap_or_default();
        Ok(OrderAction::Say(report.then(&self.say_here(words))))
    }

    fn open_id(&self) -> Option<OrderId> {
        self.stock.open.as_ref().map(|open| open.kept.id.clone())
    }

    /// What was typed and could not be kept stands in the line again, unless another is typed into.
    fn give_back(&mut self, change: OrderChange) {
        let typed = match change {
            OrderChange::Field(field, text) => (OrderEntry::Of(field), text),
            OrderChange::PieceField(number, field, text) => {
                (OrderEntry::Piece(number, field), text)
            }
            OrderChange::AddPiece | OrderChange::RemovePiece(_) | OrderChange::PutBack(_) => return,
        };
        if self.stock.open.is_some() {
            self.typing.get_or_insert(typed);
        }
    }

    /// Does what a press asks for that the line did not take.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> OrderAction {
        let key = press.key.to_lowercase();
        if press.is_repeat && !matches!(key.as_str(), "arrowup" | "arrowdown") {
            return OrderAction::None;
        }
        if self.typing.is_some() {
            return match (key.as_str(), intent) {
                ("enter", _) => self.enter(),
                (_, Some(Intent::Leave)) => {
                    self.typing = None;
                    OrderAction::Say(self.say_here(words))
                }
                _ => OrderAction::None,
            };
        }
        match (key.as_str(), intent) {
            ("arrowdown" | "tab", _) => self.go_to(self.focus.saturating_add(1), words),
            ("arrowup" | "shift+tab", _) => self.go_to(self.focus.saturating_sub(1), words),
            ("home", _) => self.go_to(0, words),
            ("end", _) => self.go_to(usize::MAX, words),
            ("n", _) if self.stock.open.is_none() => OrderAction::Do(OrderJob::New),
            ("a", _) => self.change(OrderChange::AddPiece),
            ("b", _) => self.begin(words),
            ("u", _) => self.undo(words),
            ("delete", _) => self.delete(words),
            (_, Some(Intent::Next)) => self.go_on(words),
            (_, Some(Intent::Again)) => OrderAction::Say(self.say_page(words)),
            (_, Some(Intent::Leave)) => self.leave(words),
            _ => OrderAction::None,
        }
    }

    /// A line was clicked: it gets the focus, and what next means for it is done, once what was typed
    /// into another is kept.
    pub fn click(&mut self, line: usize, words: &Words) -> OrderAction {
        self.focus = line;
        match self.typing.take() {
            Some((entry, text)) if text.trim() != self.page().text_of(entry) => {
                self.is_clicked = true;
                self.keep(entry, &text)
            }
            _ => self.go_on(words),
        }
    }

    fn go_to(&mut self, line: usize, words: &Words) -> OrderAction {
        let last = self.page().rows(words).len().saturating_sub(1);
        self.focus = line.min(last);
        self.report = None;
        OrderAction::Say(if self.row(words).is_none() {
            self.say_page(words)
        } else {
            self.say_here(words)
        })
    }

    fn go_on(&mut self, words: &Words) -> OrderAction {
        self.report = None;
        match self.row(words) {
            None => OrderAction::Say(self.say_page(words)),
            Some(Row::Order(at)) => match self.stock.orders.get(at) {
                Some(kept) => OrderAction::Do(OrderJob::Look(Some(kept.id.clone()))),
                None => OrderAction::None,
            },
            Some(Row::Entry(entry)) => {
                self.typing = Some((entry, self.page().text_of(entry)));
                OrderAction::Ask(words.order_label(entry).into())
            }
            Some(Row::Piece(number)) => {
                (self.piece, self.focus) = (Some(number), 0);
                OrderAction::Say(self.say_page(words))
            }
            Some(Row::Told(_)) => OrderAction::Say(self.say_here(words)),
        }
    }

    fn change(&self, change: OrderChange) -> OrderAction {
        match &self.stock.open {
            Some(open) => OrderAction::Do(OrderJob::Change(open.kept.id.clone(), change)),
            None => OrderAction::None,
        }
    }

    /// The line that was typed is kept.
    pub fn enter(&mut self) -> OrderAction {
        match self.typing.take() {
            Some((entry, text)) => self.keep(entry, &text),
            None => OrderAction::None,
        }
    }

    fn keep(&self, entry: OrderEntry, text: &str) -> OrderAction {
        let text = text.trim().to_owned();
        self.change(match entry {
            OrderEntry::Of(field) => OrderChange::Field(field, text),
            OrderEntry::Piece(number, field) => OrderChange::PieceField(number, field, text),
        })
    }

    /// The next knot of the piece in the focus, or of the first of which some are still to be tied.
    fn begin(&self, words: &Words) -> OrderAction {
        let Some(open) = &self.stock.open else {
            return OrderAction::None;
        };
        let here = match (self.piece, self.row(words)) {
            (Some(number), _) | (None, Some(Row::Piece(number))) => Some(number),
            _ => {
                let answers = open.answer.iter().flat_map(|answer| &answer.pieces);
                let mut left = answers.zip(&open.tied);
                let left = left.find(|(one, tied)| **tied < one.piece.count);
                let first = open.kept.order.pieces.first().map(|piece| piece.number);
                left.map(|(one, _)| one.piece.number).or(first)
            }
        };
        match here {
            Some(number) => OrderAction::Do(OrderJob::Next(open.kept.id.clone(), number)),
            None => OrderAction::Say(words.notice("order-no-pieces", &[]).into()),
        }
    }

    fn delete(&self, words: &Words) -> OrderAction {
        match (self.row(words), &self.stock.open) {
            (Some(Row::Order(at)), _) => match self.stock.orders.get(at) {
                Some(kept) => OrderAction::Do(OrderJob::Delete(kept.id.clone())),
                None => OrderAction::None,
            },
            (Some(Row::Piece(number)), Some(_)) => self.change(OrderChange::RemovePiece(number)),
            _ => OrderAction::None,
        }
    }

    fn undo(&self, words: &Words) -> OrderAction {
        if let Some(id) = self.open_id() {
            return match self.removed.clone() {
                Some((of, piece)) if of == id => self.change(OrderChange::PutBack(piece)),
                _ => OrderAction::Say(words.notice("order-nothing-deleted", &[]).into()),
            };
        }
        match self.deleted.clone() {
            Some(id) => OrderAction::Do(OrderJob::Undo(id)),
            None => OrderAction::Say(words.notice("order-nothing-deleted", &[]).into()),
        }
    }

    fn leave(&mut self, words: &Words) -> OrderAction {
        if let Some(number) = self.piece.take() {
            let rows = self.page().rows(words);
            let here = rows.iter().position(|row| *row == Row::Piece(number));
            self.focus = here.unwrap_or(0);
            return OrderAction::Say(self.say_page(words));
        }
        if self.stock.open.is_some() {
            return OrderAction::Do(OrderJob::Look(None));
        }
        OrderAction::Leave
    }
}
