//! Pins, rings, and the bag.

use marlinspeak::bench::{
    Cord, KitItem, Layout, PassCord, Rig, RigCaution, RigError, RigJob, Start, Thread, Tool, Tube,
    kit, pin_holds, pin_needed, pin_to_buy, pinning, rig,
};
use marlinspeak::guide::COURSE;
use marlinspeak::knot::Lattice;

use crate::{counts, mm};

fn rigged(leads: u16, bights: u16, passes: u16, tube: &Tube) -> Rig {
    rig(&RigJob::new(counts(leads, bights, passes), tube, mm(4.0))).unwrap()
}

/// Common practice, no source: a row of 12 for 4 bights, every third hole.
#[test]
fn a_row_of_twelve_for_four_bights_is_pinned_in_every_third_hole() {
    let tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    let Layout::Rings {
        bottom,
        top,
        turn_half_hole,
        ..
    } = rigged(6, 4, 1, &tube).layout
    else {
        panic!("the tube has rings");
    };
    assert_eq!((bottom.row, bottom.holes_in_row), (1, 12));
    assert_eq!(bottom.holes, [1, 4, 7, 10]);
    assert_eq!((top.holes, turn_half_hole), (vec![1, 4, 7, 10], false));
}

/// Common practice, no source: an even step is shifted by half of it, an odd one needs the
/// half hole as well.
#[test]
fn odd_leads_stagger_the_top_ring() {
    let tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    for (bights, top_holes, half) in [
        (6, vec![2, 4, 6, 8, 10, 12], false),
        (3, vec![3, 7, 11], false),
        (4, vec![2, 5, 8, 11], true),
        (12, (1..=12).collect(), true),
    ] {
        let rig = rigged(5, bights, 1, &tube);
        assert!(rig.staggered);
        let Layout::Rings {
            top,
            turn_half_hole,
            ..
        } = rig.layout
        else {
            panic!("the tube has rings");
        };
        assert_eq!((top.holes, turn_half_hole), (top_holes, half), "{bights}");
    }
}

/// Whatever the row, top pin k stands exactly half a pitch on from bottom pin k when the leads
/// are odd, and straight above it when they are even.
#[test]
fn top_pins_stand_where_the_braid_wants_them() {
    for holes in 2..=60_u16 {
        let tube = Tube::ringed(mm(40.0), &[holes]).unwrap();
        for bights in tube.bights() {
            for staggered in [false, true] {
                let Some(Layout::Rings {
                    bottom,
                    top,
                    turn_half_hole,
                    ..
                }) = pinning(
                    &tube,
                    Lattice::plain(if staggered { 5 } else { 4 }, bights).unwrap(),
                )
                else {
                    panic!("{bights} divides {holes}");
                };
                let step = holes / bights;
                for (pin, (below, above)) in (0..).zip(bottom.holes.iter().zip(&top.holes)) {
                    assert_eq!(*below, 1 + pin * step);
                    assert!(*above <= holes);
                    // Half holes from below to above against half a step.
                    let on = 2 * (above - below) + u16::from(turn_half_hole);
                    assert_eq!(on, if staggered { step } else { 0 }, "{holes} {bights}");
                }
            }
        }
    }
}

#[test]
fn a_row_that_needs_no_half_hole_goes_first() {
    let tube = Tube::ringed(mm(40.0), &[12, 16]).unwrap();
    let row = |leads| match rigged(leads, 4, 1, &tube).layout {
        Layout::Rings {
            bottom,
            top,
            turn_half_hole,
            ..
        } => {
            assert_eq!(bottom.row, top.row);
            assert!(!turn_half_hole);
            bottom.row
        }
        _ => panic!("the tube has rings"),
    };
    assert_eq!((row(6), row(5)), (1, 2));
}

#[test]
fn bights_that_no_row_takes_are_refused_with_those_that_it_does() {
    let tube = Tube::ringed(mm(40.0), &[12, 10]).unwrap();
    let error = rig(&RigJob::new(counts(5, 7, 1), &tube, mm(2.0))).unwrap_err();
    assert_eq!(
        error,
        RigError::NoRowDivides {
            bights: 7,
            rows: vec![12, 10],
            can_take: vec![2, 3, 4, 5, 6, 10, 12]
        }
    );
}

#[test]
fn a_tube_without_rings_gets_marks_on_a_strip() {
    let rig = rigged(5, 6, 1, &Tube::plain(mm(40.0)));
    let Layout::Strip(strip) = rig.layout else {
        panic!("the tube has no rings");
    };
    let round = std::f64::consts::PI * 40.0;
    assert!((strip.length.get() - round).abs() < 1e-9);
    assert_eq!((strip.bottom.len(), strip.top.len()), (6, 6));
    assert_eq!(strip.bottom[0].get(), 0.0);
    for (pin, (below, above)) in strip.bottom.iter().zip(&strip.top).enumerate() {
        let at = f64::from(u8::try_from(pin).unwrap()) * round / 6.0;
        assert!((below.get() - at).abs() < 1e-9);
        assert!((above.get() - at - round / 12.0).abs() < 1e-9);
    }
    assert_eq!(
        rig.starts,
        [Start {
            strand: 1,
            bottom_pin: 1,
            hole: None
        }]
    );
}

/// Common practice, no source.
#[test]
fn pins_of_half_an_inch_hold_a_doubled_knot_and_three_eighths_a_single_one() {
    let holds = |length, passes| pin_holds(mm(length), mm(4.0), passes, None);
    assert!(holds(12.7, 2) && holds(12.7, 1));
    assert!(!holds(9.5, 2) && holds(9.5, 1));
    // A thin wall does not make a short pin hold; a thick one takes from it.
    assert!(!pin_holds(mm(9.5), mm(4.0), 2, Some(mm(1.0))));
    assert!(pin_needed(mm(4.0), 2, Some(mm(5.0))) > pin_needed(mm(4.0), 2, None));
}

