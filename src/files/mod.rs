//! Documents in files: read within limits, written whole, checked, and never lost.
//!
//! A document is JSON with a `version`, and with a `checksum` when a program wrote it. It stands
//! in a file `NAME.json`; a document that has a copy before it keeps that as
//! `NAME.previous.json`. A new state is written beside its place, synced and only then put
//! there, so at every instant one whole copy exists. What cannot be believed is never
//! overwritten: it is moved to `NAME.damaged-N.json`. A document of a newer version is left
//! where it is.
//!
//! A [`Document`] says how the bytes of one kind are read, a [`DocumentFile`] is the place of
//! one. What a [`Reading`] brings to light comes with what was read, as [`FileTrouble`]s: these
//! have to be told.
//!
//! Nothing here knows what the documents are about.

mod bytes;
mod document;
mod document_file;
mod draft;
mod envelope;
mod error;
mod file_name;
mod lock;
mod reading;
mod reason;
mod unknown;
mod waiting;

pub use bytes::{
    Readers, create, exists, make_folder, move_file, move_if_there, read_bytes, remove, replace,
    sync_folder_of,
};
pub use document::Document;
pub use document_file::{DocumentFile, DocumentReading, Found, WriteReading};
pub use draft::{draft, sweep_drafts};
pub use envelope::{
    FieldError, Fields, LARGEST_DOCUMENT, decode, encode, has_checksum, open, parse, seal,
};
pub use error::{ContentError, FileAction, FileError, FormatError};
pub use file_name::{FileName, FileRole};
pub use lock::FileLock;
pub use reading::{FileTrouble, Gathering, Reading, TakesAlong, Teller};
pub use reason::Reason;
pub use unknown::{Unknown, Within, filled_up};
pub use waiting::{DiskCall, OnDisk, longest_wait};
