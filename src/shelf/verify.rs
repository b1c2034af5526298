//! Looking over every document on the shelf.

use std::path::{Path, PathBuf};

use super::names::Named;
use super::schema::has_checksum;
use super::{Fault, LARGEST_TIE, Shelf, ShelfError, files, read_entry, read_tie, schema};

/// A file on the shelf, and whether it is whole and believed.
#[derive(Clone, Debug)]
pub struct Verified {
    /// The file.
    pub file: PathBuf,
    /// How it is.
    pub state: State,
}

/// Whether a document is whole and believed.
#[derive(Clone, Debug)]
pub enum State {
    /// Its contents are those that were written.
    Whole,
    /// It can be read but carries no checksum to hold it against.
    Unchecked,
    /// It is not believed.
    Bad(ShelfError),
    /// It was damaged and is kept out of the way.
    SetAside,
}

impl Shelf {
    /// Reads every document, the previous copies and the log too, and changes nothing. Sorted
    /// by name, the ties first.
    ///
    /// # Errors
    /// [`ShelfError::Io`] when the folder cannot be read.
    pub fn verify(&self) -> Result<Vec<Verified>, ShelfError> {
        let tie = |document: &[u8]| read_tie(document).map(drop);
        let entry = |document: &[u8]| read_entry(document).map(drop);
        let ties = self.documents()?.into_iter().map(|file| Verified {
            state: state_of(&file, tie),
            file,
        });
        let log = self.log_documents()?.into_iter().map(|file| Verified {
            state: state_of(&file, entry),
            file,
        });
        Ok(ties.chain(log).collect())
    }
}

fn state_of(file: &Path, reader: impl FnOnce(&[u8]) -> Result<(), Fault>) -> State {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    match Named::of(&name) {
        Named::Damaged => State::SetAside,
        Named::Stranger => State::Bad(ShelfError::Stranger {
            file: file.to_owned(),
        }),
        Named::Copy(_) => checked(file, reader).unwrap_or_else(State::Bad),
    }
}

fn checked(
    file: &Path,
    reader: impl FnOnce(&[u8]) -> Result<(), Fault>,
) -> Result<State, ShelfError> {
    let document = files::read(file, LARGEST_TIE)?;
    let faulty = |fault| ShelfError::Unreadable {
        file: file.to_owned(),
        fault,
    };
    reader(&document).map_err(faulty)?;
    let fields = schema::json(&document).map_err(faulty)?;
    Ok(match fields.as_object() {
        Some(fields) if has_checksum(fields) => State::Whole,
        _ => State::Unchecked,
    })
}
