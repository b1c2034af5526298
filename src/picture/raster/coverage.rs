//! How much of every pixel a shape covers.
//!
//! Every edge leaves in each row it crosses how much the covered share changes there, from one
//! pixel to the next; adding up along the row gives the exact covered area. Cords are long and
//! thin and there may be thousands of them: this takes time by the length of their edges and
//! not by their number.

use std::ops::Range;

/// Changes of coverage in a band of rows, ready to be summed.
#[derive(Debug, Default)]
pub struct Coverage {
    width: usize,
    height: usize,
    cells: Vec<f32>,
    /// For every row the columns outside of which nothing is covered.
    clip: Vec<Range<usize>>,
    /// For every row the range of cells that hold anything.
    used: Vec<(usize, usize)>,
}

/// A coverage of less than this is left over from rounding: nothing is covered there.
const NOTHING: f32 = 1.0 / 2048.0;

/// No cell of a row is in use.
const UNUSED: (usize, usize) = (usize::MAX, 0);

impl Coverage {
    /// Makes it fit a band so many pixels wide, whose rows are clipped to these columns.
    pub fn fit(&mut self, width: usize, clip: &[Range<usize>]) {
        let height = clip.len();
        self.clip.clear();
        self.clip.extend_from_slice(clip);
        if (self.width, self.height) != (width, height) {
            self.width = width;
            self.height = height;
            self.cells = vec![0.0; (width + 2) * height];
            self.used = vec![UNUSED; height];
        }
    }

    /// Adds one edge of a closed contour, in pixels of the band.
    pub fn edge(&mut self, from: (f32, f32), to: (f32, f32)) {
        let (sign, top, bottom) = if from.1 < to.1 {
            (1.0, from, to)
        } else {
            (-1.0, to, from)
        };
        let rise = bottom.1 - top.1;
        let first = top.1.max(0.0);
        let last = bottom.1.min(length(self.height));
        if first >= last {
            return;
        }
        let slope = (bottom.0 - top.0) / rise;
        let mut y = first;
        let mut x = top.0 + (first - top.1) * slope;
        let mut row = index(first);
        while y < last && row < self.height {
            let next_y = length(row + 1).min(last);
            let next_x = x + (next_y - y) * slope;
            let change = sign * (next_y - y);
            self.spread(row, x.min(next_x), x.max(next_x), change);
            y = next_y;
            x = next_x;
            row += 1;
        }
    }

    /// Spreads a change over the pixels of a row that the edge runs through from `x` to `far`.
    ///
    /// What lies left of the columns of the clip counts for all of them, what lies right of them for
    /// none.
    fn spread(&mut self, row: usize, mut x: f32, mut far: f32, mut change: f32) {
        let clip = &self.clip[row];
        let (left, right) = (length(clip.start), length(clip.end));
        if x >= right || left >= right {
            return;
        }
        if x < left || far > right {
            let per_pixel = change / (far - x).max(f32::MIN_POSITIVE);
            if x < left {
                let passed = if far <= left {
                    change
                } else {
                    (left - x) * per_pixel
                };
                self.cells[row * (self.width + 2) + clip.start] += passed;
                let used = &mut self.used[row];
                *used = (used.0.min(clip.start), used.1.max(clip.start));
                if far <= left {
                    return;
                }
                x = left;
            }
            far = far.min(right);
            change = (far - x) * per_pixel;
        }
        let first = index(x);
        let last = index(far);
        let start = row * (self.width + 2);
        let used = &mut self.used[row];
        *used = (used.0.min(first), used.1.max(last + 1));
        let cells = &mut self.cells[start..start + self.width + 2];
        if first == last {
            // The edge stays within one pixel. That pixel takes the share that lies right of the
            // edge, and the next one takes the rest.
            let beside = f32::midpoint(x, far) - length(first);
            cells[first] += change * (1.0 - beside);
            cells[first + 1] += change * beside;
            return;
        }
        // The edge runs through several pixels. Each takes the same of its piece of the edge.
        let per_pixel = change / (far - x);
        let mut before = 0.0;
        for (column, cell) in (first..=last).zip(&mut cells[first..=last]) {
            let (near, end) = (x.max(length(column)), far.min(length(column + 1)));
            let passed = (end - near) * per_pixel;
            let beside = f32::midpoint(near, end) - length(column);
            *cell += before + passed * (1.0 - beside);
            before = passed * beside;
        }
        cells[last + 1] += before;
    }

