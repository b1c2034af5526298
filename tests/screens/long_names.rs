//! Names without an end: of ties, cords, notes, orders and files, in the window and in the terminal.

use crate::given_lines;
#[cfg(feature = "window")]
use crate::hands;
#[cfg(feature = "window")]
use std::fs;
use std::path::Path;
use std::process::{Command, Output};

use marlinspeak::shelf::{LONGEST_NAME, LONGEST_NOTE, Shelf, Tie};
use serde_json::{Value, json};
use tempfile::TempDir;

/// As many bytes as a name may have on common file systems.
const LONGEST_FILE_NAME: usize = 255;

fn run(home: &Path, args: &[&str], lines: &str) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
    command
        .args(args)
        .env("HOME", home)
        .env("XDG_DATA_HOME", home.join("data"))
        .env("XDG_CONFIG_HOME", home.join("config"))
        .env("XDG_STATE_HOME", home.join("state"))
        .env("LC_ALL", "C.UTF-8");
    given_lines::run(&mut command, lines)
}

fn prints(home: &Path, args: &[&str], lines: &str) -> String {
    let output = run(home, args, lines);
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{args:?}: {errors}");
    String::from_utf8(output.stdout).unwrap()
}

fn ties(folder: &Path) -> Vec<Tie> {
    let shelf = Shelf::open(folder).unwrap();
    shelf.list().unwrap().untroubled().unwrap()
}

/// Puts a tie on a shelf, written by hand, whose texts have no end.
fn put(folder: &Path) {
    let document = json!({
        "version": 1, "name": "n".repeat(200_000), "note": "o".repeat(200_000),
        "knot": {
            "leads": 3, "bights": 5, "passes": 2, "weave": "1", "side": "right", "hand": "right",
            "order": "pass-by-pass",
        },
        "place": { "phase": "lead", "pass": 1, "strand": 1, "leg": 0, "crossing": 0 },
        "begun": "2025-01-01T10:00:00Z", "touched": "2025-01-01T11:00:00Z",
        "cords": ["w".repeat(100_000), "t".repeat(100_000)],
    });
    fs::create_dir_all(folder).unwrap();
    fs::write(folder.join("byhand.json"), document.to_string()).unwrap();
}

/// The longest that a line of the terminal may come to, in letters: a name, a note, and what is said.
const LONGEST_LINE: usize = LONGEST_NOTE + 1000;

#[test]
fn no_line_of_the_terminal_is_as_long_as_a_name_may_be() {
    let home = TempDir::new().unwrap();
    put(&home.path().join("data/marlinspeak/ties"));
    let listed = prints(home.path(), &["shelf", "list"], "");
    assert!(listed.contains("nnn"), "{listed}");
    let told = prints(home.path(), &["tie"], &format!("{}q\n", "\n".repeat(60)));
    assert!(told.contains("www"), "the cord is named");
    for line in listed.lines().chain(told.lines()) {
        assert!(
            line.chars().count() < LONGEST_LINE,
            "{} letters",
            line.len()
        );
    }
    // Nothing of them is lost by that.
    let tie = ties(&home.path().join("data/marlinspeak/ties")).remove(0);
    assert_eq!((tie.name.len(), tie.note.len()), (200_000, 200_000));
    assert_eq!(tie.plan.cords()[1].len(), 100_000);
}

/// What is cut of a name that comes from elsewhere is told, with how long one may be.
#[test]
fn what_is_cut_of_what_comes_in_is_told() {
    let folder = |name: &str| {
        let home = TempDir::new().unwrap();
        let ties = home.path().join(name);
        (home, ties)
    };
    let (from, put_there) = folder("data/marlinspeak/ties");
    put(&put_there);
    let file = put_there.join("byhand.json");
    let file = file.to_str().unwrap();
    let (home, here) = folder("data/marlinspeak/ties");
    let cut = "Its name or note was cut: a name has at most 120 letters, a note 2,000.";
    let told = prints(home.path(), &["shelf", "import", file], "");
    assert!(told.trim_end().ends_with(cut), "{told}");
    let tie = ties(&here).remove(0);
    assert_eq!(
        (tie.name.len(), tie.note.len()),
        (LONGEST_NAME, LONGEST_NOTE)
    );
    let backup = from.path().join("all");
    let backup = backup.to_str().unwrap();
    prints(from.path(), &["shelf", "backup", backup], "");
    let (home, _) = folder("data");
    let told = prints(home.path(), &["shelf", "restore", backup], "");
    let cut = "1 name or note was cut: a name has at most 120 letters, a note 2,000.";
    assert!(told.contains(cut), "{told}");
}

#[test]
fn an_order_with_a_text_without_end_is_refused_in_a_sentence() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("order.json");
    let order = |change: fn(&mut Value)| {
        let mut order = json!({
            "name": "the club",
            "pieces": [{ "name": "ring", "leads": 4, "bights": 7, "cord": 3, "tube": 45 }],
        });
        change(&mut order);
        fs::write(&file, order.to_string()).unwrap();
        run(home.path(), &["order", "keep", file.to_str().unwrap()], "")
    };
    let long = |change: fn(&mut Value), sentence: &str| {
        let output = order(change);
        assert_eq!(output.status.code(), Some(2));
        let errors = String::from_utf8(output.stderr).unwrap();
        assert_eq!(errors.trim_end(), sentence);
    };
    long(
        |order| order["name"] = "n".repeat(121).into(),
        "In the order “name” has more than 120 letters: make it shorter.",
    );
    long(
        |order| order["note"] = "n".repeat(2001).into(),
        "In the order “note” has more than 2,000 letters: make it shorter.",
    );
    long(
        |order| order["pieces"][0]["name"] = "ü".repeat(500_000).into(),
        "In piece 1 “name” has more than 120 letters: make it shorter.",
    );
    let kept = order(|order| order["name"] = "ü".repeat(120).into());
    assert!(kept.status.success());
}

