//! Frame after frame: the window paints only what has changed since the frame before, and the words
//! of a step before a large picture of it. What it shows then must be what it shows when all of it
//! is painted anew.
#![cfg(feature = "window")]

#[path = "support/frames.rs"]
mod frames;
#[path = "support/hands.rs"]
mod hands;

use frames::Window;
use hands::Hands;
use iced::Rectangle;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::Message;
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const WINDOW: (u32, u32) = (1100, 760);
/// The edges of a plate that is painted anew may be blended a little otherwise.
const BLENDED: usize = 16;

/// A tie with a picture of many cords, and a window where only what has changed is painted.
fn opened(folder: &TempDir, size: (u32, u32)) -> (Hands, Window) {
    open(folder, ["13", "16", "3"], size)
}

fn open(folder: &TempDir, counts: [&str; 3], size: (u32, u32)) -> (Hands, Window) {
    let [leads, bights, passes] = counts;
    let plan = Plan::read(leads, bights, passes, "1").unwrap();
    let hands = Hands::open(folder.path(), Some(plan));
    let mut window = Window::open(size, false);
    settle(&mut window, &hands);
    (hands, window)
}

/// Paints frames until none is asked for; how many.
fn settle(window: &mut Window, hands: &Hands) -> usize {
    let mut frames = 1;
    while window.frame(hands.view()) {
        frames += 1;
    }
    frames
}

/// All of it painted anew, in a window of its own.
fn anew(hands: &Hands, size: (u32, u32)) -> Window {
    let mut window = Window::open(size, true);
    settle(&mut window, hands);
    window
}

/// How many pixels differ.
fn difference(one: &[u8], other: &[u8]) -> usize {
    let ((one, _), (other, _)) = (one.as_chunks::<4>(), other.as_chunks::<4>());
    one.iter().zip(other).filter(|(a, b)| a != b).count()
}

#[test]
fn what_changed_painted_shows_the_whole_step() {
    let folder = TempDir::new().unwrap();
    let (mut hands, mut window) = opened(&folder, WINDOW);
    // Through the beginning of each pass, where the parts of the page come and go.
    for nth in 0..45 {
        hands.press(Key::Named(Named::Space));
        check(&mut window, &hands, nth);
    }
}

#[test]
fn so_it_does_when_the_picture_has_another_size_or_view() {
    // The picture stands at many fractions of a dot: with and without a notice, in one row and in
    // two.
    let (many, few) = (["13", "16", "3"], ["3", "4", "1"]);
    let runs = [
        (many, WINDOW),
        (many, (600, 900)),
        (few, (600, 900)),
        (few, (1280, 733)),
    ];
    for (counts, size) in runs {
        let folder = TempDir::new().unwrap();
        let (mut hands, mut window) = open(&folder, counts, size);
        for has_keys in [true, false, true] {
            hands.tell(Message::focus(has_keys));
            for (nth, key) in "  f f  dfdvf vf".chars().enumerate() {
                if key == ' ' {
                    hands.press(Key::Named(Named::Space));
                } else {
                    hands.press(Key::Character(key.to_string().into()));
                }
                check(&mut window, &hands, nth);
            }
        }
    }
}

/// Paints only what has changed, and holds it against all of it.
fn check(window: &mut Window, hands: &Hands, nth: usize) {
    settle(window, hands);
    let differing = difference(window.pixels(), anew(hands, window.size()).pixels());
    assert!(differing <= BLENDED, "press {nth}: {differing} pixels");
}

#[test]
fn a_step_is_painted_in_few_pieces_words_before_picture() {
    let folder = TempDir::new().unwrap();
    let (mut hands, mut window) = opened(&folder, WINDOW);
    let mut deferred = 0;
    for nth in 0..40 {
        hands.press(Key::Named(Named::Space));
        let is_more = window.frame(hands.view());
        let painted = window.painted().to_vec();
        assert!(painted.len() <= 4, "press {nth}: {painted:?}");
        if is_more {
            // The picture stands in the lower part of the page.
            let below = |piece: &&Rectangle| piece.center_y() > 500.0;
            let is_whole = painted.iter().any(|piece| piece.height > 700.0);
            let pictures = painted.iter().filter(below).count();
            assert!(pictures == 0 || is_whole, "press {nth}: {painted:?}");
            deferred += 1;
        }
        while window.frame(hands.view()) {}
    }
    assert!(deferred > 20, "{deferred} of 40");
}
