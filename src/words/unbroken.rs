//! Numbers that stay with what they count when a text is broken into rows.

/// The same text with U+00A0 between a number and its unit or noun, so that no row ends between the two.
///
/// ```
/// assert_eq!(marlinspeak::words::unbroken("12 of 14 legs"), "12\u{a0}of 14\u{a0}legs");
/// ```
pub fn unbroken(text: &str) -> String {
    joined(text, |before, _| is_number(before))
}

/// The same, and with the word before a number too: what a pin is called stays with its number.
///
/// ```
/// assert_eq!(marlinspeak::words::bound("at top pin 3."), "at top pin\u{a0}3.");
/// ```
pub fn bound(text: &str) -> String {
    let begins = |word: &str| word.starts_with(|letter: char| letter.is_ascii_digit());
    joined(text, |before, after| is_number(before) || begins(after))
}

/// A text with U+00A0 between two words that are one.
fn joined(text: &str, are_one: impl Fn(&str, &str) -> bool) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut words = text.split(' ').peekable();
    while let Some(word) = words.next() {
        kept.push_str(word);
        if let Some(after) = words.peek() {
            kept.push(if are_one(word, after) { '\u{a0}' } else { ' ' });
        }
    }
    kept
}

/// Whether a word is a number that goes on: one with a comma or a full stop after it does not.
fn is_number(word: &str) -> bool {
    let word = word.trim_start_matches(['(', '[', '≈']);
    word.starts_with(|letter: char| letter.is_ascii_digit())
        && word.ends_with(|letter: char| letter.is_ascii_digit())
        && word.chars().all(|letter| {
            letter.is_ascii_digit() || matches!(letter, '.' | ',' | '\u{a0}' | '\u{202f}')
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_stays_with_its_unit_and_its_noun_and_with_nothing_else() {
        for (text, kept) in [
            ("36 mm, 50 min", "36\u{a0}mm, 50\u{a0}min"),
            ("hides 89 %", "hides 89\u{a0}%"),
            ("(35.8 mm to 50,5 mm)", "(35.8\u{a0}mm to 50,5\u{a0}mm)"),
            ("52 tucks", "52\u{a0}tucks"),
            ("hole 1, 3, 5 of row 2", "hole 1, 3, 5\u{a0}of row 2"),
            ("no number", "no number"),
            ("", ""),
        ] {
            assert_eq!(unbroken(text), kept);
        }
    }
}
