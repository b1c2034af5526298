//! Words of orders: what they come to, and what can be wrong with them.

use std::path::Path;

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::harmless::shown_name;
use super::labour::{cost, work_time};
use super::lengths::{along, cut, cut_of, fine, sum};
use super::rounding::Length;
use super::selectors::Selector;
use super::{Sentence, Words};
use crate::bench::{CordToBuy, LengthError, Millimetres, Spools, Stick};
use crate::guide::{
    CordsError, Order, OrderAnswer, OrderEntry, OrderError, OrderFault, OrderPiece, PieceAnswer,
    PieceField,
};
use crate::shelf::LongText;

impl Words {
    /// What an order is called, and how many knots it has.
    pub fn order_heading(&self, name: &str, count: u32) -> Sentence {
        let mut args = named(name);
        args.set("count", count);
        self.sentence("order-heading", &args)
    }

    /// A piece of an order.
    pub fn order_piece(&self, answer: &PieceAnswer) -> Sentence {
        let mut args = named(&answer.piece.name);
        args.set("count", answer.piece.count);
        args.set("knot", self.tie_line(&answer.piece.plan));
        args.set("width", fine(answer.width));
        args.set("length", cut_of(answer.cord));
        args.set("cords", answer.cords);
        args.set("time", work_time(answer.minutes));
        self.sentence("order-piece", &args)
    }

    /// How many of a piece are tied.
    pub fn order_piece_tied(&self, tied: u16, count: u16) -> Sentence {
        let args = fluent_args! { "tied" => tied, "count" => count };
        self.sentence("order-piece-tied", &args)
    }

    /// A piece with how many of it are tied already.
    pub fn order_piece_now(&self, answer: &PieceAnswer, tied: u16) -> Sentence {
        let piece = self.order_piece(answer);
        if tied == 0 {
            return piece;
        }
        piece.then(&self.order_piece_tied(tied, answer.piece.count))
    }

    /// Everything that an order comes to besides its pieces, a line each, and whether it names what
    /// follows.
    pub fn order_told(&self, answer: &OrderAnswer) -> Vec<(bool, Sentence)> {
        let headed = |lines: Vec<Sentence>| {
            let lines = lines.into_iter().enumerate();
            lines.map(|(nth, line)| (nth == 0, line))
        };
        let mut to_buy = vec![self.notice("order-to-buy", &[])];
        for cord in &answer.to_buy {
            to_buy.extend(self.order_cord(cord, answer.spool));
        }
        let mut bag = vec![self.notice("order-bag", &[])];
        bag.extend(answer.bag.iter().map(|item| self.kit_sentence(item)));
        std::iter::once((false, self.order_time(answer)))
            .chain(headed(to_buy))
            .chain(headed(bag))
            .chain(headed(self.order_stick(answer)))
            .collect()
    }

    /// The heading of the list of orders.
    pub fn order_list_heading(&self, orders: usize) -> Sentence {
        self.sentence("orders-heading", &fluent_args! { "orders" => orders })
    }

    /// The heading of the page of a piece.
    pub fn order_piece_heading(&self, number: u16, name: &str) -> Sentence {
        let mut args = named(name);
        args.set("number", number);
        self.sentence("order-piece-heading", &args)
    }

    /// What a field of an order asks for.
    pub fn order_label(&self, entry: OrderEntry) -> Sentence {
        self.sentence(
            "order-label",
            &fluent_args! { "field" => entry_name(entry) },
        )
    }

    /// The same when it is typed, with how what has two lengths is written.
    pub fn order_asked(&self, entry: OrderEntry) -> Sentence {
        let label = self.order_label(entry).shown().to_owned();
        self.sentence(
            "order-asked",
            &fluent_args! { "label" => label, "field" => entry_name(entry) },
        )
    }

    /// A field of an order, and what was said for it.
    pub fn order_entry(&self, entry: OrderEntry, value: &str) -> Sentence {
        let label = self.order_label(entry);
        let value = match (entry, value.trim()) {
            (OrderEntry::Piece(_, field), "yes") if field.is_choice() => {
                self.text("plan-slides", &fluent_args! { "slides" => "place" })
            }
            (OrderEntry::Piece(_, field), "no") if field.is_choice() => {
                self.text("plan-slides", &fluent_args! { "slides" => "on" })
            }
            _ => value.to_owned(),
        };
        let args = fluent_args! {
            "label" => label.shown().to_owned(), "value" => shown_name(&value),
            "filled" => (!value.trim().is_empty()).selector(),
        };
        self.sentence("order-entry", &args)
    }

