//! What interrupts a working day: cord that may not do, a fault far back.

use crate::terminal;
use crate::walk;

use marlinspeak::bench::{Cord, Millimetres, Tube};
use marlinspeak::guide::{AtOnce, CordReach, Place, Plan, Remaining, Script, Setup, Suspect};
use marlinspeak::knot::{Knot, Laying, LayingOrder, PassLeg, Weave};
use marlinspeak::pedal::{Input, Intent, KeyBinder};
use marlinspeak::picture::{View, Viewport};
use marlinspeak::session::{Keys, new_tie};
use marlinspeak::settings::Settings;
use marlinspeak::shelf::Shelf;
use marlinspeak::words::Words;
use proptest::prelude::*;
use tempfile::TempDir;
use terminal::Terminal;
use walk::Walk;

fn millimetres(text: &str) -> Millimetres {
    Millimetres::parse(text).unwrap()
}

/// On the loft's tube of 45 mm, pinned by a strip of paper, in cord that any of these knots has room
/// for.
fn on_the_tube(plan: Plan) -> Plan {
    let tube = Tube::plain(millimetres("45 mm"));
    let setup = Setup::new(tube, Cord::new(millimetres("1 mm")));
    let plan = plan.with_setup(Some(setup));
    assert!(plan.rig().unwrap().is_some());
    plan
}

/// Knots with one strand and several, nested bights, one pass and several, one cord and more.
fn grid() -> Vec<Plan> {
    let mut plans = Vec::new();
    for (leads, bights) in [
        ("3", "5"),
        ("4", "7"),
        ("5", "7"),
        ("4", "6"),
        ("6", "3"),
        ("9", "4"),
    ] {
        for passes in ["1", "2", "3"] {
            let plan = Plan::read(leads, bights, passes, "").unwrap();
            plans.push(on_the_tube(plan.clone()));
            plans.push(on_the_tube(plan.with_order(LayingOrder::StrandByStrand)));
        }
    }
    for counts in [
        ["3", "5", "2", "2"],
        ["5", "4", "2", "1"],
        ["4", "3", "3", "3"],
    ] {
        for passes in ["1", "2"] {
            plans.push(on_the_tube(Plan::read_nested(counts, passes, "").unwrap()));
        }
    }
    let named = Plan::read("5", "7", "2", "").unwrap();
    let names = ["blue", "white"].map(str::to_owned).to_vec();
    plans.push(on_the_tube(named.with_cords(names).unwrap()));
    plans
}

fn close(one: f64, other: f64) -> bool {
    (one - other).abs() < 1e-6
}

#[test]
fn the_cord_that_is_left_falls_leg_by_leg_from_what_is_cut_to_the_tails() {
    for plan in grid() {
        let script = Script::new(plan, AtOnce::UpTo(1));
        let plan = script.plan();
        let consumption = &script.rig().unwrap().cord;
        let cut: f64 = plan
            .runs()
            .iter()
            .map(|run| {
                let nest = plan.knot().nest_of(run.strand);
                consumption.piece(nest, run.last + 1 - run.first).get()
            })
            .sum();
        let all = |place| {
            script
                .remaining(place)
                .and_then(|left: Remaining| left.takes)
        };
        let first = all(script.first()).unwrap();
        assert!(close(first.in_all, cut), "{cut} is cut, {first:?}");
        let allowances = consumption.allowances();
        let laying = plan.laying();
        let mut before = first.in_all;
        for place in script.places() {
            let Some(takes) = all(place) else {
                let laid = script.progress(place).laid;
                assert_eq!(laid, laying.legs(), "something is left at {place:?}");
                continue;
            };
            assert!(takes.in_all <= before + 1e-6, "more is left at {place:?}");
            assert!(takes.in_pass <= takes.in_cord && takes.in_cord <= takes.in_all + 1e-6);
            before = takes.in_all;
        }
        // With the last leg in hand there are that leg, its end, and what is held.
        let last = laying.nth_leg(laying.legs() - 1).unwrap();
        let nest = plan.knot().nest_of(last.strand);
        let end = allowances.working_tail.get() + allowances.holding.get();
        let takes = all(Place::lay(last)).unwrap();
        assert!(
            close(takes.in_all, consumption.per_leg(nest) + end),
            "{takes:?}"
        );
        // From one leg of a pass to the next it is one leg less.
        for nth in 0..laying.legs() - 1 {
            let [this, next] = [nth, nth + 1].map(|nth| laying.nth_leg(nth).unwrap());
            if (this.pass, this.strand) != (next.pass, next.strand) {
                continue;
            }
            let [one, other] = [this, next].map(|leg| all(Place::lay(leg)).unwrap().in_cord);
            let nest = plan.knot().nest_of(this.strand);
            assert!(close(one - other, consumption.per_leg(nest)), "{this:?}");
        }
    }
}

