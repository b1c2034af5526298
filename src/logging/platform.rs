//! What the program runs on.

use std::env;
use std::fmt;

/// The system in a few words, for a report of a fault.
///
/// It prints in English, as the log file has it; for a tyer the words put it into theirs.
#[derive(Clone, Debug)]
pub struct Platform {
    /// The name that it gives itself.
    pub name: String,
    /// The kind of processor.
    pub processor: &'static str,
    /// The kind of session, such as `x11`; none outside a desktop.
    pub session: Option<String>,
    /// The name of the desktop.
    pub desktop: Option<String>,
    /// Whether it names an X11 display.
    pub has_x11: bool,
    /// Whether it names a Wayland display.
    pub has_wayland: bool,
    /// The locale that it is set to.
    pub locale: Option<String>,
}

impl Platform {
    /// Whether this is Debian or a system made of it, whose packages have the same names.
    pub fn is_debian() -> bool {
        let fields = ["ID", "ID_LIKE"].into_iter().filter_map(os_release);
        let names = fields.collect::<Vec<_>>().join(" ");
        names.split_whitespace().any(|name| name == "debian")
    }

    /// What this process runs on.
    pub fn here() -> Self {
        let named = |name: &str| env::var(name).ok().filter(|value| !value.is_empty());
        Self {
            name: distribution().unwrap_or_else(|| env::consts::OS.to_owned()),
            processor: env::consts::ARCH,
            session: named("XDG_SESSION_TYPE"),
            desktop: named("XDG_CURRENT_DESKTOP"),
            has_x11: named("DISPLAY").is_some(),
            has_wayland: named("WAYLAND_DISPLAY").is_some(),
            locale: sys_locale::get_locale(),
        }
    }
}

/// Whether a window opens under Wayland here: the window library takes it before X11.
pub fn opens_under_wayland() -> bool {
    let names = ["WAYLAND_DISPLAY", "WAYLAND_SOCKET"];
    let is_named = |name| env::var_os(name).is_some_and(|value| !value.is_empty());
    cfg!(target_os = "linux") && names.into_iter().any(is_named)
}

impl fmt::Display for Platform {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let known = |name: &Option<String>| name.clone().unwrap_or_else(|| "unknown".to_owned());
        let yes = |is_set| if is_set { "yes" } else { "no" };
        write!(
            f,
            "{} on {}, session {}, desktop {}, X11 {}, Wayland {}, locale {}",
            self.name,
            self.processor,
            known(&self.session),
            known(&self.desktop),
            yes(self.has_x11),
            yes(self.has_wayland),
            known(&self.locale),
        )
    }
}

/// The name that a distribution gives itself.
fn distribution() -> Option<String> {
    os_release("PRETTY_NAME")
}

/// What a distribution says of itself in a field (the file format os-release of freedesktop.org).
fn os_release(field: &str) -> Option<String> {
    let text = ["/etc/os-release", "/usr/lib/os-release"]
        .iter()
        .find_map(|file| std::fs::read_to_string(file).ok())?;
    let value = text
        .lines()
        .find_map(|line| line.strip_prefix(field)?.strip_prefix('='))?;
    Some(value.trim_matches(['"', '\'']).to_owned())
}
