//! What can go wrong with a file, with the facts that a sentence about it needs.

use std::error::Error;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use strum::{Display, IntoStaticStr};
use thiserror::Error;

use super::Reason;

/// What was being done to a file or folder when the system refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Display, IntoStaticStr)]
#[strum(serialize_all = "lowercase")]
pub enum FileAction {
    /// Reading what stands in a file.
    Read,
    /// Writing a file, or waiting until it is on disk.
    Write,
    /// Making a folder, with those around it.
    Make,
    /// Giving a file another name, or removing it.
    Move,
    /// Locking a file against other programs.
    Lock,
    /// Looking through a folder.
    List,
}

/// Why bytes are no document of this program, whatever the document is about.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum FormatError {
    /// Larger than any document can be. Sizes in bytes.
    #[error("is {bytes} bytes, more than the {limit} that are read")]
    TooLarge {
        /// Its size, or at least this much.
        bytes: u64,
        /// The largest size that is read.
        limit: u64,
    },
    /// A folder, pipe or device stands where the document should be.
    #[error("is not a plain file")]
    NotAFile,
    /// Not JSON, or nested too deep.
    #[error("is not readable JSON: {why}")]
    NotJson {
        /// The line where it ceases to be JSON, from 1.
        line: usize,
        /// The column there.
        column: usize,
        /// What the JSON reader says, with line and column.
        why: String,
    },
    /// JSON, but no object with fields.
    #[error("does not hold what it should: the document is not an object")]
    NotAnObject,
    /// No field `version`, or none that is a whole number.
    #[error("does not hold what it should: `version` is not a whole number")]
    NoVersion,
    /// A field is missing or not what it should be.
    #[error("does not hold what it should: {why}")]
    Shape {
        /// The field, after the sections it is in: `tube.diameter`; empty for the document as a
        /// whole.
        field: String,
        /// Which field, and what is wrong with it.
        why: String,
    },
    /// Written by a newer version of this program.
    #[error("is of version {version}; this program reads versions up to {known}")]
    Newer {
        /// The version the document names.
        version: u64,
        /// The newest version that is read here.
        known: u64,
    },
    /// The contents are not those that were written.
    #[error("is damaged: its checksum is {stored} but its contents have {computed}")]
    Checksum {
        /// The checksum in the document.
        stored: String,
        /// The checksum its contents have.
        computed: String,
    },
    /// What is written would not be read again as the same: a field that this version does not know
    /// has a name that the document needs for itself, or is nested too deep.
    #[error("would not read back as it was written")]
    NotTheSame,
}

impl FormatError {
    /// A field that is missing or not what it should be. `why` names it too.
    pub fn shape(field: impl Into<String>, why: impl Into<String>) -> Self {
        Self::Shape {
            field: field.into(),
            why: why.into(),
        }
    }
}

/// Why the contents of a document of one kind are not believed.
pub trait ContentError: Error + Clone + From<FormatError> {
    /// Whether the document is whole but of a newer version, and so to be left alone.
    fn is_newer(&self) -> bool;
}

impl ContentError for FormatError {
    fn is_newer(&self) -> bool {
        matches!(self, Self::Newer { .. })
    }
}

/// Why a file could not be read or written. `E` tells what can be wrong with its contents.
#[derive(Clone, Debug, Error)]
pub enum FileError<E: ContentError + 'static = FormatError> {
    /// The system refused to read, write, make, move, lock or list.
    #[error("could not {action} {}: {source}", path.display())]
    Io {
        /// What was being done.
        action: FileAction,
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        source: Arc<io::Error>,
    },
    /// The document is there but not believed.
    #[error("{} {fault}", file.display())]
    Unreadable {
        /// Where the document is.
        file: PathBuf,
        /// What is wrong with it.
        #[source]
        fault: E,
    },
    /// The document is gone, though the copy before it is there.
    #[error("{} is gone", file.display())]
    Gone {
        /// Where it should be.
        file: PathBuf,
    },
    /// A file of this name exists already and is not overwritten.
    #[error("{} exists already and is not overwritten; choose another name", file.display())]
    Exists {
        /// The file that is there.
        file: PathBuf,
    },
}