/// A cord of the length that was cut reaches to its end; one short by three legs and a half reaches
/// to the end of the leg before the last three, measured wherever the hand is.
#[test]
fn a_measured_cord_reaches_as_far_as_it_does() {
    for plan in grid() {
        let script = Script::new(plan, AtOnce::UpTo(2));
        let consumption = script.rig().unwrap().cord;
        let places: Vec<Place> = script
            .places()
            .filter(|place| matches!(place, Place::Begin { .. } | Place::Lay { .. }))
            .collect();
        for place in places {
            let left = script.remaining(place).unwrap();
            let in_cord = left.takes.unwrap().in_cord;
            let nest = script.plan().knot().nest_of(left.next.strand);
            let leg = consumption.per_leg(nest);
            let reach = |in_hand: f64, there: Place| {
                let measured = Millimetres::new(in_hand).unwrap();
                let history = script.measured(place, measured).unwrap();
                let plan = script.plan().clone().with_cord_history(history);
                script.with_plan(plan).remaining(there).unwrap().reach
            };
            assert!(matches!(
                reach(in_cord + 1.0, place),
                Some(CordReach::Whole(_))
            ));
            // It tells of this cord alone, and as much at the next place of it.
            let later = script.next(place).filter(|later| {
                script.remaining(*later).is_some_and(|other| {
                    (other.next.pass, other.next.strand) == (left.next.pass, left.next.strand)
                })
            });
            let reached = reach(in_cord + 1.0, later.unwrap_or(place));
            assert!(matches!(reached, Some(CordReach::Whole(spare)) if close(spare, 1.0)));
            // The next leg, and one more, lie before the end that is reached.
            if left.legs_of_cord < 6 {
                continue;
            }
            let tail = consumption.allowances().working_tail.get();
            let short = in_cord - tail - 3.5 * leg;
            let legs = u32::from(script.plan().knot().legs_of(left.next.strand));
            let last = u32::from(left.next.leg) + left.legs_of_cord - 1 - 4;
            let expected = PassLeg {
                pass: left.next.pass + u16::try_from((last - 1) / legs).unwrap(),
                leg: u16::try_from((last - 1) % legs + 1).unwrap(),
                ..left.next
            };
            assert_eq!(
                reach(short, place),
                Some(CordReach::UpTo(expected)),
                "{place:?}"
            );
            assert_eq!(
                reach(short, later.unwrap_or(place)),
                Some(CordReach::UpTo(expected)),
                "at the place after {place:?}"
            );
        }
    }
}

