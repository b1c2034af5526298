//! What is measured, and how it is told.

use std::thread;
use std::time::{Duration, Instant};

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::Words;
use tempfile::TempDir;

use super::bare::Bare;
use super::disk::{ANY, CALLS, FailingDisk, Fault};
use super::ear::Ear;
use super::eye::Eye;
use super::line::{head, line, median, times};
use super::loft::{Loft, wait_until};
use super::program::Program;

const KNOT: [&str; 6] = ["--leads", "7", "--bights", "12", "--passes", "2"];
/// Between two presses; the lock-out of a bouncing pedal is shorter.
const BREATH: Duration = Duration::from_millis(600);

/// How much is measured.
struct Effort {
    presses: usize,
    returns: usize,
    idle: Duration,
}

/// Measures everything; a little of it when it is only asked whether that works.
pub fn all(in_earnest: bool) {
    let effort = if in_earnest {
        Effort {
            presses: 30,
            returns: 5,
            idle: Duration::from_secs(10),
        }
    } else {
        Effort {
            presses: 2,
            returns: 1,
            idle: Duration::from_secs(1),
        }
    };
    let mut loft = Loft::open();
    let ear = Ear::open(&loft.sound_address());
    let eye = Eye::open(&loft.display);
    head("real keys, window and speech");
    first_sound(&loft, &ear, &eye, effort.presses);
    from_start(&loft, &ear, effort.returns);
    changed_frame(&loft, &ear, &eye, effort.presses);
    frame_on_a_hanging_disk(&loft, &ear, &eye, effort.presses);
    idle(&loft, &ear, effort.idle);
    listening(&loft, &ear, effort.idle);
    speech_back(&mut loft, &ear, &eye, effort.returns);
    frame_without_speech(&loft, &ear, &eye, effort.presses);
}

/// From the press to the first sound in the sink; from the line in its pipe for the bare program.
/// Both say the same texts, in turn, into silence.
fn first_sound(loft: &Loft, ear: &Ear, eye: &Eye, presses: usize) {
    let texts = texts(presses);
    let mut bare = Bare::start(loft);
    let _program = open_tie(loft, ear);
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for (number, text) in texts.iter().enumerate() {
        // Neither always comes after the other.
        for is_ours in [number % 2 == 0, number % 2 != 0] {
            if is_ours {
                ours.push(ear.first_after(eye.press()));
            } else {
                let start = Instant::now();
                bare.say(text);
                theirs.push(ear.first_after(start));
            }
            quiet(loft, ear);
        }
    }
    let ratio = median(&ours).as_secs_f64() / median(&theirs).as_secs_f64();
    times("key to first sound", &ours, "");
    times(
        "the same, bare `tts` program, from a line in its pipe",
        &theirs,
        "",
    );
    line("  the first / the second", format!("{ratio:.2}"), "", "1.3");
}

/// From the start of the program to the first sound of the first step: with a service that is there, and
/// with one that the program has to start.
fn from_start(loft: &Loft, ear: &Ear, starts: usize) {
    let (mut there, mut own) = (Vec::new(), Vec::new());
    for _ in 0..starts {
        let start = Instant::now();
        let program = Program::begin(loft, &KNOT, |command| {
            command.env("SPEECHD_ADDRESS", loft.speech_address());
        });
        there.push(ear.first_after(start));
        quiet(loft, ear);
        drop(program);
        let folder = TempDir::new().expect("a temporary folder");
        let start = Instant::now();
        let program = Program::begin(loft, &KNOT, |command| {
            loft.without_speech(&folder, command);
        });
        own.push(ear.first_after(start));
        drop(program);
        Loft::end_own_speech(&folder);
        ear.wait_for_silence();
    }
    times("start to first sound of the first step", &there, "");
    times(
        "the same, the speech service to be started by the program",
        &own,
        "",
    );
}

/// From the press to other pixels on the display, while everything is well.
fn changed_frame(loft: &Loft, ear: &Ear, eye: &Eye, presses: usize) {
    let _program = open_tie(loft, ear);
    times("key to changed frame", &frames(eye, presses), "33 ms");
}

