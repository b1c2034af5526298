//! Texts from outside, made fit to be shown: names and notes that somebody else wrote, names of
//! files, reasons of the system.

use std::borrow::Cow;

use crate::shelf::{LONGEST_NAME, LONGEST_NOTE};

/// A text on one line that does nothing but stand there: what would steer a terminal or turn the
/// direction of the writing is left out, and line breaks become spaces.
///
/// ```
/// use marlinspeak::words::harmless;
///
/// assert_eq!(harmless("tiller\u{1b}[2J\u{202e}"), "tiller [2J");
/// assert_eq!(harmless("bell\nrope"), "bell rope");
/// assert_eq!(harmless("Grüße an Bord"), "Grüße an Bord");
/// ```
pub fn harmless(text: &str) -> Cow<'_, str> {
    if !text
        .chars()
        .any(|letter| letter.is_control() || is_steering(letter))
    {
        return Cow::Borrowed(text);
    }
    let kept = text.chars().filter(|letter| !is_steering(*letter));
    let kept = kept.map(|letter| if letter.is_control() { ' ' } else { letter });
    Cow::Owned(kept.collect())
}

/// A text of at most so many letters: the end of a longer one gives way to an ellipsis.
pub fn shortened(text: &str, most: usize) -> Cow<'_, str> {
    if text.chars().nth(most).is_none() {
        return Cow::Borrowed(text);
    }
    let kept = text.chars().take(most.saturating_sub(1));
    Cow::Owned(kept.chain(['…']).collect())
}

/// The name of a tie as it is shown.
pub fn shown_name(name: &str) -> String {
    shortened(&harmless(name), LONGEST_NAME).into_owned()
}

/// The note of a tie as it is shown.
pub fn shown_note(note: &str) -> String {
    shortened(&harmless(note), LONGEST_NOTE).into_owned()
}

/// Marks that are not seen and change how what stands around them is read: of direction (UAX 9),
/// of line and paragraph, of the order of bytes, and tags.
const fn is_steering(letter: char) -> bool {
    matches!(letter,
        '\u{61c}' | '\u{200b}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}'
        | '\u{e0000}'..='\u{e007f}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_that_steers_is_left_of_any_letter() {
        for letter in (0..=0x0010_ffff).filter_map(char::from_u32) {
            let text = format!("a{letter}b");
            let shown = harmless(&text).into_owned();
            assert!(!shown.contains(|one: char| one.is_control() || is_steering(one)));
            assert!(shown.starts_with('a') && shown.ends_with('b'), "{letter:?}");
        }
    }

    #[test]
    fn a_long_name_ends_in_an_ellipsis_and_letters_stay_whole() {
        assert_eq!(shortened("über drei", 9), "über drei");
        assert_eq!(shortened("über drei", 5), "über…");
        let shown = shown_name(&"ü".repeat(20_000));
        assert_eq!(shown.chars().count(), LONGEST_NAME);
    }
}
