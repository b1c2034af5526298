//! The screens, worked by presses.
#![cfg(feature = "window")]

use crate::hands;

use std::fs;
use std::path::Path;

use hands::Hands;
use iced::Size;
use iced::keyboard::key::Named;
use iced::keyboard::{Key, Modifiers};
use marlinspeak::app::{self, Message};
use marlinspeak::guide::{AtOnce, Phase, Place, Plan, Script};
use marlinspeak::knot::PassLeg;
use marlinspeak::words::{Words, bound};
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
        .map(|place| words.say(&script.step(place).unwrap()).into())
        .collect()
}

/// How many presses lead from the first step to the beginning of a leg of the lead pass.
fn presses_to(plan: &Plan, leg: u16) -> usize {
    let script = Script::new(plan.clone(), AtOnce::default());
    let place = Place::lay(PassLeg {
        pass: 1,
        strand: 1,
        leg,
    });
    script.places().position(|other| other == place).unwrap()
}

/// How many presses lead from the first step to the last.
fn presses_to_the_end(plan: &Plan) -> usize {
    Script::new(plan.clone(), AtOnce::default())
        .places()
        .count()
        - 1
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
    assert_eq!(
        hands.last_said(),
        format!(
            "{} This was the last step. Press L to write down what was used, or Escape to leave.",
            steps.last().unwrap()
        )
    );
    assert!(hands.sees("The knot is done"));
}

#[test]
fn the_screen_shows_the_line_the_crossings_and_the_progress() {
    let folder = TempDir::new().unwrap();
    let plan = plan(5, 6, 1);
    let presses = presses_to(&plan, 7);
    let mut hands = Hands::open(folder.path(), Some(plan));
    for _ in 0..presses {
        hands.press(SPACE);
    }
    for text in [
        "Lead pass, leg 7 of 12",
        "Bottom 4 up to top 6 ↗",
        "OVER 1",
        "under 1",
        "Round top 6",
        "5 lead 6 bight · plain, 4 crossings at once",
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
    let presses = presses_to(&new, 7);
    for _ in 0..presses {
        hands.press(SPACE);
    }
    let step = hands.last_said();
    drop(hands);

    let mut hands = Hands::open(folder.path(), None);
    assert_eq!(
        hands.last_said(),
        "A tie is waiting: 5 lead, 6 bight, 6 of 12 legs laid. Press the space bar to take it up, or tab for a new one. F1 tells you all the keys, here and on every screen."
    );
    assert!(hands.sees("6 of 12 legs laid, touched just now"));
    assert!(hands.sees("7 lead 4 bight"));
    hands.press(SPACE);
    assert_eq!(
        hands.last_said(),
        format!(
            "Taking up 5 lead, 6 bight. Lead pass: 6 of 12 legs are laid. The cord is at bottom \
             pin 4, and goes to top pin 6 next. 6 legs are still to lay. {step}"
        )
    );
    hands.press(SPACE);
    assert_eq!(hands.last_said(), script_as_said(&new)[presses + 1]);
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
    let plan = plan(3, 2, 1);
    let presses = presses_to_the_end(&plan);
    let mut hands = Hands::open(folder.path(), Some(plan));
    for _ in 0..presses {
        hands.press(SPACE);
    }
    let ties = hands.ties();
    assert_eq!(ties[0].place.phase(), Phase::Finish);
    hands.press(Key::Named(Named::Escape));
    assert!(hands.last_said().starts_with("No tie is waiting."));
    assert_eq!(hands.ties().len(), 1);
}

#[test]
fn leaving_shows_the_tie_just_left_as_the_one_to_take_up() {
    let folder = TempDir::new().unwrap();
    let plan = plan(5, 6, 1);
    let presses = presses_to(&plan, 4);
    let mut hands = Hands::open(folder.path(), Some(plan));
    for _ in 0..presses {
        hands.press(SPACE);
    }
    let step = hands.last_said();
    hands.press(Key::Named(Named::Escape));
    assert!(hands.sees("3 of 12 legs laid, touched just now"));
    hands.press(SPACE);
    assert!(hands.last_said().ends_with(&step));
}

#[test]
fn the_form_is_worked_by_keys_alone() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    let welcome = "Shall we tie the first one together?";
    assert!(hands.last_said().starts_with(welcome));
    // Past that, and to the sixth part, the hand; the space bar switches it over.
    for _ in 0..6 {
        hands.press(Key::Named(Named::Tab));
    }
    hands.press(SPACE);
    hands.press(Key::Named(Named::Enter));
    assert_eq!(
        hands.last_said(),
        "Mind the pins: they stick out, so keep eyes and palms clear of them. Hold the tube upright, \
         bottom ring down, and look at it from the front. Leave a tail of 15 centimetres hanging at \
         bottom pin 1, and tape it down. You work round to the left, and the pins are numbered that \
         way. Top pin 1 stands half a step to the left of bottom pin 1."
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
        hands.tell(Message::typed(app::StartField::Leads, leads));
        hands.press(Key::Named(Named::Enter));
        assert_eq!(hands.last_said(), sentence);
        assert!(hands.sees(sentence));
    }
    assert!(hands.ties().is_empty());
    hands.tell(Message::typed(app::StartField::Leads, "7"));
    hands.click("Begin this tie");
    assert!(hands.last_said().contains("Leave a tail"));
}

