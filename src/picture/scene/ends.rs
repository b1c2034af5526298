//! How a cord begins and ends: joined to the next round of its strand, or hanging loose.

use super::active_leg::{ActiveLeg, rows_along};
use super::cord_path::Limit;
use super::knot::KnotScene;
use super::sheet_point::SheetPoint;
use super::visible_legs::VisibleLeg;
use crate::knot::{Heading, Leg, PassLeg};

/// So far round from the eye an end that shows again beyond its bights is left out: 1 at the edge of a tube.
const TURNED_TOO_FAR: f32 = 0.8;

impl KnotScene {
    /// How the cord begins at its first pin.
    pub fn start_limit(&self, visible: &VisibleLeg, pass: u16) -> Limit {
        if self.laid.ends_are_hidden {
            return Limit::Bight(self.layout.offset(pass));
        }
        if pass > 1 && self.goes_on_as_tuck(pass - 1, visible.leg) {
            Limit::Bight(self.layout.offset(pass - 1))
        } else if self.is_tail_in_hand(visible, pass) {
            Limit::Bight(self.layout.offset(self.laying.passes() + 1))
        } else if self.leg_of_pass(visible, pass) > 1 {
            Limit::Bight(self.layout.offset(pass))
        } else if self.goes_on(Self::laid_as(visible, pass - 1)) {
            Limit::Bight(self.layout.offset(pass - 1))
        } else if self.outside(visible.cords, pass).is_some() || self.is_come_home(visible, pass) {
            Limit::Square(self.cord_path(visible, pass).straight()[0])
        } else {
            Limit::End
        }
    }

    /// How the cord ends at its last pin.
    pub fn finish_limit(&self, visible: &VisibleLeg, pass: u16) -> Limit {
        if self.laid.ends_are_hidden {
            return Limit::Bight(self.layout.offset(pass));
        }
        let is_tail = |tuck: &ActiveLeg| tuck.is_backward && tuck.leg.from == visible.leg.from;
        if pass > self.laying.passes() && self.tucked().is_some_and(is_tail) {
            // Round the pin from where the first cord begins.
            Limit::Bight(self.layout.offset(1))
        } else if self.leg_of_pass(visible, pass) < self.laying.knot().legs_of(visible.leg.strand) {
            Limit::Bight(self.layout.offset(pass))
        } else if self.goes_on(Self::laid_as(visible, pass)) {
            // The cord goes on as that of the next pass, once that is begun.
            let begun = self.laid.cords_from(visible.leg.to) > pass;
            Limit::Bight(self.layout.offset(if begun { pass + 1 } else { pass }))
        } else if self.goes_on_as_tuck(pass, self.laying.knot().leg_from(visible.leg.to)) {
            Limit::Bight(self.layout.offset(pass + 1))
        } else if self.outside(visible.cords, pass).is_some() {
            Limit::Square(self.cord_path(visible, pass).straight()[1])
        } else {
            Limit::End
        }
    }

    /// The pass and strand of a leg in this pass, to ask whether its cord goes on.
    const fn laid_as(visible: &VisibleLeg, pass: u16) -> PassLeg {
        PassLeg {
            pass,
            strand: visible.leg.strand,
            leg: 1,
        }
    }

    /// Whether the cord of a pass goes on as that of the next: both begin at one pin.
    pub fn goes_on(&self, trip: PassLeg) -> bool {
        let laying = &self.laying;
        let PassLeg { pass, strand, .. } = trip;
        (1..laying.passes()).contains(&pass)
            && laying.start(pass, strand) == laying.start(pass + 1, strand)
    }

    /// The end that is being tucked away, if one is: it lies beside all the cords of its leg.
    fn tucked(&self) -> Option<&ActiveLeg> {
        let active = self.laid.active.as_ref();
        active.filter(|active| active.beside == self.laying.passes())
    }

    /// Whether the cord of a pass, back where it began, goes on as the end that is tucked away along
    /// `leg`, or that was tucked away there before the tail is.
    fn goes_on_as_tuck(&self, pass: u16, leg: Leg) -> bool {
        pass == self.laying.passes()
            && self.laying.pass_leg_of(pass, leg).leg == 1
            && self.tucked().is_some_and(|tuck| {
                let from = if tuck.is_backward {
                    tuck.leg.to
                } else {
                    tuck.leg.from
                };
                from == leg.from
            })
    }

    /// Whether the first cord begins with this leg, and its tail is the end that is tucked away.
    fn is_tail_in_hand(&self, visible: &VisibleLeg, pass: u16) -> bool {
        let is_its = |tuck: &ActiveLeg| tuck.is_backward && tuck.leg.to == visible.leg.from;
        pass == 1 && self.leg_of_pass(visible, pass) == 1 && self.tucked().is_some_and(is_its)
    }

    /// The row on the way of a leg at which an end is held that was tucked away along it before the one
    /// in hand: the first at which it goes under.
    pub fn held_at(&self, visible: &VisibleLeg, pass: u16) -> Option<i32> {
        let is_tucked = pass > self.laying.passes()
            && !self.laid.is_active(visible.leg.from)
            && self.goes_on_as_tuck(pass - 1, visible.leg);
        let knot = self.laying.knot();
        let nest = knot.nest_from(visible.leg.from);
        let under = |row: u16| !knot.goes_over(visible.leg.heading(), row);
        knot.crossings_of(visible.leg)
            .find(|(row, _)| is_tucked && under(*row))
            .map(|(row, _)| rows_along(nest, visible.leg, row))
    }

    /// Whether the cord that began with this leg is back over its tail, and no cord lies beside it yet.
    fn is_come_home(&self, visible: &VisibleLeg, pass: u16) -> bool {
        let home = self.laying.knot().leg_to(visible.leg.from);
        let landed = self.laid.cords(home);
        visible.leg.heading() == Heading::Rising
            && self.goes_on(Self::laid_as(visible, pass))
            && visible.cords == pass
            && landed >= pass
    }

