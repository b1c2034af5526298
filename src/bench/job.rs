//! A knot to be tied on a tube.

use super::{Allowances, Correction, Counts, Give, Millimetres, Tube};

/// What the knot is to be when finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finish {
    /// Diameter of the object it will sit on.
    pub around: Millimetres,
    /// Overall width to open it to; `None` to draw it up as tight as it goes.
    pub open_to: Option<Millimetres>,
}

/// A knot to be tied on a tube.
#[derive(Clone, Debug, PartialEq)]
pub struct RigJob<'a> {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// The tube.
    pub tube: &'a Tube,
    /// Diameter of the cord.
    pub cord: Millimetres,
    /// How closely it lies.
    pub give: Give,
    /// The object; `None` for a knot that stays on the tube, drawn up tight.
    pub finish: Option<Finish>,
    /// Tails and holding.
    pub allowances: Allowances,
    /// What the tyer's log says.
    pub correction: Correction,
}

impl<'a> RigJob<'a> {
    /// With the usual allowances and nothing measured yet.
    pub fn new(counts: Counts, tube: &'a Tube, cord: Millimetres) -> Self {
        Self {
            counts,
            tube,
            cord,
            give: Give::default(),
            finish: None,
            allowances: Allowances::default(),
            correction: Correction::default(),
        }
    }
}
