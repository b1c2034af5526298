//! What a knot covers, as it stands in documents. Every length is in millimetres.

use serde::{Deserialize, Serialize};

use super::DocumentError;
use super::kept_lengths::{length, maybe_length};
use crate::bench::{Ground, Millimetres};

/// A ground: its diameter, and what there is besides where it is not round all along.
#[derive(Serialize, Deserialize)]
pub(super) struct GroundSection {
    /// Of a taper at the end of the bottom rim, of a mat from edge to edge.
    diameter: f64,
    /// Round where it does not stand.
    #[serde(default, skip_serializing_if = "Shape::is_round")]
    shape: Shape,
    /// Of a taper: its diameter at the end of the top rim.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    top: Option<f64>,
    /// Of a taper: from the one end to the other.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    over: Option<f64>,
    /// Of a mat: across its hole.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    hole: Option<f64>,
}

/// How a kind of ground is written in documents. These must stay as they are.
#[derive(Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Shape {
    #[default]
    Round,
    Taper,
    Ball,
    Mat,
}

impl Shape {
    #[expect(
        clippy::trivially_copy_pass_by_ref,
        reason = "serde asks for a reference"
    )]
    const fn is_round(&self) -> bool {
        matches!(self, Self::Round)
    }
}

impl GroundSection {
    /// Whether there is nothing to say of it but its diameter.
    pub(super) const fn is_round(&self) -> bool {
        self.shape.is_round()
    }

    /// The ground that it describes; `name` is that of the section it stands in.
    pub(super) fn ground(&self, name: &str) -> Result<Ground, DocumentError> {
        let of = |field: &str| format!("{name}.{field}");
        let diameter = length(&of("diameter"), self.diameter)?;
        let needed = |field: &str, given: Option<f64>| {
            let field = of(field);
            let missing = || DocumentError::shape(&*field, format!("`{field}` is missing"));
            length(&field, given.ok_or_else(missing)?)
        };
        Ok(match self.shape {
            Shape::Round => Ground::Round(diameter),
            Shape::Ball => Ground::Ball(diameter),
            Shape::Taper => Ground::Taper {
                bottom: diameter,
                top: needed("top", self.top)?,
                over: needed("over", self.over)?,
            },
            Shape::Mat => {
                let hole = maybe_length(&of("hole"), self.hole)?;
                if hole.is_some_and(|hole| hole >= diameter) {
                    let field = of("hole");
                    let why = format!("`{field}` is as wide as the mat");
                    return Err(DocumentError::shape(field, why));
                }
                Ground::Flat {
                    outer: diameter,
                    hole,
                }
            }
        })
    }
}

impl From<Ground> for GroundSection {
    fn from(ground: Ground) -> Self {
        let (diameter, shape) = match ground {
            Ground::Round(diameter) => (diameter, Shape::Round),
            Ground::Taper { bottom, .. } => (bottom, Shape::Taper),
            Ground::Ball(diameter) => (diameter, Shape::Ball),
            Ground::Flat { outer, .. } => (outer, Shape::Mat),
        };
        let (top, over, hole) = match ground {
            Ground::Taper { top, over, .. } => (Some(top), Some(over), None),
            Ground::Flat { hole, .. } => (None, None, hole),
            Ground::Round(_) | Ground::Ball(_) => (None, None, None),
        };
        let [top, over, hole] = [top, over, hole].map(|length| length.map(Millimetres::get));
        Self {
            diameter: diameter.get(),
            shape,
            top,
            over,
            hole,
        }
    }
}
