//! The finished knot.

use std::f64::consts::PI;

use marlinspeak::bench::{Braid, Correction, ShapeError};

use crate::{braid, counts, in_knot, mm, within};

/// Worked by hand: 30 mm object, 4 mm cord.
#[test]
fn five_lead_six_bight_doubled() {
    let braid = braid(counts(5, 6, 2), 4.0, 30.0);
    let shape = braid.faired().unwrap();
    assert!((shape.angle_degrees() - 66.3).abs() < 0.05);
    assert!((shape.rise.get() - 21.8).abs() < 0.05);
    assert!((shape.width.get() - 29.8).abs() < 0.05);
    let legs = f64::from(braid.counts.legs()) * shape.cord_in_leg().get();
    assert!((legs / 1000.0 - 1.40).abs() < 0.005, "{legs}");
    assert!(within(in_knot(&braid, &shape), 1430.0, 0.15));
}

/// At F = 1 the cover is whole, and neighbouring bands of cord touch: two parallel legs stand
/// a pitch apart round the object, and their distance square to themselves is a band.
#[test]
fn fully_faired_cords_touch_and_hide_the_object() {
    for (leads, bights, passes, cord, around) in [
        (5, 6, 2, 4.0, 30.0),
        (3, 4, 1, 4.0, 30.0),
        (11, 10, 3, 2.0, 50.0),
        (4, 7, 4, 1.6, 40.0),
    ] {
        let braid = braid(counts(leads, bights, passes), cord, around);
        let shape = braid.faired().unwrap();
        let pitch = PI * (around + 2.0 * cord) / f64::from(bights);
        let (run, rise) = (shape.run.get(), shape.rise.get());
        let apart = pitch * rise / run.hypot(rise);
        assert!((apart - f64::from(passes) * cord).abs() < 1e-9);
        assert!((run / rise - shape.angle.tan()).abs() < 1e-9);
        assert_eq!((shape.fill, shape.cover), (1.0, 1.0));
        let rim = f64::from(leads) * braid.band().get() / (2.0 * shape.angle.sin());
        assert!((rise - rim).abs() < 1e-9);
    }
}

#[test]
fn a_knot_left_open_is_wider_and_hides_less() {
    let braid = braid(counts(5, 6, 2), 4.0, 30.0);
    let faired = braid.faired().unwrap();
    let mut before = faired;
    for width in [32.0, 40.0, 60.0] {
        let open = braid.left_open(mm(width)).unwrap();
        assert!((open.width.get() - width).abs() < 1e-9);
        assert!(open.cover < before.cover && open.angle < before.angle);
        assert!(open.leg > before.leg && !open.faired);
        let fill = 48.0 / (braid.circumference().get() * open.angle.cos());
        assert!((open.fill - fill).abs() < 1e-9);
        assert!((open.cover - (2.0 * fill - fill * fill)).abs() < 1e-9);
        before = open;
    }
    let same = braid.left_open(faired.width).unwrap();
    assert!((same.cover - 1.0).abs() < 1e-9 && (same.angle - faired.angle).abs() < 1e-9);
}

#[test]
fn a_knot_that_does_not_go_round_says_what_would() {
    let error = braid(counts(5, 16, 2), 4.0, 30.0).faired().unwrap_err();
    let ShapeError::TooFull {
        most_bights: Some(bights),
        most_passes: Some(passes),
        cord_below: Some(cord),
        ..
    } = error
    else {
        panic!("{error:?}");
    };
    // 119.4 mm round takes 29 cords of 4 mm, not 30.
    assert_eq!((bights, passes), (14, 1));
    assert!(braid(counts(5, bights, 2), 4.0, 30.0).faired().is_ok());
    assert!(braid(counts(5, bights + 1, 2), 4.0, 30.0).faired().is_err());
    assert!(
        braid(counts(5, 16, 2), cord.get() * 0.999, 30.0)
            .faired()
            .is_ok()
    );
    assert!(
        braid(counts(5, 16, 2), cord.get() * 1.001, 30.0)
            .faired()
            .is_err()
    );
    assert_eq!(
        braid(counts(3, 2, 1), 31.0, 30.0).faired(),
        Err(ShapeError::CordThickerThanObject {
            cord: mm(31.0),
            object: mm(30.0)
        })
    );
}

#[test]
fn no_knot_is_drawn_up_narrower_than_faired() {
    let braid = braid(counts(5, 6, 2), 4.0, 30.0);
    assert_eq!(
        braid.left_open(mm(29.0)),
        Err(ShapeError::NarrowerThanFaired {
            given: mm(29.0),
            least: braid.faired().unwrap().width
        })
    );
}

#[test]
fn the_log_corrects_the_width() {
    let plain = braid(counts(5, 6, 2), 4.0, 30.0);
    let corrected = Braid {
        correction: Correction::new(1.0, 1.1).unwrap(),
        ..plain
    };
    let (one, other) = (plain.faired().unwrap(), corrected.faired().unwrap());
    assert!((other.width.get() / one.width.get() - 1.1).abs() < 1e-9);
    let open = corrected.left_open(mm(44.0)).unwrap();
    let same = plain.left_open(mm(40.0)).unwrap();
    assert!((open.width.get() - 44.0).abs() < 1e-9);
    assert!((open.angle - same.angle).abs() < 1e-9);
    for bad in [0.0, 0.49, 2.01, -1.0, f64::NAN, f64::INFINITY] {
        assert!(Correction::new(bad, 1.0).is_err() && Correction::new(1.0, bad).is_err());
    }
    let factor = Correction::factor(mm(1500.0), mm(1250.0)).unwrap();
    assert!((factor - 1.2).abs() < 1e-12);
}

#[test]
fn only_singles_crowd_their_crossings() {
    let crowded = |leads, bights, passes| {
        let braid = braid(counts(leads, bights, passes), 4.0, 30.0);
        braid.faired().unwrap().is_crowded(mm(4.0))
    };
    assert!(crowded(5, 16, 1));
    assert!(!crowded(5, 6, 1));
    for bights in 2..=14 {
        assert!(!crowded(5, bights, 2), "{bights}");
    }
}
