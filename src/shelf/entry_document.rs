//! The document of an entry in the log: what stands in the file, and the way there and back.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use super::ground_section::GroundSection;
use super::kept_lengths::maybe_length;
use super::sections::CordSection;
use super::{DocumentError, Entry, MOST_MINUTES, TieId, WorkTime};
use crate::bench::{Counts, Ground, Interlacing, Millimetres};
use crate::files::{self, Document, FormatError, Unknown, Within};
use crate::knot::Lattice;

/// The version of log documents that is written, and the newest that is read.
pub const ENTRY_VERSION: u64 = 3;

/// How far in fields are kept that this version does not know.
const WITHIN: Within = Within {
    deep: 1,
    names: &[],
};

#[derive(Serialize, Deserialize)]
struct EntryDocument {
    version: u64,
    tie: String,
    #[serde(default)]
    name: String,
    knot: CountsSection,
    logged: Timestamp,
    cord: Option<CordSection>,
    cut: Option<f64>,
    left_over: Option<f64>,
    /// Where it is thickest.
    around: Option<f64>,
    /// What it is like where it is not round all along.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    ground: Option<GroundSection>,
    width: Option<f64>,
    #[serde(default)]
    left_open: bool,
    minutes: Option<f64>,
    #[serde(default)]
    worked: WorkTime,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    series: Option<String>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    tube_stood: bool,
    #[serde(default)]
    note: String,
    #[serde(default)]
    photograph: String,
}

#[derive(Serialize, Deserialize)]
struct CountsSection {
    leads: u16,
    bights: u16,
    /// Of a plain knot neither stands in the document.
    #[serde(default = "one", skip_serializing_if = "is_one")]
    nested: u16,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    lands: Option<u16>,
    passes: u16,
    /// At how many of a hundred crossings a cord changes from over to under; all of them in
    /// documents that do not say.
    #[serde(default = "plain", skip_serializing_if = "is_plain")]
    interlaced: u8,
}

const fn one() -> u16 {
    1
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde asks for a reference"
)]
const fn is_one(nested: &u16) -> bool {
    *nested == one()
}

const fn plain() -> u8 {
    Interlacing::PLAIN.hundredths()
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde asks for a reference"
)]
const fn is_plain(interlaced: &u8) -> bool {
    *interlaced == plain()
}

impl Document for Entry {
    type Error = DocumentError;

    fn read(document: &[u8]) -> Result<Self, DocumentError> {
        read_entry(document)
    }
}

/// Reads a document of the log.
///
/// # Errors
/// The [`DocumentError`] that makes it unreadable.
pub fn read_entry(document: &[u8]) -> Result<Entry, DocumentError> {
    let (_, fields) = files::open(document, ENTRY_VERSION)?;
    let document: EntryDocument = files::decode(&fields)?;
    let mut entry = document.into_entry()?;
    let known = files::encode(&EntryDocument::from(&entry))?;
    entry.unknown = Unknown::of(fields, &known, WITHIN);
    Ok(entry)
}

/// Writes a document of the log, and reads it again to be sure that it says the same.
///
/// # Errors
/// The [`DocumentError`] that would make it unreadable.
pub fn write_entry(entry: &Entry) -> Result<Vec<u8>, DocumentError> {
    let known = files::encode(&EntryDocument::from(entry))?;
    let fields = entry.unknown.added_to(known.clone());
    let written = Entry {
        // What belonged to a part of the entry that has gone is not in it any more.
        unknown: Unknown::of(fields.clone(), &known, WITHIN),
        ..entry.clone()
    };
    let text = files::seal(fields)?;
    match read_entry(&text) {
        Ok(read) if read == written => Ok(text),
        Ok(_) | Err(DocumentError::Format(FormatError::NotJson { .. })) => {
            Err(FormatError::NotTheSame.into())
        }
        Err(error) => Err(error),
    }
}

impl EntryDocument {
    fn into_entry(self) -> Result<Entry, DocumentError> {
        let CountsSection {
            leads,
            bights,
            nested,
            lands,
            passes,
            interlaced,
        } = self.knot;
        let lattice = Lattice::plain(leads, bights)?.interwoven(nested, lands.unwrap_or(nested))?;
        let interlacing = Interlacing::from_hundredths(interlaced).ok_or_else(|| {
            DocumentError::shape(
                "knot.interlaced",
                format!("`knot.interlaced` is {interlaced}, outside 1 to 100"),
            )
        })?;
        Ok(Entry {
            tie: TieId::parse(&self.tie)
                .map_err(|error| DocumentError::shape("tie", error.to_string()))?,
            name: self.name,
            counts: Counts::on(lattice, passes)?.interlaced(interlacing),
            logged: self.logged,
            cord: self.cord.map(CordSection::cord).transpose()?,
            cut: maybe_length("cut", self.cut)?,
            left_over: within("left_over", self.left_over, Millimetres::MOST.get())?,
            around: match self.ground.filter(|ground| !ground.is_round()) {
                Some(ground) => Some(ground.ground("ground")?),
                None => maybe_length("around", self.around)?.map(Ground::Round),
            },
            width: maybe_length("width", self.width)?,
            left_open: self.left_open,
            minutes: within("minutes", self.minutes, MOST_MINUTES)?,
            work_time: self.worked,
            series: self.series,
            tube_stood: self.tube_stood,
            note: self.note,
            photograph: self.photograph,
            unknown: Unknown::default(),
        })
    }
}

fn within(field: &str, given: Option<f64>, most: f64) -> Result<Option<f64>, DocumentError> {
    match given {
        Some(given) if !(0.0..=most).contains(&given) => Err(DocumentError::shape(
            field,
            format!("`{field}` is {given}, outside 0 to {most}"),
        )),
        given => Ok(given),
    }
}

impl From<&Entry> for EntryDocument {
    fn from(entry: &Entry) -> Self {
        let lattice = entry.counts.lattice();
        let uneven = entry
            .around
            .filter(|ground| !matches!(ground, Ground::Round(_)));
        Self {
            // A program from before must not take a knot of nested bights for plain, nor learn of a
            // cord from a ball or a mat as from a handle.
            version: if uneven.is_some() {
                ENTRY_VERSION
            } else if lattice.is_interwoven() {
                2
            } else {
                1
            },
            tie: entry.tie.to_string(),
            name: entry.name.clone(),
            knot: CountsSection {
                leads: entry.counts.leads(),
                bights: entry.counts.bights(),
                nested: lattice.nested(),
                lands: lattice.is_interwoven().then(|| lattice.lands()),
                passes: entry.counts.passes(),
                interlaced: entry.counts.interlacing().hundredths(),
            },
            logged: entry.logged,
            cord: entry.cord.as_ref().map(CordSection::from),
            cut: entry.cut.map(Millimetres::get),
            left_over: entry.left_over,
            around: entry.around.map(|ground| ground.thickest().get()),
            ground: uneven.map(GroundSection::from),
            width: entry.width.map(Millimetres::get),
            left_open: entry.left_open,
            minutes: entry.minutes,
            worked: entry.work_time.clone(),
            series: entry.series.clone(),
            tube_stood: entry.tube_stood,
            note: entry.note.clone(),
            photograph: entry.photograph.clone(),
        }
    }
}
