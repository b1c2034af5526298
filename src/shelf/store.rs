//! What is done with ties on the shelf: listing, taking up and saving.

use super::lock::enter;
use super::names::Names;
use super::repair::tie_of;
use super::{Held, Shelf, ShelfError, ShelfReading, ShelfTrouble, Tie, TieId};
use crate::files::{self, FileAction, FileError};

/// A tie taken up from the shelf.
#[derive(Debug)]
pub struct TakenUp {
    /// Keeps others off the tie.
    pub held: Held,
    /// The tie as last saved.
    pub tie: Tie,
    /// Why nothing that is done to it can be saved, where the disk lets nobody write.
    pub unsaved: Option<ShelfError>,
}

impl Shelf {
    /// Reads every tie, newest first. Damaged documents are set aside and replaced by the previous copy,
    /// except those of ties that somebody works at: these are only told of.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read. A missing folder is an empty shelf.
    pub fn list(&self) -> Result<ShelfReading<Vec<Tie>>, ShelfError> {
        let Names { ids, strangers } = Names::in_folder(self.folder())?;
        let listed = ShelfReading::gather(|gathering| {
            let mut ties = Vec::new();
            for id in &ids {
                ties.extend(self.examine_or_repair(id).hand_on(gathering));
            }
            for stranger in strangers {
                gathering.add(ShelfTrouble::stranger(stranger));
            }
            ties.sort_by(|one: &Tie, other| {
                (other.touched, &other.id).cmp(&(one.touched, &one.id))
            });
            if let Some(tie) = ties.first() {
                let mut newest = enter(&self.shared.newest);
                *newest = (*newest).max(Some(tie.touched));
            }
            ties
        });
        Ok(listed)
    }

    /// Reads one tie without taking it up, and changes nothing.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchTie`], or why neither copy can be read.
    pub fn look(&self, id: &TieId) -> Result<ShelfReading<Tie>, ShelfError> {
        tie_of(id, self.examine(id))
    }

    /// Takes a tie up to work at it. Where the disk lets nobody lock it or write, it is taken up all the
    /// same, with the reason: what is done to it is lost unless the disk gives way.
    ///
    /// # Errors
    /// [`ShelfError::InUse`] when somebody, or this program, works at it already;
    /// [`ShelfError::NoSuchTie`]; or why neither copy can be read.
    pub fn take_up(&self, id: &TieId) -> Result<ShelfReading<TakenUp>, ShelfError> {
        let _changing = self.change();
        match self.lift(id) {
            Err(ShelfError::File(
                refused @ FileError::Io {
                    action: FileAction::Lock,
                    ..
                },
            )) => {
                // Others may be at work at it, so nothing is repaired.
                let tie = tie_of(id, self.examine(id))?;
                Ok(tie.map(|tie| TakenUp {
                    held: self.locks.hold_owing(id, tie.touched),
                    tie,
                    unsaved: Some(refused.into()),
                }))
            }
            lifted => Ok(lifted?.map(|taken| TakenUp {
                unsaved: self.file(id).try_beside().err().map(ShelfError::from),
                ..taken
            })),
        }
    }

    /// Takes a tie up while the shelf is kept from changing.
    pub(super) fn lift(&self, id: &TieId) -> Result<ShelfReading<TakenUp>, ShelfError> {
        let file = self.file(id);
        if !file.exists()? {
            return Err(ShelfError::NoSuchTie { id: id.clone() });
        }
        let held = self.locks.hold(id)?;
        file.sweep();
        let tie = tie_of(id, self.repair(id))?;
        Ok(tie.map(|tie| TakenUp {
            held,
            tie,
            unsaved: None,
        }))
    }

    /// Puts a tie on the shelf that is not on it yet and takes it up. Its id is replaced when
    /// the shelf has a tie of that id, and the number of its piece when the batch has one that is as
    /// new.
    ///
    /// # Errors
    /// [`ShelfError::Unwritable`], or [`ShelfError::File`] when the disk refuses.
    pub fn begin(&self, mut tie: Tie) -> Result<TakenUp, ShelfError> {
        let _changing = self.change();
        tie.touched = self.stamp(tie.touched)?;
        if let Some(batch) = tie.batch.take() {
            let newest = self.newest_piece(batch.series())?;
            let number = batch.number().max(newest.saturating_add(1));
            tie.batch = Some(batch.numbered(number));
        }
        let (held, tie) = self.add(tie)?;
        Ok(TakenUp {
            held,
            tie,
            unsaved: None,
        })
    }

    /// The number of the newest piece of a batch on the shelf; 0 when there is none. What is wrong
    /// with a tie is told by whoever reads it itself.
    fn newest_piece(&self, series: &str) -> Result<u16, ShelfError> {
        let ids = Names::in_folder(self.folder())?.ids;
        let numbers = ids.iter().filter_map(|id| match self.file(id).find() {
            Ok(files::Found::Whole(tie)) => {
                let batch = tie.batch.filter(|batch| batch.series() == series)?;
                Some(batch.number())
            }
            _ => None,
        });
        Ok(numbers.max().unwrap_or(0))
    }

    /// Saves a tie and gives it back as saved, with the time. It is on disk, and the state
    /// before it kept as the previous copy, when this returns. The folder is made again when
    /// it is gone. The time is later than any on the shelf, whatever the clock says. A damaged
    /// document that stood in its place is set aside, and comes out as a trouble.
    ///
    /// # Errors
    /// [`ShelfError::InUse`] when another program or handle holds it, or has worked at it since it was
    /// taken up without a lock; [`ShelfError::File`] when a newer version of this program wrote it,
    /// [`ShelfError::Unwritable`], or [`ShelfError::File`] when the disk refuses. The shelf is
    /// then as it was.
    pub fn save(&self, tie: &Tie) -> Result<ShelfReading<Tie>, ShelfError> {
        let _changing = self.change();
        files::make_folder(self.folder())?;
        let _held = self.locks.keep_off(&tie.id, || self.touched(&tie.id))?;
        let mut tie = tie.clone();
        tie.touched = self.stamp(tie.touched)?;
        Ok(self.write(&tie)?.map(|()| tie))
    }

    /// Whether somebody, this program included, works at a tie just now.
    pub fn is_in_use(&self, id: &TieId) -> bool {
        self.locks.is_held(id)
    }
}
