//! The line that matters fits without scrolling in every window from 800 × 480 up.
#![cfg(feature = "window")]

use crate::hands;

use std::collections::HashSet;
use std::mem::discriminant;
use std::thread;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::widget::Id;
use iced::{Rectangle, Size};
use iced_test::{Simulator, selector};
use marlinspeak::app::Message;
use marlinspeak::guide::{AtOnce, Plan, Script, SetupField};
use marlinspeak::session::{Event, Keys};
use marlinspeak::settings::Settings;
use marlinspeak::voice::{VoiceError, VoiceEvent};
use marlinspeak::words::{Shown, Words};
use tempfile::TempDir;

const SIZES: [(f32, f32); 11] = [
    (800.0, 480.0),
    (800.0, 600.0),
    (854.0, 480.0),
    (1024.0, 600.0),
    (1024.0, 768.0),
    (1100.0, 760.0),
    (1280.0, 720.0),
    (1366.0, 768.0),
    (1920.0, 1080.0),
    (2560.0, 1440.0),
    (900.0, 1600.0),
];

fn script(leads: &str, bights: &str, passes: &str) -> Script {
    Script::new(
        Plan::read(leads, bights, passes, "1").unwrap(),
        AtOnce::default(),
    )
}

/// Steps with the longest texts: of every kind the one with the longest line and notes, from the
/// beginning and the end of large knots; those of a knot together, in the order of the tie.
fn longest(words: &Words) -> Vec<(Plan, Vec<(usize, Shown)>)> {
    let mut all = Vec::new();
    for script in [
        script("7", "998", "2"),
        script("999", "2", "2"),
        script("99", "3", "9"),
    ] {
        let steps = script
            .places()
            .take(700)
            .enumerate()
            .filter_map(|(number, place)| {
                let step = script.step(place)?;
                let kind = discriminant(&step.what);
                Some((kind, number, words.show(script.plan().knot(), &step)))
            });
        let steps: Vec<_> = steps.collect();
        let kinds: HashSet<_> = steps.iter().map(|step| step.0).collect();
        let mut found = Vec::new();
        for kind in kinds {
            let length = |shown: &Shown| shown.to_string().len() + shown.phase.len();
            let longest = steps.iter().filter(|step| step.0 == kind);
            if let Some((_, number, shown)) = longest.max_by_key(|step| length(&step.2)) {
                found.push((*number, shown.clone()));
            }
        }
        found.sort_by_key(|step| step.0);
        all.push((script.plan().clone(), found));
    }
    assert!(all.iter().map(|(_, steps)| steps.len()).sum::<usize>() >= 6);
    all
}

/// Where a text stands on a screen of this size, if all of it is in sight.
fn in_sight(screen: &mut Simulator<'_, Message>, size: Size, text: &str) -> Option<Rectangle> {
    let found = screen.find(text).ok()?;
    let (bounds, visible) = (found.bounds(), found.visible_bounds()?);
    let is_whole = (bounds.height - visible.height).abs() < 0.5
        && (bounds.width - visible.width).abs() < 0.5
        && bounds.x >= 0.0
        && bounds.y >= 0.0
        && bounds.x + bounds.width <= size.width + 0.5
        && bounds.y + bounds.height <= size.height + 0.5;
    is_whole.then_some(bounds)
}

/// Goes on to a step of a tie that stands at an earlier one.
fn go_on(hands: &mut Hands, at: &mut usize, number: usize) {
    while *at < number {
        hands.press(Key::Named(Named::Space));
        *at += 1;
    }
}

#[test]
fn the_longest_steps_fit_in_every_window() {
    for (plan, steps) in longest(&Words::english()) {
        for is_in_trouble in [false, true] {
            let folder = TempDir::new().unwrap();
            let mut settings = Settings::default();
            settings.cues.is_on = false;
            let mut hands = Hands::open_with(folder.path(), Some(plan.clone()), settings);
            let mut at = 0;
            for (number, shown) in &steps {
                go_on(&mut hands, &mut at, *number);
                if is_in_trouble {
                    hands.tell(Message::event(Event::Voice(VoiceEvent::Lost(
                        VoiceError::NoAnswer,
                    ))));
                    hands.tell(Message::focus(false));
                }
                for (width, height) in SIZES {
                    fits(&hands, Size::new(width, height), shown, is_in_trouble);
                }
            }
        }
    }
}

