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

/// A contour of a shape.
#[derive(Clone, Copy, Debug)]
pub(super) struct Contour {
    /// Which shape it is of.
    pub shape: usize,
    /// Its segments, from the first to before the last; of a circle, which has none, as if it had
    /// one.
    pub segments: (usize, usize),
    trace: Trace,
}

impl Contour {
    /// The columns and rows of pixels that it may touch: one more on every side than it covers, for
    /// the soft edges.
    pub fn reach(&self) -> (Range<usize>, Range<usize>) {
        self.trace.reach()
    }
}

impl Trace {
    fn reach(&self) -> (Range<usize>, Range<usize>) {
        let [left, top, right, bottom] = self.bounds.map(pixel);
        let columns = left.saturating_sub(1)..right.saturating_add(2);
        (columns, top.saturating_sub(1)..bottom.saturating_add(2))
    }
}

/// The contours of all shapes that are painted, back to front.
pub(super) fn contours(shapes: &[Shape], colours: &[Colour]) -> Vec<Contour> {
    let mut contours = Vec::new();
    for (nth, (shape, colour)) in shapes.iter().zip(colours).enumerate() {
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
                contours.push(Contour {
                    shape: nth,
                    segments: (0, 1),
                    trace: trace.finish(0.0),
                });
            }
            Outline::Path(path) => {
                let mut start = 0;
                while start < path.len() {
                    let rest = path[start + 1..].iter();
                    let is_next = |segment: &Segment| matches!(segment, Segment::Move(_));
                    let end = start + 1 + rest.take_while(|segment| !is_next(segment)).count();
                    contours.push(Contour {
                        shape: nth,
                        segments: (start, end),
                        trace: trace(&path[start..end], looks, reach),
                    });
                    start = end;
                }
            }
        }
    }
    contours
}

/// The traces of contours, sorted by key.
///
/// The order of painting is not part of them: it follows from the roles, and those are part of
/// the key.
pub(super) fn traces(contours: &[Contour]) -> Vec<Trace> {
    let mut traces: Vec<_> = contours.iter().map(|contour| contour.trace).collect();
    traces.sort_unstable_by_key(|trace| trace.key);
    traces
}

fn trace(contour: &[Segment], looks: u64, reach: f32) -> Trace {
    let mut trace = Growing::new(looks);
    for segment in contour {
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
    trace.finish(reach)
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

/// Tells the columns and rows of everything that differs.
pub(super) fn changes(
    old: &[Trace],
    new: &[Trace],
    mut tell: impl FnMut(Range<usize>, Range<usize>),
) {
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
        let Some(trace) = trace else {
            break;
        };
        let (columns, rows) = trace.reach();
        tell(columns, rows);
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates, and nought is wanted for what lies left of or above the frame"
)]
const fn pixel(coordinate: f32) -> usize {
    coordinate as usize
}
