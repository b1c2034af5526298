//! The shelf from a terminal: what is printed, the files, the exit codes, the one sentence for
//! each thing that can be wrong.

use crate::in_time;

use in_time::InTime as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use marlinspeak::bench::{Cord, Millimetres, TyingPace};
use marlinspeak::guide::{AtOnce, Phase, Plan, Script};
use marlinspeak::settings::{Settings, read_settings, write_settings};
use marlinspeak::shelf::{Entry, Shelf, Tie};
use serde_json::Value;
use tempfile::TempDir;

/// A home with a shelf in it.
struct Home(TempDir);

impl Home {
    fn new() -> Self {
        Self(TempDir::new().unwrap())
    }

    fn folder(&self) -> PathBuf {
        self.0.path().join("marlinspeak/ties")
    }

    fn shelf(&self) -> Shelf {
        Shelf::open(self.folder()).unwrap()
    }

    /// Puts a tie on the shelf that stands before a leg; 0 is the beginning, and the end comes
    /// after the last.
    fn put(&self, leads: &str, bights: &str, leg: u16) -> Tie {
        let plan = Plan::read(leads, bights, "1", "1").unwrap();
        let script = Script::new(plan.clone(), AtOnce::default());
        let place = script
            .places()
            .find(|place| place.phase() == Phase::Lead && place.leg().unwrap_or(0) == leg)
            .unwrap_or(script.last());
        self.shelf().begin(Tie::begin(plan, place)).unwrap().tie
    }

    fn document(&self, tie: &Tie) -> PathBuf {
        self.folder().join(format!("{}.json", tie.id()))
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        command
            .arg("shelf")
            .args(args)
            .env("XDG_DATA_HOME", self.0.path())
            .env("LC_ALL", "C")
            .env("XDG_CONFIG_HOME", "/nonexistent")
            .stdin(Stdio::null());
        command
    }

    fn run(&self, args: &[&str]) -> Output {
        self.command(args).output_in_time()
    }

    /// Runs what must go well, and gives what it printed.
    fn printed(&self, args: &[&str]) -> String {
        let output = self.run(args);
        let errors = String::from_utf8_lossy(&output.stderr);
        assert!(
            output.status.success() && errors.is_empty(),
            "{args:?}: {errors}"
        );
        String::from_utf8(output.stdout).unwrap()
    }

    /// Runs what must fail, and gives the exit code and the sentence.
    fn refused(&self, args: &[&str]) -> (i32, String) {
        code_and_sentence(&self.run(args))
    }
}

fn code_and_sentence(output: &Output) -> (i32, String) {
    let errors = String::from_utf8_lossy(&output.stderr)
        .trim_end()
        .to_owned();
    assert_eq!(errors.lines().count(), 1, "{errors}");
    assert!(output.stdout.is_empty());
    (output.status.code().unwrap(), errors)
}

fn path(path: &Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn the_list_tells_how_every_tie_stands() {
    let home = Home::new();
    assert_eq!(
        home.printed(&["list"]).trim(),
        format!("No ties are on the shelf in {}.", home.folder().display())
    );
    let old = home.put("7", "4", 3);
    let new = home.put("5", "6", 7);
    home.shelf()
        .rename(new.id(), "tiller")
        .unwrap()
        .untroubled()
        .unwrap();
    let text = home.printed(&["list"]);
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines.len(), 2);
    assert!(lines[0].starts_with(new.id().as_str()) && lines[0].ends_with("tiller"));
    assert!(lines[0].contains("5 lead 6 bight  "));
    assert!(lines[0].contains("50 per cent, 6 of 12 legs, touched today"));
    assert!(lines[1].starts_with(old.id().as_str()));

    let list: Value = serde_json::from_str(&home.printed(&["list", "--json"])).unwrap();
    let tie = &list["ties"][0];
    assert_eq!(
        (&tie["id"], &tie["name"], &tie["percent"], &tie["standing"]),
        (
            &new.id().as_str().into(),
            &"tiller".into(),
            &50.into(),
            &"waiting".into()
        )
    );
    assert_eq!(
        (&tie["laid"], &tie["legs"], &tie["phase"]),
        (&6.into(), &12.into(), &"lead".into())
    );
    assert_eq!(list["troubles"], Value::Array(Vec::new()));
}