fn knots() -> impl Strategy<Value = Knot> {
    (2..=11_u16, 2..=11_u16).prop_flat_map(|(leads, bights)| {
        let runs = (1..leads).prop_map(Weave::Run);
        let codes = prop::collection::vec(any::<bool>(), usize::from(leads - 1))
            .prop_map(|code| Weave::Rows(code.into()));
        prop_oneof![runs, codes].prop_map(move |weave| Knot::new(leads, bights, weave).unwrap())
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// The tyer names every point where cords cross, and takes back as many legs as are told: on
    /// graph paper the leg is off then, and was not before the last of them.
    #[test]
    fn the_place_of_every_crossing_finds_its_leg_and_how_many_come_back(
        knot in knots(),
        passes in 1..=3_u16,
        in_turn in any::<bool>(),
        so_far in any::<prop::sample::Index>(),
    ) {
        let order = if in_turn { LayingOrder::StrandByStrand } else { LayingOrder::PassByPass };
        let laying = Laying::new(knot, passes, order).unwrap();
        let plan = Plan::of(laying, marlinspeak::knot::Side::Right, marlinspeak::knot::Hand::Right);
        let walk = Walk::of(&plan);
        let script = Script::new(plan, AtOnce::WholeLeg);
        let knot = script.plan().knot();
        let laid = so_far.index(walk.legs.len()) + 1;
        let place = match script.plan().laying().nth_leg(u32::try_from(laid).unwrap()) {
            Some(next) => Place::lay(next),
            None => Place::Lift { task: 1 },
        };
        let tube = walk.tube(laid, 0);
        let mut crossings = 0;
        for row in 1..knot.leads() {
            for x in (0..2 * knot.bights()).filter(|x| x % 2 == row % 2) {
                let spots = knot.spots(x / 2 + 1, row);
                prop_assert_eq!(spots.len(), 1, "row {} at {}", row, x);
                let on_paper: Vec<usize> = tube.at((x, row)).iter().copied()
                    .filter(|id| walk.legs[*id].met.iter().any(|met| met.row == row))
                    .collect();
                let suspects = script.suspects(place, spots[0]);
                let found: Vec<(u16, u16, u16)> = suspects.iter().map(|Suspect { pass_leg, .. }| {
                    (pass_leg.pass, pass_leg.strand, pass_leg.leg)
                }).collect();
                let expected: Vec<(u16, u16, u16)> = on_paper.iter().map(|id| {
                    let leg = &walk.legs[*id];
                    (leg.pass, leg.strand, leg.leg)
                }).collect();
                prop_assert_eq!(found, expected);
                // Of a single knot it is one leg, the later of the two.
                prop_assert!(passes > 1 || suspects.len() <= 1);
                for (suspect, id) in suspects.iter().zip(on_paper) {
                    let met = walk.legs[id].met.iter().find(|met| met.row == row).unwrap();
                    prop_assert_eq!(suspect.crossing.over, met.over);
                    prop_assert_eq!(suspect.crossing.cords, met.cords);
                    let fault = script.fault(place, *suspect);
                    let mut tube = walk.tube(laid, 0);
                    for back in 1..=fault.legs_back {
                        prop_assert!(tube.at((x, row)).contains(&id), "off before {} are", back);
                        let last = laid - usize::try_from(back).unwrap();
                        tube.unwind(walk.legs[last].to, last);
                        for (_, point) in walk.legs[last].points.iter().rev() {
                            tube.take(*point, last);
                        }
                    }
                    prop_assert!(!tube.at((x, row)).contains(&id), "not off after {}", fault.legs_back);
                    crossings += 1;
                }
            }
        }
        let met: usize = walk.legs[..laid].iter().map(|leg| leg.met.len()).sum();
        prop_assert_eq!(crossings, met, "every crossing that was made is found, each once");
    }
}

/// An end that is a short way from the fault is told, with what it comes out of.
#[test]
fn a_fault_near_the_end_needs_no_leg_back() {
    let script = Script::new(Plan::read("5", "7", "1", "1").unwrap(), AtOnce::WholeLeg);
    let knot = script.plan().knot();
    let place = Place::Lift { task: 1 };
    let mut mended = 0;
    for (pin, row) in (1..=7).flat_map(|pin| (1..=4).map(move |row| (pin, row))) {
        let spot = knot.spots(pin, row)[0];
        let fault = script.fault(place, script.suspects(place, spot)[0]);
        // The standing end lies in the leg that rises from bottom pin 1, and comes out row by row.
        let is_near = spot.rising.from.number == 1 && row <= 3;
        let worth_it = is_near && fault.legs_back > u32::from(row).max(1);
        let told = fault.by_the_end.map(|mend| (mend.leg, mend.crossings));
        assert_eq!(
            told,
            worth_it.then_some((spot.rising, row)),
            "pin {pin}, row {row}"
        );
        mended += u32::from(told.is_some());
    }
    assert!(mended > 0, "no fault is near the end");
}

/// A tie at a terminal, with nothing but presses and what is said.
fn at_a_terminal(plan: &Plan, steps: usize) -> (Terminal, TempDir) {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    drop(shelf.begin(new_tie(plan)).unwrap());
    let mut terminal = Terminal::take_up(Words::english(), folder.path(), Settings::default());
    for _ in 0..steps {
        terminal.press(" ");
    }
    (terminal, folder)
}

fn last_said(terminal: &Terminal) -> String {
    terminal.said().last().unwrap().clone()
}

#[test]
fn a_fault_is_named_by_ear_and_taken_back_by_presses() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let (mut terminal, _folder) = at_a_terminal(&plan, 0);
    while terminal
        .session()
        .walk()
        .unwrap()
        .script()
        .progress(terminal.session().walk().unwrap().place())
        .laid
        < 10
    {
        terminal.press(" ");
    }
    terminal.press("w");
    assert!(last_said(&terminal).contains("H, when the fault lies further back"));
    terminal.press("h");
    assert!(
        last_said(&terminal).contains("So far pin 1 of 7"),
        "{}",
        last_said(&terminal)
    );
    terminal.press(" ");
    terminal.press(" ");
    assert_eq!(last_said(&terminal), "Bottom pin 3.");
    terminal.press("PageUp");
    // A number is typed as well as counted.
    terminal.press("2");
    assert_eq!(last_said(&terminal), "Row 2 of 4.");
    terminal.press(" ");
    let spot = plan.knot().spots(3, 2)[0];
    let walk = terminal.session().walk().unwrap();
    let suspect = walk.script().suspects(walk.place(), spot)[0];
    let fault = walk.script().fault(walk.place(), suspect);
    let said = last_said(&terminal);
    assert!(
        said.contains(&format!("Leg {} laid it", suspect.pass_leg.leg)),
        "{said}"
    );
    assert!(fault.legs_back > 1);
    assert!(
        said.contains(&format!("{} legs have to come back", fault.legs_back)),
        "{said}"
    );
    for _ in 0..fault.legs_back {
        terminal.press(" ");
    }
    let taken = format!("Taking back leg {}", suspect.pass_leg.leg);
    assert!(
        last_said(&terminal).contains(&taken),
        "{}",
        last_said(&terminal)
    );
    terminal.press("PageUp");
    let place = terminal.session().walk().unwrap().place();
    assert_eq!(place, Place::lay(suspect.pass_leg));
}

#[test]
fn where_nothing_crosses_the_place_is_asked_again() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let (mut terminal, _folder) = at_a_terminal(&plan, 2);
    for key in ["w", "h", "PageUp", "PageUp"] {
        terminal.press(key);
    }
    let said = last_said(&terminal);
    assert!(
        said.starts_with("No cord crosses another there yet."),
        "{said}"
    );
    assert!(said.contains("Beside which bottom pin"), "{said}");
    terminal.press("w");
    assert!(
        last_said(&terminal).contains("Leg "),
        "{}",
        last_said(&terminal)
    );
}

