//! What is offered for a taper, a ball, a mat and in place, as a tyer would expect it.

use marlinspeak::bench::{
    Braid, Counts, Finish, FitAnswer, FitSection, FitWish, Ground, LEAST_ANGLE, LeastCover, Misfit,
    Object, RigCaution, RigError, RigJob, ShapeError, Tube, fit, rig, why_nothing_fits,
};
use proptest::prelude::*;

use crate::mm;

fn wish(ground: Ground, cover: f64, cord: f64) -> FitWish<'static> {
    FitWish::new(Object::new(ground, mm(cover)), mm(cord))
}

fn taper(bottom: f64, top: f64, over: f64) -> Ground {
    let [bottom, top, over] = [bottom, top, over].map(mm);
    Ground::Taper { bottom, top, over }
}

fn mat(outer: f64, hole: Option<f64>) -> Ground {
    Ground::Flat {
        outer: mm(outer),
        hole: hole.map(mm),
    }
}

fn plain(answers: &[FitAnswer]) -> impl Iterator<Item = &FitAnswer> {
    answers.iter().filter(|answer| answer.counts.nested() == 1)
}

/// *Common practice* agrees that bights one more or one less than leads make a ball.
#[test]
fn a_ball_is_covered_by_nearly_as_many_leads_as_bights() {
    for (ball, cord) in [(38.0, 3.0), (25.0, 2.0), (60.0, 4.0)] {
        let answers = fit(&wish(Ground::Ball(mm(ball)), 50.0, cord));
        let apart = |answer: &FitAnswer| answer.counts.leads().abs_diff(answer.counts.bights());
        assert_eq!(apart(&answers[0]), 1, "{:?}", answers[0]);
        let first: Vec<u16> = answers.iter().take(4).map(apart).collect();
        assert!(
            first.iter().all(|apart| (1..=2).contains(apart)),
            "{first:?}"
        );
        for answer in &answers {
            assert!(answer.reaches(mm(1.0)) && answer.section != FitSection::Near);
            assert!(
                answer.shape.width == answer.range.widest,
                "all reach for the poles"
            );
            // The bights close in on the poles as far as they go.
            let braid = Braid::new(answer.counts, mm(cord), Ground::Ball(mm(ball)));
            assert!(braid.opened(mm(answer.shape.width.get() * 1.01)).is_err());
        }
        assert!(
            answers
                .iter()
                .any(|answer| answer.section == FitSection::Interwoven)
        );
    }
}

#[test]
fn a_mat_comes_out_as_it_is_wished_for() {
    for hole in [None, Some(50.0)] {
        let answers = fit(&wish(mat(160.0, hole), 80.0, 5.0));
        // The best has no great hole unless it is to have one.
        assert!(hole.is_some() || answers[0].shape.bare < Some(mm(50.0)));
        assert!(!answers.is_empty());
        for answer in &answers {
            assert!((answer.shape.outer_edge().get() - 160.0).abs() < 1e-6);
            let bare = answer.shape.bare.unwrap().get();
            match hole {
                // Half a cord's thickness either side.
                Some(hole) => assert!((hole - 1e-6..=hole + 5.0).contains(&bare), "{bare}"),
                None => assert!(bare < 90.0, "{bare}"),
            }
        }
    }
}

#[test]
fn a_taper_is_covered_as_its_middle_is() {
    let on_taper = fit(&wish(taper(34.0, 26.0, 60.0), 60.0, 4.0));
    let on_round = fit(&wish(mm(30.0).into(), 60.0, 4.0));
    assert!(
        on_taper
            .iter()
            .all(|answer| (answer.shape.width.get() - 60.0).abs() <= 2.0)
    );
    let counts = |answers: &[FitAnswer]| -> Vec<_> { plain(answers).map(|a| a.counts).collect() };
    // What is best of a round thing as thick as its middle is good on a taper too.
    let (tapered, round) = (counts(&on_taper), counts(&on_round));
    assert!(tapered.contains(&round[0]) && round.contains(&tapered[0]));
    // With equal ends it is the same question.
    let even = fit(&wish(taper(30.0, 30.0, 60.0), 60.0, 4.0));
    assert_eq!(even, on_round);
}

#[test]
fn in_place_only_what_leaves_room_is_offered() {
    let slid = wish(mm(30.0).into(), 60.0, 4.0);
    let in_place = FitWish {
        in_place: true,
        ..slid.clone()
    };
    let (slid, placed) = (fit(&slid), fit(&in_place));
    assert!(!placed.is_empty() && placed.len() < slid.len());
    assert!(placed.iter().all(|answer| !answer.is_hampered));
    let most = |answers: &[FitAnswer]| {
        let doubled = plain(answers).filter(|answer| answer.counts.passes() == 2);
        doubled.map(|answer| answer.counts.bights()).max()
    };
    // π · 30 · cos 20° / 12 = 7.4, and π · 38 / 10.48 = 11.4.
    assert_eq!(most(&placed), Some(7));
    assert!(most(&slid) > most(&placed));
}

