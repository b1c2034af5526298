//! One worker at a tie: a locked file for each tie in hand.

use std::collections::HashMap;
use std::fs::{File, OpenOptions, TryLockError};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use super::{ShelfError, TieId};
use crate::files::FileAction;

/// Enters a mutex even after a thread has panicked in it: what the shelf keeps in one is whole
/// between any two statements.
pub(super) fn enter<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// The locks that this program holds in one folder.
#[derive(Debug)]
pub(super) struct Locks {
    folder: PathBuf,
    held: Mutex<HashMap<TieId, File>>,
}

/// Keeps everybody else off a tie while it lives. Let it go with [`drop`], or give it to
/// [`super::Keeper::put_away`] when something may still have to be saved.
#[derive(Debug)]
#[must_use = "the tie is free again as soon as this is dropped"]
pub struct Held {
    locks: Arc<Locks>,
    id: TieId,
}

impl Held {
    /// The tie in hand.
    pub const fn id(&self) -> &TieId {
        &self.id
    }
}

impl Drop for Held {
    fn drop(&mut self) {
        if let Some(file) = enter(&self.locks.held).remove(&self.id) {
            free(&file);
        }
    }
}

impl Locks {
    pub(super) fn new(folder: PathBuf) -> Self {
        Self {
            folder,
            held: Mutex::default(),
        }
    }

    /// Takes the lock of a tie, in a folder that exists.
    pub(super) fn hold(self: &Arc<Self>, id: &TieId) -> Result<Held, ShelfError> {
        let mut held = enter(&self.held);
        if held.contains_key(id) {
            return Err(ShelfError::InUse { id: id.clone() });
        }
        held.insert(id.clone(), self.lock(id)?);
        Ok(Held {
            locks: Arc::clone(self),
            id: id.clone(),
        })
    }

    /// Makes sure that nobody else works at a tie: nothing to do when this program holds it,
    /// else its lock for as long as the answer lives.
    pub(super) fn keep_off(self: &Arc<Self>, id: &TieId) -> Result<Option<Held>, ShelfError> {
        let mut held = enter(&self.held);
        if !held.contains_key(id) {
            drop(held);
            return self.hold(id).map(Some);
        }
        // When the folder was deleted and made again, the lock went with it.
        if !self.path(id).exists() {
            held.insert(id.clone(), self.lock(id)?);
        }
        Ok(None)
    }

    /// Whether this or another program works at a tie.
    pub(super) fn is_held(&self, id: &TieId) -> bool {
        if enter(&self.held).contains_key(id) {
            return true;
        }
        File::open(self.path(id))
            .is_ok_and(|file| matches!(file.try_lock(), Err(TryLockError::WouldBlock)))
    }

    fn path(&self, id: &TieId) -> PathBuf {
        self.folder.join(format!("{id}.lock"))
    }

    fn lock(&self, id: &TieId) -> Result<File, ShelfError> {
        let path = self.path(id);
        let file = OpenOptions::new()
            .create(true)
            .truncate(false)
            .write(true)
            .open(&path)
            .map_err(ShelfError::io(FileAction::Lock, &path))?;
        match file.try_lock() {
            Ok(()) => Ok(file),
            Err(TryLockError::WouldBlock) => Err(ShelfError::InUse { id: id.clone() }),
            Err(TryLockError::Error(error)) => Err(ShelfError::io(FileAction::Lock, &path)(error)),
        }
    }
}

/// Unlocks a file. Closing it is not enough: a program that is just being
/// started from this one has it open too, for a moment.
fn free(file: &File) {
    // When that fails, closing the file has to do.
    let _ = file.unlock();
}
