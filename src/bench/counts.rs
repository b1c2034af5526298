//! The three counts of a tie.

use crate::knot::{KnotError, Laying, Quantity};

/// Leads, bights and passes, each within its bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Counts {
    leads: u16,
    bights: u16,
    passes: u16,
}

impl Counts {
    /// # Errors
    /// [`KnotError::OutOfRange`] for the first count outside [`Quantity::bounds`].
    pub fn new(leads: u16, bights: u16, passes: u16) -> Result<Self, KnotError> {
        Ok(Self {
            leads: Quantity::Leads.check(leads)?,
            bights: Quantity::Bights.check(bights)?,
            passes: Quantity::Passes.check(passes)?,
        })
    }

    /// Cords met on a straight line from rim to rim.
    pub const fn leads(self) -> u16 {
        self.leads
    }

    /// Scallops along each rim, and pins on each ring.
    pub const fn bights(self) -> u16 {
        self.bights
    }

    /// Trips of the cord round the whole pattern.
    pub const fn passes(self) -> u16 {
        self.passes
    }

    /// Closed paths in the knot: the greatest common divisor of leads and bights.
    pub const fn strands(self) -> u16 {
        let (mut one, mut other) = (self.leads, self.bights);
        while other != 0 {
            (one, other) = (other, one % other);
        }
        one
    }

    /// Legs in the whole tie: two for each bight and pass.
    pub fn legs(self) -> u32 {
        2 * u32::from(self.bights) * u32::from(self.passes)
    }

    /// Whether the top pins stand half a pitch off the bottom ones: so when the leads are odd.
    pub const fn is_staggered(self) -> bool {
        !self.leads.is_multiple_of(2)
    }
}

impl From<&Laying> for Counts {
    fn from(laying: &Laying) -> Self {
        Self {
            leads: laying.knot().leads(),
            bights: laying.knot().bights(),
            passes: laying.passes(),
        }
    }
}
