//! Laws that hold for every script: its parts, its order, taking back, finding a lost place.

use crate::walk;

use marlinspeak::guide::{
    AtOnce, Checks, FinishTask, Landing, LayStep, Phase, PhaseProgress, Place, Plan, Question,
    Script, Search, What,
};
use marlinspeak::knot::{
    Crossing, Hand, Knot, Lattice, Laying, LayingOrder, PassLeg, Pin, Rim, Side, Weave,
};
use proptest::prelude::*;
use proptest::test_runner::TestCaseError;

use walk::{Laid, Met, Walk};

/// Plain ones up to 12 leads and 12 bights.
fn plain_lattices() -> impl Strategy<Value = Lattice> {
    (2..=12_u16, 2..=12_u16).prop_map(|(leads, bights)| Lattice::plain(leads, bights).unwrap())
}

/// Interwoven ones of two and three nests, whose first cord lands in any row.
fn nested_lattices() -> impl Strategy<Value = Lattice> {
    let rows = (2..=3_u16).prop_flat_map(|nested| (Just(nested), 1..=nested));
    (rows, 3..=5_u16, 2..=5_u16).prop_map(|((nested, lands), leads, bights)| {
        let plain = Lattice::plain(leads, bights).unwrap();
        plain.interwoven(nested, lands).unwrap()
    })
}

/// Any such knot, in any weave.
fn knots() -> impl Strategy<Value = Knot> {
    prop_oneof![2 => plain_lattices(), 1 => nested_lattices()].prop_flat_map(|lattice| {
        let runs = (1..=lattice.rows()).prop_map(Weave::Run);
        let codes = prop::collection::vec(any::<bool>(), usize::from(lattice.rows()))
            .prop_map(|code| Weave::Rows(code.into()));
        prop_oneof![runs, codes].prop_map(move |weave| Knot::woven(lattice, weave).unwrap())
    })
}

/// Any plan; its cords may have names, and with them passes may begin at pins of their own.
fn plans() -> impl Strategy<Value = Plan> {
    let names = prop::collection::vec(prop_oneof!["blue", "white"], 60);
    let ways = any::<[bool; 5]>();
    (knots(), 1..=4_u16, ways, names).prop_map(|(knot, passes, ways, mut names)| {
        let (strands, is_named) = (knot.strands(), ways[3]);
        let order = if ways[0] {
            LayingOrder::PassByPass
        } else {
            LayingOrder::StrandByStrand
        };
        let side = if ways[1] { Side::Right } else { Side::Left };
        let hand = if ways[2] { Hand::Right } else { Hand::Left };
        let plan = Plan::of(Laying::new(knot, passes, order).unwrap(), side, hand);
        let cords = if strands == 1 || ways[4] {
            strands * passes
        } else {
            strands
        };
        names.truncate(cords.into());
        if is_named {
            plan.with_cords(names).unwrap()
        } else {
            plan
        }
    })
}

fn portions() -> impl Strategy<Value = AtOnce> {
    prop_oneof![
        (1..=AtOnce::MOST).prop_map(AtOnce::UpTo),
        Just(AtOnce::WholeLeg)
    ]
}

fn scripts() -> impl Strategy<Value = Script> {
    let checks = prop_oneof![Just(Checks::EachRound), Just(Checks::EachPass)];
    (plans(), portions(), checks)
        .prop_map(|(plan, at_once, checks)| Script::new(plan, at_once).with_checks(checks))
}

fn lay(script: &Script, place: Place) -> Option<LayStep> {
    match script.step(place)?.what {
        What::Lay(lay) => Some(lay),
        _ => None,
    }
}

fn met(crossing: &Crossing) -> Met {
    Met {
        row: crossing.row,
        over: crossing.over,
        cords: crossing.cords,
        of: (crossing.of.from, crossing.of.to),
    }
}

fn pass_leg_of(laid: &Laid) -> PassLeg {
    PassLeg {
        pass: laid.pass,
        strand: laid.strand,
        leg: laid.leg,
    }
}

/// The places on the tube: those before the knot is lifted.
fn on_the_tube(script: &Script) -> impl Iterator<Item = Place> + '_ {
    script
        .places()
        .take_while(|place| !matches!(place.phase(), Phase::Fair | Phase::Finish))
}

