//! What the worker in use is told to do, and what it replies.

use std::mem;
use std::time::Instant;

use super::super::engine::CallError;
use super::super::events::{VoiceError, VoiceEvent};
use super::super::speech_settings::VoiceMatch;
use super::super::worker::{WorkerCommand, WorkerId, WorkerReply};
use super::state::{CallKind, PendingCall, Speaking, Supervisor};

impl Supervisor {
    /// Hands the worker in use its next command, if it is free and there is something to do.
    pub(super) fn give_command(&mut self) {
        let now = Instant::now();
        let Some(worker) = self.in_use.and_then(|id| self.workers.get(&id)) else {
            return;
        };
        if worker.call.is_some() || self.hold_until.is_some_and(|until| until > now) {
            return;
        }
        let has_other_settings = worker.speech.as_ref() != Some(&self.speech);
        let is_check_due = |speaking: &Speaking| speaking.check_at <= now;
        let (kind, command) = if mem::take(&mut self.hush) {
            (CallKind::Stop, WorkerCommand::Stop)
        } else if has_other_settings {
            let speech = self.speech.clone();
            (
                CallKind::SetSpeech(speech.clone()),
                WorkerCommand::SetSpeech(speech),
            )
        } else if let Some(request) = self.request.take() {
            let (id, text) = (request.id, request.text.clone());
            self.speaking = Some(Speaking {
                request,
                key: None,
                has_begun: false,
                due: None,
                check_at: now + self.timeouts.check,
            });
            (CallKind::Speak(id), WorkerCommand::Speak(text))
        } else if mem::take(&mut self.list_voices) {
            (CallKind::Voices, WorkerCommand::Voices)
        } else if self.speaking.as_ref().is_some_and(is_check_due) {
            (CallKind::Check, WorkerCommand::Check)
        } else {
            if self.speaking.is_none() {
                self.opened();
            }
            return;
        };
        let lists_voices = match &kind {
            CallKind::Voices => true,
            CallKind::SetSpeech(speech) => speech.named().is_some(),
            _ => false,
        };
        let timeout = if lists_voices {
            self.timeouts.listing
        } else {
            self.timeouts.answer
        };
        if let Some(worker) = self.worker_in_use() {
            worker.early.clear();
            let due = now + timeout;
            worker.call = Some(PendingCall { kind, due });
            // A worker whose thread has ended reports that itself, and the loss is dealt with then.
            let _ = worker
                .commands
                .as_ref()
                .map(|commands| commands.send(command));
        }
    }

    pub(super) fn replied(&mut self, id: WorkerId, reply: Result<WorkerReply, CallError>) {
        let Some(worker) = self.workers.get_mut(&id) else {
            return;
        };
        let Some(PendingCall { kind, .. }) = worker.call.take() else {
            return;
        };
        if let (CallKind::SetSpeech(speech), Ok(_)) = (&kind, &reply) {
            worker.speech = Some(speech.clone());
        }
        if worker.commands.is_none() {
            return;
        }
        if self.in_use != Some(id) {
            let is_alive = reply.is_ok();
            match (kind, reply) {
                (CallKind::Voices, Ok(WorkerReply::Voices(list))) => {
                    self.tell(VoiceEvent::Voices(list));
                }
                (CallKind::Voices, Err(_)) => self.list_voices = true,
                _ => {}
            }
            return self.returned(id, is_alive);
        }
        match reply {
            Ok(reply) => self.succeeded(&kind, reply),
            Err(error) => self.failed(&kind, error),
        }
    }

    fn succeeded(&mut self, kind: &CallKind, reply: WorkerReply) {
        match reply {
            WorkerReply::Opened => self.opened(),
            WorkerReply::SpeechSet(VoiceMatch::NoSuchVoice(wanted)) => {
                self.tell(VoiceEvent::NoSuchVoice(wanted));
            }
            WorkerReply::Voices(list) => self.tell(VoiceEvent::Voices(list)),
            WorkerReply::Spoken(key) => {
                if let CallKind::Speak(id) = kind {
                    self.accepted(*id, key);
                }
            }
            WorkerReply::Checked => {
                let next = Instant::now() + self.timeouts.check;
                if let Some(speaking) = &mut self.speaking {
                    speaking.check_at = next;
                }
            }
            WorkerReply::SpeechSet(VoiceMatch::Found) | WorkerReply::Stopped => {}
        }
    }

    fn failed(&mut self, kind: &CallKind, error: CallError) {
        match (kind, error) {
            (CallKind::Open, CallError::Gone(reason) | CallError::Refused(reason)) => {
                self.lose(&VoiceError::NoService(reason));
            }
            (CallKind::Voices, CallError::Refused(_)) => self.tell(VoiceEvent::Voices(Vec::new())),
            (_, CallError::Refused(reason)) => self.lose(&VoiceError::Refused(reason)),
            (_, CallError::Gone(reason)) => {
                self.list_voices |= matches!(kind, CallKind::Voices);
                self.lose(&VoiceError::Broken(reason));
            }
        }
    }
}
