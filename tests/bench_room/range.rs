//! From tight to open.

use marlinspeak::bench::{DrawnUp, LEAST_ANGLE, LeastCover, WidthRange};

use crate::{braid, counts, mm};

#[test]
fn a_knot_that_is_opened_is_wider_steeper_and_hides_less() {
    // Where bights are wider than half a pitch, as in 3 × 5 tripled, they ride on one another when
    // tight, and the first opening hides more.
    for knot in [
        counts(5, 6, 2),
        counts(3, 4, 1),
        counts(17, 4, 1),
        counts(5, 3, 3),
    ] {
        let braid = braid(knot, 4.0, 30.0);
        let tight = braid.tight().unwrap();
        let mut before = tight;
        for share in [1.02, 1.1, 1.3, 1.6] {
            let open = braid.opened(mm(tight.width.get() * share)).unwrap();
            assert!((open.width.get() - tight.width.get() * share).abs() < 1e-9);
            assert_eq!(open.tight, tight.width);
            assert!(open.cover < before.cover, "{knot:?} {share}");
            assert!(open.angle < before.angle, "{knot:?} {share}");
            assert!(open.leg > before.leg && !open.is_tight());
            before = open;
        }
    }
}

/// Without a step from the tight rule to that of the opened knot: `tan α` is run over rise once the
/// knot is well open.
#[test]
fn the_angle_changes_without_a_step() {
    let braid = braid(counts(5, 7, 2), 4.0, 30.0);
    let tight = braid.tight().unwrap();
    let hair = braid.opened(mm(tight.width.get() + 0.001)).unwrap();
    assert!((hair.angle - tight.angle).abs() < 1e-4);
    let far = braid.opened(mm(tight.width.get() * 20.0)).unwrap();
    assert!((far.angle.tan() / (far.run.get() / far.rise.get()) - 1.0).abs() < 0.01);
}

#[test]
fn the_range_ends_where_the_cover_does() {
    for knot in [
        counts(5, 6, 2),
        counts(3, 4, 1),
        counts(17, 4, 1),
        counts(3, 5, 3),
        counts(2, 9, 1),
    ] {
        let braid = braid(knot, 4.0, 30.0);
        let tight = braid.tight().unwrap();
        for (least, wanted) in [
            (LeastCover::default(), 0.9 * tight.cover),
            (LeastCover::OfTight(0.8), 0.8 * tight.cover),
            (LeastCover::Share(0.6), 0.6),
        ] {
            let range = WidthRange::of(&braid, least).unwrap();
            assert_eq!(range.tight, tight.width);
            let widest = braid.opened(range.widest).unwrap();
            let is_steep = (widest.angle - LEAST_ANGLE).abs() < 1e-6;
            assert!(
                (widest.cover - wanted).abs() < 2e-3 || is_steep,
                "{knot:?} {widest:?}"
            );
            // Everything in between hides enough.
            for step in 0..=20 {
                let share = f64::from(step) / 20.0;
                let room = range.widest.get() - range.tight.get();
                let width = mm(range.tight.get() + share * room * 0.9999);
                assert!(
                    braid.opened(width).unwrap().cover >= wanted - 1e-3,
                    "{knot:?}"
                );
            }
        }
        assert_eq!(WidthRange::of(&braid, LeastCover::Share(0.99)), None);
    }
}

#[test]
fn one_word_says_where_in_the_range_a_knot_is() {
    let braid = braid(counts(5, 6, 2), 4.0, 30.0);
    let range = WidthRange::of(&braid, LeastCover::default()).unwrap();
    let at = |share: f64| {
        let room = range.widest.get() - range.tight.get();
        mm(range.tight.get() + share * room)
    };
    let word = |share| range.drawn_up(at(share));
    assert_eq!([word(0.0), word(0.08)], [DrawnUp::Tight; 2]);
    assert_eq!([word(0.2), word(0.49)], [DrawnUp::Eased; 2]);
    assert_eq!([word(0.51), word(1.0)], [DrawnUp::Open; 2]);
    assert_eq!(range.nearest(mm(1.0)), range.tight);
    assert_eq!(range.nearest(mm(999.0)), range.widest);
    assert!(range.contains(at(0.3)) && !range.contains(mm(999.0)));
}
