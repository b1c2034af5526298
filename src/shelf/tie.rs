//! A tie: the knot chosen, how far it has come, and what the tyer wrote about it.

use std::fmt;
use std::hash::{BuildHasher, RandomState};
use std::sync::atomic::{AtomicU64, Ordering};

use jiff::Timestamp;
use serde_json::{Map, Value};

use super::ShelfError;
use crate::guide::Place;
use crate::knot::{Hand, Laying, Side};

/// The name of a tie on the shelf: 6 to 32 of the letters a to z and digits, so that it is
/// safe as a file name on any system.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct TieId(String);

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
            Timestamp::now().as_nanosecond(),
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
    /// [`ShelfError::NotAnId`] when no tie can have that name.
    pub fn parse(text: &str) -> Result<Self, ShelfError> {
        let fits = (6..=32).contains(&text.len())
            && text
                .bytes()
                .all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit());
        if fits {
            Ok(Self(text.to_owned()))
        } else {
            Err(ShelfError::NotAnId {
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

/// The knot that is tied and how this tyer ties it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Chosen {
    /// Leads, bights, weave, passes and the order of laying them.
    pub laying: Laying,
    /// The side that followers keep to.
    pub side: Side,
    /// The tyer's hand.
    pub hand: Hand,
}

/// Fields inside the sections of a document that this version does not know.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Unknown {
    pub(super) knot: Map<String, Value>,
    pub(super) place: Map<String, Value>,
}

/// A tie in progress.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tie {
    pub(super) id: TieId,
    /// What the tyer calls it; may be empty.
    pub name: String,
    /// What the tyer wrote about it; may be empty.
    pub note: String,
    /// The knot.
    pub knot: Chosen,
    /// Where the tyer stands. It lies in the knot, or the tie is not written.
    pub place: Place,
    /// When it was begun.
    pub begun: Timestamp,
    /// When it was last saved; [`super::Shelf::save`] sets it.
    pub touched: Timestamp,
    /// Further sections of the document, such as `tube`, `cord` and `object`, and fields that
    /// this version does not know. None may have the name of a field above, nor `version` or
    /// `checksum`.
    pub extras: Map<String, Value>,
    pub(super) unknown: Unknown,
}

impl Tie {
    /// A tie just begun, with a name of its own on the shelf and nothing written about it.
    pub fn begin(knot: Chosen, place: Place) -> Self {
        let now = Timestamp::now();
        Self {
            id: TieId::draw(),
            name: String::new(),
            note: String::new(),
            knot,
            place,
            begun: now,
            touched: now,
            extras: Map::new(),
            unknown: Unknown::default(),
        }
    }

    /// Its name on the shelf.
    pub const fn id(&self) -> &TieId {
        &self.id
    }

    /// The same knot, begun again at `start` under another id.
    #[must_use]
    pub fn again(&self, start: Place) -> Self {
        let mut again = Self {
            id: TieId::draw(),
            place: start,
            begun: Timestamp::now(),
            touched: Timestamp::now(),
            unknown: Unknown {
                knot: self.unknown.knot.clone(),
                place: Map::new(),
            },
            ..self.clone()
        };
        again.as_new();
        again
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
            assert!(
                matches!(TieId::parse(text), Err(ShelfError::NotAnId { .. })),
                "{text:?}"
            );
        }
        assert!(TieId::parse(&"a".repeat(33)).is_err());
    }
}
