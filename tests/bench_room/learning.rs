//! What measured ties teach.

use marlinspeak::bench::{
    Braid, Give, Interlacing, Sample, Scatter, TieKind, give_of_width, learnt, shared,
};
use marlinspeak::knot::Weave;

use crate::{braid, counts, mm};

fn kind(passes: u16) -> TieKind {
    counts(5, 6, passes).into()
}

fn sample(passes: u16, factor: f64) -> Sample {
    Sample {
        kind: kind(passes),
        factor,
        weight: 1.0,
    }
}

/// Bayes' rule for cords that scatter by 10 % and measures that scatter by 5 %: a quarter of a
/// measure that came out as computed.
#[test]
fn one_measure_counts_four_fifths_and_five_count_ninety_five_hundredths() {
    let once = learnt(&[sample(2, 1.3)], kind(2), Scatter::LENGTH);
    assert!((once.ln() / 1.3_f64.ln() - 0.8).abs() < 1e-9);
    let often = learnt(&[sample(2, 1.3); 5], kind(2), Scatter::LENGTH);
    assert!((often.ln() / 1.3_f64.ln() - 5.0 / 5.25).abs() < 1e-9);
    assert_eq!(learnt(&[], kind(2), Scatter::LENGTH), 1.0);
}

#[test]
fn a_kind_of_ties_teaches_no_other_until_a_second_agrees() {
    let single = [sample(1, 1.2); 3];
    assert_eq!(learnt(&single, kind(2), Scatter::LENGTH), 1.0);
    assert_eq!(shared(&single, Scatter::LENGTH), 0.0);
    let agreed = [&single[..], &[sample(2, 1.2)]].concat();
    assert_eq!(shared(&agreed, Scatter::LENGTH), 1.0);
    assert!(learnt(&agreed, kind(3), Scatter::LENGTH) > 1.17);
    // A doubled one measured once is held up by the singles that agree with it.
    let alone = learnt(&[sample(2, 1.2)], kind(2), Scatter::LENGTH);
    assert!(learnt(&agreed, kind(2), Scatter::LENGTH) > alone);
    let at_odds = [&single[..], &[sample(2, 0.9); 3]].concat();
    assert!(shared(&at_odds, Scatter::LENGTH) < 0.05);
    assert!((learnt(&at_odds, kind(3), Scatter::LENGTH) - 1.0).abs() < 0.01);
    assert!(learnt(&at_odds, kind(2), Scatter::LENGTH) < 0.93);
}

#[test]
fn a_weave_of_longer_runs_is_another_kind() {
    let over_two = counts(5, 6, 1).interlaced(Interlacing::of(&Weave::Run(2), 4));
    assert_ne!(TieKind::from(over_two), kind(1));
    assert_eq!(
        learnt(&[sample(1, 1.2)], over_two.into(), Scatter::GIVE),
        1.0
    );
}

#[test]
fn how_closely_a_cord_lies_is_found_from_a_width() {
    for knot in [
        counts(3, 4, 1),
        counts(5, 6, 2),
        counts(3, 5, 3),
        counts(17, 4, 1),
    ] {
        for hidden in [0.9, 1.3, 1.62, 1.89, 2.2] {
            let as_tied = Braid {
                give: Give::new(hidden).unwrap(),
                ..braid(knot, 4.0, 40.0)
            };
            let width = as_tied.tight().unwrap().width;
            let (found, tells) = give_of_width(&braid(knot, 4.0, 40.0), width).unwrap();
            assert!((found.get() - hidden).abs() < 1e-6, "{found:?} {hidden}");
            // By so much the width changes with `k`, measured another way.
            let more = Braid {
                give: Give::new(hidden * 1.001).unwrap(),
                ..as_tied
            };
            let change = more.tight().unwrap().width.get() / width.get();
            assert!(
                (change.ln() / 1.001_f64.ln() - tells).abs() < 0.01,
                "{tells}"
            );
        }
    }
    // No cord comes to these.
    for width in [5.0, 400.0] {
        assert_eq!(
            give_of_width(&braid(counts(5, 6, 2), 4.0, 30.0), mm(width)),
            None
        );
    }
}
