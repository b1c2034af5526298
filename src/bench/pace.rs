//! How fast a tyer works, and what the work costs.

use std::ops::RangeInclusive;

use super::{BenchError, Millimetres};

/// How long a tie takes a tyer: seconds for a leg with so many tucks, and all of the work over
/// laying the legs alone.
///
/// A leg that meets no cord is only led from pin to pin. For every tuck the end goes under and the
/// cord is drawn through after it, which takes about as long again: *common practice, no source*.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TyingPace {
    leg_seconds: f64,
    tucks_a_leg: f64,
    whole: f64,
}

impl TyingPace {
    /// Of a tyer of whom nothing is known. *Common practice, no source.*
    pub const USUAL: Self = Self {
        leg_seconds: 45.0,
        tucks_a_leg: Self::USUAL_TUCKS,
        whole: Self::USUAL_WHOLE,
    };

    /// Tucks of a leg that is neither quick nor slow: those of a doubled knot of 5 leads and 7
    /// bights, 36 in 28 legs.
    const USUAL_TUCKS: f64 = 1.25;

    /// All of the work, with rigging, fairing and finishing, over laying the legs. *Common
    /// practice, no source.*
    const USUAL_WHOLE: f64 = 1.8;

    /// From seconds for one leg, with as many tucks as are usual.
    ///
    /// # Errors
    /// [`BenchError::Pace`] when it is not a positive, finite time of at most a day.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::TyingPace;
    ///
    /// let pace = TyingPace::new(30.0).unwrap().with_whole(2.0);
    /// assert_eq!(pace.laying_minutes(28, 35), 14.0);
    /// assert_eq!(pace.minutes(28, 35), 28.0);
    /// // Half as many steps in as many legs.
    /// assert_eq!(pace.laying_minutes(28, 0), 14.0 * 28.0 / 63.0);
    /// ```
    pub fn new(leg_seconds: f64) -> Result<Self, BenchError> {
        if leg_seconds > 0.0 && leg_seconds <= 86_400.0 {
            Ok(Self {
                leg_seconds,
                ..Self::USUAL
            })
        } else {
            Err(BenchError::Pace { given: leg_seconds })
        }
    }

    /// The pace of a tyer whose legs had so many tucks each when they were timed.
    #[must_use]
    pub fn with_tucks(self, tucks_a_leg: f64) -> Self {
        Self {
            tucks_a_leg: tucks_a_leg.max(0.0),
            ..self
        }
    }

    /// The pace of a tyer who needs so many times as long for all of the work as for the legs;
    /// taken as 1 when it is less, and as 10 when it is more.
    #[must_use]
    pub fn with_whole(self, whole: f64) -> Self {
        Self {
            whole: whole.clamp(1.0, 10.0),
            ..self
        }
    }

    /// Seconds for one leg, as it was timed.
    pub const fn leg_seconds(self) -> f64 {
        self.leg_seconds
    }

    /// Minutes for laying so many legs with so many tucks.
    pub fn laying_minutes(self, legs: u32, tucks: u32) -> f64 {
        let steps = f64::from(legs) + f64::from(tucks);
        self.leg_seconds * steps / (1.0 + self.tucks_a_leg) / 60.0
    }

    /// Minutes for a tie of so many legs and tucks, from the bag to the trimmed ends.
    pub fn minutes(self, legs: u32, tucks: u32) -> f64 {
        self.whole * self.laying_minutes(legs, tucks)
    }
}

/// What cord and work are worth to the tyer, in money of their own.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Prices {
    /// For a metre of cord.
    pub metre: Option<f64>,
    /// For an hour of work.
    pub hour: Option<f64>,
}

impl Prices {
    /// The prices that are taken.
    pub const BOUNDS: RangeInclusive<f64> = 0.0..=1_000_000.0;

    /// Reads a price as a person types it: `0.35` or `0,35`.
    ///
    /// # Errors
    /// [`BenchError::Price`] for what is no number, negative, or out of [`Self::BOUNDS`].
    pub fn parse(text: &str) -> Result<f64, BenchError> {
        let given = text.trim();
        let price = given.replace(',', ".").parse::<f64>().ok();
        price
            .filter(|price| Self::BOUNDS.contains(price))
            .ok_or_else(|| BenchError::Price {
                given: given.to_owned(),
            })
    }

    /// What a tie comes to; `None` when no price is set.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Millimetres, Prices};
    ///
    /// let prices = Prices { metre: Some(0.5), hour: Some(20.0) };
    /// let cord = Millimetres::new(2400.0).unwrap();
    /// assert!((prices.cost(cord, 45.0).unwrap() - 16.2).abs() < 1e-9);
    /// assert_eq!(Prices::default().cost(cord, 45.0), None);
    /// ```
    pub fn cost(&self, cord: Millimetres, minutes: f64) -> Option<f64> {
        let of_cord = self.metre.map(|price| price * cord.get() / 1000.0);
        let of_work = self.cost_of_work(minutes);
        (of_cord.is_some() || of_work.is_some())
            .then(|| of_cord.unwrap_or(0.0) + of_work.unwrap_or(0.0))
    }

    /// What so many minutes of work come to; `None` when an hour has no price.
    pub fn cost_of_work(&self, minutes: f64) -> Option<f64> {
        self.hour.map(|price| price * minutes / 60.0)
    }
}
