//! Newest first, one worker at a tie, and a folder that goes away.

use std::fs;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use jiff::Timestamp;
use marlinspeak::files::Reason;
use marlinspeak::shelf::{Shelf, ShelfError};

use crate::{document, five_by_six, fresh, leg, listed, previous, two_copies};

#[test]
fn the_last_one_touched_comes_first_though_the_clock_goes_back() {
    let (around, _) = fresh();
    let hour = Arc::new(AtomicI64::new(500_000));
    let clock = Arc::clone(&hour);
    let shelf = Shelf::open_with_clock(around.path().join("ties"), move || {
        Timestamp::from_second(3600 * clock.load(Ordering::Relaxed)).unwrap()
    })
    .unwrap();
    let mut begun = five_by_six();
    begun.touched = Timestamp::UNIX_EPOCH;
    let first = shelf.begin(begun.clone()).unwrap();
    let second = shelf.begin(five_by_six()).unwrap();
    assert_ne!(first.tie.id(), second.tie.id());
    for back in [0, 1, 2, 1000] {
        hour.store(500_000 - back, Ordering::Relaxed);
        for tie in [&first.tie, &second.tie, &first.tie] {
            let saved = shelf.save(tie).unwrap().untroubled().unwrap();
            let ties = shelf.list().unwrap().untroubled().unwrap();
            assert_eq!(ties[0].id(), tie.id());
            assert_eq!(ties[0].touched, saved.touched);
            assert!(ties[0].touched > ties[1].touched);
        }
    }
    // And so it does for a program started after the clock went back.
    drop((first.held, second.held));
    let later = Shelf::open_with_clock(shelf.folder(), || Timestamp::UNIX_EPOCH).unwrap();
    later.save(&second.tie).unwrap().untroubled().unwrap();
    assert_eq!(
        later.list().unwrap().untroubled().unwrap()[0].id(),
        second.tie.id()
    );
    // When the clock is right again, so are the times.
    hour.store(600_000, Ordering::Relaxed);
    let saved = shelf.save(&begun).unwrap().untroubled().unwrap();
    assert_eq!(
        saved.touched,
        Timestamp::from_second(3600 * 600_000).unwrap()
    );
}

#[test]
fn a_tie_in_hand_is_in_use_for_everybody_else_but_can_be_looked_at() {
    let (_around, shelf) = fresh();
    let other = Shelf::open(shelf.folder()).unwrap();
    let mut tie = two_copies(&shelf);
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    assert_eq!(taken.tie, tie);
    for refused in [
        other.take_up(tie.id()).map(drop),
        other.save(&tie).map(drop),
        other.rename(tie.id(), "mine").map(drop),
        other.delete(tie.id()).map(drop),
        shelf.take_up(tie.id()).map(drop),
        shelf.delete(tie.id()).map(drop),
    ] {
        assert!(matches!(refused, Err(ShelfError::InUse { id }) if id == *tie.id()));
    }
    assert!(shelf.is_in_use(tie.id()) && other.is_in_use(tie.id()));
    tie.place = leg(3);
    shelf.save(&tie).unwrap().untroubled().unwrap();
    assert_eq!(
        other.look(tie.id()).unwrap().untroubled().unwrap().place,
        leg(3)
    );
    assert_eq!(other.list().unwrap().untroubled().unwrap()[0].place, leg(3));
    drop(taken);
    assert!(!other.is_in_use(tie.id()));
    assert_eq!(
        other
            .take_up(tie.id())
            .unwrap()
            .untroubled()
            .unwrap()
            .tie
            .place,
        leg(3)
    );
}

