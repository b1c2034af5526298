//! The rings with their holes, their pins and the numbers.

use kurbo::{Line, Point, Rect};

use super::item::{DisplayItem, Paint, Role};
use super::lettering::{self, Weight};
use crate::picture::scene::{Ring, RingTold, RingsScene, Viewport, count, point};

/// The shapes of two rings, as far as they are drawn.
pub struct RingsDrawing<'a> {
    scene: &'a RingsScene,
    items: Vec<DisplayItem>,
}

impl<'a> RingsDrawing<'a> {
    /// Draws both rings, back to front.
    pub fn items(scene: &'a RingsScene, viewport: Viewport) -> Vec<DisplayItem> {
        let ground = DisplayItem::rectangle(Role::Ground, viewport.rect().expand());
        let mut drawing = Self {
            scene,
            items: vec![ground],
        };
        drawing.opposite();
        drawing.ring(&scene.top, true);
        drawing.ring(&scene.bottom, false);
        drawing.items
    }

    /// A line from the first bottom pin straight up, to line up the rings by.
    fn opposite(&mut self) {
        let scene = self.scene;
        let (bottom, top) = (&scene.bottom, &scene.top);
        if let Some(&(first, _)) = bottom.pins.first() {
            let x = scene.across(first);
            let from = point(x, scene.row(top, top.used, true));
            let to = point(x, scene.row(bottom, bottom.used, false));
            self.items
                .push(DisplayItem::line(Role::Edge, 1.5, Line::new(from, to)));
        }
    }

    fn ring(&mut self, ring: &Ring, is_top: bool) {
        let scene = self.scene;
        let (high, low) = scene.band(is_top);
        let (left, right) = scene.edges();
        let band = Rect::from_points(point(left, high), point(right, low));
        self.items.push(DisplayItem::rectangle(Role::Tube, band));
        for y in [high, low] {
            let edge = Line::new(point(left, y), point(right, y));
            self.items.push(DisplayItem::line(Role::Edge, 1.5, edge));
        }
        for (row, holes) in ring.rows.iter().enumerate() {
            let y = scene.row(ring, row, is_top);
            let radius = scene.radius(ring, holes.len(), is_top);
            for &hole in holes {
                let line = (radius * 0.3).clamp(1.0, 2.5);
                self.items.push(DisplayItem::circle(
                    Role::PinNumber,
                    Paint::Stroke(line.into()),
                    point(scene.across(hole), y),
                    radius - line / 2.0,
                ));
            }
            if ring.rows.len() > 1 {
                let (centre, size) = (point(scene.text, y), scene.text * 0.7);
                self.number(Role::Label, row + 1, size, Weight::Regular, centre);
            }
        }
        self.pins(ring, is_top);
    }

    fn pins(&mut self, ring: &Ring, is_top: bool) {
        let scene = self.scene;
        let pin = match scene.told[usize::from(is_top)] {
            RingTold::Now => Role::To,
            RingTold::Besides => Role::Pin,
            RingTold::Later => return,
        };
        let text = scene.text;
        let (high, low) = scene.band(is_top);
        let y = scene.row(ring, ring.used, is_top);
        let holes = ring.rows.get(ring.used).map_or(0, Vec::len);
        let radius = scene.radius(ring, holes.max(ring.pins.len()), is_top) * 1.25;
        let (number_y, inwards) = if is_top {
            (high - text * 1.1, 1.0)
        } else {
            (low + text * 1.1, -1.0)
        };
        let hole_numbers = scene.hole_numbers(ring, radius, is_top);
        // As many numbers as there is room for, the first among them.
        let widest = lettering::width(&ring.pins.len().to_string(), text, Weight::Bold);
        let apart = scene.apart(ring.pins.len());
        let mut every = 1;
        while count(every) * apart < widest * 1.25 {
            every += 1;
        }
        // Two of the numbers of holes keep apart too.
        let largest = ring.pins.iter().filter_map(|(_, hole)| *hole).max();
        let wide = largest.map_or(0.0, |hole| {
            lettering::width(&hole.to_string(), 1.0, Weight::Regular)
        });
        let most = count(every) * apart / (1.3 * wide.max(0.1));
        for (row, shares) in &ring.inner {
            let y = scene.row(ring, *row, is_top);
            for &share in shares {
                let at = point(scene.across(share), y);
                self.items
                    .push(DisplayItem::circle(pin, Paint::Fill, at, radius));
            }
        }
        for (nth, &(share, hole)) in ring.pins.iter().enumerate() {
            let x = scene.across(share);
            let at = point(x, y);
            self.items
                .push(DisplayItem::circle(pin, Paint::Fill, at, radius));
            if nth % every == 0 {
                let at = point(x, number_y);
                self.number(Role::PinNumber, nth + 1, text, Weight::Bold, at);
                if let (Some(hole), Some((away, size))) = (hole, hole_numbers) {
                    let at = point(x, y + inwards * away);
                    self.number(
                        Role::Label,
                        hole.into(),
                        size.min(most),
                        Weight::Regular,
                        at,
                    );
                }
            }
        }
    }

    fn number(&mut self, role: Role, number: usize, size: f32, weight: Weight, centre: Point) {
        let text = number.to_string();
        self.items
            .push(lettering::centred(role, &text, size, weight, centre));
    }
}