/// Tied on the ball itself neighbouring bands of a single lie two cords apart (room to tuck one between),
/// drawn up 1.65: what lies from pole to pole drawn up does not lie there with room. Leads and bights that
/// do, by the law of the ball at two cords, are offered where they hide enough.
#[test]
fn a_small_ball_takes_singles_in_place_as_far_as_there_is_room() {
    for (ball, cord) in [(38.0, 4.0), (38.0, 3.0), (30.0, 3.0), (50.0, 5.0)] {
        let slid = wish(Ground::Ball(mm(ball)), 10.0, cord);
        let in_place = FitWish {
            in_place: true,
            ..slid.clone()
        };
        let placed = fit(&in_place);
        let singles: Vec<&FitAnswer> = plain(&placed)
            .filter(|answer| answer.counts.passes() == 1)
            .collect();
        assert!(!singles.is_empty(), "{ball} {cord}");
        let most = std::f64::consts::PI * (ball + 2.0 * cord) / (2.0 * cord);
        for answer in &singles {
            let both = f64::from(answer.counts.leads() + answer.counts.bights());
            assert!(both <= most + 1.0, "{ball} {cord}: {both} of {most}");
            // They come near the poles, and hide nine tenths of what they hide drawn up tight.
            let bare = answer.shape.bare.unwrap().get();
            assert!(bare <= 0.55 * (ball + 2.0 * cord), "{ball} {cord}: {bare}");
        }
        // As near to it as they come: the largest of them would not have one more lead.
        let largest = singles
            .iter()
            .map(|answer| answer.counts.leads() + answer.counts.bights())
            .max();
        assert!(
            f64::from(largest.unwrap()) > most - 3.0,
            "{ball} {cord}: {largest:?} of {most}"
        );
    }
}

#[test]
fn when_nothing_lies_there_a_cord_is_named_that_does() {
    // A ring of 10 mm is too narrow for line of 6 mm.
    let crowded = wish(mat(60.0, Some(40.0)), 10.0, 6.0);
    assert!(fit(&crowded).is_empty());
    let why = why_nothing_fits(&crowded);
    let [
        Misfit::NoneLies {
            thinner_cord: Some(cord),
            ..
        },
    ] = why[..]
    else {
        panic!("{why:?}");
    };
    assert!(cord < mm(6.0));
    let thinner = wish(crowded.object.ground, 10.0, cord.get());
    assert!(!fit(&thinner).is_empty());

    let huge = wish(mat(3000.0, None), 1500.0, 2.0);
    let why = why_nothing_fits(&huge);
    let [
        Misfit::NoneLies {
            thicker_cord: Some(cord),
            ..
        },
    ] = why[..]
    else {
        panic!("{why:?}");
    };
    assert!(
        !fit(&FitWish {
            cord,
            ..wish(huge.object.ground, 1500.0, 2.0)
        })
        .is_empty()
    );

    let tight = FitWish {
        in_place: true,
        least_cover: LeastCover::Share(0.9),
        ..wish(mm(20.0).into(), 30.0, 9.0)
    };
    let why = why_nothing_fits(&tight);
    assert!(
        matches!(
            why[..],
            [Misfit::NoRoomInPlace { .. }
                | Misfit::CoverTooShort { .. }
                | Misfit::CoverTooLong { .. }]
        ),
        "{why:?}"
    );
}

