//! What was really used for a finished tie, and its document in the log.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use super::schema::{self, shape};
use super::{Fault, LARGEST_TIE, Tie, TieId, Worked};
use crate::bench::bight_turn;
use crate::bench::{Allowances, Braid, Consumption, Cord, Correction, Counts, Millimetres, Shape};

/// The version of log documents that is written, and the newest that is read.
pub const ENTRY_VERSION: u64 = 1;

/// The most minutes that an entry may tell of.
pub const MOST_MINUTES: f64 = Worked::MOST / 60.0;

/// One finished tie in the log. Whatever the tyer did not measure is `None`.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The tie on the shelf.
    pub tie: TieId,
    /// Its name when it was logged; may be empty.
    pub name: String,
    /// Leads, bights and passes.
    pub counts: Counts,
    /// When it was logged.
    pub logged: Timestamp,
    /// The cord.
    pub cord: Option<Cord>,
    /// Cord cut for all strands together.
    pub cut: Option<Millimetres>,
    /// What was left over when the ends were trimmed, in millimetres; 0 … 100 000.
    pub left_over: Option<f64>,
    /// Diameter of what the knot sits on.
    pub around: Option<Millimetres>,
    /// Finished width, edge to edge.
    pub width: Option<Millimetres>,
    /// Whether it was left open and not drawn up as tight as it goes.
    pub left_open: bool,
    /// Minutes of work, 0 … [`MOST_MINUTES`].
    pub minutes: Option<f64>,
    /// The time measured while tying.
    pub worked: Worked,
    /// What the tyer wrote; may be empty.
    pub note: String,
    /// Where a photograph of it is; may be empty. Only the path is kept.
    pub photograph: String,
    /// Fields that this version does not know.
    pub extras: Map<String, Value>,
}

impl Entry {
    /// What is known of a tie before its tyer says what was used: the setup and the time.
    pub fn of(tie: &Tie) -> Self {
        let (plan, worked) = (tie.plan(), tie.worked());
        let setup = plan.setup.as_ref();
        let counts = Counts::from(plan.laying());
        let finish = setup.and_then(|setup| setup.finish);
        Self {
            tie: tie.id.clone(),
            name: tie.name.clone(),
            counts,
            logged: Timestamp::now(),
            cord: setup.map(|setup| setup.cord.clone()),
            cut: setup.and_then(|setup| Some(setup.rig(counts).ok()?.cord.to_cut())),
            left_over: None,
            around: finish
                .map(|finish| finish.around)
                .or_else(|| setup.map(|setup| setup.tube.diameter)),
            width: None,
            left_open: finish.is_some_and(|finish| finish.open_to.is_some()),
            minutes: (worked.seconds() >= 60.0).then(|| (worked.seconds() / 60.0).round()),
            worked,
            note: String::new(),
            photograph: String::new(),
            extras: Map::new(),
        }
    }

    /// Cord that went into the knot: what was cut less what was left over.
    pub fn used(&self) -> Option<Millimetres> {
        Millimetres::new(self.cut?.get() - self.left_over?).ok()
    }

    /// Measured over computed length of the cord in the finished knot, without its ends. A
    /// knot left open is computed at the width it has.
    pub fn length_factor(&self) -> Option<f64> {
        let (shape, cord) = (self.computed()?, self.cord.as_ref()?.diameter);
        let turn = bight_turn(cord, None, shape.angle);
        let plain = (Correction::default(), Allowances::default());
        let computed = Consumption::new(self.counts, shape.cord_in_leg(), turn, plain.0, plain.1);
        Correction::factor(self.used()?, computed.in_knot()).ok()
    }

    /// Measured over computed width. A knot left open has the width its tyer gave it, and
    /// teaches nothing.
    pub fn width_factor(&self) -> Option<f64> {
        if self.left_open {
            return None;
        }
        Correction::factor(self.width?, self.computed()?.width).ok()
    }

    /// The finished knot as it is computed with nothing measured yet.
    fn computed(&self) -> Option<Shape> {
        let braid = Braid {
            counts: self.counts,
            cord: self.cord.as_ref()?.diameter,
            around: self.around?,
            correction: Correction::default(),
        };
        match self.width {
            Some(width) if self.left_open => braid.left_open(width).ok(),
            None if self.left_open => None,
            _ => braid.faired().ok(),
        }
    }
}

#[derive(Serialize, Deserialize)]
struct Document {
    version: u64,
    tie: String,
    #[serde(default)]
    name: String,
    knot: KnotPart,
    logged: Timestamp,
    #[serde(default)]
    cord: Option<CordPart>,
    #[serde(default)]
    cut: Option<f64>,
    #[serde(default)]
    left_over: Option<f64>,
    #[serde(default)]
    around: Option<f64>,
    #[serde(default)]
    width: Option<f64>,
    #[serde(default)]
    left_open: bool,
    #[serde(default)]
    minutes: Option<f64>,
    #[serde(default)]
    worked: Value,
    #[serde(default)]
    note: String,
    #[serde(default)]
    photograph: String,
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
}

