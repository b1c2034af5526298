//! The file: read once, saved on a thread of its own.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::Duration;

use directories::ProjectDirs;
use thiserror::Error;

use super::Settings;
use super::document::SettingsDocument;
use crate::files::{self, DocumentFile, FileError, FileTrouble, FormatError, Found, Reason};
use crate::words::{Sentence, Words};

/// How long the end of the program waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(2);

/// Where preferences are kept. Letting go of it waits for the last save, though not for ever.
#[derive(Debug)]
pub struct SettingsFile {
    inbox: Option<Sender<SaveRequest>>,
}

enum SaveRequest {
    Save(Box<Settings>),
    Close(Sender<()>),
}

/// What came of opening.
#[derive(Debug)]
pub struct Opened {
    /// Where later changes are kept.
    pub file: SettingsFile,
    /// What the document says, or the usual when there is none to be believed.
    pub settings: Settings,
    /// What is wrong with the document, when something is.
    pub trouble: Option<SettingsError>,
}

/// What can be wrong with the settings. The words that a tyer reads are those of
/// [`SettingsError::sentence`].
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum SettingsError {
    /// The document was set aside, and the usual settings hold.
    #[error("the settings were damaged")]
    Damaged {
        /// Where it is now.
        aside: PathBuf,
        /// What is wrong with it.
        fault: FormatError,
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

/// How the document of the settings is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SettingsHealth {
    /// There is none yet: the usual settings hold.
    None,
    /// It can be read.
    Whole,
    /// A newer version of this program wrote it, with this number.
    Newer(u64),
    /// It cannot be believed, and why.
    Damaged(FormatError),
    /// It cannot be read, or its folder not be written to, and why.
    Refused(Reason),
}

impl SettingsError {
    /// The sentence for it: what is wrong, what holds now, what to try.
    pub fn sentence(&self, words: &Words) -> Sentence {
        match self {
            Self::Damaged { aside, fault } => {
                let name = aside.file_name().unwrap_or(aside.as_os_str());
                let (name, why) = (name.to_string_lossy(), words.fault(fault));
                words.notice("settings-damaged", &[("aside", &*name), ("reason", &why)])
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

    /// The one of these that is told: what the system refused before what is wrong with the
    /// document.
    fn first_of(mut troubles: Vec<FileTrouble<FormatError>>) -> Option<Self> {
        troubles.sort_by_key(|trouble| !matches!(trouble.error, FileError::Io { .. }));
        let FileTrouble {
            error, moved_to, ..
        } = troubles.into_iter().next()?;
        Some(match (error, moved_to) {
            (FileError::Unreadable { fault, .. }, Some(aside)) => Self::Damaged { aside, fault },
            (
                FileError::Unreadable {
                    file,
                    fault: FormatError::Newer { version, .. },
                },
                None,
            ) => Self::Newer { file, version },
            (error, _) => Self::Io(error.reason()),
        })
    }
}

impl SettingsFile {
    /// `$XDG_CONFIG_HOME/marlinspeak/settings.json`, or what the system has in its place; none
    /// when the system names no such folder.
    pub fn default_path() -> Option<PathBuf> {
        ProjectDirs::from("", "", "marlinspeak")
            .map(|folders| folders.config_dir().join("settings.json"))
    }

    /// The settings as they stand in the usual file, which is left alone; the usual ones when
    /// there are none to be believed.
    pub fn peek() -> Settings {
        let found = Self::default_path().map(|path| file_at(&path).find());
        match found {
            Some(Ok(Found::Whole(document))) => document.settings,
            _ => Settings::default(),
        }
    }

    /// No file: nothing is kept.
    pub const fn nowhere() -> Self {
        Self { inbox: None }
    }

    /// Reads the settings. `notify` is called on a thread of the file's for every save that
    /// comes to nothing, and must not wait.
    pub fn open(path: &Path, notify: impl Fn(SettingsError) + Send + 'static) -> Opened {
        let file = file_at(path);
        let (document, troubles) = file.repair().into_parts();
        let trouble = SettingsError::first_of(troubles);
        if let Some(trouble) = &trouble {
            log::warn!("{trouble}");
        }
        let document = document.unwrap_or_default();
        let settings = document.settings.clone();
        // What could neither be read nor moved away must not be overwritten.
        if matches!(trouble, None | Some(SettingsError::Damaged { .. })) {
            match start(file, document, notify) {
                Ok(file) => Opened {
                    file,
                    settings,
                    trouble,
                },
                Err(error) => {
                    log::warn!("no thread for the settings: {error}");
                    Opened {
                        file: Self::nowhere(),
                        settings,
                        trouble: Some(SettingsError::Io(Reason::of(&error))),
                    }
                }
            }
        } else {
            Opened {
                file: Self::nowhere(),
                settings,
                trouble,
            }
        }
    }

    /// How the document is, without setting anything aside. Its folder is made, and tried by
    /// writing to it.
    pub fn examine(path: &Path) -> SettingsHealth {
        let can_write = std::fs::create_dir_all(folder_of(path))
            .and_then(|()| tempfile::tempfile_in(folder_of(path)));
        match (file_at(path).find(), can_write) {
            (Err(error), _) => {
                log::warn!("{error}");
                SettingsHealth::Refused(error.reason())
            }
            (_, Err(error)) => {
                log::warn!("the folder of the settings: {error}");
                SettingsHealth::Refused(Reason::of(&error))
            }
            (Ok(Found::Missing), _) => SettingsHealth::None,
            (Ok(Found::Whole(_)), _) => SettingsHealth::Whole,
            (Ok(Found::Unreadable(FormatError::Newer { version, .. })), _) => {
                SettingsHealth::Newer(version)
            }
            (Ok(Found::Unreadable(fault)), _) => {
                log::warn!("the settings: {fault}");
                SettingsHealth::Damaged(fault)
            }
        }
    }

    /// Has these settings saved, and does not wait for it.
    pub fn keep(&self, settings: &Settings) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `notify` is not there to read it.
            let _ = inbox.send(SaveRequest::Save(Box::new(settings.clone())));
        }
    }
}

impl Drop for SettingsFile {
    fn drop(&mut self) {
        if let Some(inbox) = self.inbox.take() {
            let (done, closed) = mpsc::channel();
            let _ = inbox.send(SaveRequest::Close(done));
            // A disk that does not answer must not keep the program from ending.
            let _ = closed.recv_timeout(LAST_SAVE);
        }
    }
}

fn file_at(path: &Path) -> DocumentFile<SettingsDocument> {
    DocumentFile::at(path)
}

fn folder_of(path: &Path) -> &Path {
    path.parent().unwrap_or(Path::new("."))
}

/// Starts the thread that saves.
fn start(
    file: DocumentFile<SettingsDocument>,
    document: SettingsDocument,
    notify: impl Fn(SettingsError) + Send + 'static,
) -> std::io::Result<SettingsFile> {
    let (inbox, requests) = mpsc::channel();
    thread::Builder::new()
        .name("settings".to_owned())
        .spawn(move || keep(&file, document, &requests, &notify))?;
    Ok(SettingsFile { inbox: Some(inbox) })
}

/// Saves what is asked for until the file is let go of: the newest settings, when several wait.
fn keep(
    file: &DocumentFile<SettingsDocument>,
    mut document: SettingsDocument,
    requests: &Receiver<SaveRequest>,
    notify: &dyn Fn(SettingsError),
) {
    while let Ok(first) = requests.recv() {
        let (mut newest, mut closing) = (None, None);
        for request in std::iter::once(first).chain(requests.try_iter()) {
            match request {
                SaveRequest::Save(settings) => newest = Some(settings),
                SaveRequest::Close(done) => closing = Some(done),
            }
        }
        if let Some(settings) = newest {
            document.settings = *settings;
            if let Err(error) = save(file, &document) {
                log::warn!("settings not kept: {error}");
                notify(SettingsError::Io(error.reason()));
            }
        }
        if let Some(done) = closing {
            let _ = done.send(());
            return;
        }
    }
}

fn save(
    file: &DocumentFile<SettingsDocument>,
    document: &SettingsDocument,
) -> Result<(), FileError> {
    let contents = document
        .write()
        .map_err(FileError::unreadable(file.path()))?;
    files::make_folder(folder_of(file.path()))?;
    file.write(&contents)
}
