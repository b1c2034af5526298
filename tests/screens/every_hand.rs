//! The whole job with the mouse alone, by touch alone and by keys alone: what is pressed is looked for
//! where it is laid out.
#![cfg(feature = "window")]

use crate::desk;
use crate::hands;

use desk::Desk;
use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::{Point, Size};
use marlinspeak::app::Message;
use marlinspeak::guide::{Phase, Plan};
use marlinspeak::session::Event;
use marlinspeak::settings::Settings;
use marlinspeak::voice::{VoiceError, VoiceEvent};
use marlinspeak::words::Words;
use tempfile::TempDir;

const WINDOW: Size = Size::new(1100.0, 760.0);

/// With what it is pressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Means {
    Mouse,
    Touch,
    Keys,
}

impl Means {
    const ALL: [Self; 3] = [Self::Mouse, Self::Touch, Self::Keys];

    /// Presses what has this id in the bar, or the key that does the same.
    fn press(self, desk: &mut Desk, id: &'static str, key: &Key) {
        if self == Self::Keys {
            return desk.press(key.clone());
        }
        let place = desk.place_of(id).unwrap_or_else(|| panic!("no {id}"));
        // A finger needs 44 pixels (WCAG 2.2, success criterion 2.5.5).
        assert!(
            place.width >= 44.0 && place.height >= 44.0,
            "{id} {place:?}"
        );
        match self {
            Self::Mouse => desk.click(place.center()),
            _ => desk.touch(place.center()),
        }
    }
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

const SPACE: Key = Key::Named(Named::Space);

#[test]
fn a_whole_tie_is_tied_and_logged_by_each_means_alone() {
    for (means, size) in [
        (Means::Mouse, Size::new(800.0, 480.0)),
        (Means::Touch, Size::new(800.0, 1400.0)),
        (Means::Keys, WINDOW),
    ] {
        let folder = TempDir::new().unwrap();
        let mut desk = Desk::new(Hands::open(folder.path(), None), size);
        means.press(&mut desk, "bar-next", &SPACE);
        let (mut presses, mut phases) = (0, Vec::new());
        while !desk.hands.session().walk().unwrap().is_done() {
            let phase = desk.hands.session().walk().unwrap().place().phase();
            phases.push(phase);
            means.press(&mut desk, "bar-next", &SPACE);
            presses += 1;
            if presses == 8 {
                // Where am I, again, wrong and back, and on.
                means.press(&mut desk, "bar-where", &letter("h"));
                means.press(&mut desk, "bar-again", &letter("r"));
                means.press(&mut desk, "bar-wrong", &letter("w"));
                means.press(&mut desk, "bar-wrong", &letter("w"));
                let before = desk.hands.session().walk().unwrap().place();
                means.press(&mut desk, "bar-back", &Key::Named(Named::ArrowLeft));
                assert_ne!(desk.hands.session().walk().unwrap().place(), before);
            }
            assert!(presses < 400, "{means:?}: no end");
        }
        phases.dedup();
        for phase in [Phase::Lead, Phase::Lift, Phase::Fair, Phase::Finish] {
            assert!(phases.contains(&phase), "{means:?} {phases:?}");
        }
        // The log: what was used is kept as it stands there.
        means.press(&mut desk, "bar-next", &letter("l"));
        assert!(desk.hands.entries().is_empty());
        means.press(&mut desk, "bar-next", &Key::Named(Named::Enter));
        assert_eq!(desk.hands.entries().len(), 1, "{means:?} {size:?}");
    }
}

#[test]
fn a_tie_is_left_by_each_means_alone() {
    for means in Means::ALL {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "1", "1").unwrap();
        let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), WINDOW);
        assert!(desk.hands.session().walk().is_some());
        means.press(&mut desk, "bar-leave", &Key::Named(Named::Escape));
        assert!(desk.hands.session().walk().is_none(), "{means:?}");
    }
}

/// Every key of the tying screen.
const ON_THE_SHEET: [&str; 19] = [
    " ",
    "ArrowLeft",
    "r",
    "h",
    "w",
    "1",
    "2",
    "3",
    "[",
    "]",
    "-",
    "+",
    "p",
    "v",
    "d",
    "f",
    "o",
    "t",
    "Escape",
];

