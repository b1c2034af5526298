//! Which knots cover an object, and why none does.

use marlinspeak::bench::{Misfit, Object, Pace, Tube, Wish, crimp, fit, why_nothing_fits};

use crate::{counts, mm};

fn handle() -> Wish<'static> {
    Wish::new(Object::new(mm(30.0), mm(30.0)), mm(4.0))
}

#[test]
fn a_handle_is_offered_the_five_lead_six_bight_doubled_among_the_first() {
    let answers = fit(&handle());
    let place = answers
        .iter()
        .position(|answer| answer.counts == counts(5, 6, 2))
        .unwrap();
    assert!(place < 5, "{place}");
    let answer = &answers[place];
    assert!(answer.shape.faired && (answer.shape.width.get() - 29.8).abs() < 0.05);
    assert_eq!(answer.hours, None);
    assert!(why_nothing_fits(&handle()).is_empty());
}

#[test]
fn every_answer_has_the_width_and_the_cover_wished_for() {
    let wish = handle();
    let answers = fit(&wish);
    assert!(answers.iter().any(|answer| answer.shape.faired));
    assert!(answers.iter().any(|answer| !answer.shape.faired));
    for answer in &answers {
        let miss = (answer.shape.width.get() - 30.0).abs();
        let allowed = if answer.shape.faired { 2.0 } else { 1e-9 };
        assert!(miss <= allowed, "{answer:?}");
        assert!(answer.shape.cover >= 0.75);
    }
    let knots: std::collections::HashSet<_> = answers.iter().map(|answer| answer.counts).collect();
    assert_eq!(knots.len(), answers.len(), "a knot is offered once");
}

/// All knots of the searched size, one by one, from the geometry alone.
#[test]
fn no_knot_that_answers_is_left_out() {
    let wish = handle();
    let answers = fit(&wish);
    let mut expected = 0;
    for leads in 2..=60 {
        for bights in 2..=60 {
            for passes in 1..=4 {
                let round = std::f64::consts::PI * 38.0;
                let cosine = f64::from(bights * passes) * 4.0 / round;
                // Legs less than 20° from the axis do not make a knot.
                if cosine > 20.0_f64.to_radians().cos() {
                    continue;
                }
                let band = f64::from(passes) * 4.0;
                let rise = f64::from(leads) * band / (2.0 * (1.0 - cosine * cosine).sqrt());
                let run = f64::from(leads) * round / f64::from(2 * bights);
                let open = 30.0 - band;
                let fill = cosine / (open / open.hypot(run));
                let fits = (rise + band - 30.0).abs() <= 2.0
                    || (rise < open && open.atan2(run) <= 70.0_f64.to_radians() && fill >= 0.5);
                expected += usize::from(fits);
            }
        }
    }
    assert_eq!(answers.len(), expected);
}

#[test]
fn better_answers_come_first() {
    let answers = fit(&handle());
    let step = |fault: f64| (fault / 0.02).floor();
    for pair in answers.windows(2) {
        let (one, next) = (&pair[0], &pair[1]);
        assert!(
            step(one.fault) < step(next.fault)
                || (step(one.fault) == step(next.fault) && one.cord <= next.cord)
        );
    }
    // The faults of these two differ by their strands alone, or nearly.
    let fault = |leads, bights| {
        let wanted = counts(leads, bights, 2);
        let found = answers.iter().find(|answer| answer.counts == wanted);
        found.unwrap().fault
    };
    assert!(fault(5, 6) + 0.15 < fault(5, 5));
    let crowded = answers
        .iter()
        .position(|answer| answer.shape.spacing.get() < 0.7 * crimp::jammed_spacing(mm(4.0)).get());
    assert!(crowded.unwrap() > 10);
}

#[test]
fn only_bights_that_the_tube_takes_are_offered() {
    let tube = Tube::ringed(mm(40.0), &[12, 10]).unwrap();
    let wish = Wish {
        tube: Some(&tube),
        ..handle()
    };
    let answers = fit(&wish);
    assert!(answers.iter().any(|answer| answer.counts.bights() == 6));
    for answer in answers {
        assert!([2, 3, 4, 5, 6, 10, 12].contains(&answer.counts.bights()));
    }
}

