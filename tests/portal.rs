//! The windows of the system in which files are chosen: a real bus, and on it a portal that answers,
//! refuses, calls off, goes away, says nothing, or answers what is no answer.
#![cfg(all(feature = "window", target_os = "linux"))]

#[path = "support/bus.rs"]
mod bus;
#[path = "support/portal.rs"]
mod portal;

use std::fs;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use bus::Bus;
use marlinspeak::app::{
    DialogError, FileDialogs as _, FileKind, OpenDialog, Portal as Dialogs, SaveDialog,
};
use portal::{Manner, Portal};
use tempfile::TempDir;

fn dialogs(bus: &Bus) -> Dialogs {
    Dialogs::at(bus.address.clone())
}

fn save() -> SaveDialog {
    SaveDialog {
        title: "Where the card goes".to_owned(),
        name: "Tiller, card.pdf".to_owned(),
        folder: Some(PathBuf::from("/loft/papers")),
        kind: FileKind {
            name: "PDF".to_owned(),
            endings: &["pdf"],
        },
    }
}

fn open() -> OpenDialog {
    OpenDialog {
        title: "Choose the photograph".to_owned(),
        kind: FileKind {
            name: "JPEG, PNG".to_owned(),
            endings: &["jpg", "png"],
        },
    }
}

fn go_on() -> AtomicBool {
    AtomicBool::new(false)
}

#[test]
fn what_is_chosen_is_the_path_and_the_portal_is_told_what_for() {
    let bus = Bus::start();
    let chosen = "file:///loft/papers/bell%20rope.pdf".to_owned();
    let portal = Portal::start(&bus, Manner::Answers(0, vec![chosen]));
    let path = dialogs(&bus).save(&save(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/papers/bell rope.pdf")));
    let call = portal.call();
    assert_eq!(
        (&*call.member, &*call.title),
        ("SaveFile", "Where the card goes")
    );
    let name = call.options["current_name"].0.as_str();
    assert_eq!(name, Some("Tiller, card.pdf"));
    let folder: Vec<u64> = call.options["current_folder"]
        .0
        .as_iter()
        .unwrap()
        .map(|byte| byte.as_u64().unwrap())
        .collect();
    let expected: Vec<u64> = b"/loft/papers\0"
        .iter()
        .map(|byte| (*byte).into())
        .collect();
    assert_eq!(folder, expected);

    let path = dialogs(&bus).open(&open(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/papers/bell rope.pdf")));
    let call = portal.call();
    assert_eq!(
        (&*call.member, &*call.title),
        ("OpenFile", "Choose the photograph")
    );
    let filters = format!("{:?}", call.options["filters"]);
    for form in ["*.jpg", "*.JPG", "*.png", "JPEG, PNG"] {
        assert!(filters.contains(form), "{form}: {filters}");
    }
}

#[test]
fn a_portal_that_answers_at_a_place_of_its_own_is_heard() {
    let bus = Bus::start();
    let uri = "file:///loft/card.pdf".to_owned();
    let _portal = Portal::start(&bus, Manner::AnswersElsewhere(uri));
    let path = dialogs(&bus).save(&save(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/card.pdf")));
}

#[test]
fn who_calls_it_off_gets_no_path_and_no_trouble() {
    let bus = Bus::start();
    let _portal = Portal::start(&bus, Manner::Answers(1, Vec::new()));
    assert_eq!(dialogs(&bus).save(&save(), &go_on()), Ok(None));
    assert_eq!(dialogs(&bus).open(&open(), &go_on()), Ok(None));
}

#[test]
fn a_portal_that_says_nothing_is_waited_for_until_the_tyer_gives_up() {
    let bus = Bus::start();
    let portal = Portal::start(&bus, Manner::IsSilent);
    let stop = Arc::new(go_on());
    let (dialogs, raised) = (dialogs(&bus), Arc::clone(&stop));
    let waiting = thread::spawn(move || dialogs.save(&save(), &raised));
    assert_eq!(portal.call().member, "SaveFile");
    assert!(!waiting.is_finished());
    stop.store(true, Ordering::Relaxed);
    assert_eq!(waiting.join().unwrap(), Ok(None));
    // Its window does not stay.
    assert_eq!(portal.call().member, "Close");
}

#[test]
fn where_no_window_comes_the_path_is_to_be_typed() {
    let bus = Bus::start();
    let unavailable = |told: Result<Option<PathBuf>, DialogError>, why: &str| {
        assert!(
            matches!(told, Err(DialogError::Unavailable(_))),
            "{why}: {told:?}"
        );
    };
    unavailable(dialogs(&bus).save(&save(), &go_on()), "no portal");
    let nowhere = Dialogs::at("unix:path=/nonexistent/bus".to_owned());
    unavailable(nowhere.save(&save(), &go_on()), "no bus");
    for manner in [
        Manner::Refuses,
        Manner::GoesAway,
        Manner::Answers(2, Vec::new()),
    ] {
        let _portal = Portal::start(&bus, manner.clone());
        let told = dialogs(&bus).save(&save(), &go_on());
        unavailable(told, &format!("{manner:?}"));
    }
}

#[test]
fn an_answer_that_names_no_file_is_no_answer() {
    let bus = Bus::start();
    let one = |uri: &str| Manner::Answers(0, vec![uri.to_owned()]);
    for manner in [
        Manner::Babbles,
        Manner::Answers(7, Vec::new()),
        Manner::Answers(0, Vec::new()),
        one("https://loft.example/card.pdf"),
        one("file://other-machine/card.pdf"),
        one("card.pdf"),
        one(""),
    ] {
        let _portal = Portal::start(&bus, manner.clone());
        let told = dialogs(&bus).open(&open(), &go_on());
        assert!(
            matches!(told, Err(DialogError::Nonsense(_))),
            "{manner:?}: {told:?}"
        );
    }
}

#[test]
fn what_was_made_is_handed_over_to_be_opened() {
    let bus = Bus::start();
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("card.pdf");
    fs::write(&file, "a card").unwrap();
    {
        let portal = Portal::start(&bus, Manner::Answers(0, Vec::new()));
        assert_eq!(dialogs(&bus).show(&file), Ok(()));
        let call = portal.call();
        assert_eq!((&*call.member, &*call.content), ("OpenFile", "a card"));
    }
    let _portal = Portal::start(&bus, Manner::Answers(2, Vec::new()));
    let told = dialogs(&bus).show(&file);
    assert!(matches!(told, Err(DialogError::Unavailable(_))), "{told:?}");
    let told = dialogs(&bus).show(&folder.path().join("none.pdf"));
    assert!(matches!(told, Err(DialogError::Unavailable(_))), "{told:?}");
}
