//! Saving the settings on a thread of its own.

use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

use super::document::SettingsDocument;
use super::{Settings, SettingsError};
use crate::files::{DocumentFile, FileError, FileTrouble, FormatError, Found, Reading, Teller};

/// What the thread is asked for.
pub(super) enum SaveRequest {
    Save(Box<Settings>),
    Close(Sender<()>),
}

/// Everything that comes to light on the thread goes the way of what fails there.
struct Notified<'a>(&'a dyn Fn(SettingsError));

impl Teller<FileTrouble<FormatError>> for Notified<'_> {
    fn tell_of(&mut self, troubles: Vec<FileTrouble<FormatError>>) {
        for trouble in troubles {
            self.0(SettingsError::set_aside(trouble));
        }
    }
}

/// Starts the thread that saves.
pub(super) fn start(
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
            match save(file, &kept, *settings).hand_on(&mut Notified(notify)) {
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
/// is on disk then. A damaged document that stood there is set aside, and comes out as a trouble.
fn save(
    file: &DocumentFile<SettingsDocument>,
    kept: &SettingsDocument,
    settings: Settings,
) -> Reading<Result<SettingsDocument, FileError>, FileTrouble<FormatError>> {
    Reading::gather(|gathering| {
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
        file.write(&contents).hand_on(gathering)?;
        Ok(document)
    })
}
