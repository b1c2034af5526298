//! A whole tie by knocks alone: the real program at a sound server whose loudspeaker is its microphone,
//! while the voice speaks into it; and a microphone that is taken away and comes back.
//!
//! What the microphone hears is one stream, mixed here and written ahead: the noise of a room without
//! end, and in it the words of each step with the knocks that cut them short. So a busy machine delays
//! the sound, and takes nothing out of it. No row is knocked twice: each is answered, or the test fails.
//!
//! The voice is 18 dB under the knocks at its loudest, that is at an eighth of their amplitude: the
//! microphone lies by the hands, and the loudspeaker farther off. The noise is 40 dB under them. How
//! often knocks are taken under a louder voice is a matter of `tests/knocks/`.
#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "sound is counted in samples and in seconds"
)]

#[path = "support/in_time.rs"]
mod in_time;
#[path = "knocks/physics.rs"]
#[allow(dead_code)]
mod physics;
#[path = "support/ssip.rs"]
mod ssip;

use std::fs;
use std::io::Write as _;
use std::os::unix::net::UnixStream;
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::{Duration, Instant};

use in_time::InTime as _;
use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::Words;
use physics::{Body, Dice, Matter, Noise, Room, add, loudest, noise};
use ssip::{Service, Speech};
use tempfile::TempDir;

const DEADLINE: Duration = Duration::from_secs(60);
/// The rate of the sound that is made here, in hertz: twice that of espeak-ng.
const RATE: f64 = 44_100.0;
/// How loud a knock is at its loudest: the mean of 10 ms, of full scale. Its peak is not twice that.
const KNOCK: f64 = 0.2;
/// How much softer than a knock the voice is at its loudest, in decibels.
const VOICE_UNDER: f64 = 18.0;
/// And the noise of the room.
const NOISE_UNDER: f64 = 40.0;
/// When the first knock of a row comes after the words have begun, and from one to the next, in seconds.
const FIRST_KNOCK: f64 = 1.2;
const GAP: f64 = 0.25;
/// The voice is cut off so soon after the second knock, as it is when the program has heard that.
const CUT_OFF: f64 = 0.11;

/// What the voice says while the ear learns the room.
const ROOM: &str = "Here we stand at the bench, and listen to how it is in this room, before the first knock comes. \
                    The microphone lies by the hands, and the voice comes from the shelf above the vice.";
/// How long the ear learns at least, in seconds, and a little more.
const LEARNS: f64 = 4.5;

/// A program that is ended when this is dropped.
struct Running(Child);

