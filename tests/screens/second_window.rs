//! A second window for a class: the step stands there while the tyer's own window stays.
#![cfg(feature = "window")]

use crate::hands;

use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::window;
use iced_test::Simulator;
use marlinspeak::app::{self, Message};
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const SPACE: Key = Key::Named(Named::Space);
const F12: Key = Key::Named(Named::F12);

/// Whether the second window shows this.
fn class_sees(hands: &Hands, id: window::Id, text: &str) -> bool {
    let view = hands.app().view_of(id);
    let mut screen = Simulator::with_size(app::settings(), Size::new(1280.0, 720.0), view);
    screen.find(text).is_ok()
}

/// The line of the step in the tyer's own window.
fn line(hands: &Hands) -> String {
    hands.session().walk().unwrap().shown().line.clone()
}

fn boathook(folder: &TempDir) -> Hands {
    let plan = Plan::read("4", "7", "2", "1").unwrap();
    Hands::open(folder.path(), Some(plan))
}

#[test]
fn the_class_sees_the_step_of_the_tyer_from_press_to_press() {
    let folder = TempDir::new().unwrap();
    let mut hands = boathook(&folder);
    assert_eq!(hands.app().second_window(), None);
    hands.press(F12);
    assert!(
        hands
            .last_said()
            .starts_with("The step stands in a second window")
    );
    let id = hands.app().second_window().unwrap();
    let mut lines = Vec::new();
    for _ in 0..6 {
        hands.press(SPACE);
        let line = line(&hands);
        assert!(class_sees(&hands, id, &line), "{line}");
        // The keys are the tyer's affair.
        assert!(!class_sees(&hands, id, "again"));
        lines.push(line);
    }
    lines.dedup();
    assert!(lines.len() > 4, "{lines:?}");
}

#[test]
fn it_is_closed_by_its_key_and_like_any_window_and_the_program_goes_on() {
    let folder = TempDir::new().unwrap();
    let mut hands = boathook(&folder);
    hands.press(F12);
    let first = hands.app().second_window().unwrap();
    hands.press(F12);
    assert_eq!(hands.app().second_window(), None);
    hands.press(F12);
    let second = hands.app().second_window().unwrap();
    assert_ne!(first, second);
    // A message to the one that is gone closes nothing.
    hands.tell(Message::WindowClosed(first));
    assert_eq!(hands.app().second_window(), Some(second));
    hands.tell(Message::CloseWindow(second));
    assert_eq!(hands.app().second_window(), None);
    assert!(!hands.has_exited);
    // The tyer's own window closes the program.
    hands.press(F12);
    hands.tell(Message::CloseWindow(window::Id::unique()));
    assert!(hands.has_exited);
}

#[test]
fn before_a_tie_is_begun_it_says_what_will_stand_there() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(F12);
    let id = hands.app().second_window().unwrap();
    assert!(class_sees(
        &hands,
        id,
        "The step stands here as soon as a knot is begun."
    ));
    hands.press(SPACE);
    assert!(class_sees(&hands, id, &line(&hands)));
    hands.press(Key::Named(Named::Escape));
    assert!(class_sees(
        &hands,
        id,
        "The step stands here as soon as a knot is begun."
    ));
}

#[test]
fn keys_that_go_from_one_window_to_the_other_are_not_lost() {
    let folder = TempDir::new().unwrap();
    let mut hands = boathook(&folder);
    hands.press(F12);
    let second = hands.app().second_window().unwrap();
    let own = window::Id::unique();
    let at = |id, has_focus| Message::At(id, Box::new(Message::focus(has_focus)));
    hands.tell(at(own, true));
    let before = hands.said().len();
    // The second has them before it is known that the first has lost them for good.
    hands.press_on();
    hands.tell(at(own, false));
    hands.tell(at(second, true));
    hands.tell(Message::KeysGone);
    assert_eq!(hands.said().len(), before, "{:?}", hands.last_said());
    // Gone from both, it is told.
    hands.tell(at(second, false));
    hands.tell(Message::KeysGone);
    assert!(
        hands
            .last_said()
            .starts_with("Another window is taking the keys")
    );
}
