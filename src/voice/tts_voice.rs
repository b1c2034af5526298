//! The `tts` crate as a [`Voice`]: the system's own speech wherever that is not Speech Dispatcher.
//!
//! What its sources and trials on Linux have taught, and how it is met here:
//!
//! - The rate and the volume are never read back: on a broken connection that crashes the
//!   process. We keep our own.
//! - A connection is closed only when nothing can come of it any more: see [`Owed`].
//! - Callbacks only send on a channel: a call into the crate from there deadlocks.
//! - The crate cannot go back from a chosen voice to the service's choice; a new connection can.

use std::mem;
use std::sync::{Arc, Mutex, PoisonError};

use tts::{Tts, UtteranceId};

use super::manner::{Pace, Scale, best_voice, pitch_mark, volume_mark};
use super::owed::Owed;
use super::{Ear, Fit, Heard, Manner, MessageKey, SpokenText, Trouble, Voice, VoiceName};

/// A voice and language wished for, with the entry of the service's list that was picked for it.
type Choice = ((Option<String>, Option<String>), tts::Voice);

/// Remembers the pick from one connection to the next: to go through the list takes the service
/// over a second.
#[derive(Clone, Debug, Default)]
struct LastChoice(Arc<Mutex<Option<Choice>>>);

impl LastChoice {
    fn get(&self, manner: &Manner) -> Option<tts::Voice> {
        let held = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        held.as_ref()
            .filter(|((voice, language), _)| *voice == manner.voice && *language == manner.language)
            .map(|(_, choice)| choice.clone())
    }

    fn put(&self, manner: &Manner, choice: Option<tts::Voice>) {
        let mut held = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        *held = choice.map(|choice| ((manner.voice.clone(), manner.language.clone()), choice));
    }
}

/// A connection through the `tts` crate, owned by one thread.
pub struct TtsVoice {
    /// `None` only while it is being dropped.
    line: Option<Line>,
    ear: Ear,
    last_choice: LastChoice,
    volume: u8,
    voice_chosen: bool,
}

/// The crate's handle with what is needed to let go of it safely.
struct Line {
    tts: Tts,
    owed: Owed,
}

impl TtsVoice {
    /// A function that connects, for [`super::Speaker::start`].
    pub fn maker() -> impl Fn(Ear) -> Result<Box<dyn Voice>, Trouble> + Send + Sync + 'static {
        let last_choice = LastChoice::default();
        move |ear| Ok(Box::new(Self::connect(ear, last_choice.clone())?))
    }

    fn connect(ear: Ear, last_choice: LastChoice) -> Result<Self, Trouble> {
        let line = Line::open(&ear)?;
        Ok(Self {
            line: Some(line),
            ear,
            last_choice,
            volume: Manner::default().volume,
            voice_chosen: false,
        })
    }

    fn line(&mut self) -> Result<&mut Line, Trouble> {
        self.line
            .as_mut()
            .ok_or_else(|| Trouble::Gone("the connection is closed".to_owned()))
    }

    /// Makes a call; when it fails, tries another that changes nothing to tell a refusal from a
    /// connection that is gone.
    fn call<T>(
        &mut self,
        call: impl FnOnce(&mut Tts) -> Result<T, tts::Error>,
    ) -> Result<T, Trouble> {
        let volume = self.volume;
        let line = self.line()?;
        call(&mut line.tts).map_err(|error| {
            if set_volume(&mut line.tts, volume).is_ok() {
                Trouble::Refused(error.to_string())
            } else {
                line.owed.broken();
                Trouble::Gone(error.to_string())
            }
        })
    }

    /// Back to the service's own choice, by way of a new connection. What the old one is saying is
    /// stopped, since the new one could not do that.
    fn unchoose_voice(&mut self) -> Result<(), Trouble> {
        if mem::take(&mut self.voice_chosen) {
            self.call(|tts| tts.stop().map(drop))?;
            let fresh = Line::open(&self.ear)?;
            if let Some(old) = self.line.replace(fresh) {
                old.let_go();
            }
        }
        Ok(())
    }

    fn choose_voice(&mut self, manner: &Manner) -> Result<Fit, Trouble> {
        if !manner.names_a_voice() {
            self.unchoose_voice()?;
            return Ok(Fit::AsWished);
        }
        if let Some(known) = self.last_choice.get(manner)
            && self.call(|tts| tts.set_voice(&known)).is_ok()
        {
            self.voice_chosen = true;
            return Ok(Fit::AsWished);
        }
        let mut list = self.call(|tts| tts.voices())?;
        list.retain(|voice| !is_variation(&voice.name()));
        let pairs: Vec<_> = list
            .iter()
            .map(|voice| (voice.name(), voice.language().as_str().to_owned()))
            .collect();
        let (place, met) = best_voice(&pairs, manner);
        let choice = place.and_then(|place| list.get(place)).cloned();
        if let Some(choice) = &choice {
            self.call(|tts| tts.set_voice(choice))?;
            self.voice_chosen = true;
        } else {
            self.unchoose_voice()?;
        }
        if met {
            self.last_choice.put(manner, choice);
            return Ok(Fit::AsWished);
        }
        let wanted = manner.voice.clone().or_else(|| manner.language.clone());
        Ok(Fit::NoSuchVoice(wanted.unwrap_or_default()))
    }
}

