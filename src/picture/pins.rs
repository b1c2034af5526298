//! The pins, their numbers, and the two that the leg in hand runs between.

use super::cords::Drawing;
use super::gauge::{real, whole};
use super::lens::Span;
use super::lettering::{self, Weight};
use super::shape::{Paint, Point, Role, Shape};
use crate::knot::{Pin, Rim};

/// Radius of the ring round a short number, in sizes of its type.
const RING: f32 = 0.82;

impl Drawing {
    /// Adds pins and numbers.
    pub fn pins(&self, shapes: &mut Vec<Shape>) {
        let gauge = &self.gauge;
        let inner = self.inner();
        let first = whole(self.lens.across.from / gauge.half_pitch) - 1;
        let last = whole(self.lens.across.to / gauge.half_pitch) + 1;
        let ends = self
            .laid
            .in_hand
            .as_ref()
            .map(|hand| (hand.leg.from, hand.leg.to));
        for rim in [Rim::Bottom, Rim::Top] {
            let (shift, height) = match rim {
                Rim::Bottom => (0, gauge.pin_height()),
                Rim::Top => (gauge.stagger, gauge.top() - gauge.pin_height()),
            };
            let number_height = gauge.number_height(rim);
            let has_numbers = self.number_fits(rim);
            let even = first + (first - shift).rem_euclid(2);
            for at in (even..=last).step_by(2) {
                let index = ((at - shift) / 2).rem_euclid(gauge.bights);
                let Ok(number) = u16::try_from(index + 1) else {
                    continue;
                };
                let pin = Pin { rim, number };
                let x = real(at) * gauge.half_pitch;
                let turned = self.lens.turned(x);
                if !self.lens.across.contains(x) || turned > 1.0 {
                    continue;
                }
                let within = inner.contains(x);
                let role = if within { Role::Pin } else { Role::ToCome };
                let centre = self.lens.place(x, height);
                shapes.push(Shape::circle(role, Paint::Fill, centre, gauge.pin));
                let named = ends.is_some_and(|(from, to)| pin == from || pin == to);
                if !has_numbers {
                    continue;
                }
                if turned > 0.8 && !named {
                    // The numbers would run into each other where the tube bends away.
                    continue;
                }
                let role = match ends {
                    Some((from, _)) if pin == from && within => Role::From,
                    Some((_, to)) if pin == to && within => Role::To,
                    _ if within => Role::PinNumber,
                    _ => Role::Behind,
                };
                self.number(role, number, self.lens.place(x, number_height), shapes);
            }
        }
    }

    /// Whether the numbers of a rim are in the picture with all of a ring round them: half a number
    /// can be read as another.
    pub fn number_fits(&self, rim: Rim) -> bool {
        let Span { from, to } = self.lens.upright;
        let ring = self.gauge.text * RING;
        (from + ring..=to - ring).contains(&self.gauge.number_height(rim))
    }

    /// Adds a number, in a ring or on a disc when its role says so.
    pub fn number(&self, role: Role, number: u16, centre: Point, shapes: &mut Vec<Shape>) {
        let size = self.gauge.text;
        let text = number.to_string();
        let (role, weight) = match role {
            Role::From | Role::To => {
                let half = lettering::width(&text, size, Weight::Bold) / 2.0;
                let radius = (half + size * 0.3).max(size * RING);
                if role == Role::To {
                    shapes.push(Shape::circle(role, Paint::Fill, centre, radius));
                    (Role::ToNumber, Weight::Bold)
                } else {
                    let line = (size * 0.13).max(2.0);
                    shapes.push(Shape::circle(Role::FromDisc, Paint::Fill, centre, radius));
                    let ring = radius - line / 2.0;
                    shapes.push(Shape::circle(role, Paint::Stroke(line), centre, ring));
                    (Role::FromNumber, Weight::Bold)
                }
            }
            _ => (role, Weight::Regular),
        };
        shapes.push(lettering::centred(role, &text, size, weight, centre));
    }
}
