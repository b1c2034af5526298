//! What reaches a session, and what it wants done.

use std::time::Duration;

use crate::files::Teller;
use crate::settings::{Settings, SettingsError};
use crate::shelf::{Held, Kept, ShelfError, Tie};
use crate::voice::{Cue, SpeechSettings, VoiceEvent};
use crate::words::Spoken;

/// What a session can ask to be woken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Timer {
    /// A press may have become a long one.
    Gesture,
    /// The flash at the edge of the screen is over.
    Flash,
    /// It is time for the next step, at the tyer's own pace.
    AutoAdvance,
    /// What was asked to be saved should be on disk.
    Saving,
}

/// What happens outside, other than presses.
#[derive(Clone, Debug)]
pub enum Event {
    /// The voice reports something.
    Voice(VoiceEvent),
    /// A tie was saved, or was not.
    Kept(Kept),
    /// The face that shows the tie has the keys of the keyboard, or has lost them.
    Focus(bool),
    /// The time asked for by [`Effect::Wake`] has come.
    Woken(Timer),
    /// The settings could not be read or kept.
    Settings(SettingsError),
    /// The system will not keep the screen on.
    NotAwake,
    /// There is no shelf to keep ties on.
    NoShelf(ShelfError),
}

/// What a session wants done by the face that drives it, in this order.
#[derive(Debug)]
pub enum Effect {
    /// Say this instead of whatever is being said.
    Say(Spoken),
    /// Say nothing more.
    Hush,
    /// Show the page again, even where nothing on it has changed: the tyer asked for it.
    Show,
    /// Play this sound, at a volume in percent.
    Cue(Cue, u8),
    /// Send [`Event::Woken`] after this time, or not at all; in place of what was asked before
    /// for the same timer.
    Wake(Timer, Option<Duration>),
    /// Keep the screen lit, or leave that to the system.
    StayAwake(bool),
    /// Save this state of the tie.
    Keep(Box<Tie>),
    /// Let go of the tie once its last state is saved.
    PutAway(Held),
    /// Speak like this from now on.
    SetSpeech(SpeechSettings),
    /// Save the settings.
    KeepSettings(Box<Settings>),
    /// Open the settings; the tie waits behind them.
    OpenSettings,
    /// Open the form of the log for this tie.
    OpenLog(Box<Tie>),
    /// The tie is left: nothing is in hand any more.
    Leave,
}

/// The way from a service to the session of its face: what is wrong with the settings is an event.
pub struct ToSession<F: Fn(Event)>(pub F);

impl<F: Fn(Event)> Teller<SettingsError> for ToSession<F> {
    fn tell_of(&mut self, troubles: Vec<SettingsError>) {
        for trouble in troubles {
            (self.0)(Event::Settings(trouble));
        }
    }
}
