//! How long the supervisor waits before it takes the voice for lost, and between its tries.

use std::time::Duration;

/// Every time limit of the room, so that a test can shorten them all.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Timeouts {
    /// For the answer to a quick call: speak, stop, set a number.
    pub answer: Duration,
    /// For the answer to a call that makes the service list its voices, thirteen thousand of
    /// them on a plain Debian.
    pub listing: Duration,
    /// For a new connection, with the service started on the way.
    pub opening: Duration,
    /// From an accepted text to its first sound.
    pub beginning: Duration,
    /// The least time from the beginning of a speech to its end; a long text gets twice the time
    /// that it should take.
    pub ending: Duration,
    /// Between two looks, during a speech, at whether the service still answers.
    pub check: Duration,
    /// Between two tries to find a voice again.
    pub retry: Duration,
    /// Between two tries while an earlier one still hangs unanswered.
    pub slow_retry: Duration,
    /// For the speech to be stopped at the end of the program.
    pub closing: Duration,
}

impl Default for Timeouts {
    fn default() -> Self {
        Self {
            answer: Duration::from_secs(1),
            listing: Duration::from_secs(8),
            opening: Duration::from_secs(3),
            beginning: Duration::from_secs(3),
            ending: Duration::from_secs(5),
            check: Duration::from_secs(1),
            retry: Duration::from_millis(700),
            slow_retry: Duration::from_secs(10),
            closing: Duration::from_millis(300),
        }
    }
}
