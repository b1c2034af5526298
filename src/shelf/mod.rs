//! Ties in progress, kept on disk for as long as they wait.
//!
//! A [`Shelf`] is a folder with one JSON document a tie, `ID.json`, and the copy before it,
//! `ID.previous.json`, kept as [`crate::files`] keeps documents. What was found wrong with one is
//! told of as a [`ShelfTrouble`]; what was read comes out of a [`ShelfReading`] only where those
//! are handed on.
//!
//! What somebody ordered is kept beside them, as [`Orders`].
//!
//! One program at a time works at a tie: [`Shelf::take_up`] gives a [`Held`] that keeps others
//! off while it lives. A [`Keeper`] saves on a thread of its own, so that no caller waits for
//! the disk.
//!
//! When a tie is finished its tyer can say what was really used. That goes into the log, one
//! [`Entry`] a tie in the folder `log`; the [`Ledger`] makes corrections and a pace of it. A
//! [`Photograph`] of it stays where the tyer has it.

mod batch;
mod bringing_in;
mod changes;
mod clock;
mod cord_sections;
mod entry;
mod entry_document;
mod error;
mod ground_section;
mod handle;
mod import_export;
mod keeper;
mod kept_lengths;
mod ledger;
mod lock;
mod long_texts;
mod names;
mod order_document;
mod order_id;
mod orders;
mod photograph;
mod presets;
mod presses;
mod repair;
mod sections;
mod shelved;
mod store;
mod stored_place;
mod tie;
mod tie_document;
mod tie_id;
mod verified_file;
mod verify;
mod wild_measure;
mod work_time;
mod writing;

pub use batch::{Batch, OfOrder};
pub use bringing_in::{ImportOutcome, Imported};
pub use changes::Deleted;
pub use clock::now;
pub use entry::{Entry, MOST_MINUTES};
pub use entry_document::{ENTRY_VERSION, read_entry, write_entry};
pub use error::{CopyBefore, DocumentError, ShelfError, ShelfTrouble};
pub use handle::Shelf;
pub use import_export::{Backup, IfThere, Restored, SettingsToKeep};
pub use keeper::{Keeper, Kept, Waited};
pub use ledger::{Ledger, Totals};
pub use lock::Held;
pub use long_texts::{LongText, longest_said};
pub use order_document::{
    ORDER_VERSION, StoredOrder, order_fields, read_order, read_order_said, write_order,
};
pub use order_id::OrderId;
pub use orders::{KeptOrder, Orders};
pub use photograph::{MOST_PHOTOGRAPH_BYTES, Photograph, PhotographError};
pub use presets::{PresetsFile, read_presets, write_presets};
pub use presses::Presses;
pub use repair::ShelfReading;
pub use shelved::{Shelved, TieStatus};
pub use store::TakenUp;
pub use tie::{LONGEST_NAME, LONGEST_NOTE, Tie, cut_to};
pub use tie_document::{TIE_VERSION, read_tie, write_tie};
pub use tie_id::{TieId, TieIdError};
pub use verified_file::{DocumentState, VerifiedFile};
pub use wild_measure::{MeasureKind, WildMeasure};
pub use work_time::WorkTime;
