//! A tie as it lies on the shelf: how it stands, how far it is, when it was touched.

use jiff::Timestamp;
use strum::IntoStaticStr;

use super::Tie;
use crate::guide::{AtOnce, LegsLaid, Place, Script};

/// Whether a tie waits for its tyer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum TieStatus {
    /// It waits to be taken up.
    Waiting,
    /// Everything is done, to the last step.
    Finished,
    /// It was put away before it was finished.
    #[strum(serialize = "away")]
    PutAway,
}

/// A tie, and what follows from its plan and its place.
#[derive(Clone, Debug)]
pub struct Shelved {
    /// The tie as it was last saved.
    pub tie: Tie,
    /// Where it stands, or the place nearest to it that this version has.
    pub place: Place,
    /// Whether it stands at the last step.
    pub is_done: bool,
    /// How many of its legs are laid.
    pub progress: LegsLaid,
    /// Whole days since it was touched; never less than 0.
    pub days: i64,
    /// Whole minutes since then: ties of one day are told apart by them.
    pub minutes: i64,
    /// Whether the log has it.
    pub is_logged: bool,
}

impl Shelved {
    /// What follows from a tie at a time.
    pub fn new(tie: Tie, now: Timestamp, is_logged: bool) -> Self {
        let script = Script::new(tie.plan.clone(), AtOnce::default());
        let place = script.settle(tie.place);
        let since = now.duration_since(tie.touched);
        Self {
            is_done: place == script.last(),
            progress: script.progress(place),
            days: (since.as_hours() / 24).max(0),
            minutes: since.as_mins().max(0),
            tie,
            place,
            is_logged,
        }
    }

    /// Whether it waits, is done, or was put away.
    pub fn status(&self) -> TieStatus {
        if self.is_done {
            TieStatus::Finished
        } else if self.tie.is_put_away {
            TieStatus::PutAway
        } else {
            TieStatus::Waiting
        }
    }

    /// Legs laid in a hundred, rounded down: 100 only when all are.
    pub fn per_cent(&self) -> u32 {
        let share = u64::from(self.progress.laid) * 100 / u64::from(self.progress.legs.max(1));
        u32::try_from(share).unwrap_or(100)
    }
}
