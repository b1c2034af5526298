//! The shelf: opening, listing, taking up and saving.

use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use directories::ProjectDirs;
use jiff::Timestamp;

use super::lock::{Locks, enter};
use super::names::Names;
use super::{Held, ShelfError, ShelfTrouble, Tie, TieId};
use crate::files::{self, FileAction};

/// A folder of ties. Clones are handles on the same shelf and share its locks.
#[derive(Clone)]
pub struct Shelf {
    folder: PathBuf,
    pub(super) locks: Arc<Locks>,
    pub(super) shared: Arc<Shared>,
}

pub(super) struct Shared {
    /// Held for every change, so that no two threads change the shelf at once.
    pub(super) changing: Mutex<()>,
    /// The newest touch on the shelf, as far as known here.
    pub(super) newest: Mutex<Option<Timestamp>>,
    pub(super) clock: Box<dyn Fn() -> Timestamp + Send + Sync>,
}

/// Everything on the shelf.
#[derive(Clone, Debug, Default)]
pub struct ShelfListing {
    /// The ties, newest first.
    pub ties: Vec<Tie>,
    /// What could not be read, and what was done about it.
    pub troubles: Vec<ShelfTrouble>,
}

/// A tie taken up from the shelf.
#[derive(Debug)]
pub struct TakenUp {
    /// Keeps others off the tie.
    pub held: Held,
    /// The tie as last saved.
    pub tie: Tie,
    /// What was wrong with its document, and what was done about it.
    pub troubles: Vec<ShelfTrouble>,
}

impl Shelf {
    /// Opens the shelf in a folder, which is made when it is not there.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be made.
    pub fn open(folder: impl AsRef<Path>) -> Result<Self, ShelfError> {
        Self::open_with_clock(folder, Timestamp::now)
    }

    /// Opens the shelf with a clock of the caller's.
    ///
    /// # Errors
    /// As [`Shelf::open`].
    pub fn open_with_clock(
        folder: impl AsRef<Path>,
        clock: impl Fn() -> Timestamp + Send + Sync + 'static,
    ) -> Result<Self, ShelfError> {
        let folder = folder.as_ref();
        // So that the shelf stays where it is when the program changes its working folder.
        let folder =
            std::path::absolute(folder).map_err(ShelfError::io(FileAction::Make, folder))?;
        files::make_folder(&folder)?;
        Ok(Self {
            locks: Arc::new(Locks::new(folder.clone())),
            folder,
            shared: Arc::new(Shared {
                changing: Mutex::new(()),
                newest: Mutex::new(None),
                clock: Box::new(clock),
            }),
        })
    }

    /// The folder for the ties of this user: `$XDG_DATA_HOME/marlinspeak/ties` or what the
    /// system has in its place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_dir() -> Result<PathBuf, ShelfError> {
        ProjectDirs::from("", "", "marlinspeak")
            .map(|folders| folders.data_dir().join("ties"))
            .ok_or(ShelfError::NoHome)
    }

    /// The folder it is in.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Reads every tie. Damaged documents are set aside and replaced by the previous copy,
    /// except those of ties that somebody works at: these are only told of.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read. A missing folder is an empty shelf.
    pub fn list(&self) -> Result<ShelfListing, ShelfError> {
        let Names { ids, strangers } = Names::in_folder(&self.folder)?;
        let mut listing = ShelfListing::default();
        for id in &ids {
            let examined = self.examine_or_repair(id);
            listing.ties.extend(examined.tie);
            listing.troubles.extend(examined.troubles);
        }
        listing
            .ties
            .sort_by(|one, other| (other.touched, &other.id).cmp(&(one.touched, &one.id)));
        if let Some(tie) = listing.ties.first() {
            let mut newest = enter(&self.shared.newest);
            *newest = (*newest).max(Some(tie.touched));
        }
        listing
            .troubles
            .extend(strangers.into_iter().map(ShelfTrouble::stranger));
        Ok(listing)
    }

    /// Reads one tie without taking it up, and changes nothing.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchTie`], or why neither copy can be read.
    pub fn look(&self, id: &TieId) -> Result<(Tie, Vec<ShelfTrouble>), ShelfError> {
        self.examine(id).into_tie(id)
    }

    /// Takes a tie up to work at it.
    ///
    /// # Errors
    /// [`ShelfError::InUse`] when somebody, or this program, works at it already;
    /// [`ShelfError::NoSuchTie`]; or why neither copy can be read.
    pub fn take_up(&self, id: &TieId) -> Result<TakenUp, ShelfError> {
        let _changing = self.change();
        self.lift(id)
    }

    /// Takes a tie up while the shelf is kept from changing.
    pub(super) fn lift(&self, id: &TieId) -> Result<TakenUp, ShelfError> {
        let file = self.file(id);
        if !file.exists() {
            return Err(ShelfError::NoSuchTie { id: id.clone() });
        }
        let held = self.locks.hold(id)?;
        file.sweep();
        let (tie, troubles) = self.repair(id).into_tie(id)?;
        Ok(TakenUp {
            held,
            tie,
            troubles,
        })
    }

    /// Puts a tie on the shelf that is not on it yet and takes it up. Its id is replaced when
    /// the shelf has a tie of that id.
    ///
    /// # Errors
    /// [`ShelfError::Unwritable`] or [`ShelfError::File`].
    pub fn begin(&self, mut tie: Tie) -> Result<TakenUp, ShelfError> {
        let _changing = self.change();
        tie.touched = self.stamp(tie.touched)?;
        let (held, tie) = self.add(tie)?;
        Ok(TakenUp {
            held,
            tie,
            troubles: Vec::new(),
        })
    }

    /// Saves a tie and gives it back as saved, with the time. It is on disk, and the state
    /// before it kept as the previous copy, when this returns. The folder is made again when
    /// it is gone. The time is later than any on the shelf, whatever the clock says.
    ///
    /// # Errors
    /// [`ShelfError::InUse`] when another program or handle holds it,
    /// [`ShelfError::File`] when a newer version of this program wrote it,
    /// [`ShelfError::Unwritable`] or [`ShelfError::File`]. The shelf is then as it was.
    pub fn save(&self, tie: &Tie) -> Result<Tie, ShelfError> {
        let _changing = self.change();
        files::make_folder(&self.folder)?;
        let _held = self.locks.keep_off(&tie.id)?;
        let mut tie = tie.clone();
        tie.touched = self.stamp(tie.touched)?;
        self.write(&tie)?;
        Ok(tie)
    }

    /// Whether somebody, this program included, works at a tie just now.
    pub fn is_in_use(&self, id: &TieId) -> bool {
        self.locks.is_held(id)
    }
}

impl fmt::Debug for Shelf {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Shelf")
            .field("folder", &self.folder)
            .finish_non_exhaustive()
    }
}
