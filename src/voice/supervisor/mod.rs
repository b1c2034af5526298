//! The thread that holds the wishes and watches the worker.

mod calls;
mod crew;
mod speech;

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender};
use std::time::Instant;

use super::worker::{Maker, Order, Report, WorkerId};
use super::{Heard, Loss, Manner, MessageKey, News, Patience, SpokenText, Utterance};

/// How often a speech that began and never ended is begun: it may have been heard, and nobody
/// wants to hear the same step for ever.
const MOST_UNENDED: u8 = 2;

/// A note in the supervisor's inbox.
#[derive(Debug)]
pub(super) enum Input {
    Say(Utterance, SpokenText),
    Hush,
    Manner(Manner),
    Voices,
    /// Stop the speech, answer, and end.
    Close(Sender<()>),
    Report(WorkerId, Report),
}

/// A text that is to be said.
struct Wish {
    id: Utterance,
    text: SpokenText,
    unended: u8,
}

/// A text that has been handed to the worker.
struct Speaking {
    wish: Wish,
    /// Its name at the service, once the call has been answered.
    key: Option<MessageKey>,
    begun: bool,
    /// When the watch for its beginning or its end runs out.
    due: Option<Instant>,
    check_at: Instant,
}

/// What a worker has been asked and has not answered yet.
struct Call {
    what: Asked,
    due: Instant,
}

enum Asked {
    Open,
    Manner(Manner),
    Speak(Utterance),
    Stop,
    Voices,
    Check,
}

/// A worker thread that has not ended, as the supervisor sees it.
struct Worker {
    /// `None` once it has been let go.
    orders: Option<Sender<Order>>,
    call: Option<Call>,
    /// The manner its voice speaks in.
    manner: Option<Manner>,
    /// What was heard during a call to speak, whose key is known only with its answer.
    early: Vec<Heard>,
}

impl Worker {
    fn is_open(&self) -> bool {
        !matches!(
            &self.call,
            Some(Call {
                what: Asked::Open,
                ..
            })
        )
    }
}

/// What must be heard before a lost voice counts as found.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Proof {
    Beginning,
    Ending,
}

enum Standing {
    Starting,
    Ready,
    Lost(Proof),
}

pub(super) struct Supervisor {
    make: Arc<Maker>,
    notify: Box<dyn Fn(News) + Send>,
    patience: Patience,
    /// Given to every worker, to report to.
    inbox: Sender<Input>,
    /// Every worker whose thread has not ended; at most [`Patience::most_workers`].
    crew: BTreeMap<WorkerId, Worker>,
    last_worker: WorkerId,
    in_charge: Option<WorkerId>,
    standing: Standing,
    /// When to look for a voice again; `None` while one is there, or while only the end of a
    /// hanging call can make room for another worker.
    retry_at: Option<Instant>,
    manner: Manner,
    wish: Option<Wish>,
    /// After a refusal: nothing is ordered before this.
    hold_until: Option<Instant>,
    hush: bool,
    list_voices: bool,
    speaking: Option<Speaking>,
}

impl Supervisor {
    pub(super) fn new(
        make: Arc<Maker>,
        notify: Box<dyn Fn(News) + Send>,
        patience: Patience,
        inbox: Sender<Input>,
    ) -> Self {
        Self {
            make,
            notify,
            patience,
            inbox,
            crew: BTreeMap::new(),
            last_worker: 0,
            in_charge: None,
            standing: Standing::Starting,
            retry_at: None,
            manner: Manner::default(),
            wish: None,
            hold_until: None,
            hush: false,
            list_voices: false,
            speaking: None,
        }
    }

    /// Works until it is closed.
    pub(super) fn run(mut self, notes: &Receiver<Input>) {
        self.recruit();
        loop {
            let note = match self.next_alarm() {
                Some(alarm) => {
                    let left = alarm.saturating_duration_since(Instant::now());
                    match notes.recv_timeout(left) {
                        Ok(note) => Some(note),
                        Err(RecvTimeoutError::Timeout) => None,
                        Err(RecvTimeoutError::Disconnected) => return,
                    }
                }
                None => match notes.recv() {
                    Ok(note) => Some(note),
                    Err(_) => return,
                },
            };
            match note {
                Some(Input::Close(done)) => return self.close(notes, &done),
                Some(note) => self.take(note),
                None => self.ring(Instant::now()),
            }
            self.give_order();
        }
    }

