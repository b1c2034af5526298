//! `marlinspeak doctor`: what works here, and how to mend what does not.
//!
//! Everything that could wait for ever is asked on a thread of its own, with a deadline.

#[cfg(all(feature = "window", target_os = "linux"))]
mod desktop;
#[cfg(feature = "window")]
mod display;
mod speech;

use std::io::Write as _;
use std::path::Path;
use std::process::ExitCode;
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use super::complaint::Complaint;
use super::print::print;
use crate::files::Reason;
use crate::logging::{self, Platform};
use crate::pedal::{self, Ear, Plugged};
use crate::settings::{SettingsFile, SettingsHealth};
use crate::shelf::{DocumentState, Shelf};
use crate::voice::CuePlayer;
use crate::words::Words;

/// How long a device may take to answer.
const TIMEOUT: Duration = Duration::from_secs(5);
/// With less room than this on the disk a tie may not be kept, in bytes. *From common sense:* a
/// document of a tie has a few thousand.
const LEAST_ROOM: u64 = 10_000_000;

/// How one thing is.
struct Finding {
    /// Whether the program does its job as it is.
    is_well: bool,
    line: String,
}

impl Finding {
    fn well(line: String) -> Self {
        Self {
            is_well: true,
            line,
        }
    }

    fn ill(line: String) -> Self {
        Self {
            is_well: false,
            line,
        }
    }
}

/// Prints a line for each thing; the exit code tells whether all that is needed works. What a desktop does
/// for a window besides showing it, sounds, pedals and the log file are not needed.
pub(super) fn run(words: &Words) -> Result<ExitCode, Complaint> {
    let version = env!("CARGO_PKG_VERSION");
    tell(words, &words.doctor_head(version, &Platform::here()))?;
    let mut looks: Vec<fn(&Words) -> Finding> = Vec::new();
    #[cfg(feature = "window")]
    looks.push(display::look);
    #[cfg(all(feature = "window", target_os = "linux"))]
    if display::is_named() {
        looks.extend(desktop::LOOKS);
    }
    looks.extend([
        speech::look,
        sound,
        pedals,
        microphone,
        ties,
        settings,
        log_file,
    ] as [fn(&Words) -> Finding; 7]);
    let mut is_well = true;
    for look in looks {
        let finding = look(words);
        is_well &= finding.is_well;
        // Printed at once, since the next check may take a while.
        tell(words, &finding.line)?;
    }
    let (end, code) = if is_well {
        ("doctor-well", ExitCode::SUCCESS)
    } else {
        ("doctor-unwell", ExitCode::FAILURE)
    };
    tell(words, &words.plainly(end, &[]))?;
    Ok(code)
}

fn tell(words: &Words, line: &str) -> Result<(), Complaint> {
    print(words, |out| writeln!(out, "{line}"))
}

/// What `ask` answers, unless it takes longer than this.
fn within<T: Send + 'static>(
    timeout: Duration,
    ask: impl FnOnce() -> T + Send + 'static,
) -> Option<T> {
    let (tell, answer) = mpsc::channel();
    thread::Builder::new()
        .name("doctor".to_owned())
        .spawn(move || tell.send(ask()))
        .ok()?;
    answer.recv_timeout(timeout).ok()
}

fn sound(words: &Words) -> Finding {
    let finds_device = within(TIMEOUT, CuePlayer::finds_device).unwrap_or(false);
    let message = if finds_device {
        "doctor-sound"
    } else {
        "doctor-sound-none"
    };
    Finding::well(words.plainly(message, &[]))
}

fn pedals(words: &Words) -> Finding {
    let Plugged { controllers, midi } = within(TIMEOUT, pedal::plugged).unwrap_or_default();
    Finding::well(words.doctor_pedals(controllers, midi))
}

fn microphone(words: &Words) -> Finding {
    let name = within(TIMEOUT, Ear::microphone).flatten();
    Finding::well(match name {
        Some(name) => words.plainly("doctor-microphone", &[("name", &name)]),
        None => words.plainly("doctor-microphone-none", &[]),
    })
}

fn ties(words: &Words) -> Finding {
    let Ok(folder) = Shelf::default_dir() else {
        return Finding::ill(words.plainly("doctor-ties-nowhere", &[]));
    };
    let shown = folder.display().to_string();
    let unwritable = |reason: Reason| {
        let reason = words.reason(reason);
        let texts = [("file", shown.as_str()), ("reason", reason.as_str())];
        Finding::ill(words.plainly("doctor-ties-unwritable", &texts))
    };
    let looked = Shelf::open(&folder).and_then(|shelf| shelf.verify());
    let documents = match looked {
        Ok(documents) => documents,
        Err(error) => {
            log::warn!("{error}");
            return unwritable(error.reason());
        }
    };
    if let Err(error) = tempfile::tempfile_in(&folder) {
        log::warn!("the folder of the ties: {error}");
        return unwritable(Reason::of(&error));
    }
    let is_bad = |state: &DocumentState| matches!(state, DocumentState::Bad(_));
    let damaged = documents.iter().filter(|one| is_bad(&one.state)).count();
    if damaged > 0 {
        return Finding::ill(words.doctor_ties_damaged(&shown, damaged));
    }
    let room = free(&folder);
    let megabytes = room.unwrap_or(u64::MAX) / 1_000_000;
    if room.is_some_and(|room| room < LEAST_ROOM) {
        return Finding::ill(words.doctor_ties_full(&shown, megabytes));
    }
    Finding::well(words.doctor_ties(&shown, megabytes, documents.len()))
}

/// Bytes that are free on the disk of a folder, where the system tells.
#[cfg(unix)]
fn free(folder: &Path) -> Option<u64> {
    let about = rustix::fs::statvfs(folder).ok()?;
    about.f_bavail.checked_mul(about.f_frsize)
}

#[cfg(not(unix))]
fn free(_: &Path) -> Option<u64> {
    None
}

fn settings(words: &Words) -> Finding {
    let Some(path) = SettingsFile::default_path() else {
        return Finding::ill(words.plainly("doctor-settings-nowhere", &[]));
    };
    let file = path.display().to_string();
    let say = |message: &str, texts: &[(&'static str, &str)]| {
        words.plainly(message, &[&[("file", file.as_str())], texts].concat())
    };
    match SettingsFile::examine(&path) {
        SettingsHealth::Whole => Finding::well(say("doctor-settings", &[])),
        SettingsHealth::None => Finding::well(say("doctor-settings-none", &[])),
        SettingsHealth::Newer(version) => {
            let version = version.to_string();
            Finding::ill(say("doctor-settings-newer", &[("version", &version)]))
        }
        SettingsHealth::Damaged(fault) => {
            let why = words.fault(&fault);
            Finding::ill(say("doctor-settings-damaged", &[("reason", &why)]))
        }
        SettingsHealth::Refused(reason) => {
            let why = words.reason(reason);
            Finding::ill(say("doctor-settings-unwritable", &[("reason", &why)]))
        }
    }
}

fn log_file(words: &Words) -> Finding {
    let Some(file) = logging::default_file() else {
        return Finding::well(words.plainly("doctor-log-nowhere", &[]));
    };
    let shown = file.display().to_string();
    Finding::well(match logging::check(&file) {
        Ok(()) => words.plainly("doctor-log", &[("file", &shown)]),
        Err(error) => {
            let reason = words.reason(Reason::of(&error));
            words.plainly(
                "doctor-log-unwritable",
                &[("file", &shown), ("reason", &reason)],
            )
        }
    })
}
