//! Texts for the ear, as types of their own: what is only shown cannot be spoken by mistake.

use std::fmt;

/// A text for the ear: free of markup and of bidi marks, its lengths told in whole words, its
/// numbers in one piece.
///
/// Only [`super::Words`] makes one, so that whoever holds one may give it to the voice. It may be
/// shown too; the other way round there is no way.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Spoken(String);

impl Spoken {
    /// For the lookup of messages alone.
    pub(super) const fn new(text: String) -> Self {
        Self(text)
    }

    /// The text, to be handed to the voice or to be shown.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether there is nothing to be heard.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// This and then `next`, with a space between when neither is empty.
    #[must_use]
    pub fn then(mut self, next: &Self) -> Self {
        if !self.is_empty() && !next.is_empty() {
            self.0.push(' ');
        }
        self.0.push_str(&next.0);
        self
    }
}

impl FromIterator<Spoken> for Spoken {
    /// One after the other.
    fn from_iter<I: IntoIterator<Item = Self>>(texts: I) -> Self {
        texts
            .into_iter()
            .fold(Self::default(), |said, next| said.then(&next))
    }
}

impl fmt::Display for Spoken {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl From<Spoken> for String {
    fn from(spoken: Spoken) -> Self {
        spoken.0
    }
}

impl PartialEq<&str> for Spoken {
    fn eq(&self, other: &&str) -> bool {
        self.0 == *other
    }
}

/// A sentence for the eye and for the ear, such as an error: the same message, put into text once
/// for each.
///
/// It prints as it is shown.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sentence {
    shown: String,
    spoken: Spoken,
}

impl Sentence {
    /// For the lookup of messages alone.
    pub(super) const fn new(shown: String, spoken: Spoken) -> Self {
        Self { shown, spoken }
    }

    /// As it is shown.
    pub fn shown(&self) -> &str {
        &self.shown
    }

    /// As it is spoken.
    pub const fn spoken(&self) -> &Spoken {
        &self.spoken
    }

    /// This and then `next`, with a space between when neither is empty.
    #[must_use]
    pub(super) fn then(mut self, next: &Self) -> Self {
        if !self.shown.is_empty() && !next.shown.is_empty() {
            self.shown.push(' ');
        }
        self.shown.push_str(&next.shown);
        self.spoken = self.spoken.then(&next.spoken);
        self
    }
}

impl fmt::Display for Sentence {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.shown)
    }
}

impl From<Sentence> for String {
    fn from(sentence: Sentence) -> Self {
        sentence.shown
    }
}

impl From<Sentence> for Spoken {
    fn from(sentence: Sentence) -> Self {
        sentence.spoken
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_are_joined_by_one_space_and_nothing_leaves_none() {
        let spoken = |text: &str| Spoken::new(text.to_owned());
        let all = ["", "Over one.", "", "Under one."].map(spoken);
        assert_eq!(all.into_iter().collect::<Spoken>(), "Over one. Under one.");
        assert_eq!(spoken("Over one.").then(&spoken("")), "Over one.");
    }
}
