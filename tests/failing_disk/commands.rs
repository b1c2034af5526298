//! Every command that writes, on a disk that fails at one kind of call: it did what it was asked to, or
//! says that it did not, and then all is as it was.

use crate::in_time::InTime as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use tempfile::TempDir;

use crate::disk::{CALLS, FailingDisk, Fault};

/// A person's own folders on such a disk, with a tie, an order and a tube kept by name.
pub struct Home {
    around: TempDir,
    pub disk: FailingDisk,
    tie: String,
    order: String,
}

impl Home {
    pub fn new() -> Self {
        let around = TempDir::new().unwrap();
        let disk = FailingDisk::build(around.path());
        let mut home = Self {
            around,
            disk,
            tie: String::new(),
            order: String::new(),
        };
        fs::create_dir(home.data()).unwrap();
        let order = r#"{ "pieces": [{ "leads": 4, "bights": 7, "cord": 3, "tube": 45 }] }"#;
        fs::write(home.path("order.json"), order).unwrap();
        home.succeeds(&["tie", "--leads", "3", "--bights", "5"]);
        let listed = home.succeeds(&["shelf", "list"]);
        listed.split(' ').next().unwrap().clone_into(&mut home.tie);
        home.succeeds(&["shelf", "export", &home.tie, &home.named("tie.json")]);
        home.succeeds(&["shelf", "backup", &home.named("whole.backup")]);
        let kept = home.succeeds(&["order", "keep", &home.named("order.json")]);
        let id = kept.trim().trim_start_matches("Kept as ");
        id.trim_end_matches('.').clone_into(&mut home.order);
        home.succeeds(&[&RIG[..], &["--keep-tube", "ash"]].concat());
        home
    }

    fn data(&self) -> PathBuf {
        self.around.path().join("data")
    }

    /// A file on the disk.
    pub fn path(&self, name: &str) -> PathBuf {
        self.data().join(name)
    }

    fn named(&self, name: &str) -> String {
        self.path(name).to_str().unwrap().to_owned()
    }

    /// A command on the disk, which can be broken down at one kind of call.
    pub fn command(&self, call: &str, args: &[&str]) -> Command {
        let data = self.data();
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        command
            .args(args)
            .envs(self.disk.environment(call, &data))
            .env("HOME", self.around.path())
            .env("XDG_DATA_HOME", &data)
            .env("XDG_CONFIG_HOME", self.around.path().join("config"))
            .env("XDG_STATE_HOME", self.around.path().join("state"))
            .env("LC_ALL", "C.UTF-8")
            .stdin(Stdio::null());
        command
    }

    fn run(&self, call: &str, args: &[&str]) -> Output {
        self.command(call, args).output_in_time()
    }

    pub fn succeeds(&self, args: &[&str]) -> String {
        let output = self.run("open", args);
        let errors = String::from_utf8_lossy(&output.stderr);
        assert!(output.status.success(), "{args:?}: {errors}");
        String::from_utf8(output.stdout).unwrap()
    }

    /// All that is kept, as the commands that only look tell it, and the files that were made.
    fn state(&self) -> String {
        let mut told = String::new();
        for args in [
            &["shelf", "list", "--json"][..],
            &["order", "list", "--json"],
        ] {
            told.push_str(&self.succeeds(args));
        }
        // How many copies there are is another matter.
        self.succeeds(&["shelf", "verify"]);
        let rack = fs::read_to_string(self.path("marlinspeak/rack.json"));
        told.push_str(&rack.unwrap_or_default());
        told
    }

    /// That the file a command says it made is the one that it makes where nothing fails.
    fn is_whole(&self, args: &[&str], made: &[String]) {
        let Some(out) = args.iter().position(|arg| *arg == "--out") else {
            return;
        };
        let read = || fs::read(args[out + 1]).unwrap();
        let found = read();
        self.renew(args, made);
        self.succeeds(args);
        assert!(found == read(), "{args:?} made half a file");
    }

    pub fn made(&self) -> Vec<String> {
        let files = fs::read_dir(self.data()).unwrap();
        let names = files.map(|file| file.unwrap().file_name().into_string().unwrap());
        let mut names: Vec<String> = names.collect();
        names.sort();
        names
    }

