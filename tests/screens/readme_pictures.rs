//! The pictures in the README, made by the program itself: `make pictures`.
#![cfg(feature = "window")]

use crate::hands;
use crate::window;

use std::path::Path;
use std::process::Command;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app;
use marlinspeak::guide::Plan;
use tempfile::TempDir;
use window::Pane;

/// Opens the app on a plan, so many steps on, and presses these letters.
fn at(folder: &TempDir, knot: [&str; 4], steps: usize, letters: &str) -> Hands {
    let [leads, bights, passes, weave] = knot;
    let plan = Plan::read(leads, bights, passes, weave).unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan));
    for _ in 0..steps {
        hands.press(Key::Named(Named::Space));
    }
    for letter in letters.chars() {
        hands.press(Key::Character(letter.to_string().into()));
    }
    hands
}

#[test]
#[ignore = "writes into resources/: make pictures"]
fn the_pictures_of_the_readme() {
    for (name, knot, steps, letters) in [
        ("tying.png", ["5", "7", "1", "1"], 16, ""),
        ("round.png", ["5", "7", "2", "1"], 23, "f"),
    ] {
        let folder = TempDir::new().unwrap();
        let hands = at(&folder, knot, steps, letters);
        let file = Path::new("resources").join(name);
        Pane::new(1100, 760).write(hands.view(), &app::theme(), &file);
        let size = file.metadata().unwrap().len();
        assert!(size > 20_000, "{name} is all but empty: {size} bytes");
    }
}

#[test]
#[ignore = "writes into resources/: make pictures"]
fn the_first_tie_as_it_moves() {
    let file = "resources/first-tie.gif";
    let status = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(["sheet", "reel", "--leads", "3", "--bights", "5"])
        .args(["--width", "640", "--replace", "--out", file])
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .status()
        .unwrap();
    assert!(status.success());
}
