//! Laws of the trade and of the braid that hold for every knot.

use crate::lattice;

use std::collections::{BTreeMap, BTreeSet};

use marlinspeak::guide::{AtOnce, Landing, Plan, Script, What};
use marlinspeak::knot::{
    Crossing, Hand, Heading, Knot, Lattice, Laying, LayingOrder, Leg, PassLeg, Pin, Rim, Side,
    Weave,
};
use proptest::prelude::*;

use lattice::{Laid, Pattern};

fn knot(leads: u16, bights: u16) -> Knot {
    Knot::new(leads, bights, Weave::default()).unwrap()
}

/// Every knot of up to 60 leads and 60 bights.
fn all_knots() -> impl Iterator<Item = Knot> {
    (2..=60).flat_map(|leads| (2..=60).map(move |bights| knot(leads, bights)))
}

fn bottom_pins(knot: &Knot) -> impl Iterator<Item = Pin> + use<> {
    (1..=knot.bights()).map(Pin::bottom)
}

/// The legs from `pin` until the cord is back there, each leaving where the last one landed.
fn walk(knot: &Knot, pin: Pin) -> Vec<Leg> {
    let mut legs = vec![knot.leg_from(pin)];
    while legs[legs.len() - 1].to != pin {
        legs.push(knot.leg_from(legs[legs.len() - 1].to));
    }
    legs
}

/// Turns of a tie in the order they are laid.
fn pass_legs(laying: &Laying) -> impl Iterator<Item = PassLeg> + '_ {
    (0..laying.legs()).map(|before| laying.nth_leg(before).unwrap())
}

fn common_divisor(one: u16, other: u16) -> u16 {
    (1..=one.min(other))
        .rfind(|divisor| one.is_multiple_of(*divisor) && other.is_multiple_of(*divisor))
        .unwrap()
}

/// Ashley's law of the common divisor (*The Ashley Book of Knots*, ch. 17): one strand exactly
/// when leads and bights share no factor, otherwise as many as their greatest common divisor.
#[test]
fn strands_are_the_common_divisor_of_leads_and_bights() {
    for knot in all_knots() {
        let strands = common_divisor(knot.leads(), knot.bights());
        let mut walked = BTreeSet::new();
        for pin in bottom_pins(&knot) {
            let mut pins: Vec<_> = walk(&knot, pin).iter().map(|leg| leg.from).collect();
            pins.sort();
            walked.insert(pins);
        }
        let (leads, bights) = (knot.leads(), knot.bights());
        assert_eq!(walked.len(), usize::from(strands), "{leads}×{bights}");
        assert_eq!(knot.strands(), strands, "{leads}×{bights}");
        assert_eq!(walked.iter().flatten().count(), 2 * usize::from(bights));
    }
}

#[test]
fn a_leg_is_the_same_by_number_and_by_walking() {
    for knot in all_knots() {
        for strand in 1..=knot.strands() {
            let walked = walk(&knot, Pin::bottom(strand));
            assert_eq!(walked.len(), usize::from(knot.legs_of(strand)));
            for (leg, number) in walked.into_iter().zip(1..) {
                assert_eq!((leg.strand, leg.number), (strand, number));
                assert_eq!(knot.leg(strand, number), Some(leg));
                assert_eq!(knot.leg_to(leg.to), leg);
            }
            assert_eq!(knot.leg(strand, 0), None);
            assert_eq!(knot.leg(strand, knot.legs_of(strand) + 1), None);
        }
        assert_eq!(knot.leg(0, 1), None);
        assert_eq!(knot.leg(knot.strands() + 1, 1), None);
    }
}

/// Top pins straight above the bottom ones for even leads, half a pitch on for odd: *common
/// practice, no source*. Every leg then covers as many half pitches as there are leads.
#[test]
fn top_pins_are_straight_for_even_leads_and_staggered_for_odd() {
    for knot in all_knots() {
        let (leads, round) = (knot.leads(), 2 * knot.bights());
        let half_pitch = |pin: Pin, staggered: bool| {
            2 * (pin.number - 1) + u16::from(pin.rim == Rim::Top && staggered)
        };
        let lands_right = |staggered: bool| {
            let pins = bottom_pins(&knot).flat_map(|pin| [pin, Pin::top(pin.number)]);
            pins.map(|pin| knot.leg_from(pin)).all(|leg| {
                let landing = (half_pitch(leg.from, staggered) + leads) % round;
                half_pitch(leg.to, staggered) == landing && leg.from.rim != leg.to.rim
            })
        };
        assert!(lands_right(leads % 2 == 1), "{leads}×{}", knot.bights());
        assert!(!lands_right(leads % 2 == 0), "{leads}×{}", knot.bights());
        assert_eq!(knot.is_staggered(), leads % 2 == 1);
    }
}

