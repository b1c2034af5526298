//! What can be wrong with what was said to be covered.

use thiserror::Error;

use super::field::SetupField;
use crate::bench::Millimetres;

/// Why nothing can be covered as it was said. The words for it that a tyer reads are in `i18n/`; the
/// text here is for logs and for users of the library.
///
/// ```
/// use marlinspeak::guide::{GroundError, SetupField, SetupForm};
///
/// // A hole is smaller than the mat that it is in.
/// let form = SetupForm::from_iter([(SetupField::Mat, "60mm:150mm")]);
/// let error = form.ground().unwrap_err();
/// assert_eq!(error.field(), SetupField::Mat);
/// assert_eq!(error.to_string(), "a hole of 150 mm does not go into a mat of 60 mm");
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
pub enum GroundError {
    /// What is covered, said in two ways.
    #[error("what is covered is said as {0:?} and as {1:?}")]
    Twice(SetupField, SetupField),
    /// Of two lengths with a colon between one is missing, or there are more.
    #[error("{given:?} is not two lengths with a colon between")]
    Halves {
        /// Where it was said.
        field: SetupField,
        /// The text as given.
        given: String,
    },
    /// Two lengths with a colon between, where there is only one.
    #[error("{given:?} is two lengths, and {field:?} is one")]
    OneLength {
        /// Where it was said.
        field: SetupField,
        /// The text as given.
        given: String,
    },
    /// The two ends of a taper, and not how far they are apart.
    #[error("a taper needs the length over which it tapers")]
    TaperWithoutCover,
    /// A taper of which an end is thinner than the cord.
    #[error("an end of {end} is thinner than a cord of {cord}")]
    EndTooThin {
        /// Diameter of the thin end.
        end: Millimetres,
        /// Diameter of the cord.
        cord: Millimetres,
    },
    /// A hole that leaves nothing of the mat.
    #[error("a hole of {hole} does not go into a mat of {outer}")]
    HoleTooWide {
        /// From edge to edge of the mat.
        outer: Millimetres,
        /// Across the hole.
        hole: Millimetres,
    },
    /// A ball or a mat, which is covered whole, and a length to be covered.
    #[error("{0:?} is covered whole, and a length to be covered is said besides")]
    WholeWithCover(SetupField),
    /// Neither yes nor no.
    #[error("in place is yes or no, not {given:?}")]
    InPlaceUnknown {
        /// The text as given.
        given: String,
    },
    /// In place, and not on what.
    #[error("what is tied in place is tied on something, and nothing is named")]
    InPlaceOnNothing,
    /// Something about a tube, for what is tied in place.
    #[error("{0:?} belongs to a tube, and what is tied in place takes none")]
    InPlaceWithTube(SetupField),
    /// Something about a tube, for a mat.
    #[error("{0:?} belongs to a tube, and a mat takes none")]
    MatWithTube(SetupField),
}

impl GroundError {
    /// The field that has to be said otherwise.
    pub const fn field(&self) -> SetupField {
        match self {
            Self::Twice(_, field)
            | Self::Halves { field, .. }
            | Self::OneLength { field, .. }
            | Self::InPlaceWithTube(field)
            | Self::MatWithTube(field) => *field,
            Self::EndTooThin { .. } | Self::InPlaceOnNothing => SetupField::Object,
            Self::TaperWithoutCover | Self::WholeWithCover(_) => SetupField::Cover,
            Self::HoleTooWide { .. } => SetupField::Mat,
            Self::InPlaceUnknown { .. } => SetupField::InPlace,
        }
    }
}
