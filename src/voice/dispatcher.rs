//! Speech Dispatcher, the speech service of Linux, as a [`Voice`].
//!
//! A language is set by its tag alone and speaks at once. To list the voices takes the service
//! one to two seconds, for there are thirteen thousand of them on a plain Debian; so whether it
//! has a voice for what was wished is found out once, on a connection and a thread of its own,
//! and told when it is known.
//!
//! What trials have taught, and how it is met here:
//!
//! - The rate and the volume are never read back: on a broken connection that crashes the
//!   process. We keep our own.
//! - A connection is closed only when nothing can come of it any more: see [`Owed`].
//! - Callbacks only send on a channel: a call back into the library from there deadlocks.
//! - The service takes the name of any voice and any language, whether it has it or not.
//! - A connection cannot go back from a chosen voice or language to the service's own choice; a
//!   new one can.

use std::mem;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread;

use speech_dispatcher::{Connection, Error, Mode, Priority};

use super::manner::{Pace, Scale, best_voice, pitch_mark, volume_mark};
use super::owed::Owed;
use super::{Ear, Fit, Heard, Manner, MessageKey, SpokenText, Trouble, Voice, VoiceName};

/// The service's scale for rate, pitch and volume.
const SCALE: Scale = Scale {
    min: -100.0,
    normal: 0.0,
    max: 100.0,
};

/// Words a minute measured with espeak-ng 1.51 through Speech Dispatcher 0.11.4.
const PACE: Pace<4> = Pace([
    (-100.0, 104.0),
    (-60.0, 150.0),
    (0.0, 226.0),
    (100.0, 600.0),
]);

/// The voices that the service has, by name and language, once somebody has asked.
#[derive(Clone, Debug, Default)]
struct Survey(Arc<Mutex<Surveyed>>);

#[derive(Debug, Default)]
struct Surveyed {
    voices: Option<Vec<(String, String)>>,
    /// Somebody is asking now; when the list is there, this wish is to be held against it.
    asking: Option<Manner>,
}

impl Survey {
    fn lock(&self) -> MutexGuard<'_, Surveyed> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Whether a wish can be met, as far as that is known. When nothing is known it is found out,
    /// and the ear hears of a wish that cannot.
    fn judge(&self, manner: &Manner, ear: &Ear) -> Fit {
        let mut held = self.lock();
        if let Some(voices) = &held.voices {
            return fit(voices, manner);
        }
        let is_asking = held.asking.replace(manner.clone()).is_some();
        drop(held);
        if !is_asking {
            let (survey, ear) = (self.clone(), ear.clone());
            let started = thread::Builder::new()
                .name("voices".to_owned())
                .spawn(move || survey.ask(&ear));
            // Without a thread nothing is found out, and the wish counts as met.
            if started.is_err() {
                self.lock().asking = None;
            }
        }
        Fit::AsWished
    }

    fn ask(&self, ear: &Ear) {
        let voices = connect("voices").and_then(|connection| list(&connection));
        let mut held = self.lock();
        let wish = held.asking.take();
        let Ok(voices) = voices else {
            return;
        };
        let judged = wish.map(|wish| fit(&voices, &wish));
        held.voices = Some(voices);
        drop(held);
        if let Some(Fit::NoSuchVoice(wanted)) = judged {
            ear.hear(Heard::NoSuchVoice(wanted));
        }
    }
}

/// Whether one of these voices is what was wished for.
fn fit(voices: &[(String, String)], manner: &Manner) -> Fit {
    let (_, is_met) = best_voice(voices, manner);
    let wanted = manner.voice.clone().or_else(|| manner.language.clone());
    match wanted {
        Some(wanted) if !is_met => Fit::NoSuchVoice(wanted),
        _ => Fit::AsWished,
    }
}

/// A connection to Speech Dispatcher, owned by one thread.
pub struct DispatcherVoice {
    /// `None` only while it is being dropped.
    line: Option<Line>,
    ear: Ear,
    survey: Survey,
    volume: u8,
    /// The voice and the language that were set on this connection.
    wish: (Option<String>, Option<String>),
}

/// The connection with what is needed to let go of it safely.
struct Line {
    connection: Connection,
    owed: Owed,
}