#[test]
fn crossings_are_bights_times_leads_less_one() {
    for knot in all_knots() {
        let single = Laying::new(knot.clone(), 1, LayingOrder::default()).unwrap();
        let met: usize = pass_legs(&single)
            .map(|pass_leg| single.crossings(pass_leg).count())
            .sum();
        let expected = u32::from(knot.bights()) * u32::from(knot.leads() - 1);
        assert_eq!(met, expected as usize);
        assert_eq!(knot.crossings(), expected);
    }
}

#[test]
fn a_leg_makes_a_whole_turn_for_every_two_leads_a_bight() {
    for knot in all_knots() {
        let whole_turns =
            (1..=knot.leads()).filter(|half_pitch| half_pitch % (2 * knot.bights()) == 0);
        let turns = knot.turns_of(knot.leg_from(Pin::bottom(1)));
        assert_eq!(usize::from(turns), whole_turns.count());
    }
}

/// The lengths of the runs of overs and unders round each strand, both rims included, as the
/// second pass meets them: it crosses every cord there is.
fn runs(knot: &Knot) -> BTreeSet<usize> {
    let doubled = Laying::new(knot.clone(), 2, LayingOrder::PassByPass).unwrap();
    let mut lengths = BTreeSet::new();
    for strand in 1..=knot.strands() {
        let mut overs: Vec<bool> = (1..=knot.legs_of(strand))
            .flat_map(|leg| {
                doubled.crossings(PassLeg {
                    pass: 2,
                    strand,
                    leg,
                })
            })
            .map(|crossing| crossing.over)
            .collect();
        assert_eq!(overs.len(), usize::from(knot.legs_of(strand) * knot.rows()));
        // Begin where a run begins.
        let change = overs
            .windows(2)
            .position(|pair| pair[0] != pair[1])
            .unwrap();
        overs.rotate_left(change + 1);
        lengths.extend(overs.chunk_by(|one, next| one == next).map(<[bool]>::len));
    }
    lengths
}

/// Derived and brute-forced to the same bounds in the project's account of the trade.
#[test]
fn over_n_under_n_is_even_exactly_when_n_divides_leads_less_one() {
    for leads in 2..=25 {
        for bights in 2..=25 {
            for run in 1..=4.min(leads - 1) {
                let knot = Knot::new(leads, bights, Weave::Run(run)).unwrap();
                let is_even = runs(&knot) == BTreeSet::from([usize::from(run)]);
                assert_eq!(is_even, (leads - 1) % run == 0, "{leads}×{bights} by {run}");
                assert_eq!(knot.is_even(), is_even, "{leads}×{bights} by {run}");
            }
        }
    }
}

/// Holds every leg of a tie against the same knot tied on graph paper.
fn assert_as_on_paper(laying: &Laying) {
    let mut order = pass_legs(laying);
    on_paper(laying, |laid| {
        let pass_leg = order.next().unwrap();
        let leg = laying.leg(pass_leg).unwrap();
        let met: Vec<_> = laying.crossings(pass_leg).collect();
        assert_laid(laid, pass_leg, leg, &met);
    });
    assert_eq!(order.next(), None);
}

/// The same with every leg as it is told to a tyer of this hand, and how its followers turn.
fn assert_told_as_on_paper(plan: Plan) {
    let (side, hand) = (plan.side, plan.hand);
    let script = Script::new(plan, AtOnce::WholeLeg);
    let mut told = script.steps().filter_map(|step| match step.what {
        What::Lay(lay) => Some(lay),
        _ => None,
    });
    on_paper(script.plan().laying(), |laid| {
        let lay = told.next().unwrap();
        assert_laid(laid, lay.pass_leg, lay.leg, &lay.crossings);
        assert_eq!(lay.hand, hand);
        // Right of a cord that goes to the right is the inside at the top.
        let is_inner = (side == Side::Right) == (hand == Hand::Right);
        let turns_inside = is_inner == laid.to.0;
        match lay.landing {
            Landing::Inside => assert!(turns_inside && laid.pass_leg[0] > 1),
            Landing::Outside => assert!(!turns_inside && laid.pass_leg[0] > 1),
            Landing::Round => assert_eq!(laid.pass_leg[0], 1),
            landing => assert_eq!(lay.pass_leg.leg, lay.legs, "{landing:?}"),
        }
    });
    assert!(told.next().is_none());
}

