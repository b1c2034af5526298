//! Every kind of sheet while it is being made: how far it is, that it stops when it is asked to, and
//! that every file that is there by then is whole.

use std::fs;
use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::{Duration, Instant};

use serde_json::json;
use tempfile::TempDir;

use crate::in_time::end_in_time;

/// How long something is waited for that is sure to come.
const PATIENCE: Duration = Duration::from_secs(300);

/// A sheet on its way into a folder in which nothing else is.
struct Making {
    program: Child,
    errors: Receiver<String>,
    folder: TempDir,
    /// The program keeps nothing here, and finds no settings.
    _home: TempDir,
}

/// What was said, how the program ended, and what is in the folder then.
struct Stopped {
    told: String,
    code: Option<i32>,
    files: Vec<String>,
    folder: TempDir,
}

impl Making {
    fn begin(args: &[&str], out: &str) -> Self {
        let (folder, home) = (TempDir::new().unwrap(), TempDir::new().unwrap());
        let mut program = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
            .arg("sheet")
            .args(args)
            .arg("--out")
            .arg(folder.path().join(out))
            .env("LC_ALL", "C")
            .env("HOME", home.path())
            .env("XDG_CONFIG_HOME", home.path().join("config"))
            .env("XDG_DATA_HOME", home.path().join("data"))
            .env("XDG_STATE_HOME", home.path().join("state"))
            .stdin(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let errors = BufReader::new(program.stderr.take().unwrap());
        let (tell, told) = mpsc::channel();
        thread::spawn(move || {
            for line in errors.lines().map_while(Result::ok) {
                let _ = tell.send(line);
            }
        });
        Self {
            program,
            errors: told,
            folder,
            _home: home,
        }
    }

    /// Waits until it is said how far it is.
    fn until_told(&mut self) {
        let line = self.errors.recv_timeout(PATIENCE);
        let line = line.expect("it says how far it is");
        assert!(
            line.starts_with("Made so far: ") && line.ends_with("Ctrl+C stops it."),
            "{line:?}"
        );
    }

    /// Waits until a file is there.
    fn until_made(&mut self, name: &str) {
        let until = Instant::now() + PATIENCE;
        while !self.folder.path().join(name).exists() {
            assert_eq!(self.program.try_wait().unwrap(), None, "it is at work");
            assert!(Instant::now() < until, "no {name}");
            // Between two looks, not instead of one.
            thread::sleep(Duration::from_millis(2));
        }
    }

    /// Asks it to end. A shell has what it runs in the background ignore the signal of Ctrl+C.
    fn stop(mut self) -> Stopped {
        let asked = Command::new("kill")
            .args(["-TERM", &self.program.id().to_string()])
            .status();
        assert!(asked.unwrap().success());
        let code = end_in_time(&mut self.program).code();
        let told: Vec<String> = self.errors.iter().collect();
        let told = told.join("\n");
        let files = fs::read_dir(self.folder.path()).unwrap();
        let names = files.map(|file| file.unwrap().file_name().into_string().unwrap());
        let mut files: Vec<String> = names.collect();
        files.sort();
        Stopped {
            told,
            code,
            files,
            folder: self.folder,
        }
    }
}

impl Stopped {
    /// It ended where it was asked to, and said so.
    fn in_time(&self) {
        assert_eq!(self.code, Some(1), "{}", self.told);
        assert!(self.told.contains("Stopped after "), "{}", self.told);
    }

    /// Pages of a PNG each are there, whole, and not all of them.
    fn has_whole_pages(&self, stem: &str) {
        assert!(!self.files.is_empty());
        for file in &self.files {
            let is_page = file.starts_with(stem)
                && Path::new(file)
                    .extension()
                    .is_some_and(|ending| ending == "png");
            assert!(is_page, "{file}");
            image::open(self.folder.path().join(file)).unwrap();
        }
        assert!(self.told.contains("what is written so far is whole"));
    }

