//! What holds for any knot, tube and cord.

use marlinspeak::bench::{
    Braid, Correction, Counts, Finish, FitWish, Give, KnotShape, LeastCover, Millimetres, Object,
    Rig, RigJob, Thread, Tube, WidthRange, crimp, fit, rig, why_nothing_fits,
};
use proptest::prelude::*;

use crate::{braid, counts, in_knot, mm};

fn any_length() -> impl Strategy<Value = Millimetres> {
    (-2.0..5.0_f64).prop_map(|power| mm(10_f64.powf(power)))
}

fn any_give() -> impl Strategy<Value = Give> {
    (0.8..2.5_f64).prop_map(|give| Give::new(give).unwrap())
}

fn any_counts() -> impl Strategy<Value = Counts> {
    (2..=999_u16, 2..=999_u16, 1..=9_u16)
        .prop_map(|(leads, bights, passes)| counts(leads, bights, passes))
}

fn any_tube() -> impl Strategy<Value = Tube> {
    let rows = prop::collection::vec(2..=60_u16, 1..4);
    (5.0..80.0_f64, prop::option::of(rows), any::<bool>()).prop_map(|(diameter, rows, thread)| {
        let mut tube = match rows {
            Some(rows) => Tube::ringed(mm(diameter), &rows).unwrap(),
            None => Tube::plain(mm(diameter)),
        };
        tube.thread = thread.then(|| Thread::parse("M4").unwrap());
        tube
    })
}

fn is_finite(shape: &KnotShape) -> bool {
    [
        shape.angle,
        shape.run.get(),
        shape.rise.get(),
        shape.width.get(),
        shape.cover,
        shape.bands.fill(),
        shape.scallop.get(),
        shape.leg.get(),
        shape.spacing.get(),
        shape.cord_in_leg().get(),
    ]
    .iter()
    .all(|number| number.is_finite() && *number > 0.0)
        && (0.0..=crimp::JAMMED).contains(&shape.crimp)
        && shape.cover <= 1.0
}

fn rig_is_finite(rig: &Rig) -> bool {
    [
        rig.laid.ring_spacing,
        rig.laid.leg,
        rig.laid.cord_in_leg,
        rig.pin_chord,
        rig.pin_length,
        rig.tape,
        rig.cord.to_cut(),
        rig.cord.per_pass(),
    ]
    .iter()
    .all(|length| length.get().is_finite() && length.get() > 0.0)
        && rig.laid.slack.get().is_finite()
}