#[test]
fn the_log_stands_under_the_list() {
    let home = Home::new();
    let tie = home.put("5", "6", 14);
    let entry = Entry {
        cord: Some(Cord::new(Millimetres::new(4.0).unwrap())),
        cut: Some(Millimetres::new(2400.0).unwrap()),
        left_over: Some(300.0),
        minutes: Some(130.0),
        ..Entry::of(&tie)
    };
    home.shelf().log(&entry).unwrap().untroubled().unwrap();
    let text = home.printed(&["list"]);
    assert!(
        text.ends_with("In the log: 1 tie, 12 legs, 2 hours 10 minutes, 2.1 m of cord.\n"),
        "{text}"
    );
}

/// The first knot that `fit` offers, and the cord that `rig` has cut for it.
fn fit_and_rig(home: &Home) -> (Value, f64) {
    let print = |args: &[&str]| -> Value {
        let output = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
            .args(args)
            .env("XDG_DATA_HOME", home.0.path())
            .output_in_time();
        serde_json::from_slice(&output.stdout).unwrap()
    };
    let fit = print(&[
        "fit", "--object", "30", "--cover", "30", "--cord", "4", "--json",
    ]);
    let rig = print(&[
        "rig", "--leads", "5", "--bights", "6", "--tube", "40", "--cord", "4", "--object", "30",
        "--json",
    ]);
    (fit["knots"][0].clone(), rig["cord_mm"].as_f64().unwrap())
}

#[test]
fn what_was_logged_goes_into_fit_and_rig() {
    let home = Home::new();
    let (knot, cord) = fit_and_rig(&home);
    // Before anything was logged the usual pace holds.
    let legs = |knot: &Value| u32::try_from(knot["legs"].as_u64().unwrap()).unwrap();
    let minutes = |knot: &Value| knot["minutes"].as_f64().unwrap();
    let tucks = |knot: &Value| u32::try_from(knot["tucks"].as_u64().unwrap()).unwrap();
    let usual = TyingPace::USUAL.minutes(legs(&knot), tucks(&knot));
    assert!((minutes(&knot) - usual).abs() < 0.1);
    let tie = home.put("5", "6", 99);
    let mm = |length| Millimetres::new(length).unwrap();
    let mut entry = Entry {
        cord: Some(Cord::new(mm(4.0)).named("marline")),
        around: Some(mm(30.0).into()),
        cut: Some(mm(2000.0)),
        ..Entry::of(&tie)
    };
    for _ in 0..6 {
        entry.work_time.add_leg(36.0);
    }
    // Find the length that comes out a fifth more than computed.
    entry.left_over = Some(1000.0);
    let factor = entry.length_factor().unwrap();
    entry.left_over = Some(2000.0 - 1000.0 / factor * 1.2);
    assert!((entry.length_factor().unwrap() - 1.2).abs() < 1e-9);
    home.shelf().log(&entry).unwrap().untroubled().unwrap();

    let (knot, more) = fit_and_rig(&home);
    // The legs that were timed had the tucks of the tie that was logged.
    let tucks_a_leg = f64::from(entry.counts.fewest_tucks()) / f64::from(entry.counts.legs());
    let own = TyingPace::new(36.0).unwrap().with_tucks(tucks_a_leg);
    let own = own.minutes(legs(&knot), tucks(&knot));
    assert!(
        (minutes(&knot) - own).abs() < 0.1,
        "{} {own}",
        minutes(&knot)
    );
    // Tails are no longer than before; the cord in the knot is, by four fifths of the way.
    let tails = 400.0;
    let ratio = (more - tails) / (cord - tails);
    assert!((ratio - 1.2_f64.powf(0.8)).abs() < 1e-3, "{ratio}");
}

