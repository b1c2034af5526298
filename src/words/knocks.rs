//! Words of knocks on the bench.

use fluent::fluent_args;

use super::{Sentence, Words};

impl Words {
    /// A row of knocks that was taken, and how far it stood out from the room, in decibels.
    pub fn knocks_taken(&self, number: u8, over_room: f32) -> Sentence {
        let clear = if over_room < FAINT { "faint" } else { "clear" };
        #[expect(clippy::cast_possible_truncation, reason = "some tens")]
        let over_room = over_room.round() as i32;
        let args = fluent_args! { "number" => number, "over" => over_room, "clear" => clear };
        self.sentence("knocks-taken", &args)
    }
}

/// What stands out less is not taken every time, in decibels.
const FAINT: f32 = 10.0;
