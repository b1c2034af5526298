//! Ties handed over as a file, and backups.

use std::fs;

use jiff::Timestamp;
use marlinspeak::files::{FileError, FormatError};
use marlinspeak::shelf::{DocumentError, IfThere, ImportOutcome, ShelfError};

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
