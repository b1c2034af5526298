//! A walk of 1,000 presses through the tying screen at 1920 × 1080: for each press the app takes
//! it in, lays the screen out and paints it, once all of it, and once, as the window does, only
//! what changed since the frame before.

#[path = "../support/hands.rs"]
mod hands;
#[path = "line.rs"]
mod line;

use std::time::{Duration, Instant};

use hands::Hands;
use iced::advanced::clipboard;
use iced::advanced::renderer::{Headless, Style};
use iced::futures::executor::block_on;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::theme::Base;
use iced::{Color, Event, Rectangle, Size, mouse, window};
use iced_runtime::user_interface::{Cache, UserInterface};
use iced_tiny_skia::Layer;
use iced_tiny_skia::graphics::{Viewport, damage};
use line::{head, times};
use marlinspeak::app;
use marlinspeak::guide::Plan;
use tempfile::TempDir;
use tiny_skia::{Mask, Pixmap};

const PRESSES: usize = 1000;
const WINDOW: Size<u32> = Size::new(1920, 1080);

fn main() {
    // `cargo test --benches` asks whether it runs, not how fast.
    let presses = if std::env::args().any(|arg| arg == "--bench") {
        PRESSES
    } else {
        20
    };
    head(&format!(
        "the tying screen at 1920 × 1080, {presses} presses"
    ));
    for (what, is_whole) in [("all of it painted", true), ("what changed painted", false)] {
        let mut frames = walk(presses, is_whole);
        // The first frame reads the system's fonts and draws every letter anew; it belongs to
        // the opening of the window.
        let first = frames.remove(0);
        times(&format!("  a press, {what}"), &frames, "16 ms");
        times(&format!("  the first, {what}"), &[first], "");
    }
}

/// How long each press takes, from the key to the pixels.
fn walk(presses: usize, is_whole: bool) -> Vec<Duration> {
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
    let mut surface = Surface::new();
    let theme = app::theme();
    let base = theme.base();
    let mut cache = Some(Cache::default());
    let mut frames = Vec::with_capacity(presses);
    for _ in 0..presses {
        let start = Instant::now();
        hands.press(Key::Named(Named::Space));
        let mut screen = UserInterface::build(
            hands.view(),
            surface.viewport.logical_size(),
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
        surface.present(&mut renderer, is_whole, base.background_color);
        frames.push(start.elapsed());
        std::hint::black_box(surface.pixels.data());
    }
    frames
}

/// The memory of a window, painted as the toolkit paints it: all of it, or what differs from
/// the frame before.
struct Surface {
    viewport: Viewport,
    pixels: Pixmap,
    mask: Mask,
    before: Option<Vec<Layer>>,
}

impl Surface {
    fn new() -> Self {
        let Size { width, height } = WINDOW;
        Self {
            viewport: Viewport::with_physical_size(WINDOW, 1.0),
            pixels: Pixmap::new(width, height).expect("a window's pixels"),
            mask: Mask::new(width, height).expect("a window's mask"),
            before: None,
        }
    }

    fn present(&mut self, renderer: &mut iced::Renderer, is_whole: bool, ground: Color) {
        let all = Rectangle::with_size(self.viewport.logical_size());
        let before = self.before.as_ref().filter(|_| !is_whole);
        let changed = before.map(|before| {
            let layers = renderer.layers();
            damage::diff(before, layers, |layer| vec![layer.bounds], Layer::damage)
        });
        let changed = changed.map_or_else(|| vec![all], |changed| damage::group(changed, all));
        self.before = Some(renderer.layers().to_vec());
        renderer.draw(
            &mut self.pixels.as_mut(),
            &mut self.mask,
            &self.viewport,
            &changed,
            ground,
        );
    }
}
