//! The tube itself, and the leg to come next.

use kurbo::{BezPath, Circle, Line, Point, Rect, Shape};

use super::item::{DisplayItem, Outline, Paint, Role, polygon};
use super::knot::KnotDrawing;
use crate::knot::{Heading, Rim};
use crate::picture::scene::{Limit, Outlines, Surface, VisibleLeg, point, single};

impl KnotDrawing<'_> {
    /// Draws the ground and the tube, or whatever else the knot lies on.
    pub fn tube(&mut self) {
        let (projection, edges) = (&self.scene.projection, self.scene.inner());
        let picture = self.scene.viewport.rect();
        // To the last dot, of which a picture may have only a part.
        self.items
            .push(DisplayItem::rectangle(Role::Ground, picture.expand()));
        if let Some(surface) = &projection.surface {
            let outline = self.outline(surface);
            let edge = Paint::Stroke(1.5);
            for (role, paint) in [(Role::Tube, Paint::Fill), (Role::Edge, edge)] {
                self.items.push(DisplayItem {
                    role,
                    paint,
                    outline: outline.clone(),
                });
            }
            return;
        }
        let [one, other] = [edges.from, edges.to].map(|x| projection.place(x, 0.0).x);
        let tube = Rect::new(one, picture.y0, other, picture.y1).abs();
        self.items.push(DisplayItem::rectangle(Role::Tube, tube));
        if projection.seams.is_some() || projection.radius.is_some() {
            for x in [tube.x0, tube.x1] {
                let edge = Line::new((x, tube.y0), (x, tube.y1));
                self.items.push(DisplayItem::line(Role::Edge, 1.5, edge));
            }
        }
    }

    /// The outline of a ball, of a taper from beyond one edge of the picture to beyond the other, or of a
    /// board: a square tile with round corners.
    fn outline(&self, surface: &Surface) -> Outline {
        let (projection, picture) = (&self.scene.projection, self.scene.viewport.rect());
        let middle = picture.center().x;
        if surface.is_board() {
            let centre = point(single(middle), projection.base);
            let half = f64::from(self.scene.layout.board());
            let tile = Rect::from_center_size(centre, (2.0 * half, 2.0 * half)).inset(-1.0);
            // In straight steps, so that every painter draws the same corners.
            let mut outline = BezPath::new();
            let tile = tile.to_rounded_rect(0.05 * half).to_path(0.05);
            kurbo::flatten(tile, 0.1, |step| outline.push(step));
            return Outline::Path(outline);
        }
        if surface.is_ball() {
            let centre = point(single(middle), projection.base - surface.equator());
            return Outline::Circle(Circle::new(centre, surface.unit.into()));
        }
        let [(wide, low), (narrow, high)] = [Rim::Bottom, Rim::Top].map(|rim| {
            let height = match rim {
                Rim::Bottom => 0.0,
                Rim::Top => self.scene.layout.top(),
            };
            let [radius, on] = surface.at(height);
            (f64::from(radius), f64::from(projection.base - on))
        });
        // Straight on beyond the knot, as far as the picture goes or to its point.
        let slope = (narrow - wide) / (high - low);
        let radius = |y: f64| (wide + (y - low) * slope).max(0.0);
        let ends = [picture.y1 + 4.0, picture.y0 - 4.0];
        let mut outline = BezPath::new();
        let right = ends.map(|y| Point::new(middle + radius(y), y));
        let left = [ends[1], ends[0]].map(|y| Point::new(middle - radius(y), y));
        polygon(&mut outline, right.into_iter().chain(left));
        Outline::Path(outline)
    }

    /// Draws the way of the next leg, thin, where no cord lies yet. Legs after it are not there: what
    /// is on the tube is what the eye should find in the picture.
    pub fn leg_to_come(&mut self) {
        let scene = self.scene;
        let width = (scene.layout.cord * 0.1).clamp(1.2, 3.0);
        for heading in [Heading::Falling, Heading::Rising] {
            for visible in scene.visible_legs(heading, scene.projection.across) {
                if !scene.laid.is_next(visible.leg) {
                    continue;
                }
                let outlines = self.way(&visible, 1, width);
                self.place(&outlines, Role::ToCome, Role::ToCome);
            }
        }
    }

    /// The way that the cord of a pass takes along a leg, from bight to bight.
    fn way(&self, visible: &VisibleLeg, pass: u16, width: f32) -> Outlines {
        let path = self.scene.cord_path(visible, pass);
        let bight = Limit::Bight(path.offset);
        // Where a tail hangs already the cord comes from there, and not round the pin.
        let has_tail = self
            .scene
            .laid
            .tail
            .is_some_and(|(_, leg)| leg == visible.leg);
        let start = if has_tail {
            Limit::Square(path.straight()[0])
        } else {
            bight
        };
        let mut outlines = Outlines::default();
        let step = self.scene.projection.step();
        path.outline((start, bight), width, step, &mut outlines);
        outlines
    }
}