/// The state of the work before the step at a place: legs laid whole, crossings of the next.
fn state(script: &Script, place: Place) -> (usize, u16) {
    let whole = script.progress(place).laid.try_into().unwrap();
    (whole, place.crossings_behind())
}

/// A failure is told in full; no file of seeds is kept beside the test.
fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

/// The parts of a job that have a bar of their own.
fn part(place: Place) -> u8 {
    match place.phase() {
        Phase::Kit => 0,
        Phase::Rig => 1,
        Phase::Lead | Phase::Follow | Phase::Check => 2,
        Phase::Lift => 3,
        Phase::Fair => 4,
        Phase::Finish => 5,
    }
}

/// Each part of a job begins with nothing done, goes on step by step, and leaves no more than its
/// last step; the last step of the job leaves nothing.
fn check_phase_progress(script: &Script) -> Result<(), TestCaseError> {
    let mut before: Option<(u8, PhaseProgress)> = None;
    for place in script.places() {
        let (part, phase_progress) = (part(place), script.phase_progress(place));
        prop_assert!(phase_progress.done <= phase_progress.of);
        match before {
            Some((last, earlier)) if last == part => {
                let more = phase_progress.done - earlier.done;
                prop_assert!(more == 1 || part == 2 && more == 0, "{place:?}");
                prop_assert_eq!(phase_progress.of, earlier.of);
            }
            earlier => {
                prop_assert_eq!(phase_progress.done, 0, "{:?}", place);
                if let Some((_, PhaseProgress { done, of })) = earlier {
                    prop_assert!(of - done <= 1, "{:?}", place);
                }
            }
        }
        before = Some((part, phase_progress));
    }
    let last = script.phase_progress(script.last());
    prop_assert_eq!(last.done, last.of);
    Ok(())
}