#[test]
fn what_is_measured_is_kept_and_warns_before_a_pass() {
    let plan = on_the_tube(Plan::read("3", "5", "2", "").unwrap());
    let (mut terminal, folder) = at_a_terminal(&plan, 0);
    while !matches!(
        terminal.session().walk().unwrap().place(),
        Place::Lay { .. }
    ) {
        terminal.press(" ");
    }
    terminal.press("c");
    let said = last_said(&terminal);
    assert!(
        said.starts_with("Still to lay in this pass: 10 legs"),
        "{said}"
    );
    assert!(said.contains("press C once more"), "{said}");
    terminal.press("c");
    assert!(
        last_said(&terminal).contains("So far 0 centimetres. Next adds 1 metre."),
        "{}",
        last_said(&terminal)
    );
    terminal.press(" ");
    assert_eq!(last_said(&terminal), "So far 1 metre.");
    terminal.press("PageUp");
    terminal.press("1");
    assert_eq!(last_said(&terminal), "So far 1.1 metres.");
    terminal.press(" ");
    let said = last_said(&terminal);
    let walk = terminal.session().walk().unwrap();
    let Some(CordReach::UpTo(last)) = walk.script().remaining(walk.place()).unwrap().reach else {
        panic!("{said}");
    };
    assert_eq!(last.pass, 2, "this cord is to end in the second pass");
    let reaches = format!("reaches to the end of leg {} in pass 2", last.leg);
    assert!(said.contains(&reaches), "{said}");
    // Taken up again it is still known, and told before the pass that it does not do for.
    drop(terminal);
    let mut terminal = Terminal::take_up(Words::english(), folder.path(), Settings::default());
    while terminal.session().walk().unwrap().place() != Place::begin(2, 1) {
        terminal.press(" ");
    }
    let said = last_said(&terminal);
    assert!(said.starts_with("Mind the cord"), "{said}");
    assert!(said.contains(&reaches), "{said}");
    let page = terminal.session().page().unwrap();
    assert!(page.answer.unwrap().starts_with("Mind the cord"));
}

