//! The workers: started, put in use, left behind in a call, taken back and released.

use std::sync::Arc;
use std::time::Instant;

use super::super::events::{VoiceError, VoiceEvent};
use super::super::worker::{self, WorkerId};
use super::state::{
    CallKind, PendingCall, Proof, Speaking, Supervisor, SupervisorMessage, VoiceState, Worker,
};

/// How many worker threads there may be at once, those left behind in a call included.
pub(in super::super) const MOST_WORKERS: usize = 4;

/// How often a speech that began and never ended is begun: it may have been heard, and nobody
/// wants to hear the same step for ever.
const MOST_UNENDED: u8 = 2;

impl Supervisor {
    /// Starts a worker and puts it in use, if there is room for one.
    pub(super) fn start_worker(&mut self) {
        self.retry_at = None;
        if self.workers.len() >= MOST_WORKERS {
            return;
        }
        self.last_worker += 1;
        let id = self.last_worker;
        let inbox = self.inbox.clone();
        let tell = move |event| {
            // A supervisor that has ended listens no more, and has released its workers.
            let _ = inbox.send(SupervisorMessage::Worker(id, event));
        };
        match worker::start(id, Arc::clone(&self.make), tell) {
            Ok(commands) => {
                let call = PendingCall {
                    kind: CallKind::Open,
                    due: Instant::now() + self.timeouts.opening,
                };
                let worker = Worker {
                    commands: Some(commands),
                    call: Some(call),
                    speech: None,
                    early: Vec::new(),
                };
                self.workers.insert(id, worker);
                self.in_use = Some(id);
            }
            Err(error) => self.lose(&VoiceError::NoService(error.to_string())),
        }
    }

    fn release(&mut self, id: WorkerId) {
        if let Some(worker) = self.workers.get_mut(&id) {
            worker.commands = None;
        }
    }

    /// The worker's thread has ended. If that was the one in use, its voice has panicked.
    pub(super) fn gone(&mut self, id: WorkerId) {
        self.workers.remove(&id);
        if self.in_use == Some(id) {
            self.lose(&VoiceError::Broken("its voice failed".to_owned()));
        } else if self.in_use.is_none() && self.retry_at.is_none() {
            self.retry_at = Some(Instant::now() + self.timeouts.retry);
        }
    }

    /// A worker that was left behind in its call has had its answer after all.
    pub(super) fn returned(&mut self, id: WorkerId, is_alive: bool) {
        let has_voice = self
            .in_use
            .is_some_and(|id| self.workers.get(&id).is_some_and(Worker::is_open));
        if !is_alive || has_voice {
            self.release(id);
            if self.in_use.is_none() {
                let soon = Instant::now() + self.timeouts.retry;
                self.retry_at = Some(self.retry_at.map_or(soon, |at| at.min(soon)));
            }
            return;
        }
        self.in_use = Some(id);
        self.retry_at = None;
        // The call that hung may have begun to say an old text, which has to be stopped.
        self.hush = self.request.is_none();
        self.opened();
    }

    /// There is a connection again. Where a text waits, the voice counts as found only when that
    /// text is heard.
    pub(super) fn opened(&mut self) {
        match self.state {
            VoiceState::Starting => self.found(),
            VoiceState::Lost(Proof::Beginning) if self.request.is_none() => self.found(),
            VoiceState::Ready | VoiceState::Lost(_) => {}
        }
    }

    pub(super) fn found(&mut self) {
        self.state = VoiceState::Ready;
        self.tell(VoiceEvent::Ready);
    }

    /// The voice is lost, or still lost. Says so the first time, keeps what was being said as the
    /// request, and decides whether the connection is worth keeping.
    pub(super) fn lose(&mut self, error: &VoiceError) {
        let is_first = !matches!(self.state, VoiceState::Lost(_));
        if is_first {
            self.state = VoiceState::Lost(match error {
                VoiceError::NeverEnded => Proof::Ending,
                _ => Proof::Beginning,
            });
            self.tell(VoiceEvent::Lost(error.clone()));
        }
        if let Some(Speaking { mut request, .. }) = self.speaking.take() {
            request.unended += u8::from(*error == VoiceError::NeverEnded);
            if request.unended < MOST_UNENDED {
                self.request = Some(request);
            } else {
                self.hush = true;
                self.tell(VoiceEvent::CutOff(request.id));
            }
        }
        let now = Instant::now();
        match error {
            VoiceError::Refused(_) => self.hold_until = Some(now + self.timeouts.retry),
            // A new connection may help the first time. When that does not help either, the old one
            // is as good as any.
            VoiceError::NeverBegan | VoiceError::NeverEnded if !is_first => {}
            VoiceError::NeverBegan | VoiceError::NeverEnded => self.replace_worker(now),
            VoiceError::NoAnswer => {
                // The worker is left to its call and not released, since the call may still return.
                self.in_use = None;
                let is_opening = self.workers.values().any(|worker| !worker.is_open());
                self.retry_at = Some(match (is_opening, is_first) {
                    (true, _) => now + self.timeouts.slow_retry,
                    (false, true) => now,
                    (false, false) => now + self.timeouts.retry,
                });
            }
            VoiceError::Broken(_) if is_first => self.replace_worker(now),
            VoiceError::Broken(_) | VoiceError::NoService(_) => {
                self.replace_worker(now + self.timeouts.retry);
            }
        }
    }

    fn replace_worker(&mut self, at: Instant) {
        if let Some(id) = self.in_use.take() {
            self.release(id);
        }
        self.retry_at = Some(at);
    }
}
