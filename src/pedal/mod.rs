//! From a press to what the tyer means by it.
//!
//! A [`Machine`] turns what an [`Input`] does into gestures, and [`Bindings`] say what they
//! mean; [`Pedals`] is the two together. All of that is pure: time is an argument, and nothing
//! here knows of a window or a knot. Only [`listen`] touches hardware: it follows game
//! controllers and MIDI pedals on threads of its own.

mod binding;
mod input;
mod intent;
mod learning;
mod machine;
mod midi;
mod pads;
mod pedals;
mod times;

pub use binding::{Bindings, Press};
pub use input::Input;
pub use intent::Intent;
pub use learning::{Asked, Learning};
pub use machine::{Edge, Gesture, Machine, Raw};
pub use midi::Wire;
pub use pedals::Pedals;
pub use times::Times;

/// Follows every game controller and MIDI pedal, whether plugged in now or later, and hands on
/// what they do. `tell` must not wait. A machine without such devices, or without the system
/// services for them, has none: that is no failure.
pub fn listen(tell: impl Fn(Raw) + Clone + Send + 'static) {
    pads::listen(tell.clone());
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
        controllers: pads::count(),
        midi: midi::count(),
    }
}
