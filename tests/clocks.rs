//! Clocks that are wrong: past the year 9999, before 1970, and set back in the middle of a tie, under the
//! real program in a terminal and in a window.
#![cfg(target_os = "linux")]

#[cfg(feature = "window")]
#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[cfg(feature = "window")]
#[path = "support/program.rs"]
mod program;
#[cfg(feature = "window")]
#[path = "support/ssip.rs"]
mod ssip;

#[path = "support/given_lines.rs"]
mod given_lines;
#[path = "support/preloaded.rs"]
mod preloaded;

use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;

use marlinspeak::shelf::{Presses, Shelf, Tie};
use tempfile::TempDir;

/// Seconds from now to a year that no document can say, and to years before 1970 and before 1900.
const WRONG: [i64; 3] = [252_000_000_000, -2_500_000_000, -4_200_000_000];
const DAY: i64 = 86_400;

/// The library, built once for all clocks of a run.
fn library() -> &'static Path {
    static LIBRARY: OnceLock<PathBuf> = OnceLock::new();
    LIBRARY.get_or_init(|| preloaded::build("other_clock"))
}

/// A person's own folders, and a clock that can be wrong.
struct Home(TempDir);

impl Home {
    fn new() -> Self {
        Self(TempDir::new().unwrap())
    }

    fn data(&self) -> PathBuf {
        self.0.path().join("data")
    }

    /// From now on the clock is wrong by so many seconds.
    fn shift(&self, seconds: i64) {
        // All at once: no look at it may find it half written.
        let beside = self.0.path().join("shift.new");
        fs::write(&beside, seconds.to_string()).unwrap();
        fs::rename(beside, self.0.path().join("shift")).unwrap();
    }

