//! The leg in hand: its cord, its head, and the signs for over and under.

use kurbo::BezPath;

use super::item::{DisplayItem, Paint, Role, polygon};
use super::knot::KnotDrawing;
use crate::picture::scene::{ActiveLeg, VisibleLeg};

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
            let [told, rest] = scene.parted(&visible, active, &stretches);
            for (role, width, stretches) in [
                (Role::ActiveEdge, cord + 2.0 * self.edge(), &told),
                (Role::ActiveRest, cord * 0.5, &rest),
                (Role::Active, cord, &told),
            ] {
                let mut outlines = scene.outlines(&visible, pass, width, stretches);
                outlines.truncate(stretches.len() + usize::from(role == Role::Active));
                if role == Role::ActiveEdge {
                    self.place_within(&outlines, scene.inner(), role);
                } else {
                    self.place(&outlines, role, Role::ActiveRest);
                }
            }
            self.head(&visible, active);
        }
    }

    /// Width of the edge that sets the cord in hand off.
    fn edge(&self) -> f32 {
        let layout = &self.scene.layout;
        (layout.cord * 0.08).clamp(1.0, 4.0).min(layout.gap)
    }

    /// Draws the head of the cord in hand, at the end of what is being told.
    fn head(&mut self, visible: &VisibleLeg, active: &ActiveLeg) {
        let scene = self.scene;
        let size = scene.layout.cord.max(6.0);
        let edge = self.edge();
        let length = scene.layout.head_length();
        for (role, half, length, back) in [
            (
                Role::ActiveEdge,
                size * 0.85 + 1.8 * edge,
                length + 2.6 * edge,
                edge,
            ),
            (Role::Active, size * 0.85, length, 0.0),
        ] {
            let corners = scene.head(visible, active, half, length, back);
            self.place_within(&corners[..].into(), scene.inner(), role);
        }
    }

    /// Draws the signs for over and under at the crossings that are being told.
    pub fn signs(&mut self) {
        let scene = self.scene;
        let Some(active) = &scene.laid.active else {
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
                        let corners = [(-half, -half), (half, -half), (half, half), (-half, half)]
                            .map(|(on, by)| path.at(along + on, path.offset + by));
                        let mut outline = BezPath::new();
                        polygon(&mut outline, corners.map(|corner| scene.point(corner)));
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
