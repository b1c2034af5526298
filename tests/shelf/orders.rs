//! Orders: kept as safely as the ties.

use std::fs;
use std::thread;

use marlinspeak::files::{ContentError as _, Reading, Reason};
use marlinspeak::guide::{Order, PieceField};
use marlinspeak::shelf::{
    CopyBefore, DocumentState, IfThere, KeptOrder, Orders, Shelf, ShelfError, read_order,
};
use serde_json::{Value, json};

use crate::damaged::flipped_and_cut;
use crate::fresh;
use crate::told_of::told_of;

/// An order of so many rings.
fn rings(count: &str) -> Order {
    let mut order = Order {
        name: "the club".to_owned(),
        ..Order::default()
    };
    let piece = order.add();
    for (field, text) in [
        (PieceField::Count, count),
        (PieceField::Leads, "4"),
        (PieceField::Bights, "7"),
    ] {
        piece.say(field, text);
    }
    order
}

/// An order of nine rings whose copy before it has four.
fn two_copies(orders: &Orders) -> KeptOrder {
    let kept = orders.keep(rings("4")).unwrap();
    let changed = orders
        .change(&kept.id, |order| *order = rings("9"))
        .unwrap();
    changed.untroubled().unwrap()
}

#[test]
fn every_flipped_byte_and_every_cut_is_told_and_gives_way_to_the_copy_before() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    let file = orders.file(&kept.id).path().to_owned();
    let whole = fs::read(&file).unwrap();
    let mut told = 0;
    for at in 0..whole.len() - 1 {
        for damaged in flipped_and_cut(&whole, at) {
            fs::write(&file, &damaged).unwrap();
            let (found, troubles) = told_of(orders.look(&kept.id).unwrap());
            if let [trouble] = &troubles[..] {
                assert_eq!(trouble.copy_used, Some(CopyBefore::AsKeptBefore));
                assert_eq!(found.order, rings("4"), "{at}");
                told += 1;
            } else {
                assert!(troubles.is_empty());
                assert_eq!(found.order, rings("9"), "{at}");
            }
            let verified = shelf.verify().unwrap();
            let is_whole = verified
                .iter()
                .all(|one| matches!(one.state, DocumentState::Whole));
            assert!(!is_whole || troubles.is_empty(), "{at}");
        }
    }
    assert!(told > whole.len(), "most of it is damage");
}

#[test]
fn what_is_damaged_is_set_aside_when_the_orders_are_listed_and_is_never_lost() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    let file = orders.file(&kept.id);
    fs::write(file.path(), "no order").unwrap();
    let (listed, troubles) = told_of(orders.list().unwrap());
    assert_eq!(listed[0].order, rings("4"));
    let aside = troubles[0].moved_to.as_ref().unwrap();
    assert_eq!(fs::read(aside).unwrap(), b"no order");
    let (listed, troubles) = told_of(orders.list().unwrap());
    assert_eq!((listed.len(), troubles.len()), (1, 0));
    // Whoever changes one that is damaged changes the copy before, and is told.
    fs::write(file.path(), "again").unwrap();
    let (changed, troubles) = told_of(
        orders
            .change(&kept.id, |order| order.note.push_str("mended"))
            .unwrap(),
    );
    assert_eq!((&*changed.order.note, troubles.len()), ("mended", 1));
}

#[test]
fn what_many_change_at_once_is_all_there() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = orders.keep(Order::default()).unwrap();
    thread::scope(|scope| {
        for number in 0..20 {
            let (orders, id) = (Orders::beside(&shelf), kept.id.clone());
            scope.spawn(move || {
                let changed = orders.change(&id, |order| {
                    let name = format!("piece {number}");
                    order.add().say(PieceField::Name, name);
                });
                changed.unwrap().untroubled().unwrap();
            });
        }
    });
    let order = orders.look(&kept.id).unwrap().untroubled().unwrap().order;
    let mut numbers: Vec<u16> = order.pieces.iter().map(|piece| piece.number).collect();
    numbers.sort_unstable();
    assert_eq!(numbers, (1..=20).collect::<Vec<u16>>());
    let mut names: Vec<&str> = order
        .pieces
        .iter()
        .map(|piece| piece.text(PieceField::Name))
        .collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), 20);
}

