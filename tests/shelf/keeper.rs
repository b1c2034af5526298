//! Saving behind the caller's back.

use std::fs;
use std::sync::mpsc::{Receiver, channel};
use std::time::Duration;

use marlinspeak::files::FileError;
use marlinspeak::shelf::{Keeper, Kept, Shelf, ShelfError, TieId};

use crate::told_of::told_of;
use crate::{document, five_by_six, fresh, leg, previous, two_copies};

/// Far longer than anything here takes.
const DEADLINE: Duration = Duration::from_secs(30);

fn start(shelf: &Shelf) -> (Keeper, Receiver<Kept>) {
    let (tell, told) = channel();
    let keeper = Keeper::start(shelf.clone(), move |kept| {
        // The test may have heard enough.
        let _ = tell.send(kept);
    });
    (keeper.unwrap(), told)
}

fn saved(told: &Receiver<Kept>) -> TieId {
    match told.recv_timeout(DEADLINE).unwrap() {
        Kept::Saved { id, .. } => id,
        Kept::SetAside(found) => panic!("{found:?}"),
        Kept::Failed { error, .. } => panic!("{error}"),
    }
}

#[test]
fn a_kept_tie_is_on_disk_when_it_is_said_to_be() {
    let (_around, shelf) = fresh();
    let (keeper, told) = start(&shelf);
    let mut tie = five_by_six();
    for number in 1..=12 {
        tie.place = leg(number);
        keeper.keep(tie.clone());
        assert_eq!(saved(&told), *tie.id());
        assert_eq!(
            shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
            leg(number)
        );
    }
}

#[test]
fn only_the_newest_state_of_each_tie_is_written_in_the_order_asked_for() {
    let (_around, shelf) = fresh();
    let (tell, told) = channel();
    let (open, gate) = channel::<()>();
    // The keeper is kept busy at its first save until the gate opens.
    let keeper = Keeper::start(shelf.clone(), move |kept| {
        tell.send(kept).unwrap();
        gate.recv_timeout(DEADLINE).unwrap();
    })
    .unwrap();
    let [busy, mut one, mut other] = [five_by_six(), five_by_six(), five_by_six()];
    keeper.keep(busy.clone());
    assert_eq!(saved(&told), *busy.id());
    for number in 1..=12 {
        one.place = leg(number);
        other.place = leg(13 - number);
        keeper.keep(one.clone());
        keeper.keep(other.clone());
    }
    for _ in 0..3 {
        open.send(()).unwrap();
    }
    assert_eq!(saved(&told), *one.id());
    assert_eq!(saved(&told), *other.id());
    assert!(keeper.flush(DEADLINE));
    assert!(
        told.try_recv().is_err(),
        "a state that was overtaken is written too"
    );
    assert_eq!(
        shelf.look(one.id()).unwrap().untroubled().unwrap().place,
        leg(12)
    );
    assert_eq!(
        shelf.look(other.id()).unwrap().untroubled().unwrap().place,
        leg(1)
    );
}

#[test]
fn what_cannot_be_saved_is_told_of_and_tried_until_it_can() {
    let (around, shelf) = fresh();
    let (keeper, told) = start(&shelf);
    fs::remove_dir(shelf.folder()).unwrap();
    fs::write(shelf.folder(), "a file in the place of the folder").unwrap();
    let mut tie = five_by_six();
    keeper.keep(tie.clone());
    let mut attempts = 0;
    while attempts < 2 {
        // The second time comes by itself.
        match told.recv_timeout(DEADLINE).unwrap() {
            Kept::Failed {
                id,
                error,
                attempts: so_far,
            } => {
                assert_eq!(id, *tie.id());
                assert!(matches!(error, ShelfError::File(FileError::Io { .. })));
                assert_eq!(so_far, attempts + 1);
                attempts = so_far;
            }
            kept => panic!("{kept:?} into a file"),
        }
    }
    assert!(!keeper.flush(Duration::ZERO));
    // A newer state takes the place of the one that failed, another tie joins it.
    tie.place = leg(2);
    let other = five_by_six();
    fs::rename(shelf.folder(), around.path().join("out of the way")).unwrap();
    keeper.keep(tie.clone());
    keeper.keep(other.clone());
    assert!(keeper.flush(DEADLINE));
    assert_eq!(
        shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
        leg(2)
    );
    assert!(shelf.look(other.id()).is_ok());
}

