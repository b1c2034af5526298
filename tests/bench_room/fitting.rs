//! Which knots cover an object, and why none does.

use std::collections::HashSet;

use marlinspeak::bench::{
    DrawnUp, FAULT_STEP, FitFilter, FitSection, FitWish, Give, LEAST_ANGLE, LeastCover, Misfit,
    Object, Tube, TyingPace, WeaveChoice, WidthRange, fit, why_nothing_fits,
};
use marlinspeak::knot::{Knot, Laying, LayingOrder, Weave};

use crate::{counts, mm};

fn handle() -> FitWish<'static> {
    FitWish::new(Object::new(mm(30.0), mm(40.0)), mm(4.0))
}

/// The same with no interwoven knots beside the plain ones.
fn plain_handle() -> FitWish<'static> {
    FitWish {
        filter: FitFilter {
            nested: Some(1),
            ..FitFilter::default()
        },
        ..handle()
    }
}

#[test]
fn every_answer_reaches_the_length_within_its_range() {
    let wish = handle();
    let answers = fit(&wish);
    assert!(
        answers
            .iter()
            .any(|answer| answer.drawn_up() == DrawnUp::Tight)
    );
    assert!(
        answers
            .iter()
            .any(|answer| answer.drawn_up() == DrawnUp::Open)
    );
    for answer in &answers {
        let width = answer.shape.width;
        let miss = (width.get() - 40.0).abs();
        assert!(miss <= 2.0, "{answer:?}");
        assert!(answer.range.contains(width));
        // Only what cannot reach the length misses it.
        assert!(miss < 1e-9 || width == answer.range.tight || width == answer.range.widest);
    }
    let knots: HashSet<_> = answers.iter().map(|answer| answer.counts).collect();
    assert_eq!(knots.len(), answers.len(), "a knot is offered once");
    assert!(why_nothing_fits(&wish).is_empty());
}

/// All knots of the searched size, one by one.
#[test]
fn no_knot_that_answers_is_left_out() {
    for (object, cover, cord) in [(30.0, 40.0, 4.0), (75.0, 60.0, 4.0), (12.0, 20.0, 2.0)] {
        let wish = FitWish {
            filter: plain_handle().filter,
            ..FitWish::new(Object::new(mm(object), mm(cover)), mm(cord))
        };
        let found: HashSet<_> = fit(&wish).iter().map(|answer| answer.counts).collect();
        let mut expected = HashSet::new();
        for leads in 2..=60 {
            for bights in 2..=60 {
                for passes in 1..=4 {
                    let knot = counts(leads, bights, passes);
                    let braid = crate::braid(knot, cord, object);
                    let Ok(tight) = braid.tight() else { continue };
                    let Some(range) = WidthRange::of(&braid, LeastCover::default()) else {
                        continue;
                    };
                    let reach = range.nearest(mm(cover)).get() - cover;
                    if tight.angle >= LEAST_ANGLE && reach.abs() <= cord / 2.0 {
                        expected.insert(knot);
                    }
                }
            }
        }
        assert_eq!(found, expected);
    }
}

#[test]
fn better_answers_come_first_in_each_section() {
    let answers = fit(&handle());
    let step = |fault: f64| (fault / FAULT_STEP).floor();
    for pair in answers.windows(2) {
        let (one, next) = (&pair[0], &pair[1]);
        assert!(
            one.section != next.section
                || step(one.fault) < step(next.fault)
                || (step(one.fault) == step(next.fault) && one.cord <= next.cord)
        );
    }
    let fault = |leads, bights| {
        let wanted = counts(leads, bights, 2);
        let found = answers.iter().find(|answer| answer.counts == wanted);
        found.unwrap().fault
    };
    // More than one strand is a fault.
    assert!(fault(6, 5) + 0.1 < fault(6, 6).max(fault(5, 5)));
}

#[test]
fn a_filter_keeps_what_is_not_wanted_out_and_nothing_else() {
    let all = fit(&plain_handle());
    let filter = FitFilter {
        passes: Some(2),
        nested: Some(1),
        least_leads: 4,
        least_bights: 5,
        one_cord: true,
        most_legs: Some(28),
    };
    let wish = FitWish { filter, ..handle() };
    let some = fit(&wish);
    let is_wanted = |answer: &&marlinspeak::bench::FitAnswer| {
        let counts = answer.counts;
        counts.passes() == 2
            && counts.leads() >= 4
            && counts.bights() >= 5
            && counts.strands() == 1
            && counts.legs() <= 28
    };
    assert_eq!(some.len(), all.iter().filter(is_wanted).count());
    assert!(some.iter().all(|answer| is_wanted(&answer)) && !some.is_empty());
    let nothing = FitWish {
        filter: FitFilter {
            most_legs: Some(1),
            ..filter
        },
        ..handle()
    };
    assert!(fit(&nothing).is_empty());
    assert_eq!(
        why_nothing_fits(&nothing),
        [Misfit::FilteredOut { others: all.len() }]
    );
}

