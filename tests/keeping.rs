//! The real program in a real window, and whatever happens to the machine: a power cut at any
//! moment, a disk that is full, a folder that goes away, a second program on the same tie.
#![cfg(feature = "window")]

#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/program.rs"]
mod program;
#[path = "support/ssip.rs"]
mod ssip;

use in_time::InTime as _;
use std::fs;
use std::hash::{BuildHasher, RandomState};
use std::path::Path;
use std::process::Command;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use display::{DEADLINE, Display};
use marlinspeak::guide::{AtOnce, Place, Plan, Script};
use marlinspeak::shelf::{Shelf, Tie};
use marlinspeak::words::Words;
use program::{PROGRAM, Program, heard, ties, wait_for};
use ssip::Service;
use tempfile::TempDir;

const KNOT: [&str; 6] = ["--leads", "9", "--bights", "101", "--passes", "2"];

/// How many power cuts; `make soak` asks for more.
const CUTS: u64 = 24;

/// Presses of the last quarter of a second may be lost.
const MAY_BE_LOST: Duration = Duration::from_millis(250);

fn script() -> Script {
    // No weave: the one with the fewest tucks, as the program takes it when none is named.
    let plan = Plan::read("9", "101", "2", "").unwrap();
    Script::new(plan, AtOnce::default())
}

fn places() -> Vec<Place> {
    script().places().collect()
}

/// What is said at every step.
fn says() -> Vec<String> {
    let (script, words) = (script(), Words::english());
    let steps = script.places().map(|place| script.step(place).unwrap());
    steps.map(|step| words.say(&step).into()).collect()
}

/// The one tie on the shelf, when it is there and nothing is wrong with it.
fn tie_in(data: &Path) -> Option<Tie> {
    let shelf = Shelf::open(ties(data)).unwrap();
    let ties = shelf.list().unwrap().untroubled().unwrap();
    assert!(ties.len() <= 1, "{ties:?}");
    ties.into_iter().next()
}

/// The number of the step at which the one tie stands, from 0.
fn step_in(data: &Path, places: &[Place]) -> Option<usize> {
    let here = tie_in(data)?.place;
    places.iter().position(|place| *place == here)
}

fn wait_for_step(data: &Path, places: &[Place], step: usize) {
    wait_for(|| (step_in(data, places)? == step).then_some(()));
}

fn random(most: u64) -> u64 {
    RandomState::new().hash_one(most) % most
}

/// What happened until somebody pulled the plug.
struct Cut {
    /// How often the space bar was pressed.
    presses: usize,
    /// What was said, and when it was heard.
    heard: Vec<(String, Instant)>,
    /// When the plug was pulled.
    at: Instant,
}

/// Presses the space bar again and again until somebody pulls the plug at a random moment.
fn press_until_the_plug_is_pulled(display: &Display, service: &Service, program: Program) -> Cut {
    let pulled = &AtomicBool::new(false);
    let (begun, begin) = mpsc::channel::<()>();
    thread::scope(|scope| {
        let plug = scope.spawn(move || {
            begin.recv_timeout(DEADLINE).unwrap();
            thread::sleep(Duration::from_millis(random(900)));
            let at = program.kill();
            pulled.store(true, Ordering::Relaxed);
            at
        });
        let ear = scope.spawn(|| {
            let mut heard = Vec::new();
            while !pulled.load(Ordering::Relaxed) {
                let text = service.next_text(Duration::from_millis(20));
                heard.extend(text.map(|text| (text, Instant::now())));
            }
            heard
        });
        let mut presses = 0;
        while !pulled.load(Ordering::Relaxed) {
            display.press("space");
            presses += 1;
            // Once the first press is on its way, anything may happen.
            let _ = begun.send(());
            thread::sleep(Duration::from_millis(random(60)));
        }
        Cut {
            presses,
            heard: ear.join().unwrap(),
            at: plug.join().unwrap(),
        }
    })
}

/// A step that the program has told a quarter of a second before the plug was pulled is safe,
/// and no step is on disk that was not pressed for.
#[test]
fn no_power_cut_costs_more_than_the_last_quarter_of_a_second() {
    let cuts = std::env::var("CUTS").map_or(CUTS, |cuts| cuts.parse().unwrap());
    let (display, service) = (Display::start(), Service::start());
    let (places, says) = (places(), says());
    let mut data = TempDir::new().unwrap();
    let (mut stood, mut safe_steps) = (None, 0);
    for cut in 0..cuts {
        let args = if stood.is_some() { &[][..] } else { &KNOT[..] };
        let program = Program::start(&display, &service, data.path(), args);
        if stood.is_some() {
            assert!(heard(&service).starts_with("A tie is waiting"));
            display.press("space");
            assert!(heard(&service).starts_with("Taking up"));
        } else {
            assert_eq!(heard(&service), says[0]);
            wait_for_step(data.path(), &places, 0);
        }
        let step = stood.unwrap_or(0);
        let Cut { presses, heard, at } =
            press_until_the_plug_is_pulled(&display, &service, program);
        let safe = heard
            .iter()
            .filter(|(_, when)| *when + MAY_BE_LOST <= at)
            .filter_map(|(text, _)| (step..=step + presses).rfind(|step| says[*step] == *text))
            .max()
            .unwrap_or(step);
        let now = step_in(data.path(), &places).expect("the tie opens");
        assert!(
            (safe..=step + presses).contains(&now),
            "cut {cut}: stood at {step}, pressed {presses} times, {safe} was safe, stands at {now}",
        );
        safe_steps += safe - step;
        // What was still being said is not said any more.
        while service.next_text(Duration::ZERO).is_some() {}
        stood = Some(now);
        if now + 100 > places.len() {
            data = TempDir::new().unwrap();
            stood = None;
        }
    }
    assert!(
        safe_steps as u64 > cuts,
        "only {safe_steps} steps were put to the test"
    );
}

