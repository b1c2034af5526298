//! What reaches the app from outside the window.

use crate::pedal::InputEvent;
use crate::session::Event;

/// What reaches the app from threads that are not the window's.
#[derive(Debug)]
pub enum ServiceEvent {
    /// Something the session hears of.
    Session(Event),
    /// A game controller, a MIDI pedal or a row of knocks did something.
    Pedal(InputEvent),
}
