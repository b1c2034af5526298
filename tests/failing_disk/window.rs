//! The same in a real window: what is heard, what is kept, what is asked on leaving.

use std::path::Path;
use std::process::{Command, Stdio};
use std::thread;
use std::time::Duration;

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::shelf::Presses;
use marlinspeak::words::Words;
use tempfile::TempDir;

use crate::disk::{ANY, CALLS, CHANGES, FailingDisk, Fault};
use crate::display::Display;
use crate::program::{PROGRAM, Program, heard, without_lock_out};
use crate::ssip::Service;
use crate::waiting::lines_of;
use crate::{DEADLINE, tie_in, wait_for_presses};

/// What comes of a press is said by then.
const ECHO: Duration = Duration::from_millis(150);
const KNOT: [&str; 4] = ["--leads", "3", "--bights", "4"];

/// The window is not there before the disk has answered: that is told where it was started from.
#[test]
fn a_disk_that_hangs_before_the_window_opens_is_told_and_then_it_opens() {
    // Where the settings, the ties, and the place of the window are.
    thread::scope(|scope| {
        for part in ["config", "marlinspeak", "state"] {
            scope.spawn(move || is_told_before_it_opens(part));
        }
    });
}

fn is_told_before_it_opens(part: &str) {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let around = TempDir::new().unwrap();
    let data = around.path().join("data");
    let disk = FailingDisk::build(around.path());
    without_lock_out(&data);
    let (errors, writer) = std::io::pipe().unwrap();
    let errors = lines_of(errors);
    let mut command = Command::new(PROGRAM);
    command
        .envs(disk.environment(ANY, &data.join(part)))
        .stderr(writer);
    disk.break_down(Fault::Hangs);
    let mends = &disk;
    let (program, told, errors) = thread::scope(|scope| {
        let looking = scope.spawn(move || {
            let told = errors.recv_timeout(DEADLINE);
            mends.mend();
            (told, errors)
        });
        // It comes back when the window is there.
        let program = Program::start_by(&mut command, &display, &service, &data, &KNOT);
        let (told, errors) = looking.join().unwrap();
        (program, told, errors)
    });
    let told = told.unwrap_or_else(|_| panic!("{part}: never told"));
    assert!(
        told.starts_with("The disk is slow to answer."),
        "{part}: {told}"
    );
    hears(&service, &says[0]);
    display.press("ctrl+q");
    assert_eq!(program.ends().0, Some(0), "{part}");
    drop(command);
    let more: Vec<String> = errors.iter().collect();
    assert!(more.is_empty(), "{part}: {more:?}");
}

/// What is said at every step.
fn says() -> Vec<String> {
    let script = Script::new(Plan::read("3", "4", "1", "").unwrap(), AtOnce::default());
    let words = Words::english();
    let steps = script.steps().map(|step| words.say(&step).into());
    steps.collect()
}

/// A tie begun in a window on a disk that can be broken down at one kind of call.
struct Begun {
    around: TempDir,
    disk: FailingDisk,
    program: Program,
}

impl Begun {
    fn new(display: &Display, service: &Service, call: &str) -> Self {
        Self::within(display, service, |disk, around| {
            let under = around.join("data/marlinspeak");
            let mut command = Command::new(PROGRAM);
            command.envs(disk.environment(call, &under));
            command
        })
    }

    /// The same by a command that is made once the disk is there, in a folder around it.
    fn within(
        display: &Display,
        service: &Service,
        command: impl FnOnce(&FailingDisk, &Path) -> Command,
    ) -> Self {
        let around = TempDir::new().unwrap();
        let data = around.path().join("data");
        let disk = FailingDisk::build(around.path());
        without_lock_out(&data);
        let mut command = command(&disk, around.path());
        command.stderr(Stdio::piped());
        let program = Program::start_by(&mut command, display, service, &data, &KNOT);
        Self {
            around,
            disk,
            program,
        }
    }

    fn data(&self) -> std::path::PathBuf {
        self.around.path().join("data")
    }
}

/// Waits until something is said that begins so, whatever is said before it.
fn hears(service: &Service, beginning: &str) -> String {
    let mut others = Vec::new();
    while let Some(text) = service.next_text(DEADLINE) {
        if text.starts_with(beginning) {
            return text;
        }
        others.push(text);
    }
    panic!("never said: {beginning}; but {others:#?}");
}

