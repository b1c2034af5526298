//! A bench that hears itself: a sound server of a test's own, whose loudspeaker is the microphone. What
//! sounds there is one stream, mixed by the test and written ahead: the noise of a room without end, and in
//! it whatever the test has sound. So a busy machine delays the sound, and takes nothing out of it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::fs;
use std::io::Write as _;
use std::os::unix::net::UnixStream;
use std::path::PathBuf;
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::{Duration, Instant};

use crate::in_time::InTime as _;
use crate::physics::{Body, Dice, Matter, Noise, Room, add, loudest, noise};
use tempfile::TempDir;

pub const DEADLINE: Duration = Duration::from_secs(60);
/// The rate of the sound that is made here, in hertz: twice that of espeak-ng.
pub const RATE: f64 = 44_100.0;
/// How loud a knock is at its loudest: the mean of 10 ms, of full scale. Its peak is not twice that.
pub const KNOCK: f64 = 0.2;
/// And how much softer than a knock the noise of the room is, in decibels.
pub const NOISE_UNDER: f64 = 40.0;
/// From one knock to the next, in seconds.
pub const GAP: f64 = 0.25;

/// A program that is ended when this is dropped.
pub struct Running(pub Child);

impl Drop for Running {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// A bench with a loudspeaker that is the microphone too.
pub struct Bench {
    folder: TempDir,
    _server: Running,
}

impl Bench {
    pub fn open() -> Self {
        let folder = TempDir::new().unwrap();
        let run = folder.path().join("run");
        fs::create_dir(&run).unwrap();
        // What the sound library of the system opens is at the sound server.
        let default = "pcm.!default { type pulse }\nctl.!default { type pulse }\n";
        fs::write(folder.path().join(".asoundrc"), default).unwrap();
        let socket = folder.path().join("native");
        let serve = format!(
            "module-native-protocol-unix auth-anonymous=1 socket={}",
            socket.display()
        );
        let server = Command::new("pulseaudio")
            .args(["-n", "-F", "/dev/null", "--daemonize=no"])
            .args(["--exit-idle-time=-1", "--realtime=no", "-L", &serve])
            .env("XDG_RUNTIME_DIR", run)
            .env("HOME", folder.path())
            .env_remove("PULSE_SERVER")
            .stderr(Stdio::null())
            .spawn()
            .expect("pulseaudio is installed");
        let bench = Self {
            folder,
            _server: Running(server),
        };
        wait_until("the sound server begins", || {
            UnixStream::connect(&socket).is_ok()
        });
        bench.plug_in();
        bench
    }

    /// The loudspeaker that is the microphone is there.
    pub fn plug_in(&self) {
        let null = ["module-null-sink", "sink_name=bench", "rate=44100"];
        self.pactl(&[&["load-module"][..], &null].concat());
        self.pactl(&["set-default-source", "bench.monitor"]);
    }

    /// It is pulled out.
    pub fn pull_out(&self) {
        self.pactl(&["unload-module", "module-null-sink"]);
    }

    fn pactl(&self, asks: &[&str]) {
        let answered = self.at_the_server("pactl").args(asks).output_in_time();
        assert!(answered.status.success(), "{asks:?}: {answered:?}");
    }

    /// A program that plays to the sound server, listens to it, or asks it for something.
    pub fn at_the_server(&self, program: &str) -> Command {
        let server = format!("unix:{}", self.folder.path().join("native").display());
        let mut command = Command::new(program);
        command
            .env("PULSE_SERVER", server)
            .env("XDG_RUNTIME_DIR", self.folder.path().join("run"))
            .env("HOME", self.folder.path());
        command
    }

    /// Where the program has its data here, its settings below it.
    pub fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    /// The tyer's settings in this document.
    pub fn keep(&self, settings: &str) {
        let folder = self.data().join("config/marlinspeak");
        fs::create_dir_all(&folder).unwrap();
        fs::write(folder.join("settings.json"), settings).unwrap();
    }

