//! How long the thread of a microphone rests between two blocks of sound.
//!
//! Where ALSA stands before a sound server, its plugin calls a block ready that is not whole yet: it counts
//! what was read of a piece already. Whoever waits for the block then asks again and again until the next
//! piece has come, and on a busy machine that took up to a sixth of a core. So a block is not asked for
//! before it is due.

use std::time::{Duration, Instant};

/// A block that comes as soon after it was first asked for was there already.
const AT_ONCE: Duration = Duration::from_micros(150);
/// By so much a block is expected earlier where the last was there already: nobody can tell for how long.
const EARLIER: Duration = Duration::from_micros(250);
/// A block is asked for so much later than it is expected, so that most are there already.
const LATER: Duration = Duration::from_micros(300);

/// When blocks come.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Rest {
    /// When the next is expected.
    due: Option<Instant>,
    /// Since when it is asked for.
    asked: Option<Instant>,
}

impl Rest {
    /// A block of this length came at this time, and was done with at another: how long to rest before the
    /// next is asked for. After a delay that is no time at all, until what has gathered is done with.
    pub fn after(&mut self, came: Instant, long: Duration, done: Instant) -> Duration {
        let waited = self
            .asked
            .map(|asked| came.saturating_duration_since(asked));
        let was_there = waited.is_some_and(|waited| waited < AT_ONCE);
        let arrived = match self.due {
            Some(due) if was_there => due.min(came).checked_sub(EARLIER).unwrap_or(came),
            _ => came,
        };
        let due = arrived + long;
        self.due = Some(due);
        (due + LATER).saturating_duration_since(done)
    }

    /// From now on the next block is asked for: rests may take longer than they should.
    pub const fn is_over(&mut self, now: Instant) {
        self.asked = Some(now);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const BLOCK: Duration = Duration::from_millis(20);
    /// What is done with a block.
    const WORK: Duration = Duration::from_micros(200);

    /// Blocks that come when they are whole, at these times in microseconds: how long each is asked for, and
    /// how long after it was whole it is taken.
    fn blocks(whole: impl IntoIterator<Item = u64>) -> Vec<(Duration, Duration)> {
        let begins = Instant::now();
        let (mut rest, mut asked) = (Rest::default(), begins);
        let taken = whole.into_iter().map(|whole| {
            let whole = begins + Duration::from_micros(whole);
            let came = whole.max(asked);
            let asked_for = came - asked;
            let done = came + WORK;
            asked = done + rest.after(came, BLOCK, done);
            rest.is_over(asked);
            (asked_for, came - whole)
        });
        taken.collect()
    }

    fn sum(of: impl Iterator<Item = Duration>) -> Duration {
        of.sum()
    }

    #[test]
    fn a_block_is_hardly_asked_for_before_it_is_whole_and_taken_at_once() {
        // The clock of the card may be a little fast or slow.
        for length in [19_990, 20_000, 20_010] {
            let blocks = blocks((1..=500).map(|number| number * length));
            let asked = sum(blocks.iter().skip(1).map(|(asked, _)| *asked));
            assert!(asked < BLOCK * 500 / 200, "{length}: {asked:?} of 10 s");
            let latest = blocks.iter().map(|(_, late)| *late).max();
            assert!(latest < Some(Duration::from_millis(1)), "{latest:?}");
        }
    }

    #[test]
    fn one_that_comes_late_delays_those_after_it_for_some_blocks_only() {
        let late = |number: u64| number * 20_000 + if number == 100 { 6_000 } else { 0 };
        let blocks = blocks((1..=200).map(late));
        assert!(
            blocks[100].1 < Duration::from_millis(7),
            "{:?}",
            blocks[100]
        );
        assert!(
            blocks[130].1 < Duration::from_millis(1),
            "{:?}",
            blocks[130]
        );
    }

    #[test]
    fn what_has_gathered_is_taken_without_rest() {
        let (mut rest, begins) = (Rest::default(), Instant::now());
        let at = |micros: u64| begins + Duration::from_micros(micros);
        let first = rest.after(at(0), BLOCK, at(200));
        assert!(first.abs_diff(BLOCK) < WORK, "{first:?}");
        // The machine was busy: five blocks have come before the rest was over.
        let mut now = at(100_000);
        let mut rests = Vec::new();
        for _ in 0..6 {
            rest.is_over(now);
            let pause = rest.after(now, BLOCK, now + WORK);
            rests.push(pause);
            now += WORK + pause;
        }
        assert!(rests[..4].iter().all(Duration::is_zero), "{rests:?}");
        assert!(!rests[4].is_zero() && !rests[5].is_zero(), "{rests:?}");
    }
}
