//! The plan screen as a gallery, and the first screen: by mouse, by touch and by keys, in every window and
//! language.
#![cfg(feature = "window")]

use crate::desk;
use crate::hands;

use desk::Desk;
use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::{Event, Size, mouse};
use iced_test::selector;
use marlinspeak::app::Message;
use marlinspeak::bench::{Counts, FitAnswer};
use marlinspeak::guide::{Plan, Presets, SetupField, SetupForm};
use marlinspeak::session::Setting;
use marlinspeak::settings::Settings;
use marlinspeak::words::Words;
use tempfile::TempDir;

const WINDOW: Size = Size::new(1100.0, 760.0);
const WINDOWS: [Size; 4] = [
    Size::new(800.0, 480.0),
    WINDOW,
    Size::new(1920.0, 1080.0),
    Size::new(800.0, 1400.0),
];

/// A tiller of 30 mm, of which 36 mm are to be covered with cord of 3.5 mm.
const TILLER: [(SetupField, &str); 3] = [
    (SetupField::Object, "30"),
    (SetupField::Cover, "36"),
    (SetupField::Cord, "3.5"),
];

fn answers() -> Vec<FitAnswer> {
    let form = SetupForm::from_iter(TILLER);
    form.question(&Presets::default()).unwrap().answers()
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

/// The plan screen with the tiller typed in.
fn plan_in(words: Words, folder: &TempDir) -> Hands {
    let mut hands = Hands::open_in(words, folder.path(), None, Settings::default());
    hands.press(letter("p"));
    for (field, text) in TILLER {
        hands.tell(Message::planned(field, text));
    }
    hands
}

fn words(tag: &str) -> Words {
    Words::load(Some(tag)).unwrap()
}

fn tags() -> Vec<String> {
    let known = Words::known();
    let known = known.iter().map(ToString::to_string);
    known.chain(["en-XA".to_owned()]).collect()
}

fn card(place: usize) -> String {
    format!("plan-card {place}")
}

/// How many cards stand whole in the window.
fn whole_cards(desk: &Desk) -> usize {
    let places = (0..answers().len()).filter_map(|place| desk.place_of(card(place)));
    places.count()
}

#[test]
fn the_knots_are_cards_side_by_side_where_there_is_room() {
    for (size, abreast, whole) in [
        (WINDOWS[0], 1, 1),
        (WINDOWS[1], 2, 4),
        (WINDOWS[2], 3, 8),
        (WINDOWS[3], 2, 2),
    ] {
        let folder = TempDir::new().unwrap();
        let desk = Desk::new(plan_in(Words::english(), &folder), size);
        let first = desk.place_of(card(0)).expect("the best knot");
        let row = (0..8).filter_map(|place| desk.place_of(card(place)));
        let beside = row.filter(|other| (other.y - first.y).abs() < 1.0).count();
        assert_eq!(beside, abreast, "{size:?}");
        let room = size.width - first.x - 20.0;
        assert!(first.width <= room, "{size:?} {first:?}");
        let cards = whole_cards(&desk);
        assert!(cards >= whole, "{size:?}: {cards}");
    }
}

#[test]
fn a_card_is_chosen_and_taken_by_mouse_and_by_touch() {
    let counts: Vec<Counts> = answers().iter().map(|answer| answer.counts).collect();
    for by_touch in [false, true] {
        for size in WINDOWS {
            let folder = TempDir::new().unwrap();
            let mut desk = Desk::new(plan_in(Words::english(), &folder), size);
            let nth = usize::from(desk.place_of(card(1)).is_some());
            let place = desk.place_of(card(nth)).unwrap().center();
            let press = |desk: &mut Desk| {
                if by_touch {
                    desk.touch(place);
                } else {
                    desk.click(place);
                }
            };
            if nth > 0 {
                press(&mut desk);
                assert!(desk.hands.last_said().starts_with("Knot 2 of "));
                assert!(desk.hands.ties().is_empty());
            }
            press(&mut desk);
            let tie = &desk.hands.ties()[0];
            assert_eq!(Counts::from(tie.plan.laying()), counts[nth], "{size:?}");
        }
    }
}

#[test]
fn the_wheel_brings_further_cards_into_sight() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(plan_in(Words::english(), &folder), WINDOW);
    let shown = |desk: &Desk, place: usize| {
        let mut screen = desk.hands.screen(WINDOW);
        screen.find(selector::id(card(place))).is_ok()
    };
    assert!(shown(&desk, 0) && !shown(&desk, 20), "all are laid out");
    let place = desk.place_of(card(0)).unwrap().center();
    desk.point_at(place);
    for _ in 0..30 {
        desk.happen(Event::Mouse(mouse::Event::WheelScrolled {
            delta: mouse::ScrollDelta::Lines { x: 0.0, y: -1.0 },
        }));
    }
    assert!(shown(&desk, 20) && !shown(&desk, 0));
    // The arrows go on from the knot that is chosen, and bring it back into sight.
    desk.press(Named::ArrowDown);
    assert!(shown(&desk, 1));
}

