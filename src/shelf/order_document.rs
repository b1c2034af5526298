//! The document of an order: what was said, field by field.
//!
//! It is what `marlinspeak order` reads and writes too, so a field stands in it as text or as a
//! number, whichever its writer likes better.

use std::collections::BTreeMap;

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use super::{DocumentError, clock};
use crate::files::{self, Document, Fields, FormatError, Unknown, Within};
use crate::guide::{Order, OrderPiece, PieceField};

/// The version that is written, and the newest that is read.
pub const ORDER_VERSION: u64 = 1;

/// Fields of pieces that are not known are kept with the number of their piece.
const WITHIN: Within = Within {
    deep: 0,
    names: &[],
};

/// More pieces than this are no order that anybody wrote.
const MOST_PIECES: usize = 999;

/// An order as it stands on disk.
#[derive(Clone, Debug, PartialEq)]
pub struct StoredOrder {
    /// What was said.
    pub order: Order,
    /// When it was changed last.
    pub touched: Timestamp,
    /// Fields of the document that this version does not know. They are kept when the order is written
    /// again.
    pub unknown: Unknown,
    /// The same of each piece, by its number.
    pub unknown_of_pieces: BTreeMap<u16, Unknown>,
}

impl StoredOrder {
    /// An order that is not on disk yet.
    pub fn new(order: Order) -> Self {
        Self {
            order,
            touched: clock::now(),
            unknown: Unknown::default(),
            unknown_of_pieces: BTreeMap::new(),
        }
    }

    /// The first field that this version does not know, and the piece it stands in, counted from 1.
    pub fn first_unknown(&self) -> Option<(&str, Option<usize>)> {
        if let Some(field) = self.unknown.first() {
            return Some((field, None));
        }
        let numbers = self.order.pieces.iter().map(|piece| piece.number);
        (1..).zip(numbers).find_map(|(at, number)| {
            let unknown = self.unknown_of_pieces.get(&number)?;
            Some((unknown.first()?, Some(at)))
        })
    }
}

/// A text that may stand as a number, and yes and no as what they are.
#[derive(Default, Serialize, Deserialize)]
#[serde(untagged)]
enum Said {
    Text(String),
    Number(serde_json::Number),
    Choice(bool),
    #[default]
    Nothing,
}

impl Said {
    fn of(text: &str) -> Self {
        Self::Text(text.to_owned())
    }

    fn into_text(self) -> String {
        match self {
            Self::Text(text) => text,
            Self::Number(number) => number.to_string(),
            Self::Choice(true) => "yes".to_owned(),
            Self::Choice(false) => "no".to_owned(),
            Self::Nothing => String::new(),
        }
    }

    const fn is_nothing(&self) -> bool {
        match self {
            Self::Nothing => true,
            Self::Text(text) => text.is_empty(),
            Self::Number(_) | Self::Choice(_) => false,
        }
    }
}

#[derive(Serialize, Deserialize)]
struct OrderDocument {
    version: u64,
    #[serde(default)]
    name: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
    #[serde(default, skip_serializing_if = "Said::is_nothing")]
    stick: Said,
    #[serde(default, skip_serializing_if = "Said::is_nothing")]
    waste: Said,
    #[serde(default, skip_serializing_if = "Said::is_nothing")]
    spool: Said,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    touched: Option<Timestamp>,
    #[serde(default, skip_serializing_if = "is_none_gone")]
    highest_gone: u16,
    #[serde(default)]
    pieces: Vec<Fields>,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde hands every field over by reference"
)]
const fn is_none_gone(highest: &u16) -> bool {
    *highest == 0
}

/// Reads the document of an order.
///
/// # Errors
/// The first thing that is wrong with it.
pub fn read_order(document: &[u8]) -> Result<StoredOrder, DocumentError> {
    let (_, fields) = files::open(document, ORDER_VERSION)?;
    let document: OrderDocument = files::decode(&fields)?;
    let mut order = Order {
        name: document.name,
        note: document.note,
        stick: document.stick.into_text(),
        waste: document.waste.into_text(),
        spool: document.spool.into_text(),
        pieces: Vec::new(),
        highest_gone: document.highest_gone,
    };
    let mut unknown_of_pieces = BTreeMap::new();
    if document.pieces.len() > MOST_PIECES {
        let why = format!("{} pieces", document.pieces.len());
        return Err(DocumentError::shape("pieces", why));
    }
    let numbers: Vec<Option<u16>> = document.pieces.iter().map(number_of).collect();
    for (index, (fields, number)) in document.pieces.into_iter().zip(&numbers).enumerate() {
        // A piece written by hand has no number of its own, and gets one that nobody has.
        let is_first = |number: &u16| !numbers[..index].contains(&Some(*number));
        let number = number.filter(is_first).unwrap_or_else(|| {
            let has = |number: &u16| {
                let mut pieces = order.pieces.iter();
                numbers.contains(&Some(*number))
                    || pieces.any(|piece: &OrderPiece| piece.number == *number)
            };
            let is_free = |number: &u16| !has(number);
            let fresh = (1..=u16::MAX).filter(|number| *number > order.highest_gone);
            let free = fresh.chain(1..=u16::MAX).find(is_free);
            free.unwrap_or(u16::MAX)
        });
        let (piece, unknown) = read_piece(number, fields, index)?;
        if !unknown.is_empty() {
            unknown_of_pieces.insert(number, unknown.into());
        }
        order.pieces.push(piece);
    }
    let mut stored = StoredOrder {
        order,
        touched: document.touched.unwrap_or(Timestamp::UNIX_EPOCH),
        unknown: Unknown::default(),
        unknown_of_pieces,
    };
    stored.unknown = Unknown::of(fields, &known_fields(&stored)?, WITHIN);
    for said in ["stick", "waste", "spool", "note", "touched", "highest_gone"] {
        // One that says nothing is known all the same.
        stored.unknown.remove(said);
    }
    Ok(stored)
}

