//! The document of a tie: its fields, its versions and its checksum.
//!
//! The types here say what stands in the file and nothing else; [`Tie`] is what the program
//! works with. A document is read in this order: size, JSON, version, checksum, migration,
//! shape, range. A checksum is optional, so that a document may be written by hand.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use super::stored_place::StoredPlace;
use super::tie::Unknown;
use super::{Chosen, Fault, Tie, TieId, parts};
use crate::knot::{Hand, Knot, Laying, Order, Side, Weave};

/// The version that is written, and the newest that is read.
pub const VERSION: u64 = MIGRATIONS.len() as u64;

/// The largest document that is read or written, in bytes.
pub const LARGEST_TIE: u64 = 1 << 20;

/// What turns a document of version *n* into one of version *n* + 1, at index *n*.
const MIGRATIONS: [fn(&mut Map<String, Value>); 1] = [from_0_to_1];

#[derive(Serialize, Deserialize)]
struct Document {
    version: u64,
    #[serde(default)]
    id: String,
    #[serde(default)]
    name: String,
    #[serde(default)]
    note: String,
    knot: KnotPart,
    place: StoredPlace,
    begun: Timestamp,
    touched: Timestamp,
    #[serde(flatten)]
    extras: Map<String, Value>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    checksum: Option<String>,
}

#[derive(Serialize, Deserialize)]
struct KnotPart {
    leads: u16,
    bights: u16,
    passes: u16,
    weave: String,
    side: SidePart,
    hand: SidePart,
    order: OrderPart,
    #[serde(flatten)]
    unknown: Map<String, Value>,
}

#[derive(Clone, Copy, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
enum SidePart {
    Right,
    Left,
}

#[derive(Clone, Copy, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum OrderPart {
    PassByPass,
    StrandByStrand,
}

/// Reads the document of a tie. An id that no tie can have is replaced by a new one.
///
/// # Errors
/// The [`Fault`] that makes it unreadable.
pub fn read_tie(document: &[u8]) -> Result<Tie, Fault> {
    let bytes = document.len() as u64;
    if bytes > LARGEST_TIE {
        return Err(Fault::TooLarge {
            bytes,
            limit: LARGEST_TIE,
        });
    }
    tie_from(json(document)?)
}

/// Reads JSON, with or without the mark that some editors put before the first byte.
pub(super) fn json(text: &[u8]) -> Result<Value, Fault> {
    let text = text.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(text);
    serde_json::from_slice(text).map_err(|error| Fault::NotJson {
        why: error.to_string(),
    })
}

/// Reads the document of a tie from its JSON.
pub(super) fn tie_from(document: Value) -> Result<Tie, Fault> {
    let Value::Object(mut fields) = document else {
        return Err(shape("the document is not an object"));
    };
    let version = version_of(&fields, VERSION)?;
    unseal(&mut fields)?;
    for migrate in &MIGRATIONS[usize::try_from(version).unwrap_or(MIGRATIONS.len())..] {
        migrate(&mut fields);
    }
    let document: Document =
        serde_json::from_value(Value::Object(fields)).map_err(|error| shape(&error.to_string()))?;
    document.into_tie()
}

/// The version a document names, when it is not newer than `known`.
pub(super) fn version_of(fields: &Map<String, Value>, known: u64) -> Result<u64, Fault> {
    match fields.get("version").and_then(Value::as_u64) {
        None => Err(shape("`version` is not a whole number")),
        Some(version) if version > known => Err(Fault::Newer { version, known }),
        Some(version) => Ok(version),
    }
}

/// Checks a document against its checksum, if it carries one, and takes that off.
pub(super) fn unseal(fields: &mut Map<String, Value>) -> Result<(), Fault> {
    if has_checksum(fields) {
        check(fields)?;
        fields.remove("checksum");
    }
    Ok(())
}

/// A document as text, with its checksum.
pub(super) fn sealed(mut fields: Map<String, Value>) -> Result<Vec<u8>, serde_json::Error> {
    let checksum = checksum(&fields);
    fields.insert("checksum".to_owned(), checksum.into());
    let mut text = serde_json::to_vec_pretty(&fields)?;
    text.push(b'\n');
    Ok(text)
}

/// Whether the document carries a checksum at all.
pub(super) fn has_checksum(fields: &Map<String, Value>) -> bool {
    fields.contains_key("checksum")
}

pub(super) fn check(fields: &Map<String, Value>) -> Result<(), Fault> {
    let Some(stored) = fields.get("checksum").and_then(Value::as_str) else {
        return Err(shape("`checksum` is not text"));
    };
    let computed = checksum(fields);
    if stored == computed {
        Ok(())
    } else {
        Err(Fault::Checksum {
            stored: stored.to_owned(),
            computed,
        })
    }
}

