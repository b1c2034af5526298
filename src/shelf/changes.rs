//! Changes to ties that nobody works at: renaming, putting away, copying, deleting and undoing
//! that.

use std::fs;
use std::path::{Path, PathBuf};

use super::names::tie_in;
use super::repair::{named, tie_of};
use super::{Shelf, ShelfError, ShelfReading, Tie, TieId};
use crate::files::{self, DocumentFile, FileAction};
use crate::guide::Place;

/// A deleted tie, which can be had back with [`Shelf::undo_delete`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Deleted {
    id: TieId,
    folder: PathBuf,
}

impl Deleted {
    /// The id it had.
    pub const fn id(&self) -> &TieId {
        &self.id
    }

    /// The folder its documents are in now.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    fn file(&self) -> DocumentFile<Tie> {
        tie_in(&self.folder, &self.id)
    }
}

impl Shelf {
    /// Gives a tie another name. Its place among the others stays.
    ///
    /// # Errors
    /// As [`Shelf::take_up`] and [`Shelf::save`].
    pub fn rename(&self, id: &TieId, name: &str) -> Result<ShelfReading<Tie>, ShelfError> {
        self.rewrite(id, |tie| name.clone_into(&mut tie.name))
    }

    /// Gives a tie another note. Its place among the others stays.
    ///
    /// # Errors
    /// As [`Shelf::take_up`] and [`Shelf::save`].
    pub fn note(&self, id: &TieId, note: &str) -> Result<ShelfReading<Tie>, ShelfError> {
        self.rewrite(id, |tie| note.clone_into(&mut tie.note))
    }

    /// Puts a tie away, or out again. Its place among the others stays.
    ///
    /// # Errors
    /// As [`Shelf::take_up`] and [`Shelf::save`].
    pub fn put_away(&self, id: &TieId, away: bool) -> Result<ShelfReading<Tie>, ShelfError> {
        self.rewrite(id, |tie| tie.is_put_away = away)
    }

    /// Begins the same knot again at `start`, as a tie of its own with the same name and
    /// note. The first one may be in use meanwhile.
    ///
    /// # Errors
    /// As [`Shelf::look`] and [`Shelf::begin`].
    pub fn copy(&self, id: &TieId, start: Place) -> Result<ShelfReading<Tie>, ShelfError> {
        ShelfReading::try_gather(|gathering| {
            let tie = self.look(id)?.hand_on(gathering);
            Ok(self.begin(tie.again(start))?.tie)
        })
    }

    /// Takes a tie off the shelf. Its documents go to a folder of their own in `deleted/`, from
    /// which [`Shelf::undo_delete`] brings them back.
    ///
    /// # Errors
    /// [`ShelfError::InUse`], [`ShelfError::NoSuchTie`] or [`ShelfError::File`].
    pub fn delete(&self, id: &TieId) -> Result<Deleted, ShelfError> {
        let _changing = self.change();
        let file = self.file(id);
        if !file.exists()? {
            return Err(ShelfError::NoSuchTie { id: id.clone() });
        }
        let _held = self.locks.hold(id)?;
        let deleted = Deleted {
            folder: self.free_folder(id)?,
            id: id.clone(),
        };
        // The previous copy first: alone on the shelf it would stand in for its tie.
        let gone = deleted.file();
        files::move_if_there(&file.previous_path(), &gone.previous_path())?;
        files::move_if_there(file.path(), gone.path())?;
        Ok(deleted)
    }

    /// All ties that were deleted and not had back.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read.
    pub fn deleted(&self) -> Result<Vec<Deleted>, ShelfError> {
        let bin = self.bin();
        if !files::exists(&bin)? {
            return Ok(Vec::new());
        }
        let _call = files::DiskCall::begin();
        let mut all = Vec::new();
        for entry in fs::read_dir(&bin).map_err(ShelfError::io(FileAction::List, &bin))? {
            let folder = entry
                .map_err(ShelfError::io(FileAction::List, &bin))?
                .path();
            let name = folder.file_name().unwrap_or_default().to_string_lossy();
            let id = name.split_once('-').map_or(&*name, |(id, _)| id);
            if let Ok(id) = TieId::parse(id) {
                let deleted = Deleted { id, folder };
                if deleted.file().exists()? {
                    all.push(deleted);
                }
            }
        }
        all.sort_by(|one, other| one.folder.cmp(&other.folder));
        Ok(all)
    }

    /// Puts a deleted tie back on the shelf and says under which id: a new one when the shelf
    /// has a tie of the old one by now.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchTie`] when it has been put back already, [`ShelfError::InUse`], or
    /// why its documents cannot be moved or read.
    pub fn undo_delete(&self, deleted: &Deleted) -> Result<ShelfReading<TieId>, ShelfError> {
        let _changing = self.change();
        files::make_folder(self.folder())?;
        let id = &deleted.id;
        let (gone, here) = (deleted.file(), self.file(id));
        if !gone.exists()? {
            return Err(ShelfError::NoSuchTie { id: id.clone() });
        }
        if here.exists()? {
            return ShelfReading::try_gather(|gathering| {
                let tie = tie_of(id, named(id, gone.read()))?.hand_on(gathering);
                let (_held, tie) = self.add(tie)?;
                files::remove(gone.path())?;
                files::remove(&gone.previous_path())?;
                remove_if_empty(&deleted.folder);
                Ok(tie.id)
            });
        }
        let _held = self.locks.hold(id)?;
        files::move_if_there(gone.path(), here.path())?;
        files::move_if_there(&gone.previous_path(), &here.previous_path())?;
        remove_if_empty(&deleted.folder);
        Ok(ShelfReading::whole(id.clone()))
    }

    fn rewrite(
        &self,
        id: &TieId,
        change: impl FnOnce(&mut Tie),
    ) -> Result<ShelfReading<Tie>, ShelfError> {
        let _changing = self.change();
        ShelfReading::try_gather(|gathering| {
            let mut taken = self.lift(id)?.hand_on(gathering);
            change(&mut taken.tie);
            self.write(&taken.tie)?.hand_on(gathering);
            Ok(taken.tie)
        })
    }

    fn bin(&self) -> PathBuf {
        self.folder().join("deleted")
    }

    /// Makes a new folder for a tie in `deleted/`.
    fn free_folder(&self, id: &TieId) -> Result<PathBuf, ShelfError> {
        let bin = self.bin();
        files::make_folder(&bin)?;
        let _call = files::DiskCall::begin();
        let mut folder = bin.join(id.as_str());
        let mut number = 1;
        loop {
            match fs::create_dir(&folder) {
                Ok(()) => break,
                Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => {
                    number += 1;
                    folder = bin.join(format!("{id}-{number}"));
                }
                Err(error) => return Err(ShelfError::io(FileAction::Make, &folder)(error)),
            }
        }
        files::sync_folder_of(&folder)?;
        files::sync_folder_of(&bin)?;
        Ok(folder)
    }
}

/// An empty folder that stays does no harm, and one with something in it has to.
fn remove_if_empty(folder: &Path) {
    let _ = fs::remove_dir(folder);
}
