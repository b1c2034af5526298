//! Whether there is a display that answers.

use super::{Finding, TIMEOUT, within};
#[cfg(target_os = "linux")]
use crate::logging::{Platform, opens_under_wayland};
use crate::words::Words;

/// How the display answers, with its name.
enum Display {
    None,
    Answers(String),
    Silent(String),
    Refuses(String),
}

pub(super) fn look(words: &Words) -> Finding {
    match find() {
        Display::None => Finding::ill(words.plainly("doctor-display-none", &[])),
        Display::Answers(name) => {
            Finding::well(words.plainly("doctor-display", &[("display", &name)]))
        }
        Display::Silent(name) => {
            Finding::ill(words.plainly("doctor-display-silent", &[("display", &name)]))
        }
        Display::Refuses(name) => {
            Finding::ill(words.plainly("doctor-display-refuses", &[("display", &name)]))
        }
    }
}

/// Whether the session names a display at all.
#[cfg(target_os = "linux")]
pub(super) fn is_named() -> bool {
    let here = Platform::here();
    here.has_x11 || opens_under_wayland()
}

/// Asks the display that the window would open on: the one of Wayland before the one of X11, as
/// the window library does.
#[cfg(target_os = "linux")]
fn find() -> Display {
    use std::env;
    use std::os::unix::net::UnixStream;
    use std::path::{Path, PathBuf};

    use x11rb::errors::ConnectError;

    let named = |name: &str| env::var(name).ok().filter(|value| !value.is_empty());
    if let Some(socket) = named("WAYLAND_SOCKET") {
        return Display::Answers(socket);
    }
    if let Some(name) = named("WAYLAND_DISPLAY") {
        let folder = env::var_os("XDG_RUNTIME_DIR").map(PathBuf::from);
        let socket = folder.unwrap_or_default().join(Path::new(&name));
        return match within(TIMEOUT, move || UnixStream::connect(socket)) {
            Some(Ok(_)) => Display::Answers(name),
            Some(Err(_)) | None => Display::Silent(name),
        };
    }
    let Some(name) = named("DISPLAY") else {
        return Display::None;
    };
    let asked = name.clone();
    match within(TIMEOUT, move || x11rb::connect(Some(&asked)).map(drop)) {
        Some(Ok(())) => Display::Answers(name),
        Some(Err(ConnectError::SetupFailed(refusal))) => {
            let reason = String::from_utf8_lossy(&refusal.reason);
            log::warn!("the display refuses: {}", reason.trim());
            Display::Refuses(name)
        }
        Some(Err(_)) | None => Display::Silent(name),
    }
}

/// Systems other than Linux always have a desktop.
#[cfg(not(target_os = "linux"))]
fn find() -> Display {
    Display::Answers(std::env::consts::OS.to_owned())
}
