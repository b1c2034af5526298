//! The time a tyer has worked at a tie, kept in its document so that evenings add up.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};

/// Working time, and the times of single legs.
///
/// The legs are kept as a tally by seconds rounded to two figures, not as a list: so the
/// document stays small however long the tie is, and a median is right to five per cent.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Worked {
    seconds: f64,
    /// Tenths of a second, rounded to two figures, and how many legs took so long.
    legs: BTreeMap<u32, u32>,
}

impl Worked {
    /// A leg quicker than this was skipped through and not tied, in seconds. *Common practice.*
    pub const QUICKEST_LEG: f64 = 1.5;
    /// A leg slower than this had a rest in it, in seconds. *Common practice.*
    pub const SLOWEST_LEG: f64 = 900.0;
    /// More working time than this is a slip: 1000 hours, in seconds.
    pub const MOST: f64 = 3_600_000.0;

    /// Working time in all, in seconds.
    pub const fn seconds(&self) -> f64 {
        self.seconds
    }

    /// How many legs were timed.
    pub fn legs_timed(&self) -> u32 {
        self.legs
            .values()
            .fold(0, |sum: u32, count| sum.saturating_add(*count))
    }

    /// Adds working time.
    pub fn add(&mut self, seconds: f64) {
        if seconds > 0.0 {
            self.seconds = (self.seconds + seconds).min(Self::MOST);
        }
    }

    /// Notes how long a leg took from the press that showed it to the press that left it; a
    /// time that no leg can take is not noted.
    pub fn add_leg(&mut self, seconds: f64) {
        if (Self::QUICKEST_LEG..=Self::SLOWEST_LEG).contains(&seconds) {
            let count = self.legs.entry(two_figures(seconds)).or_insert(0);
            *count = count.saturating_add(1);
        }
    }

    /// Takes in the legs of another tie.
    pub fn pool(&mut self, other: &Self) {
        self.add(other.seconds);
        for (tenths, count) in &other.legs {
            let sum = self.legs.entry(*tenths).or_insert(0);
            *sum = sum.saturating_add(*count);
        }
    }

    /// The median time of a leg in seconds, or `None` when no leg was timed. Half of the legs
    /// took longer: an evening of interruptions does not move it.
    pub fn median_leg(&self) -> Option<f64> {
        let half = self.legs_timed().div_ceil(2);
        let mut seen = 0_u32;
        for (tenths, count) in &self.legs {
            seen = seen.saturating_add(*count);
            if half > 0 && seen >= half {
                return Some(f64::from(*tenths) / 10.0);
            }
        }
        None
    }

    /// As it stands in a document: `{"seconds": 512.4, "legs": {"12": 5, "8.5": 2}}`.
    pub(super) fn to_json(&self) -> Value {
        let legs: Map<String, Value> = self
            .legs
            .iter()
            .map(|(tenths, count)| ((f64::from(*tenths) / 10.0).to_string(), (*count).into()))
            .collect();
        json!({ "seconds": (self.seconds * 10.0).round() / 10.0, "legs": legs })
    }

    /// Reads it back. It is an aid and not the work itself: what cannot be used is left out.
    pub(super) fn from_json(value: &Value) -> Self {
        let seconds = value.get("seconds").and_then(Value::as_f64).unwrap_or(0.0);
        let mut worked = Self::default();
        worked.add(seconds);
        for (seconds, count) in value
            .get("legs")
            .and_then(Value::as_object)
            .into_iter()
            .flatten()
        {
            let seconds = seconds.parse().ok();
            let count = count.as_u64().and_then(|count| u32::try_from(count).ok());
            if let (Some(seconds), Some(count)) = (seconds, count)
                && (Self::QUICKEST_LEG..=Self::SLOWEST_LEG).contains(&seconds)
            {
                worked.legs.insert(two_figures(seconds), count);
            }
        }
        worked
    }
}

/// Tenths of a second, rounded to two figures.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "within 15 and 9000"
)]
fn two_figures(seconds: f64) -> u32 {
    let tenths = (seconds * 10.0).round() as u32;
    let step = match tenths {
        0..100 => 1,
        100..1000 => 10,
        _ => 100,
    };
    (tenths + step / 2) / step * step
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(legs: &[f64]) -> Worked {
        let mut worked = Worked::default();
        for seconds in legs {
            worked.add_leg(*seconds);
        }
        worked
    }

    #[test]
    fn one_long_rest_does_not_move_the_pace() {
        assert_eq!(of(&[]).median_leg(), None);
        assert_eq!(of(&[20.0]).median_leg(), Some(20.0));
        assert_eq!(of(&[18.0, 20.0, 22.0, 800.0]).median_leg(), Some(20.0));
    }

    #[test]
    fn what_no_leg_can_take_is_not_timed() {
        let worked = of(&[0.3, 1.4, 901.0, f64::NAN, -4.0]);
        assert_eq!((worked.legs_timed(), worked.median_leg()), (0, None));
    }

    #[test]
    fn the_tally_stays_small_and_right_to_a_twentieth() {
        let mut worked = Worked::default();
        for leg in 0..20_000_u32 {
            let seconds = 2.0 + f64::from(leg % 8000) / 10.0;
            let before = worked.clone();
            worked.add_leg(seconds);
            let kept = worked
                .legs
                .iter()
                .find(|(tenths, count)| before.legs.get(tenths) != Some(count));
            let kept = f64::from(*kept.unwrap().0) / 10.0;
            assert!((kept / seconds - 1.0).abs() <= 0.05, "{seconds} as {kept}");
        }
        assert_eq!(worked.legs_timed(), 20_000);
        assert!(worked.legs.len() < 260, "{}", worked.legs.len());
    }

    #[test]
    fn a_document_gives_back_what_it_was_given() {
        let mut worked = of(&[2.3, 8.5, 8.5, 12.0, 340.0]);
        worked.add(411.25);
        let read = Worked::from_json(&worked.to_json());
        assert_eq!(read.legs, worked.legs);
        assert!((read.seconds() - 411.3).abs() < 1e-9);
        for odd in [
            json!(7),
            json!({ "seconds": -1, "legs": [3] }),
            json!({ "seconds": "long", "legs": { "soon": 1, "0.1": 4, "12": -2, "1e9": 3 } }),
        ] {
            assert_eq!(Worked::from_json(&odd), Worked::default(), "{odd}");
        }
    }
}