    /// Whether anybody listens to a microphone of the sound server.
    pub fn is_listened_to(&self) -> bool {
        let mut asked = self.at_the_server("pactl");
        let listed = asked
            .args(["list", "short", "source-outputs"])
            .output_in_time();
        assert!(listed.status.success(), "{listed:?}");
        !listed.stdout.is_empty()
    }

    /// Waits until the program has opened its microphone so many times, which it notes.
    pub fn wait_until_it_listens(&self, times: usize) {
        let log = self.data().join("state/marlinspeak/marlinspeak.log");
        wait_until("the program listens", || {
            let noted = fs::read_to_string(&log).unwrap_or_default();
            noted.matches("a microphone is listened to").count() >= times
        });
    }

    /// The sound of the room begins.
    pub fn sounds(&self) -> Air {
        let player = self
            .at_the_server("pacat")
            .args(["--playback", "--raw", "--format=float32le"])
            .args(["--rate=44100", "--channels=2", "--latency-msec=1000"])
            .stdin(Stdio::piped())
            .stderr(Stdio::null())
            .spawn();
        let mut player = player.expect("pulseaudio-utils is installed");
        let (sound, sounds) = mpsc::channel();
        let into = player.stdin.take().unwrap();
        thread::spawn(move || fill(into, &sounds));
        Air {
            sound,
            _player: Running(player),
        }
    }
}

/// What the microphone hears.
pub struct Air {
    sound: Sender<Vec<f32>>,
    _player: Running,
}

impl Air {
    /// This sounds, once all is over that was to sound before it.
    pub fn sound(&self, sound: Vec<f32>) {
        self.sound.send(sound).expect("the room is still heard");
    }
}

/// Writes the noise of the room, with all that is to sound in it, until nobody listens any more. Whoever
/// reads it holds this back.
fn fill(mut into: ChildStdin, sounds: &Receiver<Vec<f32>>) {
    let mut dice = Dice::new(11);
    let hiss = noise(Noise::Pink, 1 << 20, RATE, &mut dice);
    let soft = (KNOCK * 10f64.powf(-NOISE_UNDER / 20.0)) as f32;
    let mut in_hand = Vec::new().into_iter();
    for hiss in hiss.chunks(441).cycle() {
        let mut block = Vec::new();
        for hiss in hiss {
            let mut next = in_hand.next();
            if next.is_none()
                && let Ok(sound) = sounds.try_recv()
            {
                in_hand = sound.into_iter();
                next = in_hand.next();
            }
            let heard: f32 = hiss * soft + next.unwrap_or(0.0);
            // The same left and right.
            block.extend([heard, heard].map(f32::to_le_bytes).concat());
        }
        if into.write_all(&block).is_err() {
            return;
        }
    }
}

/// Somebody knocks so many times on a wooden bench, the first time after so many seconds; then comes a
/// second in which nobody does.
pub fn knocks(first: f64, count: u32) -> Vec<f32> {
    let last = first + GAP * f64::from(count - 1);
    let mut dice = Dice::new(7);
    let bench = Body::bench(Matter::Wood, &mut dice);
    let place = bench.place(&mut dice);
    let mut dry = vec![0.0_f32; ((last + 1.0) * RATE) as usize];
    for number in 0..count {
        let stroke = bench.struck(&place, 0.002, 2.0, RATE, &mut dice);
        let at = first + GAP * f64::from(number);
        add(&mut dry, at, &stroke, 1.0 / loudest(&stroke, RATE), RATE);
    }
    let mut sound = Room::at_the_bench(6, 0).hear(&dry, RATE);
    let loud = KNOCK / loudest(&sound, RATE);
    for sample in &mut sound {
        *sample *= loud as f32;
    }
    sound
}

/// Waits for something that comes about elsewhere.
#[track_caller]
pub fn wait_until(what: &str, is_so: impl Fn() -> bool) {
    let until = Instant::now() + DEADLINE;
    while !is_so() {
        assert!(Instant::now() < until, "it is not so that {what}");
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(20));
    }
}
