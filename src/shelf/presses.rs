//! How many presses a tie has seen, told so that it can still be believed where the rest of its
//! document cannot.

use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// How many presses have changed a tie.
///
/// In a document the number is followed by its own checksum: where another part of the document
/// is damaged, it still tells how far the copy before it is behind.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Presses(pub u64);

const FIELD: &str = "presses";
const CHECKSUM: &str = " crc32:";

impl Presses {
    /// One more.
    pub const fn add(&mut self) {
        self.0 = self.0.saturating_add(1);
    }

    /// Whether there was none.
    pub const fn is_none(&self) -> bool {
        self.0 == 0
    }

    /// The number in a document that is otherwise not believed; `None` when it is damaged too.
    pub(super) fn salvage(damaged: &[u8]) -> Option<Self> {
        let text = String::from_utf8_lossy(damaged);
        let (_, rest) = text.split_once(&format!("\"{FIELD}\": \""))?;
        Self::parse(rest.split_once('"')?.0)
    }

    fn parse(text: &str) -> Option<Self> {
        let (number, _) = text.split_once(CHECKSUM)?;
        let presses = Self(number.parse().ok()?);
        (presses.guarded() == text).then_some(presses)
    }

    fn guarded(self) -> String {
        let number = self.0.to_string();
        let crc = crc32fast::hash(format!("{FIELD} {number}").as_bytes());
        format!("{number}{CHECKSUM}{crc:08x}")
    }
}

impl Serialize for Presses {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.guarded())
    }
}

impl<'de> Deserialize<'de> for Presses {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        Self::parse(&text).ok_or_else(|| {
            serde::de::Error::custom(format!("{text:?} is not a number with its checksum"))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_damage_makes_another_number_of_it() {
        let document = format!("{{\"{FIELD}\": \"{}\", \"leg\": 7}}", Presses(19).guarded());
        assert_eq!(Presses::salvage(document.as_bytes()), Some(Presses(19)));
        for at in 0..document.len() {
            for mask in [1, 2, 4, 8, 16, 32, 64, 128] {
                let mut damaged = document.clone().into_bytes();
                damaged[at] ^= mask;
                let salvaged = Presses::salvage(&damaged);
                assert!(salvaged.is_none_or(|presses| presses == Presses(19)));
            }
        }
        assert_eq!(Presses::salvage(b"{}"), None);
    }
}
