//! What is not believed is set aside, told of and never overwritten.

use std::fs;

use marlinspeak::files::{FileError, FormatError, LARGEST_DOCUMENT};
use marlinspeak::shelf::{
    CopyBefore, DocumentError, DocumentState, Presses, Shelf, ShelfError, Tie, read_tie, write_tie,
};

use crate::damaged::flipped;
use crate::told_of::told_of;
use crate::{document, five_by_six, fresh, leg, listed, previous, set_aside, two_copies};

/// Puts `damaged` in the place of the newest copy and asks the shelf for the tie.
///
/// Either the shelf believes it, then it must say what was saved, or it goes back to the
/// previous copy, says so, and keeps the damaged bytes.
fn open_damaged(shelf: &Shelf, saved: &Tie, damaged: &[u8]) {
    let file = document(shelf, saved.id());
    let before = set_aside(shelf.folder()).len();
    fs::write(&file, damaged).unwrap();
    let (ties, troubles) = listed(shelf);
    match troubles.as_slice() {
        [] => {
            let [tie] = ties.as_slice() else {
                panic!("a tie is lost without a word");
            };
            assert_same_work(tie, saved);
            assert_eq!(fs::read(&file).unwrap(), damaged);
        }
        [trouble] => {
            let [tie] = ties.as_slice() else {
                panic!("the previous copy is not used");
            };
            assert!(trouble.copy_used.is_some());
            assert_eq!(tie.place, leg(1));
            assert_eq!(
                fs::read(trouble.moved_to.as_ref().unwrap()).unwrap(),
                damaged
            );
            assert_eq!(
                fs::read(&file).unwrap(),
                fs::read(previous(shelf, saved.id())).unwrap()
            );
            assert_eq!(set_aside(shelf.folder()).len(), before + 1);
            assert!(listed(shelf).1.is_empty());
            fs::remove_file(trouble.moved_to.as_ref().unwrap()).unwrap();
        }
        troubles => panic!("{troubles:?}"),
    }
}

fn assert_same_work(tie: &Tie, saved: &Tie) {
    assert_eq!(tie.id(), saved.id());
    assert_eq!(
        (
            &tie.name,
            &tie.note,
            &tie.plan,
            &tie.place,
            tie.begun,
            tie.touched
        ),
        (
            &saved.name,
            &saved.note,
            &saved.plan,
            &saved.place,
            saved.begun,
            saved.touched
        )
    );
}

#[test]
fn a_document_cut_short_anywhere_gives_way_to_the_copy_before_it() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let whole = fs::read(document(&shelf, tie.id())).unwrap();
    for length in 0..whole.len() {
        open_damaged(&shelf, &tie, &whole[..length]);
        // Only the line break after the last brace may be missing.
        assert_eq!(
            read_tie(&whole[..length]).is_ok(),
            length == whole.len() - 1
        );
    }
}

#[test]
fn a_flipped_byte_anywhere_gives_way_to_the_copy_before_it() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let whole = fs::read(document(&shelf, tie.id())).unwrap();
    for at in 0..whole.len() {
        let damaged = flipped(&whole, at);
        open_damaged(&shelf, &tie, &damaged);
    }
}

