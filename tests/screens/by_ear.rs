//! The whole job by ear: nothing but keys go in, and nothing but the record of speech is looked at.
#![cfg(feature = "window")]

use crate::listener;

use iced::keyboard::key::Named;
use listener::{Listener, says};
use marlinspeak::app::Message;
use marlinspeak::logging::Platform;
use marlinspeak::session::{Event, Timer};
use marlinspeak::voice::{VoiceEvent, VoiceName, VoiceSource};
use marlinspeak::words::Words;

const SPACE: Named = Named::Space;
const TAB: Named = Named::Tab;
const ENTER: Named = Named::Enter;
const ESCAPE: Named = Named::Escape;
const DOWN: Named = Named::ArrowDown;
const RIGHT: Named = Named::ArrowRight;

/// Types, and waits until it is told what was typed: nothing is said until typing rests.
#[track_caller]
fn types(listener: &mut Listener, text: &str) -> String {
    listener.desk.type_in(text);
    assert_eq!(listener.hears(), "", "while “{text}” is typed");
    let woken = Message::event(Event::Woken(Timer::Typing));
    listener.desk.tell(woken);
    listener.hears()
}

#[test]
fn the_first_start_offers_the_first_tie_and_all_keys_in_every_language() {
    for tag in ["en", "de", "es", "fr"] {
        let words = Words::load(Some(tag)).unwrap();
        let (offer, hint) = (
            words.remark(marlinspeak::words::Remark::FirstStartSay),
            words.remark(marlinspeak::words::Remark::KeysHintSay),
        );
        let keys = words.remark(marlinspeak::words::Remark::KeysSay);
        let (mut listener, said) = Listener::start(words);
        says(&said, &[offer.as_str(), hint.as_str()]);
        let told = listener.press(Named::F1);
        says(&told, &[keys.as_str(), "F11", "F1"]);
        assert!(
            !told.contains("Arrow") && !told.contains("Key"),
            "{tag}: {told}"
        );
    }
}

#[test]
fn the_plan_is_worked_blind_from_the_start_to_the_rig() {
    let (mut listener, _) = Listener::start(Words::english());
    // The first question comes first: what is covered, and can it be slid on.
    says(
        &listener.letter("p"),
        &["Plan. Choose what you cover and whether the knot can slide on"],
    );
    says(&listener.press(RIGHT), &["something that tapers"]);
    says(&listener.press(Named::ArrowLeft), &["a handle or a rail"]);
    says(&listener.press(TAB), &["Can the knot slide on? Yes:"]);
    // What is typed is told, and what is wanted next.
    let said = types(&mut listener, "30");
    says(
        &said,
        &[
            "Diameter of the object: 30.",
            "How much of it is to be covered?",
        ],
    );
    says(&listener.press(TAB), &["Length to cover."]);
    let said = types(&mut listener, "30");
    says(&said, &["Length to cover: 30.", "cord"]);
    says(&listener.press(TAB), &["Cord."]);
    // A slip names its field and one way out, and is no list.
    let said = types(&mut listener, "string");
    says(
        &said,
        &[
            "Cord: string.",
            "is not a cord that is known here",
            "4 millimetres",
            "page down",
        ],
    );
    assert!(said.split_whitespace().count() < 45, "{said}");
    for _ in 0..6 {
        listener.press(Named::Backspace);
    }
    let said = types(&mut listener, "4");
    says(&said, &["Cord: 4.", "Knot 1 of"]);
    says(&listener.press(DOWN), &["Knot 2 of"]);
    says(&listener.press(Named::ArrowUp), &["Knot 1 of"]);
    says(&listener.press(TAB), &["Knot you have in mind: none."]);
    says(&listener.press(TAB), &["Cord at hand."]);
    says(&listener.press(TAB), &["Tube."]);
    let said = types(&mut listener, "45");
    says(&said, &["Tube: 45.", "Knot 1 of"]);
    says(&listener.press(TAB), &["Rows of holes"]);
    let said = types(&mut listener, "14,20");
    says(&said, &["14,20", "Knot 1 of"]);
    // Filters are told, with what is left.
    says(&listener.press(Named::F4), &["one cord"]);
    let begun = listener.press(ENTER);
    assert!(!begun.contains("Plan."), "{begun}");
    let rig = listener.press_until(SPACE, "bottom ring");
    assert!(!rig.is_empty());
    listener.press_until(SPACE, "Leg 1");
}

