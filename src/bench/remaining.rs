//! What a cord that is being laid still takes, and how far what is left of it reaches.

use super::{Consumption, Millimetres};
use crate::knot::Nest;

/// How much of a cord still has to be laid.
///
/// ```
/// use marlinspeak::bench::LegsLeft;
///
/// // Half of the last leg but one, and the last: its end is at the pin already.
/// let left = LegsLeft { legs: 1.5, has_standing_tail: false, ends: true };
/// assert_eq!(left.legs.ceil(), 2.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LegsLeft {
    /// Legs, the part of one that is still to be laid among them.
    pub legs: f64,
    /// Whether its standing end is still to be left at the pin.
    pub has_standing_tail: bool,
    /// Whether the cord ends with them: then an end is to be left, and not only what is held.
    pub ends: bool,
}

/// How far a length of cord reaches.
///
/// ```
/// use marlinspeak::bench::{
///     Allowances, Consumption, Correction, Counts, LegsLeft, Millimetres, Reach,
/// };
///
/// // Legs of 100 mm, 100 mm to hold, and an end of 150 mm.
/// let counts = Counts::new(5, 7, 1)?;
/// let [leg, turn] = ["90", "10"].map(|text| Millimetres::parse(text).unwrap());
/// let cord = Consumption::new(counts, leg, turn, Correction::default(), Allowances::default());
/// let nest = counts.lattice().nest(0);
/// let left = LegsLeft { legs: 5.0, has_standing_tail: false, ends: true };
/// assert_eq!(cord.reach(nest, left, 760.0), Reach::Whole(10.0));
/// assert_eq!(cord.reach(nest, left, 460.0), Reach::Legs(3));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reach {
    /// To the end, with so many millimetres to spare.
    Whole(f64),
    /// For so many legs, counted from where the next one begins, and what the hand must hold. The last
    /// of a cord is laid only when its end can be left too.
    Legs(u32),
}

impl Consumption {
    /// Millimetres that so much of a cord still takes: its legs, what must be in the hand while the
    /// last of them is laid, and the ends that are left. With all legs before it, that is the length
    /// to [cut](Consumption::piece); with none, the end that hangs out.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{
    ///     Allowances, Consumption, Correction, Counts, LegsLeft, Millimetres,
    /// };
    ///
    /// let counts = Counts::new(5, 7, 1)?;
    /// let [leg, turn] = ["90", "10"].map(|text| Millimetres::parse(text).unwrap());
    /// let cord = Consumption::new(counts, leg, turn, Correction::default(), Allowances::default());
    /// let nest = counts.lattice().nest(0);
    /// let left = |legs, has_standing_tail| {
    ///     cord.still_takes(nest, LegsLeft { legs, has_standing_tail, ends: true })
    /// };
    /// // Fourteen legs of 100 mm, tails of 150 mm and 100 mm to hold.
    /// assert_eq!(left(14.0, true), cord.piece(nest, 1).get());
    /// assert_eq!(left(3.0, false), 550.0);
    /// assert_eq!(left(0.0, false), 150.0);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn still_takes(&self, nest: Nest, left: LegsLeft) -> f64 {
        let legs = left.legs.max(0.0);
        legs * self.per_leg(nest) + self.beyond(left)
    }

    /// How far so many millimetres reach that are in the hand.
    pub fn reach(&self, nest: Nest, left: LegsLeft, in_hand: f64) -> Reach {
        let spare = in_hand - self.still_takes(nest, left);
        if spare >= 0.0 {
            return Reach::Whole(spare);
        }
        // Short of the end nothing is left behind but what is held.
        let within = LegsLeft {
            legs: 1.0,
            ends: false,
            ..left
        };
        // What of a leg lies already is none of the whole ones that follow.
        let begun = left.legs.ceil() - left.legs;
        let legs = (in_hand - self.beyond(within)) / self.per_leg(nest) + begun;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate, and it is no more than the legs of a knot"
        )]
        let legs = legs.floor().clamp(0.0, (left.legs.ceil() - 1.0).max(0.0)) as u32;
        Reach::Legs(legs)
    }

    fn beyond(&self, left: LegsLeft) -> f64 {
        let allowances = self.allowances();
        let part = |is_there: bool, length: Millimetres| if is_there { length.get() } else { 0.0 };
        part(left.has_standing_tail, allowances.standing_tail)
            + part(left.ends, allowances.working_tail)
            + part(left.legs > 0.0, allowances.holding)
    }
}