fn presses_on(data: &Path) -> Presses {
    tie_in(data).presses
}

#[test]
fn a_window_on_a_disk_that_fails_or_hangs_says_so_and_asks_before_it_leaves() {
    // Each of them waits for seconds: the two faults do so at the same time, on a display each.
    thread::scope(|scope| {
        for fault in [Fault::Fails, Fault::Hangs] {
            scope.spawn(move || says_so_and_asks(fault));
        }
    });
}

fn says_so_and_asks(fault: Fault) {
    let (display, says) = (Display::start(), says());
    for call in CALLS {
        let service = Service::start();
        let begun = Begun::new(&display, &service, call);
        assert_eq!(heard(&service), says[0]);
        display.press("space");
        assert_eq!(heard(&service), says[1]);
        wait_for_presses(&begun.data(), 1);
        begun.disk.break_down(fault);
        display.press("space");
        assert_eq!(heard(&service), says[2], "{call} {fault:?}");
        let told = match fault {
            Fault::Fails => "This tie cannot be saved (",
            _ => "Not saved yet: the disk is slow to answer.",
        };
        let told = hears(&service, told);
        assert!(told.ends_with(&says[2]), "{call} {fault:?}: {told}");
        leaves_unsaved(&display, &service, begun.program, "");
        begun.disk.mend();
        let data = begun.around.path().join("data");
        assert_eq!(presses_on(&data), Presses(1), "{call} {fault:?}");
    }
}

/// Leaves although what was pressed is not saved: that is asked, with `why`, and told once more at the end.
fn leaves_unsaved(display: &Display, service: &Service, program: Program, why: &str) {
    display.press("ctrl+q");
    let asked = hears(service, &format!("What you pressed last is not saved{why}"));
    assert!(asked.contains("Close once more to leave"), "{asked}");
    display.press("ctrl+q");
    let (code, complaint) = program.ends();
    assert_eq!(code, Some(1), "{complaint}");
    assert!(
        complaint.starts_with("What you pressed last is not saved"),
        "{complaint}"
    );
}

#[test]
fn who_is_asked_and_waits_for_the_disk_leaves_with_everything_saved() {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let begun = Begun::new(&display, &service, "write");
    assert_eq!(heard(&service), says[0]);
    begun.disk.break_down(Fault::Fails);
    display.press("space");
    hears(&service, "This tie cannot be saved (");
    display.press("ctrl+q");
    hears(&service, "What you pressed last is not saved");
    begun.disk.mend();
    wait_for_presses(&begun.data(), 1);
    // Any other press is no wish to leave; then there is nothing to ask any more.
    display.press("h");
    display.wait_until_heard();
    display.press("ctrl+q");
    let (code, complaint) = begun.program.ends();
    assert_eq!((code, &*complaint), (Some(0), ""));
}

/// The tie is there to be gone on with; that nothing of it can be saved is told before the first press.
#[test]
fn on_a_disk_that_can_be_read_and_no_more_a_tie_is_taken_up_and_that_is_told_at_once() {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let begun = Begun::new(&display, &service, CHANGES);
    assert_eq!(heard(&service), says[0]);
    display.press("space");
    assert_eq!(heard(&service), says[1]);
    wait_for_presses(&begun.data(), 1);
    display.press("ctrl+q");
    let Begun {
        around,
        disk,
        program,
    } = begun;
    assert_eq!(program.ends().0, Some(0));
    let data = around.path().join("data");
    disk.break_down(Fault::ReadOnly);
    let mut command = Command::new(PROGRAM);
    command
        .envs(disk.environment(CHANGES, &data.join("marlinspeak")))
        .stderr(Stdio::piped());
    let start = |command: &mut Command| Program::start_by(command, &display, &service, &data, &[]);
    let told =
        "What you press at this tie cannot be saved (the disk can be read but not written to)";
    // Who presses nothing leaves nothing unsaved, and is not asked.
    let program = start(&mut command);
    hears(&service, "A tie is waiting");
    display.press("space");
    assert!(hears(&service, told).ends_with(&says[1]));
    display.press("ctrl+q");
    let (code, complaint) = program.ends();
    assert_eq!((code, &*complaint), (Some(0), ""));
    let program = start(&mut command);
    hears(&service, "A tie is waiting");
    display.press("space");
    hears(&service, told);
    display.press("space");
    hears(&service, &says[2]);
    hears(&service, "This tie cannot be saved (the disk can be read");
    leaves_unsaved(&display, &service, program, " (the disk can be read");
    assert_eq!(presses_on(&data), Presses(1));
}

