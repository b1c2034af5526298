//! The times that tell one press from another.

use std::ops::RangeInclusive;
use std::time::Duration;

/// Adjustable times. The figures are those of accessibility practice; EN 301 549 5.8 asks that a
/// double strike can be ignored for at least half a second.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Times {
    /// After a press the same input is ignored for so long.
    pub bounce: Duration,
    /// Held so long a press means something else; none when it does not.
    pub long: Option<Duration>,
    /// Two presses within so long mean something else; none when they do not.
    pub double: Option<Duration>,
}

impl Times {
    /// Bounds of [`Times::bounce`], in milliseconds.
    pub const BOUNCE: RangeInclusive<u16> = 0..=1000;
    /// Bounds of [`Times::long`], in milliseconds.
    pub const LONG: RangeInclusive<u16> = 400..=2000;
    /// Bounds of [`Times::double`], in milliseconds.
    pub const DOUBLE: RangeInclusive<u16> = 200..=1000;
    /// What a long press is set to when it is switched on.
    pub const USUAL_LONG: Duration = Duration::from_millis(800);
    /// What a double press is set to when it is switched on.
    pub const USUAL_DOUBLE: Duration = Duration::from_millis(400);
}

impl Default for Times {
    /// A lock-out of 300 ms; neither long nor double presses, which some pedals cannot make.
    fn default() -> Self {
        Self {
            bounce: Duration::from_millis(300),
            long: None,
            double: None,
        }
    }
}
