//! Where the monitors of the desktop are, as far as the system tells.

use iced::Rectangle;

/// The area of each monitor in dots of the desktop, the first one first. None where the system does
/// not tell: there it alone keeps windows in view.
#[cfg(target_os = "linux")]
pub fn monitors() -> Vec<Rectangle> {
    use x11rb::connection::Connection as _;
    use x11rb::errors::ReplyError;
    use x11rb::protocol::randr::ConnectionExt as _;
    use x11rb::rust_connection::RustConnection;

    use crate::logging::opens_under_wayland;

    // Under Wayland the desktop alone places windows. X11 may be there beside it, and what it would tell is of
    // no use to a window that is not its own.
    if opens_under_wayland() {
        return Vec::new();
    }
    let ask = |display: &RustConnection, screen: usize| -> Result<Vec<Rectangle>, ReplyError> {
        let Some(screen) = display.setup().roots.get(screen) else {
            return Ok(Vec::new());
        };
        let asked = display.randr_get_monitors(screen.root, true)?;
        let mut monitors = asked.reply()?.monitors;
        monitors.sort_by_key(|monitor| !monitor.primary);
        let areas = monitors.iter().map(|monitor| Rectangle {
            x: monitor.x.into(),
            y: monitor.y.into(),
            width: monitor.width.into(),
            height: monitor.height.into(),
        });
        Ok(areas.collect())
    };
    let Ok((display, screen)) = x11rb::connect(None) else {
        return Vec::new();
    };
    ask(&display, screen).unwrap_or_else(|error| {
        log::warn!("the monitors are not known: {error}");
        Vec::new()
    })
}

/// The area of each monitor; the system keeps windows in view.
#[cfg(not(target_os = "linux"))]
pub const fn monitors() -> Vec<Rectangle> {
    Vec::new()
}
