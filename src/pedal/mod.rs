//! From a press to what the tyer means by it.
//!
//! A [`GestureRecognizer`] turns what an [`Input`] does into gestures, and [`Bindings`] say what
//! they mean; [`Pedals`] is the two together. All of that is pure: time is an argument, and nothing
//! here knows of a window or a knot. Only [`listen`] touches hardware: it follows game
//! controllers and MIDI pedals on threads of its own.

mod bindings;
mod ear;
mod gamepads;
mod gestures;
mod input;
mod intent;
mod key_binding;
mod knocks;
mod midi;
mod pedals;
mod rest;
mod times;

pub use bindings::{Bindings, Press};
pub use ear::{Ear, EarNews};
pub use gestures::{Gesture, GestureRecognizer};
pub use input::{Input, InputEvent, Transition};
pub use intent::Intent;
pub use key_binding::{Binding, KeyBinder};
pub use knocks::{Heard, Knock, KnockDetector, RowDetector, Tuning};
pub use midi::MidiDecoder;
pub use pedals::Pedals;
pub use times::Times;

/// Follows every game controller and MIDI pedal, whether plugged in now or later, and hands on
/// what they do. `tell` must not wait. A machine without such devices, or without the system
/// services for them, has none: that is no failure.
pub fn listen(tell: impl Fn(InputEvent) + Clone + Send + 'static) {
    gamepads::listen(tell.clone());
    midi::listen(tell);
}

/// What is plugged in now.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Plugged {
    /// Game controllers, and pedals that pretend to be one.
    pub controllers: usize,
    /// Inputs of MIDI, those of programs among them.
    pub midi: usize,
}

/// Looks at what is plugged in. May take as long as the system does.
pub fn plugged() -> Plugged {
    Plugged {
        controllers: gamepads::count(),
        midi: midi::count(),
    }
}