fn number_of(piece: &Fields) -> Option<u16> {
    let number = piece.get("number")?.as_u64()?;
    u16::try_from(number).ok().filter(|number| *number > 0)
}

fn read_piece(
    number: u16,
    fields: Fields,
    index: usize,
) -> Result<(OrderPiece, Fields), DocumentError> {
    let mut piece = OrderPiece::numbered(number);
    let mut unknown = Fields::new();
    for (name, value) in fields {
        let Some(field) = PieceField::named(&name) else {
            if name != "number" {
                unknown.insert(name, value);
            }
            continue;
        };
        match serde_json::from_value::<Said>(value) {
            Ok(said) => piece.say(field, said.into_text().trim()),
            Err(error) => {
                let field = format!("pieces[{index}].{name}");
                return Err(DocumentError::shape(field, error.to_string()));
            }
        }
    }
    Ok((piece, unknown))
}

/// Reads an order as a person or another program hands it over: a document that need not say its
/// version.
///
/// # Errors
/// The first thing that is wrong with it.
pub fn read_order_said(document: &[u8]) -> Result<StoredOrder, DocumentError> {
    match read_order(document) {
        Err(DocumentError::Format(FormatError::NoVersion)) => {
            let Value::Object(mut fields) = files::parse(document)? else {
                return Err(FormatError::NotAnObject.into());
            };
            fields.insert("version".to_owned(), ORDER_VERSION.into());
            // Who leaves out the version has not counted a checksum either.
            fields.remove("checksum");
            read_order(Value::Object(fields).to_string().as_bytes())
        }
        read => read,
    }
}

/// Writes the document of an order, and reads it again to be sure that it says the same.
///
/// # Errors
/// The [`DocumentError`] that would make it unreadable.
pub fn write_order(stored: &StoredOrder) -> Result<Vec<u8>, DocumentError> {
    let text = files::seal(stored.unknown.added_to(known_fields(stored)?))?;
    match read_order(&text) {
        Ok(read) if read == *stored => Ok(text),
        Ok(_) | Err(DocumentError::Format(FormatError::NotJson { .. })) => {
            Err(FormatError::NotTheSame.into())
        }
        Err(error) => Err(error),
    }
}

/// The fields of an order as it is handed over: without a checksum, and without when it was touched.
///
/// # Errors
/// [`FormatError`] when JSON has no form for it.
pub fn order_fields(order: &Order) -> Result<Fields, DocumentError> {
    let mut fields = known_fields(&StoredOrder::new(order.clone()))?;
    fields.remove("touched");
    Ok(fields)
}

fn known_fields(stored: &StoredOrder) -> Result<Fields, FormatError> {
    let StoredOrder {
        order,
        touched,
        unknown_of_pieces,
        ..
    } = stored;
    let pieces = order.pieces.iter().map(|piece| {
        let fields = piece_fields(piece);
        match unknown_of_pieces.get(&piece.number) {
            Some(unknown) => unknown.added_to(fields),
            None => fields,
        }
    });
    files::encode(&OrderDocument {
        version: ORDER_VERSION,
        name: order.name.clone(),
        note: order.note.clone(),
        stick: Said::of(&order.stick),
        waste: Said::of(&order.waste),
        spool: Said::of(&order.spool),
        touched: (*touched != Timestamp::UNIX_EPOCH).then_some(*touched),
        highest_gone: order.highest_gone,
        pieces: pieces.collect(),
    })
}

/// A whole number stands as one where that is what was said, and yes or no where it is a choice.
fn piece_fields(piece: &OrderPiece) -> Fields {
    let mut fields = Map::new();
    fields.insert("number".to_owned(), piece.number.into());
    for (field, text) in piece.said() {
        let number = text.parse::<u16>().ok().filter(|_| field.is_count());
        let value = match (number, text) {
            (Some(number), text) if number.to_string() == text => number.into(),
            (_, "yes") if field.is_choice() => true.into(),
            (_, "no") if field.is_choice() => false.into(),
            _ => text.into(),
        };
        fields.insert(field.name().to_owned(), value);
    }
    fields
}

impl Document for StoredOrder {
    type Error = DocumentError;

    fn read(document: &[u8]) -> Result<Self, DocumentError> {
        read_order(document)
    }
}
