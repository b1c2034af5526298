//! What the work on a tie takes: tucks, time and money.

use super::{Plan, Rigging};
use crate::bench::{Millimetres, Prices, TyingPace};

/// What the work on a tie takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Labour {
    /// Tucks under a cord that lies already, in all passes together.
    pub tucks: u32,
    /// The same in the weave begun with over, when it is begun with under for fewer.
    pub tucks_begun_with_over: Option<u32>,
    /// Minutes from the bag to the trimmed ends.
    pub minutes: f64,
    /// Whether they are at the tyer's own pace, not at [`TyingPace::USUAL`].
    pub is_own_pace: bool,
    /// In the tyer's own money, when prices are set and what they are for is known.
    pub cost: Option<f64>,
}

impl Labour {
    /// Of a plan, at the tyer's own pace when that is known. Without a setup nobody knows how much
    /// cord it takes: then there is no cost when cord has a price.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::Prices;
    /// use marlinspeak::guide::{Labour, Plan};
    ///
    /// let plan = Plan::read("5", "7", "2", "1").unwrap();
    /// let prices = Prices { hour: Some(20.0), ..Prices::default() };
    /// let labour = Labour::of(&plan, None, prices);
    /// // 28 legs and 48 tucks at 20 seconds, and as much again less a fifth for all the rest.
    /// assert!((labour.minutes - 45.6).abs() < 1e-9);
    /// assert!((labour.cost.unwrap() - 15.2).abs() < 1e-9);
    /// ```
    pub fn of(plan: &Plan, own_pace: Option<TyingPace>, prices: Prices) -> Self {
        let pace = own_pace.unwrap_or(TyingPace::USUAL);
        let tucks = plan.laying().tucks();
        let minutes = pace.minutes(plan.laying().legs(), tucks);
        let cord = Rigging::of(plan).and_then(|rigging| Millimetres::new(rigging.to_cut()).ok());
        let cost = match cord {
            Some(cord) => prices.cost(cord, minutes),
            None if prices.metre.is_some() => None,
            None => prices.cost_of_work(minutes),
        };
        Self {
            tucks,
            tucks_begun_with_over: plan.tucks_begun_with_over(),
            minutes,
            is_own_pace: own_pace.is_some(),
            cost,
        }
    }
}