/// What is on the tube when a cord ran out: with it joined, the tie goes on at the same place, and it
/// is known after a kill.
#[test]
fn a_joined_tie_goes_on_after_a_kill_with_ends_of_its_own() {
    let plan = on_the_tube(Plan::read("5", "7", "1", "").unwrap());
    let ends = plan.ends();
    let (mut terminal, folder) = at_a_terminal(&plan, 0);
    let laid = |terminal: &Terminal| {
        let walk = terminal.session().walk().unwrap();
        walk.script().progress(walk.place()).laid
    };
    while laid(&terminal) < 12 {
        terminal.press(" ");
    }
    let place = terminal.session().walk().unwrap().place();
    let joining = terminal
        .session()
        .walk()
        .unwrap()
        .script()
        .joining(place)
        .unwrap();
    terminal.press("j");
    assert!(
        last_said(&terminal).contains("does it melt"),
        "{}",
        last_said(&terminal)
    );
    // Where am I tells of the joining, and of the tie that it goes on in.
    terminal.press("h");
    let said = last_said(&terminal);
    assert!(
        said.starts_with("You are joining a new cord: step 1 of 7.") && said.contains("12 of 14"),
        "{said}"
    );
    // It does not: no flame is spoken of.
    terminal.press("PageUp");
    let said = last_said(&terminal);
    assert!(said.contains("Cut a new cord"), "{said}");
    assert!(said.contains("glue") && !said.contains("flame"), "{said}");
    let mut told = Vec::new();
    for _ in 0..5 {
        terminal.press(" ");
        told.push(last_said(&terminal));
    }
    assert!(
        told[0].contains(&format!("back to row {}", joining.under.row)),
        "{told:?}"
    );
    assert!(
        told[4].contains(&format!("{} ends to cut", ends + 2)),
        "{told:?}"
    );
    terminal.press(" ");
    assert!(
        last_said(&terminal).starts_with("The new cord is noted."),
        "{}",
        last_said(&terminal)
    );
    assert_eq!(
        terminal.session().walk().unwrap().place(),
        place,
        "the hand is where it was"
    );
    // Killed: nothing is put away, nothing is said goodbye.
    let shelf = Shelf::open(folder.path()).unwrap();
    let kept = loop {
        let ties = shelf.list().unwrap().untroubled().unwrap();
        if !ties[0].plan.cord_history().joins().is_empty() {
            break ties[0].clone();
        }
        std::thread::yield_now();
    };
    std::mem::forget(terminal);
    assert_eq!(kept.place, place);
    let script = Script::new(kept.plan, AtOnce::default());
    assert_eq!(script.plan().ends(), ends + 2);
    let words = Words::english();
    let steps: Vec<String> = script
        .steps()
        .map(|step| words.say(&step).to_string())
        .collect();
    assert!(
        steps
            .iter()
            .any(|said| said.contains("two cords are joined")),
        "no step for the join"
    );
    let trims = format!("Cut each of the {} ends off", ends + 2);
    assert!(steps.iter().any(|said| said.contains(&trims)), "{steps:?}");
    // Begun again it is another tie, in one cord.
    assert_eq!(new_tie(script.plan()).plan.ends(), ends);
}

