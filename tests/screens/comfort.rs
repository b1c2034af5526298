//! Pedals, voice, sounds and settings in the app, worked by presses.
#![cfg(feature = "window")]

use crate::hands;
use crate::worked;

use std::time::Duration;

use hands::Hands;
use iced::keyboard::key::Named;
use iced::keyboard::{Key, Modifiers};
use marlinspeak::app::{self, Message};
use marlinspeak::guide::{AtOnce, Phase, Place, Plan, Script};
use marlinspeak::knot::Hand;
use marlinspeak::pedal::{Input, Intent};
use marlinspeak::session::{Event, Setting, Timer};
use marlinspeak::settings::{ColourScheme, Settings};
use marlinspeak::voice::{Cue, VoiceError, VoiceEvent, VoiceName};
use marlinspeak::words::Words;
use tempfile::TempDir;
use worked::{pedal, settings_at};

const SPACE: Key = Key::Named(Named::Space);

fn plan() -> Plan {
    Plan::read("3", "4", "2", "1").unwrap()
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

fn named(name: Named) -> Key {
    Key::Named(name)
}

#[test]
fn a_trembling_foot_moves_one_step() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    hands.press(SPACE);
    let said = hands.said().len();
    hands.clock.pass(Duration::from_millis(100));
    hands.down(SPACE, Modifiers::empty(), false);
    assert_eq!(hands.said().len(), said);
    hands.press(SPACE);
    assert_eq!(hands.said().len(), said + 1);
}

#[test]
fn pedals_that_are_no_keys_work_without_more_ado() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    let first = hands.last_said();
    pedal(&mut hands, &Input::Controller(64));
    let second = hands.last_said();
    assert_ne!(first, second);
    pedal(&mut hands, &Input::Pad("East".to_owned()));
    assert_eq!(hands.last_said(), first);
    hands.press(named(Named::F13));
    assert_eq!(hands.last_said(), second);
}

#[test]
fn pedals_are_learnt_by_presses_alone_and_kept() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("t"));
    hands.press(named(Named::Enter));
    assert!(
        hands
            .last_said()
            .ends_with("Press what you want for “next”.")
    );
    let (left, right) = (letter("a"), Input::Note(60));
    hands.press(left.clone());
    assert_eq!(
        hands.last_said(),
        "Key a is next. Press what you want for “back”."
    );
    pedal(&mut hands, &right);
    assert_eq!(
        hands.last_said(),
        "MIDI note 60 is back. Press what you want for “say it again”."
    );
    hands.press(left.clone());
    assert_eq!(
        hands.last_said(),
        "Skipped. Press what you want for “where am I”."
    );
    hands.press(left.clone());
    assert_eq!(hands.last_said(), "Skipped. That is all, and it is kept.");
    let bindings = &hands.settings().bindings;
    assert_eq!(bindings.intent(&Input::key("a")), Some(Intent::Next));
    assert_eq!(bindings.intent(&right), Some(Intent::Back));

    hands.press(named(Named::Escape));
    hands.press(left.clone());
    let first = hands.last_said();
    hands.press(left);
    assert_ne!(hands.last_said(), first);
    pedal(&mut hands, &right);
    assert_eq!(hands.last_said(), first);
}

#[test]
fn escape_leaves_the_learning_with_all_as_it_was() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("t"));
    hands.press(named(Named::Enter));
    hands.press(letter("a"));
    hands.press(named(Named::Escape));
    assert_eq!(*hands.settings(), Settings::default());
}

#[test]
fn slower_and_faster_are_heard_at_once_and_kept() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    for (key, speed) in [("-", 155), ("-", 145), ("+", 155), ("=", 165), ("+", 175)] {
        hands.press(letter(key));
        assert_eq!(hands.speech().words_per_minute, speed);
        assert_eq!(hands.last_said(), format!("{speed} words a minute."));
        assert_eq!(hands.settings().speech("en").words_per_minute, speed);
    }
}

#[test]
fn pause_is_quiet_until_it_or_next_is_pressed() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    let step = hands.last_said();
    hands.press(letter("p"));
    assert!(hands.is_hushed() && hands.sees("Paused"));
    // The keys that go on lie below it, and the bar calls them nothing else.
    assert!(hands.sees("P") && hands.sees("go on") && !hands.sees("next"));
    hands.press(letter("p"));
    assert_eq!(hands.last_said(), step);
    assert!(!hands.is_hushed() && !hands.sees("Paused"));
    hands.press(letter("p"));
    hands.press(SPACE);
    assert!(!hands.sees("Paused"));
    assert_ne!(hands.last_said(), step);
}

#[test]
fn where_am_i_says_what_is_wrong_around_the_tie_too() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    hands.press(SPACE);
    hands.press(letter("h"));
    let place = hands.last_said();
    hands.tell(Message::event(Event::Voice(VoiceEvent::Lost(
        VoiceError::NoAnswer,
    ))));
    hands.press(letter("h"));
    let said = hands.last_said();
    assert!(
        said.starts_with("No voice:") && said.ends_with(&place),
        "{said}"
    );
}

