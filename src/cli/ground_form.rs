//! What is covered, in the JSON documents of the commands.

use serde::Serialize;

use super::print::rounded;
use crate::bench::{Ground, Millimetres};

/// A ground. A field that it has not is left out.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub(super) enum GroundForm {
    Round {
        diameter_mm: f64,
    },
    Taper {
        bottom_mm: f64,
        top_mm: f64,
        over_mm: f64,
    },
    Ball {
        diameter_mm: f64,
    },
    Mat {
        outer_mm: f64,
        #[serde(skip_serializing_if = "Option::is_none")]
        hole_mm: Option<f64>,
    },
}

impl GroundForm {
    pub fn of(ground: Ground) -> Self {
        let mm = |length: Millimetres| rounded(length.get(), 3);
        match ground {
            Ground::Round(diameter) => Self::Round {
                diameter_mm: mm(diameter),
            },
            Ground::Taper { bottom, top, over } => Self::Taper {
                bottom_mm: mm(bottom),
                top_mm: mm(top),
                over_mm: mm(over),
            },
            Ground::Ball(diameter) => Self::Ball {
                diameter_mm: mm(diameter),
            },
            Ground::Flat { outer, hole } => Self::Mat {
                outer_mm: mm(outer),
                hole_mm: hole.map(mm),
            },
        }
    }
}
