//! One after the other, unless one takes too long.

use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

/// How long one is waited for: a place that hangs must not hold the others for ever.
const PATIENCE: Duration = Duration::from_secs(3);

/// Whose turn it is among works that are better done one at a time.
#[derive(Debug, Default)]
pub struct Turns {
    is_taken: Mutex<bool>,
    is_free: Condvar,
}

impl Turns {
    /// Does this when nothing else is done, or when what is done takes too long.
    pub fn take<T>(&self, work: impl FnOnce() -> T) -> T {
        let taken = self.lock();
        let waited = self
            .is_free
            .wait_timeout_while(taken, PATIENCE, |is_taken| *is_taken);
        let (mut taken, _) = waited.unwrap_or_else(PoisonError::into_inner);
        *taken = true;
        drop(taken);
        let done = work();
        *self.lock() = false;
        self.is_free.notify_one();
        done
    }

    fn lock(&self) -> MutexGuard<'_, bool> {
        self.is_taken.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

#[cfg(test)]
mod tests {
    use std::sync::mpsc;
    use std::thread;

    use super::*;

    #[test]
    fn one_that_hangs_does_not_hold_the_others() {
        let turns = &Turns::default();
        let (begun, begins) = mpsc::channel();
        let (tell, told) = mpsc::channel();
        let (let_go, held) = mpsc::channel::<()>();
        thread::scope(|scope| {
            scope.spawn(move || {
                turns.take(|| {
                    begun.send(()).unwrap();
                    held.recv().unwrap();
                });
            });
            begins.recv().unwrap();
            for number in 0..3 {
                let tell = tell.clone();
                scope.spawn(move || turns.take(|| tell.send(number).unwrap()));
            }
            let mut done: Vec<i32> = (0..3)
                .map(|_| told.recv_timeout(Duration::from_secs(60)).unwrap())
                .collect();
            done.sort_unstable();
            assert_eq!(done, [0, 1, 2]);
            let_go.send(()).unwrap();
        });
    }
}
