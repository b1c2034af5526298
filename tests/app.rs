//! The screens, worked by presses.

#[path = "support/hands.rs"]
mod hands;

use std::path::Path;

use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{self, Message};
use marlinspeak::guide::{AtOnce, Phase, Plan, Script};
use marlinspeak::words::Words;
use tempfile::TempDir;

const SPACE: Key = Key::Named(Named::Space);

fn plan(leads: u16, bights: u16, passes: u16) -> Plan {
    Plan::read(
        &leads.to_string(),
        &bights.to_string(),
        &passes.to_string(),
        "1",
    )
    .unwrap()
}

/// Everything said from the first step to the last.
fn script_as_said(plan: &Plan) -> Vec<String> {
    let (script, words) = (
        Script::new(plan.clone(), AtOnce::default()),
        Words::english(),
    );
    script
        .places()
        .map(|place| words.say(&script.step(place).unwrap()))
        .collect()
}

#[test]
fn one_press_a_step_says_every_step_once_and_in_order() {
    let folder = TempDir::new().unwrap();
    let plan = plan(5, 6, 2);
    let steps = script_as_said(&plan);
    let mut hands = Hands::open(folder.path(), Some(plan));
    for _ in 1..steps.len() {
        hands.press(SPACE);
    }
    assert_eq!(hands.said(), steps);
}

#[test]
fn every_key_that_pedals_send_goes_on_and_back() {
    let folder = TempDir::new().unwrap();
    let plan = plan(3, 4, 1);
    let steps = script_as_said(&plan);
    let mut hands = Hands::open(folder.path(), Some(plan));
    let mut at = 0;
    for key in [
        Named::Space,
        Named::Enter,
        Named::PageDown,
        Named::ArrowRight,
    ] {
        hands.press(Key::Named(key));
        at += 1;
        assert_eq!(hands.last_said(), steps[at], "{key:?}");
    }
    for key in [Named::PageUp, Named::ArrowLeft, Named::Backspace] {
        hands.press(Key::Named(key));
        at -= 1;
        assert_eq!(hands.last_said(), steps[at], "{key:?}");
    }
    hands.press(Key::Character("r".into()));
    assert_eq!(hands.last_said(), steps[at]);
    assert_eq!(hands.said().len(), 9);
}

#[test]
fn a_held_key_counts_once() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(3, 4, 1)));
    hands.press(SPACE);
    for _ in 0..30 {
        hands.hold(SPACE);
    }
    assert_eq!(hands.said().len(), 2);
}

#[test]
fn at_either_end_a_press_says_where_that_is() {
    let folder = TempDir::new().unwrap();
    let plan = plan(3, 2, 1);
    let steps = script_as_said(&plan);
    let mut hands = Hands::open(folder.path(), Some(plan));
    hands.press(Key::Named(Named::PageUp));
    assert_eq!(hands.last_said(), steps[0]);
    for _ in 0..steps.len() + 3 {
        hands.press(SPACE);
    }
    assert_eq!(hands.last_said(), *steps.last().unwrap());
    assert!(hands.sees("The knot is laid"));
}

#[test]
fn the_screen_shows_the_line_the_crossings_and_the_progress() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    for _ in 0..7 {
        hands.press(SPACE);
    }
    for text in [
        "Lead pass, leg 7 of 12",
        "Bottom 4 up to top 6",
        "OVER 1",
        "under 1",
        "Round top 6",
        "5 lead 6 bight",
        "Space next · ← back · R again · Esc leave",
    ] {
        assert!(hands.sees(text), "{text}");
    }
    assert!(!hands.sees("Lead pass, leg 8 of 12"));
}

#[test]
fn one_press_takes_up_the_newest_tie_where_it_was_left() {
    let folder = TempDir::new().unwrap();
    let old = plan(7, 4, 1);
    let new = plan(5, 6, 1);
    let mut hands = Hands::open(folder.path(), Some(old));
    hands.press(SPACE);
    drop(hands);
    let mut hands = Hands::open(folder.path(), Some(new.clone()));
    for _ in 0..7 {
        hands.press(SPACE);
    }
    let step = hands.last_said();
    drop(hands);

    let mut hands = Hands::open(folder.path(), None);
    assert_eq!(
        hands.last_said(),
        "A tie is waiting: 5 lead, 6 bight, 6 of 12 legs laid. Press the space bar to take it up."
    );
    assert!(hands.sees("6 of 12 legs laid, touched today"));
    assert!(hands.sees("7 lead 4 bight"));
    hands.press(SPACE);
    assert_eq!(
        hands.last_said(),
        format!("Taking up 5 lead, 6 bight. Lead pass: 6 of 12 legs are laid. {step}")
    );
    hands.press(SPACE);
    assert_eq!(hands.last_said(), script_as_said(&new)[8]);
}

