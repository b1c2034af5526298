//! Size and place of the real window from one time to the next.
#![cfg(all(target_os = "linux", feature = "window"))]

#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/program.rs"]
mod program;
#[path = "support/ssip.rs"]
mod ssip;

use display::Display;
use program::{Program, heard, wait_for};
use ssip::Service;
use tempfile::TempDir;
use x11rb::connection::Connection;
use x11rb::protocol::xproto::{
    CONFIGURE_NOTIFY_EVENT, ConfigureNotifyEvent, ConfigureWindowAux, ConnectionExt, EventMask,
};
use x11rb::rust_connection::RustConnection;

/// Left, top, width and height, in dots of the display.
type Place = [i32; 4];

/// Asks a display for its windows.
struct Desk {
    server: RustConnection,
    screen: usize,
}

impl Desk {
    fn at(display: &Display) -> Self {
        let (server, screen) = x11rb::connect(Some(display.name())).unwrap();
        Self { server, screen }
    }

    /// The largest window, which is the program's.
    fn window(&self) -> Option<(u32, Place)> {
        let root = self.server.setup().roots[self.screen].root;
        let children = self.server.query_tree(root).ok()?.reply().ok()?.children;
        let places = children.into_iter().filter_map(|window| {
            let place = self.server.get_geometry(window).ok()?.reply().ok()?;
            let place = [
                place.x.into(),
                place.y.into(),
                place.width.into(),
                place.height.into(),
            ];
            Some((window, place))
        });
        places.max_by_key(|(_, [.., width, height])| width * height)
    }

    /// Puts the window there.
    fn put(&self, [left, top, width, height]: Place) {
        let (window, _) = self.window().unwrap();
        let wish = ConfigureWindowAux::new()
            .x(left)
            .y(top)
            .width(u32::try_from(width).unwrap())
            .height(u32::try_from(height).unwrap());
        let asked = self.server.configure_window(window, &wish);
        asked.unwrap().check().unwrap();
        // No window manager tells it where it stands now (Inter-Client Communication Conventions
        // Manual 2.0, 4.1.5).
        let told = ConfigureNotifyEvent {
            response_type: CONFIGURE_NOTIFY_EVENT,
            sequence: 0,
            event: window,
            window,
            above_sibling: x11rb::NONE,
            x: left.try_into().unwrap(),
            y: top.try_into().unwrap(),
            width: width.try_into().unwrap(),
            height: height.try_into().unwrap(),
            border_width: 0,
            override_redirect: false,
        };
        let mask = EventMask::STRUCTURE_NOTIFY;
        let sent = self.server.send_event(false, window, mask, told);
        sent.unwrap().check().unwrap();
    }
}

/// Opens the program; it is closed by its key once the window was where the test wants it.
fn opened(display: &Display, service: &Service, data: &TempDir, then: impl FnOnce(&Desk)) {
    let program = Program::start(display, service, data.path(), &[]);
    heard(service);
    then(&Desk::at(display));
    display.wait_until_heard();
    display.press("ctrl+q");
    assert_eq!(program.ends().0, Some(0));
}

#[test]
fn the_window_opens_as_it_was_closed_unless_nobody_could_see_it_there() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let place = [150, 30, 1000, 700];
    opened(&display, &service, &data, |desk| desk.put(place));
    opened(&display, &service, &data, |desk| {
        wait_for(|| desk.window().filter(|(_, now)| *now == place));
        // A monitor to the right of this one, that is taken away before the next time.
        desk.put([1500, 200, 1000, 700]);
    });
    opened(&display, &service, &data, |desk| {
        wait_for(|| {
            let (_, [left, top, width, height]) = desk.window()?;
            let is_in_view = left >= 0 && top >= 0 && left + width <= 1280 && top + height <= 800;
            (is_in_view && [width, height] == [1000, 700]).then_some(())
        });
    });
}