fn assert_laid(laid: &Laid, pass_leg: PassLeg, leg: Leg, met: &[Crossing]) {
    let plain = |pin: Pin| {
        let row = usize::from(pin.row.number);
        (pin.rim == Rim::Top, row, usize::from(pin.number))
    };
    assert_eq!(
        [pass_leg.pass, pass_leg.strand, pass_leg.leg].map(usize::from),
        laid.pass_leg
    );
    assert_eq!((plain(leg.from), plain(leg.to)), (laid.from, laid.to));
    let met: Vec<_> = met
        .iter()
        .map(|met| {
            let (from, to) = (plain(met.of.from), plain(met.of.to));
            (met.row.into(), met.over, met.cords.into(), from, to)
        })
        .collect();
    assert_eq!(met, laid.met, "{pass_leg:?}");
}

/// Ties the knot on graph paper.
fn on_paper(laying: &Laying, mut each: impl FnMut(&Laid)) {
    let knot = laying.knot();
    let rising_over = |row: usize| match knot.weave() {
        Weave::Run(run) => ((row - 1) / usize::from(*run)).is_multiple_of(2),
        Weave::Rows(code) => code[row - 1],
    };
    let pattern = Pattern {
        leads: knot.leads().into(),
        bights: knot.bights().into(),
        nested: knot.nested().into(),
        lands: knot.lattice().lands().into(),
        passes: laying.passes().into(),
        strand_by_strand: laying.order() == LayingOrder::StrandByStrand,
        rising_over: &rising_over,
    };
    pattern.tie(|laid| each(&laid));
}

#[test]
fn the_largest_knots_are_as_on_paper() {
    for (leads, bights, passes) in [(999, 998, 1), (999, 2, 9), (2, 999, 9), (998, 4, 9)] {
        assert_as_on_paper(
            &Laying::new(knot(leads, bights), passes, LayingOrder::default()).unwrap(),
        );
    }
}

/// Interwoven knots of up to 4 nests, 12 bights and 9 leads, the first cord landing in every row.
fn interwoven_knots() -> impl Iterator<Item = Lattice> {
    let nests = (2..=4).flat_map(|nested| (1..=nested).map(move |lands| (nested, lands)));
    nests.flat_map(|(nested, lands)| {
        let counts = (2..=9).flat_map(|leads| (2..=12).map(move |bights| (leads, bights)));
        counts.filter_map(move |(leads, bights)| {
            let lattice = Lattice::plain(leads, bights).unwrap();
            let interwoven = lattice.interwoven(nested, lands);
            // Two leads leave none for further cords that have two fewer.
            assert_eq!(interwoven.is_err(), leads == 2 && lands < nested);
            interwoven.ok()
        })
    })
}

/// In one to three passes, for a tyer of either hand.
#[test]
fn interwoven_knots_are_told_as_on_paper() {
    let passes = |lattice| (1..=3).map(move |passes| (lattice, passes));
    let mut told = 0;
    for ((lattice, passes), index) in interwoven_knots().flat_map(passes).zip(0_u16..) {
        // Which order, weave and side is drawn for which knot does not matter.
        let order =
            [LayingOrder::StrandByStrand, LayingOrder::PassByPass][usize::from(index / 3 % 2)];
        let weave = match index % 4 {
            0 => Weave::Run(1),
            1 => Weave::Rows((0..lattice.rows()).map(|row| row % 5 < 2).collect()),
            _ => Weave::Run(lattice.nested()),
        };
        let side = [Side::Right, Side::Left][usize::from(index / 5 % 2)];
        let knot = Knot::woven(lattice, weave).unwrap();
        let laying = Laying::new(knot, passes, order).unwrap();
        for hand in [Hand::Right, Hand::Left] {
            assert_told_as_on_paper(Plan::of(laying.clone(), side, hand));
            told += 1;
        }
    }
    // Two to four nests, the first cord landing in every row, of 2 to 9 leads and 2 to 12 bights; of
    // two leads only where it lands in the innermost.
    assert_eq!(told, (9 * 7 + 3) * 11 * 3 * 2);
}