/// Wherever the hand is, the two are joined under a crossing within a leg of this cord, as near to the
/// middle as one is, and as many crossings come back as lie between it and the hand.
#[test]
fn cords_are_joined_within_a_leg_that_lies_there() {
    for plan in grid() {
        let script = Script::new(plan, AtOnce::UpTo(1));
        let (laying, knot) = (script.plan().laying(), script.plan().knot());
        let mut joined = 0;
        for place in script
            .places()
            .filter(|place| place.pass().is_some() && !script.is_off_pins(*place))
        {
            let Some(joining) = script.joining(place) else {
                continue;
            };
            let pass_leg = joining.pass_leg;
            let laid = script.progress(place).laid;
            let in_hand = laying.nth_leg(laid);
            let lies = laying.legs_before(pass_leg) < laid || in_hand == Some(pass_leg);
            assert!(lies, "{place:?}: {pass_leg:?} does not lie there");
            if let Some(next) = in_hand.filter(|next| *next != pass_leg) {
                assert_eq!(next.strand, pass_leg.strand, "it is another cord");
                assert!(!(next.leg == 1 && script.plan().begins_a_cord(next.pass, next.strand)));
            }
            let rows: Vec<u16> = knot.crossings_of(joining.leg).map(|(row, _)| row).collect();
            assert!(
                rows.contains(&joining.under.row),
                "no crossing in row {}",
                joining.under.row
            );
            if joining.under.cords > 0 {
                assert!(!knot.goes_over(joining.leg.heading(), joining.under.row));
            }
            assert!(
                joining
                    .out_of
                    .iter()
                    .all(|crossing| crossing.row != joining.under.row)
            );
            let forth: Vec<u16> = joining
                .through
                .iter()
                .map(|crossing| crossing.row)
                .collect();
            let back: Vec<u16> = joining
                .out_of
                .iter()
                .rev()
                .map(|crossing| crossing.row)
                .collect();
            assert_eq!(forth, back);
            let runs = script.plan().runs();
            let is_same_cord = |leg: &PassLeg| {
                let mut runs = runs.iter();
                runs.any(|run| {
                    let passes = run.first..=run.last;
                    let [one, other] = [*leg, pass_leg]
                        .map(|leg| leg.strand == run.strand && passes.contains(&leg.pass));
                    one && other
                })
            };
            let after = (0..laying.legs())
                .filter_map(|nth| laying.nth_leg(nth))
                .filter(is_same_cord)
                .filter(|leg| (leg.pass, leg.leg) > (pass_leg.pass, pass_leg.leg));
            assert_eq!(joining.legs_after as usize, after.count(), "{pass_leg:?}");
            joined += 1;
        }
        assert!(joined > 0, "never joined");
    }
}

/// What stands in the place of the step stays when it is to be told more briefly, or in other portions.
#[test]
fn what_stands_aside_stays_when_it_is_told_otherwise() {
    let plan = on_the_tube(Plan::read("5", "7", "1", "").unwrap());
    let (mut terminal, _folder) = at_a_terminal(&plan, 0);
    let laid = |terminal: &Terminal| {
        let walk = terminal.session().walk().unwrap();
        walk.script().progress(walk.place()).laid
    };
    while laid(&terminal) < 12 {
        terminal.press(" ");
    }
    terminal.press("j");
    for key in ["1", "2", "3", "[", "]"] {
        terminal.press(key);
        let said = last_said(&terminal);
        assert!(said.contains("does it melt"), "{key}: {said}");
    }
    terminal.press("PageUp");
    let said = last_said(&terminal);
    assert!(said.contains("Cut a new cord"), "{said}");
}

