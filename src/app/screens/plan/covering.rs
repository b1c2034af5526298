//! What is covered, and whether the knot can be slid onto it: the answer to the first question of the plan
//! screen.

use strum::{IntoStaticStr, VariantArray};

/// What is covered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
pub enum Covered {
    /// A handle or a rail: as thick all along.
    #[default]
    Round,
    /// Something with a thick end and a thin one.
    Taper,
    /// A ball or a knob.
    Ball,
    /// A flat mat.
    Mat,
}

/// The answer to the first question.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Covering {
    /// What is covered.
    pub covered: Covered,
    /// It is tied on what it covers; a mat is anyhow.
    pub in_place: bool,
}

impl Covered {
    /// Its name in messages.
    pub(super) fn name(self) -> &'static str {
        self.into()
    }
}
