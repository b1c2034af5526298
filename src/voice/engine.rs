//! What a speech service must be able to do for the worker that owns it.

use std::fmt;
use std::sync::Arc;

use thiserror::Error;

use super::events::VoiceName;
use super::speakable::SpeakableText;
use super::speech_settings::{SpeechSettings, VoiceMatch};

/// A connection to a speech service. Any call may block for as long as it likes: it is made on
/// the worker's thread, and the supervisor watches the clock.
pub trait Voice {
    /// Stops what is being said and begins to say `text`. The key is the one that later
    /// [`SpeechEvent`]s carry, and those may arrive before this returns; `None` from a service
    /// that tells nothing about its speech.
    ///
    /// # Errors
    /// [`CallError`] when nothing will be said.
    fn speak(&mut self, text: &SpeakableText) -> Result<Option<MessageKey>, CallError>;

    /// Stops what is being said.
    ///
    /// # Errors
    /// [`CallError`] when the service could not be told.
    fn stop(&mut self) -> Result<(), CallError>;

    /// Sets how the next texts are said.
    ///
    /// # Errors
    /// [`CallError`] when the service could not be told.
    fn set_speech(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError>;

    /// The voices the service offers, without doubles, sorted.
    ///
    /// # Errors
    /// [`CallError`] when the service could not be asked.
    fn voices(&mut self) -> Result<Vec<VoiceName>, CallError>;

    /// Makes a call that changes nothing, to see whether the service answers.
    ///
    /// # Errors
    /// [`CallError::Gone`] when it does not any more.
    fn check(&mut self) -> Result<(), CallError>;
}

/// Why a call came to nothing; with the reason that the service gives.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum CallError {
    /// The connection is of no use any more.
    #[error("the connection to the speech service is gone ({0})")]
    Gone(String),
    /// This call was refused; the service still answers.
    #[error("the speech service refused a call ({0})")]
    Refused(String),
}

/// The name of one text at the service that says it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MessageKey(pub String);

/// What a service tells about its speech.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SpeechEvent {
    /// The service has begun to say this text.
    Began(MessageKey),
    /// This text has been said to its end.
    Ended(MessageKey),
    /// This text was stopped before its end.
    Stopped(MessageKey),
    /// It has turned out that no voice fits the settings; what they name is given here.
    NoSuchVoice(String),
}

impl SpeechEvent {
    /// The text that it is about, if it is about one.
    pub(super) fn key(&self) -> Option<&MessageKey> {
        match self {
            Self::Began(key) | Self::Ended(key) | Self::Stopped(key) => Some(key),
            Self::NoSuchVoice(_) => None,
        }
    }
}

/// Where a [`Voice`] reports its [`SpeechEvent`]s. Reporting only sends on a channel, so that it
/// is safe in a callback of the service, where a call back into the service would deadlock.
#[derive(Clone)]
pub struct EventSink(Arc<dyn Fn(SpeechEvent) + Send + Sync>);

impl EventSink {
    /// A sink that hands on to `listener`, which must not block.
    pub fn new(listener: impl Fn(SpeechEvent) + Send + Sync + 'static) -> Self {
        Self(Arc::new(listener))
    }

    /// Hands on an event.
    pub fn send(&self, event: SpeechEvent) {
        (self.0)(event);
    }
}

impl fmt::Debug for EventSink {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("EventSink")
    }
}