#[test]
fn each_move_has_its_sound() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    let script = Script::new(plan(), AtOnce::default());
    let places: Vec<Place> = script.places().collect();
    for _ in 1..places.len() {
        hands.press(SPACE);
    }
    let sounded: Vec<Cue> = hands.sounded().into_iter().map(|(cue, _)| cue).collect();
    assert_eq!(sounded.len(), places.len() - 1);
    for (pair, cue) in places.windows(2).zip(sounded) {
        let (from, to) = (pair[0], pair[1]);
        let expected = match to.phase() {
            _ if Some(&to) == places.last() => Cue::Done,
            Phase::Check => Cue::Check,
            Phase::Follow | Phase::Lift if from.phase() == Phase::Check => Cue::EndOfPass,
            _ => Cue::Next,
        };
        // A look in the middle of a pass ends nothing.
        let is_same_pass = from.pass() == to.pass() && to.phase() == Phase::Follow;
        let expected = if is_same_pass { Cue::Next } else { expected };
        assert_eq!(cue, expected, "{from:?} {to:?}");
    }
    hands.press(named(Named::PageUp));
    hands.tell(Message::event(Event::Voice(VoiceEvent::Lost(
        VoiceError::NoAnswer,
    ))));
    let last: Vec<Cue> = hands
        .sounded()
        .into_iter()
        .rev()
        .take(2)
        .map(|(cue, _)| cue)
        .collect();
    assert_eq!(last, [Cue::VoiceLost, Cue::Back]);
}

#[test]
fn sounds_can_be_off_and_a_flash_instead() {
    let folder = TempDir::new().unwrap();
    let mut settings = Settings::default();
    settings.cues.is_on = false;
    settings.flash = true;
    let mut hands = Hands::open_with(folder.path(), Some(plan()), settings);
    assert!(!hands.session().is_flashing());
    hands.press(SPACE);
    assert!(hands.sounded().is_empty() && hands.session().is_flashing());
    hands.tell(Message::event(Event::Woken(Timer::Flash)));
    assert!(!hands.session().is_flashing());
}

#[test]
fn every_line_of_the_settings_says_itself() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("t"));
    let mut said = vec![hands.last_said()];
    for _ in 1..Setting::ALL.len() {
        hands.press(named(Named::Tab));
        said.push(hands.last_said());
    }
    assert!(said[0].starts_with("Settings. The up and down arrows"));
    assert_eq!(
        said[6],
        "Speed of the voice: 165 words a minute. The side arrows change it."
    );
    said.sort();
    said.dedup();
    assert_eq!(said.len(), Setting::ALL.len());
    hands.press(named(Named::Escape));
    assert!(hands.last_said().starts_with("No tie is waiting."));
}

#[test]
fn every_line_changes_both_ways_and_says_its_new_value() {
    for line in Setting::ALL
        .iter()
        .copied()
        // A voice is tried before anything changes, and learning has a screen of its own.
        .filter(|line| ![Setting::Learn, Setting::TryKnocks, Setting::Voice].contains(line))
    {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open(folder.path(), None);
        settings_at(&mut hands, line);
        let before = (hands.settings().clone(), hands.last_said());
        // Down first where up is the end of the scale.
        let (there, back) = match line {
            Setting::Volume => (Named::ArrowLeft, Named::ArrowRight),
            _ => (Named::ArrowRight, Named::ArrowLeft),
        };
        hands.press(named(there));
        assert_ne!(*hands.settings(), before.0, "{line:?}");
        assert_ne!(hands.last_said(), before.1, "{line:?}");
        let said = hands.last_said();
        hands.press(named(back));
        assert_ne!(hands.last_said(), said, "{line:?}");
    }
}

#[test]
fn a_voice_of_the_language_is_heard_before_it_is_taken() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    settings_at(&mut hands, Setting::Voice);
    let voices = [
        ("de", "Bruno", "flite"),
        ("en-GB", "Ada", "espeak-ng"),
        ("en-US", "Bo", "flite"),
    ];
    let voices = voices.map(|(language, name, engine)| VoiceName {
        language: language.to_owned(),
        name: name.to_owned(),
        engine: Some(engine.to_owned()),
    });
    hands.tell(Message::event(Event::Voice(VoiceEvent::Voices(
        voices.to_vec(),
    ))));
    assert!(hands.sees("Natural voices, made of a person’s own speech: Bo."));
    let usual = hands.settings().clone();
    let speaks = |hands: &Hands| {
        let speech = hands.speech();
        (speech.voice, speech.engine)
    };
    let called = |name: &str, engine: &str| (Some(name.to_owned()), Some(engine.to_owned()));

    // The natural one comes first, and says something in its own voice. Nothing is taken.
    hands.press(named(Named::ArrowRight));
    assert_eq!(speaks(&hands), called("Bo", "flite"));
    assert!(
        hands
            .last_said()
            .starts_with("Bo, a natural voice. Over 1 cord, under 2"),
        "{}",
        hands.last_said()
    );
    hands.press(named(Named::ArrowRight));
    assert_eq!(speaks(&hands), called("Ada", "espeak-ng"));
    assert!(hands.last_said().starts_with("Ada. Over 1 cord"));
    assert_eq!(*hands.settings(), usual);

    // Escape keeps the one before, and so does another line.
    hands.press(named(Named::Escape));
    assert_eq!(speaks(&hands), (None, None));
    assert_eq!(
        hands.last_said(),
        "Voice: chosen by the speech service. The side arrows let you hear others."
    );
    hands.press(named(Named::ArrowRight));
    hands.press(named(Named::ArrowDown));
    assert_eq!(speaks(&hands), (None, None));
    assert!(hands.last_said().starts_with("Speed of the voice:"));
    assert_eq!(*hands.settings(), usual);

    // Enter takes it.
    hands.press(named(Named::ArrowUp));
    hands.press(named(Named::ArrowRight));
    hands.press(named(Named::Enter));
    let taken = hands.settings().speech("en");
    assert_eq!((taken.voice, taken.engine), called("Bo", "flite"));
    assert_eq!(speaks(&hands), called("Bo", "flite"));
    assert_eq!(
        hands.last_said(),
        "Voice: Bo, a natural one. The side arrows let you hear others."
    );
    // From there on to the next, and back to what was taken.
    hands.press(named(Named::ArrowRight));
    assert_eq!(speaks(&hands), called("Ada", "espeak-ng"));
    hands.press(named(Named::Escape));
    assert_eq!(speaks(&hands), called("Bo", "flite"));
}

