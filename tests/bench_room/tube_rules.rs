//! What a tube can do: room between pins, room to tuck, rings of some width, a tube of some length,
//! and how much slack is left to draw out.

use std::f64::consts::PI;

use marlinspeak::bench::{
    Counts, Finish, OnTube, Rig, RigCaution, RigError, RigJob, Thread, Tube, pin_chord, pin_gap,
    rig,
};

use crate::{counts, mm};

fn ringed(diameter: f64, rows: &[u16]) -> Tube {
    Tube::ringed(mm(diameter), rows).unwrap()
}

fn job(knot: Counts, tube: &Tube, around: f64) -> RigJob<'_> {
    RigJob {
        finish: Some(Finish {
            around: mm(around).into(),
            open_to: None,
        }),
        ..RigJob::new(knot, tube, mm(4.0))
    }
}

fn cautions(rig: &Rig) -> Vec<&'static str> {
    let name = |caution: &RigCaution| match caution {
        RigCaution::PinsTooShort { .. } => "short pins",
        RigCaution::ObjectThickerThanTube { .. } => "thick object",
        RigCaution::PinsClose { .. } => "close pins",
        RigCaution::TubeTooThick { .. } => "thick tube",
        RigCaution::RingsTooWide { .. } => "wide rings",
    };
    rig.cautions.iter().map(name).collect()
}

/// The chord is that of Machinery's Handbook, spacing tables; a screw is as thick as its thread.
#[test]
fn the_gap_between_pins_is_the_chord_less_a_pin() {
    let mut tube = ringed(40.0, &[16]);
    assert!((pin_gap(&tube, 16).get() - (pin_chord(mm(40.0), 16).get() - 4.0)).abs() < 1e-12);
    tube.thread = Some(Thread::parse("M3").unwrap());
    assert!((pin_gap(&tube, 16).get() - (pin_chord(mm(40.0), 16).get() - 3.0)).abs() < 1e-12);
    // Where they would run into one another nothing is left.
    assert_eq!(pin_gap(&ringed(4.0, &[16]), 16).get(), 0.0);
}

/// A bottle of 75 mm on a tube of 40 mm: 9 leads, 16 bights of 4 mm cord have 3.8 mm between the pins.
#[test]
fn cords_that_do_not_pass_between_the_pins_are_refused_with_what_would_do() {
    let tube = ringed(40.0, &[12, 16]);
    let knot = counts(9, 16, 1);
    let error = rig(&RigJob::new(knot, &tube, mm(4.0))).unwrap_err();
    let RigError::PinsTooClose {
        bights: 16,
        gap,
        needed,
        cure,
    } = error
    else {
        panic!("{error:?}");
    };
    assert!((gap.get() - 3.8).abs() < 0.01 && needed == mm(4.0));
    let takes =
        |bights, tube: &Tube| rig(&RigJob::new(counts(9, bights, 1), tube, mm(4.0))).is_ok();
    assert_eq!(cure.most_bights, Some(12));
    assert!(takes(12, &tube));
    let thicker = ringed(cure.tube_at_least.get(), &[12, 16]);
    let thinner = ringed(cure.tube_at_least.get() - 0.01, &[12, 16]);
    assert!(takes(16, &thicker) && !takes(16, &thinner));
    assert_eq!(cure.most_passes, None, "a single has no fewer");
    // There is no room to tuck either, so thinner pins are not named.
    assert_eq!(cure.pin_at_most, None);
}

#[test]
fn thinner_pins_are_named_where_they_would_do() {
    let mut tube = ringed(40.0, &[16]);
    tube.thread = Some(Thread::parse("M5").unwrap());
    let with = |tube: &Tube| rig(&RigJob::new(counts(9, 16, 1), tube, mm(3.0)));
    let Err(RigError::PinsTooClose { cure, .. }) = with(&tube) else {
        panic!("2.8 mm between the pins");
    };
    let pin = cure.pin_at_most.unwrap();
    assert!((pin.get() - 4.8).abs() < 0.01, "{pin}");
    tube.thread = Some(Thread::parse("M4").unwrap());
    assert!(with(&tube).is_ok());
}

