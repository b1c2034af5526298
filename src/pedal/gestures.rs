//! From what inputs do to gestures. Time is an argument: nothing here looks at a clock.
//!
//! A second press of the same input within the lock-out is a bounce of the contact and counts
//! for nothing. The lock-out runs from when a press that counted went down, and for a moment from
//! when it came up; a bounce prolongs it only when it came faster than a foot can, so that a
//! contact or a pedal that chatters for a second counts once and a foot in a hurry is not shut
//! out for ever.

use std::collections::HashMap;
use std::time::Duration;

use super::input::{Input, InputEvent, Transition};
use super::times::Times;

/// A way to press an input that can mean something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Gesture {
    /// Once, briefly or for however long it was held.
    Tap,
    /// Held down for [`Times::long`] at least.
    Long,
    /// Pressed a second time within [`Times::double`].
    Double,
}

/// No foot and no finger presses again as soon as this; *from memory*, eight presses a second.
const FASTEST: Duration = Duration::from_millis(120);

/// Follows every input, and tells the gestures that are made with it.
#[derive(Debug, Default)]
pub struct GestureRecognizer {
    times: Times,
    inputs: HashMap<Input, InputState>,
}

/// What is known of one input so far.
#[derive(Clone, Copy, Debug, Default)]
struct InputState {
    /// Until when a press is ignored.
    locked_until: Option<Duration>,
    /// When it last went down, counting or not.
    last_down: Option<Duration>,
    press: PressState,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum PressState {
    #[default]
    Idle,
    /// A press that counts for nothing, until it is let go of.
    Ignored,
    /// Down, and its gesture has been told.
    Told,
    /// Down since then, and its gesture is still to be told.
    Held(Duration),
    /// Tapped and let go of; a second press until then makes it a double one.
    Once { until: Duration },
}

impl GestureRecognizer {
    /// A recognizer with these times.
    pub fn new(times: Times) -> Self {
        Self {
            times,
            inputs: HashMap::new(),
        }
    }

    /// Goes by these times from now on. What is down now is forgotten.
    pub fn set_times(&mut self, times: Times) {
        *self = Self::new(times);
    }

    /// Forgets what is down: the window has lost the keys and will not hear of a release.
    pub fn let_go(&mut self) {
        for state in self.inputs.values_mut() {
            state.press = PressState::Idle;
        }
    }

    /// Takes in what happened at `now`, measured from any beginning. With `is_plain` the input
    /// has no other meaning when pressed long or twice, and is told of as soon as it is down.
    pub fn take(&mut self, event: &InputEvent, now: Duration, is_plain: bool) -> Option<Gesture> {
        let times = self.times;
        let state = self.inputs.entry(event.input.clone()).or_default();
        match event.transition {
            Transition::Repeat => None,
            Transition::Down => state.down(now, times, is_plain),
            Transition::Up => state.up(now, times),
        }
    }

    /// When [`GestureRecognizer::wait`] has something to tell at the earliest.
    pub fn due(&self) -> Option<Duration> {
        self.inputs
            .values()
            .filter_map(|state| state.due(self.times))
            .min()
    }

    /// The gesture that has come about because nothing more happened: an input was held long
    /// enough, or a tap was not followed by a second one.
    pub fn wait(&mut self, now: Duration) -> Option<(Input, Gesture)> {
        let times = self.times;
        let (input, state) = self
            .inputs
            .iter_mut()
            .find(|(_, state)| state.due(times).is_some_and(|due| due <= now))?;
        let gesture = if let PressState::Held(_) = state.press {
            state.press = PressState::Told;
            Gesture::Long
        } else {
            state.press = PressState::Idle;
            Gesture::Tap
        };
        Some((input.clone(), gesture))
    }
}

impl InputState {
    fn down(&mut self, now: Duration, times: Times, is_plain: bool) -> Option<Gesture> {
        let since = self.last_down.map(|down| now.saturating_sub(down));
        self.last_down = Some(now);
        if let PressState::Once { until } = self.press
            && now <= until
            && since.is_some_and(|since| since >= FASTEST / 2)
        {
            self.press = PressState::Told;
            self.lock(now, times);
            return Some(Gesture::Double);
        }
        if self.locked_until.is_some_and(|until| now < until) {
            let is_chatter = since.is_some_and(|since| since < FASTEST);
            if is_chatter {
                self.lock(now, times);
            }
            // A bounce must not lose a press whose gesture is still to be told. A press that was
            // told of is marked as told while the contact chatters, since its release may chatter
            // too.
            if !matches!(self.press, PressState::Held(_) | PressState::Once { .. }) {
                self.press = if is_chatter {
                    PressState::Told
                } else {
                    PressState::Ignored
                };
            }
            return None;
        }
        self.lock(now, times);
        if is_plain || (times.long.is_none() && times.double.is_none()) {
            self.press = PressState::Told;
            Some(Gesture::Tap)
        } else {
            self.press = PressState::Held(now);
            None
        }
    }

    fn up(&mut self, now: Duration, times: Times) -> Option<Gesture> {
        match self.press {
            PressState::Idle | PressState::Once { .. } => None,
            PressState::Ignored => {
                self.press = PressState::Idle;
                None
            }
            PressState::Told => {
                self.press = PressState::Idle;
                self.lock_after_release(now, times);
                None
            }
            PressState::Held(since) => {
                self.lock_after_release(now, times);
                let is_long = times
                    .long
                    .is_some_and(|long| now.saturating_sub(since) >= long);
                match times.double {
                    _ if is_long => {
                        self.press = PressState::Idle;
                        Some(Gesture::Long)
                    }
                    Some(double) => {
                        self.press = PressState::Once {
                            until: since + double,
                        };
                        None
                    }
                    None => {
                        self.press = PressState::Idle;
                        Some(Gesture::Tap)
                    }
                }
            }
        }
    }

    fn lock(&mut self, now: Duration, times: Times) {
        self.locked_until = Some(now + times.bounce);
    }

    /// Ignores what follows a release, but only as long as a contact chatters: a foot may come down
    /// again soon after it held a pedal for long.
    fn lock_after_release(&mut self, now: Duration, times: Times) {
        let until = now + times.bounce.min(FASTEST);
        self.locked_until = self.locked_until.max(Some(until));
    }

    fn due(&self, times: Times) -> Option<Duration> {
        match self.press {
            PressState::Held(since) => times.long.map(|long| since + long),
            PressState::Once { until } => Some(until),
            PressState::Idle | PressState::Ignored | PressState::Told => None,
        }
    }
}
