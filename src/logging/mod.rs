//! The log file: what a report of a fault needs, and nothing private.
//!
//! Other rooms write to it with the macros of the `log` crate. A line goes into a queue that
//! nobody waits for; a thread of this room's own writes it down. Where nothing can be written
//! nothing is, and that is no failure. The file is kept small: at 256 KB it becomes the
//! previous one, and the previous one is gone.
//!
//! Names that the tyer gave and what stands in the tyer's files do not belong here. Whoever
//! writes a line leaves them out, and the logger itself leaves out everything that stands in
//! quotation marks, where sentences about faults have them, and the name of the home folder.

mod file_logger;
mod panics;
mod platform;
mod redaction;
mod rotating_file;

use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::mpsc;
use std::thread;

use directories::{BaseDirs, ProjectDirs};
use log::LevelFilter;

pub use panics::log_panics;
pub use platform::{Platform, opens_under_wayland};

use file_logger::FileLogger;
use rotating_file::RotatingFile;

/// Bytes of the file at most; as many again are in the previous one.
pub const MOST_BYTES: u64 = 256 * 1024;
/// The most lines that wait to be written. When more come at once they are left out.
const WAITING: usize = 256;

/// `$XDG_STATE_HOME/marlinspeak/marlinspeak.log`, or what the system has in its place; none
/// when the system names no such folder.
pub fn default_file() -> Option<PathBuf> {
    ProjectDirs::from("", "", "marlinspeak").map(|folders| {
        let folder = folders
            .state_dir()
            .unwrap_or_else(|| folders.data_local_dir());
        folder.join("marlinspeak.log")
    })
}

/// Begins to keep the log in this file, if the process keeps none yet, and notes what was
/// started: `doing` is the name of a command.
pub fn start(file: &Path, doing: &str) {
    if keep_in(file, None) {
        log::set_max_level(LevelFilter::Info);
        log::info!("{}", start_of(doing));
    }
}

/// The same for a command that is over at once: nothing is written, and no file is made, unless
/// something fails.
pub fn stand_by(file: &Path, doing: &str) {
    if keep_in(file, Some(start_of(doing))) {
        log::set_max_level(LevelFilter::Warn);
    }
}

fn start_of(doing: &str) -> String {
    format!(
        "start of {doing}: Marlinspeak {}, {}",
        env!("CARGO_PKG_VERSION"),
        Platform::here()
    )
}

/// Has the lines of this process written to this file, behind `opening`. Gives whether that is so
/// from now on: a process keeps one log.
fn keep_in(file: &Path, opening: Option<String>) -> bool {
    let (inbox, requests) = mpsc::sync_channel(WAITING);
    let file = RotatingFile::new(file.to_owned(), MOST_BYTES);
    let started = thread::Builder::new()
        .name("logging".to_owned())
        .spawn(move || file_logger::write_lines(&requests, file));
    let home = BaseDirs::new().map(|folders| folders.home_dir().display().to_string());
    started.is_ok()
        && log::set_boxed_logger(Box::new(FileLogger::new(inbox, home, opening))).is_ok()
}

/// Notes the end, and waits until all is written, though not for ever.
pub fn end() {
    log::info!("end");
    log::logger().flush();
}

/// Whether this file can be written to. It is made, with its folder, when it is not there.
///
/// # Errors
/// What the system says.
pub fn check(file: &Path) -> io::Result<()> {
    if let Some(folder) = file.parent() {
        fs::create_dir_all(folder)?;
    }
    rotating_file::open(file).map(drop)
}
