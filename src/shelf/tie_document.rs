//! The document of a tie: its fields, its versions, and the way there and back.
//!
//! The types here say what stands in the file and nothing else; [`Tie`] is what the program
//! works with. A document is read in this order: size, JSON, version and checksum, migration,
//! shape, range.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::cord_sections::{JoinSection, MeasureSection};
use super::sections::SetupSections;
use super::stored_place::StoredPlace;
use super::{Batch, DocumentError, Presses, Tie, TieId, WorkTime};
use crate::bench::Ground;
use crate::files::{self, Document, Fields, FormatError, Unknown, Within};
use crate::guide::{CordHistory, Plan, Setup};
use crate::knot::{Hand, Knot, Lattice, Laying, LayingOrder, Side, Weave};

/// The version that is written, and the newest that is read.
pub const TIE_VERSION: u64 = MIGRATIONS.len() as u64;

/// What turns a document of version *n* into one of version *n* + 1, at index *n*.
const MIGRATIONS: [fn(&mut Fields); 3] = [from_0_to_1, from_1_to_2, from_2_to_3];

/// How far in fields are kept that this version does not know. What was measured and joined has no
/// name: measured anew it is another measure.
const WITHIN: Within = Within {
    deep: 1,
    names: &[],
};

#[derive(Serialize, Deserialize)]
struct TieDocument {
    version: u64,
    #[serde(default)]
    id: String,
    #[serde(default)]
    name: String,
    #[serde(default)]
    note: String,
    knot: KnotSection,
    place: StoredPlace,
    begun: Timestamp,
    touched: Timestamp,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    cords: Vec<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    batch: Option<Batch>,
    /// Whether the tube of this tie stood already when it was begun.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    tube_stood: bool,
    /// Whether it is tied round the hand. A program from before tells the same knot on a tube.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    round_hand: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    lesson: Option<u16>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    put_away: bool,
    #[serde(default, skip_serializing_if = "WorkTime::is_empty")]
    worked: WorkTime,
    #[serde(default, skip_serializing_if = "Presses::is_none")]
    presses: Presses,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    measured: Vec<MeasureSection>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    joined: Vec<JoinSection>,
}

#[derive(Serialize, Deserialize)]
struct KnotSection {
    leads: u16,
    bights: u16,
    /// Of a plain knot neither stands in the document.
    #[serde(default = "one", skip_serializing_if = "is_one")]
    nested: u16,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    lands: Option<u16>,
    passes: u16,
    weave: String,
    #[serde(with = "SideText")]
    side: Side,
    #[serde(with = "HandText")]
    hand: Hand,
    #[serde(with = "OrderText")]
    order: LayingOrder,
}

/// How a side is written in documents. This must stay as it is.
#[derive(Serialize, Deserialize)]
#[serde(remote = "Side", rename_all = "lowercase")]
enum SideText {
    Right,
    Left,
}

/// How a hand is written in documents. This must stay as it is.
#[derive(Serialize, Deserialize)]
#[serde(remote = "Hand", rename_all = "lowercase")]
enum HandText {
    Right,
    Left,
}

/// How the order of laying is written in documents. This must stay as it is.
#[derive(Serialize, Deserialize)]
#[serde(remote = "LayingOrder", rename_all = "kebab-case")]
enum OrderText {
    PassByPass,
    StrandByStrand,
}

impl Document for Tie {
    type Error = DocumentError;

    fn read(document: &[u8]) -> Result<Self, DocumentError> {
        read_tie(document)
    }
}

/// Reads the document of a tie. An id that no tie can have is replaced by a new one.
///
/// # Errors
/// The [`DocumentError`] that makes it unreadable.
pub fn read_tie(document: &[u8]) -> Result<Tie, DocumentError> {
    let (version, mut fields) = files::open(document, TIE_VERSION)?;
    for migrate in &MIGRATIONS[usize::try_from(version).unwrap_or(MIGRATIONS.len())..] {
        migrate(&mut fields);
    }
    let setup: SetupSections = files::decode(&fields)?;
    let document: TieDocument = files::decode(&fields)?;
    let mut tie = document.into_tie(setup.setup()?)?;
    tie.unknown = Unknown::of(fields, &known_fields(&tie)?, WITHIN);
    Ok(tie)
}

