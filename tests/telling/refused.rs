//! What cannot be tied, on every ground: one sentence for each, in every language, as it was last read
//! through.

use crate::in_time;

use std::collections::BTreeSet;
use std::env;
use std::fmt::Write;
use std::fs;
use std::process::{Command, Stdio};

use in_time::InTime as _;
use marlinspeak::words::Words;

const KEPT: &str = "tests/data/refused.txt";

/// Command lines without the language, blanks between the words.
const ASKED: &[&str] = &[
    // Round.
    "fit --object 30 --cord 4mm --cover 5m",
    "fit --object 30 --cord 31mm --cover 40",
    "fit --object 3o --cord 4mm --cover 40",
    "fit --object -30 --cord 4mm --cover 40",
    "fit --object 30ell --cord 4mm --cover 40",
    "fit --object 1,200 --cord 4mm --cover 40",
    "fit --object 30 --girth 94 --cord 4mm --cover 40",
    "fit --girth 94:80 --cord 4mm --cover 40",
    "fit --object 30 --cord 4mm --cover 40:30",
    "fit --object 30 --cord 4:3mm --cover 40",
    "fit --object 30 --cord 4mm --cover 40 --have 2m:3m",
    "fit --object 30 --cord 4mm --cover 40 --tube 45:40",
    "rig --leads 5 --bights 7 --object 30 --cover 5m --cord 4mm --tube 45mm",
    "rig --leads 5 --bights 7 --object 30 --cover 5m --cord 3mm --in-place",
    "rig --leads 5 --bights 7 --object 3 --cord 4mm --tube 45mm",
    "rig --leads 5 --bights 70 --object 30 --cord 4mm --in-place",
    "rig --leads 5 --bights 40 --object 30 --cord 4mm --in-place",
    // In place.
    "fit --in-place --cord 4mm --cover 40",
    "fit --object 30 --in-place --tube 45mm --cord 4mm --cover 40",
    "fit --object 30 --in-place --rows 14 --cord 4mm --cover 40",
    "fit --object 30 --in-place --thread M4 --cord 4mm --cover 40",
    "fit --object 30 --in-place --pin 12 --cord 4mm --cover 40",
    "fit --object 30 --in-place --wall 3 --cord 4mm --cover 40",
    "rig --leads 5 --bights 7 --in-place --cord 4mm",
    "rig --leads 5 --bights 7 --passes 4 --object 20 --in-place --cord 4mm",
    "rig --leads 5 --bights 7 --object 60 --in-place --cord 4mm --keep-tube rail",
    "sheet strip --leads 5 --bights 7 --in-place --cord 4mm --out strip.pdf",
    // A taper.
    "fit --object 32:26 --cord 3mm",
    "fit --object 32: --cord 3mm --cover 90",
    "fit --object :26 --cord 3mm --cover 90",
    "fit --object 32:26:20 --cord 3mm --cover 90",
    "fit --object 32:2 --cord 3mm --cover 90",
    "fit --object 300:26 --cord 3mm --cover 90",
    "fit --object 32:x --cord 3mm --cover 90",
    "fit --object 32:26 --cord 40mm --cover 90",
    "fit --object 120:20 --cord 4mm --cover 50",
    "fit --object 60:20 --cord 4mm --cover 20 --in-place",
    "rig --leads 5 --bights 7 --object 300:26 --cover 90 --cord 3mm --in-place",
    "rig --leads 5 --bights 7 --object 32:26 --cover 900 --cord 3mm --in-place",
    "rig --leads 25 --bights 30 --object 32:26 --cover 90 --cord 3mm --in-place",
    "rig --leads 5 --bights 7 --object 32:26 --cord 3mm --in-place",
    // A ball.
    "fit --ball 38mm:30mm --cord 3mm",
    "fit --ball 38 --cord 3mm --cover 40",
    "fit --ball 38 --object 30 --cord 3mm",
    "fit --ball 0 --cord 3mm",
    "fit --ball round --cord 3mm",
    "fit --ball 4mm --cord 4mm",
    "fit --ball 5mm --cord 4mm",
    "fit --ball 6.9mm --cord 4mm",
    "fit --ball 5mm --cord 4mm --in-place",
    "fit --ball 3mm --cord 4mm",
    "rig --leads 4 --bights 3 --ball 5mm --cord 4mm --in-place",
    "rig --leads 19 --bights 18 --ball 38 --cord 4mm --in-place",
    "rig --leads 9 --bights 8 --passes 4 --ball 38 --cord 4mm --in-place",
    "rig --leads 5 --bights 6 --ball 38 --cord 3mm",
    // A mat.
    "fit --mat 150 --in-place --cord 4mm",
    "fit --mat 60:150 --cord 4mm",
    "fit --mat 150: --cord 4mm",
    "fit --mat 150:60:20 --cord 4mm",
    "fit --mat 150 --cover 40 --cord 4mm",
    "fit --mat 150 --ball 38 --cord 4mm",
    "fit --mat 150 --tube 45mm --cord 4mm",
    "fit --mat 150 --rows 14 --cord 4mm",
    "fit --mat 5mm --cord 4mm",
    "fit --mat 3mm --cord 4mm",
    "rig --leads 16 --bights 17 --mat 60 --cord 4mm",
    "rig --leads 6 --bights 17 --mat 150:20 --cord 4mm",
    "rig --leads 6 --bights 7 --mat 150 --cord 4mm --keep-tube board",
    // Round the hand.
    "steps --leads 2 --bights 3 --round-hand",
    "steps --leads 3 --bights 4 --passes 4 --round-hand",
    "steps --leads 5 --bights 7 --round-hand",
    "steps --leads 3 --bights 4 --nested 2 --round-hand",
    "steps --leads 3 --bights 4 --round-hand --mat 150",
    "sheet strip --leads 3 --bights 4 --round-hand --out strip.pdf",
];

