//! Looking over every document on the shelf.

use std::path::{Path, PathBuf};

use super::names::{NamedFile, documents_in};
use super::verified_file::{DocumentState, VerifiedFile};
use super::{DocumentError, Entry, Orders, PresetsFile, Shelf, ShelfError, Tie};
use crate::files::{Document, DocumentFile};

impl Shelf {
    /// Reads every document, the previous copies, the log, the orders, and the tubes and cords kept by
    /// name too, and changes nothing. Sorted by name, the ties first.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read.
    pub fn verify(&self) -> Result<Vec<VerifiedFile>, ShelfError> {
        let mut verified = verify_folder::<Tie>(self.folder())?;
        verified.extend(verify_folder::<Entry>(&self.log_folder())?);
        verified.extend(Orders::beside(self).verify()?);
        verified.extend(PresetsFile::beside(self).verify());
        Ok(verified)
    }
}

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