/// Where no lock can be made, as on a disk that can be read and no more, a tie is taken up all the same,
/// with the reason. Nothing of it is saved before its lock is made up for, and nothing over what others
/// have done meanwhile.
#[test]
fn a_tie_that_cannot_be_locked_is_taken_up_and_saved_once_its_lock_is_made_up_for() {
    let (_around, shelf) = fresh();
    let other = Shelf::open(shelf.folder()).unwrap();
    let mut tie = two_copies(&shelf);
    let lock = shelf.folder().join(format!("{}.lock", tie.id()));
    let bar = || {
        let _ = fs::remove_file(&lock);
        // What no program can lock stands in its place.
        fs::create_dir(&lock).unwrap();
    };
    let is_in_use = |done: Result<(), ShelfError>| matches!(done, Err(ShelfError::InUse { .. }));
    bar();
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    assert_eq!(taken.tie, tie);
    let refused = taken.unsaved.as_ref().unwrap();
    assert_eq!(refused.reason(), Reason::NotAFile);
    assert!(
        is_in_use(shelf.take_up(tie.id()).map(drop)),
        "it is in hand"
    );
    tie.place = leg(3);
    let refused = shelf.save(&tie).map(drop).unwrap_err();
    assert_eq!(refused.reason(), Reason::NotAFile);
    fs::remove_dir(&lock).unwrap();
    let saved = shelf.save(&tie).unwrap().untroubled().unwrap();
    assert!(is_in_use(other.take_up(tie.id()).map(drop)), "locked since");
    shelf.save(&saved).unwrap().untroubled().unwrap();
    drop(taken);

    bar();
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    fs::remove_dir(&lock).unwrap();
    let mut theirs = other.take_up(tie.id()).unwrap().untroubled().unwrap();
    theirs.tie.place = leg(4);
    assert!(is_in_use(shelf.save(&taken.tie).map(drop)), "held by them");
    other.save(&theirs.tie).unwrap().untroubled().unwrap();
    drop(theirs);
    for _ in 0..2 {
        assert!(is_in_use(shelf.save(&taken.tie).map(drop)), "changed since");
    }
    let now = other.look(tie.id()).unwrap().untroubled().unwrap();
    assert_eq!(now.place, leg(4));
}

#[test]
fn damage_to_a_tie_in_hand_is_told_of_and_left_to_its_holder() {
    let (_around, shelf) = fresh();
    let other = Shelf::open(shelf.folder()).unwrap();
    let tie = two_copies(&shelf);
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    fs::write(document(&shelf, tie.id()), "rubbish").unwrap();
    for shelf in [&other, &shelf] {
        let (ties, troubles) = listed(shelf);
        assert_eq!(ties[0].place, leg(1));
        assert_eq!(troubles[0].moved_to, None);
    }
    assert_eq!(fs::read(document(&shelf, tie.id())).unwrap(), b"rubbish");
    drop(taken);
    assert!(listed(&other).1[0].moved_to.is_some());
}

#[test]
fn a_folder_deleted_meanwhile_is_made_again_and_the_tie_is_still_held() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    fs::remove_dir_all(shelf.folder()).unwrap();
    assert!(shelf.list().unwrap().untroubled().unwrap().is_empty());
    shelf.save(&taken.tie).unwrap().untroubled().unwrap();
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 1);
    let other = Shelf::open(shelf.folder()).unwrap();
    assert!(matches!(
        other.take_up(tie.id()),
        Err(ShelfError::InUse { .. })
    ));
}

#[test]
fn taking_up_sweeps_what_an_interrupted_save_left() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let id = tie.id();
    let leftover = shelf.folder().join(format!(".{id}.json.Ab12Cd.tmp"));
    let link = shelf.folder().join(format!(".{id}.previous.json.link.tmp"));
    let foreign = shelf.folder().join(".other99.json.Ab12Cd.tmp");
    for file in [&leftover, &link, &foreign] {
        fs::write(file, "half").unwrap();
    }
    let taken = shelf.take_up(id).unwrap().untroubled().unwrap();
    assert!(!leftover.exists() && !link.exists() && foreign.exists());
    fs::write(&link, "half").unwrap();
    let before = fs::read(document(&shelf, id)).unwrap();
    shelf.save(&taken.tie).unwrap().untroubled().unwrap();
    assert_eq!(fs::read(previous(&shelf, id)).unwrap(), before);
    assert!(!link.exists());
}

#[test]
fn the_name_of_the_file_and_not_what_stands_in_it_says_which_tie_it_is() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let copied = shelf.folder().join("handcopy.json");
    fs::copy(document(&shelf, tie.id()), &copied).unwrap();
    let (ties, troubles) = listed(&shelf);
    assert!(troubles.is_empty());
    assert_eq!(ties.len(), 2);
    assert!(ties.iter().any(|tie| tie.id().as_str() == "handcopy"));
    fs::copy(&copied, shelf.folder().join("Copy of it.json")).unwrap();
    let troubles = listed(&shelf).1;
    assert!(matches!(&troubles[0].error, ShelfError::Stranger { .. }));
}
