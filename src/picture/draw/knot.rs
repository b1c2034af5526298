//! A knot on its tube, drawn back to front.

use kurbo::{BezPath, Rect};

use super::item::{DisplayItem, Role, polygon};
use crate::picture::scene::{KnotScene, Outlines, SheetPoint, Span};

/// The shapes of a knot, as far as they are drawn.
pub struct KnotDrawing<'a> {
    /// What is to be seen.
    pub scene: &'a KnotScene,
    /// What is drawn of it, back to front.
    pub items: Vec<DisplayItem>,
    /// The room that the numbers of pins take, as far as they are drawn.
    pub numbers: Vec<Rect>,
}

impl<'a> KnotDrawing<'a> {
    /// A drawing of a scene with nothing in it yet.
    pub const fn new(scene: &'a KnotScene) -> Self {
        Self {
            scene,
            items: Vec::new(),
            numbers: Vec::new(),
        }
    }

    /// Brings outlines from the sheet to the picture: one shape for what lies within the turn of
    /// the tube that is shown, one for what lies beyond.
    pub fn place(&mut self, outlines: &Outlines, role: Role, beyond: Role) {
        let Span { from, to } = self.scene.projection.across;
        let inner = self.scene.inner();
        let left = Span {
            from,
            to: inner.from,
        };
        let right = Span { from: inner.to, to };
        let mut outside = BezPath::new();
        // Most cords lie within, all of them.
        let mut inside = BezPath::with_capacity(outlines.steps());
        for outline in outlines.iter() {
            let reach = extent(outline);
            for span in [left, right] {
                self.add_within(outline, reach, span, &mut outside);
            }
            self.add_within(outline, reach, inner, &mut inside);
        }
        self.fill(beyond, outside);
        self.fill(role, inside);
    }

    /// Brings what of the outlines lies in a span to the picture, as one shape.
    pub fn place_within(&mut self, outlines: &Outlines, span: Span, role: Role) {
        let mut path = BezPath::new();
        for outline in outlines.iter() {
            self.add_within(outline, extent(outline), span, &mut path);
        }
        self.fill(role, path);
    }

    /// Adds what of an outline, which reaches so far, lies in a span.
    fn add_within(&self, outline: &[SheetPoint], reach: Span, span: Span, path: &mut BezPath) {
        if span.from >= span.to || reach.from >= span.to || reach.to <= span.from {
            return;
        }
        if reach.from >= span.from && reach.to <= span.to {
            self.add(outline, path);
        } else {
            self.add(&clipped(outline, span), path);
        }
    }

    fn fill(&mut self, role: Role, path: BezPath) {
        if !path.elements().is_empty() {
            self.items.push(DisplayItem::fill(role, path));
        }
    }

    fn add(&self, outline: &[SheetPoint], path: &mut BezPath) {
        polygon(path, outline.iter().map(|&at| self.scene.point(at)));
    }
}

/// How far left and how far right an outline goes.
fn extent(outline: &[SheetPoint]) -> Span {
    let none = Span {
        from: f32::MAX,
        to: f32::MIN,
    };
    outline
        .iter()
        .fold(none, |Span { from, to }, &(x, _)| Span {
            from: from.min(x),
            to: to.max(x),
        })
}

/// What of a closed outline lies in `span`: cut at one edge, then at the other (Sutherland and
/// Hodgman, "Reentrant polygon clipping", Comm. ACM 17 (1974) 32).
fn clipped(outline: &[SheetPoint], span: Span) -> Vec<SheetPoint> {
    let left = cut(outline, span.from, |x| x >= span.from);
    cut(&left, span.to, |x| x <= span.to)
}

fn cut(outline: &[SheetPoint], edge: f32, inside: impl Fn(f32) -> bool) -> Vec<SheetPoint> {
    let mut kept = Vec::with_capacity(outline.len() + 2);
    let Some(&last) = outline.last() else {
        return kept;
    };
    let mut before = last;
    for &point in outline {
        if inside(point.0) != inside(before.0) {
            let share = (edge - before.0) / (point.0 - before.0);
            kept.push((edge, before.1 + (point.1 - before.1) * share));
        }
        if inside(point.0) {
            kept.push(point);
        }
        before = point;
    }
    kept
}