/// Nothing on a card is cut, in any language.
#[test]
fn a_card_has_room_for_all_that_stands_on_it() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let hands = plan_in(words(&tag), &folder);
        for size in WINDOWS {
            let mut screen = hands.screen(size);
            for answer in answers().iter().take(2) {
                let mut lines = words(&tag).answer_figures(answer).to_vec();
                lines.push(words(&tag).answer_line(answer));
                for line in lines {
                    let at = format!("{tag} {size:?}: {line}");
                    let Ok(found) = screen.find(line.as_str()) else {
                        // The second card is below what is in sight.
                        assert!(answer != &answers()[0], "{at}");
                        continue;
                    };
                    let (bounds, visible) = (found.bounds(), found.visible_bounds());
                    let Some(visible) = visible else {
                        assert!(answer != &answers()[0], "{at}");
                        continue;
                    };
                    if answer == &answers()[0] {
                        assert!(bounds.height - visible.height < 0.5, "{at}: {bounds:?}");
                        assert!(bounds.width - visible.width < 0.5, "{at}: {bounds:?}");
                    }
                }
            }
        }
    }
}

const FILTERS: [(&str, &str); 7] = [
    ("passes", "F2"),
    ("from-three", "F3"),
    ("one-cord", "F4"),
    ("most-legs", "F5"),
    ("weave", "F6"),
    ("firm", "F7"),
    ("nested", "F8"),
];

#[test]
fn what_narrows_the_knots_is_in_sight_in_every_language() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let hands = plan_in(words(&tag), &folder);
        for size in &WINDOWS[1..] {
            let mut screen = hands.screen(*size);
            assert!(screen.find(selector::id(card(0))).is_ok(), "{tag} {size:?}");
            for (filter, key) in FILTERS {
                let chip = words(&tag).filter(filter, key, 0);
                // After its key as it lies on a keyboard.
                let (cap, told) = chip.split_once(':').unwrap();
                for text in [cap.trim_end(), told.trim_start()] {
                    let found = screen.find(text).expect(&chip);
                    let visible = found.visible_bounds();
                    assert!(visible.is_some(), "{tag} {size:?} {chip}");
                }
            }
        }
    }
}

#[test]
fn a_cord_is_picked_by_the_name_that_shops_give_it() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(plan_in(Words::english(), &folder), WINDOW);
    for field in ["cord", "thread"] {
        let list = format!("pick-{field}");
        let mut screen = desk.hands.screen(WINDOW);
        let list = screen.find(selector::id(list)).expect(field);
        assert!(list.bounds().height >= 44.0, "{field}");
    }
    // Once round all fields, back to the cord: it is brought into sight.
    for _ in 0..13 {
        desk.press(Named::Tab);
    }
    // Of the cords with a name the third is the usual one.
    for _ in 0..3 {
        desk.press(Named::PageDown);
    }
    assert!(desk.hands.last_said().starts_with("Cord: paracord 550."));
    // What is typed takes the place of what was picked.
    desk.type_in("4.5");
    // Once round all fields.
    for _ in 0..13 {
        desk.press(Named::Tab);
    }
    let said = desk.hands.last_said();
    assert!(said.starts_with("Cord: 4.5."), "{said}");
}

#[test]
fn an_empty_field_shows_what_may_be_typed_and_a_bare_number_its_unit() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("p"));
    assert!(!hands.sees("mm"));
    hands.tell(Message::planned(SetupField::Object, "30"));
    assert!(hands.sees("mm"));
    hands.tell(Message::planned(SetupField::Object, "3cm"));
    assert!(!hands.sees("mm"));
}

#[test]
fn the_first_tie_is_not_offered_again_when_all_were_deleted() {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let hands = Hands::open(folder.path(), Some(plan));
    let id = hands.ties()[0].id().clone();
    drop(hands);
    let hands = Hands::open(folder.path(), None);
    hands.shelf().delete(&id).unwrap();
    drop(hands);
    let hands = Hands::open(folder.path(), None);
    assert!(hands.ties().is_empty());
    let said = hands.last_said();
    assert!(said.starts_with("No tie is waiting."), "{said}");
}

#[test]
fn each_way_from_the_first_screen_is_there_for_mouse_and_finger() {
    let ways = [
        ("way-course", "Lesson 1 of 6"),
        ("way-plan", "Plan."),
        ("way-form", "Leads: 5."),
        ("way-shelf", "My ties"),
        ("way-glossary", "Lead."),
        ("way-settings", "Settings."),
    ];
    for size in WINDOWS {
        for (way, says) in ways {
            for by_touch in [false, true] {
                let folder = TempDir::new().unwrap();
                let plan = Plan::read("5", "7", "2", "1").unwrap();
                let mut hands = Hands::open(folder.path(), Some(plan));
                hands.press(Named::Escape);
                let mut desk = Desk::new(hands, size);
                // What was left off comes first, as it lies.
                assert!(desk.place_of("picture").is_some());
                let place = desk.place_of(way);
                let place = place.unwrap_or_else(|| panic!("{way} {size:?}"));
                assert!(place.width >= 44.0 && place.height >= 44.0);
                if by_touch {
                    desk.touch(place.center());
                } else {
                    desk.click(place.center());
                }
                let said = desk.hands.last_said();
                assert!(said.contains(says), "{way}: {said}");
            }
        }
    }
}

