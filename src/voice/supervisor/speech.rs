//! How a text fares at the service.

use std::mem;
use std::time::Instant;

use super::super::worker::WorkerId;
use super::super::{Heard, MessageKey, News, Utterance};
use super::{Asked, Call, Proof, Standing, Supervisor};

impl Supervisor {
    /// The service has taken the text. What was heard of it meanwhile counts now.
    pub(super) fn accepted(&mut self, id: Utterance, key: Option<MessageKey>) {
        let early = self
            .chief()
            .map(|chief| mem::take(&mut chief.early))
            .unwrap_or_default();
        let Some(speaking) = &mut self.speaking else {
            return;
        };
        if speaking.wish.id != id {
            return;
        }
        speaking.due = Some(Instant::now() + self.patience.beginning);
        let Some(key) = key else {
            // A service that tells nothing: taken for said, since nothing more will be known.
            self.began();
            return self.ended();
        };
        speaking.key = Some(key.clone());
        for heard in early {
            if heard.key() == Some(&key) {
                self.follow(&heard);
            }
        }
    }

    pub(super) fn heard(&mut self, id: WorkerId, heard: Heard) {
        if self.in_charge != Some(id) {
            return;
        }
        if let Heard::NoSuchVoice(wanted) = heard {
            return self.tell(News::NoSuchVoice(wanted));
        }
        let current = self
            .speaking
            .as_ref()
            .and_then(|speaking| speaking.key.as_ref());
        if current.is_some() && current == heard.key() {
            self.follow(&heard);
        } else if let Some(chief) = self.chief()
            && let Some(Call {
                what: Asked::Speak(_),
                ..
            }) = &chief.call
        {
            chief.early.push(heard);
        }
    }

    pub(super) fn follow(&mut self, heard: &Heard) {
        match heard {
            Heard::Began(_) => self.began(),
            Heard::Ended(_) => self.ended(),
            Heard::Stopped(_) => {
                if let Some(speaking) = self.speaking.take() {
                    self.tell(News::CutOff(speaking.wish.id));
                }
            }
            // Told when it was heard, whatever is being said.
            Heard::NoSuchVoice(_) => {}
        }
    }

    pub(super) fn began(&mut self) {
        let pace = self.manner.words_per_minute;
        let Some(speaking) = &mut self.speaking else {
            return;
        };
        let expected = speaking.wish.text.expected(pace);
        speaking.due = Some(Instant::now() + self.patience.ending.max(expected * 2));
        speaking.begun = true;
        let id = speaking.wish.id;
        if let Standing::Lost(Proof::Beginning) = self.standing {
            self.found();
        }
        self.tell(News::Began(id));
    }

    pub(super) fn ended(&mut self) {
        let Some(speaking) = self.speaking.take() else {
            return;
        };
        self.tell(News::Ended(speaking.wish.id));
        if let Standing::Lost(_) = self.standing {
            self.found();
        }
    }
}
