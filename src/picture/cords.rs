//! The cords of a picture as shapes: every cord that can be seen, cut where it goes under.

use super::course::{Course, Limit, Spot, Stretch};
use super::gauge::{Gauge, real, whole};
use super::laid::Laid;
use super::lens::{Lens, Span};
use super::shape::{Point, Role, Segment, Shape, polygon};
use crate::knot::{Heading, Laying, Leg, Pin};

/// All that is needed to draw cords.
#[derive(Clone, Debug)]
pub(super) struct Drawing {
    pub laying: Laying,
    pub laid: Laid,
    pub gauge: Gauge,
    pub lens: Lens,
}

/// A leg as it is met while looking over the sheet from left to right.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sighting {
    pub leg: Leg,
    /// Half pitch of the pin it starts from, on this copy.
    pub start: i32,
    /// Cords on it.
    pub cords: u16,
    /// Rows on the way that can be seen, first and last; below 1 and beyond the last row are
    /// the pins.
    pub seen: (i32, i32),
}

impl Drawing {
    /// The copies of legs of which anything lies in `span` of the sheet and can be seen.
    pub fn sightings(&self, heading: Heading, span: Span) -> impl Iterator<Item = Sighting> + '_ {
        let gauge = &self.gauge;
        let Span { from, to } = span;
        let first = whole(from / gauge.half_pitch) - gauge.leads - 2;
        let last = whole(to / gauge.half_pitch) + 2;
        let shift = if heading == Heading::Rising {
            0
        } else {
            gauge.stagger
        };
        let even = first + (first - shift).rem_euclid(2);
        (even..=last).step_by(2).filter_map(move |start| {
            let index = self.index(start - shift);
            let pin = u16::try_from(index + 1).ok()?;
            let leg = self.laying.knot().leg_from(match heading {
                Heading::Rising => Pin::bottom(pin),
                Heading::Falling => Pin::top(pin),
            });
            let seen = self.seen(heading, start, span);
            (seen.0 <= seen.1).then(|| Sighting {
                leg,
                start,
                cords: self.laid.cords(heading, index),
                seen,
            })
        })
    }

    /// The pin, counted from 0, at so many half pitches from the first of its ring.
    fn index(&self, half_pitches: i32) -> usize {
        usize::try_from((half_pitches / 2).rem_euclid(self.gauge.bights)).unwrap_or(0)
    }

    /// The rows on the way of a leg that lie within what the lens shows, and one more each way.
    fn seen(&self, heading: Heading, start: i32, across: Span) -> (i32, i32) {
        let (gauge, lens) = (&self.gauge, &self.lens);
        let low = whole(lens.upright.from / gauge.row) - 1;
        let high = whole(lens.upright.to / gauge.row) + 2;
        let rows = match heading {
            Heading::Rising => (low, high),
            Heading::Falling => (gauge.leads - high, gauge.leads - low),
        };
        let left = whole(across.from / gauge.half_pitch) - 1 - start;
        let right = whole(across.to / gauge.half_pitch) + 2 - start;
        (rows.0.max(left).max(0), rows.1.min(right).min(gauge.leads))
    }

    /// How many cords of the other heading cross a leg in the `nth` row on its way.
    fn crossing_cords(&self, heading: Heading, start: i32, nth: i32) -> u16 {
        let gauge = &self.gauge;
        match heading {
            Heading::Rising => {
                let from = start + nth - (gauge.leads - nth);
                self.laid
                    .cords(Heading::Falling, self.index(from - gauge.stagger))
            }
            Heading::Falling => {
                let from = start + nth - (gauge.leads - nth);
                self.laid.cords(Heading::Rising, self.index(from))
            }
        }
    }

    /// Whether a leg goes under in the `nth` row on its way, by the weave.
    fn under(&self, heading: Heading, nth: i32) -> bool {
        let row = match heading {
            Heading::Rising => nth,
            Heading::Falling => self.gauge.leads - nth,
        };
        u16::try_from(row).is_ok_and(|row| !self.laying.knot().goes_over(heading, row))
    }

    /// The cord of one pass on a leg.
    pub fn course(&self, sighting: &Sighting, pass: u16) -> Course<'_> {
        Course {
            gauge: &self.gauge,
            rising: sighting.leg.heading() == Heading::Rising,
            start: sighting.start,
            offset: self.gauge.offset(pass),
        }
    }

    /// The offsets of the edges of `cords` cords, with the gap beside them.
    fn edges(&self, cords: u16) -> [f32; 2] {
        let gauge = &self.gauge;
        let (one, other) = (gauge.offset(1), gauge.offset(cords.max(1)));
        let clear = gauge.cord / 2.0 + gauge.gap;
        [one.min(other) - clear, one.max(other) + clear]
    }

    /// Where a cord can be seen: pairs of limits, cut at every under.
    pub fn stretches(&self, sighting: &Sighting, pass: u16) -> Vec<Stretch> {
        let heading = sighting.leg.heading();
        let (first, last) = sighting.seen;
        let mut stretches = Vec::new();
        let mut from = if first == 0 {
            self.start_limit(sighting, pass)
        } else {
            Limit::Square(real(first) * self.gauge.diagonal)
        };
        for nth in first.max(1)..=last.min(self.gauge.leads - 1) {
            if !self.under(heading, nth) {
                continue;
            }
            let cords = self.crossing_cords(heading, sighting.start, nth);
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
        }
        stretches.push((
            from,
            if last == self.gauge.leads {
                self.finish_limit(sighting, pass)
            } else {
                Limit::Square(real(last) * self.gauge.diagonal)
            },
        ));
        stretches
    }

    /// The outlines of one cord, `width` wide, of the stretches that `wanted` picks.
    pub fn outlines(
        &self,
        sighting: &Sighting,
        pass: u16,
        width: f32,
        stretches: &[Stretch],
    ) -> Vec<Vec<Spot>> {
        let course = self.course(sighting, pass);
        let step = self.lens.step();
        stretches
            .iter()
            .filter(|&&(from, to)| course.is_open(from, to, width))
            .map(|&(from, to)| course.stretch(from, to, width, step))
            .chain(self.hidden_end(sighting, pass))
            .collect()
    }

    /// Adds the laid cords that can be seen.
    pub fn laid_cords(&self, shapes: &mut Vec<Shape>) {
        // No cord overlaps another, so their order is free: those of one colour together are
        // quicker to paint.
        let first = shapes.len();
        let beside = self.laid.in_hand.as_ref().map(|hand| hand.leg.from);
        for heading in [Heading::Falling, Heading::Rising] {
            for sighting in self.sightings(heading, self.lens.across) {
                let in_hand = self.laid.is_in_hand(sighting.leg.from);
                for pass in 1..=sighting.cords - u16::from(in_hand) {
                    let turn = self.laying.turn_of(pass, sighting.leg);
                    let is_noticed = self.laid.finished || beside == Some(sighting.leg.from);
                    let role = match self.laid.faired {
                        Some((faired, _)) if faired == turn => Role::InHand,
                        None if is_noticed => Role::Beside(turn),
                        _ => Role::Laid(turn),
                    };
                    let stretches = self.stretches(&sighting, pass);
                    let outlines = self.outlines(&sighting, pass, self.gauge.cord, &stretches);
                    self.place(&outlines, role, Role::Beyond(turn), shapes);
                }
            }
        }
        shapes[first..].sort_by_key(|shape| match shape.role {
            Role::Beyond(_) => (0, 0),
            Role::Laid(turn) => (1, turn.strand),
            _ => (2, 0),
        });
    }

    /// Brings outlines from the sheet to the frame: one shape for what lies within the turn of
    /// the tube that is shown, one for what lies beyond.
    pub fn place(&self, outlines: &[Vec<Spot>], role: Role, beyond: Role, shapes: &mut Vec<Shape>) {
        let Span { from, to } = self.lens.across;
        let inner = self.inner();
        let left = Span {
            from,
            to: inner.from,
        };
        let right = Span { from: inner.to, to };
        self.place_within(outlines, &[left, right], beyond, shapes);
        self.place_within(outlines, &[inner], role, shapes);
    }

    /// The range of the sheet that shows every part of the tube at most once.
    pub fn inner(&self) -> Span {
        self.lens.seams.unwrap_or(self.lens.across)
    }

    /// Brings what of the outlines lies in any of the spans to the frame, as one shape.
    pub fn place_within(
        &self,
        outlines: &[Vec<Spot>],
        spans: &[Span],
        role: Role,
        shapes: &mut Vec<Shape>,
    ) {
        let mut path = Vec::new();
        for outline in outlines {
            let (left, right) = extent(outline);
            for &span in spans {
                if span.from >= span.to || left >= span.to || right <= span.from {
                    continue;
                }
                if left >= span.from && right <= span.to {
                    self.add(outline, &mut path);
                } else {
                    self.add(&clipped(outline, span), &mut path);
                }
            }
        }
        if !path.is_empty() {
            shapes.push(Shape::fill(role, path));
        }
    }

    fn add(&self, outline: &[Spot], path: &mut Vec<Segment>) {
        let corners = outline.iter().map(|&(x, y)| self.lens.place(x, y));
        polygon(path, corners);
    }

    /// The point of the frame for a point of the sheet.
    pub fn point(&self, spot: Spot) -> Point {
        self.lens.place(spot.0, spot.1)
    }
}

fn extent(outline: &[Spot]) -> (f32, f32) {
    outline
        .iter()
        .fold((f32::MAX, f32::MIN), |(left, right), &(x, _)| {
            (left.min(x), right.max(x))
        })
}

/// What of a closed outline lies in `span`: cut at one edge, then at the other (Sutherland and
/// Hodgman, "Reentrant polygon clipping", Comm. ACM 17 (1974) 32).
fn clipped(outline: &[Spot], span: Span) -> Vec<Spot> {
    let left = cut(outline, span.from, |x| x >= span.from);
    cut(&left, span.to, |x| x <= span.to)
}

fn cut(outline: &[Spot], edge: f32, inside: impl Fn(f32) -> bool) -> Vec<Spot> {
    let mut kept = Vec::with_capacity(outline.len() + 2);
    let Some(&last) = outline.last() else {
        return kept;
    };
    let mut before = last;
    for &spot in outline {
        if inside(spot.0) != inside(before.0) {
            let share = (edge - before.0) / (spot.0 - before.0);
            kept.push((edge, before.1 + (spot.1 - before.1) * share));
        }
        if inside(spot.0) {
            kept.push(spot);
        }
        before = spot;
    }
    kept
}