#[test]
fn a_tie_goes_out_as_a_file_and_comes_in_elsewhere() {
    let (home, other) = (Home::new(), Home::new());
    let tie = home.put("5", "6", 7);
    let id = tie.id().as_str();
    let file = home.0.path().join("tie.json");
    let said = home.printed(&["export", id, path(&file)]);
    assert_eq!(
        said.trim(),
        format!("The tie {id} is in {}.", file.display())
    );
    // An existing file stays, unless it is to be replaced.
    fs::write(&file, "mine").unwrap();
    let (code, sentence) = home.refused(&["export", id, path(&file)]);
    assert_eq!(code, 2);
    assert!(sentence.ends_with("choose another name, or add --replace in the terminal."));
    assert_eq!(fs::read(&file).unwrap(), b"mine");
    home.printed(&["export", id, path(&file), "--replace"]);

    let said = other.printed(&["import", path(&file)]);
    assert_eq!(said.trim(), format!("The tie {id} is on the shelf."));
    let said = other.printed(&["import", path(&file)]);
    assert_eq!(
        said.trim(),
        format!("The tie {id} is on the shelf already.")
    );
    let mut moved = other.shelf().look(tie.id()).unwrap().untroubled().unwrap();
    assert_eq!(moved, tie);
    moved.note = "changed".to_owned();
    other.shelf().save(&moved).unwrap().untroubled().unwrap();
    let said = other.printed(&["import", path(&file)]);
    assert!(
        said.trim()
            .ends_with(&format!("another one has the name {id}.")),
        "{said}"
    );
    assert_eq!(other.shelf().list().unwrap().untroubled().unwrap().len(), 2);
}

#[test]
fn verify_is_content_only_with_whole_documents_and_names_each_other() {
    let home = Home::new();
    assert_eq!(
        home.printed(&["verify"]).trim(),
        "There is nothing on the shelf yet."
    );
    let [whole, damaged, newer] = [(); 3].map(|()| home.put("5", "6", 7));
    assert_eq!(
        home.printed(&["verify"]).trim(),
        "All 3 documents on the shelf are whole."
    );
    let document = fs::read_to_string(home.document(&damaged)).unwrap();
    let changed = document.replace("\"leg\": 7", "\"leg\": 8");
    assert_ne!(changed, document);
    fs::write(home.document(&damaged), changed).unwrap();
    fs::copy("tests/data/ties/newer.json", home.document(&newer)).unwrap();
    let by_hand = home.folder().join("byhand.json");
    fs::copy("tests/data/ties/by-hand.json", &by_hand).unwrap();
    let before = fs::read(home.document(&damaged)).unwrap();

    let output = home.run(&["verify"]);
    assert_eq!(output.status.code(), Some(1));
    let text = String::from_utf8(output.stdout).unwrap();
    assert_eq!(text.lines().count(), 3, "{text}");
    for (file, why) in [
        (
            home.document(&damaged),
            "is damaged, for its contents do not have its checksum",
        ),
        (home.document(&newer), "was written by a newer Marlinspeak"),
        (by_hand, "has no checksum to be held against"),
    ] {
        let line = text.lines().find(|line| line.contains(path(&file)));
        assert!(line.is_some_and(|line| line.contains(why)), "{text}");
    }
    // Looking changes nothing.
    assert_eq!(fs::read(home.document(&damaged)).unwrap(), before);

    let output = home.run(&["verify", "--json"]);
    assert_eq!(output.status.code(), Some(1));
    let checked: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(checked["whole"], false);
    let state = |tie: &Tie| {
        let file = home.document(tie);
        let documents = checked["documents"].as_array().unwrap();
        let document = documents.iter().find(|one| one["file"] == path(&file));
        document.unwrap()["state"].clone()
    };
    assert_eq!(
        [state(&whole), state(&damaged), state(&newer)],
        ["whole", "bad", "bad"]
    );
}

#[test]
fn a_backup_goes_out_and_comes_back() {
    let (home, other) = (Home::new(), Home::new());
    let tie = home.put("5", "6", 7);
    home.put("7", "4", 2);
    home.shelf()
        .log(&Entry::of(&tie))
        .unwrap()
        .untroubled()
        .unwrap();
    let file = home.0.path().join("all.backup");
    let said = home.printed(&["backup", path(&file)]);
    assert_eq!(
        said.trim(),
        format!("2 ties and 1 entry of the log are in {}.", file.display())
    );
    assert_eq!(home.refused(&["backup", path(&file)]).0, 2);
    home.printed(&["backup", path(&file), "--replace"]);
    let said = other.printed(&["restore", path(&file)]);
    assert_eq!(
        said.trim(),
        format!(
            "2 ties and 1 entry of the log came from {}.",
            file.display()
        )
    );
    assert_eq!(
        other.shelf().list().unwrap().untroubled().unwrap(),
        home.shelf().list().unwrap().untroubled().unwrap()
    );
    // Cut short it gives back what is whole, says what is missing, and fails.
    let whole = fs::read(&file).unwrap();
    fs::write(&file, &whole[..whole.len() - 20]).unwrap();
    let output = other.run(&["restore", path(&file)]);
    assert_eq!(output.status.code(), Some(1));
    let said = String::from_utf8(output.stdout).unwrap();
    assert!(
        said.contains("1 line could not be read and was left out."),
        "{said}"
    );
}

