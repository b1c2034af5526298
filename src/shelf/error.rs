//! What can go wrong on the shelf, with the facts that a sentence for the tyer needs. The words
//! that a tyer reads are made elsewhere; those here are for logs and for users of the library.

use std::io;
use std::path::{Path, PathBuf};

use strum::VariantNames as _;
use thiserror::Error;

use super::{OrderId, TieId, TieIdError};
use crate::files::{
    ContentError, FieldError, FileAction, FileError, FileTrouble, FormatError, Reason, TakesAlong,
};
use crate::guide::Phase;
use crate::knot::KnotError;

/// Why a document of the shelf is not read, or would not be readable if it were written.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum DocumentError {
    /// It is no document of the kind, whatever it is about.
    #[error(transparent)]
    Format(#[from] FormatError),
    /// No such knot can be tied.
    #[error("describes no knot that can be tied: {0}")]
    Knot(#[from] KnotError),
    /// No phase of the job has this name.
    #[error("names a phase {given:?}; the phases are {}", Phase::VARIANTS.join(", "))]
    Phase {
        /// The name as given.
        given: String,
    },
    /// The place does not lie in the knot.
    #[error("stands at {part} {given}, outside the knot: {least} to {most}")]
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
}

impl DocumentError {
    /// A field that is missing or not what it should be.
    pub(super) fn shape(field: impl Into<String>, why: impl Into<String>) -> Self {
        FormatError::shape(field, why).into()
    }
}

impl From<FieldError> for DocumentError {
    fn from(error: FieldError) -> Self {
        FormatError::from(error).into()
    }
}

impl ContentError for DocumentError {
    fn is_newer(&self) -> bool {
        matches!(self, Self::Format(error) if error.is_newer())
    }
}

/// Something on the shelf that has to be told.
#[derive(Clone, Debug)]
pub struct ShelfTrouble {
    /// The tie it is about, when the file has the name of one.
    pub id: Option<TieId>,
    /// What is wrong, and with which file.
    pub error: ShelfError,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// The copy before it, when that is used in its place.
    pub copy_used: Option<CopyBefore>,
}

/// What is known of the copy before a damaged document.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CopyBefore {
    /// A tie as it stood so many presses earlier.
    PressesBehind(u64),
    /// A tie as it stood earlier; how much is not known.
    SomeWayBehind,
    /// Something that has no presses.
    AsKeptBefore,
}

