//! The leg in hand on the tying screen: it goes in once, at the pace of the voice, between two whole
//! pictures, and then nothing moves.
#![cfg(feature = "window")]

use crate::frames;
use crate::hands;

use std::time::{Duration, Instant};

use frames::Window;
use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::window::RedrawRequest;
use marlinspeak::guide::{Captions, Plan};
use marlinspeak::knot::PassLeg;
use marlinspeak::picture::{DisplayList, Moment, Role, Scene, Subject, View, Viewport};
use marlinspeak::session::Walk;
use marlinspeak::settings::Settings;
use tempfile::TempDir;

const WINDOW: (u32, u32) = (1100, 760);
/// Two words, “over 1”, at the usual 165 words a minute.
const CROSSING: Duration = Duration::from_nanos(2 * 60 * 1_000_000_000 / 165);
const LONGEST: Duration = Duration::from_secs(3);

/// Somebody at leg 13 of a knot of 5 leads and 7 bights: over, under, over, under.
fn at_a_leg_of_four(settings: Settings) -> (TempDir, Hands) {
    let (folder, mut hands) = begun(["5", "7", "1"], settings);
    for _ in 0..16 {
        next(&mut hands);
    }
    let walk = hands.session().walk().unwrap();
    assert!(walk.shown().marks.len() == 4, "{:?}", walk.shown());
    (folder, hands)
}

fn begun([leads, bights, passes]: [&str; 3], settings: Settings) -> (TempDir, Hands) {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read(leads, bights, passes, "1").unwrap();
    let hands = Hands::open_with(folder.path(), Some(plan), settings);
    (folder, hands)
}

fn next(hands: &mut Hands) {
    hands.press(Key::Named(Named::Space));
}

fn letter(hands: &mut Hands, letter: &str) {
    hands.press(Key::Character(letter.into()));
}

/// A window that is looked at, on a clock of the test's own.
struct Watched {
    window: Window,
    now: Instant,
}

impl Watched {
    fn open(size: (u32, u32)) -> Self {
        Self {
            window: Window::open(size, false),
            now: Instant::now(),
        }
    }

    /// Paints what is due at this moment, and says when the next frame is.
    fn paint(&mut self, hands: &Hands) -> Option<Instant> {
        loop {
            match self.window.frame_at(hands.view(), self.now) {
                RedrawRequest::NextFrame => {}
                RedrawRequest::At(due) => return Some(due),
                RedrawRequest::Wait => return None,
            }
        }
    }

    /// Paints until nothing is due any more: when each further frame was due, and what was seen at each
    /// time from the first on.
    fn paint_all(&mut self, hands: &Hands) -> (Vec<Duration>, Vec<Vec<u8>>) {
        let begun = self.now;
        let (mut due, mut seen) = (Vec::new(), Vec::new());
        loop {
            let next = self.paint(hands);
            seen.push(self.window.pixels().to_vec());
            let Some(next) = next else {
                return (due, seen);
            };
            due.push(next - begun);
            self.now = next;
            assert!(due.len() < 50, "it never comes to stand: {due:?}");
        }
    }
}

/// The pixels that differ by more than the edge of a button does that is painted in two pieces.
fn differing(one: &[u8], other: &[u8]) -> Vec<usize> {
    let (one, other) = (one.as_chunks::<4>().0, other.as_chunks::<4>().0);
    let pairs = one.iter().zip(other).enumerate();
    pairs
        .filter(|(_, (a, b))| a.iter().zip(b.iter()).any(|(a, b)| a.abs_diff(*b) > 4))
        .map(|(at, _)| at)
        .collect()
}

fn is_same(one: &[u8], other: &[u8]) -> bool {
    differing(one, other).len() <= 16
}

/// All of it, as it stands.
fn standing(hands: &Hands, size: (u32, u32)) -> Vec<u8> {
    let mut window = Watched::open(size);
    window.paint_all(hands).1.pop().unwrap()
}

