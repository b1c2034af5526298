//! The numbers of the pins of a leg that are not seen: with what says that they are not there.
//!
//! What is round the back is dashed, as hidden lines are in a drawing; what lies beyond the picture has a
//! tip that points there.

use std::f64::consts::TAU;

use kurbo::{BezPath, Point, Rect, Size, Vec2};

use super::captions::Name;
use super::item::{DisplayItem, Paint, Role, polygon};
use super::knot::KnotDrawing;
use super::lettering::{self, Weight};
use super::pins::ring_radius;
use crate::knot::{Pin, Rim};
use crate::picture::scene::{FarSign, POINTER, SMALLEST_WORD, ShownPins, VisiblePin};

/// Dashes round a number, and the share of the way that they take.
const DASHES: u8 = 10;
const DASHED: f64 = 0.58;
/// How thick the line is to where a ring goes round the back, how far it stays off the edge there, and the
/// length of its dashes and of what is left between them.
const LINE: f64 = 2.5;
const OFF_THE_EDGE: f64 = 7.0;
const DASH: [f64; 2] = [6.0, 4.0];
/// Half the width and the length of the tip of that line.
const TIP: [f64; 2] = [5.0, 9.0];
/// Between a word and what stands beside it.
const BESIDE_WORD: f64 = 3.0;
/// The smallest type of a word that leaves room for the way; a smaller one has its place for itself.
const LEAST_BESIDE_WAY: f32 = 14.0;
/// The tallest letters of a word, over and under its middle, in sizes of its type.
const TALL: f64 = 0.42;

/// A pin of the leg that is told and is not seen: its number, where that stands, and what says that it is
/// not there.
pub(super) struct FarEnd {
    pub name: Name,
    sign: FarSign,
}

/// The way from a number to where its ring goes round the back: the room that it takes, and its shapes.
struct WayBehind {
    room: Rect,
    shapes: [DisplayItem; 2],
}

