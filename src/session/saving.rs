//! Whether what was done is on disk: one answer for every face.

use std::collections::BTreeMap;
use std::time::Duration;

use crate::shelf::{Kept, Presses, ShelfError, Tie, TieId};
use crate::words::{Sentence, Words};

/// How long after a press it is shown that it is not on disk yet.
pub(super) const SHOWN_AFTER: Duration = Duration::from_secs(1);
/// How much longer that may last until it is said as well.
const SAID_AFTER: Duration = Duration::from_secs(4);

/// What is known of the disk.
#[derive(Debug, Default)]
pub(super) struct Saving {
    /// Each tie whose newest state is not known to be on disk.
    unsaved: BTreeMap<TieId, Behind>,
    lasts: Lasts,
    failure: Option<ShelfError>,
    /// Why nothing can be saved of the tie in hand, of which nothing had to be saved yet.
    foreseen: Option<ShelfError>,
    /// There is no shelf to save anything on.
    is_nowhere: bool,
    /// Something was to be saved all the same.
    is_lost: bool,
}

/// How far the disk is behind a tie.
#[derive(Clone, Copy, Debug)]
struct Behind {
    /// The presses of the newest state.
    asked: Presses,
    /// Those of the state that is on disk.
    saved: Presses,
}

impl Behind {
    /// Whether more than the last press is not on disk.
    const fn by_several(self) -> bool {
        self.asked.0 > self.saved.0.saturating_add(1)
    }
}

/// How long the oldest state has been waiting.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Lasts {
    /// No longer than a save may take.
    #[default]
    AMoment,
    /// Long enough to be shown.
    Shown,
    /// Long enough to have been said.
    Said,
}

/// What comes of a report: what is to be said, and when to look again.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct SavingNews {
    pub(super) say: Option<Sentence>,
    pub(super) look_after: Option<Duration>,
}

impl Saving {
    /// A state is to be saved. Gives when to look whether it is, where nobody looks yet.
    pub(super) fn asked(&mut self, tie: &Tie) -> Option<Duration> {
        if self.is_nowhere {
            self.is_lost = true;
            return None;
        }
        let was_saved = self.unsaved.is_empty();
        let asked = tie.presses;
        self.unsaved
            .entry(tie.id().clone())
            .and_modify(|behind| behind.asked = asked)
            .or_insert(Behind {
                asked,
                saved: Presses(asked.0.saturating_sub(1)),
            });
        (was_saved && self.failure.is_none()).then_some(SHOWN_AFTER)
    }

    /// A press cannot wait any longer until the one before it is on disk. From now on it is shown, and
    /// that is so until no more than the last press is not there.
    pub(super) fn goes_on(&mut self) -> SavingNews {
        if self.unsaved.is_empty() || self.is_late() {
            return SavingNews::default();
        }
        self.lasts = Lasts::Shown;
        SavingNews {
            say: None,
            look_after: Some(SAID_AFTER),
        }
    }

    /// Nothing can be saved of the tie that comes into hand, for this reason; or there is none known.
    pub(super) fn foresee(&mut self, error: Option<ShelfError>) {
        self.foreseen = error;
    }

    /// There is nothing to save on, for this reason. What was asked to be saved before that was known
    /// cannot be either.
    pub(super) fn nowhere(&mut self, error: ShelfError) {
        self.is_nowhere = true;
        self.is_lost |= !self.unsaved.is_empty();
        self.unsaved.clear();
        self.lasts = Lasts::AMoment;
        self.failure = Some(error);
    }

    /// Whether something was to be saved where there is nothing to save on.
    pub(super) const fn is_lost(&self) -> bool {
        self.is_nowhere && self.is_lost
    }

    /// The keeper reports. Said is when saving fails for the first time, and when it works again.
    pub(super) fn kept(&mut self, kept: &Kept, words: &Words) -> SavingNews {
        match kept {
            Kept::Saved { id, presses, .. } => {
                if let Some(behind) = self.unsaved.get_mut(id) {
                    behind.saved = *presses;
                    if behind.asked <= *presses {
                        self.unsaved.remove(id);
                    }
                }
                // What is shown of a slow disk stands until it has caught up.
                let is_slow = self.failure.is_none() && self.lasts != Lasts::AMoment;
                if is_slow && self.unsaved.values().any(|behind| behind.by_several()) {
                    return SavingNews {
                        say: None,
                        look_after: (self.lasts == Lasts::Shown).then_some(SAID_AFTER),
                    };
                }
                let was_refused = self.failure.take().or(self.foreseen.take()).is_some();
                let was_told = was_refused || self.lasts == Lasts::Said;
                self.lasts = Lasts::AMoment;
                SavingNews {
                    say: was_told.then(|| words.notice("saving-again", &[])),
                    look_after: (!self.unsaved.is_empty()).then_some(SHOWN_AFTER),
                }
            }
            // It is told as every trouble of the shelf is.
            Kept::SetAside(_) => SavingNews::default(),
            Kept::Failed { error, .. } => {
                let sentence = words.not_saved(error);
                let is_first = self.failure.replace(error.clone()).is_none();
                SavingNews {
                    say: is_first.then_some(sentence),
                    look_after: None,
                }
            }
        }
    }