#[test]
fn more_must_be_hidden_when_more_is_asked_for() {
    let with = |least_cover| FitWish {
        least_cover,
        ..handle()
    };
    for answer in fit(&with(LeastCover::Share(0.85))) {
        assert!(answer.shape.cover >= 0.85 - 1e-6);
    }
    assert!(fit(&with(LeastCover::Share(0.999))).is_empty());
}

/// Each is told to the tyer as it is tied: counted crossing by crossing.
#[test]
fn the_weave_with_fewest_tucks_is_taken_and_its_tucks_are_told() {
    let laid = |answer: &marlinspeak::bench::FitAnswer, weave: Weave| {
        let counts = answer.counts;
        let knot = Knot::new(counts.leads(), counts.bights(), weave).unwrap();
        Laying::new(knot, counts.passes(), LayingOrder::default()).unwrap()
    };
    let answers = fit(&plain_handle());
    for answer in &answers {
        assert_eq!(laid(answer, answer.weave()).tucks(), answer.tucks);
        assert!(answer.tucks <= answer.other_tucks);
        let usual = laid(answer, Weave::default()).tucks();
        assert_eq!(
            if answer.is_twin {
                answer.other_tucks
            } else {
                answer.tucks
            },
            usual
        );
    }
    assert!(answers.iter().any(|answer| answer.is_twin));
    let kept = FitWish {
        weave: WeaveChoice::Run(1),
        ..plain_handle()
    };
    assert!(
        fit(&kept)
            .iter()
            .all(|answer| answer.weave() == Weave::Run(1))
    );
}

#[test]
fn over_two_is_offered_only_where_it_goes_round_evenly_and_draws_up_closer() {
    let wish = FitWish {
        weave: WeaveChoice::Run(2),
        give: Give::HARD,
        ..plain_handle()
    };
    let answers = fit(&wish);
    assert!(!answers.is_empty());
    for answer in answers {
        assert!((answer.counts.leads() - 1).is_multiple_of(2));
        assert_eq!(answer.weave(), Weave::Run(2));
        let plain = crate::hard(
            answer
                .counts
                .interlaced(marlinspeak::bench::Interlacing::PLAIN),
            4.0,
            30.0,
        );
        // Over one, under one, it is wider, if it goes round at all.
        assert!(
            plain
                .tight()
                .is_ok_and(|tight| tight.width > answer.range.tight)
                || plain.tight().is_err()
        );
    }
}

