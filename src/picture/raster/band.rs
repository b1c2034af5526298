//! Shapes onto a band of pixel rows.

use std::ops::Range;

use kurbo::{CubicBez, ParamCurve, PathEl, PathSeg, Point, Rect};

use super::contours::Contour;
use super::coverage::Coverage;
use crate::picture::draw::{Colour, DisplayItem, Outline, Paint};
use crate::picture::scene::{coordinates, point, single};

/// The memory that is used again for every band of rows that is painted.
#[derive(Debug, Default)]
pub struct Band {
    coverage: Coverage,
    rows: usize,
    top: f64,
    /// The rows that anything was added to since the last colour was laid on.
    touched: Option<(usize, usize)>,
    /// For every block of rows the columns that are damaged in any of its rows.
    blocks: Vec<Range<usize>>,
}

/// How many rows a block has.
const BLOCK: usize = 16;

/// All that the bands of one picture are painted from.
#[derive(Clone, Copy)]
pub struct PaintJob<'a> {
    /// The shapes, back to front.
    pub items: &'a [DisplayItem],
    /// The colour of each item.
    pub colours: &'a [Colour],
    /// The contours of all items, back to front.
    pub contours: &'a [Contour<'a>],
}

impl Band {
    /// Paints the items, each in its colour, on `pixels`: the rows of the picture from `top`
    /// down, `width` pixels of four bytes each. Of every row only the columns of the `damage`.
    pub fn paint(
        &mut self,
        job: PaintJob<'_>,
        pixels: &mut [u8],
        width: usize,
        top: usize,
        damage: &[Range<usize>],
    ) {
        if damage.iter().all(Range::is_empty) {
            return;
        }
        self.rows = pixels.len() / (4 * width).max(1);
        self.top = real(top).into();
        self.coverage.fit(width, damage);
        self.blocks.clear();
        self.blocks.extend(damage.chunks(BLOCK).map(hull));
        let PaintJob {
            items,
            colours,
            contours,
        } = job;
        // Most pictures begin with the ground and the tube. Where the second lies right over the
        // first, the first is not painted at all, since to fill so many pixels takes longer than to
        // paint the cords.
        let mut plates = items
            .iter()
            .zip(colours)
            .map(|(item, colour)| self.plate(item, *colour));
        let ground = plates.next().flatten();
        let right = f64::from(real(width));
        let is_ground = ground.is_some_and(|plate| plate.x0 <= 0.0 && plate.x1 >= right);
        let ink = colours.first().filter(|_| is_ground).map_or([0; 4], ink);
        let hidden = match plates.next().flatten() {
            Some(plate) if is_ground => whole_columns(plate, width),
            _ => 0..0,
        };
        for (line, columns) in pixels.chunks_exact_mut(4 * width).zip(damage) {
            let (line, _) = line.as_chunks_mut::<4>();
            let (start, end) = (columns.start, columns.end.min(width));
            for part in [start..hidden.start.min(end), hidden.end.max(start)..end] {
                if let Some(part) = line.get_mut(part) {
                    part.fill(ink);
                }
            }
        }
        let mut last = None;
        for contour in contours {
            if is_ground && contour.item == 0 || !self.is_reached_by(contour, top) {
                continue;
            }
            let (Some(item), Some(&colour)) = (items.get(contour.item), colours.get(contour.item))
            else {
                continue;
            };
            // Shapes of one colour that follow one another are laid on together.
            if let Some(last) = last.filter(|&last| last != colour) {
                self.lay_on(last, pixels, width);
            }
            last = Some(colour);
            self.trace(item, contour.path);
        }
        if let Some(last) = last {
            self.lay_on(last, pixels, width);
        }
    }

