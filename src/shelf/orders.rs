//! Orders on disk, kept as ties are.
//!
//! One document an order in the folder `orders` beside the ties, with the copy before it. A change
//! is made to what stands there at that moment, with every other writer kept off, so that two
//! programs that change different things change both.

use std::path::{Path, PathBuf};

use jiff::Timestamp;

use super::names::Names;
use super::order_document::{StoredOrder, write_order};
use super::repair::refusal;
use super::verified_file::{VerifiedFile, verify_folder};
use super::{DocumentError, OrderId, Shelf, ShelfError, ShelfReading, ShelfTrouble, clock};
use crate::files::{
    self, DocumentFile, DocumentReading, FileError, FileLock, Gathering, LARGEST_DOCUMENT,
};
use crate::guide::Order;

/// The folder beside that of the ties.
const FOLDER: &str = "orders";

/// An order on disk.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptOrder {
    /// Its name there.
    pub id: OrderId,
    /// What was said.
    pub order: Order,
    /// When it was changed last.
    pub touched: Timestamp,
}

/// The folder of the orders.
#[derive(Clone, Debug)]
pub struct Orders {
    folder: PathBuf,
}

impl Orders {
    /// The orders in a folder, which need not be there yet.
    pub fn at(folder: impl Into<PathBuf>) -> Self {
        Self {
            folder: folder.into(),
        }
    }

    /// The orders that lie beside the ties of a shelf.
    pub fn beside(shelf: &Shelf) -> Self {
        Self::at(shelf.folder().with_file_name(FOLDER))
    }

