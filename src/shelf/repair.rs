//! Reading a tie, and repairing what is damaged.

use std::path::PathBuf;
use std::sync::TryLockError;

use super::{DocumentError, Shelf, ShelfError, Tie, TieId};
use crate::files::{FileTrouble, Reading};

/// Something on the shelf that has to be told.
#[derive(Clone, Debug)]
pub struct ShelfTrouble {
    /// The tie it is about, when the file has the name of one.
    pub id: Option<TieId>,
    /// What is wrong, and with which file.
    pub error: ShelfError,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// Whether the copy before it is used in its place.
    pub previous_used: bool,
}

impl ShelfTrouble {
    /// What was found wrong with a file of a tie.
    pub(super) fn with_tie(id: &TieId, trouble: FileTrouble<DocumentError>) -> Self {
        Self {
            id: Some(id.clone()),
            error: trouble.error.into(),
            moved_to: trouble.moved_to,
            previous_used: trouble.previous_used,
        }
    }

    /// A file that has not the name of a tie.
    pub(super) fn stranger(file: PathBuf) -> Self {
        Self {
            id: None,
            error: ShelfError::Stranger { file },
            moved_to: None,
            previous_used: false,
        }
    }
}

/// Everything that reading one tie brings to light.
#[derive(Debug)]
pub(super) struct Examined {
    pub(super) tie: Option<Tie>,
    pub(super) troubles: Vec<ShelfTrouble>,
}

impl Examined {
    /// What was read, under the name of its file, whatever name stands inside.
    pub(super) fn of(id: &TieId, reading: Reading<Tie>) -> Self {
        let (tie, troubles) = reading.into_parts();
        Self {
            tie: tie.map(|tie| Tie {
                id: id.clone(),
                ..tie
            }),
            troubles: troubles
                .into_iter()
                .map(|trouble| ShelfTrouble::with_tie(id, trouble))
                .collect(),
        }
    }

    /// The tie, or the first thing that keeps it from being read.
    pub(super) fn into_tie(self, id: &TieId) -> Result<(Tie, Vec<ShelfTrouble>), ShelfError> {
        match (self.tie, self.troubles) {
            (Some(tie), troubles) => Ok((tie, troubles)),
            (None, troubles) => Err(troubles.into_iter().next().map_or_else(
                || ShelfError::NoSuchTie { id: id.clone() },
                |trouble| trouble.error,
            )),
        }
    }
}

impl Shelf {
    /// Reads a tie, and repairs it unless somebody works at it or the shelf is being changed.
    pub(super) fn examine_or_repair(&self, id: &TieId) -> Examined {
        let examined = self.examine(id);
        if examined.troubles.is_empty() {
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
    pub(super) fn examine(&self, id: &TieId) -> Examined {
        Examined::of(id, self.file(id).read())
    }

    /// Reads a tie that nobody else works at, sets damaged copies aside and puts the previous
    /// copy in the place of a damaged document.
    pub(super) fn repair(&self, id: &TieId) -> Examined {
        Examined::of(id, self.file(id).repair())
    }
}
