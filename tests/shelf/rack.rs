//! Tubes and cords kept by name: as safe as the ties.

use std::fs;
use std::thread;

use marlinspeak::bench::{Millimetres, Tube};
use marlinspeak::shelf::{CopyBefore, DocumentState, IfThere, PresetsFile, Shelf};

use marlinspeak::files::ContentError as _;
use serde_json::{Value, json};

use crate::damaged::flipped_and_cut;
use crate::fresh;
use crate::told_of::told_of;

fn tube(diameter: f64) -> Tube {
    Tube::plain(Millimetres::new(diameter).unwrap())
}

fn keep(rack: &PresetsFile, name: &str, diameter: f64) {
    let kept = rack.keep_tube(name, &tube(diameter)).unwrap();
    kept.untroubled().unwrap();
}

/// A rack beside a shelf, with a copy before it.
fn rack(shelf: &Shelf) -> PresetsFile {
    let rack = PresetsFile::beside(shelf);
    keep(&rack, "oak", 45.0);
    keep(&rack, "ash", 30.0);
    rack
}

#[test]
fn every_flipped_byte_and_every_cut_is_told_and_gives_way_to_the_copy_before() {
    let (_around, shelf) = fresh();
    let rack = rack(&shelf);
    let whole = fs::read(rack.path()).unwrap();
    for at in 0..whole.len() - 1 {
        for damaged in flipped_and_cut(&whole, at) {
            fs::write(rack.path(), &damaged).unwrap();
            let (presets, troubles) = told_of(rack.read().unwrap());
            if let [trouble] = &troubles[..] {
                assert_eq!(trouble.copy_used, Some(CopyBefore::AsKeptBefore));
                assert_eq!(presets.tubes.keys().collect::<Vec<_>>(), ["oak"]);
            } else {
                assert!(troubles.is_empty());
                assert_eq!(presets.tubes["ash"], tube(30.0), "{at}");
            }
            let verified = shelf.verify().unwrap();
            let state = |state: &DocumentState| matches!(state, DocumentState::Whole);
            let is_whole = verified.iter().all(|one| state(&one.state));
            assert!(!is_whole || troubles.is_empty(), "{at}");
        }
    }
}

#[test]
fn what_many_keep_at_once_is_all_there() {
    let (_around, shelf) = fresh();
    thread::scope(|scope| {
        for number in 0..30 {
            let rack = PresetsFile::beside(&shelf);
            scope.spawn(move || keep(&rack, &format!("tube {number}"), 40.0));
        }
    });
    let presets = PresetsFile::beside(&shelf).read().unwrap();
    assert_eq!(presets.untroubled().unwrap().tubes.len(), 30);
}

