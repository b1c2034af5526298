//! What the tyer prefers and what serves it: the clock, alarms, sounds, a screen that stays on.

use std::fmt;
use std::time::{Duration, Instant};

use super::alarm::{Alarm, Hour};
use super::awake::Awake;
use crate::pedal::Raw;
use crate::settings::{Settings, SettingsFile, Snag};
use crate::voice::{Cue, Sounder};

/// Plays short sounds.
pub trait Chime {
    /// Plays this one at a volume in percent.
    fn play(&self, cue: Cue, volume: u8);
}

impl Chime for Sounder {
    fn play(&self, cue: Cue, volume: u8) {
        Sounder::play(self, cue, volume);
    }
}

/// The services of the tyer's comfort. The default is none of them and the usual settings.
pub struct Comforts {
    /// What is preferred.
    pub settings: Settings,
    /// Where that is kept.
    pub file: SettingsFile,
    /// Time since any beginning.
    pub clock: Box<dyn Fn() -> Duration>,
    /// What wakes the app.
    pub alarm: Alarm,
    /// What sounds.
    pub chime: Box<dyn Chime>,
    /// What keeps the screen on.
    pub awake: Awake,
}

impl Default for Comforts {
    fn default() -> Self {
        let start = Instant::now();
        Self {
            settings: Settings::default(),
            file: SettingsFile::nowhere(),
            clock: Box::new(move || start.elapsed()),
            alarm: Alarm::default(),
            chime: Box::new(Sounder::default()),
            awake: Awake::default(),
        }
    }
}

impl fmt::Debug for Comforts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Comforts")
            .field("settings", &self.settings)
            .finish_non_exhaustive()
    }
}

/// News from the services.
#[derive(Clone, Debug)]
pub enum Outside {
    /// A game controller or a MIDI pedal did something.
    Pedal(Raw),
    /// An alarm that was set.
    Rang(Hour),
    /// The settings could not be read or kept.
    Settings(Snag),
    /// The system will not keep the screen on.
    NotAwake,
}

impl Comforts {
    /// The real services. `tell` hands their news on to the app, and must not wait.
    pub fn start(tell: impl Fn(Outside) + Clone + Send + 'static) -> Self {
        let told = |wrap: fn(Snag) -> Outside| {
            let tell = tell.clone();
            move |snag| tell(wrap(snag))
        };
        let mut comforts = Self {
            chime: Box::new(Sounder::start()),
            awake: Awake::start({
                let tell = tell.clone();
                move || tell(Outside::NotAwake)
            }),
            ..Self::default()
        };
        if let Some(path) = SettingsFile::default_path() {
            let opened = SettingsFile::open(&path, told(Outside::Settings));
            (comforts.file, comforts.settings) = (opened.file, opened.settings);
            if let Some(snag) = opened.snag {
                tell(Outside::Settings(snag));
            }
        }
        // Without the thread long and double presses and the flash do not work; every key does.
        let ring = tell.clone();
        if let Ok(alarm) = Alarm::start(move |hour| ring(Outside::Rang(hour))) {
            comforts.alarm = alarm;
        }
        crate::pedal::listen(move |raw| tell(Outside::Pedal(raw)));
        comforts
    }
}
