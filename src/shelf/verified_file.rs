//! What is found when a file of the shelf is looked over.

use std::path::PathBuf;

use super::ShelfError;

/// A file on the shelf, and whether it is whole and believed.
#[derive(Clone, Debug)]
pub struct VerifiedFile {
    /// Where the document is.
    pub file: PathBuf,
    /// Whether it is whole and believed.
    pub state: DocumentState,
}

/// Whether a document is whole and believed.
#[derive(Clone, Debug)]
pub enum DocumentState {
    /// Its contents are those that were written.
    Whole,
    /// It can be read but carries no checksum to hold it against.
    Unchecked,
    /// It is not believed.
    Bad(ShelfError),
    /// It was damaged and is kept out of the way.
    SetAside,
}