    /// The item as a rectangle, if it is an opaque one that covers every row of the band.
    fn plate(&self, item: &DisplayItem, colour: Colour) -> Option<Rect> {
        let (Outline::Path(path), Paint::Fill, 255) = (&item.outline, item.paint, colour.opacity)
        else {
            return None;
        };
        let [
            PathEl::MoveTo(one),
            PathEl::LineTo(two),
            PathEl::LineTo(three),
            PathEl::LineTo(four),
            PathEl::ClosePath,
        ] = *path.elements()
        else {
            return None;
        };
        #[expect(
            clippy::float_cmp,
            reason = "corners of one rectangle share their numbers"
        )]
        let is_upright = one.y == two.y && two.x == three.x && three.y == four.y && four.x == one.x;
        let plate = Rect::from_points(one, three);
        let band = self.top..=self.top + f64::from(real(self.rows));
        let is_over = plate.y0 <= *band.start() && plate.y1 >= *band.end();
        (is_upright && is_over).then_some(plate)
    }

    /// Whether a contour may touch any damage of a band from row `top` down.
    fn is_reached_by(&self, contour: &Contour<'_>, top: usize) -> bool {
        let (columns, rows) = contour.reach();
        let (first, last) = (rows.start.saturating_sub(top), rows.end.saturating_sub(top));
        let blocks = self.blocks.iter();
        let mut blocks = blocks.take(last.div_ceil(BLOCK)).skip(first / BLOCK);
        blocks.any(|block| block.start < columns.end && block.end > columns.start)
    }

    /// Traces a contour of an item.
    fn trace(&mut self, item: &DisplayItem, path: &[PathEl]) {
        match (&item.outline, item.paint) {
            (Outline::Path(_), Paint::Fill) => self.fill(path),
            (Outline::Path(_), Paint::Stroke(width)) => self.stroke(path, width / 2.0),
            (Outline::Circle(circle), Paint::Fill) => {
                self.circle(circle.center, circle.radius, 1.0);
            }
            (Outline::Circle(circle), Paint::Stroke(width)) => {
                // A ring is a circle with a hole, and the outline of a hole runs the other way
                // round.
                let (centre, half) = (circle.center, width / 2.0);
                self.circle(centre, circle.radius + half, 1.0);
                self.circle(centre, (circle.radius - half).max(0.0), -1.0);
            }
        }
    }

    fn fill(&mut self, path: &[PathEl]) {
        for segment in kurbo::segments(path.iter().copied()) {
            match segment {
                PathSeg::Line(line) => self.edge(line.p0, line.p1),
                PathSeg::Quad(quad) => self.curve(quad.raise()),
                PathSeg::Cubic(cubic) => self.curve(cubic),
            }
        }
    }

    /// Straight lines of a path as bars with square ends. Pictures stroke no other paths.
    fn stroke(&mut self, path: &[PathEl], half: f64) {
        for segment in kurbo::segments(path.iter().copied()) {
            let (from, to) = (segment.start(), segment.end());
            let along = to - from;
            let across = along.turn_90() / along.hypot().max(1e-6) * half;
            let corners = [from + across, to + across, to - across, from - across];
            for nth in 0..4 {
                self.edge(corners[nth], corners[(nth + 1) % 4]);
            }
        }
    }

    /// A circle as a polygon with sides too short to see, one way round or the other.
    fn circle(&mut self, centre: Point, radius: f64, way: f32) {
        let ((x, y), radius) = (coordinates(centre), single(radius));
        // A multiple of four, so that its mirror image is itself.
        let sides = 4.0 * (radius.max(1.0).sqrt() * 2.25).ceil().clamp(3.0, 40.0);
        let at = |side: f32| {
            let angle = side / sides * std::f32::consts::TAU * way;
            point(x + radius * angle.cos(), y + radius * angle.sin())
        };
        let mut side = 0.0;
        let start = at(0.0);
        let mut last = start;
        while side < sides {
            side += 1.0;
            let next = if side < sides { at(side) } else { start };
            self.edge(last, next);
            last = next;
        }
    }

    /// A cubic Bézier curve as short straight lines, in single precision like everything whose
    /// rounding shows in a pixel.
    fn curve(&mut self, CubicBez { p0, p1, p2, p3 }: CubicBez) {
        let ends = [p0, p1, p2, p3].map(coordinates);
        let reach = |nth: usize| {
            let ((x, y), (to_x, to_y)) = (ends[nth], ends[nth + 1]);
            (x - to_x).hypot(y - to_y)
        };
        let length = reach(0) + reach(1) + reach(2);
        let steps = (length.sqrt() * 2.0).ceil().clamp(2.0, 40.0);
        let mut last = p0;
        let mut step = 0.0;
        while step < steps {
            step += 1.0;
            let t = step / steps;
            let u = 1.0 - t;
            let weights = [u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t];
            let sum = |pick: fn((f32, f32)) -> f32| {
                weights[0] * pick(ends[0])
                    + weights[1] * pick(ends[1])
                    + weights[2] * pick(ends[2])
                    + weights[3] * pick(ends[3])
            };
            let next = point(sum(|end| end.0), sum(|end| end.1));
            self.edge(last, next);
            last = next;
        }
    }

    fn edge(&mut self, from: Point, to: Point) {
        let [(from_x, from_y), (to_x, to_y)] =
            [from, to].map(|end| (single(end.x), single(end.y - self.top)));
        let (high, low) = (from_y.min(to_y), from_y.max(to_y));
        if low <= 0.0 || high >= real(self.rows) {
            return;
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a cast saturates at both ends"
        )]
        let rows = (high.max(0.0) as usize, (low as usize).min(self.rows - 1));
        self.touched = Some(
            self.touched
                .map_or(rows, |(first, last)| (first.min(rows.0), last.max(rows.1))),
        );
        self.coverage.edge((from_x, from_y), (to_x, to_y));
    }

    /// Lays a colour on wherever it was said to cover.
    fn lay_on(&mut self, colour: Colour, pixels: &mut [u8], width: usize) {
        let Some((first, last)) = self.touched.take() else {
            return;
        };
        // Shares are counted in 256ths, so that a shift takes the place of a division.
        let full = f32::from(colour.opacity) * 256.0 / 255.0;
        let ink = ink(&colour);
        let lines = pixels.chunks_exact_mut(4 * width);
        for (row, line) in lines.enumerate().take(last + 1).skip(first) {
            let (line, _) = line.as_chunks_mut::<4>();
            self.coverage.sweep(row, |run, share| {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "a share of 256"
                )]
                let share = (share * full + 0.5) as i32 as u32;
                let Some(run) = line.get_mut(run) else {
                    return;
                };
                if share >= 256 {
                    run.fill(ink);
                } else {
                    for pixel in run {
                        *pixel = mixed(*pixel, ink, share);
                    }
                }
            });
        }
    }
}

