//! The speaking program with nothing in it but the `tts` crate: a small crate of its own, in
//! `tests/bench/bare`, which `make bench` builds and names in `BARE_SPEECH`.

use std::io::{BufRead, BufReader, Write};
use std::process::{Child, ChildStdin, Command, Stdio};

use super::loft::Loft;

/// The bare program, started.
pub struct Bare {
    child: Child,
    input: ChildStdin,
}

impl Bare {
    /// Starts it and waits until it is connected.
    pub fn start(loft: &Loft) -> Self {
        let bare = std::env::var_os("BARE_SPEECH").expect("`make bench` builds the bare program");
        let mut child = Command::new(bare)
            .env("SPEECHD_ADDRESS", loft.speech_address())
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("the bare program starts");
        let mut out = BufReader::new(child.stdout.take().expect("its output"));
        out.read_line(&mut String::new()).expect("it is ready");
        let input = child.stdin.take().expect("its input");
        Self { child, input }
    }

    /// Has it say a line.
    pub fn say(&mut self, text: &str) {
        // In one piece: half a line would wake it for nothing.
        let line = format!("{text}\n");
        self.input.write_all(line.as_bytes()).expect("it reads");
    }
}

impl Drop for Bare {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
