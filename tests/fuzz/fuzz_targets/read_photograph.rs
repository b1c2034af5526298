//! No bytes make the reader of photographs panic: see `readers.rs`.
//! `cargo +nightly fuzz run read_photograph --fuzz-dir tests/fuzz`

#![no_main]

#[path = "../readers.rs"]
#[allow(dead_code)]
mod readers;

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| readers::photograph(bytes));
