//! Speech Dispatcher, the speech service of Linux, as a [`Voice`].
//!
//! A language is set by its tag alone and speaks at once. To list the voices takes the service
//! one to two seconds, for there are thirteen thousand of them on a plain Debian; so whether it
//! has the voice that the settings name is found out once, on a connection and a thread of its
//! own, and told when it is known.
//!
//! What trials have taught, and how it is met here:
//!
//! - The rate and the volume are never read back: on a broken connection that crashes the
//!   process. We keep our own.
//! - A connection is closed only when nothing can come of it any more: see [`PendingEvents`].
//! - Callbacks only send on a channel: a call back into the library from there deadlocks.
//! - The service takes the name of any voice and any language, whether it has it or not.
//! - A connection cannot go back from a chosen voice or language to the service's own choice; a
//!   new one can.

use std::mem;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread;

use speech_dispatcher::{Connection, Error, Mode, Priority};

use super::engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
use super::events::VoiceName;
use super::pending_events::PendingEvents;
use super::scale::{Scale, SpeedCurve, pitch_mark, volume_mark};
use super::speakable::SpeakableText;
use super::speech_settings::{SpeechSettings, VoiceMatch, best_voice};

/// The service's scale for rate, pitch and volume.
const SCALE: Scale = Scale {
    min: -100.0,
    normal: 0.0,
    max: 100.0,
};

/// Words a minute measured with espeak-ng 1.51 through Speech Dispatcher 0.11.4.
const SPEED_CURVE: SpeedCurve<4> = SpeedCurve([
    (-100.0, 104.0),
    (-60.0, 150.0),
    (0.0, 226.0),
    (100.0, 600.0),
]);

/// The voices that the service has, by name and language, once somebody has asked for them.
/// All connections of one speaker share it.
#[derive(Clone, Debug, Default)]
struct Catalogue(Arc<Mutex<Listing>>);

#[derive(Debug, Default)]
struct Listing {
    voices: Option<Vec<(String, String)>>,
    /// While somebody asks for the voices: the settings to be looked up in the list when it comes.
    waiting: Option<SpeechSettings>,
}

impl Catalogue {
    fn lock(&self) -> MutexGuard<'_, Listing> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Whether the service has the voice that the settings name, as far as that is known. When
    /// nothing is known yet, a thread asks, and a voice that is missing is reported to `events`.
    fn look_up(&self, speech: &SpeechSettings, events: &EventSink) -> VoiceMatch {
        let mut listing = self.lock();
        if let Some(voices) = &listing.voices {
            return best_voice(voices, speech).1;
        }
        let is_asking = listing.waiting.replace(speech.clone()).is_some();
        drop(listing);
        if !is_asking {
            let (catalogue, events) = (self.clone(), events.clone());
            let started = thread::Builder::new()
                .name("voices".to_owned())
                .spawn(move || catalogue.ask(&events));
            if let Err(error) = started {
                log::warn!("whether the voice is there cannot be found out: {error}");
                self.lock().waiting = None;
            }
        }
        VoiceMatch::Found
    }

    fn ask(&self, events: &EventSink) {
        let voices = connect("voices").and_then(|connection| list(&connection));
        let mut listing = self.lock();
        let waiting = listing.waiting.take();
        let voices = match voices {
            Ok(voices) => voices,
            Err(error) => return log::warn!("the voices cannot be listed: {error}"),
        };
        let found = waiting.map(|speech| best_voice(&voices, &speech).1);
        listing.voices = Some(voices);
        drop(listing);
        if let Some(VoiceMatch::NoSuchVoice(wanted)) = found {
            events.send(SpeechEvent::NoSuchVoice(wanted));
        }
    }
}

/// A connection to Speech Dispatcher, owned by one thread.
pub struct DispatcherVoice {
    /// `None` only while it is being dropped.
    link: Option<Link>,
    events: EventSink,
    catalogue: Catalogue,
    volume: u8,
    /// The voice and the language that were set on this connection.
    chosen: (Option<String>, Option<String>),
}

/// The connection with what is needed to let go of it safely.
struct Link {
    connection: Connection,
    pending: PendingEvents,
}

impl DispatcherVoice {
    /// A function that connects, for [`super::Speaker::start`].
    pub fn maker() -> impl Fn(EventSink) -> Result<Box<dyn Voice>, CallError> + Send + Sync + 'static
    {
        let catalogue = Catalogue::default();
        move |events| Ok(Box::new(Self::open(events, catalogue.clone())?))
    }

    fn open(events: EventSink, catalogue: Catalogue) -> Result<Self, CallError> {
        Ok(Self {
            link: Some(Link::open(&events)?),
            events,
            catalogue,
            volume: SpeechSettings::default().volume,
            chosen: (None, None),
        })
    }

    fn link(&mut self) -> Result<&mut Link, CallError> {
        self.link
            .as_mut()
            .ok_or_else(|| CallError::Gone("the connection is closed".to_owned()))
    }

    /// Makes a call; when it fails, tries another that changes nothing to tell a refusal from a
    /// connection that is gone.
    fn call<T>(
        &mut self,
        call: impl FnOnce(&Connection) -> Result<T, Error>,
    ) -> Result<T, CallError> {
        let volume = self.volume;
        let link = self.link()?;
        call(&link.connection).map_err(|error| {
            if set_volume(&link.connection, volume).is_ok() {
                CallError::Refused(error.to_string())
            } else {
                link.pending.mark_broken();
                CallError::Gone(error.to_string())
            }
        })
    }

