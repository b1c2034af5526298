//! Why a PDF was not written to its end.

use std::io;

use thiserror::Error;

/// Why a PDF was not written to its end.
#[derive(Debug, Error)]
pub enum PdfError {
    /// The file could not be written.
    #[error(transparent)]
    Unwritable(#[from] io::Error),
    /// A face could not be put into it.
    #[error("the letters can't go into the PDF: {0}")]
    Face(String),
    /// It was stopped by whoever asked for it.
    #[error("stopped after {done} of {count}")]
    Stopped {
        /// Pages that were made.
        done: u32,
        /// Pages of the whole.
        count: u32,
    },
}
