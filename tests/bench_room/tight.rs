//! The knot drawn up tight, against figures worked out by hand, cord simulated as tight as it goes,
//! and a mat in a book.

use std::f64::consts::PI;

use marlinspeak::bench::{Braid, Correction, Counts, Give, Interlacing, ShapeError};
use marlinspeak::knot::Weave;

use crate::{braid, count, counts, hard, in_knot, mm, numbers, rows, within};

/// Worked out by hand from the band rule, for hard cord (1.89) and for soft (1.62): leads, bights,
/// passes, cord, object; angle and width of each.
#[expect(clippy::type_complexity, reason = "a table")]
const BY_HAND: [([u16; 3], [f64; 2], [f64; 2], [f64; 2]); 6] = [
    ([5, 7, 2], [4.0, 30.0], [47.3, 40.9], [52.1, 35.8]),
    ([17, 4, 1], [4.0, 30.0], [75.3, 67.6], [77.5, 58.0]),
    ([3, 4, 1], [4.0, 30.0], [75.3, 12.9], [77.5, 11.6]),
    ([3, 5, 3], [4.0, 30.0], [49.3, 33.3], [52.7, 30.9]),
    ([5, 4, 2], [4.0, 25.0], [63.5, 35.0], [66.1, 31.9]),
    ([9, 7, 1], [4.0, 30.0], [63.7, 38.9], [67.7, 33.0]),
];

#[test]
fn tight_knots_come_out_as_worked_out_by_hand() {
    for ([leads, bights, passes], [cord, object], of_hard, of_soft) in BY_HAND {
        for (give, [angle, width]) in [(Give::HARD, of_hard), (Give::SOFT, of_soft)] {
            let braid = Braid {
                give,
                ..braid(counts(leads, bights, passes), cord, object)
            };
            let shape = braid.tight().unwrap();
            let near = |one: f64, other: f64| (one - other).abs() <= 0.0501;
            assert!(
                near(shape.angle_degrees(), angle),
                "{leads} × {bights}: {shape:?}"
            );
            assert!(
                near(shape.width.get(), width),
                "{leads} × {bights}: {shape:?}"
            );
            assert!(shape.is_tight());
        }
    }
}

/// Hard frictionless cord by simulation; the table says how.
#[test]
fn tight_widths_are_those_of_simulated_cord() {
    let table = rows(include_str!("../data/tight_widths.csv"));
    assert_eq!(table.len(), 29);
    let mut sum = 0.0;
    for row in &table {
        let value = numbers(row);
        let knot = counts(count(row[0]), count(row[1]), count(row[2]));
        let braid = hard(knot, value[3], value[4]);
        let shape = braid.tight().unwrap();
        let off = shape.width.get() / value[5] - 1.0;
        assert!(off.abs() <= 0.08, "{row:?}: {} is {off} off", shape.width);
        sum += off;
        // Cord, turns and all; of a twist of two leads hardly more than turns is left.
        let near = if row[0] == "2" { 0.2 } else { 0.07 };
        let cord = in_knot(&braid, &shape);
        assert!(within(cord, value[6], near), "{row:?}: {cord}");
    }
    let mean = sum / 29.0;
    assert!(mean.abs() <= 0.02, "{mean}");
}

/// The same of knots over two and over three, which draw up closer.
#[test]
fn longer_runs_draw_up_closer() {
    let table = rows(include_str!("../data/tight_widths_weaves.csv"));
    let plain: Vec<_> = table.iter().filter(|row| row[0] == "1").collect();
    assert_eq!(plain.len(), 6);
    for row in plain {
        let value = numbers(row);
        let leads = count(row[1]);
        let weave = Weave::Run(count(row[4]));
        let knot = counts(leads, count(row[2]), 1).interlaced(Interlacing::of(&weave, leads - 1));
        let width = |counts: Counts| {
            hard(counts, value[5], value[6])
                .tight()
                .unwrap()
                .width
                .get()
        };
        assert!(
            within(width(knot), value[7], 0.081),
            "{row:?}: {}",
            width(knot)
        );
        let over_one = width(knot.interlaced(Interlacing::PLAIN));
        assert!(over_one > 1.1 * width(knot));
    }
}

