//! The contours of a picture, and which of them are others than in the picture before.
//!
//! From one leg to the next a picture keeps nearly all of its cords; only where the new leg
//! runs, and where others now go under it, are there other pieces.

use std::hash::{DefaultHasher, Hash, Hasher};
use std::ops::Range;

use kurbo::{PathEl, Point, Rect, Shape};

use crate::picture::draw::{Colour, DisplayItem, Outline, Paint};

/// A contour that was painted: a key for all that it looks like, and what it may touch. Two of the
/// same key look the same.
#[derive(Clone, Copy, Debug)]
pub struct Fingerprint {
    key: u64,
    bounds: Rect,
}

/// One closed line of an item, or one bar of a stroked one.
#[derive(Clone, Copy, Debug)]
pub struct Contour<'a> {
    /// Which item of the list it is of.
    pub item: usize,
    /// Its part of the path of the item; nothing of a circle.
    pub path: &'a [PathEl],
    fingerprint: Fingerprint,
}

impl Contour<'_> {
    /// The columns and rows of pixels that it may touch: one more on every side than it covers, for
    /// the soft edges.
    pub fn reach(&self) -> (Range<usize>, Range<usize>) {
        self.fingerprint.reach()
    }
}

/// The contours of all shapes that are painted, back to front.
pub fn contours<'a>(items: &'a [DisplayItem], colours: &[Colour]) -> Vec<Contour<'a>> {
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
        let blank = Fingerprint {
            key: hasher.finish(),
            bounds: Rect::new(f64::MAX, f64::MAX, f64::MIN, f64::MIN),
        };
        match &item.outline {
            Outline::Circle(circle) => contours.push(Contour {
                item: nth,
                path: &[],
                fingerprint: blank.of_circle(circle.bounding_box(), reach),
            }),
            Outline::Path(path) => contours.extend(path.subpaths().map(|path| Contour {
                item: nth,
                path,
                fingerprint: blank.of_path(path, reach),
            })),
        }
    }
    contours
}

/// The fingerprints of contours, sorted by key.
///
/// The order of painting is not part of them: it follows from the roles, and those are part of
/// the key.
pub fn fingerprints(contours: &[Contour<'_>]) -> Vec<Fingerprint> {
    let mut fingerprints: Vec<_> = contours.iter().map(|contour| contour.fingerprint).collect();
    fingerprints.sort_unstable_by_key(|fingerprint| fingerprint.key);
    fingerprints
}

impl Fingerprint {
    fn reach(&self) -> (Range<usize>, Range<usize>) {
        let Rect { x0, y0, x1, y1 } = self.bounds;
        let [left, top, right, bottom] = [x0, y0, x1, y1].map(pixel);
        let columns = left.saturating_sub(1)..right.saturating_add(2);
        (columns, top.saturating_sub(1)..bottom.saturating_add(2))
    }

    fn of_circle(mut self, bounds: Rect, reach: f64) -> Self {
        let bounds = bounds.inflate(reach, reach);
        self.add(bounds.origin());
        self.add(Point::new(bounds.x1, bounds.y1));
        self
    }

    fn of_path(mut self, path: &[PathEl], reach: f64) -> Self {
        for element in path {
            match *element {
                PathEl::MoveTo(to) | PathEl::LineTo(to) => self.add(to),
                PathEl::QuadTo(one, to) => {
                    self.mix(1);
                    self.add(one);
                    self.add(to);
                }
                PathEl::CurveTo(one, two, to) => {
                    self.mix(2);
                    self.add(one);
                    self.add(two);
                    self.add(to);
                }
                PathEl::ClosePath => {}
            }
        }
        self.bounds = self.bounds.inflate(reach, reach);
        self
    }

    /// One step of a multiplicative hash; the multiplier is 2⁶⁴ over the golden ratio.
    const fn mix(&mut self, value: u64) {
        self.key = (self.key ^ value)
            .wrapping_mul(0x9E37_79B9_7F4A_7C15)
            .rotate_left(23);
    }

    fn add(&mut self, point: Point) {
        self.mix(point.x.to_bits());
        self.mix(point.y.to_bits());
        self.bounds = self.bounds.union_pt(point);
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
const fn pixel(coordinate: f64) -> usize {
    coordinate as usize
}
