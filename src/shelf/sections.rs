//! Sections for a tube, a cord and what the knot is finished to, as they stand in documents.
//! Every length is in millimetres.

use serde::{Deserialize, Serialize};

use super::DocumentError;
use super::ground_section::GroundSection;
use super::kept_lengths::{length, maybe_length};
use crate::bench::{Allowances, Cord, Correction, Finish, Give, Millimetres, Thread, Tube};
use crate::guide::Setup;

/// The heaviest cord that is believed, in grams a metre.
const HEAVIEST: f64 = 1e6;

/// A tube and its rings.
#[derive(Serialize, Deserialize)]
pub(super) struct TubeSection {
    diameter: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    rows: Option<Vec<u16>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    wall: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pin: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    thread: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    ring_width: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    length: Option<f64>,
}

/// A cord, with its weight in grams a metre and how closely it lies.
#[derive(Serialize, Deserialize)]
pub(super) struct CordSection {
    diameter: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    name: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    grams_per_metre: Option<f64>,
    /// Soft line where it does not stand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    give: Option<f64>,
}

/// What the finished knot sits on, and the width it is left open to.
#[derive(Serialize, Deserialize)]
struct ObjectSection {
    #[serde(flatten)]
    ground: GroundSection,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    open_to: Option<f64>,
}

/// Cord beyond what lies in the knot.
#[derive(Serialize, Deserialize)]
struct TailsSection {
    standing: f64,
    working: f64,
    holding: f64,
}

/// What the log says of the cord, as factors, and from how many ties.
#[derive(Serialize, Deserialize)]
struct CorrectionSection {
    length: f64,
    /// A factor for a width that was computed otherwise than now, and of no use any more. It is
    /// written as 1, since programs of before ask for it.
    #[serde(default = "one")]
    width: f64,
    #[serde(default = "one", skip_serializing_if = "is_one")]
    give: f64,
    #[serde(default, skip_serializing_if = "is_none")]
    ties: u16,
}

const fn one() -> f64 {
    1.0
}

#[expect(clippy::float_cmp, reason = "it is one where nothing was measured")]
#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde asks for a reference"
)]
fn is_one(factor: &f64) -> bool {
    *factor == one()
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde asks for a reference"
)]
const fn is_none(ties: &u16) -> bool {
    *ties == 0
}

/// The sections of a setup. They make one when both a tube and a cord are there.
#[derive(Default, Serialize, Deserialize)]
pub(super) struct SetupSections {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tube: Option<TubeSection>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    cord: Option<CordSection>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    object: Option<ObjectSection>,
    /// Whether it is tied on the object: then the tube stands for that.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    in_place: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tails: Option<TailsSection>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    correction: Option<CorrectionSection>,
}

impl SetupSections {
    /// The setup that they make, if any.
    ///
    /// # Errors
    /// A section that no tube, cord, object, tails or correction can have.
    pub(super) fn setup(self) -> Result<Option<Setup>, DocumentError> {
        let (Some(tube), Some(cord)) = (self.tube, self.cord) else {
            return Ok(None);
        };
        let mut setup = Setup {
            in_place: self.in_place,
            ..Setup::new(tube.tube()?, cord.cord()?)
        };
        if let Some(object) = self.object {
            setup.finish = Some(Finish {
                around: object.ground.ground("object")?,
                open_to: maybe_length("object.open_to", object.open_to)?,
            });
            // A document that was edited elsewhere may leave it out: a mat has no other place.
            setup.in_place |= setup.ground().is_flat();
        }
        if let Some(tails) = self.tails {
            setup.allowances = Allowances {
                standing_tail: length("tails.standing", tails.standing)?,
                working_tail: length("tails.working", tails.working)?,
                holding: length("tails.holding", tails.holding)?,
            };
        }
        if let Some(CorrectionSection {
            length, give, ties, ..
        }) = self.correction
        {
            setup.correction = Correction::new(length, give)
                .map_err(|error| {
                    DocumentError::shape("correction", format!("`correction`: {error}"))
                })?
                .from_ties(ties);
        }
        Ok(Some(setup))
    }
}

impl From<&Setup> for SetupSections {
    fn from(setup: &Setup) -> Self {
        let tails = setup.allowances;
        Self {
            tube: Some(TubeSection::from(&setup.tube)),
            cord: Some(CordSection::from(&setup.cord)),
            object: setup.finish.map(|finish| ObjectSection {
                ground: GroundSection::from(finish.around),
                open_to: finish.open_to.map(Millimetres::get),
            }),
            in_place: setup.in_place,
            tails: Some(TailsSection {
                standing: tails.standing_tail.get(),
                working: tails.working_tail.get(),
                holding: tails.holding.get(),
            }),
            correction: Some(CorrectionSection {
                length: setup.correction.length(),
                width: one(),
                give: setup.correction.give(),
                ties: setup.correction.ties(),
            }),
        }
    }
}

impl TubeSection {
    /// The tube it describes.
    pub(super) fn tube(self) -> Result<Tube, DocumentError> {
        let diameter = length("tube.diameter", self.diameter)?;
        let mut tube = match self.rows {
            Some(rows) => Tube::ringed(diameter, &rows).map_err(|error| {
                DocumentError::shape("tube.rows", format!("`tube.rows`: {error}"))
            })?,
            None => Tube::plain(diameter),
        };
        tube.wall = maybe_length("tube.wall", self.wall)?;
        tube.pin_length = maybe_length("tube.pin", self.pin)?;
        tube.thread = self
            .thread
            .map(|text| Thread::parse(&text))
            .transpose()
            .map_err(|error| {
                DocumentError::shape("tube.thread", format!("`tube.thread`: {error}"))
            })?;
        tube.length = maybe_length("tube.length", self.length)?;
        Ok(tube.with_ring_width(maybe_length("tube.ring_width", self.ring_width)?))
    }
}

impl From<&Tube> for TubeSection {
    fn from(tube: &Tube) -> Self {
        Self {
            diameter: tube.diameter.get(),
            rows: tube.rows().map(<[u16]>::to_vec),
            wall: tube.wall.map(Millimetres::get),
            pin: tube.pin_length.map(Millimetres::get),
            thread: tube.thread.map(|thread| thread.name().to_owned()),
            ring_width: tube.ring_width().map(Millimetres::get),
            length: tube.length.map(Millimetres::get),
        }
    }
}

impl CordSection {
    /// The cord it describes.
    pub(super) fn cord(self) -> Result<Cord, DocumentError> {
        let weight = self.grams_per_metre;
        if weight.is_some_and(|grams| !(grams > 0.0 && grams <= HEAVIEST)) {
            return Err(DocumentError::shape(
                "cord.grams_per_metre",
                "`cord.grams_per_metre` is not a weight",
            ));
        }
        let give = self.give.map_or(Ok(Give::default()), Give::new);
        Ok(Cord {
            diameter: length("cord.diameter", self.diameter)?,
            name: self.name,
            grams_per_metre: weight,
            give: give.map_err(|error| {
                DocumentError::shape("cord.give", format!("`cord.give`: {error}"))
            })?,
        })
    }
}

impl From<&Cord> for CordSection {
    fn from(cord: &Cord) -> Self {
        Self {
            diameter: cord.diameter.get(),
            name: cord.name.clone(),
            grams_per_metre: cord.grams_per_metre,
            give: (cord.give != Give::default()).then(|| cord.give.get()),
        }
    }
}