/// Version 0 knew one hand and one order of laying, and called the phase a stage.
fn from_0_to_1(fields: &mut Fields) {
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

/// Version 2 names nested bights. A plain knot has none, and is written as it always was, so that a
/// program from before reads it too; one that is interwoven it must not take for plain.
fn from_1_to_2(fields: &mut Fields) {
    fields.insert("version".to_owned(), 2.into());
}

/// Version 3 knows what is tied in place, and what tapers or is a ball or a mat. A program from before
/// would have it lifted off a tube, or take the width of a mat for the thickness of a handle.
fn from_2_to_3(fields: &mut Fields) {
    fields.insert("version".to_owned(), 3.into());
}

/// The oldest version that knows all there is in a plan.
fn version_of(plan: &Plan) -> u64 {
    let is_told_before = |setup: &Setup| {
        let around = setup.finish.map(|finish| finish.around);
        !setup.in_place && around.is_none_or(|around| matches!(around, Ground::Round(_)))
    };
    if !plan.setup().is_none_or(is_told_before) {
        TIE_VERSION
    } else if plan.knot().lattice().is_interwoven() {
        2
    } else {
        1
    }
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

/// Writes the document of a tie, and reads it again to be sure that it says the same.
///
/// # Errors
/// The [`DocumentError`] that would make it unreadable.
pub fn write_tie(tie: &Tie) -> Result<Vec<u8>, DocumentError> {
    let known = known_fields(tie)?;
    let fields = tie.unknown.added_to(known.clone());
    let written = Tie {
        // What belonged to a part of the tie that has gone is not in it any more.
        unknown: Unknown::of(fields.clone(), &known, WITHIN),
        ..tie.clone()
    };
    let text = files::seal(fields)?;
    match read_tie(&text) {
        Ok(read) if read == written => Ok(text),
        Ok(_) | Err(DocumentError::Format(FormatError::NotJson { .. })) => {
            Err(FormatError::NotTheSame.into())
        }
        Err(error) => Err(error),
    }
}

/// The fields of the document of a tie that this version knows.
fn known_fields(tie: &Tie) -> Result<Fields, FormatError> {
    let mut fields = files::encode(&TieDocument::from(tie))?;
    if let Some(setup) = tie.plan.setup() {
        fields.extend(files::encode(&SetupSections::from(setup))?);
    }
    Ok(fields)
}

impl TieDocument {
    fn into_tie(self, setup: Option<Setup>) -> Result<Tie, DocumentError> {
        let KnotSection { nested, lands, .. } = self.knot;
        let lattice = Lattice::plain(self.knot.leads, self.knot.bights)?
            .interwoven(nested, lands.unwrap_or(nested))?;
        let knot = Knot::woven(lattice, Weave::parse(&self.knot.weave)?)?;
        let laying = Laying::new(knot, self.knot.passes, self.knot.order)?;
        let place = self.place.read(&laying)?;
        let measured = self
            .measured
            .into_iter()
            .map(|section| section.read(&laying));
        let measured = measured.collect::<Result<_, _>>()?;
        let joined = self.joined.into_iter().map(|section| section.read(&laying));
        let cord_history = CordHistory::new(measured, joined.collect::<Result<_, _>>()?);
        let plan = Plan::of(laying, self.knot.side, self.knot.hand)
            .with_cord_history(cord_history)
            .with_setup(setup)
            .with_standing_tube(self.tube_stood)
            .with_cords(self.cords)
            .map_err(|error| {
                let why = format!(
                    "`cords` has {} names; the knot has strands: {}, passes: {}",
                    error.given, error.strands, error.passes
                );
                DocumentError::shape("cords", why)
            })?;
        let plan = if self.round_hand {
            plan.with_round_hand()?
        } else {
            plan
        };
        Ok(Tie {
            id: TieId::parse(&self.id).unwrap_or_else(|_| TieId::draw()),
            name: self.name,
            note: self.note,
            plan,
            place,
            begun: self.begun,
            touched: self.touched,
            batch: self.batch,
            lesson: self.lesson,
            is_put_away: self.put_away,
            work_time: self.worked,
            presses: self.presses,
            unknown: Unknown::default(),
        })
    }
}

impl From<&Tie> for TieDocument {
    fn from(tie: &Tie) -> Self {
        let laying = tie.plan.laying();
        let lattice = laying.knot().lattice();
        Self {
            version: version_of(&tie.plan),
            id: tie.id.to_string(),
            name: tie.name.clone(),
            note: tie.note.clone(),
            // Where an added cord begins follows from the names, and is not kept besides.
            knot: KnotSection {
                leads: laying.knot().leads(),
                bights: laying.knot().bights(),
                nested: lattice.nested(),
                lands: lattice.is_interwoven().then(|| lattice.lands()),
                passes: laying.passes(),
                weave: laying.knot().weave().to_string(),
                side: tie.plan.side,
                hand: tie.plan.hand,
                order: laying.order(),
            },
            place: StoredPlace::of(tie.place),
            begun: tie.begun,
            touched: tie.touched,
            cords: tie.plan.cords().to_vec(),
            batch: tie.batch.clone(),
            tube_stood: tie.plan.tube_stands,
            round_hand: tie.plan.is_round_hand(),
            lesson: tie.lesson,
            put_away: tie.is_put_away,
            worked: tie.work_time.clone(),
            presses: tie.presses,
            measured: tie
                .plan
                .cord_history()
                .measures()
                .iter()
                .map(MeasureSection::of)
                .collect(),
            joined: tie
                .plan
                .cord_history()
                .joins()
                .iter()
                .map(JoinSection::of)
                .collect(),
        }
    }
}
