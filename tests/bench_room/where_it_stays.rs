//! Knots that are tied where they stay: on a rail, a taper, a knob, and flat on a board.

use std::f64::consts::{PI, TAU};

use marlinspeak::bench::{
    Counts, Finish, Ground, KitItem, Layout, Millimetres, Rig, RigError, RigJob, ShapeError, Tool,
    Tube, bag, rig,
};
use marlinspeak::knot::Lattice;

use crate::{counts, mm, within};

fn placed(counts: Counts, cord: f64, ground: Ground) -> Result<Rig, RigError> {
    let tube = Tube::plain(ground.thickest());
    rig(&RigJob {
        finish: Some(Finish {
            around: ground,
            open_to: None,
        }),
        in_place: true,
        ..RigJob::new(counts, &tube, mm(cord))
    })
}

fn tiller() -> Ground {
    Ground::Taper {
        bottom: mm(36.0),
        top: mm(28.0),
        over: mm(120.0),
    }
}

fn mat(outer: f64) -> Ground {
    Ground::Flat {
        outer: mm(outer),
        hole: None,
    }
}

fn nested(leads: u16, bights: u16, passes: u16) -> Counts {
    let lattice = Lattice::plain(leads, bights)
        .unwrap()
        .interwoven(2, 2)
        .unwrap();
    Counts::on(lattice, passes).unwrap()
}

fn holds_enough(rig: &Rig) {
    let finished = rig.shape.cord_in_leg();
    assert!(rig.laid.cord_in_leg > finished, "{rig:?}");
    let slack = rig.laid.cord_in_leg.get() - finished.get();
    assert!((rig.laid.slack.get() - slack).abs() < 1e-9);
    assert!(rig.in_place && rig.cautions.is_empty());
}

#[test]
fn on_a_rail_marks_stand_for_pins() {
    let counts = counts(5, 7, 2);
    let rail = placed(counts, 4.0, mm(40.0).into()).unwrap();
    let tube = Tube::plain(mm(40.0));
    let on_tube = rig(&RigJob::new(counts, &tube, mm(4.0))).unwrap();
    assert_eq!((&rail.layout, rail.laid), (&on_tube.layout, on_tube.laid));
    assert!(matches!(rail.layout, Layout::Strip(_)));
    holds_enough(&rail);
    // No pin is bent round.
    assert!(rail.cord.turn < on_tube.cord.turn);
    let items = bag(&rail, &tube, []);
    let is_of_pins = |item: &KitItem| {
        matches!(
            item,
            KitItem::Tube { .. } | KitItem::Pins { .. } | KitItem::HexKey(_)
        ) || *item == KitItem::Tool(Tool::Dish)
    };
    assert!(!items.iter().any(is_of_pins), "{items:?}");
    assert!(items.contains(&KitItem::Strip {
        length: tube.circumference()
    }));
    // A scrap over each bight, where a mark stands for a pin.
    assert!(items.contains(&KitItem::Tape {
        length: rail.tape,
        scraps: rail.counts.lattice().legs(),
    }));
}

/// Eleven bights doubled of 4 mm go round a rail of 40 mm side by side, but leave no room to tuck: bands
/// of 12 mm round 126 mm at 20° from the axis, ten at the most.
#[test]
fn without_room_to_tuck_nothing_is_tied_in_place() {
    let full = placed(counts(5, 11, 2), 4.0, mm(40.0).into());
    let Err(RigError::NoRoomInPlace {
        bights: 11,
        most_leads: None,
        most_bights,
        most_passes,
        ..
    }) = full
    else {
        panic!("{full:?}");
    };
    let most = (PI * 40.0 * 20_f64.to_radians().cos() / 12.0).floor();
    assert_eq!((most, most_bights, most_passes), (9.0, Some(9), Some(1)));
    assert!(placed(counts(5, 9, 2), 4.0, mm(40.0).into()).is_ok());
}