/// The same while the disk hangs at one kind of call, or at all of them: presses in a row, none of which can
/// be saved.
fn frame_on_a_hanging_disk(loft: &Loft, ear: &Ear, eye: &Eye, presses: usize) {
    let mut all = Vec::new();
    for call in CALLS.into_iter().chain([ANY]) {
        let folder = TempDir::new().expect("a temporary folder");
        let disk = FailingDisk::build(folder.path());
        let start = Instant::now();
        let _program = Program::begin(loft, &KNOT, |command| {
            command
                .env("SPEECHD_ADDRESS", loft.speech_address())
                .envs(disk.environment(call, &std::env::temp_dir()));
        });
        loft.display.focus("Marlinspeak");
        ear.first_after(start);
        quiet(loft, ear);
        disk.break_down(Fault::Hangs);
        all.extend(frames(eye, presses));
        disk.mend();
    }
    times(
        "key to changed frame, disk hanging at each kind of call",
        &all,
        "33 ms, never over 100 ms",
    );
}

/// The same while the speech service is stopped; it is of no use afterwards.
fn frame_without_speech(loft: &Loft, ear: &Ear, eye: &Eye, presses: usize) {
    let _program = open_tie(loft, ear);
    loft.stop_speech();
    let frames = frames(eye, presses);
    times(
        "key to changed frame, speech service stopped",
        &frames,
        "33 ms, never over 100 ms",
    );
}

fn frames(eye: &Eye, presses: usize) -> Vec<Duration> {
    (0..presses)
        .map(|_| {
            thread::sleep(BREATH);
            eye.press_and_see()
        })
        .collect()
}

/// What the program uses while nothing happens.
fn idle(loft: &Loft, ear: &Ear, time: Duration) {
    for (screen, args) in [("tie", &KNOT[..]), ("start screen", &[][..])] {
        let program = open(loft, ear, args);
        // The window may have something left to do, and the leg in hand goes in.
        thread::sleep(Duration::from_secs(5));
        let (ticks, sleeps) = program.used();
        thread::sleep(time);
        let (ticks_after, sleeps_after) = program.used();
        let what = format!("ticks in {time:?}, {screen} open, nothing happens");
        line(&what, ticks_after - ticks, "", "0");
        line("  times a thread woke", sleeps_after - sleeps, "", "");
    }
}

/// What the program uses while it listens for knocks, with a tie open; and what it uses when they are
/// switched off, for the same.
fn listening(loft: &Loft, ear: &Ear, time: Duration) {
    for (what, settings) in [
        (
            "listening for knocks",
            r#""knocks": true, "cues": { "on": false }"#,
        ),
        ("knocks off", r#""cues": { "on": false }"#),
    ] {
        let start = Instant::now();
        let program = Program::begin_with(settings, loft, &KNOT, |command| {
            command.env("SPEECHD_ADDRESS", loft.speech_address());
            loft.with_microphone(command);
        });
        loft.display.focus("Marlinspeak");
        ear.first_after(start);
        quiet(loft, ear);
        let is_wanted = what != "knocks off";
        wait_until(|| loft.is_listened_to() == is_wanted);
        thread::sleep(Duration::from_secs(5));
        let (ticks, _) = program.used();
        thread::sleep(time);
        let (ticks_after, _) = program.used();
        #[expect(clippy::cast_precision_loss, reason = "some hundreds")]
        let share = (ticks_after - ticks) as f64 / time.as_secs_f64();
        let what = format!("{what}, a tie open, of one core");
        line(&what, format!("{share:.1} %"), "", "2 %");
    }
}

/// From when the speech service answers again to the first sound of the step.
fn speech_back(loft: &mut Loft, ear: &Ear, eye: &Eye, returns: usize) {
    let _program = open_tie(loft, ear);
    let mut returned = Vec::new();
    for number in 0..returns {
        loft.kill_speech();
        eye.press();
        // It is looked for again and again; the return comes at any time between two looks.
        thread::sleep(Duration::from_millis(2000 + 130 * number as u64));
        let back = loft.start_speech();
        returned.push(ear.first_after(back));
        quiet(loft, ear);
    }
    times("service back to first sound of the step", &returned, "3 s");
}

/// The program with a tie in hand, its first step said.
fn open_tie(loft: &Loft, ear: &Ear) -> Program {
    open(loft, ear, &KNOT)
}

fn open(loft: &Loft, ear: &Ear, args: &[&str]) -> Program {
    let start = Instant::now();
    let program = Program::start(loft, args);
    ear.first_after(start);
    quiet(loft, ear);
    program
}

fn quiet(loft: &Loft, ear: &Ear) {
    loft.hush();
    ear.wait_for_silence();
}

/// What is said at the first presses.
fn texts(presses: usize) -> Vec<String> {
    let plan = Plan::read("7", "12", "2", "1").expect("a knot");
    let (script, words) = (Script::new(plan, AtOnce::default()), Words::english());
    let places = script.places().skip(1).take(presses);
    let steps = places.map(|place| script.step(place).expect("a place of the script"));
    steps.map(|step| words.say(&step).into()).collect()
}
