//! The two rings with their holes, their pins and the numbers, rolled out flat.

use super::Frame;
use super::lettering::{self, Weight};
use super::scene::Scene;
use super::shape::{Paint, Point, Role, Shape};
use crate::bench::{Layout, RingPins, Strip};
use crate::knot::Hand;

/// Where along a ring its holes and pins are, as shares of the way round.
struct Ring {
    /// Every row: its holes.
    rows: Vec<Vec<f32>>,
    /// The row that the pins stand in.
    used: usize,
    /// Every pin: how far round it stands, and the number of its hole.
    pins: Vec<(f32, Option<u16>)>,
}

impl Scene {
    /// Both rings of a tube cut open and laid flat, the top one above: all their holes, a pin
    /// in each hole that takes one with its number, and the numbers of those holes beside
    /// them. `rows` are the holes of every row of a ring; none for a tube without rings, which
    /// shows the marks alone. Numbers run the way the cord of a tyer of this hand travels.
    pub fn rings(layout: &Layout, rows: &[u16], hand: Hand, frame: Frame) -> Self {
        let frame = frame.usable();
        let [bottom, top] = match layout {
            Layout::Rings {
                bottom,
                top,
                turn_half_hole,
            } => {
                let half = if *turn_half_hole { 0.5 } else { 0.0 };
                [ring(bottom, rows, 0.0), ring(top, rows, half)]
            }
            Layout::Strip(strip) => marks(strip),
        };
        let mut bench = Bench {
            frame,
            text: (frame.height / 14.0).clamp(12.0, 30.0),
            mirrored: hand == Hand::Left,
            shapes: Vec::new(),
        };
        let corner = Point::new(frame.width, frame.height);
        bench
            .shapes
            .push(Shape::rectangle(Role::Ground, Point::new(0.0, 0.0), corner));
        bench.opposite(&bottom, &top);
        bench.ring(&top, true);
        bench.ring(&bottom, false);
        Self::of(frame, bench.shapes)
    }
}

/// The holes of a ring, begun a quarter hole from the cut so that no hole lies on it.
fn ring(pins: &RingPins, rows: &[u16], turned: f32) -> Ring {
    let at = |holes: u16, hole: u16| {
        (f32::from(hole) - 1.0 + 0.25 + turned).rem_euclid(f32::from(holes)) / f32::from(holes)
    };
    Ring {
        rows: rows
            .iter()
            .map(|&holes| (1..=holes).map(|hole| at(holes, hole)).collect())
            .collect(),
        used: pins.row.saturating_sub(1),
        pins: pins
            .holes
            .iter()
            .map(|&hole| (at(pins.holes_in_row, hole), Some(hole)))
            .collect(),
    }
}

fn marks(strip: &Strip) -> [Ring; 2] {
    [&strip.bottom, &strip.top].map(|pins| Ring {
        rows: vec![Vec::new()],
        used: 0,
        pins: pins
            .iter()
            .map(|mark| {
                let share = (mark.get() + strip.pitch.get() / 4.0) / strip.length.get();
                #[expect(clippy::cast_possible_truncation, reason = "a share of a picture")]
                (share as f32, None)
            })
            .collect(),
    })
}

struct Bench {
    frame: Frame,
    text: f32,
    mirrored: bool,
    shapes: Vec<Shape>,
}

impl Bench {
    fn margin(&self) -> f32 {
        self.text * 2.0
    }

    fn across(&self, share: f32) -> f32 {
        let share = if self.mirrored { 1.0 - share } else { share };
        self.margin() + share * (self.frame.width - 2.0 * self.margin())
    }

    /// Top and bottom edge of a ring's band.
    fn band(&self, is_top: bool) -> (f32, f32) {
        let (height, numbers) = (self.frame.height, self.text * 2.4);
        let band = ((height - 2.0 * numbers) * 0.29).max(self.text);
        if is_top {
            (numbers, numbers + band)
        } else {
            (height - numbers - band, height - numbers)
        }
    }

    /// The height of a row; the first lies next to the rim.
    fn row(&self, ring: &Ring, row: usize, is_top: bool) -> f32 {
        let (high, low) = self.band(is_top);
        let share = (count(row) + 0.5) / count(ring.rows.len().max(1));
        if is_top {
            high + share * (low - high)
        } else {
            low - share * (low - high)
        }
    }

