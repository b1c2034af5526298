//! A speaking program with nothing in it but the `tts` crate.

use std::io::{BufRead, BufReader, Write};
use std::process::{Child, ChildStdin, Command, Stdio};

use tts::Tts;

use super::loft::Loft;

/// The speed mark of the real program's usual 165 words a minute: both say a text alike.
const RATE: f32 = -48.0;

/// Says each line of the standard input, and cuts off what it says for the next.
pub fn obey() {
    let mut tts = Tts::default().expect("the speech service answers");
    tts.set_rate(RATE).expect("a rate");
    tts.set_volume(100.0).expect("a volume");
    println!("ready");
    for line in std::io::stdin().lines() {
        let line = line.expect("a line");
        tts.speak(line, true).expect("it is said");
    }
    tts.stop().expect("it stops");
}

/// The bare program, started.
pub struct Bare {
    child: Child,
    input: ChildStdin,
}

impl Bare {
    /// Starts it and waits until it is connected.
    pub fn start(loft: &Loft) -> Self {
        let this = std::env::current_exe().expect("this program");
        let mut child = Command::new(this)
            .arg("bare")
            .env("SPEECHD_ADDRESS", loft.speech_address())
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("this program starts again");
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
