//! A disk that fails, hangs or is slow at one kind of call, under a real program.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

#[path = "preloaded.rs"]
mod preloaded;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// The calls that it can fail at.
pub const CALLS: [&str; 4] = ["open", "write", "fsync", "rename"];
/// All of these, and every other that looks at the disk.
pub const ANY: &str = "any";

/// How the disk behaves when it is broken down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The call fails, as on a full disk.
    Fails,
    /// The call does not come back.
    Hangs,
    /// The call takes 60 ms longer.
    Slow,
}

/// The library, built once for all disks of a run.
fn library() -> &'static Path {
    static LIBRARY: OnceLock<PathBuf> = OnceLock::new();
    LIBRARY.get_or_init(|| preloaded::build("failing_disk"))
}

/// The library that is loaded before the C library, and what it goes by.
pub struct FailingDisk {
    library: PathBuf,
    flag: PathBuf,
}

impl FailingDisk {
    /// One that is broken down by a file in a folder.
    pub fn build(folder: &Path) -> Self {
        Self {
            library: library().to_owned(),
            flag: folder.join("failing"),
        }
    }

    /// What a program is started with so that its files below `under` lie on this disk.
    pub fn environment(&self, call: &str, under: &Path) -> [(&'static str, String); 4] {
        [
            ("LD_PRELOAD", self.library.display().to_string()),
            ("FAILING_CALL", call.to_owned()),
            ("FAILING_UNDER", under.display().to_string()),
            ("FAILING_WHILE", self.flag.display().to_string()),
        ]
    }

    /// From now on the calls fail, hang or take their time.
    pub fn break_down(&self, fault: Fault) {
        let contents = match fault {
            Fault::Fails => "",
            Fault::Hangs => "hang",
            Fault::Slow => "slowly",
        };
        // All at once: no look at it may find it half written.
        let beside = self.flag.with_extension("new");
        fs::write(&beside, contents).unwrap();
        fs::rename(beside, &self.flag).unwrap();
    }

    /// From now on everything works again.
    pub fn mend(&self) {
        fs::remove_file(&self.flag).unwrap();
    }
}
