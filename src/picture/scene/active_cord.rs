//! The cord of the leg in hand on the sheet: the part being told, and where its head points.

use super::active_leg::ActiveLeg;
use super::cord_path::{END_BEND, Limit, Stretch};
use super::knot::KnotScene;
use super::sheet_point::SheetPoint;
use super::visible_legs::VisibleLeg;

/// Where along its leg the head of a cord begins that goes round a pin, what it points at, and the pin.
struct HeadRoundPin {
    from: f32,
    tip: SheetPoint,
    pin: SheetPoint,
}

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
        // Round its pin a cord ends where its head begins.
        let head = self
            .head_round_pin(visible, active)
            .map(|head| Limit::Square(head.from));
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
            if let (Some((from @ Limit::Bight(_), _)), Some(head)) = (told.first_mut(), head) {
                *from = head;
            }
            [told, above, below]
        } else {
            if let (Some((_, to @ Limit::Bight(_))), Some(head)) = (told.last_mut(), head) {
                *to = head;
            }
            [told, below, above]
        }
    }

    /// Where the head of a cord begins that goes round a pin, and the point of its tip: on the far side of the
    /// pin, so that it lies over neither pin nor edge of the tube. `None` where it does not come to a pin, or
    /// hangs loose.
    fn head_round_pin(&self, visible: &VisibleLeg, active: &ActiveLeg) -> Option<HeadRoundPin> {
        let layout = &self.layout;
        let path = self.cord_path(visible, active.beside + 1);
        let at_start = active.is_backward;
        let comes_to_pin = if at_start {
            active.drawn.start.is_infinite()
        } else {
            active.drawn.end.is_infinite() && !self.ends_loose(visible, active)
        };
        // On a board, where all is wider further out, a head that began so early would end far from its pin.
        let is_laid_on_board = self.projection.board().is_some() && !at_start;
        if !comes_to_pin || active.is_cut_off || is_laid_on_board {
            return None;
        }
        let pin = path.pin(at_start);
        let outwards = if path.rising == at_start { -1.0 } else { 1.0 };
        let radius = if path.rising == at_start {
            layout.bend + path.offset
        } else {
            layout.bend - path.offset
        };
        let form = path.form(at_start);
        let tip = (pin.0, pin.1 + outwards * radius / form.along);
        // Half as far again as it is long, so that its barbs keep clear of the pin, less the half of the bight.
        let over = (1.5 * layout.head_length() - radius * form.sin.asin()).max(0.0);
        let [first, last] = path.straight();
        // It does not reach back over the last cable that is crossed.
        let beside = layout.cord / 2.0 + layout.gap;
        let edges = [
            layout.offset(1) - beside,
            layout.offset(self.laid.passes()) + beside,
        ];
        let from = if at_start {
            let crossed = edges.map(|edge| path.meets(1, path.offset, edge));
            (first + over).min(crossed[0].min(crossed[1])).max(first)
        } else {
            let crossed = edges.map(|edge| path.meets(path.rows - 1, path.offset, edge));
            (last - over).max(crossed[0].max(crossed[1])).min(last)
        };
        Some(HeadRoundPin { from, tip, pin })
    }

    /// The pin that the head of the cord in hand goes round.
    pub fn pin_of_head(&self, visible: &VisibleLeg, active: &ActiveLeg) -> Option<SheetPoint> {
        Some(self.head_round_pin(visible, active)?.pin)
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
        if let Some(HeadRoundPin { from, tip, .. }) = self.head_round_pin(visible, active) {
            let from = path.at(from, path.offset);
            let (run, rise) = (tip.0 - from.0, tip.1 - from.1);
            let long = run.hypot(rise).max(0.1);
            let (run, rise) = (run / long, rise / long);
            let base = (from.0 - back * run, from.1 - back * rise);
            [
                (base.0 - half * rise, base.1 + half * run),
                (base.0 + length * run, base.1 + length * rise),
                (base.0 + half * rise, base.1 - half * run),
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
            // A tuck that is cut off at its pin, or a leg on a board.
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

    /// Whether it is the cord in hand of this leg, and hangs loose with its head at its end.
    pub fn has_loose_head(&self, visible: &VisibleLeg, pass: u16) -> bool {
        let active = self.laid.active.as_ref();
        active.is_some_and(|active| {
            active.leg.from == visible.leg.from
                && active.beside + 1 == pass
                && !active.is_backward
                && !active.is_cut_off
                && active.drawn.end.is_infinite()
                && self.ends_loose(visible, active)
        })
    }

    fn ends_loose(&self, visible: &VisibleLeg, active: &ActiveLeg) -> bool {
        self.leg_of_pass(visible, active.pass_leg.pass)
            == self.laying.knot().legs_of(visible.leg.strand)
            && !self.goes_on(active.pass_leg)
    }
}
