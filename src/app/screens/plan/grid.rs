//! Where the cards of the plan screen stand: the best of each kind side by side, each kind with its name
//! above its first card and again above the first of each row, and after them section by section under a
//! heading. No more of them are laid out than are in sight, since there may be hundreds.

use std::cell::Cell;
use std::ops::Range;

use crate::bench::{FitAnswer, FitSection};

/// The least width of a card.
const LEAST: f32 = 318.0;
/// Height of a card, which has room for a name of three rows; of one of at least this width for one of two.
const CARD: f32 = 222.0;
const WIDE: f32 = 420.0;
const WIDE_CARD: f32 = 198.0;
/// Height of the heading of a section.
pub(super) const HEADING: f32 = 30.0;
/// Between two cards.
pub(super) const GAP: f32 = 8.0;

/// How cards are laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pattern {
    /// So many stand beside one another.
    pub columns: usize,
    /// The width of a card, and its height.
    pub width: f32,
    pub height: f32,
    /// The best of each kind have its name above them.
    pub is_captioned: bool,
}

impl Pattern {
    /// As many columns as this width has room for.
    pub fn of(room: f32, is_captioned: bool) -> Self {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate"
        )]
        let columns = (((room + GAP) / (LEAST + GAP)) as usize).max(1);
        #[expect(clippy::cast_precision_loss, reason = "a few columns")]
        let width = (room + GAP) / columns as f32 - GAP;
        Self {
            columns,
            width,
            height: if width < WIDE { CARD } else { WIDE_CARD },
            is_captioned,
        }
    }

    /// The width that so many columns need at the least.
    pub fn least_width(columns: u16) -> f32 {
        f32::from(columns) * (LEAST + GAP) - GAP
    }

    /// The height of the first row of cards, with what stands above it.
    pub fn first_row(self) -> f32 {
        let above = if self.is_captioned { HEADING } else { 0.0 };
        above + self.height + GAP
    }
}

/// How the cards are laid out and what of them is in sight.
#[derive(Debug, Default)]
pub(super) struct Grid {
    /// Pixels that the cards are scrolled by.
    pub offset: f32,
    /// As it was laid out last.
    pattern: Cell<Option<Pattern>>,
    height: Cell<f32>,
}

/// A row of the grid.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum GridRow {
    /// The heading of a section.
    Section(FitSection),
    /// Cards side by side.
    Cards {
        /// Their places in the list.
        places: Range<usize>,
        /// Whether the kinds have their names above their first cards here.
        is_captioned: bool,
    },
}

impl GridRow {
    const fn height(&self, pattern: Pattern) -> f32 {
        match self {
            Self::Section(_) => HEADING,
            Self::Cards {
                is_captioned: false,
                ..
            } => pattern.height + GAP,
            Self::Cards {
                is_captioned: true, ..
            } => HEADING + pattern.height + GAP,
        }
    }
}

/// What of the rows is in sight, and the room that the others take above and below.
#[derive(Debug)]
pub(super) struct InSight {
    pub above: f32,
    pub rows: Vec<GridRow>,
    pub below: f32,
}

impl Grid {
    /// What is in sight of these answers laid out so, in so much height.
    pub fn in_sight(&self, answers: &[FitAnswer], pattern: Pattern, height: f32) -> InSight {
        self.pattern.set(Some(pattern));
        self.height.set(height);
        let (mut above, mut below) = (0.0, 0.0);
        let mut rows = Vec::new();
        let mut top = 0.0;
        for row in rows_of(answers, pattern) {
            let bottom = top + row.height(pattern);
            // A card to either side, for what is scrolled before the next layout.
            if bottom < self.offset - pattern.height {
                above = bottom;
            } else if top > self.offset + height + pattern.height {
                below += row.height(pattern);
            } else {
                rows.push(row);
            }
            top = bottom;
        }
        InSight { above, rows, below }
    }

    /// Scrolls so that a card is in sight, with the heading of its section where it is the first one;
    /// the new offset when it was not.
    pub fn reveal(&mut self, answers: &[FitAnswer], place: usize) -> Option<f32> {
        let pattern = self.pattern.get()?;
        let mut top = 0.0;
        let mut above = 0.0;
        let mut bottom = pattern.height;
        for row in rows_of(answers, pattern) {
            bottom = top + row.height(pattern);
            match &row {
                GridRow::Section(_) => above = row.height(pattern),
                GridRow::Cards { places, .. } if places.contains(&place) => break,
                GridRow::Cards { .. } => above = 0.0,
            }
            top = bottom;
        }
        let (first, last) = (top - above, bottom - self.height.get());
        let wanted = if self.offset > first {
            first
        } else if self.offset < last {
            last.min(first)
        } else {
            return None;
        };
        self.offset = wanted.max(0.0);
        Some(self.offset)
    }
}

/// Whether knots are offered as the best of their kind, under a name that is no wider than a card.
const fn is_of_the_best(section: FitSection) -> bool {
    matches!(
        section,
        FitSection::Single | FitSection::Doubled | FitSection::Tripled
    )
}

