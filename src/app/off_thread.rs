//! Work that may have to wait, for the disk above all, on a thread of its own.

use std::future;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::task::Poll;
use std::thread;

use iced::Task;
use iced::futures::channel::oneshot;

/// Which of the things that were begun an answer is to. No two in the program have the same: what was
/// begun on a screen that is closed is not taken for what the next one of its kind began.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Number(u64);

impl Number {
    /// One that nothing has yet.
    pub fn draw() -> Self {
        static DRAWN: AtomicU64 = AtomicU64::new(0);
        Self(DRAWN.fetch_add(1, Ordering::Relaxed))
    }
}

/// Does this on a thread of its own, and gives what comes of it.
///
/// The toolkit asks every task once for its answer on the thread of the window: what waits within the
/// future of a task has the window wait. Where the system has no thread to give, it is done on one of
/// the toolkit's.
pub fn off_thread<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> Task<T> {
    let work = Arc::new(Mutex::new(Some(work)));
    let in_thread = Arc::clone(&work);
    let (tell, done) = oneshot::channel();
    let started = thread::Builder::new()
        .name("disk".to_owned())
        .spawn(move || {
            if let Some(work) = take(&in_thread) {
                // When nobody listens any more the window is gone.
                let _ = tell.send(work());
            }
        });
    match started {
        // A thread that ends by a fault gives nothing; the log has it.
        Ok(_) => Task::future(async move { done.await.ok() }).and_then(Task::done),
        Err(error) => {
            ::log::error!("no thread for what the window asks for: {error}");
            Task::future(async move {
                away_from_the_window().await;
                take(&work).map(|work| work())
            })
            .and_then(Task::done)
        }
    }
}

fn take<W>(work: &Mutex<Option<W>>) -> Option<W> {
    work.lock().unwrap_or_else(PoisonError::into_inner).take()
}

/// Not ready when it is asked on the thread of the window, which is the first time.
async fn away_from_the_window() {
    let mut is_asked = false;
    future::poll_fn(|context| {
        if std::mem::replace(&mut is_asked, true) {
            return Poll::Ready(());
        }
        context.waker().wake_by_ref();
        Poll::Pending
    })
    .await;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_number_is_drawn_twice() {
        let (one, other) = (Number::draw(), Number::draw());
        assert_ne!(one, other);
    }
}
