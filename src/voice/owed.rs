//! What a connection still owes us, which decides whether it may be closed.
//!
//! A broken connection is never closed: the C library of Speech Dispatcher would close its file
//! descriptor a second time, and by then the number may belong to somebody else's file. Nor is
//! one closed while it owes us an event: an event that comes while it closes aborts the process.
//! Such a connection is left to the operating system; the supervisor sees to it that they stay
//! few.

use std::sync::mpsc::{self, Receiver, Sender};
use std::time::{Duration, Instant};

/// How long a connection that is given up may take to report the end of its last speech.
const LAST_WORD: Duration = Duration::from_millis(200);

/// The account of one connection.
pub(super) struct Owed {
    /// One signal for each speech that came to its end or was stopped.
    over: Receiver<()>,
    /// Speeches accepted and not yet known to be over.
    speeches: usize,
    is_broken: bool,
}

impl Owed {
    /// An account with nothing on it, and where the end of each speech is signalled.
    pub fn nothing() -> (Self, Sender<()>) {
        let (signal, over) = mpsc::channel();
        let owed = Self {
            over,
            speeches: 0,
            is_broken: false,
        };
        (owed, signal)
    }

    /// A speech was accepted.
    pub fn speech(&mut self) {
        self.speeches += 1;
    }

    /// The connection is of no use any more.
    pub fn broken(&mut self) {
        self.is_broken = true;
    }

    /// Waits a moment for what is owed; whether the connection may be closed then.
    pub fn may_close(mut self) -> bool {
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