#[test]
fn crossings_and_strands_of_interwoven_knots_are_those_that_are_met() {
    for lattice in interwoven_knots() {
        let knot = Knot::woven(lattice, Weave::Run(1)).unwrap();
        let single = Laying::new(knot.clone(), 1, LayingOrder::StrandByStrand).unwrap();
        let met: usize = pass_legs(&single)
            .map(|pass_leg| single.crossings(pass_leg).count())
            .sum();
        assert_eq!(lattice.crossings() as usize, met, "{lattice:?}");
        let strands: BTreeSet<u16> = pass_legs(&single).map(|pass_leg| pass_leg.strand).collect();
        assert_eq!(strands.len(), usize::from(knot.strands()), "{lattice:?}");
        for nest in knot.nests() {
            let strands = common_divisor(nest.leads, lattice.bights());
            assert_eq!(nest.strands, strands, "{lattice:?}");
        }
    }
}

/// Over-*A*-under-*A* makes every cord by itself over one, under one.
#[test]
fn overs_and_unders_take_turns_along_every_cord_by_itself() {
    for lattice in interwoven_knots() {
        let knot = Knot::woven(lattice, Weave::Run(lattice.nested())).unwrap();
        assert!(knot.is_even(), "{lattice:?}");
        // In the second pass all cords lie, and each is crossed.
        let doubled = Laying::new(knot.clone(), 2, LayingOrder::PassByPass).unwrap();
        for strand in 1..=knot.strands() {
            let own = knot.nest_of(strand);
            let legs = 1..=knot.legs_of(strand);
            let met = legs.flat_map(|leg| {
                doubled.crossings(PassLeg {
                    pass: 2,
                    strand,
                    leg,
                })
            });
            let overs: Vec<bool> = met
                .filter(|met| knot.nest_of(met.of.strand) == own)
                .map(|met| met.over)
                .collect();
            assert!(
                overs.windows(2).all(|pair| pair[0] != pair[1]),
                "{lattice:?}"
            );
            let crossings = usize::from(knot.legs_of(strand) * (own.leads - 1));
            assert_eq!(overs.len(), crossings, "{lattice:?}");
        }
    }
}

#[test]
fn a_nested_leg_runs_between_the_two_that_lie_beside_it() {
    for lattice in interwoven_knots() {
        let knot = Knot::woven(lattice, Weave::Run(1)).unwrap();
        let round = i32::from(lattice.round());
        for leg in [Rim::Bottom, Rim::Top]
            .into_iter()
            .flat_map(|rim| knot.pins(rim))
        {
            let leg = knot.leg_from(leg);
            let outside = knot.nest_of(leg.strand).rows[0];
            // Where a leg would be in one row for all: where it starts, less what it climbed.
            let line = |pin: Pin| {
                let (row, x) = knot.stands_at(pin);
                let climbed = i32::from(row) * if pin.rim == Rim::Bottom { 1 } else { -1 };
                (i32::from(x) - climbed).rem_euclid(round)
            };
            let others = knot.pins(leg.from.rim);
            let laid: Vec<Pin> = others
                .filter(|pin| knot.nest_of(knot.leg_from(*pin).strand).rows[0] < outside)
                .collect();
            let apart = |one: i32, other: i32| (one - other).rem_euclid(round);
            let left = laid
                .iter()
                .min_by_key(|pin| apart(line(leg.from), line(**pin)));
            let right = laid
                .iter()
                .min_by_key(|pin| apart(line(**pin), line(leg.from)));
            let expected = left.zip(right).map(|(left, right)| [*left, *right]);
            assert_eq!(knot.lies_between(leg), expected, "{lattice:?} {leg:?}");
        }
    }
}

