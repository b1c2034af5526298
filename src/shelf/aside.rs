//! What a tie's document keeps beside the knot and the place: whether it is put away, and the
//! time worked at it.

use super::{Shelf, ShelfError, Tie, TieId, Worked};

const PUT_AWAY: &str = "put_away";
const WORKED: &str = "worked";

impl Tie {
    /// Whether the tyer has put it away: it stays on the shelf and waits no more.
    pub fn is_put_away(&self) -> bool {
        self.extras
            .get(PUT_AWAY)
            .and_then(serde_json::Value::as_bool)
            == Some(true)
    }

    /// Puts it away, or out again.
    pub fn put_away(&mut self, away: bool) {
        if away {
            self.extras.insert(PUT_AWAY.to_owned(), true.into());
        } else {
            self.extras.remove(PUT_AWAY);
        }
    }

    /// The time worked at it.
    pub fn worked(&self) -> Worked {
        self.extras
            .get(WORKED)
            .map(Worked::from_json)
            .unwrap_or_default()
    }

    /// Notes the time worked at it.
    pub fn set_worked(&mut self, worked: &Worked) {
        self.extras.insert(WORKED.to_owned(), worked.to_json());
    }

    /// Forgets what belongs to this tie alone and not to the next of the same knot.
    pub(super) fn as_new(&mut self) {
        self.extras.remove(PUT_AWAY);
        self.extras.remove(WORKED);
    }
}

impl Shelf {
    /// Puts a tie away, or out again. Its place among the others stays.
    ///
    /// # Errors
    /// As [`Shelf::take_up`] and [`Shelf::save`].
    pub fn put_away(&self, id: &TieId, away: bool) -> Result<Tie, ShelfError> {
        self.rewrite(id, |tie| tie.put_away(away))
    }
}
