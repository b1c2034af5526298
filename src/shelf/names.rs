//! Which files of a folder are documents of ties.

use std::collections::BTreeSet;
use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use super::{Shelf, ShelfError, Tie, TieId};
use crate::files::{DiskCall, DocumentFile, FileAction, FileName, FileRole};

/// What the name of a JSON file says.
pub(super) enum NamedFile {
    /// The document of a tie or the copy before it.
    Copy(TieId),
    /// A copy that was set aside.
    SetAside,
    /// A file that somebody else put there.
    Stranger,
}

impl NamedFile {
    /// Reads the name of a file.
    pub(super) fn of(file: &Path) -> Self {
        let name = file.file_name().unwrap_or_default().to_string_lossy();
        let Some(FileName { stem, role }) = FileName::parse(&name) else {
            return Self::Stranger;
        };
        match (TieId::parse(stem), role) {
            (Ok(id), Some(FileRole::Current | FileRole::Previous)) => Self::Copy(id),
            (Ok(_), Some(FileRole::SetAside)) => Self::SetAside,
            _ => Self::Stranger,
        }
    }
}

/// The documents in a folder, by the names of their files.
pub(super) struct Names {
    /// All ties of which there is a copy.
    pub(super) ids: BTreeSet<TieId>,
    /// The JSON files with other names.
    pub(super) strangers: Vec<PathBuf>,
}

impl Names {
    /// Looks through a folder.
    pub(super) fn in_folder(folder: &Path) -> Result<Self, ShelfError> {
        let (mut ids, mut strangers) = (BTreeSet::new(), Vec::new());
        for path in documents_in(folder)? {
            match NamedFile::of(&path) {
                NamedFile::Copy(id) => {
                    ids.insert(id);
                }
                NamedFile::SetAside => {}
                NamedFile::Stranger => strangers.push(path),
            }
        }
        Ok(Self { ids, strangers })
    }
}

/// The JSON files in a folder, sorted by name; none when there is no such folder.
pub(super) fn documents_in(folder: &Path) -> Result<Vec<PathBuf>, ShelfError> {
    let _call = DiskCall::begin();
    let unlisted = || ShelfError::io(FileAction::List, folder);
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        entries => entries.map_err(unlisted())?,
    };
    let mut files = Vec::new();
    for entry in entries {
        let file = entry.map_err(unlisted())?.path();
        let name = file.file_name().unwrap_or_default().to_string_lossy();
        if FileName::parse(&name).is_some() && !name.starts_with('.') {
            files.push(file);
        }
    }
    files.sort();
    Ok(files)
}

/// The document of a tie in a folder.
pub(super) fn tie_in(folder: &Path, id: &TieId) -> DocumentFile<Tie> {
    DocumentFile::named(folder, id.as_str()).keeping_previous()
}

impl Shelf {
    /// Where the document of a tie is.
    pub(super) fn file(&self, id: &TieId) -> DocumentFile<Tie> {
        tie_in(self.folder(), id)
    }
}