#[test]
fn cords_that_only_just_pass_are_cautioned() {
    let knot = counts(5, 6, 2);
    // 20 mm between the pins of a 48 mm tube; 16 mm are comfortable for two cords of 4 mm.
    assert_eq!(
        cautions(&rig(&job(knot, &ringed(48.0, &[12]), 36.0)).unwrap()),
        [""; 0]
    );
    let rig = rig(&job(knot, &ringed(38.0, &[12]), 36.0)).unwrap();
    let [
        RigCaution::PinsClose {
            gap,
            comfortable,
            cure,
        },
    ] = rig.cautions[..]
    else {
        panic!("{:?}", rig.cautions);
    };
    assert!(gap == rig.pin_gap && gap < comfortable && comfortable == mm(16.0));
    assert!((cure.tube_at_least.get() - 40.0).abs() < 1e-6);
    assert_eq!((cure.most_bights, cure.most_passes), (Some(4), Some(1)));
}

/// The rule, from the angle of a leg as the pins stand on the bare tube.
#[test]
fn the_last_pass_has_room_to_tuck() {
    for (leads, bights, passes) in [(3, 4, 1), (5, 6, 2), (3, 5, 3), (9, 7, 1), (17, 4, 1)] {
        for diameter in [34.0, 40.0, 60.0] {
            let knot = counts(leads, bights, passes);
            let tube = Tube::plain(mm(diameter));
            let Ok(rig) = rig(&job(knot, &tube, 30.0)) else {
                continue;
            };
            let round = PI * diameter;
            let run = f64::from(leads) * round / f64::from(2 * bights);
            let angle = run.atan2(rig.laid.ring_spacing.get());
            let apart = round * angle.cos() / f64::from(bights);
            assert!(
                apart >= (f64::from(passes) + 1.0) * 4.0 - 1e-9,
                "{knot:?} {diameter}"
            );
            assert!(rig.pin_gap.get() >= f64::from(passes) * 4.0);
            assert!(rig.laid.ring_spacing >= rig.shape.rise);
            // What is cut reaches on the tube.
            assert!(rig.cord.leg >= rig.shape.cord_in_leg());
        }
    }
    // The knot with which this came up: 3 × 4 in 4 mm cord.
    let tube = ringed(40.0, &[12]);
    let spacing = rig(&job(counts(3, 4, 1), &tube, 30.0))
        .unwrap()
        .laid
        .ring_spacing;
    assert!(spacing > mm(12.0), "{spacing}");
}

#[test]
fn a_tube_with_no_room_to_tuck_names_one_that_has() {
    let tube = Tube::plain(mm(25.0));
    let knot = counts(5, 8, 2);
    let error = rig(&job(knot, &tube, 60.0)).unwrap_err();
    let (RigError::NoRoomToTuck { cure, .. } | RigError::PinsTooClose { cure, .. }) = error else {
        panic!("{error:?}");
    };
    let takes = |bights, passes, diameter: f64| {
        let tube = Tube::plain(mm(diameter));
        rig(&job(counts(5, bights, passes), &tube, 60.0)).is_ok()
    };
    let (bights, passes) = (cure.most_bights.unwrap(), cure.most_passes.unwrap());
    assert!(takes(bights, 2, 25.0) && !takes(bights + 1, 2, 25.0));
    assert!(takes(8, passes, 25.0) && !takes(8, passes + 1, 25.0));
    let thick = cure.tube_at_least.get();
    assert!(takes(8, 2, thick) && !takes(8, 2, thick - 0.01));
    let thin = RigJob {
        cord: mm(26.0),
        ..job(knot, &tube, 60.0)
    };
    assert!(matches!(
        rig(&thin),
        Err(RigError::CordThickerThanTube { .. })
    ));
}

