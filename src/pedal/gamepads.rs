//! Game controllers, and pedals that pretend to be one.

use std::thread;

use gilrs::{Button, EventType, Gilrs, GilrsBuilder};

use super::input::{Input, InputEvent, Transition};

/// Tells what every game controller does, from a thread that sleeps until one of them does
/// something or is plugged in.
pub(super) fn listen(tell: impl Fn(InputEvent) + Send + 'static) {
    let started = thread::Builder::new()
        .name("pads".to_owned())
        .spawn(move || {
            let Some(mut pads) = open() else {
                log::warn!("game controllers cannot be followed");
                return;
            };
            log::info!("{} game controllers", pads.gamepads().count());
            while let Some(event) = pads.next_event_blocking(None) {
                match event.event {
                    EventType::Connected => log::info!("a game controller is plugged in"),
                    EventType::Disconnected => log::info!("a game controller is unplugged"),
                    _ => {}
                }
                if let Some(event) = read(&event.event) {
                    tell(event);
                }
            }
        });
    if let Err(error) = started {
        // The keyboard works without them.
        log::warn!("game controllers cannot be followed: {error}");
    }
}

fn open() -> Option<Gilrs> {
    GilrsBuilder::new()
        .with_force_feedback(false)
        .set_update_state(false)
        .build()
        .ok()
}

/// How many game controllers are plugged in now.
pub(super) fn count() -> usize {
    open().map_or(0, |pads| pads.gamepads().count())
}

fn read(event: &EventType) -> Option<InputEvent> {
    let (button, code, transition) = match event {
        EventType::ButtonPressed(button, code) => (button, code, Transition::Down),
        EventType::ButtonRepeated(button, code) => (button, code, Transition::Repeat),
        EventType::ButtonReleased(button, code) => (button, code, Transition::Up),
        _ => return None,
    };
    let name = match button {
        // No table of controllers lists this pedal: its buttons are told apart by their codes.
        Button::Unknown => code.into_u32().to_string(),
        button => format!("{button:?}"),
    };
    Some(InputEvent {
        input: Input::Pad(name),
        transition,
    })
}
