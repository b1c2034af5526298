//! The name of an order on disk.

use std::fmt;

use super::TieId;

/// The name of an order: 6 to 32 of the letters a to z and digits, as ties have them.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct OrderId(TieId);

impl OrderId {
    /// Draws a new name.
    pub(super) fn draw() -> Self {
        Self(TieId::draw())
    }

    /// Reads a name as a person types it; none when no order can have it.
    pub fn parse(text: &str) -> Option<Self> {
        TieId::parse(text).ok().map(Self)
    }

    /// The name as text.
    pub fn as_str(&self) -> &str {
        self.0.as_str()
    }
}

impl From<TieId> for OrderId {
    /// The names of the files are read as those of ties are.
    fn from(id: TieId) -> Self {
        Self(id)
    }
}

impl fmt::Display for OrderId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}