/// All that matters of a step is in sight in a window of this size, and large.
fn fits(hands: &Hands, size: Size, shown: &Shown, is_in_trouble: bool) {
    let at = format!("{size:?} {is_in_trouble} {shown:?}");
    let screen = &mut hands.screen(size);
    let line = in_sight(screen, size, &shown.line).expect(&at);
    // Rows of 1.3 sizes of type: 42 is 0.7° where the window has room for it.
    assert!(line.height >= 42.0 * 1.3 - 0.5, "{at}: {line:?}");
    for mark in &shown.marks {
        let mark = in_sight(screen, size, &mark.text).expect(&at);
        assert!(mark.height >= 19.0 * 1.3 - 0.5, "{at}: {mark:?}");
    }
    assert!(in_sight(screen, size, &shown.phase).is_some(), "{at}");
    if !is_in_trouble {
        for note in &shown.notes {
            assert!(in_sight(screen, size, note).is_some(), "{at}: {note}");
        }
    }
}

#[test]
fn the_line_uses_the_room_there_is() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(Plan::read("5", "6", "1", "1").unwrap()));
    while hands.session().walk().unwrap().shown().line != "Bottom 4 up to top 6 ↗" {
        hands.press(Key::Named(Named::Space));
    }
    let size = Size::new(1920.0, 1080.0);
    let large = in_sight(&mut hands.screen(size), size, "Bottom 4 up to top 6 ↗").unwrap();
    // Beside the picture the words have three fifths of the window.
    assert!(
        large.width > 0.8 * 0.6 * 1920.0 || large.height > 0.2 * 1080.0,
        "{large:?}"
    );
}

#[test]
fn a_window_of_no_size_at_all_is_no_fault() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(Plan::read("5", "6", "1", "1").unwrap()));
    while hands.session().walk().unwrap().shown().line != "Bottom 4 up to top 6 ↗" {
        hands.press(Key::Named(Named::Space));
    }
    for size in [(0.0, 0.0), (1.0, 1.0), (50.0, 3.0), (480.0, 360.0)] {
        let mut screen = hands.screen(Size::from(size));
        assert!(screen.find("Bottom 4 up to top 6 ↗").is_ok());
    }
}

const SMALLEST: Size = Size::new(800.0, 480.0);

/// English with two fifths more letters, as translations have at the most.
const LONGER: &str = "en-XA";

/// Every language, and English made two fifths longer.
fn tags() -> Vec<String> {
    let known = Words::known();
    let known = known.iter().map(ToString::to_string);
    known.chain([LONGER.to_owned()]).collect()
}

fn words(tag: &str) -> Words {
    Words::load(Some(tag)).unwrap()
}

#[test]
fn the_longest_steps_fit_the_smallest_window_in_every_language() {
    // It is the longest of these tests, and the last: each language has a thread of its own.
    thread::scope(|scope| {
        for tag in tags() {
            scope.spawn(move || the_longest_steps_fit_the_smallest_window_in(&tag));
        }
    });
}

fn the_longest_steps_fit_the_smallest_window_in(tag: &str) {
    for (plan, steps) in longest(&words(tag)) {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(tag), folder.path(), Some(plan), settings);
        let mut stands = 0;
        for (number, shown) in steps {
            go_on(&mut hands, &mut stands, number);
            let at = format!("{tag} {shown:?}");
            let screen = &mut hands.screen(SMALLEST);
            let mut in_sight = |text: &str| in_sight(screen, SMALLEST, text);
            let line = in_sight(&shown.line).expect(&at);
            assert!(line.height >= 30.0 * 1.3 - 0.5, "{at}: {line:?}");
            for mark in &shown.marks {
                assert!(in_sight(&mark.text).is_some(), "{at}");
            }
            assert!(in_sight(&shown.phase).is_some(), "{at}");
            for note in &shown.notes {
                assert!(in_sight(note).is_some(), "{at}: {note}");
            }
        }
    }
}