/// What is written beside a file first has a longer name than the file; where there is no room for that,
/// it has a shorter one.
#[test]
fn a_file_may_have_as_long_a_name_as_the_system_takes() {
    let home = TempDir::new().unwrap();
    let knot = ["--leads", "3", "--bights", "5"];
    prints(home.path(), &[&["tie"], &knot[..]].concat(), "\nq\n");
    let id = ties(&home.path().join("data/marlinspeak/ties")).remove(0);
    let named = |ending: &str| {
        // Letters of two bytes.
        let stem = "ü".repeat((LONGEST_FILE_NAME - ending.len()) / 2);
        let name = format!("{stem}{ending}");
        assert!(name.len() >= LONGEST_FILE_NAME - 1);
        home.path().join(name).to_str().unwrap().to_owned()
    };
    let (backup, tie) = (named(".backup"), named(".json"));
    prints(home.path(), &["shelf", "backup", &backup], "");
    prints(home.path(), &["shelf", "backup", "--replace", &backup], "");
    prints(home.path(), &["shelf", "restore", &backup], "");
    prints(
        home.path(),
        &["shelf", "export", id.id().as_str(), &tie],
        "",
    );
    for (kind, ending) in [("stage", ".png"), ("card", ".pdf"), ("reel", ".gif")] {
        let out = named(ending);
        prints(
            home.path(),
            &[&["sheet", kind], &knot[..], &["--out", &out]].concat(),
            "",
        );
        assert!(fs::metadata(&out).unwrap().len() > 1000, "{kind}");
    }
    // One that is too long is refused in a sentence.
    let long = home.path().join("x".repeat(300));
    for args in [
        &["shelf", "backup", long.to_str().unwrap()][..],
        &["shelf", "restore", long.to_str().unwrap()],
    ] {
        let output = run(home.path(), args, "");
        assert_eq!(output.status.code(), Some(1), "{args:?}");
        let errors = String::from_utf8(output.stderr).unwrap();
        assert_eq!(errors.trim_end().lines().count(), 1, "{errors}");
        assert!(errors.contains("name"), "{errors}");
    }
}

#[cfg(feature = "window")]
#[test]
fn what_is_cut_of_what_comes_in_is_told_in_the_window() {
    use hands::Hands;
    use iced::keyboard::Key;
    use iced::keyboard::key::Named;
    use marlinspeak::app::Message;

    let folder = TempDir::new().unwrap();
    put(&folder.path().join("elsewhere"));
    let file = folder.path().join("elsewhere/byhand.json");
    let mut hands = Hands::open(&folder.path().join("ties"), None);
    for key in ["s", "i"] {
        hands.press(Key::Character(key.into()));
    }
    hands.tell(Message::typed_on_shelf(file.to_str().unwrap()));
    hands.press(Named::Enter);
    let said = hands.last_said();
    assert!(said.contains("1 name or note was cut"), "{said}");
    assert_eq!(hands.ties().remove(0).name, "n".repeat(LONGEST_NAME));
}

#[cfg(feature = "window")]
#[test]
fn what_is_typed_in_the_window_has_an_end() {
    use hands::Hands;
    use iced::keyboard::Key;
    use iced::keyboard::key::Named;
    use marlinspeak::app::Message;
    use marlinspeak::shelf::Orders;

    let folder = TempDir::new().unwrap();
    let at = folder.path().join("ties");
    put(&at);
    let letter = |letter: &str| Key::Character(letter.into());
    let mut hands = Hands::open(&at, None);
    let is_short = |hands: &Hands| {
        let said = hands.last_said().chars().count();
        assert!(said < LONGEST_LINE, "{said} letters");
    };
    is_short(&hands);
    hands.press(letter("s"));
    is_short(&hands);
    for (key, most) in [("e", LONGEST_NAME), ("n", LONGEST_NOTE)] {
        hands.press(letter(key));
        hands.tell(Message::typed_on_shelf(&"ü".repeat(300_000)));
        hands.press(Named::Enter);
        is_short(&hands);
        let tie = ties(&at).remove(0);
        let text = if key == "e" { tie.name } else { tie.note };
        assert_eq!(text, "ü".repeat(most));
    }
    hands.press(Named::Escape);
    hands.press(letter("o"));
    hands.press(letter("n"));
    hands.press(Named::Enter);
    hands.tell(Message::typed_on_orders(&"ü".repeat(300_000)));
    hands.press(Named::Enter);
    is_short(&hands);
    let orders = Orders::beside(&Shelf::open(&at).unwrap()).list().unwrap();
    let order = orders.untroubled().unwrap().remove(0).order;
    assert_eq!(order.name, "ü".repeat(LONGEST_NAME));
}
