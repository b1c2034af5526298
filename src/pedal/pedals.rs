//! The gestures and what they mean, together.

use std::time::Duration;

use super::bindings::Bindings;
use super::gestures::{Gesture, GestureRecognizer};
use super::input::{Input, InputEvent, Transition};
use super::intent::Intent;
use super::times::Times;

/// All the tyer's inputs.
#[derive(Debug, Default)]
pub struct Pedals {
    bindings: Bindings,
    times: Times,
    recognizer: GestureRecognizer,
}

impl Pedals {
    /// Inputs with these bindings, told apart by these times.
    pub fn new(bindings: Bindings, times: Times) -> Self {
        Self {
            bindings,
            times,
            recognizer: GestureRecognizer::new(times),
        }
    }

    /// What the inputs are bound to.
    pub const fn bindings(&self) -> &Bindings {
        &self.bindings
    }

    /// Takes in what happened at `now`. `has_gestures` says whether long and double presses count
    /// here; where they do not, every press counts as soon as it is down.
    pub fn take(
        &mut self,
        event: &InputEvent,
        now: Duration,
        has_gestures: bool,
    ) -> Option<Intent> {
        let intent = self.bindings.intent(&event.input);
        let is_plain = !(has_gestures && intent == Some(Intent::Next));
        let gesture = self.recognizer.take(event, now, is_plain)?;
        meaning(intent?, gesture)
    }

    /// The input that has just been pressed, whatever it means; for binding it. A row of knocks is one
    /// when it is over.
    pub fn pressed(&mut self, event: &InputEvent, now: Duration) -> Option<Input> {
        if let Input::Knocks(_) = event.input {
            return (event.transition == Transition::Up).then(|| event.input.clone());
        }
        self.recognizer
            .take(event, now, true)
            .map(|_| event.input.clone())
    }

    /// When [`Pedals::wait`] has something to tell at the earliest.
    pub fn due(&self) -> Option<Duration> {
        self.recognizer.due()
    }

    /// The meaning of a gesture that has come about because nothing more happened.
    pub fn wait(&mut self, now: Duration) -> Option<Intent> {
        let (input, gesture) = self.recognizer.wait(now)?;
        meaning(self.bindings.intent(&input)?, gesture)
    }

    /// Forgets what is down: its release may never be heard of.
    pub fn let_go(&mut self) {
        self.recognizer.let_go();
    }

    /// Goes by these bindings and times from now on.
    pub fn set(&mut self, bindings: Bindings, times: Times) {
        self.bindings = bindings;
        if self.times != times {
            self.times = times;
            self.recognizer.set_times(times);
        }
    }
}

/// With long and double presses switched on, the one pedal that is bound to next does three things:
/// pressed it goes on, held long it goes back, pressed twice it has the step said again.
const fn meaning(intent: Intent, gesture: Gesture) -> Option<Intent> {
    match (intent, gesture) {
        (intent, Gesture::Tap) => Some(intent),
        (Intent::Next, Gesture::Long) => Some(Intent::Back),
        (Intent::Next, Gesture::Double) => Some(Intent::Again),
        (_, Gesture::Long | Gesture::Double) => None,
    }
}