#[test]
fn what_comes_back_in_eight_programs_at_once_comes_once() {
    let (home, other) = (Home::new(), Home::new());
    let tie = home.put("5", "7", 7);
    for leg in 1..6 {
        home.put("4", "7", leg);
    }
    let file = home.0.path().join("all.backup");
    home.printed(&["backup", path(&file)]);
    // One of the ties has gone on meanwhile: what was kept of it comes beside it, under a new id.
    let mut later = tie.clone();
    later.name = "gone on".to_owned();
    drop(other.shelf().begin(later).unwrap());
    let programs: Vec<_> = (0..8)
        .map(|_| {
            let mut command = other.command(&["restore", path(&file)]);
            command.stdout(Stdio::null()).spawn().unwrap()
        })
        .collect();
    for mut program in programs {
        assert!(in_time::end_in_time(&mut program).success());
    }
    let there = other.shelf().list().unwrap().untroubled().unwrap();
    assert_eq!(there.len(), 7, "{there:#?}");
    // And not again another day.
    other.printed(&["restore", path(&file)]);
    let there = other.shelf().list().unwrap().untroubled().unwrap();
    assert_eq!(there.len(), 7);
}

#[test]
fn the_settings_go_along_in_a_backup_and_come_back_where_there_are_none() {
    let home = Home::new();
    home.put("5", "7", 7);
    let settings = |folder: &Path| folder.join("marlinspeak/settings.json");
    let with = |home: &Home, config: &Path, args: &[&str]| {
        let output = home
            .command(args)
            .env("XDG_CONFIG_HOME", config)
            .output_in_time();
        let errors = String::from_utf8_lossy(&output.stderr).into_owned();
        assert!(output.status.success() && errors.is_empty(), "{errors}");
        String::from_utf8(output.stdout).unwrap()
    };
    let kept = Settings {
        flash: true,
        ..Settings::default()
    };
    let (here, there) = (home.0.path().join("here"), home.0.path().join("there"));
    let file = settings(&here);
    fs::create_dir_all(file.parent().unwrap()).unwrap();
    fs::write(&file, write_settings(&kept).unwrap()).unwrap();
    let backup = home.0.path().join("all.backup");
    with(&home, &here, &["backup", path(&backup)]);

    let other = Home::new();
    let told = "The settings came too, and hold from the next start.";
    let said = with(&other, &there, &["restore", path(&backup)]);
    assert!(said.contains(told), "{said}");
    let came = fs::read(settings(&there)).unwrap();
    assert_eq!(read_settings(&came), Ok(kept));
    // Those that are there stay.
    let own = write_settings(&Settings::default()).unwrap();
    fs::write(settings(&there), &own).unwrap();
    let said = with(&other, &there, &["restore", path(&backup)]);
    assert!(!said.contains(told), "{said}");
    assert_eq!(fs::read(settings(&there)).unwrap(), own);
}

#[test]
fn what_a_foreign_tie_is_called_steers_no_terminal_and_no_document() {
    let home = Home::new();
    let mut tie = home.put("5", "7", 7);
    tie.name = "bell\u{1b}[2J\u{9b}1m\u{202e}rope\u{7}".to_owned();
    home.shelf().save(&tie).unwrap().untroubled().unwrap();
    let harmful = |one: char| one != '\n' && one.is_control() || one == '\u{202e}';
    for args in [&["list"][..], &["list", "--json"], &["verify", "--json"]] {
        let said = home.printed(args);
        assert!(!said.contains(harmful), "{args:?}: {said:?}");
    }
    let list: Value = serde_json::from_str(&home.printed(&["list", "--json"])).unwrap();
    assert_eq!(list["ties"][0]["name"], "bell [2J 1mrope ");
}

#[test]
fn a_deleted_tie_comes_back() {
    let home = Home::new();
    let tie = home.put("5", "6", 7);
    let id = tie.id().as_str();
    let said = home.printed(&["delete", id]);
    assert!(said.contains(&format!("marlinspeak shelf undo {id}")));
    assert!(
        home.shelf()
            .list()
            .unwrap()
            .untroubled()
            .unwrap()
            .is_empty()
    );
    home.printed(&["undo", id]);
    assert_eq!(
        home.shelf().list().unwrap().untroubled().unwrap(),
        std::slice::from_ref(&tie)
    );
    let (code, sentence) = home.refused(&["undo", id]);
    assert_eq!(code, 2);
    assert!(
        sentence.starts_with(&format!("No tie {id} is deleted")),
        "{sentence}"
    );
}

