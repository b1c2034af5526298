//! A walk of 1,000 presses through the tying screen at 1920 × 1080: for each press the app takes
//! it in, lays the screen out and paints it, once all of it, and once, as the window does, only
//! what changed since the frame before. The frame after a press has the new words; when a large
//! picture was painted beside it, a second one has that.

#[path = "../support/frames.rs"]
mod frames;
#[path = "../support/hands.rs"]
mod hands;
#[path = "line.rs"]
mod line;

use std::hint::black_box;
use std::time::{Duration, Instant};

use frames::Window;
use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::window::RedrawRequest;
use line::{head, ratio, times};
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const PRESSES: usize = 1000;
const WINDOW: (u32, u32) = (1920, 1080);

fn main() {
    // `cargo test --benches` asks whether it runs, not how fast.
    let presses = if std::env::args().any(|arg| arg == "--bench") {
        PRESSES
    } else {
        20
    };
    head(&format!(
        "the tying screen of 21 × 40 ninefold, 1920 × 1080, {presses} presses"
    ));
    let large = ["21", "40", "9"];
    Walk::over(large, "", presses, true).tell("all of it painted");
    Walk::over(large, "", presses, false).tell("what changed painted");
    // The picture over the whole screen.
    let long = ["40", "41", "3"];
    Walk::over(long, "f", presses, false).tell("40 × 41 tripled, the picture alone");
}

/// How long everything takes.
#[derive(Default)]
struct Walk {
    /// Every frame, from what it was asked by to the pixels.
    frames: Vec<Duration>,
    /// The first frame of each press.
    words: Vec<Duration>,
    /// All frames of each press.
    pictures: Vec<Duration>,
    /// Every frame in which the leg in hand goes in.
    moves: Vec<Duration>,
}

impl Walk {
    /// The presses of *next* that begin a tie of these leads, bights and passes, after a key or none.
    fn over([leads, bights, passes]: [&str; 3], key: &str, presses: usize, is_whole: bool) -> Self {
        let folder = TempDir::new().expect("a temporary folder");
        let plan = Plan::read(leads, bights, passes, "1").expect("a knot");
        let mut hands = Hands::open(folder.path(), Some(plan));
        if !key.is_empty() {
            hands.press(Key::Character(key.into()));
        }
        let mut window = Window::open(WINDOW, is_whole);
        // The window opens: this reads the system's fonts.
        while window.frame(hands.view()) {}
        let mut walk = Self::default();
        for _ in 0..presses {
            let press = Instant::now();
            hands.press(Key::Named(Named::Space));
            let mut next = window.frame_at(hands.view(), press);
            walk.words.push(press.elapsed());
            walk.frames.push(press.elapsed());
            while next == RedrawRequest::NextFrame {
                let start = Instant::now();
                next = window.frame_at(hands.view(), press);
                walk.frames.push(start.elapsed());
            }
            walk.pictures.push(press.elapsed());
            let mut now = press;
            while next != RedrawRequest::Wait {
                if let RedrawRequest::At(due) = next {
                    now = due;
                }
                let start = Instant::now();
                next = window.frame_at(hands.view(), now);
                walk.moves.push(start.elapsed());
            }
            black_box(window.pixels());
        }
        walk
    }
    fn tell(&self, what: &str) {
        times(&format!("  a frame, {what}"), &self.frames, "16 ms");
        for (until, taken) in [("words", &self.words), ("picture", &self.pictures)] {
            times(&format!("    from a press to its {until}"), taken, "");
        }
        times("    a frame in which the leg goes in", &self.moves, "16 ms");
        ratio(
            "    the same against one that stands after it",
            &self.moves,
            &self.frames,
            "1",
        );
    }
}
