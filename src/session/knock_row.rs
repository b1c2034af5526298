//! The row of knocks that is under way, and how all stood before it.

use super::auto_advance::AutoAdvance;
use super::tie_in_hand::Stand;

/// What is known of the row that is being knocked.
#[derive(Debug, Default)]
pub(super) struct Knocking {
    /// Whether the row acts when no more knocks can come.
    pub waits: bool,
    /// How all stood before it acted, where that can be turned back.
    pub before: Option<Before>,
}

/// How all stood before a row of knocks acted.
#[derive(Debug)]
pub(super) struct Before {
    pub tie: Stand,
    pub auto_advance: AutoAdvance,
    pub was_paused: bool,
}

impl Knocking {
    /// Something else was pressed: what it did is not turned back by a knock.
    pub fn forget(&mut self) {
        self.before = None;
    }
}