#[test]
fn a_full_disk_is_said_and_the_tie_is_saved_when_there_is_room_again() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let (places, says) = (places(), says());
    // No file may grow (RLIMIT_FSIZE); the signal that goes with it is ignored, as a full disk
    // sends none.
    let mut full = Command::new("sh");
    full.args([
        "-c",
        "trap '' XFSZ; ulimit -S -f 0; exec \"$@\"",
        "sh",
        PROGRAM,
    ]);
    program::without_lock_out(data.path());
    let program = Program::start_by(&mut full, &display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), says[0]);
    let lost = heard(&service);
    assert!(
        lost.starts_with("This tie cannot be saved (") && lost.ends_with(&says[0]),
        "{lost}"
    );
    for step in &says[1..=3] {
        display.press("space");
        assert_eq!(heard(&service), *step);
    }
    assert!(tie_in(data.path()).is_none());
    let room = Command::new("prlimit")
        .args(["--fsize=unlimited", "--pid", &program.id().to_string()])
        .status();
    assert!(room.unwrap().success());
    // Without another press.
    wait_for_step(data.path(), &places, 3);
    let saved = heard(&service);
    assert_eq!(saved, format!("This tie is saved again. {}", says[3]));
    program.kill();
}

#[test]
fn a_disk_that_fills_up_leaves_the_last_whole_state() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let (places, says) = (places(), says());
    let mut filling = Command::new("sh");
    filling.args(["-c", "trap '' XFSZ; exec \"$@\"", "sh", PROGRAM]);
    program::without_lock_out(data.path());
    let program = Program::start_by(&mut filling, &display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), says[0]);
    display.press("space");
    assert_eq!(heard(&service), says[1]);
    wait_for_step(data.path(), &places, 1);
    // From now on a document comes to its hundredth byte and no further.
    let limited = Command::new("prlimit")
        .args(["--fsize=100:unlimited", "--pid", &program.id().to_string()])
        .status();
    assert!(limited.unwrap().success());
    display.press("space");
    assert_eq!(heard(&service), says[2]);
    let lost = heard(&service);
    assert!(lost.starts_with("This tie cannot be saved ("), "{lost}");
    assert_eq!(step_in(data.path(), &places), Some(1));
    program.kill();
    assert_eq!(step_in(data.path(), &places), Some(1));
}

#[test]
fn a_folder_deleted_meanwhile_is_made_again() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let (places, says) = (places(), says());
    let program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), says[0]);
    for step in 1..=4 {
        if step % 2 == 0 {
            fs::remove_dir_all(data.path().join("marlinspeak")).unwrap();
        }
        display.press("space");
        wait_for_step(data.path(), &places, step);
    }
    program.kill();
    assert_eq!(step_in(data.path(), &places), Some(4));
}

#[test]
fn a_second_program_may_look_and_changes_nothing() {
    let (display, service, other) = (Display::start(), Service::start(), Service::start());
    let data = TempDir::new().unwrap();
    let (places, says) = (places(), says());
    let first = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), says[0]);
    display.press("space");
    wait_for_step(data.path(), &places, 1);
    let before = tie_in(data.path());

    // Only the start screen has the program's bare name for its title.
    let second = Program::start(&display, &other, data.path(), &[]);
    display.focus("^Marlinspeak$");
    assert!(heard(&other).starts_with("A tie is waiting"));
    display.press("space");
    assert!(heard(&other).starts_with("This tie is open in another window"));
    display.press("space");
    let looking = heard(&other);
    assert!(looking.starts_with("Looking only."), "{looking}");
    for step in &says[2..=4] {
        display.press("space");
        assert_eq!(heard(&other), *step);
    }
    assert_eq!(tie_in(data.path()), before);
    let listed = Command::new(PROGRAM)
        .args(["shelf", "delete", before.unwrap().id().as_str()])
        .env("XDG_DATA_HOME", data.path())
        .output_in_time();
    assert_eq!(listed.status.code(), Some(1));
    second.kill();
    first.kill();
    assert_eq!(step_in(data.path(), &places), Some(1));
}
