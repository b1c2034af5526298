//! Everything the tyer chose.

use super::Setup;
use crate::knot::{Hand, Knot, KnotError, Laying, Order, Quantity, Side, Weave};

/// The knot, its passes, and how the tyer works.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    laying: Laying,
    /// The side of the cord already there that a follower keeps to.
    pub side: Side,
    /// Which way round the tube the tyer works.
    pub hand: Hand,
    /// Tube, cord and object, when they were named.
    pub setup: Option<Setup>,
}

impl Plan {
    /// A plan for `knot` in `passes`, laid pass by pass.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn new(knot: Knot, passes: u16, side: Side, hand: Hand) -> Result<Self, KnotError> {
        Ok(Self::of(
            Laying::new(knot, passes, Order::default())?,
            side,
            hand,
        ))
    }

    /// A plan for what is laid in this way.
    pub const fn of(laying: Laying, side: Side, hand: Hand) -> Self {
        Self {
            laying,
            side,
            hand,
            setup: None,
        }
    }

    /// Reads a plan from the four texts that name a knot: leads, bights, passes, weave.
    ///
    /// # Errors
    /// The first [`KnotError`] met, in the order of the arguments.
    pub fn read(leads: &str, bights: &str, passes: &str, weave: &str) -> Result<Self, KnotError> {
        let leads = Quantity::Leads.parse(leads)?;
        let bights = Quantity::Bights.parse(bights)?;
        let passes = Quantity::Passes.parse(passes)?;
        let knot = Knot::new(leads, bights, Weave::parse(weave)?)?;
        Self::new(knot, passes, Side::default(), Hand::default())
    }

    /// The same plan for a follower on this side.
    #[must_use]
    pub fn with_side(self, side: Side) -> Self {
        Self { side, ..self }
    }

    /// The same plan for a tyer of this hand.
    #[must_use]
    pub fn with_hand(self, hand: Hand) -> Self {
        Self { hand, ..self }
    }

    /// The same plan with this tube, cord and object.
    #[must_use]
    pub fn with_setup(self, setup: Option<Setup>) -> Self {
        Self { setup, ..self }
    }

    /// The knot.
    pub const fn knot(&self) -> &Knot {
        self.laying.knot()
    }

    /// The knot with its passes and the order of laying them.
    pub const fn laying(&self) -> &Laying {
        &self.laying
    }
}
