//! Keeping the screen lit while a tie is open.

#[cfg_attr(target_os = "linux", path = "bus.rs")]
#[cfg_attr(not(target_os = "linux"), path = "elsewhere.rs")]
mod system;

use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

use system::Request;

/// What the system may show of whoever keeps the screen lit, beside the reason.
const NAME: &str = "Marlinspeak";

/// Asks the system to leave the screen on; on a thread of its own, which holds the request.
#[derive(Debug, Default)]
pub struct Awake {
    inbox: Option<Sender<Option<String>>>,
}

impl Awake {
    /// Starts the thread. `refused` is called on it when the system will not.
    pub fn start(refused: impl Fn() + Send + 'static) -> Self {
        let (inbox, wishes) = mpsc::channel();
        let started = thread::Builder::new()
            .name("awake".to_owned())
            .spawn(move || hold(&wishes, &refused));
        Self {
            inbox: started.ok().map(|_| inbox),
        }
    }

    /// From now on awake for this reason, which the system may show, or as the system likes.
    pub fn set(&self, reason: Option<String>) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `refused` is not there to read it.
            let _ = inbox.send(reason);
        }
    }
}

fn hold(wishes: &Receiver<Option<String>>, refused: &dyn Fn()) {
    let mut request = None;
    while let Ok(wish) = wishes.recv() {
        let Some(reason) = wish else {
            request = None;
            continue;
        };
        if request.is_none() {
            match Request::make(&reason) {
                Ok(granted) => request = Some(granted),
                Err(error) => {
                    log::warn!("the screen is not kept on: {error}");
                    refused();
                }
            }
        }
    }
}
