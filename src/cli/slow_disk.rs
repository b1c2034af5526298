//! A command that waits for the disk says so: nobody knows else whether it works or hangs.

use std::io::{self, Write as _};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, RecvTimeoutError, Sender};
use std::sync::{Arc, LazyLock};
use std::thread;
use std::time::Duration;

use crate::files;
use crate::words::Words;

/// A call to a disk that is well takes less.
const SLOW: Duration = Duration::from_secs(2);
/// Between two looks.
const LOOK: Duration = Duration::from_millis(100);

/// Whether it was told that the disk is slow.
static IS_TOLD: LazyLock<Arc<AtomicBool>> = LazyLock::new(Arc::default);

/// Looks on while it lives.
#[must_use = "nobody looks on once this is dropped"]
pub(super) struct SlowDisk {
    _over: Sender<()>,
}

impl SlowDisk {
    /// Tells once, on standard error, when the disk takes long to answer. `words` are made only then.
    pub fn look_on(words: impl FnOnce() -> Words + Send + 'static) -> Self {
        let (over, is_over) = mpsc::channel::<()>();
        let watch = move || {
            while let Err(RecvTimeoutError::Timeout) = is_over.recv_timeout(LOOK) {
                if files::longest_wait() >= SLOW {
                    IS_TOLD.store(true, Ordering::Relaxed);
                    // Where standard error is closed nobody can be told.
                    let _ = writeln!(io::stderr(), "{}", words().plainly("disk-slow", &[]));
                    return;
                }
            }
        };
        let started = thread::Builder::new()
            .name("slow disk".to_owned())
            .spawn(watch);
        if let Err(error) = started {
            log::warn!("nobody looks whether the disk is slow: {error}");
        }
        Self { _over: over }
    }
}

/// Raised when it was told that the disk is slow: then nothing that waits for it sees a wish to stop.
pub(super) fn is_told() -> Arc<AtomicBool> {
    Arc::clone(&IS_TOLD)
}
