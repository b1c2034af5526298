//! The file: read once, saved on a thread of its own.

use std::fs;
use std::io::{ErrorKind, Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::Duration;

use directories::ProjectDirs;
use serde_json::Value;

use super::document::{self, Object, VERSION};
use super::{Settings, read};
use crate::words::Words;

/// No settings are larger, in bytes.
const LARGEST: u64 = 1 << 20;
/// How long the end of the program waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(2);

/// Where preferences are kept. Letting go of it waits for the last save, though not for ever.
#[derive(Debug)]
pub struct SettingsFile {
    inbox: Option<Sender<Note>>,
}

enum Note {
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
    /// What is wrong.
    pub snag: Option<Snag>,
}

/// What can be wrong with the settings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Snag {
    /// The document was set aside, and the usual settings hold.
    Damaged {
        /// Where it is now.
        aside: PathBuf,
        /// What is wrong with it.
        why: String,
    },
    /// A newer version of this program wrote it. It is left alone; the usual settings hold,
    /// and changes are not kept.
    Newer {
        /// The document.
        file: PathBuf,
        /// The version it names.
        version: u64,
    },
    /// It could not be read, set aside or written.
    Io {
        /// What the system says.
        why: String,
    },
}

/// How the document of the settings is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Health {
    /// There is none yet: the usual settings hold.
    None,
    /// It can be read.
    Whole,
    /// A newer version of this program wrote it, with this number.
    Newer(u64),
    /// It cannot be believed, and why.
    Damaged(String),
    /// It cannot be read, or its folder not be written to, and why.
    Refused(String),
}

impl Snag {
    /// The sentence for it: what is wrong, what holds now, what to try.
    pub fn sentence(&self, words: &Words) -> String {
        match self {
            Self::Damaged { aside, why } => {
                let name = aside.file_name().unwrap_or(aside.as_os_str());
                let name = name.to_string_lossy();
                words.plainly("settings-damaged", &[("aside", &*name), ("reason", why)])
            }
            Self::Newer { file, version } => {
                let (file, version) = (file.display().to_string(), version.to_string());
                words.plainly("settings-newer", &[("file", &file), ("version", &version)])
            }
            Self::Io { why } => words.plainly("settings-not-kept", &[("reason", why)]),
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

    /// The settings as they stand in the usual file, which is left alone; the usual ones when
    /// there are none to be believed.
    pub fn peek() -> Settings {
        match Self::default_path().as_deref().map(look) {
            Some(Ok(Look::Good(_, settings))) => *settings,
            _ => Settings::default(),
        }
    }

    /// No file: nothing is kept.
    pub const fn nowhere() -> Self {
        Self { inbox: None }
    }

    /// Reads the settings. `notify` is called on a thread of the file's for every save that
    /// comes to nothing, and must not wait.
    pub fn open(path: &Path, notify: impl Fn(Snag) + Send + 'static) -> Opened {
        let opened = Self::open_quietly(path, notify);
        match &opened.snag {
            None => {}
            Some(Snag::Damaged { .. }) => log::warn!("the settings were damaged"),
            Some(Snag::Newer { version, .. }) => log::warn!("settings of version {version}"),
            Some(Snag::Io { why }) => log::warn!("no settings: {why}"),
        }
        opened
    }

    fn open_quietly(path: &Path, notify: impl Fn(Snag) + Send + 'static) -> Opened {
        let io = |error: std::io::Error| Opened {
            file: Self::nowhere(),
            settings: Settings::default(),
            snag: Some(Snag::Io {
                why: format!("{}: {error}", path.display()),
            }),
        };
        let (document, settings, snag) = match look(path) {
            Ok(Look::Missing) => (Object::new(), Settings::default(), None),
            Ok(Look::Good(document, settings)) => (document, *settings, None),
            Ok(Look::Newer(version)) => {
                return Opened {
                    file: Self::nowhere(),
                    settings: Settings::default(),
                    snag: Some(Snag::Newer {
                        file: path.to_owned(),
                        version,
                    }),
                };
            }
            Ok(Look::Bad(why)) => match set_aside(path) {
                Ok(aside) => (
                    Object::new(),
                    Settings::default(),
                    Some(Snag::Damaged { aside, why }),
                ),
                // What cannot be moved away must not be overwritten.
                Err(error) => return io(error),
            },
            Err(error) => return io(error),
        };
        let (inbox, notes) = mpsc::channel();
        let path = path.to_owned();
        let started = thread::Builder::new()
            .name("settings".to_owned())
            .spawn(move || keep(&path, document, &notes, &notify));
        match started {
            Ok(_) => Opened {
                file: Self { inbox: Some(inbox) },
                settings,
                snag,
            },
            Err(error) => Opened {
                file: Self::nowhere(),
                settings,
                snag: Some(Snag::Io {
                    why: error.to_string(),
                }),
            },
        }
    }

    /// How the document is, without setting anything aside. Its folder is made, and tried by
    /// writing to it.
    pub fn examine(path: &Path) -> Health {
        let folder = path.parent().unwrap_or(Path::new("."));
        let can_write = fs::create_dir_all(folder)
            .and_then(|()| tempfile::tempfile_in(folder))
            .map(drop);
        match (look(path), can_write) {
            (Err(error), _) | (_, Err(error)) => Health::Refused(error.to_string()),
            (Ok(Look::Missing), _) => Health::None,
            (Ok(Look::Good(..)), _) => Health::Whole,
            (Ok(Look::Newer(version)), _) => Health::Newer(version),
            (Ok(Look::Bad(why)), _) => Health::Damaged(why),
        }
    }

    /// Has these settings saved, and does not wait for it.
    pub fn keep(&self, settings: &Settings) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `notify` is not there to read it.
            let _ = inbox.send(Note::Save(Box::new(settings.clone())));
        }
    }
}

