//! Ties in progress, kept on disk for as long as they wait.
//!
//! A [`Shelf`] is a folder with one JSON document a tie, `ID.json`, and the copy before it,
//! `ID.previous.json`. A document is written beside its place, synced and only then put there,
//! so at every instant one whole copy exists. What cannot be believed is never overwritten: it
//! is set aside as `ID.damaged-N.json` and told of as a [`Trouble`]; a document of a newer
//! version is left where it is.
//!
//! One program at a time works at a tie: [`Shelf::take_up`] gives a [`Held`] that keeps others
//! off while it lives. A [`Keeper`] saves on a thread of its own, so that no caller waits for
//! the disk.
//!
//! When a tie is finished its tyer can say what was really used. That goes into the log, one
//! [`Entry`] a tie in the folder `log`; the [`Ledger`] makes corrections and a pace of it.

mod aside;
mod changes;
mod entry;
mod error;
mod files;
mod guided;
mod handover;
mod keeper;
mod ledger;
mod lock;
mod mend;
mod names;
mod parts;
mod rack;
mod schema;
mod shelved;
mod store;
mod stored_place;
mod tie;
mod verify;
mod worked;
mod writing;

pub use changes::Deleted;
pub use entry::{ENTRY_VERSION, Entry, MOST_MINUTES, read_entry, write_entry};
pub use error::{Fault, ShelfError};
pub use handover::{Backup, Fate, IfThere, Imported, Restored};
pub use keeper::{Keeper, Kept};
pub use ledger::{Ledger, Totals};
pub use lock::Held;
pub use mend::Trouble;
pub use rack::RackFile;
pub use schema::{LARGEST_TIE, VERSION, read_tie, write_tie};
pub use shelved::{Shelved, Standing};
pub use store::{Listing, Shelf, TakenUp};
pub use tie::{Chosen, Tie, TieId};
pub use verify::{State, Verified};
pub use worked::Worked;