#[test]
fn each_slip_has_its_sentence() {
    let home = Home::new();
    let rubbish = home.0.path().join("rubbish.json");
    fs::write(&rubbish, "[1, 2").unwrap();
    let nowhere = home.0.path().join("nowhere/tie.json");
    let tie = home.put("5", "6", 7);
    for (args, code, part) in [
        (
            &["export", "no tie", "x.json"][..],
            2,
            "“no tie” is not the name of a tie",
        ),
        (
            &["export", "unknown9", "x.json"],
            2,
            "There is no tie unknown9 on the shelf",
        ),
        (
            &["delete", "unknown9"],
            2,
            "There is no tie unknown9 on the shelf",
        ),
        (&["import", path(&rubbish)], 1, "is not readable as JSON"),
        (&["restore", path(&rubbish)], 1, "is not readable as JSON"),
        (&["import", path(&nowhere)], 1, "could not be read"),
        (&["import", path(home.0.path())], 1, "is not a plain file"),
        (
            &["export", tie.id().as_str(), path(&nowhere)],
            1,
            "could not be written",
        ),
        (
            &["lst"],
            2,
            "There is no option or command “lst” here: “marlinspeak shelf” takes list, export, ",
        ),
    ] {
        let (given, sentence) = home.refused(args);
        assert_eq!(given, code, "{sentence}");
        assert!(sentence.contains(part), "{args:?}: {sentence}");
    }
    assert!(!Path::new("x.json").exists());
}

#[test]
fn a_tie_in_another_program_is_in_use() {
    let home = Home::new();
    let tie = home.put("5", "6", 7);
    let shelf = home.shelf();
    let taken = shelf.take_up(tie.id()).unwrap().untroubled().unwrap();
    let (code, sentence) = home.refused(&["delete", tie.id().as_str()]);
    assert_eq!(code, 1);
    assert!(sentence.starts_with("This tie is open in another window or terminal"));
    // But it can be listed and handed on.
    assert!(home.printed(&["list"]).contains("5 lead 6 bight"));
    home.printed(&[
        "export",
        tie.id().as_str(),
        path(&home.0.path().join("x.json")),
    ]);
    drop(taken);
    home.printed(&["delete", tie.id().as_str()]);
}

#[test]
fn a_hundred_megabytes_of_rubbish_are_refused_and_left() {
    let home = Home::new();
    let tie = home.put("5", "6", 7);
    let mut newer = tie.clone();
    newer.note = "newer".to_owned();
    home.shelf().save(&newer).unwrap().untroubled().unwrap();
    let size = 100 << 20;
    let rubbish = home.0.path().join("rubbish.json");
    fs::write(&rubbish, vec![b'['; size]).unwrap();
    for command in ["import", "restore"] {
        let (code, sentence) = home.refused(&[command, path(&rubbish)]);
        assert_eq!(code, 1);
        assert!(
            sentence.contains("is too large to be what it should be"),
            "{sentence}"
        );
    }
    // In the place of a document it gives way to the copy before it, and stays as it is.
    fs::rename(&rubbish, home.document(&tie)).unwrap();
    assert_eq!(home.run(&["verify"]).status.code(), Some(1));
    let output = home.run(&["list"]);
    assert_eq!(output.status.code(), Some(1));
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(text.contains("5 lead 6 bight"), "{text}");
    let aside = home.folder().join(format!("{}.damaged-1.json", tie.id()));
    assert_eq!(fs::metadata(aside).unwrap().len(), size as u64);
    home.printed(&["list"]);
}

