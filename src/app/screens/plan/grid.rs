//! Where the cards of the plan screen stand: the best of each kind side by side, each kind with its name
//! above its first card and again above the first of each row, and after them section by section under a
//! heading. No more of them are laid out than are in sight, since there may be hundreds.

use std::cell::Cell;
use std::ops::Range;

use crate::bench::{FitAnswer, FitSection};

/// The least width of a card.
const LEAST: f32 = 318.0;
/// Height of a card, which has room for a name of three rows, and of the heading of a section, with the
/// gap below each.
pub(super) const CARD: f32 = 222.0;
pub(super) const HEADING: f32 = 30.0;
/// Between two cards.
pub(super) const GAP: f32 = 8.0;

/// How the cards are laid out and what of them is in sight.
#[derive(Debug, Default)]
pub(super) struct Grid {
    /// Pixels that the cards are scrolled by.
    pub offset: f32,
    /// As it was laid out last.
    columns: Cell<usize>,
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
    const fn height(&self) -> f32 {
        match self {
            Self::Section(_) => HEADING,
            Self::Cards {
                is_captioned: false,
                ..
            } => CARD + GAP,
            Self::Cards {
                is_captioned: true, ..
            } => HEADING + CARD + GAP,
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
    /// How many cards stand beside one another in this width.
    pub fn columns(width: f32) -> usize {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate"
        )]
        let columns = ((width + GAP) / (LEAST + GAP)) as usize;
        columns.max(1)
    }

    /// What is in sight of these answers in so many columns and so much height.
    pub fn in_sight(&self, answers: &[FitAnswer], columns: usize, height: f32) -> InSight {
        self.columns.set(columns);
        self.height.set(height);
        let (mut above, mut below) = (0.0, 0.0);
        let mut rows = Vec::new();
        let mut top = 0.0;
        for row in rows_of(answers, columns) {
            let bottom = top + row.height();
            // A card to either side, for what is scrolled before the next layout.
            if bottom < self.offset - CARD {
                above = bottom;
            } else if top > self.offset + height + CARD {
                below += row.height();
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
        let mut top = 0.0;
        let mut above = 0.0;
        let mut bottom = CARD;
        for row in rows_of(answers, self.columns.get().max(1)) {
            bottom = top + row.height();
            match &row {
                GridRow::Section(_) => above = row.height(),
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

/// So much of a card that is cut off at the foot still tells what it is.
const LEAST_OF_A_CARD: f32 = 0.45;

/// The height of the rows that have room whole, from the first on, where what is left is less than tells
/// anything of a card; else all of the room.
pub(super) fn whole_rows(answers: &[FitAnswer], columns: usize, room: f32) -> f32 {
    // No heading stands alone below the last of them.
    let (mut whole, mut cards) = (0.0, 0.0);
    for row in rows_of(answers, columns) {
        whole += row.height();
        if whole > room + GAP {
            let is_cut_short = cards > 0.0 && room - cards < LEAST_OF_A_CARD * CARD;
            return if is_cut_short { cards } else { room };
        }
        if matches!(row, GridRow::Cards { .. }) {
            cards = whole;
        }
    }
    room
}

/// All rows of these answers in so many columns.
fn rows_of(answers: &[FitAnswer], columns: usize) -> Vec<GridRow> {
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
        rows.extend((first..end).step_by(columns).map(|start| GridRow::Cards {
            places: start..(start + columns).min(end),
            is_captioned: are_best,
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

    #[test]
    fn each_card_stands_once_and_in_order_in_any_number_of_columns() {
        let answers = answers();
        for columns in 1..6 {
            let cards: Vec<usize> = rows_of(&answers, columns)
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
        let whole: f32 = rows_of(&answers, 2).iter().map(GridRow::height).sum();
        let mut grid = Grid::default();
        for offset in [0.0, 300.0, 1500.0, whole - 500.0] {
            grid.offset = offset;
            let InSight { above, rows, below } = grid.in_sight(&answers, 2, 500.0);
            assert!(rows.len() < 12, "{rows:?}");
            let laid: f32 = rows.iter().map(GridRow::height).sum();
            assert!((above + laid + below - whole).abs() < 0.5, "{offset}");
            assert!(above <= offset && above + laid >= (offset + 500.0).min(whole));
        }
    }

    #[test]
    fn no_row_is_sliced_at_the_foot_where_little_of_it_would_be_seen() {
        let answers = answers();
        let captioned = HEADING + CARD + GAP;
        // One row of the best, with a heading or a little of the next below it.
        for more in [0.0, HEADING, 0.4 * CARD] {
            assert!((whole_rows(&answers, 2, captioned + more) - captioned).abs() < 0.5);
        }
        // Most of a card tells what it is; and where not one has room, there is nothing else to show.
        for room in [captioned + 0.6 * CARD, 150.0] {
            assert!((whole_rows(&answers, 2, room) - room).abs() < 0.5);
        }
    }

    #[test]
    fn a_card_that_is_chosen_comes_into_sight() {
        let answers = answers();
        let mut grid = Grid::default();
        grid.in_sight(&answers, 2, 500.0);
        assert_eq!(grid.reveal(&answers, 0), None);
        for place in [answers.len() - 1, answers.len() / 2, 0] {
            grid.reveal(&answers, place);
            let InSight { above, rows, .. } = grid.in_sight(&answers, 2, 500.0);
            let mut top = above;
            let mut found = false;
            for row in rows {
                let is_it =
                    matches!(&row, GridRow::Cards { places, .. } if places.contains(&place));
                let bottom = top + row.height() - GAP;
                let fits = top >= grid.offset - 0.5 && bottom <= grid.offset + 500.5;
                found |= is_it && fits;
                top += row.height();
            }
            assert!(found, "{place}");
        }
    }
}
