//! Speech: one text at a time is said aloud, and nobody ever waits for it.
//!
//! A [`Speaker`] is the whole of it for the rest of the program. Its calls put a wish in a
//! queue of one and return; what became of the wish comes back as [`News`].
//!
//! Behind it stand two threads. The *worker* owns a [`Voice`] and makes its calls one after
//! the other; speech services are known to block such a call for ever. The *supervisor* never
//! makes a call itself: it holds the newest wish, hands the worker one order at a time, and
//! keeps a watch on the answer and on the beginning and end of the speech. When the watch runs
//! out it says that the voice is lost, leaves the worker behind and looks for a voice with
//! another one. While nothing is being said the supervisor sleeps without waking.

mod cue;
#[cfg(target_os = "linux")]
mod dispatcher;
mod engine;
mod manner;
mod news;
mod owed;
mod patience;
mod sounder;
mod speak;
mod speaker;
mod supervisor;
mod text;
#[cfg(not(target_os = "linux"))]
mod tts_voice;
mod worker;

#[cfg(test)]
mod scripted;

pub use cue::{Cue, SAMPLE_RATE};
#[cfg(target_os = "linux")]
pub use dispatcher::DispatcherVoice as SystemVoice;
pub use engine::{Ear, Fit, Heard, MessageKey, Trouble, Voice};
pub use manner::Manner;
pub use news::{Loss, News, Utterance, VoiceName};
pub use patience::Patience;
pub use sounder::Sounder;
pub use speak::{Chime, Mute, Speak};
pub use speaker::Speaker;
pub use text::SpokenText;
#[cfg(not(target_os = "linux"))]
pub use tts_voice::TtsVoice as SystemVoice;