#[test]
fn how_far_the_copy_before_is_behind_is_told_wherever_the_damage_is() {
    let (_around, shelf) = fresh();
    let mut tie = shelf.begin(five_by_six()).unwrap().tie;
    tie.place = leg(2);
    tie.presses = Presses(3);
    let mut tie = shelf.save(&tie).unwrap().untroubled().unwrap();
    tie.place = leg(9);
    tie.presses = Presses(12);
    let tie = shelf.save(&tie).unwrap().untroubled().unwrap();
    let file = document(&shelf, tie.id());
    let (whole, before) = (
        fs::read(&file).unwrap(),
        fs::read(previous(&shelf, tie.id())).unwrap(),
    );
    let mut told = 0;
    for at in 0..whole.len() {
        let damaged = flipped(&whole, at);
        fs::write(&file, &damaged).unwrap();
        let (ties, troubles) = listed(&shelf);
        if let [trouble] = &troubles[..] {
            assert_eq!(ties[0].place, leg(2));
            match trouble.copy_used.unwrap() {
                CopyBefore::PressesBehind(presses) => {
                    assert_eq!(presses, 9);
                    told += 1;
                }
                CopyBefore::SomeWayBehind => {
                    let presses = String::from_utf8_lossy(&whole).find("\"presses\"").unwrap();
                    assert!((presses..presses + 40).contains(&at), "not told at {at}");
                }
                CopyBefore::AsKeptBefore => panic!("a tie has presses"),
            }
            fs::remove_file(trouble.moved_to.as_ref().unwrap()).unwrap();
        } else {
            assert!(troubles.is_empty());
            assert_eq!(ties[0].place, leg(9));
        }
        fs::write(previous(&shelf, tie.id()), &before).unwrap();
    }
    assert!(told > whole.len() * 4 / 5, "told {told} of {}", whole.len());
}

#[test]
fn no_flipped_bit_changes_what_a_believed_document_says() {
    let mut tie = five_by_six();
    "collar \"é\"".clone_into(&mut tie.name);
    let whole = write_tie(&tie).unwrap();
    let mut refused = 0;
    for at in 0..whole.len() {
        for mask in [1, 2, 4, 8, 16, 32, 64, 128, 255] {
            let mut damaged = whole.clone();
            damaged[at] ^= mask;
            match read_tie(&damaged) {
                Ok(read) => assert_same_work(&read, &tie),
                Err(_) => refused += 1,
            }
        }
    }
    assert!(refused > 8 * whole.len(), "{refused}");
}

#[test]
fn rubbish_is_refused_whatever_its_kind() {
    let whole = String::from_utf8(write_tie(&five_by_six()).unwrap()).unwrap();
    let unchecked: Vec<&str> = whole
        .lines()
        .filter(|line| !line.contains("checksum"))
        .collect();
    let unchecked = unchecked.join("\n").replace("\",\n}", "\"\n}");
    read_tie(unchecked.as_bytes()).unwrap();
    let deep = format!(
        "{{\"version\":1,\"a\":{}{}}}",
        "[".repeat(5000),
        "]".repeat(5000)
    );
    for (from, to) in [
        ("\"leads\": 5", "\"leads\": \"5\""),
        ("\"leads\": 5", "\"leads\": 5.5"),
        ("\"leads\": 5", "\"leads\": -5"),
        ("\"leads\": 5", "\"leads\": 1"),
        ("\"leads\": 5", "\"leads\": 1000"),
        ("\"leads\": 5", "\"leads\": 99999999999999999999999999"),
        ("\"leads\": 5", "\"leads\": 1e400"),
        ("\"bights\": 6", "\"bights\": 65536"),
        ("\"passes\": 2", "\"passes\": 10"),
        ("\"weave\": \"1\"", "\"weave\": \"9\""),
        ("\"weave\": \"1\"", "\"weave\": \"over\""),
        ("\"weave\": \"1\"", "\"weave\": 1"),
        ("\"side\": \"right\"", "\"side\": \"inside\""),
        ("\"order\": \"pass-by-pass\"", "\"order\": null"),
        ("\"phase\": \"lead\"", "\"phase\": \"\""),
        ("\"phase\": \"lead\"", "\"phase\": \"Lead/../..\""),
        ("\"pass\": 1", "\"pass\": 3"),
        ("\"strand\": 1", "\"strand\": 2"),
        ("\"leg\": 1", "\"leg\": -1"),
        ("\"leg\": 1", "\"leg\": 13"),
        ("\"crossing\": 0", "\"crossing\": 5"),
        ("\"begun\": \"2", "\"begun\": \"in spring, 2"),
        ("\"version\": 1", "\"version\": \"1\""),
        ("\"version\": 1", "\"version\": -1"),
        ("\"version\": 1", "\"edition\": 1"),
        ("\"name\": \"\"", "\"name\": [\"\"]"),
        ("\"name\": \"\"", "\"name\": \"\\ud800\""),
        ("\"name\": \"\"", "\"name\": \"\", \"checksum\": 7"),
        (
            "\"name\": \"\"",
            "\"name\": \"\", \"checksum\": \"crc32:00000000\"",
        ),
    ] {
        let broken = unchecked.replacen(from, to, 1);
        assert_ne!(broken, unchecked, "{from} is not in the document");
        assert!(read_tie(broken.as_bytes()).is_err(), "{to}");
    }
    for rubbish in ["", "null", "[]", "7", "{}", "\0\0\0\0", &deep] {
        assert!(read_tie(rubbish.as_bytes()).is_err());
    }
}