impl<E: ContentError> FileError<E> {
    /// For `map_err`: what was being done to which path.
    pub fn io(action: FileAction, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_owned();
        move |source| Self::Io {
            action,
            path,
            source: Arc::new(source),
        }
    }

    /// For `map_err`: the file whose contents are not believed.
    pub fn unreadable(file: &Path) -> impl FnOnce(E) -> Self {
        let file = file.to_owned();
        move |fault| Self::Unreadable { file, fault }
    }

    /// Whether it tells of a document of a newer version, which is to be left alone.
    pub fn is_newer(&self) -> bool {
        matches!(self, Self::Unreadable { fault, .. } if fault.is_newer())
    }

    /// Whether it tells of a document that is there and damaged, and so to be set aside.
    pub fn is_damaged(&self) -> bool {
        matches!(self, Self::Unreadable { fault, .. } if !fault.is_newer())
    }

    /// The file or folder it tells of.
    pub fn path(&self) -> &Path {
        match self {
            Self::Io { path, .. } => path,
            Self::Unreadable { file, .. } | Self::Gone { file } | Self::Exists { file } => file,
        }
    }

    /// What the system or the reader says, for the log: without the path, which somebody may have
    /// typed.
    pub fn cause(&self) -> String {
        match self {
            Self::Io { action, source, .. } => format!("could not {action}: {source}"),
            Self::Unreadable { fault, .. } => format!("the document {fault}"),
            Self::Gone { .. } => "it is gone".to_owned(),
            Self::Exists { .. } => "it exists already".to_owned(),
        }
    }

    /// The kind of what is wrong.
    pub fn reason(&self) -> Reason {
        match self {
            Self::Io { source, .. } => Reason::of(source),
            Self::Unreadable { fault, .. } if fault.is_newer() => Reason::Newer,
            Self::Unreadable { .. } => Reason::Damaged,
            Self::Gone { .. } => Reason::NotFound,
            Self::Exists { .. } => Reason::IsThere,
        }
    }

    /// Whether the system says that there is no such file.
    pub fn is_missing(&self) -> bool {
        matches!(self, Self::Io { source, .. } if source.kind() == io::ErrorKind::NotFound)
    }
}

impl FileError {
    /// This error as one about documents of some kind.
    pub fn of_kind<E: ContentError>(self) -> FileError<E> {
        match self {
            Self::Io {
                action,
                path,
                source,
            } => FileError::Io {
                action,
                path,
                source,
            },
            Self::Unreadable { file, fault } => FileError::Unreadable {
                file,
                fault: fault.into(),
            },
            Self::Gone { file } => FileError::Gone { file },
            Self::Exists { file } => FileError::Exists { file },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_error_names_the_file_and_what_is_wrong_with_it() {
        let about = |fault| FileError::unreadable(Path::new("ties/oarlock7.json"))(fault);
        let newer = FormatError::Newer {
            version: 3,
            known: 1,
        };
        let damaged = FormatError::Checksum {
            stored: "crc32:1".to_owned(),
            computed: "crc32:2".to_owned(),
        };
        for (fault, text) in [
            (
                newer,
                "is of version 3; this program reads versions up to 1",
            ),
            (
                damaged,
                "is damaged: its checksum is crc32:1 but its contents have crc32:2",
            ),
            (FormatError::NotAFile, "is not a plain file"),
        ] {
            assert_eq!(
                about(fault).to_string(),
                format!("ties/oarlock7.json {text}")
            );
        }
    }

    #[test]
    fn what_the_system_refused_is_named_with_its_reason() {
        let refused = io::Error::from(io::ErrorKind::PermissionDenied);
        let error: FileError = FileError::io(FileAction::Write, Path::new("ties"))(refused);
        assert_eq!(error.to_string(), "could not write ties: permission denied");
        assert!(error.source().is_some());
    }
}
