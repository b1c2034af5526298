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
//! - A connection cannot go back from a chosen voice, engine or language to the service's own choice; a
//!   new one can.
//! - The voices are those of one engine, the one that is set on the connection. The service goes on with
//!   the engine that it has when a language is set that this does not speak, and has its English
//!   voice read German.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread;

use super::engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
use super::engines::speaks_all;
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

/// The voices that the service has, once somebody has asked for them.
/// All connections of one speaker share it.
#[derive(Clone, Debug, Default)]
struct Catalogue(Arc<Mutex<Listing>>);

#[derive(Debug, Default)]
struct Listing {
    voices: Option<Vec<VoiceName>>,
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
            return found(voices, speech);
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
        let voices = list(events);
        let mut listing = self.lock();
        let waiting = listing.waiting.take();
        let voices = match voices {
            Ok(voices) => voices,
            Err(error) => return log::warn!("the voices cannot be listed: {error}"),
        };
        let found = waiting.map(|speech| found(&voices, &speech));
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
    chosen: Chosen,
    /// The engine to speak a language with, once it was looked for on this connection.
    fitting: Option<(String, Option<String>)>,
}

/// What was set on a connection.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct Chosen {
    engine: Option<String>,
    language: Option<String>,
    voice: Option<String>,
}

impl Chosen {
    /// Whether one of those that are set is set no more.
    fn takes_back(&self, before: &Self) -> bool {
        let pairs = [
            (&before.engine, &self.engine),
            (&before.language, &self.language),
            (&before.voice, &self.voice),
        ];
        pairs
            .iter()
            .any(|(before, now)| before.is_some() && now.is_none())
    }
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
            chosen: Chosen::default(),
            fitting: None,
        })
    }

    /// A new connection, on which nothing is chosen. What the old one is saying is stopped, since
    /// the new one could not do that.
    fn start_afresh(&mut self) -> Result<(), CallError> {
        self.link.cancel()?;
        self.link = steps(&self.events)?;
        self.chosen = Chosen::default();
        self.fitting = None;
        Ok(())
    }

    /// The engine to speak a language with: none, where the service's own choice does, or no other is known
    /// to. Those that are asked for their voices have few.
    fn fitting_engine(&mut self, language: &str) -> Result<Option<String>, CallError> {
        if let Some((known, engine)) = &self.fitting
            && known == language
        {
            return Ok(engine.clone());
        }
        if self.chosen.engine.is_some() {
            self.start_afresh()?;
        }
        let engines = self.link.engines()?;
        let mut speaks_it = true;
        if engines.len() > 1
            && let Some(own) = self.link.engine()?
            && !speaks_all(&own)
        {
            speaks_it = match voices_of(&mut self.link, Some(&own)) {
                Ok(voices) => voices.iter().any(|voice| voice.speaks(language)),
                // Without a list nothing is known against it.
                Err(CallError::Refused(_)) => true,
                Err(gone) => return Err(gone),
            };
        }
        let other = engines.into_iter().find(|engine| speaks_all(engine));
        let engine = other.filter(|_| !speaks_it);
        self.fitting = Some((language.to_owned(), engine.clone()));
        Ok(engine)
    }

    fn choose(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        // A control character cannot be sent in the protocol, and no voice has one in its name.
        let bare = |name: &Option<String>| {
            let is_bare = |name: &String| !name.contains(char::is_control);
            name.clone().filter(is_bare)
        };
        let language = bare(&speech.language);
        let engine = match (bare(&speech.engine), &language) {
            (None, Some(language)) if speech.voice.is_none() => self.fitting_engine(language)?,
            (engine, _) => engine,
        };
        let wanted = Chosen {
            engine,
            language,
            voice: bare(&speech.voice),
        };
        if wanted.takes_back(&self.chosen) {
            self.start_afresh()?;
        }
        if wanted != self.chosen {
            // The service looks for language and voice among those of the engine.
            if let Some(engine) = &wanted.engine {
                match self.link.set(&format!("OUTPUT_MODULE {engine}")) {
                    // It has gone: the service's own speaks, and that the voice is missing is told.
                    Err(CallError::Refused(why)) => log::warn!("an engine is not to be had: {why}"),
                    set => set?,
                }
            }
            if let Some(language) = &wanted.language {
                let language = language.to_ascii_lowercase();
                self.link.set(&format!("LANGUAGE {language}"))?;
            }
            if let Some(name) = &wanted.voice {
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
        let mut voices = list(&self.events)?;
        self.catalogue.lock().voices = Some(voices.clone());
        voices.sort();
        voices.dedup();
        Ok(voices)
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

/// The voices of all engines, asked for on a connection of its own.
fn list(events: &EventSink) -> Result<Vec<VoiceName>, CallError> {
    let mut link = Link::open("voices", events)?;
    let engines = link.engines()?;
    if engines.len() < 2 {
        return voices_of(&mut link, engines.first().map(String::as_str));
    }
    let mut voices = Vec::new();
    for engine in engines {
        let set = link.set(&format!("OUTPUT_MODULE {engine}"));
        match set.and_then(|()| voices_of(&mut link, Some(&engine))) {
            Ok(of_it) => voices.extend(of_it),
            Err(CallError::Refused(why)) => log::info!("no voices of an engine: {why}"),
            Err(gone) => return Err(gone),
        }
    }
    Ok(voices)
}

/// The voices of the engine that is set, without those that are another one with a changed timbre, of
/// which espeak-ng lists a hundred for each language.
fn voices_of(link: &mut Link, engine: Option<&str>) -> Result<Vec<VoiceName>, CallError> {
    let voices = link.voices()?.into_iter();
    let own = voices.filter(|(name, _)| !name.contains('+'));
    let named = own.map(|(name, language)| VoiceName {
        language,
        name,
        engine: engine.map(str::to_owned),
    });
    Ok(named.collect())
}

/// Whether what the settings name is among these voices.
fn found(voices: &[VoiceName], speech: &SpeechSettings) -> VoiceMatch {
    let fits = |voice: &&VoiceName| {
        speech.voice.is_none() || speech.engine.is_none() || voice.engine == speech.engine
    };
    let named = voices.iter().filter(fits);
    let named: Vec<(String, String)> = named
        .map(|voice| (voice.name.clone(), voice.language.clone()))
        .collect();
    best_voice(&named, speech).1
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "the scale ends at a hundred"
)]
const fn whole(mark: f32) -> i32 {
    mark as i32
}
