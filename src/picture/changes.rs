//! What has changed from one picture to the next, so that only that is painted again.
//!
//! From one leg to the next a picture keeps nearly all of its cords; only where the new leg
//! runs, and where others now go under it, are there other pieces.

use std::hash::{DefaultHasher, Hash, Hasher};
use std::ops::Range;

use super::palette::Colour;
use super::shape::{Outline, Paint, Point, Segment, Shape};

/// A contour that was painted: a key for all that it looks like, and what it may touch.
#[derive(Clone, Copy, Debug)]
pub(super) struct Trace {
    key: u64,
    /// Left, top, right and bottom, in pixels.
    bounds: [f32; 4],
}

/// The traces of all contours that are painted, sorted by key.
///
/// The order of painting is not part of them: it follows from the roles, and those are part of
/// the key.
pub(super) fn traces(shapes: &[Shape], colours: &[Colour]) -> Vec<Trace> {
    let mut traces = Vec::new();
    for (shape, colour) in shapes.iter().zip(colours) {
        if colour.opacity == 0 {
            continue;
        }
        let mut hasher = DefaultHasher::new();
        (shape.role, colour).hash(&mut hasher);
        let reach = match shape.paint {
            Paint::Fill => 0.0,
            Paint::Stroke(width) => width,
        };
        reach.to_bits().hash(&mut hasher);
        let looks = hasher.finish();
        match &shape.outline {
            Outline::Circle { centre, radius } => {
                let mut trace = Growing::new(looks);
                let reach = reach + radius;
                trace.add(Point::new(centre.x - reach, centre.y - reach));
                trace.add(Point::new(centre.x + reach, centre.y + reach));
                traces.push(trace.finish(0.0));
            }
            Outline::Path(path) => contours(path, looks, reach, &mut traces),
        }
    }
    traces.sort_unstable_by_key(|trace| trace.key);
    traces
}

fn contours(path: &[Segment], looks: u64, reach: f32, traces: &mut Vec<Trace>) {
    let mut growing: Option<Growing> = None;
    for segment in path {
        if let Segment::Move(_) = segment {
            traces.extend(growing.take().map(|done| done.finish(reach)));
        }
        let trace = growing.get_or_insert_with(|| Growing::new(looks));
        match *segment {
            Segment::Move(to) | Segment::Line(to) => trace.add(to),
            Segment::Cubic(one, two, to) => {
                trace.mix(1);
                trace.add(one);
                trace.add(two);
                trace.add(to);
            }
            Segment::Close => {}
        }
    }
    traces.extend(growing.map(|done| done.finish(reach)));
}

struct Growing(Trace);

impl Growing {
    const fn new(looks: u64) -> Self {
        Self(Trace {
            key: looks,
            bounds: [f32::MAX, f32::MAX, f32::MIN, f32::MIN],
        })
    }

    /// One step of a multiplicative hash; the multiplier is 2⁶⁴ over the golden ratio.
    const fn mix(&mut self, value: u64) {
        self.0.key = (self.0.key ^ value)
            .wrapping_mul(0x9E37_79B9_7F4A_7C15)
            .rotate_left(23);
    }

    fn add(&mut self, point: Point) {
        self.mix(u64::from(point.x.to_bits()) << 32 | u64::from(point.y.to_bits()));
        let [left, top, right, bottom] = &mut self.0.bounds;
        *left = left.min(point.x);
        *top = top.min(point.y);
        *right = right.max(point.x);
        *bottom = bottom.max(point.y);
    }

    fn finish(self, reach: f32) -> Trace {
        let [left, top, right, bottom] = self.0.bounds;
        Trace {
            bounds: [left - reach, top - reach, right + reach, bottom + reach],
            ..self.0
        }
    }
}

/// For every row the columns between which something differs.
pub(super) fn changes(
    old: &[Trace],
    new: &[Trace],
    width: usize,
    height: usize,
) -> Vec<Range<usize>> {
    let mut rows = vec![width..0; height];
    let (mut before, mut after) = (old.iter().peekable(), new.iter().peekable());
    loop {
        let trace = match (before.peek(), after.peek()) {
            (Some(one), Some(other)) if one.key == other.key => {
                before.next();
                after.next();
                continue;
            }
            (Some(one), Some(other)) if one.key < other.key => before.next(),
            (Some(_), None) => before.next(),
            _ => after.next(),
        };
        let Some(Trace { bounds, .. }) = trace else {
            break;
        };
        let [left, top, right, bottom] = bounds.map(pixel);
        // A pixel more on every side, for the soft edges.
        let columns = left.saturating_sub(1)..right.saturating_add(2).min(width);
        let first = top.saturating_sub(1).min(height);
        let last = bottom.saturating_add(2).min(height).max(first);
        for row in &mut rows[first..last] {
            *row = row.start.min(columns.start)..row.end.max(columns.end);
        }
    }
    rows
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates, and nought is wanted for what lies left of or above the frame"
)]
const fn pixel(coordinate: f32) -> usize {
    coordinate as usize
}