impl Drop for Running {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// A bench with a loudspeaker that is the microphone too.
struct Bench {
    folder: TempDir,
    _server: Running,
}

impl Bench {
    fn open() -> Self {
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
    fn plug_in(&self) {
        let null = ["module-null-sink", "sink_name=bench", "rate=44100"];
        self.pactl(&[&["load-module"][..], &null].concat());
        self.pactl(&["set-default-source", "bench.monitor"]);
    }

    /// It is pulled out.
    fn pull_out(&self) {
        self.pactl(&["unload-module", "module-null-sink"]);
    }

    fn pactl(&self, asks: &[&str]) {
        let answered = self.at_the_server("pactl").args(asks).output_in_time();
        assert!(answered.status.success(), "{asks:?}: {answered:?}");
    }

    /// A program that plays to the sound server, listens to it, or asks it for something.
    fn at_the_server(&self, program: &str) -> Command {
        let server = format!("unix:{}", self.folder.path().join("native").display());
        let mut command = Command::new(program);
        command
            .env("PULSE_SERVER", server)
            .env("XDG_RUNTIME_DIR", self.folder.path().join("run"))
            .env("HOME", self.folder.path());
        command
    }

    /// The program ties in a terminal, with knocks switched on, and speaks to this service.
    fn tie(&self, service: &Service) -> Running {
        let data = self.folder.path().join("data");
        let settings = data.join("config/marlinspeak");
        fs::create_dir_all(&settings).unwrap();
        let on = r#"{ "version": 1, "knocks": true, "cues": { "on": false, "volume": 50 } }"#;
        fs::write(settings.join("settings.json"), on).unwrap();
        let mut program = self.at_the_server(env!("CARGO_BIN_EXE_marlinspeak"));
        let program = program
            .args(["tie", "--leads", "3", "--bights", "4", "--speech"])
            .env("SPEECHD_ADDRESS", service.address())
            .env("XDG_DATA_HOME", &data)
            .env("XDG_CONFIG_HOME", data.join("config"))
            .env("XDG_STATE_HOME", data.join("state"))
            .env("LC_ALL", "C.UTF-8")
            // Nothing is ever typed.
            .stdin(Stdio::piped())
            .stdout(Stdio::null())
            // The sound library of the system complains there about a device that is gone.
            .stderr(Stdio::null())
            .spawn();
        Running(program.unwrap())
    }

    /// Waits until the program has opened its microphone so many times, which it notes.
    fn wait_until_it_listens(&self, times: usize) {
        let log = "data/state/marlinspeak/marlinspeak.log";
        let log = self.folder.path().join(log);
        wait_until("the program listens", || {
            let noted = fs::read_to_string(&log).unwrap_or_default();
            noted.matches("a microphone is listened to").count() >= times
        });
    }

    /// The sound of the room begins.
    fn sounds(&self) -> Air {
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
struct Air {
    sound: Sender<Vec<f32>>,
    _player: Running,
}

impl Air {
    /// This sounds, once all is over that was to sound before it.
    fn sound(&self, sound: Vec<f32>) {
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

/// The voice says this, as loud as it is at the bench.
fn voice(said: &str) -> Vec<f32> {
    let spoken = Command::new("espeak-ng")
        .args(["--stdout", said])
        .output_in_time();
    assert!(spoken.status.success(), "{spoken:?}");
    // After the head of a RIFF/WAVE file, 16 bits a sample, at half the rate.
    let samples = spoken.stdout[44..].chunks_exact(2);
    let samples = samples.map(|bytes| f32::from(i16::from_le_bytes([bytes[0], bytes[1]])));
    let mut sound: Vec<f32> = samples.flat_map(|sample| [sample; 2]).collect();
    let loud = KNOCK * 10f64.powf(-VOICE_UNDER / 20.0) / loudest(&sound, RATE);
    for sample in &mut sound {
        *sample *= loud as f32;
    }
    sound
}

/// The voice says this, and so many knocks on a wooden bench cut it short; then comes a second in which
/// nobody knocks.
fn knocks_into(said: &str, count: u32) -> Vec<f32> {
    let last = FIRST_KNOCK + GAP * f64::from(count - 1);
    let mut said = voice(said);
    assert!(
        said.len() as f64 > (last + 0.1) * RATE,
        "too short to knock into"
    );
    said.truncate(((FIRST_KNOCK + GAP + CUT_OFF) * RATE) as usize);
    let mut dice = Dice::new(7);
    let bench = Body::bench(Matter::Wood, &mut dice);
    let place = bench.place(&mut dice);
    let mut dry = vec![0.0_f32; ((last + 1.0) * RATE) as usize];
    for number in 0..count {
        let stroke = bench.struck(&place, 0.002, 2.0, RATE, &mut dice);
        let at = FIRST_KNOCK + GAP * f64::from(number);
        add(&mut dry, at, &stroke, 1.0 / loudest(&stroke, RATE), RATE);
    }
    let mut sound = Room::at_the_bench(6, 0).hear(&dry, RATE);
    let loud = KNOCK / loudest(&sound, RATE);
    for sample in &mut sound {
        *sample *= loud as f32;
    }
    add(&mut sound, 0.0, &said, 1.0, RATE);
    sound
}

/// Waits for something that comes about elsewhere.
#[track_caller]
fn wait_until(what: &str, is_so: impl Fn() -> bool) {
    let until = Instant::now() + DEADLINE;
    while !is_so() {
        assert!(Instant::now() < until, "it is not so that {what}");
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(20));
    }
}

/// What is said at every step of the tie.
fn steps() -> Vec<String> {
    let plan = Plan::read("3", "4", "1", "1").unwrap();
    let (script, words) = (Script::new(plan, AtOnce::default()), Words::english());
    let say = |place| words.say(&script.step(place).unwrap()).into();
    script.places().map(say).collect()
}

/// The room in which the ear begins, with the voice in it.
fn room() -> Vec<f32> {
    let room = voice(ROOM);
    assert!(room.len() as f64 > LEARNS * RATE, "too short to learn from");
    room
}

#[test]
fn a_whole_tie_by_knocks_while_the_voice_speaks() {
    let bench = Bench::open();
    let air = bench.sounds();
    let service = Service::start();
    // A text is spoken until the next one.
    service.set_speech(Speech::UntilTold);
    let _program = bench.tie(&service);
    let steps = steps();
    let heard = || service.next_text(DEADLINE).expect("the program speaks");
    assert_eq!(heard(), steps[0]);
    bench.wait_until_it_listens(1);
    air.sound(room());
    for step in steps.windows(2) {
        air.sound(knocks_into(&step[0], 2));
        assert_eq!(heard(), step[1]);
    }
    // Two of three go on, and the third turns that back: at the end there is nothing to go on to, so
    // the last step is said again, as after a key.
    let last = &steps[steps.len() - 1];
    air.sound(knocks_into(last, 3));
    let again = heard();
    assert!(again.contains(last), "{again}");
}

#[test]
fn a_microphone_that_is_pulled_out_is_told_of_and_found_when_it_is_back() {
    let bench = Bench::open();
    let service = Service::start();
    let _program = bench.tie(&service);
    let steps = steps();
    let heard = || service.next_text(DEADLINE).expect("the program speaks");
    assert_eq!(heard(), steps[0]);
    bench.wait_until_it_listens(1);
    bench.pull_out();
    let gone = heard();
    assert!(gone.starts_with("There is no microphone"), "{gone}");
    assert!(gone.ends_with(&steps[0]), "{gone}");
    bench.plug_in();
    let back = heard();
    assert!(back.starts_with("The microphone is there again"), "{back}");
    // What is knocked then is heard.
    bench.wait_until_it_listens(2);
    let air = bench.sounds();
    air.sound(room());
    air.sound(knocks_into(&steps[0], 2));
    assert_eq!(heard(), steps[1]);
}
