//! The name of a tie on the shelf.

use std::fmt;
use std::hash::{BuildHasher, RandomState};
use std::sync::atomic::{AtomicU64, Ordering};

use thiserror::Error;

use super::clock;

/// The name of a tie on the shelf: 6 to 32 of the letters a to z and digits, so that it is
/// safe as a file name on any system.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct TieId(String);

/// A text that names no tie.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("{given:?} names no tie; a tie's name is 6 to 32 letters a to z and digits")]
pub struct TieIdError {
    /// The text as given.
    pub given: String,
}

/// Digits and consonants that are hard to mix up, and that spell no word.
const LETTERS: [u8; 27] = *b"23456789bcdfghjkmnpqrstvwxz";
const LETTERS_OF_A_NEW_ID: usize = 8;

impl TieId {
    /// Draws a new name from 27⁸ (about 280 thousand million).
    pub(super) fn draw() -> Self {
        static DRAWN: AtomicU64 = AtomicU64::new(0);
        // The keys of a `RandomState` come from the system's own source of randomness.
        let mut number = RandomState::new().hash_one((
            std::process::id(),
            DRAWN.fetch_add(1, Ordering::Relaxed),
            clock::now().as_nanosecond(),
        ));
        let base = LETTERS.len() as u64;
        let letters = (0..LETTERS_OF_A_NEW_ID).map(|_| {
            let letter = LETTERS[usize::try_from(number % base).unwrap_or(0)];
            number /= base;
            char::from(letter)
        });
        Self(letters.collect())
    }

    /// Reads a name as a person types it.
    ///
    /// # Errors
    /// A [`TieIdError`] when no tie can have that name.
    pub fn parse(text: &str) -> Result<Self, TieIdError> {
        let fits = (6..=32).contains(&text.len())
            && text
                .bytes()
                .all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit());
        if fits {
            Ok(Self(text.to_owned()))
        } else {
            Err(TieIdError {
                given: text.to_owned(),
            })
        }
    }

    /// The name as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for TieId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use super::*;

    #[test]
    fn new_ids_are_short_safe_and_different() {
        let ids: HashSet<TieId> = (0..2000).map(|_| TieId::draw()).collect();
        assert_eq!(ids.len(), 2000);
        for id in ids {
            assert_eq!(id.as_str().len(), LETTERS_OF_A_NEW_ID);
            assert_eq!(TieId::parse(id.as_str()).unwrap(), id);
        }
    }

    #[test]
    fn no_id_leads_out_of_the_folder() {
        for text in [
            "",
            "con",
            "aux",
            "com1",
            "../../up",
            "a/bcdef",
            "a\\bcdef",
            ".hidden",
            "Capital",
            "with space",
            "nul\0byte",
            "grüße12",
        ] {
            let given = text.to_owned();
            assert_eq!(TieId::parse(text), Err(TieIdError { given }));
        }
        assert!(TieId::parse(&"a".repeat(33)).is_err());
    }
}