/// The columns from the first to the last that is damaged of any row.
fn hull(rows: &[Range<usize>]) -> Range<usize> {
    let rows = || rows.iter().filter(|row| !row.is_empty());
    let start = rows().map(|row| row.start).min();
    let end = rows().map(|row| row.end).max();
    start.unwrap_or_default()..end.unwrap_or_default()
}

const fn ink(colour: &Colour) -> [u8; 4] {
    [colour.red, colour.green, colour.blue, 255]
}

/// The columns that lie wholly within a rectangle.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates at both ends"
)]
fn whole_columns(plate: Rect, width: usize) -> Range<usize> {
    // A column less at each edge, where the colours mix.
    let start = plate.x0.max(0.0) as usize + 1;
    let end = (plate.x1.max(0.0) as usize).min(width).saturating_sub(1);
    start.min(end)..end
}

/// `share` in 256 of `ink`, and of `ground` the rest: two channels at a time, each with eight
/// bits of room above it.
const fn mixed(ground: [u8; 4], ink: [u8; 4], share: u32) -> [u8; 4] {
    const LANES: u32 = 0x00FF_00FF;
    const HALF: u32 = 0x0080_0080;
    let (ground, ink) = (u32::from_le_bytes(ground), u32::from_le_bytes(ink));
    let rest = 256 - share;
    let even = (ground & LANES) * rest + (ink & LANES) * share + HALF;
    let odd = ((ground >> 8) & LANES) * rest + ((ink >> 8) & LANES) * share + HALF;
    (((even >> 8) & LANES) | (odd & !LANES)).to_le_bytes()
}

#[expect(
    clippy::cast_precision_loss,
    reason = "16 384 at most, exact in an f32"
)]
const fn real(count: usize) -> f32 {
    count as f32
}