fn any_ground() -> impl Strategy<Value = Ground> {
    prop_oneof![
        (10.0..60.0_f64).prop_map(|round| mm(round).into()),
        (10.0..60.0_f64, 10.0..60.0_f64, 40.0..120.0_f64)
            .prop_map(|(bottom, top, over)| taper(bottom, top, over)),
        (15.0..70.0_f64).prop_map(|ball| Ground::Ball(mm(ball))),
        (80.0..250.0_f64, prop::option::of(0.2..0.6_f64))
            .prop_map(|(outer, hole)| mat(outer, hole.map(|share| share * outer))),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// On every ground what is offered can be rigged, for the cord that the offer says; and when nothing
    /// is offered there is a reason.
    #[test]
    fn fit_never_offers_what_rig_refuses_on_any_ground(
        ground in any_ground(),
        cover in 15.0..80.0_f64,
        cord in 2.0..7.0_f64,
        in_place in any::<bool>(),
    ) {
        let tube = Tube::plain(ground.thickest());
        let wish = FitWish {
            in_place,
            tube: (!in_place).then_some(&tube),
            ..wish(ground, cover, cord)
        };
        let answers = fit(&wish);
        for answer in &answers {
            let open_to = (!answer.shape.is_tight()).then_some(answer.shape.width);
            let job = RigJob {
                finish: Some(Finish { around: ground, open_to }),
                in_place,
                ..RigJob::new(answer.counts, &tube, mm(cord))
            };
            let rig = rig(&job);
            prop_assert!(rig.is_ok(), "{:?} {:?}", answer, rig);
            let rig = rig.unwrap();
            prop_assert!((rig.cord.to_cut().get() - answer.cord.get()).abs() < 1e-3 * answer.cord.get());
            prop_assert!((rig.shape.width.get() - answer.shape.width.get()).abs() < 1e-3);
        }
        prop_assert_eq!(answers.is_empty(), !why_nothing_fits(&wish).is_empty());
    }
}

/// On a ball hardly thicker than the cord nothing is offered, and it is said what would do: with so much
/// something lies.
#[test]
fn a_cord_nearly_as_thick_as_the_ball_is_refused() {
    for (ball, cord) in [(4.0, 4.0), (5.0, 4.0), (6.9, 4.0)] {
        let refused = wish(Ground::Ball(mm(ball)), 10.0, cord);
        assert!(fit(&refused).is_empty(), "{ball}");
        let why = why_nothing_fits(&refused);
        let [
            Misfit::Refused(ShapeError::BallTooSmall {
                cord_to, ball_from, ..
            }),
        ] = why[..]
        else {
            panic!("{ball}: {why:?}");
        };
        // The smallest ball on which simulated cord was seen to lie: 4 mm on 7 mm.
        assert!((ball_from.get() - 7.0).abs() < 1e-9);
        for (ball, cord) in [(mm(ball), cord_to), (ball_from, mm(cord))] {
            let smallest = Braid::new(Counts::new(4, 3, 1).unwrap(), cord, Ground::Ball(ball));
            assert!(!matches!(
                smallest.tight(),
                Err(ShapeError::BallTooSmall { .. })
            ));
        }
        let any = Braid::new(
            Counts::new(4, 3, 1).unwrap(),
            mm(cord),
            Ground::Ball(mm(ball)),
        );
        assert!(matches!(any.tight(), Err(ShapeError::BallTooSmall { .. })));
    }
}

/// A taper that loses as much as it is long is no matter of covering less.
#[test]
fn a_taper_too_steep_is_told_to_be_longer() {
    let over = mm(90.0);
    let steep = wish(taper(300.0, 26.0, 90.0), 90.0, 3.0);
    let least = mm(137.0);
    let too_short = ShapeError::TaperTooShort { over, least };
    assert_eq!(why_nothing_fits(&steep), [Misfit::Refused(too_short)]);
    for bottom in (30..260_u16).step_by(10).map(f64::from) {
        let wish = wish(taper(bottom, 26.0, 60.0), 60.0, 3.0);
        let why = why_nothing_fits(&wish);
        let covers_less = matches!(
            why[..],
            [Misfit::CoverTooLong {
                thicker_cord: None,
                ..
            }]
        );
        assert!(!covers_less, "{bottom}: {why:?}");
    }
}

/// A tube thinner than the thick end is no better: the knot would not go over that.
#[test]
fn no_thinner_tube_than_the_thick_end_is_advised() {
    let mut advised = 0;
    for (bottom, top) in [(32.0, 20.0), (20.0, 32.0), (40.0, 24.0)] {
        for across in [50.0, 60.0, 80.0] {
            for (leads, bights) in [(5, 7), (7, 5), (5, 4)] {
                let tube = Tube::plain(mm(across));
                let counts = Counts::new(leads, bights, 1).unwrap();
                let job = RigJob {
                    finish: Some(Finish {
                        around: taper(bottom, top, 200.0),
                        open_to: None,
                    }),
                    ..RigJob::new(counts, &tube, mm(3.0))
                };
                let Ok(rigged) = rig(&job) else { continue };
                for caution in rigged.cautions {
                    if let RigCaution::TubeTooThick {
                        better: Some(better),
                        ..
                    } = caution
                    {
                        assert!(
                            better.get() >= bottom.max(top),
                            "{better} for {bottom}:{top}"
                        );
                        advised += 1;
                    }
                }
            }
        }
    }
    assert!(advised > 3, "only {advised}");
}

/// Opened until its legs run along the rail a knot hides nothing: that is refused, with what it reaches.
#[test]
fn a_knot_is_not_opened_until_its_legs_run_along() {
    let tube = Tube::plain(mm(45.0));
    let counts = Counts::new(5, 7, 1).unwrap();
    let opened = |width: f64| {
        let finish = Some(Finish {
            around: mm(30.0).into(),
            open_to: Some(mm(width)),
        });
        rig(&RigJob {
            finish,
            ..RigJob::new(counts, &tube, mm(4.0))
        })
    };
    let Err(RigError::Shape(ShapeError::WiderThanReach { given, most })) = opened(5000.0) else {
        panic!("{:?}", opened(5000.0));
    };
    assert_eq!(given, mm(5000.0));
    assert!(opened(most.get()).is_ok_and(|rig| rig.shape.angle >= LEAST_ANGLE * 0.9));
    assert!(opened(most.get() + 1.0).is_err());
}
