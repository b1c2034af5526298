//! No bytes make the reader of what a speech service answers panic: see `readers.rs`.
//! `cargo +nightly fuzz run read_answers --fuzz-dir tests/fuzz`

#![no_main]

#[path = "../readers.rs"]
#[allow(dead_code)]
mod readers;

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| readers::answers(bytes));
