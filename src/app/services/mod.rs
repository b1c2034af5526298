//! What the screens work with: the voice, the shelf, the thread that saves, and the services of
//! the platform. Nothing here makes the window wait.

mod awake;
mod dialogs;
mod event;
mod platform;
mod timers;

use std::sync::Arc;
use std::time::Duration;

use crate::session::Event;
use crate::settings::Settings;
use crate::shelf::{Held, Keeper, PresetsFile, Shelf, Tie};
use crate::voice::{Mute, Speak, Speaker, SystemVoice, VoiceError, VoiceEvent};
pub use dialogs::{DialogError, FileDialogs, FileKind, NoDialogs, OpenDialog, Portal, SaveDialog};
pub use event::ServiceEvent;
pub use platform::PlatformServices;

/// How long leaving waits for the last save.
pub const LAST_SAVE: Duration = Duration::from_secs(2);

/// The services behind the screens.
pub struct Services {
    /// The voice.
    pub voice: Box<dyn Speak>,
    /// The ties; none when there is no folder for them.
    pub shelf: Option<Shelf>,
    /// Tubes and cords kept by name; none when there is no folder for them.
    pub rack: Option<PresetsFile>,
    /// What saves them.
    pub keeper: Option<Arc<Keeper>>,
    /// Clock, timers, sounds, a lit screen, the file of the settings.
    pub platform: PlatformServices,
}

impl Services {
    /// Starts the real services, and gives what the tyer prefers. `tell` hands their events on to
    /// the app, and must not wait.
    pub fn start(tell: impl Fn(ServiceEvent) + Clone + Send + Sync + 'static) -> (Self, Settings) {
        let told = tell.clone();
        let speaker = Speaker::start(SystemVoice::maker(), move |news| {
            told(ServiceEvent::Session(Event::Voice(news)));
        });
        let voice: Box<dyn Speak> = match speaker {
            Ok(speaker) => Box::new(speaker),
            Err(error) => {
                let loss = VoiceEvent::Lost(VoiceError::NoService(error.to_string()));
                tell(ServiceEvent::Session(Event::Voice(loss)));
                Box::new(Mute)
            }
        };
        let (platform, settings) = PlatformServices::start(tell.clone());
        let mut services = Self {
            voice,
            rack: PresetsFile::default_place().ok(),
            shelf: None,
            keeper: None,
            platform,
        };
        let opened = Shelf::default_dir()
            .and_then(Shelf::open)
            .and_then(|shelf| {
                let told = tell.clone();
                let keeper = Keeper::start(shelf.clone(), move |kept| {
                    told(ServiceEvent::Session(Event::Kept(kept)));
                })?;
                Ok((shelf, keeper))
            });
        match opened {
            Ok((shelf, keeper)) => {
                services.shelf = Some(shelf);
                services.keeper = Some(Arc::new(keeper));
            }
            Err(error) => {
                ::log::error!("no shelf: {error}");
                tell(ServiceEvent::Session(Event::NoShelf(error)));
            }
        }
        (services, settings)
    }

    /// Has the state of a tie saved.
    pub fn keep(&self, tie: Tie) {
        if let Some(keeper) = &self.keeper {
            keeper.keep(tie);
        }
    }

    /// Lets go of a tie when its last state is saved.
    pub fn put_away(&self, held: Held) {
        if let Some(keeper) = &self.keeper {
            keeper.put_away(held);
        }
    }
}
