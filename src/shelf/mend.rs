//! Finding the newest good copy of a tie, and setting aside what is not believed.

use std::path::PathBuf;
use std::sync::TryLockError;

use super::files::{self, Found};
use super::{Shelf, ShelfError, Tie, TieId};

/// Something on the shelf that the tyer should know of.
#[derive(Clone, Debug)]
pub struct Trouble {
    /// The tie it is about, when the file has the name of one.
    pub id: Option<TieId>,
    /// What is wrong, and with which file.
    pub error: ShelfError,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// Whether the copy before it is used in its place.
    pub previous_used: bool,
}

/// Everything that reading one tie brings to light.
#[derive(Debug, Default)]
pub(super) struct Examined {
    pub(super) tie: Option<Tie>,
    pub(super) troubles: Vec<Trouble>,
}

impl Examined {
    /// The tie, or the first thing that keeps it from being read.
    pub(super) fn into_tie(self, id: &TieId) -> Result<(Tie, Vec<Trouble>), ShelfError> {
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
    /// Reads a tie, and mends it unless somebody works at it or the shelf is being changed.
    pub(super) fn examine_or_mend(&self, id: &TieId) -> Examined {
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
            Ok(_held) => self.mend(id),
            Err(_) => examined,
        }
    }

    /// Reads a tie and changes nothing.
    pub(super) fn examine(&self, id: &TieId) -> Examined {
        self.examine_and(id, false)
    }

    /// Reads a tie that nobody else works at, sets damaged copies aside and puts the previous
    /// copy in the place of a damaged document.
    pub(super) fn mend(&self, id: &TieId) -> Examined {
        self.examine_and(id, true)
    }

    fn examine_and(&self, id: &TieId, mend: bool) -> Examined {
        let file = self.document(id);
        let mut examined = Examined::default();
        let error = match files::find(&file) {
            Ok(Found::Good(tie)) => {
                examined.tie = Some(named(*tie, id));
                return examined;
            }
            Ok(Found::Missing) => ShelfError::Gone { file: file.clone() },
            Ok(Found::Bad(fault)) => ShelfError::Unreadable {
                file: file.clone(),
                fault,
            },
            Err(error) => error,
        };
        let gone = matches!(error, ShelfError::Gone { .. });
        let newer = error.is_newer();
        let damaged = matches!(error, ShelfError::Unreadable { .. }) && !newer;
        // What a newer program wrote goes on from the previous copy: that one is out of date.
        let previous = if newer {
            Ok(Found::Missing)
        } else {
            files::find(&self.previous(id))
        };
        if gone && matches!(previous, Ok(Found::Missing)) {
            return examined;
        }
        let mut trouble = Trouble {
            id: Some(id.clone()),
            error,
            moved_to: None,
            previous_used: false,
        };
        let mut failed = None;
        if mend && damaged {
            match self.set_aside(id, &file) {
                Ok(aside) => trouble.moved_to = Some(aside),
                Err(error) => failed = Some(error),
            }
        }
        if let Ok(Found::Good(tie)) = previous {
            if mend && (gone || trouble.moved_to.is_some()) {
                failed = failed.or(self.restore_previous(id).err());
            }
            trouble.previous_used = true;
            examined.tie = Some(named(*tie, id));
            examined.troubles.push(trouble);
        } else {
            examined.troubles.push(trouble);
            self.tell_of_previous(id, previous, mend, &mut examined);
        }
        examined.troubles.extend(failed.map(|error| Trouble {
            id: Some(id.clone()),
            error,
            moved_to: None,
            previous_used: false,
        }));
        if mend {
            for trouble in &examined.troubles {
                log::warn!("{}", trouble.error);
            }
        }
        examined
    }

    /// A copy and not a link: whoever edits one file in place must not change both.
    fn restore_previous(&self, id: &TieId) -> Result<(), ShelfError> {
        let previous = files::read(&self.previous(id), super::LARGEST_TIE)?;
        files::create(&self.document(id), &previous)
    }

    fn tell_of_previous(
        &self,
        id: &TieId,
        previous: Result<Found, ShelfError>,
        mend: bool,
        examined: &mut Examined,
    ) {
        let file = self.previous(id);
        let error = match previous {
            Ok(Found::Bad(fault)) => ShelfError::Unreadable { file, fault },
            Err(error) => error,
            Ok(Found::Good(_) | Found::Missing) => return,
        };
        let moved_to = if mend {
            self.set_previous_aside(id, &error)
        } else {
            None
        };
        examined.troubles.push(Trouble {
            id: Some(id.clone()),
            error,
            moved_to,
            previous_used: false,
        });
    }

    fn set_previous_aside(&self, id: &TieId, error: &ShelfError) -> Option<PathBuf> {
        let damaged = matches!(error, ShelfError::Unreadable { .. }) && !error.is_newer();
        if damaged {
            self.set_aside(id, &self.previous(id)).ok()
        } else {
            None
        }
    }
}

/// The tie under the name of its file, whatever name stands inside.
fn named(mut tie: Tie, id: &TieId) -> Tie {
    tie.id = id.clone();
    tie
}