#[test]
fn every_screen_fits_the_smallest_window_in_every_language() {
    let letter = |key: &str| Key::Character(key.into());
    // What opens the screen, and what must be in sight on it: a text, and a button of the bar.
    let screens: [(&[Key], &str, &str); 10] = [
        (&[], "first-start-heading", "bar-next"),
        (&[Key::Named(Named::Tab)], "start-name-heading", "bar-next"),
        (&[letter("p")], "plan-heading", "bar-next"),
        (&[letter("s")], "shelf-heading", "bar-leave"),
        (&[letter("t")], "settings-heading", "bar-leave"),
        (
            &[letter("t"), Key::Named(Named::Enter)],
            "learn-how",
            "bar-leave",
        ),
        (&[letter("c")], "course-heading", "bar-next"),
        (&[letter("g")], "glossary-heading", "bar-next"),
        (
            &[Key::Named(Named::Space), letter("o")],
            "paper-heading",
            "bar-next",
        ),
        (&[letter("o")], "orders-empty", "bar-leave"),
    ];
    for tag in tags() {
        for (keys, id, button) in screens {
            let folder = TempDir::new().unwrap();
            let settings = Settings::default();
            let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
            for key in keys {
                hands.press(key.clone());
            }
            let text = words(&tag).plainly(id, &[]);
            let mut screen = hands.screen(SMALLEST);
            let is_in_sight = in_sight(&mut screen, SMALLEST, &text).is_some();
            assert!(is_in_sight, "{tag} {id}: {text}");
            let button = screen.find(selector::id(button)).expect(button);
            let place = button.visible_bounds().unwrap();
            assert!(place.width >= 44.0 && place.height >= 44.0, "{tag} {id}");
        }
    }
}

/// Whether a widget is in sight, all of it.
fn is_whole(screen: &mut Simulator<'_, Message>, id: impl Into<Id>) -> bool {
    let Ok(found) = screen.find(selector::id(id.into())) else {
        return false;
    };
    let (place, seen) = (found.bounds(), found.visible_bounds());
    seen.is_some_and(|seen| {
        (seen.height - place.height).abs() < 0.5 && (seen.width - place.width).abs() < 0.5
    })
}

#[test]
fn every_way_out_of_what_is_wrong_is_whole_in_every_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), Some(plan), settings);
        let mut at = 0;
        go_on(&mut hands, &mut at, 12);
        hands.press(Key::Character("w".into()));
        let shown = hands.session().page().unwrap().shown;
        for (width, height) in SIZES {
            let mut screen = hands.screen(Size::new(width, height));
            let heart = screen.find(selector::id("stage-heart")).unwrap().bounds();
            for note in &shown.notes {
                let (_, way) = note.split_once(':').unwrap();
                let place = screen.find(way.trim_start()).unwrap().bounds();
                assert!(
                    place.y + place.height <= heart.y + heart.height + 0.5,
                    "{tag} {width} × {height}: {way} at {place:?} in {heart:?}"
                );
            }
        }
    }
}

#[test]
fn the_first_tie_and_the_way_past_it_are_whole_in_the_smallest_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let hands = Hands::open_in(words(&tag), folder.path(), None, settings);
        for (width, height) in SIZES {
            let mut screen = hands.screen(Size::new(width, height));
            for button in ["first-begin", "first-past"] {
                assert!(is_whole(&mut screen, button), "{tag} {width} {button}");
            }
            // Words of two fifths more letters are scrolled where it is low.
            let needs = words(&tag).plainly("first-start-needs", &[]);
            let size = Size::new(width, height);
            let is_told = in_sight(&mut screen, size, &needs).is_some();
            assert!(
                is_told || tag == LONGER,
                "{tag} {width} × {height}: {needs}"
            );
        }
    }
}

#[test]
fn what_a_field_of_the_log_takes_is_in_sight_in_the_smallest_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("3", "2", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), Some(plan), settings);
        while hands.session().page().unwrap().keys != Keys::Done {
            hands.press(Key::Named(Named::Space));
        }
        hands.press(Key::Character("l".into()));
        let hint = words(&tag).plainly("log-hint", &[]);
        let mut screen = hands.screen(SMALLEST);
        // A form of two fifths more letters is scrolled.
        let is_told = in_sight(&mut screen, SMALLEST, &hint).is_some();
        assert!(is_told || tag == LONGER, "{tag}");
    }
}

