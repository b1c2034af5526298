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
