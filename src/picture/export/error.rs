//! Why a picture could not be made a file.

use thiserror::Error;

use crate::knot::KnotError;

/// Why a picture could not be made a file.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum ExportError {
    /// The PNG encoder refused, with its own words.
    #[error("the picture can't be encoded as PNG: {0}")]
    Png(String),
    /// The knot to be pictured could not be built.
    #[error(transparent)]
    Knot(#[from] KnotError),
}
