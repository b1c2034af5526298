//! The leg in hand: its cord, where it is going, and the signs for over and under.

use super::Frame;
use super::cords::{Drawing, Sighting};
use super::course::{Course, Limit, Spot, Stretch};
use super::laid::InHand;
use super::shape::{Paint, Point, Role, Shape, polygon};
use crate::knot::{Heading, Rim};

impl Drawing {
    /// Adds every copy of the leg in hand that can be seen.
    pub fn cord_in_hand(&self, shapes: &mut Vec<Shape>) {
        let Some(hand) = &self.laid.in_hand else {
            return;
        };
        let edge = self.edge();
        for sighting in self.sightings(hand.leg.heading(), self.lens.across) {
            if sighting.leg.from != hand.leg.from {
                continue;
            }
            let pass = hand.beside + 1;
            let stretches = self.stretches(&sighting, pass);
            let [told, rest] = self.parted(&sighting, hand, &stretches);
            let cord = self.gauge.cord;
            for (role, width, stretches) in [
                (Role::InHandEdge, cord + 2.0 * edge, &told),
                (Role::InHandRest, cord * 0.5, &rest),
                (Role::InHand, cord, &told),
            ] {
                let mut outlines = self.outlines(&sighting, pass, width, stretches);
                outlines.truncate(stretches.len() + usize::from(role == Role::InHand));
                if role == Role::InHandEdge {
                    self.place_within(&outlines, &[self.inner()], role, shapes);
                } else {
                    self.place(&outlines, role, Role::InHandRest, shapes);
                }
            }
            self.arrow(&sighting, hand, shapes);
        }
    }

    /// Width of the edge that sets the cord in hand off.
    fn edge(&self) -> f32 {
        (self.gauge.cord * 0.08).clamp(1.0, 4.0).min(self.gauge.gap)
    }

    /// Parts the stretches of the leg in hand: what is being told, and the rest.
    fn parted(
        &self,
        sighting: &Sighting,
        hand: &InHand,
        stretches: &[Stretch],
    ) -> [Vec<Stretch>; 2] {
        let course = self.course(sighting, hand.beside + 1);
        let diagonal = self.gauge.diagonal;
        let (start, end) = (hand.rows.start * diagonal, hand.rows.end * diagonal);
        let along = |limit: Limit, at_start: bool| match limit {
            Limit::Bight(_) | Limit::End if at_start => f32::NEG_INFINITY,
            Limit::Bight(_) | Limit::End => f32::INFINITY,
            Limit::Square(along) => along,
            Limit::Slant(nth, other) => course.meets(nth, course.offset, other),
        };
        let (mut told, mut rest) = (Vec::new(), Vec::new());
        for &(from, to) in stretches {
            let (near, far) = (along(from, true), along(to, false));
            if far <= start || near >= end {
                rest.push((from, to));
                continue;
            }
            let mut first = from;
            if near < start {
                first = Limit::Square(start);
                rest.push((from, first));
            }
            let mut last = to;
            if far > end {
                last = Limit::Square(end);
                rest.push((last, to));
            }
            told.push((first, last));
        }
        [told, rest]
    }

    /// The head of the cord in hand, at the end of what is being told.
    fn arrow(&self, sighting: &Sighting, hand: &InHand, shapes: &mut Vec<Shape>) {
        let gauge = &self.gauge;
        let course = self.course(sighting, hand.beside + 1);
        let size = gauge.cord.max(6.0);
        let edge = self.edge();
        for (role, half, length) in [
            (
                Role::InHandEdge,
                size * 0.85 + 1.8 * edge,
                gauge.head_length() + 2.6 * edge,
            ),
            (Role::InHand, size * 0.85, gauge.head_length()),
        ] {
            let back = if role == Role::InHandEdge { edge } else { 0.0 };
            let corners = if hand.rows.end.is_finite() {
                let along = hand.rows.end * gauge.diagonal;
                [
                    course.at(along - back, course.offset - half),
                    course.at(along - back + length, course.offset),
                    course.at(along - back, course.offset + half),
                ]
            } else if self.ends_loose(sighting, hand) {
                // The loose end hangs straight down; so does its head.
                let tip = -gauge.overhang() - gauge.end_length();
                let along = course.straight()[1];
                let hub = course.at(along, course.offset + 1.1 * gauge.cord);
                let x = hub.0 + 1.1 * gauge.cord;
                [
                    (x + half, tip + back),
                    (x, tip + back - length),
                    (x - half, tip + back),
                ]
            } else {
                let pin = course.pin(false);
                let (radius, up) = if course.rising {
                    (gauge.bend - course.offset, 1.0)
                } else {
                    (gauge.bend + course.offset, -1.0)
                };
                let y = pin.1 + up * radius;
                [
                    (pin.0 - back, y - half),
                    (pin.0 - back + length, y),
                    (pin.0 - back, y + half),
                ]
            };
            self.place_within(&[corners.to_vec()], &[self.inner()], role, shapes);
        }
    }

