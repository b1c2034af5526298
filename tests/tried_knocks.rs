//! The screen on which knocks are tried, in the real window at a sound server whose loudspeaker is the
//! microphone: how loud it is, each row that is taken, and a microphone that goes and comes back. Nothing
//! goes in but keys and sound.
#![cfg(feature = "window")]
#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "sound is counted in samples and in seconds, a bar in dots"
)]

#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/loud_bench.rs"]
mod loud_bench;
#[path = "knocks/physics.rs"]
#[allow(dead_code)]
mod physics;
#[path = "support/program.rs"]
mod program;
#[path = "support/ssip.rs"]
mod ssip;

use std::f64::consts::PI;
use std::fs;
use std::ops::RangeInclusive;
use std::process::Stdio;

use display::Display;
use loud_bench::{Bench, RATE, knocks};
use program::{PROGRAM, Program, heard, wait_for};
use ssip::Service;

/// What knocks are tried with.
struct Trial {
    bench: Bench,
    display: Display,
    service: Service,
    program: Program,
}

impl Trial {
    /// The program is open on the screen of knocks, which are switched on.
    fn open() -> Self {
        let (bench, display, service) = (Bench::open(), Display::start(), Service::start());
        bench.keep(
            r#"{ "version": 1, "knocks": true, "presses": { "bounce_ms": 0 }, "cues": { "on": false, "volume": 50 } }"#,
        );
        let mut command = bench.at_the_server(PROGRAM);
        // The sound library of the system complains there about a device that is gone.
        command.stderr(Stdio::null());
        let program = Program::start_by(&mut command, &display, &service, &bench.data(), &[]);
        heard(&service);
        let trial = Self {
            bench,
            display,
            service,
            program,
        };
        trial.bench.wait_until_it_listens(1);
        trial.press("t");
        trial.hears("Settings.");
        trial.press("Down");
        trial.hears("Knocks on the bench: on");
        trial.press("Down");
        trial.hears("Try the knocks");
        trial.press("Return");
        trial.hears("Lay the microphone on the bench");
        trial
    }

    fn press(&self, key: &str) {
        self.display.press(key);
    }

    /// Listens until something is said that begins so, and gives it.
    fn hears(&self, beginning: &str) -> String {
        wait_for(|| Some(heard(&self.service)).filter(|said| said.starts_with(beginning)))
    }

    /// Asks how loud it is, and gives by how many decibels that is under the loudest.
    fn asks_how_loud(&self) -> Option<u32> {
        self.press("h");
        let said = self.hears("How loud it is now: ");
        let told = said.strip_prefix("How loud it is now: ")?;
        let (under, rest) = told.split_once(' ')?;
        let is_level = rest.starts_with("decibels under the loudest that the microphone can hear.");
        under.parse().ok().filter(|_| is_level)
    }

    /// Asks until it is as loud as this, in decibels under the loudest.
    fn is_so_loud(&self, wanted: RangeInclusive<u32>) -> u32 {
        wait_for(|| self.asks_how_loud().filter(|under| wanted.contains(under)))
    }

    /// Whether a thread of the program listens.
    fn has_an_ear(&self) -> bool {
        let threads = fs::read_dir(format!("/proc/{}/task", self.program.id())).unwrap();
        let mut names = threads.filter_map(|thread| {
            // One may have ended meanwhile.
            fs::read_to_string(thread.ok()?.path().join("comm")).ok()
        });
        names.any(|name| name.trim() == "ear")
    }
}

/// So many seconds of a tone of 700 Hz, 20 dB under the loudest.
fn tone(seconds: f64) -> Vec<f32> {
    let loud = 10f64.powf(-20.0 / 20.0) * 2f64.sqrt();
    let sample = |at: usize| loud * (2.0 * PI * 700.0 * at as f64 / RATE).sin();
    (0..(seconds * RATE) as usize)
        .map(|at| sample(at) as f32)
        .collect()
}

