//! The windows of the system in which a file is chosen, and what the system opens a file with.
//!
//! Every call waits for somebody to choose: none is for the thread of the window. A screen that gets a
//! [`DialogError`] has the path typed instead.

#[cfg_attr(target_os = "linux", path = "portal.rs")]
#[cfg_attr(not(target_os = "linux"), path = "elsewhere.rs")]
mod system;
#[cfg(target_os = "linux")]
mod uri;

use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::atomic::AtomicBool;

use thiserror::Error;

pub use system::Portal;

/// A kind of file that may be chosen: what it is called, and the endings of its names without the dot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileKind {
    /// What it is called, in the words of the tyer.
    pub name: String,
    /// Endings, in small letters.
    pub endings: &'static [&'static str],
}

/// What is asked of a window in which a new file is named.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SaveDialog {
    /// What stands over it.
    pub title: String,
    /// The name that is proposed.
    pub name: String,
    /// The folder that it begins in, if any.
    pub folder: Option<PathBuf>,
    /// The kind of the file.
    pub kind: FileKind,
}

/// What is asked of a window in which a file is chosen that is there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OpenDialog {
    /// What stands over it.
    pub title: String,
    /// The kinds of file that are shown.
    pub kind: FileKind,
}

/// Why the system has no window to show, or what it answered is of no use.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum DialogError {
    /// There is nothing on this system that shows one, or it refuses, or it went away.
    #[error("no window of the system: {0}")]
    Unavailable(String),
    /// What came back names no file on this machine.
    #[error("no file in what the system answers: {0}")]
    Nonsense(String),
}

/// The windows of the system in which a file is chosen.
pub trait FileDialogs: fmt::Debug + Send + Sync {
    /// Has a new file named; none when the tyer thought better of it, or `stop` was raised. The
    /// window itself asks before it lets a file be named that is there.
    ///
    /// # Errors
    /// [`DialogError`] where the path has to be typed instead.
    fn save(&self, asked: &SaveDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError>;

    /// Has a file chosen; none when the tyer thought better of it, or `stop` was raised.
    ///
    /// # Errors
    /// [`DialogError`] where the path has to be typed instead.
    fn open(&self, asked: &OpenDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError>;

    /// Opens a file with whatever the tyer opens such files with.
    ///
    /// # Errors
    /// [`DialogError`] when nothing opens it.
    fn show(&self, file: &Path) -> Result<(), DialogError>;
}

/// A system that has no such windows.
#[derive(Clone, Copy, Debug, Default)]
pub struct NoDialogs;

impl FileDialogs for NoDialogs {
    fn save(&self, _: &SaveDialog, _: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        Err(none())
    }

    fn open(&self, _: &OpenDialog, _: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        Err(none())
    }

    fn show(&self, _: &Path) -> Result<(), DialogError> {
        Err(none())
    }
}

fn none() -> DialogError {
    DialogError::Unavailable("there are none here".to_owned())
}