#[test]
fn a_lesson_of_the_course_is_begun_left_taken_up_and_done_by_ear() {
    let (mut listener, _) = Listener::start(Words::english());
    says(
        &listener.letter("c"),
        &["First ties: six knots", "Lesson 1"],
    );
    says(&listener.press(DOWN), &["Lesson 2"]);
    says(&listener.press(Named::ArrowUp), &["Lesson 1"]);
    listener.press(SPACE);
    listener.press_until(SPACE, "Leg 2");
    says(&listener.letter("h"), &["leg"]);
    // Where one is stands over the step, and goes first.
    says(&listener.press(ESCAPE), &["Leg 2"]);
    says(
        &listener.press(ESCAPE),
        &["A tie is waiting", "Press the space bar to take it up"],
    );
    says(&listener.press(SPACE), &["Taking up", "Leg 2"]);
    // Half done it is told to wait, done to be done, and the course offers the next one.
    listener.press(ESCAPE);
    says(
        &listener.letter("c"),
        &["Lesson 1", "You have begun it; it waits"],
    );
    listener.press(ESCAPE);
    listener.press(SPACE);
    listener.press_until(SPACE, "Press L to write down what was used");
    listener.press(ESCAPE);
    says(&listener.letter("c"), &["Lesson 2", "not tied it yet"]);
    says(
        &listener.press(Named::ArrowUp),
        &["Lesson 1", "You have tied it."],
    );
}

#[test]
fn a_tie_is_named_noted_deleted_and_brought_back_on_the_shelf_by_ear() {
    let (mut listener, _) = Listener::start(Words::english());
    listener.press(SPACE);
    listener.press(ESCAPE);
    says(&listener.letter("s"), &["My ties.", "1"]);
    let asks = listener.letter("e");
    assert!(!asks.is_empty());
    says(&types(&mut listener, "bell rope"), &["bell rope."]);
    says(&listener.press(ENTER), &["bell rope"]);
    let deleted = listener.press(Named::Delete);
    says(&deleted, &["Deleted. Press U to have it back."]);
    let back = listener.letter("u");
    says(&back, &["bell rope"]);
    says(&listener.press(SPACE), &["Taking up"]);
}

#[test]
fn a_setting_is_found_changed_and_kept_by_ear() {
    let (mut listener, _) = Listener::start(Words::english());
    says(&listener.letter("t"), &["Settings.", "arrows"]);
    let before = listener.press_until(DOWN, "peed");
    let after = listener.press(RIGHT);
    assert_ne!(before, after);
    says(&after, &["peed"]);
    // What a line is for stands below the list, and is told on request.
    says(&listener.letter("h"), &[&after, "How fast a step is said"]);
    says(&listener.press_until(DOWN, "Knocks on the bench"), &["off"]);
    says(
        &listener.letter("h"),
        &["A microphone listens; nothing is recorded or kept"],
    );
    says(&listener.press(ESCAPE), &["F1 tells you all the keys"]);
}

#[test]
fn a_tie_is_tied_and_logged_by_ear() {
    let (mut listener, _) = Listener::start(Words::english());
    listener.press(SPACE);
    let done = listener.press_until(SPACE, "Press L");
    assert!(!done.is_empty());
    says(
        &listener.letter("l"),
        &["What was really used.", "Cord, as you call it"],
    );
    says(
        &types(&mut listener, "white line"),
        &["Cord, as you call it: white line."],
    );
    says(&listener.press(TAB), &["Cord diameter"]);
    says(&types(&mut listener, "thick"), &["Cord diameter: thick."]);
    // What is wrong is told with its field, and one way out.
    says(
        &listener.press(ENTER),
        &["thick", "is not a length", "such as 4"],
    );
    for _ in 0..5 {
        listener.press(Named::Backspace);
    }
    says(&types(&mut listener, "4 mm"), &["Cord diameter: 4 mm."]);
    says(&listener.press(ENTER), &["Kept."]);
}

#[test]
fn which_voices_are_natural_and_how_one_is_added_here_is_told() {
    let (mut listener, _) = Listener::start(Words::english());
    listener.letter("t");
    listener.press_until(DOWN, "Voice: ");
    let has = |listener: &mut Listener, engine: &str| {
        let voice = VoiceName {
            language: "en-GB".to_owned(),
            name: "Ada".to_owned(),
            engine: Some(engine.to_owned()),
        };
        let voices = Event::Voice(VoiceEvent::Voices(vec![voice]));
        listener.desk.tell(Message::event(voices));
        listener.letter("h")
    };
    let way = match VoiceSource::of("en", Platform::is_debian()) {
        VoiceSource::Debian(package) => format!("sudo apt install {package}"),
        _ => "A module of the speech service".to_owned(),
    };
    let said = has(&mut listener, "espeak-ng");
    says(&said, &["None of them is natural", &way, "adds one"]);
    let said = has(&mut listener, "flite");
    says(
        &said,
        &["Natural voices, made of a person’s own speech: Ada."],
    );
}
