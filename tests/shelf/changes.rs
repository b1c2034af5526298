//! Renaming, copying, deleting and having back.

use std::fs;

use marlinspeak::shelf::ShelfError;

use crate::{document, five_by_six, fresh, leg, previous, two_copies};

#[test]
fn a_renamed_tie_keeps_its_place_among_the_others() {
    let (_around, shelf) = fresh();
    let (older, newer) = (two_copies(&shelf), two_copies(&shelf));
    shelf
        .rename(older.id(), "boathook")
        .unwrap()
        .untroubled()
        .unwrap();
    shelf
        .note(older.id(), "wax it")
        .unwrap()
        .untroubled()
        .unwrap();
    let ties = shelf.list().unwrap().untroubled().unwrap();
    assert_eq!([ties[0].id(), ties[1].id()], [newer.id(), older.id()]);
    assert_eq!((&*ties[1].name, &*ties[1].note), ("boathook", "wax it"));
    assert_eq!(ties[1].place, leg(2));
}

#[test]
fn a_copy_begins_the_same_knot_again() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    shelf
        .note(tie.id(), "wax it")
        .unwrap()
        .untroubled()
        .unwrap();
    let copy = shelf.copy(tie.id(), leg(1)).unwrap().untroubled().unwrap();
    assert_ne!(copy.id(), tie.id());
    assert_eq!(
        (&copy.plan, &copy.place, &*copy.note),
        (&tie.plan, &leg(1), "wax it")
    );
    assert!(copy.begun >= tie.begun);
    assert_eq!(
        shelf.list().unwrap().untroubled().unwrap(),
        [copy, shelf.look(tie.id()).unwrap().untroubled().unwrap()]
    );
}

#[test]
fn a_deleted_tie_can_be_had_back_with_its_previous_copy() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let copies = [document(&shelf, tie.id()), previous(&shelf, tie.id())];
    let before = copies.each_ref().map(|file| fs::read(file).unwrap());
    for _ in 0..2 {
        let deleted = shelf.delete(tie.id()).unwrap();
        assert!(shelf.list().unwrap().untroubled().unwrap().is_empty());
        assert!(matches!(
            shelf.look(tie.id()),
            Err(ShelfError::NoSuchTie { .. })
        ));
        assert!(matches!(
            shelf.delete(tie.id()),
            Err(ShelfError::NoSuchTie { .. })
        ));
        assert_eq!(shelf.deleted().unwrap(), std::slice::from_ref(&deleted));
        assert_eq!(
            shelf.undo_delete(&deleted).unwrap().untroubled().unwrap(),
            *tie.id()
        );
        assert_eq!(
            copies.each_ref().map(|file| fs::read(file).unwrap()),
            before
        );
        assert!(shelf.deleted().unwrap().is_empty());
        assert!(matches!(
            shelf.undo_delete(&deleted),
            Err(ShelfError::NoSuchTie { .. })
        ));
    }
}

#[test]
fn a_tie_had_back_does_not_replace_the_one_that_took_its_id() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let deleted = shelf.delete(tie.id()).unwrap();
    let mut second = tie.clone();
    second.place = leg(9);
    drop(shelf.begin(second).unwrap());
    let second_deleted = shelf.delete(tie.id()).unwrap();
    assert_eq!(
        shelf.deleted().unwrap(),
        [deleted.clone(), second_deleted.clone()]
    );
    assert_eq!(
        shelf
            .undo_delete(&second_deleted)
            .unwrap()
            .untroubled()
            .unwrap(),
        *tie.id()
    );
    let back = shelf.undo_delete(&deleted).unwrap().untroubled().unwrap();
    assert_ne!(back, *tie.id());
    assert_eq!(
        shelf.look(&back).unwrap().untroubled().unwrap().place,
        leg(2)
    );
    assert_eq!(
        shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
        leg(9)
    );
}

#[test]
fn a_tie_begun_twice_is_two_ties() {
    let (_around, shelf) = fresh();
    let tie = five_by_six();
    let first = shelf.begin(tie.clone()).unwrap();
    let second = shelf.begin(tie.clone()).unwrap();
    assert_eq!(first.tie.id(), tie.id());
    assert_ne!(second.tie.id(), tie.id());
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 2);
    // Nor does a new tie take the place of one of which only the previous copy is left.
    drop((first, second));
    shelf.save(&tie).unwrap().untroubled().unwrap();
    fs::remove_file(document(&shelf, tie.id())).unwrap();
    assert_ne!(shelf.begin(tie.clone()).unwrap().tie.id(), tie.id());
}
