//! The events that a connection has still to report.
//!
//! Before a connection is dropped its owner waits a moment for the end of the last speech to be
//! reported, so that whoever asked for that speech is told what became of it.

use std::sync::mpsc::{self, Receiver, Sender};
use std::time::{Duration, Instant};

/// How long a connection that is given up may take to report the end of its last speech.
const LAST_WORD: Duration = Duration::from_millis(200);

/// The speeches of one connection whose end has not been reported.
pub(super) struct PendingEvents {
    /// One signal for each speech that came to its end or was stopped.
    over: Receiver<()>,
    /// Speeches accepted and not yet known to be over.
    speeches: usize,
    is_broken: bool,
}

impl PendingEvents {
    /// A connection that has not said anything, and where the end of each of its speeches is to
    /// be signalled.
    pub fn none() -> (Self, Sender<()>) {
        let (signal, over) = mpsc::channel();
        let pending = Self {
            over,
            speeches: 0,
            is_broken: false,
        };
        (pending, signal)
    }

    /// A speech was accepted: its end will be reported.
    pub fn add_speech(&mut self) {
        self.speeches += 1;
    }

    /// Whether every speech that was accepted is known to be over.
    pub fn is_quiet(&mut self) -> bool {
        while self.speeches > 0 && self.over.try_recv().is_ok() {
            self.speeches -= 1;
        }
        self.speeches == 0
    }

    /// The connection is of no use any more.
    pub fn mark_broken(&mut self) {
        self.is_broken = true;
    }

    /// Waits a moment for the events that are still to come, and says whether all of them came.
    pub fn wait(mut self) -> bool {
        let until = Instant::now() + LAST_WORD;
        while self.speeches > 0 && !self.is_broken {
            let left = until.saturating_duration_since(Instant::now());
            if self.over.recv_timeout(left).is_err() {
                break;
            }
            self.speeches -= 1;
        }
        !self.is_broken && self.speeches == 0
    }
}