#[test]
fn all_keys_of_a_step_are_whole_in_a_window_of_usual_size() {
    let keys = ["CtrlQ", "F12", "F11", "f", "]", "t", "p", "j", "Escape"];
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), Some(plan), settings);
        hands.press(Key::Named(Named::F1));
        for (width, height) in [(1100.0, 760.0), (1366.0, 768.0), (1920.0, 1080.0)] {
            let mut screen = hands.screen(Size::new(width, height));
            for key in keys {
                let is_whole = is_whole(&mut screen, format!("sheet {key}"));
                assert!(is_whole, "{tag} {width} × {height}: {key}");
            }
        }
    }
}

#[test]
fn no_tie_that_waits_is_cut_on_the_first_screen() {
    const PLACES: [&str; 9] = [
        "waiting 1",
        "waiting 2",
        "waiting 3",
        "waiting 4",
        "waiting 5",
        "waiting 6",
        "waiting 7",
        "waiting 8",
        "waiting 9",
    ];
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        for bights in 4..12 {
            let plan = Plan::read("3", &bights.to_string(), "2", "1").unwrap();
            drop(Hands::open(folder.path(), Some(plan)).ties());
        }
        let settings = Settings::default();
        let hands = Hands::open_in(words(&tag), folder.path(), None, settings);
        for (width, height) in SIZES {
            let size = Size::new(width, height);
            let mut screen = hands.screen(size);
            assert!(is_whole(&mut screen, "way-settings"), "{tag} {size:?}");
            let shown: Vec<&str> = PLACES
                .into_iter()
                .filter(|place| screen.find(selector::id(*place)).is_ok())
                .collect();
            for place in &shown {
                assert!(is_whole(&mut screen, *place), "{tag} {size:?} {place}");
            }
            // Those that have no room are counted.
            let more = words(&tag).ties_on_shelf(7 - shown.len());
            let counted = in_sight(&mut screen, size, &more).is_some();
            assert_eq!(counted, shown.len() < 7, "{tag} {size:?} {shown:?}");
        }
    }
}

/// What is told of the others that wait stands above the ways that lead on, however long the words are.
#[test]
fn the_count_of_other_ties_lies_on_nothing_in_the_smallest_window() {
    let size = Size::new(800.0, 480.0);
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let plan = |bights: u16| Plan::read("5", &bights.to_string(), "1", "1").unwrap();
        for bights in 6..12 {
            drop(Hands::open(folder.path(), Some(plan(bights))).ties());
        }
        let under = Plan::read("5", "7", "1", "uouo").unwrap();
        drop(Hands::open(folder.path(), Some(under)).ties());
        let hands = Hands::open_in(words(&tag), folder.path(), None, Settings::default());
        let mut screen = hands.screen(size);
        let more = words(&tag).ties_on_shelf(6);
        let told = in_sight(&mut screen, size, &more).unwrap_or_else(|| panic!("{tag}: {more}"));
        let ways = screen.find(selector::id("way-course")).unwrap().bounds();
        assert!(told.y + told.height <= ways.y, "{tag}: {told:?} {ways:?}");
    }
}

/// A tie with a tube, a cord and an object, from its bag on.
fn rigged(hands: &mut Hands) {
    hands.press(Key::Character("p".into()));
    for (field, typed) in [
        (SetupField::Object, "30"),
        (SetupField::Cover, "36"),
        (SetupField::Cord, "3.5"),
        (SetupField::Tube, "45"),
        (SetupField::Rows, "14,20"),
    ] {
        hands.tell(Message::planned(field, typed));
    }
    hands.press(Key::Named(Named::Enter));
}