/// Philpott, *The Ultimate Book of Decorative Knots*, p. 25: a flat mat of 6 leads and 7 bights
/// doubled in 1/4 in line comes out 6 in across, of 4572 mm of cord with its tails. The band rule on
/// the flat: `cos α = B·(P − 1 + k)·w / 2πr`, tight at the inner rim, and as many leads between
/// the rims as there are. Our own sum of thin rings; soft line is what this mat is made of.
#[test]
fn a_flat_mat_comes_out_as_in_the_book() {
    let (leads, bights, passes, cord) = (6.0, 7.0, 2.0, 6.35);
    let (mut radius, mut gone, mut leg) = (0.0, 0.0, 0.0);
    let spacing = (passes - 1.0 + Give::SOFT.get()) * cord;
    let inner = bights * spacing / (2.0 * PI);
    let rims = 0.72 + 0.10 * (passes - 1.0);
    let step = 1e-4;
    while gone < leads - rims {
        let middle = inner + radius + step / 2.0;
        let cosine = inner / middle;
        let tangent = (1.0 - cosine * cosine).sqrt() / cosine;
        gone += 2.0 * bights / (2.0 * PI * middle) * tangent * step;
        leg += step / cosine;
        radius += step;
    }
    let across = 2.0 * (inner + radius + passes * cord / 2.0);
    assert!(within(across, 152.0, 0.02), "{across}");
    let cord = 2.0 * bights * passes * leg;
    assert!((3200.0..4572.0).contains(&cord), "{cord}");
}

/// Bands of one heading stand `(P − 1 + k)·w` apart: the first rule of all.
#[test]
fn neighbouring_bands_leave_room_for_those_between() {
    for (knot, cord, around) in [
        (counts(5, 6, 2), 4.0, 30.0),
        (counts(3, 4, 1), 4.0, 30.0),
        (counts(11, 8, 3), 2.0, 50.0),
        (counts(4, 6, 4), 1.6, 40.0),
    ] {
        let braid = braid(knot, cord, around);
        let shape = braid.tight().unwrap();
        let pitch = braid.circumference().get() / f64::from(knot.bights());
        let apart = pitch * shape.angle.cos();
        let cords = f64::from(knot.passes()) - 1.0 + 1.62;
        assert!((apart - cords * cord).abs() < 1e-9);
        assert!((braid.tight_spacing().get() - cords * cord).abs() < 1e-9);
    }
}

#[test]
fn softer_cord_and_flat_cord_draw_up_narrower() {
    let width = |give| {
        let braid = Braid {
            give,
            ..braid(counts(5, 6, 2), 4.0, 30.0)
        };
        braid.tight().unwrap().width
    };
    assert!(width(Give::FLAT) < width(Give::SOFT) && width(Give::SOFT) < width(Give::HARD));
    assert_eq!(width(Give::parse("1,62").unwrap()), width(Give::SOFT));
    for bad in ["", "soft", "0.79", "2.51", "-1", "1.6.2", "NaN", "inf"] {
        assert!(Give::parse(bad).is_err(), "{bad}");
    }
}

#[test]
fn a_knot_that_does_not_go_round_says_what_would() {
    let error = braid(counts(5, 12, 2), 4.0, 30.0).tight().unwrap_err();
    let ShapeError::TooFull {
        most_bights: Some(bights),
        most_passes: Some(passes),
        cord_below: Some(cord),
        ..
    } = error
    else {
        panic!("{error:?}");
    };
    // 119.4 mm round takes 11 bands of 2.62 cords of 4 mm, not 12.
    assert_eq!((bights, passes), (11, 1));
    let goes = |knot, cord| braid(knot, cord, 30.0).tight().is_ok();
    assert!(goes(counts(5, bights, 2), 4.0) && !goes(counts(5, bights + 1, 2), 4.0));
    assert!(goes(counts(5, 12, passes), 4.0) && !goes(counts(5, 12, passes + 1), 4.0));
    assert!(goes(counts(5, 12, 2), cord.get() * 0.999));
    assert!(!goes(counts(5, 12, 2), cord.get() * 1.001));
    assert_eq!(
        braid(counts(3, 2, 1), 31.0, 30.0).tight(),
        Err(ShapeError::CordThickerThanObject {
            cord: mm(31.0),
            object: mm(30.0)
        })
    );
}

#[test]
fn no_knot_is_drawn_up_narrower_than_tight() {
    let braid = braid(counts(5, 6, 2), 4.0, 30.0);
    assert_eq!(
        braid.opened(mm(29.0)),
        Err(ShapeError::NarrowerThanTight {
            given: mm(29.0),
            least: braid.tight().unwrap().width
        })
    );
}

#[test]
fn the_log_corrects_how_close_bands_come() {
    let plain = braid(counts(5, 6, 2), 4.0, 30.0);
    let corrected = Braid {
        correction: Correction::new(1.0, 1.1).unwrap(),
        ..plain
    };
    let told = Braid {
        give: Give::new(1.1 * Give::SOFT.get()).unwrap(),
        ..plain
    };
    let [one, other] = [corrected, told].map(|braid| braid.tight().unwrap());
    assert_eq!(one.width, other.width);
    assert!(one.width > plain.tight().unwrap().width);
    for bad in [0.0, 0.49, 2.01, -1.0, f64::NAN, f64::INFINITY] {
        assert!(Correction::new(bad, 1.0).is_err() && Correction::new(1.0, bad).is_err());
    }
    let factor = Correction::factor(mm(1500.0), mm(1250.0)).unwrap();
    assert!((factor - 1.2).abs() < 1e-12);
}
