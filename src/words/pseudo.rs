//! A made-up language for looking at the layout: English, two fifths longer, with accents.
//!
//! It is asked for as `en-XA`, CLDR's name for such a locale, and offered nowhere. The longest
//! translations of short English texts grow about as much.

use std::borrow::Cow;

use unic_langid::LanguageIdentifier;

/// How much longer a text becomes, in tenths.
const TENTHS: usize = 4;

/// Whether a locale is the made-up one.
pub(super) fn is_pseudo(locale: &LanguageIdentifier) -> bool {
    locale.region.is_some_and(|region| region.as_str() == "XA")
}

/// A piece of a message in the made-up language; arguments are not among the pieces.
pub(super) fn lengthened(text: &str) -> Cow<'_, str> {
    let mut owed = 0;
    let mut long = String::with_capacity(text.len() * 2);
    let mut last = None;
    for letter in text.chars() {
        if letter.is_alphabetic() {
            owed += TENTHS;
            last = Some(letter);
        }
        let (accented, is_vowel) = accented(letter);
        long.push(accented);
        while is_vowel && owed >= 10 {
            long.push(accented.to_lowercase().next().unwrap_or(accented));
            owed -= 10;
        }
    }
    // What no vowel had room for.
    if let Some(last) = last
        && owed >= 10
    {
        let kept = long.trim_end().len();
        let more: String = std::iter::repeat_n(last, owed / 10).collect();
        long.insert_str(kept, &more);
    }
    Cow::Owned(long)
}

/// A vowel with a sign that the typeface has, and whether it is one.
const fn accented(letter: char) -> (char, bool) {
    match letter {
        'a' => ('á', true),
        'e' => ('é', true),
        'i' => ('î', true),
        'o' => ('ö', true),
        'u' => ('ü', true),
        'A' => ('Á', true),
        'E' => ('É', true),
        'I' => ('Î', true),
        'O' => ('Ö', true),
        'U' => ('Ü', true),
        other => (other, false),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_two_fifths_longer_and_can_be_read() {
        assert_eq!(lengthened("Under one"), "Ündéér öönéé");
        for text in [
            "Over two cords, then under one cord.",
            "Leave a tail of fifteen centimetres.",
            "rhythm myths",
        ] {
            let (before, after) = (text.chars().count(), lengthened(text).chars().count());
            let letters = text.chars().filter(|letter| letter.is_alphabetic()).count();
            assert!(after * 10 + 10 > before * 10 + letters * TENTHS, "{text}");
        }
        assert_eq!(lengthened(", "), ", ");
    }
}