#[test]
fn tapes_on_a_taper_are_as_long_as_it_is_round_there() {
    for counts in [counts(5, 6, 2), counts(8, 5, 1), nested(3, 4, 1)] {
        let rig = placed(counts, 4.0, tiller()).unwrap();
        let Layout::Tapes(tapes) = &rig.layout else {
            panic!("{:?}", rig.layout);
        };
        holds_enough(&rig);
        let half = rig.laid.ring_spacing.get() / 2.0;
        assert!(rig.laid.ring_spacing >= rig.shape.rise);
        let apart = rig.laid.rows_apart.map_or(0.0, Millimetres::get);
        for (row, [bottom, top]) in tapes.rows().enumerate() {
            let inside = half - apart * f64::from(u8::try_from(row).unwrap());
            // 8 mm thinner over 120 mm, 32 mm in the middle.
            let [low, high] = [32.0, 32.0].map(|middle: f64| middle * PI);
            let change = PI * inside / 15.0;
            assert!(
                (bottom.length.get() - (low + change)).abs() < 1e-6,
                "{bottom:?}"
            );
            assert!((top.length.get() - (high - change)).abs() < 1e-6, "{top:?}");
            assert_eq!(bottom.marks.len(), usize::from(counts.bights()));
            assert!(bottom.marks[0].get().abs() < 1e-12);
            let on = if rig.staggered {
                top.pitch.get() / 2.0
            } else {
                0.0
            };
            assert!((top.marks[0].get() - on).abs() < 1e-9);
        }
        assert_eq!(tapes.rows().count(), usize::from(counts.nested()));
        // Room to tuck on the bare thing: as many rows lie between the marks as the knot has, of bands
        // that stand a cord's thickness apart besides the band.
        let spacing = (f64::from(counts.passes()) + 1.0) * 4.0;
        let slices = 4000;
        let rows: f64 = (0..slices)
            .map(|slice| {
                let at = (f64::from(slice) + 0.5) / f64::from(slices);
                let round = bottom_to_top(&tapes.bottom.length, &tapes.top.length, at);
                let cosine = f64::from(counts.bands()) * spacing / round;
                2.0 * (1.0 - cosine * cosine).sqrt() / spacing * 2.0 * half / f64::from(slices)
            })
            .sum();
        assert!(
            rows >= f64::from(counts.height()) * (1.0 - 1e-6),
            "{rows} {counts:?}"
        );
        let items = bag(&rig, &Tube::plain(mm(36.0)), []);
        let strips = items
            .iter()
            .filter(|item| matches!(item, KitItem::Strip { .. }));
        assert_eq!(strips.count(), 2 * usize::from(counts.nested()));
    }
}

fn bottom_to_top(bottom: &Millimetres, top: &Millimetres, at: f64) -> f64 {
    bottom.get() + at * (top.get() - bottom.get())
}

/// A knob is full sooner where the knot is tied on it than where it is slid on: leads and bights
/// add up to its great circle over what leaves room to tuck.
#[test]
fn a_knob_takes_what_leaves_room_to_tuck() {
    let knob = Ground::Ball(mm(38.0));
    // π · 44 / (3 · 3) = 15.4.
    assert!(placed(counts(8, 7, 2), 3.0, knob).is_ok());
    let full = placed(counts(9, 8, 2), 3.0, knob);
    let Err(RigError::NoRoomInPlace {
        most_leads,
        most_bights,
        most_passes,
        ..
    }) = full
    else {
        panic!("{full:?}");
    };
    assert_eq!(
        (most_leads, most_bights, most_passes),
        (Some(7), Some(6), Some(1))
    );
    let rig = placed(counts(8, 7, 2), 3.0, knob).unwrap();
    let Layout::Tapes(tapes) = &rig.layout else {
        panic!("{:?}", rig.layout);
    };
    holds_enough(&rig);
    // The marks stand along the bare ball, from one to the other as far as is said.
    let half = rig.laid.ring_spacing.get() / 38.0;
    assert!(within(tapes.top.length.get(), PI * 38.0 * half.cos(), 1e-9));
    assert_eq!(tapes.top.length, tapes.bottom.length);
}

/// From a tube a ball takes a knot whose legs hold what they hold on the ball; its rings may stand nearer
/// than its rims on the ball, since there they close in round the poles.
#[test]
fn a_knot_for_a_ball_is_tied_on_a_tube_that_holds_its_legs() {
    let tube = Tube::ringed(mm(45.0), &[14, 16]).unwrap();
    let for_ball = |counts, open_to| {
        let finish = Some(Finish {
            around: Ground::Ball(mm(38.0)),
            open_to,
        });
        let job = RigJob::new(counts, &tube, mm(3.0));
        rig(&RigJob { finish, ..job }).unwrap()
    };
    let (full, open) = (
        for_ball(counts(9, 8, 2), None),
        for_ball(counts(9, 7, 1), Some(mm(50.0))),
    );
    for on_tube in [&full, &open] {
        assert!(on_tube.laid.cord_in_leg > on_tube.shape.cord_in_leg());
        assert!(!on_tube.in_place);
    }
    assert!(open.laid.ring_spacing < open.shape.rise, "{open:?}");
    // The rims close from the tube to where the bights stand.
    assert!(full.shape.rims[1] < mm(30.0));
}

/// The smallest mat that takes a knot.
fn smallest(counts: Counts, cord: f64) -> Ground {
    let least = mm(2.0 * f64::from(counts.passes()) * cord);
    match placed(counts, cord, mat(least.get())) {
        Err(RigError::Shape(ShapeError::MatFull { outer_from, .. })) => mat(outer_from.get()),
        other => panic!("{other:?}"),
    }
}