#[test]
fn pins_are_bought_in_lengths_that_are_sold() {
    let system = |thread: &str| Some(Thread::parse(thread).unwrap().system());
    assert_eq!(pin_to_buy(mm(11.0), system("#8")).get(), 12.7);
    assert_eq!(pin_to_buy(mm(11.0), system("M4")).get(), 12.0);
    assert_eq!(pin_to_buy(mm(12.0), system("M4")).get(), 12.0);
    assert_eq!(pin_to_buy(mm(11.0), None).get(), 11.0);
    assert_eq!(pin_to_buy(mm(500.0), system("M4")).get(), 500.0);
}

#[test]
fn short_pins_are_warned_of_with_the_passes_they_hold() {
    let mut tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    tube.pin_length = Some(mm(9.5));
    assert_eq!(
        rigged(5, 6, 2, &tube).cautions,
        [RigCaution::PinsTooShort {
            given: mm(9.5),
            needed: mm(11.0),
            hold_passes: 1
        }]
    );
    assert_eq!(rigged(5, 6, 1, &tube).cautions, []);
}

#[test]
fn each_strand_starts_at_a_pin_of_its_own() {
    let tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    let rig = rigged(4, 6, 1, &tube);
    let starts: Vec<_> = rig
        .starts
        .iter()
        .map(|start| (start.bottom_pin, start.hole))
        .collect();
    assert_eq!(starts, [(1, Some(1)), (2, Some(3))]);
}

#[test]
fn rows_are_read_as_typed() {
    assert_eq!(Tube::parse_rows("12,16"), Ok(vec![12, 16]));
    assert_eq!(Tube::parse_rows(" 12 16 "), Ok(vec![12, 16]));
    for bad in [
        "", ",", "twelve", "1", "0", "-12", "12.5", "99999999", "1999",
    ] {
        assert!(Tube::parse_rows(bad).is_err(), "{bad}");
    }
    assert!(Tube::ringed(mm(40.0), &[]).is_err());
}

/// What the first start asks for (`first-start-needs`) is what the first tie of the course takes.
#[test]
fn the_first_tie_takes_the_tube_and_the_cord_that_the_first_start_asks_for() {
    let first = COURSE[0];
    let rig = rigged(
        first.leads,
        first.bights,
        first.passes,
        &Tube::plain(mm(45.0)),
    );
    let apart = rig.laid.ring_spacing.get();
    assert!((12.0..13.0).contains(&apart), "{apart}");
    let cut = rig.cord.to_cut().get();
    assert!((900.0..=1000.0).contains(&cut), "{cut}");
}

#[test]
fn the_bag_holds_what_the_rig_needs() {
    let mut tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    tube.thread = Some(Thread::parse("#8").unwrap());
    let rig = rigged(4, 6, 3, &tube);
    assert_eq!(rig.hex_key.map(|key| key.size), Some("5/64"));
    let mut blue = Cord::new(mm(4.0)).named("blue");
    blue.grams_per_metre = Some(6.0);
    let cords = [
        PassCord {
            cord: blue.clone(),
            passes: 2,
        },
        PassCord {
            cord: Cord::new(mm(4.0)).named("white"),
            passes: 1,
        },
    ];
    let items = kit(&rig, &tube, &cords).unwrap();
    let (two, one) = (
        rig.cord.pieces(&[2, 1]).unwrap()[0],
        rig.cord.pieces(&[2, 1]).unwrap()[1],
    );
    assert_eq!(
        items,
        [
            KitItem::Tube { diameter: mm(40.0) },
            KitItem::Pins {
                count: 12,
                length: mm(15.875),
                thread: tube.thread
            },
            KitItem::HexKey(rig.hex_key.unwrap()),
            KitItem::Cord {
                grams: blue.grams(two.length).map(|grams| grams * 2.0),
                cord: blue,
                pieces: 2,
                length: two.length,
            },
            KitItem::Cord {
                cord: cords[1].cord.clone(),
                pieces: 2,
                length: one.length,
                grams: None,
            },
            KitItem::Tape {
                length: rig.tape,
                scraps: 0
            },
            KitItem::Tool(Tool::Marker),
            KitItem::Tool(Tool::Ruler),
            KitItem::Picks { count: 1 },
            KitItem::Tool(Tool::Blade),
            KitItem::Tool(Tool::Dish),
            KitItem::Tool(Tool::Sealing),
        ]
    );
    assert!((rig.tape.get() - 2.0 * (std::f64::consts::PI * 40.0 + 10.0)).abs() < 1e-9);
    assert!(kit(&rig, &tube, &cords[..1]).is_err());

    let plain = Tube::plain(mm(40.0));
    let items = kit(&rigged(4, 6, 3, &plain), &plain, &cords).unwrap();
    assert!(
        items
            .iter()
            .any(|item| matches!(item, KitItem::Strip { .. }))
    );
    assert!(!items.iter().any(|item| matches!(item, KitItem::HexKey(_))));
}

#[test]
fn a_thicker_pin_takes_more_cord() {
    let cord = |thread: Option<&str>| {
        let mut tube = Tube::ringed(mm(40.0), &[12]).unwrap();
        tube.thread = thread.map(|thread| Thread::parse(thread).unwrap());
        rigged(5, 6, 2, &tube).cord.turn
    };
    assert!(cord(Some("M3")) < cord(Some("M4")));
    assert_eq!(cord(None), cord(Some("M4")));
    assert!(rigged(5, 6, 2, &Tube::plain(mm(40.0))).cord.turn < cord(Some("M3")));
}
