//! What must hold for every reader of bytes from outside, whatever the bytes are: no panic, and what is
//! read can be written and read again. The fuzz targets and `tests/readers.rs` feed them.

use std::fs;

use marlinspeak::bench::Correction;
use marlinspeak::files::{FormatError, Reading, Teller};
use marlinspeak::guide::Presets;
use marlinspeak::settings::{read_settings, salvage_settings, write_settings};
use marlinspeak::shelf::{
    DocumentError, IfThere, Photograph, Shelf, ShelfTrouble, read_entry, read_order,
    read_order_said, read_presets, read_tie, write_entry, write_order, write_presets, write_tie,
};

/// A tie.
pub fn tie(document: &[u8]) {
    if let Ok(tie) = read_tie(document) {
        match write_tie(&tie) {
            Ok(written) => assert_eq!(read_tie(&written), Ok(tie)),
            // Spaces between the fields can make a full document too large to write.
            Err(error) => assert!(is_too_large(&error), "{error}"),
        }
    }
}

/// An entry of the log.
pub fn entry(document: &[u8]) {
    if let Ok(entry) = read_entry(document) {
        // What the log teaches is worked out from whatever stands in it.
        let give = entry.cord.as_ref().and_then(|cord| entry.give_sample(cord));
        for factor in [entry.length_factor(), give.map(|give| give.factor)] {
            assert!(factor.is_none_or(|factor| (0.5..=2.0).contains(&factor)));
        }
        match write_entry(&entry) {
            Ok(written) => assert!(read_entry(&written).is_ok()),
            Err(DocumentError::Format(FormatError::NotTheSame)) => {}
            Err(error) => assert!(is_too_large(&error), "{error}"),
        }
    }
}

/// Tubes and cords kept by name.
pub fn presets(document: &[u8]) {
    if let Ok(presets) = read_presets(document) {
        match write_presets(&presets) {
            Ok(written) => assert_eq!(read_presets(&written), Ok(presets)),
            Err(DocumentError::Format(FormatError::NotTheSame)) => {}
            Err(error) => assert!(is_too_large(&error), "{error}"),
        }
    }
}

/// An order, as it is kept and as it is handed over.
pub fn order(document: &[u8]) {
    for read in [read_order(document), read_order_said(document)] {
        let Ok(stored) = read else { continue };
        // Whatever was said, there is an answer or a reason why there is none.
        let nothing = Presets::default();
        let _ = stored.order.read(&nothing, |_, _| Correction::default());
        match write_order(&stored) {
            Ok(written) => assert_eq!(read_order(&written), Ok(stored)),
            Err(DocumentError::Format(FormatError::NotTheSame)) => {}
            Err(error) => assert!(is_too_large(&error), "{error}"),
        }
    }
}

/// Settings, whole or damaged.
pub fn settings(document: &[u8]) {
    let salvaged = salvage_settings(document);
    if let Ok(settings) = read_settings(document) {
        // What is believed is not changed by looking for what can be saved of it.
        let (saved, _) = salvaged.clone().expect("what is whole can be saved");
        assert_eq!(saved, settings);
    }
    if let Some((settings, _)) = salvaged {
        let written = write_settings(&settings).expect("settings can be written");
        assert_eq!(read_settings(&written), Ok(settings));
    }
}

/// A backup: what comes back from it goes into another one, and comes back from that.
pub fn backup(contents: &[u8]) {
    let around = tempfile::tempdir().expect("a temporary folder");
    let file = around.path().join("backup");
    fs::write(&file, contents).expect("a temporary file");
    let here = Shelf::open(around.path().join("here/ties")).expect("a shelf");
    let Ok(restored) = here.restore(&file) else {
        return;
    };
    let restored = told(restored);
    let again = around.path().join("again");
    told(
        here.backup(&again, IfThere::Refuse)
            .expect("a backup of what came"),
    );
    let there = Shelf::open(around.path().join("there/ties")).expect("a shelf");
    let back = told(there.restore(&again).expect("a backup of our own"));
    assert!(back.faults.is_empty() && back.missing == 0);
    assert!(back.ties.len() <= restored.ties.len());
}

/// A photograph: shown no larger than was asked for, or refused.
pub fn photograph(bytes: &[u8]) {
    const SIDE: u32 = 50;

    let around = tempfile::tempdir().expect("a temporary folder");
    let file = around.path().join("photograph");
    fs::write(&file, bytes).expect("a temporary file");
    if let Ok(photograph) = Photograph::read(&file, SIDE) {
        let Photograph {
            width,
            height,
            pixels,
        } = photograph;
        assert!(width <= SIDE && height <= SIDE, "{width} × {height}");
        assert_eq!(
            pixels.len() as u64,
            4 * u64::from(width) * u64::from(height)
        );
    }
}

/// Answers of a speech service, one after the other.
#[cfg(target_os = "linux")]
pub fn answers(mut bytes: &[u8]) {
    let whole = bytes.len();
    let mut left = whole;
    while let Ok(answer) = marlinspeak::voice::read_answer(&mut bytes) {
        assert!(
            answer.code < 1000 && bytes.len() < left,
            "it comes to an end"
        );
        left = bytes.len();
    }
}

fn is_too_large(error: &DocumentError) -> bool {
    matches!(error, DocumentError::Format(FormatError::TooLarge { .. }))
}

struct Anybody;

impl Teller<ShelfTrouble> for Anybody {
    fn tell_of(&mut self, troubles: Vec<ShelfTrouble>) {
        assert!(!troubles.is_empty());
    }
}

fn told<T>(reading: Reading<T, ShelfTrouble>) -> T {
    reading.hand_on(&mut Anybody)
}
