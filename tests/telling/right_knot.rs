//! The steps a tyer is told tie the right knot.
//!
//! The steps are turned back into a knot diagram, knowing nothing of how they were computed, and
//! the diagram's determinant and Alexander polynomial are held against published ones. The tables
//! under `tests/data/` name their sources.

use crate::diagram;
use crate::in_time;

use in_time::InTime as _;
use std::process::{Command, Output};

use num_bigint::{BigInt, BigUint};
use serde_json::Value;

use diagram::Diagram;
use diagram::exact::{Polynomial, in_power, product};

const KNOT_TABLE: &str = include_str!("../data/knot_table.csv");
const DETERMINANTS: &str = include_str!("../data/determinants.csv");
const INTERWOVEN: &str = include_str!("../data/interwoven.csv");
const ROWCODED: &str = include_str!("../data/rowcoded_determinants.csv");

/// Runs `marlinspeak steps --json` with these arguments, away from the tyer's own settings.
fn steps(args: &[&str]) -> Output {
    let mut program = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
    for variable in ["HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME"] {
        program.env(variable, env!("CARGO_TARGET_TMPDIR"));
    }
    program
        .env("LC_ALL", "C")
        .args(["steps", "--json"])
        .args(args)
        .output_in_time()
}

/// The document the program prints.
fn told(args: &[&str]) -> Value {
    let output = steps(args);
    let complaint = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{args:?}: {complaint}");
    serde_json::from_slice(&output.stdout).unwrap()
}

/// The table begins at 1 bight, the program at 2: it says so and prints no steps.
fn assert_refused(args: &[&str]) {
    let output = steps(args);
    assert_eq!(output.status.code(), Some(2), "{args:?}");
    assert!(output.stdout.is_empty(), "{args:?}");
    assert!(!output.stderr.is_empty(), "{args:?}");
}

/// The steps of a knot, with more options after its counts.
pub fn told_of(leads: &str, bights: &str, more: &[&str]) -> Value {
    told(&[&["--leads", leads, "--bights", bights], more].concat())
}

fn lead_pass(leads: &str, bights: &str, more: &[&str]) -> Diagram {
    Diagram::of_lead_pass(&told_of(leads, bights, more))
        .unwrap_or_else(|why| panic!("{leads} lead {bights} bight {more:?}: {why}"))
}

/// The lines of a table below its source and its header.
fn rows(table: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    let lines = table.lines().filter(|line| !line.starts_with('#'));
    lines.skip(1).map(|line| line.split(',').collect())
}

/// Every determinant of a table with a column for each bight count, as (leads, second column,
/// bights, determinant).
fn cells(table: &'static str) -> Vec<(&'static str, &'static str, String, BigUint)> {
    let cells_of = |row: Vec<&'static str>| {
        let (leads, second) = (row[0], row[1]);
        let numbers = row.into_iter().skip(2).zip(1..);
        numbers.map(move |(cell, bights): (_, u16)| {
            (leads, second, bights.to_string(), cell.parse().unwrap())
        })
    };
    rows(table).flat_map(cells_of).collect()
}

/// The determinant by three roads that must agree.
fn determinant(diagram: &Diagram) -> BigUint {
    let determinant = diagram.determinant();
    assert_eq!(diagram.determinant_by_faces(false), determinant);
    assert_eq!(diagram.determinant_by_faces(true), determinant);
    determinant
}

#[test]
fn every_knot_of_the_table_is_the_one_named_there() {
    let mut tied = 0;
    for row in rows(KNOT_TABLE) {
        let [leads, bights, crossings, strands, name, known, coefficients] = row[..7] else {
            panic!("short line {row:?}");
        };
        if bights == "1" {
            assert_refused(&["--leads", leads, "--bights", bights]);
            continue;
        }
        let diagram = lead_pass(leads, bights, &[]);
        assert_eq!(diagram.crossings().to_string(), crossings, "{name}");
        assert_eq!(diagram.strands().to_string(), strands, "{name}");
        assert_eq!(determinant(&diagram).to_string(), known, "{name}");
        let polynomial: Vec<_> = diagram.alexander().iter().map(BigInt::to_string).collect();
        assert_eq!(polynomial.join(" "), coefficients, "{name}");
        tied += 1;
    }
    assert_eq!(tied, 15);
}