#[test]
fn the_leg_in_hand_goes_in_once_at_the_pace_of_the_voice_and_then_nothing_moves() {
    let (_folder, mut hands) = at_a_leg_of_four(Settings::default());
    let mut window = Watched::open(WINDOW);
    let (due, seen) = window.paint_all(&hands);
    let usual: Vec<Duration> = (1..=4).map(|nth| CROSSING * nth).collect();
    for (due, usual) in due.iter().zip(&usual) {
        assert!(due.abs_diff(*usual) < Duration::from_millis(1), "{due:?}");
    }
    assert_eq!(due.len(), 4, "{due:?}");
    assert!(due[3] <= LONGEST);
    // The first frame has the whole step, and so has the last; between them are three others.
    assert!(is_same(&seen[0], &seen[4]));
    for (nth, one) in seen[..4].iter().enumerate() {
        assert!(seen[..nth].iter().all(|other| !is_same(one, other)));
    }
    // It stands: no frame is asked for, and one that comes all the same paints nothing.
    window.now += Duration::from_secs(60);
    assert_eq!(window.paint(&hands), None);
    assert!(window.window.painted().is_empty());
    // Told once more, it goes in once more.
    letter(&mut hands, "r");
    assert_eq!(window.paint_all(&hands).0.len(), 4);
    // What is no step anew moves nothing.
    letter(&mut hands, "h");
    assert_eq!(window.paint_all(&hands).0.len(), 0);
}

#[test]
fn only_the_leg_moves() {
    let (_folder, hands) = at_a_leg_of_four(Settings::default());
    let (_, seen) = Watched::open(WINDOW).paint_all(&hands);
    let width = WINDOW.0 as usize;
    for other in &seen[1..4] {
        let moved = differing(&seen[0], other);
        // Some of the picture, at the right of the words.
        assert!(moved.len() > 200, "{}", moved.len());
        assert!(moved.len() < seen[0].len() / 4 / 20, "{}", moved.len());
        assert!(moved.iter().all(|at| at % width > width / 2));
    }
}

#[test]
fn a_slower_voice_has_it_go_in_more_slowly_but_never_for_long() {
    let mut settings = Settings::default();
    let mut speech = settings.speech("en");
    speech.words_per_minute = 330;
    settings.set_speech("en", speech.clone());
    let (_folder, hands) = at_a_leg_of_four(settings.clone());
    let (quick, _) = Watched::open(WINDOW).paint_all(&hands);
    assert!(quick[3].abs_diff(CROSSING * 2) < Duration::from_millis(1));
    speech.words_per_minute = 80;
    settings.set_speech("en", speech);
    let (_folder, hands) = at_a_leg_of_four(settings);
    let (slow, _) = Watched::open(WINDOW).paint_all(&hands);
    assert_eq!(slow[3], LONGEST);
}

#[test]
fn a_tyer_who_wants_no_moving_pictures_has_the_same_step_at_rest() {
    let (_folder, moving) = at_a_leg_of_four(Settings::default());
    let still = Settings {
        still: true,
        ..Settings::default()
    };
    let (_folder, mut hands) = at_a_leg_of_four(still);
    let mut window = Watched::open(WINDOW);
    let (due, seen) = window.paint_all(&hands);
    assert!(due.is_empty(), "{due:?}");
    assert!(is_same(&seen[0], &standing(&moving, WINDOW)));
    letter(&mut hands, "r");
    assert!(window.paint_all(&hands).0.is_empty());
}

#[test]
fn a_press_in_the_middle_is_answered_in_its_own_frame() {
    let (_folder, mut hands) = at_a_leg_of_four(Settings::default());
    let mut window = Watched::open(WINDOW);
    window.now = window.paint(&hands).unwrap() + CROSSING / 2;
    window.paint(&hands).unwrap();
    next(&mut hands);
    window.paint(&hands);
    // The whole of the next step stands there, not a part of its leg.
    assert!(is_same(window.window.pixels(), &standing(&hands, WINDOW)));
    // And a walk back and forth through halves of films comes to the same.
    for key in [Named::PageUp, Named::PageUp, Named::Space, Named::PageUp] {
        window.now += CROSSING / 3;
        window.paint(&hands);
        hands.press(Key::Named(key));
    }
    window.paint_all(&hands);
    assert!(is_same(window.window.pixels(), &standing(&hands, WINDOW)));
}

