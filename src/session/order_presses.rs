//! What presses in the book of orders come to.

use super::order_book::{OrderAction, OrderBook};
use super::order_change::OrderChange;
use super::order_jobs::OrderJob;
use super::order_page::Row;
use super::order_typing::within;
use crate::guide::{OrderEntry, PieceField};
use crate::pedal::{Intent, Press};
use crate::words::Words;

impl OrderBook {
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
                    OrderAction::Say(self.say_here())
                }
                _ => OrderAction::None,
            };
        }
        match (key.as_str(), intent) {
            ("arrowdown" | "tab", _) => self.go_to(self.focus.saturating_add(1), words),
            ("arrowup" | "shift+tab", _) => self.go_to(self.focus.saturating_sub(1), words),
            ("home", _) => self.go_to(0, words),
            ("end", _) => self.go_to(usize::MAX, words),
            ("n", _) if self.stock.open.is_none() => self.lead(OrderJob::New),
            ("a", _) => self.change(OrderChange::AddPiece),
            ("b", _) => self.begin(words),
            ("u", _) => self.undo(words),
            ("delete", _) => self.delete(),
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
        self.focus = line.min(self.lines().len().saturating_sub(1));
        self.report = None;
        OrderAction::Say(if self.row().is_none() {
            self.say_page(words)
        } else {
            self.say_here()
        })
    }

    pub(super) fn go_on(&mut self, words: &Words) -> OrderAction {
        self.report = None;
        match self.row() {
            None => OrderAction::Say(self.say_page(words)),
            Some(Row::Order(at)) => match self.stock.orders.get(at) {
                Some(kept) => self.lead(OrderJob::Look(Some(kept.id.clone()))),
                None => OrderAction::None,
            },
            Some(Row::Entry(OrderEntry::Piece(number, field))) if field.is_choice() => {
                self.choose(number, field)
            }
            Some(Row::Entry(entry)) => self.ask(entry, words),
            Some(Row::Mend(entry)) => self.mend(entry, words),
            Some(Row::NoPieces) => self.change(OrderChange::AddPiece),
            Some(Row::Piece(number) | Row::MendPiece(number)) => {
                self.turn_to(Some(number), words);
                OrderAction::Say(self.say_page(words))
            }
            Some(Row::Fact | Row::Heading) => OrderAction::Say(self.say_here()),
        }
    }

    /// What a field says is typed anew.
    fn ask(&mut self, entry: OrderEntry, words: &Words) -> OrderAction {
        self.typing = Some((entry, within(entry, self.page().text_of(entry))));
        OrderAction::Ask(words.order_asked(entry).into())
    }

    /// Yes becomes no, and no yes: nothing is typed there.
    fn choose(&self, number: u16, field: PieceField) -> OrderAction {
        let said = self.page().text_of(OrderEntry::Piece(number, field));
        let other = if said == "yes" { "" } else { "yes" };
        self.change(OrderChange::PieceField(number, field, other.to_owned()))
    }

    /// Turns to the field that is wrong or was not filled in, and has it typed.
    fn mend(&mut self, entry: OrderEntry, words: &Words) -> OrderAction {
        self.turn_to(
            match entry {
                OrderEntry::Of(_) => None,
                OrderEntry::Piece(number, _) => Some(number),
            },
            words,
        );
        self.focus = self.place_of(Row::Entry(entry)).unwrap_or(0);
        match entry {
            OrderEntry::Piece(number, field) if field.is_choice() => self.choose(number, field),
            _ => self.ask(entry, words),
        }
    }

    /// Has a job done that leads to another page.
    fn lead(&mut self, job: OrderJob) -> OrderAction {
        self.wanted = Some(job.page());
        OrderAction::Do(job)
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
        let here = match (self.piece, self.row()) {
            (Some(number), _) | (None, Some(Row::Piece(number))) => Some(number),
            _ => open.next_piece(),
        };
        match here {
            Some(number) => OrderAction::Do(OrderJob::Next(open.kept.id.clone(), number)),
            None => OrderAction::Say(words.notice("order-no-pieces", &[]).into()),
        }
    }

    fn delete(&self) -> OrderAction {
        match (self.row(), &self.stock.open) {
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
        if let Some(number) = self.piece {
            self.turn_to(None, words);
            self.focus = self.place_of(Row::Piece(number)).unwrap_or(0);
            return OrderAction::Say(self.say_page(words));
        }
        match self.open_id() {
            Some(id) => self.lead(OrderJob::Close(id)),
            None => OrderAction::Leave,
        }
    }
}