/// Exit code and what is written for the ear of a shell; nothing may be printed.
fn refused(asked: &str, tag: &str) -> (i32, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(asked.split_whitespace())
        .args(["--lang", tag])
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env("XDG_STATE_HOME", "/dev/null")
        .stdin(Stdio::null())
        .output_in_time();
    let printed = String::from_utf8(output.stdout).unwrap();
    assert_eq!(printed, "", "{asked}");
    let said = String::from_utf8(output.stderr).unwrap();
    (output.status.code().unwrap(), said.trim_end().to_owned())
}

#[test]
fn what_cannot_be_tied_is_refused_with_one_sentence_in_every_language() {
    assert!(ASKED.len() >= 60);
    let tags: Vec<String> = Words::known().iter().map(ToString::to_string).collect();
    let mut told = String::new();
    for asked in ASKED {
        writeln!(told, "{asked}").unwrap();
        let mut sentences = BTreeSet::new();
        for tag in &tags {
            let (code, sentence) = refused(asked, tag);
            assert_eq!(code, 2, "{asked}: {sentence}");
            assert_eq!(sentence.lines().count(), 1, "{asked}: {sentence}");
            assert!(sentence.ends_with('.'), "{asked}: {sentence}");
            // One sentence, which says what is wrong, and behind a colon what to try.
            assert!(!sentence.contains(". "), "{asked}: {sentence}");
            assert!(sentence.contains([':', ';']), "{asked}: {sentence}");
            writeln!(told, "  {tag}: {sentence}").unwrap();
            sentences.insert(sentence);
        }
        assert_eq!(sentences.len(), tags.len(), "{asked}: {sentences:?}");
    }
    if env::var_os("WRITE_SNAPSHOTS").is_some() {
        fs::write(KEPT, &told).unwrap();
    }
    let read = fs::read_to_string(KEPT).unwrap_or_default();
    for (told, read) in told.lines().zip(read.lines()) {
        assert_eq!(told, read, "{KEPT}");
    }
    assert_eq!(told, read, "{KEPT}: see `make snapshots`");
}