proptest! {
    #![proptest_config(cases(96))]

    #[test]
    fn every_part_of_a_job_fills_its_bar(script in scripts()) {
        check_phase_progress(&script)?;
    }

    #[test]
    fn the_parts_of_a_leg_add_up_to_the_leg(plan in plans(), picked in any::<prop::sample::Index>()) {
        let walk = Walk::of(&plan);
        let laid = &walk.legs[picked.index(walk.legs.len())];
        let is_home = laid.leg == walk.trip(laid.strand);
        for at_once in (1..=AtOnce::MOST).map(AtOnce::UpTo).chain([AtOnce::WholeLeg]) {
            let script = Script::new(plan.clone(), at_once);
            let parts: Vec<LayStep> = std::iter::successors(
                Some(Place::lay(pass_leg_of(laid))), |place| script.next(*place),
            )
            .map_while(|place| lay(&script, place))
            .take_while(|lay| lay.pass_leg == pass_leg_of(laid))
            .collect();
            let crossings: Vec<Met> = parts.iter().flat_map(|lay| &lay.crossings).map(met).collect();
            prop_assert_eq!(&crossings, &laid.met);
            let last = parts.len();
            let mut behind = 0;
            for (part, number) in parts.iter().zip(1..) {
                prop_assert_eq!((part.leg.from, part.leg.to), (laid.from, laid.to));
                prop_assert_eq!((usize::from(part.part), usize::from(part.parts)), (number, last));
                if let AtOnce::UpTo(most) = at_once {
                    prop_assert!(part.crossings.len() <= usize::from(most));
                } else {
                    prop_assert_eq!(last, 1);
                }
                match (number == last, part.landing) {
                    (false, landing) => prop_assert_eq!(landing, Landing::OnTheWay),
                    (true, landing) if is_home => prop_assert!(matches!(
                        landing,
                        Landing::HomeAndOn | Landing::HomeToWait | Landing::HomeToEnd
                    )),
                    (true, landing) if laid.pass == 1 => prop_assert_eq!(landing, Landing::Round),
                    (true, landing) => {
                        // Right of a cord that goes to the right is the inside at the top.
                        let is_inner = (plan.side == Side::Right) == (plan.hand == Hand::Right);
                        let is_inside = is_inner == (laid.to.rim == Rim::Top);
                        let inside = if is_inside { Landing::Inside } else { Landing::Outside };
                        prop_assert_eq!(landing, inside);
                    }
                }
                // Every part but the first begins at the crossing where the last one ended.
                prop_assert_eq!(part.landmark.is_some(), number > 1);
                if let Some(mark) = part.landmark {
                    prop_assert!(!part.crossings.is_empty());
                    let row = laid.met[behind - 1].row;
                    prop_assert_eq!(mark.row, row);
                    let knot = plan.knot();
                    let (from, low) = walk.place(laid.from);
                    let (_, high) = walk.place(laid.to);
                    let gone = row.abs_diff(low);
                    prop_assert_eq!(mark.turns, gone / walk.round);
                    // The pin passed last stands no more than a pitch behind the hand.
                    let hand = from + gone + walk.round;
                    let since = (hand - walk.place(mark.past).0) % walk.round;
                    prop_assert!(since < 2 * knot.nested(), "{:?} is {} behind", mark, since);
                    // It is one of the rows that this cord keeps to.
                    let is_low = 2 * row <= low + high;
                    prop_assert_eq!(mark.past.rim == Rim::Bottom, is_low);
                    let rows = [laid.from, laid.to].into_iter().filter(|pin| pin.rim == mark.past.rim);
                    prop_assert!(rows.map(|pin| pin.row).eq([mark.past.row]));
                }
                behind += part.crossings.len();
            }
        }
    }

    #[test]
    fn next_and_back_are_inverse_and_every_place_is_settled(script in scripts()) {
        let places: Vec<Place> = script.places().collect();
        prop_assert_eq!(places.first(), Some(&script.first()));
        prop_assert_eq!(places.last(), Some(&script.last()));
        prop_assert_eq!(script.back(places[0]), None);
        prop_assert_eq!(script.next(script.last()), None);
        for pair in places.windows(2) {
            prop_assert_eq!(script.back(pair[1]), Some(pair[0]));
        }
        for place in places {
            prop_assert_eq!(script.settle(place), place);
            prop_assert!(script.step(place).is_some_and(|step| step.place == place));
        }
    }

    #[test]
    fn the_legs_come_in_order_each_once(script in scripts()) {
        let walk = Walk::of(script.plan());
        let mut turns: Vec<PassLeg> = on_the_tube(&script)
            .filter_map(|place| lay(&script, place))
            .map(|lay| lay.pass_leg)
            .collect();
        turns.dedup();
        let walked: Vec<PassLeg> = walk.legs.iter().map(pass_leg_of).collect();
        prop_assert_eq!(turns, walked);
    }

    #[test]
    fn a_place_keeps_its_crossing_when_more_or_less_is_told(script in scripts(), other in portions()) {
        let told = Script::new(script.plan().clone(), other).with_checks(script.checks());
        for place in on_the_tube(&script) {
            let settled = told.settle(place);
            prop_assert_eq!(settled.phase(), place.phase());
            prop_assert_eq!((settled.pass(), settled.strand()), (place.pass(), place.strand()));
            prop_assert_eq!((settled.leg(), settled.item()), (place.leg(), place.item()));
            if let Some(lay) = lay(&told, settled) {
                let here = usize::from(place.crossings_behind());
                let begins = usize::from(settled.crossings_behind());
                let ends = begins + lay.crossings.len();
                prop_assert!(begins <= here && (here < ends || ends == 0), "{:?}", settled);
            }
        }
    }

    #[test]
    fn the_whereabouts_are_where_the_hand_is(script in scripts()) {
        let walk = Walk::of(script.plan());
        let strands = script.plan().knot().strands();
        for place in script.places() {
            let told = script.whereabouts(place);
            let (whole, _) = state(&script, place);
            prop_assert_eq!(usize::try_from(told.left).unwrap(), walk.legs.len() - whole);
            prop_assert_eq!((told.phase, told.strands), (place.phase(), strands));
            // A look at the work belongs to the leg before; so does all that comes after laying.
            let is_after = !matches!(place.phase(), Phase::Lead | Phase::Follow);
            let here = &walk.legs[if is_after { whole - 1 } else { whole }];
            prop_assert_eq!((told.pass, told.strand), (here.pass, here.strand));
            prop_assert_eq!(told.legs, walk.trip(here.strand));
            let laid = if is_after { here.leg } else { here.leg - 1 };
            prop_assert_eq!(told.laid, laid);
            prop_assert_eq!(told.at, if is_after { here.to } else { here.from });
            let next = if is_after { walk.legs.get(whole) } else { Some(here) };
            let next = next.filter(|next| (next.pass, next.strand) == (here.pass, here.strand));
            prop_assert_eq!(told.next, next.map(|next| next.to));
        }
    }

    #[test]
    fn a_look_sees_what_lies_there(script in scripts()) {
        let walk = Walk::of(script.plan());
        for place in on_the_tube(&script) {
            let Some(What::Check(check)) = script.step(place).map(|step| step.what) else {
                continue;
            };
            let (whole, _) = state(&script, place);
            let legs = &walk.legs[..whole];
            let last = &legs[whole - 1];
            prop_assert_eq!(check.after, pass_leg_of(last));
            prop_assert_eq!((check.round, check.rounds), (last.leg / 2, walk.trip(last.strand) / 2));
            prop_assert_eq!((check.at, check.last.leg.to), (last.to, last.to));
            prop_assert_eq!(check.last.leg.from, last.from);
            let told: Vec<bool> = check.last.crossings.iter().map(|met| met.over).collect();
            let met: Vec<bool> = last.met.iter().map(|met| met.over).collect();
            prop_assert_eq!(told, met);
            // Every crossing that was made lies there, each as many times as cords were met.
            let made: u32 = legs.iter().flat_map(|laid| &laid.met).map(|met| u32::from(met.cords)).sum();
            let is_alone = last.pass == 1 && check.strands == 1;
            prop_assert_eq!(check.crossings, is_alone.then_some(made));
            // The pins that this pass went round hold as many cords as are told.
            for laid in legs.iter().filter(|laid| (laid.pass, laid.strand) == (last.pass, last.strand)) {
                prop_assert_eq!(walk.come(laid.to, whole), usize::from(check.cords));
            }
            let is_whole = walk.legs.iter().all(|laid| walk.come(laid.to, whole) == usize::from(check.cords));
            prop_assert_eq!(check.is_whole, is_whole);
            prop_assert_eq!(usize::from(check.rows), walk.crossed(last).len());
        }
    }

    #[test]
    fn an_end_is_tucked_where_a_cord_lies_over_its_way(plan in plans()) {
        let script = Script::new(plan.clone(), AtOnce::WholeLeg);
        let walk = Walk::of(&plan);
        let whole = walk.tube(walk.legs.len(), 0);
        let mut tucks = Vec::new();
        let steps = script.places().filter(|place| place.phase() == Phase::Finish);
        for step in steps.filter_map(|place| script.step(place)) {
            if let What::Finish(finish) = step.what
                && let FinishTask::Tuck(tuck) = finish.task
            {
                tucks.push(tuck);
            }
        }
        // A cord begins where a pass is not laid with the cord of the pass before.
        let begins: Vec<&Laid> = walk.legs.iter()
            .filter(|laid| laid.leg == 1 && plan.begins_a_cord(laid.pass, laid.strand))
            .collect();
        prop_assert_eq!(tucks.len(), 2 * begins.len());
        for tuck in tucks {
            let pin = tuck.pin;
            prop_assert!(begins.iter().any(|laid| laid.strand == tuck.strand && laid.from == pin));
            // The working end goes on along the leg that leaves there, the tail back along the
            // one that lands there.
            let goes = |laid: &&Laid| if tuck.is_working { laid.from == pin } else { laid.to == pin };
            let along = walk.legs.iter().find(goes).unwrap();
            prop_assert_eq!((tuck.along.from, tuck.along.to), (along.from, along.to));
            let crossed = walk.crossed(along);
            let mut rows: Vec<_> =
                along.points.iter().copied().filter(|(row, _)| crossed.contains(row)).collect();
            rows.sort_unstable();
            let rises = tuck.is_working;
            let over = |row| plan.knot().weave().rising_over(row) == rises;
            let unders: Vec<_> = (0..rows.len()).filter(|at| !over(rows[*at].0)).collect();
            // In a broad knot an end is held twice, where the second crossing is not far off.
            let under = match unders[..] {
                [first, second, ..] if plan.knot().leads() >= 5 && second <= first + 4 => Some(rows[second]),
                [first, ..] => Some(rows[first]),
                [] => None,
            };
            let held = tuck.crossings.last();
            prop_assert_eq!(held.map(|held| held.row), under.map(|(row, _)| row));
            // Up to there it goes as the cords beside it, row by row.
            let told = tuck.crossings.iter().map(|crossing| (crossing.row, crossing.over));
            let rows = rows.iter().map(|(row, _)| *row);
            let rows = rows.take_while(|row| held.is_some_and(|held| *row <= held.row));
            prop_assert!(told.eq(rows.map(|row| (row, over(row)))));
            prop_assert_eq!(tuck.beside, plan.laying().passes());
            if let (Some(told), Some((_, point))) = (held, under) {
                let lies_over: Vec<&Laid> = whole.at(point).iter()
                    .map(|id| &walk.legs[*id])
                    .filter(|laid| laid.rises() != rises)
                    .collect();
                prop_assert_eq!(lies_over.len(), usize::from(told.cords));
                prop_assert!(lies_over.iter().all(|laid| (laid.from, laid.to) == (told.of.from, told.of.to)));
            }
        }
    }

    #[test]
    fn taking_back_leg_by_leg_empties_the_tube(script in scripts(), picked in any::<prop::sample::Index>()) {
        let walk = Walk::of(script.plan());
        // Once the pins come out there is nothing to take back to.
        prop_assert!(script.take_back(script.last()).is_none());
        let places: Vec<Place> =
            on_the_tube(&script).filter(|place| !script.is_off_pins(*place)).collect();
        let mut place = places[picked.index(places.len())];
        let (mut whole, crossings) = state(&script, place);
        let mut tube = walk.tube(whole, crossings);
        while let Some(back) = script.take_back(place) {
            if back.is_whole {
                whole -= 1;
                tube.unwind(walk.legs[whole].to, whole);
            }
            let laid = &walk.legs[whole];
            prop_assert_eq!(back.pass_leg, pass_leg_of(laid));
            prop_assert_eq!((back.leg.from, back.leg.to), (laid.from, laid.to));
            let mut undone = Vec::new();
            for &(row, point) in laid.points.iter().rev() {
                if !tube.at(point).contains(&whole) {
                    continue;
                }
                tube.take(point, whole);
                let mut others = tube.at(point).iter().map(|id| &walk.legs[*id])
                    .filter(|other| other.rises() != laid.rises())
                    .peekable();
                if let Some(of) = others.peek().map(|other| (other.from, other.to)) {
                    let over = script.plan().knot().weave().rising_over(row) == laid.rises();
                    let cords = others.count().try_into().unwrap();
                    undone.push(Met { row, over, cords, of });
                }
            }
            let told: Vec<Met> = back.crossings.iter().map(met).collect();
            prop_assert_eq!(told, undone);
            // What is told next lays this very leg again.
            prop_assert_eq!(state(&script, back.place), (whole, 0));
            place = back.place;
        }
        prop_assert_eq!(whole, 0);
        prop_assert!(tube.is_empty());
    }
}