    fn ends_loose(&self, sighting: &Sighting, hand: &InHand) -> bool {
        self.leg_of_pass(sighting, hand.turn.pass) == self.laying.knot().legs_per_strand()
            && !self.goes_on(hand.turn.pass)
    }

    /// Adds the signs for over and under at the crossings of the part in hand.
    pub fn signs(&self, shapes: &mut Vec<Shape>) {
        let Some(hand) = &self.laid.in_hand else {
            return;
        };
        let gauge = &self.gauge;
        let inner = self.inner();
        let square = (gauge.cord * 0.36).clamp(4.0, 16.0);
        let ring = (gauge.cord * 0.46).clamp(4.6, 20.0);
        for sighting in self.sightings(hand.leg.heading(), self.lens.across) {
            if sighting.leg.from != hand.leg.from {
                continue;
            }
            let course = self.course(&sighting, hand.beside + 1);
            for &(nth, over, cords) in &hand.crossings {
                let middle = f32::midpoint(gauge.offset(1), gauge.offset(cords));
                let along = course.meets(nth, course.offset, middle);
                let spot = course.at(along, course.offset);
                if !inner.contains(spot.0) || self.lens.turned(spot.0) > 0.92 {
                    continue;
                }
                if over {
                    for (role, half) in [(Role::OverEdge, square + 1.5), (Role::Over, square)] {
                        let corners = [(-half, -half), (half, -half), (half, half), (-half, half)]
                            .map(|(on, by)| course.at(along + on, course.offset + by));
                        let mut path = Vec::new();
                        polygon(&mut path, corners.map(|corner| self.point(corner)));
                        shapes.push(Shape::fill(role, path));
                    }
                } else {
                    let centre = self.point(spot);
                    let line = (ring * 0.42).max(2.2);
                    for (role, line) in [(Role::UnderEdge, line + 2.4), (Role::Under, line)] {
                        shapes.push(Shape::circle(role, Paint::Stroke(line), centre, ring));
                    }
                }
            }
        }
    }

    /// Where to write the numbers of the first and the last pin of the leg in hand, or `None`
    /// where they can be seen at the pin itself: for the copy that starts at this half pitch,
    /// followed from a row on its way.
    pub fn far_numbers(&self, start: i32, nth: f32, frame: Frame) -> [Option<Point>; 2] {
        let Some(hand) = &self.laid.in_hand else {
            return [None, None];
        };
        let course = Course {
            gauge: &self.gauge,
            rising: hand.leg.heading() == Heading::Rising,
            start,
            offset: self.gauge.offset(hand.beside + 1),
        };
        [true, false].map(|at_start| {
            let pin = course.pin(at_start);
            if self.number_shown(pin) {
                None
            } else if let Some(point) = self.beside_tube(pin, at_start, frame) {
                Some(point)
            } else {
                self.leaves(course, nth, at_start, frame)
            }
        })
    }

    /// The last point of the leg in hand that can be seen on the way to one of its pins.
    fn leaves(&self, course: Course<'_>, nth: f32, at_start: bool, frame: Frame) -> Option<Point> {
        let inset = self.gauge.text * 1.5;
        let goal = course.straight()[usize::from(!at_start)];
        let step = if at_start { -4.0 } else { 4.0 };
        let mut along = nth * self.gauge.diagonal;
        let mut last = None;
        while (along - goal) * step < 0.0 {
            let spot = course.at(along, course.offset);
            let point = self.point(spot);
            let shown = (inset..=frame.width - inset).contains(&point.x)
                && (inset..=frame.height - inset).contains(&point.y)
                && self.lens.turned(spot.0) < 1.0;
            if !shown {
                break;
            }
            last = Some(point);
            along += step;
        }
        last
    }

    /// The place beside a round tube, at the height of a pin that is on its far side; `None`
    /// when there is no room, or the pin is out of the frame.
    fn beside_tube(&self, pin: Spot, at_start: bool, frame: Frame) -> Option<Point> {
        let text = self.gauge.text;
        let clear = self.lens.radius? + text * 1.3;
        let y = self.point(pin).y;
        let room = clear + text <= frame.width / 2.0 && (text..=frame.height - text).contains(&y);
        // A leg comes in on the side it travels from.
        let from_left = at_start != self.lens.mirrored;
        let aside = if from_left { -clear } else { clear };
        room.then(|| Point::new(frame.width / 2.0 + aside, y))
    }

    /// Whether the number of the pin at this spot is within the picture, on this copy or, where
    /// the picture repeats itself, on another.
    fn number_shown(&self, pin: Spot) -> bool {
        let rim = if pin.1 > self.gauge.top() / 2.0 {
            Rim::Top
        } else {
            Rim::Bottom
        };
        let across = self.lens.seams.is_some()
            || self.lens.across.contains(pin.0) && self.lens.turned(pin.0) <= 1.0;
        across && self.number_fits(rim)
    }
}
