//! A system that is asked for no windows yet: paths are typed.

use std::path::{Path, PathBuf};
use std::sync::atomic::AtomicBool;

use super::{DialogError, FileDialogs, NoDialogs, OpenDialog, SaveDialog};

/// Stands where the desktop portal stands elsewhere.
#[derive(Clone, Debug, Default)]
pub struct Portal;

impl Portal {
    /// The one of the session.
    pub const fn of_session() -> Self {
        Self
    }
}

impl FileDialogs for Portal {
    fn save(&self, asked: &SaveDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        NoDialogs.save(asked, stop)
    }

    fn open(&self, asked: &OpenDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        NoDialogs.open(asked, stop)
    }

    fn show(&self, file: &Path) -> Result<(), DialogError> {
        NoDialogs.show(file)
    }
}
