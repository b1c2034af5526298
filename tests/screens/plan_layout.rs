//! What stands on the plan screen and on the form of the first one is whole: at every size, in every
//! language, as large as a window draws it and as small as for a tyer who sits before it.
#![cfg(feature = "window")]

use crate::hands;

use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced_test::selector::{self, Candidate};
use marlinspeak::app::Message;
use marlinspeak::guide::SetupField;
use marlinspeak::settings::Settings;
use marlinspeak::words::Words;
use tempfile::TempDir;

const WINDOWS: [Size; 6] = [
    Size::new(800.0, 480.0),
    Size::new(1100.0, 760.0),
    Size::new(1366.0, 768.0),
    Size::new(1920.0, 1080.0),
    Size::new(2560.0, 1440.0),
    Size::new(800.0, 1400.0),
];

const TAGS: [&str; 4] = ["en", "de", "es", "fr"];

/// What is covered, by its place among the answers, and what is typed.
type Ask = (usize, &'static [(SetupField, &'static str)]);

const TILLER: Ask = (
    0,
    &[
        (SetupField::Object, "30"),
        (SetupField::Cover, "36"),
        (SetupField::Cord, "3.5"),
    ],
);
const MAT: Ask = (
    3,
    &[(SetupField::Object, "150:40"), (SetupField::Cord, "6")],
);

fn words(tag: &str) -> Words {
    Words::load(Some(tag)).unwrap()
}

fn letter(hands: &mut Hands, letter: &str) {
    hands.press(Key::Character(letter.into()));
}

fn plan_in(tag: &str, folder: &TempDir, (covered, typed): Ask) -> Hands {
    let mut hands = Hands::open_in(words(tag), folder.path(), None, Settings::default());
    letter(&mut hands, "p");
    for _ in 0..covered {
        hands.press(Named::ArrowRight);
    }
    for (field, text) in typed {
        // With the decimal sign of the language.
        let text = if tag == "en" {
            (*text).to_owned()
        } else {
            text.replace('.', ",")
        };
        hands.tell(Message::planned(*field, &text));
    }
    hands
}

/// The same with a knot of 5 leads and 7 bights in mind, for so much of the tiller.
fn in_mind(tag: &str, folder: &TempDir, cover: &str) -> Hands {
    let mut hands = plan_in(tag, folder, TILLER);
    hands.tell(Message::planned(SetupField::Cover, cover));
    hands.tell(Message::planned(SetupField::Cord, "4"));
    hands.press(Named::Tab);
    letter(&mut hands, "5");
    hands.press(Named::Space);
    letter(&mut hands, "7");
    hands
}

/// The room of a window: as a window of this size draws it, and for a tyer who sits before it.
fn rooms(hands: &mut Hands, size: Size) -> [Size; 2] {
    let scale = hands.in_window(size);
    [size * (1.0 / scale), size]
}

/// What of the screen begins in sight and ends out of it: texts, fields and cards.
fn cut(hands: &Hands, size: Size) -> Vec<String> {
    let mut cut = Vec::new();
    let mut see = |what: String, place: iced::Rectangle, seen: Option<iced::Rectangle>| {
        let Some(seen) = seen.filter(|seen| seen.height > 0.5 && seen.width > 0.5) else {
            return;
        };
        if place.height - seen.height > 0.5 || place.width - seen.width > 0.5 {
            cut.push(format!("{what}: {place:?} of which {seen:?}"));
        }
    };
    let mut screen = hands.screen(size);
    let looked = screen.find(|candidate: Candidate<'_>| -> Option<()> {
        match candidate {
            Candidate::Text {
                content,
                bounds,
                visible_bounds,
                ..
            } => see(content.to_owned(), bounds, visible_bounds),
            Candidate::TextInput {
                id,
                bounds,
                visible_bounds,
                ..
            } => see(format!("{id:?}"), bounds, visible_bounds),
            Candidate::Container {
                id: Some(id),
                bounds,
                visible_bounds,
            } => see(format!("{id:?}"), bounds, visible_bounds),
            _ => {}
        }
        None
    });
    assert!(looked.is_err());
    cut
}

fn assert_whole(hands: &Hands, size: Size, at: &str) {
    let cut = cut(hands, size);
    assert!(cut.is_empty(), "{at} {size:?}: {cut:#?}");
}

#[test]
fn nothing_of_the_plan_is_cut_in_any_window_and_language() {
    for tag in TAGS {
        for (name, ask) in [("tiller", TILLER), ("mat", MAT)] {
            let folder = TempDir::new().unwrap();
            let mut hands = plan_in(tag, &folder, ask);
            for size in WINDOWS {
                for room in rooms(&mut hands, size) {
                    assert_whole(&hands, room, &format!("{tag} {name} {size:?}"));
                }
            }
        }
    }
}

#[test]
fn nothing_is_cut_with_a_knot_in_mind() {
    for tag in TAGS {
        for cover in ["36", "90", "900"] {
            let folder = TempDir::new().unwrap();
            let mut hands = in_mind(tag, &folder, cover);
            for size in WINDOWS {
                for room in rooms(&mut hands, size) {
                    assert_whole(&hands, room, &format!("{tag} {cover} {size:?}"));
                }
            }
        }
    }
}

#[test]
fn nothing_of_the_form_of_the_first_screen_is_cut() {
    for tag in TAGS {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open_in(words(tag), folder.path(), None, Settings::default());
        hands.press(Named::Tab);
        for size in WINDOWS {
            for room in rooms(&mut hands, size) {
                assert_whole(&hands, room, &format!("{tag} {size:?}"));
            }
        }
    }
}

/// Where there is a column for it the chosen knot is told whole, below its picture, and large.
#[test]
fn a_wide_window_tells_all_of_the_chosen_knot_and_shows_it_large() {
    for tag in TAGS {
        for ask in [TILLER, MAT] {
            let folder = TempDir::new().unwrap();
            let mut hands = plan_in(tag, &folder, ask);
            for size in &WINDOWS[3..5] {
                let scale = hands.in_window(*size);
                let mut screen = hands.screen(*size * (1.0 / scale));
                let picture = screen.find(selector::id("picture")).expect(tag).bounds();
                let area = picture.width * picture.height;
                assert!(area > 40_000.0, "{tag} {size:?}: {picture:?}");
                let told = screen.find(selector::id("plan-detail")).expect(tag);
                let Some(seen) = told.visible_bounds() else {
                    panic!("{tag} {size:?}");
                };
                let selector::Target::Scrollable { content_bounds, .. } = told else {
                    panic!("not scrolled in");
                };
                assert!(content_bounds.height <= seen.height + 0.5, "{tag} {size:?}");
            }
        }
    }
}

/// The choice between across and round has its words whole in every language.
#[test]
fn how_a_thing_is_measured_is_whole_on_its_buttons() {
    let folder = TempDir::new().unwrap();
    let mut hands = plan_in("de", &folder, TILLER);
    for size in WINDOWS {
        for room in rooms(&mut hands, size) {
            let mut widths = Vec::new();
            let mut screen = hands.screen(room);
            let looked = screen.find(|candidate: Candidate<'_>| -> Option<()> {
                if let Candidate::Text {
                    content: "Durchmesser",
                    bounds,
                    ..
                } = candidate
                {
                    widths.push(bounds.width);
                }
                None
            });
            assert!(looked.is_err());
            // As the name of the field, and on the button.
            assert_eq!(widths.len(), 2, "{widths:?}");
            assert!((widths[0] - widths[1]).abs() < 0.5, "{room:?}: {widths:?}");
        }
    }
}