#[test]
fn every_key_of_a_tie_is_a_button_that_does_the_same() {
    for label in ON_THE_SHEET {
        let folders = [TempDir::new().unwrap(), TempDir::new().unwrap()];
        let plan = || Some(Plan::read("5", "7", "1", "1").unwrap());
        let [mut by_key, mut by_mouse] = folders
            .each_ref()
            .map(|folder| Desk::new(Hands::open(folder.path(), plan()), WINDOW));
        for _ in 0..9 {
            by_key.press(SPACE);
            by_mouse.press(SPACE);
        }
        let key = match label {
            " " => SPACE,
            "ArrowLeft" => Key::Named(Named::ArrowLeft),
            "Escape" => Key::Named(Named::Escape),
            key => letter(key),
        };
        by_key.press(key);
        by_mouse.click_on("bar-keys");
        assert!(by_mouse.hands.sees("All keys"));
        by_mouse.click_on(format!("sheet {label}"));
        assert!(!by_mouse.hands.sees("All keys"), "{label}");
        let (one, other) = (by_key.hands.session(), by_mouse.hands.session());
        assert_eq!(one.page(), other.page(), "{label}");
        assert_eq!(by_key.hands.said(), by_mouse.hands.said(), "{label}");
    }
}

#[test]
fn all_keys_stand_over_every_screen_and_go_again() {
    let letter_of = |key: &'static str| letter(key);
    let screens: [&[Key]; 7] = [
        &[],
        &[letter_of("p")],
        &[letter_of("s")],
        &[letter_of("c")],
        &[letter_of("g")],
        &[letter_of("t")],
        &[SPACE, letter_of("o")],
    ];
    for open in screens {
        for close in [Key::Named(Named::F1), Key::Named(Named::Escape)] {
            let folder = TempDir::new().unwrap();
            let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
            for key in open {
                desk.press(key.clone());
            }
            let before = desk.hands.app().title();
            desk.press(Named::F1);
            for text in ["All keys", "full screen", "quit", "Close"] {
                assert!(desk.hands.sees(text), "{open:?} {text}");
            }
            desk.press(close.clone());
            assert!(!desk.hands.sees("All keys"), "{open:?} {close:?}");
            assert_eq!(desk.hands.app().title(), before);
        }
    }
}

#[test]
fn the_bar_is_in_the_same_place_on_every_screen() {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), WINDOW);
    let right = |desk: &Desk, id| {
        desk.place_of(id)
            .map(|place| (place.x + place.width, place.y + place.height))
    };
    let [next, keys] = ["bar-next", "bar-keys"].map(|id| right(&desk, id).unwrap());
    assert!(next.0 > WINDOW.width - 40.0 && next.1 > WINDOW.height - 40.0);
    assert!(keys.0 < next.0);
    let back = desk.place_of("bar-back").unwrap();
    assert!(back.x < 40.0 && back.y > WINDOW.height - 100.0);
    desk.press(Named::Escape);
    for open in ["g", "c"] {
        desk.press(letter(open));
        let here = right(&desk, "bar-next").unwrap();
        let off = (here.0 - next.0).abs() + (here.1 - next.1).abs();
        assert!(off < 0.5, "{open}: {here:?}");
        let there = desk.place_of("bar-back").unwrap().x;
        assert!((there - back.x).abs() < 0.5, "{open}: {there}");
        desk.press(Named::Escape);
    }
}

#[test]
fn every_button_of_the_bar_is_in_sight_in_every_language_and_window() {
    let known = Words::known();
    let tags = known.iter().map(ToString::to_string);
    for tag in tags.chain(["en-XA".to_owned()]) {
        for size in [
            (800.0, 480.0),
            (800.0, 1400.0),
            (1100.0, 760.0),
            (1920.0, 1080.0),
        ] {
            let folder = TempDir::new().unwrap();
            let plan = Plan::read("5", "7", "1", "1").unwrap();
            let words = Words::load(Some(&tag)).unwrap();
            let hands = Hands::open_in(words, folder.path(), Some(plan), Settings::default());
            let size = Size::new(size.0, size.1);
            let desk = Desk::new(hands, size);
            let ids = [
                "bar-back",
                "bar-wrong",
                "bar-where",
                "bar-again",
                "bar-keys",
                "bar-leave",
                "bar-next",
            ];
            let mut right = 0.0_f32;
            for id in ids {
                let place = desk
                    .place_of(id)
                    .unwrap_or_else(|| panic!("{tag} {size:?} {id}"));
                assert!(place.x >= right, "{tag} {size:?} {id} lies over another");
                right = place.x + place.width;
                assert!(place.width >= 44.0 && place.height >= 44.0);
            }
            assert!(right <= size.width, "{tag} {size:?}: {right}");
        }
    }
}

