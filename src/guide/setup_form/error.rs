//! What can be wrong with what was said about object, cord and tube.

use thiserror::Error;

use super::field::SetupField;
use super::ground_error::GroundError;
use crate::bench::{BenchError, LengthError, Millimetres, Thread, Tube, pin_chord};

/// Why what was said cannot be used. The words for it that a tyer reads are in `i18n/`; the text
/// here is for logs and for users of the library.
///
/// ```
/// use marlinspeak::guide::{Presets, SetupError, SetupField, SetupForm};
///
/// // Rows of holes were named, and no tube that has them.
/// let form = SetupForm::from_iter([(SetupField::Rows, "14,20")]);
/// let error = form.tube(&Presets::default()).unwrap_err();
/// assert_eq!(error, SetupError::WithoutTube(SetupField::Rows));
/// // A form leads the tyer back to the field.
/// assert_eq!(error.field(), SetupField::Rows);
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
pub enum SetupError {
    /// What was said is no length.
    #[error("{field:?}: {error}")]
    Length {
        /// Where it was said.
        field: SetupField,
        /// What is wrong with it.
        error: LengthError,
    },
    /// No row, count or thread.
    #[error(transparent)]
    Bench(#[from] BenchError),
    /// Not said, but needed.
    #[error("{0:?} is missing")]
    Missing(SetupField),
    /// A taper, a ball or a mat, or a knot tied in place, that there cannot be.
    #[error(transparent)]
    Ground(#[from] GroundError),
    /// Neither hard, soft nor flat.
    #[error("a cord is hard, soft or flat, not {given:?}")]
    FirmUnknown {
        /// The text as given.
        given: String,
    },
    /// Both what the cord is like and how closely it lies.
    #[error("what the cord is like is said once, as a word or as a number")]
    GiveTwice,
    /// Neither a length, nor a standard, nor kept.
    #[error("{given:?} is neither a length nor a standard, and no cord of this name is kept")]
    CordUnknown {
        /// The text as given.
        given: String,
        /// Names of the cords that are kept.
        kept: Vec<String>,
    },
    /// A standard that sets no diameter.
    #[error("the standard {designation} sets no diameter")]
    CordUnmeasured {
        /// The designation of the standard.
        designation: &'static str,
    },
    /// Neither a length nor kept.
    #[error("{given:?} is no length, and no tube of this name is kept")]
    TubeUnknown {
        /// The text as given.
        given: String,
        /// Names of the tubes that are kept.
        kept: Vec<String>,
    },
    /// Something about a tube, but no tube.
    #[error("{0:?} belongs to a tube, and no tube is named")]
    WithoutTube(SetupField),
    /// A width of rings, but no rings.
    #[error("a ring has a width, and the tube has no rings")]
    WithoutRings,
    /// Holes that would run into one another.
    #[error("{holes} holes stand {between} apart, and a pin needs {pin}")]
    HolesTooClose {
        /// Holes in the row.
        holes: u16,
        /// From hole to hole.
        between: Millimetres,
        /// What a pin needs at the least.
        pin: Millimetres,
    },
    /// A wall that fills the tube.
    #[error("a wall of {wall} fills a tube of {tube}")]
    WallTooThick {
        /// Thickness of the wall.
        wall: Millimetres,
        /// Diameter of the tube.
        tube: Millimetres,
    },
}

impl SetupError {
    /// The field that has to be said otherwise.
    pub const fn field(&self) -> SetupField {
        match self {
            Self::Length { field, .. } | Self::Missing(field) | Self::WithoutTube(field) => *field,
            Self::Ground(error) => error.field(),
            Self::CordUnknown { .. } | Self::CordUnmeasured { .. } => SetupField::Cord,
            Self::FirmUnknown { .. } => SetupField::Firm,
            Self::GiveTwice | Self::Bench(BenchError::Give { .. }) => SetupField::Give,
            Self::TubeUnknown { .. } => SetupField::Tube,
            Self::WallTooThick { .. } => SetupField::Wall,
            Self::WithoutRings => SetupField::RingWidth,
            Self::Bench(BenchError::UnknownThread { .. }) => SetupField::Thread,
            Self::HolesTooClose { .. } | Self::Bench(_) => SetupField::Rows,
        }
    }
}

/// Whether there can be such a tube.
pub(super) fn check(tube: &Tube) -> Result<(), SetupError> {
    if let Some(wall) = tube.wall
        && 2.0 * wall.get() > tube.diameter.get()
    {
        return Err(SetupError::WallTooThick {
            wall,
            tube: tube.diameter,
        });
    }
    // The thinnest set screw there is, when the thread is not known.
    let thinnest = Thread::all()
        .iter()
        .map(|thread| thread.diameter())
        .min_by(|one, other| one.get().total_cmp(&other.get()));
    let Some(pin) = tube.thread.map(Thread::diameter).or(thinnest) else {
        return Ok(());
    };
    let rows = tube.rows().unwrap_or_default();
    let close = rows
        .iter()
        .find(|&&holes| pin_chord(tube.diameter, holes) < pin);
    close.map_or(Ok(()), |&holes| {
        Err(SetupError::HolesTooClose {
            holes,
            between: pin_chord(tube.diameter, holes),
            pin,
        })
    })
}
