//! Sections for a tube, a cord and what the knot is finished to, as they stand in documents.
//! Every length is in millimetres.

use serde::{Deserialize, Serialize, de::DeserializeOwned};
use serde_json::{Map, Value};

use super::Fault;
use crate::bench::{Allowances, Cord, Correction, Finish, Millimetres, Thread, Tube};
use crate::guide::Setup;

/// A tube.
#[derive(Serialize, Deserialize)]
pub(super) struct TubePart {
    diameter: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    rows: Option<Vec<u16>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    wall: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pin: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    thread: Option<String>,
    #[serde(flatten)]
    unknown: Map<String, Value>,
}

/// A cord.
#[derive(Serialize, Deserialize)]
pub(super) struct CordPart {
    diameter: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    name: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    grams_per_metre: Option<f64>,
    #[serde(flatten)]
    unknown: Map<String, Value>,
}

#[derive(Serialize, Deserialize)]
struct ObjectPart {
    diameter: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    open_to: Option<f64>,
}

#[derive(Serialize, Deserialize)]
struct TailsPart {
    standing: f64,
    working: f64,
    holding: f64,
}

#[derive(Serialize, Deserialize)]
struct CorrectionPart {
    length: f64,
    width: f64,
}

/// Puts the sections of a setup among the further sections of a tie.
pub(super) fn put(extras: &mut Map<String, Value>, setup: &Setup) {
    let Allowances {
        standing_tail,
        working_tail,
        holding,
    } = setup.allowances;
    let sections = [
        ("tube", value(TubePart::from(&setup.tube))),
        ("cord", value(CordPart::from(&setup.cord))),
        (
            "object",
            setup.finish.and_then(|finish| {
                value(ObjectPart {
                    diameter: finish.around.get(),
                    open_to: finish.open_to.map(Millimetres::get),
                })
            }),
        ),
        (
            "tails",
            value(TailsPart {
                standing: standing_tail.get(),
                working: working_tail.get(),
                holding: holding.get(),
            }),
        ),
        (
            "correction",
            value(CorrectionPart {
                length: setup.correction.length(),
                width: setup.correction.width(),
            }),
        ),
    ];
    for (name, section) in sections {
        if let Some(section) = section {
            extras.insert(name.to_owned(), section);
        }
    }
}

/// The setup among the further sections of a tie: there is one when both a tube and a cord are.
///
/// # Errors
/// [`Fault::Shape`] for a section that no tube, cord, object, tails or correction can have.
pub(super) fn setup(extras: &Map<String, Value>) -> Result<Option<Setup>, Fault> {
    let tube = section::<TubePart>(extras, "tube")?;
    let cord = section::<CordPart>(extras, "cord")?;
    let (Some(tube), Some(cord)) = (tube, cord) else {
        return Ok(None);
    };
    let mut setup = Setup::new(tube.tube()?, cord.cord()?);
    if let Some(object) = section::<ObjectPart>(extras, "object")? {
        setup.finish = Some(Finish {
            around: length("object.diameter", object.diameter)?,
            open_to: maybe("object.open_to", object.open_to)?,
        });
    }
    if let Some(tails) = section::<TailsPart>(extras, "tails")? {
        setup.allowances = Allowances {
            standing_tail: length("tails.standing", tails.standing)?,
            working_tail: length("tails.working", tails.working)?,
            holding: length("tails.holding", tails.holding)?,
        };
    }
    if let Some(CorrectionPart { length, width }) = section(extras, "correction")? {
        setup.correction = Correction::new(length, width)
            .map_err(|error| wrong(&format!("`correction`: {error}")))?;
    }
    Ok(Some(setup))
}

impl TubePart {
    /// The tube it describes.
    pub(super) fn tube(self) -> Result<Tube, Fault> {
        let diameter = length("tube.diameter", self.diameter)?;
        let mut tube = match self.rows {
            Some(rows) => Tube::ringed(diameter, &rows)
                .map_err(|error| wrong(&format!("`tube.rows`: {error}")))?,
            None => Tube::plain(diameter),
        };
        let thread = self.thread.as_deref().map(Thread::parse).transpose();
        tube.wall = maybe("tube.wall", self.wall)?;
        tube.pin_length = maybe("tube.pin", self.pin)?;
        tube.thread = thread.map_err(|error| wrong(&format!("`tube.thread`: {error}")))?;
        Ok(tube)
    }
}

impl From<&Tube> for TubePart {
    fn from(tube: &Tube) -> Self {
        Self {
            diameter: tube.diameter.get(),
            rows: tube.rows().map(<[u16]>::to_vec),
            wall: tube.wall.map(Millimetres::get),
            pin: tube.pin_length.map(Millimetres::get),
            thread: tube.thread.map(|thread| thread.name().to_owned()),
            unknown: Map::new(),
        }
    }
}

impl CordPart {
    /// The cord it describes.
    pub(super) fn cord(self) -> Result<Cord, Fault> {
        let weight = self.grams_per_metre;
        if weight.is_some_and(|grams| !(grams > 0.0 && grams <= 1e6)) {
            return Err(wrong("`cord.grams_per_metre` is not a weight"));
        }
        Ok(Cord {
            diameter: length("cord.diameter", self.diameter)?,
            name: self.name,
            grams_per_metre: weight,
        })
    }
}

impl From<&Cord> for CordPart {
    fn from(cord: &Cord) -> Self {
        Self {
            diameter: cord.diameter.get(),
            name: cord.name.clone(),
            grams_per_metre: cord.grams_per_metre,
            unknown: Map::new(),
        }
    }
}

fn section<T: DeserializeOwned>(
    extras: &Map<String, Value>,
    name: &str,
) -> Result<Option<T>, Fault> {
    extras
        .get(name)
        .cloned()
        .map(serde_json::from_value)
        .transpose()
        .map_err(|error| wrong(&format!("`{name}`: {error}")))
}

/// A section as JSON. Numbers that are finite always make some.
fn value(part: impl Serialize) -> Option<Value> {
    serde_json::to_value(part).ok()
}

fn length(name: &str, millimetres: f64) -> Result<Millimetres, Fault> {
    Millimetres::new(millimetres).map_err(|error| wrong(&format!("`{name}`: {error}")))
}

fn maybe(name: &str, millimetres: Option<f64>) -> Result<Option<Millimetres>, Fault> {
    millimetres.map(|given| length(name, given)).transpose()
}

fn wrong(why: &str) -> Fault {
    Fault::Shape {
        why: why.to_owned(),
    }
}
