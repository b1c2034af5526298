//! What a good master would offer.

use std::f64::consts::PI;

use marlinspeak::bench::{
    FitAnswer, FitGroup, FitWish, Give, Millimetres, Object, RigCaution, RigJob, Thread, Tube, fit,
    pin_gap, rig,
};

use crate::mm;

/// Works of the loft: object, length, cord, and what such a person would tie there, as leads, bights
/// and passes. *Common practice, no source.*
#[expect(clippy::type_complexity, reason = "a table")]
const WORKS: [(&str, [f64; 3], &[[u16; 3]]); 5] = [
    (
        "stick",
        [30.0, 68.0, 4.0],
        &[[17, 4, 1], [19, 4, 1], [19, 5, 1], [20, 3, 1], [18, 5, 1]],
    ),
    (
        "fob",
        [12.0, 20.0, 2.0],
        &[[6, 5, 2], [5, 6, 2], [4, 3, 3], [3, 5, 3], [5, 4, 2]],
    ),
    (
        "bottle",
        [75.0, 50.0, 4.0],
        &[[8, 11, 2], [8, 9, 2], [9, 10, 2], [9, 11, 2], [5, 9, 3]],
    ),
    (
        "tiller",
        [20.0, 40.0, 4.0],
        &[[5, 6, 2], [5, 4, 2], [4, 3, 3], [3, 4, 3], [6, 5, 2]],
    ),
    (
        "rail",
        [28.0, 40.0, 4.0],
        &[[6, 5, 2], [5, 7, 2], [5, 6, 2], [3, 5, 3], [4, 5, 3]],
    ),
];

fn wish([object, cover, cord]: [f64; 3]) -> FitWish<'static> {
    FitWish::new(Object::new(mm(object), mm(cover)), mm(cord))
}

fn named(answer: &FitAnswer) -> [u16; 3] {
    let counts = answer.counts;
    [counts.leads(), counts.bights(), counts.passes()]
}

#[test]
fn the_first_five_hold_what_such_a_person_would_tie() {
    for (work, measures, would_tie) in WORKS {
        let answers = fit(&wish(measures));
        let first: Vec<_> = answers.iter().take(5).collect();
        let knots: Vec<_> = first.iter().map(|answer| named(answer)).collect();
        assert!(
            knots.iter().any(|knot| would_tie.contains(knot)),
            "{work}: {knots:?}"
        );
        // A choice between kinds of work, and nothing odd among it.
        for group in [FitGroup::Single, FitGroup::Doubled, FitGroup::Tripled] {
            assert!(
                first.iter().any(|answer| answer.group() == group),
                "{work}: {knots:?}"
            );
        }
        for answer in first {
            let counts = answer.counts;
            assert!(
                counts.leads() >= 3 && counts.bights() >= 3,
                "{work}: {knots:?}"
            );
            assert_eq!(counts.strands(), 1, "{work}: {knots:?}");
            assert!(answer.shape.cover > 0.75, "{work}: {answer:?}");
        }
    }
}

/// Of hard cord, 17 leads and 4 bights are 67.6 mm wide: the long single of a stick.
#[test]
fn a_stick_of_hard_cord_is_offered_the_long_single() {
    let hard = FitWish {
        give: Give::HARD,
        ..wish([30.0, 68.0, 4.0])
    };
    let answers = fit(&hard);
    let place = answers
        .iter()
        .position(|answer| named(answer) == [17, 4, 1]);
    assert!(place.unwrap() < 5, "{place:?}");
}

#[test]
fn twists_of_two_leads_and_bights_of_two_come_late() {
    for (work, measures, _) in WORKS {
        let answers = fit(&wish(measures));
        let odd = answers
            .iter()
            .position(|answer| answer.counts.leads() == 2 || answer.counts.bights() == 2);
        assert!(odd.is_none_or(|place| place >= 20), "{work}: {odd:?}");
    }
}