#[test]
fn they_go_into_a_backup_and_come_back_once() {
    let (around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    orders.keep(rings("2")).unwrap();
    let file = around.path().join("backup");
    let settings = Reading::whole(Some(b"{\"version\": 1}".to_vec()));
    let backup = shelf.backup_with(&file, IfThere::Refuse, settings);
    assert_eq!(backup.unwrap().untroubled().unwrap().orders, 2);
    let other = Shelf::open(around.path().join("elsewhere/ties")).unwrap();
    for came in [2, 0] {
        let restored = other.restore(&file).unwrap().untroubled().unwrap();
        assert_eq!((restored.orders, restored.missing), (came, 0));
        assert!(restored.faults.is_empty());
        assert!(restored.settings.is_some(), "they still come");
    }
    let there = Orders::beside(&other);
    let found = there.look(&kept.id).unwrap().untroubled().unwrap();
    assert_eq!(found, kept);
    assert_eq!(there.list().unwrap().untroubled().unwrap().len(), 2);
}

#[test]
fn a_newer_one_is_refused_and_left_alone_and_what_is_not_known_stays() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    let file = orders.file(&kept.id).path().to_owned();
    let newer = json!({ "version": 2, "pieces": [] }).to_string();
    let whole = fs::read(&file).unwrap();
    fs::write(&file, &newer).unwrap();
    let refused = orders.change(&kept.id, |order| order.pieces.clear());
    assert!(refused.unwrap_err().is_newer());
    assert_eq!(fs::read_to_string(&file).unwrap(), newer);
    let mut fields: Value = serde_json::from_slice(&whole).unwrap();
    fields.as_object_mut().unwrap().remove("checksum");
    fields["weather"] = "rain".into();
    fields["pieces"][0]["dye"] = "tan bark".into();
    fs::write(&file, fields.to_string()).unwrap();
    let changed = orders.change(&kept.id, |order| order.name = "rain".to_owned());
    changed.unwrap().untroubled().unwrap();
    let written: Value = serde_json::from_slice(&fs::read(&file).unwrap()).unwrap();
    assert_eq!(
        (&written["weather"], &written["name"]),
        (&json!("rain"), &json!("rain"))
    );
    assert_eq!(written["pieces"][0]["dye"], "tan bark");
}

#[test]
fn a_piece_without_a_number_gets_one_that_nobody_has() {
    let document = json!({ "version": 1, "pieces": [{}, { "number": 1 }, { "number": 1 }, {}] });
    let order = read_order(document.to_string().as_bytes()).unwrap().order;
    let numbers: Vec<u16> = order.pieces.iter().map(|piece| piece.number).collect();
    assert_eq!(numbers, [2, 1, 3, 4]);
}

#[test]
fn one_that_is_gone_cannot_be_changed() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    orders.delete(&kept.id).unwrap();
    let refused = orders.change(&kept.id, |order| order.pieces.clear());
    assert!(matches!(refused, Err(ShelfError::NoSuchOrder { .. })));
    assert!(orders.list().unwrap().untroubled().unwrap().is_empty());
    let id = orders.undo_delete(&kept.id).unwrap().untroubled().unwrap();
    assert_eq!(id, kept.id);
    let back = orders.look(&kept.id).unwrap().untroubled().unwrap();
    assert_eq!(back, kept);
    assert!(orders.undo_delete(&kept.id).is_err(), "it is back already");
}

