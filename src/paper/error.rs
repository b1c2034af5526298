//! Why a sheet or a reel was not made.

use std::io;
use std::path::PathBuf;

use thiserror::Error;

use crate::files::Reason;
use crate::words::{Sentence, Words};

/// What is too long to be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TooLong {
    /// A card, by its crossings.
    Card,
    /// The cards of a class, by their crossings.
    Class,
    /// A strip, by its pages.
    Strip,
    /// A reel, by its crossings.
    Reel,
}

/// Why a sheet or a reel was not made. Nothing that was there is changed, and nothing is left half
/// written.
#[derive(Debug, Error)]
pub enum PaperError {
    /// It would be longer than what is made at most.
    #[error("{what:?} of more than {most}")]
    Long {
        /// What.
        what: TooLong,
        /// So many are made at most.
        most: u32,
    },
    /// A strip is as long as the tube is round, and there is no tube, or none that takes the knot.
    #[error("no tube")]
    NoTube,
    /// A file of this name is there, and is not to be replaced.
    #[error("a file of that name is there")]
    Exists(PathBuf),
    /// The file could not be written.
    #[error("{fault}")]
    Unwritable {
        /// The file.
        file: PathBuf,
        /// What the system says.
        fault: io::Error,
    },
    /// Whoever asked for it wanted no more of it.
    #[error("stopped after {done} of {count}")]
    Stopped {
        /// Pages or frames that were made.
        done: u32,
        /// All of them.
        count: u32,
        /// Whether all of them would have gone into one file, of which there is none now.
        is_one_file: bool,
    },
    /// The writer of the file can't take it.
    #[error("{0}")]
    Refused(String),
}

impl PaperError {
    /// The sentence for a file that can't be written, whoever asked for it.
    pub fn unwritable(file: &str, fault: &io::Error, words: &Words) -> Sentence {
        let reason = words.reason(Reason::of(fault));
        words.notice("sheet-unwritable", &[("file", file), ("reason", &reason)])
    }
}
