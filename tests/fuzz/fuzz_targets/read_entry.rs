//! No bytes make the reader of the log panic, and what it reads can be written and read again.
//! `cargo +nightly fuzz run read_entry --fuzz-dir tests/fuzz`

#![no_main]

use libfuzzer_sys::fuzz_target;
use marlinspeak::files::FormatError;
use marlinspeak::shelf::{DocumentError, read_entry, write_entry};

fuzz_target!(|document: &[u8]| {
    if let Ok(entry) = read_entry(document) {
        // What the log teaches is worked out from whatever stands in it.
        for factor in [entry.length_factor(), entry.width_factor()].into_iter().flatten() {
            assert!(factor.is_finite());
        }
        match write_entry(&entry) {
            Ok(written) => assert!(read_entry(&written).is_ok()),
            Err(error) => assert!(
                matches!(
                    error,
                    DocumentError::Format(
                        FormatError::TooLarge { .. } | FormatError::NotTheSame
                    )
                ),
                "{error}"
            ),
        }
    }
});
