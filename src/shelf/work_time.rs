//! The time a tyer has worked at a tie, kept in its document so that evenings add up.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// Working time, and the times of single legs.
///
/// The legs are kept as a tally by seconds rounded to two figures, not as a list: so the
/// document stays small however long the tie is, and a median is right to five per cent.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "WorkTimeSection", into = "WorkTimeSection")]
pub struct WorkTime {
    seconds: f64,
    /// Tenths of a second, rounded to two figures, and how many legs took so long.
    legs: BTreeMap<u32, u32>,
}

impl WorkTime {
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

    /// Adds working time, in seconds; nothing for a time that is not positive.
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

    /// Whether nothing was noted yet.
    pub(super) fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// As it stands in a document: `{"seconds": 512.4, "legs": {"12": 5, "8.5": 2}}`, the legs by
/// their seconds.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
struct WorkTimeSection {
    seconds: f64,
    legs: BTreeMap<String, u32>,
}

impl From<WorkTime> for WorkTimeSection {
    fn from(time: WorkTime) -> Self {
        let seconds = |tenths: u32| (f64::from(tenths) / 10.0).to_string();
        Self {
            seconds: time.seconds,
            legs: time
                .legs
                .into_iter()
                .map(|(tenths, count)| (seconds(tenths), count))
                .collect(),
        }
    }
}

impl TryFrom<WorkTimeSection> for WorkTime {
    type Error = String;

    fn try_from(section: WorkTimeSection) -> Result<Self, String> {
        let seconds = section.seconds;
        if !(0.0..=Self::MOST).contains(&seconds) {
            return Err(format!("{seconds} seconds, outside 0 to {}", Self::MOST));
        }
        let mut time = Self {
            seconds,
            legs: BTreeMap::new(),
        };
        for (text, count) in section.legs {
            let seconds: Option<f64> = text.parse().ok();
            let seconds = seconds
                .filter(|seconds| (Self::QUICKEST_LEG..=Self::SLOWEST_LEG).contains(seconds))
                .ok_or_else(|| {
                    format!(
                        "a leg of {text:?} seconds, outside {} to {}",
                        Self::QUICKEST_LEG,
                        Self::SLOWEST_LEG
                    )
                })?;
            let sum = time.legs.entry(two_figures(seconds)).or_insert(0);
            *sum = sum.saturating_add(count);
        }
        Ok(time)
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
    use serde_json::json;

    use super::*;

    fn of(legs: &[f64]) -> WorkTime {
        let mut worked = WorkTime::default();
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
        let mut worked = WorkTime::default();
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
        let document = serde_json::to_value(&worked).unwrap();
        assert_eq!(document["legs"]["8.5"], 2);
        assert_eq!(
            serde_json::from_value::<WorkTime>(document).unwrap(),
            worked
        );
        for odd in [
            json!(7),
            json!({ "seconds": -1 }),
            json!({ "seconds": "long" }),
            json!({ "seconds": 4e6 }),
            json!({ "legs": [3] }),
            json!({ "legs": { "soon": 1 } }),
            json!({ "legs": { "0.1": 4 } }),
            json!({ "legs": { "1e9": 3 } }),
            json!({ "legs": { "12": -2 } }),
        ] {
            assert!(
                serde_json::from_value::<WorkTime>(odd.clone()).is_err(),
                "{odd}"
            );
        }
    }
}
