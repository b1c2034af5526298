//! The whole job on every ground: a rail, a taper, a ball, a board, and round the hand, from the bag to
//! the ends, by one key; and again from the plan screen on by keys and by ear alone.
#![cfg(feature = "window")]

use crate::hands;
use crate::listener;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use listener::{Listener, says};
use marlinspeak::bench::{Cord, Ground, Millimetres, Tube};
use marlinspeak::guide::{Phase, Plan, Setup};
use marlinspeak::words::Words;
use tempfile::TempDir;

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

fn read(leads: &str, bights: &str, passes: &str) -> Plan {
    Plan::read(leads, bights, passes, "").unwrap()
}

fn in_place(plan: Plan, ground: Ground) -> Plan {
    let plan = plan.with_setup(Some(Setup::in_place(ground, Cord::new(mm(4.0)))));
    assert!(plan.rig().is_ok(), "{:?}", plan.rig().err());
    plan
}

const fn taper(bottom: Millimetres, top: Millimetres, over: Millimetres) -> Ground {
    Ground::Taper { bottom, top, over }
}

/// The phases of a job in the order in which one key goes through them, each once where they follow one
/// another, and how many presses it took.
fn gone_through(plan: Plan) -> (Vec<Phase>, usize) {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan));
    let (mut phases, mut presses) = (Vec::new(), 0);
    loop {
        let walk = hands.session().walk().expect("a tie in hand");
        let phase = walk.place().phase();
        if phases.last() != Some(&phase) {
            phases.push(phase);
        }
        if walk.is_done() {
            return (phases, presses);
        }
        hands.press(Key::Named(Named::Space));
        presses += 1;
        assert!(presses < 400, "no end: {phases:?}");
    }
}

/// The order of the parts, without the looks between.
fn parts(phases: &[Phase]) -> Vec<Phase> {
    let mut parts: Vec<Phase> = phases.to_vec();
    parts.retain(|phase| *phase != Phase::Check);
    parts.dedup();
    parts
}

const ALL: [Phase; 6] = [
    Phase::Kit,
    Phase::Rig,
    Phase::Lead,
    Phase::Lift,
    Phase::Fair,
    Phase::Finish,
];

#[test]
fn one_key_does_the_whole_job_on_a_rail_a_taper_a_ball_and_a_board() {
    let mat = Ground::Flat {
        outer: mm(150.0),
        hole: None,
    };
    let grounds = [
        Ground::Round(mm(28.0)),
        taper(mm(36.0), mm(28.0), mm(60.0)),
        Ground::Ball(mm(38.0)),
        mat,
    ];
    for ground in grounds {
        let (phases, presses) = gone_through(in_place(read("4", "5", "1"), ground));
        assert_eq!(parts(&phases), ALL, "{ground:?}");
        assert!(presses > 20, "{ground:?}: {presses}");
    }
}

#[test]
fn one_key_ties_for_a_ball_and_a_taper_on_a_tube_and_slides_the_knot_on() {
    for ground in [taper(mm(34.0), mm(28.0), mm(60.0)), Ground::Ball(mm(38.0))] {
        let mut setup = Setup::new(
            Tube::ringed(mm(45.0), &[14, 20]).unwrap(),
            Cord::new(mm(4.0)),
        );
        setup.finish = Some(marlinspeak::bench::Finish {
            around: ground,
            open_to: None,
        });
        let plan = read("4", "5", "1").with_setup(Some(setup));
        assert!(plan.rig().is_ok(), "{:?}", plan.rig().err());
        let (phases, _) = gone_through(plan);
        assert_eq!(parts(&phases), ALL, "{ground:?}");
    }
}

#[test]
fn one_key_does_the_whole_job_round_the_hand_without_bag_and_rigging() {
    let plan = read("3", "4", "2").with_round_hand().unwrap();
    let (phases, _) = gone_through(plan);
    let expected = [
        Phase::Lead,
        Phase::Follow,
        Phase::Lift,
        Phase::Fair,
        Phase::Finish,
    ];
    assert_eq!(parts(&phases), expected);
}

