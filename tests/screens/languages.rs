//! The language and the units are chosen while the program runs, and everything follows at once.
#![cfg(feature = "window")]

use crate::hands;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::Message;
use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::knot::{Hand, Knot, Side, Weave};
use marlinspeak::session::{Event, Setting};
use marlinspeak::voice::VoiceEvent;
use marlinspeak::words::{LanguageChoice, Units, Words};
use tempfile::TempDir;

const SPACE: Key = Key::Named(Named::Space);

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

fn named(name: Named) -> Key {
    Key::Named(name)
}

fn plan() -> Plan {
    let knot = Knot::new(5, 6, Weave::default()).unwrap();
    Plan::new(knot, 2, Side::Right, Hand::Right).unwrap()
}

/// Opens the settings and goes to a line.
fn settings_at(hands: &mut Hands, line: Setting) {
    hands.press(letter("t"));
    let at = Setting::ALL.iter().position(|known| *known == line);
    for _ in 0..at.unwrap() {
        hands.press(named(Named::Tab));
    }
}

#[test]
fn units_change_under_the_open_tie_and_its_place_stays() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    assert!(hands.last_said().contains("Leave a tail of 15 centimetres"));
    settings_at(&mut hands, Setting::Units);
    hands.press(named(Named::ArrowRight));
    hands.press(named(Named::ArrowRight));
    assert_eq!(
        hands.last_said(),
        "Lengths: in inches and feet. The side arrows change it."
    );
    assert_eq!(hands.settings().language.units, Some(Units::Inch));
    hands.press(named(Named::Escape));
    assert!(hands.last_said().contains("Leave a tail of 6 inches"));
    assert!(hands.sees("Tail of 6 in at bottom 1"));
}

/// What is said of the nth step in these words.
fn step_said(words: &Words, number: usize) -> String {
    let script = Script::new(plan(), AtOnce::default());
    let place = script.places().nth(number).unwrap();
    words.say(&script.step(place).unwrap()).into()
}

#[test]
fn every_language_is_taken_up_in_the_middle_of_a_tie() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    for _ in 0..4 {
        hands.press(SPACE);
    }
    for tag in Words::known() {
        settings_at(&mut hands, Setting::Language);
        hands.press(named(Named::ArrowRight));
        let words = Words::load(Some(&tag.to_string())).unwrap();
        let chosen = hands.settings().language.tag.clone();
        assert_eq!(chosen, Some(tag.to_string()));
        assert!(hands.last_said().contains(&words.language_name()), "{tag}");
        assert!(hands.sees(&words.plainly("settings-heading", &[])), "{tag}");
        hands.press(named(Named::Escape));
        assert_eq!(hands.last_said(), step_said(&words, 4), "{tag}");
        // The voice speaks it too, where it is not the system's own language.
        if !words.is_system_language() {
            assert_eq!(hands.speech().language, Some(tag.to_string()));
        }
    }
}

#[test]
fn what_is_being_mended_stays_so_in_another_language() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    for _ in 0..4 {
        hands.press(SPACE);
    }
    hands.press(letter("w"));
    hands.press(SPACE);
    let taking_back = hands.last_said();
    settings_at(&mut hands, Setting::Units);
    hands.press(named(Named::Escape));
    assert_eq!(hands.last_said(), taking_back);
    // Once back to the step, and once more to the start screen.
    hands.press(named(Named::Escape));
    hands.press(named(Named::Escape));
    assert!(hands.last_said().starts_with("A tie is waiting"));
}

#[test]
fn a_language_without_a_voice_is_told_of_and_the_step_is_heard_again() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    let step = hands.last_said();
    hands.tell(Message::event(Event::Voice(VoiceEvent::NoSuchVoice(
        "en".to_owned(),
    ))));
    let sentence = "The speech service has no voice for English and reads with another: add one to \
                    the system, or choose another language in the settings.";
    assert_eq!(hands.last_said(), format!("{sentence} {step}"));
    assert!(hands.sees(sentence));
    hands.tell(Message::event(Event::Voice(VoiceEvent::NoSuchVoice(
        "Ada".to_owned(),
    ))));
    assert!(
        hands
            .last_said()
            .starts_with("The voice “Ada” is not there")
    );
    // With another speed the settings are others, and the voice is looked for anew.
    hands.press(letter("+"));
    assert!(
        !hands.sees(
            "The voice “Ada” is not there and another one speaks: choose one in the settings."
        )
    );
}

#[test]
fn the_made_up_language_is_offered_nowhere() {
    let words = Words::load(Some("en-XA")).unwrap();
    assert_eq!(words.plainly("settings-heading", &[]), "Séttîîîngss");
    let mut language = LanguageChoice::default();
    for _ in 0..20 {
        language.next_language(true);
        assert!(language.tag.as_deref() != Some("en-XA"));
    }
}
