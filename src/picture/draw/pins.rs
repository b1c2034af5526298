//! The pins, their numbers, and the two that the leg in hand runs between.

use kurbo::{BezPath, Point, Rect, Size, Vec2};

use super::captions::{Name, is_of_leg};
use super::item::{DisplayItem, Paint, Role, polygon};
use super::knot::KnotDrawing;
use super::lettering::{self, Weight};
use crate::knot::{Pin, Rim};
use crate::picture::scene::{ActiveLeg, NUMBER_RING, SheetPoint, ShownPins, VisiblePin};

/// From here on a tube bends away from the eye: 0 in front, 1 at its edge.
const BENT_AWAY: f32 = 0.8;
/// Between two numbers, in sizes of their type.
const BETWEEN_NUMBERS: f64 = 0.3;
/// The same on a board, and beside the number of a far pin, in pixels: on a board numbers stand askew.
const BETWEEN_ON_BOARD: f64 = 2.0;
/// So far round a number the line of the edge of a tube is left out.
const CLEAR_OF_EDGE: f64 = 2.0;

/// Between the ring of a number and the edge of the picture.
const CLEAR_OF_PICTURE: f64 = 1.5;

impl KnotDrawing<'_> {
    /// Draws pins and numbers.
    pub fn pins(&mut self) {
        let scene = self.scene;
        // Before a cord is laid its pin is where it is to go.
        let [from, to] = match scene.laid.told().map(ActiveLeg::ends) {
            Some(ends) => ends.map(Some),
            None => [None, scene.laid.stands_at],
        };
        let far_ends = self.far_ends();
        let far: Vec<Name> = far_ends.iter().map(|end| end.name).collect();
        let mut numbers = Vec::new();
        let mut pins = Vec::new();
        let rims: &[Rim] = match scene.laid.pins {
            ShownPins::Bottom => &[Rim::Bottom],
            _ => &[Rim::Bottom, Rim::Top],
        };
        for &rim in rims {
            let number_height = scene.layout.number_height(rim);
            let plain_height = scene.layout.plain_number_height(rim);
            let has_numbers = scene.laid.pins != ShownPins::None
                && scene.layout.largest_text > 0.0
                && scene.number_fits(rim);
            // What the picture repeats beyond its edges are cords, to see how they go on; a pin has one
            // place.
            for visible in scene.visible_pins(rim).filter(|visible| visible.within) {
                let pin = visible.pin;
                pins.push((visible, has_numbers));
                if pin.row.number > 1 || !has_numbers {
                    continue;
                }
                let is_here =
                    |other: Option<Pin>| other.is_some_and(|other| other.in_row(pin.row) == pin);
                let role = if is_here(from) {
                    Role::From
                } else if is_here(to) {
                    Role::To
                } else {
                    Role::PinNumber
                };
                let is_bent_away = visible.turned > BENT_AWAY && role == Role::PinNumber;
                if self.has_names() && is_bent_away {
                    continue;
                }
                let height = if is_of_leg(role) {
                    number_height
                } else {
                    plain_height
                };
                let on_sheet = (visible.at.0, height);
                // Half a number can be read as another.
                let is_whole = scene.projection.board().is_none() || scene.is_whole_at(on_sheet);
                if is_whole || self.has_names() {
                    let mut at = scene.number_point(visible.at, height);
                    if is_of_leg(role) && !self.has_names() && scene.projection.board().is_none() {
                        // Its ring is whole, though its pin stands at the edge of the picture.
                        let inset = f64::from(scene.layout.ring()) + CLEAR_OF_PICTURE;
                        let most = f64::from(scene.viewport.width) - inset;
                        at.x = at.x.min(most).max(inset);
                    }
                    numbers.push((Name { role, pin, at }, visible));
                }
            }
        }
        if !self.has_names() {
            numbers = self.with_room(numbers, &far);
        }
        for (visible, has_numbers) in pins {
            let of_it = |(name, other): &(Name, VisiblePin)| {
                name.pin.rim == visible.pin.rim && is_same(other.at.0, visible.at.0)
            };
            // Where the tube bends away a pin that has no room for its number could be taken for another.
            // And so could one over the number of a pin beyond the picture.
            let is_at_far = far_ends.iter().any(|end| self.is_at(end, &visible));
            let is_told = numbers.iter().any(of_it) || visible.turned <= BENT_AWAY && !is_at_far;
            if is_told || !has_numbers {
                self.pin(&visible, [from, to]);
            }
        }
        if self.has_names() {
            let names = numbers.into_iter().map(|(name, _)| name).collect();
            self.names(names, &far);
            return;
        }
        for (name, _) in numbers {
            self.clear_edge(&name);
            self.number(name.role, name.pin.number, name.at);
            self.numbers.push(self.taken(&name).rect);
        }
    }

    /// Draws a pin, or the mark in its place. Where there are several rows their pins share a number, so
    /// those of the leg in hand have to be marked themselves.
    fn pin(&mut self, visible: &VisiblePin, [from, to]: [Option<Pin>; 2]) {
        let scene = self.scene;
        let pin = visible.pin;
        let role = match Some(pin) {
            here if pin.row.is_one_of_several() && here == from => Role::From,
            here if pin.row.is_one_of_several() && here == to => Role::To,
            _ => Role::Pin,
        };
        let centre = scene.point(visible.at);
        match scene.laid.pins {
            ShownPins::All | ShownPins::Bottom => {
                let radius = scene.layout.pin;
                self.items
                    .push(DisplayItem::circle(role, Paint::Fill, centre, radius));
            }
            ShownPins::Marks => self.stroke(role, visible.at, centre),
            ShownPins::Numbers | ShownPins::None => {}
        }
    }

    /// The numbers that touch no other: those of the leg in hand, then from the front of the tube to its
    /// edges. `far`: what is drawn in the end, over all else.
    fn with_room(
        &self,
        mut numbers: Vec<(Name, VisiblePin)>,
        far: &[Name],
    ) -> Vec<(Name, VisiblePin)> {
        let is_named = |name: &Name| is_of_leg(name.role);
        numbers.sort_by(|(one, here), (other, there)| {
            is_named(other)
                .cmp(&is_named(one))
                .then(here.turned.total_cmp(&there.turned))
        });
        let picture = self.scene.viewport.rect();
        let is_board = self.scene.projection.board().is_some();
        let between = if is_board {
            BETWEEN_ON_BOARD
        } else {
            f64::from(self.scene.layout.text) * BETWEEN_NUMBERS
        };
        let far = far.iter().map(|name| (self.taken(name), BETWEEN_ON_BOARD));
        let mut taken: Vec<(Taken, f64)> = far.collect();
        let mut crowded = Vec::new();
        numbers.retain(|(name, _)| {
            let place = self.taken(name);
            let is_whole = picture.contains_rect(place.rect);
            let mut others = taken.iter();
            let is_free = is_whole && others.all(|(other, free)| place.clear_of(other) >= *free);
            // The numbers of the leg are there whatever else is.
            let is_kept = is_free || is_named(name);
            if is_kept {
                // A ring is told from a plain number however close it stands.
                let free = if is_named(name) {
                    BETWEEN_ON_BOARD
                } else {
                    between
                };
                taken.push((place, free));
            } else {
                crowded.push(name.pin.rim);
            }
            is_kept
        });
        if is_board {
            // All pins of a board are seen at once: with numbers at some of them alone, one would look
            // for the others.
            numbers.retain(|(name, _)| is_named(name) || !crowded.contains(&name.pin.rim));
        }
        numbers
    }

    /// Lays the ground and the tube anew where a number stands across the edge of the tube: with the line of
    /// the edge through it, it could not be read.
    fn clear_edge(&mut self, name: &Name) {
        let projection = &self.scene.projection;
        let is_straight = projection.radius.is_some() && projection.surface.is_none();
        if name.role != Role::PinNumber || !is_straight {
            return;
        }
        let inner = self.scene.inner();
        let [one, other] = [inner.from, inner.to].map(|x| projection.place(x, 0.0).x);
        let tube = [one.min(other), one.max(other)];
        let place = self.taken(name).rect.inset(CLEAR_OF_EDGE);
        for edge in tube {
            if place.x0 >= edge || edge >= place.x1 {
                continue;
            }
            let [left, right] = [Rect { x1: edge, ..place }, Rect { x0: edge, ..place }];
            let is_left = edge.total_cmp(&tube[0]).is_eq();
            let (ground, tube) = if is_left {
                (left, right)
            } else {
                (right, left)
            };
            for (role, part) in [(Role::Ground, ground), (Role::Tube, tube)] {
                self.items.push(DisplayItem::rectangle(role, part));
            }
        }
    }

    /// The room that a number takes, with its ring or disc.
    pub(super) fn taken(&self, name: &Name) -> Taken {
        let text = name.pin.number.to_string();
        let layout = &self.scene.layout;
        let is_round = is_of_leg(name.role);
        let (half_wide, half_tall) = if is_round {
            let radius = ring_radius(&text, layout.large_text);
            (radius, radius)
        } else {
            let wide = lettering::width(&text, layout.text, Weight::Regular);
            (wide / 2.0, layout.text / 2.0)
        };
        let size = Size::new(2.0 * f64::from(half_wide), 2.0 * f64::from(half_tall));
        Taken {
            rect: Rect::from_center_size(name.at, size),
            is_round,
        }
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
                let radius = ring_radius(&text, size);
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

/// The room of a number: a rectangle, or the circle in it.
pub(super) struct Taken {
    pub rect: Rect,
    is_round: bool,
}

impl Taken {
    /// How much is left free between two of them; less than nothing where they overlap.
    fn clear_of(&self, other: &Self) -> f64 {
        let shrunk = |taken: &Self| {
            if taken.is_round {
                (
                    Rect::from_center_size(taken.rect.center(), Size::ZERO),
                    taken.rect.width() / 2.0,
                )
            } else {
                (taken.rect, 0.0)
            }
        };
        let ((one, round), (another, other_round)) = (shrunk(self), shrunk(other));
        let aside = (one.x0 - another.x1).max(another.x0 - one.x1);
        let above = (one.y0 - another.y1).max(another.y0 - one.y1);
        let apart = if aside > 0.0 && above > 0.0 {
            aside.hypot(above)
        } else {
            aside.max(above)
        };
        apart - round - other_round
    }
}

/// The radius of the ring or disc of a number in type of this size.
pub(super) fn ring_radius(text: &str, size: f32) -> f32 {
    let half = lettering::width(text, size, Weight::Bold) / 2.0;
    (half + size * 0.3).max(size * NUMBER_RING)
}

/// Whether two pins stand at one place along a rim.
fn is_same(one: f32, other: f32) -> bool {
    (one - other).abs() < 0.5
}