/// Types into the field that comes next.
fn type_into_next(listener: &mut Listener, text: &str) {
    listener.press(Named::Tab);
    listener.desk.type_in(text);
    listener.hears();
}

/// Goes on with one key to the end of the job, and gives back all that was said.
fn to_the_end(listener: &mut Listener) -> String {
    let mut all = listener.press(Named::Enter);
    for _ in 0..400 {
        let said = listener.press(Named::Space);
        let is_done = said.contains("Press L");
        all = format!("{all} {said}");
        if is_done {
            return all;
        }
    }
    panic!("no end was heard: {all}");
}

/// Plans by keys alone for what is heard, chooses no knot but the best, and ties it to the end.
fn heard_of(covered: &str, measures: &[&str], has_choice: bool) -> String {
    let (mut listener, _) = Listener::start(Words::english());
    listener.patience = 20;
    listener.letter("p");
    if covered != "a handle or a rail" {
        listener.press_until(Named::ArrowRight, covered);
    }
    if has_choice {
        listener.press(Named::Tab);
        listener.press_until(Named::ArrowRight, "No: it is tied in place");
    }
    for measure in measures {
        type_into_next(&mut listener, measure);
    }
    // One cord and few legs: a tie of minutes.
    listener.press_until(Named::F4, "one cord");
    listener.press_until(Named::F2, "Single knots only");
    let said = to_the_end(&mut listener);
    is_whole(&listener, &said);
    said
}

/// That the bag was packed by ear, every leg told once and in its order, both ends tucked away, and the end
/// of the job told.
fn is_whole(listener: &Listener, said: &str) {
    says(said, &["You will need", "Leg 1.", "Press L"]);
    let walk = listener.desk.hands.session().walk().expect("a tie in hand");
    let plan = walk.script().plan();
    assert!(plan.setup().is_some_and(|setup| setup.in_place));
    assert_eq!((plan.knot().strands(), plan.laying().passes()), (1, 1));
    let legs = plan.knot().legs_of(1);
    let mut after = said;
    for leg in 1..=legs {
        // At once, or the first of its parts.
        let told = [format!("Leg {leg}. "), format!("Leg {leg}, part 1 of")];
        let found = told.iter().filter_map(|told| after.find(told)).min();
        let at = found.unwrap_or_else(|| panic!("no leg {leg} in its turn: {after}"));
        after = &after[at..];
    }
    assert!(!said.contains(&format!("Leg {}", legs + 1)), "{said}");
    let ends = [
        "The working end is at",
        "Pull it snug",
        "The tail from the start is at",
        "Pull it snug",
        "Cut each of the 2 ends off",
    ];
    says(after, &ends);
}

#[test]
fn a_rail_is_covered_by_ear_alone() {
    let said = heard_of("a handle or a rail", &["28", "40", "4"], true);
    says(
        &said,
        &["mark", "near mark 1", "Leg 1.", "far mark", "Press L"],
    );
    for absent in [" tube", " pin ", " bottom ", " top "] {
        let laid = &said[said.find("Leg 1.").unwrap()..];
        assert!(!laid.contains(absent), "“{absent}” in {laid}");
    }
}

#[test]
fn a_taper_is_covered_by_ear_alone() {
    let said = heard_of("tapers", &["36:28", "60", "4"], true);
    says(&said, &["near mark 1", "Leg 1.", "far mark", "Press L"]);
}

#[test]
fn a_ball_is_covered_by_ear_alone() {
    let said = heard_of("a ball or a knob", &["38", "4"], true);
    says(&said, &["Leg 1.", "Press L"]);
    assert!(!said.contains("near mark"), "{said}");
}

#[test]
fn a_mat_is_tied_by_ear_alone() {
    let said = heard_of("a flat mat", &["150", "4"], false);
    says(
        &said,
        &["board", "outer pin 1", "Leg 1.", "inner pin", "Press L"],
    );
}
