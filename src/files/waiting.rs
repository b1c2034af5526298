//! How long the disk lets the program wait. A call to it comes back when it pleases; whoever watches from
//! another thread can tell the tyer what is waited for.

use std::io::{self, Seek, SeekFrom, Write};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

/// The calls that are under way, and since when.
static CALLS: Mutex<Vec<(u64, Instant)>> = Mutex::new(Vec::new());

/// A call to the disk, or several one after the other, under way while this lives.
#[derive(Debug)]
#[must_use = "the call counts as over as soon as this is dropped"]
pub struct DiskCall(u64);

impl DiskCall {
    /// From now on the disk is waited for.
    pub fn begin() -> Self {
        static NEXT: AtomicU64 = AtomicU64::new(0);
        let number = NEXT.fetch_add(1, Ordering::Relaxed);
        let mut calls = CALLS.lock().unwrap_or_else(PoisonError::into_inner);
        calls.push((number, Instant::now()));
        Self(number)
    }
}

impl Drop for DiskCall {
    fn drop(&mut self) {
        let mut calls = CALLS.lock().unwrap_or_else(PoisonError::into_inner);
        calls.retain(|(number, _)| *number != self.0);
    }
}

/// How long the call has been under way that is waited for longest.
pub fn longest_wait() -> Duration {
    let calls = CALLS.lock().unwrap_or_else(PoisonError::into_inner);
    let since = calls.iter().map(|(_, since)| since.elapsed());
    since.max().unwrap_or_default()
}

/// A file of which every call counts as one to the disk.
#[derive(Debug)]
pub struct OnDisk<F>(pub F);

impl<F: Write> Write for OnDisk<F> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let _call = DiskCall::begin();
        self.0.write(bytes)
    }

    fn flush(&mut self) -> io::Result<()> {
        let _call = DiskCall::begin();
        self.0.flush()
    }
}

impl<F: Seek> Seek for OnDisk<F> {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        let _call = DiskCall::begin();
        self.0.seek(to)
    }
}