#[test]
fn only_knots_that_the_cord_is_enough_for_are_offered() {
    let all = fit(&handle());
    let wish = Wish {
        cord_at_hand: Some(mm(1500.0)),
        ..handle()
    };
    let some = fit(&wish);
    let enough = all.iter().filter(|answer| answer.cord.get() <= 1500.0);
    assert_eq!(some.len(), enough.count());
    assert!(!some.is_empty() && some.len() < all.len());
}

#[test]
fn hours_follow_the_pace() {
    let wish = Wish {
        pace: Some(Pace::new(150.0).unwrap()),
        ..handle()
    };
    let answers = fit(&wish);
    let answer = answers
        .iter()
        .find(|answer| answer.counts == counts(5, 6, 2))
        .unwrap();
    assert_eq!(answer.hours, Some(1.0));
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(Pace::new(bad).is_err());
    }
}

#[test]
fn a_cord_thicker_than_the_object_fits_nothing() {
    let wish = Wish::new(Object::new(mm(5.0), mm(30.0)), mm(6.0));
    assert!(fit(&wish).is_empty());
    assert_eq!(
        why_nothing_fits(&wish),
        [Misfit::CordThickerThanObject {
            cord: mm(6.0),
            object: mm(5.0)
        }]
    );
}

#[test]
fn a_band_too_narrow_wants_a_thinner_cord_and_a_long_one_a_thicker() {
    let short = Wish::new(Object::new(mm(300.0), mm(8.0)), mm(6.0));
    assert!(fit(&short).is_empty());
    let [
        Misfit::CoverTooShort {
            narrowest,
            thinner_cord: Some(thinner),
            ..
        },
    ] = why_nothing_fits(&short)[..]
    else {
        panic!("{:?}", why_nothing_fits(&short));
    };
    assert!(narrowest > mm(8.0) && thinner < mm(6.0));
    assert!(!fit(&Wish::new(short.object, thinner)).is_empty());

    let long = Wish::new(Object::new(mm(30.0), mm(2000.0)), mm(1.0));
    assert!(fit(&long).is_empty());
    let [
        Misfit::CoverTooLong {
            thicker_cord: Some(thicker),
            ..
        },
    ] = why_nothing_fits(&long)[..]
    else {
        panic!("{:?}", why_nothing_fits(&long));
    };
    assert!(thicker > mm(1.0));
    assert!(!fit(&Wish::new(long.object, thicker)).is_empty());
}

#[test]
fn a_tube_that_takes_no_fitting_bights_is_named() {
    let tube = Tube::ringed(mm(40.0), &[59]).unwrap();
    let wish = Wish {
        tube: Some(&tube),
        ..handle()
    };
    assert!(fit(&wish).is_empty());
    let reasons = why_nothing_fits(&wish);
    let [
        Misfit::NoRowDivides {
            would_fit,
            can_take,
        },
    ] = &reasons[..]
    else {
        panic!("{reasons:?}");
    };
    assert_eq!(can_take, &[59]);
    assert!(would_fit.contains(&6) && !would_fit.contains(&59));
    assert!(would_fit.is_sorted());
}

#[test]
fn a_tube_too_thin_is_named_with_one_that_would_do() {
    let tube = Tube::ringed(mm(4.0), &[23]).unwrap();
    let wish = Wish {
        tube: Some(&tube),
        ..handle()
    };
    assert!(fit(&wish).is_empty());
    let reasons = why_nothing_fits(&wish);
    let [Misfit::TubeTooThin { would_do, .. }] = reasons[..] else {
        panic!("{reasons:?}");
    };
    let wider = Tube::ringed(would_do, &[23]).unwrap();
    let wish = Wish {
        tube: Some(&wider),
        ..handle()
    };
    assert!(!fit(&wish).is_empty());
}

#[test]
fn too_little_cord_is_told_how_much_would_do() {
    let wish = Wish {
        cord_at_hand: Some(mm(500.0)),
        ..handle()
    };
    assert!(fit(&wish).is_empty());
    let [Misfit::NotEnoughCord { at_hand, least }] = why_nothing_fits(&wish)[..] else {
        panic!("{:?}", why_nothing_fits(&wish));
    };
    assert_eq!(at_hand, mm(500.0));
    let wish = Wish {
        cord_at_hand: Some(least),
        ..handle()
    };
    assert!(!fit(&wish).is_empty());
}
