//! What the fuzzer found worth keeping, read again at every run.
//!
//! `tests/data/fuzz/` has a file for each target of `tests/fuzz`: a line for each input, as a
//! JSON string whose characters are the bytes. Each list is the smallest that reaches all the
//! code that ten minutes of fuzzing reached.

use std::fs;

use marlinspeak::files::FormatError;
use marlinspeak::shelf::{DocumentError, read_entry, read_tie, write_entry, write_tie};

fn inputs(target: &str) -> Vec<Vec<u8>> {
    let lines = fs::read_to_string(format!("tests/data/fuzz/{target}.jsonl")).unwrap();
    lines
        .lines()
        .map(|line| {
            let text: String = serde_json::from_str(line).unwrap();
            text.chars()
                .map(|byte| u8::try_from(u32::from(byte)).unwrap())
                .collect()
        })
        .collect()
}

#[test]
fn whatever_the_fuzzer_found_is_read_or_refused_as_a_tie() {
    let inputs = inputs("read_tie");
    assert!(inputs.len() > 300);
    let (mut read, mut kinds) = (0, std::collections::HashSet::new());
    for input in inputs {
        match read_tie(&input) {
            Ok(tie) => {
                read += 1;
                assert_eq!(read_tie(&write_tie(&tie).unwrap()), Ok(tie));
            }
            Err(error) => {
                let format = match &error {
                    DocumentError::Format(error) => Some(std::mem::discriminant(error)),
                    _ => None,
                };
                kinds.insert((std::mem::discriminant(&error), format));
            }
        }
    }
    // It went deep: past JSON, checksum, version, knot and place.
    assert!(
        read > 10 && kinds.len() >= 6,
        "{read} read, {} kinds",
        kinds.len()
    );
}

#[test]
fn whatever_the_fuzzer_found_is_read_or_refused_as_an_entry() {
    let inputs = inputs("read_entry");
    assert!(inputs.len() > 100);
    let mut read = 0;
    for input in inputs {
        if let Ok(entry) = read_entry(&input) {
            read += 1;
            let give = entry.cord.as_ref().and_then(|cord| entry.give_sample(cord));
            for factor in [entry.length_factor(), give.map(|give| give.factor)] {
                assert!(factor.is_none_or(|factor| (0.5..=2.0).contains(&factor)));
            }
            match write_entry(&entry) {
                Ok(written) => assert!(read_entry(&written).is_ok()),
                Err(fault) => assert_eq!(fault, FormatError::NotTheSame.into()),
            }
        }
    }
    assert!(read > 10, "{read} read");
}