#[cfg(unix)]
#[test]
fn a_full_disk_leaves_everything_as_it_was() {
    let home = Home::new();
    let tie = home.put("5", "6", 7);
    let file = home.0.path().join("tie.json");
    home.printed(&["export", tie.id().as_str(), path(&file)]);
    let before = fs::read(home.document(&tie)).unwrap();
    home.shelf().delete(tie.id()).unwrap();
    // RLIMIT_FSIZE of nothing; the signal that goes with it is ignored, as a full disk sends
    // none.
    for args in [
        &["import", path(&file)][..],
        &["backup", path(&home.0.path().join("backup"))],
        &["export", "byhand", path(&file), "--replace"],
    ] {
        fs::copy(
            "tests/data/ties/by-hand.json",
            home.folder().join("byhand.json"),
        )
        .unwrap();
        let listed = |folder: &Path| {
            let mut names: Vec<_> = fs::read_dir(folder)
                .unwrap()
                .map(|entry| entry.unwrap().file_name())
                .collect();
            // A lock holds nothing, and stays for the next one.
            names.retain(|name| name != ".bringing-in.lock");
            names.sort();
            names
        };
        let names = [listed(&home.folder()), listed(home.0.path())];
        let output = Command::new("sh")
            .args(["-c", "trap '' XFSZ; ulimit -f 0; exec \"$@\"", "sh"])
            .arg(env!("CARGO_BIN_EXE_marlinspeak"))
            .arg("shelf")
            .args(args)
            .env("XDG_DATA_HOME", home.0.path())
            .stdin(Stdio::null())
            .output_in_time();
        let (code, sentence) = code_and_sentence(&output);
        assert_eq!(code, 1);
        assert!(sentence.contains("could not be written"), "{sentence}");
        let after = [listed(&home.folder()), listed(home.0.path())];
        assert_eq!(after, names, "something half written is left");
    }
    assert_eq!(fs::read(&file).unwrap(), before);
    assert!(
        home.printed(&["import", path(&file)])
            .contains("is on the shelf")
    );
}

#[cfg(unix)]
#[test]
fn a_folder_that_may_not_be_written_to_is_said_and_read_all_the_same() {
    use std::os::unix::fs::PermissionsExt;

    let home = Home::new();
    let tie = home.put("5", "6", 7);
    let file = home.0.path().join("tie.json");
    home.printed(&["export", tie.id().as_str(), path(&file)]);
    let allow = |mode| {
        let around = home.folder().parent().unwrap().to_owned();
        for folder in [home.folder(), around, home.0.path().to_owned()] {
            fs::set_permissions(folder, fs::Permissions::from_mode(mode)).unwrap();
        }
    };
    // The superuser may write anywhere; somebody else stands in.
    let as_somebody = |args: &[&str]| {
        let is_root = fs::read_to_string("/proc/self/status")
            .is_ok_and(|status| status.contains("\nUid:\t0\t"));
        if !is_root {
            return home.run(args);
        }
        let program = home.0.path().parent().unwrap();
        let program = tempfile::Builder::new().tempdir_in(program).unwrap();
        fs::set_permissions(program.path(), fs::Permissions::from_mode(0o755)).unwrap();
        let copy = program.path().join("marlinspeak");
        fs::copy(env!("CARGO_BIN_EXE_marlinspeak"), &copy).unwrap();
        Command::new("setpriv")
            .args(["--reuid=65534", "--regid=65534", "--clear-groups"])
            .arg(copy)
            .arg("shelf")
            .args(args)
            .env("XDG_DATA_HOME", home.0.path())
            // The settings of whoever runs this are not somebody's to read.
            .env("XDG_CONFIG_HOME", home.0.path().join("config"))
            .stdin(Stdio::null())
            .output_in_time()
    };
    fs::copy("tests/data/ties/by-hand.json", &file).unwrap();
    allow(0o555);
    // What is kept is its owner's alone to read: that is who looks, who may not write all the same.
    // Only the superuser can give it away, and only then does somebody else stand in.
    Command::new("chown")
        .args(["-R", "65534:65534", path(home.0.path())])
        .stderr(Stdio::null())
        .status()
        .unwrap();
    let (code, sentence) = code_and_sentence(&as_somebody(&["import", path(&file)]));
    assert_eq!(code, 1);
    assert!(sentence.contains("could not be"), "{sentence}");
    let (code, _) = code_and_sentence(&as_somebody(&["delete", tie.id().as_str()]));
    assert_eq!(code, 1);
    let listed = as_somebody(&["list"]);
    assert!(String::from_utf8_lossy(&listed.stdout).contains("5 lead 6 bight"));
    assert_eq!(listed.status.code(), Some(0));
    allow(0o755);
    assert_eq!(home.shelf().list().unwrap().untroubled().unwrap(), [tie]);
}
