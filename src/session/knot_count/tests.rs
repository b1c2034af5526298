//! Knots counted as their tyers would count them.

use super::*;
use crate::knot::{Hand, Knot, Lattice, Side, Weave};

fn type_in(count: &mut KnotCount, number: u16) {
    for digit in number.to_string().chars() {
        assert!(count.type_in(&digit.to_string()));
    }
    assert_eq!(count.press(true), CountAction::Asked);
}

/// Counts a knot as its tyer would, and gives what comes of it: what is asked is read off the knot,
/// by its legs and their crossings alone.
fn counted(plan: &Plan, colours: u16) -> KnotCount {
    let knot = plan.knot();
    let mut count = KnotCount::default();
    let leg = |from: u16| knot.leg_from(knot.pin(Rim::Bottom, from, 1).unwrap());
    let first = leg(1);
    type_in(&mut count, knot.bights());
    type_in(&mut count, knot.nested());
    if knot.nested() > 1 {
        type_in(&mut count, first.to.row.number.into());
    }
    type_in(
        &mut count,
        u16::try_from(knot.crossings_of(first).count()).unwrap(),
    );
    type_in(&mut count, plan.laying().passes());
    while let CountAsked::Over { nth, from, of, .. } = count.asked() {
        let rows: Vec<u16> = knot.crossings_of(leg(from)).map(|(row, _)| row).collect();
        assert_eq!(rows.len(), usize::from(of));
        let row = rows[usize::from(nth) - 1];
        count.press(knot.goes_over(Heading::Rising, row));
    }
    type_in(&mut count, colours);
    count
}

/// The same lattice, and over and under alike wherever two cords cross.
fn is_same(one: &Knot, other: &Knot) -> bool {
    let alike = |from: Pin| {
        let leg = one.leg_from(from);
        one.crossings_of(leg).all(|(row, _)| {
            one.goes_over(Heading::Rising, row) == other.goes_over(Heading::Rising, row)
        })
    };
    one.lattice() == other.lattice() && one.pins(Rim::Bottom).all(alike)
}

#[test]
fn a_knot_described_by_counting_is_the_knot() {
    for leads in ["2", "3", "4", "5", "8", "17"] {
        for bights in ["2", "3", "7", "10"] {
            for (passes, weave) in [("1", "1"), ("2", ""), ("3", "1")] {
                let plan = Plan::read(leads, bights, passes, weave).unwrap();
                let count = counted(&plan, plan.knot().strands().min(MOST_COLOURS));
                let found = count.plan().unwrap();
                assert_eq!(found.knot(), plan.knot());
                assert_eq!(found.laying().passes(), plan.laying().passes());
            }
        }
    }
    for code in ["oouu", "ouuo", "uuoo", "uouo"] {
        let plan = Plan::read("5", "7", "1", code).unwrap();
        let count = counted(&plan, 1);
        assert!(is_same(count.plan().unwrap().knot(), plan.knot()), "{code}");
    }
}

/// Interwoven knots of every kind of landing, in runs and in codes of no order.
#[test]
fn an_interwoven_knot_described_by_counting_is_the_knot() {
    let mut seed = 1_u32;
    let mut coin = || {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        seed >> 31 == 1
    };
    let mut knots = 0;
    for nested in 2..=4 {
        for (leads, bights) in [(2, 2), (3, 4), (4, 3), (5, 7), (8, 5)] {
            for lands in 1..=nested {
                let lattice = Lattice::plain(leads, bights).unwrap();
                let Ok(lattice) = lattice.interwoven(nested, lands) else {
                    continue;
                };
                let code: Box<[bool]> = (0..lattice.rows()).map(|_| coin()).collect();
                for weave in [Weave::Run(nested), Weave::Run(1), Weave::Rows(code)] {
                    let knot = Knot::woven(lattice, weave).unwrap();
                    let plan = Plan::new(knot, 2, Side::default(), Hand::default()).unwrap();
                    let count = counted(&plan, 1);
                    let found = count.plan().unwrap().knot();
                    assert!(is_same(found, plan.knot()), "{lattice:?}: {found:?}");
                    knots += 1;
                }
            }
        }
    }
    assert!(knots > 100, "{knots}");
    // A run is known by its name again.
    let plan = Plan::read_nested(["5", "7", "2", "2"], "1", "").unwrap();
    assert_eq!(counted(&plan, 2).plan().unwrap().knot(), plan.knot());
}

#[test]
fn crossings_that_no_such_knot_has_are_counted_again() {
    let mut count = KnotCount::default();
    for number in [7, 2, 2] {
        type_in(&mut count, number);
    }
    // With two rows of scallops and all cords alike a cord crosses an even number of times.
    count.type_in("5");
    count.press(true);
    assert!(
        matches!(
            count.asked(),
            CountAsked::Rows {
                number: 5,
                nearest: Some([4, 6]),
                ..
            }
        ),
        "{:?}",
        count.asked()
    );
    count.type_in("6");
    assert!(matches!(
        count.asked(),
        CountAsked::Rows { nearest: None, .. }
    ));
    count.press(true);
    assert!(matches!(count.asked(), CountAsked::Passes(1)));
    assert_eq!(count.counts.leads, 4);
}

#[test]
fn colours_that_no_such_knot_can_have_are_counted_again() {
    let one_cord = Plan::read("5", "7", "1", "1").unwrap();
    let mut count = counted(&one_cord, 2);
    assert_eq!(count.keys(), CountKeys::Miscounted);
    assert_eq!(count.press(true), CountAction::Asked, "it is not taken");
    assert_eq!(count.plan(), None);
    let mut count = counted(&one_cord, 1);
    let CountAction::Take(plan) = count.press(true) else {
        panic!("it is taken");
    };
    assert_eq!(plan.knot(), one_cord.knot());
}

#[test]
fn it_is_counted_by_two_presses_alone() {
    let mut count = KnotCount::default();
    // Three scallops from the least of two, side by side, two crossings from one, single, over then
    // under, one colour.
    for is_next in [true, false, false, true, false, false, true, false, false] {
        count.press(is_next);
    }
    let knot = count.plan().unwrap().knot();
    let least = *Quantity::Bights.bounds().start();
    assert_eq!((knot.leads(), knot.bights()), (3, least + 1));
    assert_eq!(knot.weave(), &Weave::Run(1));
}

#[test]
fn what_is_shown_is_the_knot_as_far_as_it_is_counted() {
    let mut count = KnotCount::default();
    type_in(&mut count, 9);
    type_in(&mut count, 2);
    type_in(&mut count, 2);
    let shown = count.so_far().unwrap();
    assert_eq!((shown.knot().bights(), shown.knot().nested()), (9, 2));
    let before = count.subject();
    count.press(true);
    assert_ne!(count.subject(), before, "another number shows another knot");
}
