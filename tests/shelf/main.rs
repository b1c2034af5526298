//! The shelf against the outside world: damage, other programs, a clock that goes back, a
//! program that is killed.

mod changes;
mod corpus;
mod crash;
mod damage;
#[path = "../support/damaged.rs"]
mod damaged;
mod grounds;
mod handover;
mod keeper;
mod kept_fields;
mod log;
mod order;
mod orders;
mod rack;
mod schema;
#[path = "../support/strewn.rs"]
mod strewn;
#[path = "../support/told_of.rs"]
mod told_of;
mod unknown_fields;

use std::fs;
use std::path::{Path, PathBuf};

use marlinspeak::guide::{Place, Plan};
use marlinspeak::knot::PassLeg;
use marlinspeak::shelf::{Shelf, ShelfTrouble, Tie, TieId};
use tempfile::TempDir;
use told_of::told_of;

/// A shelf in a folder of its own, which goes when the folder is dropped.
fn fresh() -> (TempDir, Shelf) {
    let around = tempfile::tempdir().unwrap();
    let shelf = Shelf::open(around.path().join("ties")).unwrap();
    (around, shelf)
}

/// A doubled 5 lead 6 bight knot, just begun.
fn five_by_six() -> Tie {
    Tie::begin(Plan::read("5", "6", "2", "1").unwrap(), leg(1))
}

/// The place before a leg of the lead pass.
fn leg(leg: u16) -> Place {
    Place::lay(PassLeg {
        pass: 1,
        strand: 1,
        leg,
    })
}

fn document(shelf: &Shelf, id: &TieId) -> PathBuf {
    shelf.folder().join(format!("{id}.json"))
}

fn previous(shelf: &Shelf, id: &TieId) -> PathBuf {
    shelf.folder().join(format!("{id}.previous.json"))
}

/// A tie on the shelf at leg 2, with a previous copy at leg 1.
fn two_copies(shelf: &Shelf) -> Tie {
    let mut tie = shelf.begin(five_by_six()).unwrap().tie;
    tie.place = leg(2);
    shelf.save(&tie).unwrap().untroubled().unwrap()
}

/// The ties on a shelf, newest first, and everything that has to be told of them.
fn listed(shelf: &Shelf) -> (Vec<Tie>, Vec<ShelfTrouble>) {
    told_of(shelf.list().unwrap())
}

/// The contents of every file in a folder that was set aside.
fn set_aside(folder: &Path) -> Vec<Vec<u8>> {
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.to_string_lossy().contains(".damaged-"))
        .collect();
    files.sort();
    files.iter().map(|file| fs::read(file).unwrap()).collect()
}