/// Somebody who sees the tube as it is.
struct Witness<'w> {
    walk: &'w Walk,
    whole: usize,
    crossings: u16,
    /// Whether the hand holds the cord that is laid next, and not the one laid last.
    has_taken_up: bool,
}

impl Witness<'_> {
    /// The pin that the cord in hand went round last, and whether it came there or began there.
    fn at(&self) -> (Pin, bool) {
        let next = self.walk.legs.get(self.whole);
        match next {
            Some(next) if next.leg == 1 && (self.has_taken_up || self.crossings > 0) => {
                // A cord that goes on came home to this pin; another only begins there.
                let before = self.walk.legs[..self.whole]
                    .iter()
                    .rfind(|laid| laid.strand == next.strand);
                let came = before.is_some_and(|laid| laid.to == next.from);
                (next.from, came)
            }
            _ => {
                let last = &self.walk.legs[self.whole - 1];
                (last.to, true)
            }
        }
    }

    fn answers(&self, plan: &Plan, question: Question) -> bool {
        let (at, mut came) = self.at();
        if let Some(next) = self.walk.legs.get(self.whole)
            && next.leg == 1
            && (self.has_taken_up || self.crossings > 0)
        {
            came &= !plan.begins_a_cord(next.pass, next.strand);
        }
        let come = |pin| self.walk.come(pin, self.whole);
        match question {
            Question::LastPin(pin) => pin == at,
            Question::Came { pin, cords } => pin == at && came && come(pin) == usize::from(cords),
            Question::CameHome { pin, times } => come(pin) == usize::from(times),
            Question::OnlyTail { pin, pass } => {
                pin == at && !came && come(pin) == usize::from(pass - 1)
            }
            Question::Crossed { pin, crossings } => pin == at && self.crossings >= crossings,
        }
    }
}