#[test]
fn over_one_under_one_has_the_published_determinants() {
    let mut tied = 0;
    for (leads, _, bights, known) in cells(DETERMINANTS) {
        if bights == "1" {
            assert_refused(&["--leads", leads, "--bights", &bights]);
            continue;
        }
        let diagram = lead_pass(leads, &bights, &[]);
        assert_eq!(determinant(&diagram), known, "{leads} lead {bights} bight");
        tied += 1;
    }
    assert_eq!(tied, 6 * 9);
}

/// The table writes the sign of the braid's crossing in each row. Which sign is over decides
/// between a knot and its mirror image, whose determinants are equal: so both are asked for.
#[test]
fn row_codes_have_the_published_determinants() {
    let mut tied = 0;
    for (leads, signs, bights, known) in cells(ROWCODED) {
        for (plus, minus) in [("o", "u"), ("u", "o")] {
            let code = signs.replace('+', plus).replace('-', minus);
            if bights == "1" {
                assert_refused(&["--leads", leads, "--bights", &bights, "--weave", &code]);
                continue;
            }
            let diagram = lead_pass(leads, &bights, &["--weave", &code]);
            assert_eq!(
                determinant(&diagram),
                known,
                "{leads} lead {bights} bight {code}"
            );
            tied += 1;
        }
    }
    assert_eq!(tied, 2 * 8 * 7);
}

/// A run of n is the row code that repeats it: 5 lead over two, under two is the table's `++--`.
#[test]
fn a_run_is_its_row_code() {
    for (bights, known) in [("2", 13_u16), ("3", 49), ("4", 117), ("7", 1849)] {
        let diagram = lead_pass("5", bights, &["--weave", "2"]);
        assert_eq!(determinant(&diagram), known.into(), "{bights} bights");
    }
}

/// The figures are those of the single knot: `knot_table.csv`, and 4 lead 5 bight from
/// `determinants.csv`.
#[test]
fn the_lead_pass_is_the_same_whatever_hand_side_and_passes() {
    for (leads, bights, known) in [
        ("3", "4", 45_u16),
        ("4", "3", 75),
        ("3", "3", 16),
        ("4", "5", 1805),
    ] {
        for hand in ["right", "left"] {
            for side in ["right", "left"] {
                for passes in ["1", "2", "3"] {
                    let more = ["--hand", hand, "--side", side, "--passes", passes];
                    let diagram = lead_pass(leads, bights, &more);
                    assert_eq!(
                        determinant(&diagram),
                        known.into(),
                        "{leads}×{bights} {more:?}"
                    );
                }
            }
        }
    }
}

/// t^`power` − 1.
fn power_less_one(power: usize) -> Polynomial {
    in_power(&[BigInt::from(-1), BigInt::from(1)], power)
}

