//! Marks that point at a part of the knot: for whoever learns what its parts are called.

use crate::knot::{Knot, Pin};

/// What of a knot is pointed at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// The leads: a straight line from rim to rim, and a number on each cord that it meets.
    Leads,
    /// The bight round a pin.
    Bight(Pin),
    /// Both rims: a line along each.
    Rims,
    /// Every crossing, or those of one row, counted from the bottom.
    Crossings(Option<u16>),
    /// One crossing: that of the leg which rises from this pin, in this row.
    Crossing(Pin, u16),
    /// The end that hangs at the bottom pin where the cord began.
    StandingEnd(Pin),
    /// The head of the cord in hand.
    WorkingEnd,
    /// Every pin.
    Pins,
    /// How a top pin stands to the bottom pins: a line straight down from it.
    Stagger(Pin),
}

/// Beside a tube, for the numbers of what is counted on it: their discs, and a gap.
const BESIDE: f32 = 62.0;

impl Mark {
    /// How much of a picture of this width is kept free on the right, for what stands beside the tube.
    pub(super) fn beside(self, width: f32) -> f32 {
        match self {
            Self::Leads => BESIDE.min(0.3 * width),
            _ => 0.0,
        }
    }

    /// Where on the tube the one place stands that is pointed at, in half pitches and rows; none where
    /// it is not one place.
    pub(super) fn stands_at(self, knot: &Knot) -> Option<(u16, u16)> {
        match self {
            Self::Bight(pin) => {
                let (row, start) = knot.stands_at(pin);
                Some((start, row))
            }
            Self::Crossing(from, row) => {
                let (base, start) = knot.stands_at(from);
                Some((start + row.saturating_sub(base), row))
            }
            _ => None,
        }
    }
}
