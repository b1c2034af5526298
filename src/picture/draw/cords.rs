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
                    let pass_leg = scene.laying.pass_leg_of(pass, visible.leg);
                    let is_noticed = laid.finished || beside == Some(visible.leg.from);
                    let role = match laid.lit {
                        Some((lit, _)) if lit == pass_leg => Role::Active,
                        None if is_noticed => Role::Beside(pass_leg),
                        _ => Role::Laid(pass_leg),
                    };
                    let stretches = scene.stretches(&visible, pass);
                    let outlines = scene.outlines(&visible, pass, scene.layout.cord, &stretches);
                    self.place(&outlines, role, Role::Beyond(pass_leg));
                }
            }
        }
        self.items[first..].sort_by_key(|item| match item.role {
            Role::Beyond(_) => (0, 0),
            Role::Laid(pass_leg) => (1, pass_leg.strand),
            _ => (2, 0),
        });
    }
}