#[test]
fn it_goes_into_a_backup_and_comes_back_beside_what_is_there() {
    let (around, shelf) = fresh();
    rack(&shelf);
    let file = around.path().join("backup");
    shelf
        .backup(&file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    let other = Shelf::open(around.path().join("elsewhere/ties")).unwrap();
    let here = PresetsFile::beside(&other);
    keep(&here, "oak", 50.0);
    let restored = other.restore(&file).unwrap().untroubled().unwrap();
    assert_eq!((restored.presets, restored.missing), (1, 0));
    let tubes = here.read().unwrap().untroubled().unwrap().tubes;
    assert_eq!((&tubes["oak"], &tubes["ash"]), (&tube(50.0), &tube(30.0)));
}

/// What a later program keeps besides comes back with each tube and cord, and with the document.
#[test]
fn what_is_not_known_of_it_comes_back_from_a_backup() {
    let (around, shelf) = fresh();
    let file = rack(&shelf).path().to_owned();
    let mut document: Value = serde_json::from_slice(&fs::read(&file).unwrap()).unwrap();
    document["loft"] = "north".into();
    document["tubes"]["ash"]["from"] = "the yard".into();
    document["tubes"]["oak"]["from"] = "the sawmill".into();
    document["cords"]["tan"] = json!({ "diameter": 4.0, "give": null, "spool": { "left": 7 } });
    document.as_object_mut().unwrap().remove("checksum");
    fs::write(&file, document.to_string()).unwrap();
    let backup = around.path().join("backup");
    let kept = shelf.backup(&backup, IfThere::Refuse).unwrap();
    kept.untroubled().unwrap();
    let other = Shelf::open(around.path().join("elsewhere/ties")).unwrap();
    let here = PresetsFile::beside(&other);
    keep(&here, "oak", 50.0);
    let restored = other.restore(&backup).unwrap().untroubled().unwrap();
    assert_eq!((restored.presets, restored.missing), (2, 0));
    let back: Value = serde_json::from_slice(&fs::read(here.path()).unwrap()).unwrap();
    assert_eq!(back["loft"], "north");
    assert_eq!(back["tubes"]["ash"]["from"], "the yard");
    assert_eq!(back["cords"]["tan"]["spool"], json!({ "left": 7 }));
    assert_eq!(back["tubes"]["oak"].get("from"), None, "another tube");
}

/// Nothing that this program does not understand is put where it would keep it from its own tubes; the
/// backup holds it for the program that does.
#[test]
fn one_of_a_newer_version_goes_into_a_backup_as_it_is_and_is_told_where_it_comes_out() {
    let (around, shelf) = fresh();
    let file = rack(&shelf).path().to_owned();
    let document = json!({ "version": 9, "tubes": { "ash": { "bends": 3 } } }).to_string();
    fs::write(&file, &document).unwrap();
    let backup = around.path().join("backup");
    let kept = shelf.backup(&backup, IfThere::Refuse).unwrap();
    assert_eq!(kept.untroubled().unwrap().left_out, 0);
    let lines = fs::read_to_string(&backup).unwrap();
    assert!(lines.lines().any(|line| line == document), "{lines}");
    let other = Shelf::open(around.path().join("elsewhere/ties")).unwrap();
    let here = PresetsFile::beside(&other);
    for _ in 0..2 {
        let restored = other.restore(&backup).unwrap().untroubled().unwrap();
        assert_eq!((restored.presets, restored.missing), (0, 0));
        let [(line, fault)] = &restored.faults[..] else {
            panic!("{:?}", restored.faults);
        };
        assert!(*line == 2 && fault.is_newer(), "{line}: {fault}");
        // With none of its own, and beside its own.
        keep(&here, "oak", 50.0);
        let tubes = here.read().unwrap().untroubled().unwrap().tubes;
        assert_eq!(
            tubes.into_iter().collect::<Vec<_>>(),
            [("oak".to_owned(), tube(50.0))]
        );
    }
    // Where it was kept it is as before.
    assert_eq!(fs::read_to_string(&file).unwrap(), document);
}

#[cfg(unix)]
#[test]
fn what_is_kept_is_its_owners_alone_and_a_mode_that_was_chosen_stays() {
    use std::os::unix::fs::PermissionsExt as _;
    use std::path::Path;

    use marlinspeak::shelf::Entry;

    use crate::{document, previous, two_copies};

    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    shelf.log(&Entry::of(&tie)).unwrap().untroubled().unwrap();
    let rack = rack(&shelf);
    let file = document(&shelf, tie.id());
    let log = shelf.folder().join(format!("log/{}.json", tie.id()));
    for path in [&file, &previous(&shelf, tie.id()), &log, rack.path()] {
        assert_eq!(mode(path), 0o600, "{}", path.display());
    }
    for folder in [shelf.folder(), log.parent().unwrap()] {
        assert_eq!(mode(folder), 0o700, "{}", folder.display());
    }
    fs::set_permissions(&file, fs::Permissions::from_mode(0o664)).unwrap();
    shelf.save(&tie).unwrap().untroubled().unwrap();
    shelf.save(&tie).unwrap().untroubled().unwrap();
    assert_eq!(
        (mode(&file), mode(&previous(&shelf, tie.id()))),
        (0o664, 0o664)
    );
}

#[test]
fn a_lock_that_was_removed_lets_nobody_else_write() {
    let (_around, shelf) = fresh();
    let tie = crate::two_copies(&shelf);
    let first = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    fs::remove_file(shelf.folder().join(format!("{}.lock", tie.id()))).unwrap();
    let other = Shelf::open(shelf.folder()).unwrap();
    let second = other.take_up(tie.id()).unwrap().untroubled().unwrap();
    assert!(shelf.save(&first.tie).is_err(), "the other one has it now");
    other.save(&second.tie).unwrap().untroubled().unwrap();
}
