//! The contours of a picture, and which of them are others than in the picture before.
//!
//! From one leg to the next a picture keeps nearly all of its cords; only where the new leg
//! runs, and where others now go under it, are there other pieces.

use std::hash::{DefaultHasher, Hash, Hasher};
use std::ops::Range;

use crate::picture::draw::{Colour, DisplayItem, Outline, Paint, Segment};
use crate::picture::scene::Point;

/// A contour that was painted: a key for all that it looks like, and what it may touch. Two of the
/// same key look the same.
#[derive(Clone, Copy, Debug)]
pub struct Fingerprint {
    key: u64,
    /// Left, top, right and bottom, in pixels.
    bounds: [f32; 4],
}

/// One closed line of an item, or one bar of a stroked one.
#[derive(Clone, Copy, Debug)]
pub struct Contour {
    /// Which item of the list it is of.
    pub item: usize,
    /// Its segments, from the first to before the last; of a circle, which has none, as if it had
    /// one.
    pub segments: (usize, usize),
    fingerprint: Fingerprint,
}

impl Contour {
    /// The columns and rows of pixels that it may touch: one more on every side than it covers, for
    /// the soft edges.
    pub fn reach(&self) -> (Range<usize>, Range<usize>) {
        self.fingerprint.reach()
    }
}

impl Fingerprint {
    fn reach(&self) -> (Range<usize>, Range<usize>) {
        let [left, top, right, bottom] = self.bounds.map(pixel);
        let columns = left.saturating_sub(1)..right.saturating_add(2);
        (columns, top.saturating_sub(1)..bottom.saturating_add(2))
    }
}

/// The contours of all shapes that are painted, back to front.
pub fn contours(items: &[DisplayItem], colours: &[Colour]) -> Vec<Contour> {
    let mut contours = Vec::new();
    for (nth, (item, colour)) in items.iter().zip(colours).enumerate() {
        if colour.opacity == 0 {
            continue;
        }
        let mut hasher = DefaultHasher::new();
        (item.role, colour).hash(&mut hasher);
        let reach = match item.paint {
            Paint::Fill => 0.0,
            Paint::Stroke(width) => width,
        };
        reach.to_bits().hash(&mut hasher);
        let look = hasher.finish();
        match &item.outline {
            Outline::Circle { centre, radius } => {
                let mut fingerprint = FingerprintBuilder::new(look);
                let reach = reach + radius;
                fingerprint.add(Point::new(centre.x - reach, centre.y - reach));
                fingerprint.add(Point::new(centre.x + reach, centre.y + reach));
                contours.push(Contour {
                    item: nth,
                    segments: (0, 1),
                    fingerprint: fingerprint.finish(0.0),
                });
            }
            Outline::Path(path) => {
                let mut start = 0;
                while start < path.len() {
                    let rest = path[start + 1..].iter();
                    let is_next = |segment: &Segment| matches!(segment, Segment::Move(_));
                    let end = start + 1 + rest.take_while(|segment| !is_next(segment)).count();
                    contours.push(Contour {
                        item: nth,
                        segments: (start, end),
                        fingerprint: fingerprint(&path[start..end], look, reach),
                    });
                    start = end;
                }
            }
        }
    }
    contours
}

/// The fingerprints of contours, sorted by key.
///
/// The order of painting is not part of them: it follows from the roles, and those are part of
/// the key.
pub fn fingerprints(contours: &[Contour]) -> Vec<Fingerprint> {
    let mut fingerprints: Vec<_> = contours.iter().map(|contour| contour.fingerprint).collect();
    fingerprints.sort_unstable_by_key(|fingerprint| fingerprint.key);
    fingerprints
}

fn fingerprint(contour: &[Segment], look: u64, reach: f32) -> Fingerprint {
    let mut fingerprint = FingerprintBuilder::new(look);
    for segment in contour {
        match *segment {
            Segment::Move(to) | Segment::Line(to) => fingerprint.add(to),
            Segment::Cubic(one, two, to) => {
                fingerprint.mix(1);
                fingerprint.add(one);
                fingerprint.add(two);
                fingerprint.add(to);
            }
            Segment::Close => {}
        }
    }
    fingerprint.finish(reach)
}

struct FingerprintBuilder(Fingerprint);

impl FingerprintBuilder {
    const fn new(look: u64) -> Self {
        Self(Fingerprint {
            key: look,
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

    fn finish(self, reach: f32) -> Fingerprint {
        let [left, top, right, bottom] = self.0.bounds;
        Fingerprint {
            bounds: [left - reach, top - reach, right + reach, bottom + reach],
            ..self.0
        }
    }
}

/// Tells the columns and rows of every contour that only one of two pictures has.
pub fn differences(
    old: &[Fingerprint],
    new: &[Fingerprint],
    mut tell: impl FnMut(Range<usize>, Range<usize>),
) {
    let (mut before, mut after) = (old.iter().peekable(), new.iter().peekable());
    loop {
        let fingerprint = match (before.peek(), after.peek()) {
            (Some(one), Some(other)) if one.key == other.key => {
                before.next();
                after.next();
                continue;
            }
            (Some(one), Some(other)) if one.key < other.key => before.next(),
            (Some(_), None) => before.next(),
            _ => after.next(),
        };
        let Some(fingerprint) = fingerprint else {
            break;
        };
        let (columns, rows) = fingerprint.reach();
        tell(columns, rows);
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates, and nought is wanted for what lies left of or above the picture"
)]
const fn pixel(coordinate: f32) -> usize {
    coordinate as usize
}