    /// A line from the first bottom pin straight up, to line up the rings by.
    fn opposite(&mut self, bottom: &Ring, top: &Ring) {
        if let Some(&(first, _)) = bottom.pins.first() {
            let x = self.across(first);
            let from = Point::new(x, self.row(top, top.used, true));
            let to = Point::new(x, self.row(bottom, bottom.used, false));
            self.shapes.push(Shape::line(Role::Edge, 1.5, from, to));
        }
    }

    fn ring(&mut self, ring: &Ring, is_top: bool) {
        let (high, low) = self.band(is_top);
        let (left, right) = (self.margin(), self.frame.width - self.margin());
        self.shapes.push(Shape::rectangle(
            Role::Tube,
            Point::new(left, high),
            Point::new(right, low),
        ));
        for y in [high, low] {
            let ends = [Point::new(left, y), Point::new(right, y)];
            self.shapes
                .push(Shape::line(Role::Edge, 1.5, ends[0], ends[1]));
        }
        let tall = (low - high) / count(ring.rows.len().max(1));
        for (row, holes) in ring.rows.iter().enumerate() {
            let y = self.row(ring, row, is_top);
            let radius = self.radius(holes.len(), tall);
            for &hole in holes {
                let line = (radius * 0.3).clamp(1.0, 2.5);
                let centre = Point::new(self.across(hole), y);
                self.shapes.push(Shape::circle(
                    Role::PinNumber,
                    Paint::Stroke(line),
                    centre,
                    radius - line / 2.0,
                ));
            }
            if ring.rows.len() > 1 {
                let centre = Point::new(self.text, y);
                self.word(
                    Role::Label,
                    row + 1,
                    self.text * 0.7,
                    Weight::Regular,
                    centre,
                );
            }
        }
        self.pins(ring, is_top, tall);
    }

    fn pins(&mut self, ring: &Ring, is_top: bool, tall: f32) {
        let (high, low) = self.band(is_top);
        let y = self.row(ring, ring.used, is_top);
        let holes = ring.rows.get(ring.used).map_or(0, Vec::len);
        let radius = self.radius(holes.max(ring.pins.len()), tall) * 1.25;
        let (number_y, hole_y) = if is_top {
            (high - self.text * 1.1, low + self.text * 0.9)
        } else {
            (low + self.text * 1.1, high - self.text * 0.9)
        };
        // As many numbers as there is room for, the first among them.
        let widest = lettering::width(&ring.pins.len().to_string(), self.text, Weight::Bold);
        let apart = (self.frame.width - 2.0 * self.margin()) / count(ring.pins.len().max(1));
        let mut every = 1;
        while count(every) * apart < widest * 1.25 {
            every += 1;
        }
        for (nth, &(share, hole)) in ring.pins.iter().enumerate() {
            let x = self.across(share);
            self.shapes.push(Shape::circle(
                Role::To,
                Paint::Fill,
                Point::new(x, y),
                radius,
            ));
            if nth % every == 0 {
                let at = Point::new(x, number_y);
                self.word(Role::PinNumber, nth + 1, self.text, Weight::Bold, at);
                if let Some(hole) = hole {
                    let at = Point::new(x, hole_y);
                    let size = self.text * 0.75;
                    // The line between the rings stops short of it.
                    self.shapes
                        .push(Shape::circle(Role::Ground, Paint::Fill, at, size * 0.8));
                    self.word(Role::Label, hole.into(), size, Weight::Regular, at);
                }
            }
        }
    }

    /// The radius of a hole when there are so many in a row, in a band this tall.
    fn radius(&self, holes: usize, tall: f32) -> f32 {
        let apart = (self.frame.width - 2.0 * self.margin()) / count(holes.max(1));
        (apart * 0.3).min(tall * 0.28).clamp(1.2, 9.0)
    }

    fn word(&mut self, role: Role, number: usize, size: f32, weight: Weight, centre: Point) {
        let text = number.to_string();
        self.shapes
            .push(lettering::centred(role, &text, size, weight, centre));
    }
}

#[expect(clippy::cast_precision_loss, reason = "two thousand at most")]
const fn count(things: usize) -> f32 {
    things as f32
}