/// The longest stretch of a row of dots in which two pictures differ: where it begins, and how long it is.
fn longest_change(one: &[[u8; 3]], other: &[[u8; 3]]) -> (usize, usize) {
    let rows = one.chunks(Display::WIDTH).zip(other.chunks(Display::WIDTH));
    let stretches = rows.enumerate().flat_map(|(number, (one, other))| {
        let differs: Vec<bool> = one
            .iter()
            .zip(other)
            .map(|(one, other)| one != other)
            .collect();
        let mut at = number * Display::WIDTH;
        let stretches: Vec<(usize, usize)> = differs
            .chunk_by(|one, next| one == next)
            .filter_map(|stretch| {
                at += stretch.len();
                stretch[0].then_some((at - stretch.len(), stretch.len()))
            })
            .collect();
        stretches
    });
    stretches.max_by_key(|(_, long)| *long).unwrap_or_default()
}

#[test]
fn how_loud_it_is_is_shown_and_told_as_it_comes_from_the_microphone() {
    let trial = Trial::open();
    // Nothing sounds at all: there is not even noise.
    assert!(trial.is_so_loud(90..=140) >= 90);
    let still = wait_for(|| {
        let (one, other) = (trial.display.look(), trial.display.look());
        (one == other).then_some(one)
    });

    // A tone of a known level: the bar is as long as its share of 90 decibels, and it is told.
    let air = trial.bench.sounds();
    air.sound(tone(100.0));
    let under = trial.is_so_loud(17..=23);
    let (begins, tone) = longest_change(&still, &trial.display.look());
    assert!(tone > Display::WIDTH / 3, "no bar to be seen: {tone}");
    drop(air);

    // The noise of a room alone, some 50 decibels under the loudest, makes a shorter one.
    trial.is_so_loud(90..=140);
    let _air = trial.bench.sounds();
    let room = trial.is_so_loud(45..=65);
    let share = f64::from(90 - room) / f64::from(90 - under);
    let row = begins / Display::WIDTH * Display::WIDTH;
    wait_for(|| {
        let now = trial.display.look();
        let row = row..row + Display::WIDTH;
        let (at, bar) = longest_change(&still[row.clone()], &now[row.clone()]);
        let is_as_long = (bar as f64 / tone as f64 - share).abs() < 0.08;
        (row.start + at == begins && is_as_long).then_some(())
    });
}

#[test]
fn each_row_that_was_taken_is_told_and_a_microphone_goes_and_comes_back() {
    let trial = Trial::open();
    let air = trial.bench.sounds();
    // The ear learns the room, in which nothing sounded until now, before it takes anything for a knock.
    for (first, count) in [(12.0, 2), (3.0, 3), (3.0, 2)] {
        air.sound(knocks(first, count));
        let said = trial.hears(&format!("{count} knocks, "));
        assert!(said.ends_with("decibels over the room: clear."), "{said}");
    }
    // They do nothing else here: the screen is still up.
    trial.press("r");
    let newest = trial.hears("2 knocks, ");
    trial.press("h");
    let place = trial.hears("How loud it is now: ");
    assert!(place.ends_with(&newest), "{place}");
    drop(air);

    trial.bench.pull_out();
    let gone = trial.hears("There is no microphone");
    assert!(gone.ends_with(&newest), "{gone}");
    trial.press("h");
    trial.hears("How loud it is now: nothing comes from a microphone.");
    trial.bench.plug_in();
    trial.hears("The microphone is there again");
    trial.is_so_loud(90..=140);

    // Switched off, nobody listens: no thread, and no device that is open.
    assert!(trial.has_an_ear() && trial.bench.is_listened_to());
    trial.press("Escape");
    // The settings stand where they were left.
    let back = trial.hears("Settings.");
    assert!(back.contains("Try the knocks"), "{back}");
    trial.press("Up");
    trial.hears("Knocks on the bench: on");
    trial.press("Left");
    trial.hears("Knocks on the bench: off");
    wait_for(|| (!trial.has_an_ear() && !trial.bench.is_listened_to()).then_some(()));
}