#[test]
fn a_tie_open_elsewhere_is_not_taken_up_twice() {
    let folder = TempDir::new().unwrap();
    let first = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    let mut second = Hands::open(folder.path(), None);
    second.press(SPACE);
    let sentence = "This tie is open in another window or terminal: go on there, or press the same \
                    key again to look only.";
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
    let sentence = "Another window is taking the keys. Click here before you press on.";
    hands.tell(Message::focus(false));
    assert!(hands.sees(sentence));
    hands.tell(Message::focus(true));
    assert!(!hands.sees(sentence));
}

#[test]
fn ctrl_q_closes_with_everything_saved() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1)));
    hands.press(SPACE);
    hands.press_ctrl("q");
    assert!(hands.has_exited);
    assert_eq!(hands.ties()[0].place.leg(), Some(1));
}

#[test]
fn the_tying_screen_looks_as_it_did() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 2)));
    for _ in 0..20 {
        hands.press(SPACE);
    }
    let mut screen = hands.screen(Size::new(1100.0, 760.0));
    let picture = screen.snapshot(&app::theme()).unwrap();
    let kept = Path::new("tests/data/snapshots/tying-tiny-skia.png");
    // A snapshot that is missing would be written and pass.
    assert!(kept.exists() || std::env::var_os("WRITE_SNAPSHOTS").is_some());
    if !picture.matches_image("tests/data/snapshots/tying").unwrap() {
        let shown = Path::new(env!("CARGO_TARGET_TMPDIR")).join("tying-tiny-skia.png");
        let _ = std::fs::remove_file(&shown);
        assert!(
            picture
                .matches_image(shown.with_file_name("tying"))
                .unwrap()
        );
        panic!(
            "{} is what it looks like now; compare it with {}, and keep it by “make snapshots” \
             if it is right",
            shown.display(),
            kept.display()
        );
    }
}