    /// Gives the covered pixels of `row` from the left, as runs of one coverage, 0 … 1, and
    /// forgets them.
    pub fn sweep(&mut self, row: usize, mut each: impl FnMut(Range<usize>, f32)) {
        let Some(used) = self.used.get_mut(row) else {
            return;
        };
        let (first, last) = std::mem::replace(used, UNUSED);
        if first > last {
            return;
        }
        let start = row * (self.width + 2);
        let last = last.min(self.width + 1);
        let end = self.clip[row].end;
        let cells = &mut self.cells[start..=start + last];
        let mut sum = 0.0_f32;
        let mut column = first;
        while column <= last {
            sum += std::mem::take(&mut cells[column]);
            // The coverage stays the same up to the next cell that is not nought.
            let mut run = column + 1;
            while run <= last && cells[run] == 0.0 {
                run += 1;
            }
            let share = sum.abs();
            // The coverage after the last change holds to the end of the row.
            let stop = if run > last { end } else { run.min(end) };
            if share > NOTHING && column < stop {
                each(column..stop, share.min(1.0));
            }
            column = run;
        }
    }
}

/// A count of pixels as a length.
#[expect(
    clippy::cast_precision_loss,
    reason = "16 384 at most, exact in an f32"
)]
const fn length(count: usize) -> f32 {
    count as f32
}

/// The pixel that holds this coordinate, which must not be negative.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "pictures are small and the coordinate is clamped"
)]
const fn index(coordinate: f32) -> usize {
    coordinate as i32 as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The coverage of a row of six pixels.
    fn swept(coverage: &mut Coverage, row: usize) -> [f32; 6] {
        let mut line = [0.0; 6];
        coverage.sweep(row, |run, share| line[run].fill(share));
        line
    }

    fn covered(corners: &[(f32, f32)]) -> Vec<[f32; 6]> {
        let mut coverage = Coverage::default();
        coverage.fit(6, &vec![0..6; 5]);
        for (nth, &corner) in corners.iter().enumerate() {
            coverage.edge(corner, corners[(nth + 1) % corners.len()]);
        }
        (0..5).map(|row| swept(&mut coverage, row)).collect()
    }

    fn area(corners: &[(f32, f32)]) -> f32 {
        covered(corners).iter().flatten().sum()
    }

    #[test]
    #[expect(clippy::float_cmp, reason = "sums of binary fractions are exact")]
    fn a_rectangle_covers_its_area_and_its_edges_in_part() {
        let shares = covered(&[(1.25, 1.0), (3.5, 1.0), (3.5, 2.5), (1.25, 2.5)]);
        assert_eq!(shares[1], [0.0, 0.75, 1.0, 0.5, 0.0, 0.0]);
        assert_eq!(shares[2], [0.0, 0.375, 0.5, 0.25, 0.0, 0.0]);
        assert_eq!(shares[3], [0.0; 6]);
    }

    #[test]
    fn slanted_shapes_cover_the_area_of_the_shoelace_formula() {
        let triangles: [[(f32, f32); 3]; 3] = [
            [(0.3, 0.2), (5.6, 1.1), (4.9, 4.8)],
            [(0.0, 4.0), (6.0, 3.5), (2.0, 0.1)],
            [(1.1, 1.1), (1.3, 1.7), (1.8, 1.2)],
        ];
        for corners in triangles {
            let [a, b, c] = corners;
            let expected = ((b.0 - a.0) * (c.1 - a.1) - (c.0 - a.0) * (b.1 - a.1)).abs() / 2.0;
            assert!((area(&corners) - expected).abs() < 1e-3, "{corners:?}");
        }
    }

    #[test]
    fn what_lies_outside_is_cut_off() {
        let corners = [(-3.0, -2.0), (9.0, -2.0), (9.0, 9.0), (-3.0, 9.0)];
        assert!((area(&corners) - 30.0).abs() < 1e-4);
    }

    #[test]
    fn only_the_columns_of_the_clip_are_given_and_they_are_the_same() {
        let corners = [(0.5, 0.0), (5.5, 0.4), (4.0, 5.0), (1.0, 4.5)];
        let whole = covered(&corners);
        let mut coverage = Coverage::default();
        coverage.fit(6, &[2..4, 0..6, 3..3, 5..6, 1..3]);
        for (nth, &corner) in corners.iter().enumerate() {
            coverage.edge(corner, corners[(nth + 1) % corners.len()]);
        }
        for (row, clip) in [2..4, 0..6, 3..3, 5..6, 1..3].into_iter().enumerate() {
            let line = swept(&mut coverage, row);
            for (column, share) in line.into_iter().enumerate() {
                let expected = if clip.contains(&column) {
                    whole[row][column]
                } else {
                    0.0
                };
                assert!((share - expected).abs() < 1e-3, "{row} {column}");
            }
        }
    }

    #[test]
    fn it_is_empty_again_after_a_sweep() {
        let mut coverage = Coverage::default();
        coverage.fit(4, std::slice::from_ref(&(0..4)));
        coverage.edge((1.0, 0.0), (1.0, 1.0));
        coverage.edge((3.0, 1.0), (3.0, 0.0));
        let mut total = 0.0;
        coverage.sweep(0, |run, share| total += length(run.len()) * share);
        assert!((total - 2.0).abs() < 1e-6);
        coverage.sweep(0, |_, _| panic!("nothing is left"));
    }
}
