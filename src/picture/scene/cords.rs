//! The cords that can be seen, cut where they go under.

use super::active_leg::rows_along;
use super::cord_path::{Limit, Stretch};
use super::knot::KnotScene;
use super::outlines::Outlines;
use super::sheet_point::real;
use super::visible_legs::VisibleLeg;
use crate::knot::Heading;

impl KnotScene {
    /// The offsets of the edges of `cords` cords, with the gap beside them.
    fn edges(&self, cords: u16) -> [f32; 2] {
        let layout = &self.layout;
        let (one, other) = (layout.offset(1), layout.offset(cords.max(1)));
        let clear = layout.cord / 2.0 + layout.gap;
        [one.min(other) - clear, one.max(other) + clear]
    }

    /// Where a cord can be seen: pairs of limits, cut at every under.
    pub fn stretches(&self, visible: &VisibleLeg, pass: u16) -> Vec<Stretch> {
        let heading = visible.leg.heading();
        let (first, last) = visible.seen;
        // Room for a cord that goes under at half of its crossings, as most do.
        let rows = usize::try_from(last - first).unwrap_or(0);
        let mut stretches = Vec::with_capacity(rows / 2 + 2);
        let mut from = if first == 0 {
            self.start_limit(visible, pass)
        } else {
            Limit::Square(real(first) * self.layout.diagonal)
        };
        let knot = self.laying.knot();
        let nest = knot.nest_from(visible.leg.from);
        let held_at = self.held_at(visible, pass);
        if held_at.is_some_and(|held| held < first) {
            return stretches;
        }
        for (row, met) in knot.crossings_of(visible.leg) {
            let nth = rows_along(nest, visible.leg, row);
            if nth > last {
                break;
            }
            if nth < first || knot.goes_over(heading, row) {
                continue;
            }
            let cords = self.laid.cords(met);
            if cords == 0 {
                continue;
            }
            let [low, high] = self.edges(cords);
            // A rising leg meets the rightmost line of a falling cable first; a falling leg
            // the leftmost of a rising one.
            let (enter, leave) = match heading {
                Heading::Rising => (high, low),
                Heading::Falling => (low, high),
            };
            stretches.push((from, Limit::Slant(nth, enter)));
            from = Limit::Slant(nth, leave);
            if held_at == Some(nth) {
                // Half way to the next it will be cut.
                stretches.push((
                    from,
                    Limit::Square((real(nth) + 0.5) * self.layout.diagonal),
                ));
                return stretches;
            }
        }
        stretches.push((
            from,
            if last == visible.rows {
                self.finish_limit(visible, pass)
            } else {
                Limit::Square(real(last) * self.layout.diagonal)
            },
        ));
        stretches
    }

    /// The outlines of one cord, `width` wide, of these stretches.
    pub fn outlines(
        &self,
        visible: &VisibleLeg,
        pass: u16,
        width: f32,
        stretches: &[Stretch],
    ) -> Outlines {
        let path = self.cord_path(visible, pass);
        let step = self.projection.step();
        let mut outlines = Outlines::with_capacity(stretches.len() + 1);
        for &stretch in stretches {
            path.outline(stretch, width, step, &mut outlines);
        }
        if let Some(end) = self.hidden_end(visible, pass) {
            outlines.add(|outline| outline.extend(end));
        }
        outlines
    }
}
