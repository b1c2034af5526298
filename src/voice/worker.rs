//! The thread that owns a voice and makes its calls.

use std::io;
use std::sync::Arc;
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

use super::engine::{CallError, EventSink, MessageKey, SpeechEvent, Voice};
use super::events::VoiceName;
use super::speakable::SpeakableText;
use super::speech_settings::{SpeechSettings, VoiceMatch};

/// Connects to a speech service; called on the worker's thread, perhaps on several at once.
pub(super) type Maker = dyn Fn(EventSink) -> Result<Box<dyn Voice>, CallError> + Send + Sync;

/// The number of a worker. No two workers ever have the same.
pub(super) type WorkerId = u64;

/// One call to make.
#[derive(Debug)]
pub(super) enum WorkerCommand {
    SetSpeech(SpeechSettings),
    Speak(SpeakableText),
    Stop,
    Voices,
    Check,
}

/// What came of a call. Opening the voice is the first call, and needs no command.
#[derive(Debug)]
pub(super) enum WorkerReply {
    Opened,
    SpeechSet(VoiceMatch),
    Spoken(Option<MessageKey>),
    Stopped,
    Voices(Vec<VoiceName>),
    Checked,
}

/// What a worker tells whoever started it.
#[derive(Debug)]
pub(super) enum WorkerEvent {
    Replied(Result<WorkerReply, CallError>),
    Heard(SpeechEvent),
    /// It was released and has stopped its voice.
    Hushed,
    /// The thread ends: nothing more will come from it.
    Gone,
}

/// Starts a worker. It ends by itself, its voice stopped, when the sender is dropped.
///
/// # Errors
/// When the system has no thread to give.
pub(super) fn start(
    id: WorkerId,
    make: Arc<Maker>,
    tell: impl Fn(WorkerEvent) + Clone + Send + Sync + 'static,
) -> io::Result<Sender<WorkerCommand>> {
    let (commands, inbox) = mpsc::channel();
    thread::Builder::new()
        .name(format!("voice {id}"))
        .spawn(move || work(&Reporter(tell), &*make, &inbox))?;
    Ok(commands)
}

fn work<T: Fn(WorkerEvent) + Clone + Send + Sync + 'static>(
    reporter: &Reporter<T>,
    make: &Maker,
    inbox: &Receiver<WorkerCommand>,
) {
    let tell = reporter.0.clone();
    let events = EventSink::new(move |event| tell(WorkerEvent::Heard(event)));
    let mut voice = match make(events) {
        Ok(voice) => voice,
        Err(error) => return reporter.report(WorkerEvent::Replied(Err(error))),
    };
    reporter.report(WorkerEvent::Replied(Ok(WorkerReply::Opened)));
    while let Ok(command) = inbox.recv() {
        reporter.report(WorkerEvent::Replied(carry_out(&command, &mut *voice)));
    }
    if let Err(error) = voice.stop() {
        // This failure may be why the worker was released, and there is nothing left to do about
        // it.
        log::info!("a voice that was given up could not be stopped: {error}");
    }
    reporter.report(WorkerEvent::Hushed);
}

fn carry_out(command: &WorkerCommand, voice: &mut dyn Voice) -> Result<WorkerReply, CallError> {
    match command {
        WorkerCommand::SetSpeech(speech) => voice.set_speech(speech).map(WorkerReply::SpeechSet),
        WorkerCommand::Speak(text) => voice.speak(text).map(WorkerReply::Spoken),
        WorkerCommand::Stop => voice.stop().map(|()| WorkerReply::Stopped),
        WorkerCommand::Voices => voice.voices().map(WorkerReply::Voices),
        WorkerCommand::Check => voice.check().map(|()| WorkerReply::Checked),
    }
}

/// Reports for one worker. Dropped with the thread, even by a panic in the voice, it says that the
/// worker is gone.
struct Reporter<T: Fn(WorkerEvent)>(T);

impl<T: Fn(WorkerEvent)> Reporter<T> {
    fn report(&self, event: WorkerEvent) {
        (self.0)(event);
    }
}

impl<T: Fn(WorkerEvent)> Drop for Reporter<T> {
    fn drop(&mut self) {
        self.report(WorkerEvent::Gone);
    }
}
