//! Measuring the work: how long the tyer takes from press to press.

use std::time::Duration;

use crate::guide::Place;
use crate::knot::PassLeg;
use crate::shelf::WorkTime;

/// A gap between two presses that is longer was a rest and no work. *Common practice.*
pub const REST: Duration = Duration::from_secs(300);

/// Measures the work at one tie, from when it is taken in hand. Times are counted from any one
/// beginning.
#[derive(Clone, Debug)]
pub(super) struct WorkTimer {
    /// When the last press came; none after a rest that was asked for.
    since: Option<Duration>,
    /// The time at the leg so far; none when it was not seen from its beginning, or had a rest
    /// in it.
    leg: Option<Duration>,
}

impl WorkTimer {
    /// Begins to measure at a place that the tyer has before the eyes now.
    pub const fn begin(now: Duration) -> Self {
        Self {
            since: Some(now),
            leg: None,
        }
    }

    /// The tyer rests: the time until the next press is not work.
    pub const fn rest(&mut self) {
        self.since = None;
        self.leg = None;
    }

    /// Takes in a press that led from one place to another; `onwards` when it was to the next
    /// step.
    pub fn press(
        &mut self,
        now: Duration,
        onwards: bool,
        (from, to): (Place, Place),
        worked: &mut WorkTime,
    ) {
        let gap = self
            .since
            .replace(now)
            .map(|since| now.saturating_sub(since))
            .filter(|gap| *gap <= REST);
        if let Some(gap) = gap {
            worked.add(gap.as_secs_f64());
        }
        self.leg = match (self.leg, gap) {
            (Some(leg), Some(gap)) if onwards => Some(leg + gap),
            _ => None,
        };
        if leg_at(from) == leg_at(to) {
            return;
        }
        if let (Some(leg), Some(_)) = (self.leg, leg_at(from)) {
            worked.add_leg(leg.as_secs_f64());
        }
        // Of a leg that is come back to, the cord may lie already.
        self.leg = (onwards && gap.is_some()).then_some(Duration::ZERO);
    }
}

/// The leg that is laid at a place, if one is.
fn leg_at(place: Place) -> Option<PassLeg> {
    match place {
        Place::Lay { pass_leg, .. } => Some(pass_leg),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{AtOnce, Checks, Plan, Script};

    /// Goes on from the beginning with these seconds between presses.
    fn tie(gaps: &[u64]) -> (Script, Place, WorkTimer, WorkTime, Duration) {
        let plan = Plan::read("5", "6", "1", "1").unwrap();
        let script = Script::new(plan, AtOnce::UpTo(2)).with_checks(Checks::EachPass);
        let (mut place, mut now) = (script.first(), Duration::ZERO);
        let (mut watch, mut worked) = (WorkTimer::begin(now), WorkTime::default());
        for gap in gaps {
            now += Duration::from_secs(*gap);
            let next = script.next(place).unwrap();
            watch.press(now, true, (place, next), &mut worked);
            place = next;
        }
        (script, place, watch, worked, now)
    }

    #[test]
    fn a_leg_takes_from_the_press_that_shows_it_to_the_press_that_leaves_it() {
        // The beginning of the pass took 90 seconds and is no leg.
        let (_, _, _, worked, _) = tie(&[90, 10, 20, 30]);
        assert!((worked.seconds() - 150.0).abs() < 1e-9);
        assert_eq!((worked.legs_timed(), worked.median_leg()), (3, Some(20.0)));
    }

    #[test]
    fn the_parts_of_a_leg_are_one_leg() {
        // Legs 1 to 7 are skipped through; leg 8 meets three cords, two of them at once.
        let (_, place, _, worked, _) = tie(&[10, 1, 1, 1, 1, 1, 1, 1, 40, 44]);
        assert_eq!((place.leg(), place.crossings_behind()), (Some(9), 0));
        assert_eq!((worked.legs_timed(), worked.median_leg()), (1, Some(84.0)));
    }

    #[test]
    fn a_rest_is_no_work_and_its_leg_is_not_timed() {
        let (_, _, _, worked, _) = tie(&[5, 10, 301, 10]);
        assert!((worked.seconds() - 25.0).abs() < 1e-9);
        assert_eq!(worked.legs_timed(), 1);
        let (script, place, mut watch, mut worked, now) = tie(&[5, 10]);
        watch.rest();
        let next = script.next(place).unwrap();
        let later = now + Duration::from_secs(20);
        watch.press(later, true, (place, next), &mut worked);
        assert_eq!((worked.seconds(), worked.legs_timed()), (15.0, 1));
    }

    #[test]
    fn going_back_and_on_again_times_no_leg_twice() {
        let (script, place, mut watch, mut worked, now) = tie(&[5, 10, 10]);
        assert_eq!(worked.legs_timed(), 2);
        let before = script.back(place).unwrap();
        watch.press(
            now + Duration::from_secs(4),
            false,
            (place, before),
            &mut worked,
        );
        watch.press(
            now + Duration::from_secs(9),
            true,
            (before, place),
            &mut worked,
        );
        assert_eq!(worked.legs_timed(), 2);
        assert!((worked.seconds() - 34.0).abs() < 1e-9);
    }
}