/// The CRC-32 of the document without its checksum, as JSON with sorted keys and no spaces.
/// It is meant to find damage, not forgery. It needs every number to be read as it is written,
/// hence the feature `float_roundtrip` of `serde_json`.
pub(super) fn checksum(fields: &Map<String, Value>) -> String {
    let mut rest = Value::Object(fields.clone());
    if let Value::Object(fields) = &mut rest {
        fields.remove("checksum");
    }
    rest.sort_all_objects();
    format!("crc32:{:08x}", crc32fast::hash(rest.to_string().as_bytes()))
}

/// Version 0 knew one hand and one order of laying, and called the phase a stage.
fn from_0_to_1(fields: &mut Map<String, Value>) {
    if let Some(Value::Object(knot)) = fields.get_mut("knot") {
        knot.entry("hand").or_insert_with(|| "right".into());
        knot.entry("order").or_insert_with(|| "pass-by-pass".into());
    }
    if let Some(Value::Object(place)) = fields.get_mut("place")
        && let Some(stage) = place.remove("stage")
    {
        place.insert("phase".to_owned(), stage);
    }
    fields.insert("version".to_owned(), 1.into());
}

/// Writes the document of a tie, and reads it again to be sure that it says the same.
///
/// # Errors
/// The [`Fault`] that would make it unreadable.
pub fn write_tie(tie: &Tie) -> Result<Vec<u8>, Fault> {
    let mut document = Document::from(tie);
    let fields = serde_json::to_value(&document).map_err(|_| Fault::NotTheSame)?;
    if let Value::Object(fields) = fields {
        document.checksum = Some(checksum(&fields));
    }
    let mut text = serde_json::to_vec_pretty(&document).map_err(|_| Fault::NotTheSame)?;
    text.push(b'\n');
    match read_tie(&text) {
        Ok(read) if read == *tie => Ok(text),
        // A checksum that fails at once means that two fields have one name.
        Ok(_) | Err(Fault::Checksum { .. } | Fault::NotJson { .. }) => Err(Fault::NotTheSame),
        Err(fault) => Err(fault),
    }
}

pub(super) fn shape(why: &str) -> Fault {
    Fault::Shape {
        why: why.to_owned(),
    }
}

impl Document {
    fn into_tie(self) -> Result<Tie, Fault> {
        let part = self.knot;
        let weave = Weave::parse(&part.weave)?;
        let knot = Knot::new(part.leads, part.bights, weave)?;
        let laying = Laying::new(knot, part.passes, part.order.into())?;
        let (place, place_unknown) = self.place.read(&laying)?;
        parts::setup(&self.extras)?;
        Ok(Tie {
            id: TieId::parse(&self.id).unwrap_or_else(|_| TieId::draw()),
            name: self.name,
            note: self.note,
            knot: Chosen {
                laying,
                side: part.side.side(),
                hand: part.hand.hand(),
            },
            place,
            begun: self.begun,
            touched: self.touched,
            extras: self.extras,
            unknown: Unknown {
                knot: part.unknown,
                place: place_unknown,
            },
        })
    }
}

impl From<&Tie> for Document {
    fn from(tie: &Tie) -> Self {
        let laying = &tie.knot.laying;
        Self {
            version: VERSION,
            id: tie.id.to_string(),
            name: tie.name.clone(),
            note: tie.note.clone(),
            knot: KnotPart {
                leads: laying.knot().leads(),
                bights: laying.knot().bights(),
                passes: laying.passes(),
                weave: laying.knot().weave().to_string(),
                side: SidePart::of_side(tie.knot.side),
                hand: SidePart::of_hand(tie.knot.hand),
                order: laying.order().into(),
                unknown: tie.unknown.knot.clone(),
            },
            place: StoredPlace::of(tie.place, tie.unknown.place.clone()),
            begun: tie.begun,
            touched: tie.touched,
            extras: tie.extras.clone(),
            checksum: None,
        }
    }
}

impl SidePart {
    const fn side(self) -> Side {
        match self {
            Self::Right => Side::Right,
            Self::Left => Side::Left,
        }
    }

    const fn hand(self) -> Hand {
        match self {
            Self::Right => Hand::Right,
            Self::Left => Hand::Left,
        }
    }

    const fn of_side(side: Side) -> Self {
        match side {
            Side::Right => Self::Right,
            Side::Left => Self::Left,
        }
    }

    const fn of_hand(hand: Hand) -> Self {
        match hand {
            Hand::Right => Self::Right,
            Hand::Left => Self::Left,
        }
    }
}

impl From<OrderPart> for Order {
    fn from(part: OrderPart) -> Self {
        match part {
            OrderPart::PassByPass => Self::PassByPass,
            OrderPart::StrandByStrand => Self::StrandByStrand,
        }
    }
}

impl From<Order> for OrderPart {
    fn from(order: Order) -> Self {
        match order {
            Order::PassByPass => Self::PassByPass,
            Order::StrandByStrand => Self::StrandByStrand,
        }
    }
}
