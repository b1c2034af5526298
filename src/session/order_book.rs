//! The orders as a face shows them: a list of them, one of them, a piece of it; worked by presses.

use super::job_page::JobPage;
use super::order_jobs::{OrderJob, OrderStock};
use super::order_page::{OrderLine, OrderPage, Row};
use super::order_typing::within;
use crate::guide::{OrderEntry, OrderPiece};
use crate::shelf::{OrderId, Tie, TieId};
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
    pub(super) stock: OrderStock,
    /// The page that was asked for last: a job that leads to another comes late.
    pub(super) wanted: Option<JobPage>,
    /// Whether the orders were read.
    pub(super) reading: BookReading,
    /// The piece whose page it is.
    pub(super) piece: Option<u16>,
    pub(super) focus: usize,
    /// The page in words: there may be hundreds of lines, and they are looked up once a change.
    heading: Option<Sentence>,
    lines: Vec<OrderLine>,
    /// The field that is typed into, and what stands there.
    pub(super) typing: Option<(OrderEntry, String)>,
    /// Whether the page was said since the book was opened.
    pub(super) is_said: bool,
    /// Another line was clicked while one was typed into: it is its turn once that one is kept.
    pub(super) is_clicked: bool,
    /// What the last job came to.
    pub(super) report: Option<Sentence>,
    /// What was deleted last, an order or a piece of the open one.
    pub(super) deleted: Option<OrderId>,
    pub(super) removed: Option<(OrderId, OrderPiece)>,
}

/// Whether the orders were read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum BookReading {
    /// They are being read.
    #[default]
    Begun,
    /// They were.
    Done,
    /// They could not be.
    Failed,
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
        if let Some((entry, typed)) = &mut self.typing {
            *typed = within(*entry, text);
        }
    }

    /// What is asked for in the line that is typed into.
    pub fn asked(&self, words: &Words) -> Option<Sentence> {
        let (entry, _) = self.typing.as_ref()?;
        Some(words.order_asked(*entry))
    }

    /// Nothing of what was asked for can be done: this is shown.
    pub fn refuse(&mut self, why: Sentence) {
        self.reading = BookReading::Failed;
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

    /// Whether the orders were read, and there are none.
    pub fn has_none(&self) -> bool {
        self.reading == BookReading::Done && self.is_empty()
    }

    /// Whether something that was deleted on this page can come back.
    pub fn can_undo(&self) -> bool {
        match self.open_id() {
            Some(id) => self.removed.as_ref().is_some_and(|(of, _)| *of == id),
            None => self.deleted.is_some(),
        }
    }

    pub(super) fn page(&self) -> OrderPage<'_> {
        OrderPage {
            stock: &self.stock,
            piece: self.piece,
        }
    }

    /// Puts the page into words anew.
    pub(super) fn reword(&mut self, words: &Words) {
        self.lines = self.page().lines(words);
        self.heading = Some(self.page().heading(words));
        self.focus = self.focus.min(self.lines.len().saturating_sub(1));
    }

    /// Turns to the page of a piece, or from it to that of its order.
    pub(super) fn turn_to(&mut self, piece: Option<u16>, words: &Words) {
        (self.piece, self.focus) = (piece, 0);
        self.reword(words);
    }

    /// The heading of the page.
    pub fn heading(&self, words: &Words) -> Sentence {
        let unread = match self.reading {
            BookReading::Begun => "orders-being-read",
            BookReading::Done | BookReading::Failed => "orders-not-read",
        };
        let heading = self.heading.clone();
        heading.unwrap_or_else(|| words.notice(unread, &[]))
    }

    /// Every line of the page.
    pub fn lines(&self) -> &[OrderLine] {
        &self.lines
    }

    pub(super) fn row(&self) -> Option<Row> {
        self.lines.get(self.focus).map(|line| line.row)
    }

    /// Puts the page into words anew and stays on its line, though lines above it may have come or gone.
    pub(super) fn reword_here(&mut self, words: &Words) {
        let here = self.row();
        self.reword(words);
        if let Some(place) = here.and_then(|row| self.place_of(row)) {
            self.focus = place;
        }
    }

    /// The place of this line on the page.
    pub(super) fn place_of(&self, row: Row) -> Option<usize> {
        self.lines.iter().position(|line| line.row == row)
    }

    /// The line in the focus, as it is said.
    pub fn say_here(&self) -> Spoken {
        let line = self.lines.get(self.focus);
        line.map(|line| line.text.clone().into())
            .unwrap_or_default()
    }

    /// The page, as it is said when it comes up.
    pub fn say_page(&self, words: &Words) -> Spoken {
        let keys = match self.depth() {
            (false, _) if self.is_empty() => "orders-empty",
            (false, _) => "order-keys-list",
            (true, false) => "order-keys-order",
            (true, true) => "order-keys-piece",
        };
        Spoken::from(self.heading(words))
            .then(words.notice(keys, &[]).spoken())
            .then(&self.say_here())
    }

    /// The same as it is said again: where a line is typed into, that one.
    pub fn say_again(&self, words: &Words) -> Spoken {
        match &self.typing {
            Some((entry, typed)) => {
                Spoken::from(words.order_label(*entry)).then(&words.say_typed(typed))
            }
            None => self.say_page(words),
        }
    }

    pub(super) fn open_id(&self) -> Option<OrderId> {
        self.stock.open.as_ref().map(|open| open.kept.id.clone())
    }
}