#[test]
fn the_very_first_start_leads_to_leg_one_of_the_first_tie_in_three_presses() {
    for means in Means::ALL {
        for size in [WINDOW, Size::new(800.0, 480.0), Size::new(800.0, 1400.0)] {
            let folder = TempDir::new().unwrap();
            let mut desk = Desk::new(Hands::open(folder.path(), None), size);
            for text in ["Shall we tie the first one together?", "Tie the first one"] {
                assert!(desk.place_of_text(text).y > 0.0);
            }
            let mut presses = 0;
            let at_leg_one = |desk: &Desk| {
                let walk = desk.hands.session().walk();
                walk.is_some_and(|walk| walk.place().leg() == Some(1))
            };
            while !at_leg_one(&desk) {
                means.press(&mut desk, "bar-next", &SPACE);
                presses += 1;
                assert!(presses <= 3, "{means:?} {size:?}");
                // The first step of the first tie has its picture.
                if size != Size::new(800.0, 480.0) {
                    assert!(desk.place_of("picture").is_some(), "{means:?} {size:?}");
                }
            }
            assert_eq!(desk.hands.ties()[0].lesson, Some(1));
        }
    }
}

#[test]
fn there_is_a_quiet_way_past_the_first_tie() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    let place = desk.place_of_text("Something else");
    desk.click(place.center());
    assert!(desk.hands.sees("Name the knot by its numbers"));
    desk.type_in("4");
    desk.press(Named::Enter);
    assert!(desk.hands.last_said().contains("Leave a tail"));
    assert_eq!(desk.hands.ties()[0].plan.knot().leads(), 4);
}

#[test]
fn who_only_looked_at_something_else_is_offered_the_first_tie_again() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    let offered = desk.hands.last_said();
    desk.press(Named::Tab);
    desk.press(Named::Escape);
    // But for the key that tells of all others, which is told once.
    let again = desk.hands.last_said();
    assert!(again.len() > 60 && offered.starts_with(&again), "{again}");
    assert!(desk.hands.sees("Something else"));
    // With another knot in the form it is that one.
    desk.press(Named::Tab);
    desk.type_in("4");
    desk.press(Named::Escape);
    assert!(!desk.hands.sees("Something else"));
    desk.press(Named::Space);
    assert_eq!(desk.hands.ties()[0].plan.knot().leads(), 4);
}

#[test]
fn begin_is_in_sight_in_every_window_language_and_state() {
    let known = Words::known();
    let tags = known.iter().map(ToString::to_string);
    for tag in tags.chain(["en-XA".to_owned()]) {
        for (width, height) in [
            (800.0, 480.0),
            (1100.0, 760.0),
            (1366.0, 768.0),
            (1920.0, 1080.0),
            (2560.0, 1440.0),
            (800.0, 1400.0),
        ] {
            for waits in [false, true] {
                let folder = TempDir::new().unwrap();
                let words = || Words::load(Some(&tag)).unwrap();
                if waits {
                    let plan = Plan::read("5", "7", "2", "1").unwrap();
                    drop(Hands::open(folder.path(), Some(plan)));
                }
                let hands = Hands::open_in(words(), folder.path(), None, Settings::default());
                let mut desk = Desk::new(hands, Size::new(width, height));
                for is_in_trouble in [false, true] {
                    if is_in_trouble {
                        desk.tell(Message::focus(false));
                        desk.tell(Message::event(Event::Voice(VoiceEvent::Lost(
                            VoiceError::NoAnswer,
                        ))));
                    }
                    let at = format!("{tag} {width} {height} {waits} {is_in_trouble}");
                    assert!(desk.place_of("bar-next").is_some(), "{at}");
                    assert!(desk.place_of("picture").is_some(), "{at}: no picture");
                }
            }
        }
    }
}

/// What a field of the start screen's form holds.
fn begun_knot(desk: &Desk) -> (u16, u16) {
    let knot = desk.hands.ties()[0].plan.knot().clone();
    (knot.leads(), knot.bights())
}

