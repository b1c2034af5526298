//! How a text fares at the service.

use std::mem;
use std::time::Instant;

use super::super::engine::{MessageKey, SpeechEvent};
use super::super::events::{Utterance, VoiceEvent};
use super::super::worker::WorkerId;
use super::state::{CallKind, PendingCall, Proof, Supervisor, VoiceState};

impl Supervisor {
    /// The service has accepted the text. What it reported during the call counts from now on.
    pub(super) fn accepted(&mut self, id: Utterance, key: Option<MessageKey>) {
        let early = self
            .worker_in_use()
            .map(|worker| mem::take(&mut worker.early))
            .unwrap_or_default();
        let Some(speaking) = &mut self.speaking else {
            return;
        };
        if speaking.request.id != id {
            return;
        }
        speaking.due = Some(Instant::now() + self.timeouts.beginning);
        let Some(key) = key else {
            // This service reports nothing about its speech, so the text counts as said at once.
            self.began();
            return self.ended();
        };
        speaking.key = Some(key.clone());
        for event in early {
            if event.key() == Some(&key) {
                self.follow(&event);
            }
        }
    }

    pub(super) fn heard(&mut self, id: WorkerId, event: SpeechEvent) {
        if self.in_use != Some(id) {
            return;
        }
        if let SpeechEvent::NoSuchVoice(wanted) = event {
            return self.tell(VoiceEvent::NoSuchVoice(wanted));
        }
        let current = self
            .speaking
            .as_ref()
            .and_then(|speaking| speaking.key.as_ref());
        if current.is_some() && current == event.key() {
            self.follow(&event);
        } else if let Some(worker) = self.worker_in_use()
            && let Some(PendingCall {
                kind: CallKind::Speak(_),
                ..
            }) = &worker.call
        {
            worker.early.push(event);
        }
    }

    fn follow(&mut self, event: &SpeechEvent) {
        match event {
            SpeechEvent::Began(_) => self.began(),
            SpeechEvent::Ended(_) => self.ended(),
            SpeechEvent::Stopped(_) => {
                if let Some(speaking) = self.speaking.take() {
                    self.tell(VoiceEvent::CutOff(speaking.request.id));
                }
            }
            // This was passed on when it came, whatever is being said.
            SpeechEvent::NoSuchVoice(_) => {}
        }
    }

    fn began(&mut self) {
        let speed = self.speech.words_per_minute;
        let Some(speaking) = &mut self.speaking else {
            return;
        };
        let expected = speaking.request.text.expected(speed);
        speaking.due = Some(Instant::now() + self.timeouts.ending.max(expected * 2));
        speaking.has_begun = true;
        let id = speaking.request.id;
        if let VoiceState::Lost(Proof::Beginning) = self.state {
            self.found();
        }
        self.tell(VoiceEvent::Began(id));
    }

    fn ended(&mut self) {
        let Some(speaking) = self.speaking.take() else {
            return;
        };
        self.tell(VoiceEvent::Ended(speaking.request.id));
        if let VoiceState::Lost(_) = self.state {
            self.found();
        }
    }
}