impl Voice for TtsVoice {
    fn speak(&mut self, text: &SpokenText) -> Result<Option<MessageKey>, Trouble> {
        let id = self.call(|tts| tts.speak(text.as_str(), true))?;
        if id.is_some() {
            self.line()?.owed.speech();
        }
        Ok(id.map(key))
    }

    fn stop(&mut self) -> Result<(), Trouble> {
        self.call(|tts| tts.stop().map(drop))
    }

    fn set_manner(&mut self, manner: &Manner) -> Result<Fit, Trouble> {
        let fit = self.choose_voice(manner)?;
        self.volume = manner.volume;
        self.call(|tts| {
            if tts.supported_features().rate {
                let rate = rate_mark(manner.words_per_minute, rate_scale(tts));
                tts.set_rate(rate)?;
            }
            if tts.supported_features().pitch {
                let scale = Scale {
                    min: tts.min_pitch(),
                    normal: tts.normal_pitch(),
                    max: tts.max_pitch(),
                };
                tts.set_pitch(pitch_mark(manner.pitch, scale))?;
            }
            set_volume(tts, manner.volume)
        })?;
        Ok(fit)
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, Trouble> {
        let mut names: Vec<_> = self
            .call(|tts| tts.voices())?
            .iter()
            .filter(|voice| !is_variation(&voice.name()))
            .map(|voice| VoiceName {
                language: voice.language().as_str().to_owned(),
                name: voice.name(),
            })
            .collect();
        names.sort();
        names.dedup();
        Ok(names)
    }

    fn check(&mut self) -> Result<(), Trouble> {
        let volume = self.volume;
        self.call(|tts| set_volume(tts, volume))
    }
}

impl Drop for TtsVoice {
    fn drop(&mut self) {
        if let Some(line) = self.line.take() {
            line.let_go();
        }
    }
}

impl Line {
    fn open(ear: &Ear) -> Result<Self, Trouble> {
        let gone = |error: tts::Error| Trouble::Gone(error.to_string());
        let tts = Tts::default().map_err(gone)?;
        let (owed, signal) = Owed::nothing();
        if tts.supported_features().utterance_callbacks {
            let begun = ear.clone();
            tts.on_utterance_begin(Some(Box::new(move |id| {
                begun.hear(Heard::Began(key(id)));
            })))
            .map_err(gone)?;
            let (ended, at_end) = (ear.clone(), signal.clone());
            tts.on_utterance_end(Some(Box::new(move |id| {
                ended.hear(Heard::Ended(key(id)));
                // Nobody waits any more once the connection is being left behind.
                let _ = at_end.send(());
            })))
            .map_err(gone)?;
            let stopped = ear.clone();
            tts.on_utterance_stop(Some(Box::new(move |id| {
                stopped.hear(Heard::Stopped(key(id)));
                let _ = signal.send(());
            })))
            .map_err(gone)?;
        }
        Ok(Self { tts, owed })
    }

    /// Closes the connection if that is safe, and leaves it alone if not.
    fn let_go(self) {
        if !self.owed.may_close() {
            mem::forget(self.tts);
        }
    }
}

/// The crate's utterance ids differ from system to system; how they print is what they share.
fn key(id: UtteranceId) -> MessageKey {
    MessageKey(format!("{id:?}"))
}

/// The same voice with a changed timbre, as espeak-ng lists a hundred of for each language.
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
    let pace = 180.0 / scale.normal;
    Pace([
        (scale.min, scale.min * pace),
        (scale.normal, 180.0),
        (scale.max, scale.max * pace),
    ])
    .mark(words_per_minute)
}
