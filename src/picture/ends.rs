//! How a cord begins and ends: joined to the next round of its strand, or hanging loose.

use super::cords::{Drawing, Sighting};
use super::course::{Limit, Spot};
use crate::knot::Heading;

impl Drawing {
    /// How the cord begins at its first pin.
    pub fn start_limit(&self, sighting: &Sighting, pass: u16) -> Limit {
        if self.leg_of_pass(sighting, pass) > 1 {
            Limit::Bight(self.gauge.offset(pass))
        } else if self.goes_on(pass - 1) {
            Limit::Bight(self.gauge.offset(pass - 1))
        } else if self.outside(sighting.cords, pass).is_some() {
            Limit::Square(self.course(sighting, pass).straight()[0])
        } else {
            Limit::End
        }
    }

    /// How the cord ends at its last pin.
    pub fn finish_limit(&self, sighting: &Sighting, pass: u16) -> Limit {
        if self.leg_of_pass(sighting, pass) < self.laying.knot().legs_per_strand() {
            Limit::Bight(self.gauge.offset(pass))
        } else if self.goes_on(pass) {
            // On to the next round, once that is begun.
            let pin = usize::from(sighting.leg.to.number - 1);
            let begun = self.laid.cords(Heading::Rising, pin) > pass;
            Limit::Bight(self.gauge.offset(if begun { pass + 1 } else { pass }))
        } else if self.outside(sighting.cords, pass).is_some() {
            Limit::Square(self.course(sighting, pass).straight()[1])
        } else {
            Limit::End
        }
    }

    /// Which leg of the pass it is.
    pub fn leg_of_pass(&self, sighting: &Sighting, pass: u16) -> u16 {
        self.laying.turn_of(pass, sighting.leg).leg
    }

    /// Whether the cord of a pass goes on as that of the next: both begin at one pin.
    pub fn goes_on(&self, pass: u16) -> bool {
        let laying = &self.laying;
        (1..laying.passes()).contains(&pass) && laying.start(pass) == laying.start(pass + 1)
    }

    /// The pass whose bight lies outermost at a bottom pin with so many cords, when that is not
    /// `pass` itself.
    fn outside(&self, cords: u16, pass: u16) -> Option<u16> {
        let outermost = if self.gauge.offset(cords.max(1)) > self.gauge.offset(1) {
            cords
        } else {
            1
        };
        (outermost != pass && cords > 1).then_some(outermost)
    }

    /// The piece of a loose end that shows again beyond the bights that lie over it.
    pub fn hidden_end(&self, sighting: &Sighting, pass: u16) -> Option<Vec<Spot>> {
        let knot = self.laying.knot();
        let rising = sighting.leg.heading() == Heading::Rising;
        let loose = if rising {
            self.leg_of_pass(sighting, pass) == 1 && !self.goes_on(pass - 1) && sighting.seen.0 == 0
        } else {
            self.leg_of_pass(sighting, pass) == knot.legs_per_strand()
                && !self.goes_on(pass)
                && sighting.seen.1 == self.gauge.leads
        };
        if !loose {
            return None;
        }
        let gauge = &self.gauge;
        // A strand goes from round to round at its first pin: the outermost bight there joins
        // two passes.
        let outermost = self.outside(sighting.cords, pass)?;
        let joined = gauge.offset(if outermost == 1 { 2 } else { outermost - 1 });
        let over = self.course(sighting, outermost);
        let outside = gauge.bend + f32::midpoint(over.offset, joined);
        let hub = over.pin(rising).0 + over.hub_shift(rising, joined);
        let course = self.course(sighting, pass);
        let pin = course.pin(rising);
        let (x, _) = course.at(course.straight()[usize::from(!rising)], course.offset);
        let clear = outside + gauge.cord / 2.0 + gauge.gap;
        let tip = -gauge.overhang() - gauge.end_length();
        let edge = |x: f32| {
            let aside = (x - hub).abs().min(clear);
            (x, pin.1 - (clear * clear - aside * aside).sqrt())
        };
        let (left, right) = (x - gauge.cord / 2.0, x + gauge.cord / 2.0);
        Some(vec![edge(left), edge(right), (right, tip), (left, tip)])
    }
}
