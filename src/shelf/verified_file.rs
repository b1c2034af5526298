//! What is found when a file of the shelf is looked over.

use std::path::{Path, PathBuf};

use super::names::{NamedFile, documents_in};
use super::{DocumentError, ShelfError};
use crate::files::{Document, DocumentFile};

/// A file on the shelf, and whether it is whole and believed.
#[derive(Clone, Debug)]
pub struct VerifiedFile {
    /// Where the document is.
    pub file: PathBuf,
    /// Whether it is whole and believed.
    pub state: DocumentState,
}

/// Whether a document is whole and believed.
#[derive(Clone, Debug)]
pub enum DocumentState {
    /// Its contents are those that were written.
    Whole,
    /// It can be read but carries no checksum to hold it against.
    Unchecked,
    /// It is not believed.
    Bad(ShelfError),
    /// It was damaged and is kept out of the way.
    SetAside,
}

/// Looks over every document of a folder.
pub(super) fn verify_folder<D>(folder: &Path) -> Result<Vec<VerifiedFile>, ShelfError>
where
    D: Document<Error = DocumentError>,
{
    let verify = |file: PathBuf| VerifiedFile {
        state: state_of::<D>(&file),
        file,
    };
    Ok(documents_in(folder)?.into_iter().map(verify).collect())
}

fn state_of<D: Document<Error = DocumentError>>(file: &Path) -> DocumentState {
    match NamedFile::of(file) {
        NamedFile::SetAside => DocumentState::SetAside,
        NamedFile::Stranger => DocumentState::Bad(ShelfError::Stranger {
            file: file.to_owned(),
        }),
        NamedFile::Copy(_) => match DocumentFile::<D>::verify(file) {
            Ok(true) => DocumentState::Whole,
            Ok(false) => DocumentState::Unchecked,
            Err(error) => DocumentState::Bad(error.into()),
        },
    }
}
