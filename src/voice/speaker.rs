//! The handle that the rest of the program holds.

use std::fmt;
use std::io;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::mpsc::{self, Sender};
use std::thread;
use std::time::Duration;

use super::engine::{CallError, EventSink, Voice};
use super::events::{Utterance, VoiceEvent};
use super::speakable::SpeakableText;
use super::speech_settings::SpeechSettings;
use super::supervisor::{Supervisor, SupervisorMessage};
use super::timeouts::Timeouts;

/// Says one text at a time. No call waits for the speech service: each sends a message to the
/// supervisor and returns. Dropping it stops the speech.
pub struct Speaker {
    inbox: Sender<SupervisorMessage>,
    next: AtomicU64,
    closing: Duration,
}

impl Speaker {
    /// Begins to look for a voice with `make_voice`, which is called on a thread of its own,
    /// perhaps on several at once. `notify` gets each [`VoiceEvent`] on the supervisor's thread; it
    /// must only hand it on.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start(
        make_voice: impl Fn(EventSink) -> Result<Box<dyn Voice>, CallError> + Send + Sync + 'static,
        notify: impl Fn(VoiceEvent) + Send + 'static,
    ) -> io::Result<Self> {
        Self::start_with(make_voice, notify, Timeouts::default())
    }

    /// [`Speaker::start`] with time limits of the caller's choice.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start_with(
        make_voice: impl Fn(EventSink) -> Result<Box<dyn Voice>, CallError> + Send + Sync + 'static,
        notify: impl Fn(VoiceEvent) + Send + 'static,
        timeouts: Timeouts,
    ) -> io::Result<Self> {
        let (inbox, messages) = mpsc::channel();
        let closing = timeouts.closing;
        let supervisor = Supervisor::new(
            Arc::new(make_voice),
            Box::new(move |event| {
                log_event(&event);
                notify(event);
            }),
            timeouts,
            inbox.clone(),
        );
        thread::Builder::new()
            .name("voice supervisor".to_owned())
            .spawn(move || supervisor.run(&messages))?;
        Ok(Self {
            inbox,
            next: AtomicU64::new(1),
            closing,
        })
    }

    /// Says `text` at once, cutting off whatever is being said. `None`, with nothing cut off, when
    /// there is nothing in it that could be heard.
    pub fn say(&self, text: &str) -> Option<Utterance> {
        let text = SpeakableText::from_raw(text)?;
        let id = Utterance(self.next.fetch_add(1, Ordering::Relaxed));
        self.send(SupervisorMessage::Say(id, text));
        Some(id)
    }

    /// Stops what is being said and forgets what was to be said.
    pub fn hush(&self) {
        self.send(SupervisorMessage::Hush);
    }

    /// Says everything from now on with these settings.
    pub fn set_speech(&self, speech: SpeechSettings) {
        self.send(SupervisorMessage::SetSpeech(speech));
    }

    /// Asks for the voices there are; the answer is [`VoiceEvent::Voices`]. The service may take over a
    /// second to list them, and says nothing new meanwhile.
    pub fn voices(&self) {
        self.send(SupervisorMessage::Voices);
    }

    /// Stops the speech and waits for that, though never longer than [`Timeouts::closing`].
    pub fn close(self) {
        drop(self);
    }

    fn send(&self, message: SupervisorMessage) {
        // Only a supervisor that has panicked in `notify` is not there to read it.
        let _ = self.inbox.send(message);
    }
}

/// Notes in the log file what happens to the voice, and nothing of what it says.
fn log_event(event: &VoiceEvent) {
    match event {
        VoiceEvent::Ready => log::info!("a voice speaks"),
        VoiceEvent::Lost(loss) => log::warn!("no voice: {loss}"),
        VoiceEvent::Voices(voices) => log::info!("{} voices", voices.len()),
        VoiceEvent::NoSuchVoice(_) => {
            log::warn!("the voice or language of the settings is not there");
        }
        VoiceEvent::Began(_) | VoiceEvent::Ended(_) | VoiceEvent::CutOff(_) => {}
    }
}

impl Drop for Speaker {
    fn drop(&mut self) {
        let (done, closed) = mpsc::channel();
        self.send(SupervisorMessage::Close(done));
        // Too late or not at all: either way the program may end now.
        let _ = closed.recv_timeout(self.closing);
    }
}

impl fmt::Debug for Speaker {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Speaker")
    }
}
