//! A tie: the knot chosen, how far it has come, and what the tyer wrote about it.

use std::fmt;
use std::hash::{BuildHasher, RandomState};
use std::sync::atomic::{AtomicU64, Ordering};

use jiff::Timestamp;

use super::{ShelfError, WorkTime, tie_document};
use crate::files::Fields;
use crate::guide::{Place, Plan};

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

/// A tie in progress.
#[derive(Clone, Debug, PartialEq)]
pub struct Tie {
    pub(super) id: TieId,
    /// What the tyer calls it; may be empty.
    pub name: String,
    /// What the tyer wrote about it; may be empty.
    pub note: String,
    /// Everything the tyer chose.
    pub plan: Plan,
    /// Where the tyer stands. It lies in the knot, or the tie is not written.
    pub place: Place,
    /// When it was begun.
    pub begun: Timestamp,
    /// When it was last saved; [`super::Shelf::save`] sets it.
    pub touched: Timestamp,
    /// The number of the lesson of the course that it is the tie of.
    pub lesson: Option<u16>,
    /// Whether the tyer has put it away: it stays on the shelf and waits no more.
    pub is_put_away: bool,
    /// The time worked at it.
    pub work_time: WorkTime,
    /// Fields of the document, and of its sections, that this version does not know. They are
    /// kept when the tie is saved.
    pub unknown: Fields,
}

impl Tie {
    /// A tie just begun, with a name of its own on the shelf and nothing written about it.
    pub fn begin(plan: Plan, place: Place) -> Self {
        let now = Timestamp::now();
        Self {
            id: TieId::draw(),
            name: String::new(),
            note: String::new(),
            plan,
            place,
            begun: now,
            touched: now,
            lesson: None,
            is_put_away: false,
            work_time: WorkTime::default(),
            unknown: Fields::new(),
        }
    }

    /// Its name on the shelf.
    pub const fn id(&self) -> &TieId {
        &self.id
    }

    /// The same knot, begun again at `start` under another id. What belongs to this tie alone is
    /// not taken along.
    #[must_use]
    pub fn again(&self, start: Place) -> Self {
        let mut unknown = self.unknown.clone();
        tie_document::remove_own(&mut unknown);
        Self {
            name: self.name.clone(),
            note: self.note.clone(),
            lesson: self.lesson,
            unknown,
            ..Self::begin(self.plan.clone(), start)
        }
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
