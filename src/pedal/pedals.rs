//! The gestures and what they mean, together.

use std::time::Duration;

use super::{Bindings, Gesture, Input, Intent, Machine, Raw, Times};

/// All the tyer's inputs.
#[derive(Debug, Default)]
pub struct Pedals {
    bindings: Bindings,
    times: Times,
    machine: Machine,
}

impl Pedals {
    /// With these bindings and times.
    pub fn new(bindings: Bindings, times: Times) -> Self {
        Self {
            bindings,
            times,
            machine: Machine::new(times),
        }
    }

    /// What they are bound to.
    pub const fn bindings(&self) -> &Bindings {
        &self.bindings
    }

    /// Takes in what happened at `now`. `has_gestures` says whether long and double presses count
    /// here; where they do not, every press counts as soon as it is down.
    pub fn take(&mut self, raw: &Raw, now: Duration, has_gestures: bool) -> Option<Intent> {
        let intent = self.bindings.intent(&raw.input);
        let is_plain = !(has_gestures && intent == Some(Intent::Next));
        let gesture = self.machine.take(raw, now, is_plain)?;
        meaning(intent?, gesture)
    }

    /// The input that has just been pressed, whatever it means; for learning.
    pub fn pressed(&mut self, raw: &Raw, now: Duration) -> Option<Input> {
        self.machine.take(raw, now, true).map(|_| raw.input.clone())
    }

    /// When [`Pedals::wait`] has something to tell at the earliest.
    pub fn due(&self) -> Option<Duration> {
        self.machine.due()
    }

    /// What time alone has made of a press.
    pub fn wait(&mut self, now: Duration) -> Option<Intent> {
        let (input, gesture) = self.machine.wait(now)?;
        meaning(self.bindings.intent(&input)?, gesture)
    }

    /// Forgets what is down.
    pub fn let_go(&mut self) {
        self.machine.let_go();
    }

    /// From now on with these bindings and times.
    pub fn set(&mut self, bindings: Bindings, times: Times) {
        self.bindings = bindings;
        if self.times != times {
            self.times = times;
            self.machine.set_times(times);
        }
    }
}

/// One pedal does three things when long and double presses are switched on: next, held long
/// back, pressed twice again.
const fn meaning(intent: Intent, gesture: Gesture) -> Option<Intent> {
    match (intent, gesture) {
        (intent, Gesture::Tap) => Some(intent),
        (Intent::Next, Gesture::Long) => Some(Intent::Back),
        (Intent::Next, Gesture::Double) => Some(Intent::Again),
        (_, Gesture::Long | Gesture::Double) => None,
    }
}
