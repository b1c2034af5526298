//! The band rule against cord drawn up by the tests' own simulation (`tests/bench/rope.rs`), which reaches
//! knots that the published table does not: many bights, few, four passes, longer runs.

use std::f64::consts::PI;

use marlinspeak::bench::{Braid, Give, Interlacing};
use marlinspeak::knot::Weave;

use crate::{count, counts, hard, numbers, rows};

/// A row of the table.
struct Simulated {
    braid: Braid,
    run: u16,
    width: f64,
}

impl Simulated {
    /// How far the rule is off, as a share.
    fn off(&self) -> f64 {
        self.braid.tight().unwrap().width.get() / self.width - 1.0
    }

    fn degrees(&self) -> f64 {
        self.braid.tight().unwrap().angle_degrees()
    }

    /// The width by the rule with other numbers for `k` and `e`: our own arithmetic.
    fn by(&self, k: f64, e: f64) -> f64 {
        let knot = self.braid.counts;
        let (passes, cord) = (f64::from(knot.passes()), self.braid.cord.get());
        let spacing = (passes - 1.0 + k) * cord;
        let round = PI * (self.braid.around.thickest().get() + 2.0 * cord);
        let cosine = f64::from(knot.bights()) * spacing / round;
        let rims = e + 0.1 * (passes - 1.0);
        (f64::from(knot.leads()) - rims) * spacing / (2.0 * (1.0 - cosine * cosine).sqrt())
            + passes * cord
    }
}

fn table() -> Vec<Simulated> {
    let simulated = |row: &Vec<&str>| {
        let value = numbers(row);
        let (leads, run) = (count(row[0]), count(row[3]));
        let weave = Interlacing::of(&Weave::Run(run), leads - 1);
        let knot = counts(leads, count(row[1]), count(row[2])).interlaced(weave);
        Simulated {
            braid: hard(knot, value[4], value[5]),
            run,
            width: value[6],
        }
    };
    let table = rows(include_str!("../data/simulated_widths.csv"));
    assert_eq!(table.len(), 24);
    table.iter().map(simulated).collect()
}

/// Two simulations by different ways agree on the knots that both know.
#[test]
fn the_simulation_agrees_with_the_published_one() {
    let published = rows(include_str!("../data/tight_widths.csv"));
    let (mut known, mut sum) = (0.0, 0.0);
    for row in table().iter().filter(|row| row.run == 1) {
        let knot = row.braid.counts;
        let named = |cells: &&Vec<&str>| {
            let value = numbers(cells);
            [knot.leads(), knot.bights(), knot.passes()] == [0, 1, 2].map(|cell| count(cells[cell]))
                && [row.braid.cord.get(), row.braid.around.thickest().get()] == value[3..5]
        };
        if let Some(cells) = published.iter().find(named) {
            let off = row.width / numbers(cells)[5] - 1.0;
            assert!(off.abs() < 0.07, "{knot:?}: {off}");
            (known, sum) = (known + 1.0, sum + off);
        }
    }
    assert!(known >= 6.0 && (sum / known).abs() < 0.04, "{known} {sum}");
}

/// Where legs lie as in most covers, the rule comes within a tenth. Where they stand nearer to the axis
/// than 60°, and where a doubled knot has longer runs, it tells a width that is up to a fifth too large:
/// there cord lies closer than `k` says.
#[test]
fn the_rule_comes_near_simulated_cord_and_errs_to_the_wide_side() {
    let (mut usual, mut sum) = (0.0, 0.0);
    for row in table() {
        let (off, knot) = (row.off(), row.braid.counts);
        if row.degrees() >= 60.0 && (row.run == 1 || knot.passes() == 1) {
            assert!(off.abs() <= 0.1, "{knot:?}: {off}");
            (usual, sum) = (usual + 1.0, sum + off);
        } else {
            assert!((0.0..0.2).contains(&off), "{knot:?}: {off}");
        }
    }
    assert!(
        usual >= 15.0 && (sum / usual).abs() <= 0.03,
        "{}",
        sum / usual
    );
}

/// The numbers that fit these knots best, by least squares of the logarithms.
#[test]
fn the_numbers_of_the_rule_are_those_that_simulated_cord_gives() {
    let steps =
        |from: f64, step: f64, count: u32| (0..count).map(move |nth| from + step * f64::from(nth));
    let best = |rows: &[&Simulated], rims: &[f64]| {
        let mut best = (f64::INFINITY, 0.0, 0.0);
        for k in steps(1.4, 0.01, 90) {
            for &e in rims {
                let squares = rows
                    .iter()
                    .map(|row| (row.by(k, e) / row.width).ln().powi(2));
                let sum: f64 = squares.sum();
                if sum < best.0 {
                    best = (sum, k, e);
                }
            }
        }
        (best.1, best.2)
    };
    let table = table();
    let rims: Vec<f64> = steps(0.3, 0.02, 60).collect();
    let plain: Vec<_> = table
        .iter()
        .filter(|row| row.run == 1 && row.braid.counts.passes() <= 3 && row.degrees() >= 55.0)
        .collect();
    let (k, e) = best(&plain, &rims);
    assert!((k - Give::HARD.get()).abs() <= 0.1, "{k} {e}");
    // With so few knots `k` and `e` can stand in for one another.
    assert!((0.5..1.2).contains(&e), "{k} {e}");
    let runs: Vec<_> = table
        .iter()
        .filter(|row| row.run > 1 && row.braid.counts.passes() == 1)
        .collect();
    assert_eq!(runs.len(), 6);
    let (k, _) = best(&runs, &[0.72]);
    assert!((k - 1.62).abs() <= 0.06, "{k}");
}