/// The tie of these tests that stands before a leg, and what was said of that step.
fn hands_at(folder: &TempDir, plan: &Plan, leg: u16) -> (Hands, String) {
    let presses = presses_to(plan, leg);
    let mut hands = Hands::open(folder.path(), Some(plan.clone()));
    for _ in 0..presses {
        hands.press(SPACE);
    }
    let step = hands.last_said();
    (hands, step)
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

#[test]
fn where_am_i_is_one_press_spoken_and_shown() {
    let folder = TempDir::new().unwrap();
    let (mut hands, step) = hands_at(&folder, &plan(5, 6, 2), 8);
    hands.press(letter("h"));
    let answer = "Lead pass: 7 of 12 legs are laid. The cord is at top pin 6, and goes to bottom \
                  pin 3 next. 17 legs are still to lay.";
    assert_eq!(hands.last_said(), answer);
    assert!(hands.sees(&bound(answer)));
    hands.press(letter("r"));
    assert_eq!(hands.last_said(), step);
    assert!(!hands.sees(&bound(answer)));
}

#[test]
fn legs_are_taken_back_one_press_each_and_laid_again() {
    let folder = TempDir::new().unwrap();
    let plan = plan(5, 6, 1);
    let (mut hands, _) = hands_at(&folder, &plan, 8);
    hands.press(letter("w"));
    assert_eq!(
        hands.last_said(),
        "Something is wrong. Next takes back leg 7. Back helps you find your place. H, when the \
         fault lies further back. Wrong again leaves everything as it is."
    );
    hands.press(SPACE);
    assert_eq!(
        hands.last_said(),
        "Taking back leg 7. First bring the cord back to top pin 6. Lift the cord off top pin 6. Come back out from under 1 cord, then \
         back over 1 cord. Your hand is at bottom pin 4. Next takes back one more leg, back lays \
         this one again."
    );
    for text in [
        "Taking back leg 7",
        "Back down to bottom 4",
        "out from under 1",
        "back OVER 1",
    ] {
        assert!(hands.sees(text), "{text}");
    }
    hands.press(SPACE);
    assert!(
        hands
            .last_said()
            .starts_with("Taking back leg 6. Lift the cord off bottom pin 4.")
    );
    hands.press(Key::Named(Named::PageUp));
    assert_eq!(
        hands.last_said(),
        script_as_said(&plan)[presses_to(&plan, 6)]
    );
    assert_eq!(hands.ties()[0].place.leg(), Some(6));
}

#[test]
fn wrong_once_more_leaves_all_as_it_is() {
    let folder = TempDir::new().unwrap();
    let (mut hands, step) = hands_at(&folder, &plan(5, 6, 1), 8);
    hands.press(letter("w"));
    hands.press(letter("w"));
    hands.press(letter("r"));
    assert_eq!(hands.last_said(), step);
    assert_eq!(hands.ties()[0].place.leg(), Some(8));
}

#[test]
fn a_lost_place_is_found_by_yes_and_no() {
    let folder = TempDir::new().unwrap();
    let plan = plan(5, 6, 1);
    // The record says leg 8, and the cord is really two legs back: at top pin 1.
    let (mut hands, _) = hands_at(&folder, &plan, 8);
    hands.press(letter("w"));
    hands.press(Key::Named(Named::PageUp));
    assert_eq!(
        hands.last_said(),
        "Is the cord in your hand at top pin 6? Next for yes, back for no."
    );
    assert!(hands.sees("Is it at top 6?"));
    let mut asked = 1;
    while hands.last_said() != "Is the cord in your hand at top pin 1? Next for yes, back for no." {
        hands.press(Key::Named(Named::PageUp));
        asked += 1;
        assert!(asked <= 12, "never asked for it");
    }
    assert!(
        asked <= 4,
        "a pin so near is asked for soon, not after {asked}"
    );
    hands.press(SPACE);
    assert_eq!(
        hands.last_said(),
        "Count the cords round top pin 1, the one in your hand too. Is there just 1? Next for yes, \
         back for no."
    );
    hands.press(SPACE);
    let step = &script_as_said(&plan)[presses_to(&plan, 6)];
    assert_eq!(hands.last_said(), format!("Then this is the place. {step}"));
    assert_eq!(hands.ties()[0].place.leg(), Some(6));
}

#[test]
fn the_depth_changes_at_any_moment_without_losing_the_place() {
    let folder = TempDir::new().unwrap();
    let (mut hands, plain) = hands_at(&folder, &plan(5, 6, 1), 7);
    hands.press(letter("1"));
    assert_eq!(
        hands.last_said(),
        "Brief. Leg 7. Bottom pin 4, up to pin 6. Over, under."
    );
    hands.press(letter("3"));
    assert_eq!(
        hands.last_said(),
        "Teaching. Leg 7, part 1 of 2. From bottom pin 4, up and to the right, to top pin 6. Over 1 \
         cord. Hold your cord there."
    );
    hands.press(letter("2"));
    assert_eq!(hands.last_said(), format!("Plain. {plain}"));
    assert_eq!(hands.ties()[0].place.leg(), Some(7));
}

/// What is taught is large, with how it is made; plain has the whole leg, and brief the least.
#[test]
fn every_depth_has_a_screen_of_its_own() {
    let folder = TempDir::new().unwrap();
    let (mut hands, _) = hands_at(&folder, &plan(5, 6, 1), 7);
    hands.press(letter("3"));
    for seen in ["OVER 1 cord", "Your cord lies on top"] {
        assert!(hands.sees(seen), "{seen}");
    }
    hands.press(letter("2"));
    assert!(!hands.sees("OVER 1 cord") && hands.sees("OVER 1") && hands.sees("under 1"));
    assert!(hands.sees("Bottom 4 up to top 6 ↗") && hands.sees("Round top 6"));
    hands.press(letter("1"));
    assert!(hands.sees("Bottom 4 up to top 6 ↗") && hands.sees("OVER 1"));
    assert!(!hands.sees("Round top 6"));
}

#[test]
fn how_much_is_told_at_once_changes_without_losing_the_place() {
    let folder = TempDir::new().unwrap();
    let plan = plan(9, 4, 1);
    let (mut hands, _) = hands_at(&folder, &plan, 8);
    // The second of four parts: a leg that goes round the whole tube has much to say beside its
    // crossings, and two of them lie behind.
    hands.press(SPACE);
    assert!(
        hands.last_said().contains("Leg 8, part 2 of 4"),
        "{}",
        hands.last_said()
    );
    hands.press(letter("["));
    assert!(
        hands
            .last_said()
            .starts_with("Up to 3 crossings at once. Leg 8, part 2 of 4")
    );
    hands.press(letter("]"));
    hands.press(letter("]"));
    assert!(
        hands
            .last_said()
            .starts_with("Up to 5 crossings at once. Leg 8, part 2 of 3"),
        "{}",
        hands.last_said()
    );
    assert_eq!(hands.ties()[0].place.leg(), Some(8));
}

#[test]
fn the_course_teaches_and_keeps_what_was_tied() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("c"));
    assert!(
        hands.last_said().starts_with("First ties: six knots"),
        "{}",
        hands.last_said()
    );
    assert!(
        hands
            .last_said()
            .contains("Lesson 1 of 6: a bell rope, 3 lead, 5 bight. You have not tied it yet.")
    );
    hands.press(Key::Named(Named::ArrowDown));
    assert!(
        hands
            .last_said()
            .starts_with("Lesson 2 of 6: a bottle collar, 3 lead, 7 bight.")
    );
    hands.press(Key::Named(Named::ArrowUp));
    hands.press(SPACE);
    // The idea, then the first step as a beginner hears it.
    assert!(hands.last_said().starts_with("A small knot worth making"));
    assert!(hands.last_said().contains("The tail stays behind"));
    let taught = Script::new(plan(3, 5, 1), AtOnce::default()).teaching(true);
    for _ in 1..taught.places().count() {
        hands.press(SPACE);
    }
    assert!(hands.sees("The knot is done"));
    drop(hands);
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("c"));
    assert!(
        hands.last_said().contains("Lesson 2 of 6"),
        "{}",
        hands.last_said()
    );
    assert!(hands.sees("1. Bell rope, 3 lead 5 bight: pins, legs, over and under (done)"));
    hands.press(Key::Named(Named::Escape));
    assert!(hands.last_said().starts_with("No tie is waiting."));
}