/// Where a search ends that begins at a record and is answered truthfully, and how many answers
/// were yes.
fn find(script: &Script, recorded: Place, witness: &Witness) -> (Place, usize) {
    let mut search = Search::new(script, recorded);
    let (mut asked, mut agreed) = (Vec::new(), 0);
    while let Some(question) = search.question() {
        if witness.answers(script.plan(), question) {
            search.yes(script);
            agreed += 1;
            asked.clear();
        } else {
            // A question that comes again was answered before: it will never end.
            assert!(
                !asked.contains(&question),
                "asked again: {question:?} after {asked:?}"
            );
            asked.push(question);
            search.no();
        }
    }
    (search.found().unwrap(), agreed)
}

proptest! {
    #![proptest_config(cases(200))]

    /// The record may be right, or a few legs off either way.
    #[test]
    fn a_lost_place_is_found_at_every_step(script in scripts(), off in -6..=6_i64) {
        let walk = Walk::of(script.plan());
        let places: Vec<Place> = on_the_tube(&script).collect();
        for place in &places {
            let (whole, crossings) = state(&script, *place);
            let recorded = (i64::try_from(whole).unwrap() + off).clamp(0, i64::try_from(walk.legs.len()).unwrap() - 1);
            let recorded = Place::lay(pass_leg_of(&walk.legs[usize::try_from(recorded).unwrap()]));
            for record in [*place, recorded] {
                for has_taken_up in [true, false] {
                    if whole == 0 && !has_taken_up {
                        continue;
                    }
                    let witness = Witness { walk: &walk, whole, crossings, has_taken_up };
                    let (found, agreed) = find(&script, record, &witness);
                    prop_assert_eq!(state(&script, found), (whole, crossings), "{:?} from {:?} {}", place, record, has_taken_up);
                    prop_assert_eq!(script.settle(found), found);
                    prop_assert!(agreed <= 3);
                }
            }
        }
    }
}

