//! No bytes make the readers of the settings panic: see `readers.rs`.
//! `cargo +nightly fuzz run read_settings --fuzz-dir tests/fuzz`

#![no_main]

#[path = "../readers.rs"]
#[allow(dead_code)]
mod readers;

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| readers::settings(bytes));
