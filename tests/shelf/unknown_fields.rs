//! What a later program keeps besides stays, wherever it stands in a document of any kind, when this one
//! reads the document, changes something else and keeps it.

use std::fs;
use std::path::{Path, PathBuf};

use marlinspeak::bench::{Cord, Millimetres};
use marlinspeak::guide::Order;
use marlinspeak::session::{entry_for, keep_entry};
use marlinspeak::shelf::{IfThere, Orders, PresetsFile, Shelf, read_tie};
use serde_json::Value;

use crate::fresh;
use crate::kept_fields::{
    entry_document, entry_of_taper, order_document, rack_document, tie_document, ties_of_grounds,
};
use crate::strewn::{left, strew};

/// Has a document lie in a file with such fields in it, changed there by something, and looks for them.
fn stay(mut document: Value, file: &Path, change: impl FnOnce()) {
    document.as_object_mut().unwrap().remove("checksum");
    let strewn = strew(&mut document, "");
    let _ = fs::remove_file(file.with_extension("previous.json"));
    fs::create_dir_all(file.parent().unwrap()).unwrap();
    fs::write(file, document.to_string()).unwrap();
    change();
    let after: Value = serde_json::from_slice(&fs::read(file).unwrap()).unwrap();
    assert!(strewn > 2 && after.get("checksum").is_some(), "{strewn}");
    assert_eq!(left(&after, ""), strewn, "{after:#}");
}

fn lying(shelf: &Shelf, document: &Value) -> PathBuf {
    let id = document["id"].as_str().unwrap();
    shelf.folder().join(format!("{id}.json"))
}

#[test]
fn in_ties() {
    for document in [tie_document()].into_iter().chain(ties_of_grounds()) {
        let (_around, shelf) = fresh();
        let id = read_tie(document.to_string().as_bytes())
            .unwrap()
            .id()
            .clone();
        stay(document.clone(), &lying(&shelf, &document), || {
            let mut taken = shelf.take_up(&id).unwrap().untroubled().unwrap();
            taken.tie.name = "boathook ring".to_owned();
            taken.tie.presses.add();
            shelf.save(&taken.tie).unwrap().untroubled().unwrap();
        });
    }
}

#[test]
fn in_entries_of_the_log() {
    let tie = read_tie(tie_document().to_string().as_bytes()).unwrap();
    for mut document in [entry_document(), entry_of_taper()] {
        let (_around, shelf) = fresh();
        document["tie"] = tie.id().as_str().into();
        let file = shelf.folder().join(format!("log/{}.json", tie.id()));
        stay(document, &file, || {
            let entry = entry_for(&shelf, &tie).unwrap();
            let mut entry = entry.untroubled().unwrap();
            entry.note = "hangs well".to_owned();
            keep_entry(&shelf, &entry).unwrap().untroubled().unwrap();
        });
    }
}

#[test]
fn in_orders() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let id = orders.keep(Order::default()).unwrap().id;
    let file = orders.file(&id).path().to_owned();
    stay(order_document(), &file, || {
        let changed = orders.change(&id, |order| order.note = "wax".to_owned());
        changed.unwrap().untroubled().unwrap();
    });
}

#[test]
fn in_tubes_and_cords() {
    let (_around, shelf) = fresh();
    let rack = PresetsFile::beside(&shelf);
    stay(rack_document(), rack.path(), || {
        let cord = Cord::new(Millimetres::new(3.0).unwrap());
        let kept = rack.keep_cord("tarred", &cord).unwrap();
        kept.untroubled().unwrap();
    });
}

/// And through a backup to a shelf that has nothing of the kind.
#[test]
fn on_the_way_through_a_backup() {
    let (around, shelf) = fresh();
    let tie = tie_document();
    let mut entry = entry_of_taper();
    entry["tie"] = tie["id"].clone();
    let orders = Orders::beside(&shelf);
    let order = orders.keep(Order::default()).unwrap().id;
    let log = format!("log/{}.json", tie["id"].as_str().unwrap());
    let files = [
        (lying(&shelf, &tie), tie),
        (shelf.folder().join(&log), entry),
        (orders.file(&order).path().to_owned(), order_document()),
        (
            PresetsFile::beside(&shelf).path().to_owned(),
            rack_document(),
        ),
    ];
    let mut strewn = Vec::new();
    fs::create_dir_all(shelf.folder().join("log")).unwrap();
    for (file, mut document) in files {
        document.as_object_mut().unwrap().remove("checksum");
        let fields = strew(&mut document, "");
        fs::write(&file, document.to_string()).unwrap();
        strewn.push((file.strip_prefix(around.path()).unwrap().to_owned(), fields));
    }
    let backup = around.path().join("backup");
    let kept = shelf.backup(&backup, IfThere::Refuse).unwrap();
    assert_eq!(kept.untroubled().unwrap().left_out, 0);
    let elsewhere = around.path().join("elsewhere");
    let other = Shelf::open(elsewhere.join("ties")).unwrap();
    let restored = other.restore(&backup).unwrap().untroubled().unwrap();
    assert!(restored.faults.is_empty(), "{:?}", restored.faults);
    for (file, strewn) in strewn {
        let back = fs::read(elsewhere.join(&file)).unwrap();
        let back: Value = serde_json::from_slice(&back).unwrap();
        assert_eq!(left(&back, ""), strewn, "{}: {back:#}", file.display());
    }
}
