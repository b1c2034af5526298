//! What a window can have of the desktop that it opens on: a screen that stays on, the place where it
//! was, an icon, windows in which files are chosen.

use std::env;
use std::path::PathBuf;

use dbus::blocking::Connection;
use directories::BaseDirs;

use super::{Finding, TIMEOUT, within};
use crate::logging::opens_under_wayland;
use crate::words::Words;

/// Looked at where there is a display. None of it is needed.
pub(super) const LOOKS: [fn(&Words) -> Finding; 4] = [screen, window, icon, files];

/// The entry of the menu, whose name is the one that the window gives itself (freedesktop.org, *Desktop
/// Entry Specification* 1.5, and the protocol `xdg-shell`, `set_app_id`).
const ENTRY: &str = "applications/marlinspeak.desktop";

/// Whether anybody takes the wish that the screen stays on while a tie is open.
fn screen(words: &Words) -> Finding {
    let takes_wish = within(TIMEOUT, || is_on_bus("org.freedesktop.ScreenSaver")).unwrap_or(false);
    let message = match (takes_wish, opens_under_wayland()) {
        (true, _) => "doctor-screen",
        (false, false) => "doctor-screen-none",
        (false, true) => "doctor-screen-none-wayland",
    };
    Finding::well(words.plainly(message, &[]))
}

/// What is remembered of the window, and whether files can be dropped on it.
fn window(words: &Words) -> Finding {
    let message = if opens_under_wayland() {
        "doctor-window-wayland"
    } else {
        "doctor-window"
    };
    Finding::well(words.plainly(message, &[]))
}

/// Whether the desktop finds name and icon of the window.
fn icon(words: &Words) -> Finding {
    let entry = data_folders().map(|folder| folder.join(ENTRY));
    let found = entry.into_iter().find(|entry| entry.is_file());
    Finding::well(match found {
        Some(entry) => {
            let entry = entry.display().to_string();
            words.plainly("doctor-icon", &[("file", &entry)])
        }
        None => words.plainly("doctor-icon-none", &[]),
    })
}

/// Where desktop entries lie (freedesktop.org, *XDG Base Directory Specification* 0.8).
fn data_folders() -> impl Iterator<Item = PathBuf> {
    let own = BaseDirs::new().map(|folders| folders.data_dir().to_owned());
    let named = env::var_os("XDG_DATA_DIRS").filter(|named| !named.is_empty());
    let named = named.unwrap_or_else(|| "/usr/local/share:/usr/share".into());
    let shared: Vec<PathBuf> = env::split_paths(&named)
        .filter(|folder: &PathBuf| folder.has_root())
        .collect();
    own.into_iter().chain(shared)
}

/// Whether the desktop has windows in which files are chosen.
fn files(words: &Words) -> Finding {
    let has_windows = within(TIMEOUT, has_file_windows).unwrap_or(false);
    let message = if has_windows {
        "doctor-files"
    } else {
        "doctor-files-none"
    };
    Finding::well(words.plainly(message, &[]))
}

/// Whether somebody on the bus of the session answers to this name, or would be started for it.
fn is_on_bus(name: &str) -> bool {
    let ask = || {
        let session = Connection::new_session()?;
        let bus = session.with_proxy("org.freedesktop.DBus", "/org/freedesktop/DBus", TIMEOUT);
        let (owned,): (bool,) = bus.method_call("org.freedesktop.DBus", "NameHasOwner", (name,))?;
        let (startable,): (Vec<String>,) =
            bus.method_call("org.freedesktop.DBus", "ListActivatableNames", ())?;
        Ok(owned || startable.iter().any(|other| other == name))
    };
    ask().unwrap_or_else(|error: dbus::Error| {
        log::info!("{name} is not to be had: {error}");
        false
    })
}

/// Whether the desktop portal has its file windows: it shows that interface where something draws them.
fn has_file_windows() -> bool {
    use dbus::blocking::stdintf::org_freedesktop_dbus::Properties as _;

    let ask = || {
        let session = Connection::new_session()?;
        let portal = session.with_proxy(
            "org.freedesktop.portal.Desktop",
            "/org/freedesktop/portal/desktop",
            TIMEOUT,
        );
        portal.get::<u32>("org.freedesktop.portal.FileChooser", "version")
    };
    let version = ask();
    if let Err(error) = &version {
        log::info!("no file windows of the desktop: {error}");
    }
    version.is_ok()
}