/// Why the shelf could not do what was asked.
#[derive(Clone, Debug, Error)]
pub enum ShelfError {
    /// A file could not be read or written, or is not believed.
    #[error(transparent)]
    File(#[from] FileError<DocumentError>),
    /// A JSON file whose name is none that the shelf gives.
    #[error("{} has not the name of a tie; import it to use it", file.display())]
    Stranger {
        /// The file with the foreign name.
        file: PathBuf,
    },
    /// The tie cannot be written so that it reads back the same. Nothing was written.
    #[error("tie {id} is not written: it {fault}")]
    Unwritable {
        /// The tie that was to be written.
        id: TieId,
        /// Why it would not read back.
        #[source]
        fault: DocumentError,
    },
    /// Another window or program works at this tie.
    #[error("tie {id} is in use by another window")]
    InUse {
        /// The tie that somebody works at.
        id: TieId,
    },
    /// The shelf has no tie of this name.
    #[error("there is no tie {id} on the shelf")]
    NoSuchTie {
        /// The tie asked for.
        id: TieId,
    },
    /// There is no order of this name.
    #[error("there is no order {id}")]
    NoSuchOrder {
        /// The order asked for.
        id: OrderId,
    },
    /// Not the name of any tie.
    #[error(transparent)]
    NotAnId(#[from] TieIdError),
    /// The system names no folder for the data of this user.
    #[error("the system names no folder for this user's data")]
    NoHome,
    /// It failed when something had been found wrong, and perhaps mended, already.
    #[error("{error}")]
    After {
        /// What was found wrong before, of which there is at least one.
        troubles: Vec<ShelfTrouble>,
        /// Why it failed.
        #[source]
        error: Box<ShelfError>,
    },
}

impl TakesAlong<ShelfTrouble> for ShelfError {
    fn after(self, troubles: Vec<ShelfTrouble>) -> Self {
        Self::After {
            troubles,
            error: Box::new(self),
        }
    }
}

impl ShelfError {
    /// For `map_err`: what was being done to which path.
    pub(super) fn io(action: FileAction, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let error = FileError::io(action, path);
        move |source| Self::File(error(source))
    }

    /// For `map_err`: a tie that cannot be written.
    pub(super) fn unwritable(id: &TieId) -> impl FnOnce(DocumentError) -> Self {
        let id = id.clone();
        move |fault| Self::Unwritable { id, fault }
    }

    /// Whether it tells of a document of a newer version.
    pub fn is_newer(&self) -> bool {
        match self {
            Self::File(error) => error.is_newer(),
            Self::After { error, .. } => error.is_newer(),
            _ => false,
        }
    }

    /// What the system or the reader says, for the log: without a path.
    pub fn cause(&self) -> String {
        match self {
            Self::After { error, .. } => error.cause(),
            Self::File(error) => error.cause(),
            Self::Stranger { .. } => "the name is none of a tie".to_owned(),
            error => error.to_string(),
        }
    }

    /// The kind of what is wrong.
    pub fn reason(&self) -> Reason {
        match self {
            Self::File(error) => error.reason(),
            Self::After { error, .. } => error.reason(),
            Self::InUse { .. } => Reason::InUse,
            Self::NoSuchTie { .. } | Self::NoSuchOrder { .. } | Self::NoHome => Reason::NotFound,
            Self::Stranger { .. } | Self::NotAnId(_) => Reason::BadName,
            Self::Unwritable { .. } => Reason::Other,
        }
    }
}

impl From<FileError> for ShelfError {
    fn from(error: FileError) -> Self {
        Self::File(error.of_kind())
    }
}

impl ShelfTrouble {
    /// What is wrong, for the log: with the file where that has a name that the shelf gives.
    pub fn noted(&self) -> String {
        match &self.error {
            stranger @ ShelfError::Stranger { .. } => stranger.cause(),
            error => error.to_string(),
        }
    }

    /// What was found wrong with a file of a tie, that of its log among them.
    pub(super) fn with_tie(
        id: &TieId,
        trouble: FileTrouble<DocumentError>,
        copy: impl FnOnce(&FileTrouble<DocumentError>) -> CopyBefore,
    ) -> Self {
        let copy_used = trouble.previous_used.then(|| copy(&trouble));
        Self {
            id: Some(id.clone()),
            copy_used,
            error: trouble.error.into(),
            moved_to: trouble.moved_to,
        }
    }

    /// What was found wrong with the tubes and cords kept by name, or with an order.
    pub(super) fn with_presets(trouble: FileTrouble<DocumentError>) -> Self {
        Self {
            id: None,
            copy_used: trouble.previous_used.then_some(CopyBefore::AsKeptBefore),
            error: trouble.error.into(),
            moved_to: trouble.moved_to,
        }
    }

    /// What was found wrong with the settings, when they were to go into a backup.
    pub(super) fn with_settings(trouble: FileTrouble<FormatError>) -> Self {
        Self {
            id: None,
            copy_used: trouble.previous_used.then_some(CopyBefore::AsKeptBefore),
            error: ShelfError::from(trouble.error),
            moved_to: trouble.moved_to,
        }
    }

    /// A file that has not the name of a tie.
    pub(super) fn stranger(file: PathBuf) -> Self {
        Self::from(ShelfError::Stranger { file })
    }
}

impl From<ShelfError> for ShelfTrouble {
    /// What the shelf refused, with nothing done about it.
    fn from(error: ShelfError) -> Self {
        Self {
            id: None,
            error,
            moved_to: None,
            copy_used: None,
        }
    }
}
