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

mod changes;
mod error;
mod files;
mod guided;
mod handover;
mod keeper;
mod lock;
mod mend;
mod names;
mod parts;
mod rack;
mod schema;
mod store;
mod tie;
mod verify;
mod writing;

pub use changes::Deleted;
pub use error::{Fault, ShelfError};
pub use handover::{Backup, Fate, Imported, Restored};
pub use keeper::{Keeper, Kept};
pub use lock::Held;
pub use mend::Trouble;
pub use rack::RackFile;
pub use schema::{LARGEST_TIE, VERSION, read_tie, write_tie};
pub use store::{Listing, Shelf, TakenUp};
pub use tie::{Chosen, Place, Tie, TieId};
pub use verify::{State, Verified};
