//! The cord of the leg in hand on the sheet: the part being told, where its head points, and where
//! to write the numbers of pins that cannot be seen.

use kurbo::Point;

use super::active_leg::ActiveLeg;
use super::cord_path::{CordPath, END_BEND, Limit, Stretch};
use super::knot::KnotScene;
use super::layout::SceneLayout;
use super::sheet_point::SheetPoint;
use super::visible_legs::VisibleLeg;
use crate::knot::{Heading, Rim};

impl KnotScene {
    /// The copies of the leg in hand that can be seen.
    pub fn visible_active<'a>(
        &'a self,
        active: &'a ActiveLeg,
    ) -> impl Iterator<Item = VisibleLeg> + 'a {
        self.visible_legs(active.leg.heading(), self.projection.across)
            .filter(|visible| visible.leg.from == active.leg.from)
    }

    /// Parts the stretches of the leg in hand: what is being told as far as it has gone in, what of it
    /// lies already, and what is still to be laid.
    pub fn parted(
        &self,
        visible: &VisibleLeg,
        active: &ActiveLeg,
        stretches: &[Stretch],
    ) -> [Vec<Stretch>; 3] {
        let path = self.cord_path(visible, active.beside + 1);
        let diagonal = self.layout.diagonal;
        let (start, end) = (active.drawn.start * diagonal, active.drawn.end * diagonal);
        let along = |limit: Limit, at_start: bool| match limit {
            Limit::Bight(_) | Limit::End if at_start => f32::NEG_INFINITY,
            Limit::Bight(_) | Limit::End => f32::INFINITY,
            Limit::Square(along) => along,
            Limit::Slant(nth, other) => path.meets(nth, path.offset, other),
        };
        // Of a cord that is cut off nothing is to come beyond what is told.
        let [lowest, highest] = if active.is_cut_off {
            [active.rows.start, active.rows.end].map(|row| row * diagonal)
        } else {
            [f32::NEG_INFINITY, f32::INFINITY]
        };
        let (mut told, mut below, mut above) = (Vec::new(), Vec::new(), Vec::new());
        for &(mut from, mut to) in stretches {
            let (mut near, mut far) = (along(from, true), along(to, false));
            if near > highest || far < lowest {
                continue;
            }
            if near < lowest {
                (from, near) = (Limit::Square(lowest), lowest);
            }
            if far > highest {
                (to, far) = (Limit::Square(highest), highest);
            }
            if far <= start {
                below.push((from, to));
                continue;
            }
            if near >= end {
                above.push((from, to));
                continue;
            }
            let mut first = from;
            if near < start {
                first = Limit::Square(start);
                below.push((from, first));
            }
            let mut last = to;
            if far > end {
                last = Limit::Square(end);
                above.push((last, to));
            }
            told.push((first, last));
        }
        if active.is_backward {
            [told, above, below]
        } else {
            [told, below, above]
        }
    }

    /// The three corners of the head at the end of what is being told: so many pixels from its
    /// middle line to either side, so long, and set back by so much.
    pub fn head(
        &self,
        visible: &VisibleLeg,
        active: &ActiveLeg,
        half: f32,
        length: f32,
        back: f32,
    ) -> [SheetPoint; 3] {
        let layout = &self.layout;
        let path = self.cord_path(visible, active.beside + 1);
        if active.is_backward && active.drawn.start.is_infinite() {
            // The leg is taken back all the way: the head points round the pin that the leg came
            // from.
            let pin = path.pin(true);
            let (radius, up) = if path.rising {
                (layout.bend + path.offset, -1.0)
            } else {
                (layout.bend - path.offset, 1.0)
            };
            let y = pin.1 + up * radius / path.form(true).along;
            [
                (pin.0 + back, y - half),
                (pin.0 + back - length, y),
                (pin.0 + back, y + half),
            ]
        } else if active.is_backward {
            let along = active.drawn.start * layout.diagonal;
            [
                path.at(along + back, path.offset - half),
                path.at(along + back - length, path.offset),
                path.at(along + back, path.offset + half),
            ]
        } else if active.drawn.end.is_finite() {
            let along = active.drawn.end * layout.diagonal;
            [
                path.at(along - back, path.offset - half),
                path.at(along - back + length, path.offset),
                path.at(along - back, path.offset + half),
            ]
        } else if self.ends_loose(visible, active) {
            // The loose end hangs straight down; so does its head.
            let tip = path.tip();
            let (hub, _) = path.hub_of_end(false);
            let x = hub.0 + END_BEND * layout.cord / path.form(false).around;
            [
                (x + half, tip + back),
                (x, tip + back - length),
                (x - half, tip + back),
            ]
        } else {
            let pin = path.pin(false);
            let (radius, up) = if path.rising {
                (layout.bend - path.offset, 1.0)
            } else {
                (layout.bend + path.offset, -1.0)
            };
            let y = pin.1 + up * radius / path.form(false).along;
            [
                (pin.0 - back, y - half),
                (pin.0 - back + length, y),
                (pin.0 - back, y + half),
            ]
        }
    }

    fn ends_loose(&self, visible: &VisibleLeg, active: &ActiveLeg) -> bool {
        self.leg_of_pass(visible, active.pass_leg.pass)
            == self.laying.knot().legs_of(visible.leg.strand)
            && !self.goes_on(active.pass_leg)
    }

    /// Where to write the numbers of the first and the last pin of the leg in hand, or `None`
    /// where they can be seen at the pin itself: for the copy in the middle of the picture.
    pub fn far_numbers(&self, active: &ActiveLeg) -> [Option<Point>; 2] {
        let (base, rows) = self.rows_of(active.leg);
        let path = CordPath {
            layout: &self.layout,
            rising: active.leg.heading() == Heading::Rising,
            start: self.focus.start,
            base,
            rows,
            offset: self.layout.offset(active.beside + 1),
        };
        [true, false].map(|at_start| {
            let pin = path.pin(at_start);
            if self.shows_number(pin) {
                None
            } else if self.projection.board().is_some() {
                self.leaves(path, at_start)
            } else if let Some(point) = self.beside_tube(path, at_start) {
                Some(point)
            } else if self.number_fits(rim_at(pin, &self.layout)) {
                Some(self.at_the_side(pin))
            } else {
                self.leaves(path, at_start)
            }
        })
    }

    /// The place at the side of the picture, level with the numbers of its rim, for a pin beyond
    /// that side. A number among the cords would stand where there is no pin.
    fn at_the_side(&self, pin: SheetPoint) -> Point {
        let layout = &self.layout;
        let height = layout.number_height(rim_at(pin, layout));
        let inset = f64::from(layout.large_text) * 0.9;
        let level = self.point((self.projection.middle, height)).y;
        let is_right = (pin.0 > self.projection.middle) != self.projection.mirrored;
        let x = if is_right {
            f64::from(self.viewport.width) - inset
        } else {
            inset
        };
        Point::new(x, level)
    }

    /// The last point of the leg in hand that can be seen on the way to one of its pins.
    fn leaves(&self, path: CordPath<'_>, at_start: bool) -> Option<Point> {
        let inset = f64::from(self.layout.large_text) * -1.2;
        let picture = self.viewport.rect().inset(inset);
        let goal = path.straight()[usize::from(!at_start)];
        let step = if at_start { -4.0 } else { 4.0 };
        let mut along = self.focus.row_on_the_way() * self.layout.diagonal;
        let mut last = None;
        while (along - goal) * step < 0.0 {
            let on_sheet = path.at(along, path.offset);
            let point = self.point(on_sheet);
            if !picture.contains(point) || self.projection.turned(on_sheet.0) >= 1.0 {
                break;
            }
            last = Some(point);
            along += step;
        }
        last
    }

    /// The place at the side of a round tube where the cord comes round its edge from a pin on the far
    /// side, or goes round it to one: beside the tube, or over its edge where the tube has all the width;
    /// `None` when the edge, or the place, is out of the picture. At the height of the pin, or level with
    /// the numbers of its rim, the number would stand beside another pin, the last that is seen.
    fn beside_tube(&self, path: CordPath<'_>, at_start: bool) -> Option<Point> {
        let (text, viewport) = (self.layout.large_text, self.viewport);
        let radius = self.projection.radius?;
        let at = self.round_the_edge(path, at_start);
        let radius = match &self.projection.surface {
            Some(surface) => surface.at(at.1)[0],
            None => radius,
        };
        let furthest = viewport.width / 2.0 - text;
        let clear = (radius + text * 1.1).min(furthest);
        let at = self.point(at);
        let at = self.clear_of_pins(at, path.pin(at_start));
        let (low, high) = (f64::from(text), f64::from(viewport.height - text));
        let is_seen = radius <= viewport.width / 2.0 && (low..=high).contains(&at.y);
        // A leg comes in on the side it travels from.
        let from_left = at_start != self.projection.mirrored;
        let aside = if from_left { -clear } else { clear };
        let x = f64::from(viewport.width / 2.0 + aside);
        is_seen.then(|| Point::new(x, at.y))
    }

    /// A point beside the tube, so far from the height of a pin on its far side that a number there does
    /// not stand beside the pin of that rim which is seen at the edge.
    fn clear_of_pins(&self, at: Point, pin: SheetPoint) -> Point {
        if self.projection.turned(pin.0) <= 1.0 {
            return at;
        }
        let height = self.point(pin).y;
        let clear = f64::from(self.layout.large_text) * 1.1;
        let y = match rim_at(pin, &self.layout) {
            Rim::Bottom => at.y.min(height - clear),
            Rim::Top => at.y.max(height + clear),
        };
        Point::new(at.x, y)
    }

    /// The last point of the leg in hand before the edge of the tube, on the way to one of its pins; the
    /// pin itself where it is this side of the edge.
    fn round_the_edge(&self, path: CordPath<'_>, at_start: bool) -> SheetPoint {
        let pin = path.pin(at_start);
        if self.projection.turned(pin.0) <= 1.0 {
            return pin;
        }
        let goal = path.straight()[usize::from(!at_start)];
        let middle = self.focus.row_on_the_way() * self.layout.diagonal;
        // A leg is straight on the sheet, so halving finds the edge.
        let (mut seen, mut hidden) = (middle, goal);
        for _ in 0..20 {
            let between = f32::midpoint(seen, hidden);
            if self.projection.turned(path.at(between, path.offset).0) < 1.0 {
                seen = between;
            } else {
                hidden = between;
            }
        }
        path.at(seen, path.offset)
    }
}

/// The rim that a pin on the sheet stands on.
fn rim_at(pin: SheetPoint, layout: &SceneLayout) -> Rim {
    if pin.1 > layout.top() / 2.0 {
        Rim::Top
    } else {
        Rim::Bottom
    }
}
