//! A disk that fails, hangs or is slow at one kind of call, under a real program.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

#[path = "preloaded.rs"]
mod preloaded;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use tempfile::TempDir;

/// The calls that it can fail at.
pub const CALLS: [&str; 4] = ["open", "write", "fsync", "rename"];
/// All of these, and every other that looks at the disk.
pub const ANY: &str = "any";
/// Those by which files and folders come, go and change their names.
pub const CHANGES: &str = "changes";

/// How the disk behaves when it is broken down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The call fails, as on a full disk.
    Fails,
    /// The call fails, as on a disk that can be read and no more.
    ReadOnly,
    /// The call does not come back.
    Hangs,
    /// The call takes 60 ms longer.
    Slow,
    /// The call takes 300 ms longer: more than a press and its frame on a busy machine.
    Slower,
    /// The call takes 10 ms longer, as one to a disk that turns.
    Usual,
}

/// The library, built once for all disks of a run.
fn library() -> &'static Path {
    static LIBRARY: OnceLock<PathBuf> = OnceLock::new();
    LIBRARY.get_or_init(|| preloaded::build("failing_disk"))
}

/// A folder in memory where the system has such a place: how long its disk takes is up to the test then, and
/// not to what else goes on at the machine.
pub fn folder_in_memory() -> TempDir {
    let memory = Path::new("/dev/shm");
    let folder = if memory.is_dir() {
        TempDir::new_in(memory)
    } else {
        TempDir::new()
    };
    folder.unwrap()
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

    /// What a program is started with besides, so that each call of its first thread is noted.
    pub fn noting(&self) -> (&'static str, PathBuf) {
        ("FAILING_NOTES", self.notes())
    }

    /// The files and folders that the first thread has asked the disk for since it was last asked here.
    pub fn noted(&self) -> Vec<String> {
        let notes = fs::read_to_string(self.notes()).unwrap_or_default();
        let _ = fs::remove_file(self.notes());
        notes.lines().map(str::to_owned).collect()
    }

    fn notes(&self) -> PathBuf {
        self.flag.with_extension("notes")
    }

    /// From now on the calls fail, hang or take their time.
    pub fn break_down(&self, fault: Fault) {
        let contents = match fault {
            Fault::Fails => "",
            Fault::ReadOnly => "read only",
            Fault::Hangs => "hang",
            Fault::Slow => "slowly",
            Fault::Slower => "more slowly",
            Fault::Usual => "usual",
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
