//! A walk of 1,000 presses through the tying screen at 1920 × 1080: for each press the app takes
//! it in, lays the screen out and paints all of it (the window itself paints only what changed).

#[path = "../support/hands.rs"]
mod hands;

use std::time::{Duration, Instant};

use hands::Hands;
use iced::advanced::clipboard;
use iced::advanced::renderer::{Headless, Style};
use iced::futures::executor::block_on;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::theme::Base;
use iced::{Event, Size, mouse, window};
use iced_runtime::user_interface::{Cache, UserInterface};
use marlinspeak::app;
use marlinspeak::guide::Plan;
use tempfile::TempDir;

const PRESSES: usize = 1000;
const GOAL: Duration = Duration::from_millis(16);

fn main() {
    // `cargo test --benches` asks whether it runs, not how fast.
    let presses = if std::env::args().any(|arg| arg == "--bench") {
        PRESSES
    } else {
        20
    };
    let folder = TempDir::new().expect("a temporary folder");
    let plan = Plan::read("21", "40", "9", "1").expect("a knot");
    let mut hands = Hands::open(folder.path(), Some(plan));
    let settings = app::settings();
    // Loads the faces once, as the window does.
    drop(hands.screen(Size::new(100.0, 100.0)));
    let mut renderer: iced::Renderer = block_on(<iced::Renderer as Headless>::new(
        settings.default_font,
        settings.default_text_size,
        None,
    ))
    .expect("the software renderer");
    let size = Size::new(1920.0, 1080.0);
    let theme = app::theme();
    let base = theme.base();
    let mut cache = Some(Cache::default());
    let mut frames = Vec::with_capacity(presses);
    for _ in 0..presses {
        let start = Instant::now();
        hands.press(Key::Named(Named::Space));
        let mut screen = UserInterface::build(
            hands.view(),
            size,
            cache.take().unwrap_or_default(),
            &mut renderer,
        );
        let redraw = Event::Window(window::Event::RedrawRequested(Instant::now()));
        let cursor = mouse::Cursor::Unavailable;
        let mut messages = Vec::new();
        screen.update(
            &[redraw],
            cursor,
            &mut renderer,
            &mut clipboard::Null,
            &mut messages,
        );
        screen.draw(
            &mut renderer,
            &theme,
            &Style {
                text_color: base.text_color,
            },
            cursor,
        );
        cache = Some(screen.into_cache());
        let pixels = renderer.screenshot(Size::new(1920, 1080), 1.0, base.background_color);
        frames.push(start.elapsed());
        std::hint::black_box(pixels);
    }
    // The first frame reads the system's fonts and draws every letter anew; it belongs to the
    // opening of the window.
    let first = frames.remove(0);
    frames.sort();
    let (median, worst) = (frames[frames.len() / 2], frames[frames.len() - 1]);
    println!("walk of {presses} presses at 1920 × 1080, every frame painted whole");
    println!("  first frame    {first:>10.2?}");
    println!("  frame, median  {median:>10.2?}");
    println!("  frame, worst   {worst:>10.2?}   goal {GOAL:?}");
    println!(
        "  worst / goal   {:>10.2}",
        worst.as_secs_f64() / GOAL.as_secs_f64()
    );
}
