//! Whether there is a system of sound, for what plays and what listens.

/// Whether the system has sound at all. Where it has none the sound library would complain on
/// standard error, so it is not asked.
#[cfg(target_os = "linux")]
pub(crate) fn has_sound() -> bool {
    use std::path::{Path, PathBuf};

    let has_card =
        std::fs::read_to_string("/proc/asound/cards").is_ok_and(|cards| cards.contains('['));
    let serves = |name: &str| {
        std::env::var_os("XDG_RUNTIME_DIR")
            .map(PathBuf::from)
            .is_some_and(|folder| folder.join(name).exists())
    };
    has_card
        || std::env::var_os("PULSE_SERVER").is_some()
        || serves("pulse/native")
        || serves("pipewire-0")
        || Path::new("/run/pulse/native").exists()
}

#[cfg(not(target_os = "linux"))]
pub(crate) fn has_sound() -> bool {
    true
}
