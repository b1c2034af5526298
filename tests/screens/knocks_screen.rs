//! The screen on which knocks are tried, worked by presses and by what the ear reports.
#![cfg(feature = "window")]

use crate::frames;
use crate::hands;
use crate::worked;

use std::time::Duration;

use frames::Window;
use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{Message, ServiceEvent};
use marlinspeak::guide::Plan;
use marlinspeak::pedal::{EarNews, Input, Knock};
use marlinspeak::session::{Event, Setting};
use marlinspeak::settings::Settings;
use tempfile::TempDir;
use worked::{pedal, settings_at};

/// Width and height of the window, in dots.
const WINDOW: (u32, u32) = (1100, 760);

fn plan() -> Plan {
    Plan::read("3", "4", "2", "1").unwrap()
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

fn named(name: Named) -> Key {
    Key::Named(name)
}

fn ear(hands: &mut Hands, news: EarNews) {
    hands.tell(Message::Service(ServiceEvent::Session(Event::Ear(news))));
}

fn knock(number: u8, over_room: f32) -> EarNews {
    let at = Duration::from_secs(9);
    EarNews::Knock(Knock {
        at,
        number,
        over_room,
    })
}

#[test]
fn knocks_are_switched_on_tried_and_say_what_is_done_with_the_sound() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    settings_at(&mut hands, Setting::TryKnocks);
    hands.press(named(Named::Enter));
    assert!(hands.last_said().starts_with("Knocks are switched off"));
    // The settings are come back to where they were left, in sight too.
    hands.press(named(Named::Escape));
    let back = hands.last_said();
    assert!(
        back.starts_with("Settings") && back.contains("Try the knocks"),
        "{back}"
    );
    assert!(hands.sees("Try the knocks"));
    hands.press(named(Named::ArrowUp));
    let above = hands.last_said();
    assert!(above.starts_with("Knocks on the bench: off"), "{above}");
    hands.press(named(Named::ArrowRight));
    assert!(hands.settings().knocks);
    let said = hands.last_said();
    assert!(said.contains("nothing is recorded or kept"), "{said}");
    hands.press(named(Named::ArrowDown));
    hands.press(named(Named::Enter));
    assert!(
        hands
            .last_said()
            .starts_with("Lay the microphone on the bench")
    );
    // A row is told when it is over, by its faintest knock; it does nothing else here.
    ear(&mut hands, knock(1, 24.4));
    ear(&mut hands, knock(2, 8.6));
    pedal(&mut hands, &Input::Knocks(2));
    assert!(
        hands
            .last_said()
            .starts_with("Lay the microphone on the bench")
    );
    ear(&mut hands, EarNews::RowOver(2));
    let faint =
        "2 knocks, 9 decibels over the room: faint. Lay the microphone nearer, or knock harder.";
    assert_eq!(hands.last_said(), faint);
    ear(&mut hands, knock(1, 31.0));
    ear(&mut hands, EarNews::RowOver(1));
    assert_eq!(
        hands.last_said(),
        "1 knock, 31 decibels over the room: clear."
    );
}

#[test]
fn where_they_are_off_they_are_switched_on_where_they_are_tried() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    settings_at(&mut hands, Setting::TryKnocks);
    hands.press(named(Named::Enter));
    assert!(hands.sees("switch them on"));
    assert!(!hands.sees("how loud it is"));
    hands.press(named(Named::Space));
    assert!(hands.settings().knocks);
    let said = hands.last_said();
    let (first, how) = said.split_once(" Lay the microphone").unwrap();
    assert!(first.contains("Nothing is recorded or kept"), "{said}");
    assert!(how.starts_with(" on the bench"), "{said}");
    assert!(hands.sees("how loud it is"));
    assert!(!hands.sees("switch them on"));
    // Where they are on next does nothing: knocks are tried.
    let spoken = hands.said().len();
    hands.press(named(Named::Space));
    assert_eq!(hands.said().len(), spoken);
}

#[test]
fn a_microphone_that_is_missing_is_told_once_and_when_it_is_back() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    let step = hands.last_said();
    let said = hands.said().len();
    ear(&mut hands, EarNews::NoMicrophone);
    assert_eq!(hands.said().len(), said, "nobody wants to be heard");
    settings_at(&mut hands, Setting::Knocks);
    hands.press(named(Named::ArrowRight));
    hands.press(named(Named::Escape));
    let said = hands.said().len();
    ear(&mut hands, EarNews::NoMicrophone);
    let told = hands.last_said();
    assert!(
        told.starts_with("There is no microphone to hear knocks with."),
        "{told}"
    );
    assert!(told.ends_with(&step), "{told}");
    ear(&mut hands, EarNews::NoMicrophone);
    assert_eq!(hands.said().len(), said + 1);
    ear(&mut hands, EarNews::Listens);
    let told = hands.last_said();
    assert!(told.starts_with("The microphone is there again"), "{told}");
    assert_eq!(hands.said().len(), said + 2);
}

