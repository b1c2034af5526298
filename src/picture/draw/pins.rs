//! The pins, their numbers, and the two that the leg in hand runs between.

use kurbo::{BezPath, Point, Vec2};

use super::captions::Name;
use super::item::{DisplayItem, Paint, Role, polygon};
use super::knot::KnotDrawing;
use super::lettering::{self, Weight};
use crate::knot::{Pin, Rim};
use crate::picture::scene::{ActiveLeg, NUMBER_RING, SheetPoint, ShownPins};

impl KnotDrawing<'_> {
    /// Draws pins and numbers.
    pub fn pins(&mut self) {
        let scene = self.scene;
        // Before a cord is laid its pin is where it is to go.
        let [from, to] = match scene.laid.active.as_ref().map(ActiveLeg::ends) {
            Some(ends) => ends.map(Some),
            None => [None, scene.laid.stands_at],
        };
        let mut names = Vec::new();
        for rim in [Rim::Bottom, Rim::Top] {
            let number_height = scene.layout.number_height(rim);
            let has_numbers = scene.laid.pins != ShownPins::None
                && scene.layout.largest_text > 0.0
                && scene.number_fits(rim);
            for visible in scene.visible_pins(rim) {
                let (pin, within) = (visible.pin, visible.within);
                let is_one_of_several = pin.row.is_one_of_several();
                // Where there are several rows their pins share a number, so the pin itself has to be
                // marked.
                let role = match Some(pin) {
                    here if is_one_of_several && within && here == from => Role::From,
                    here if is_one_of_several && within && here == to => Role::To,
                    _ if within => Role::Pin,
                    _ => Role::ToCome,
                };
                let centre = scene.point(visible.at);
                if scene.laid.pins == ShownPins::All {
                    let radius = scene.layout.pin;
                    self.items
                        .push(DisplayItem::circle(role, Paint::Fill, centre, radius));
                }
                if scene.laid.pins == ShownPins::Marks {
                    self.stroke(role, visible.at, centre);
                }
                if pin.row.number > 1 {
                    continue;
                }
                let is_here =
                    |other: Option<Pin>| other.is_some_and(|other| other.in_row(pin.row) == pin);
                let named = is_here(from) || is_here(to);
                // Where the tube bends away the numbers would run into each other.
                if !has_numbers || visible.turned > 0.8 && !named {
                    continue;
                }
                let role = if !within {
                    Role::NumberBeyond
                } else if is_here(from) {
                    Role::From
                } else if is_here(to) {
                    Role::To
                } else {
                    Role::PinNumber
                };
                let at = (visible.at.0, number_height);
                // Half a number can be read as another.
                let is_whole = scene.projection.board().is_none() || scene.is_whole_at(at);
                let at = scene.point(at);
                if self.has_names() {
                    names.push(Name { role, pin, at });
                } else if is_whole {
                    self.number(role, pin.number, at);
                }
            }
        }
        let far = self.far_ends();
        self.names(names, &far);
    }

    /// Draws the stroke of a mark: along the ground from rim to rim, thinner than a pin and longer.
    fn stroke(&mut self, role: Role, at: SheetPoint, centre: Point) {
        let scene = self.scene;
        let along = scene.projection.direction(at, 0.0, 1.0);
        if along.hypot() < 1e-3 {
            return;
        }
        let (along, thick) = (along.normalize(), f64::from(scene.layout.pin));
        let aside = Vec2::new(-along.y, along.x) * (0.35 * thick).max(0.75);
        let along = along * 2.2 * thick;
        let mut outline = BezPath::new();
        polygon(
            &mut outline,
            [
                centre + along + aside,
                centre + along - aside,
                centre - along - aside,
                centre - along + aside,
            ],
        );
        self.items.push(DisplayItem::fill(role, outline));
    }

    /// Draws the numbers of the pins of the leg in hand where those cannot be seen.
    pub fn far_numbers(&mut self) {
        for end in self.far_ends() {
            if self.has_names() {
                self.name(&end);
            } else {
                self.number(end.role, end.pin.number, end.at);
            }
        }
    }

    /// The pins of the leg in hand that cannot be seen, and where their numbers stand instead.
    fn far_ends(&self) -> Vec<Name> {
        let Some(active) = &self.scene.laid.active else {
            return Vec::new();
        };
        if self.scene.layout.largest_text <= 0.0 {
            return Vec::new();
        }
        let [first, last] = self.scene.far_numbers(active);
        let [at_first, at_last] = if active.is_backward {
            [Role::To, Role::From]
        } else {
            [Role::From, Role::To]
        };
        let ends = [
            (first, active.leg.from, at_first),
            (last, active.leg.to, at_last),
        ];
        let ends = ends.into_iter();
        ends.filter_map(|(at, pin, role)| at.map(|at| Name { role, pin, at }))
            .collect()
    }

    /// Draws a number, in a ring or on a disc when its role says so.
    pub(super) fn number(&mut self, role: Role, number: u16, centre: Point) {
        let size = match role {
            Role::From | Role::To => self.scene.layout.large_text,
            _ => self.scene.layout.text,
        };
        self.number_of_size(role, number, size, centre);
    }

    /// The same in type of this size.
    pub(super) fn number_of_size(&mut self, role: Role, number: u16, size: f32, centre: Point) {
        let text = number.to_string();
        let mut add = |role, paint, radius| {
            self.items
                .push(DisplayItem::circle(role, paint, centre, radius));
        };
        let (role, weight) = match role {
            Role::From | Role::To => {
                let half = lettering::width(&text, size, Weight::Bold) / 2.0;
                let radius = (half + size * 0.3).max(size * NUMBER_RING);
                if role == Role::To {
                    add(role, Paint::Fill, radius);
                    (Role::ToNumber, Weight::Bold)
                } else {
                    let line = (size * 0.13).max(2.0);
                    add(Role::FromDisc, Paint::Fill, radius);
                    add(role, Paint::Stroke(line.into()), radius - line / 2.0);
                    (Role::FromNumber, Weight::Bold)
                }
            }
            _ => (role, Weight::Regular),
        };
        self.items
            .push(lettering::centred(role, &text, size, weight, centre));
    }
}
