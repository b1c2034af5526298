//! From raw presses to gestures. Time is an argument: nothing here looks at a clock.
//!
//! A second press of the same input within the lock-out is a bounce of the contact and counts
//! for nothing. The lock-out runs from when a press that counted went down, and for a moment from
//! when it came up; a bounce prolongs it only when it came faster than a foot can, so that a contact or a pedal
//! that chatters for a second counts once and a foot in a hurry is not shut out for ever.

use std::collections::HashMap;
use std::time::Duration;

use super::{Input, Times};

/// What an input did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// It went down.
    Down,
    /// It is held, and the system repeats it.
    Repeat,
    /// It was let go of.
    Up,
}

/// One thing that happened to an input.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Raw {
    /// Which.
    pub input: Input,
    /// What.
    pub edge: Edge,
}

/// How an input was pressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Gesture {
    /// Once, briefly or for however long it was held.
    Tap,
    /// Held for [`Times::long`].
    Long,
    /// Twice within [`Times::double`].
    Double,
}

/// Faster than a foot or a finger presses again; *from memory*, eight a second.
const FASTEST: Duration = Duration::from_millis(120);

/// Follows every input.
#[derive(Debug, Default)]
pub struct Machine {
    times: Times,
    inputs: HashMap<Input, Follow>,
}

/// What is known of one input.
#[derive(Clone, Copy, Debug, Default)]
struct Follow {
    /// When a press that is to be ignored ends to be so.
    locked_until: Option<Duration>,
    /// When it last went down, counting or not.
    last_down: Option<Duration>,
    stage: Stage,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Stage {
    #[default]
    Idle,
    /// A press that counts for nothing, until it is let go of.
    Ignored,
    /// Down, and already told of.
    Told,
    /// Down since then, and not told of yet.
    Held(Duration),
    /// Tapped and let go of; a second press until then makes it a double one.
    Once { until: Duration },
}

impl Machine {
    /// A machine with these times.
    pub fn new(times: Times) -> Self {
        Self {
            times,
            inputs: HashMap::new(),
        }
    }

    /// From now on with these times. What is down now is forgotten.
    pub fn set_times(&mut self, times: Times) {
        *self = Self::new(times);
    }

    /// Forgets what is down: the window has lost the keys and will not hear of a release.
    pub fn let_go(&mut self) {
        for follow in self.inputs.values_mut() {
            follow.stage = Stage::Idle;
        }
    }

    /// Takes in what happened at `now`, measured from any beginning. With `is_plain` the input
    /// has no other meaning when pressed long or twice, and is told of as soon as it is down.
    pub fn take(&mut self, raw: &Raw, now: Duration, is_plain: bool) -> Option<Gesture> {
        let times = self.times;
        let follow = self.inputs.entry(raw.input.clone()).or_default();
        match raw.edge {
            Edge::Repeat => None,
            Edge::Down => follow.down(now, times, is_plain),
            Edge::Up => follow.up(now, times),
        }
    }

    /// When [`Machine::wait`] has something to tell at the earliest.
    pub fn due(&self) -> Option<Duration> {
        self.inputs
            .values()
            .filter_map(|follow| follow.due(self.times))
            .min()
    }

    /// What has become of an input by the passing of time alone.
    pub fn wait(&mut self, now: Duration) -> Option<(Input, Gesture)> {
        let times = self.times;
        let (input, follow) = self
            .inputs
            .iter_mut()
            .find(|(_, follow)| follow.due(times).is_some_and(|due| due <= now))?;
        let gesture = if let Stage::Held(_) = follow.stage {
            follow.stage = Stage::Told;
            Gesture::Long
        } else {
            follow.stage = Stage::Idle;
            Gesture::Tap
        };
        Some((input.clone(), gesture))
    }
}

impl Follow {
    fn down(&mut self, now: Duration, times: Times, is_plain: bool) -> Option<Gesture> {
        let since = self.last_down.map(|down| now.saturating_sub(down));
        self.last_down = Some(now);
        if let Stage::Once { until } = self.stage
            && now <= until
            && since.is_some_and(|since| since >= FASTEST / 2)
        {
            self.stage = Stage::Told;
            self.lock(now, times);
            return Some(Gesture::Double);
        }
        if self.locked_until.is_some_and(|until| now < until) {
            let is_chatter = since.is_some_and(|since| since < FASTEST);
            if is_chatter {
                self.lock(now, times);
            }
            // The bounce of a press that is still to be told of must not lose it, and one that
            // was told of goes on through its chatter: its release may chatter too.
            if !matches!(self.stage, Stage::Held(_) | Stage::Once { .. }) {
                self.stage = if is_chatter {
                    Stage::Told
                } else {
                    Stage::Ignored
                };
            }
            return None;
        }
        self.lock(now, times);
        if is_plain || (times.long.is_none() && times.double.is_none()) {
            self.stage = Stage::Told;
            Some(Gesture::Tap)
        } else {
            self.stage = Stage::Held(now);
            None
        }
    }

    fn up(&mut self, now: Duration, times: Times) -> Option<Gesture> {
        match self.stage {
            Stage::Idle | Stage::Once { .. } => None,
            Stage::Ignored => {
                self.stage = Stage::Idle;
                None
            }
            Stage::Told => {
                self.stage = Stage::Idle;
                self.lock_after_release(now, times);
                None
            }
            Stage::Held(since) => {
                self.lock_after_release(now, times);
                let is_long = times
                    .long
                    .is_some_and(|long| now.saturating_sub(since) >= long);
                match times.double {
                    _ if is_long => {
                        self.stage = Stage::Idle;
                        Some(Gesture::Long)
                    }
                    Some(double) => {
                        self.stage = Stage::Once {
                            until: since + double,
                        };
                        None
                    }
                    None => {
                        self.stage = Stage::Idle;
                        Some(Gesture::Tap)
                    }
                }
            }
        }
    }

    fn lock(&mut self, now: Duration, times: Times) {
        self.locked_until = Some(now + times.bounce);
    }

    /// Only as long as a contact chatters: a foot may come down again soon after a long hold.
    fn lock_after_release(&mut self, now: Duration, times: Times) {
        let until = now + times.bounce.min(FASTEST);
        self.locked_until = self.locked_until.max(Some(until));
    }

    fn due(&self, times: Times) -> Option<Duration> {
        match self.stage {
            Stage::Held(since) => times.long.map(|long| since + long),
            Stage::Once { until } => Some(until),
            Stage::Idle | Stage::Ignored | Stage::Told => None,
        }
    }
}
