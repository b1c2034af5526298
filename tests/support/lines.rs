//! The guided job by lines through a pipe, on a disk that can fail.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use crate::in_time::{all_of, end_in_time};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::Duration;

use crate::disk::FailingDisk;

const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");
/// How long anything may take before the test gives up.
pub const DEADLINE: Duration = Duration::from_secs(60);

/// A running job.
pub struct Lines {
    child: Child,
    input: Option<ChildStdin>,
    printed: Receiver<String>,
}

impl Lines {
    /// Begins a job, or takes the newest up, with the data in a folder.
    pub fn start(disk: &FailingDisk, call: &str, data: &Path, args: &[&str]) -> Self {
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

    /// Types a line; an empty one goes on.
    pub fn type_in(&mut self, line: &str) {
        writeln!(self.input.as_mut().unwrap(), "{line}").unwrap();
    }

    /// The first line from here on that begins so.
    pub fn prints(&self, beginning: &str) -> String {
        self.prints_one_of(&[beginning])
    }

    /// The first line from here on that begins in one of these ways.
    pub fn prints_one_of(&self, beginnings: &[&str]) -> String {
        loop {
            let line = self.printed.recv_timeout(DEADLINE).unwrap_or_else(|_| {
                panic!("never printed: {beginnings:?}");
            });
            if beginnings
                .iter()
                .any(|beginning| line.starts_with(beginning))
            {
                return line;
            }
        }
    }

    /// The exit code, and what stood on standard error.
    pub fn ends(mut self) -> (Option<i32>, String) {
        let complaint = all_of(self.child.stderr.take().unwrap());
        let code = end_in_time(&mut self.child).code();
        let complaint = complaint.recv_timeout(DEADLINE).unwrap();
        (code, String::from_utf8(complaint).unwrap())
    }

    /// Ends it as a power cut would, SIGKILL, and gives what it has printed by then that was not
    /// asked for before.
    pub fn kill(mut self) -> Vec<String> {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
        self.printed.iter().collect()
    }
}
