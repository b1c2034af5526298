//! A program that is killed while it saves.

use std::collections::BTreeSet;
use std::env;
use std::fs;
use std::hash::{BuildHasher, RandomState};
use std::io::{BufRead, BufReader, Write as _};
use std::path::Path;
use std::process::{Command, Stdio};

use marlinspeak::shelf::{Shelf, TieId};

use crate::{fresh, leg, listed, two_copies};

/// Names the shelf and the tie for the program that is to be killed.
const SHELF: &str = "MARLINSPEAK_TEST_SHELF";
const TIE: &str = "MARLINSPEAK_TEST_TIE";

const ROUNDS: usize = 20;

/// The state number `number`: no other has the same note, and the place goes with it.
fn leg_of(number: u64) -> u16 {
    u16::try_from(number % 12).unwrap() + 1
}

/// Not a test of its own: the program that [`no_kill_loses_what_was_saved`] starts and kills.
#[test]
#[ignore = "saves until it is killed"]
fn save_until_killed() {
    let (Some(folder), Ok(id)) = (env::var_os(SHELF), env::var(TIE)) else {
        return;
    };
    let shelf = Shelf::open(Path::new(&folder)).unwrap();
    let taken = shelf
        .take_up(&TieId::parse(&id).unwrap())
        .unwrap()
        .untroubled()
        .unwrap();
    let mut tie = taken.tie;
    let mut number: u64 = tie.note.parse().unwrap_or(0);
    let mut out = std::io::stdout();
    loop {
        number += 1;
        tie.note = number.to_string();
        tie.place = leg(leg_of(number));
        shelf.save(&tie).unwrap().untroubled().unwrap();
        writeln!(out, "saved {number}").unwrap();
        out.flush().unwrap();
    }
}

/// Starts the saver, kills it some time after it has saved `at_least` times, and gives back the
/// last state it has said is saved.
fn run_and_kill(shelf: &Shelf, id: &TieId, at_least: u64) -> u64 {
    let mut child = Command::new(env::current_exe().unwrap())
        .args([
            "crash::save_until_killed",
            "--exact",
            "--ignored",
            "--nocapture",
        ])
        .env(SHELF, shelf.folder())
        .env(TIE, id.as_str())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let mut last = 0;
    let mut heard = 0;
    while heard < at_least {
        let line = lines.next().expect("it saves until it is killed").unwrap();
        if let Some((_, number)) = line.split_once("saved ") {
            last = number.parse().unwrap();
            heard += 1;
        }
    }
    // Anywhere in the save that it is at by now.
    for _ in 0..RandomState::new().hash_one(last) % 20_000 {
        std::hint::spin_loop();
    }
    child.kill().unwrap();
    child.wait().unwrap();
    for line in lines {
        if let Some((_, number)) = line.unwrap().split_once("saved ") {
            // The last line may be cut short, but then it says less.
            last = last.max(number.parse().unwrap_or(0));
        }
    }
    last
}

#[test]
fn no_kill_loses_what_was_saved() {
    let (_around, shelf) = fresh();
    let id = two_copies(&shelf).id().clone();
    let mut seen = BTreeSet::new();
    for round in 0..ROUNDS {
        let said = run_and_kill(&shelf, &id, 1 + RandomState::new().hash_one(round) % 20);
        let (ties, troubles) = listed(&shelf);
        assert!(troubles.is_empty(), "{troubles:?}");
        let [tie] = ties.as_slice() else {
            panic!("{ties:?}");
        };
        let number: u64 = tie.note.parse().unwrap();
        assert!(
            number == said || number == said + 1,
            "{number} on disk, {said} said"
        );
        assert_eq!(tie.place, leg(leg_of(number)));
        seen.insert(number);
        // The copy before it is whole too.
        let previous = shelf.folder().join(format!("{id}.previous.json"));
        let previous = marlinspeak::shelf::read_tie(&fs::read(previous).unwrap()).unwrap();
        // Before the first save there was no note.
        let before: u64 = match previous.note.as_str() {
            "" => 0,
            note => note.parse().unwrap(),
        };
        assert!(
            before == number || before == number - 1,
            "{before} before {number}"
        );
    }
    assert_eq!(seen.len(), ROUNDS, "every round saved something");
}