    /// A new connection, on which nothing is chosen. What the old one is saying is stopped, since
    /// the new one could not do that.
    fn start_afresh(&mut self) -> Result<(), CallError> {
        self.call(Connection::cancel)?;
        let fresh = Link::open(&self.events)?;
        self.chosen = (None, None);
        if let Some(old) = self.link.replace(fresh) {
            old.release();
        }
        Ok(())
    }

    fn choose(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        // No name of a voice has a NUL, and the library would not take one.
        let bare = |name: &Option<String>| name.clone().filter(|name| !name.contains('\0'));
        let wanted = (bare(&speech.voice), bare(&speech.language));
        let is_taken_back =
            |before: &Option<String>, now: &Option<String>| before.is_some() && now.is_none();
        if is_taken_back(&self.chosen.0, &wanted.0) || is_taken_back(&self.chosen.1, &wanted.1) {
            self.start_afresh()?;
        }
        if wanted != self.chosen {
            if let Some(language) = &wanted.1 {
                self.call(|connection| connection.set_language(language.to_ascii_lowercase()))?;
            }
            if let Some(name) = &wanted.0 {
                let voice = speech_dispatcher::Voice {
                    name: name.clone(),
                    language: String::new(),
                    variant: None,
                };
                self.call(|connection| connection.set_synthesis_voice(&voice))?;
            }
            self.chosen = wanted;
        }
        Ok(match speech.named() {
            Some(_) => self.catalogue.look_up(speech, &self.events),
            None => VoiceMatch::Found,
        })
    }
}

impl Voice for DispatcherVoice {
    fn speak(&mut self, text: &SpeakableText) -> Result<Option<MessageKey>, CallError> {
        let id = self.call(|connection| {
            connection.cancel()?;
            let id = connection.say(Priority::Important, text.as_str());
            id.ok_or(Error::OperationFailed)
        })?;
        self.link()?.pending.add_speech();
        Ok(Some(MessageKey(id.to_string())))
    }

    fn stop(&mut self) -> Result<(), CallError> {
        self.call(Connection::cancel)
    }

    fn set_speech(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        let voice_match = self.choose(speech)?;
        self.volume = speech.volume;
        self.call(|connection| {
            connection.set_voice_rate(whole(SPEED_CURVE.mark(speech.words_per_minute)))?;
            connection.set_voice_pitch(whole(pitch_mark(speech.pitch, SCALE)))?;
            set_volume(connection, speech.volume)
        })?;
        Ok(voice_match)
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, CallError> {
        let voices = self.call(list)?;
        self.catalogue.lock().voices = Some(voices.clone());
        let mut names: Vec<_> = voices
            .into_iter()
            .map(|(name, language)| VoiceName { language, name })
            .collect();
        names.sort();
        names.dedup();
        Ok(names)
    }

    fn check(&mut self) -> Result<(), CallError> {
        let volume = self.volume;
        self.call(|connection| set_volume(connection, volume))
    }
}

impl Drop for DispatcherVoice {
    fn drop(&mut self) {
        if let Some(link) = self.link.take() {
            link.release();
        }
    }
}

impl Link {
    fn open(events: &EventSink) -> Result<Self, CallError> {
        let gone = |error: Error| CallError::Gone(error.to_string());
        let connection = connect("steps").map_err(gone)?;
        let (pending, signal) = PendingEvents::none();
        let begun = events.clone();
        connection.on_begin(Some(Box::new(move |id, _| {
            begun.send(SpeechEvent::Began(MessageKey(id.to_string())));
        })));
        let (ended, at_end) = (events.clone(), signal.clone());
        connection.on_end(Some(Box::new(move |id, _| {
            ended.send(SpeechEvent::Ended(MessageKey(id.to_string())));
            // Nobody waits any more once the connection is being left behind.
            let _ = at_end.send(());
        })));
        let stopped = events.clone();
        connection.on_cancel(Some(Box::new(move |id, _| {
            stopped.send(SpeechEvent::Stopped(MessageKey(id.to_string())));
            let _ = signal.send(());
        })));
        Ok(Self {
            connection,
            pending,
        })
    }

    /// Closes the connection if that is safe, and leaves it alone if not.
    fn release(self) {
        if !self.pending.may_close() {
            mem::forget(self.connection);
        }
    }
}

/// Every connection has a thread of the library's: without one it takes no notifications, and
/// this wrapper does not open it then.
fn connect(name: &str) -> Result<Connection, Error> {
    Connection::open("marlinspeak", name, "tyer", Mode::Threaded)
}

/// The voices by name and language, without those that are another one with a changed timbre, of
/// which espeak-ng lists a hundred for each language.
fn list(connection: &Connection) -> Result<Vec<(String, String)>, Error> {
    let voices = connection.list_synthesis_voices()?;
    let named = voices.into_iter().filter(|voice| !voice.name.contains('+'));
    Ok(named.map(|voice| (voice.name, voice.language)).collect())
}

fn set_volume(connection: &Connection, percent: u8) -> Result<(), Error> {
    connection.set_volume(whole(volume_mark(percent, SCALE)))
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "the scale ends at a hundred"
)]
const fn whole(mark: f32) -> i32 {
    mark as i32
}
