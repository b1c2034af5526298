//! Frame after frame: the window paints only what has changed since the frame before, and the words
//! of a step before a large picture of it. What it shows then must be what it shows when all of it
//! is painted anew.
#![cfg(feature = "window")]

use crate::frames;
use crate::hands;

use std::path::Path;
use std::time::Instant;

use frames::Window;
use hands::Hands;
use iced::Rectangle;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::window::RedrawRequest;
use marlinspeak::app::Message;
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const WINDOW: (u32, u32) = (1100, 760);
/// The edges of a plate that is painted anew may be blended a little otherwise.
const BLENDED: usize = 16;
/// By so many of 255 an edge of a button may differ that is painted in two pieces.
const FAINT: u8 = 4;

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

/// Paints frames until none is asked for, at the moments for which they are.
fn settle(window: &mut Window, hands: &Hands) {
    let mut now = Instant::now();
    loop {
        match window.frame_at(hands.view(), now) {
            RedrawRequest::NextFrame => {}
            // The leg goes in.
            RedrawRequest::At(due) => now = due,
            RedrawRequest::Wait => return,
        }
    }
}

/// All of it painted anew, as it is at this moment, in a window of its own.
fn anew(hands: &Hands, size: (u32, u32), now: Instant) -> Window {
    let mut window = Window::open(size, true);
    while window.frame_at(hands.view(), now) == RedrawRequest::NextFrame {}
    window
}

/// Which pixels differ by more than the edge of a button does that is painted in two pieces: what no
/// eye sees.
fn difference(one: &[u8], other: &[u8]) -> Vec<usize> {
    let ((one, _), (other, _)) = (one.as_chunks::<4>(), other.as_chunks::<4>());
    let pairs = one.iter().zip(other).enumerate();
    pairs
        .filter(|(_, (a, b))| a.iter().zip(b.iter()).any(|(a, b)| a.abs_diff(*b) > FAINT))
        .map(|(nth, _)| nth)
        .collect()
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
    hold_against(window, &anew(hands, window.size(), Instant::now()), nth);
}

/// Holds a window against one in which all was painted.
fn hold_against(window: &Window, whole: &Window, nth: usize) {
    let differing = difference(window.pixels(), whole.pixels());
    let (width, _) = window.size();
    let ends = [differing.first(), differing.last()].map(|end| {
        end.map(|at| {
            let row = at / usize::try_from(width).unwrap();
            (row, at % usize::try_from(width).unwrap())
        })
    });
    let (size, count) = (window.size(), differing.len());
    if count > BLENDED {
        // To be looked at side by side.
        for (name, window) in [("changed", window), ("whole", whole)] {
            let file = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.png"));
            let (width, height) = size;
            image::save_buffer(
                &file,
                window.pixels(),
                width,
                height,
                image::ColorType::Rgba8,
            )
            .unwrap();
        }
    }
    assert!(
        count <= BLENDED,
        "press {nth}, {size:?}: {count} pixels from {ends:?}"
    );
}

#[test]
fn so_it_does_at_every_move_of_a_leg_that_goes_in() {
    for (counts, size) in [(["13", "16", "3"], WINDOW), (["5", "7", "1"], (800, 1400))] {
        let folder = TempDir::new().unwrap();
        let (mut hands, mut window) = open(&folder, counts, size);
        let (mut now, mut moves) = (Instant::now(), 0);
        for nth in 0..14 {
            hands.press(Key::Named(Named::Space));
            loop {
                match window.frame_at(hands.view(), now) {
                    RedrawRequest::NextFrame => {}
                    RedrawRequest::At(due) => {
                        hold_against(&window, &anew(&hands, size, now), nth);
                        (now, moves) = (due, moves + 1);
                    }
                    RedrawRequest::Wait => break,
                }
            }
        }
        assert!(moves > 10, "{counts:?}: {moves}");
    }
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
            // The picture stands in the right of the page.
            let beside = |piece: &&Rectangle| piece.x > 600.0;
            let is_whole = painted.iter().any(|piece| piece.height > 600.0);
            let pictures = painted.iter().filter(beside).count();
            assert!(pictures == 0 || is_whole, "press {nth}: {painted:?}");
            deferred += 1;
        }
        while window.frame(hands.view()) {}
    }
    assert!(deferred > 20, "{deferred} of 40");
}
