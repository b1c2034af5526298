//! Hearing the first sound.

use std::io::Read;
use std::process::{Child, ChildStdout, Command, Stdio};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::{Duration, Instant};

use super::display::DEADLINE;

/// Samples a second, one channel of 16 bits.
const RATE: u32 = 44_100;
/// What is louder than this, of 32,767, is a sound.
const FAINTEST: u16 = 200;
/// Within a text no pause is longer.
const SILENCE: Duration = Duration::from_millis(500);

/// Listens to what the sink plays.
pub struct Ear {
    recorder: Child,
    /// When each loud piece had its first loud sample.
    loud: Receiver<Instant>,
}

impl Ear {
    /// Begins to listen to the monitor of the sink at a sound server.
    pub fn open(server: &str) -> Self {
        let mut recorder = Command::new("parec")
            .args(["--raw", "--format=s16le", "--channels=1"])
            .arg(format!("--rate={RATE}"))
            .args(["--latency-msec=2", "--device=null.monitor"])
            .env("PULSE_SERVER", server)
            .stdout(Stdio::piped())
            .spawn()
            .expect("pulseaudio-utils is installed");
        let out = recorder.stdout.take().expect("its output");
        let (tell, loud) = mpsc::channel();
        let (begin, begun) = mpsc::channel();
        thread::spawn(move || listen(out, &begin, &tell));
        begun.recv_timeout(DEADLINE).expect("the sink is recorded");
        Self { recorder, loud }
    }

    /// Waits for the first sound after `start`, and tells how long after it was.
    pub fn first_after(&self, start: Instant) -> Duration {
        loop {
            let at = self.loud.recv_timeout(DEADLINE).expect("a sound");
            if at >= start {
                return at - start;
            }
        }
    }

    /// Waits until it has been silent for a while.
    pub fn wait_for_silence(&self) {
        while self.loud.recv_timeout(SILENCE).is_ok() {}
    }
}

impl Drop for Ear {
    fn drop(&mut self) {
        let _ = self.recorder.kill();
        let _ = self.recorder.wait();
    }
}

fn listen(mut out: ChildStdout, begin: &Sender<()>, tell: &Sender<Instant>) {
    let mut buffer = [0; 1 << 14];
    let mut kept = 0;
    while let Ok(read @ 1..) = out.read(&mut buffer[kept..]) {
        let now = Instant::now();
        let _ = begin.send(());
        let filled = kept + read;
        let whole = filled / 2;
        let (samples, _) = buffer[..whole * 2].as_chunks();
        let first = samples
            .iter()
            .position(|bytes| i16::from_le_bytes(*bytes).unsigned_abs() > FAINTEST);
        if let Some(first) = first {
            // The last sample is the newest.
            let after = u32::try_from(whole - first).expect("a small buffer");
            let ago = Duration::from_secs(1) * after / RATE;
            let at = now.checked_sub(ago).unwrap_or(now);
            if tell.send(at).is_err() {
                return;
            }
        }
        // Half a sample may have come.
        buffer.copy_within(whole * 2..filled, 0);
        kept = filled - whole * 2;
    }
}