/// A folder that is a file: whoever says that there is no such order says what nobody knows.
#[test]
fn where_the_system_does_not_tell_nothing_is_said_to_be_missing() {
    let (around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    let backup = around.path().join("backup");
    let backed_up = shelf.backup(&backup, IfThere::Refuse).unwrap();
    assert_eq!(backed_up.untroubled().unwrap().orders, 1);
    let away = orders.folder().with_file_name("away");
    fs::rename(orders.folder(), &away).unwrap();
    fs::write(orders.folder(), "in the way").unwrap();
    let refused = |what: &str, error: ShelfError| {
        assert_eq!(error.reason(), Reason::NotAFolder, "{what}: {error}");
    };
    let (id, other) = (&kept.id, around.path().join("other"));
    refused("look", orders.look(id).unwrap_err());
    refused("list", orders.list().unwrap_err());
    refused("keep", orders.keep(rings("9")).unwrap_err());
    refused(
        "change",
        orders.change(id, |order| order.pieces.clear()).unwrap_err(),
    );
    refused("delete", orders.delete(id).unwrap_err());
    refused("undo", orders.undo_delete(id).unwrap_err());
    refused("backup", shelf.backup(&other, IfThere::Refuse).unwrap_err());
    refused("restore", shelf.restore(&backup).unwrap_err());
    assert_eq!(fs::read(orders.folder()).unwrap(), b"in the way");
    fs::remove_file(orders.folder()).unwrap();
    fs::rename(&away, orders.folder()).unwrap();
    assert_eq!(orders.look(id).unwrap().untroubled().unwrap(), kept);
}

#[test]
fn one_of_a_newer_version_goes_into_a_backup_as_it_is_and_is_told_where_it_comes_out() {
    let (around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let newer = orders.keep(rings("4")).unwrap();
    let known = orders.keep(rings("9")).unwrap();
    let document = json!({ "version": 9, "pieces": [], "loft": "north" }).to_string();
    fs::write(orders.file(&newer.id).path(), &document).unwrap();
    let file = around.path().join("backup");
    let backup = shelf.backup(&file, IfThere::Refuse).unwrap();
    let backup = backup.untroubled().unwrap();
    assert_eq!((backup.orders, backup.left_out), (2, 0));
    assert!(fs::read_to_string(&file).unwrap().contains(&document));
    let other = Shelf::open(around.path().join("elsewhere/ties")).unwrap();
    let restored = other.restore(&file).unwrap().untroubled().unwrap();
    assert_eq!((restored.orders, restored.missing), (1, 0));
    let [(_, fault)] = &restored.faults[..] else {
        panic!("{:?}", restored.faults);
    };
    assert!(fault.is_newer(), "{fault}");
    let there = Orders::beside(&other).look(&known.id).unwrap();
    assert_eq!(there.untroubled().unwrap(), known);
}

#[test]
fn one_that_comes_back_writes_over_none_of_its_name() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = orders.keep(rings("4")).unwrap();
    let file = orders.file(&kept.id).path().to_owned();
    let document = fs::read_to_string(&file).unwrap();
    orders.delete(&kept.id).unwrap();
    // A backup or a person has put one of that name there since.
    fs::write(&file, document).unwrap();
    let nine = orders.change(&kept.id, |order| *order = rings("9"));
    let nine = nine.unwrap().untroubled().unwrap();
    let back = orders.undo_delete(&kept.id).unwrap().untroubled().unwrap();
    assert_ne!(back, kept.id);
    let order = |id| orders.look(id).unwrap().untroubled().unwrap().order;
    assert_eq!(order(&kept.id), nine.order);
    assert_eq!(order(&back), rings("4"));
    assert!(orders.undo_delete(&kept.id).is_err(), "it is back already");
}

#[test]
fn the_number_of_a_piece_that_has_gone_is_not_given_to_another() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = orders.keep(rings("4")).unwrap();
    let change = |change: fn(&mut Order)| {
        let changed = orders.change(&kept.id, change).unwrap();
        let order = changed.untroubled().unwrap().order;
        let numbers = order.pieces.iter().map(|piece| piece.number);
        numbers.collect::<Vec<_>>()
    };
    assert_eq!(
        change(|order| {
            order.add();
        }),
        [1, 2]
    );
    assert_eq!(change(|order| order.pieces.truncate(1)), [1]);
    assert_eq!(
        change(|order| {
            order.add();
        }),
        [1, 3]
    );
}

#[test]
fn an_order_that_cannot_be_read_is_counted_as_left_out_of_the_backup() {
    let (around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let bad = orders.keep(rings("4")).unwrap();
    orders.keep(rings("9")).unwrap();
    fs::write(orders.file(&bad.id).path(), "{").unwrap();
    let backup = shelf.backup(&around.path().join("backup"), IfThere::Refuse);
    let (backup, troubles) = told_of(backup.unwrap());
    assert_eq!((backup.orders, backup.left_out, troubles.len()), (1, 1, 1));
}

#[cfg(unix)]
#[test]
fn they_are_their_owners_alone() {
    use std::os::unix::fs::PermissionsExt as _;
    use std::path::Path;

    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = two_copies(&orders);
    let file = orders.file(&kept.id);
    assert_eq!(mode(file.path()), 0o600);
    assert_eq!(mode(&file.previous_path()), 0o600);
    assert_eq!(mode(orders.folder()), 0o700);
}
