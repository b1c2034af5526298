//! From one piece of several to the next.

use super::batch::time_of;
use super::tie_in_hand::TieInHand;
use crate::guide::{AtOnce, Script};
use crate::shelf::{Batch, Tie};
use crate::words::{Sentence, Words};

impl TieInHand {
    /// The next piece of the batch, when this one is done and one is to follow.
    pub fn next_piece(&self) -> Option<Tie> {
        let tie = self.tie();
        let is_due = self.may_be_logged() && tie.batch.as_ref().is_some_and(Batch::has_next);
        is_due.then(|| {
            let first = Script::new(tie.plan.clone(), AtOnce::default()).first();
            tie.again(first)
        })
    }

    /// What is said when a piece of a batch is done: how long it took, the mean, what the next
    /// takes. Nothing for a tie that is none of several.
    pub(super) fn piece_done(&self, words: &Words) -> Option<Sentence> {
        let tie = self.tie();
        let batch = tie.batch.as_ref()?;
        let mut pace = self.series().clone();
        let own = time_of(tie, None);
        if let Some(own) = own {
            pace.add(own);
        }
        let minutes = own.map(|own| own.minutes);
        Some(words.piece_done(batch, minutes, &pace))
    }
}
