//! A text that is fit to be given to a speech service.

use std::time::Duration;

/// The fastest speed, in words a minute, that the estimate of a duration trusts: a service that is
/// asked for more may not be able to give it.
const SUREST_PACE: u16 = 200;

/// What the pause at a comma or a full stop lasts, in words: measured with espeak-ng 1.51, which
/// said the 13 words and 5 stops of a step in 8.7 s at 150 words a minute.
const PAUSE_IN_WORDS: usize = 2;

/// Letters in a word, with the space after it, as typists count them.
const LETTERS_A_WORD: usize = 6;

/// A text with something to say in it, on one line and free of control characters.
///
/// A speech service must never get an empty text (the connection hangs from then on) nor one
/// with a NUL (the process aborts). A [`super::Voice`] takes nothing but this type.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpeakableText(String);

impl SpeakableText {
    /// Takes out control characters and surplus white space; `None` when nothing that could be
    /// heard is left.
    pub fn from_raw(raw: &str) -> Option<Self> {
        let kept: String = raw
            .chars()
            .filter(|c| c.is_whitespace() || !c.is_control())
            .collect();
        let text = kept.split_whitespace().collect::<Vec<_>>().join(" ");
        text.chars()
            .any(|c| !c.is_whitespace() && !is_invisible(c))
            .then_some(Self(text))
    }

    /// The text, with something in it that can be heard.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// About how long it takes to say this at `words_per_minute`. Words are counted by spaces or by
    /// letters, whichever gives more, and pauses are added. In a script without spaces between
    /// words a character counts as half a word.
    pub fn expected(&self, words_per_minute: u16) -> Duration {
        let letters: usize = self
            .0
            .chars()
            .map(|c| {
                if c < '\u{2e80}' {
                    1
                } else {
                    LETTERS_A_WORD / 2
                }
            })
            .sum();
        let words = self
            .0
            .split_whitespace()
            .count()
            .max(letters.div_ceil(LETTERS_A_WORD));
        let pauses = self.0.chars().filter(|&c| is_pause(c)).count();
        let words = u32::try_from(words + pauses * PAUSE_IN_WORDS).unwrap_or(u32::MAX);
        let pace = u32::from(words_per_minute.clamp(1, SUREST_PACE));
        Duration::from_secs(60).saturating_mul(words) / pace
    }
}

fn is_pause(c: char) -> bool {
    matches!(
        c,
        ',' | '.' | ';' | ':' | '!' | '?' | '…' | '–' | '—' | '、' | '。' | '，'
    )
}

/// Marks that join, separate or turn text and have no sound.
fn is_invisible(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}')
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cleaned(raw: &str) -> Option<String> {
        SpeakableText::from_raw(raw).map(|text| text.as_str().to_owned())
    }

    #[test]
    fn a_text_with_nothing_to_hear_is_no_text() {
        for raw in [
            "",
            " ",
            "\n\t \r\n",
            "\0",
            "\0\0 \u{1b}",
            "\u{200b}\u{2069}",
            "\u{a0}",
        ] {
            assert_eq!(cleaned(raw), None, "{raw:?}");
        }
    }

    #[test]
    fn control_characters_never_get_through() {
        assert_eq!(cleaned("over\0 one").as_deref(), Some("over one"));
        assert_eq!(cleaned("\u{7}over\u{85}one").as_deref(), Some("over one"));
        assert_eq!(
            cleaned(" over one,\r\n.\r\nunder two ").as_deref(),
            Some("over one, . under two")
        );
    }

    #[test]
    fn speech_takes_as_long_as_its_words() {
        let text = SpeakableText::from_raw("Over one then under one then over").unwrap();
        assert_eq!(text.expected(140), Duration::from_secs(3));
        let halting = SpeakableText::from_raw("Over one, then under one, then over.").unwrap();
        assert_eq!(
            halting.expected(130),
            Duration::from_secs(6),
            "three pauses of two words each"
        );
        assert_eq!(
            text.expected(450),
            text.expected(200),
            "a service may be slower than asked"
        );
    }

    #[test]
    fn a_script_without_spaces_is_not_one_word() {
        let text = SpeakableText::from_raw("上下上下上下上下").unwrap();
        assert_eq!(text.expected(60), Duration::from_secs(4));
    }
}
