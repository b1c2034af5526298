//! Pins for messages: a number, or where bights are nested a number with its row.
//!
//! Like a length, such a pin is one argument of a message and is told when the message is looked up,
//! because only then is known whether it is to be heard or seen.

use std::borrow::Cow;

use fluent::types::FluentType;
use fluent::{FluentArgs, FluentValue, fluent_args};

use super::Words;
use super::channel::Channel;
use super::spoken_messages::SpokenMessage;
use crate::knot::{Lattice, Pin, PinRow};

/// A pin that must be told from those of other rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct PinOfRow {
    number: u16,
    row: PinRow,
}

/// A pin as a message is told it.
pub(super) fn named(pin: Pin) -> FluentValue<'static> {
    if pin.row.is_one_of_several() {
        FluentValue::Custom(Box::new(PinOfRow {
            number: pin.number,
            row: pin.row,
        }))
    } else {
        pin.number.into()
    }
}

/// Bights nested at each rim, and the top row in which the first cord lands: 0 for the innermost,
/// which needs no word.
pub(super) fn set_nested(args: &mut FluentArgs<'_>, lattice: Lattice) {
    let is_usual = lattice.lands() == lattice.nested();
    args.set("nested", lattice.nested());
    args.set("lands", if is_usual { 0 } else { lattice.lands() });
}

/// The pin of a row that an argument is, if it is one.
pub(super) fn pin_of(value: &FluentValue) -> Option<PinOfRow> {
    match value {
        FluentValue::Custom(custom) => (**custom).as_any().downcast_ref().copied(),
        _ => None,
    }
}

impl Words {
    /// The pin with its row: "3 of the outer row".
    pub(super) fn pin(&self, pin: PinOfRow, channel: Channel) -> String {
        let args = fluent_args! {
            "number" => pin.number, "row" => pin.row.number,
            "rows" => if pin.row.of == 2 { "two" } else { "more" },
        };
        match channel {
            Channel::Ear => self.spoken(SpokenMessage::PinOfRowSay, &args).into(),
            Channel::Eye => self.text("pin-of-row", &args),
        }
    }
}

impl FluentType for PinOfRow {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(*self)
    }

    /// Never reached by way of [`Words::text`], which tells pins before anything else.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        format!("{} ({})", self.number, self.row.number).into()
    }

    fn as_string_threadsafe(
        &self,
        _: &intl_memoizer::concurrent::IntlLangMemoizer,
    ) -> Cow<'static, str> {
        format!("{} ({})", self.number, self.row.number).into()
    }
}
