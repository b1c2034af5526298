//! The preferences themselves.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use strum::{EnumString, IntoStaticStr, VariantNames};

use crate::guide::AtOnce;
use crate::pedal::{Bindings, Times};
use crate::voice::SpeechSettings;
use crate::words::{Detail, Tongue, Words};

/// Bounds of [`Screen::distance`], in millimetres.
pub const DISTANCES: RangeInclusive<u16> = 300..=6000;
/// Bounds of [`Screen::width`], in millimetres.
pub const SCREEN_WIDTHS: RangeInclusive<u16> = 50..=5000;

/// Everything the tyer can set.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Settings {
    /// The language and the units of lengths.
    pub tongue: Tongue,
    /// What presses mean.
    pub bindings: Bindings,
    /// What tells one press from another.
    pub times: Times,
    /// How the voice speaks each language, by the language's tag.
    pub speech: BTreeMap<String, SpeechSettings>,
    /// The short sounds.
    pub cues: Cues,
    /// Whether the edge of the screen flashes where a sound would tell something.
    pub flash: bool,
    /// Dark or light.
    pub light: Light,
    /// The screen, and how far it is.
    pub screen: Screen,
    /// Whether the steps move on by themselves.
    pub pacing: bool,
    /// How much is told.
    pub prose: Prose,
}

impl Settings {
    /// How a language is spoken. `tag` is its BCP 47 tag.
    pub fn speech(&self, tag: &str) -> SpeechSettings {
        let mut speech = self.speech.get(tag).cloned().unwrap_or_default();
        speech.language = Some(tag.to_owned());
        speech
    }

    /// How these words are spoken. English on an English system is left to the service's choice
    /// of a voice, as long as none is named: its own default is English too, whatever the system
    /// speaks.
    pub fn speech_in(&self, words: &Words) -> SpeechSettings {
        let mut speech = self.speech(&words.tag().to_string());
        let is_usual = words.is_english() && words.is_system_language();
        speech.language = if speech.voice.is_none() && is_usual {
            None
        } else {
            Some(words.locale().to_string())
        };
        speech
    }

    /// Sets how a language is spoken.
    pub fn set_speech(&mut self, tag: &str, speech: SpeechSettings) {
        self.speech.insert(tag.to_owned(), speech);
    }
}

/// The short sounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cues {
    /// Whether there are any.
    pub is_on: bool,
    /// Percent, 0 to 100.
    pub volume: u8,
}

impl Default for Cues {
    fn default() -> Self {
        Self {
            is_on: true,
            volume: 50,
        }
    }
}

/// Whether letters are light or dark. The names in documents must stay as they are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantNames)]
pub enum Light {
    /// Light letters on a dark ground.
    #[default]
    #[strum(serialize = "dark")]
    Dark,
    /// Dark letters on a light ground.
    #[strum(serialize = "light")]
    Bright,
}

/// The screen, and how far it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Screen {
    /// From the eye to the screen, in millimetres.
    pub distance: u16,
    /// The width of the picture on the screen, in millimetres; none when it is not known.
    pub width: Option<u16>,
}

impl Default for Screen {
    /// Across a bench; *common practice, no source*.
    fn default() -> Self {
        Self {
            distance: 1000,
            width: None,
        }
    }
}

/// How much is told.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Prose {
    /// In how many words.
    pub detail: Detail,
    /// How much of a leg.
    pub at_once: AtOnce,
}
