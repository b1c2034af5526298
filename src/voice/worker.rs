//! The thread that owns a voice and makes its calls.

use std::io;
use std::sync::Arc;
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;

use super::supervisor::Input;
use super::{Ear, Fit, Heard, Manner, MessageKey, SpokenText, Trouble, Voice, VoiceName};

/// Connects to a speech service; called on the worker's thread, perhaps on several at once.
pub(super) type Maker = dyn Fn(Ear) -> Result<Box<dyn Voice>, Trouble> + Send + Sync;

/// Which worker; never used twice.
pub(super) type WorkerId = u64;

/// One call to make.
#[derive(Debug)]
pub(super) enum Order {
    Manner(Manner),
    Speak(SpokenText),
    Stop,
    Voices,
    Check,
}

/// What came of a call. Opening the voice is the first call, and needs no order.
#[derive(Debug)]
pub(super) enum Answer {
    Opened,
    Manner(Fit),
    Spoken(Option<MessageKey>),
    Stopped,
    Voices(Vec<VoiceName>),
    Checked,
}

/// What a worker tells its supervisor.
#[derive(Debug)]
pub(super) enum Report {
    Answer(Result<Answer, Trouble>),
    Heard(Heard),
    /// It was let go and has stopped its voice.
    Hushed,
    /// The thread ends: nothing more will come from it.
    Gone,
}

/// Starts a worker. It leaves by itself, its voice stopped, when the sender is dropped.
///
/// # Errors
/// When the system has no thread to give.
pub(super) fn hire(
    id: WorkerId,
    make: Arc<Maker>,
    supervisor: Sender<Input>,
) -> io::Result<Sender<Order>> {
    let (orders, inbox) = mpsc::channel();
    let desk = Desk { id, supervisor };
    thread::Builder::new()
        .name(format!("voice {id}"))
        .spawn(move || work(&desk, &*make, &inbox))?;
    Ok(orders)
}

fn work(desk: &Desk, make: &Maker, inbox: &Receiver<Order>) {
    let (id, supervisor) = (desk.id, desk.supervisor.clone());
    let ear = Ear::new(move |heard| {
        // A supervisor that is gone has nobody to tell.
        let _ = supervisor.send(Input::Report(id, Report::Heard(heard)));
    });
    let mut voice = match make(ear) {
        Ok(voice) => voice,
        Err(trouble) => return desk.report(Report::Answer(Err(trouble))),
    };
    desk.report(Report::Answer(Ok(Answer::Opened)));
    while let Ok(order) = inbox.recv() {
        desk.report(Report::Answer(carry_out(&order, &mut *voice)));
    }
    if let Err(trouble) = voice.stop() {
        // It may be why the worker was let go; there is nothing left to do about it.
        drop(trouble);
    }
    desk.report(Report::Hushed);
}

fn carry_out(order: &Order, voice: &mut dyn Voice) -> Result<Answer, Trouble> {
    match order {
        Order::Manner(manner) => voice.set_manner(manner).map(Answer::Manner),
        Order::Speak(text) => voice.speak(text).map(Answer::Spoken),
        Order::Stop => voice.stop().map(|()| Answer::Stopped),
        Order::Voices => voice.voices().map(Answer::Voices),
        Order::Check => voice.check().map(|()| Answer::Checked),
    }
}

/// A worker's end of the line to its supervisor. Dropped with the thread, even by a panic in the
/// voice, it says that the worker is gone.
struct Desk {
    id: WorkerId,
    supervisor: Sender<Input>,
}

impl Desk {
    fn report(&self, report: Report) {
        // A supervisor that is gone has let its workers go.
        let _ = self.supervisor.send(Input::Report(self.id, report));
    }
}

impl Drop for Desk {
    fn drop(&mut self) {
        self.report(Report::Gone);
    }
}
