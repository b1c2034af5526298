//! What is drawn through at a tuck of a knot that is tied on what it covers.

use super::step::DrawThrough;
use super::{Place, Script};
use crate::bench::Millimetres;
use crate::knot::{Crossing, PassLeg};

/// So many legs with a tuck teach the hands, at the beginning of a tie. *Common practice, no source.*
const TAUGHT: usize = 2;

impl Script {
    /// The cord that goes through at each tuck of a part of a leg; none where nothing is tucked, or where
    /// the knot is tied on a tube.
    pub(super) fn draw(
        &self,
        pass_leg: PassLeg,
        crossing: u16,
        met: &[Crossing],
    ) -> Option<DrawThrough> {
        let is_in_place = self.plan.setup().is_some_and(|setup| setup.in_place);
        if !is_in_place || met.iter().all(|crossing| crossing.over) {
            return None;
        }
        let place = Place::Lay { pass_leg, crossing };
        let takes = self.remaining(place).and_then(|remaining| remaining.takes);
        Some(DrawThrough {
            length: takes.and_then(|takes| Millimetres::new(takes.in_cord).ok()),
            is_new: self.is_new_tuck(pass_leg),
        })
    }

    /// Whether a leg is among the first that tuck: in its pass, or in the tie.
    fn is_new_tuck(&self, pass_leg: PassLeg) -> bool {
        let laying = self.plan.laying();
        let is_beginning = pass_leg.pass == 1 && pass_leg.strand == 1;
        let before = (1..pass_leg.leg).filter(|leg| {
            let leg = PassLeg {
                leg: *leg,
                ..pass_leg
            };
            laying.crossings(leg).any(|crossing| !crossing.over)
        });
        let most = if is_beginning { TAUGHT } else { 1 };
        before.take(most).count() < most
    }
}
