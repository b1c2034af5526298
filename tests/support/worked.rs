//! What is worked on the way to a test: a line of the settings, a pedal.

use std::time::Duration;

use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{Message, ServiceEvent};
use marlinspeak::pedal::{Input, InputEvent, Transition};
use marlinspeak::session::Setting;

use super::hands::Hands;

/// On the settings screen, with the focus on a line.
pub fn settings_at(hands: &mut Hands, line: Setting) {
    hands.press(Key::Character("t".into()));
    let at = Setting::ALL
        .iter()
        .position(|other| *other == line)
        .unwrap();
    for _ in 0..at {
        hands.press(Key::Named(Named::ArrowDown));
    }
}

/// Steps on a pedal, or does what else it is, and lets it go.
pub fn pedal(hands: &mut Hands, input: &Input) {
    hands.clock.pass(Duration::from_secs(1));
    for transition in [Transition::Down, Transition::Up] {
        let input = input.clone();
        hands.tell(Message::Service(ServiceEvent::Pedal(InputEvent {
            input,
            transition,
        })));
    }
}
