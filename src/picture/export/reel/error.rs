//! Why a moving picture could not be made a file.

use std::fmt;
use std::io;

use thiserror::Error;

/// Why a moving picture could not be made a file.
#[derive(Debug, Error)]
pub enum ReelError {
    /// The file could not be written.
    #[error(transparent)]
    Unwritable(#[from] io::Error),
    /// The encoder refused, with its own words.
    #[error("the pictures can't be encoded: {0}")]
    Encoder(String),
    /// It was stopped before its end by whoever asked for it.
    #[error("stopped after {done} of {count}")]
    Stopped {
        /// Frames that were made.
        done: u32,
        /// Frames of the whole.
        count: u32,
    },
}

impl ReelError {
    pub(super) fn refused(reason: impl fmt::Display) -> Self {
        Self::Encoder(reason.to_string())
    }
}
