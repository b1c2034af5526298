//! What the rest of the program is told about its requests.

use thiserror::Error;

/// The number of one request to have something said; it grows from request to request.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Utterance(pub u64);

/// What became of a request, or of the voice. For every utterance that was not refused as empty
/// there is in the end exactly one `Ended` or `CutOff`, unless the speaker is closed first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum VoiceEvent {
    /// There is a voice: the first one, or one again after a loss. If a text was waiting, a voice
    /// that was lost counts as found when that text is heard to begin (after
    /// [`VoiceError::NeverEnded`]: when a text is heard to end).
    Ready,
    /// The speech began. It comes again when a speech torn off by a loss is begun anew.
    Began(Utterance),
    /// The speech came to its end.
    Ended(Utterance),
    /// The request was given up: for a newer one, for silence, or because somebody else stopped
    /// it.
    CutOff(Utterance),
    /// There is no voice just now, and one is being looked for. It comes once for each loss.
    Lost(VoiceError),
    /// The answer to [`super::Speaker::voices`]: sorted by language, then by name.
    Voices(Vec<VoiceName>),
    /// No voice fits the voice or the language of the settings, which is named here; the
    /// service's own choice speaks.
    NoSuchVoice(String),
}

/// A voice that a service offers.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct VoiceName {
    /// Its language, as a BCP 47 tag.
    pub language: String,
    /// Its name, as [`super::SpeechSettings::voice`] takes it.
    pub name: String,
    /// The engine that speaks with it, as [`super::SpeechSettings::engine`] takes it; none where the
    /// service does not tell.
    pub engine: Option<String>,
}

impl VoiceName {
    /// Whether it is made of a person's speech, as far as its engine is known.
    pub fn is_natural(&self) -> bool {
        self.engine.as_deref().is_some_and(super::is_natural)
    }

    /// Whether it speaks the language of a BCP 47 tag, in whatever region.
    pub fn speaks(&self, tag: &str) -> bool {
        let primary = |tag: &str| {
            let tag = tag.split(['-', '_']).next().unwrap_or(tag);
            tag.to_ascii_lowercase()
        };
        primary(&self.language) == primary(tag)
    }
}

/// Why there is no voice.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum VoiceError {
    /// No speech service could be reached; with its reason.
    #[error("no speech service can be reached ({0})")]
    NoService(String),
    /// The connection broke: the service has ended; with its reason.
    #[error("the speech service has ended ({0})")]
    Broken(String),
    /// The service answered that it will not; with its reason.
    #[error("the speech service refuses to speak ({0})")]
    Refused(String),
    /// A call was not answered.
    #[error("the speech service does not answer")]
    NoAnswer,
    /// A text was accepted, and no speech began.
    #[error("the speech service took a text and did not begin it")]
    NeverBegan,
    /// A speech began and did not end: most often there is no sound output.
    #[error("the speech service began a text and did not come to its end")]
    NeverEnded,
}
