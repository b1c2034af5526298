//! Why a picture could not be made a file.

use thiserror::Error;

use crate::knot::KnotError;

/// Why a picture could not be made a file.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum ExportError {
    /// The PNG encoder refused, with its own words.
    #[error("the picture can't be encoded as PNG: {0}")]
    Png(String),
    /// A face or a page was refused by the PDF writer, with its own words.
    #[error("the pages can't be made a PDF: {0}")]
    Pdf(String),
    /// The knot to be pictured could not be built.
    #[error(transparent)]
    Knot(#[from] KnotError),
}
