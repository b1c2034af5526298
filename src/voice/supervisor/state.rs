//! What the supervisor knows: the requests, the workers, and whether there is a voice.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::mpsc::Sender;
use std::time::Instant;

use super::super::engine::{MessageKey, SpeechEvent};
use super::super::events::{Utterance, VoiceEvent};
use super::super::speakable::SpeakableText;
use super::super::speech_settings::SpeechSettings;
use super::super::timeouts::Timeouts;
use super::super::worker::{Maker, WorkerCommand, WorkerEvent, WorkerId};

/// What comes into the supervisor's inbox.
#[derive(Debug)]
pub(in super::super) enum SupervisorMessage {
    Say(Utterance, SpeakableText),
    Hush,
    SetSpeech(SpeechSettings),
    Voices,
    /// Stop the speech, answer, and end.
    Close(Sender<()>),
    Worker(WorkerId, WorkerEvent),
}

/// A text that is to be said.
pub(super) struct SpeechRequest {
    pub(super) id: Utterance,
    pub(super) text: SpeakableText,
    /// How often it was begun and did not end.
    pub(super) unended: u8,
}

/// A text that has been handed to the worker in use.
pub(super) struct Speaking {
    pub(super) request: SpeechRequest,
    /// Its name at the service, once the call has been answered.
    pub(super) key: Option<MessageKey>,
    pub(super) has_begun: bool,
    /// When its beginning, or after that its end, is overdue.
    pub(super) due: Option<Instant>,
    pub(super) check_at: Instant,
}

/// A call that a worker makes and has not replied to yet.
pub(super) struct PendingCall {
    pub(super) kind: CallKind,
    pub(super) due: Instant,
}

pub(super) enum CallKind {
    Open,
    SetSpeech(SpeechSettings),
    Speak(Utterance),
    Stop,
    Voices,
    Check,
}

/// A worker thread that has not ended, as the supervisor sees it.
pub(super) struct Worker {
    /// `None` once it has been released.
    pub(super) commands: Option<Sender<WorkerCommand>>,
    pub(super) call: Option<PendingCall>,
    /// The settings that its voice speaks with.
    pub(super) speech: Option<SpeechSettings>,
    /// Events that came during a call to speak: the key that tells whether they are about that text
    /// is known only with the reply.
    pub(super) early: Vec<SpeechEvent>,
}

impl Worker {
    /// Whether its connection to the service is open.
    pub(super) fn is_open(&self) -> bool {
        let kind = self.call.as_ref().map(|call| &call.kind);
        !matches!(kind, Some(CallKind::Open))
    }
}

/// What must be heard before a lost voice counts as found.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Proof {
    Beginning,
    Ending,
}

pub(super) enum VoiceState {
    Starting,
    Ready,
    Lost(Proof),
}

pub(in super::super) struct Supervisor {
    pub(super) make: Arc<Maker>,
    notify: Box<dyn Fn(VoiceEvent) + Send>,
    pub(super) timeouts: Timeouts,
    /// Where workers report to.
    pub(super) inbox: Sender<SupervisorMessage>,
    /// Every worker whose thread has not ended.
    pub(super) workers: BTreeMap<WorkerId, Worker>,
    pub(super) last_worker: WorkerId,
    /// The worker that gets the commands.
    pub(super) in_use: Option<WorkerId>,
    pub(super) state: VoiceState,
    /// When to look for a voice again; `None` while one is there, or while only the end of a
    /// hanging call can make room for another worker.
    pub(super) retry_at: Option<Instant>,
    pub(super) speech: SpeechSettings,
    pub(super) request: Option<SpeechRequest>,
    /// After a refusal no command is given before this.
    pub(super) hold_until: Option<Instant>,
    pub(super) hush: bool,
    pub(super) list_voices: bool,
    pub(super) speaking: Option<Speaking>,
}

impl Supervisor {
    pub(in super::super) fn new(
        make: Arc<Maker>,
        notify: Box<dyn Fn(VoiceEvent) + Send>,
        timeouts: Timeouts,
        inbox: Sender<SupervisorMessage>,
    ) -> Self {
        Self {
            make,
            notify,
            timeouts,
            inbox,
            workers: BTreeMap::new(),
            last_worker: 0,
            in_use: None,
            state: VoiceState::Starting,
            retry_at: None,
            speech: SpeechSettings::default(),
            request: None,
            hold_until: None,
            hush: false,
            list_voices: false,
            speaking: None,
        }
    }

    pub(super) fn tell(&self, event: VoiceEvent) {
        (self.notify)(event);
    }

    pub(super) fn worker_in_use(&mut self) -> Option<&mut Worker> {
        self.workers.get_mut(&self.in_use?)
    }

    /// Gives up whatever is being said or waits to be said.
    pub(super) fn cut_off(&mut self) {
        let spoken = self.speaking.take().map(|speaking| speaking.request.id);
        let requested = self.request.take().map(|request| request.id);
        for id in spoken.into_iter().chain(requested) {
            self.tell(VoiceEvent::CutOff(id));
        }
    }
}
