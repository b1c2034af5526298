//! Marks that point at a part of the knot.

use kurbo::{BezPath, Line, Point};

use super::item::{DisplayItem, Outline, Paint, Role};
use super::knot::KnotDrawing;
use crate::picture::scene::{Mark, MarkShape, NUMBER_RING};

/// How thick the line is from what is counted to its number.
const LEADER: f32 = 1.5;
/// Between a number that counts and a pin at the edge of the tube.
const BESIDE_PINS: f64 = 3.0;

impl KnotDrawing<'_> {
    /// Draws a mark over everything else, in the colour of what is in hand, set off by an edge.
    pub fn mark(&mut self, mark: Mark) {
        let scene = self.scene;
        let line = (0.08 * scene.layout.half_pitch).clamp(2.0, 5.0);
        // Each line twice: its edge, and itself.
        let edged = [(Role::Ground, 3.0 * line), (Role::From, line)];
        for shape in scene.mark_shapes(mark) {
            match shape {
                MarkShape::Line(from, to) => {
                    // A rim of a board goes all the way round.
                    let steps = if scene.projection.board().is_some() {
                        72_u8
                    } else {
                        1
                    };
                    let at = |nth: u8| {
                        let share = f32::from(nth) / f32::from(steps);
                        let [x, y] = [(from.0, to.0), (from.1, to.1)]
                            .map(|(one, other)| one + (other - one) * share);
                        scene.point((x, y))
                    };
                    let mut between = BezPath::new();
                    between.move_to(at(0));
                    (1..=steps).for_each(|nth| between.line_to(at(nth)));
                    self.items.extend(edged.map(|(role, width)| DisplayItem {
                        role,
                        paint: Paint::Stroke(width.into()),
                        outline: Outline::Path(between.clone()),
                    }));
                }
                MarkShape::Ring(at, radius) => {
                    let centre = scene.point(at);
                    self.items.extend(edged.map(|(role, width)| {
                        DisplayItem::circle(role, Paint::Stroke(width.into()), centre, radius)
                    }));
                }
                MarkShape::Number(at, number) => {
                    let counted = scene.point(at);
                    // Discs one above the other, a row apart, keep clear of each other. They stand beside the
                    // tube: over the cords they would hide what they count.
                    let size = scene.layout.text.min(0.52 * scene.layout.row);
                    let ring = NUMBER_RING * size;
                    let clear = f64::from(scene.layout.pin + ring) + BESIDE_PINS;
                    let edges = [scene.inner().from, scene.inner().to];
                    let edges = edges.map(|x| scene.projection.place(x, at.1).x);
                    let right = edges[0].max(edges[1]) + clear;
                    let most = f64::from(scene.viewport.width - ring) - 1.0;
                    let centre = Point::new(right.min(most), counted.y);
                    self.items.push(DisplayItem::line(
                        Role::From,
                        LEADER,
                        Line::new(counted, centre),
                    ));
                    for (role, radius) in [(Role::Ground, 2.4 * line), (Role::From, 1.6 * line)] {
                        self.items
                            .push(DisplayItem::circle(role, Paint::Fill, counted, radius));
                    }
                    self.number_of_size(Role::To, number, size, centre);
                }
            }
        }
    }
}
