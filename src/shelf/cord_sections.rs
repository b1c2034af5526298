//! What became of the cords of a tie, as it stands in its document. Every length is in millimetres.

use serde::{Deserialize, Serialize};

use super::DocumentError;
use super::stored_place::within;
use crate::bench::Millimetres;
use crate::guide::{CordMeasure, Join};
use crate::knot::{Laying, PassLeg};

/// What was in the hand when this leg was to be laid next.
#[derive(Serialize, Deserialize)]
pub(super) struct MeasureSection {
    pass: u16,
    strand: u16,
    leg: u16,
    /// Crossings of the leg that lay already.
    #[serde(default)]
    crossing: u16,
    /// Whether the cord was not begun yet, and all of it was measured.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    whole: bool,
    left: f64,
}

impl MeasureSection {
    pub(super) const fn of(measure: &CordMeasure) -> Self {
        let PassLeg { pass, strand, leg } = measure.at;
        Self {
            pass,
            strand,
            leg,
            crossing: measure.crossing,
            whole: measure.is_whole,
            left: measure.left.get(),
        }
    }

    /// What it says of a tie that is laid like this.
    ///
    /// # Errors
    /// [`DocumentError::Place`] for a leg that the knot has not, and a shape for no length.
    pub(super) fn read(self, laying: &Laying) -> Result<CordMeasure, DocumentError> {
        let at = leg_of(laying, [self.pass, self.strand, self.leg])?;
        within("crossing", self.crossing, 0, laying.met(at))?;
        let left = Millimetres::new(self.left).map_err(|error| {
            DocumentError::shape("measured.left", format!("`measured.left`: {error}"))
        })?;
        Ok(CordMeasure {
            at,
            crossing: self.crossing,
            is_whole: self.whole,
            left,
        })
    }
}

/// Where a new cord took the place of another.
#[derive(Serialize, Deserialize)]
pub(super) struct JoinSection {
    pass: u16,
    strand: u16,
    leg: u16,
    row: u16,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    melts: bool,
}

impl JoinSection {
    pub(super) const fn of(join: &Join) -> Self {
        let PassLeg { pass, strand, leg } = join.at;
        Self {
            pass,
            strand,
            leg,
            row: join.row,
            melts: join.melts,
        }
    }

    /// What it says of a tie that is laid like this.
    ///
    /// # Errors
    /// [`DocumentError::Place`] for a leg or a row that the knot has not.
    pub(super) fn read(self, laying: &Laying) -> Result<Join, DocumentError> {
        let at = leg_of(laying, [self.pass, self.strand, self.leg])?;
        within("row", self.row, 1, laying.knot().rows())?;
        Ok(Join {
            at,
            row: self.row,
            melts: self.melts,
        })
    }
}

fn leg_of(laying: &Laying, [pass, strand, leg]: [u16; 3]) -> Result<PassLeg, DocumentError> {
    let knot = laying.knot();
    within("pass", pass, 1, laying.passes())?;
    within("strand", strand, 1, knot.strands())?;
    within("leg", leg, 1, knot.legs_of(strand))?;
    Ok(PassLeg { pass, strand, leg })
}