#[test]
fn it_goes_on_through_another_size_view_and_place_and_comes_to_an_end() {
    let (_folder, mut hands) = at_a_leg_of_four(Settings::default());
    let mut window = Watched::open(WINDOW);
    let begun = window.now;
    let mut size = WINDOW;
    for (key, other) in [
        ("v", (1100, 760)),
        ("", (1366, 768)),
        ("f", (1366, 768)),
        ("f", (800, 1400)),
    ] {
        window.now += CROSSING / 2;
        if !key.is_empty() {
            letter(&mut hands, key);
        }
        if other != size {
            let now = window.now;
            window = Watched::open(other);
            (window.now, size) = (now, other);
        }
        assert!(window.paint(&hands).is_some(), "after {key}");
    }
    let (due, _) = window.paint_all(&hands);
    let end = window.now - begun;
    assert!(due.len() <= 3 && end <= CROSSING * 5, "{due:?} {end:?}");
    assert!(is_same(window.window.pixels(), &standing(&hands, size)));
}

#[test]
fn a_leg_that_is_taken_back_lies_still() {
    let (_folder, mut hands) = at_a_leg_of_four(Settings::default());
    letter(&mut hands, "w");
    next(&mut hands);
    let (due, _) = Watched::open(WINDOW).paint_all(&hands);
    assert!(due.is_empty(), "{due:?}");
    // Laid once more, it goes in.
    hands.press(Key::Named(Named::PageUp));
    assert!(!Watched::open(WINDOW).paint_all(&hands).0.is_empty());
}

/// What is offered to be taken back is in the picture before it is: not the leg that is still to be laid.
#[test]
fn where_something_is_wrong_the_picture_shows_the_leg_that_is_offered_to_be_taken_back() {
    let (_folder, mut hands) = at_a_leg_of_four(Settings::default());
    let subject = |hands: &Hands| hands.session().walk().and_then(Walk::subject);
    let to_lay = subject(&hands);
    letter(&mut hands, "w");
    let offered = subject(&hands);
    assert_ne!(offered, to_lay);
    next(&mut hands);
    assert_eq!(offered, subject(&hands));
}

#[test]
fn a_tuck_goes_in_too() {
    let (_folder, mut hands) = begun(["5", "7", "1"], Settings::default());
    let is_tuck = |hands: &Hands| {
        let subject = hands.session().walk().unwrap().subject();
        matches!(
            subject,
            Some(Subject::Knot {
                moment: Moment::Tucking { .. },
                ..
            })
        )
    };
    while !is_tuck(&hands) {
        assert!(!hands.session().walk().unwrap().is_done());
        next(&mut hands);
    }
    let (due, seen) = Watched::open(WINDOW).paint_all(&hands);
    assert!(!due.is_empty());
    assert!(is_same(&seen[0], seen.last().unwrap()));
    assert!(!is_same(&seen[0], &seen[1]));
}

#[test]
fn a_leg_of_many_crossings_goes_in_by_few_moves_while_the_tube_stands_still() {
    let plan = Plan::read("40", "41", "1", "1").unwrap();
    let last = PassLeg {
        pass: 1,
        strand: 1,
        leg: 81,
    };
    let subject = Subject::Knot {
        laying: plan.laying().clone(),
        side: plan.side,
        hand: plan.hand,
        moment: Moment::at(last),
        shape: None,
        ground: None,
        has_pins: true,
        captions: Captions::default(),
    };
    let film = subject.film(12);
    assert_eq!(film.len(), 13);
    assert_eq!(film[0], film[12]);
    let pins = |subject: &Subject, view: View, size: Viewport| {
        let scene: Scene = subject.scene(view, size);
        let list = DisplayList::of(&scene);
        let pins = list.items().iter().filter(|item| item.role == Role::Pin);
        (scene.is_zoomed(), pins.cloned().collect::<Vec<_>>())
    };
    for view in [View::RoundTheTube, View::RolledOut] {
        let mut zoomed = 0;
        for size in [Viewport::new(420.0, 300.0), Viewport::new(1800.0, 900.0)] {
            let stands = pins(&film[0], view, size);
            zoomed += usize::from(stands.0);
            for subject in &film {
                assert!(pins(subject, view, size) == stands, "{view:?} {size:?}");
            }
        }
        assert!(zoomed > 0, "no picture was of a part alone");
    }
}
