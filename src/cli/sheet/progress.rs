//! How far a long sheet is, and whether it is to be stopped.

use std::io::{self, Write as _};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use crate::cli::slow_disk::is_told;
use crate::words::Words;

/// Only of a job that takes longer than this is it told how far it is.
const LONG: Duration = Duration::from_secs(10);
/// How long between two reports of how far it is.
const BETWEEN: Duration = Duration::from_secs(5);

/// A sheet on its way, page by page or frame by frame.
pub(super) struct Progress<'a> {
    words: &'a Words,
    began: Instant,
    told: Option<Instant>,
    is_stopped: Arc<AtomicBool>,
}

impl<'a> Progress<'a> {
    /// Stands before the first page. From now on a signal to end the program is heeded
    /// between two pages, so that no file is left half done.
    pub fn begin(words: &'a Words) -> Self {
        Self {
            words,
            began: Instant::now(),
            told: None,
            is_stopped: stop_flag(),
        }
    }

    /// Takes in that so many of all are done, and reports that on standard error where all of them take
    /// long. Gives `false` when the job is to be stopped.
    pub fn goes_on(&mut self, done: u32, pages: u32) -> bool {
        if done == 0 {
            // What went before the first page says nothing of how long the pages take.
            self.began = Instant::now();
        }
        let all = self.began.elapsed().saturating_mul(pages) / done.max(1);
        let is_time = self.told.is_none_or(|told| told.elapsed() >= BETWEEN);
        if (1..pages).contains(&done) && all > LONG && is_time {
            self.told = Some(Instant::now());
            // Where standard error is closed nobody can be told.
            let _ = writeln!(io::stderr(), "{}", self.words.sheet_progress(done, pages));
        }
        !self.is_stopped.load(Ordering::Relaxed)
    }
}

/// A flag that the signals raise by which a program is asked to end.
#[cfg(unix)]
fn stop_flag() -> Arc<AtomicBool> {
    use signal_hook::consts::{SIGHUP, SIGINT, SIGTERM};
    use signal_hook::flag;

    let is_stopped = Arc::new(AtomicBool::new(false));
    for signal in [SIGHUP, SIGINT, SIGTERM] {
        // Where the disk is waited for no page will see the flag.
        let at_once = flag::register_conditional_shutdown(signal, 128 + signal, is_told());
        let registered = at_once.and_then(|_| flag::register(signal, Arc::clone(&is_stopped)));
        if let Err(error) = registered {
            log::warn!("a signal ends the program without a word: {error}");
        }
    }
    is_stopped
}

/// Systems other than Unix end the program by themselves.
#[cfg(not(unix))]
fn stop_flag() -> Arc<AtomicBool> {
    Arc::default()
}