#[test]
fn a_click_into_a_number_selects_it() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    for (field, number) in [("leads", "3"), ("bights", "4")] {
        desk.click_on(field);
        desk.type_in(number);
    }
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk), (3, 4));
}

/// Between a number and its name nobody can tell what is clicked: it is the number.
#[test]
fn a_click_on_the_name_of_a_number_or_below_it_selects_the_number() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    for (field, above, number) in [("leads", 2.0, "3"), ("bights", 16.0, "4")] {
        let place = desk.place_of(field).unwrap();
        desk.click(Point::new(place.x + 20.0, place.y - above));
        desk.type_in(number);
    }
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk), (3, 4));
}

/// Where one is, and a pause, stand over the step: a click or Escape has them go, and the step stands
/// where it stood.
#[test]
fn what_stands_over_the_step_goes_at_a_click_and_at_escape() {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), WINDOW);
    desk.press(SPACE);
    let walk = |desk: &Desk| desk.hands.session().walk().unwrap().clone();
    let (place, stage) = (walk(&desk).place(), Point::new(300.0, 300.0));
    for by_mouse in [true, false] {
        desk.press(letter("h"));
        assert!(walk(&desk).is_whereabouts());
        if by_mouse {
            desk.click(stage);
        } else {
            desk.press(Named::Escape);
        }
        assert!(!walk(&desk).is_whereabouts());
        assert_eq!(walk(&desk).place(), place);
    }
    desk.press(letter("p"));
    let is_paused = |desk: &Desk| desk.hands.session().page().unwrap().pause.is_some();
    assert!(is_paused(&desk));
    desk.click(stage);
    assert!(!is_paused(&desk));
    // With nothing over it a click on the stage is none.
    let said = desk.hands.last_said();
    desk.click(stage);
    assert_eq!(desk.hands.last_said(), said);
}

/// Where the picture has no room beside the words, the key that brings it stands in the bar.
#[test]
fn where_the_picture_has_no_room_its_key_is_in_the_bar() {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let low = Size::new(800.0, 480.0);
    let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), low);
    for _ in 0..16 {
        desk.press(SPACE);
    }
    assert!(desk.place_of("picture").is_none());
    desk.click_on("bar-picture");
    assert!(desk.place_of("picture").is_some());
    assert!(
        desk.place_of("bar-picture").is_none(),
        "it is there already"
    );
}

#[test]
fn what_is_typed_after_another_window_had_the_keys_is_not_lost() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    desk.look_away_and_back();
    desk.type_in("8");
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk).0, 8);
}

#[test]
fn what_is_typed_after_a_click_beside_the_form_is_not_lost() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    // On the picture, where nothing takes the click.
    let picture = desk.place_of("picture").unwrap();
    desk.click(picture.center());
    desk.press(Named::Backspace);
    desk.type_in("8");
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk).0, 8);
}

#[test]
fn a_huge_knot_is_asked_back() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    desk.type_in("53");
    desk.press(Named::Tab);
    desk.type_in("64");
    desk.press(Named::Enter);
    assert!(desk.hands.ties().is_empty());
    assert!(
        desk.hands
            .last_said()
            .starts_with("53 lead 64 bight has 128 legs")
    );
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk), (53, 64));
}

#[test]
fn an_empty_field_is_asked_for_and_the_hint_names_a_code_that_fits() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(Named::Tab);
    desk.press(Named::Backspace);
    let asks = "Leads are still to be given: a whole number from 2 to 999, such as 5.";
    let error = desk.place_of_text(asks);
    let field = desk.place_of("leads").unwrap();
    assert!(
        error.y > field.y && error.y < field.y + 90.0,
        "{error:?} {field:?}"
    );
    desk.type_in("5");
    for _ in 0..4 {
        desk.press(Named::Tab);
    }
    desk.type_in("ouou");
    desk.press(Named::Enter);
    assert_eq!(begun_knot(&desk).0, 5);
}

/// The form of the log of a tie that is done.
fn at_the_log(folder: &TempDir) -> Desk {
    let plan = Plan::read("3", "4", "1", "1").unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), WINDOW);
    while !desk.hands.session().walk().unwrap().is_done() {
        desk.press(SPACE);
    }
    desk.press(letter("l"));
    desk
}

