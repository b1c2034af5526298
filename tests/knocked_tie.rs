//! A whole tie by knocks alone: the real program at a sound server whose loudspeaker is its microphone,
//! while the voice speaks into it; and a microphone that is taken away and comes back.
//!
//! What the microphone hears is one stream: the noise of a room without end, and in it the words of each
//! step with the knocks that cut them short. No row is knocked twice: each is answered, or the test fails.
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
#[path = "support/loud_bench.rs"]
mod loud_bench;
#[path = "knocks/physics.rs"]
#[allow(dead_code)]
mod physics;
#[path = "support/ssip.rs"]
mod ssip;

use std::process::{Command, Stdio};

use in_time::InTime as _;
use loud_bench::{Bench, DEADLINE, GAP, KNOCK, RATE, Running, knocks};
use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::Words;
use physics::{add, loudest};
use ssip::{Service, Speech};

/// How much softer than a knock the voice is at its loudest, in decibels.
const VOICE_UNDER: f64 = 18.0;
/// When the first knock of a row comes after the words have begun, in seconds.
const FIRST_KNOCK: f64 = 1.2;
/// The voice is cut off so soon after the second knock, as it is when the program has heard that.
const CUT_OFF: f64 = 0.11;

/// What the voice says while the ear learns the room.
const ROOM: &str = "Here we stand at the bench, and listen to how it is in this room, before the first knock comes. \
                    The microphone lies by the hands, and the voice comes from the shelf above the vice.";
/// How long the ear learns at least, in seconds, and a little more.
const LEARNS: f64 = 4.5;

/// The program ties in a terminal, with knocks switched on, and speaks to this service.
fn tie(bench: &Bench, service: &Service) -> Running {
    bench.keep(r#"{ "version": 1, "knocks": true, "cues": { "on": false, "volume": 50 } }"#);
    let data = bench.data();
    let mut program = bench.at_the_server(env!("CARGO_BIN_EXE_marlinspeak"));
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

/// The voice says this, and so many knocks on the bench cut it short; then comes a second in which nobody
/// knocks.
fn knocks_into(said: &str, count: u32) -> Vec<f32> {
    let mut said = voice(said);
    let last = FIRST_KNOCK + GAP * f64::from(count - 1);
    assert!(
        said.len() as f64 > (last + 0.1) * RATE,
        "too short to knock into"
    );
    said.truncate(((FIRST_KNOCK + GAP + CUT_OFF) * RATE) as usize);
    let mut sound = knocks(FIRST_KNOCK, count);
    add(&mut sound, 0.0, &said, 1.0, RATE);
    sound
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
    let _program = tie(&bench, &service);
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
    let _program = tie(&bench, &service);
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
