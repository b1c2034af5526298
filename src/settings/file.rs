//! The file: read once, saved on a thread of its own.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, Sender};
use std::time::Duration;

use directories::ProjectDirs;

use super::document::SettingsDocument;
use super::saving::{SaveRequest, start};
use super::{Settings, SettingsError, SettingsKept};
use crate::files::{
    self, ContentError as _, Document as _, DocumentFile, FileError, FileTrouble, FormatError,
    Found, LARGEST_DOCUMENT, Reading, Reason,
};

/// How long the end of the program waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(2);

/// Where preferences are kept. Letting go of it waits for the last save, though not for ever.
#[derive(Debug)]
pub struct SettingsFile {
    path: Option<PathBuf>,
    inbox: Option<Sender<SaveRequest>>,
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

    /// The bytes of the document at a path for a backup: as they stand where it is whole or of a newer
    /// version, else those of the copy before it. None where there is nothing, or nothing that is
    /// believed, which comes out as a trouble. Nothing is changed.
    pub fn document(path: &Path) -> Reading<Option<Vec<u8>>, FileTrouble<FormatError>> {
        let file = file_at(path);
        let is_newer = matches!(file.find(), Ok(Found::Unreadable(fault)) if fault.is_newer());
        if is_newer {
            return bytes_at(path);
        }
        Reading::gather(|gathering| {
            let is_whole = matches!(file.find(), Ok(Found::Whole(_)));
            file.read().hand_on(gathering)?;
            let place = if is_whole {
                path.to_owned()
            } else {
                file.previous_path()
            };
            bytes_at(&place).hand_on(gathering)
        })
    }

    /// Puts a document that comes from elsewhere at a path, unless one is there; says whether it did.
    ///
    /// # Errors
    /// [`FileError::Unreadable`] when it is not believed, [`FileError::Io`] when the disk refuses.
    pub fn take_in(path: &Path, document: &[u8]) -> Result<bool, FileError> {
        SettingsDocument::read(document).map_err(FileError::unreadable(path))?;
        let file = file_at(path);
        let _lock = file.lock()?;
        if file.exists()? {
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
        // Where the system does not tell, the reading says why.
        let is_there = file.exists().unwrap_or(false);
        let read = match is_there.then(|| file.lock()) {
            Some(Err(error)) => SettingsReading::gather(|gathering| {
                gathering.add(SettingsError::Io(error.reason()));
                read(&file, false).hand_on(gathering)
            }),
            _lock => read(&file, true),
        };
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

/// The bytes of a document, or why the system does not give them.
fn bytes_at(path: &Path) -> Reading<Option<Vec<u8>>, FileTrouble<FormatError>> {
    match files::read_bytes(path, LARGEST_DOCUMENT) {
        Ok(bytes) => Reading::whole(Some(bytes)),
        Err(error) => Reading::of(None, vec![FileTrouble::left_alone(error)]),
    }
}

pub(super) fn file_at(path: &Path) -> DocumentFile<SettingsDocument> {
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
    file.create(&contents)?;
    Ok(aside)
}