impl DispatcherVoice {
    /// A function that connects, for [`super::Speaker::start`].
    pub fn maker() -> impl Fn(Ear) -> Result<Box<dyn Voice>, Trouble> + Send + Sync + 'static {
        let survey = Survey::default();
        move |ear| Ok(Box::new(Self::open(ear, survey.clone())?))
    }

    fn open(ear: Ear, survey: Survey) -> Result<Self, Trouble> {
        Ok(Self {
            line: Some(Line::open(&ear)?),
            ear,
            survey,
            volume: Manner::default().volume,
            wish: (None, None),
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
        call: impl FnOnce(&Connection) -> Result<T, Error>,
    ) -> Result<T, Trouble> {
        let volume = self.volume;
        let line = self.line()?;
        call(&line.connection).map_err(|error| {
            if set_volume(&line.connection, volume).is_ok() {
                Trouble::Refused(error.to_string())
            } else {
                line.owed.broken();
                Trouble::Gone(error.to_string())
            }
        })
    }

    /// A new connection, on which nothing is chosen. What the old one is saying is stopped, since
    /// the new one could not do that.
    fn start_afresh(&mut self) -> Result<(), Trouble> {
        self.call(Connection::cancel)?;
        let fresh = Line::open(&self.ear)?;
        self.wish = (None, None);
        if let Some(old) = self.line.replace(fresh) {
            old.let_go();
        }
        Ok(())
    }

    fn choose(&mut self, manner: &Manner) -> Result<Fit, Trouble> {
        // No name of a voice has a NUL, and the library would not take one.
        let bare = |name: &Option<String>| name.clone().filter(|name| !name.contains('\0'));
        let wish = (bare(&manner.voice), bare(&manner.language));
        let is_taken_back =
            |before: &Option<String>, now: &Option<String>| before.is_some() && now.is_none();
        if is_taken_back(&self.wish.0, &wish.0) || is_taken_back(&self.wish.1, &wish.1) {
            self.start_afresh()?;
        }
        if wish != self.wish {
            if let Some(language) = &wish.1 {
                self.call(|connection| connection.set_language(language.to_ascii_lowercase()))?;
            }
            if let Some(name) = &wish.0 {
                let voice = speech_dispatcher::Voice {
                    name: name.clone(),
                    language: String::new(),
                    variant: None,
                };
                self.call(|connection| connection.set_synthesis_voice(&voice))?;
            }
            self.wish = wish;
        }
        if manner.names_a_voice() {
            Ok(self.survey.judge(manner, &self.ear))
        } else {
            Ok(Fit::AsWished)
        }
    }
}

impl Voice for DispatcherVoice {
    fn speak(&mut self, text: &SpokenText) -> Result<Option<MessageKey>, Trouble> {
        let id = self.call(|connection| {
            connection.cancel()?;
            let id = connection.say(Priority::Important, text.as_str());
            id.ok_or(Error::OperationFailed)
        })?;
        self.line()?.owed.speech();
        Ok(Some(MessageKey(id.to_string())))
    }

    fn stop(&mut self) -> Result<(), Trouble> {
        self.call(Connection::cancel)
    }

    fn set_manner(&mut self, manner: &Manner) -> Result<Fit, Trouble> {
        let fit = self.choose(manner)?;
        self.volume = manner.volume;
        self.call(|connection| {
            connection.set_voice_rate(whole(PACE.mark(manner.words_per_minute)))?;
            connection.set_voice_pitch(whole(pitch_mark(manner.pitch, SCALE)))?;
            set_volume(connection, manner.volume)
        })?;
        Ok(fit)
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, Trouble> {
        let voices = self.call(list)?;
        self.survey.lock().voices = Some(voices.clone());
        let mut names: Vec<_> = voices
            .into_iter()
            .map(|(name, language)| VoiceName { language, name })
            .collect();
        names.sort();
        names.dedup();
        Ok(names)
    }

    fn check(&mut self) -> Result<(), Trouble> {
        let volume = self.volume;
        self.call(|connection| set_volume(connection, volume))
    }
}

impl Drop for DispatcherVoice {
    fn drop(&mut self) {
        if let Some(line) = self.line.take() {
            line.let_go();
        }
    }
}

impl Line {
    fn open(ear: &Ear) -> Result<Self, Trouble> {
        let gone = |error: Error| Trouble::Gone(error.to_string());
        let connection = connect("steps").map_err(gone)?;
        let (owed, signal) = Owed::nothing();
        let begun = ear.clone();
        connection.on_begin(Some(Box::new(move |id, _| {
            begun.hear(Heard::Began(MessageKey(id.to_string())));
        })));
        let (ended, at_end) = (ear.clone(), signal.clone());
        connection.on_end(Some(Box::new(move |id, _| {
            ended.hear(Heard::Ended(MessageKey(id.to_string())));
            // Nobody waits any more once the connection is being left behind.
            let _ = at_end.send(());
        })));
        let stopped = ear.clone();
        connection.on_cancel(Some(Box::new(move |id, _| {
            stopped.hear(Heard::Stopped(MessageKey(id.to_string())));
            let _ = signal.send(());
        })));
        Ok(Self { connection, owed })
    }

    /// Closes the connection if that is safe, and leaves it alone if not.
    fn let_go(self) {
        if !self.owed.may_close() {
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
