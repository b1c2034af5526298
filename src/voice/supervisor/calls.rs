//! What the worker in charge is asked, and what it answers.

use std::mem;
use std::time::Instant;

use super::super::worker::{Answer, Order, WorkerId};
use super::super::{Fit, Loss, News, Trouble};
use super::{Asked, Call, Speaking, Supervisor};

impl Supervisor {
    /// Hands the worker in charge its next order, if it is free and there is something to do.
    pub(super) fn give_order(&mut self) {
        let now = Instant::now();
        let Some(chief) = self.in_charge.and_then(|id| self.crew.get(&id)) else {
            return;
        };
        if chief.call.is_some() || self.hold_until.is_some_and(|until| until > now) {
            return;
        }
        let new_manner = chief.manner.as_ref() != Some(&self.manner);
        let (what, order) = if mem::take(&mut self.hush) {
            (Asked::Stop, Order::Stop)
        } else if new_manner {
            let manner = self.manner.clone();
            (Asked::Manner(manner.clone()), Order::Manner(manner))
        } else if let Some(wish) = self.wish.take() {
            let (id, text) = (wish.id, wish.text.clone());
            self.speaking = Some(Speaking {
                wish,
                key: None,
                begun: false,
                due: None,
                check_at: now + self.patience.check,
            });
            (Asked::Speak(id), Order::Speak(text))
        } else if mem::take(&mut self.list_voices) {
            (Asked::Voices, Order::Voices)
        } else if self
            .speaking
            .as_ref()
            .is_some_and(|speaking| speaking.check_at <= now)
        {
            (Asked::Check, Order::Check)
        } else {
            if self.speaking.is_none() {
                self.opened();
            }
            return;
        };
        let slow = match &what {
            Asked::Voices => true,
            Asked::Manner(manner) => manner.names_a_voice(),
            _ => false,
        };
        let due = now
            + if slow {
                self.patience.listing
            } else {
                self.patience.answer
            };
        if let Some(chief) = self.chief() {
            chief.early.clear();
            chief.call = Some(Call { what, due });
            // A worker that has ended reports so: the loss is seen to then.
            let _ = chief.orders.as_ref().map(|orders| orders.send(order));
        }
    }

    pub(super) fn answered(&mut self, id: WorkerId, answer: Result<Answer, Trouble>) {
        let Some(worker) = self.crew.get_mut(&id) else {
            return;
        };
        let Some(Call { what, .. }) = worker.call.take() else {
            return;
        };
        if let (Asked::Manner(manner), Ok(_)) = (&what, &answer) {
            worker.manner = Some(manner.clone());
        }
        if worker.orders.is_none() {
            return;
        }
        if self.in_charge != Some(id) {
            let alive = answer.is_ok();
            match (what, answer) {
                (Asked::Voices, Ok(Answer::Voices(list))) => self.tell(News::Voices(list)),
                (Asked::Voices, Err(_)) => self.list_voices = true,
                _ => {}
            }
            return self.returned(id, alive);
        }
        match answer {
            Ok(answer) => self.succeeded(&what, answer),
            Err(trouble) => self.failed(&what, trouble),
        }
    }

    pub(super) fn succeeded(&mut self, what: &Asked, answer: Answer) {
        match answer {
            Answer::Opened => self.opened(),
            Answer::Manner(Fit::NoSuchVoice(wanted)) => self.tell(News::NoSuchVoice(wanted)),
            Answer::Voices(list) => self.tell(News::Voices(list)),
            Answer::Spoken(key) => {
                if let Asked::Speak(id) = what {
                    self.accepted(*id, key);
                }
            }
            Answer::Checked => {
                let next = Instant::now() + self.patience.check;
                if let Some(speaking) = &mut self.speaking {
                    speaking.check_at = next;
                }
            }
            Answer::Manner(Fit::AsWished) | Answer::Stopped => {}
        }
    }

    pub(super) fn failed(&mut self, what: &Asked, trouble: Trouble) {
        match (what, trouble) {
            (Asked::Open, Trouble::Gone(why) | Trouble::Refused(why)) => {
                self.lose(&Loss::NoService(why));
            }
            (Asked::Voices, Trouble::Refused(_)) => self.tell(News::Voices(Vec::new())),
            (_, Trouble::Refused(why)) => self.lose(&Loss::Refused(why)),
            (_, Trouble::Gone(why)) => {
                self.list_voices |= matches!(what, Asked::Voices);
                self.lose(&Loss::Broken(why));
            }
        }
    }
}