    /// The pass whose bight lies outermost at a bottom pin with so many cords, when that is not
    /// `pass` itself.
    fn outside(&self, cords: u16, pass: u16) -> Option<u16> {
        let outermost = if self.layout.offset(cords.max(1)) > self.layout.offset(1) {
            cords
        } else {
            1
        };
        (outermost != pass && cords > 1).then_some(outermost)
    }

    /// The piece of a loose end that shows again beyond the bights that lie over it.
    pub fn hidden_end(&self, visible: &VisibleLeg, pass: u16) -> Option<[SheetPoint; 4]> {
        let knot = self.laying.knot();
        let rising = visible.leg.heading() == Heading::Rising;
        let loose = if rising {
            self.leg_of_pass(visible, pass) == 1
                && !self.is_tail_in_hand(visible, pass)
                && !self.goes_on(Self::laid_as(visible, pass - 1))
                && visible.seen.0 == 0
        } else {
            self.leg_of_pass(visible, pass) == knot.legs_of(visible.leg.strand)
                && !self.goes_on(Self::laid_as(visible, pass))
                && !self.goes_on_as_tuck(pass, knot.leg_from(visible.leg.to))
                && visible.seen.1 == visible.rows
        };
        // An end that is tucked away comes round a pin and hangs nowhere.
        if !loose || pass > self.laying.passes() || self.laid.ends_are_hidden {
            return None;
        }
        let layout = &self.layout;
        // A strand goes from round to round at its first pin: the outermost bight there joins
        // two passes.
        let (outermost, joined) = match self.outside(visible.cords, pass) {
            Some(1) => (1, 2),
            Some(outermost) => (outermost, outermost - 1),
            None if rising && self.is_come_home(visible, pass) => (pass, pass),
            None => return None,
        };
        let joined = layout.offset(joined);
        let over = self.cord_path(visible, outermost);
        let outside = layout.bend + f32::midpoint(over.offset, joined);
        let hub = over.pin(rising).0 + over.hub_shift(rising, joined);
        let path = self.cord_path(visible, pass);
        let pin = path.pin(rising);
        let (x, _) = path.at(path.straight()[usize::from(!rising)], path.offset);
        let clear = outside + layout.cord / 2.0 + layout.gap;
        let tip = path.tip();
        let form = path.form(rising);
        let edge = |x: f32| {
            let aside = ((x - hub).abs() * form.around).min(clear);
            let up = (clear * clear - aside * aside).sqrt() / form.along;
            (x, pin.1 - up)
        };
        let half = layout.cord / 2.0 / form.around;
        let (left, right) = (x - half, x + half);
        // At the very edge of a tube it would be a stray stroke: no cord is seen that it belongs to. And a head
        // may leave nothing of it.
        if self.projection.turned(x) > TURNED_TOO_FAR || edge(x).1 <= tip {
            return None;
        }
        Some([edge(left), edge(right), (right, tip), (left, tip)])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{AtOnce, Captions, FinishTask, Plan, Script, What};
    use crate::knot::Side;
    use crate::picture::scene::knot::Sight;
    use crate::picture::scene::{Moment, View, Viewport};

    /// While an end of the first cord is tucked away: the working one, or the tail.
    fn tucking(counts: [&str; 3], side: Side, is_working: bool) -> KnotScene {
        let [leads, bights, passes] = counts;
        let plan = Plan::read(leads, bights, passes, "1").unwrap();
        let script = Script::new(plan.with_side(side), AtOnce::default());
        let step = script.steps().find(|step| match &step.what {
            What::Finish(finish) => {
                matches!(&finish.task, FinishTask::Tuck(tuck) if tuck.is_working == is_working)
            }
            _ => false,
        });
        let (plan, moment) = (script.plan(), Moment::of_step(&step.unwrap()));
        let sight = Sight {
            view: View::RolledOut,
            ground: None,
            has_pins: true,
            captions: &Captions::default(),
            viewport: Viewport::new(1200.0, 800.0),
            beside: 0.0,
        };
        KnotScene::tied(sight, plan.laying(), plan.side, plan.hand, &moment)
    }

    /// How many ends hang down from the rims, and where ends are held that were tucked away before.
    fn ends(scene: &KnotScene) -> (usize, usize) {
        let (mut hanging, mut held) = (0, 0);
        for heading in [Heading::Rising, Heading::Falling] {
            for visible in scene.visible_legs(heading, scene.inner()) {
                for pass in 1..=visible.cords {
                    let limits = [
                        scene.start_limit(&visible, pass),
                        scene.finish_limit(&visible, pass),
                    ];
                    hanging += limits.iter().filter(|limit| **limit == Limit::End).count();
                    hanging += usize::from(scene.hidden_end(&visible, pass).is_some());
                    held += usize::from(scene.held_at(&visible, pass).is_some());
                }
            }
        }
        (hanging, held)
    }

    #[test]
    fn the_picture_of_each_tuck_shows_that_tuck() {
        for counts in [
            ["5", "7", "1"],
            ["5", "6", "2"],
            ["3", "4", "2"],
            ["4", "7", "3"],
        ] {
            for side in [Side::Right, Side::Left] {
                let what = format!("{counts:?} {side:?}");
                // The tail hangs until it is its turn, and the working end is held by then.
                let (hanging, held) = ends(&tucking(counts, side, true));
                assert!(hanging > 0 && held == 0, "{what}: {hanging}, {held}");
                let (hanging, held) = ends(&tucking(counts, side, false));
                assert!(hanging == 0 && held > 0, "{what}: {hanging}, {held}");
            }
        }
    }
}
