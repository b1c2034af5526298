//! What a window or a terminal needs of a voice and of sounds. That is less than they can do, so
//! that a test can stand in for them.

use super::cue::Cue;
use super::cue_player::CuePlayer;
use super::speaker::Speaker;
use super::speech_settings::SpeechSettings;
use crate::words::Spoken;

/// Speaks one text at a time; a new one cuts off the old.
pub trait Speak {
    /// Says this instead of whatever is being said.
    fn say(&self, text: &Spoken);
    /// Stops what is being said, and says nothing until it is told to.
    fn hush(&self);
    /// Says everything from now on with these settings.
    fn set_speech(&self, _speech: SpeechSettings) {}
    /// Asks for the voices there are.
    fn ask_for_voices(&self) {}
}

impl Speak for Speaker {
    fn say(&self, text: &Spoken) {
        Speaker::say(self, text.as_str());
    }

    fn hush(&self) {
        Speaker::hush(self);
    }

    fn set_speech(&self, speech: SpeechSettings) {
        Speaker::set_speech(self, speech);
    }

    fn ask_for_voices(&self) {
        self.voices();
    }
}

/// No voice at all.
#[derive(Clone, Copy, Debug, Default)]
pub struct Mute;

impl Speak for Mute {
    fn say(&self, _: &Spoken) {}

    fn hush(&self) {}
}

/// Plays the short sounds that tell what a press did.
pub trait Chime {
    /// Plays this one at a volume in percent.
    fn play(&self, cue: Cue, volume: u8);
}

impl Chime for CuePlayer {
    fn play(&self, cue: Cue, volume: u8) {
        CuePlayer::play(self, cue, volume);
    }
}
