//! A knot on its tube, drawn back to front.

use kurbo::BezPath;

use super::item::{DisplayItem, Role, polygon};
use crate::picture::scene::{KnotScene, SheetPoint, Span};

/// The shapes of a knot, as far as they are drawn.
pub struct KnotDrawing<'a> {
    /// What is to be seen.
    pub scene: &'a KnotScene,
    /// What is drawn of it, back to front.
    pub items: Vec<DisplayItem>,
}

impl<'a> KnotDrawing<'a> {
    /// A drawing of a scene with nothing in it yet.
    pub const fn new(scene: &'a KnotScene) -> Self {
        Self {
            scene,
            items: Vec::new(),
        }
    }

    /// Brings outlines from the sheet to the picture: one shape for what lies within the turn of
    /// the tube that is shown, one for what lies beyond.
    pub fn place(&mut self, outlines: &[Vec<SheetPoint>], role: Role, beyond: Role) {
        let Span { from, to } = self.scene.projection.across;
        let inner = self.scene.inner();
        let left = Span {
            from,
            to: inner.from,
        };
        let right = Span { from: inner.to, to };
        self.place_within(outlines, &[left, right], beyond);
        self.place_within(outlines, &[inner], role);
    }

    /// Brings what of the outlines lies in any of the spans to the picture, as one shape.
    pub fn place_within(&mut self, outlines: &[Vec<SheetPoint>], spans: &[Span], role: Role) {
        let mut path = BezPath::new();
        for outline in outlines {
            let (left, right) = extent(outline);
            for &span in spans {
                if span.from >= span.to || left >= span.to || right <= span.from {
                    continue;
                }
                if left >= span.from && right <= span.to {
                    self.add(outline, &mut path);
                } else {
                    self.add(&clipped(outline, span), &mut path);
                }
            }
        }
        if !path.elements().is_empty() {
            self.items.push(DisplayItem::fill(role, path));
        }
    }

    fn add(&self, outline: &[SheetPoint], path: &mut BezPath) {
        polygon(path, outline.iter().map(|&at| self.scene.point(at)));
    }
}

/// How far left and how far right an outline goes.
fn extent(outline: &[SheetPoint]) -> (f32, f32) {
    outline
        .iter()
        .fold((f32::MAX, f32::MIN), |(left, right), &(x, _)| {
            (left.min(x), right.max(x))
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
