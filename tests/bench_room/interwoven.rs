//! Interwoven knots: widths and cord against cord drawn up by a simulation, their pins, the bag, and
//! what fits.

use marlinspeak::bench::{
    Counts, FitFilter, FitWish, KitItem, Layout, Object, RigError, RigJob, Tube, WeaveChoice, bag,
    fit, rig,
};
use marlinspeak::knot::{Knot, Lattice, Weave};

use crate::{count, hard, in_knot, mm, numbers, rows, within};

fn nested(leads: u16, bights: u16, nested: u16, lands: u16, passes: u16) -> Counts {
    let lattice = Lattice::plain(leads, bights).unwrap();
    let lattice = lattice.interwoven(nested, lands).unwrap();
    let knot = Knot::woven(lattice, Weave::Run(nested)).unwrap();
    Counts::of(&knot, passes).unwrap()
}

/// The published file says how it was simulated. A tenth is what the rule of plain knots is held to.
#[test]
fn two_nests_come_out_as_wide_and_take_as_much_cord_as_simulated() {
    let mut held = 0;
    for row in rows(include_str!("../data/tight_widths_weaves.csv")) {
        if row[0] == "1" {
            continue;
        }
        let [nests, leads, bights, lands] = [0, 1, 2, 3].map(|cell| count(row[cell]));
        let value = numbers(&row);
        let braid = hard(nested(leads, bights, nests, lands, 1), value[5], value[6]);
        let shape = braid.tight().unwrap();
        assert!(
            within(shape.width.get(), value[7], 0.1),
            "{row:?}: {}",
            shape.width
        );
        let cord = in_knot(&braid, &shape);
        assert!(within(cord, value[8], 0.1), "{row:?}: {cord}");
        assert!(
            (0.2..=1.0).contains(&shape.cover),
            "{row:?}: {}",
            shape.cover
        );
        held += 1;
    }
    assert_eq!(held, 5);
}

/// Rows of both rings that suit: two rows of 10 and 20 holes in line for five bights of two nests.
/// *Common practice, no source.*
#[test]
fn every_nest_has_a_row_of_holes_of_its_own_and_all_pins_stand_in_line() {
    for (leads, rows_of_tube) in [(3, vec![20, 10, 30]), (4, vec![15, 25, 10])] {
        let tube = Tube::ringed(mm(90.0), &rows_of_tube).unwrap();
        let rig = rig(&RigJob::new(nested(leads, 5, 2, 2, 1), &tube, mm(3.0))).unwrap();
        let Layout::Rings {
            bottom,
            top,
            inner,
            turn_half_hole,
        } = &rig.layout
        else {
            panic!("the tube has rings");
        };
        assert!(!turn_half_hole);
        assert_eq!(inner.len(), 1);
        let share = |holes: &[u16], of: u16| -> Vec<f64> {
            let at = |hole: &u16| f64::from(hole - 1) / f64::from(of);
            holes.iter().map(at).collect()
        };
        for (outer, inner) in [bottom, top].into_iter().zip(&inner[0]) {
            assert_ne!(outer.row, inner.row);
            assert_eq!(
                share(&outer.holes, outer.holes_in_row),
                share(&inner.holes, inner.holes_in_row)
            );
        }
        let apart = rig.laid.rows_apart.unwrap().get();
        let height = f64::from(rig.counts.height());
        assert!(within(
            apart,
            2.0 * rig.laid.ring_spacing.get() / height,
            1e-9
        ));
        // A bight of one cord of 3 mm goes round each pin of 4 mm.
        assert!(apart >= 7.0 - 1e-9, "{apart}");
    }
}

#[test]
fn rings_without_rows_enough_are_refused_and_a_strip_serves() {
    let counts = nested(3, 5, 2, 2, 1);
    let tube = Tube::ringed(mm(60.0), &[20, 14]).unwrap();
    assert_eq!(
        rig(&RigJob::new(counts, &tube, mm(3.0))).unwrap_err(),
        RigError::TooFewRows {
            bights: 5,
            nested: 2,
            rows: vec![20, 14],
        }
    );
    let plain = Tube::plain(mm(60.0));
    let rig = rig(&RigJob::new(counts, &plain, mm(3.0))).unwrap();
    let Layout::Strip(strip) = &rig.layout else {
        panic!("a tube without rings");
    };
    assert_eq!((strip.nested, strip.bottom.len()), (2, 5));
}

#[test]
fn the_bag_has_pins_for_every_row_and_a_piece_for_every_cord() {
    let plain = Tube::plain(mm(60.0));
    // The second cord has two leads fewer, and is as much shorter.
    let rig = rig(&RigJob::new(nested(5, 4, 2, 1, 2), &plain, mm(3.0))).unwrap();
    let lattice = rig.counts.lattice();
    let pieces: Vec<f64> = lattice
        .nests()
        .map(|nest| rig.cord.piece(nest, 2).get())
        .collect();
    assert!(pieces[0] > pieces[1] + 100.0, "{pieces:?}");
    assert!(within(pieces.iter().sum(), rig.cord.to_cut().get(), 1e-9));
    let pins = bag(&rig, &plain, [])
        .into_iter()
        .find_map(|item| match item {
            KitItem::Pins { count, .. } => Some(count),
            _ => None,
        });
    assert_eq!(pins, Some(16));
}

#[test]
fn what_fits_of_two_nests_is_of_two_nests_and_as_long_as_asked() {
    let mut wish = FitWish::new(Object::new(mm(40.0), mm(40.0)), mm(3.0));
    assert!(fit(&wish).iter().all(|answer| answer.counts.nested() == 1));
    wish.filter = FitFilter {
        nested: 2,
        ..FitFilter::default()
    };
    let answers = fit(&wish);
    assert!(answers.len() > 3);
    for answer in answers {
        let lattice = answer.counts.lattice();
        assert_eq!((lattice.nested(), lattice.lands()), (2, 2));
        let off = (answer.shape.width.get() - 40.0).abs();
        assert!(off <= wish.tolerance.get() + 1e-9, "{off}");
        assert!(answer.tucks <= answer.other_tucks);
    }
}

/// A run that some knots cannot have, or have unevenly, is offered only where it is even.
#[test]
fn nested_knots_of_a_run_are_even_and_can_be_tied() {
    for run in [1, 2, 3, 4, 9] {
        let wish = FitWish {
            weave: WeaveChoice::Run(run),
            filter: FitFilter {
                nested: 2,
                ..FitFilter::default()
            },
            ..FitWish::new(Object::new(mm(40.0), mm(40.0)), mm(3.0))
        };
        for answer in fit(&wish) {
            let weave = Weave::Run(wish.weave.run(2));
            let knot = Knot::woven(answer.counts.lattice(), weave);
            assert!(knot.is_ok_and(|knot| knot.is_even()), "{run}: {answer:?}");
        }
    }
    assert_eq!(WeaveChoice::Run(1).run(2), WeaveChoice::FewestTucks.run(2));
}