#[test]
fn the_colours_change_at_once() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    settings_at(&mut hands, Setting::Theme);
    hands.press(SPACE);
    assert_eq!(hands.settings().colours, ColourScheme::Light);
    assert_eq!(
        hands.app().theme().palette(),
        app::theme_of(ColourScheme::Light).palette()
    );
    assert!(hands.sees("Dark on light"));
}

#[test]
fn with_pacing_it_moves_on_by_itself_and_any_press_holds_it() {
    let folder = TempDir::new().unwrap();
    let settings = Settings {
        pacing: true,
        ..Settings::default()
    };
    let mut hands = Hands::open_with(folder.path(), Some(plan()), settings);
    let rang = || Message::event(Event::Woken(Timer::AutoAdvance));
    hands.tell(rang());
    assert_eq!(hands.said().len(), 1, "it does not know the pace yet");
    for _ in 0..2 {
        hands.press(SPACE);
    }
    hands.tell(rang());
    assert_eq!(hands.said().len(), 4);
    let step = hands.last_said();
    hands.press(SPACE);
    assert_eq!(hands.last_said(), "Held. Next goes on.");
    hands.tell(rang());
    assert_eq!(hands.last_said(), "Held. Next goes on.");
    hands.press(letter("r"));
    assert_eq!(hands.last_said(), step);
    hands.press(SPACE);
    let next = hands.last_said();
    assert_ne!(next, step);
    hands.tell(rang());
    assert_ne!(hands.last_said(), next, "and it goes on by itself again");
}

#[test]
fn losing_the_keys_is_said_once() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan()));
    hands.tell(Message::focus(true));
    let said = hands.said().len();
    hands.tell(Message::focus(false));
    hands.tell(Message::focus(false));
    assert_eq!(hands.said().len(), said + 1);
    assert_eq!(
        hands.last_said(),
        "Another window is taking the keys. Click here before you press on."
    );
}

#[test]
fn the_form_is_filled_in_by_ear_alone() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    let tab = || named(Named::Tab);
    hands.press(tab());
    assert_eq!(
        hands.last_said(),
        "Leads: 5. Type a number; tab goes on, enter begins."
    );
    hands.tell(Message::typed(app::StartField::Leads, ""));
    assert_eq!(hands.last_said(), "Leads: nothing yet. Type a number.");
    hands.tell(Message::typed(app::StartField::Leads, "7"));
    assert!(hands.last_said().starts_with("Leads: 7."));
    for name in ["Bights: 7.", "Passes: 1."] {
        hands.press(tab());
        assert!(hands.last_said().starts_with(name), "{}", hands.last_said());
    }
    hands.press(tab());
    assert_eq!(
        hands.last_said(),
        "Begin this tie: press the space bar. Escape leaves the form. 7 lead 7 bight, 7 strands, \
         18 tucks, or 24 begun with over. Each top pin stands half a step to the right of the bottom pin of its number. \
         The knot only decorates: never let it hold a person or a load, and keep cord and small parts from small \
         children."
    );
    for name in [
        "Weave: over one, under one, begun so that it takes the fewest tucks.",
        "Work to the right.",
    ] {
        hands.press(tab());
        assert!(hands.last_said().starts_with(name), "{}", hands.last_said());
    }
    hands.press(SPACE);
    assert!(hands.last_said().starts_with("Work to the left."));
    hands.press(tab());
    assert!(
        hands
            .last_said()
            .starts_with("Follow on the top-ring side of the first cord.")
    );
    hands.press(named(Named::Enter));
    let begun = Plan::read("7", "7", "1", "1")
        .unwrap()
        .with_hand(Hand::Left);
    let script = Script::new(begun, AtOnce::default());
    let first = script.step(script.first()).unwrap();
    assert_eq!(hands.last_said(), Words::english().say(&first).as_str());
}
