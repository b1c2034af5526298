//! What reaches a session, and what it wants done.

use std::time::Duration;

use crate::files::Teller;
use crate::pedal::EarNews;
use crate::settings::{Settings, SettingsError};
use crate::shelf::{Held, Kept, ShelfError, Tie};
use crate::voice::{Cue, SpeechSettings, VoiceEvent};
use crate::words::Spoken;

/// What a session can ask to be woken for.
///
/// ```
/// use std::time::Duration;
///
/// use marlinspeak::guide::Plan;
/// use marlinspeak::pedal::{Intent, Press};
/// use marlinspeak::session::{Effect, Event, InHand, Session, Timer, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::{Spoken, Words};
///
/// let flashing = Settings { flash: true, ..Settings::default() };
/// let mut session = Session::new(Words::english(), flashing, Wishes::default());
/// let bell_rope = Plan::read("3", "5", "2", "").unwrap();
/// session.take_in_hand(InHand::begun(None, &bell_rope), Duration::ZERO);
/// session.effects();
///
/// // A press lights the edge of the screen, and the session asks to be woken to put it out.
/// session.press(Some(Intent::Next), &Press::default(), Duration::from_secs(5));
/// assert!(session.is_flashing());
/// let asks = |effect: &Effect| matches!(effect, Effect::Wake(Timer::Flash, Some(_)));
/// assert!(session.effects().iter().any(asks));
/// session.hear(Event::Woken(Timer::Flash), &Spoken::default(), Duration::from_secs(6));
/// assert!(!session.is_flashing());
/// ```
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
    /// Nothing was typed into a field for a moment.
    Typing,
}

/// What happens outside, other than presses.
///
/// ```
/// use std::time::Duration;
///
/// use marlinspeak::session::{Effect, Event, Session, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::{Spoken, Words};
///
/// let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
/// session.hear(Event::Focus(true), &Spoken::default(), Duration::ZERO);
/// session.effects();
/// // Presses go to another window from now on: that stands among the notices, and is said.
/// session.hear(Event::Focus(false), &Spoken::default(), Duration::from_secs(5));
/// assert!(session.notices()[0].starts_with("Another window is taking the keys"));
/// assert!(session.effects().iter().any(|effect| matches!(effect, Effect::Say(_))));
/// ```
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
    /// The ear reports something besides the rows of knocks, which are presses.
    Ear(EarNews),
}

impl Event {
    /// Whether nothing was typed for a moment: what stands in the field is to be said.
    ///
    /// ```
    /// use marlinspeak::session::{Event, Timer};
    ///
    /// assert!(Event::Woken(Timer::Typing).is_typing_at_rest());
    /// assert!(!Event::Woken(Timer::Flash).is_typing_at_rest());
    /// ```
    pub const fn is_typing_at_rest(&self) -> bool {
        matches!(self, Self::Woken(Timer::Typing))
    }
}

/// What a session wants done by the face that drives it, in this order.
///
/// ```
/// use marlinspeak::session::{Effect, Session, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::Words;
///
/// let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
/// session.effects();
/// // A faster voice is kept for the next day, asked of the service, shown and said.
/// session.change_speed(true);
/// let effects = session.effects();
/// let [Effect::KeepSettings(_), Effect::SetSpeech(speech), Effect::Show, Effect::Say(said)] =
///     &effects[..]
/// else {
///     panic!("{effects:?}");
/// };
/// assert!(said.as_str().contains(&speech.words_per_minute.to_string()));
/// ```
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
    /// Listen to a microphone for knocks from now on, or to none.
    Listen(bool),
    /// Save the settings.
    KeepSettings(Box<Settings>),
    /// Open the settings; the tie waits behind them.
    OpenSettings,
    /// Open the form of the log for this tie.
    OpenLog(Box<Tie>),
    /// Begin this tie, the next piece of a batch, in the place of the one that is done.
    BeginNext(Box<Tie>),
    /// The tie is left: nothing is in hand any more.
    Leave,
}

/// The way from a service to the session of its face: what is wrong with the settings is an event.
///
/// ```
/// use std::cell::RefCell;
///
/// use marlinspeak::files::Reason;
/// use marlinspeak::session::{Event, ToSession};
/// use marlinspeak::settings::{Settings, SettingsError, SettingsReading};
///
/// // The settings could not be read: the usual ones hold, and the session hears of it.
/// let heard = RefCell::new(Vec::new());
/// let trouble = vec![SettingsError::Io(Reason::NotAllowed)];
/// let settings = SettingsReading::of(Settings::default(), trouble)
///     .hand_on(&mut ToSession(|event| heard.borrow_mut().push(event)));
/// assert_eq!(settings, Settings::default());
/// assert!(matches!(heard.borrow()[..], [Event::Settings(SettingsError::Io(_))]));
/// ```
pub struct ToSession<F: Fn(Event)>(pub F);

impl<F: Fn(Event)> Teller<SettingsError> for ToSession<F> {
    fn tell_of(&mut self, troubles: Vec<SettingsError>) {
        for trouble in troubles {
            (self.0)(Event::Settings(trouble));
        }
    }
}
