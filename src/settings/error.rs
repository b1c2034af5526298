//! What can be wrong with the settings, and the words for it.

use std::path::{Path, PathBuf};

use thiserror::Error;

use crate::files::{FileError, FileTrouble, FormatError, Reason};
use crate::words::{Sentence, Words};

/// What can be wrong with the settings. The words that a tyer reads are those of
/// [`SettingsError::sentence`].
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum SettingsError {
    /// The document is not believed.
    #[error("the settings were damaged: {fault}")]
    Damaged {
        /// Where it is now, when it was set aside.
        aside: Option<PathBuf>,
        /// What is wrong with it.
        fault: FormatError,
        /// Which settings hold in its place.
        kept: SettingsKept,
    },
    /// A newer version of this program wrote it. It is left alone; the usual settings hold,
    /// and changes are not kept.
    #[error("the settings are of version {version}")]
    Newer {
        /// Where the document is.
        file: PathBuf,
        /// The version it names.
        version: u64,
    },
    /// It could not be read, set aside or written.
    #[error("no settings: {0:?}")]
    Io(Reason),
}

/// Which settings hold where the document is not believed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SettingsKept {
    /// The usual ones.
    Usual,
    /// Those of the copy before.
    CopyBefore,
    /// Those that were saved in its place.
    AsSaved,
    /// All that can be read of it but those named here, which are as they were kept before, or else
    /// as usual.
    AllBut(Vec<String>),
}

impl SettingsError {
    /// The sentence for it: what is wrong, what holds now, what to try.
    pub fn sentence(&self, words: &Words) -> Sentence {
        match self {
            Self::Damaged { aside, fault, kept } => {
                let why = words.fault(fault);
                let name = aside.as_deref().and_then(Path::file_name);
                let name = name.unwrap_or_default().to_string_lossy();
                let lost = match kept {
                    SettingsKept::AllBut(lost) => lost.join(", "),
                    _ => String::new(),
                };
                let kept = match kept {
                    SettingsKept::Usual => "usual",
                    SettingsKept::CopyBefore => "copy",
                    SettingsKept::AsSaved => "saved",
                    SettingsKept::AllBut(lost) if lost.is_empty() => "all",
                    SettingsKept::AllBut(_) => "rest",
                };
                let texts = [
                    ("state", if aside.is_some() { "aside" } else { "there" }),
                    ("aside", &*name),
                    ("reason", &why),
                    ("kept", kept),
                    ("lost", &lost),
                ];
                words.notice("settings-damaged", &texts)
            }
            Self::Newer { file, version } => {
                let (file, version) = (file.display().to_string(), version.to_string());
                words.notice("settings-newer", &[("file", &file), ("version", &version)])
            }
            Self::Io(reason) => {
                words.notice("settings-not-kept", &[("reason", &words.reason(*reason))])
            }
        }
    }

    /// What was found wrong with the document as a whole.
    pub(super) fn of(trouble: FileTrouble<FormatError>) -> Self {
        let FileTrouble {
            error,
            moved_to,
            previous_used,
        } = trouble;
        match error {
            FileError::Unreadable {
                file,
                fault: FormatError::Newer { version, .. },
            } => Self::Newer { file, version },
            FileError::Unreadable { fault, .. } => Self::Damaged {
                aside: moved_to,
                fault,
                kept: if previous_used {
                    SettingsKept::CopyBefore
                } else {
                    SettingsKept::Usual
                },
            },
            FileError::Gone { .. } => Self::Damaged {
                aside: None,
                fault: FormatError::shape("", "it is gone"),
                kept: SettingsKept::CopyBefore,
            },
            error => Self::Io(error.reason()),
        }
    }

    /// A damaged document that stood where other settings were saved: those hold.
    pub(super) fn set_aside(trouble: FileTrouble<FormatError>) -> Self {
        match trouble.error {
            FileError::Unreadable { fault, .. } => Self::Damaged {
                aside: trouble.moved_to,
                fault,
                kept: SettingsKept::AsSaved,
            },
            error => Self::Io(error.reason()),
        }
    }
}
