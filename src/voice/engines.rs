//! The engines of Speech Dispatcher, which it calls output modules: which of them speak naturally, and how
//! such a voice is added. All that is known of engines stands here.
//!
//! Sources: the modules that Speech Dispatcher 0.11.4 and 0.12 bring and describe in their configuration
//! (`/etc/speech-dispatcher/modules`), and the descriptions of Debian's packages. What an engine makes
//! its voices of is *from memory* where it says nothing itself.

/// Engines whose voices are made of a person's speech, recorded or learnt: the name of their module begins
/// with this. Those of espeak-ng and its like are computed from rules and are not among them.
const NATURAL: [&str; 14] = [
    "baratinoo",
    "cicero",
    "coqui",
    "espeak-mbrola",
    "espeak-ng-mbrola",
    "festival",
    "flite",
    "kali",
    "mary",
    "mimic",
    "pico",
    "piper",
    "rhvoice",
    "swift",
];

/// Engines that speak every language there are words in: espeak-ng 1.51 knows over a hundred.
const OF_ALL_LANGUAGES: [&str; 2] = ["espeak-ng", "espeak"];

/// Whether the voices of an engine are natural ones.
pub fn is_natural(engine: &str) -> bool {
    let engine = engine.to_ascii_lowercase();
    NATURAL.iter().any(|known| engine.starts_with(known))
}

/// Whether an engine speaks all our languages, however many voices it names.
pub(super) fn speaks_all(engine: &str) -> bool {
    OF_ALL_LANGUAGES.contains(&engine)
}

/// How a natural voice is added to a system.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum VoiceSource {
    /// A package of Debian, in the section that every Debian has.
    Debian(&'static str),
    /// A package of Debian in its sections contrib and non-free, which are to be switched on first.
    DebianNonFree(&'static str),
    /// A module of the speech service, by whatever means the system has.
    Elsewhere,
}

impl VoiceSource {
    /// The name of this way among the messages, and of the package.
    pub const fn named(self) -> (&'static str, &'static str) {
        match self {
            Self::Debian(package) => ("debian", package),
            Self::DebianNonFree(package) => ("non-free", package),
            Self::Elsewhere => ("elsewhere", ""),
        }
    }

    /// The way for a language, by its BCP 47 tag.
    ///
    /// Debian 12 has flite, which speaks English, and no other natural engine in the section of every
    /// Debian that speaks German, Spanish or French; that `speech-dispatcher-pico` in contrib does is
    /// *from memory*.
    pub fn of(language: &str, is_debian: bool) -> Self {
        let language = language.split(['-', '_']).next().unwrap_or_default();
        match (is_debian, language) {
            (false, _) => Self::Elsewhere,
            (true, "en") => Self::Debian("speech-dispatcher-flite"),
            (true, _) => Self::DebianNonFree("speech-dispatcher-pico"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn engines_are_known_by_what_their_module_is_called() {
        for natural in [
            "flite",
            "festival",
            "pico-generic",
            "RHVoice",
            "espeak-ng-mbrola",
        ] {
            assert!(is_natural(natural), "{natural}");
        }
        for computed in ["espeak-ng", "espeak", "dtk-generic", "dummy", ""] {
            assert!(!is_natural(computed), "{computed}");
        }
        assert!(speaks_all("espeak-ng") && !speaks_all("espeak-ng-mbrola"));
    }

    #[test]
    fn the_way_to_a_natural_voice_is_that_of_the_system_and_the_language() {
        let debian = |language| VoiceSource::of(language, true).named();
        assert_eq!(debian("en-GB"), ("debian", "speech-dispatcher-flite"));
        assert_eq!(debian("de"), ("non-free", "speech-dispatcher-pico"));
        assert_eq!(VoiceSource::of("en", false), VoiceSource::Elsewhere);
    }
}