    /// The orders of this user: `$XDG_DATA_HOME/marlinspeak/orders` or what the system has in its
    /// place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_place() -> Result<Self, ShelfError> {
        Ok(Self::at(Shelf::default_dir()?.with_file_name(FOLDER)))
    }

    /// The folder they are in.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Reads every order, the one that was changed last first. Damaged documents are set aside and
    /// replaced by the copy before, except those that somebody is writing.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read. A missing folder holds no orders.
    pub fn list(&self) -> Result<ShelfReading<Vec<KeptOrder>>, ShelfError> {
        let Names { ids, strangers } = Names::in_folder(&self.folder)?;
        Ok(ShelfReading::gather(|gathering| {
            let mut orders = Vec::new();
            for id in ids {
                let id = OrderId::from(id);
                let file = self.file(&id);
                let mut read = told(file.read());
                if read.is_troubled()
                    && let Ok(_lock) = FileLock::take(&lock_of(&file))
                {
                    read = told(file.repair());
                }
                orders.extend(read.hand_on(gathering).map(|stored| stored.kept(id)));
            }
            for stranger in strangers {
                gathering.add(ShelfTrouble::stranger(stranger));
            }
            orders.sort_by(|one: &KeptOrder, other| {
                (other.touched, &other.id).cmp(&(one.touched, &one.id))
            });
            orders
        }))
    }

    /// Reads one order, and changes nothing.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchOrder`], or why neither copy can be read.
    pub fn look(&self, id: &OrderId) -> Result<ShelfReading<KeptOrder>, ShelfError> {
        let read = found(id, self.file(id).read())?;
        Ok(read.map(|stored| stored.kept(id.clone())))
    }

    /// Keeps a new order.
    ///
    /// # Errors
    /// [`ShelfError::File`] when it cannot be written.
    pub fn keep(&self, order: Order) -> Result<KeptOrder, ShelfError> {
        files::make_folder(&self.folder)?;
        let mut stored = StoredOrder::new(order);
        stored.touched = self.stamp()?;
        self.create(stored)
    }

    /// Writes an order under a name that no other has.
    fn create(&self, stored: StoredOrder) -> Result<KeptOrder, ShelfError> {
        loop {
            let id = OrderId::draw();
            let file = self.file(&id);
            let contents = contents(&stored, file.path())?;
            match file.create(&contents) {
                Ok(()) => return Ok(stored.kept(id)),
                Err(FileError::Exists { .. }) => {}
                Err(error) => return Err(error.into()),
            }
        }
    }

    /// Changes an order, with every other writer kept off from reading to writing, and gives it as it
    /// is then.
    ///
    /// # Errors
    /// As [`Orders::look`], and when it cannot be written. It is then as it was.
    pub fn change(
        &self,
        id: &OrderId,
        change: impl FnOnce(&mut Order),
    ) -> Result<ShelfReading<KeptOrder>, ShelfError> {
        let file = self.file(id);
        if !file.exists()? {
            return Err(ShelfError::NoSuchOrder { id: id.clone() });
        }
        let _lock = file.lock()?;
        let mut read = found(id, file.read())?;
        // Where nothing can be believed everything stays as it is; else what is damaged is told by
        // the repair of it.
        if read.is_troubled() {
            read = found(id, file.repair())?;
        }
        ShelfReading::try_gather(|gathering| {
            let mut stored = read.hand_on(gathering);
            let before = stored.order.clone();
            change(&mut stored.order);
            stored.order.remember_gone(&before);
            let numbers = || stored.order.pieces.iter().map(|piece| piece.number);
            let has_piece = |number: &u16| numbers().any(|other| other == *number);
            stored
                .unknown_of_pieces
                .retain(|number, _| has_piece(number));
            stored.touched = self.stamp()?;
            let written = file.write(&contents(&stored, file.path())?);
            let told = written.map_troubles(|_, trouble| ShelfTrouble::with_presets(trouble));
            told.hand_on(gathering)?;
            Ok(stored.kept(id.clone()))
        })
    }

    /// Takes an order away. Its documents go to a folder `deleted`, from which [`Orders::undo_delete`]
    /// brings them back; what was deleted under its name before gives way.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchOrder`] or [`ShelfError::File`].
    pub fn delete(&self, id: &OrderId) -> Result<(), ShelfError> {
        let (file, gone) = (self.file(id), self.deleted(id));
        if !file.exists()? {
            return Err(ShelfError::NoSuchOrder { id: id.clone() });
        }
        let _lock = file.lock()?;
        files::make_folder(&self.bin())?;
        for old in [gone.path().to_owned(), gone.previous_path()] {
            if files::exists(&old)? {
                files::remove(&old)?;
            }
        }
        // The copy before it first: alone it would stand in for its order.
        files::move_if_there(&file.previous_path(), &gone.previous_path())?;
        Ok(files::move_if_there(file.path(), gone.path())?)
    }

    /// Brings a deleted order back and says under which name: a new one when there is an order of the
    /// old one by now.
    ///
    /// # Errors
    /// [`ShelfError::NoSuchOrder`] when none of its name was deleted, or why its documents cannot be
    /// moved or read.
    pub fn undo_delete(&self, id: &OrderId) -> Result<ShelfReading<OrderId>, ShelfError> {
        let (file, gone) = (self.file(id), self.deleted(id));
        if !gone.exists()? {
            return Err(ShelfError::NoSuchOrder { id: id.clone() });
        }
        let _lock = file.lock()?;
        if file.exists()? {
            return ShelfReading::try_gather(|gathering| {
                let stored = found(id, gone.read())?.hand_on(gathering);
                let kept = self.create(stored)?;
                files::remove(gone.path())?;
                files::remove(&gone.previous_path())?;
                Ok(kept.id)
            });
        }
        files::move_if_there(gone.path(), file.path())?;
        files::move_if_there(&gone.previous_path(), &file.previous_path())?;
        Ok(ShelfReading::whole(id.clone()))
    }

    /// Every order on one line, as it goes into a backup. One that cannot be read or written is left
    /// out and keeps none of the others from it.
    pub(super) fn lines(
        &self,
        gathering: &mut Gathering<ShelfTrouble>,
        leave_out: &mut impl FnMut(ShelfError, &mut Gathering<ShelfTrouble>),
    ) -> Result<Vec<Vec<u8>>, ShelfError> {
        let mut lines = Vec::new();
        for id in Names::in_folder(&self.folder)?.ids {
            match self.line_of(&OrderId::from(id)) {
                Ok(line) => lines.push(line.hand_on(gathering)),
                Err(error) => leave_out(error, gathering),
            }
        }
        Ok(lines)
    }

    fn line_of(&self, id: &OrderId) -> Result<ShelfReading<Vec<u8>>, ShelfError> {
        let file = self.file(id);
        ShelfReading::try_gather(|gathering| {
            let mut stored = match found(id, file.read()) {
                // What is not understood here goes along as it is.
                Err(error) if error.is_newer() => {
                    return Ok(files::read_bytes(file.path(), LARGEST_DOCUMENT)?);
                }
                stored => stored?.hand_on(gathering),
            };
            stored.unknown.insert(OWN_ID, id.as_str());
            contents(&stored, file.path())
        })
    }

    /// Puts an order of a backup here, cut to the lengths that are kept, unless one of its name is here
    /// already: then says so.
    pub(super) fn take_in(&self, mut stored: StoredOrder) -> Result<TakenOrder, ShelfError> {
        let id = match stored.unknown.remove(OWN_ID) {
            Some(serde_json::Value::String(id)) => OrderId::parse(&id),
            _ => None,
        };
        let id = id.unwrap_or_else(OrderId::draw);
        files::make_folder(&self.folder)?;
        let file = self.file(&id);
        if file.exists()? {
            return Ok(TakenOrder::Here);
        }
        let is_shortened = stored.shorten();
        match file.create(&contents(&stored, file.path())?) {
            Ok(()) => Ok(TakenOrder::New { is_shortened }),
            Err(FileError::Exists { .. }) => Ok(TakenOrder::Here),
            Err(error) => Err(error.into()),
        }
    }

    /// Every file of an order that is there, whether it is whole and believed.
    pub(super) fn verify(&self) -> Result<Vec<VerifiedFile>, ShelfError> {
        verify_folder::<StoredOrder>(&self.folder)
    }

    /// Where the document of an order is.
    pub fn file(&self, id: &OrderId) -> DocumentFile<StoredOrder> {
        DocumentFile::named(&self.folder, id.as_str()).keeping_previous()
    }

    fn bin(&self) -> PathBuf {
        self.folder.join("deleted")
    }

    fn deleted(&self, id: &OrderId) -> DocumentFile<StoredOrder> {
        DocumentFile::named(&self.bin(), id.as_str()).keeping_previous()
    }

    /// Now, or a moment after the newest order when the clock has gone back.
    fn stamp(&self) -> Result<Timestamp, ShelfError> {
        let ids = Names::in_folder(&self.folder)?.ids;
        let touched = ids.into_iter().filter_map(|id| {
            match self.file(&OrderId::from(id)).find() {
                Ok(files::Found::Whole(stored)) => Some(stored.touched),
                // What is wrong with it is told by whoever reads it.
                _ => None,
            }
        });
        let after = |newest: Timestamp| newest.saturating_add(jiff::SignedDuration::from_millis(1));
        let floor = touched.max().and_then(|newest| after(newest).ok());
        Ok(clock::now().max(floor.unwrap_or(Timestamp::MIN)))
    }
}