/// The finished knot is the parallel cable of the lead pass. A satellite's polynomial is the
/// companion's in t^P times the pattern's (W. B. R. Lickorish, *An Introduction to Knot Theory*,
/// theorem 6.15, number from memory); the pattern is the torus link of P cords that lies flat, whose
/// linking is the writhe w, with ((t^Pw − 1)^(P−1) (t − 1)) / (t^P − 1).
#[test]
fn the_finished_cable_is_a_parallel_of_the_lead_pass() {
    for (leads, bights, passes, weave, writhe) in [
        ("2", "3", 2, "o", 3),
        ("2", "3", 3, "o", 3),
        ("2", "5", 2, "o", 5),
        ("3", "2", 2, "oo", 4),
        ("3", "2", 2, "ou", 0),
        ("4", "3", 2, "ouo", 3),
    ] {
        for side in ["right", "left"] {
            let passes_told = passes.to_string();
            let more = ["--weave", weave, "--side", side, "--passes", &passes_told];
            let document = told_of(leads, bights, &more);
            let single = Diagram::of_lead_pass(&document).unwrap();
            let cable = Diagram::of_cable(&document).unwrap();
            assert_eq!(cable.crossings(), single.crossings() * passes * passes);
            assert_eq!(cable.strands(), passes);
            assert_eq!(
                single.writhe().unsigned_abs(),
                writhe as u64,
                "{leads}×{bights} {weave}"
            );
            let mut expected = product(&in_power(&single.alexander(), passes), &power_less_one(1));
            for _ in 1..passes {
                expected = product(&expected, &power_less_one(passes * writhe));
            }
            let found = product(&cable.alexander(), &power_less_one(passes));
            assert_eq!(
                diagram::exact::normalised(found),
                diagram::exact::normalised(expected),
                "{leads}×{bights} {more:?}"
            );
            determinant(&cable);
        }
    }
}

/// The links of the table, from the told steps alone; and the knots that their strands are by
/// themselves.
#[test]
fn interwoven_knots_are_the_links_of_the_table() {
    let mut tied = 0;
    for row in rows(INTERWOVEN) {
        let [
            nests,
            bights,
            leads,
            lands,
            run,
            rows,
            strands,
            legs,
            crossings,
            known,
            _,
            name,
            each,
        ] = row[..13]
        else {
            panic!("short line {row:?}");
        };
        for passes in ["1", "2"] {
            let more = [
                "--nested", nests, "--lands", lands, "--weave", run, "--passes", passes,
            ];
            let document = told_of(leads, bights, &more);
            let diagram = Diagram::of_lead_pass(&document).unwrap();
            assert_eq!(diagram.strands().to_string(), strands, "{row:?}");
            assert_eq!(diagram.crossings().to_string(), crossings, "{row:?}");
            assert_eq!(determinant(&diagram).to_string(), known, "{row:?} {name}");
            let steps = document["steps"].as_array().unwrap();
            for (strand, legs) in (1_u64..).zip(legs.split('/')) {
                let of_strand = |step: &&Value| {
                    let is_first_part = step["part"].is_null() || step["part"] == 1;
                    let is_lead = step["kind"] == "lay" && step["pass"] == 1;
                    is_lead && is_first_part && step["strand"] == strand
                };
                assert_eq!(steps.iter().filter(of_strand).count().to_string(), legs);
            }
            assert!(highest_row(steps) <= rows.parse().unwrap(), "{row:?}");
            for (strand, knot) in (1..).zip(each.split('/').filter(|knot| !knot.is_empty())) {
                let alone = Diagram::of_strand(&document, strand);
                // A cord that does not cross itself has no diagram but a ring. Alone, its crossings do
                // not lie a row apart, so that the road by faces is not open.
                let known = match knot {
                    "unknot" => {
                        assert!(alone.is_err() || alone.unwrap().determinant() == 1_u16.into());
                        continue;
                    }
                    "4_1" => 5_u16,
                    "8_18" => 45,
                    "9_40" => 75,
                    other => panic!("{other} has no determinant here"),
                };
                assert_eq!(
                    alone.unwrap().determinant(),
                    known.into(),
                    "{row:?} {strand}"
                );
            }
            tied += 1;
        }
    }
    assert_eq!(tied, 14);
}

/// The highest row in which the told steps cross anything.
fn highest_row(steps: &[Value]) -> u64 {
    let crossings = steps.iter().filter_map(|step| step["crossings"].as_array());
    let rows = crossings.flatten().filter_map(|met| met["row"].as_u64());
    rows.max().unwrap_or(0)
}
