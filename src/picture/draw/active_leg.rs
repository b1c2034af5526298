//! The leg in hand: its cord, its head, and the signs for over and under.

use kurbo::{BezPath, Line, ParamCurveNearest as _, Point, Vec2};

use super::item::{DisplayItem, Paint, Role, polygon};
use super::knot::KnotDrawing;
use crate::knot::PassLeg;
use crate::picture::scene::{ActiveLeg, Limit, VisibleLeg};

/// So much of a cord lies beyond its first pin while it is about to be laid, in its own widths.
const TAIL_BEYOND: f32 = 1.5;

/// The least of its length that a head has where a tube bends away.
const SHORTEST_HEAD: f64 = 0.4;

/// The least of its half width that a head has on the side of its pin: that of its cord.
const LEAST_BARB: f64 = 0.6;

impl KnotDrawing<'_> {
    /// Draws every copy of the leg in hand that can be seen.
    pub fn active_cord(&mut self) {
        let scene = self.scene;
        let Some(active) = &scene.laid.active else {
            return;
        };
        let cord = scene.layout.cord;
        let pass = active.beside + 1;
        for visible in scene.visible_active(active) {
            let stretches = scene.stretches(&visible, pass);
            let [told, laid, to_come] = scene.parted(&visible, active, &stretches);
            // The edges of cord and head lie below both: the two are one piece.
            let edge = self.edge();
            let size = scene.layout.cord.max(6.0);
            let length = scene.layout.head_length();
            let mut outlines = scene.outlines(&visible, pass, cord + 2.0 * edge, &told);
            outlines.truncate(told.len());
            self.place_within(&outlines, scene.inner(), Role::ActiveEdge);
            let [half, long] = [size * 0.85 + 1.8 * edge, length + 2.6 * edge];
            self.head(&visible, active, Role::ActiveEdge, [half, long, edge]);
            // The part of the leg that lies already is as wide as other cord, and the part still to
            // be laid is thin.
            for (role, width, stretches) in [
                (Role::Beside(active.pass_leg), cord, &laid),
                (Role::ActiveRest, cord * 0.4, &to_come),
                (Role::Active, cord, &told),
            ] {
                let mut outlines = scene.outlines(&visible, pass, width, stretches);
                // Its hidden end is there when the cord is.
                let has_end = role == Role::Active && active.drawn == active.rows;
                outlines.truncate(stretches.len() + usize::from(has_end));
                self.place(&outlines, role, Role::ActiveRest);
            }
            // Into the cord by a pixel, so that no seam shows between the two.
            self.head(
                &visible,
                active,
                Role::Active,
                [size * 0.85, length + 1.0, 1.0],
            );
        }
    }

    /// Draws the tail of a cord that is about to be laid, with as much of the cord beyond its pin as
    /// shows where it hangs from.
    pub fn tail(&mut self) {
        let scene = self.scene;
        let Some((PassLeg { pass, .. }, leg)) = scene.laid.tail else {
            return;
        };
        let cord = scene.layout.cord;
        let edge = self.edge();
        for visible in scene.visible_legs(leg.heading(), scene.projection.across) {
            if visible.leg.from != leg.from {
                continue;
            }
            let straight = scene.cord_path(&visible, pass).straight();
            let short = Limit::Square(straight[0] + TAIL_BEYOND * cord);
            let told = [(Limit::End, short)];
            for (role, width) in [(Role::ActiveEdge, cord + 2.0 * edge), (Role::Active, cord)] {
                let mut outlines = scene.outlines(&visible, pass, width, &told);
                outlines.truncate(told.len());
                self.place_within(&outlines, scene.inner(), role);
            }
        }
    }

    /// Width of the edge that sets the cord in hand off.
    fn edge(&self) -> f32 {
        let layout = &self.scene.layout;
        (layout.cord * 0.08).clamp(1.0, 4.0).min(layout.gap)
    }

    /// Draws the head of the cord in hand, at the end of what is being told: so many pixels from its
    /// middle line to either side, so long, and set back by so much.
    fn head(
        &mut self,
        visible: &VisibleLeg,
        active: &ActiveLeg,
        role: Role,
        [half, length, back]: [f32; 3],
    ) {
        let scene = self.scene;
        let [one, tip, other] = scene.head(visible, active, half, length, back);
        let middle = (f32::midpoint(one.0, other.0), f32::midpoint(one.1, other.1));
        // Where the tube bends away the head would be squeezed to a needle, so it keeps its form. Where
        // its cord is out of sight there is none.
        if !scene.inner().contains(middle.0) || scene.projection.turned(middle.0) > 0.97 {
            return;
        }
        let way = (tip.0 - middle.0, tip.1 - middle.1);
        let way = scene.projection.direction(middle, way.0, way.1);
        let from = scene.point(middle);
        if way.hypot() < 0.2 * f64::from(length) {
            return;
        }
        let way = way.normalize();
        let aside = Vec2::new(-way.y, way.x) * f64::from(half);
        // The other way round than its cord it would be cut out of it where the two overlap.
        let aside = if scene.projection.mirrored {
            aside
        } else {
            -aside
        };
        let tip = from + way * f64::from(length) * self.within_tube(from, way * f64::from(length));
        let pin = scene.pin_of_head(visible, active);
        let pin = pin.map(|pin| (scene.point(pin), f64::from(scene.layout.pin)));
        // A barb that would lie over the pin is drawn in, as far as the edge of the cord.
        let corner = |aside: Vec2| {
            let touches = |share: f64| {
                let corner = from + aside * share;
                let edges = [Line::new(from, corner), Line::new(corner, tip)];
                pin.is_some_and(|(pin, radius)| {
                    let mut edges = edges.iter();
                    edges.any(|edge| edge.nearest(pin, 0.01).distance_sq < radius * radius)
                })
            };
            let mut share = 1.0;
            while share > LEAST_BARB && touches(share) {
                share -= 0.05;
            }
            from + aside * share
        };
        let mut outline = BezPath::new();
        polygon(&mut outline, [corner(aside), tip, corner(-aside)]);
        self.items.push(DisplayItem::fill(role, outline));
    }

    /// How much of a step from a point on a tube stays on it, where it is a straight one: a head that keeps its
    /// form would run out of it where it bends away.
    fn within_tube(&self, from: Point, step: Vec2) -> f64 {
        let projection = &self.scene.projection;
        if projection.radius.is_none() || projection.surface.is_some() || step.x.abs() < 1.0 {
            return 1.0;
        }
        let inner = self.scene.inner();
        let edges = [inner.from, inner.to].map(|x| projection.place(x, 0.0).x);
        let edge = if step.x > 0.0 {
            edges[0].max(edges[1])
        } else {
            edges[0].min(edges[1])
        };
        ((edge - from.x) / step.x).clamp(SHORTEST_HEAD, 1.0)
    }

    /// Draws the signs for over and under at the crossings that are being told, of the leg in hand or of the one
    /// that is looked at.
    pub fn signs(&mut self) {
        let scene = self.scene;
        let Some(active) = scene.laid.told() else {
            return;
        };
        let layout = &scene.layout;
        let inner = scene.inner();
        let square = (layout.cord * 0.36).clamp(4.0, 16.0);
        let ring = (layout.cord * 0.46).clamp(4.6, 20.0);
        for visible in scene.visible_active(active) {
            let path = scene.cord_path(&visible, active.beside + 1);
            for crossing in &active.crossings {
                let middle = f32::midpoint(layout.offset(1), layout.offset(crossing.cords));
                let along = path.meets(crossing.nth, path.offset, middle);
                let at = path.at(along, path.offset);
                if !inner.contains(at.0) || scene.projection.turned(at.0) > 0.92 {
                    continue;
                }
                if crossing.over {
                    for (role, half) in
                        [(Role::OverEdge, square * 1.25 + 1.5), (Role::Over, square)]
                    {
                        let corners = [(-half, -half), (half, -half), (half, half), (-half, half)];
                        let mut outline = BezPath::new();
                        if scene.projection.surface.is_some() {
                            // Square in the picture, however its ground is bent.
                            let rise = if path.rising { layout.sin } else { -layout.sin };
                            let way = scene.projection.direction(at, layout.cos, rise).normalize();
                            let corner = |(on, by): (f32, f32)| {
                                scene.point(at)
                                    + way * f64::from(on)
                                    + Vec2::new(-way.y, way.x) * f64::from(by)
                            };
                            polygon(&mut outline, corners.map(corner));
                        } else {
                            let corner = |(on, by)| path.at(along + on, path.offset + by);
                            let corners = corners.map(corner);
                            polygon(&mut outline, corners.map(|corner| scene.point(corner)));
                        }
                        self.items.push(DisplayItem::fill(role, outline));
                    }
                } else {
                    let centre = scene.point(at);
                    let line = (ring * 0.42).max(2.2);
                    for (role, line) in [(Role::UnderEdge, line * 1.3 + 2.4), (Role::Under, line)] {
                        self.items.push(DisplayItem::circle(
                            role,
                            Paint::Stroke(line.into()),
                            centre,
                            ring,
                        ));
                    }
                }
            }
        }
    }
}