/// How many rounds there are to fair follows from tube, cord and object, by rules that may be
/// others when the tie is taken up again.
#[test]
fn a_place_kept_by_other_rules_comes_to_the_nearest_there_is() {
    let plan = Plan::read("5", "7", "2", "1").unwrap();
    let script = Script::new(plan, AtOnce::default()).fairing_by_leg(true);
    let pass_leg = PassLeg {
        pass: 2,
        strand: 1,
        leg: 3,
    };
    let rounds = script.fair_rounds();
    for (kept, nearest) in [
        (
            Place::fair(rounds + 4, pass_leg),
            Place::fair(rounds, pass_leg),
        ),
        (Place::fair(0, pass_leg), Place::fair(1, pass_leg)),
        (Place::Finish { task: 99 }, script.last()),
        (Place::Lift { task: 0 }, Place::Lift { task: 1 }),
        // Nothing was rigged: the job begins with the first cord.
        (Place::Kit { item: 3 }, script.first()),
    ] {
        assert_eq!(script.settle(kept), nearest, "{kept:?}");
    }
    // Nor does the knot have a fifteenth leg.
    let beyond = PassLeg {
        leg: 15,
        ..pass_leg
    };
    let last = PassLeg {
        leg: 14,
        ..pass_leg
    };
    assert_eq!(script.settle(Place::fair(1, beyond)), Place::fair(1, last));
    assert_eq!(script.settle(Place::check(beyond)), Place::check(last));
}
