//! The file: read once, saved on a thread of its own.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::Duration;

use directories::ProjectDirs;
use thiserror::Error;

use super::Settings;
use super::document::SettingsDocument;
use crate::files::{
    self, ContentError as _, Document as _, DocumentFile, FileError, FileTrouble, FormatError,
    Found, LARGEST_DOCUMENT, Reading, Reason,
};
use crate::words::{Sentence, Words};

/// How long the end of the program waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(2);

/// Where preferences are kept. Letting go of it waits for the last save, though not for ever.
#[derive(Debug)]
pub struct SettingsFile {
    path: Option<PathBuf>,
    inbox: Option<Sender<SaveRequest>>,
}

enum SaveRequest {
    Save(Box<Settings>),
    Close(Sender<()>),
}

/// What was read of the settings, and what has to be told about that.
pub type SettingsReading<T> = Reading<T, SettingsError>;

/// What came of opening.
#[derive(Debug)]
pub struct Opened {
    /// Where later changes are kept.
    pub file: SettingsFile,
    /// What the document says, or the usual when there is none to be believed.
    pub settings: Settings,
}

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
    /// All that can be read of it but those named here, which are as they were kept before, or else
    /// as usual.
    AllBut(Vec<String>),
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
    fn of(trouble: FileTrouble<FormatError>) -> Self {
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
}

impl SettingsFile {
    /// `$XDG_CONFIG_HOME/marlinspeak/settings.json`, or what the system has in its place; none
    /// when the system names no such folder.
    pub fn default_path() -> Option<PathBuf> {
        ProjectDirs::from("", "", "marlinspeak")
            .map(|folders| folders.config_dir().join("settings.json"))
    }

    /// The settings as they stand in the usual file, which is left alone; what is not believed of
    /// them gives way to the copy before or to what is usual.
    pub fn peek() -> SettingsReading<Settings> {
        match Self::default_path() {
            Some(path) => read(&file_at(&path), false).map(|document| document.settings),
            None => SettingsReading::whole(Settings::default()),
        }
    }

    /// No file: nothing is kept.
    pub const fn nowhere() -> Self {
        Self {
            path: None,
            inbox: None,
        }
    }

    /// Where the document is, or will be.
    pub fn path(&self) -> Option<&Path> {
        self.path.as_deref()
    }

    /// The bytes of the document at a path, or of the copy before it, where one of them is whole.
    /// Whoever opens a damaged one tells of it and mends it.
    pub fn document(path: &Path) -> Option<Vec<u8>> {
        let file = file_at(path);
        let whole = match (file.find(), file.find_previous()) {
            (Ok(Found::Whole(_)), _) => path.to_owned(),
            (_, Ok(Found::Whole(_))) => file.previous_path(),
            _ => return None,
        };
        files::read_bytes(&whole, LARGEST_DOCUMENT).ok()
    }

    /// Puts a document that comes from elsewhere at a path, unless one is there; says whether it did.
    ///
    /// # Errors
    /// [`FileError::Unreadable`] when it is not believed, [`FileError::Io`] when the disk refuses.
    pub fn take_in(path: &Path, document: &[u8]) -> Result<bool, FileError> {
        SettingsDocument::read(document).map_err(FileError::unreadable(path))?;
        let file = file_at(path);
        let _lock = file.lock()?;
        if file.exists() {
            return Ok(false);
        }
        file.create(document).map(|()| true)
    }

