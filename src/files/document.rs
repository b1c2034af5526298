//! What documents are, whatever they are about.

use super::ContentError;

/// What a document of one kind holds, and how its bytes are read.
pub trait Document: Sized {
    /// Why bytes are no such document.
    type Error: ContentError + 'static;

    /// Reads the bytes of a document.
    ///
    /// # Errors
    /// The first thing that is wrong with it.
    fn read(bytes: &[u8]) -> Result<Self, Self::Error>;
}
