//! What can be wrong with the cord, tube or factor that somebody describes.

use thiserror::Error;

use strum::IntoStaticStr;

/// A count that is described at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Counted {
    /// Rows of holes in a ring.
    Rows,
    /// Holes in one row.
    Holes,
}

/// Why a description cannot be used. The words for it that a tyer reads are made elsewhere; its
/// own are for logs and for users of the library.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum BenchError {
    /// A count outside its bounds.
    #[error("{counted:?} must be {least} to {most}, not {given}")]
    OutOfRange {
        /// Which count.
        counted: Counted,
        /// The count as given.
        given: usize,
        /// The smallest allowed.
        least: usize,
        /// The largest allowed.
        most: usize,
    },
    /// The list of rows holds something other than whole numbers.
    #[error("rows are whole numbers and commas, not {given:?}")]
    RowsUnreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// A set-screw thread that is not in the table of hex keys.
    #[error("{given:?} is not a set-screw thread in the table")]
    UnknownThread {
        /// The text as given, trimmed.
        given: String,
    },
    /// A correction factor outside [`super::Correction::BOUNDS`] or not a number.
    #[error("a correction must be {} to {}, not {given}", super::Correction::BOUNDS.start(), super::Correction::BOUNDS.end())]
    Correction {
        /// The factor as given.
        given: f64,
    },
    /// A pace that is not a positive time.
    #[error("a pace must be more than 0 seconds a leg, not {given}")]
    Pace {
        /// Seconds for a leg as given.
        given: f64,
    },
    /// The passes shared out among cords do not add up to the passes of the knot.
    #[error("the cords make {shared} passes, the knot has {passes}")]
    PassesShared {
        /// Passes that the cords make together.
        shared: usize,
        /// Passes of the knot.
        passes: u16,
    },
    /// How closely a cord lies: not a number within [`super::Give::BOUNDS`].
    #[error("a cord's give must be {} to {}, not {given:?}", super::Give::BOUNDS.start(), super::Give::BOUNDS.end())]
    Give {
        /// The text as given, trimmed.
        given: String,
    },
    /// A price that is no number of 0 or more.
    #[error("a price must be 0 to {}, not {given:?}", super::Prices::BOUNDS.end())]
    Price {
        /// The text as given, trimmed.
        given: String,
    },
}
