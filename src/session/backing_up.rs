//! Everything that is kept, in one file and out of it again: the shelf, and the settings beside it.
//! Everything here reads or writes the disk.

use std::path::Path;

use crate::files::{FileError, Reading};
use crate::settings::SettingsFile;
use crate::shelf::{Backup, IfThere, Restored, Shelf, ShelfError, ShelfReading};

/// Writes the shelf, and the settings at a path, to one file. What cannot be read of either comes out
/// as a trouble.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{back_up, new_tie};
/// use marlinspeak::shelf::{IfThere, Shelf};
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path().join("ties")).unwrap();
/// let bell_rope = Plan::read("3", "5", "2", "").unwrap();
/// shelf.begin(new_tie(&bell_rope)).unwrap();
/// let file = folder.path().join("all of it");
/// let backup = back_up(&shelf, None, &file, IfThere::Refuse).unwrap().untroubled().unwrap();
/// assert_eq!((backup.ties, backup.logged, backup.left_out), (1, 0, 0));
/// // A file that is there already stays as it is.
/// assert!(back_up(&shelf, None, &file, IfThere::Refuse).is_err());
/// ```
///
/// # Errors
/// As [`Shelf::backup`].
pub fn back_up(
    shelf: &Shelf,
    settings: Option<&Path>,
    file: &Path,
    if_there: IfThere,
) -> Result<ShelfReading<Backup>, ShelfError> {
    let settings = settings.map_or(Reading::whole(None), SettingsFile::document);
    shelf.backup_with(file, if_there, settings)
}

/// Puts everything of a backup back; the settings at a path only where there are none. Says whether
/// those came.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{back_up, bring_back, new_tie};
/// use marlinspeak::shelf::{IfThere, Shelf};
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = |name| Shelf::open(folder.path().join(name)).unwrap();
/// let (old, new) = (shelf("old"), shelf("new"));
/// let bell_rope = Plan::read("3", "5", "2", "").unwrap();
/// old.begin(new_tie(&bell_rope)).unwrap();
/// let file = folder.path().join("all of it");
/// let backup = back_up(&old, None, &file, IfThere::Refuse).unwrap();
/// assert!(backup.untroubled().is_ok());
/// let (restored, settings_came) = bring_back(&new, None, &file).unwrap().untroubled().unwrap();
/// assert_eq!((restored.ties.len(), settings_came), (1, false));
/// assert_eq!(new.list().unwrap().untroubled().unwrap()[0].plan, bell_rope);
/// ```
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
                    log::warn!("line {line} of a backup {fault}");
                    restored.faults.push((line, fault.into()));
                }
                Err(error) => gathering.add(ShelfError::from(error).into()),
            }
        }
        Ok((restored, came))
    })
}
