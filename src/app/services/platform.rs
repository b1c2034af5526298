//! What the platform does for the tyer: a clock, timers, sounds, a screen that stays lit, the
//! file of the settings.

use std::fmt;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;
use std::time::{Duration, Instant};

use directories::UserDirs;

use super::awake::Awake;
use super::dialogs::{FileDialogs, NoDialogs, Portal};
use super::event::ServiceEvent;
use super::timers::Timers;
use crate::files::DiskCall;
use crate::pedal::Ear;
use crate::session::{Event, ToSession};
use crate::settings::{Settings, SettingsError, SettingsFile};
use crate::voice::{Chime, CuePlayer};

/// Longer than a disk takes that is well, and too short to be felt.
const MOMENT: Duration = Duration::from_millis(50);

/// The services of the platform. The default is none of them, with a clock that runs.
pub struct PlatformServices {
    /// Where the settings are saved.
    pub file: SettingsFile,
    /// Time since any beginning.
    pub clock: Box<dyn Fn() -> Duration>,
    /// What wakes the session.
    pub timers: Timers,
    /// What sounds.
    pub chime: Box<dyn Chime>,
    /// What listens for knocks.
    pub ear: Ear,
    /// What keeps the screen on.
    pub awake: Awake,
    /// The windows of the system in which files are chosen.
    pub dialogs: Arc<dyn FileDialogs>,
    /// How long a press may wait until the one before it is on disk.
    pub moment: Duration,
    /// Where the tyer's documents lie, or else the home folder. Which that is stands in a file, so it is
    /// asked for before there is a window that would wait for it.
    pub documents: Option<PathBuf>,
    /// Whether size and place of the window are kept for the next time.
    pub keeps_window: bool,
    /// Whether the tyer has left what was not saved.
    pub left_unsaved: Arc<AtomicBool>,
}

impl Default for PlatformServices {
    fn default() -> Self {
        let start = Instant::now();
        Self {
            file: SettingsFile::nowhere(),
            clock: Box::new(move || start.elapsed()),
            timers: Timers::default(),
            chime: Box::new(CuePlayer::default()),
            ear: Ear::default(),
            awake: Awake::default(),
            dialogs: Arc::new(NoDialogs),
            moment: MOMENT,
            documents: documents(),
            keeps_window: false,
            left_unsaved: Arc::default(),
        }
    }
}

fn documents() -> Option<PathBuf> {
    let _call = DiskCall::begin();
    let folders = UserDirs::new()?;
    let documents = folders.document_dir();
    Some(documents.unwrap_or_else(|| folders.home_dir()).to_owned())
}

impl fmt::Debug for PlatformServices {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("PlatformServices").finish_non_exhaustive()
    }
}

impl PlatformServices {
    /// The real services, and what the tyer prefers. `tell` hands their events on to the app, and
    /// must not wait.
    pub fn start(tell: impl Fn(ServiceEvent) + Clone + Send + Sync + 'static) -> (Self, Settings) {
        let session = {
            let tell = tell.clone();
            move |event: Event| tell(ServiceEvent::Session(event))
        };
        let mut platform = Self {
            chime: Box::new(CuePlayer::start()),
            ear: Ear::new(
                {
                    let tell = tell.clone();
                    move |raw| tell(ServiceEvent::Pedal(raw))
                },
                {
                    let session = session.clone();
                    move |news| session(Event::Ear(news))
                },
            ),
            awake: Awake::start({
                let session = session.clone();
                move || session(Event::NotAwake)
            }),
            dialogs: Arc::new(Portal::of_session()),
            keeps_window: true,
            ..Self::default()
        };
        let mut settings = Settings::default();
        if let Some(path) = SettingsFile::default_path() {
            let told = session.clone();
            let opened = SettingsFile::open(&path, move |trouble: SettingsError| {
                told(Event::Settings(trouble));
            });
            let opened = opened.hand_on(&mut ToSession(session.clone()));
            (platform.file, settings) = (opened.file, opened.settings);
        }
        // Without the thread long and double presses and the flash do not work; every key does.
        if let Ok(timers) = Timers::start(move |timer| session(Event::Woken(timer))) {
            platform.timers = timers;
        }
        crate::pedal::listen(move |raw| tell(ServiceEvent::Pedal(raw)));
        (platform, settings)
    }
}