#[test]
fn megabytes_of_rubbish_are_set_aside_unread() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let rubbish = vec![b'['; 5 << 20];
    fs::write(document(&shelf, tie.id()), &rubbish).unwrap();
    let (ties, troubles) = listed(&shelf);
    assert_eq!(ties[0].place, leg(1));
    let ShelfError::File(FileError::Unreadable { fault, .. }) = &troubles[0].error else {
        panic!("{troubles:?}");
    };
    assert_eq!(
        *fault,
        DocumentError::Format(FormatError::TooLarge {
            bytes: 5 << 20,
            limit: LARGEST_DOCUMENT
        })
    );
    assert_eq!(set_aside(shelf.folder()), [rubbish]);
}

#[test]
fn when_both_copies_are_damaged_both_are_kept_and_told_of() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    fs::write(document(&shelf, tie.id()), "one").unwrap();
    fs::write(previous(&shelf, tie.id()), "two").unwrap();
    assert!(shelf.look(tie.id()).is_err());
    let (ties, troubles) = listed(&shelf);
    assert!(ties.is_empty());
    assert_eq!(troubles.len(), 2);
    assert!(troubles.iter().all(|trouble| trouble.copy_used.is_none()));
    assert_eq!(set_aside(shelf.folder()), [b"one", b"two"]);
}

#[test]
fn a_missing_document_is_had_back_from_the_copy_before_it() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    fs::remove_file(document(&shelf, tie.id())).unwrap();
    let (ties, troubles) = listed(&shelf);
    assert_eq!(ties[0].place, leg(1));
    assert!(matches!(
        troubles[0].error,
        ShelfError::File(FileError::Gone { .. })
    ));
    assert!(troubles[0].copy_used.is_some());
    assert!(document(&shelf, tie.id()).exists());
}

#[test]
fn saving_over_a_damaged_document_keeps_it_and_the_good_copy() {
    let (_around, shelf) = fresh();
    let mut tie = two_copies(&shelf);
    for (number, rubbish) in ["one", "two"].into_iter().enumerate() {
        fs::write(document(&shelf, tie.id()), rubbish).unwrap();
        let good = fs::read(previous(&shelf, tie.id())).unwrap();
        tie.place = leg(3);
        let (_, troubles) = told_of(shelf.save(&tie).unwrap());
        assert_eq!(troubles.len(), 1, "{troubles:?}");
        assert_eq!(
            shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
            leg(3)
        );
        assert_eq!(fs::read(previous(&shelf, tie.id())).unwrap(), good);
        assert_eq!(set_aside(shelf.folder()).len(), number + 1);
    }
    assert_eq!(set_aside(shelf.folder()), [b"one", b"two"]);
}

#[test]
fn a_damaged_previous_copy_is_not_overwritten_either() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    fs::write(previous(&shelf, tie.id()), "rubbish").unwrap();
    let (_, troubles) = told_of(shelf.save(&tie).unwrap());
    assert!(troubles[0].moved_to.is_some(), "{troubles:?}");
    assert_eq!(set_aside(shelf.folder()), [b"rubbish"]);
}