#[test]
fn every_note_stands_under_its_thing_on_a_page_of_several() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
        rigged(&mut hands);
        let mut pages = 0;
        for _ in 0..8 {
            let shown = hands.session().walk().unwrap().shown().clone();
            pages += usize::from(!shown.things.is_empty());
            for (width, height) in SIZES {
                let size = Size::new(width, height);
                let mut screen = hands.screen(size);
                let mut last = 0.0;
                for thing in &shown.things {
                    // In the order of the page, and nothing of one below the next.
                    for text in std::iter::once(&thing.line).chain(&thing.notes) {
                        let at = format!("{tag} {size:?} {text}");
                        let place = in_sight(&mut screen, size, text).expect(&at);
                        assert!(place.y > last - 0.5, "{at}");
                        last = place.y + place.height;
                    }
                }
            }
            hands.press(Key::Named(Named::Space));
        }
        assert!(pages >= 3, "{tag}: {pages}");
    }
}

/// What can hurt is never scrolled away where there is room for it: at the first steps, which have the most
/// words besides.
#[test]
fn the_cautions_of_the_first_steps_are_whole() {
    for tag in tags() {
        for is_rigged in [false, true] {
            let folder = TempDir::new().unwrap();
            let settings = Settings::default();
            let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
            if is_rigged {
                rigged(&mut hands);
            } else {
                // The first lesson.
                hands.press(Key::Named(Named::Space));
            }
            for step in 0..12 {
                let caution = hands.session().page().unwrap().shown.caution;
                for (width, height) in [(1100.0, 760.0), (1366.0, 768.0), (1920.0, 1080.0)] {
                    let size = Size::new(width, height);
                    let mut screen = hands.screen(size);
                    if let Some(caution) = &caution {
                        let place = in_sight(&mut screen, size, caution);
                        assert!(place.is_some(), "{tag} {size:?} {step} {caution}");
                    }
                }
                hands.press(Key::Named(Named::Space));
            }
        }
    }
}

#[test]
fn the_strip_names_every_part_of_the_job_in_the_smallest_window() {
    for tag in ["en", "de", "es", "fr"] {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(tag), folder.path(), None, settings);
        rigged(&mut hands);
        let job = hands.session().page().unwrap().job;
        assert!(job.len() >= 6, "{job:?}");
        let mut screen = hands.screen(SMALLEST);
        for part in job {
            let name = in_sight(&mut screen, SMALLEST, &part.name);
            assert!(name.is_some(), "{tag} {}", part.name);
        }
    }
}

#[test]
fn what_narrows_the_knots_is_seen_and_heard_in_the_smallest_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
        hands.press(Key::Character("p".into()));
        for (field, typed) in [
            (SetupField::Object, "30"),
            (SetupField::Cover, "36"),
            (SetupField::Cord, "3.5"),
        ] {
            hands.tell(Message::planned(field, typed));
        }
        let mut screen = hands.screen(SMALLEST);
        assert!(is_whole(&mut screen, "plan-filters"), "{tag}");
        drop(screen);
        for (key, filter, named) in [(Named::F6, "weave", "F6"), (Named::F8, "nested", "F8")] {
            hands.press(Key::Named(key));
            let said = words(&tag).say_filter(filter, 1).to_string();
            assert_eq!(hands.last_said(), said, "{tag}");
            let chip = words(&tag).filter(filter, named, 1);
            let mut screen = hands.screen(SMALLEST);
            // After its key as it lies on a keyboard.
            let (cap, told) = chip.split_once(':').unwrap();
            for text in [cap.trim_end(), told.trim_start()] {
                let seen = in_sight(&mut screen, SMALLEST, text);
                assert!(seen.is_some(), "{tag} {chip}");
            }
        }
    }
}

#[test]
fn what_must_be_known_besides_leaves_the_picture_where_it_is() {
    let sizes = [
        (1100.0, 760.0),
        (1366.0, 768.0),
        (1920.0, 1080.0),
        (900.0, 1600.0),
    ];
    let pictures = |hands: &Hands| {
        sizes.map(|(width, height)| {
            let mut screen = hands.screen(Size::new(width, height));
            let found = screen.find(selector::id("picture"));
            found.ok().map(|found| found.bounds())
        })
    };
    for tag in tags() {
        // The first step of the first lesson, which has the most words besides, and a leg of it.
        for steps in [1, 5] {
            let folder = TempDir::new().unwrap();
            let settings = Settings::default();
            let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
            for _ in 0..steps {
                hands.press(Key::Named(Named::Space));
            }
            let quiet = pictures(&hands);
            assert!(quiet.iter().all(Option::is_some), "{tag} {quiet:?}");
            hands.tell(Message::event(Event::NotAwake));
            hands.tell(Message::focus(true));
            hands.tell(Message::focus(false));
            let notices = hands.session().notices();
            assert!(notices.len() >= 2, "{notices:?}");
            assert_eq!(pictures(&hands), quiet, "{tag} after {steps}");
        }
    }
}