impl KnotDrawing<'_> {
    /// Draws the numbers of the pins of the leg in hand where those cannot be seen.
    pub fn far_numbers(&mut self) {
        let ends = self.far_ends();
        if self.has_names() {
            for end in &ends {
                self.name(&end.name);
            }
            return;
        }
        for FarEnd { name, .. } in &ends {
            let room = self.taken(name).rect;
            self.numbers.push(room);
        }
        for end in ends {
            match end.sign {
                FarSign::Behind(ring) => {
                    self.dashed_number(&end.name);
                    let way = ring.and_then(|ring| self.way_behind(&end.name, ring));
                    let room = way.as_ref().map(|way| way.room);
                    // The word is worth more than the way.
                    let beside = room.and_then(|_| self.behind(&end.name, room, LEAST_BESIDE_WAY));
                    let is_beside = beside.is_some();
                    let word = beside.or_else(|| self.behind(&end.name, None, SMALLEST_WORD));
                    let has_way = is_beside || word.is_none();
                    let ways = way.filter(|_| has_way).map(|way| way.shapes);
                    self.items.extend(ways.into_iter().flatten());
                    self.items.extend(word);
                }
                FarSign::Beyond(way) => {
                    self.pointer(&end.name, way);
                    self.number(end.name.role, end.name.pin.number, end.name.at);
                }
            }
        }
    }

    /// The pins of the leg in hand that cannot be seen, and where their numbers stand instead.
    pub(super) fn far_ends(&self) -> Vec<FarEnd> {
        let Some(told) = self.scene.laid.told() else {
            return Vec::new();
        };
        if self.scene.layout.largest_text <= 0.0 {
            return Vec::new();
        }
        let [first, last] = self.scene.far_numbers(told);
        let [at_first, at_last] = if told.is_backward {
            [Role::To, Role::From]
        } else {
            [Role::From, Role::To]
        };
        let ends = [
            (first, told.leg.from, at_first),
            (last, told.leg.to, at_last),
        ];
        let ends = ends.into_iter();
        ends.filter(|(_, pin, _)| !self.is_seen(*pin))
            .filter_map(|(far, pin, role)| {
                let far = far?;
                let at = far.at;
                let name = Name { role, pin, at };
                let sign = far.sign;
                Some(FarEnd { name, sign })
            })
            .collect()
    }

    /// Whether a pin stands in the picture with its own number, on whatever way the cord comes there: a
    /// second number would be taken for another pin.
    fn is_seen(&self, pin: Pin) -> bool {
        let scene = self.scene;
        let has_numbers = scene.laid.pins != ShownPins::None
            && scene.number_fits(pin.rim)
            && scene.projection.board().is_none()
            && !self.has_names();
        let mut pins = scene.visible_pins(pin.rim);
        has_numbers && pins.any(|visible| visible.within && visible.pin == pin)
    }

    /// Whether a pin that is seen stands over or under the number of one of its rim that lies beyond the
    /// picture, and would be taken for it.
    pub(super) fn is_at(&self, end: &FarEnd, visible: &VisiblePin) -> bool {
        let across = self.scene.point(visible.at).x - end.name.at.x;
        let layout = &self.scene.layout;
        let ring = f64::from(layout.ring() + layout.pin);
        let row = layout.number_height(visible.pin.rim);
        let row = self.scene.number_point(visible.at, row).y;
        matches!(end.sign, FarSign::Beyond(_))
            && (row - end.name.at.y).abs() < ring
            && self.scene.projection.board().is_none()
            && end.name.pin.rim == visible.pin.rim
            && end.name.pin != visible.pin
            && across.abs() < ring
    }

    /// Draws a tip at a number, that points to where its pin lies.
    fn pointer(&mut self, name: &Name, way: Vec2) {
        if way.hypot() < 1e-3 {
            return;
        }
        let size = self.scene.layout.large_text;
        let text = name.pin.number.to_string();
        let radius = f64::from(ring_radius(&text, size));
        let way = way.normalize();
        let aside = Vec2::new(-way.y, way.x) * (0.62 * radius);
        // From within the ring, which lies over it.
        let base = name.at + way * (0.74 * radius);
        let tip = name.at + way * (radius + f64::from(POINTER * size));
        let mut outline = BezPath::new();
        polygon(&mut outline, [base + aside, tip, base - aside]);
        self.items.push(DisplayItem::fill(name.role, outline));
    }

    /// Draws a number whose ring is dashed, or whose disc has a dashed ring.
    fn dashed_number(&mut self, name: &Name) {
        let size = self.scene.layout.large_text;
        let text = name.pin.number.to_string();
        let radius = f64::from(ring_radius(&text, size));
        let line = f64::from((size * 0.11).max(2.0));
        let (disc, within, number) = if name.role == Role::To {
            (Role::To, radius - 1.9 * line, Role::ToNumber)
        } else {
            (Role::FromDisc, radius, Role::FromNumber)
        };
        let within = kurbo::Circle::new(name.at, within);
        self.items.push(DisplayItem {
            role: disc,
            paint: Paint::Fill,
            outline: super::Outline::Circle(within),
        });
        let dashes = dashed_ring(name.at, radius, line);
        self.items.push(DisplayItem::fill(name.role, dashes));
        let number = lettering::centred(number, &text, size, Weight::Bold, name.at);
        self.items.push(number);
    }

    /// The word at a number that says that its pin is behind, as large as there is room for beside the way
    /// there, and no smaller than `least`.
    fn behind(&self, name: &Name, way: Option<Rect>, least: f32) -> Option<DisplayItem> {
        let scene = self.scene;
        let word = scene.captions.behind.as_deref()?;
        let picture = scene.viewport.rect().inset(-1.0);
        let ring = self.taken(name).rect;
        let (at, radius) = (ring.center(), ring.height() / 2.0);
        // Towards the knot there are neither cords nor numbers below its rim; over it the word stands beside
        // the tube.
        let is_bottom = name.pin.rim == Rim::Bottom;
        let towards_knot = if is_bottom { -1.0 } else { 1.0 };
        let tube = self.tube_across();
        let largest = scene.layout.text.max(least);
        let sizes = (0_u8..).map(|step| largest - f32::from(step));
        let mut sizes = sizes.take_while(|size| *size >= least);
        sizes.find_map(|size| {
            let wide = f64::from(lettering::width(word, size, Weight::Bold));
            let tall = 2.0 * TALL * f64::from(size);
            let up = radius + BESIDE_WORD + tall / 2.0;
            let across = radius + BESIDE_WORD + wide / 2.0;
            let half = wide / 2.0;
            let x = at.x.min(picture.x1 - half).max(picture.x0 + half);
            let x = match way {
                Some(way) if way.center().x < at.x => x.max(way.x1 + BESIDE_WORD + half),
                Some(way) => x.min(way.x0 - BESIDE_WORD - half),
                None => x,
            };
            let places = [
                Point::new(x, at.y + towards_knot * up),
                Point::new(x, at.y - towards_knot * up),
                Point::new(at.x + across, at.y),
                Point::new(at.x - across, at.y),
            ];
            places.into_iter().enumerate().find_map(|(nth, at)| {
                let place = Rect::from_center_size(at, Size::new(wide, tall));
                let around = place.inset(BESIDE_WORD - 1.0);
                let is_beside_tube = place.x0 >= tube.x1 || place.x1 <= tube.x0;
                let is_over_cords = nth == 0 && !is_bottom && !is_beside_tube;
                let mut taken = self.numbers.iter().chain(way.as_ref());
                let is_taken = taken.any(|other| around.overlaps(*other));
                let is_free = picture.contains_rect(place) && !is_taken && !is_over_cords;
                is_free.then(|| lettering::centred(Role::Label, word, size, Weight::Bold, at))
            })
        })
    }

    /// From where to where a tube goes across the picture, where it is widest.
    fn tube_across(&self) -> Rect {
        let projection = &self.scene.projection;
        let middle = f64::from(self.scene.viewport.width) / 2.0;
        let half = projection.radius.map_or(middle, f64::from);
        Rect::new(
            middle - half,
            0.0,
            middle + half,
            self.scene.viewport.height.into(),
        )
    }

    /// Where a ring goes round the back, or as much before it on the way there as keeps the tip off a pin that is
    /// seen at the edge: it would be taken for the one that is meant.
    fn clear_of_pins(&self, name: &Name, ring: Point, up: f64) -> Point {
        let scene = self.scene;
        let radius = f64::from(scene.layout.pin);
        let mut pins = scene.visible_pins(name.pin.rim);
        let is_at_pin = pins.any(|visible| {
            let pin = scene.point(visible.at);
            visible.within && (pin - ring).hypot() < radius + TIP[0] + OFF_THE_EDGE
        });
        if is_at_pin {
            Point::new(ring.x, ring.y - up * (radius + 2.0 * TIP[0]))
        } else {
            ring
        }
    }

    /// The way from a number to where its ring goes round the back, beside the tube; none where another number
    /// is in its way.
    fn way_behind(&self, name: &Name, ring: Point) -> Option<WayBehind> {
        let middle = f64::from(self.scene.viewport.width) / 2.0;
        let out = if ring.x > middle { 1.0 } else { -1.0 };
        let x = ring.x + out * OFF_THE_EDGE;
        let number = self.taken(name).rect;
        let radius = number.height() / 2.0 + BESIDE_WORD;
        // Where the number stands over the line, it begins at its ring.
        let aside = (x - number.center().x).abs();
        let clear = (radius * radius - aside * aside).max(0.0).sqrt();
        let up = (ring.y - number.center().y).signum();
        let ring = self.clear_of_pins(name, ring, up);
        let from = number.center().y + up * clear;
        let long = (ring.y - from) * up - TIP[0];
        let room = Rect::new(x - LINE, from, x + LINE, ring.y).abs();
        let mut others = self.numbers.iter().filter(|other| **other != number);
        let is_free = others.all(|other| !other.overlaps(room))
            && self.scene.viewport.rect().contains_rect(room);
        if !is_free || long < DASH[0] {
            return None;
        }
        let mut dashes = BezPath::new();
        let half = out * LINE / 2.0;
        let mut done = 0.0;
        while done < long {
            let [one, other] = [done, (done + DASH[0]).min(long)].map(|on| from + up * on);
            let corners = [
                (x - half, one),
                (x + half, one),
                (x + half, other),
                (x - half, other),
            ];
            polygon(&mut dashes, corners.map(Point::from));
            done += DASH[0] + DASH[1];
        }
        let back = ring.x + out * (1.0 + TIP[1]);
        let corners = [
            (ring.x + out, ring.y),
            (back, ring.y - TIP[0]),
            (back, ring.y + TIP[0]),
        ];
        let mut tip = BezPath::new();
        polygon(&mut tip, corners.map(Point::from));
        let shapes = [dashes, tip].map(|path| DisplayItem::fill(name.role, path));
        Some(WayBehind { room, shapes })
    }
}

/// Dashes of a ring of this outer radius and so thick, as one shape.
fn dashed_ring(centre: Point, radius: f64, line: f64) -> BezPath {
    let mut outline = BezPath::new();
    let steps = 4_u8;
    for dash in 0..DASHES {
        let begins = (f64::from(dash) - DASHED / 2.0) / f64::from(DASHES);
        let at = |step: u8, radius: f64| {
            let share = DASHED * f64::from(step) / f64::from(steps) / f64::from(DASHES);
            centre + radius * Vec2::from_angle((begins + share) * TAU)
        };
        let there = (0..=steps).map(|step| at(step, radius));
        let back = (0..=steps).rev().map(|step| at(step, radius - line));
        polygon(&mut outline, there.chain(back));
    }
    outline
}
