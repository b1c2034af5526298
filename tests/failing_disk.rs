//! Every call to the disk failing or hanging in turn, under the real program in a terminal: what
//! is said, what is kept, how it ends.
#![cfg(target_os = "linux")]

#[path = "support/failing_disk.rs"]
mod disk;

use std::io::{BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::Duration;

use disk::{CALLS, FailingDisk, Fault};
use marlinspeak::shelf::{Presses, Shelf, Tie};
use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");
const DEADLINE: Duration = Duration::from_secs(60);

/// The guided job by lines through a pipe, on a disk that can fail.
struct Lines {
    child: Child,
    input: Option<ChildStdin>,
    printed: Receiver<String>,
}

impl Lines {
    fn start(disk: &FailingDisk, call: &str, data: &Path, args: &[&str]) -> Self {
        let mut child = Command::new(PROGRAM)
            .arg("tie")
            .args(args)
            .envs(disk.environment(call, &data.join("marlinspeak")))
            .env("XDG_DATA_HOME", data)
            .env("XDG_CONFIG_HOME", data.join("config"))
            .env("XDG_STATE_HOME", data.join("state"))
            .env("LC_ALL", "C.UTF-8")
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let (tell, printed) = mpsc::channel();
        let output = BufReader::new(child.stdout.take().unwrap());
        thread::spawn(move || {
            for line in output.lines().map_while(Result::ok) {
                let _ = tell.send(line);
            }
        });
        Self {
            input: child.stdin.take(),
            child,
            printed,
        }
    }

    fn type_in(&mut self, line: &str) {
        writeln!(self.input.as_mut().unwrap(), "{line}").unwrap();
    }

    /// The first line from here on that begins so.
    fn prints(&self, beginning: &str) -> String {
        loop {
            let line = self.printed.recv_timeout(DEADLINE).unwrap_or_else(|_| {
                panic!("never printed: {beginning}");
            });
            if line.starts_with(beginning) {
                return line;
            }
        }
    }

    /// The exit code, and what stood on standard error.
    fn ends(mut self) -> (Option<i32>, String) {
        let mut complaint = String::new();
        let mut errors = self.child.stderr.take().unwrap();
        errors.read_to_string(&mut complaint).unwrap();
        (self.child.wait().unwrap().code(), complaint)
    }
}

/// A tie begun on a disk that can be broken down at one kind of call: around the disk, where its data
/// are, the disk, the program.
fn begun(call: &str) -> (TempDir, PathBuf, FailingDisk, Lines) {
    let folder = TempDir::new().unwrap();
    let data = folder.path().join("data");
    let disk = FailingDisk::build(folder.path());
    let knot = ["--leads", "3", "--bights", "4"];
    let tie = Lines::start(&disk, call, &data, &knot);
    tie.prints("Lead pass, begin.");
    (folder, data, disk, tie)
}

fn tie_in(data: &Path) -> Tie {
    let shelf = Shelf::open(data.join("marlinspeak/ties")).unwrap();
    shelf.list().unwrap().untroubled().unwrap().remove(0)
}

fn wait_for_presses(data: &Path, presses: u64) {
    let until = std::time::Instant::now() + DEADLINE;
    while tie_in(data).presses != Presses(presses) {
        assert!(std::time::Instant::now() < until, "never on disk");
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(5));
    }
}

#[test]
fn a_disk_that_fails_or_hangs_is_told_and_nothing_is_called_kept_that_is_not() {
    for fault in [Fault::Fails, Fault::Hangs] {
        for call in CALLS {
            let (_around, data, disk, mut tie) = begun(call);
            tie.type_in("");
            tie.prints("Lead pass, leg 1 of 8.");
            wait_for_presses(&data, 1);
            disk.break_down(fault);
            tie.type_in("");
            tie.prints("Lead pass, leg 2 of 8.");
            tie.prints(match fault {
                Fault::Fails => "This tie cannot be saved (",
                Fault::Hangs => "Not saved yet: the disk is slow to answer.",
            });
            tie.type_in("q");
            let (code, complaint) = tie.ends();
            assert_eq!(code, Some(1), "{call} {fault:?}: {complaint}");
            assert!(
                complaint.starts_with("What you pressed last is not saved"),
                "{call} {fault:?}: {complaint}"
            );
            disk.mend();
            assert_eq!(tie_in(&data).presses, Presses(1), "{call} {fault:?}");
        }
    }
}

#[test]
fn what_a_mended_disk_takes_is_told_and_kept() {
    for call in CALLS {
        let (_around, data, disk, mut tie) = begun(call);
        disk.break_down(Fault::Fails);
        tie.type_in("");
        tie.prints("This tie cannot be saved (");
        tie.type_in("");
        tie.prints("Lead pass, leg 2 of 8.");
        disk.mend();
        wait_for_presses(&data, 2);
        tie.type_in("q");
        tie.prints("The tie is kept where it stands");
        let (code, complaint) = tie.ends();
        assert_eq!((code, &*complaint), (Some(0), ""), "{call}");
    }
}