#[test]
fn what_a_lesson_tells_is_in_sight_where_the_words_leave_room() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, settings);
        hands.press(Key::Named(Named::Space));
        let told = hands.session().page().unwrap().answer.unwrap();
        for (width, height) in [(1100.0, 760.0), (1366.0, 768.0), (1920.0, 1080.0)] {
            let mut screen = hands.screen(Size::new(width, height));
            let seen = screen.find(told.as_str()).unwrap().visible_bounds();
            // Three rows and more.
            let seen = seen.map_or(0.0, |seen| seen.height);
            assert!(seen > 75.0, "{tag} {width} × {height}: {seen} of {told:?}");
        }
    }
}

/// Where there is no room for the names of all parts of the job, that of the part in hand is told.
#[test]
fn the_part_in_hand_has_its_name_where_the_strip_has_none() {
    for tag in ["en", "de", "es", "fr"] {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let settings = Settings::default();
        let mut hands = Hands::open_in(words(tag), folder.path(), Some(plan), settings);
        for press in 0..40 {
            let page = hands.session().page().unwrap();
            if let Some(time) = page.time_left {
                let mut screen = hands.screen(SMALLEST);
                let is_told = in_sight(&mut screen, SMALLEST, &time).is_some();
                assert!(is_told, "{tag}, press {press}: {time}");
            }
            let now = page.job.iter().find(|part| part.is_now);
            if let Some(part) = now {
                let mut screen = hands.screen(SMALLEST);
                let name = in_sight(&mut screen, SMALLEST, &part.name);
                assert!(name.is_some(), "{tag}, press {press}: {}", part.name);
            }
            // What is wrong takes most room of all.
            if press == 16 {
                hands.press(Key::Character("w".into()));
            }
            if press == 17 {
                hands.press(Named::Escape);
            }
            hands.press(Named::Space);
        }
    }
}

/// A knot is counted with the question above its picture where the window is high, and both are whole.
#[test]
fn a_knot_is_counted_above_its_picture_in_a_high_window() {
    for tag in tags() {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open_in(words(&tag), folder.path(), None, Settings::default());
        hands.press(Key::Character("k".into()));
        for size in [Size::new(800.0, 1400.0), SMALLEST] {
            let mut screen = hands.screen(size);
            let picture = screen.find(selector::id("picture")).unwrap().bounds();
            let told = screen.find(selector::id("count-told")).unwrap();
            let (told, seen) = (told.bounds(), told.visible_bounds().unwrap());
            assert!(seen.height + 0.5 >= told.height, "{tag} {size:?}");
            if size.height > size.width {
                assert!(
                    told.y + told.height <= picture.y,
                    "{tag} {told:?} {picture:?}"
                );
                assert!(
                    picture.width > 700.0 && picture.height > 600.0,
                    "{tag}: {picture:?}"
                );
            } else {
                assert!(
                    told.x + told.width <= picture.x,
                    "{tag} {told:?} {picture:?}"
                );
            }
        }
    }
}

/// What is told of a lesson is scrolled by whole rows, and how its weave begins stands outside of that.
#[test]
fn no_row_of_a_lesson_is_cut_through() {
    for tag in ["en", "de", "es", "fr"] {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open_in(words(tag), folder.path(), None, Settings::default());
        hands.press(Key::Character("c".into()));
        for (width, height) in SIZES {
            let mut screen = hands.screen(Size::new(width, height));
            let told = screen.find(selector::id("lesson-told")).unwrap();
            let rows = told.bounds().height / (1.3 * 22.0);
            assert!(
                (rows - rows.round()).abs() < 0.05 && rows > 0.5,
                "{tag} {width}: {rows}"
            );
            assert!(
                is_whole(&mut screen, "lesson-weave"),
                "{tag} {width}×{height}"
            );
        }
    }
}
