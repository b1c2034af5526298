//! The damage: which columns of which rows are to be painted anew.

use std::ops::Range;

/// Ranges of columns that a row can have: one where a leg is laid, one where the leg before it was,
/// and one for whatever else differs.
const RANGES: usize = 3;

/// Ranges nearer to one another than so many columns are one.
const NEAR: usize = 48;

/// The columns of every row that are to be painted anew, in a few ranges apart from one another.
#[derive(Clone, Debug, Default)]
pub struct Damage {
    width: usize,
    layers: [Vec<Range<usize>>; RANGES],
}

impl Damage {
    /// No damage in an image of so many columns and rows.
    pub fn none(width: usize, height: usize) -> Self {
        let layers = std::array::from_fn(|_| vec![0..0; height]);
        Self { width, layers }
    }

    /// All of an image of so many columns and rows.
    pub fn all(width: usize, height: usize) -> Self {
        let mut damage = Self::none(width, height);
        damage.layers[0].fill(0..width);
        damage
    }

    /// Adds these columns of these rows.
    pub fn add(&mut self, columns: Range<usize>, rows: Range<usize>) {
        let columns = columns.start..columns.end.min(self.width);
        if columns.is_empty() {
            return;
        }
        let height = self.layers[0].len();
        for row in rows.start..rows.end.min(height) {
            self.add_to(row, columns.clone());
        }
    }

    fn add_to(&mut self, row: usize, mut columns: Range<usize>) {
        // A range that has grown may have come near to another one.
        let mut nth = 0;
        while nth < RANGES {
            let range = self.layers[nth][row].clone();
            if range.start <= columns.start && range.end >= columns.end {
                return;
            }
            if !range.is_empty() && distance(&range, &columns) < NEAR {
                columns = range.start.min(columns.start)..range.end.max(columns.end);
                self.layers[nth][row] = 0..0;
                nth = 0;
            } else {
                nth += 1;
            }
        }
        let layers = &mut self.layers;
        if let Some(free) = layers.iter_mut().find(|layer| layer[row].is_empty()) {
            free[row] = columns;
        } else if let Some(nearest) = layers
            .iter_mut()
            .min_by_key(|layer| distance(&layer[row], &columns))
        {
            let range = std::mem::take(&mut nearest[row]);
            self.add_to(
                row,
                range.start.min(columns.start)..range.end.max(columns.end),
            );
        }
    }

    /// Adds these columns of these rows, and all that lies between them and what was damaged of a row
    /// before.
    pub fn stretch(&mut self, columns: Range<usize>, rows: Range<usize>) {
        let [first, ..] = &mut self.layers;
        let end = rows.end.min(first.len());
        for range in &mut first[rows.start.min(end)..end] {
            *range = if range.start < range.end {
                range.start.min(columns.start)..range.end.max(columns.end.min(self.width))
            } else {
                columns.start..columns.end.min(self.width)
            };
        }
    }

    /// Whether any of these columns and rows is damaged.
    pub fn has_any(&self, columns: &Range<usize>, rows: &Range<usize>) -> bool {
        let height = self.layers[0].len();
        let rows = rows.start.min(height)..rows.end.min(height);
        self.layers.iter().any(|layer| {
            let mut ranges = layer[rows.clone()].iter();
            ranges.any(|range| range.start < columns.end && range.end > columns.start)
        })
    }

    /// The damage of these rows in layers, with one range of columns for each row in a layer.
    pub fn layers(&self, rows: &Range<usize>) -> impl Iterator<Item = &[Range<usize>]> {
        let rows = rows.start..rows.end.min(self.layers[0].len());
        let layers = self.layers.iter();
        layers.filter_map(move |layer| layer.get(rows.clone()))
    }
}

/// Columns between two ranges; none where they meet.
fn distance(one: &Range<usize>, other: &Range<usize>) -> usize {
    let later = one.start.max(other.start);
    later.saturating_sub(one.end.min(other.end))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// From where to where the ranges of a row go.
    fn of_row(damage: &Damage, row: usize) -> Vec<(usize, usize)> {
        let layers = damage.layers.iter().map(|layer| layer[row].clone());
        let ranges = layers.filter(|range| !range.is_empty());
        let mut ranges: Vec<_> = ranges.map(|range| (range.start, range.end)).collect();
        ranges.sort_unstable();
        ranges
    }

    #[test]
    fn ranges_far_apart_stay_apart_and_near_ones_become_one() {
        let mut damage = Damage::none(1000, 3);
        damage.add(10..20, 0..2);
        damage.add(500..520, 1..3);
        damage.add(560..580, 1..2);
        assert_eq!(of_row(&damage, 0), [(10, 20)]);
        assert_eq!(of_row(&damage, 1), [(10, 20), (500, 580)]);
        assert_eq!(of_row(&damage, 2), [(500, 520)]);
        assert!(damage.has_any(&(515..516), &(2..3)));
        assert!(!damage.has_any(&(520..900), &(2..3)));
        assert!(!damage.has_any(&(100..450), &(0..3)));
    }

    #[test]
    fn a_range_that_is_stretched_has_all_between() {
        let mut damage = Damage::none(1000, 3);
        damage.stretch(10..20, 0..2);
        damage.stretch(500..1001, 1..9);
        assert_eq!(of_row(&damage, 0), [(10, 20)]);
        assert_eq!(of_row(&damage, 1), [(10, 1000)]);
        assert_eq!(of_row(&damage, 2), [(500, 1000)]);
    }

    #[test]
    fn with_more_ranges_than_there_are_nothing_is_lost() {
        // 100 ranges in an order that is far from sorted.
        let mut damage = Damage::none(4000, 1);
        let mut columns = vec![false; 4000];
        for nth in 0..100 {
            let start = nth * 1237 % 3990;
            damage.add(start..start + 9, 0..1);
            columns[start..start + 9].fill(true);
            let ranges = of_row(&damage, 0);
            for (column, _) in columns.iter().enumerate().filter(|(_, is_in)| **is_in) {
                assert!(
                    ranges
                        .iter()
                        .any(|&(from, to)| (from..to).contains(&column))
                );
            }
            let apart = ranges.windows(2).all(|pair| pair[0].1 < pair[1].0);
            assert!(apart, "{ranges:?}");
        }
    }
}
