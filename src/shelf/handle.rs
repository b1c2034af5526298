//! The handle on a shelf: where it is, and what its threads share.

use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard};

use directories::ProjectDirs;
use jiff::Timestamp;

use super::lock::{Locks, enter};
use super::{ShelfError, clock};
use crate::files::{self, FileAction};

/// A folder of ties. Clones are handles on the same shelf and share its locks.
#[derive(Clone)]
pub struct Shelf {
    folder: PathBuf,
    pub(super) locks: Arc<Locks>,
    pub(super) shared: Arc<Shared>,
}

pub(super) struct Shared {
    /// Held for every change, so that no two threads change the shelf at once.
    pub(super) changing: Mutex<()>,
    /// The newest touch on the shelf, as far as known here.
    pub(super) newest: Mutex<Option<Timestamp>>,
    pub(super) clock: Box<dyn Fn() -> Timestamp + Send + Sync>,
}

impl Shelf {
    /// Opens the shelf in a folder, which is made when it is not there.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be made.
    pub fn open(folder: impl AsRef<Path>) -> Result<Self, ShelfError> {
        Self::open_with_clock(folder, clock::now)
    }

    /// Opens the shelf with a clock of the caller's.
    ///
    /// # Errors
    /// As [`Shelf::open`] has them.
    pub fn open_with_clock(
        folder: impl AsRef<Path>,
        clock: impl Fn() -> Timestamp + Send + Sync + 'static,
    ) -> Result<Self, ShelfError> {
        let folder = folder.as_ref();
        // So that the shelf stays where it is when the program changes its working folder.
        let folder =
            std::path::absolute(folder).map_err(ShelfError::io(FileAction::Make, folder))?;
        files::make_folder(&folder)?;
        Ok(Self {
            locks: Arc::new(Locks::new(folder.clone())),
            folder,
            shared: Arc::new(Shared {
                changing: Mutex::new(()),
                newest: Mutex::new(None),
                clock: Box::new(clock),
            }),
        })
    }

    /// The folder for the ties of this user: `$XDG_DATA_HOME/marlinspeak/ties` or what the
    /// system has in its place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_dir() -> Result<PathBuf, ShelfError> {
        ProjectDirs::from("", "", "marlinspeak")
            .map(|folders| folders.data_dir().join("ties"))
            .ok_or(ShelfError::NoHome)
    }

    /// The folder it is in.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Keeps other threads from changing the shelf.
    pub(super) fn change(&self) -> MutexGuard<'_, ()> {
        enter(&self.shared.changing)
    }
}

impl fmt::Debug for Shelf {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Shelf")
            .field("folder", &self.folder)
            .finish_non_exhaustive()
    }
}
