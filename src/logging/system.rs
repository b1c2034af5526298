//! What the program runs on.

use std::env;

/// The system in a few words: its name, the processor, the kind of session, the locale.
pub fn system() -> String {
    let named = |name: &str| env::var(name).ok().filter(|value| !value.is_empty());
    let is_set = |name: &str| if named(name).is_some() { "yes" } else { "no" };
    format!(
        "{} on {}, session {}, desktop {}, X11 {}, Wayland {}, locale {}",
        distribution().unwrap_or_else(|| env::consts::OS.to_owned()),
        env::consts::ARCH,
        named("XDG_SESSION_TYPE").as_deref().unwrap_or("unknown"),
        named("XDG_CURRENT_DESKTOP").as_deref().unwrap_or("unknown"),
        is_set("DISPLAY"),
        is_set("WAYLAND_DISPLAY"),
        sys_locale::get_locale().as_deref().unwrap_or("unknown"),
    )
}

/// The name that a distribution gives itself (the file format os-release of freedesktop.org).
fn distribution() -> Option<String> {
    let text = ["/etc/os-release", "/usr/lib/os-release"]
        .iter()
        .find_map(|file| std::fs::read_to_string(file).ok())?;
    let name = text
        .lines()
        .find_map(|line| line.strip_prefix("PRETTY_NAME="))?;
    Some(name.trim_matches(['"', '\'']).to_owned())
}
