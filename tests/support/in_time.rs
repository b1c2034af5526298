//! Programs that a test runs to their end: one that hangs is ended and fails its test, which would wait
//! for ever else.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::io::Read;
use std::process::{Child, Command, ExitStatus, Output, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::{Duration, Instant};

/// How long a program may take that is sure to end: longer than the longest takes on a busy machine.
pub const PATIENCE: Duration = Duration::from_secs(600);

/// What runs to its end, within bounds.
pub trait InTime {
    /// What it printed, once it has ended.
    #[track_caller]
    fn output_in_time(self) -> Output;
}

/// Starts it first; what it prints is taken in.
impl InTime for &mut Command {
    fn output_in_time(self) -> Output {
        let started = self.stdout(Stdio::piped()).stderr(Stdio::piped()).spawn();
        started
            .unwrap_or_else(|error| panic!("{self:?} does not start: {error}"))
            .output_in_time()
    }
}

impl InTime for Child {
    fn output_in_time(mut self) -> Output {
        // Nothing more is typed: it may wait for that.
        drop(self.stdin.take());
        let printed = self.stdout.take().map(all_of);
        let complained = self.stderr.take().map(all_of);
        let status = end_in_time(&mut self);
        let told = |bytes: Option<Receiver<Vec<u8>>>| {
            bytes.map_or_else(Vec::new, |bytes| {
                let told = bytes.recv_timeout(PATIENCE);
                told.expect("what it printed comes to an end")
            })
        };
        Output {
            status,
            stdout: told(printed),
            stderr: told(complained),
        }
    }
}

/// All that comes from a program, read on a thread: a full pipe would keep it from ending.
pub fn all_of(mut from: impl Read + Send + 'static) -> Receiver<Vec<u8>> {
    let (tell, told) = mpsc::channel();
    thread::spawn(move || {
        let mut bytes = Vec::new();
        // What came before an error is what there is.
        let _ = from.read_to_end(&mut bytes);
        let _ = tell.send(bytes);
    });
    told
}

/// How a program ends.
#[track_caller]
pub fn end_in_time(child: &mut Child) -> ExitStatus {
    let until = Instant::now() + PATIENCE;
    loop {
        if let Some(status) = child.try_wait().unwrap() {
            return status;
        }
        if Instant::now() > until {
            let _ = child.kill();
            panic!("process {} has not ended within {PATIENCE:?}", child.id());
        }
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(2));
    }
}
