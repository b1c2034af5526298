//! Ties handed over as a file, and backups.

use std::fs;

use jiff::Timestamp;
use marlinspeak::bench::{Millimetres, Tube};
use marlinspeak::files::{FileError, FormatError, Reading};
use marlinspeak::guide::Order;
use marlinspeak::session::back_up;
use marlinspeak::settings::{Settings, write_settings};
use marlinspeak::shelf::{
    DocumentError, Entry, IfThere, ImportOutcome, Orders, PresetsFile, Shelf, ShelfError,
};

use crate::damaged::flipped_and_cut;
use crate::told_of::told_of;
use crate::{document, five_by_six, fresh, leg, set_aside, two_copies};

#[test]
fn a_tie_goes_to_another_shelf_and_keeps_its_id() {
    let (around, shelf) = fresh();
    let (_elsewhere, other) = fresh();
    let tie = two_copies(&shelf);
    let file = around.path().join("for the loft.json");
    shelf
        .export(tie.id(), &file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    assert!(matches!(
        shelf.export(tie.id(), &file, IfThere::Refuse),
        Err(ShelfError::File(FileError::Exists { .. }))
    ));
    let imported = other.import(&file).unwrap();
    assert_eq!(
        (&imported.tie, &imported.fate),
        (&tie, &ImportOutcome::Kept)
    );
    assert_eq!(
        other.import(&file).unwrap().fate,
        ImportOutcome::AlreadyHere
    );
    assert_eq!(other.list().unwrap().untroubled().unwrap(), [tie]);
}

#[test]
fn an_imported_tie_does_not_replace_the_one_of_its_id() {
    let (around, shelf) = fresh();
    let mut tie = two_copies(&shelf);
    let file = around.path().join("tie.json");
    shelf
        .export(tie.id(), &file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    tie.place = leg(5);
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let imported = shelf.import(&file).unwrap();
    assert_eq!(
        imported.fate,
        ImportOutcome::Renumbered {
            was: tie.id().clone()
        }
    );
    assert_eq!(imported.tie.place, leg(2));
    assert_eq!(
        shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
        leg(5)
    );
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 2);
}

#[test]
fn nothing_in_a_file_decides_where_it_is_written() {
    let (around, shelf) = fresh();
    let by_hand = fs::read_to_string("tests/data/ties/by-hand.json").unwrap();
    for id in ["../../escaped", "/tmp/escaped", "a.previous", "", "CON"] {
        let file = around.path().join("in.json");
        let text = by_hand.replacen('{', &format!("{{ \"id\": \"{id}\","), 1);
        fs::write(&file, text).unwrap();
        let imported = shelf.import(&file).unwrap();
        assert!(document(&shelf, imported.tie.id()).is_file());
    }
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 5);
    assert_eq!(fs::read_dir(around.path()).unwrap().count(), 2);
}

#[test]
fn a_tie_from_a_clock_ahead_does_not_come_before_all_that_follow() {
    let (around, shelf) = fresh();
    let mut ahead = five_by_six();
    ahead.touched = Timestamp::MAX;
    let file = around.path().join("ahead.json");
    fs::write(&file, marlinspeak::shelf::write_tie(&ahead).unwrap()).unwrap();
    let imported = shelf.import(&file).unwrap();
    assert!(imported.tie.touched < Timestamp::MAX);
    let later = two_copies(&shelf);
    let ties = shelf.list().unwrap().untroubled().unwrap();
    assert_eq!(
        [ties[0].id(), ties[1].id()],
        [later.id(), imported.tie.id()]
    );
}

#[test]
fn a_file_that_is_not_believed_is_not_imported() {
    let (around, shelf) = fresh();
    let file = around.path().join("in.json");
    let newer = include_bytes!("../data/ties/newer.json").to_vec();
    for contents in [newer, b"{}".to_vec(), vec![b' '; 2 << 20]] {
        fs::write(&file, &contents).unwrap();
        assert!(matches!(
            shelf.import(&file),
            Err(ShelfError::File(FileError::Unreadable { .. }))
        ));
        assert_eq!(fs::read(&file).unwrap(), contents);
    }
    assert!(matches!(
        shelf.import(around.path()),
        Err(ShelfError::File(FileError::Unreadable { .. }))
    ));
    assert!(shelf.list().unwrap().untroubled().unwrap().is_empty());
}

#[test]
fn a_backup_brings_everything_back_in_its_order() {
    let (around, shelf) = fresh();
    let mut ties = [two_copies(&shelf), two_copies(&shelf), two_copies(&shelf)];
    ties.reverse();
    let bad = two_copies(&shelf);
    for copy in ["", ".previous"] {
        fs::write(shelf.folder().join(format!("{}{copy}.json", bad.id())), "{").unwrap();
    }
    fs::copy(
        "tests/data/ties/newer.json",
        shelf.folder().join("oarlock9.json"),
    )
    .unwrap();
    let file = around.path().join("backup");
    let backup = shelf.backup(&file, IfThere::Refuse).unwrap();
    let (backup, troubles) = told_of(backup);
    assert_eq!((backup.ties, backup.left_out, troubles.len()), (4, 1, 1));

    let (_elsewhere, other) = fresh();
    for fate in [ImportOutcome::Kept, ImportOutcome::AlreadyHere] {
        let restored = other.restore(&file).unwrap().untroubled().unwrap();
        assert_eq!(other.list().unwrap().untroubled().unwrap(), ties);
        assert!(restored.ties.iter().all(|tie| tie.fate == fate));
        assert_eq!(restored.missing, 0);
        assert!(matches!(
            &*restored.faults,
            [(
                _,
                DocumentError::Format(FormatError::Newer { version: 99, .. })
            )]
        ));
    }
    assert!(set_aside(shelf.folder()).is_empty());
}

