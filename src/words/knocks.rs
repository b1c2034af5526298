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

    /// How loud it is now, in decibels of full scale; none where no microphone tells it.
    pub fn knocks_level(&self, level: Option<f32>) -> Sentence {
        let Some(level) = level else {
            return self.notice("knocks-level-none", &[]);
        };
        #[expect(clippy::cast_possible_truncation, reason = "a hundred and some")]
        let under = (-level).round().max(0.0) as i32;
        self.sentence("knocks-level", &fluent_args! { "under" => under })
    }
}

/// What stands out less is not taken every time, in decibels.
const FAINT: f32 = 10.0;
