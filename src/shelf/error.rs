//! What can go wrong on the shelf, with the facts that a sentence for the tyer needs.

use std::error::Error;
use std::fmt;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use strum::VariantNames;

use super::TieId;
use crate::guide::Phase;
use crate::knot::KnotError;

/// Why a document is not read, or would not be readable if it were written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Larger than any tie can be. Sizes in bytes.
    TooLarge {
        /// Its size, or at least this much.
        bytes: u64,
        /// The largest size that is read.
        limit: u64,
    },
    /// A folder, pipe or device stands where the document should be.
    NotAFile,
    /// Not JSON, or nested too deep.
    NotJson {
        /// What the JSON reader says, with line and column.
        why: String,
    },
    /// JSON, but a part is missing or of a wrong kind.
    Shape {
        /// What is missing or wrong.
        why: String,
    },
    /// Written by a newer version of this program.
    Newer {
        /// The version the document names.
        version: u64,
        /// The newest version that is read here.
        known: u64,
    },
    /// The contents are not those that were written.
    Checksum {
        /// The checksum in the document.
        stored: String,
        /// The checksum its contents have.
        computed: String,
    },
    /// No such knot can be tied.
    Knot(KnotError),
    /// No phase of the job has this name.
    Phase {
        /// The name as given.
        given: String,
    },
    /// The place does not lie in the knot.
    Place {
        /// `pass`, `strand`, `leg` or `crossing`.
        part: &'static str,
        /// The number as given.
        given: u16,
        /// The least it may be.
        least: u16,
        /// The most it may be.
        most: u16,
    },
    /// An extra section has a name that the document needs for itself, or is nested too deep.
    NotTheSame,
}

impl Fault {
    /// Whether the document is whole but of a newer version, and so to be left alone.
    pub const fn is_newer(&self) -> bool {
        matches!(self, Self::Newer { .. })
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge { bytes, limit } => {
                write!(f, "is {bytes} bytes, more than the {limit} that are read")
            }
            Self::NotAFile => f.write_str("is not a plain file"),
            Self::NotJson { why } => write!(f, "is not readable JSON: {why}"),
            Self::Shape { why } => write!(f, "does not hold what it should: {why}"),
            Self::Newer { version, known } => write!(
                f,
                "is of version {version}; this program reads versions up to {known}"
            ),
            Self::Checksum { stored, computed } => write!(
                f,
                "is damaged: its checksum is {stored} but its contents have {computed}"
            ),
            Self::Knot(error) => write!(f, "describes no knot that can be tied: {error}"),
            Self::Phase { given } => {
                let phases = Phase::VARIANTS.join(", ");
                write!(f, "names a phase {given:?}; the phases are {phases}")
            }
            Self::Place {
                part,
                given,
                least,
                most,
            } => write!(
                f,
                "stands at {part} {given}, outside the knot: {least} to {most}"
            ),
            Self::NotTheSame => f.write_str("would not read back as it was written"),
        }
    }
}

impl Error for Fault {}

impl From<KnotError> for Fault {
    fn from(error: KnotError) -> Self {
        Self::Knot(error)
    }
}

/// Why the shelf could not do what was asked. The words for it that a tyer reads are made
/// elsewhere; [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Debug)]
pub enum ShelfError {
    /// The system refused to read or write.
    Io {
        /// What was being done: `read`, `write`, `make`, `move`, `lock`, `list`.
        doing: &'static str,
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        source: Arc<io::Error>,
    },
    /// The document is there but not believed.
    Unreadable {
        /// The document.
        file: PathBuf,
        /// Why not.
        fault: Fault,
    },
    /// The document is gone, though the copy before it is there.
    Gone {
        /// Where it should be.
        file: PathBuf,
    },
    /// A JSON file whose name is none that the shelf gives.
    Stranger {
        /// The file.
        file: PathBuf,
    },
    /// The tie cannot be written so that it reads back the same. Nothing was written.
    Unwritable {
        /// The tie.
        id: TieId,
        /// Why not.
        fault: Fault,
    },
    /// Another window or program works at this tie.
    InUse {
        /// The tie.
        id: TieId,
    },
    /// The shelf has no tie of this name.
    NoSuchTie {
        /// The tie asked for.
        id: TieId,
    },
    /// Not the name of any tie: 6 to 32 of the letters a to z and digits.
    NotAnId {
        /// The text as given.
        given: String,
    },
    /// A file of this name exists already and is not overwritten.
    Exists {
        /// The file.
        file: PathBuf,
    },
    /// The system names no folder for the data of this user.
    NoHome,
}

impl ShelfError {
    /// For `map_err`: what was being done to which path.
    pub(super) fn io(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_owned();
        move |source| Self::Io {
            doing,
            path,
            source: Arc::new(source),
        }
    }

    /// Whether it tells of a document of a newer version.
    pub const fn is_newer(&self) -> bool {
        matches!(self, Self::Unreadable { fault, .. } if fault.is_newer())
    }
}

impl fmt::Display for ShelfError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Io {
                doing,
                path,
                source,
            } => write!(f, "could not {doing} {}: {source}", path.display()),
            Self::Unreadable { file, fault } => write!(f, "{} {fault}", file.display()),
            Self::Gone { file } => write!(f, "{} is gone", file.display()),
            Self::Stranger { file } => write!(
                f,
                "{} has not the name of a tie; import it to use it",
                file.display()
            ),
            Self::Unwritable { id, fault } => write!(f, "tie {id} is not written: it {fault}"),
            Self::InUse { id } => write!(f, "tie {id} is in use by another window"),
            Self::NoSuchTie { id } => write!(f, "there is no tie {id} on the shelf"),
            Self::NotAnId { given } => write!(
                f,
                "{given:?} names no tie; a tie's name is 6 to 32 letters a to z and digits"
            ),
            Self::Exists { file } => write!(
                f,
                "{} exists already and is not overwritten; choose another name",
                file.display()
            ),
            Self::NoHome => f.write_str("the system names no folder for this user's data"),
        }
    }
}

impl Error for ShelfError {
    fn source(&self) -> Option<&(dyn Error + 'static)> {
        match self {
            Self::Io { source, .. } => Some(source.as_ref()),
            Self::Unreadable { fault, .. } | Self::Unwritable { fault, .. } => Some(fault),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_error_names_the_file_and_what_is_wrong_with_it() {
        let about = |fault| {
            let file = PathBuf::from("ties/oarlock7.json");
            ShelfError::Unreadable { file, fault }.to_string()
        };
        let newer = Fault::Newer {
            version: 3,
            known: 1,
        };
        let damaged = Fault::Checksum {
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
            (Fault::NotAFile, "is not a plain file"),
        ] {
            assert_eq!(about(fault), format!("ties/oarlock7.json {text}"));
        }
    }

    #[test]
    fn what_the_system_refused_is_named_with_its_reason() {
        let refused = io::Error::from(io::ErrorKind::PermissionDenied);
        let error = ShelfError::io("write", Path::new("ties"))(refused);
        assert_eq!(error.to_string(), "could not write ties: permission denied");
        assert!(error.source().is_some());
    }
}