    fn has_nothing(&self) {
        assert!(self.files.is_empty(), "{:?}", self.files);
    }
}

/// Hundreds of pages of 35 million dots each take any machine longer than ten seconds; it is asked to
/// stop after the first.
#[test]
fn a_long_sheet_tells_how_far_it_is_and_stops_when_asked_to() {
    let card = [
        "card", "--leads", "99", "--bights", "100", "--passes", "3", "--dpi", "600",
    ];
    let mut making = Making::begin(&card, "card.png");
    making.until_told();
    let stopped = making.stop();
    stopped.in_time();
    stopped.has_whole_pages("card-");
    // Of a PDF, whose pages are not painted and soon made, there is all or nothing.
    let stopped = Making::begin(&card, "card.pdf").stop();
    assert_ne!(stopped.code, Some(0));
    stopped.has_nothing();
}

#[test]
fn a_long_strip_stops_when_asked_to() {
    let strip = [
        "strip", "--leads", "5", "--bights", "7", "--tube", "4m", "--dpi", "300",
    ];
    let mut making = Making::begin(&strip, "strip.png");
    making.until_made("strip-1.png");
    let stopped = making.stop();
    stopped.in_time();
    stopped.has_whole_pages("strip-");
}

#[test]
fn a_long_order_stops_when_asked_to() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("order.json");
    let piece = |number: u16| {
        json!({
            "number": number, "name": format!("ring {number}"), "leads": 4, "bights": 7,
            "cord": 3, "tube": 45,
        })
    };
    let order = json!({ "pieces": (1..=99).map(piece).collect::<Vec<_>>() });
    fs::write(&file, order.to_string()).unwrap();
    let order = ["order", file.to_str().unwrap(), "--dpi", "300"];
    let mut making = Making::begin(&order, "order.png");
    making.until_made("order-1.png");
    let stopped = making.stop();
    stopped.in_time();
    stopped.has_whole_pages("order-");
}

/// A single page is whole or not there, whenever it is asked to end.
#[test]
fn a_stage_is_whole_or_not_there() {
    let stage = [
        "stage", "--leads", "5", "--bights", "7", "--passes", "3", "--dpi", "300",
    ];
    for pause in [0, 30, 300] {
        let making = Making::begin(&stage, "stage.png");
        thread::sleep(Duration::from_millis(pause));
        let stopped = making.stop();
        match &stopped.files[..] {
            [] => assert_ne!(stopped.code, Some(0)),
            [file] => {
                assert_eq!((&**file, stopped.code), ("stage.png", Some(0)));
                image::open(stopped.folder.path().join(file)).unwrap();
            }
            files => panic!("{files:?}"),
        }
    }
}

/// Thousands of frames of two million dots take any machine longer than ten seconds.
#[test]
fn a_long_reel_tells_how_far_it_is_and_stops_when_asked_to() {
    for name in ["reel.gif", "reel.webp", "reel.png"] {
        let reel = [
            "reel", "--leads", "25", "--bights", "41", "--passes", "3", "--width", "1920",
        ];
        let mut making = Making::begin(&reel, name);
        making.until_told();
        let stopped = making.stop();
        stopped.in_time();
        stopped.has_nothing();
        assert!(stopped.told.contains("no file was written"), "{name}");
    }
}

#[test]
fn a_class_stops_when_asked_to_and_keeps_the_cards_that_are_whole() {
    let class = [
        "class", "--leads", "25", "--bights", "41", "--passes", "3", "--copies", "2",
    ];
    let mut making = Making::begin(&class, "class.pdf");
    making.until_made("class.pdf");
    let stopped = making.stop();
    stopped.in_time();
    assert_eq!(stopped.files, ["class.pdf"]);
    let pdf = fs::read(stopped.folder.path().join("class.pdf")).unwrap();
    assert!(pdf.starts_with(b"%PDF") && pdf.trim_ascii_end().ends_with(b"%%EOF"));
    assert!(stopped.told.contains("the cards are there"));
}
