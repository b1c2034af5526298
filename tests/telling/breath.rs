//! What is said leaves room to breathe: voices pause at the marks that stand in it, two engines of different
//! make alike, and no stretch between two pauses lasts longer than a breath.

use crate::in_time;

use in_time::InTime as _;
use std::fs;
use std::process::Command;

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::{Detail, Words};
use tempfile::TempDir;

/// Marks at which a voice pauses, with the word that follows. A dash, dots and brackets are none: flite
/// reads on over them.
const PAUSES: [(&str, &str); 5] = [
    (",", "run"),
    (";", "run"),
    (":", "run"),
    (".", "Run"),
    ("?", "Run"),
];
/// The longest stretch without a pause, in seconds and in words. *Common practice, no source:* a reader
/// takes a breath within it.
const LONGEST: (f64, usize) = (12.0, 25);

/// Seconds of what an engine says: the length of its sound, 44-byte head and 16 bits a sample (RIFF WAVE,
/// the form that both write).
fn seconds(engine: &str, tag: &str, text: &str) -> f64 {
    let folder = TempDir::new().unwrap();
    let sound = folder.path().join("told.wav");
    let mut command = Command::new(engine);
    match engine {
        "espeak-ng" => command
            .args(["-s", "165", "-v", tag, "-w"])
            .arg(&sound)
            .arg(text),
        _ => command
            .args(["-voice", "slt", "-t", text, "-o"])
            .arg(&sound),
    };
    let said = command.output_in_time();
    assert!(said.status.success(), "{engine}: {text}");
    let bytes = fs::read(&sound).unwrap();
    let rate = u32::from_le_bytes(bytes[24..28].try_into().unwrap());
    let samples = u32::try_from((bytes.len() - 44) / 2).unwrap();
    f64::from(samples) / f64::from(rate)
}

#[test]
fn two_engines_pause_at_every_mark_that_counts() {
    for engine in ["espeak-ng", "flite"] {
        // No sound in it is made with the mouth shut, which would be taken for a pause.
        let plain = seconds(engine, "en-gb", "We lay one line run along our row.");
        for (mark, next) in PAUSES {
            let marked = format!("We lay one line{mark} {next} along our row.");
            let pause = seconds(engine, "en-gb", &marked) - plain;
            assert!(pause > 0.1, "{engine}: {pause} s at {mark}");
        }
    }
    let plain = seconds("flite", "en", "We lay one line run along our row.");
    for mark in [" –", "…", " ("] {
        let marked = format!("We lay one line{mark} run along our row.");
        let pause = seconds("flite", "en", &marked) - plain;
        assert!(pause.abs() < 0.05, "{pause} s at {mark}: it may count");
    }
}

/// The stretches of a text between two pauses.
fn breaths(text: &str) -> Vec<String> {
    let mut breaths = vec![Vec::new()];
    for word in text.split_whitespace() {
        breaths.last_mut().unwrap().push(word);
        let bare = word.trim_end_matches(['”', '“', '»']);
        if PAUSES.iter().any(|(mark, _)| bare.ends_with(mark)) {
            breaths.push(Vec::new());
        }
    }
    breaths.iter().map(|words| words.join(" ")).collect()
}

#[test]
fn no_stretch_of_a_whole_job_is_longer_than_a_breath() {
    for tag in ["en", "de", "es", "fr"] {
        let mut words = Words::load(Some(tag)).unwrap();
        let mut longest = String::new();
        for [leads, bights, passes] in [["3", "4", "1"], ["5", "7", "2"]] {
            let plan = Plan::read(leads, bights, passes, "").unwrap();
            for detail in Detail::ALL {
                words.set_detail(detail);
                let teaches = detail == Detail::Teach;
                let script = Script::new(plan.clone(), AtOnce::default()).teaching(teaches);
                for place in script.places() {
                    let said = String::from(words.say(&script.step(place).unwrap()));
                    for breath in breaths(&said) {
                        if breath.chars().count() > longest.chars().count() {
                            longest = breath;
                        }
                    }
                }
            }
        }
        let count = longest.split_whitespace().count();
        let time = seconds("espeak-ng", tag, &longest);
        let what = format!("{tag}: {count} words, {time} s: {longest}");
        assert!(count > 8, "{what}");
        assert!(count <= LONGEST.1 && time <= LONGEST.0, "{what}");
        if tag == "en" {
            let time = seconds("flite", tag, &longest);
            assert!(time <= LONGEST.0, "flite, {time} s: {longest}");
        }
    }
}
