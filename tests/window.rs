//! The real program in a real window, worked by real key presses, heard by a speech service
//! that keeps a record, and killed as a power cut would.
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
use std::path::{Path, PathBuf};
use std::process::Command;

use display::Display;
use program::{PROGRAM, Program, heard, ties, wait_for};
use serde_json::Value;
use ssip::{Event, Service, Speech};
use tempfile::TempDir;

const KNOT: [&str; 6] = ["--leads", "7", "--bights", "12", "--passes", "2"];

/// The steps as `steps --json` tells them.
fn told() -> Vec<Value> {
    let printed = Command::new(PROGRAM)
        .args(["steps", "--json"])
        .args(KNOT)
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .output_in_time();
    let document: Value = serde_json::from_slice(&printed.stdout).unwrap();
    document["steps"].as_array().unwrap().clone()
}

/// What they say will be said.
fn says(steps: &[Value]) -> Vec<&str> {
    steps
        .iter()
        .map(|step| step["say"].as_str().unwrap())
        .collect()
}

#[test]
fn forty_presses_are_forty_steps_and_a_power_cut_loses_none() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let told = told();
    let steps = says(&told);
    let program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0]);
    for step in &steps[1..=40] {
        display.press("space");
        assert_eq!(heard(&service), *step);
    }
    wait_until_saved(&only_tie(data.path()), &told, 40);
    program.kill();

    let program = Program::start(&display, &service, data.path(), &[]);
    assert!(heard(&service).starts_with("A tie is waiting: 7 lead, 12 bight,"));
    display.press("space");
    let taken_up = heard(&service);
    assert!(
        taken_up.starts_with("Taking up 7 lead, 12 bight."),
        "{taken_up}"
    );
    assert!(taken_up.ends_with(steps[40]), "{taken_up}");
    display.press("space");
    assert_eq!(heard(&service), steps[41]);
    drop(program);
}

#[test]
fn a_held_key_counts_once() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let told = told();
    let steps = says(&told);
    let _program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0]);
    let presses = display.watch_presses();
    display.hold("space");
    // The display's own repeats of the held key.
    presses.wait_for(12);
    display.let_go("space");
    assert_eq!(heard(&service), steps[1]);
    display.press("space");
    assert_eq!(heard(&service), steps[2]);
}

/// "?" is a key with Shift: all keys are told at it as at F1, and once more the step.
#[test]
fn a_sign_above_another_key_is_that_sign() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let told = told();
    let step = says(&told)[0];
    let _program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), step);
    let [by_name, again, by_sign, at_last] =
        ["F1", "F1", "shift+slash", "shift+slash"].map(|key| {
            display.press(key);
            heard(&service)
        });
    assert_ne!(by_name, step);
    assert_eq!(by_sign, by_name);
    assert!(again.contains(step) && at_last == again, "{again}");
}

#[test]
fn a_new_press_cuts_off_old_speech() {
    let (display, service) = (Display::start(), Service::start());
    service.set_speech(Speech::UntilTold);
    let data = TempDir::new().unwrap();
    let told = told();
    let steps = says(&told);
    let _program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0]);
    display.press("space");
    assert_eq!(heard(&service), steps[1]);
    let events = service.events();
    let first = events.iter().find_map(|event| match event {
        Event::Text(message, text) if *text == steps[0] => Some(*message),
        _ => None,
    });
    let cancelled = Event::Cancelled(first.unwrap());
    let spoken = |event: &Event| matches!(event, Event::Text(_, text) if *text == steps[1]);
    let at = |wanted: &dyn Fn(&Event) -> bool| events.iter().position(wanted);
    let cut_off = at(&|event| *event == cancelled);
    assert!(cut_off.is_some() && cut_off < at(&spoken), "{events:?}");
}

#[test]
fn without_speech_the_tie_goes_on_in_writing_and_is_kept() {
    let display = Display::start();
    let service = Service::absent();
    let data = TempDir::new().unwrap();
    let told = told();
    let steps = says(&told);
    let program = Program::start(&display, &service, data.path(), &KNOT);
    for _ in 0..3 {
        display.press("space");
    }
    wait_until_saved(&only_tie(data.path()), &told, 3);
    // The service comes, and the voice with it.
    service.restart();
    assert_eq!(heard(&service), steps[3]);
    program.kill();
}

/// The document of the one tie on the shelf.
fn only_tie(data: &Path) -> PathBuf {
    let ties = ties(data);
    wait_for(|| {
        let mut found = std::fs::read_dir(&ties).ok()?.filter_map(|entry| {
            let path = entry.ok()?.path();
            let is_tie = path.extension()? == "json" && !path.to_str()?.contains("previous");
            is_tie.then_some(path)
        });
        found.next()
    })
}

/// Waits until the document stands at this step.
fn wait_until_saved(tie: &Path, steps: &[Value], number: usize) {
    let step = &steps[number];
    // The crossings of the leg's earlier parts lie behind the hand.
    let is_earlier_part = |other: &&Value| {
        ["pass", "leg"]
            .iter()
            .all(|field| other[field] == step[field])
            && other["part"].as_u64() < step["part"].as_u64()
    };
    let behind: usize = steps
        .iter()
        .filter(|other| other["kind"] == "lay" && step["kind"] == "lay")
        .filter(is_earlier_part)
        .map(|part| part["crossings"].as_array().unwrap().len())
        .sum();
    let phase = match (step["kind"].as_str().unwrap(), step["pass"].as_u64()) {
        ("lay", Some(1)) => "lead",
        ("lay", _) => "follow",
        (kind, _) => kind,
    };
    wait_for(|| {
        let saved: Value = serde_json::from_slice(&std::fs::read(tie).ok()?).ok()?;
        let place = &saved["place"];
        let is_there = place["phase"] == phase
            && place["pass"] == step["pass"]
            && place["leg"] == step["leg"]
            && place["crossing"] == behind;
        is_there.then_some(())
    });
}
