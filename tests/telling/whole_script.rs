//! The whole job in words, as it was last read through, in every language: 5 lead 6 bight, doubled.

use std::env;
use std::fmt::Write;
use std::fs;
use std::path::PathBuf;

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::words::{Detail, Words};

/// Every step with its number, its phase and what is spoken.
fn told(tag: &str, detail: Detail) -> String {
    let plan = Plan::read("5", "6", "2", "1").unwrap();
    let script = Script::new(plan, AtOnce::default()).teaching(detail == Detail::Teach);
    let mut words = Words::load(Some(tag)).unwrap();
    words.set_detail(detail);
    let mut told = String::new();
    for (place, number) in script.places().zip(1..) {
        let step = script.step(place).unwrap();
        let phase = words.show(script.plan().knot(), &step).phase;
        writeln!(told, "{number}. [{phase}] {}", words.say(&step)).unwrap();
    }
    told
}

#[test]
fn script_is_told_as_it_was_read_through() {
    for tag in Words::known() {
        for detail in Detail::ALL {
            let path: PathBuf = [
                "tests/data/scripts",
                &format!("5x6x2-{tag}-{}.txt", detail.name()),
            ]
            .iter()
            .collect();
            let told = told(&tag.to_string(), detail);
            if env::var_os("WRITE_SNAPSHOTS").is_some() {
                fs::create_dir_all("tests/data/scripts").unwrap();
                fs::write(&path, &told).unwrap();
            }
            let read = fs::read_to_string(&path).unwrap_or_default();
            for (told, read) in told.lines().zip(read.lines()) {
                assert_eq!(told, read, "{}", path.display());
            }
            assert_eq!(told, read, "{}: see `make snapshots`", path.display());
        }
    }
}