impl Drop for SettingsFile {
    fn drop(&mut self) {
        if let Some(inbox) = self.inbox.take() {
            let (done, closed) = mpsc::channel();
            let _ = inbox.send(Note::Close(done));
            // A disk that does not answer must not keep the program from ending.
            let _ = closed.recv_timeout(LAST_SAVE);
        }
    }
}

/// The life of the thread that saves: the newest settings, when there are several.
fn keep(path: &Path, mut document: Object, notes: &Receiver<Note>, notify: &dyn Fn(Snag)) {
    while let Ok(first) = notes.recv() {
        let (mut newest, mut closing) = (None, None);
        for note in std::iter::once(first).chain(notes.try_iter()) {
            match note {
                Note::Save(settings) => newest = Some(settings),
                Note::Close(done) => closing = Some(done),
            }
        }
        if let Some(settings) = newest {
            document::write(&settings, &mut document);
            if let Err(error) = replace(path, &document) {
                log::warn!("settings not kept: {error}");
                notify(Snag::Io {
                    why: format!("{}: {error}", path.display()),
                });
            }
        }
        if let Some(done) = closing {
            let _ = done.send(());
            return;
        }
    }
}

/// What stands where the document should be.
enum Look {
    Missing,
    Good(Object, Box<Settings>),
    Newer(u64),
    Bad(String),
}

fn look(path: &Path) -> std::io::Result<Look> {
    // Asked before opening: to open a pipe may wait for ever.
    match fs::metadata(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Look::Missing),
        Err(error) => return Err(error),
        Ok(about) if !about.is_file() => return Ok(Look::Bad("it is not a plain file".to_owned())),
        Ok(_) => {}
    }
    let mut contents = Vec::new();
    fs::File::open(path)?
        .take(LARGEST + 1)
        .read_to_end(&mut contents)?;
    if contents.len() as u64 > LARGEST {
        return Ok(Look::Bad(format!("it is larger than {LARGEST} bytes")));
    }
    let document = match serde_json::from_slice(&contents) {
        Ok(Value::Object(document)) => document,
        Ok(_) => return Ok(Look::Bad("it is not a JSON object".to_owned())),
        Err(error) => return Ok(Look::Bad(error.to_string())),
    };
    match document.get("version").and_then(Value::as_u64) {
        Some(version) if version > VERSION => return Ok(Look::Newer(version)),
        Some(VERSION) => {}
        _ => return Ok(Look::Bad("it names no version that there was".to_owned())),
    }
    Ok(match read::read(&document) {
        Ok(settings) => Look::Good(document, Box::new(settings)),
        Err(why) => Look::Bad(why),
    })
}

/// Moves the document to a name beside it that is free.
fn set_aside(path: &Path) -> std::io::Result<PathBuf> {
    let free = (1..=u32::MAX)
        .map(|number| path.with_file_name(format!("settings.damaged-{number}.json")))
        .find(|aside| fs::symlink_metadata(aside).is_err())
        .ok_or(ErrorKind::AlreadyExists)?;
    fs::rename(path, &free)?;
    Ok(free)
}

/// Puts the document in its place all at once, on disk when it returns.
fn replace(path: &Path, document: &Object) -> std::io::Result<()> {
    let folder = path.parent().unwrap_or(Path::new("."));
    fs::create_dir_all(folder)?;
    let mut written = tempfile::Builder::new()
        .prefix(".settings.")
        .suffix(".tmp")
        .tempfile_in(folder)?;
    serde_json::to_writer_pretty(&mut written, document)?;
    writeln!(written)?;
    written.as_file().sync_all()?;
    written.persist(path).map_err(|error| error.error)?;
    #[cfg(unix)]
    fs::File::open(folder)?.sync_all()?;
    Ok(())
}