/// All that the window shows, by rows of dots.
fn painted(hands: &Hands) -> Vec<[u8; 4]> {
    let mut window = Window::open(WINDOW, true);
    window.frame(hands.view());
    let (dots, _) = window.pixels().as_chunks::<4>();
    dots.to_vec()
}

/// Where a bar stands that is as long as it can be, against what is painted without it: its first dot, how
/// long it is, and its colour.
fn full_bar(full: &[[u8; 4]], empty: &[[u8; 4]]) -> (usize, usize, [u8; 4]) {
    let mut longest = (0, 0, [0; 4]);
    let mut begins = 0;
    for (at, (dot, other)) in full.iter().zip(empty).enumerate() {
        let is_row = at % WINDOW.0 as usize == 0;
        if is_row || dot == other || full[begins] != *dot {
            begins = at;
        }
        if dot != other && at + 1 - begins > longest.1 {
            longest = (begins, at + 1 - begins, *dot);
        }
    }
    longest
}

#[test]
fn the_level_is_shown_and_told_as_it_comes() {
    let folder = TempDir::new().unwrap();
    let on = Settings {
        knocks: true,
        ..Settings::default()
    };
    let mut hands = Hands::open_with(folder.path(), None, on);
    settings_at(&mut hands, Setting::TryKnocks);
    hands.press(named(Named::Enter));
    let none = "How loud it is now: nothing comes from a microphone.";
    assert!(hands.sees(none));
    let empty = painted(&hands);
    ear(&mut hands, EarNews::Level(0.0));
    let (begins, whole, colour) = full_bar(&painted(&hands), &empty);
    assert!(whole > 700, "no bar to be seen: {whole}");

    // Ninety decibels are the whole bar.
    for (level, share, under) in [
        (-20.0, 70.0 / 90.0, "20 decibels"),
        (-45.0, 0.5, "45 decibels"),
        (-89.0, 1.0 / 90.0, "89 decibels"),
        (-120.0, 0.0, "120 decibels"),
        (-0.6, 89.4 / 90.0, "1 decibel"),
    ] {
        let said = hands.said().len();
        ear(&mut hands, EarNews::Level(level));
        let dots = painted(&hands);
        let bar = dots[begins..begins + whole].iter();
        let bar = bar.take_while(|dot| **dot == colour).count();
        let wanted = share * f64::from(u32::try_from(whole).unwrap());
        let bar = f64::from(u32::try_from(bar).unwrap());
        assert!((bar - wanted).abs() <= 4.0, "{level}: {bar} of {whole}");
        let told =
            format!("How loud it is now: {under} under the loudest that the microphone can hear.");
        assert!(hands.sees(&told), "{told}");
        // By ear it is told on request, and only then.
        assert_eq!(hands.said().len(), said);
        hands.press(letter("h"));
        assert!(
            hands.last_said().starts_with(&told),
            "{}",
            hands.last_said()
        );
    }

    // With it the newest row is told; each that was taken stands there, the newest first.
    ear(&mut hands, knock(1, 24.0));
    ear(&mut hands, knock(2, 30.0));
    ear(&mut hands, EarNews::RowOver(2));
    ear(&mut hands, knock(1, 18.0));
    ear(&mut hands, EarNews::RowOver(1));
    hands.press(letter("h"));
    let newest = "1 knock, 18 decibels over the room: clear.";
    assert!(hands.last_said().ends_with(newest), "{}", hands.last_said());
    for row in [newest, "2 knocks, 24 decibels over the room: clear."] {
        assert!(hands.sees(row), "{row}");
    }

    // A microphone that goes takes its level along, and one that comes brings its own.
    ear(&mut hands, EarNews::NoMicrophone);
    hands.press(letter("h"));
    assert!(hands.last_said().starts_with(none), "{}", hands.last_said());
    assert!(hands.sees(none));
    ear(&mut hands, EarNews::Listens);
    ear(&mut hands, EarNews::Level(-30.0));
    hands.press(letter("h"));
    let told = hands.last_said();
    assert!(
        told.starts_with("How loud it is now: 30 decibels"),
        "{told}"
    );
}
