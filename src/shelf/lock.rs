//! One worker at a tie: a locked file for each tie in hand.

use std::collections::HashMap;
use std::io::ErrorKind;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use jiff::Timestamp;

use super::{ShelfError, TieId};
use crate::files::{FileError, FileLock};

/// Enters a mutex even after a thread has panicked in it: what the shelf keeps in one is whole
/// between any two statements.
pub(super) fn enter<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// The locks that this program holds in one folder.
#[derive(Debug)]
pub(super) struct Locks {
    folder: PathBuf,
    held: Mutex<HashMap<TieId, Hold>>,
}

/// What keeps others off a tie.
#[derive(Debug)]
enum Hold {
    /// A lock for all programs.
    Locked(FileLock),
    /// Nothing beyond this program yet: the disk let no lock be made when the tie was taken up, as it was
    /// touched then.
    Owed(Timestamp),
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
        enter(&self.locks.held).remove(&self.id);
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
        held.insert(id.clone(), Hold::Locked(self.lock(id)?));
        Ok(self.hand_over(id))
    }

    /// Takes a tie that this program does not hold and whose lock the disk lets nobody make: that is
    /// made up for before anything is saved.
    pub(super) fn hold_owing(self: &Arc<Self>, id: &TieId, touched: Timestamp) -> Held {
        enter(&self.held).insert(id.clone(), Hold::Owed(touched));
        self.hand_over(id)
    }

    fn hand_over(self: &Arc<Self>, id: &TieId) -> Held {
        Held {
            locks: Arc::clone(self),
            id: id.clone(),
        }
    }

    /// Makes sure that nobody else works at a tie: nothing to do when this program holds it,
    /// else its lock for as long as the answer lives. `touched` says when the tie on the shelf was
    /// touched last.
    pub(super) fn keep_off(
        self: &Arc<Self>,
        id: &TieId,
        touched: impl FnOnce() -> Option<Timestamp>,
    ) -> Result<Option<Held>, ShelfError> {
        let mut held = enter(&self.held);
        if !held.contains_key(id) {
            drop(held);
            return self.hold(id).map(Some);
        }
        let lock = match held.get(id) {
            Some(Hold::Locked(lock)) if lock.is_in_place() => return Ok(None),
            Some(Hold::Owed(as_taken)) => {
                let lock = self.lock(id)?;
                // Whoever could make a lock before has worked at it meanwhile.
                if touched() != Some(*as_taken) {
                    return Err(ShelfError::InUse { id: id.clone() });
                }
                lock
            }
            // When it was deleted, or the folder around it, others may have taken another one.
            _ => self.lock(id)?,
        };
        held.insert(id.clone(), Hold::Locked(lock));
        Ok(None)
    }

    /// Whether this or another program works at a tie.
    pub(super) fn is_held(&self, id: &TieId) -> bool {
        if enter(&self.held).contains_key(id) {
            return true;
        }
        FileLock::is_taken(&self.path(id))
    }

    fn path(&self, id: &TieId) -> PathBuf {
        self.folder.join(format!("{id}.lock"))
    }

    fn lock(&self, id: &TieId) -> Result<FileLock, ShelfError> {
        FileLock::take(&self.path(id)).map_err(|error| match error {
            FileError::Io { source, .. } if source.kind() == ErrorKind::WouldBlock => {
                ShelfError::InUse { id: id.clone() }
            }
            error => error.into(),
        })
    }
}
