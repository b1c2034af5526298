//! Where the hand is when a long leg is told in parts.

use strum::IntoStaticStr;

use crate::knot::{Heading, Knot, Leg, Pin};

/// How much of the way from rim to rim lies behind the hand, to the nearest word.
///
/// ```
/// use marlinspeak::guide::{Landmark, LegShare};
/// use marlinspeak::knot::{Knot, Weave};
///
/// // Row 8 of a knot of 16 leads is half way, whether the leg rises or falls.
/// let knot = Knot::new(16, 5, Weave::default())?;
/// for number in [1, 2] {
///     let leg = knot.leg(1, number).unwrap();
///     assert_eq!(Landmark::on(&knot, leg, 8).share, LegShare::Half);
/// }
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum LegShare {
    /// Less than an eighth.
    Little,
    /// Nearest to a quarter.
    Quarter,
    /// Nearest to a third.
    Third,
    /// Nearest to a half.
    Half,
    /// Nearest to two thirds.
    TwoThirds,
    /// Nearest to three quarters.
    ThreeQuarters,
    /// More than seven eighths.
    Most,
}

/// Where the cord has got to, seen on the tube.
///
/// ```
/// use marlinspeak::guide::Landmark;
/// use marlinspeak::knot::{Knot, Pin, Weave};
///
/// // With many leads and few bights a leg goes round the tube on its way.
/// let knot = Knot::new(16, 5, Weave::default())?;
/// let landmark = Landmark::on(&knot, knot.leg(1, 1).unwrap(), 12);
/// assert_eq!((landmark.turns, landmark.past), (1, Pin::top(2)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Landmark {
    /// The last row of crossings that was passed, counted from the bottom.
    pub row: u16,
    /// How much of the leg lies behind.
    pub share: LegShare,
    /// The pin passed last on the rim that is nearer, in the row of the leg's own, seen straight up
    /// or down the tube.
    pub past: Pin,
    /// Whole turns of the tube made since the leg began.
    pub turns: u16,
}

impl Landmark {
    /// The landmark on `leg` just past `row`.
    pub fn on(knot: &Knot, leg: Leg, row: u16) -> Self {
        let (low, from) = knot.stands_at(leg.from);
        let (high, _) = knot.stands_at(leg.to);
        let (behind, all) = (row.abs_diff(low), high.abs_diff(low));
        let [bottom, top] = match leg.heading() {
            Heading::Rising => [leg.from, leg.to],
            Heading::Falling => [leg.to, leg.from],
        };
        // From bottom pin to bottom pin, in half pitches of the finest there are.
        let pitch = 2 * u32::from(knot.nested());
        let round = pitch * u32::from(knot.bights());
        let pin = if 2 * (row - low.min(high)) <= all {
            bottom
        } else {
            top
        };
        let (_, first) = knot.stands_at(Pin { number: 1, ..pin });
        // Half pitches from the rim's first pin. A whole turn is added so as not to fall below
        // zero where the staggered top pins begin.
        let from_first = u32::from(from) + u32::from(behind) + round - u32::from(first);
        #[expect(
            clippy::cast_possible_truncation,
            reason = "below the bights, which fit"
        )]
        let past = Pin {
            number: (from_first % round / pitch) as u16 + 1,
            ..pin
        };
        Self {
            row,
            share: LegShare::of(behind, all),
            past,
            turns: behind / knot.lattice().round(),
        }
    }
}

impl LegShare {
    fn of(behind: u16, all: u16) -> Self {
        let [behind, all] = [behind, all].map(u32::from);
        // Each word reaches half way to the next.
        let is_below = |parts: u32, of: u32| behind * of < all * parts;
        if is_below(1, 8) {
            Self::Little
        } else if is_below(7, 24) {
            Self::Quarter
        } else if is_below(5, 12) {
            Self::Third
        } else if is_below(7, 12) {
            Self::Half
        } else if is_below(17, 24) {
            Self::TwoThirds
        } else if is_below(7, 8) {
            Self::ThreeQuarters
        } else {
            Self::Most
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knot::Weave;

    #[test]
    fn a_long_leg_passes_pins_and_turns() {
        let knot = Knot::new(21, 4, Weave::default()).unwrap();
        let leg = knot.leg(1, 1).unwrap();
        let early = Landmark::on(&knot, leg, 4);
        assert_eq!(
            (early.past, early.turns, early.share),
            (Pin::bottom(3), 0, LegShare::Quarter)
        );
        // Half pitch 17 of 8 a turn: two turns made; the staggered top pin 1 stands at 1.
        let late = Landmark::on(&knot, leg, 17);
        assert_eq!(
            (late.past, late.turns, late.share),
            (Pin::top(1), 2, LegShare::ThreeQuarters)
        );
    }

    #[test]
    fn a_falling_leg_counts_its_way_from_the_top() {
        let knot = Knot::new(9, 4, Weave::default()).unwrap();
        let leg = knot.leg(1, 2).unwrap();
        assert_eq!(leg.from, Pin::top(1));
        // From half pitch 9, four rows on: 13, five past a whole turn of 8.
        let landmark = Landmark::on(&knot, leg, 5);
        assert_eq!((landmark.past, landmark.turns), (Pin::top(3), 0));
        assert_eq!(landmark.share, LegShare::Half);
    }
}