    fn take(&mut self, note: Input) {
        match note {
            Input::Say(id, text) => {
                self.cut_off();
                self.hush = false;
                self.hold_until = None;
                self.wish = Some(Wish {
                    id,
                    text,
                    unended: 0,
                });
            }
            Input::Hush => {
                self.cut_off();
                self.hush = true;
            }
            Input::Manner(manner) => self.manner = manner,
            Input::Voices => self.list_voices = true,
            Input::Report(id, Report::Answer(answer)) => self.answered(id, answer),
            Input::Report(id, Report::Heard(heard)) => self.heard(id, heard),
            // Only of interest to `close`.
            Input::Close(_) | Input::Report(_, Report::Hushed) => {}
            Input::Report(id, Report::Gone) => self.gone(id),
        }
    }

    /// The voice is given up: the worker in charge is let go, and waited for a little.
    fn close(mut self, notes: &Receiver<Input>, done: &Sender<()>) {
        let until = Instant::now() + self.patience.closing;
        let last = self.in_charge.take();
        let reachable = last.is_some_and(|id| self.crew.get(&id).is_some_and(Worker::is_open));
        for worker in self.crew.values_mut() {
            worker.orders = None;
        }
        let last = last.filter(|_| reachable);
        while let Some(last) = last {
            let left = until.saturating_duration_since(Instant::now());
            match notes.recv_timeout(left) {
                Ok(Input::Report(id, Report::Hushed | Report::Gone)) if id == last => break,
                Ok(_) => {}
                Err(_) => break,
            }
        }
        // The one who closes may have run out of patience first.
        let _ = done.send(());
    }

    fn tell(&self, news: News) {
        (self.notify)(news);
    }

    fn chief(&mut self) -> Option<&mut Worker> {
        self.crew.get_mut(&self.in_charge?)
    }

    /// Gives up whatever is being said or waits to be said.
    fn cut_off(&mut self) {
        let spoken = self.speaking.take().map(|speaking| speaking.wish.id);
        let wished = self.wish.take().map(|wish| wish.id);
        for id in spoken.into_iter().chain(wished) {
            self.tell(News::CutOff(id));
        }
    }
}

impl Supervisor {
    /// The next moment at which something must be done unasked; `None` when all is well or
    /// nothing is under way.
    fn next_alarm(&self) -> Option<Instant> {
        let chief = self.in_charge.and_then(|id| self.crew.get(&id));
        let call = chief.and_then(|worker| worker.call.as_ref());
        let free = chief.is_some() && call.is_none();
        let speaking = self.speaking.as_ref();
        [
            self.retry_at,
            call.map(|call| call.due),
            speaking.and_then(|speaking| speaking.due),
            speaking.filter(|_| free).map(|speaking| speaking.check_at),
            self.hold_until.filter(|_| free),
        ]
        .into_iter()
        .flatten()
        .min()
    }

    fn ring(&mut self, now: Instant) {
        let past = |due: Option<Instant>| due.is_some_and(|due| due <= now);
        if past(
            self.chief()
                .and_then(|chief| chief.call.as_ref())
                .map(|call| call.due),
        ) {
            self.lose(&Loss::NoAnswer);
        }
        if past(self.speaking.as_ref().and_then(|speaking| speaking.due)) {
            let begun = self
                .speaking
                .as_ref()
                .is_some_and(|speaking| speaking.begun);
            self.lose(if begun {
                &Loss::NeverEnded
            } else {
                &Loss::NeverBegan
            });
        }
        if past(self.hold_until) {
            self.hold_until = None;
        }
        if past(self.retry_at) {
            self.recruit();
        }
    }
}
