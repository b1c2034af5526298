//! The first question of the plan screen: what is covered, and can the knot slide onto it; by keys, by
//! mouse, by touch and by ear, in every window and language.
#![cfg(feature = "window")]

use crate::desk;
use crate::hands;

use desk::Desk;
use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::bench::{Ground, Millimetres};
use marlinspeak::guide::Plan;
use marlinspeak::settings::Settings;
use marlinspeak::words::Words;
use tempfile::TempDir;

const WINDOWS: [Size; 4] = [
    Size::new(800.0, 480.0),
    Size::new(1100.0, 760.0),
    Size::new(800.0, 1400.0),
    Size::new(1920.0, 1080.0),
];

const ANSWERS: [&str; 4] = [
    "plan-covers round",
    "plan-covers taper",
    "plan-covers ball",
    "plan-covers mat",
];

fn plan_in(words: Words, folder: &TempDir, size: Size) -> Desk {
    let hands = Hands::open_in(words, folder.path(), None, Settings::default());
    let mut desk = Desk::new(hands, size);
    desk.press(Key::Character("p".into()));
    desk
}

fn plan(folder: &TempDir) -> Desk {
    plan_in(Words::english(), folder, WINDOWS[1])
}

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// Takes the best knot once it is found, and gives back what is begun.
fn taken(desk: &mut Desk) -> Plan {
    desk.press(Named::Enter);
    let hands = &desk.hands;
    let ties = hands.ties();
    let tie = ties.first();
    let tie = tie.unwrap_or_else(|| panic!("nothing is begun: {}", hands.last_said()));
    tie.plan.clone()
}

/// To the next field, and into it.
fn then(desk: &mut Desk, text: &str) {
    desk.press(Named::Tab);
    desk.type_in(text);
}

#[test]
fn every_answer_stands_in_the_first_sight_of_every_window() {
    for tag in ["en", "de", "es", "fr"] {
        for size in WINDOWS {
            let folder = TempDir::new().unwrap();
            let desk = plan_in(Words::load(Some(tag)).unwrap(), &folder, size);
            for id in ANSWERS {
                let place = desk.place_of(id);
                let place = place.unwrap_or_else(|| panic!("{tag} {size:?}: {id} is out of sight"));
                // A finger finds it (WCAG 2.2, success criterion 2.5.5).
                assert!(
                    place.width >= 44.0 && place.height >= 44.0,
                    "{tag} {id} {place:?}"
                );
            }
        }
    }
}

#[test]
fn a_rail_is_planned_in_place_by_keys_alone_and_needs_no_tube() {
    let folder = TempDir::new().unwrap();
    let mut desk = plan(&folder);
    desk.press(Named::Tab);
    desk.press(Named::ArrowRight);
    assert!(desk.hands.last_said().contains("No: it is tied in place"));
    then(&mut desk, "28");
    then(&mut desk, "40");
    then(&mut desk, "4");
    assert!(!desk.hands.sees("Rows of holes") && !desk.hands.sees("Tube"));
    let plan = taken(&mut desk);
    let setup = plan.setup().expect("what it is tied on");
    assert!(setup.in_place);
    assert_eq!(setup.ground(), Ground::Round(mm(28.0)));
}

#[test]
fn a_taper_asks_for_both_ends() {
    let folder = TempDir::new().unwrap();
    let mut desk = plan(&folder);
    desk.press(Named::ArrowRight);
    assert!(desk.hands.sees("Its two ends, bottom first"));
    // What is typed at the question is the measure.
    desk.type_in("32");
    let asks = "How thick is it at each end? Give both with a colon between, the bottom end first, such \
                as 32:26 mm.";
    assert!(desk.hands.sees(asks));
    desk.type_in(":26");
    assert!(desk.hands.sees("How much of it is to be covered?"));
    then(&mut desk, "60");
    then(&mut desk, "4");
    desk.press(Named::Enter);
    let plan = desk.hands.ties();
    let plan = plan.first().map(|tie| tie.plan.clone());
    // Without a tube it is tied as it is named; with one it is rigged.
    let setup = plan.as_ref().map(Plan::setup);
    assert_eq!(setup, Some(None));
}

#[test]
fn a_ball_and_a_mat_have_no_length_to_cover_and_a_mat_no_tube() {
    for (id, text, ground) in [
        ("plan-covers ball", "38", Ground::Ball(mm(38.0))),
        (
            "plan-covers mat",
            "150:60",
            Ground::Flat {
                outer: mm(150.0),
                hole: Some(mm(60.0)),
            },
        ),
    ] {
        for by_touch in [false, true] {
            let folder = TempDir::new().unwrap();
            let mut desk = plan(&folder);
            let place = desk.place_of(id).unwrap().center();
            if by_touch {
                desk.touch(place);
            } else {
                desk.click(place);
            }
            let is_mat = ground.is_flat();
            if !is_mat {
                // Tied on the ball itself.
                desk.press(Named::Tab);
                desk.press(Named::ArrowRight);
            }
            assert!(!desk.hands.sees("Length to cover"));
            assert!(!desk.hands.sees("Rows of holes"));
            assert_eq!(desk.hands.sees("Can the knot slide onto it?"), !is_mat);
            then(&mut desk, text);
            then(&mut desk, "4");
            let plan = taken(&mut desk);
            let setup = plan.setup().expect("what it is tied on");
            assert!(setup.in_place, "{id}");
            assert_eq!(setup.ground(), ground, "{id}");
        }
    }
}

#[test]
fn what_was_typed_for_a_tube_is_there_again_when_the_knot_slides_on() {
    let folder = TempDir::new().unwrap();
    let mut desk = plan(&folder);
    desk.press(Named::Tab);
    then(&mut desk, "30");
    then(&mut desk, "36");
    then(&mut desk, "3.5");
    desk.press(Named::Tab);
    desk.press(Named::Tab);
    then(&mut desk, "45");
    // Back to the first question: in place nothing of the tube counts.
    while !desk.hands.last_said().starts_with("Can the knot slide on?") {
        desk.press(Named::Tab);
    }
    desk.press(Named::ArrowRight);
    desk.press(Named::ArrowRight);
    let plan = taken(&mut desk);
    let setup = plan.setup().expect("the tube that was typed");
    assert!(!setup.in_place);
    assert_eq!(setup.tube.diameter, mm(45.0));
}

#[test]
fn the_question_is_heard_with_its_answer_and_the_keys_that_change_it() {
    let folder = TempDir::new().unwrap();
    let mut desk = plan(&folder);
    desk.press(Named::F1);
    let told = desk.hands.last_said();
    assert!(told.contains("Right arrow: another choice."), "{told}");
    desk.press(Named::F1);
    let heard = desk.hands.last_said();
    assert!(
        heard.contains("What you cover: a handle or a rail"),
        "{heard}"
    );
    for expected in [
        "tapers",
        "a ball or a knob",
        "a flat mat",
        "a handle or a rail",
    ] {
        desk.press(Named::ArrowRight);
        let heard = desk.hands.last_said();
        assert!(heard.contains(expected), "{heard}");
    }
}