#[test]
fn a_knot_that_was_typed_is_still_there_after_a_look_elsewhere() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    desk.type_in("8");
    desk.press(Named::Escape);
    desk.press(letter("g"));
    desk.press(Named::Escape);
    desk.press(Named::Tab);
    assert!(desk.hands.last_said().starts_with("Leads: 8."));
}

#[test]
fn the_chosen_setting_says_what_it_is_for_and_is_not_cut() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, Settings::default());
        hands.press(letter("t"));
        for setting in Setting::ALL {
            let hint = String::from(words(&tag).setting_hint(setting.name()));
            let mut screen = hands.screen(WINDOWS[0]);
            let found = screen.find(hint.as_str()).expect(&hint);
            let visible = found.visible_bounds().expect(&hint);
            assert!(found.bounds().height - visible.height < 0.5, "{hint}");
            drop(screen);
            hands.press(Named::ArrowDown);
        }
    }
}

/// All windows that the face is judged in.
const ALL_WINDOWS: [Size; 6] = [
    Size::new(800.0, 480.0),
    WINDOW,
    Size::new(1366.0, 768.0),
    Size::new(1920.0, 1080.0),
    Size::new(2560.0, 1440.0),
    Size::new(800.0, 1400.0),
];

/// Whether a text or a widget is in sight, all of it.
fn is_whole(found: Option<selector::Text>) -> bool {
    found.is_some_and(|found| {
        let (place, seen) = (found.bounds(), found.visible_bounds());
        seen.is_some_and(|seen| {
            (seen.height - place.height).abs() < 0.5 && (seen.width - place.width).abs() < 0.5
        })
    })
}

/// What a knot is never for is read without scrolling, in every window and language.
#[test]
fn what_a_knot_is_not_for_is_whole_in_every_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let hands = plan_in(words(&tag), &folder);
        let caution = words(&tag).choice_caution().to_string();
        for size in ALL_WINDOWS {
            let mut screen = hands.screen(size);
            let found = screen.find(caution.as_str()).ok();
            assert!(is_whole(found), "{tag} {size:?}: {caution}");
        }
    }
}

/// How a lesson begins, and the key that has it begin the other way, is in sight, whole.
#[test]
fn how_a_lesson_begins_is_whole_in_every_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, Settings::default());
        hands.press(letter("c"));
        for size in ALL_WINDOWS {
            let mut screen = hands.screen(size);
            let found = screen.find(selector::id("lesson-weave")).expect(&tag);
            let (place, seen) = (found.bounds(), found.visible_bounds().expect(&tag));
            assert!(place.height >= 40.0, "{tag} {size:?}: {place:?}");
            assert!((seen.height - place.height).abs() < 0.5, "{tag} {size:?}");
        }
    }
}

/// A line of many letters is broken rather than set small, and its crossings keep their size: it is read
/// as far away in every language.
#[test]
fn a_step_is_as_large_in_every_language() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), Some(plan), settings);
        for _ in 0..16 {
            hands.press(Named::Space);
        }
        let shown = hands.session().walk().unwrap().shown().clone();
        for size in [Size::new(1366.0, 768.0), Size::new(1920.0, 1080.0)] {
            let at = format!("{tag} {size:?} {}", shown.line);
            let mut screen = hands.screen(size);
            let line = screen.find(shown.line.as_str()).expect(&at).bounds();
            // Rows of 1.3 sizes of type: one of 54 and more, or two.
            let rows = if line.height > 100.0 * size.height / 768.0 {
                2.0
            } else {
                1.0
            };
            assert!(line.height >= rows * 1.3 * 54.0, "{at}: {line:?}");
            for mark in &shown.marks {
                let mark = screen.find(mark.text.as_str()).expect(&at).bounds();
                assert!(mark.height >= 1.3 * 38.0, "{at}: {mark:?}");
            }
        }
    }
}

/// Ways out of what is wrong stand below one another at one edge, each after the key that its button has.
#[test]
fn ways_out_are_a_list_with_their_keys() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), Some(plan), settings);
        for _ in 0..16 {
            hands.press(Named::Space);
        }
        hands.press(letter("w"));
        let shown = hands.session().walk().unwrap().shown().clone();
        assert_eq!(shown.notes.len(), 4, "{tag}");
        assert!(!shown.phase.is_empty(), "{tag}");
        for size in ALL_WINDOWS {
            let mut screen = hands.screen(size);
            let lefts: Vec<f32> = shown
                .notes
                .iter()
                .map(|note| {
                    let (_, way) = note.split_once(':').expect(note);
                    let found = screen.find(way.trim_start()).expect(note);
                    found.bounds().x
                })
                .collect();
            assert!(
                lefts.iter().all(|left| (left - lefts[0]).abs() < 0.5),
                "{tag} {size:?}: {lefts:?}"
            );
        }
    }
}
