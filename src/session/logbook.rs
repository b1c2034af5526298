//! Writing down what was used for a tie. Everything here reads or writes the disk.

use std::path::PathBuf;

use crate::shelf::{Entry, Shelf, ShelfError, ShelfReading, Tie};
use crate::words::{Sentence, Words};

/// What the log's form begins with: what was logged before, or what is known of the tie.
///
/// # Errors
/// Why what was logged before cannot be read.
pub fn entry_for(shelf: &Shelf, tie: &Tie) -> Result<ShelfReading<Entry>, ShelfError> {
    let fresh = Entry::of(tie);
    let renewed = |entry: Option<Entry>| match entry {
        Some(entry) => Entry {
            name: fresh.name,
            work_time: fresh.work_time,
            ..entry
        },
        None => fresh,
    };
    Ok(shelf.entry(tie.id())?.map(renewed))
}

/// Why an entry was not kept.
#[derive(Clone, Debug)]
pub enum NotLogged {
    /// There is no such photograph.
    NoPhotograph(String),
    /// The shelf could not.
    Shelf(ShelfError),
}

impl NotLogged {
    /// The sentence for it.
    pub fn sentence(&self, words: &Words) -> Sentence {
        match self {
            Self::NoPhotograph(file) => words.notice("log-no-photograph", &[("file", file)]),
            Self::Shelf(error) => {
                let reason = words.shelf_error(error);
                words.notice("log-not-kept", &[("reason", reason.shown())])
            }
        }
    }
}

/// Keeps what was used for a tie. Of the photograph only the path is kept, when there is such
/// a file.
///
/// # Errors
/// Why it is not kept.
pub fn keep_entry(shelf: &Shelf, entry: &Entry) -> Result<(), NotLogged> {
    let mut entry = entry.clone();
    if !entry.photograph.is_empty() {
        let path = as_path(&entry.photograph);
        if !path.is_file() {
            return Err(NotLogged::NoPhotograph(entry.photograph));
        }
        let whole = std::path::absolute(&path).unwrap_or(path);
        entry.photograph = whole.display().to_string();
    }
    shelf.log(&entry).map(drop).map_err(|error| {
        log::warn!("an entry is not kept: {error}");
        NotLogged::Shelf(error)
    })
}

/// A path as a person types it: `~/` is the home folder.
pub fn as_path(text: &str) -> PathBuf {
    let text = text.trim();
    match (text.strip_prefix("~/"), directories::UserDirs::new()) {
        (Some(rest), Some(dirs)) => dirs.home_dir().join(rest),
        _ => PathBuf::from(text),
    }
}
