//! Moving on without a press, at the tyer's own pace.

use std::collections::VecDeque;
use std::time::Duration;

/// How many steps the pace is taken from.
const STEPS: usize = 5;
/// What it is taken from at least.
const LEAST_STEPS: usize = 2;
/// Steps that took longer were a pause, not work.
const LONGEST: Duration = Duration::from_secs(300);
/// It never moves on sooner.
const SHORTEST: Duration = Duration::from_secs(4);

/// Notes how long the tyer takes for a step, and gives the next one its time.
#[derive(Clone, Debug, Default)]
pub(super) struct AutoAdvance {
    taken: VecDeque<Duration>,
    since: Option<Duration>,
    /// Whether the step that is told moves on by itself.
    pub is_running: bool,
}

impl AutoAdvance {
    /// A step begins at `now`.
    pub fn begin(&mut self, now: Duration) {
        self.since = Some(now);
    }

    /// The tyer moved on by a press.
    pub fn moved_on(&mut self, now: Duration) {
        let Some(since) = self.since else { return };
        let took = now.saturating_sub(since);
        if took <= LONGEST {
            self.taken.push_back(took);
            if self.taken.len() > STEPS {
                self.taken.pop_front();
            }
        }
    }

    /// How long a step is given: a little more than the middle one of the last few; none before
    /// there are enough of them.
    pub fn time(&self) -> Option<Duration> {
        if self.taken.len() < LEAST_STEPS {
            return None;
        }
        let mut taken: Vec<Duration> = self.taken.iter().copied().collect();
        taken.sort();
        Some((taken[taken.len() / 2] * 5 / 4).max(SHORTEST))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn after(steps: &[u64]) -> Option<Duration> {
        let mut auto = AutoAdvance::default();
        let mut now = Duration::ZERO;
        for step in steps {
            auto.begin(now);
            now += Duration::from_secs(*step);
            auto.moved_on(now);
        }
        auto.time()
    }

    #[test]
    fn it_follows_the_last_few_steps_and_no_odd_one() {
        let seconds = Duration::from_secs;
        assert_eq!(after(&[20]), None);
        assert_eq!(after(&[20, 20, 20]), Some(seconds(25)));
        assert_eq!(after(&[20, 20, 280, 20, 20]), Some(seconds(25)));
        assert_eq!(after(&[20, 20, 20, 40, 40, 40, 40, 40]), Some(seconds(50)));
        assert_eq!(after(&[1, 1, 1]), Some(SHORTEST));
        assert_eq!(
            after(&[20, 4000, 20]),
            Some(seconds(25)),
            "a pause is no step"
        );
    }
}
