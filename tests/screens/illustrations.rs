//! The pictures of the glossary and of the lessons: each word has its own, and what moves in one
//! comes to stand.
#![cfg(feature = "window")]

use crate::frames;
use crate::hands;

use std::collections::HashSet;
use std::time::{Duration, Instant};

use hands::Hands;
use iced::Size;
use iced::advanced::renderer::Headless as _;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::window::RedrawRequest;
use iced_runtime::user_interface::{Cache, UserInterface};
use kurbo::Shape as _;
use marlinspeak::app;
use marlinspeak::guide::{COURSE, GlossaryWord, Plan};
use marlinspeak::picture::{
    DefaultPalette, DisplayList, Outline, Painter, Role, Subject, View, Viewport,
};
use marlinspeak::settings::Settings;
use strum::VariantArray;
use tempfile::TempDir;

const SIZE: Viewport = Viewport {
    width: 480.0,
    height: 360.0,
};

fn pixels(subject: &Subject) -> Vec<u8> {
    let list = DisplayList::of(&subject.scene(View::RoundTheTube, SIZE));
    let mut painter = Painter::new();
    let image = painter.paint(&list, &DefaultPalette::dark());
    image.pixels().to_vec()
}

#[test]
fn every_word_has_a_picture_of_its_own() {
    let mut seen = HashSet::new();
    for word in GlossaryWord::VARIANTS {
        let film = Subject::of_word(*word).unwrap();
        let last = film.last().unwrap();
        let is_new = seen.insert(film.iter().map(pixels).collect::<Vec<_>>());
        assert!(is_new, "{word:?}");
        let list = DisplayList::of(&last.scene(View::RoundTheTube, SIZE));
        assert!(list.segments() > 30, "{word:?}: {}", list.segments());
    }
}

#[test]
fn a_line_across_the_leads_meets_each_of_them_once() {
    for view in [View::RoundTheTube, View::RolledOut] {
        let [leads] = &Subject::of_word(GlossaryWord::Lead).unwrap()[..] else {
            panic!("one picture");
        };
        let list = DisplayList::of(&leads.scene(view, SIZE));
        let discs = list.items().iter().filter(|item| item.role == Role::To);
        let discs: Vec<f64> = discs
            .map(|item| match &item.outline {
                Outline::Circle(disc) => disc.center.x - disc.radius,
                Outline::Path(_) => panic!("a disc"),
            })
            .collect();
        assert_eq!(discs.len(), 5, "{view:?}");
        // They hide none of the cords that they count.
        let cords = list.items().iter().filter_map(|item| match &item.outline {
            Outline::Path(path) if matches!(item.role, Role::Laid(_)) => Some(path),
            _ => None,
        });
        let reach = cords.map(|path| path.bounding_box().x1).fold(0.0, f64::max);
        if view == View::RoundTheTube {
            assert!(discs.iter().all(|left| *left >= reach), "{discs:?} {reach}");
        }
    }
}

#[test]
fn a_leg_goes_in_crossing_by_crossing_between_two_whole_pictures() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    for lesson in COURSE {
        let [leads, bights, passes] = [lesson.leads, lesson.bights, lesson.passes];
        let text = |number: u16| number.to_string();
        let plan = Plan::read(&text(leads), &text(bights), &text(passes), "1").unwrap();
        let film = Subject::of_lesson(&plan);
        // Whole, all crossings but the last one by one, whole, finished.
        assert_eq!(film.len(), usize::from(leads) - 2 + 3, "{lesson:?}");
        assert_eq!(film[0], film[film.len() - 2]);
        let drawn: Vec<Vec<u8>> = film.iter().map(pixels).collect();
        let distinct: HashSet<_> = drawn.iter().collect();
        assert_eq!(distinct.len(), film.len() - 1);
    }
    // The tube stands still meanwhile: what is laid is where it was.
    let film = Subject::of_lesson(&plan);
    let pins = |subject: &Subject| {
        let list = DisplayList::of(&subject.scene(View::RoundTheTube, SIZE));
        let pins = list.items().iter().filter(|item| item.role == Role::Pin);
        pins.cloned().collect::<Vec<_>>()
    };
    assert!(
        film[..film.len() - 1]
            .iter()
            .all(|subject| pins(subject) == pins(&film[0]))
    );
}

/// Shows a screen for some seconds, frame after frame as the window would, and gives when each
/// further frame was asked for and what was seen at the end.
fn watched(hands: &Hands) -> (Vec<Duration>, Vec<u8>) {
    let mut renderer = frames::renderer();
    let size = Size::new(900.0, 600.0);
    let mut screen = UserInterface::build(hands.view(), size, Cache::default(), &mut renderer);
    let begun = Instant::now();
    let (mut now, mut asked) = (begun, Vec::new());
    loop {
        let next = frames::next_asked_for(&mut screen, &mut renderer, now);
        frames::draw(&mut screen, &mut renderer, &app::theme());
        match next {
            RedrawRequest::At(due) => {
                now = due;
                asked.push(due - begun);
            }
            RedrawRequest::NextFrame => {}
            RedrawRequest::Wait => break,
        }
        assert!(asked.len() < 50, "it never comes to stand: {asked:?}");
    }
    let ground = app::theme().palette().background;
    let pixels = renderer.screenshot(Size::new(900, 600), 1.0, ground);
    (asked, pixels)
}

fn glossary(settings: Settings, words_on: usize) -> (TempDir, Hands) {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open_with(folder.path(), None, settings);
    hands.press(Key::Character("g".into()));
    for _ in 0..words_on {
        hands.press(Key::Named(Named::ArrowDown));
    }
    (folder, hands)
}

#[test]
fn a_picture_that_moves_comes_to_stand_and_then_asks_for_nothing() {
    let passes = GlossaryWord::VARIANTS
        .iter()
        .position(|word| *word == GlossaryWord::Pass)
        .unwrap();
    let (_folder, moving) = glossary(Settings::default(), passes);
    let (asked, last) = watched(&moving);
    assert_eq!(asked, [700, 1400].map(Duration::from_millis));
    // What is looked at again stands.
    let (again, same) = watched(&moving);
    assert!(again.is_empty(), "{again:?}");
    assert!(same == last);
    let still = Settings {
        still: true,
        ..Settings::default()
    };
    let (_folder, standing) = glossary(still, passes);
    let (asked, same) = watched(&standing);
    assert!(asked.is_empty(), "{asked:?}");
    assert!(same == last);
}
