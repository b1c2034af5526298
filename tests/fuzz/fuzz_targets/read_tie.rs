//! No bytes make the reader of ties panic, and what it reads can be written and read again.
//! `cargo +nightly fuzz run read_tie --fuzz-dir tests/fuzz`

#![no_main]

use libfuzzer_sys::fuzz_target;
use marlinspeak::files::FormatError;
use marlinspeak::shelf::{DocumentError, read_tie, write_tie};

fuzz_target!(|document: &[u8]| {
    if let Ok(tie) = read_tie(document) {
        match write_tie(&tie) {
            Ok(written) => assert_eq!(read_tie(&written), Ok(tie)),
            // Spaces between the fields can make a full document too large to write.
            Err(error) => assert!(
                matches!(
                    error,
                    DocumentError::Format(FormatError::TooLarge { .. })
                ),
                "{error}"
            ),
        }
    }
});
