//! One writer at a document: a locked file beside it.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, Instant};

use super::waiting::DiskCall;
use super::{FileAction, FileError, bytes};

/// How long a writer waits for another one. A change takes a moment; who takes longer hangs.
const PATIENCE: Duration = Duration::from_secs(2);
/// Between two tries.
const PAUSE: Duration = Duration::from_millis(5);

/// Keeps other writers off while it lives, those of this program among them.
#[derive(Debug)]
#[must_use = "others may write as soon as this is dropped"]
pub struct FileLock {
    file: File,
    path: PathBuf,
}

impl FileLock {
    /// Takes the lock at a path, if nobody has it. The file is made when it is not there, and stays.
    ///
    /// # Errors
    /// [`FileError::Io`], of the kind [`ErrorKind::WouldBlock`] when somebody has it.
    pub fn take(path: &Path) -> Result<Self, FileError> {
        loop {
            let file = try_lock(path).map_err(FileError::io(FileAction::Lock, path))?;
            let lock = Self {
                file,
                path: path.to_owned(),
            };
            // Somebody may have removed it between opening and locking.
            if lock.is_in_place() {
                return Ok(lock);
            }
        }
    }

    /// Takes the lock beside a document, and waits a little for a writer that has it.
    ///
    /// # Errors
    /// As [`FileLock::take`], when the other one takes too long.
    pub fn beside(document: &Path) -> Result<Self, FileError> {
        Self::wait_for(&document.with_extension("lock"), PATIENCE)
    }

    /// Takes the lock at a path, in a folder that is made when it is not there, and waits at most this
    /// long for whoever has it.
    ///
    /// # Errors
    /// As [`FileLock::take`], when the other one takes too long.
    pub fn wait_for(path: &Path, at_most: Duration) -> Result<Self, FileError> {
        bytes::make_folder(bytes::folder_of(path))?;
        let until = Instant::now() + at_most;
        loop {
            match Self::take(path) {
                Err(FileError::Io { source, .. })
                    if source.kind() == ErrorKind::WouldBlock && Instant::now() < until =>
                {
                    thread::sleep(PAUSE);
                }
                taken => return taken,
            }
        }
    }

    /// Whether the file that is locked is still the one at its path: where it was removed, others
    /// may have locked another one.
    pub fn is_in_place(&self) -> bool {
        is_same(&self.file, &self.path)
    }

    /// Whether somebody holds the lock at a path just now.
    pub fn is_taken(path: &Path) -> bool {
        File::open(path).is_ok_and(|file| matches!(file.try_lock(), Err(TryLockError::WouldBlock)))
    }
}

impl Drop for FileLock {
    /// Unlocks the file. To close it would not be enough: a program that is being started from this
    /// one has the open file too for a moment, and the lock with it.
    fn drop(&mut self) {
        // When that fails, closing the file has to do.
        let _ = self.file.unlock();
    }
}

fn try_lock(path: &Path) -> io::Result<File> {
    let _call = DiskCall::begin();
    let mut open = OpenOptions::new();
    open.create(true).truncate(false).write(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut open, 0o600);
    let file = open.open(path)?;
    match file.try_lock() {
        Ok(()) => Ok(file),
        Err(TryLockError::WouldBlock) => Err(ErrorKind::WouldBlock.into()),
        Err(TryLockError::Error(error)) => Err(error),
    }
}

#[cfg(unix)]
fn is_same(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt as _;

    match (file.metadata(), std::fs::metadata(path)) {
        (Ok(held), Ok(there)) => (held.dev(), held.ino()) == (there.dev(), there.ino()),
        _ => false,
    }
}

/// Only on Unix can a file be removed while it is open, so that another one can stand at its path.
#[cfg(not(unix))]
fn is_same(_: &File, path: &Path) -> bool {
    path.exists()
}
