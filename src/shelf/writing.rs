//! Writing to the shelf: what every change has in common.

use std::sync::MutexGuard;

use jiff::{SignedDuration, Timestamp};

use super::lock::enter;
use super::names::Names;
use super::{
    CopyBefore, DocumentError, Held, Shelf, ShelfError, ShelfReading, ShelfTrouble, Tie, TieId,
    write_tie,
};
use crate::files::{self, FileError, FileTrouble, Found, Reading};

impl Shelf {
    /// Writes a tie that nobody else works at.
    pub(super) fn write(&self, tie: &Tie) -> Result<ShelfReading<()>, ShelfError> {
        let contents = contents(tie)?;
        settled(&tie.id, self.file(&tie.id).write(&contents))
    }

    /// Puts a tie on the shelf without replacing any, under a new id when its own is taken.
    pub(super) fn add(&self, mut tie: Tie) -> Result<(Held, Tie), ShelfError> {
        files::make_folder(self.folder())?;
        loop {
            let file = self.file(&tie.id);
            if !file.exists()? {
                match self.locks.hold(&tie.id) {
                    Ok(held) => match file.create(&contents(&tie)?) {
                        Ok(()) => return Ok((held, tie)),
                        Err(FileError::Exists { .. }) => {}
                        Err(error) => return Err(error.into()),
                    },
                    Err(ShelfError::InUse { .. }) => {}
                    Err(error) => return Err(error),
                }
            }
            tie.id = TieId::draw();
        }
    }

    /// When a tie was touched last, by the document or else the copy before it. What is wrong with
    /// either is told by whoever reads the tie itself.
    pub(super) fn touched(&self, id: &TieId) -> Option<Timestamp> {
        let file = self.file(id);
        match file.find() {
            Ok(Found::Whole(tie)) => Some(tie.touched),
            _ => match file.find_previous() {
                Ok(Found::Whole(tie)) => Some(tie.touched),
                _ => None,
            },
        }
    }

    /// A time after `floor` and after every other on the shelf, now if that will do.
    pub(super) fn stamp(&self, floor: Timestamp) -> Result<Timestamp, ShelfError> {
        let mut newest = self.newest()?;
        let floor = newest.map_or(floor, |newest| newest.max(floor));
        let after = floor.saturating_add(SignedDuration::from_millis(1));
        // Only a span with calendar units can fail here.
        let stamp = (self.shared.clock)().max(after.unwrap_or(Timestamp::MAX));
        *newest = Some(stamp);
        Ok(stamp)
    }

    /// Now, or the newest touch on the shelf when the clock has gone back since.
    pub(super) fn now_or_newest(&self) -> Result<Timestamp, ShelfError> {
        let newest = *self.newest()?;
        let now = (self.shared.clock)();
        Ok(newest.map_or(now, |newest| newest.max(now)))
    }

    /// The newest touch on the shelf; the first time it is asked for, from the documents.
    fn newest(&self) -> Result<MutexGuard<'_, Option<Timestamp>>, ShelfError> {
        let mut newest = enter(&self.shared.newest);
        if newest.is_none() {
            *newest = Names::in_folder(self.folder())?
                .ids
                .iter()
                .filter_map(|id| self.touched(id))
                .max();
        }
        Ok(newest)
    }
}

/// What came of writing a document of a tie, that of its log among them. What stood in its place and
/// was set aside comes out of it either way.
pub(super) fn settled(
    id: &TieId,
    written: Reading<Result<(), FileError<DocumentError>>, FileTrouble<DocumentError>>,
) -> Result<ShelfReading<()>, ShelfError> {
    let told = written.map_troubles(|_, trouble| {
        ShelfTrouble::with_tie(id, trouble, |_| CopyBefore::AsKeptBefore)
    });
    ShelfReading::try_gather(|gathering| Ok(told.hand_on(gathering)?))
}

fn contents(tie: &Tie) -> Result<Vec<u8>, ShelfError> {
    write_tie(tie).map_err(ShelfError::unwritable(&tie.id))
}