    fn clock(&self) -> [(&'static str, PathBuf); 2] {
        [
            ("LD_PRELOAD", library().to_owned()),
            ("CLOCK_SHIFT", self.0.path().join("shift")),
        ]
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        command
            .args(args)
            .envs(self.clock())
            .env("HOME", self.0.path())
            .env("XDG_DATA_HOME", self.data())
            .env("XDG_CONFIG_HOME", self.data().join("config"))
            .env("XDG_STATE_HOME", self.data().join("state"))
            .env("LC_ALL", "C.UTF-8")
            .env_remove("DISPLAY")
            .env_remove("WAYLAND_DISPLAY");
        command
    }

    /// Runs a command that is given these lines.
    fn run(&self, args: &[&str], lines: &str) -> Output {
        given_lines::run(&mut self.command(args), lines)
    }

    /// What a command prints that succeeds.
    fn prints(&self, args: &[&str], lines: &str) -> String {
        let output = self.run(args, lines);
        let errors = String::from_utf8(output.stderr).unwrap();
        assert!(output.status.success(), "{args:?}: {errors}");
        assert_eq!(errors, "", "{args:?}");
        String::from_utf8(output.stdout).unwrap()
    }

    fn ties(&self) -> Vec<Tie> {
        let shelf = Shelf::open(self.data().join("marlinspeak/ties")).unwrap();
        shelf.list().unwrap().untroubled().unwrap()
    }
}

const ROPE: [&str; 5] = ["tie", "--leads", "3", "--bights", "5"];
const RING: [&str; 5] = ["tie", "--leads", "4", "--bights", "7"];

#[test]
fn whatever_the_clock_says_what_was_pressed_is_kept_and_the_last_comes_first() {
    for wrong in WRONG {
        let home = Home::new();
        home.shift(wrong);
        // Two that are begun one after the other under such a clock, and one when it is right again.
        let kept = home.prints(&ROPE, "\n\nq\n");
        assert!(kept.contains("The tie is kept where it stands"), "{kept}");
        home.prints(&RING, "\nq\n");
        let leads = |home: &Home| {
            let ties = home.ties();
            let leads = ties.iter().map(|tie| tie.plan.knot().leads());
            leads.collect::<Vec<_>>()
        };
        assert_eq!(leads(&home), [4, 3], "{wrong}");
        assert_eq!(home.ties()[1].presses, Presses(2));
        // Who takes up the newest takes up that one.
        let taken = home.prints(&["tie"], "\nq\n");
        assert!(taken.contains("Taking up 4 lead, 7 bight"), "{taken}");
        let listed = home.prints(&["shelf", "list"], "");
        assert!(listed.contains("4 lead 7 bight"), "{listed}");
        home.shift(0);
        home.prints(&["tie", "--leads", "5", "--bights", "7"], "\nq\n");
        assert_eq!(leads(&home), [5, 4, 3], "{wrong}");
        let listed = home.prints(&["shelf", "list"], "");
        for ago in ["-1", "years", "9999"] {
            assert!(!listed.contains(ago), "{wrong}: {listed}");
        }
    }
}

#[test]
fn every_other_command_goes_by_whatever_the_clock_says() {
    for wrong in WRONG {
        let home = Home::new();
        home.shift(wrong);
        home.prints(&ROPE, "\nq\n");
        let file = home.0.path().join("order.json");
        let order = r#"{ "pieces": [{ "leads": 4, "bights": 7, "cord": 3, "tube": 45 }] }"#;
        fs::write(&file, order).unwrap();
        let file = file.to_str().unwrap();
        let kept = home.prints(&["order", "keep", file], "");
        let id = kept.trim().trim_start_matches("Kept as ");
        let id = id.trim_end_matches('.');
        let tie = home.ties().remove(0).id().to_string();
        let backup = home.0.path().join("backup");
        let backup = backup.to_str().unwrap();
        let out = home.0.path().join("card.pdf");
        let card = [
            &["sheet", "card"],
            &ROPE[1..],
            &["--out", out.to_str().unwrap()],
        ]
        .concat();
        for args in [
            &["order", "show", id][..],
            &["order", "list"],
            &["order", "delete", id],
            &["order", "undo", id],
            &["shelf", "verify"],
            &["shelf", "backup", backup],
            &["shelf", "delete", &tie],
            &["shelf", "undo", &tie],
            &["shelf", "restore", backup],
            &card,
        ] {
            home.prints(args, "");
        }
        // Neither display nor speech is there, which it says; of the rest it says nothing is wrong.
        let told = home.run(&["doctor"], "");
        let told = String::from_utf8(told.stdout).unwrap();
        assert!(!told.contains("panic"), "{told}");
        assert_eq!(home.ties().len(), 1);
    }
}

#[test]
fn a_clock_set_back_in_the_middle_of_a_tie_loses_nothing() {
    let home = Home::new();
    let mut child = home
        .command(&ROPE)
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .spawn()
        .unwrap();
    let mut input = child.stdin.take().unwrap();
    let shifts = [0, -DAY, WRONG[0], -400 * DAY, WRONG[1], DAY];
    for (shift, presses) in shifts.into_iter().zip(1..) {
        home.shift(shift);
        writeln!(input).unwrap();
        wait_for_presses(&home, presses);
    }
    drop(input);
    assert!(in_time::end_in_time(&mut child).success());
    let tie = home.ties().remove(0);
    let before = fs::read(
        home.data()
            .join(format!("marlinspeak/ties/{}.previous.json", tie.id())),
    );
    let before = marlinspeak::shelf::read_tie(&before.unwrap()).unwrap();
    assert!(tie.touched > before.touched);
    // An hour is no time at work, nor is a year.
    assert!(tie.work_time.seconds() < 3600.0);
}

fn wait_for_presses(home: &Home, presses: u64) {
    let until = std::time::Instant::now() + std::time::Duration::from_secs(60);
    let has_them = || {
        let ties = home.ties();
        ties.first()
            .is_some_and(|tie| tie.presses == Presses(presses))
    };
    while !has_them() {
        assert!(
            std::time::Instant::now() < until,
            "never on disk: {presses}"
        );
        // Between two looks, not instead of one.
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
}

#[cfg(feature = "window")]
#[test]
fn the_window_goes_on_whatever_the_clock_says() {
    use display::Display;
    use program::{PROGRAM, Program, heard, without_lock_out};
    use ssip::Service;

    let (display, service, home) = (Display::start(), Service::start(), Home::new());
    without_lock_out(&home.data());
    let mut presses = 0;
    for wrong in [WRONG[0], WRONG[1], 0] {
        home.shift(wrong);
        let mut command = Command::new(PROGRAM);
        command.envs(home.clock());
        let knot: &[&str] = if presses == 0 { &ROPE[1..] } else { &[] };
        let program = Program::start_by(&mut command, &display, &service, &home.data(), knot);
        heard(&service);
        if presses > 0 {
            // The tie that was left waits on the start screen.
            display.press("space");
            heard(&service);
        }
        for shift in [wrong, wrong - DAY] {
            home.shift(shift);
            display.press("space");
            heard(&service);
            presses += 1;
            wait_for_presses(&home, presses);
        }
        // The shelf and the orders reckon with the time too.
        for key in ["Escape", "s", "Escape", "o", "Escape"] {
            display.press(key);
            display.wait_until_heard();
        }
        display.press("ctrl+q");
        assert_eq!(program.ends().0, Some(0));
        while service.next_text(std::time::Duration::ZERO).is_some() {}
    }
}
