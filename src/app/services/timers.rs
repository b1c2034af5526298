//! Waking the session when a time has come. The thread sleeps without waking while nothing is set.

use std::collections::HashMap;
use std::io;
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::thread;
use std::time::{Duration, Instant};

use crate::session::Timer;

/// Where timers are set.
#[derive(Debug, Default)]
pub struct Timers {
    inbox: Option<Sender<(Timer, Option<Instant>)>>,
}

impl Timers {
    /// Starts the thread; `ring` is called on it and must not wait.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start(ring: impl Fn(Timer) + Send + 'static) -> io::Result<Self> {
        let (inbox, notes) = mpsc::channel();
        thread::Builder::new()
            .name("timers".to_owned())
            .spawn(move || watch(&notes, &ring))?;
        Ok(Self { inbox: Some(inbox) })
    }

    /// Rings after this time, or not at all, in place of what was set for the same before.
    pub fn set(&self, timer: Timer, after: Option<Duration>) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `ring` is not there to read it.
            let _ = inbox.send((timer, after.map(|after| Instant::now() + after)));
        }
    }
}

fn watch(notes: &Receiver<(Timer, Option<Instant>)>, ring: &dyn Fn(Timer)) {
    let mut set: HashMap<Timer, Instant> = HashMap::new();
    loop {
        let next = set
            .iter()
            .min_by_key(|(_, at)| **at)
            .map(|(timer, at)| (*timer, *at));
        let note = match next {
            None => notes.recv().map_err(|_| RecvTimeoutError::Disconnected),
            Some((_, at)) => notes.recv_timeout(at.saturating_duration_since(Instant::now())),
        };
        match (note, next) {
            (Ok((timer, Some(at))), _) => {
                set.insert(timer, at);
            }
            (Ok((timer, None)), _) => {
                set.remove(&timer);
            }
            (Err(RecvTimeoutError::Timeout), Some((timer, _))) => {
                set.remove(&timer);
                ring(timer);
            }
            (Err(_), _) => return,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_rings_for_what_is_set_and_not_for_what_was_called_off() {
        let (tell, rung) = mpsc::channel();
        let timers = Timers::start(move |timer| tell.send(timer).unwrap()).unwrap();
        timers.set(Timer::AutoAdvance, Some(Duration::from_millis(1)));
        timers.set(Timer::AutoAdvance, None);
        timers.set(Timer::Flash, Some(Duration::from_millis(40)));
        timers.set(Timer::Gesture, Some(Duration::from_millis(2)));
        let next = || rung.recv_timeout(Duration::from_secs(20)).unwrap();
        let first = next();
        // The call-off may have come too late on a busy machine.
        let first = if first == Timer::AutoAdvance {
            next()
        } else {
            first
        };
        assert_eq!((first, next()), (Timer::Gesture, Timer::Flash));
        drop(timers);
        assert!(rung.recv_timeout(Duration::from_secs(20)).is_err());
    }
}