#[test]
fn the_glossary_goes_from_word_to_word() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("g"));
    assert!(
        hands
            .last_said()
            .contains("Lead. One of the cords met on a straight line")
    );
    hands.press(Key::Named(Named::ArrowDown));
    assert!(
        hands
            .last_said()
            .starts_with("Bight. One scallop along a rim")
    );
    assert!(hands.sees(hands.last_said().strip_prefix("Bight. ").unwrap()));
    hands.press(Key::Named(Named::ArrowUp));
    hands.press(Key::Named(Named::ArrowUp));
    assert!(hands.last_said().starts_with("Nested bights."));
    hands.press(Key::Named(Named::Escape));
    assert!(hands.sees("What will you cover?"));
}

/// A tie at its second step on a disk that does not take its third: a file stands where the folder was.
fn unsaved(folder: &Path) -> (Hands, Vec<String>) {
    let plan = plan(4, 7, 2);
    let steps = script_as_said(&plan);
    let mut hands = Hands::open(&folder.join("ties"), Some(plan));
    hands.press(SPACE);
    hands.shelf();
    fs::remove_dir_all(folder.join("ties")).unwrap();
    fs::write(folder.join("ties"), "in the way").unwrap();
    hands.press(SPACE);
    assert_eq!(hands.last_said(), steps[2]);
    hands.press_ctrl("q");
    assert!(!hands.has_exited, "it is asked first");
    let said = hands.said();
    let asks = |said: &String| said.starts_with("What you pressed last is not saved");
    assert!(said.iter().any(asks), "{said:#?}");
    let mut notices = hands.session().notices().into_iter();
    assert!(notices.any(|notice| asks(&notice)));
    (hands, steps)
}

#[test]
fn leaving_what_is_not_saved_takes_a_second_wish() {
    let folder = TempDir::new().unwrap();
    let (mut hands, _) = unsaved(folder.path());
    // The first half of Ctrl+Q is no press of its own.
    hands.down(Key::Named(Named::Control), Modifiers::empty(), false);
    hands.press_ctrl("q");
    assert!(hands.has_exited && hands.has_left_unsaved());
}

#[test]
fn who_goes_on_instead_is_where_the_last_press_led_and_leaves_with_it_saved() {
    let folder = TempDir::new().unwrap();
    let (mut hands, steps) = unsaved(folder.path());
    hands.press(SPACE);
    let stands = hands.last_said();
    assert!(stands.ends_with(&steps[2]), "not an older place: {stands}");
    fs::remove_file(folder.path().join("ties")).unwrap();
    hands.press(SPACE);
    assert_eq!(hands.last_said(), steps[3]);
    assert_eq!(hands.ties().len(), 1);
    hands.press_ctrl("q");
    assert!(hands.has_exited && !hands.has_left_unsaved());
}