    /// A cord on the list of what to buy, with `spool` of it on a spool, and what it is cut into.
    pub fn order_cord(&self, cord: &CordToBuy, spool: Option<Millimetres>) -> Vec<Sentence> {
        let spools = match cord.spools {
            Some(Spools::Enough(spools)) => spools,
            _ => 0,
        };
        let of = spool.map_or(FluentValue::from("none"), |spool| sum(spool.get()).into());
        let args = fluent_args! {
            "name" => cord.cord.name.as_deref().map_or_else(|| "none".to_owned(), shown_name),
            "diameter" => fine(cord.cord.diameter),
            "length" => cut_of(f64::from(cord.metres) * 1000.0),
            "spools" => spools, "spool" => of,
        };
        let mut lines = vec![self.sentence("order-cord", &args)];
        lines.extend(cord.cuts.iter().map(|(pieces, length)| {
            let args = fluent_args! { "pieces" => *pieces, "length" => cut(*length) };
            self.sentence("order-cord-cut", &args)
        }));
        lines.extend(cord.grams.map(|grams| {
            let is_heavy = grams >= 1000.0;
            let weight = if is_heavy {
                (grams / 100.0).ceil() / 10.0
            } else {
                grams.ceil()
            };
            let args = fluent_args! { "heavy" => is_heavy.selector(), "weight" => weight };
            self.sentence("order-cord-weight", &args)
        }));
        if let (Some(Spools::TooShort { longest }), Some(spool)) = (cord.spools, spool) {
            let args = fluent_args! { "spool" => sum(spool.get()), "length" => cut(longest) };
            lines.push(self.sentence("order-cord-spool-short", &args));
        }
        lines
    }

    /// Where the knots sit on a stick, a line each, and what stays bare or lacks.
    pub fn order_stick(&self, answer: &OrderAnswer) -> Vec<Sentence> {
        let Some((length, stick)) = &answer.stick else {
            return Vec::new();
        };
        let heading = fluent_args! { "length" => fine(*length) };
        let mut lines = vec![self.sentence("order-stick", &heading)];
        if !stick.fits() {
            let args = fluent_args! { "length" => fine(*length), "left" => bare(-stick.left) };
            lines.push(self.sentence("order-stick-short", &args));
            return lines;
        }
        let names = answer.pieces.iter().flat_map(|one| {
            let name = one.piece.name.as_str();
            std::iter::repeat_n(name, usize::from(one.piece.count))
        });
        lines.extend((1_u32..).zip(stick.places.iter().zip(names)).map(
            |(number, ([from, to], name))| {
                let mut args = named(name);
                args.set("number", number);
                args.set("from", bare(*from));
                args.set("to", bare(*to));
                self.sentence("order-stick-place", &args)
            },
        ));
        lines.push(self.stick_left(stick));
        lines
    }

    fn stick_left(&self, stick: &Stick) -> Sentence {
        let args = fluent_args! { "left" => bare(stick.left) };
        self.sentence("order-stick-left", &args)
    }

    /// How long all of it takes, and what it costs.
    pub fn order_time(&self, answer: &OrderAnswer) -> Sentence {
        let pace = if answer.is_own_pace { "own" } else { "usual" };
        let args = fluent_args! {
            "time" => work_time(answer.minutes), "pace" => pace, "cost" => cost(answer.cost),
        };
        self.sentence("order-time", &args)
    }

    /// The sentence for what was said of an order and cannot be used, with the piece it is about.
    pub fn order_error(&self, error: &OrderError) -> Sentence {
        let fault = self.order_fault(&error.what);
        match &error.piece {
            None => fault,
            Some((number, name)) => {
                let mut args = named(name);
                args.set("number", *number);
                self.sentence("order-in-piece", &args).then(&fault)
            }
        }
    }

