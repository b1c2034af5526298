//! A tie comes into hand, waits while the tyer looks at something else, and goes out of hand.

use std::time::Duration;

use super::controller::Session;
use super::effect::Effect;
use super::opening::InHand;
use super::tie_in_hand::TieInHand;
use crate::shelf::{ShelfError, ShelfReading, TieId};
use crate::words::{Detail, Remark, Spoken};

impl Session {
    /// A tie comes into hand, in place of one that was there, or is refused. Says which and where
    /// it stands.
    pub fn open(&mut self, found: Result<ShelfReading<InHand>, ShelfError>, now: Duration) {
        match found {
            Ok(in_hand) => self.take_in_hand(in_hand, now),
            Err(error) => {
                if let ShelfError::InUse { id } = &error {
                    self.refused = Some(id.clone());
                }
                let sentence = self.refuse(&error);
                self.tell(sentence.into());
            }
        }
    }

    /// Whether this tie was refused last since it is open elsewhere: the second press in a row
    /// for it is to look.
    pub fn may_look(&self, id: &TieId) -> bool {
        self.refused.as_ref() == Some(id)
    }

    /// A tie is in hand from now on.
    pub fn take_in_hand(&mut self, in_hand: ShelfReading<InHand>, now: Duration) {
        self.put_away();
        self.notices.shelf_anew();
        let (mut in_hand, troubles) = self.noted(in_hand);
        let lesson = in_hand.tie.lesson;
        let is_taught = lesson.is_some();
        self.words.set_detail(if is_taught {
            Detail::Teach
        } else {
            self.detail
        });
        self.refused = None;
        let error = in_hand.error.take();
        let (is_again, looks_only) = (in_hand.is_again, in_hand.looks_only);
        let is_begun_unkept = error.is_some() && !is_again;
        let unsaved = error.filter(|_| is_again);
        let cannot_be_saved = match &unsaved {
            Some(error) => {
                log::warn!("nothing of a tie can be saved: {}", error.cause());
                self.words.nothing_saved(error).into()
            }
            None => Spoken::default(),
        };
        self.notices.saving.foresee(unsaved);
        let mut tie = TieInHand::new(in_hand, self.at_once, self.checks, &self.words, now);
        let not_rigged = self.not_rigged(&tie).map(Spoken::from).unwrap_or_default();
        let piece = tie.tie().batch.as_ref();
        let piece = piece.map(|batch| self.words.piece_begun(batch, &tie.tie().plan));
        let walk = &mut tie.walk;
        let before = if is_again {
            let looking = if looks_only {
                self.words.remark(Remark::LookOnlySay)
            } else {
                Spoken::default()
            };
            let stands = self.words.say_taking_up(walk.script(), walk.place());
            looking.then(&stands)
        } else {
            let idea = lesson.map(|lesson| self.words.lesson_idea(lesson));
            idea.map(Spoken::from).unwrap_or_default()
        };
        let before = piece.map(Spoken::from).unwrap_or_default().then(&before);
        let said = troubles.then(&cannot_be_saved).then(&not_rigged);
        let said = said.then(&before).then(walk.say());
        if !before.is_empty() {
            walk.answer_with(before.into());
        }
        self.tie = Some(tie);
        self.is_before_the_eyes = true;
        // The keeper finds out once more, and tells.
        if is_begun_unkept {
            self.keep();
        }
        self.tell(said);
        self.begin_to_work(now);
    }

    /// The tie is before the eyes from now on.
    fn begin_to_work(&mut self, now: Duration) {
        self.effects.push(Effect::StayAwake(true));
        self.notices.paused(false);
        self.hold();
        self.auto_advance.begin(now);
    }

    /// The tyer looks at something else: settings, or the form of the log. The tie waits behind
    /// it.
    pub fn look_away(&mut self) {
        if let Some(tie) = &mut self.tie {
            tie.rest();
        }
        self.end_work();
    }

    /// The tyer comes back to the tie that waits: it says itself. `false` when none does.
    pub fn come_back(&mut self, now: Duration) -> bool {
        let Some(tie) = &mut self.tie else {
            return false;
        };
        tie.walk.reword(&self.words);
        self.is_before_the_eyes = true;
        self.say_step();
        self.begin_to_work(now);
        true
    }

    /// The tie goes out of hand, if one is.
    pub fn put_away(&mut self) {
        let Some(mut tie) = self.tie.take() else {
            return;
        };
        self.notices.saving.foresee(None);
        self.effects.extend(tie.let_go().map(Effect::PutAway));
        self.end_work();
    }

    fn end_work(&mut self) {
        self.is_before_the_eyes = false;
        self.effects.push(Effect::StayAwake(false));
        self.notices.paused(false);
        self.notices.screen_may_go_dark(None);
        self.hold();
    }
}
