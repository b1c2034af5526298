//! The cords that are laid.

use super::item::Role;
use super::knot::KnotDrawing;
use crate::knot::Heading;

impl KnotDrawing<'_> {
    /// Draws the laid cords that can be seen.
    pub fn laid_cords(&mut self) {
        // No cord overlaps another, so their order is free: those of one colour together are
        // quicker to paint.
        let first = self.items.len();
        let scene = self.scene;
        let laid = &scene.laid;
        let beside = laid.active.as_ref().map(|active| active.leg.from);
        for heading in [Heading::Falling, Heading::Rising] {
            for visible in scene.visible_legs(heading, scene.projection.across) {
                let is_active = laid.is_active(visible.leg.from);
                for pass in 1..=visible.cords - u16::from(is_active) {
                    let turn = scene.laying.turn_of(pass, visible.leg);
                    let is_noticed = laid.finished || beside == Some(visible.leg.from);
                    let role = match laid.faired {
                        Some((faired, _)) if faired == turn => Role::Active,
                        None if is_noticed => Role::Beside(turn),
                        _ => Role::Laid(turn),
                    };
                    let stretches = scene.stretches(&visible, pass);
                    let outlines = scene.outlines(&visible, pass, scene.layout.cord, &stretches);
                    self.place(&outlines, role, Role::Beyond(turn));
                }
            }
        }
        self.items[first..].sort_by_key(|item| match item.role {
            Role::Beyond(_) => (0, 0),
            Role::Laid(turn) => (1, turn.strand),
            _ => (2, 0),
        });
    }
}