    fn order_fault(&self, fault: &OrderFault) -> Sentence {
        match fault {
            OrderFault::NoPieces => self.notice("order-no-pieces", &[]),
            OrderFault::TooManyPieces { given } => {
                let args = fluent_args! { "given" => *given, "most" => Order::MOST_PIECES };
                self.sentence("order-too-many", &args)
            }
            OrderFault::Count { given } => {
                let args = fluent_args! { "given" => given.as_str(), "most" => OrderPiece::MOST };
                self.sentence("order-count", &args)
            }
            OrderFault::Length { of, error } => {
                let (kind, given) = match error {
                    LengthError::Unreadable { given } => ("unreadable", given),
                    LengthError::UnknownUnit { given, .. } => ("unit", given),
                    LengthError::ThousandsOrDecimals { given } => ("comma", given),
                    LengthError::BareFraction { given } => ("fraction", given),
                    LengthError::NotPositive { given } => ("nought", given),
                    LengthError::OutOfRange { given } => ("range", given),
                };
                let asking: &str = of.into();
                let args = fluent_args! {
                    "asking" => asking, "fault" => kind, "given" => given.as_str(),
                };
                self.sentence("order-length", &args)
            }
            OrderFault::Choice {
                field,
                given,
                allowed,
            } => {
                let args = fluent_args! {
                    "option" => field.name(), "given" => given.as_str(),
                    "allowed" => allowed.join(", "),
                    "example" => allowed.first().copied().unwrap_or_default(),
                };
                self.sentence("choice-unknown", &args)
            }
            OrderFault::CordNames { given } => self.notice("cords-unreadable", &[("given", given)]),
            OrderFault::Knot(error) => self.knot_error(error),
            OrderFault::Cords(error) => self.cord_names_error(error),
            OrderFault::NotOnStick => self.notice("order-not-on-stick", &[]),
            OrderFault::Setup(error) => self.setup_error(error),
            OrderFault::Rig(error) => self.rig_error(error),
            OrderFault::Bench(error) => self.bench_error(error),
        }
    }

    fn cord_names_error(&self, error: &CordsError) -> Sentence {
        self.sentence("cords-do-not-go", &self.cords_args(error))
    }

    /// The sentence for a field of the JSON form that means nothing, and the piece it stands in.
    pub fn order_field_unknown(&self, given: &str, piece: Option<usize>) -> String {
        let known: Vec<&str> = match piece {
            None => ["name", "note", "stick", "waste", "spool", "pieces"].to_vec(),
            Some(_) => PieceField::ALL.into_iter().map(PieceField::name).collect(),
        };
        let args = fluent_args! {
            "given" => given, "piece" => piece.unwrap_or(0), "known" => known.join(", "),
        };
        self.text("order-field-unknown", &args)
    }

    /// The sentence for a text of an order that is longer than what is kept.
    pub fn order_text_long(&self, long: LongText) -> String {
        let args = fluent_args! {
            "field" => long.field, "piece" => long.piece.unwrap_or(0), "most" => long.most,
        };
        self.text("order-text-long", &args)
    }

    /// The sentence for a piece that an order does not have.
    pub fn order_piece_none(&self, given: &str, order: &Order) -> Sentence {
        let known: Vec<String> = order
            .pieces
            .iter()
            .map(|piece| piece.number.to_string())
            .collect();
        let args = fluent_args! { "given" => given, "known" => known.join(", ") };
        self.sentence("order-piece-none", &args)
    }

    /// That there are no orders in a folder.
    pub fn orders_none(&self, folder: &Path) -> Sentence {
        self.notice("orders-none", &[("folder", &folder.display().to_string())])
    }

    /// How many orders a backup holds.
    pub(super) fn orders_backed_up(&self, orders: usize) -> Sentence {
        self.sentence("orders-backed-up", &fluent_args! { "orders" => orders })
    }

    /// How many orders came from a backup.
    pub(super) fn orders_came(&self, orders: usize) -> Sentence {
        self.sentence("orders-came", &fluent_args! { "orders" => orders })
    }
}

/// What a message selects a field by.
fn entry_name(entry: OrderEntry) -> &'static str {
    match entry {
        OrderEntry::Of(field) => field.into(),
        OrderEntry::Piece(_, PieceField::Name) => "piece-name",
        OrderEntry::Piece(_, field) => field.name(),
    }
}

/// A name that may be empty.
fn named(name: &str) -> FluentArgs<'static> {
    fluent_args! {
        "name" => shown_name(name), "named" => (!name.trim().is_empty()).selector(),
    }
}

/// A length along a stick, which may be nothing.
fn bare(millimetres: f64) -> Length {
    along(millimetres.max(0.0))
}
