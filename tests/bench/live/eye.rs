//! Pressing a key, and seeing the display change.

use std::io::IoSlice;
use std::thread;
use std::time::{Duration, Instant};

use x11rb::connection::{Connection, RequestConnection};
use x11rb::protocol::xproto::{ConnectionExt, ImageFormat, Window};
use x11rb::rust_connection::RustConnection;

use super::display::{DEADLINE, Display};

/// The space bar's symbol.
const SPACE: u32 = 0x20;
/// Kinds of events in the X protocol.
const PRESS: u8 = 2;
const RELEASE: u8 = 3;
/// Rows of pixels that are watched: through the title, the line that matters and what is below.
const ROWS: [i16; 17] = [
    130, 150, 170, 190, 210, 230, 250, 270, 290, 310, 330, 350, 370, 390, 410, 430, 450,
];
/// The words alone: in the picture the leg of the step before may still go in.
const WIDTH: u16 = 600;
/// Between two looks.
const BLINK: Duration = Duration::from_micros(300);
/// How long the key is held.
const HOLD: Duration = Duration::from_millis(60);

/// A hand on the space bar and an eye on the window.
pub struct Eye {
    display: RustConnection,
    root: Window,
    /// The number of the XTEST extension.
    xtest: u8,
    space: u8,
}

impl Eye {
    /// On a display.
    pub fn open(display: &Display) -> Self {
        let (display, screen) = x11rb::connect(Some(display.name())).expect("the display");
        let xtest = display.extension_information("XTEST");
        let xtest = xtest.expect("an answer").expect("XTEST").major_opcode;
        let (least, most) = (display.setup().min_keycode, display.setup().max_keycode);
        let keys = display.get_keyboard_mapping(least, most - least + 1);
        let keys = keys.expect("a question").reply().expect("the keyboard");
        let space = (least..=most)
            .zip(keys.keysyms.chunks(keys.keysyms_per_keycode.into()))
            .find(|(_, symbols)| symbols.first() == Some(&SPACE))
            .expect("a space bar")
            .0;
        Self {
            root: display.setup().roots[screen].root,
            display,
            xtest,
            space,
        }
    }

    /// Presses the space bar and lets go of it. The answer is the moment before the press.
    pub fn press(&self) -> Instant {
        let start = Instant::now();
        self.fake(PRESS);
        thread::sleep(HOLD);
        self.fake(RELEASE);
        start
    }

    /// Presses the space bar and waits for other pixels; how long they took.
    pub fn press_and_see(&self) -> Duration {
        let before = self.look();
        let start = Instant::now();
        self.fake(PRESS);
        while self.look() == before {
            assert!(start.elapsed() < DEADLINE, "nothing changed on the display");
            thread::sleep(BLINK);
        }
        let took = start.elapsed();
        thread::sleep(HOLD.saturating_sub(took));
        self.fake(RELEASE);
        took
    }

    /// `FakeInput` of the XTEST protocol 2.2: kind and key, at once, in a request of 36 bytes.
    fn fake(&self, kind: u8) {
        let mut request = [0; 36];
        request[..6].copy_from_slice(&[self.xtest, 2, 0, 0, kind, self.space]);
        request[2..4].copy_from_slice(&9_u16.to_ne_bytes());
        self.display
            .send_request_without_reply(&[IoSlice::new(&request)], Vec::new())
            .expect("a key event");
        self.display.flush().expect("it is sent");
    }

    /// The pixels of the rows.
    fn look(&self) -> Vec<u8> {
        let asked = ROWS.map(|row| {
            self.display
                .get_image(ImageFormat::Z_PIXMAP, self.root, 0, row, WIDTH, 1, !0)
                .expect("a question")
        });
        asked
            .into_iter()
            .flat_map(|row| row.reply().expect("pixels").data)
            .collect()
    }
}