    /// The time has come to look whether everything is saved.
    pub(super) fn look(&mut self, words: &Words) -> SavingNews {
        if self.unsaved.is_empty() || self.failure.is_some() {
            return SavingNews::default();
        }
        match self.lasts {
            Lasts::AMoment => {
                self.lasts = Lasts::Shown;
                SavingNews {
                    say: None,
                    look_after: Some(SAID_AFTER),
                }
            }
            Lasts::Shown => {
                self.lasts = Lasts::Said;
                SavingNews {
                    say: Some(words.notice("saving-slow", &[])),
                    look_after: None,
                }
            }
            Lasts::Said => SavingNews::default(),
        }
    }

    /// What stands among the notices.
    pub(super) fn sentence(&self, words: &Words) -> Option<Sentence> {
        match (&self.failure, self.lasts) {
            (Some(error), _) if self.is_nowhere => self.is_lost.then(|| words.saved_nowhere(error)),
            (Some(error), _) => Some(words.not_saved(error)),
            (None, Lasts::AMoment) => {
                let foreseen = self.foreseen.as_ref();
                foreseen.map(|error| words.nothing_saved(error))
            }
            (None, Lasts::Shown | Lasts::Said) => Some(words.notice("saving-slow", &[])),
        }
    }

    /// Whether it is told that saving takes long, or fails.
    pub(super) const fn is_late(&self) -> bool {
        self.failure.is_some() || !matches!(self.lasts, Lasts::AMoment)
    }

    /// Why nothing can be saved, as far as that is known.
    pub(super) const fn failure(&self) -> Option<&ShelfError> {
        self.failure.as_ref()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::Plan;
    use crate::session::new_tie;

    fn tie(presses: u64) -> Tie {
        let mut tie = new_tie(&Plan::read("5", "7", "1", "1").unwrap());
        tie.presses = Presses(presses);
        tie
    }

    fn saved(tie: &Tie, presses: u64) -> Kept {
        Kept::Saved {
            id: tie.id().clone(),
            touched: tie.touched,
            presses: Presses(presses),
        }
    }

    #[test]
    fn a_slow_disk_is_shown_after_a_second_and_said_once_when_it_lasts() {
        let (mut saving, words, tie) = (Saving::default(), Words::english(), tie(3));
        assert_eq!(saving.asked(&tie), Some(SHOWN_AFTER));
        assert_eq!(saving.asked(&tie), None, "somebody looks already");
        assert_eq!(saving.sentence(&words), None);
        assert_eq!(saving.look(&words).look_after, Some(SAID_AFTER));
        assert!(saving.sentence(&words).is_some());
        assert!(saving.look(&words).say.is_some());
        assert_eq!(saving.look(&words), SavingNews::default());
        // An older state that has come to disk is not the newest.
        let news = saving.kept(&saved(&tie, 2), &words);
        assert_eq!(news.look_after, Some(SHOWN_AFTER));
        let news = saving.kept(&saved(&tie, 3), &words);
        assert_eq!(news, SavingNews::default());
        assert_eq!(saving.sentence(&words), None);
    }

    #[test]
    fn once_a_press_has_gone_on_unsaved_it_is_shown_until_the_disk_is_one_press_behind() {
        let (mut saving, words) = (Saving::default(), Words::english());
        let mut later = tie(3);
        assert_eq!(saving.goes_on(), SavingNews::default(), "all is saved");
        saving.asked(&later);
        assert_eq!(saving.goes_on().look_after, Some(SAID_AFTER));
        assert!(saving.is_late());
        later.presses = Presses(5);
        saving.asked(&later);
        let news = saving.kept(&saved(&later, 3), &words);
        assert_eq!(news.look_after, Some(SAID_AFTER));
        assert!(saving.sentence(&words).is_some(), "two presses behind");
        saving.kept(&saved(&later, 4), &words);
        assert_eq!(saving.sentence(&words), None);
        // Once said it is told that all is well, and not before.
        saving.goes_on();
        assert!(saving.look(&words).say.is_some());
        later.presses = Presses(7);
        saving.asked(&later);
        assert_eq!(
            saving.kept(&saved(&later, 5), &words),
            SavingNews::default()
        );
        let news = saving.kept(&saved(&later, 7), &words);
        assert_eq!(news.say, Some(words.notice("saving-again", &[])));
    }

    #[test]
    fn a_disk_that_refuses_is_said_once_and_shown_until_it_takes_it() {
        let (mut saving, words, tie) = (Saving::default(), Words::english(), tie(1));
        saving.asked(&tie);
        let refused = |attempts| Kept::Failed {
            id: tie.id().clone(),
            error: ShelfError::NoHome,
            attempts,
        };
        assert!(saving.kept(&refused(1), &words).say.is_some());
        assert_eq!(saving.kept(&refused(2), &words).say, None);
        assert!(saving.sentence(&words).is_some());
        let again = saving.kept(&saved(&tie, 1), &words);
        assert_eq!(again.say, Some(words.notice("saving-again", &[])));
        assert_eq!(saving.sentence(&words), None);
    }

    #[test]
    fn where_there_is_no_place_for_ties_what_is_done_is_lost_and_shown_to_be() {
        let (words, tie) = (Words::english(), tie(1));
        for is_told_first in [true, false] {
            let mut saving = Saving::default();
            if is_told_first {
                saving.nowhere(ShelfError::NoHome);
                assert_eq!((saving.is_lost(), saving.sentence(&words)), (false, None));
                assert_eq!(saving.asked(&tie), None);
            } else {
                saving.asked(&tie);
                saving.nowhere(ShelfError::NoHome);
                assert_eq!(saving.look(&words), SavingNews::default());
            }
            assert!(saving.is_lost());
            let told = words.saved_nowhere(&ShelfError::NoHome);
            assert_eq!(saving.sentence(&words), Some(told));
        }
    }
}
