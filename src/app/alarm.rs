//! Waking the app when a time has come. The thread sleeps without waking while nothing is set.

use std::collections::HashMap;
use std::io;
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::thread;
use std::time::{Duration, Instant};

/// What the app can be woken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hour {
    /// A press may have become a long one.
    Gesture,
    /// The flash is over.
    Flash,
    /// It is time for the next step.
    Pace,
}

/// Where alarms are set.
#[derive(Debug, Default)]
pub struct Alarm {
    inbox: Option<Sender<(Hour, Option<Instant>)>>,
}

impl Alarm {
    /// Starts the thread; `ring` is called on it and must not wait.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start(ring: impl Fn(Hour) + Send + 'static) -> io::Result<Self> {
        let (inbox, notes) = mpsc::channel();
        thread::Builder::new()
            .name("alarm".to_owned())
            .spawn(move || watch(&notes, &ring))?;
        Ok(Self { inbox: Some(inbox) })
    }

    /// Rings after this time, or not at all, in place of what was set for the same before.
    pub fn set(&self, hour: Hour, after: Option<Duration>) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `ring` is not there to read it.
            let _ = inbox.send((hour, after.map(|after| Instant::now() + after)));
        }
    }
}

fn watch(notes: &Receiver<(Hour, Option<Instant>)>, ring: &dyn Fn(Hour)) {
    let mut set: HashMap<Hour, Instant> = HashMap::new();
    loop {
        let next = set
            .iter()
            .min_by_key(|(_, at)| **at)
            .map(|(hour, at)| (*hour, *at));
        let note = match next {
            None => notes.recv().map_err(|_| RecvTimeoutError::Disconnected),
            Some((_, at)) => notes.recv_timeout(at.saturating_duration_since(Instant::now())),
        };
        match (note, next) {
            (Ok((hour, Some(at))), _) => {
                set.insert(hour, at);
            }
            (Ok((hour, None)), _) => {
                set.remove(&hour);
            }
            (Err(RecvTimeoutError::Timeout), Some((hour, _))) => {
                set.remove(&hour);
                ring(hour);
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
        let alarm = Alarm::start(move |hour| tell.send(hour).unwrap()).unwrap();
        alarm.set(Hour::Pace, Some(Duration::from_millis(1)));
        alarm.set(Hour::Pace, None);
        alarm.set(Hour::Flash, Some(Duration::from_millis(40)));
        alarm.set(Hour::Gesture, Some(Duration::from_millis(2)));
        let next = || rung.recv_timeout(Duration::from_secs(20)).unwrap();
        let first = next();
        // The call-off may have come too late on a busy machine.
        let first = if first == Hour::Pace { next() } else { first };
        assert_eq!((first, next()), (Hour::Gesture, Hour::Flash));
        drop(alarm);
        assert!(rung.recv_timeout(Duration::from_secs(20)).is_err());
    }
}
