//! Reading a tie, and repairing what is damaged.

use std::path::PathBuf;
use std::sync::TryLockError;

use super::{DocumentError, Presses, Shelf, ShelfError, Tie, TieId};
use crate::files::{self, DocumentReading, FileError, FileTrouble, LARGEST_DOCUMENT, Reading};

/// Something on the shelf that has to be told.
#[derive(Clone, Debug)]
pub struct ShelfTrouble {
    /// The tie it is about, when the file has the name of one.
    pub id: Option<TieId>,
    /// What is wrong, and with which file.
    pub error: ShelfError,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// The copy before it, when that is used in its place.
    pub copy_used: Option<CopyBefore>,
}

/// What is known of the copy before a damaged document.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CopyBefore {
    /// A tie as it stood so many presses earlier.
    PressesBehind(u64),
    /// A tie as it stood earlier; how much is not known.
    SomeWayBehind,
    /// Something that has no presses.
    AsKeptBefore,
}

/// What was read from the shelf, and what has to be told about that.
pub type ShelfReading<T> = Reading<T, ShelfTrouble>;

impl ShelfTrouble {
    /// What was found wrong with a file of a tie, that of its log among them.
    pub(super) fn with_tie(
        id: &TieId,
        trouble: FileTrouble<DocumentError>,
        copy: impl FnOnce(&FileTrouble<DocumentError>) -> CopyBefore,
    ) -> Self {
        let copy_used = trouble.previous_used.then(|| copy(&trouble));
        Self {
            id: Some(id.clone()),
            copy_used,
            error: trouble.error.into(),
            moved_to: trouble.moved_to,
        }
    }

    /// What was found wrong with the tubes and cords kept by name.
    pub(super) fn with_presets(trouble: FileTrouble<DocumentError>) -> Self {
        Self {
            id: None,
            copy_used: trouble.previous_used.then_some(CopyBefore::AsKeptBefore),
            error: trouble.error.into(),
            moved_to: trouble.moved_to,
        }
    }

    /// A file that has not the name of a tie.
    pub(super) fn stranger(file: PathBuf) -> Self {
        Self::from(ShelfError::Stranger { file })
    }
}

impl From<ShelfError> for ShelfTrouble {
    /// What the shelf refused, with nothing done about it.
    fn from(error: ShelfError) -> Self {
        Self {
            id: None,
            error,
            moved_to: None,
            copy_used: None,
        }
    }
}

/// What was read, under the name of its file, whatever name stands inside.
pub(super) fn named(id: &TieId, reading: DocumentReading<Tie>) -> ShelfReading<Option<Tie>> {
    let named = reading.map(|tie| {
        tie.map(|tie| Tie {
            id: id.clone(),
            ..tie
        })
    });
    named.map_troubles(|tie, trouble| {
        ShelfTrouble::with_tie(id, trouble, |trouble| behind(tie.as_ref(), trouble))
    })
}

/// How far the copy before it is behind a damaged document, as far as that still tells.
fn behind(copy: Option<&Tie>, trouble: &FileTrouble<DocumentError>) -> CopyBefore {
    let damaged = match (&trouble.moved_to, &trouble.error) {
        (Some(aside), _) => Some(aside),
        (None, FileError::Unreadable { file, .. }) => Some(file),
        _ => None,
    };
    let presses = damaged
        .and_then(|file| files::read_bytes(file, LARGEST_DOCUMENT).ok())
        .and_then(|damaged| Presses::salvage(&damaged));
    let behind = presses
        .zip(copy)
        .and_then(|(presses, copy)| presses.0.checked_sub(copy.presses.0));
    behind.map_or(CopyBefore::SomeWayBehind, CopyBefore::PressesBehind)
}

/// The tie that was read, or the first thing that keeps it from being read.
pub(super) fn tie_of(
    id: &TieId,
    reading: ShelfReading<Option<Tie>>,
) -> Result<ShelfReading<Tie>, ShelfError> {
    reading.found().map_err(|troubles| {
        troubles.into_iter().next().map_or_else(
            || ShelfError::NoSuchTie { id: id.clone() },
            |trouble| trouble.error,
        )
    })
}

impl Shelf {
    /// Reads a tie, and repairs it unless somebody works at it or the shelf is being changed.
    pub(super) fn examine_or_repair(&self, id: &TieId) -> ShelfReading<Option<Tie>> {
        let examined = self.examine(id);
        if !examined.is_troubled() {
            return examined;
        }
        // Whoever lists the shelf must not wait for a save that is going on.
        let _changing = match self.shared.changing.try_lock() {
            Err(TryLockError::WouldBlock) => return examined,
            changing => changing,
        };
        match self.locks.hold(id) {
            Ok(_held) => self.repair(id),
            Err(_) => examined,
        }
    }

    /// Reads a tie and changes nothing.
    pub(super) fn examine(&self, id: &TieId) -> ShelfReading<Option<Tie>> {
        named(id, self.file(id).read())
    }

    /// Reads a tie that nobody else works at, sets damaged copies aside and puts the previous
    /// copy in the place of a damaged document.
    pub(super) fn repair(&self, id: &TieId) -> ShelfReading<Option<Tie>> {
        named(id, self.file(id).repair())
    }
}