    /// Reads the settings. `notify` is called on a thread of the file's for every save that
    /// comes to nothing, and must not wait.
    pub fn open(
        path: &Path,
        notify: impl Fn(SettingsError) + Send + 'static,
    ) -> SettingsReading<Opened> {
        let file = file_at(path);
        let read = match file.exists().then(|| file.lock()) {
            Some(Err(error)) => SettingsReading::gather(|gathering| {
                gathering.add(SettingsError::Io(error.reason()));
                read(&file, false).hand_on(gathering)
            }),
            _lock => read(&file, true),
        };
        for trouble in read.troubles() {
            log::warn!("{trouble}");
        }
        // What could neither be read nor moved away must not be overwritten.
        let is_ours = |trouble: &SettingsError| {
            matches!(trouble, SettingsError::Damaged { aside: Some(_), .. })
        };
        let may_write = read.troubles().iter().all(is_ours);
        SettingsReading::gather(|gathering| {
            let document = read.hand_on(gathering);
            let settings = document.settings.clone();
            let started = may_write.then(|| start(file, document, notify));
            let inbox = match started.transpose() {
                Ok(inbox) => inbox,
                Err(error) => {
                    log::warn!("no thread for the settings: {error}");
                    gathering.add(SettingsError::Io(Reason::of(&error)));
                    None
                }
            };
            let path = Some(path.to_owned());
            Opened {
                file: Self { path, inbox },
                settings,
            }
        })
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
    DocumentFile::at(path).keeping_previous()
}

/// Reads the document. One that is damaged gives what can be read of it, and the copy before, or
/// else what is usual, for the rest. With `mend` it is set aside then, and what holds is written in
/// its place; nobody else may be at work at it.
fn read(file: &DocumentFile<SettingsDocument>, mend: bool) -> SettingsReading<SettingsDocument> {
    if let Ok(Found::Unreadable(fault)) = file.find()
        && !fault.is_newer()
        && let Ok(damaged) = files::read_bytes(file.path(), LARGEST_DOCUMENT)
    {
        let base = match file.find_previous() {
            Ok(Found::Whole(copy)) => copy,
            _ => SettingsDocument::default(),
        };
        if let Some((document, lost)) = SettingsDocument::salvage(&damaged, &base) {
            let mut troubles = Vec::new();
            let mut aside = None;
            if mend {
                match mend_with(file, &document) {
                    Ok(moved_to) => aside = Some(moved_to),
                    Err(error) => troubles.push(SettingsError::Io(error.reason())),
                }
            }
            troubles.push(SettingsError::Damaged {
                aside,
                fault,
                kept: SettingsKept::AllBut(lost),
            });
            return SettingsReading::of(document, troubles);
        }
    }
    let reading = if mend { file.repair() } else { file.read() };
    reading
        .map(Option::unwrap_or_default)
        .map_troubles(|_, trouble| SettingsError::of(trouble))
}

/// Sets a damaged document aside, says where to, and writes what holds in its place.
fn mend_with(
    file: &DocumentFile<SettingsDocument>,
    document: &SettingsDocument,
) -> Result<PathBuf, FileError> {
    let contents = document
        .write()
        .map_err(FileError::unreadable(file.path()))?;
    let aside = file.set_aside_current()?;
    file.write(&contents)?;
    Ok(aside)
}

fn folder_of(path: &Path) -> &Path {
    path.parent().unwrap_or(Path::new("."))
}

/// Starts the thread that saves.
fn start(
    file: DocumentFile<SettingsDocument>,
    document: SettingsDocument,
    notify: impl Fn(SettingsError) + Send + 'static,
) -> std::io::Result<Sender<SaveRequest>> {
    let (inbox, requests) = mpsc::channel();
    thread::Builder::new()
        .name("settings".to_owned())
        .spawn(move || keep(&file, document, &requests, &notify))?;
    Ok(inbox)
}

/// Saves what is asked for until the file is let go of: the newest settings, when several wait.
fn keep(
    file: &DocumentFile<SettingsDocument>,
    mut kept: SettingsDocument,
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
            match save(file, &kept, *settings) {
                Ok(saved) => kept = saved,
                Err(error) => {
                    log::warn!("settings not kept: {error}");
                    notify(SettingsError::Io(error.reason()));
                }
            }
        }
        if let Some(done) = closing {
            let _ = done.send(());
            return;
        }
    }
}

/// Saves these settings on top of what another program may have saved since `kept`, and gives what
/// is on disk then.
fn save(
    file: &DocumentFile<SettingsDocument>,
    kept: &SettingsDocument,
    settings: Settings,
) -> Result<SettingsDocument, FileError> {
    let _lock = file.lock()?;
    let mut document = kept.with(settings);
    if let Found::Whole(written) = file.find()? {
        document = document
            .on_top_of(&kept.settings, written)
            .map_err(FileError::unreadable(file.path()))?;
    }
    let contents = document
        .write()
        .map_err(FileError::unreadable(file.path()))?;
    file.write(&contents)?;
    Ok(document)
}