#[test]
fn a_field_of_the_log_keeps_the_focus_after_an_error() {
    let folder = TempDir::new().unwrap();
    let mut desk = at_the_log(&folder);
    // To the second field, the length of the cord's diameter.
    desk.press(Named::Tab);
    desk.type_in("thick");
    desk.press(Named::Enter);
    let error = desk.hands.last_said();
    let place = desk.place_of_text(&error);
    let field = desk.place_of("log-cord").unwrap();
    assert!(
        place.y > field.y && place.y < field.y + 80.0,
        "at its field"
    );
    for _ in 0..5 {
        desk.press(Named::Backspace);
    }
    desk.type_in("4.5 mm");
    desk.press(Named::Enter);
    let entries = desk.hands.entries();
    let cord = entries[0].cord.as_ref().unwrap();
    assert!((cord.diameter.get() - 4.5).abs() < 1e-9);
}

#[test]
fn escape_asks_before_it_throws_away_what_was_typed_into_the_log() {
    let folder = TempDir::new().unwrap();
    let mut desk = at_the_log(&folder);
    desk.type_in("blue braid");
    desk.press(Named::Tab);
    desk.type_in("4 mm");
    desk.press(Named::Escape);
    assert!(
        desk.hands
            .last_said()
            .starts_with("What you typed is not kept.")
    );
    // Whoever only looks sees the question, in the lowest window too.
    let asked = desk.hands.last_said();
    for size in [WINDOW, Size::new(800.0, 480.0)] {
        let mut screen = desk.hands.screen(size);
        let found = screen.find(&*asked).unwrap();
        let (bounds, visible) = (found.bounds(), found.visible_bounds().unwrap());
        assert!(visible.height + 0.5 >= bounds.height, "{size:?}");
    }
    desk.press(Named::Enter);
    let entries = desk.hands.entries();
    assert_eq!(entries.len(), 1);

    let folder = TempDir::new().unwrap();
    let mut desk = at_the_log(&folder);
    desk.type_in("blue braid");
    desk.press(Named::Escape);
    desk.press(Named::Escape);
    assert!(desk.hands.entries().is_empty());
    assert!(desk.hands.session().walk().is_some(), "back at the tie");
}

#[test]
fn a_click_on_a_lesson_shows_it_and_a_second_one_begins_it() {
    let folder = TempDir::new().unwrap();
    let mut desk = Desk::new(Hands::open(folder.path(), None), WINDOW);
    desk.press(letter("c"));
    let second = "2. Bottle collar, 3 lead 7 bight: the rhythm of the hand";
    let place = desk.place_of_text(second).center();
    desk.click(place);
    assert!(desk.hands.last_said().starts_with("Lesson 2 of 6"));
    assert!(desk.hands.session().walk().is_none());
    desk.click(place);
    assert_eq!(desk.hands.ties()[0].lesson, Some(2));
}

#[test]
fn the_stage_stands_still_from_the_first_leg_to_the_last() {
    for size in [
        WINDOW,
        Size::new(1366.0, 768.0),
        Size::new(1920.0, 1080.0),
        Size::new(800.0, 1400.0),
    ] {
        let folder = TempDir::new().unwrap();
        let plan = Plan::read("5", "7", "2", "1").unwrap();
        let mut desk = Desk::new(Hands::open(folder.path(), Some(plan)), size);
        let places = |desk: &Desk| {
            ["stage-line", "picture", "bar-next", "bar-back"].map(|id| {
                let place = desk.place_of(id).unwrap_or_else(|| panic!("{id} {size:?}"));
                format!("{:.0} {:.0}", place.x, place.y)
            })
        };
        desk.press(SPACE);
        let before = places(&desk);
        let mut moved = Vec::new();
        for nth in 0..30 {
            desk.press(SPACE);
            let now = places(&desk);
            // What goes on is as wide as what it says.
            let is_still = now[0] == before[0] && now[1] == before[1] && now[3] == before[3];
            if !is_still {
                moved.push((nth, now));
            }
        }
        assert!(moved.is_empty(), "{size:?} {before:?}: {moved:?}");
        // Where am I comes over it.
        desk.press(letter("h"));
        assert_eq!(places(&desk)[..2], before[..2], "{size:?}");
        desk.press(letter("p"));
        assert_eq!(places(&desk)[..2], before[..2], "{size:?}");
    }
}
