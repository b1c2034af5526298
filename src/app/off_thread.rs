//! Work that may have to wait, for the disk above all, on a thread of its own.

use std::thread;

use iced::Task;
use iced::futures::channel::oneshot;

/// Does this on a thread of its own, and gives what comes of it.
///
/// The toolkit asks every task once for its answer on the thread of the window: what waits within the
/// future of a task has the window wait.
pub fn off_thread<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> Task<T> {
    let (tell, done) = oneshot::channel();
    let started = thread::Builder::new()
        .name("disk".to_owned())
        .spawn(move || {
            // When nobody listens any more the window is gone.
            let _ = tell.send(work());
        });
    if let Err(error) = started {
        ::log::error!("no thread for what the window asks for: {error}");
    }
    // A thread that ends by a fault gives nothing; the log has it.
    Task::future(async move { done.await.ok() }).and_then(Task::done)
}
