//! A command that waits for the disk says so, and so does the window before it is there: nobody knows else
//! whether it works or hangs.

use std::io::{self, Write as _};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::sync::{Arc, LazyLock, Mutex, PoisonError};
use std::thread;
use std::time::Duration;

use crate::files;
use crate::words::Words;

/// A call to a disk that is well takes less.
const SLOW: Duration = Duration::from_secs(2);

/// Whether it was told that the disk is slow.
static IS_TOLD: LazyLock<Arc<AtomicBool>> = LazyLock::new(Arc::default);

/// What makes the words that it is told in: they are needed only where there is something to tell.
type WordsMaker = Box<dyn FnOnce() -> Words + Send>;

/// Looks on while it lives. All that it costs a command is a thread that sleeps: whoever waits for a call to
/// the disk cannot tell of it, and every command reads the settings at least.
#[must_use = "nobody looks on once this is dropped"]
pub struct SlowDisk {
    words: Arc<Mutex<Option<WordsMaker>>>,
    _over: Sender<()>,
}

impl SlowDisk {
    /// Tells once, on standard error, when the disk takes long to answer.
    pub(super) fn look_on(words: impl FnOnce() -> Words + Send + 'static) -> Self {
        let (over, is_over) = mpsc::channel::<()>();
        let words: WordsMaker = Box::new(words);
        let words = Arc::new(Mutex::new(Some(words)));
        let theirs = Arc::clone(&words);
        let started = thread::Builder::new()
            .name("slow disk".to_owned())
            .spawn(move || watch(&is_over, &theirs));
        if let Err(error) = started {
            log::warn!("nobody looks whether the disk is slow: {error}");
        }
        Self { words, _over: over }
    }

    /// From now on it is told in these words.
    pub(super) fn tell_in(&self, words: impl FnOnce() -> Words + Send + 'static) {
        *self.words.lock().unwrap_or_else(PoisonError::into_inner) = Some(Box::new(words));
    }
}

fn watch(is_over: &Receiver<()>, words: &Mutex<Option<WordsMaker>>) {
    let mut rest = SLOW;
    while let Err(RecvTimeoutError::Timeout) = is_over.recv_timeout(rest) {
        let longest = files::longest_wait();
        if longest >= SLOW {
            IS_TOLD.store(true, Ordering::Relaxed);
            let words = words.lock().unwrap_or_else(PoisonError::into_inner).take();
            if let Some(words) = words {
                // Where standard error is closed nobody can be told.
                let _ = writeln!(io::stderr(), "{}", words().plainly("disk-slow", &[]));
            }
            return;
        }
        // The call that is under way is a slow one by then, and none that begins later is sooner.
        rest = SLOW.saturating_sub(longest);
    }
}

/// Raised when it was told that the disk is slow: then nothing that waits for it sees a wish to stop.
pub(super) fn is_told() -> Arc<AtomicBool> {
    Arc::clone(&IS_TOLD)
}
