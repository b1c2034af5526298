//! The handle that the rest of the program holds.

use std::fmt;
use std::io;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::mpsc::{self, Sender};
use std::thread;
use std::time::Duration;

use super::supervisor::{Input, Supervisor};
use super::{Ear, Manner, News, Patience, SpokenText, Trouble, Utterance, Voice};

/// Says one text at a time. No call waits for the speech service: each leaves a note for the
/// supervisor and returns. Dropping it stops the speech.
pub struct Speaker {
    inbox: Sender<Input>,
    next: AtomicU64,
    closing: Duration,
}

impl Speaker {
    /// Begins to look for a voice with `make_voice`, which is called on a thread of its own,
    /// perhaps on several at once. `notify` gets the [`News`] on the supervisor's thread; it must
    /// only hand them on.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start(
        make_voice: impl Fn(Ear) -> Result<Box<dyn Voice>, Trouble> + Send + Sync + 'static,
        notify: impl Fn(News) + Send + 'static,
    ) -> io::Result<Self> {
        Self::start_with(make_voice, notify, Patience::default())
    }

    /// [`Speaker::start`] with time limits of the caller's choice.
    ///
    /// # Errors
    /// When the system has no thread to give.
    pub fn start_with(
        make_voice: impl Fn(Ear) -> Result<Box<dyn Voice>, Trouble> + Send + Sync + 'static,
        notify: impl Fn(News) + Send + 'static,
        patience: Patience,
    ) -> io::Result<Self> {
        let (inbox, notes) = mpsc::channel();
        let closing = patience.closing;
        let supervisor = Supervisor::new(
            Arc::new(make_voice),
            Box::new(move |news| {
                note(&news);
                notify(news);
            }),
            patience,
            inbox.clone(),
        );
        thread::Builder::new()
            .name("voice supervisor".to_owned())
            .spawn(move || supervisor.run(&notes))?;
        Ok(Self {
            inbox,
            next: AtomicU64::new(1),
            closing,
        })
    }

    /// Says `text` at once, cutting off whatever is being said. `None`, with nothing cut off, when
    /// there is nothing in it that could be heard.
    pub fn say(&self, text: &str) -> Option<Utterance> {
        let text = SpokenText::from_raw(text)?;
        let id = Utterance(self.next.fetch_add(1, Ordering::Relaxed));
        self.leave(Input::Say(id, text));
        Some(id)
    }

    /// Stops what is being said and forgets what was to be said.
    pub fn hush(&self) {
        self.leave(Input::Hush);
    }

    /// How the texts from now on are to be said.
    pub fn set_manner(&self, manner: Manner) {
        self.leave(Input::Manner(manner));
    }

    /// Asks for the voices there are; the answer is [`News::Voices`]. The service may take over a
    /// second to list them, and says nothing new meanwhile.
    pub fn voices(&self) {
        self.leave(Input::Voices);
    }

    /// Stops the speech and waits for that, though never longer than [`Patience::closing`].
    pub fn close(self) {
        drop(self);
    }

    fn leave(&self, note: Input) {
        // Only a supervisor that has panicked in `notify` is not there to read it.
        let _ = self.inbox.send(note);
    }
}

/// Notes in the log file what happens to the voice, and nothing of what it says.
fn note(news: &News) {
    match news {
        News::Ready => log::info!("a voice speaks"),
        News::Lost(loss) => log::warn!("no voice: {loss}"),
        News::Voices(voices) => log::info!("{} voices", voices.len()),
        News::NoSuchVoice(_) => log::warn!("the voice or language wished for is not there"),
        News::Began(_) | News::Ended(_) | News::CutOff(_) => {}
    }
}

impl Drop for Speaker {
    fn drop(&mut self) {
        let (done, closed) = mpsc::channel();
        self.leave(Input::Close(done));
        // Too late or not at all: either way the program may end now.
        let _ = closed.recv_timeout(self.closing);
    }
}

impl fmt::Debug for Speaker {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Speaker")
    }
}
