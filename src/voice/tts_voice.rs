//! The `tts` crate as a [`Voice`]: the system's own speech wherever that is not Speech Dispatcher.
//!
//! What its sources and trials on Linux have taught, and how it is met here:
//!
//! - The rate and the volume are never read back: on a broken connection that crashes the
//!   process. We keep our own.
//! - A connection is closed only when nothing can come of it any more and it is not broken: the
//!   library under it would close its file a second time, or abort at an event that comes late.
//!   Such a connection is left to the operating system; the supervisor sees to it that they stay
//!   few.
//! - Callbacks only send on a channel: a call into the crate from there deadlocks.
//! - The crate cannot go back from a chosen voice to the service's choice; a new connection can.

use std::mem;
use std::sync::{Arc, Mutex, PoisonError};

use tts::{Tts, UtteranceId};

use super::engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
use super::events::VoiceName;
use super::pending_events::PendingEvents;
use super::scale::{Scale, SpeedCurve, pitch_mark, volume_mark};
use super::speakable::SpeakableText;
use super::speech_settings::{SpeechSettings, VoiceMatch, best_voice};

/// The voice and the language of some settings, with the entry of the list of the service that was
/// picked for them.
type Choice = ((Option<String>, Option<String>), tts::Voice);

/// Remembers which voice was picked from one connection to the next, since to go through the list
/// takes the service over a second.
#[derive(Clone, Debug, Default)]
struct LastChoice(Arc<Mutex<Option<Choice>>>);

impl LastChoice {
    fn get(&self, speech: &SpeechSettings) -> Option<tts::Voice> {
        let held = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        held.as_ref()
            .filter(|((voice, language), _)| *voice == speech.voice && *language == speech.language)
            .map(|(_, choice)| choice.clone())
    }

    fn put(&self, speech: &SpeechSettings, choice: Option<tts::Voice>) {
        let mut held = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        *held = choice.map(|choice| ((speech.voice.clone(), speech.language.clone()), choice));
    }
}

/// A connection through the `tts` crate, owned by one thread.
pub struct TtsVoice {
    /// `None` only while it is being dropped.
    link: Option<Link>,
    events: EventSink,
    last_choice: LastChoice,
    volume: u8,
    voice_chosen: bool,
}

/// The crate's handle with what is needed to let go of it safely.
struct Link {
    tts: Tts,
    pending: PendingEvents,
}

impl TtsVoice {
    /// A function that connects, for [`super::Speaker::start`].
    pub fn maker() -> impl Fn(EventSink) -> Result<Box<dyn Voice>, CallError> + Send + Sync + 'static
    {
        let last_choice = LastChoice::default();
        move |events| Ok(Box::new(Self::connect(events, last_choice.clone())?))
    }

