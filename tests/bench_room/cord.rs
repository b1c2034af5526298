//! Cord to cut, held against figures and rules of thumb.

use marlinspeak::bench::{
    Allowances, BenchError, Consumption, Cord, CordStandard, Correction, STANDARD_CORDS, bight_turn,
};

use crate::{braid, counts, in_knot, mm, within};

/// Philpott, *The Ultimate Book of Decorative Knots*, p. 383: leads × circumference × passes ×
/// 1.2 and a little. The circumference is taken as that of the middle of the knot,
/// `π (D + 2w)`; tails are left out. Ordinary is here a knot of 3 to 12 leads and bights,
/// of soft line drawn up tight, with legs 60° to 75° from the axis when it is doubled to
/// quadrupled; a single has them flatter, 72° to 80°.
#[test]
fn the_rule_of_leads_times_circumference_times_passes() {
    let mut ordinary = [0; 5];
    for leads in 3..=12 {
        for bights in 3..=12 {
            for passes in 1..=4 {
                for (cord, around) in [(2.0, 20.0), (3.0, 25.0), (4.0, 30.0), (4.0, 60.0)] {
                    let braid = braid(counts(leads, bights, passes), cord, around);
                    let Ok(shape) = braid.tight() else { continue };
                    let angles = if passes == 1 {
                        72.0..=80.0
                    } else {
                        60.0..=75.0
                    };
                    if !angles.contains(&shape.angle_degrees()) {
                        continue;
                    }
                    ordinary[usize::from(passes)] += 1;
                    let rule = f64::from(leads * passes) * braid.circumference().get() * 1.2;
                    let cord = in_knot(&braid, &shape);
                    assert!(within(cord, rule, 0.15), "{:?} {}", braid, cord / rule);
                }
            }
        }
    }
    assert!(
        ordinary[1..].iter().all(|&knots| knots >= 50),
        "{ordinary:?}"
    );
}

/// Pawson, *Knot Craft* (2nd ed.), p. 66: for a 4 lead 5 bight tripled in 3 mm cord, lay a
/// dozen slack turns round the rim and add a bit. A turn is taken as the circumference of the
/// middle of the knot. The rim's thickness is not given: 32 mm to 40 mm is our guess.
#[test]
fn a_dozen_turns_and_a_bit() {
    for rim in [32.0, 35.0, 40.0] {
        let braid = braid(counts(4, 5, 3), 3.0, rim);
        let cord = in_knot(&braid, &braid.tight().unwrap());
        let dozen = 12.0 * braid.circumference().get();
        assert!(
            cord > dozen && within(cord, dozen, 0.15),
            "{}",
            cord / dozen
        );
    }
}

/// Wikibooks, *Knots/Turk's head knot*: about 1 m on a stick of about 20 mm, usually three
/// passes. Leads (3) are inferred from its figure-of-eight start; bights (4) and cord (3 mm
/// to 4 mm) are our guess.
#[test]
fn about_a_metre_on_a_stick() {
    for cord in [3.0, 3.5, 4.0] {
        let braid = braid(counts(3, 4, 3), cord, 20.0);
        let length = in_knot(&braid, &braid.tight().unwrap());
        assert!(within(length, 1000.0, 0.15), "{cord}: {length}");
    }
}

#[test]
fn tails_and_holding_come_with_every_piece() {
    let allowances = Allowances {
        standing_tail: mm(100.0),
        working_tail: mm(60.0),
        holding: mm(40.0),
    };
    // 4 leads, 6 bights: two strands. 36 legs of 98 mm and as many turns of 2 mm are 3600 mm.
    let cord = Consumption::new(
        counts(4, 6, 3),
        mm(98.0),
        mm(2.0),
        Correction::default(),
        allowances,
    );
    let near = |one: f64, other: f64| (one - other).abs() < 1e-9;
    assert!(near(cord.per_pass().get(), 1200.0));
    assert!(near(cord.in_knot().get(), 3600.0));
    assert!(near(cord.per_strand().get(), 2000.0));
    assert!(near(cord.to_cut().get(), 4000.0));

    let pieces = cord.pieces(&[1, 2]).unwrap();
    let told: Vec<_> = pieces
        .iter()
        .map(|piece| (piece.strand, piece.cord, piece.passes, piece.length.get()))
        .collect();
    assert_eq!(
        told,
        [
            (1, 0, 1, 800.0),
            (1, 1, 2, 1400.0),
            (2, 0, 1, 800.0),
            (2, 1, 2, 1400.0)
        ]
    );
    for bad in [&[1, 1][..], &[4], &[3, 0], &[]] {
        assert!(matches!(
            cord.pieces(bad),
            Err(BenchError::PassesShared { passes: 3, .. })
        ));
    }
}

#[test]
fn the_log_corrects_the_cord_in_the_knot_but_not_its_tails() {
    let cord = |factor| {
        Consumption::new(
            counts(3, 4, 1),
            mm(50.0),
            mm(5.0),
            Correction::new(factor, 1.0).unwrap(),
            Allowances::default(),
        )
    };
    let (plain, more) = (cord(1.0), cord(1.1));
    assert!((more.in_knot().get() - 1.1 * plain.in_knot().get()).abs() < 1e-9);
    assert!((more.to_cut().get() - plain.to_cut().get() - 44.0).abs() < 1e-9);
}

/// Half a circle round a pin when the legs run along the tube, nothing when they run round it.
#[test]
fn cord_turns_round_half_the_pin_and_half_itself() {
    let half_circle = bight_turn(mm(4.0), Some(mm(4.0)), 0.0).get();
    assert!((half_circle - std::f64::consts::PI * 4.0).abs() < 1e-9);
    let flat = bight_turn(mm(4.0), Some(mm(4.0)), std::f64::consts::FRAC_PI_2).get();
    assert!(flat.abs() < 1e-9);
    let closed = bight_turn(mm(4.0), None, 0.0).get();
    assert!((closed - half_circle / 2.0).abs() < 1e-9);
}

#[test]
fn a_cord_of_known_type_is_weighed() {
    let cord = STANDARD_CORDS
        .iter()
        .find(|cord| cord.designation == "III")
        .and_then(CordStandard::cord)
        .unwrap();
    assert_eq!(cord.diameter, mm(4.0));
    assert!((cord.grams(mm(2000.0)).unwrap() - 13.228).abs() < 1e-9);
    assert_eq!(Cord::new(mm(4.0)).grams(mm(2000.0)), None);
}
