//! The window paints only what has changed since the frame before. What it shows after each
//! press must be what it shows when all of it is painted anew.
#![cfg(all(target_os = "linux", feature = "window"))]

#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/program.rs"]
mod program;
#[path = "support/ssip.rs"]
mod ssip;

use std::thread;
use std::time::Duration;

use display::Display;
use program::{Program, heard, wait_for};
use ssip::Service;
use tempfile::TempDir;
use x11rb::connection::Connection;
use x11rb::protocol::xproto::{ConfigureWindowAux, ConnectionExt, ImageFormat, Window};
use x11rb::rust_connection::RustConnection;

/// The window as it opens.
const SIZE: (u16, u16) = (1100, 760);
/// The edges of what is painted anew may be blended a little otherwise.
const BLENDED: usize = 200;

/// The window on its display.
struct Pane {
    display: RustConnection,
    root: Window,
    window: Window,
}

impl Pane {
    fn find(display: &Display) -> Self {
        let (display, screen) = x11rb::connect(Some(display.name())).unwrap();
        let root = display.setup().roots[screen].root;
        // No window manager is between the root and the window.
        let children = display.query_tree(root).unwrap().reply().unwrap().children;
        let is_it = |window: &Window| {
            let place = display.get_geometry(*window).unwrap().reply().unwrap();
            (place.width, place.height) == SIZE
        };
        let window = children.into_iter().find(is_it).expect("the window");
        Self {
            display,
            root,
            window,
        }
    }

    /// The pixels of some columns of the screen.
    fn columns(&self, from: u16, width: u16) -> Vec<u32> {
        let format = ImageFormat::Z_PIXMAP;
        let asked = self.display.get_image(
            format,
            self.root,
            from.try_into().unwrap(),
            0,
            width,
            SIZE.1,
            !0,
        );
        let bytes = asked.unwrap().reply().unwrap().data;
        let (pixels, _) = bytes.as_chunks();
        pixels
            .iter()
            .map(|bytes| u32::from_ne_bytes(*bytes))
            .collect()
    }

    fn look(&self) -> Vec<u32> {
        self.columns(0, SIZE.0)
    }

    /// What it shows once it stays as it is.
    fn settled(&self) -> Vec<u32> {
        wait_for(|| {
            let shown = self.look();
            // Between two looks, not instead of one: a leg that goes in moves oftener.
            thread::sleep(Duration::from_millis(1200));
            (self.look() == shown).then_some(shown)
        })
    }

    fn set_width(&self, width: u16) {
        let wish = ConfigureWindowAux::new().width(u32::from(width));
        let asked = self.display.configure_window(self.window, &wish);
        asked.unwrap().check().unwrap();
    }

    /// Has all of it painted anew, in another width and back in its own.
    fn paint_anew(&self) {
        self.set_width(SIZE.0 + 1);
        let is_painted = || self.columns(SIZE.0, 1).iter().all(|pixel| pixel << 8 != 0);
        wait_for(|| is_painted().then_some(()));
        self.set_width(SIZE.0);
    }
}

#[test]
fn after_each_press_the_window_shows_all_of_the_step() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let knot = ["--leads", "7", "--bights", "12", "--passes", "2"];
    let _program = Program::start(&display, &service, data.path(), &knot);
    heard(&service);
    let pane = Pane::find(&display);
    let mut before = pane.settled();
    // Legs with and without crossings, and two looks at what is laid.
    for number in 1..=8 {
        display.press("space");
        let step = heard(&service);
        wait_for(|| (pane.look() != before).then_some(()));
        let shown = pane.settled();
        pane.paint_anew();
        // It goes through the other width, where nearly all of it is a little aside.
        println!("press {number} must show all of: {step}");
        wait_for(|| {
            let anew = pane.look();
            let other = anew.iter().zip(&shown).filter(|(a, b)| a != b).count();
            (other <= BLENDED).then_some(())
        });
        before = pane.settled();
    }
}
