//! Game controllers, and pedals that pretend to be one.

use std::thread;

use gilrs::{Button, EventType, Gilrs, GilrsBuilder};

use super::{Edge, Input, Raw};

/// Follows them on a thread that sleeps until one of them does something or is plugged in.
pub(super) fn listen(tell: impl Fn(Raw) + Send + 'static) {
    // Without a thread there are no game controllers; the keys are there all the same.
    let _ = thread::Builder::new()
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
                if let Some(raw) = raw(&event.event) {
                    tell(raw);
                }
            }
        });
}

fn open() -> Option<Gilrs> {
    GilrsBuilder::new()
        .with_force_feedback(false)
        .set_update_state(false)
        .build()
        .ok()
}

/// How many are plugged in now.
pub(super) fn count() -> usize {
    open().map_or(0, |pads| pads.gamepads().count())
}

fn raw(event: &EventType) -> Option<Raw> {
    let (button, code, edge) = match event {
        EventType::ButtonPressed(button, code) => (button, code, Edge::Down),
        EventType::ButtonRepeated(button, code) => (button, code, Edge::Repeat),
        EventType::ButtonReleased(button, code) => (button, code, Edge::Up),
        _ => return None,
    };
    let name = match button {
        // A pedal that no table of controllers knows: its code tells its buttons apart.
        Button::Unknown => code.into_u32().to_string(),
        button => format!("{button:?}"),
    };
    Some(Raw {
        input: Input::Pad(name),
        edge,
    })
}
