//! The physical side of a tie, held against published figures, simulated cord, rules of thumb and
//! the practice of the trade.

#![expect(clippy::float_cmp, reason = "figures said to be exact are")]

mod any_ground;
mod areas;
mod cord;
mod fitting;
mod interwoven;
mod learning;
mod lengths;
mod offers;
mod offers_any_ground;
mod properties;
mod range;
mod reference;
mod rigging;
mod simulated;
mod tight;
mod tube_rules;
mod where_it_stays;

use marlinspeak::bench::{
    Allowances, Braid, Consumption, Counts, Give, KnotShape, Millimetres, bight_turn,
};

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

fn counts(leads: u16, bights: u16, passes: u16) -> Counts {
    Counts::new(leads, bights, passes).unwrap()
}

fn braid(counts: Counts, cord: f64, around: f64) -> Braid {
    Braid::new(counts, mm(cord), mm(around))
}

fn hard(counts: Counts, cord: f64, around: f64) -> Braid {
    Braid {
        give: Give::HARD,
        ..braid(counts, cord, around)
    }
}

/// Cord in the finished knot, turns at the rims included, tails left out.
fn in_knot(braid: &Braid, shape: &KnotShape) -> f64 {
    let turn = bight_turn(braid.cord, None, shape.angle);
    Consumption::new(
        braid.counts,
        shape.cord_in_leg(),
        turn,
        braid.correction,
        Allowances::default(),
    )
    .in_knot()
    .get()
}

/// Whether `given` lies within `share` of `wanted`.
fn within(given: f64, wanted: f64, share: f64) -> bool {
    (given - wanted).abs() <= share * wanted
}

/// The rows of a table under `tests/data`, without its remarks and its heading.
fn rows(table: &str) -> Vec<Vec<&str>> {
    table
        .lines()
        .filter(|line| !line.starts_with("# ") && !line.is_empty())
        .skip(1)
        .map(|line| line.split(',').collect())
        .collect()
}

/// The numbers of a row.
fn numbers(row: &[&str]) -> Vec<f64> {
    row.iter().map(|cell| cell.parse().unwrap()).collect()
}

/// A count that a table holds.
fn count(cell: &str) -> u16 {
    cell.parse().unwrap()
}
