//! Speech: one text at a time is said aloud, and nobody ever waits for it.
//!
//! A [`Speaker`] is the whole of it for the rest of the program. Its calls put a request in a
//! queue of one and return; what became of the request comes back as a [`VoiceEvent`].
//!
//! Behind it stand two threads. The *worker* owns a [`Voice`] and makes its calls one after
//! the other; speech services are known to block such a call for ever. The *supervisor* never
//! makes a call itself: it holds the newest request, hands the worker one command at a time, and
//! keeps a watch on the reply and on the beginning and end of the speech. When a timeout runs
//! out it says that the voice is lost, leaves the worker behind and looks for a voice with
//! another one. While nothing is being said the supervisor sleeps without waking.

mod cue;
mod cue_player;
#[cfg(target_os = "linux")]
mod dispatcher;
mod engine;
mod engines;
mod events;
mod pending_events;
mod scale;
mod speak;
mod speakable;
mod speaker;
mod speech_settings;
#[cfg(target_os = "linux")]
mod ssip;
mod supervisor;
mod timeouts;
#[cfg(not(target_os = "linux"))]
mod tts_voice;
mod worker;

#[cfg(test)]
mod scripted;

pub use cue::{Cue, SAMPLE_RATE};
pub use cue_player::CuePlayer;
#[cfg(target_os = "linux")]
pub use dispatcher::DispatcherVoice as SystemVoice;
pub use engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
pub use engines::{VoiceSource, is_natural};
pub use events::{Utterance, VoiceError, VoiceEvent, VoiceName};
pub use speak::{Chime, Mute, Speak};
pub use speakable::SpeakableText;
pub use speaker::Speaker;
pub use speech_settings::{SpeechSettings, VoiceMatch};
#[cfg(target_os = "linux")]
pub use ssip::{Answer, Unreadable, read_answer};
pub use timeouts::Timeouts;
#[cfg(not(target_os = "linux"))]
pub use tts_voice::TtsVoice as SystemVoice;
