//! A place as it stands in the document of a tie: the name of a phase and four numbers.
//!
//! The numbers say other things in other phases, as they always did in these documents; here
//! alone they are turned into a [`Place`] and back.

use std::str::FromStr;

use serde::{Deserialize, Serialize};

use super::DocumentError;
use crate::guide::{Phase, Place};
use crate::knot::{Laying, PassLeg};

#[derive(Serialize, Deserialize)]
pub(super) struct StoredPlace {
    phase: String,
    pass: u16,
    strand: u16,
    leg: u16,
    crossing: u16,
}

impl StoredPlace {
    /// As it is written.
    pub(super) fn of(place: Place) -> Self {
        // Where a phase has no use for a number, 1 has always been written, and 0 for crossings.
        let leg = match place {
            Place::Begin { .. } => 0,
            _ => place.leg().or(place.item()).unwrap_or(1),
        };
        let crossing = match place {
            Place::Fair { round, .. } => round,
            _ => place.crossings_behind(),
        };
        Self {
            phase: place.phase().name().to_owned(),
            pass: place.pass().unwrap_or(1),
            strand: place.strand().unwrap_or(1),
            leg,
            crossing,
        }
    }

    /// What it says of a tie that is laid like this.
    ///
    /// How many things there are to pack, to rig, to lift and to finish, and how many rounds to
    /// fair, follows from tube and cord: those numbers are the guide's to judge.
    ///
    /// # Errors
    /// [`DocumentError::Phase`] for a phase that does not exist, [`DocumentError::Place`] for numbers that do
    /// not lie in the knot.
    pub(super) fn read(self, laying: &Laying) -> Result<Place, DocumentError> {
        let phase = Phase::from_str(&self.phase).map_err(|_| DocumentError::Phase {
            given: self.phase.chars().take(40).collect(),
        })?;
        let knot = laying.knot();
        let pass_leg = |first_leg: u16| -> Result<PassLeg, DocumentError> {
            within("pass", self.pass, 1, laying.passes())?;
            within("strand", self.strand, 1, knot.strands())?;
            within("leg", self.leg, first_leg, knot.legs_of(self.strand))?;
            Ok(PassLeg {
                pass: self.pass,
                strand: self.strand,
                leg: self.leg,
            })
        };
        Ok(match phase {
            Phase::Kit => Place::Kit { item: self.leg },
            Phase::Rig => Place::Rig { task: self.leg },
            // Whether a pass is the first or a later one, its number says.
            Phase::Lead | Phase::Follow => {
                let pass_leg = pass_leg(0)?;
                let crossing = self.crossing;
                let met = u16::try_from(laying.crossings(pass_leg).count()).unwrap_or(u16::MAX);
                within("crossing", crossing, 0, met)?;
                match pass_leg.leg {
                    0 => Place::begin(pass_leg.pass, pass_leg.strand),
                    _ => Place::Lay { pass_leg, crossing },
                }
            }
            Phase::Check => Place::check(pass_leg(1)?),
            Phase::Lift => Place::Lift { task: self.leg },
            Phase::Fair => Place::fair(self.crossing, pass_leg(1)?),
            Phase::Finish => Place::Finish { task: self.leg },
        })
    }
}

pub(super) fn within(
    part: &'static str,
    given: u16,
    least: u16,
    most: u16,
) -> Result<(), DocumentError> {
    if (least..=most).contains(&given) {
        Ok(())
    } else {
        Err(DocumentError::Place {
            part,
            given,
            least,
            most,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{AtOnce, Plan, Script};
    use serde_json::{Value, json};

    fn stored(place: Place) -> Value {
        serde_json::to_value(StoredPlace::of(place)).unwrap()
    }

    fn read(phase: &str, numbers: [u16; 4]) -> Result<Place, DocumentError> {
        let [pass, strand, leg, crossing] = numbers;
        let plan = Plan::read("5", "7", "2", "1").unwrap();
        let stored = StoredPlace {
            phase: phase.to_owned(),
            pass,
            strand,
            leg,
            crossing,
        };
        stored.read(plan.laying())
    }

    #[test]
    fn the_numbers_of_every_phase_stay_what_they_are_on_disk() {
        let pass_leg = PassLeg {
            pass: 2,
            strand: 1,
            leg: 7,
        };
        let lay = Place::Lay {
            pass_leg,
            crossing: 3,
        };
        for (place, phase, numbers) in [
            (Place::Kit { item: 4 }, "kit", [1, 1, 4, 0]),
            (Place::Rig { task: 5 }, "rig", [1, 1, 5, 0]),
            (Place::begin(1, 1), "lead", [1, 1, 0, 0]),
            (Place::begin(2, 1), "follow", [2, 1, 0, 0]),
            (lay, "follow", [2, 1, 7, 3]),
            (Place::check(pass_leg), "check", [2, 1, 7, 0]),
            (Place::Lift { task: 2 }, "lift", [1, 1, 2, 0]),
            (Place::fair(3, pass_leg), "fair", [2, 1, 7, 3]),
            (Place::Finish { task: 6 }, "finish", [1, 1, 6, 0]),
        ] {
            let [pass, strand, leg, crossing] = numbers;
            let document = json!({
                "phase": phase, "pass": pass, "strand": strand, "leg": leg, "crossing": crossing,
            });
            assert_eq!(stored(place), document);
            assert_eq!(read(phase, numbers), Ok(place));
        }
    }

    #[test]
    fn every_place_of_a_job_is_read_as_it_was_written() {
        let script = Script::new(Plan::read("6", "4", "2", "1").unwrap(), AtOnce::UpTo(1));
        for place in script.places() {
            let read = serde_json::from_value::<StoredPlace>(stored(place))
                .unwrap()
                .read(script.plan().laying())
                .unwrap();
            assert_eq!(read, place);
        }
    }

    #[test]
    fn what_is_no_place_is_refused_with_what_is_wrong() {
        for (phase, numbers, sentence) in [
            (
                "rest",
                [1, 1, 1, 0],
                "names a phase \"rest\"; the phases are kit, rig, lead, follow, check, lift, fair, \
                 finish",
            ),
            (
                "lead",
                [3, 1, 1, 0],
                "stands at pass 3, outside the knot: 1 to 2",
            ),
            (
                "check",
                [1, 1, 0, 0],
                "stands at leg 0, outside the knot: 1 to 14",
            ),
            (
                "fair",
                [1, 2, 1, 1],
                "stands at strand 2, outside the knot: 1 to 1",
            ),
            (
                "follow",
                [2, 1, 1, 5],
                "stands at crossing 5, outside the knot: 0 to 4",
            ),
        ] {
            assert_eq!(read(phase, numbers).unwrap_err().to_string(), sentence);
        }
    }
}