/// Two rings cannot stand in one place; the pins stand in the same row of both.
#[test]
fn rings_stand_no_nearer_than_they_are_wide() {
    let knot = counts(3, 4, 1);
    let narrow = ringed(40.0, &[12]).with_ring_width(Some(mm(10.0)));
    let wide = ringed(40.0, &[12]).with_ring_width(Some(mm(60.0)));
    let [narrow, wide] = [narrow, wide].map(|tube| rig(&job(knot, &tube, 36.0)).unwrap());
    assert!(narrow.laid.ring_spacing > mm(10.0) && !narrow.laid.rings_touch());
    assert_eq!(wide.laid.ring_spacing, mm(60.0));
    assert_eq!(cautions(&narrow), [""; 0]);
    let [
        RigCaution::RingsTooWide {
            ring,
            slack,
            would_do,
        },
    ] = wide.cautions[..]
    else {
        panic!("{:?}", wide.cautions);
    };
    assert_eq!((ring, slack), (mm(60.0), wide.laid.slack));
    assert_eq!(would_do, narrow.laid.ring_spacing);
    // A tube without rings has none that could be wide.
    assert_eq!(
        Tube::plain(mm(40.0))
            .with_ring_width(Some(mm(9.0)))
            .ring_width(),
        None
    );
}

#[test]
fn rings_that_do_not_stand_on_the_tube_are_refused() {
    let knot = counts(17, 4, 1);
    let mut tube = ringed(40.0, &[12]).with_ring_width(Some(mm(20.0)));
    let spacing = rig(&job(knot, &tube, 36.0))
        .unwrap()
        .laid
        .ring_spacing
        .get();
    tube.length = Some(mm(spacing + 20.1));
    assert!(rig(&job(knot, &tube, 36.0)).is_ok());
    tube.length = Some(mm(spacing + 19.9));
    let Err(RigError::TubeTooShort { length, needed }) = rig(&job(knot, &tube, 36.0)) else {
        panic!("too short");
    };
    assert_eq!(length, mm(spacing + 19.9));
    assert!((needed.get() - spacing - 20.0).abs() < 1e-9);
}

/// A quarter of a leg and more is told, with the tube that would leave the least.
#[test]
fn a_tube_far_too_thick_is_cautioned_with_a_better_one() {
    let knot = counts(5, 4, 2);
    let tube = ringed(80.0, &[12]);
    let rigged = rig(&job(knot, &tube, 20.0)).unwrap();
    let [
        RigCaution::TubeTooThick {
            slack,
            legs,
            better: Some(better),
        },
    ] = rigged.cautions[..]
    else {
        panic!("{:?}", rigged.cautions);
    };
    assert_eq!((slack, legs), (rigged.laid.slack, 16));
    assert!(rigged.laid.slack_share() > OnTube::MOST_SLACK && better < mm(80.0));
    let share = |diameter: f64| {
        let tube = ringed(diameter, &[12]);
        rig(&job(knot, &tube, 20.0)).unwrap().laid.slack_share()
    };
    let named = share(better.get());
    assert!(named < rigged.laid.slack_share() - 0.2, "{named}");
    for other in [-2.0, -1.0, 1.0, 2.0, 5.0] {
        // None near it leaves less, unless its pins stand too close.
        let tube = ringed(better.get() + other, &[12]);
        let easy = pin_gap(&tube, 4).get() >= 16.0;
        assert!(!easy || share(better.get() + other) >= named, "{other}");
    }
}

/// The rule of ring spacing: the rings stand no further than one of its reasons asks for.
#[test]
fn rings_stand_no_further_apart_than_they_must() {
    for (around, diameter) in [(30.0, 36.0), (30.0, 45.0), (40.0, 40.0), (60.0, 45.0)] {
        let tube = Tube::plain(mm(diameter));
        let knot = counts(5, 6, 2);
        let rig = rig(&job(knot, &tube, around)).unwrap();
        let (laid, shape) = (&rig.laid, &rig.shape);
        let lift = 2.0 * (shape.spacing.get().hypot(4.0) - shape.spacing.get());
        assert!(laid.slack.get() >= lift - 1e-9, "{laid:?}");
        let round = PI * diameter;
        let run = 5.0 * round / 12.0;
        let apart = round * run.atan2(laid.ring_spacing.get()).cos() / 6.0;
        let over = [
            laid.ring_spacing.get() - shape.rise.get(),
            laid.slack.get() - lift,
            apart - 12.0,
        ];
        assert!(over.iter().any(|over| over.abs() < 1e-6), "{over:?}");
        let thicker = cautions(&rig).contains(&"thick object");
        assert_eq!(thicker, around > diameter);
    }
}