#[test]
fn where_no_folder_can_be_made_it_is_told_and_asked_before_what_was_done_is_left() {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let around = TempDir::new().unwrap();
    let data = around.path().join("data");
    without_lock_out(&data);
    std::fs::write(data.join("marlinspeak"), "in the way").unwrap();
    let mut command = Command::new(PROGRAM);
    command.stderr(Stdio::piped());
    let program = Program::start_by(&mut command, &display, &service, &data, &KNOT);
    while !heard(&service).contains(&says[0]) {}
    display.press("space");
    assert_eq!(heard(&service), says[1]);
    leaves_unsaved(&display, &service, program, " (");
}

/// No press waits for the disk or for the speech service: with every call to the disk hanging for ever
/// each press is answered, and with the service stopped as well the window goes on hearing.
#[test]
fn nothing_on_the_way_of_a_press_waits_for_disk_or_speech() {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let begun = Begun::new(&display, &service, ANY);
    assert_eq!(heard(&service), says[0]);
    display.press("space");
    assert_eq!(heard(&service), says[1]);
    wait_for_presses(&begun.data(), 1);
    begun.disk.break_down(Fault::Hangs);
    for said in &says[2..6] {
        display.press("space");
        hears(&service, said);
    }
    // The screens before and beside the tie ask the disk for what they show.
    for key in ["Escape", "p"] {
        display.press(key);
        display.wait_until_heard();
    }
    hears(&service, "Plan. ");
    service.freeze();
    for key in ["Tab", "Escape", "s", "Escape", "space"] {
        display.press(key);
        display.wait_until_heard();
    }
    service.thaw();
    begun.program.kill();
    begun.disk.mend();
    assert_eq!(presses_on(&begun.around.path().join("data")), Presses(1));
}

/// Presses that lead through every screen that asks the disk for something, and what is heard then, as it
/// begins; nothing where that says no more than the press.
const WAY: [(&str, &str); 17] = [
    ("space BackSpace space c j h", "Lead pass: 0 of 8"),
    ("w Escape o Return", "The system asks"),
    ("Return", "The card is in"),
    ("Escape Escape", "A tie is waiting"),
    ("t Down Right Left", "Settings. "),
    ("Escape", "A tie is waiting"),
    ("p Tab 4 Tab 7", "Plan. "),
    ("Escape Escape Escape", "A tie is waiting"),
    ("s b Escape i Escape n x Return a a u", ""),
    ("o", "On paper"),
    ("Escape Escape", "A tie is waiting"),
    ("o n a", ""),
    ("Escape Escape Escape", "A tie is waiting"),
    ("g Down Escape", "Words of the trade"),
    ("k Escape", ""),
    ("c Escape", "First ties"),
    ("space", "Taking up"),
];

/// Whatever a screen asks the disk for, another thread does: with the thread of the window asking for
/// nothing there is no trouble of a disk that it could wait for.
#[test]
fn the_thread_of_the_window_asks_the_disk_for_nothing() {
    let (display, service, says) = (Display::start(), Service::start(), says());
    let begun = Begun::within(&display, &service, |disk, around| {
        let mut command = Command::new(PROGRAM);
        command
            .envs(disk.environment(ANY, around))
            .envs([disk.noting()])
            .env("HOME", around);
        command
    });
    let disk = &begun.disk;
    assert_eq!(heard(&service), says[0]);
    assert!(!disk.noted().is_empty(), "before it opens it reads");
    for (keys, begins) in WAY {
        let mut texts = Vec::new();
        for key in keys.split(' ') {
            display.press(key);
            display.wait_until_heard();
            texts.extend(std::iter::from_fn(|| service.next_text(ECHO)));
        }
        // What is said of a screen that asks the disk comes when it has answered.
        while !texts.iter().any(|text| text.starts_with(begins)) {
            let text = service.next_text(DEADLINE);
            texts.push(text.unwrap_or_else(|| panic!("{keys}: {begins} not among {texts:#?}")));
        }
        let noted = disk.noted();
        assert!(noted.is_empty(), "{keys}: {noted:#?}");
    }
    display.press("ctrl+q");
    assert_eq!(begun.program.ends().0, Some(0));
    assert_eq!(disk.noted(), Vec::<String>::new(), "on leaving");
}
