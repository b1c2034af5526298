//! Everything that is kept, in one file and out of it again: the shelf, and the settings beside it.
//! Everything here reads or writes the disk.

use std::path::Path;

use crate::files::FileError;
use crate::settings::SettingsFile;
use crate::shelf::{Backup, IfThere, Restored, Shelf, ShelfError, ShelfReading};

/// Writes the shelf, and the settings at a path, to one file.
///
/// # Errors
/// As [`Shelf::backup`].
pub fn back_up(
    shelf: &Shelf,
    settings: Option<&Path>,
    file: &Path,
    if_there: IfThere,
) -> Result<ShelfReading<Backup>, ShelfError> {
    let settings = settings.and_then(SettingsFile::document);
    shelf.backup_with(file, if_there, settings)
}

/// Puts everything of a backup back; the settings at a path only where there are none. Says whether
/// those came.
///
/// # Errors
/// As [`Shelf::restore`].
pub fn bring_back(
    shelf: &Shelf,
    settings: Option<&Path>,
    file: &Path,
) -> Result<ShelfReading<(Restored, bool)>, ShelfError> {
    ShelfReading::try_gather(|gathering| {
        let mut restored = shelf.restore(file)?.hand_on(gathering);
        let mut came = false;
        if let (Some((line, document)), Some(path)) = (restored.settings.take(), settings) {
            match SettingsFile::take_in(path, &document) {
                Ok(is_new) => came = is_new,
                Err(FileError::Unreadable { fault, .. }) => {
                    restored.faults.push((line, fault.into()));
                }
                Err(error) => gathering.add(ShelfError::from(error).into()),
            }
        }
        Ok((restored, came))
    })
}