#[derive(Serialize, Deserialize)]
struct CordPart {
    #[serde(default)]
    name: Option<String>,
    diameter: f64,
    #[serde(default)]
    grams_per_metre: Option<f64>,
}

/// Reads a document of the log: size, JSON, version, checksum, shape, range.
///
/// # Errors
/// The [`Fault`] that makes it unreadable.
pub fn read_entry(document: &[u8]) -> Result<Entry, Fault> {
    let bytes = document.len() as u64;
    if bytes > LARGEST_TIE {
        return Err(Fault::TooLarge {
            bytes,
            limit: LARGEST_TIE,
        });
    }
    let Value::Object(mut fields) = schema::json(document)? else {
        return Err(shape("the document is not an object"));
    };
    schema::version_of(&fields, ENTRY_VERSION)?;
    if schema::has_checksum(&fields) {
        schema::check(&fields)?;
        fields.remove("checksum");
    }
    serde_json::from_value::<Document>(Value::Object(fields))
        .map_err(|error| shape(&error.to_string()))?
        .into_entry()
}

/// Writes a document of the log, and reads it again to be sure that it says the same.
///
/// # Errors
/// The [`Fault`] that would make it unreadable.
pub fn write_entry(entry: &Entry) -> Result<Vec<u8>, Fault> {
    let mut document = Document::from(entry);
    let fields = serde_json::to_value(&document).map_err(|_| Fault::NotTheSame)?;
    if let Value::Object(fields) = fields {
        document.checksum = Some(schema::checksum(&fields));
    }
    let mut text = serde_json::to_vec_pretty(&document).map_err(|_| Fault::NotTheSame)?;
    text.push(b'\n');
    match read_entry(&text) {
        Ok(_) => Ok(text),
        // A checksum that fails at once means that two fields have one name.
        Err(Fault::Checksum { .. } | Fault::NotJson { .. }) => Err(Fault::NotTheSame),
        Err(fault) => Err(fault),
    }
}

impl Document {
    fn into_entry(self) -> Result<Entry, Fault> {
        let KnotPart {
            leads,
            bights,
            passes,
        } = self.knot;
        let cord = match self.cord {
            None => None,
            Some(part) => Some(Cord {
                diameter: length("diameter", Some(part.diameter))?
                    .ok_or_else(|| shape("`diameter` is missing"))?,
                name: part.name,
                grams_per_metre: part
                    .grams_per_metre
                    .filter(|grams| (0.0..=100_000.0).contains(grams)),
            }),
        };
        Ok(Entry {
            tie: TieId::parse(&self.tie).map_err(|error| shape(&error.to_string()))?,
            name: self.name,
            counts: Counts::new(leads, bights, passes)?,
            logged: self.logged,
            cord,
            cut: length("cut", self.cut)?,
            left_over: within("left_over", self.left_over, Millimetres::MOST.get())?,
            around: length("around", self.around)?,
            width: length("width", self.width)?,
            left_open: self.left_open,
            minutes: within("minutes", self.minutes, MOST_MINUTES)?,
            worked: Worked::from_json(&self.worked),
            note: self.note,
            photograph: self.photograph,
            extras: self.extras,
        })
    }
}

fn length(field: &str, given: Option<f64>) -> Result<Option<Millimetres>, Fault> {
    given
        .map(|given| Millimetres::new(given).map_err(|error| shape(&format!("`{field}`: {error}"))))
        .transpose()
}

fn within(field: &str, given: Option<f64>, most: f64) -> Result<Option<f64>, Fault> {
    match given {
        Some(given) if !(0.0..=most).contains(&given) => {
            Err(shape(&format!("`{field}` is {given}, outside 0 to {most}")))
        }
        given => Ok(given),
    }
}

impl From<&Entry> for Document {
    fn from(entry: &Entry) -> Self {
        Self {
            version: ENTRY_VERSION,
            tie: entry.tie.to_string(),
            name: entry.name.clone(),
            knot: KnotPart {
                leads: entry.counts.leads(),
                bights: entry.counts.bights(),
                passes: entry.counts.passes(),
            },
            logged: entry.logged,
            cord: entry.cord.as_ref().map(|cord| CordPart {
                name: cord.name.clone(),
                diameter: cord.diameter.get(),
                grams_per_metre: cord.grams_per_metre,
            }),
            cut: entry.cut.map(Millimetres::get),
            left_over: entry.left_over,
            around: entry.around.map(Millimetres::get),
            width: entry.width.map(Millimetres::get),
            left_open: entry.left_open,
            minutes: entry.minutes,
            worked: entry.worked.to_json(),
            note: entry.note.clone(),
            photograph: entry.photograph.clone(),
            extras: entry.extras.clone(),
            checksum: None,
        }
    }
}
