//! What a tyer can prefer, whatever it looks like in a document.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use strum::{EnumString, IntoStaticStr, VariantNames};

use crate::bench::Prices;
use crate::guide::AtOnce;
use crate::pedal::{Bindings, Times};
use crate::voice::SpeechSettings;
use crate::words::{Detail, LanguageChoice, Words};

/// Bounds of [`ScreenGeometry::distance`], in millimetres.
pub const DISTANCES: RangeInclusive<u16> = 300..=6000;
/// Bounds of [`ScreenGeometry::width`], in millimetres.
pub const SCREEN_WIDTHS: RangeInclusive<u16> = 50..=5000;

/// Everything the tyer can set.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each holds or not, whatever the others do"
)]
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Settings {
    /// The language and the units of lengths.
    pub language: LanguageChoice,
    /// What each press means.
    pub bindings: Bindings,
    /// Whether a microphone is listened to for knocks.
    pub knocks: bool,
    /// What tells one press from another.
    pub times: Times,
    /// How the voice speaks each language, by the language's tag.
    pub speech: BTreeMap<String, SpeechSettings>,
    /// The short sounds that go with steps and presses.
    pub cues: Cues,
    /// Whether the edge of the screen flashes where a sound would tell something.
    pub flash: bool,
    /// Whether pictures stand still that would else show how a leg goes in.
    pub still: bool,
    /// Whether letters are light or dark.
    pub colours: ColourScheme,
    /// How large the screen is, and how far away.
    pub screen: ScreenGeometry,
    /// Whether the steps move on by themselves.
    pub pacing: bool,
    /// How much is told of a step.
    pub verbosity: Verbosity,
    /// What cord and work are worth, when the tyer has said.
    pub prices: Prices,
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

/// The short sounds that go with steps and presses.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cues {
    /// Whether they sound at all.
    pub is_on: bool,
    /// Percent of full volume, 0 to 100.
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
#[strum(serialize_all = "lowercase")]
pub enum ColourScheme {
    /// Light letters on a dark ground.
    #[default]
    Dark,
    /// Dark letters on a light ground.
    Light,
}

/// How large the screen is, and how far away.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ScreenGeometry {
    /// From the eye to the screen, in millimetres.
    pub distance: u16,
    /// The width of the picture on the screen, in millimetres; none when it is not known.
    pub width: Option<u16>,
}

impl Default for ScreenGeometry {
    /// Across a bench; *common practice, no source*.
    fn default() -> Self {
        Self {
            distance: 1000,
            width: None,
        }
    }
}

/// How much is told of a step.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Verbosity {
    /// In how many words it is told.
    pub detail: Detail,
    /// How much of a leg is told at once.
    pub at_once: AtOnce,
}