    fn connect(events: EventSink, last_choice: LastChoice) -> Result<Self, CallError> {
        let link = Link::open(&events)?;
        Ok(Self {
            link: Some(link),
            events,
            last_choice,
            volume: SpeechSettings::default().volume,
            voice_chosen: false,
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
        call: impl FnOnce(&mut Tts) -> Result<T, tts::Error>,
    ) -> Result<T, CallError> {
        let volume = self.volume;
        let link = self.link()?;
        call(&mut link.tts).map_err(|error| {
            if set_volume(&mut link.tts, volume).is_ok() {
                CallError::Refused(error.to_string())
            } else {
                link.pending.mark_broken();
                CallError::Gone(error.to_string())
            }
        })
    }

    /// Back to the service's own choice, by way of a new connection. What the old one is saying is
    /// stopped, since the new one could not do that.
    fn unchoose_voice(&mut self) -> Result<(), CallError> {
        if mem::take(&mut self.voice_chosen) {
            self.call(|tts| tts.stop().map(drop))?;
            let fresh = Link::open(&self.events)?;
            if let Some(old) = self.link.replace(fresh) {
                old.release();
            }
        }
        Ok(())
    }

    fn choose_voice(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        if speech.named().is_none() {
            self.unchoose_voice()?;
            return Ok(VoiceMatch::Found);
        }
        if let Some(known) = self.last_choice.get(speech)
            && self.call(|tts| tts.set_voice(&known)).is_ok()
        {
            self.voice_chosen = true;
            return Ok(VoiceMatch::Found);
        }
        let mut list = self.call(|tts| tts.voices())?;
        list.retain(|voice| !is_variation(&voice.name()));
        let pairs: Vec<_> = list
            .iter()
            .map(|voice| (voice.name(), voice.language().as_str().to_owned()))
            .collect();
        let (place, voice_match) = best_voice(&pairs, speech);
        let choice = place.and_then(|place| list.get(place)).cloned();
        if let Some(choice) = &choice {
            self.call(|tts| tts.set_voice(choice))?;
            self.voice_chosen = true;
        } else {
            self.unchoose_voice()?;
        }
        if voice_match == VoiceMatch::Found {
            self.last_choice.put(speech, choice);
        }
        Ok(voice_match)
    }
}

impl Voice for TtsVoice {
    fn speak(&mut self, text: &SpeakableText) -> Result<Option<MessageKey>, CallError> {
        let id = self.call(|tts| tts.speak(text.as_str(), true))?;
        if id.is_some() {
            self.link()?.pending.add_speech();
        }
        Ok(id.map(key))
    }

    fn stop(&mut self) -> Result<(), CallError> {
        self.call(|tts| tts.stop().map(drop))
    }

    fn set_speech(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        let voice_match = self.choose_voice(speech)?;
        self.volume = speech.volume;
        self.call(|tts| {
            if tts.supported_features().rate {
                let rate = rate_mark(speech.words_per_minute, rate_scale(tts));
                tts.set_rate(rate)?;
            }
            if tts.supported_features().pitch {
                let scale = Scale {
                    min: tts.min_pitch(),
                    normal: tts.normal_pitch(),
                    max: tts.max_pitch(),
                };
                tts.set_pitch(pitch_mark(speech.pitch, scale))?;
            }
            set_volume(tts, speech.volume)
        })?;
        Ok(voice_match)
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, CallError> {
        let mut names: Vec<_> = self
            .call(|tts| tts.voices())?
            .iter()
            .filter(|voice| !is_variation(&voice.name()))
            .map(|voice| VoiceName {
                language: voice.language().as_str().to_owned(),
                name: voice.name(),
                engine: None,
            })
            .collect();
        names.sort();
        names.dedup();
        Ok(names)
    }

    fn check(&mut self) -> Result<(), CallError> {
        let volume = self.volume;
        self.call(|tts| set_volume(tts, volume))
    }
}

impl Drop for TtsVoice {
    fn drop(&mut self) {
        if let Some(link) = self.link.take() {
            link.release();
        }
    }
}

impl Link {
    fn open(events: &EventSink) -> Result<Self, CallError> {
        let gone = |error: tts::Error| CallError::Gone(error.to_string());
        let tts = Tts::default().map_err(gone)?;
        let (pending, signal) = PendingEvents::none();
        if tts.supported_features().utterance_callbacks {
            let begun = events.clone();
            tts.on_utterance_begin(Some(Box::new(move |id| {
                begun.send(SpeechEvent::Began(key(id)));
            })))
            .map_err(gone)?;
            let (ended, at_end) = (events.clone(), signal.clone());
            tts.on_utterance_end(Some(Box::new(move |id| {
                ended.send(SpeechEvent::Ended(key(id)));
                // Once the connection is being left behind nobody waits for this.
                let _ = at_end.send(());
            })))
            .map_err(gone)?;
            let stopped = events.clone();
            tts.on_utterance_stop(Some(Box::new(move |id| {
                stopped.send(SpeechEvent::Stopped(key(id)));
                let _ = signal.send(());
            })))
            .map_err(gone)?;
        }
        Ok(Self { tts, pending })
    }

    /// Closes the connection if that is safe, and leaves it alone if not.
    fn release(self) {
        if !self.pending.wait() {
            mem::forget(self.tts);
        }
    }
}

/// The utterance ids of the crate are another type on every system. What they have in common is
/// that they can be printed.
fn key(id: UtteranceId) -> MessageKey {
    MessageKey(format!("{id:?}"))
}

/// Whether this is a voice with a changed timbre, of which espeak-ng lists a hundred for each
/// language.
fn is_variation(name: &str) -> bool {
    name.contains('+')
}

fn set_volume(tts: &mut Tts, percent: u8) -> Result<(), tts::Error> {
    if !tts.supported_features().volume {
        return Ok(());
    }
    let scale = Scale {
        min: tts.min_volume(),
        normal: tts.normal_volume(),
        max: tts.max_volume(),
    };
    tts.set_volume(volume_mark(percent, scale)).map(drop)
}

fn rate_scale(tts: &Tts) -> Scale {
    Scale {
        min: tts.min_rate(),
        normal: tts.normal_rate(),
        max: tts.max_rate(),
    }
}

/// The scale is taken as a factor on a normal speed of 180 words a minute, not measured.
fn rate_mark(words_per_minute: u16, scale: Scale) -> f32 {
    let words_a_mark = 180.0 / scale.normal;
    SpeedCurve([
        (scale.min, scale.min * words_a_mark),
        (scale.normal, 180.0),
        (scale.max, scale.max * words_a_mark),
    ])
    .mark(words_per_minute)
}