proptest! {
    #[test]
    fn reading_never_panics(text in "\\PC*") {
        let _ = Thread::parse(&text);
        let _ = Tube::parse_rows(&text);
        if let Ok(length) = Millimetres::parse(&text) {
            prop_assert!(length >= Millimetres::LEAST && length <= Millimetres::MOST);
        }
    }

    #[test]
    fn reading_what_looks_like_a_length_never_panics(text in "[-+0-9 .,/]{0,12}(mm|cm|m|in|\"|ft|x)?") {
        if let Ok(length) = Millimetres::parse(&text) {
            prop_assert!(length >= Millimetres::LEAST && length <= Millimetres::MOST);
        }
    }

    #[test]
    fn a_length_reads_back_in_any_unit(length in 0.1..9000.0_f64) {
        for (unit, scale) in [("mm", 1.0), ("cm", 10.0), ("m", 1000.0), ("in", 25.4)] {
            let text = format!("{:.6}{unit}", length / scale);
            let read = Millimetres::parse(&text).unwrap().get();
            prop_assert!((read - length).abs() < 1e-2, "{}", text);
            prop_assert_eq!(Millimetres::parse(&text.replace('.', ",")).unwrap().get(), read);
        }
    }

    #[test]
    fn any_shape_is_finite(
        counts in any_counts(),
        cord in any_length(),
        around in any_length(),
        width in any_length(),
        give in any_give(),
    ) {
        let braid = Braid { give, ..Braid::new(counts, cord, around) };
        if let Ok(shape) = braid.tight() {
            prop_assert!(is_finite(&shape), "{:?}", shape);
            prop_assert!(in_knot(&braid, &shape).is_finite());
        }
        if let Ok(shape) = braid.opened(width) {
            prop_assert!(is_finite(&shape), "{:?}", shape);
        }
        if let Some(range) = WidthRange::of(&braid, LeastCover::default()) {
            prop_assert!(range.tight <= range.widest, "{:?}", range);
        }
    }

    #[test]
    fn any_rig_is_finite(
        counts in any_counts(),
        cord in any_length(),
        tube in any_length(),
        around in any_length(),
    ) {
        let tube = Tube::plain(tube);
        let job = RigJob {
            finish: Some(Finish { around: around.into(), open_to: None }),
            ..RigJob::new(counts, &tube, cord)
        };
        if let Ok(rig) = rig(&job) {
            prop_assert!(rig_is_finite(&rig), "{:?}", rig);
        }
    }

    /// One lead, one bight or one pass more takes more cord, and so does a thicker object.
    #[test]
    fn cord_grows_with_every_count(
        leads in 2..40_u16,
        bights in 2..40_u16,
        passes in 1..5_u16,
        cord in 0.5..8.0_f64,
        around in 8.0..200.0_f64,
    ) {
        let length = |leads, bights, passes, around| {
            let braid = braid(counts(leads, bights, passes), cord, around);
            braid.tight().ok().map(|shape| in_knot(&braid, &shape))
        };
        let Some(base) = length(leads, bights, passes, around) else { return Ok(()); };
        for more in [
            length(leads + 1, bights, passes, around),
            length(leads, bights + 1, passes, around),
            length(leads, bights, passes + 1, around),
        ].into_iter().flatten() {
            prop_assert!(more > base, "{} {}", base, more);
        }
    }

    #[test]
    fn a_leg_on_the_tube_never_lacks_cord(
        counts in any_counts(),
        cord in 0.5..8.0_f64,
        tube in 10.0..300.0_f64,
        around in 10.0..300.0_f64,
    ) {
        let tube = Tube::plain(mm(tube));
        let job = RigJob {
            finish: Some(Finish { around: mm(around).into(), open_to: None }),
            ..RigJob::new(counts, &tube, mm(cord))
        };
        if let Ok(rig) = rig(&job) {
            let (held, finished) = (rig.laid.cord_in_leg.get(), rig.shape.cord_in_leg().get());
            prop_assert!(held >= finished * (1.0 + 1e-12), "{} {}", held, finished);
            prop_assert!((held - finished - rig.laid.slack.get()).abs() < 1e-6);
        }
    }

    #[test]
    fn spacing_is_the_inverse_of_crimp(spacing in 0.01..1000.0_f64, cord in 0.1..20.0_f64) {
        let between = spacing * (1.0 + crimp::crimp(mm(spacing), mm(cord)));
        let back = crimp::spacing_holding(mm(between), mm(cord)).get();
        prop_assert!((back - spacing).abs() <= 1e-9 * spacing, "{} {}", spacing, back);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// What is offered can be rigged, for the cord that the offer says; and when nothing is
    /// offered there is a reason.
    #[test]
    fn fit_never_offers_what_rig_refuses(
        tube in any_tube(),
        diameter in 5.0..60.0_f64,
        cover in 5.0..80.0_f64,
        cord in 1.0..7.0_f64,
        length in 0.8..1.25_f64,
        give in 0.8..1.25_f64,
    ) {
        let wish = FitWish {
            tube: Some(&tube),
            corrections: Correction::new(length, give).unwrap().into(),
            interwoven_corrections: Correction::new(length, give).unwrap().into(),
            give: Give::HARD,
            ..FitWish::new(Object::new(mm(diameter), mm(cover)), mm(cord))
        };
        let answers = fit(&wish);
        for answer in &answers {
            let open_to = (!answer.shape.is_tight()).then_some(answer.shape.width);
            let job = RigJob {
                finish: Some(Finish { around: wish.object.ground, open_to }),
                give: wish.give,
                correction: wish.corrections.of(answer.counts.passes()),
                ..RigJob::new(answer.counts, &tube, wish.cord)
            };
            let rig = rig(&job);
            prop_assert!(rig.is_ok(), "{:?} {:?}", answer, rig);
            let rig = rig.unwrap();
            prop_assert!((rig.cord.to_cut().get() - answer.cord.get()).abs() < 1e-6);
            prop_assert!((rig.shape.width.get() - answer.shape.width.get()).abs() < 1e-9);
            prop_assert!(rig_is_finite(&rig));
        }
        prop_assert_eq!(answers.is_empty(), !why_nothing_fits(&wish).is_empty());
    }
}