prop_compose! {
    /// Any tie of up to 60 leads, 60 bights and 4 passes, in any weave and either order.
    fn any_tie()(leads in 2..=60_u16, bights in 2..=60_u16)(
        bights in Just(bights),
        leads in Just(leads),
        weave in prop_oneof![
            (1..leads).prop_map(Weave::Run),
            prop::collection::vec(any::<bool>(), usize::from(leads - 1))
                .prop_map(|code| Weave::Rows(code.into())),
        ],
        passes in 1..=4_u16,
        order in prop_oneof![Just(LayingOrder::PassByPass), Just(LayingOrder::StrandByStrand)],
    ) -> Laying {
        Laying::new(Knot::new(leads, bights, weave).unwrap(), passes, order).unwrap()
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..Default::default() })]

    #[test]
    fn every_tie_is_as_on_paper(tie in any_tie()) {
        assert_as_on_paper(&tie);
    }

    #[test]
    fn the_lead_pass_meets_every_crossing_once_by_the_later_leg(tie in any_tie()) {
        let mut crossings = BTreeSet::new();
        for pass_leg in pass_legs(&tie).filter(|pass_leg| pass_leg.pass == 1) {
            let own = (pass_leg.strand, pass_leg.leg);
            for met in tie.crossings(pass_leg) {
                let other = (met.of.strand, met.of.number);
                prop_assert!(other < own, "{pass_leg:?} meets {met:?}");
                prop_assert!(crossings.insert((other, own, met.row)), "{pass_leg:?} meets {met:?}");
            }
        }
        prop_assert_eq!(crossings.len(), tie.knot().crossings() as usize);
    }

    #[test]
    fn the_whole_tie_crosses_every_cord_with_every_other(tie in any_tie()) {
        for pass_leg in pass_legs(&tie) {
            prop_assert_eq!(usize::from(tie.met(pass_leg)), tie.crossings(pass_leg).count());
        }
        let met: u32 = pass_legs(&tie)
            .flat_map(|pass_leg| tie.crossings(pass_leg))
            .map(|crossing| u32::from(crossing.cords))
            .sum();
        let passes = u32::from(tie.passes());
        prop_assert_eq!(met, tie.knot().crossings() * passes * passes);
    }

    #[test]
    fn a_follower_goes_over_and_under_as_the_cord_it_follows(tie in any_tie()) {
        let mut over = BTreeMap::new();
        for pass_leg in pass_legs(&tie) {
            for met in tie.crossings(pass_leg) {
                let first = *over.entry((pass_leg.strand, pass_leg.leg, met.row)).or_insert(met.over);
                prop_assert_eq!(met.over, first, "{:?} row {}", pass_leg, met.row);
            }
        }
        let goes_over = |strand, number, row| {
            let heading = if number % 2 == 1 { Heading::Rising } else { Heading::Falling };
            (tie.knot().leg(strand, number).unwrap().heading() == heading)
                && tie.knot().goes_over(heading, row)
        };
        for ((strand, number, row), over) in over {
            prop_assert_eq!(goes_over(strand, number, row), over);
        }
    }

    #[test]
    fn a_pass_leaves_its_number_of_cords_everywhere(tie in any_tie()) {
        let knot = tie.knot();
        let mut cords = BTreeMap::new();
        for pass_leg in pass_legs(&tie) {
            let leg = tie.leg(pass_leg).unwrap();
            prop_assert_eq!(tie.cords_of(leg, pass_leg), pass_leg.pass - 1);
            if pass_leg.leg == 1 {
                for pin in bottom_pins(knot).flat_map(|pin| [pin, Pin::top(pin.number)]) {
                    let laid = cords.get(&pin).copied().unwrap_or(0);
                    prop_assert_eq!(tie.cords_of(knot.leg_from(pin), pass_leg), laid);
                    if tie.order() == LayingOrder::PassByPass && pass_leg.strand == 1 {
                        prop_assert_eq!(laid, pass_leg.pass - 1);
                    }
                }
            }
            *cords.entry(leg.from).or_insert(0) += 1;
        }
        prop_assert_eq!(cords.len(), 2 * usize::from(knot.bights()));
        prop_assert!(cords.values().all(|laid| *laid == tie.passes()));
    }

    #[test]
    fn a_weave_is_even_exactly_when_all_its_runs_are_alike(tie in any_tie()) {
        prop_assert_eq!(tie.knot().is_even(), runs(tie.knot()).len() == 1);
    }

    #[test]
    fn a_turn_and_the_legs_before_it_tell_each_other(tie in any_tie()) {
        let rank = |pass_leg: PassLeg| match tie.order() {
            LayingOrder::PassByPass => (pass_leg.pass, pass_leg.strand, pass_leg.leg),
            LayingOrder::StrandByStrand => (pass_leg.strand, pass_leg.pass, pass_leg.leg),
        };
        let mut last = None;
        for (pass_leg, before) in pass_legs(&tie).zip(0..) {
            prop_assert_eq!(tie.legs_before(pass_leg), before);
            prop_assert!(tie.leg(pass_leg).is_some());
            prop_assert!(last < Some(rank(pass_leg)), "{pass_leg:?} is out of order");
            last = Some(rank(pass_leg));
        }
        prop_assert_eq!(tie.nth_leg(tie.legs()), None);
        let strand = 1;
        prop_assert_eq!(tie.leg(PassLeg { pass: tie.passes() + 1, strand, leg: 1 }), None);
        prop_assert_eq!(tie.leg(PassLeg { pass: 0, strand, leg: 1 }), None);
    }
}
