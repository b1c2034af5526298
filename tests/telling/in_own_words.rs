//! Nothing in another language: why the system or a reader refuses, the help of every command and each
//! slip of the command line, told by the real program in every language; what the system says itself
//! stands in the log file alone.

use crate::in_time;

use in_time::InTime as _;
use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use marlinspeak::files::{FileAction, FileError, Reason};
use marlinspeak::session::NotLogged;
use marlinspeak::settings::SettingsError;
use marlinspeak::shelf::ShelfError;
use marlinspeak::words::Words;
use strum::VariantArray as _;
use tempfile::TempDir;

/// Every command, as it is typed.
const COMMANDS: [&[&str]; 31] = [
    &[],
    &["steps"],
    &["fit"],
    &["rig"],
    &["shelf"],
    &["shelf", "list"],
    &["shelf", "export"],
    &["shelf", "import"],
    &["shelf", "verify"],
    &["shelf", "backup"],
    &["shelf", "restore"],
    &["shelf", "delete"],
    &["shelf", "undo"],
    &["tie"],
    &["sheet"],
    &["sheet", "card"],
    &["sheet", "strip"],
    &["sheet", "stage"],
    &["sheet", "reel"],
    &["sheet", "class"],
    &["sheet", "order"],
    &["count"],
    &["order"],
    &["order", "list"],
    &["order", "show"],
    &["order", "plan"],
    &["order", "keep"],
    &["order", "delete"],
    &["order", "undo"],
    &["doctor"],
    &["install-artifacts"],
];

/// What the standard library, its systems and the reader of JSON say.
const FOREIGN: [&str; 10] = [
    "os error",
    "No such file",
    "Not a directory",
    "No space left",
    "Is a directory",
    "expected",
    "invalid type",
    "at line",
    "does not hold",
    "at path",
];

/// A person's own folders, and the program in them.
struct Home(TempDir);

impl Home {
    fn new() -> Self {
        Self(TempDir::new().unwrap())
    }

    fn path(&self) -> &Path {
        self.0.path()
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        command
            .args(args)
            .env("HOME", self.path())
            .env("LC_ALL", "C")
            .env("XDG_DATA_HOME", self.path().join("data"))
            .env("XDG_CONFIG_HOME", self.path().join("config"))
            .env("XDG_STATE_HOME", self.path().join("state"))
            .env_remove("DISPLAY")
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("WAYLAND_SOCKET")
            .stdin(Stdio::null());
        command
    }

    fn run(&self, args: &[&str]) -> Output {
        self.command(args).output_in_time()
    }

    /// What is told on both ways out.
    fn told(&self, args: &[&str]) -> String {
        let Output { stdout, stderr, .. } = self.run(args);
        let [out, errors] = [stdout, stderr].map(|bytes| String::from_utf8(bytes).unwrap());
        format!("{out}{errors}")
    }

    fn log(&self) -> String {
        let file = self.path().join("state/marlinspeak/marlinspeak.log");
        fs::read_to_string(file).unwrap_or_default()
    }
}

fn tags() -> Vec<String> {
    let tags: Vec<String> = Words::known().iter().map(ToString::to_string).collect();
    assert!(tags.len() > 3, "{tags:?}");
    tags
}

fn words(tag: &str) -> Words {
    Words::load(Some(tag)).unwrap()
}

fn assert_own_words(tag: &str, told: &str) {
    assert!(!told.trim().is_empty(), "{tag}: nothing is told");
    for foreign in FOREIGN {
        assert!(!told.contains(foreign), "{tag}: {foreign} in {told}");
    }
}

#[test]
fn each_kind_of_reason_has_words_of_its_own_in_each_language() {
    let mut all = BTreeSet::new();
    for tag in tags() {
        for reason in Reason::VARIANTS {
            let told = words(&tag).reason(*reason);
            assert_own_words(&tag, &told);
            assert!(
                all.insert(told.clone()),
                "{tag} {reason:?}: {told} comes twice"
            );
        }
    }
}

/// An error of the system about a file, as the shelf hands it on.
fn refused(code: i32) -> ShelfError {
    let error = io::Error::from_raw_os_error(code);
    ShelfError::File(FileError::io(FileAction::Write, Path::new("tie.json"))(
        error,
    ))
}

