//! Speech Dispatcher, the speech service of Linux, as a [`Voice`].
//!
//! A language is set by its tag alone and speaks at once. To list the voices takes the service
//! one to two seconds, for there are thirteen thousand of them on a plain Debian; so whether it
//! has the voice that the settings name is found out once, on a connection and a thread of its
//! own, and told when it is known.
//!
//! What trials have taught, and how it is met here:
//!
//! - The service takes the name of any voice and any language, whether it has it or not.
//! - A connection cannot go back from a chosen voice or language to the service's own choice; a
//!   new one can.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread;

use super::engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
use super::events::VoiceName;
use super::scale::{Scale, SpeedCurve, pitch_mark, volume_mark};
use super::speakable::SpeakableText;
use super::speech_settings::{SpeechSettings, VoiceMatch, best_voice};
use super::ssip::Link;

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
        let voices = Link::open("voices", events).and_then(|mut link| list(&mut link));
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
    link: Link,
    events: EventSink,
    catalogue: Catalogue,
    volume: u8,
    /// The voice and the language that were set on this connection.
    chosen: (Option<String>, Option<String>),
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
            link: steps(&events)?,
            events,
            catalogue,
            volume: SpeechSettings::default().volume,
            chosen: (None, None),
        })
    }

    /// A new connection, on which nothing is chosen. What the old one is saying is stopped, since
    /// the new one could not do that.
    fn start_afresh(&mut self) -> Result<(), CallError> {
        self.link.cancel()?;
        self.link = steps(&self.events)?;
        self.chosen = (None, None);
        Ok(())
    }

    fn choose(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        // A control character cannot be sent in the protocol, and no voice has one in its name.
        let bare = |name: &Option<String>| {
            let is_bare = |name: &String| !name.contains(char::is_control);
            name.clone().filter(is_bare)
        };
        let wanted = (bare(&speech.voice), bare(&speech.language));
        let is_taken_back =
            |before: &Option<String>, now: &Option<String>| before.is_some() && now.is_none();
        if is_taken_back(&self.chosen.0, &wanted.0) || is_taken_back(&self.chosen.1, &wanted.1) {
            self.start_afresh()?;
        }
        if wanted != self.chosen {
            if let Some(language) = &wanted.1 {
                let language = language.to_ascii_lowercase();
                self.link.set(&format!("LANGUAGE {language}"))?;
            }
            if let Some(name) = &wanted.0 {
                self.link.set(&format!("SYNTHESIS_VOICE {name}"))?;
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
        self.link.cancel()?;
        self.link.speak(text).map(Some)
    }

    fn stop(&mut self) -> Result<(), CallError> {
        self.link.cancel()
    }

    fn set_speech(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        let voice_match = self.choose(speech)?;
        self.volume = speech.volume;
        let rate = whole(SPEED_CURVE.mark(speech.words_per_minute));
        let pitch = whole(pitch_mark(speech.pitch, SCALE));
        self.link.set(&format!("RATE {rate}"))?;
        self.link.set(&format!("PITCH {pitch}"))?;
        self.check()?;
        Ok(voice_match)
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, CallError> {
        let voices = list(&mut self.link)?;
        self.catalogue.lock().voices = Some(voices.clone());
        let mut names: Vec<_> = voices
            .into_iter()
            .map(|(name, language)| VoiceName { language, name })
            .collect();
        names.sort();
        names.dedup();
        Ok(names)
    }

    /// Sets the volume to what it is already, which changes nothing.
    fn check(&mut self) -> Result<(), CallError> {
        let volume = whole(volume_mark(self.volume, SCALE));
        self.link.set(&format!("VOLUME {volume}"))
    }
}

/// Opens the connection that says the steps.
fn steps(events: &EventSink) -> Result<Link, CallError> {
    Link::open("steps", events)
}

/// The voices by name and language, without those that are another one with a changed timbre, of
/// which espeak-ng lists a hundred for each language.
fn list(link: &mut Link) -> Result<Vec<(String, String)>, CallError> {
    let mut voices = link.voices()?;
    voices.retain(|(name, _)| !name.contains('+'));
    Ok(voices)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "the scale ends at a hundred"
)]
const fn whole(mark: f32) -> i32 {
    mark as i32
}