#[test]
fn a_newer_document_is_refused_by_name_and_left_alone() {
    let (_around, shelf) = fresh();
    let mut tie = two_copies(&shelf);
    let newer = include_bytes!("../data/ties/newer.json");
    let file = document(&shelf, tie.id());
    fs::write(&file, newer).unwrap();
    let (ties, troubles) = listed(&shelf);
    // The previous copy is older than what the newer program wrote.
    assert!(ties.is_empty());
    let said = troubles[0].error.to_string();
    assert!(
        said.contains(file.to_str().unwrap()) && said.contains("version 99"),
        "{said}"
    );
    tie.place = leg(4);
    for error in [
        shelf.save(&tie).unwrap_err(),
        shelf.take_up(tie.id()).unwrap_err(),
        shelf.rename(tie.id(), "x").unwrap_err(),
        shelf.look(tie.id()).unwrap_err(),
    ] {
        assert!(error.is_newer(), "{error}");
    }
    assert_eq!(fs::read(&file).unwrap(), newer);
    assert!(set_aside(shelf.folder()).is_empty());
}

#[test]
fn a_folder_or_a_file_in_the_way_is_an_error_and_not_a_panic() {
    let (around, shelf) = fresh();
    let tie = two_copies(&shelf);
    fs::remove_file(document(&shelf, tie.id())).unwrap();
    fs::create_dir(document(&shelf, tie.id())).unwrap();
    let (ties, troubles) = listed(&shelf);
    assert!(matches!(
        &troubles[0].error,
        ShelfError::File(FileError::Unreadable {
            fault: DocumentError::Format(FormatError::NotAFile),
            ..
        })
    ));
    assert_eq!(ties[0].place, leg(1));

    let taken = around.path().join("taken");
    fs::write(&taken, "a file").unwrap();
    assert!(matches!(
        Shelf::open(&taken),
        Err(ShelfError::File(FileError::Io { .. }))
    ));
    assert!(matches!(
        Shelf::open(taken.join("in it")),
        Err(ShelfError::File(FileError::Io { .. }))
    ));
    assert_eq!(fs::read(&taken).unwrap(), b"a file");
}

#[cfg(unix)]
#[test]
fn a_pipe_in_the_place_of_a_document_keeps_nobody_waiting() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let file = document(&shelf, tie.id());
    fs::remove_file(&file).unwrap();
    let made = std::process::Command::new("mkfifo").arg(&file).status();
    assert!(made.unwrap().success());
    let (ties, troubles) = listed(&shelf);
    assert_eq!((ties[0].place, troubles.len()), (leg(1), 1));
}

#[test]
fn verify_tells_whole_from_unchecked_from_bad_and_changes_nothing() {
    let (_around, shelf) = fresh();
    let (whole, bad) = (two_copies(&shelf), two_copies(&shelf));
    fs::write(document(&shelf, bad.id()), "rubbish").unwrap();
    let by_hand = shelf.folder().join("byhand.json");
    fs::copy("tests/data/ties/by-hand.json", &by_hand).unwrap();
    let aside = shelf.folder().join("byhand.damaged-1.json");
    fs::write(&aside, "rubbish").unwrap();
    let stranger = shelf.folder().join("My Knots.json");
    fs::write(&stranger, "rubbish").unwrap();
    let verified = shelf.verify().unwrap();
    let state_of = |file| &verified.iter().find(|one| one.file == file).unwrap().state;
    assert_eq!(verified.len(), 7);
    assert!(matches!(
        state_of(document(&shelf, whole.id())),
        DocumentState::Whole
    ));
    assert!(matches!(
        state_of(previous(&shelf, bad.id())),
        DocumentState::Whole
    ));
    assert!(matches!(
        state_of(document(&shelf, bad.id())),
        DocumentState::Bad(ShelfError::File(FileError::Unreadable { .. }))
    ));
    assert!(matches!(state_of(by_hand), DocumentState::Unchecked));
    assert!(matches!(state_of(aside), DocumentState::SetAside));
    assert!(matches!(
        state_of(stranger),
        DocumentState::Bad(ShelfError::Stranger { .. })
    ));
    assert_eq!(fs::read(document(&shelf, bad.id())).unwrap(), b"rubbish");
}