/// A mat that is opened up to its hole takes longer legs than room to tuck asks for.
#[test]
fn a_board_is_as_wide_as_the_legs_of_the_finished_mat_ask_for() {
    let open = Ground::Flat {
        outer: mm(150.0),
        hole: Some(mm(50.0)),
    };
    let rig = placed(counts(9, 7, 1), 3.0, open).unwrap();
    assert!((rig.shape.width.get() - 50.0).abs() < 1e-6);
    holds_enough(&rig);
    let lift = rig.laid.slack.get();
    // Enough more to lift a crossing by a cord's thickness, and no more.
    let spacing = rig.shape.spacing.get();
    assert!(
        (lift - 2.0 * (spacing.hypot(3.0) - spacing)).abs() < 1e-3,
        "{lift}"
    );
}

#[test]
fn a_mat_is_laid_round_two_circles_of_pins() {
    let knots = [
        (counts(6, 7, 2), mat(170.0)),
        (counts(5, 8, 1), mat(170.0)),
        (counts(4, 5, 3), mat(170.0)),
        (nested(3, 5, 1), mat(170.0)),
        (counts(6, 7, 2), smallest(counts(6, 7, 2), 5.0)),
        // Here the cords between the pins need more than room to tuck.
        (nested(3, 5, 3), smallest(nested(3, 5, 3), 5.0)),
    ];
    for (counts, ground) in knots {
        let rig = placed(counts, 5.0, ground).unwrap();
        let Layout::Board(board) = &rig.layout else {
            panic!("{:?}", rig.layout);
        };
        holds_enough(&rig);
        let [outer, inner] = [board.outer.radius.get(), board.inner.radius.get()];
        assert!((outer - inner - rig.laid.ring_spacing.get()).abs() < 1e-9);
        let finished = rig.shape.rims.map(|rim| rim.get() / 2.0 - 1e-9);
        assert!(outer >= finished[0], "{rig:?}");
        assert!(inner >= finished[1], "{rig:?}");
        // All cords of a bight pass between the pins of the inner circle.
        let needed = f64::from(counts.passes()) * 5.0 * (2.0 * f64::from(counts.nested()) - 1.0);
        assert!(
            rig.pin_gap.get() >= needed * (1.0 - 1e-9),
            "{} {needed}",
            rig.pin_gap
        );
        let pins = usize::from(counts.bights());
        for [outer, inner] in board.rows() {
            assert_eq!([outer.angles.len(), inner.angles.len()], [pins; 2]);
            assert!(outer.angles[0].abs() < 1e-12);
            let on = if counts.is_staggered() {
                PI / f64::from(counts.bights())
            } else {
                0.0
            };
            assert!((inner.angles[0] - on).abs() < 1e-12);
            assert!((outer.angles[1] - TAU / f64::from(counts.bights())).abs() < 1e-12);
        }
        // Between the circles lie the rows of the knot, with room to tuck, and two of them between a
        // circle and the next inside it.
        let leg = rig.laid.leg.get();
        let ring = (outer * outer - inner * inner) / 2.0 / leg;
        let spacing = TAU * ring / f64::from(counts.bands());
        assert!(spacing >= (f64::from(counts.passes()) + 1.0) * 5.0 * (1.0 - 1e-9));
        let rows = |from: f64, to: f64| {
            let slices = 4000;
            let step = (to - from) / f64::from(slices);
            let sines = (0..slices).map(|slice| {
                let radius = from + (f64::from(slice) + 0.5) * step;
                (1.0 - (ring / radius).powi(2)).max(0.0).sqrt()
            });
            sines.sum::<f64>() * step * 2.0 / spacing
        };
        assert!(within(rows(inner, outer), counts.height().into(), 1e-4));
        for [further_out, further_in] in &board.nested {
            assert!(within(rows(further_out.radius.get(), outer), 2.0, 1e-3));
            assert!(within(rows(inner, further_in.radius.get()), 2.0, 1e-3));
        }
        assert_eq!(board.nested.len(), usize::from(counts.nested()) - 1);

        let items = bag(&rig, &Tube::plain(mm(170.0)), []);
        let wide = |item: &KitItem| matches!(item, KitItem::Board { across } if across.get() > 2.0 * outer);
        assert!(wide(&items[0]), "{items:?}");
        let all = counts.lattice().legs();
        assert!(items.iter().any(
            |item| matches!(item, KitItem::Pins { count, thread: None, .. } if *count == all)
        ));
        assert!(
            !items
                .iter()
                .any(|item| matches!(item, KitItem::Tube { .. }))
        );
    }
}
