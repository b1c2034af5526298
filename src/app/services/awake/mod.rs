//! Keeping the screen lit while a tie is open.

#[cfg_attr(target_os = "linux", path = "bus.rs")]
#[cfg_attr(not(target_os = "linux"), path = "elsewhere.rs")]
mod system;

use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

use system::Request;

/// What the system may show of whoever keeps the screen lit.
const NAME: &str = "Marlinspeak";
const REASON: &str = "A tie is open";

/// Asks the system to leave the screen on; on a thread of its own, which holds the request.
#[derive(Debug, Default)]
pub struct Awake {
    inbox: Option<Sender<bool>>,
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

    /// From now on awake, or as the system likes.
    pub fn set(&self, is_wanted: bool) {
        if let Some(inbox) = &self.inbox {
            // Only a thread that panicked in `refused` is not there to read it.
            let _ = inbox.send(is_wanted);
        }
    }
}

fn hold(wishes: &Receiver<bool>, refused: &dyn Fn()) {
    let mut request = None;
    while let Ok(is_wanted) = wishes.recv() {
        if !is_wanted {
            request = None;
        } else if request.is_none() {
            match Request::make() {
                Ok(granted) => request = Some(granted),
                Err(error) => {
                    log::warn!("the screen is not kept on: {error}");
                    refused();
                }
            }
        }
    }
}
