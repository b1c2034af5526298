//! What came of a job, taken into the book of orders.

use super::batch::NextOfOrder;
use super::order_book::{BookReading, OrderAction, OrderBook};
use super::order_change::{OrderChange, OrderOutcome};
use super::order_jobs::OrderReport;
use super::order_page::piece;
use crate::guide::OrderEntry;
use crate::shelf::ShelfError;
use crate::words::{Spoken, Words};

impl OrderBook {
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
        let (is_up, stock) = self.show(&report.page, report.stock);
        self.reading = match &stock {
            Ok(()) => BookReading::Done,
            Err(_) => BookReading::Failed,
        };
        let is_other = was_open != self.open_id();
        if is_other {
            (self.piece, self.focus, self.typing) = (None, 0, None);
        }
        if let Some(change) = report.refused.filter(|_| is_up) {
            self.give_back(change);
        }
        match stock {
            Ok(()) if is_other => self.reword(words),
            Ok(()) => self.reword_here(words),
            Err(_) => {}
        }
        // What was done is done, whether or not the orders can be read after it.
        let outcome = report.outcome?;
        if !is_up && matches!(outcome, OrderOutcome::Looked | OrderOutcome::Added(_)) {
            // The tyer is elsewhere by now.
            return stock.map(|()| OrderAction::None);
        }
        self.report = None;
        match outcome {
            OrderOutcome::Looked | OrderOutcome::Added(_) if is_other || is_first => {
                stock?;
                return Ok(OrderAction::Say(self.say_page(words)));
            }
            // What is asked of a new piece stands on its page; a line that is typed into stays.
            OrderOutcome::Added(number) if stock.is_ok() && self.typing.is_none() => {
                self.turn_to(Some(number), words);
                return Ok(OrderAction::Say(self.say_page(words)));
            }
            OrderOutcome::Looked if stock.is_ok() && is_clicked && self.typing.is_none() => {
                return Ok(self.go_on(words));
            }
            outcome => {
                if let Some(action) = self.report_of(outcome, words) {
                    return Ok(action);
                }
            }
        }
        stock?;
        let report = self.report.clone().map(Spoken::from).unwrap_or_default();
        Ok(OrderAction::Say(report.then(&self.say_here())))
    }

    /// What is reported of what was done; where it leads to a tie, how.
    fn report_of(&mut self, outcome: OrderOutcome, words: &Words) -> Option<OrderAction> {
        let id = match outcome {
            OrderOutcome::Looked | OrderOutcome::Added(_) => return None,
            OrderOutcome::Next(Some(NextOfOrder::Begin(tie))) => {
                return Some(OrderAction::Begin(tie));
            }
            OrderOutcome::Next(Some(NextOfOrder::TakeUp(id))) => {
                return Some(OrderAction::TakeUp(id));
            }
            OrderOutcome::Next(None) => {
                let error = self.stock.open.as_ref();
                let error = error.and_then(|open| open.answer.as_ref().err());
                self.report = error.map(|error| words.order_error(error));
                return None;
            }
            OrderOutcome::Next(Some(NextOfOrder::AllTied)) => "order-piece-done",
            OrderOutcome::Removed(id, piece) => {
                self.removed = Some((id, piece));
                "order-is-deleted"
            }
            OrderOutcome::PutBack => {
                self.removed = None;
                "order-is-back"
            }
            OrderOutcome::NoPiece => {
                let open = self.stock.open.as_ref();
                let is_there =
                    |number: &u16| open.is_some_and(|open| piece(open, *number).is_some());
                let still = self.piece.filter(is_there);
                if still != self.piece {
                    self.turn_to(still, words);
                }
                "order-piece-gone"
            }
            OrderOutcome::Deleted(id) => {
                self.deleted = Some(id);
                "order-is-deleted"
            }
            OrderOutcome::Undone => {
                self.deleted = None;
                "order-is-back"
            }
        };
        self.report = Some(words.notice(id, &[]));
        None
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
}
