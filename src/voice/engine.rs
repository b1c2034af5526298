//! What a speech service must be able to do for the worker that owns it.

use std::fmt;
use std::sync::Arc;

use super::{Manner, SpokenText, VoiceName};

/// A connection to a speech service. Any call may block for as long as it likes: it is made on
/// the worker's thread, and the supervisor watches the clock.
pub trait Voice {
    /// Stops what is being said and begins to say `text`. The key is the one that later
    /// [`Heard`] events carry, and those may arrive before this returns; `None` from a service
    /// that tells nothing about its speech.
    ///
    /// # Errors
    /// [`Trouble`] when nothing will be said.
    fn speak(&mut self, text: &SpokenText) -> Result<Option<MessageKey>, Trouble>;

    /// Stops what is being said.
    ///
    /// # Errors
    /// [`Trouble`] when the service could not be told.
    fn stop(&mut self) -> Result<(), Trouble>;

    /// Sets how the next texts are said.
    ///
    /// # Errors
    /// [`Trouble`] when the service could not be told.
    fn set_manner(&mut self, manner: &Manner) -> Result<Fit, Trouble>;

    /// The voices the service offers, without doubles, sorted.
    ///
    /// # Errors
    /// [`Trouble`] when the service could not be asked.
    fn voices(&mut self) -> Result<Vec<VoiceName>, Trouble>;

    /// Asks something that changes nothing, to see whether the service answers.
    ///
    /// # Errors
    /// [`Trouble::Gone`] when it does not any more.
    fn check(&mut self) -> Result<(), Trouble>;
}

/// Whether a wished manner could be met.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fit {
    /// All of it.
    AsWished,
    /// All but the voice or language named here, which the service does not have.
    NoSuchVoice(String),
}

/// Why a call came to nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// The connection is of no use any more.
    Gone(String),
    /// This call was refused; the service still answers.
    Refused(String),
}

/// The name of one text at the service that says it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MessageKey(pub String);

/// What a service tells about its speech.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Heard {
    /// It has begun.
    Began(MessageKey),
    /// It has been said to its end.
    Ended(MessageKey),
    /// It was stopped before its end.
    Stopped(MessageKey),
    /// It has turned out that no voice fits what was wished for, which is named here.
    NoSuchVoice(String),
}

impl Heard {
    /// The text that it is about, if it is about one.
    pub(super) fn key(&self) -> Option<&MessageKey> {
        match self {
            Self::Began(key) | Self::Ended(key) | Self::Stopped(key) => Some(key),
            Self::NoSuchVoice(_) => None,
        }
    }
}

/// Where a [`Voice`] reports what it hears. Reporting only sends on a channel, so that it is safe
/// in a callback of the service, where a call back into the service would deadlock.
#[derive(Clone)]
pub struct Ear(Arc<dyn Fn(Heard) + Send + Sync>);

impl Ear {
    /// An ear that hands on to `listener`, which must not block.
    pub fn new(listener: impl Fn(Heard) + Send + Sync + 'static) -> Self {
        Self(Arc::new(listener))
    }

    /// Reports `heard`.
    pub fn hear(&self, heard: Heard) {
        (self.0)(heard);
    }
}

impl fmt::Debug for Ear {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Ear")
    }
}