#[test]
fn settings_that_cannot_be_read_are_counted_as_left_out_of_the_backup() {
    let (around, shelf) = fresh();
    two_copies(&shelf);
    let settings = around.path().join("settings.json");
    let left_out = |name: &str| {
        let backup = back_up(
            &shelf,
            Some(&settings),
            &around.path().join(name),
            IfThere::Refuse,
        );
        let (backup, troubles) = told_of(backup.unwrap());
        assert_eq!(backup.ties, 1);
        (backup.left_out, troubles.len())
    };
    assert_eq!(left_out("without"), (0, 0));
    fs::write(&settings, write_settings(&Settings::default()).unwrap()).unwrap();
    assert_eq!(left_out("with"), (0, 0));
    fs::write(&settings, "{").unwrap();
    assert_eq!(left_out("damaged"), (1, 1));
}

#[test]
fn a_backup_cut_short_gives_back_its_whole_lines() {
    let (around, shelf) = fresh();
    for _ in 0..3 {
        two_copies(&shelf);
    }
    let file = around.path().join("backup");
    shelf
        .backup(&file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    let whole = fs::read(&file).unwrap();
    let lines: Vec<&[u8]> = whole.split_inclusive(|byte| *byte == b'\n').collect();
    let cut = [lines[0], lines[1], &lines[2][..lines[2].len() / 2]].concat();
    fs::write(&file, cut).unwrap();
    let (_elsewhere, other) = fresh();
    let restored = other.restore(&file).unwrap().untroubled().unwrap();
    assert_eq!((restored.ties.len(), restored.missing), (1, 1));
    assert!(matches!(
        &*restored.faults,
        [(3, DocumentError::Format(FormatError::NotJson { .. }))]
    ));

    for head in [
        "",
        "{}",
        "[1]",
        "{\"marlinspeak\":\"backup\",\"version\":3,\"ties\":0}",
    ] {
        fs::write(&file, head).unwrap();
        assert!(
            matches!(
                other.restore(&file),
                Err(ShelfError::File(FileError::Unreadable { .. }))
            ),
            "{head}"
        );
    }
}

/// Every line has a checksum of its own, and so has the first, which says what follows: whatever byte is
/// damaged and wherever it is cut off, all of it comes back or it is told.
#[test]
fn a_damaged_backup_is_told_wherever_the_damage_is() {
    let (around, shelf) = fresh();
    let tie = two_copies(&shelf);
    shelf.log(&Entry::of(&tie)).unwrap().untroubled().unwrap();
    let tube = Tube::plain(Millimetres::new(45.0).unwrap());
    let rack = PresetsFile::beside(&shelf).keep_tube("ash", &tube).unwrap();
    rack.untroubled().unwrap();
    let order = Orders::beside(&shelf).keep(Order::default()).unwrap();
    let settings = write_settings(&Settings::default()).unwrap();
    let file = around.path().join("whole");
    let backup = shelf.backup_with(&file, IfThere::Refuse, Reading::whole(Some(settings)));
    backup.unwrap().untroubled().unwrap();
    let whole = fs::read(&file).unwrap();
    let lines: Vec<usize> = (0..whole.len()).filter(|at| whole[*at] == b'\n').collect();
    let head = lines[0];
    assert_eq!(lines.len(), 6);
    let (damaged_file, mut told) = (around.path().join("damaged"), 0);
    for at in 0..whole.len() - 1 {
        // Within a line its checksum is tried elsewhere, byte by byte.
        let is_at_an_end = lines.iter().any(|line| at.abs_diff(*line) < 3);
        if at > head && !is_at_an_end && at % 17 != 0 {
            continue;
        }
        for damaged in flipped_and_cut(&whole, at) {
            let folder = around.path().join(format!("other-{at}-{}", damaged.len()));
            fs::write(&damaged_file, damaged).unwrap();
            let other = Shelf::open(folder.join("ties")).unwrap();
            let Ok(restored) = other.restore(&damaged_file) else {
                told += 1;
                continue;
            };
            let restored = restored.untroubled().unwrap();
            if restored.missing > 0 || !restored.faults.is_empty() {
                told += 1;
                continue;
            }
            // A checksum whose name is damaged is no checksum: then nothing else is.
            let came = other.look(tie.id()).unwrap().untroubled().unwrap();
            assert_eq!((&came.plan, came.place), (&tie.plan, tie.place), "{at}");
            assert!(
                other
                    .entry(tie.id())
                    .unwrap()
                    .untroubled()
                    .unwrap()
                    .is_some()
            );
            let presets = PresetsFile::beside(&other).read().unwrap();
            assert_eq!(presets.untroubled().unwrap().tubes["ash"], tube, "{at}");
            let orders = Orders::beside(&other).look(&order.id).unwrap();
            assert_eq!(orders.untroubled().unwrap().order, order.order, "{at}");
            assert!(restored.settings.is_some(), "{at}");
        }
    }
    assert!(told > 300, "{told}");
}