/// The order that was read, or the first thing that keeps it from being read.
fn found(
    id: &OrderId,
    reading: DocumentReading<StoredOrder>,
) -> Result<ShelfReading<StoredOrder>, ShelfError> {
    let found = told(reading).found();
    found.map_err(|nothing| {
        refusal(nothing).unwrap_or_else(|| ShelfError::NoSuchOrder { id: id.clone() })
    })
}

/// What became of an order of a backup.
#[derive(Clone, Copy, Debug)]
pub(super) enum TakenOrder {
    /// One of its name is here already.
    Here,
    /// It is here now, and some of its texts may have been longer than what is kept.
    New { is_shortened: bool },
}

/// In a backup an order has its name beside it.
const OWN_ID: &str = "id";

impl StoredOrder {
    fn kept(self, id: OrderId) -> KeptOrder {
        KeptOrder {
            id,
            order: self.order,
            touched: self.touched,
        }
    }
}

fn contents(stored: &StoredOrder, file: &Path) -> Result<Vec<u8>, ShelfError> {
    Ok(write_order(stored).map_err(FileError::<DocumentError>::unreadable(file))?)
}

fn told(reading: DocumentReading<StoredOrder>) -> ShelfReading<Option<StoredOrder>> {
    reading.map_troubles(|_, trouble| ShelfTrouble::with_presets(trouble))
}

fn lock_of(file: &DocumentFile<StoredOrder>) -> PathBuf {
    file.path().with_extension("lock")
}