/// Whether a knot is the first of its section.
pub(super) fn begins_section(answers: &[FitAnswer], place: usize) -> bool {
    let section = |place: usize| answers.get(place).map(|answer| answer.section);
    place == 0 || section(place) != section(place - 1)
}

/// The height of the rows that have room whole, from the first on: none is begun that would be cut. Where
/// not one has, all of the room.
pub(super) fn whole_rows(answers: &[FitAnswer], pattern: Pattern, room: f32) -> f32 {
    // No heading stands alone below the last of them.
    let (mut whole, mut cards) = (0.0, 0.0);
    for row in rows_of(answers, pattern) {
        whole += row.height(pattern);
        if whole > room + GAP {
            break;
        }
        if matches!(row, GridRow::Cards { .. }) {
            cards = whole;
        }
    }
    if cards > 0.0 { cards } else { room }
}

/// All rows of these answers laid out so.
fn rows_of(answers: &[FitAnswer], pattern: Pattern) -> Vec<GridRow> {
    let stands_with = |one: &FitAnswer, other: &FitAnswer| {
        one.section == other.section || is_of_the_best(one.section) && is_of_the_best(other.section)
    };
    let mut rows = Vec::new();
    let mut first = 0;
    for block in answers.chunk_by(stands_with) {
        let section = block[0].section;
        let are_best = is_of_the_best(section);
        if !are_best {
            rows.push(GridRow::Section(section));
        }
        let end = first + block.len();
        let starts = (first..end).step_by(pattern.columns);
        rows.extend(starts.map(|start| GridRow::Cards {
            places: start..(start + pattern.columns).min(end),
            is_captioned: are_best && pattern.is_captioned,
        }));
        first = end;
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{Presets, SetupField, SetupForm};

    fn answers() -> Vec<FitAnswer> {
        let form = SetupForm::from_iter([
            (SetupField::Object, "30"),
            (SetupField::Cover, "36"),
            (SetupField::Cord, "3.5"),
        ]);
        form.question(&Presets::default()).unwrap().answers()
    }

    fn in_columns(columns: u16) -> Pattern {
        let pattern = Pattern::of(Pattern::least_width(columns), true);
        assert_eq!(pattern.columns, usize::from(columns));
        pattern
    }

    #[test]
    fn each_card_stands_once_and_in_order_in_any_number_of_columns() {
        let answers = answers();
        for columns in 1..6 {
            let cards: Vec<usize> = rows_of(&answers, in_columns(columns))
                .into_iter()
                .flat_map(|row| match row {
                    GridRow::Cards { places, .. } => places,
                    GridRow::Section(_) => 0..0,
                })
                .collect();
            assert_eq!(cards, (0..answers.len()).collect::<Vec<_>>());
        }
    }

    #[test]
    fn no_more_is_laid_out_than_is_in_sight_and_the_rest_keeps_its_room() {
        let answers = answers();
        let pattern = in_columns(2);
        let height = |rows: &[GridRow]| -> f32 { rows.iter().map(|row| row.height(pattern)).sum() };
        let whole = height(&rows_of(&answers, pattern));
        let mut grid = Grid::default();
        for offset in [0.0, 300.0, 1500.0, whole - 500.0] {
            grid.offset = offset;
            let InSight { above, rows, below } = grid.in_sight(&answers, in_columns(2), 500.0);
            assert!(rows.len() < 12, "{rows:?}");
            let laid = height(&rows);
            assert!((above + laid + below - whole).abs() < 0.5, "{offset}");
            assert!(above <= offset && above + laid >= (offset + 500.0).min(whole));
        }
    }

    #[test]
    fn no_row_is_begun_that_has_no_room_whole() {
        let answers = answers();
        let pattern = in_columns(2);
        let first = pattern.first_row();
        // One row of the best, with a heading or much of the next below it.
        for more in [0.0, HEADING, 0.4 * CARD, 0.9 * CARD] {
            assert!((whole_rows(&answers, pattern, first + more) - first).abs() < 0.5);
        }
        // Where not one has room, there is nothing else to show.
        assert!((whole_rows(&answers, pattern, 150.0) - 150.0).abs() < 0.5);
    }

    #[test]
    fn a_card_that_is_chosen_comes_into_sight() {
        let answers = answers();
        let mut grid = Grid::default();
        grid.in_sight(&answers, in_columns(2), 500.0);
        assert_eq!(grid.reveal(&answers, 0), None);
        for place in [answers.len() - 1, answers.len() / 2, 0] {
            grid.reveal(&answers, place);
            let InSight { above, rows, .. } = grid.in_sight(&answers, in_columns(2), 500.0);
            let mut top = above;
            let mut found = false;
            for row in rows {
                let is_it =
                    matches!(&row, GridRow::Cards { places, .. } if places.contains(&place));
                let bottom = top + row.height(in_columns(2)) - GAP;
                let fits = top >= grid.offset - 0.5 && bottom <= grid.offset + 500.5;
                found |= is_it && fits;
                top += row.height(in_columns(2));
            }
            assert!(found, "{place}");
        }
    }
}
