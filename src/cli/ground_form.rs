//! What is covered, in the JSON documents of the commands.

use serde::Serialize;

use super::print::rounded;
use crate::bench::{Ground, KnotShape, Millimetres};

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

/// What a knot leaves open where its ground ends; nothing of one that lies round a thing.
#[derive(Default, Serialize)]
pub(super) struct MiddleForm {
    /// Of a mat: from edge to edge.
    #[serde(rename = "outer_mm", skip_serializing_if = "Option::is_none")]
    outer: Option<f64>,
    /// Of a mat: across its hole.
    #[serde(rename = "hole_mm", skip_serializing_if = "Option::is_none")]
    hole: Option<f64>,
    /// Of a ball: across what stays bare at each pole.
    #[serde(rename = "bare_mm", skip_serializing_if = "Option::is_none")]
    bare: Option<f64>,
}

impl MiddleForm {
    pub fn of(ground: Ground, shape: &KnotShape) -> Self {
        let bare = shape.bare.map(|bare| rounded(bare.get(), 3));
        match ground {
            Ground::Flat { .. } => Self {
                outer: Some(rounded(shape.outer_edge().get(), 3)),
                hole: bare,
                bare: None,
            },
            Ground::Ball(_) => Self {
                bare,
                ..Self::default()
            },
            Ground::Round(_) | Ground::Taper { .. } => Self::default(),
        }
    }
}
