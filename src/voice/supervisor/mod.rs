//! The thread that holds the requests and watches the workers.

mod calls;
mod speech;
mod state;
mod worker_pool;

use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender};
use std::time::Instant;

use super::events::VoiceError;
use super::worker::WorkerEvent;
use state::{SpeechRequest, Worker};

pub(super) use state::{Supervisor, SupervisorMessage};
#[cfg(test)]
pub(super) use worker_pool::MOST_WORKERS;

impl Supervisor {
    /// Works until it is closed.
    pub(super) fn run(mut self, messages: &Receiver<SupervisorMessage>) {
        self.start_worker();
        loop {
            let message = match self.next_deadline() {
                Some(deadline) => {
                    let left = deadline.saturating_duration_since(Instant::now());
                    match messages.recv_timeout(left) {
                        Ok(message) => Some(message),
                        Err(RecvTimeoutError::Timeout) => None,
                        Err(RecvTimeoutError::Disconnected) => return,
                    }
                }
                None => match messages.recv() {
                    Ok(message) => Some(message),
                    Err(_) => return,
                },
            };
            match message {
                Some(SupervisorMessage::Close(done)) => return self.close(messages, &done),
                Some(message) => self.take_in(message),
                None => self.act_on_deadlines(Instant::now()),
            }
            self.give_command();
        }
    }

    fn take_in(&mut self, message: SupervisorMessage) {
        match message {
            SupervisorMessage::Say(id, text) => {
                self.cut_off();
                self.hush = false;
                self.hold_until = None;
                self.request = Some(SpeechRequest {
                    id,
                    text,
                    unended: 0,
                });
            }
            SupervisorMessage::Hush => {
                self.cut_off();
                self.hush = true;
            }
            SupervisorMessage::SetSpeech(speech) => self.speech = speech,
            SupervisorMessage::Voices => self.list_voices = true,
            SupervisorMessage::Worker(id, WorkerEvent::Replied(reply)) => self.replied(id, reply),
            SupervisorMessage::Worker(id, WorkerEvent::Heard(event)) => self.heard(id, event),
            // These matter only while the supervisor closes.
            SupervisorMessage::Close(_) | SupervisorMessage::Worker(_, WorkerEvent::Hushed) => {}
            SupervisorMessage::Worker(id, WorkerEvent::Gone) => self.gone(id),
        }
    }

    /// Gives the voice up: all workers are released, and the one in use is waited for a little, so
    /// that it can stop the speech.
    fn close(mut self, messages: &Receiver<SupervisorMessage>, done: &Sender<()>) {
        let until = Instant::now() + self.timeouts.closing;
        let last = self.in_use.take();
        let is_open = last.is_some_and(|id| self.workers.get(&id).is_some_and(Worker::is_open));
        for worker in self.workers.values_mut() {
            worker.commands = None;
        }
        let last = last.filter(|_| is_open);
        while let Some(last) = last {
            let left = until.saturating_duration_since(Instant::now());
            match messages.recv_timeout(left) {
                Ok(SupervisorMessage::Worker(id, WorkerEvent::Hushed | WorkerEvent::Gone))
                    if id == last =>
                {
                    break;
                }
                Ok(_) => {}
                Err(_) => break,
            }
        }
        // Whoever closes may have stopped waiting first.
        let _ = done.send(());
    }

    /// The next moment at which something must be done unasked; `None` when all is well or
    /// nothing is under way.
    fn next_deadline(&self) -> Option<Instant> {
        let worker = self.in_use.and_then(|id| self.workers.get(&id));
        let call = worker.and_then(|worker| worker.call.as_ref());
        let is_free = worker.is_some() && call.is_none();
        let speaking = self.speaking.as_ref();
        [
            self.retry_at,
            call.map(|call| call.due),
            speaking.and_then(|speaking| speaking.due),
            speaking
                .filter(|_| is_free)
                .map(|speaking| speaking.check_at),
            self.hold_until.filter(|_| is_free),
        ]
        .into_iter()
        .flatten()
        .min()
    }

    fn act_on_deadlines(&mut self, now: Instant) {
        let is_past = |due: Option<Instant>| due.is_some_and(|due| due <= now);
        let call = self.worker_in_use().and_then(|worker| worker.call.as_ref());
        if is_past(call.map(|call| call.due)) {
            self.lose(&VoiceError::NoAnswer);
        }
        if let Some(speaking) = &self.speaking
            && is_past(speaking.due)
        {
            let error = if speaking.has_begun {
                VoiceError::NeverEnded
            } else {
                VoiceError::NeverBegan
            };
            self.lose(&error);
        }
        if is_past(self.hold_until) {
            self.hold_until = None;
        }
        if is_past(self.retry_at) {
            self.start_worker();
        }
    }
}
