//! What reading a document brings to light.

use std::path::PathBuf;

use super::{ContentError, Document, FileError};

/// Something about a file that has to be told.
#[derive(Clone, Debug)]
pub struct FileTrouble<E: ContentError + 'static> {
    /// What is wrong, and with which file.
    pub error: FileError<E>,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// Whether the copy before it is used in its place.
    pub previous_used: bool,
}

impl<E: ContentError> FileTrouble<E> {
    /// Trouble with a file that was left as it is.
    pub(super) fn left_alone(error: FileError<E>) -> Self {
        Self {
            error,
            moved_to: None,
            previous_used: false,
        }
    }
}

/// A document that was read, and what has to be told about that. There is no way to the
/// document that does not lead past the troubles.
#[derive(Debug)]
#[must_use = "what is wrong with a file has to be told"]
pub struct Reading<D: Document> {
    document: Option<D>,
    troubles: Vec<FileTrouble<D::Error>>,
}

impl<D: Document> Reading<D> {
    /// Nothing is there, and nothing is wrong with that.
    pub(super) const fn missing() -> Self {
        Self {
            document: None,
            troubles: Vec::new(),
        }
    }

    /// A document with nothing wrong about it.
    pub(super) const fn whole(document: D) -> Self {
        Self {
            document: Some(document),
            troubles: Vec::new(),
        }
    }

    pub(super) const fn of(document: Option<D>, troubles: Vec<FileTrouble<D::Error>>) -> Self {
        Self { document, troubles }
    }

    /// The document, when there is one to be believed, and everything that has to be told.
    pub fn into_parts(self) -> (Option<D>, Vec<FileTrouble<D::Error>>) {
        (self.document, self.troubles)
    }
}