#[test]
fn what_failed_is_saved_by_itself_when_it_can_be() {
    let (_around, shelf) = fresh();
    let (keeper, told) = start(&shelf);
    let tie = two_copies(&shelf);
    let held = Shelf::open(shelf.folder())
        .unwrap()
        .take_up(tie.id())
        .unwrap()
        .untroubled()
        .unwrap()
        .held;
    let mut newer = tie.clone();
    newer.place = leg(7);
    keeper.keep(newer);
    assert!(matches!(
        told.recv_timeout(DEADLINE).unwrap(),
        Kept::Failed {
            error: ShelfError::InUse { .. },
            ..
        }
    ));
    drop(held);
    loop {
        match told.recv_timeout(DEADLINE).unwrap() {
            Kept::Saved { .. } => break,
            Kept::SetAside(found) => panic!("{found:?}"),
            Kept::Failed { error, .. } => assert!(matches!(error, ShelfError::InUse { .. })),
        }
    }
    assert_eq!(
        shelf.look(tie.id()).unwrap().untroubled().unwrap().place,
        leg(7)
    );
}

#[test]
fn what_a_save_finds_damaged_in_its_place_is_set_aside_and_told_once() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    for damaged in [document(&shelf, tie.id()), previous(&shelf, tie.id())] {
        fs::write(&damaged, "rubbish").unwrap();
        let (keeper, told) = start(&shelf);
        keeper.keep(tie.clone());
        let Kept::SetAside(found) = told.recv_timeout(DEADLINE).unwrap() else {
            panic!("nothing is told of {}", damaged.display());
        };
        let ((), troubles) = told_of(found);
        let [trouble] = &troubles[..] else {
            panic!("{troubles:?}");
        };
        let aside = trouble.moved_to.as_deref().unwrap();
        assert_eq!(fs::read(aside).unwrap(), b"rubbish");
        assert_eq!(saved(&told), *tie.id());
        keeper.keep(tie.clone());
        assert_eq!(saved(&told), *tie.id());
    }
}

#[test]
fn letting_go_of_the_keeper_saves_what_is_waiting() {
    let (_around, shelf) = fresh();
    let (keeper, _told) = start(&shelf);
    let ties: Vec<_> = (0..5).map(|_| five_by_six()).collect();
    for tie in &ties {
        keeper.keep(tie.clone());
    }
    drop(keeper);
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 5);
}

#[test]
fn a_tie_put_away_is_held_until_its_last_state_is_saved() {
    let (_around, shelf) = fresh();
    let other = Shelf::open(shelf.folder()).unwrap();
    let tie = two_copies(&shelf);
    let mut taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    let (keeper, told) = start(&shelf);
    fs::rename(shelf.folder(), shelf.folder().with_extension("away")).unwrap();
    fs::write(shelf.folder(), "in the way").unwrap();
    taken.tie.place = leg(8);
    keeper.keep(taken.tie);
    keeper.put_away(taken.held);
    assert!(matches!(
        told.recv_timeout(DEADLINE).unwrap(),
        Kept::Failed { .. }
    ));
    assert!(shelf.is_in_use(tie.id()));
    fs::remove_file(shelf.folder()).unwrap();
    fs::rename(shelf.folder().with_extension("away"), shelf.folder()).unwrap();
    assert!(keeper.flush(DEADLINE));
    assert_eq!(
        other
            .take_up(tie.id())
            .unwrap()
            .untroubled()
            .unwrap()
            .tie
            .place,
        leg(8)
    );
}

#[test]
fn a_tie_put_away_with_nothing_to_save_is_free_at_once() {
    let (_around, shelf) = fresh();
    let (keeper, _told) = start(&shelf);
    let tie = two_copies(&shelf);
    keeper.put_away(shelf.take_up(tie.id()).unwrap().untroubled().unwrap().held);
    assert!(keeper.flush(DEADLINE));
    assert!(!shelf.is_in_use(tie.id()));
}

#[test]
fn a_listener_that_panics_does_not_cost_the_next_save() {
    let (_around, shelf) = fresh();
    let keeper = Keeper::start(shelf.clone(), |_| panic!("a listener's own fault")).unwrap();
    for _ in 0..3 {
        keeper.keep(five_by_six());
        assert!(keeper.flush(DEADLINE));
    }
    assert_eq!(shelf.list().unwrap().untroubled().unwrap().len(), 3);
}