/// Numbers between 0 and 1, the same in every run: a linear congruential generator with the
/// multiplier and increment of D. E. Knuth's MMIX (from memory).
struct Dice(u64);

impl Dice {
    fn between(&mut self, least: f64, most: f64) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        let share = f64::from(u32::try_from(self.0 >> 32).unwrap()) / f64::from(u32::MAX);
        least + share * (most - least)
    }

    fn one_of<T: Copy>(&mut self, choices: &[T]) -> T {
        let most = f64::from(u32::try_from(choices.len()).unwrap()) - 1e-9;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a count"
        )]
        let nth = self.between(0.0, most) as usize;
        choices[nth]
    }
}

/// On 500 objects, cords and tubes nothing is offered whose cords do not pass between the pins, whose
/// last pass has no room to tuck, whose rings do not stand on the tube; and what the tube hampers is
/// never offered before what it does not.
#[test]
fn nothing_is_offered_that_the_tube_cannot_do() {
    let mut dice = Dice(15);
    let (mut offered, mut hampered) = (0, 0);
    for nth in 0..500 {
        let cord = dice.between(1.5, 6.0);
        let object = dice.between(10.0, 80.0).max(2.0 * cord);
        let cover = dice.between(0.5, 3.0) * object;
        let diameter = object * dice.between(0.6, 2.0);
        let rows: &[&[u16]] = &[&[10], &[12, 14], &[9], &[16, 20], &[24]];
        let mut tube = match nth % 4 {
            0 => Tube::plain(mm(diameter)),
            _ => Tube::ringed(mm(diameter), dice.one_of(rows)).unwrap(),
        };
        if nth % 3 == 0 {
            let thread = dice.one_of(&["M3", "#6", "M5"]);
            tube.thread = Some(Thread::parse(thread).unwrap());
        }
        if nth % 5 == 0 {
            tube.length = Some(mm(dice.between(1.0, 4.0) * cover));
            tube = tube.with_ring_width(Some(mm(dice.between(5.0, 30.0))));
        }
        let wish = FitWish {
            tube: Some(&tube),
            give: dice.one_of(&[Give::HARD, Give::SOFT, Give::FLAT]),
            ..wish([object, cover, cord])
        };
        let answers = fit(&wish);
        for answer in &answers {
            let counts = answer.counts;
            let (bights, passes) = (f64::from(counts.bights()), f64::from(counts.passes()));
            assert!(pin_gap(&tube, counts.bights()).get() >= passes * cord * (1.0 - 1e-6));
            let job = RigJob {
                give: wish.give,
                finish: Some(marlinspeak::bench::Finish {
                    around: mm(object).into(),
                    open_to: (!answer.shape.is_tight()).then_some(answer.shape.width),
                }),
                ..RigJob::new(counts, &tube, mm(cord))
            };
            let rig = rig(&job).unwrap();
            let spacing = rig.laid.ring_spacing.get();
            let run = f64::from(counts.leads()) * PI * diameter / (2.0 * bights);
            let apart = PI * diameter * run.atan2(spacing).cos() / bights;
            assert!(apart >= (passes + 1.0) * cord * (1.0 - 1e-6), "{answer:?}");
            let rings = tube.ring_width().map_or(0.0, Millimetres::get);
            assert!(spacing >= rings);
            assert!(
                tube.length
                    .is_none_or(|length| length.get() >= spacing + rings)
            );
            let is_told = rig.cautions.iter().any(|caution| {
                matches!(
                    caution,
                    RigCaution::PinsClose { .. }
                        | RigCaution::TubeTooThick { .. }
                        | RigCaution::RingsTooWide { .. }
                )
            });
            assert_eq!(answer.is_hampered, is_told, "{answer:?} {:?}", rig.cautions);
            offered += 1;
            hampered += usize::from(is_told);
        }
        assert!(answers.is_sorted_by_key(|answer| answer.is_hampered));
    }
    assert!(offered > 5_000 && hampered > 500, "{offered} {hampered}");
}