    /// Undoes what a command has done.
    pub fn renew(&self, args: &[&str], made: &[String]) {
        for name in self.made() {
            if !made.contains(&name) {
                fs::remove_file(self.path(&name)).unwrap();
            }
        }
        match args {
            ["order", "delete", id] if !self.succeeds(&["order", "list"]).contains(id) => {
                self.succeeds(&["order", "undo", id]);
            }
            ["shelf", "delete", _] if !self.succeeds(&["shelf", "list"]).contains(&self.tie) => {
                self.succeeds(&["shelf", "undo", &self.tie]);
            }
            _ => {}
        }
    }
}

const RIG: [&str; 9] = [
    "rig", "--leads", "5", "--bights", "7", "--tube", "45mm", "--cord", "3.5mm",
];

/// The commands, with whether each changes what is kept or makes a file.
pub fn commands(home: &Home) -> Vec<Vec<String>> {
    let (tie, order) = (home.tie.as_str(), home.order.as_str());
    let file = |name: &str| home.named(name);
    let sheet = |kind: &str, name: &str| {
        let knot = ["--leads", "3", "--bights", "5", "--dpi", "72"];
        let knot = if kind == "reel" { &knot[..4] } else { &knot };
        let out = file(name);
        [&["sheet", kind], knot, &["--out", &out]]
            .concat()
            .into_iter()
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    let typed = |args: &[&str]| args.iter().map(|one| (*one).to_owned()).collect::<Vec<_>>();
    vec![
        typed(&[&RIG[..], &["--keep-tube", "oak", "--keep-cord", "tan"]].concat()),
        typed(&["order", "keep", &file("order.json")]),
        typed(&["order", "keep", &file("order.json"), "--as", order]),
        typed(&["order", "delete", order]),
        typed(&["shelf", "import", &file("tie.json")]),
        typed(&["shelf", "export", tie, &file("other.json")]),
        typed(&["shelf", "backup", &file("other.backup")]),
        typed(&["shelf", "delete", tie]),
        typed(&["shelf", "restore", &file("whole.backup")]),
        sheet("card", "card.png"),
        sheet("card", "card.pdf"),
        sheet("stage", "stage.png"),
        sheet("reel", "reel.gif"),
    ]
}

#[test]
fn every_command_that_writes_tells_what_the_disk_refuses_and_leaves_all_as_it_was() {
    let home = Home::new();
    let mut refused = 0;
    for call in CALLS {
        for command in commands(&home) {
            let args: Vec<&str> = command.iter().map(String::as_str).collect();
            // What was brought back or made by the one before is taken away again.
            let (state, made) = (home.state(), home.made());
            home.disk.break_down(Fault::Fails);
            let output = home.run(call, &args);
            home.disk.mend();
            let errors = String::from_utf8(output.stderr).unwrap();
            // On a busy machine a few frames can take long.
            let is_progress = |line: &&str| line.starts_with("Made so far: ");
            let errors: Vec<&str> = errors.lines().filter(|line| !is_progress(line)).collect();
            let errors = errors.join("\n");
            if output.status.success() {
                assert_eq!(errors, "", "{call} {args:?}");
                home.is_whole(&args, &made);
                home.renew(&args, &made);
                continue;
            }
            refused += 1;
            assert_eq!(output.status.code(), Some(1), "{call} {args:?}: {errors}");
            assert!(output.stdout.is_empty(), "{call} {args:?}");
            assert_eq!(errors.lines().count(), 1, "{call}: {errors}");
            assert!(errors.contains("no room"), "{call} {args:?}: {errors}");
            assert_eq!(home.made(), made, "{call} {args:?}");
            assert_eq!(home.state(), state, "{call} {args:?}");
        }
    }
    assert!(refused > 30, "{refused} of {}", 4 * commands(&home).len());
}

/// What a disk that is broken down for good leaves behind is nothing.
#[test]
fn a_refused_command_leaves_no_unfinished_file() {
    let home = Home::new();
    for call in ["write", "fsync", "rename"] {
        for command in commands(&home) {
            let args: Vec<&str> = command.iter().map(String::as_str).collect();
            home.disk.break_down(Fault::Fails);
            let output = home.run(call, &args);
            home.disk.mend();
            if output.status.success() {
                home.renew(
                    &args,
                    &["order.json", "tie.json", "whole.backup", "marlinspeak"].map(str::to_owned),
                );
            }
            let left = unfinished(&home.data());
            assert!(left.is_empty(), "{call} {args:?}: {left:?}");
        }
    }
}

fn unfinished(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(unfinished(&path));
        } else if path
            .file_name()
            .is_some_and(|name| name.to_string_lossy().ends_with(".tmp"))
        {
            found.push(path);
        }
    }
    found
}
