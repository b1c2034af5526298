//! Everything that is to be painted for one picture, in order.

use super::item::{DisplayItem, Outline};
use super::knot::KnotDrawing;
use super::rings::RingsDrawing;
use crate::picture::scene::{Content, KnotScene, Mark, Scene, Viewpoint, Viewport};

/// A picture as shapes, back to front, in pixels of its viewport.
#[derive(Clone, Debug)]
pub struct DisplayList {
    viewport: Viewport,
    items: Vec<DisplayItem>,
    viewpoint: Option<Viewpoint>,
}

impl DisplayList {
    /// Draws all of a scene.
    pub fn of(scene: &Scene) -> Self {
        let (items, viewpoint) = match scene.content() {
            Content::Knot(knot) => (knot_items(knot, scene.mark()), Some(knot.viewpoint())),
            Content::Rings(rings) => (RingsDrawing::items(rings, scene.viewport()), None),
        };
        Self {
            viewport: scene.viewport(),
            items,
            viewpoint,
        }
    }

    /// A picture of shapes drawn elsewhere.
    pub(in crate::picture) const fn new(viewport: Viewport, items: Vec<DisplayItem>) -> Self {
        Self {
            viewport,
            items,
            viewpoint: None,
        }
    }

    /// The size of the picture.
    pub const fn viewport(&self) -> Viewport {
        self.viewport
    }

    /// The shapes, back to front.
    pub fn items(&self) -> &[DisplayItem] {
        &self.items
    }

    /// From where the tube is looked at, in a picture of a knot.
    pub(in crate::picture) const fn viewpoint(&self) -> Option<Viewpoint> {
        self.viewpoint
    }

    /// How much there is to paint: the steps of all paths, a circle counting as four.
    pub fn segments(&self) -> usize {
        let count = |item: &DisplayItem| match &item.outline {
            Outline::Path(path) => path.elements().len(),
            Outline::Circle(_) => 4,
        };
        self.items.iter().map(count).sum()
    }
}

/// The shapes of a knot on its tube, back to front.
fn knot_items(scene: &KnotScene, mark: Option<Mark>) -> Vec<DisplayItem> {
    let mut drawing = KnotDrawing::new(scene);
    drawing.tube();
    if scene.is_off_the_tube {
        drawing.laid_cords();
    } else {
        drawing.leg_to_come();
        drawing.laid_cords();
        drawing.active_cord();
        drawing.tail();
        drawing.pins();
        drawing.circles();
        drawing.signs();
        drawing.far_numbers();
    }
    if let Some(mark) = mark {
        drawing.mark(mark);
    }
    drawing.items
}
