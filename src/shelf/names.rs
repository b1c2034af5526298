//! The names of files on the shelf.

use std::collections::BTreeSet;
use std::fs;
use std::io::ErrorKind;
use std::path::PathBuf;

use super::{Shelf, ShelfError, TieId};

/// What the name of a JSON file says.
pub(super) enum Named {
    /// The document of a tie or the copy before it.
    Copy(TieId),
    /// A copy that was set aside.
    Damaged,
    /// Anything else.
    Stranger,
}

impl Named {
    /// Reads the name of a file that ends in `.json`.
    pub(super) fn of(name: &str) -> Self {
        let stem = name.strip_suffix(".json").unwrap_or(name);
        let (id, kind) = match stem.split_once('.') {
            Some((id, kind)) => (id, Some(kind)),
            None => (stem, None),
        };
        match (TieId::parse(id), kind) {
            (Ok(id), None | Some("previous")) => Self::Copy(id),
            (Ok(_), Some(kind)) if kind.starts_with("damaged-") => Self::Damaged,
            _ => Self::Stranger,
        }
    }
}

impl Shelf {
    pub(super) fn document(&self, id: &TieId) -> PathBuf {
        self.folder().join(format!("{id}.json"))
    }

    pub(super) fn previous(&self, id: &TieId) -> PathBuf {
        self.folder().join(format!("{id}.previous.json"))
    }

    /// The ids of all ties of which there is a copy, and the JSON files with other names.
    pub(super) fn names(&self) -> Result<(BTreeSet<TieId>, Vec<PathBuf>), ShelfError> {
        let (mut ids, mut strangers) = (BTreeSet::new(), Vec::new());
        for path in self.documents()? {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            match Named::of(&name) {
                Named::Copy(id) => {
                    ids.insert(id);
                }
                Named::Damaged => {}
                Named::Stranger => strangers.push(path),
            }
        }
        Ok((ids, strangers))
    }

    /// The JSON files in the folder, sorted by name.
    pub(super) fn documents(&self) -> Result<Vec<PathBuf>, ShelfError> {
        let mut files = self.paths()?;
        files.retain(|file| {
            let name = file.file_name().unwrap_or_default().to_string_lossy();
            name.ends_with(".json") && !name.starts_with('.')
        });
        files.sort();
        Ok(files)
    }

    /// Everything in the folder, in no order.
    pub(super) fn paths(&self) -> Result<Vec<PathBuf>, ShelfError> {
        let entries = match fs::read_dir(self.folder()) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
            entries => entries.map_err(ShelfError::io("list", self.folder()))?,
        };
        entries
            .map(|entry| entry.map(|entry| entry.path()))
            .collect::<Result<_, _>>()
            .map_err(ShelfError::io("list", self.folder()))
    }
}
