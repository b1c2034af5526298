//! Writing to the shelf: what every change has in common.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::MutexGuard;

use jiff::{SignedDuration, Timestamp};

use super::files::{self, Found};
use super::lock::enter;
use super::{Held, Shelf, ShelfError, Tie, TieId, write_tie};

impl Shelf {
    /// Keeps other threads from changing the shelf.
    pub(super) fn change(&self) -> MutexGuard<'_, ()> {
        enter(&self.shared.changing)
    }

    /// Whether either copy of a tie is there, readable or not.
    pub(super) fn has(&self, id: &TieId) -> bool {
        files::is_there(&self.document(id)) || files::is_there(&self.previous(id))
    }

    /// Writes a tie that nobody else works at. What stands in its place becomes the previous
    /// copy when it is whole, is set aside when it is damaged, and is left when it is newer.
    pub(super) fn write(&self, tie: &Tie) -> Result<(), ShelfError> {
        let (file, previous) = (self.document(&tie.id), self.previous(&tie.id));
        let contents = contents(tie)?;
        let found = files::find(&file)?;
        if let Found::Bad(fault) = &found
            && fault.is_newer()
        {
            return Err(ShelfError::Unreadable {
                file,
                fault: fault.clone(),
            });
        }
        match found {
            Found::Missing => {}
            Found::Bad(_) => {
                self.set_aside(&tie.id, &file)?;
            }
            Found::Good(_) => {
                if let Found::Bad(_) = files::find(&previous)? {
                    self.set_aside(&tie.id, &previous)?;
                }
                files::keep_copy(&file, &previous)?;
            }
        }
        files::replace(&file, &contents)
    }

    /// Puts a tie on the shelf without replacing any, under a new id when its own is taken.
    pub(super) fn add(&self, mut tie: Tie) -> Result<(Held, Tie), ShelfError> {
        files::make_folder(self.folder())?;
        loop {
            if !self.has(&tie.id) {
                match self.locks.hold(&tie.id) {
                    Ok(held) => match files::create(&self.document(&tie.id), &contents(&tie)?) {
                        Ok(()) => return Ok((held, tie)),
                        Err(ShelfError::Exists { .. }) => {}
                        Err(error) => return Err(error),
                    },
                    Err(ShelfError::InUse { .. }) => {}
                    Err(error) => return Err(error),
                }
            }
            tie.id = TieId::draw();
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

    /// Moves a copy that is not believed out of the way, and says where to.
    pub(super) fn set_aside(&self, id: &TieId, file: &Path) -> Result<PathBuf, ShelfError> {
        files::set_aside(file, |number| {
            self.folder().join(format!("{id}.damaged-{number}.json"))
        })
    }

    /// The newest touch on the shelf; the first time it is asked for, from the documents.
    fn newest(&self) -> Result<MutexGuard<'_, Option<Timestamp>>, ShelfError> {
        let mut newest = enter(&self.shared.newest);
        if newest.is_none() {
            let (ids, _) = self.names()?;
            *newest = ids
                .iter()
                .filter_map(|id| Some(self.examine(id).tie?.touched))
                .max();
        }
        Ok(newest)
    }

    /// Removes what an interrupted save of this tie left behind.
    pub(super) fn sweep(&self, id: &TieId) {
        let (file, previous) = (self.document(id), self.previous(id));
        for path in self.paths().unwrap_or_default() {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            if files::is_leftover_of(&file, &name) || files::is_leftover_of(&previous, &name) {
                // Harmless when it stays.
                let _ = fs::remove_file(&path);
            }
        }
    }
}

fn contents(tie: &Tie) -> Result<Vec<u8>, ShelfError> {
    write_tie(tie).map_err(|fault| ShelfError::Unwritable {
        id: tie.id.clone(),
        fault,
    })
}
