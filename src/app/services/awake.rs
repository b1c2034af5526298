//! Keeping the screen lit while a tie is open.

use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

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
    // Letting go of the guard takes the request back.
    let mut guard = None;
    while let Ok(is_wanted) = wishes.recv() {
        if !is_wanted {
            guard = None;
        } else if guard.is_none() {
            let asked = keepawake::Builder::default()
                .display(true)
                .idle(true)
                .reason("A tie is open")
                .app_name("Marlinspeak")
                .app_reverse_domain("marlinspeak")
                .create();
            match asked {
                Ok(granted) => guard = Some(granted),
                Err(error) => {
                    log::warn!("the screen is not kept on: {error}");
                    refused();
                }
            }
        }
    }
}
