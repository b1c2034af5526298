//! Frame after frame: the window paints only what has changed since the frame before, and the words
//! of a step before a large picture of it. What it shows then must be what it shows when all of it
//! is painted anew.

#[path = "support/frames.rs"]
mod frames;
#[path = "support/hands.rs"]
mod hands;

use frames::Window;
use hands::Hands;
use iced::Rectangle;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const WINDOW: (u32, u32) = (1100, 760);
/// The edges of a plate that is painted anew may be blended a little otherwise.
const BLENDED: usize = 16;

/// A tie with a picture of many cords, and a window where only what has changed is painted.
fn opened(folder: &TempDir) -> (Hands, Window) {
    let plan = Plan::read("13", "16", "3", "1").unwrap();
    let hands = Hands::open(folder.path(), Some(plan));
    let mut window = Window::open(WINDOW, false);
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
fn anew(hands: &Hands) -> Window {
    let mut window = Window::open(WINDOW, true);
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
    let (mut hands, mut window) = opened(&folder);
    // Through the beginning of each pass, where the parts of the page come and go, back, and to
    // other sizes and views of the picture.
    let walk = [" "; 45]
        .into_iter()
        .chain(["d", " ", "v", " ", "f", " ", "f"]);
    for (nth, key) in walk.enumerate() {
        match key {
            " " => hands.press(Key::Named(Named::Space)),
            key => hands.press(Key::Character(key.into())),
        }
        settle(&mut window, &hands);
        let differing = difference(window.pixels(), anew(&hands).pixels());
        assert!(differing <= BLENDED, "press {nth}: {differing} pixels");
    }
}

#[test]
fn a_step_is_painted_in_few_pieces_words_before_picture() {
    let folder = TempDir::new().unwrap();
    let (mut hands, mut window) = opened(&folder);
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