#[test]
fn a_digit_takes_up_an_older_tie() {
    let folder = TempDir::new().unwrap();
    drop(Hands::open(folder.path(), Some(plan(7, 4, 1))));
    drop(Hands::open(folder.path(), Some(plan(5, 6, 1))));
    let mut hands = Hands::open(folder.path(), None);
    hands.press(Key::Character("2".into()));
    assert!(hands.last_said().starts_with("Taking up 7 lead, 4 bight."));
}

#[test]
fn a_finished_tie_waits_no_more_and_stays_on_the_shelf() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(3, 2, 1)));
    for _ in 0..20 {
        hands.press(SPACE);
    }
    let ties = hands.shelf().list().unwrap().ties;
    assert_eq!(ties[0].stands_at().unwrap().phase, Phase::Finish);
    hands.press(Key::Named(Named::Escape));
    assert!(hands.last_said().starts_with("No tie is waiting."));
    assert_eq!(hands.shelf().list().unwrap().ties.len(), 1);
}

#[test]
fn leaving_shows_the_tie_just_left_as_the_one_to_take_up() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    for _ in 0..4 {
        hands.press(SPACE);
    }
    let step = hands.last_said();
    hands.press(Key::Named(Named::Escape));
    assert!(hands.sees("3 of 12 legs laid, touched today"));
    hands.press(SPACE);
    assert!(hands.last_said().ends_with(&step));
}

#[test]
fn the_form_is_worked_by_keys_alone() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    assert!(hands.last_said().starts_with("No tie is waiting."));
    // To the fifth field, the hand; the space bar switches it over.
    for _ in 0..5 {
        hands.press(Key::Named(Named::Tab));
    }
    hands.press(SPACE);
    hands.press(Key::Named(Named::Enter));
    assert_eq!(
        hands.last_said(),
        "Leave a tail of about 15 centimetres at bottom pin 1. Hold it down with tape. The cord \
         will travel to the left round the tube, and the pins are numbered that way."
    );
}

#[test]
fn a_knot_that_cannot_be_is_refused_in_a_sentence_and_nothing_is_lost() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    for (leads, sentence) in [
        ("1", "Leads must be from 2 to 999 and 1 is not: try 5."),
        (
            "many",
            "Leads must be a whole number and “many” is not one: give a number from 2 to 999, \
             such as 5.",
        ),
    ] {
        hands.tell(Message::typed(app::Field::Leads, leads));
        hands.press(Key::Named(Named::Enter));
        assert_eq!(hands.last_said(), sentence);
        assert!(hands.sees(sentence));
    }
    assert!(hands.shelf().list().unwrap().ties.is_empty());
    hands.tell(Message::typed(app::Field::Leads, "7"));
    hands.click("Begin this tie");
    assert!(hands.last_said().starts_with("Leave a tail"));
}

#[test]
fn a_tie_open_elsewhere_is_not_taken_up_twice() {
    let folder = TempDir::new().unwrap();
    let first = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    let mut second = Hands::open(folder.path(), None);
    second.press(SPACE);
    let sentence = "This tie is open in another window or terminal: go on there, or close it and \
                    try again.";
    assert_eq!(second.last_said(), sentence);
    assert!(second.sees(sentence));
    drop(first);
}

#[test]
fn a_damaged_tie_is_put_aside_and_named() {
    let folder = TempDir::new().unwrap();
    drop(Hands::open(folder.path(), Some(plan(5, 6, 1))));
    let file = std::fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .find(|path| {
            path.extension()
                .is_some_and(|extension| extension == "json")
        })
        .unwrap();
    std::fs::write(&file, "not a tie").unwrap();
    let hands = Hands::open(folder.path(), None);
    let name = file.file_name().unwrap().to_string_lossy().into_owned();
    assert!(
        hands.last_said().starts_with(&format!("The file {name} ")),
        "{}",
        hands.last_said()
    );
    assert!(
        !std::fs::read_dir(folder.path())
            .unwrap()
            .any(|entry| entry.unwrap().path() == file)
    );
}

#[test]
fn losing_the_keys_is_shown() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    let sentence = "Another window has the keys. Click here before you press on.";
    hands.tell(Message::Focus(false));
    assert!(hands.sees(sentence));
    hands.tell(Message::Focus(true));
    assert!(!hands.sees(sentence));
}

#[test]
fn ctrl_q_closes_with_everything_saved() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    hands.press(SPACE);
    hands.press_ctrl("q");
    assert!(hands.has_exited);
    assert_eq!(hands.shelf().list().unwrap().ties[0].place.leg, 1);
}

#[test]
fn the_tying_screen_looks_as_it_did() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 2)));
    for _ in 0..25 {
        hands.press(SPACE);
    }
    let mut screen = hands.screen(Size::new(1100.0, 760.0));
    let picture = screen.snapshot(&app::theme()).unwrap();
    // A snapshot that is missing would be written and pass.
    let path = Path::new("tests/data/snapshots/tying-tiny-skia.sha256");
    assert!(path.exists() || std::env::var_os("WRITE_SNAPSHOTS").is_some());
    assert!(picture.matches_hash("tests/data/snapshots/tying").unwrap());
}
