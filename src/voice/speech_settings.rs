//! How fast, how loud, how high and in which voice.

use std::ops::RangeInclusive;

/// How a text is spoken, on scales of our own. Values outside their bounds are taken as the
/// nearest bound.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpeechSettings {
    /// Words a minute, within [`SpeechSettings::SPEEDS`]. 150 to 200 is what listeners find
    /// comfortable.
    pub words_per_minute: u16,
    /// Percent of full volume, 0 to 100.
    pub volume: u8,
    /// Percent, 0 to 100: 50 is the voice's own pitch.
    pub pitch: u8,
    /// The name of a voice; `None` for the service's choice.
    pub voice: Option<String>,
    /// The engine of the service that the voice belongs to; `None` for the service's choice, or where it
    /// has but one.
    pub engine: Option<String>,
    /// A BCP 47 tag: the language when no voice is named or the named one is missing. `None` for
    /// the service's choice.
    pub language: Option<String>,
}

impl Default for SpeechSettings {
    fn default() -> Self {
        Self {
            words_per_minute: 165,
            volume: 100,
            pitch: 50,
            voice: None,
            engine: None,
            language: None,
        }
    }
}

impl SpeechSettings {
    /// The speeds there are, in words a minute.
    pub const SPEEDS: RangeInclusive<u16> = 80..=450;

    /// The voice or else the language that they name; none when the service is to choose.
    pub(super) fn named(&self) -> Option<&String> {
        self.voice.as_ref().or(self.language.as_ref())
    }
}

/// Whether the service has the voice that the settings name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum VoiceMatch {
    /// It has, or they name none.
    Found,
    /// It does not have the voice or the language that is given here.
    NoSuchVoice(String),
}

/// The place, in a list of (name, language), of the voice that fits `speech` best: the one named;
/// else the first of exactly the language; else the first of the same language with another
/// region.
pub(super) fn best_voice(
    voices: &[(String, String)],
    speech: &SpeechSettings,
) -> (Option<usize>, VoiceMatch) {
    let named = speech
        .voice
        .as_ref()
        .and_then(|wanted| voices.iter().position(|(name, _)| name == wanted));
    if named.is_some() {
        return (named, VoiceMatch::Found);
    }
    let primary = |tag: &str| tag.split('-').next().unwrap_or(tag).to_ascii_lowercase();
    let of_language = speech.language.as_ref().and_then(|tag| {
        let mut languages = voices.iter().map(|(_, language)| language);
        let exact = languages
            .clone()
            .position(|known| known.eq_ignore_ascii_case(tag));
        exact.or_else(|| languages.position(|known| primary(known) == primary(tag)))
    });
    let is_met = speech.voice.is_none() && of_language.is_some();
    let voice_match = match speech.named() {
        Some(wanted) if !is_met => VoiceMatch::NoSuchVoice(wanted.clone()),
        _ => VoiceMatch::Found,
    };
    (of_language, voice_match)
}

#[cfg(test)]
mod tests {
    use super::VoiceMatch::{Found, NoSuchVoice};
    use super::*;

    fn settings(voice: Option<&str>, language: Option<&str>) -> SpeechSettings {
        SpeechSettings {
            voice: voice.map(str::to_owned),
            language: language.map(str::to_owned),
            ..SpeechSettings::default()
        }
    }

    #[test]
    fn the_voice_named_wins_then_the_language_then_its_cousins() {
        let list = [
            ("Ada", "en-GB"),
            ("Bo", "en-US"),
            ("Cleo", "de"),
            ("Dan", "de-AT"),
        ]
        .map(|(name, language)| (name.to_owned(), language.to_owned()));
        let missing = |name: &str| NoSuchVoice(name.to_owned());
        let best = |voice, language| best_voice(&list, &settings(voice, language));
        assert_eq!(best(None, None), (None, Found));
        assert_eq!(best(Some("Dan"), Some("en-US")), (Some(3), Found));
        assert_eq!(best(None, Some("en-us")), (Some(1), Found));
        assert_eq!(best(None, Some("en")), (Some(0), Found));
        assert_eq!(best(None, Some("de-CH")), (Some(2), Found));
        assert_eq!(best(None, Some("fr")), (None, missing("fr")));
        assert_eq!(
            best(Some("Eve"), Some("de")),
            (Some(2), missing("Eve")),
            "the language, but not the voice"
        );
        assert_eq!(best(Some("Eve"), None), (None, missing("Eve")));
    }
}