#[test]
fn only_bights_that_the_tube_takes_are_offered() {
    let tube = Tube::ringed(mm(40.0), &[12, 10]).unwrap();
    let wish = FitWish {
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
    let wish = FitWish {
        cord_at_hand: Some(mm(2000.0)),
        ..handle()
    };
    let some = fit(&wish);
    let enough = all.iter().filter(|answer| answer.cord.get() <= 2000.0);
    assert_eq!(some.len(), enough.count());
    assert!(!some.is_empty() && some.len() < all.len());
}

/// Each section stands for what its heading says, and comes once.
#[test]
fn knots_stand_in_the_section_that_is_true_of_them() {
    let tube = Tube::ringed(mm(30.0), &[14, 20]).unwrap();
    for (wish, sections) in [
        (handle(), 5),
        (
            FitWish {
                tube: Some(&tube),
                ..handle()
            },
            4,
        ),
    ] {
        let answers = fit(&wish);
        let mut met = Vec::new();
        for answer in &answers {
            let miss = (answer.shape.width.get() / 40.0 - 1.0).abs();
            let is_true = match answer.section {
                FitSection::Hampered => answer.is_hampered,
                FitSection::Near => miss > 0.005 && !answer.is_hampered,
                group => {
                    let passes = answer.counts.passes();
                    let is_of_it = match group {
                        FitSection::Single => passes == 1,
                        FitSection::Doubled => passes == 2,
                        FitSection::Tripled => passes == 3,
                        FitSection::Interwoven => answer.counts.nested() == 2,
                        _ => true,
                    };
                    is_of_it && miss <= 0.005 && !answer.is_hampered
                }
            };
            assert!(is_true, "{answer:?}");
            let is_interwoven = answer.counts.nested() > 1;
            assert_eq!(is_interwoven, answer.section == FitSection::Interwoven);
            if met.last() != Some(&answer.section) {
                assert!(!met.contains(&answer.section), "{met:?}");
                met.push(answer.section);
            }
        }
        assert!(met.len() >= sections, "{met:?}");
    }
}

/// Where simulated cord lies closer than the rule says, the answer says so: legs nearer to the axis than
/// 60° when the knot is tight.
#[test]
fn knots_of_which_the_rule_is_less_sure_are_marked() {
    let answers = fit(&plain_handle());
    let mut marked = 0;
    for answer in &answers {
        let tight = crate::braid(answer.counts, 4.0, 30.0).tight().unwrap();
        assert_eq!(answer.shape.is_borne_out, tight.angle_degrees() >= 60.0);
        marked += usize::from(!answer.shape.is_borne_out);
    }
    assert!(marked > 0 && marked < answers.len(), "{marked}");
    let over_two = FitWish {
        weave: WeaveChoice::Run(2),
        ..handle()
    };
    let doubled = fit(&over_two);
    let doubled = doubled.iter().find(|answer| answer.counts.passes() == 2);
    assert!(!doubled.unwrap().shape.is_borne_out);
}

#[test]
fn the_time_follows_the_pace_the_legs_and_the_tucks() {
    let wish = FitWish {
        pace: TyingPace::new(150.0).unwrap().with_whole(2.0),
        ..handle()
    };
    let answers = fit(&wish);
    for answer in &answers {
        // A leg with 1¼ tucks takes 150 seconds: a step of the work 66⅔.
        let steps = f64::from(answer.counts.legs() + answer.tucks);
        let minutes = 2.0 * steps * 150.0 / 2.25 / 60.0;
        assert!((answer.minutes - minutes).abs() < 1e-9);
    }
    // As many legs, but more tucks: it takes longer.
    let longer = answers.iter().any(|one| {
        let other = answers
            .iter()
            .find(|other| other.counts.legs() == one.counts.legs() && other.tucks > 2 * one.tucks);
        other.is_some_and(|other| other.minutes > 1.4 * one.minutes)
    });
    assert!(longer);
    // Timed on legs without tucks, the same seconds are a slower hand.
    let bare = TyingPace::new(150.0).unwrap().with_tucks(0.0);
    assert!((bare.laying_minutes(4, 6) - 25.0).abs() < 1e-9);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(TyingPace::new(bad).is_err());
    }
}

#[test]
fn a_cord_thicker_than_the_object_fits_nothing() {
    let wish = FitWish::new(Object::new(mm(5.0), mm(30.0)), mm(6.0));
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
    let short = FitWish::new(Object::new(mm(300.0), mm(8.0)), mm(6.0));
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
    assert!(!fit(&FitWish::new(short.object, thinner)).is_empty());

    let long = FitWish::new(Object::new(mm(30.0), mm(2000.0)), mm(1.0));
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
    assert!(!fit(&FitWish::new(long.object, thicker)).is_empty());
}

#[test]
fn a_tube_that_takes_no_fitting_bights_is_named() {
    let tube = Tube::ringed(mm(40.0), &[59]).unwrap();
    let wish = FitWish {
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
    let tube = Tube::ringed(mm(4.0), &[9]).unwrap();
    let wish = FitWish {
        tube: Some(&tube),
        ..handle()
    };
    assert!(fit(&wish).is_empty());
    let reasons = why_nothing_fits(&wish);
    let [Misfit::TubeTooThin { would_do, .. }] = reasons[..] else {
        panic!("{reasons:?}");
    };
    let wider = Tube::ringed(would_do, &[9]).unwrap();
    let wish = FitWish {
        tube: Some(&wider),
        ..handle()
    };
    assert!(!fit(&wish).is_empty());
}

#[test]
fn too_little_cord_is_told_how_much_would_do() {
    let wish = FitWish {
        cord_at_hand: Some(mm(500.0)),
        ..handle()
    };
    assert!(fit(&wish).is_empty());
    let [Misfit::NotEnoughCord { at_hand, least }] = why_nothing_fits(&wish)[..] else {
        panic!("{:?}", why_nothing_fits(&wish));
    };
    assert_eq!(at_hand, mm(500.0));
    let wish = FitWish {
        cord_at_hand: Some(least),
        ..handle()
    };
    assert!(!fit(&wish).is_empty());
}