/// What the window and the guided terminal tell: the same sentences. The numbers are those of
/// `errno.h` on Linux.
#[cfg(target_os = "linux")]
#[test]
fn the_sentences_of_a_tie_in_hand_tell_reasons_in_every_language() {
    for tag in tags() {
        let words = words(&tag);
        for (code, reason) in [
            (28, Reason::NoRoom),
            (13, Reason::NotAllowed),
            (2, Reason::NotFound),
            (16, Reason::InUse),
            (30, Reason::ReadOnly),
            (5, Reason::Broken),
            (24, Reason::Other),
        ] {
            let error = refused(code);
            let kept_by_name = words.presets_failed(&error);
            let sentences = [
                words.not_saved(&error),
                words.no_ties(&error),
                words.shelf_error(&error),
                NotLogged::Shelf(error).sentence(&words),
                SettingsError::Io(reason).sentence(&words),
            ];
            let told = sentences
                .iter()
                .flat_map(|sentence| [sentence.shown().to_owned(), sentence.spoken().to_string()]);
            for told in told.chain([kept_by_name]) {
                assert_own_words(&tag, &told);
                assert!(told.contains(&words.reason(reason)), "{tag} {code}: {told}");
            }
        }
    }
}

#[test]
fn what_the_system_refuses_is_told_in_every_language_and_its_words_are_logged() {
    for tag in tags() {
        let tell = |home: &Home, args: &[&str]| home.told(&[&["--lang", &tag], args].concat());
        let reason = |reason| words(&tag).reason(reason);
        let home = Home::new();
        fs::write(home.path().join("file"), "").unwrap();
        let file = |name: &str| home.path().join(name).display().to_string();

        let nowhere = file("nowhere/card.pdf");
        let sheet = [
            "sheet", "card", "--leads", "3", "--bights", "5", "--out", &nowhere,
        ];
        let told = tell(&home, &sheet);
        assert_own_words(&tag, &told);
        assert!(told.contains(&reason(Reason::NotFound)), "{told}");
        assert!(home.log().contains("os error 2"), "{}", home.log());
        assert!(!home.log().contains("card.pdf"), "{}", home.log());

        let told = tell(&home, &["shelf", "import", &file("nowhere.json")]);
        assert_own_words(&tag, &told);
        assert!(told.contains(&reason(Reason::NotFound)), "{told}");

        let below = file("file/below");
        let mut command = home.command(&["--lang", &tag, "shelf", "list"]);
        let output = command.env("XDG_DATA_HOME", &below).output_in_time();
        let told = String::from_utf8(output.stderr).unwrap();
        assert_own_words(&tag, &told);
        assert!(told.contains(&reason(Reason::NotAFolder)), "{told}");
        let mut command = home.command(&["--lang", &tag, "doctor"]);
        let output = command
            .env("XDG_DATA_HOME", &below)
            .env("XDG_CONFIG_HOME", &below)
            .env("XDG_STATE_HOME", &below)
            .env("SPEECHD_ADDRESS", "unix_socket:/nonexistent")
            .output_in_time();
        let told = String::from_utf8(output.stdout).unwrap();
        assert_own_words(&tag, &told);
        let named = told.matches(&reason(Reason::NotAFolder)).count();
        assert_eq!(named, 3, "{told}");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_told_in_every_language() {
    for tag in tags() {
        let home = Home::new();
        let full = File::options().write(true).open("/dev/full").unwrap();
        let mut command = home.command(&["--lang", &tag, "steps", "--leads", "3", "--bights", "5"]);
        let started = command.stdout(full).stderr(Stdio::piped()).spawn();
        let output = started.unwrap().output_in_time();
        assert_eq!(output.status.code(), Some(1));
        let told = String::from_utf8(output.stderr).unwrap();
        assert_own_words(&tag, &told);
        assert!(told.contains(&words(&tag).reason(Reason::NoRoom)), "{told}");
        assert!(home.log().contains("os error 28"), "{}", home.log());
    }
}

#[test]
fn what_is_wrong_with_a_document_is_told_in_every_language() {
    for tag in tags() {
        let home = Home::new();
        let file = home.path().join("tie.json");
        let tie = r#"{ "version": 1, "id": "b3k7m2", "knot": { "leads": "five" } }"#;
        for (contents, place) in [
            ("{\n  \"version\": oops", Some("2")),
            (tie, Some("knot.leads")),
            ("{ \"version\": 9999 }", Some("9999")),
            ("[]", None),
        ] {
            fs::write(&file, contents).unwrap();
            let name = file.display().to_string();
            let told = home.told(&["--lang", &tag, "shelf", "import", &name]);
            assert_own_words(&tag, &told);
            assert!(place.is_none_or(|place| told.contains(place)), "{told}");
        }
        assert!(home.log().contains("at line 2 column"), "{}", home.log());
        let settings = home.path().join("config/marlinspeak/settings.json");
        fs::create_dir_all(settings.parent().unwrap()).unwrap();
        fs::write(&settings, r#"{ "version": 1, "flash": "yes" }"#).unwrap();
        let told = home.told(&["--lang", &tag, "doctor"]);
        assert_own_words(&tag, &told);
        assert!(told.contains("flash"), "{told}");
    }
}

#[test]
fn a_command_that_succeeds_leaves_no_log() {
    let home = Home::new();
    let output = home.run(&["steps", "--leads", "3", "--bights", "5"]);
    assert!(output.status.success());
    assert!(!home.path().join("state").exists());
}

/// The help of a command, its lines without the spaces around them.
fn help(home: &Home, tag: &str, command: &[&str], flag: &str) -> Vec<String> {
    let output = home.run(&[command, &["--lang", tag, flag]].concat());
    assert!(output.status.success(), "{tag} {command:?}");
    assert!(output.stderr.is_empty(), "{tag} {command:?}");
    let text = String::from_utf8(output.stdout).unwrap();
    text.lines().map(|line| line.trim().to_owned()).collect()
}

/// The words of a line of help: what stands behind the names of options and their values.
fn description(line: &str) -> &str {
    let behind = line.rsplit_once("  ").map_or(line, |(_, behind)| behind);
    behind.trim()
}

/// Whether there are words in it at all, and not only names of options, signs and figures.
fn has_words(text: &str) -> bool {
    !text.starts_with('-')
        && text
            .split(|letter: char| !letter.is_alphabetic())
            .filter(|word| word.chars().count() > 2)
            .count()
            > 1
}

#[test]
fn the_help_of_every_command_is_in_the_language_of_the_words() {
    let home = Home::new();
    for command in COMMANDS {
        for flag in ["--help", "-h"] {
            let english = help(&home, "en", command, flag);
            assert!(
                english.iter().any(|line| line == "Options:"),
                "{english:#?}"
            );
            let english: BTreeSet<&str> = english
                .iter()
                .map(|line| description(line))
                .filter(|line| has_words(line))
                .collect();
            assert!(!english.is_empty(), "{command:?}");
            for tag in &tags()[1..] {
                let lines = help(&home, tag, command, flag);
                for line in &lines {
                    let told = description(line);
                    assert!(!english.contains(told), "{tag} {command:?}: {line}");
                    for left in ["help-", "value-", "Usage", "Commands:", "Options:"] {
                        assert!(!told.contains(left), "{tag} {command:?}: {line}");
                    }
                }
                assert!(
                    lines.len() >= english.len(),
                    "{tag} {command:?}: {lines:#?}"
                );
            }
        }
    }
}

#[test]
fn no_id_of_a_message_stands_in_the_english_help() {
    let home = Home::new();
    for command in COMMANDS {
        let text = help(&home, "en", command, "--help").join("\n");
        assert!(
            !text.contains("help-") && !text.contains("value-"),
            "{text}"
        );
        assert!(text.contains("Usage: marlinspeak"), "{text}");
    }
}

#[test]
fn help_follows_the_settings_and_then_the_system() {
    let home = Home::new();
    let settings = home.path().join("config/marlinspeak/settings.json");
    fs::create_dir_all(settings.parent().unwrap()).unwrap();
    fs::write(&settings, r#"{ "version": 1, "language": "fr" }"#).unwrap();
    let french = words("fr").plainly("help-doctor", &[]);
    let told = |command: &mut Command| {
        let output = command.output_in_time();
        let text = String::from_utf8(output.stdout).unwrap();
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let of = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told(&mut home.command(&["doctor", "--help"])).contains(&of(&french)));
    fs::remove_file(&settings).unwrap();
    let spanish = words("es").plainly("help-doctor", &[]);
    let mut command = home.command(&["doctor", "--help"]);
    command.env("LC_ALL", "es_MX.UTF-8");
    assert!(told(&mut command).contains(&of(&spanish)));
    let german = words("de").plainly("help-doctor", &[]);
    command.args(["--lang", "de"]);
    assert!(told(&mut command).contains(&of(&german)));
}

#[test]
fn each_slip_of_the_command_line_is_told_in_every_language() {
    let home = Home::new();
    for slip in [
        &["stepz"][..],
        &["steps", "--lead", "5"],
        &["steps", "--leads"],
        &["steps", "--leads", "5", "--leads", "6"],
        &["steps", "--json=yes"],
        &["shelf"],
        &["shelf", "export"],
        &["shelf", "list", "more"],
        &["sheet", "poster"],
        &["--leads", "5", "steps"],
        &["steps", "--leads", "5", "--bights", "six"],
        &["steps", "--leads", "5", "--bights", "7", "--side", "up"],
        &["tie", "--lesson", "nine"],
        &["fit", "--object", "thick"],
    ] {
        let mut all = BTreeSet::new();
        for tag in tags() {
            let output = home.run(&[&["--lang", &tag], slip].concat());
            assert_eq!(output.status.code(), Some(2), "{tag} {slip:?}");
            let told = String::from_utf8(output.stderr).unwrap();
            assert_own_words(&tag, &told);
            for left in ["error:", "Usage", "tip:", "For more information"] {
                assert!(!told.contains(left), "{tag} {slip:?}: {told}");
            }
            assert_eq!(told.trim_end().lines().count(), 1, "{tag} {slip:?}: {told}");
            assert!(all.insert(told.clone()), "{tag} {slip:?}: {told}");
        }
    }
}
