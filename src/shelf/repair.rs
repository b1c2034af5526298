//! Reading a tie, and repairing what is damaged.

use std::sync::TryLockError;

use super::{CopyBefore, DocumentError, Presses, Shelf, ShelfError, ShelfTrouble, Tie, TieId};
use crate::files::{
    self, DocumentReading, FileError, FileTrouble, LARGEST_DOCUMENT, Reading, TakesAlong, Teller,
};

/// What was read from the shelf, and what has to be told about that.
pub type ShelfReading<T> = Reading<T, ShelfTrouble>;

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
    let no_such_tie = || ShelfError::NoSuchTie { id: id.clone() };
    let found = reading.found();
    found.map_err(|nothing| refusal(nothing).unwrap_or_else(no_such_tie))
}

/// Why nothing could be read: the first thing that was found wrong. It takes along what was found
/// wrong besides, and itself where something was done about it. None when nothing was wrong.
pub(super) fn refusal(nothing: ShelfReading<()>) -> Option<ShelfError> {
    let mut refusal = Refusal(None);
    nothing.hand_on(&mut refusal);
    refusal.0
}

struct Refusal(Option<ShelfError>);

impl Teller<ShelfTrouble> for Refusal {
    fn tell_of(&mut self, mut troubles: Vec<ShelfTrouble>) {
        let Some(first) = troubles.first() else {
            return;
        };
        let error = first.error.clone();
        if first.moved_to.is_none() {
            troubles.remove(0);
        }
        self.0 = Some(match troubles[..] {
            [] => error,
            _ => error.after(troubles),
        });
    }
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
