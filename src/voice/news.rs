//! What the rest of the program hears about its wishes.

use std::error::Error;
use std::fmt;

/// The number of one wish to have something said; it grows from wish to wish.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Utterance(pub u64);

/// What happened. For every utterance that was not refused as empty there is in the end exactly
/// one `Ended` or `CutOff`, unless the speaker is closed first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum News {
    /// There is a voice: the first one, or one again after a loss. If a text was waiting, a voice
    /// that was lost counts as found when that text is heard to begin (after
    /// [`Loss::NeverEnded`]: when a text is heard to end).
    Ready,
    /// The speech began. It comes again when a speech torn off by a loss is begun anew.
    Began(Utterance),
    /// The speech came to its end.
    Ended(Utterance),
    /// The wish was given up: for a newer one, for silence, or because somebody else stopped it.
    CutOff(Utterance),
    /// There is no voice just now, and one is being looked for. Said once a loss.
    Lost(Loss),
    /// The answer to [`super::Speaker::voices`]: sorted by language, then by name.
    Voices(Vec<VoiceName>),
    /// No voice fits the voice or the language wished for; the service's own choice speaks.
    NoSuchVoice(String),
}

/// A voice that a service offers.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct VoiceName {
    /// Its language, as a BCP 47 tag.
    pub language: String,
    /// Its name, as [`super::Manner::voice`] takes it.
    pub name: String,
}

/// Why there is no voice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Loss {
    /// No speech service could be reached; with its reason.
    NoService(String),
    /// The connection broke: the service has ended; with its reason.
    Broken(String),
    /// The service answered that it will not; with its reason.
    Refused(String),
    /// A call was not answered.
    NoAnswer,
    /// A text was accepted, and no speech began.
    NeverBegan,
    /// A speech began and did not end: most often there is no sound output.
    NeverEnded,
}

impl fmt::Display for Loss {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoService(why) => write!(f, "no speech service can be reached ({why})"),
            Self::Broken(why) => write!(f, "the speech service has ended ({why})"),
            Self::Refused(why) => write!(f, "the speech service refuses to speak ({why})"),
            Self::NoAnswer => f.write_str("the speech service does not answer"),
            Self::NeverBegan => f.write_str("the speech service took a text and did not begin it"),
            Self::NeverEnded => {
                f.write_str("the speech service began a text and did not come to its end")
            }
        }
    }
}

impl Error for Loss {}
