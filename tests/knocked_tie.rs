//! A whole tie by knocks alone: the real program at a sound server whose loudspeaker is its microphone,
//! while the voice speaks into it.
//!
//! It is not among the tests that must pass: a machine that is busy with others loses sound.
#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "sound is counted in samples and in seconds"
)]

#[path = "knocks/physics.rs"]
#[allow(dead_code)]
mod physics;
#[path = "support/ssip.rs"]
mod ssip;

use std::fs;
use std::os::unix::net::UnixStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::Words;
use physics::{Body, Dice, Matter, Room, add, loudest};
use ssip::{Service, Speech};
use tempfile::TempDir;

const DEADLINE: Duration = Duration::from_secs(60);
/// A row that is not answered by then was not heard.
const PATIENCE: Duration = Duration::from_secs(5);
const RATE: f64 = 44_100.0;

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
    speaking: Option<Running>,
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
            .args(["--exit-idle-time=-1", "-L"])
            .args(["module-null-sink sink_name=bench", "-L", &serve])
            .env("XDG_RUNTIME_DIR", run)
            .env("HOME", folder.path())
            .env_remove("PULSE_SERVER")
            .stderr(Stdio::null())
            .spawn()
            .expect("pulseaudio is installed");
        let bench = Self {
            folder,
            _server: Running(server),
            speaking: None,
        };
        let until = Instant::now() + DEADLINE;
        while UnixStream::connect(&socket).is_err() {
            assert!(Instant::now() < until, "the sound server does not begin");
            thread::sleep(Duration::from_millis(20));
        }
        let mut listen = bench.at_the_server("pactl");
        let listens = listen
            .args(["set-default-source", "bench.monitor"])
            .status();
        assert!(listens.expect("pulseaudio-utils is installed").success());
        bench
    }

    /// A program that plays to the sound server, or listens to it.
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
            .spawn();
        Running(program.unwrap())
    }

    /// The voice says this, and nothing of what it said before any more.
    fn speak(&mut self, said: &str) {
        self.speaking = None;
        let file = self.folder.path().join("said.wav");
        let spoken = Command::new("espeak-ng")
            .arg("-w")
            .arg(&file)
            .arg(said)
            .status();
        assert!(spoken.expect("espeak-ng is installed").success());
        // As loud as at a bench where the microphone lies by the hands and the voice comes from
        // farther off: a fifth of full scale.
        let mut player = self.at_the_server("paplay");
        let player = player.arg("--volume=13107").arg(&file).spawn();
        self.speaking = Some(Running(player.unwrap()));
    }

    /// Somebody knocks.
    fn knock(&self, file: &Path) {
        let played = self.at_the_server("paplay").arg(file).status();
        assert!(played.unwrap().success());
    }

    /// The sound of so many knocks on a wooden bench.
    fn knocks(&self, count: u32) -> PathBuf {
        let mut dice = Dice::new(7);
        let bench = Body::bench(Matter::Wood, &mut dice);
        let place = bench.place(&mut dice);
        let mut dry = vec![0.0_f32; ((1.5 + 0.25 * f64::from(count)) * RATE) as usize];
        for number in 0..count {
            let stroke = bench.struck(&place, 0.002, 2.0, RATE, &mut dice);
            let at = 0.1 + 0.25 * f64::from(number);
            add(&mut dry, at, &stroke, 1.0 / loudest(&stroke, RATE), RATE);
        }
        let sound = Room::at_the_bench(6, 0).hear(&dry, RATE);
        let loud = sound.iter().fold(0.0, |most: f32, one| most.max(one.abs()));
        let file = self.folder.path().join(format!("{count}-knocks.wav"));
        fs::write(&file, wav(&sound, 0.9 / loud)).unwrap();
        file
    }
}

/// A sound as a file of 16 bits (RIFF/WAVE, PCM).
fn wav(sound: &[f32], loud: f32) -> Vec<u8> {
    let size = 2 * sound.len() as u32;
    let rate = RATE as u32;
    let mut file = Vec::new();
    file.extend(b"RIFF");
    file.extend((36 + size).to_le_bytes());
    file.extend(b"WAVEfmt ");
    file.extend(16_u32.to_le_bytes());
    file.extend([1_u16, 1].map(u16::to_le_bytes).concat());
    file.extend([rate, 2 * rate].map(u32::to_le_bytes).concat());
    file.extend([2_u16, 16].map(u16::to_le_bytes).concat());
    file.extend(b"data");
    file.extend(size.to_le_bytes());
    for sample in sound {
        file.extend(((sample * loud * 32_767.0) as i16).to_le_bytes());
    }
    file
}

/// What is said at every step of the tie.
fn steps() -> Vec<String> {
    let plan = Plan::read("3", "4", "1", "1").unwrap();
    let (script, words) = (Script::new(plan, AtOnce::default()), Words::english());
    let say = |place| words.say(&script.step(place).unwrap()).into();
    script.places().map(say).collect()
}

#[test]
#[ignore = "half of the knocks were missed while the voice spoke, and it was not seen to pass since that was mended"]
fn a_whole_tie_by_knocks_while_the_voice_speaks() {
    let mut bench = Bench::open();
    let (two, three) = (bench.knocks(2), bench.knocks(3));
    let service = Service::start();
    // A text is spoken until the next one.
    service.set_speech(Speech::Lasts(Duration::from_secs(30)));
    let _program = bench.tie(&service);
    let steps = steps();
    let heard = || service.next_text(DEADLINE).expect("the program speaks");
    assert_eq!(heard(), steps[0]);
    bench.speak(&steps[0]);
    // The ear learns the room for some seconds before it hears anything; and a machine that is too busy
    // to listen loses sound. What comes of a row is the next step or, where nothing came, another row.
    let (mut at, mut lost) = (0, 0);
    while at + 1 < steps.len() {
        bench.speak(&steps[at]);
        bench.knock(&two);
        match service.next_text(PATIENCE) {
            Some(said) if said == steps[at + 1] => at += 1,
            // With sound that was lost, two rows can come to stand as one: then it is said again.
            other => {
                assert!(
                    other.as_ref().is_none_or(|said| *said == steps[at]),
                    "{other:?}"
                );
                lost += 1;
            }
        }
        assert!(
            lost < 10,
            "{lost} rows were not heard up to {:?}",
            steps[at]
        );
    }
    // Two of three go on, and the third turns that back: at the end there is nothing to go on to, so
    // the last step is said again, as after a key.
    let last = steps.len() - 1;
    bench.knock(&three);
    assert!(heard().contains(&steps[last]));
}