/// With a join taken back the old cord is in hand again, and what was measured of the new one tells
/// nothing of it.
#[test]
fn a_measure_of_the_new_cord_goes_with_its_join() {
    let plan = on_the_tube(Plan::read("5", "7", "1", "").unwrap());
    let script = Script::new(plan, AtOnce::default());
    let at = |script: &Script, legs: u32| {
        let mut places = script.places();
        places
            .find(|place| script.progress(*place).laid == legs)
            .unwrap()
    };
    let place = at(&script, 12);
    let joining = script.joining(place).unwrap();
    let joined = script.plan().clone();
    let joined = joined.with_cord_history(script.joined(&joining, false));
    let script = script.with_plan(joined);
    let measured = script
        .measured(at(&script, 13), Millimetres::parse("5 m").unwrap())
        .unwrap();
    let plan = script.plan().clone().with_cord_history(measured);
    let script = script.with_plan(plan);
    let left = script.joins_before(joining.pass_leg).unwrap();
    assert!(left.joins().is_empty());
    assert!(left.measures().is_empty(), "{left:?}");
}

/// A length of nothing is said to be none.
#[test]
fn nothing_measured_is_told() {
    let plan = on_the_tube(Plan::read("3", "5", "2", "").unwrap());
    let (mut terminal, _folder) = at_a_terminal(&plan, 2);
    terminal.press("c");
    terminal.press("c");
    terminal.press("PageUp");
    terminal.press("PageUp");
    let said = last_said(&terminal);
    assert!(said.contains("Nothing was measured"), "{said}");
}

/// Lays legs until so many lie.
fn lay(terminal: &mut Terminal, legs: u32) {
    let laid = |terminal: &Terminal| {
        let walk = terminal.session().walk().unwrap();
        walk.script().progress(walk.place()).laid
    };
    while laid(terminal) < legs {
        terminal.press(" ");
    }
}

/// On the loft's tube, with 80 centimetres of cord in the hand after the first leg, until it is asked
/// whether the cord ends.
fn until_the_cord_ends() -> (Terminal, TempDir) {
    let plan = on_the_tube(Plan::read("3", "5", "2", "").unwrap());
    let (mut terminal, folder) = at_a_terminal(&plan, 0);
    lay(&mut terminal, 1);
    for key in ["c", "c", "PageUp", "8", " "] {
        terminal.press(key);
    }
    let walk = terminal.session().walk().unwrap();
    let reach = walk.script().remaining(walk.place()).unwrap().reach;
    let Some(CordReach::UpTo(last)) = reach else {
        panic!("{reach:?}");
    };
    for _ in 0..200 {
        if last_said(&terminal).contains("does not reach to the end of this leg") {
            let next = terminal.session().walk().unwrap().place();
            let legs = terminal.session().walk().unwrap().script().plan().laying();
            let before = legs.nth_leg(
                legs.legs_before(match next {
                    Place::Lay { pass_leg, .. } => pass_leg,
                    other => panic!("{other:?}"),
                }) - 1,
            );
            assert_eq!(
                before,
                Some(last),
                "it is the leg after the last that it reaches"
            );
            return (terminal, folder);
        }
        terminal.press(" ");
    }
    panic!("it is never asked");
}

#[test]
fn where_the_measured_cord_ends_the_one_key_leads_to_a_new_one() {
    let (mut terminal, _folder) = until_the_cord_ends();
    let place = terminal.session().walk().unwrap().place();
    // The one key, to the end of the joining and on.
    terminal.press(" ");
    assert!(
        last_said(&terminal).contains("does it melt"),
        "{}",
        last_said(&terminal)
    );
    for _ in 0..20 {
        if last_said(&terminal).starts_with("The new cord is noted.") {
            break;
        }
        terminal.press(" ");
    }
    let walk = terminal.session().walk().unwrap();
    assert_eq!(walk.script().plan().cord_history().joins().len(), 1);
    assert_eq!(walk.place(), place);
    terminal.press(" ");
    assert!(
        !last_said(&terminal).contains("reach"),
        "{}",
        last_said(&terminal)
    );
}

#[test]
fn a_cord_that_reaches_after_all_is_not_asked_about_again() {
    let (mut terminal, folder) = until_the_cord_ends();
    terminal.press("PageUp");
    let said = last_said(&terminal);
    assert!(
        said.starts_with("What you measured is forgotten."),
        "{said}"
    );
    assert!(said.contains("leg "), "and the step is told: {said}");
    for _ in 0..5 {
        terminal.press(" ");
        assert!(
            !last_said(&terminal).contains("does not reach"),
            "{}",
            last_said(&terminal)
        );
    }
    drop(terminal);
    let terminal = Terminal::take_up(Words::english(), folder.path(), Settings::default());
    let walk = terminal.session().walk().unwrap();
    assert!(walk.script().plan().cord_history().measures().is_empty());
}

/// Pedals learn them as they learn anything else, and with them alone it is measured and joined.
#[test]
fn the_cord_and_a_new_one_have_pedals_of_their_own() {
    let plan = on_the_tube(Plan::read("5", "7", "1", "").unwrap());
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    drop(shelf.begin(new_tie(&plan)).unwrap());
    let mut binder = KeyBinder::default();
    let mut asked = Vec::new();
    for key in ["F5", "F6", "F7", "F8", "F9", "F10", "F2", "F3", "F4", "F1"] {
        asked.push(binder.asks_for().unwrap());
        binder.press(Input::key(key));
    }
    assert_eq!(asked[8..], [Intent::Cord, Intent::Join]);
    let settings = Settings {
        bindings: binder.bindings(),
        ..Settings::default()
    };
    let mut terminal = Terminal::take_up(Words::english(), folder.path(), settings);
    lay(&mut terminal, 3);
    terminal.press("F4");
    assert!(
        last_said(&terminal).starts_with("Still to lay in this pass"),
        "{}",
        last_said(&terminal)
    );
    terminal.press("F4");
    assert!(
        last_said(&terminal).contains("Measure the cord"),
        "{}",
        last_said(&terminal)
    );
    // Where something is asked they ask it again.
    terminal.press("F1");
    assert!(
        last_said(&terminal).contains("Measure the cord"),
        "{}",
        last_said(&terminal)
    );
    terminal.press("w");
    terminal.press("F1");
    assert!(
        last_said(&terminal).contains("does it melt"),
        "{}",
        last_said(&terminal)
    );
}

#[test]
fn before_anything_lies_wrong_offers_nothing_to_take_back() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let (mut terminal, _folder) = at_a_terminal(&plan, 0);
    terminal.press("w");
    assert_eq!(
        terminal.session().page().unwrap().keys,
        Keys::NothingToTakeBack
    );
    // There is no place either that a fault could have.
    terminal.press("h");
    assert!(
        !last_said(&terminal).contains("bottom pin is the fault"),
        "{}",
        last_said(&terminal)
    );
    terminal.press("w");
    lay(&mut terminal, 1);
    terminal.press("w");
    assert_eq!(terminal.session().page().unwrap().keys, Keys::Wrong);
}

/// What a key does and what stands on its button are one thing, while a number is counted and while it
/// is typed.
#[test]
fn the_keys_of_a_number_are_what_they_do() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let (mut terminal, _folder) = at_a_terminal(&plan, 0);
    lay(&mut terminal, 6);
    terminal.press("w");
    terminal.press("h");
    let keys = |terminal: &Terminal| terminal.session().page().unwrap().keys;
    assert_eq!(keys(&terminal), Keys::Counting);
    terminal.press("1");
    terminal.press("2");
    assert_eq!(keys(&terminal), Keys::Typing);
    let page = terminal.session().page().unwrap();
    assert!(
        page.shown
            .notes
            .iter()
            .any(|note| note.contains("last digit away")),
        "{page:?}"
    );
    terminal.press("Backspace");
    terminal.press("Backspace");
    assert_eq!(keys(&terminal), Keys::Counting);
}

/// The picture turns to what is spoken of, wherever it is on the tube.
#[test]
fn the_picture_turns_to_the_place_that_is_named() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let (mut terminal, _folder) = at_a_terminal(&plan, 0);
    lay(&mut terminal, 13);
    terminal.press("w");
    terminal.press("h");
    for pin in 1..=7 {
        let subject = terminal.session().walk().unwrap().subject().unwrap();
        let scene = subject.scene(
            View::RoundTheTube,
            Viewport {
                width: 300.0,
                height: 300.0,
            },
        );
        assert!(scene.is_marked_in_sight(), "pin {pin} is not in sight");
        terminal.press(" ");
    }
}
