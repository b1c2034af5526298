//! Every call to the disk failing or hanging in turn, under the real program in a terminal and in a
//! window: what is said, what is kept, how it ends.
#![cfg(target_os = "linux")]

#[path = "failing_disk/commands.rs"]
mod commands;
#[path = "support/failing_disk.rs"]
mod disk;
#[path = "support/in_time.rs"]
mod in_time;

#[cfg(feature = "window")]
#[path = "support/display.rs"]
mod display;
#[path = "support/lines.rs"]
mod lines;
#[cfg(feature = "window")]
#[path = "support/program.rs"]
mod program;
#[cfg(feature = "window")]
#[path = "support/ssip.rs"]
mod ssip;
#[cfg(feature = "window")]
#[path = "failing_disk/window.rs"]
mod window;
#[cfg(feature = "window")]
#[path = "failing_disk/window_kills.rs"]
mod window_kills;

#[path = "failing_disk/waiting.rs"]
mod waiting;

use std::path::{Path, PathBuf};
use std::thread;
use std::time::Duration;

use disk::{CALLS, CHANGES, FailingDisk, Fault, folder_in_memory};
use lines::{DEADLINE, Lines};
use marlinspeak::shelf::{Presses, Shelf, Tie};
use tempfile::TempDir;

/// A tie begun on a disk that can be broken down at one kind of call: around the disk, where its data
/// are, the disk, the program.
fn begun(call: &str) -> (TempDir, PathBuf, FailingDisk, Lines) {
    let folder = TempDir::new().unwrap();
    let data = folder.path().join("data");
    let disk = FailingDisk::build(folder.path());
    let knot = ["--leads", "3", "--bights", "4"];
    let tie = Lines::start(&disk, call, &data, &knot);
    tie.prints("Lead pass, begin.");
    (folder, data, disk, tie)
}

fn tie_in(data: &Path) -> Tie {
    let shelf = Shelf::open(data.join("marlinspeak/ties")).unwrap();
    shelf.list().unwrap().untroubled().unwrap().remove(0)
}

fn wait_for_presses(data: &Path, presses: u64) {
    let until = std::time::Instant::now() + DEADLINE;
    while tie_in(data).presses != Presses(presses) {
        assert!(std::time::Instant::now() < until, "never on disk");
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(5));
    }
}

#[test]
fn a_disk_that_fails_or_hangs_is_told_and_nothing_is_called_kept_that_is_not() {
    // Each of them waits for seconds: they do so at the same time.
    thread::scope(|scope| {
        for fault in [Fault::Fails, Fault::Hangs] {
            for call in CALLS {
                scope.spawn(move || fails_or_hangs(fault, call));
            }
        }
    });
}

fn fails_or_hangs(fault: Fault, call: &str) {
    let (_around, data, disk, mut tie) = begun(call);
    tie.type_in("");
    tie.prints("Lead pass, leg 1 of 8.");
    wait_for_presses(&data, 1);
    disk.break_down(fault);
    tie.type_in("");
    tie.prints("Lead pass, leg 2 of 8.");
    tie.prints(match fault {
        Fault::Fails => "This tie cannot be saved (",
        _ => "Not saved yet: the disk is slow to answer.",
    });
    tie.type_in("q");
    let (code, complaint) = tie.ends();
    assert_eq!(code, Some(1), "{call} {fault:?}: {complaint}");
    assert!(
        complaint.starts_with("What you pressed last is not saved"),
        "{call} {fault:?}: {complaint}"
    );
    disk.mend();
    assert_eq!(tie_in(&data).presses, Presses(1), "{call} {fault:?}");
}

#[test]
fn what_a_mended_disk_takes_is_told_and_kept() {
    let mended = |call| {
        let (_around, data, disk, mut tie) = begun(call);
        disk.break_down(Fault::Fails);
        tie.type_in("");
        tie.prints("This tie cannot be saved (");
        tie.type_in("");
        tie.prints("Lead pass, leg 2 of 8.");
        disk.mend();
        tie.prints("This tie is saved again.");
        assert_eq!(tie_in(&data).presses, Presses(2), "{call}");
        tie.type_in("q");
        tie.prints("The tie is kept where it stands");
        let (code, complaint) = tie.ends();
        assert_eq!((code, &*complaint), (Some(0), ""), "{call}");
    };
    thread::scope(|scope| {
        for call in CALLS {
            scope.spawn(move || mended(call));
        }
    });
}

/// Where nothing can be written, or only what is there can be changed, a tie is taken up all the same.
#[test]
fn a_tie_of_which_nothing_can_be_saved_is_taken_up_and_that_is_told_at_once() {
    let read_only = "the disk can be read but not written to";
    let full = "no room is left on the disk";
    thread::scope(|scope| {
        for (call, fault, why) in [
            (CHANGES, Fault::ReadOnly, read_only),
            ("open", Fault::Fails, full),
            ("write", Fault::Fails, full),
        ] {
            scope.spawn(move || taken_up_unsaved(call, fault, why));
        }
    });
}

fn taken_up_unsaved(call: &str, fault: Fault, why: &str) {
    let (_around, data, disk, mut tie) = begun(call);
    tie.type_in("");
    tie.prints("Lead pass, leg 1 of 8.");
    tie.type_in("q");
    assert_eq!(tie.ends().0, Some(0));
    let before = tie_in(&data);
    let take_up = || {
        disk.break_down(fault);
        let tie = Lines::start(&disk, call, &data, &[]);
        tie.prints(&format!(
            "What you press at this tie cannot be saved ({why}):"
        ));
        tie
    };
    // Who presses nothing leaves nothing unsaved.
    let mut tie = take_up();
    tie.type_in("q");
    tie.prints("The tie is kept where it stands");
    assert_eq!(tie.ends(), (Some(0), String::new()), "{call}");
    let mut tie = take_up();
    tie.type_in("");
    tie.prints("Lead pass, leg 2 of 8.");
    tie.prints(&format!("This tie cannot be saved ({why})."));
    tie.type_in("q");
    let (code, complaint) = tie.ends();
    assert_eq!(code, Some(1), "{call}: {complaint}");
    let told = format!("What you pressed last is not saved ({why})");
    assert!(complaint.starts_with(&told), "{call}: {complaint}");
    assert_eq!(tie_in(&data), before, "{call}");
    // A disk that can be written to again is told, and takes what is pressed.
    let mut tie = take_up();
    disk.mend();
    tie.type_in("");
    tie.prints("This tie is saved again.");
    wait_for_presses(&data, 2);
    tie.type_in("q");
    tie.prints("The tie is kept where it stands");
    assert_eq!(tie.ends(), (Some(0), String::new()), "{call}");
}

/// Whoever pipes presses in has typed the last of them before the first is answered.
#[test]
fn what_is_typed_ahead_of_a_disk_that_refuses_is_told_why() {
    let (_around, data, disk, mut tie) = begun("write");
    tie.type_in("");
    tie.prints("Lead pass, leg 1 of 8.");
    wait_for_presses(&data, 1);
    disk.break_down(Fault::Fails);
    for line in ["", "", "", "q"] {
        tie.type_in(line);
    }
    let told = tie.prints_one_of(&["This tie cannot be saved (", "Not saved yet"]);
    assert!(told.starts_with("This tie cannot be saved ("), "{told}");
    let (code, complaint) = tie.ends();
    assert_eq!(code, Some(1));
    let why = "What you pressed last is not saved (no room is left on the disk)";
    assert!(complaint.starts_with(why), "{complaint}");
}

/// One pass of many legs, a step each and nothing between them.
const LONG: [&str; 8] = [
    "--leads",
    "9",
    "--bights",
    "101",
    "--at-once",
    "leg",
    "--checks",
    "pass",
];

/// The leg that a line of output tells, when it does.
fn told_leg(line: &str) -> Option<u16> {
    let rest = line.strip_prefix("Lead pass, leg ")?;
    rest.split(' ').next()?.parse().ok()
}

/// A tie of many legs is pressed and killed again and again; a press leads from a leg to the next.
struct Killed {
    around: TempDir,
    disk: FailingDisk,
    is_begun: bool,
    /// The leg that it stood at when it was taken up last; 0 before the first.
    stood: u16,
}

impl Killed {
    fn new() -> Self {
        let around = folder_in_memory();
        let disk = FailingDisk::build(around.path());
        Self {
            around,
            disk,
            is_begun: false,
            stood: 0,
        }
    }

    fn data(&self) -> PathBuf {
        self.around.path().join("data")
    }

    fn start(&mut self) -> Lines {
        let begun = ["--at-once", "leg", "--checks", "pass"];
        let args = if self.is_begun { &begun[..] } else { &LONG[..] };
        let lines = Lines::start(&self.disk, "fsync", &self.data(), args);
        if self.is_begun {
            lines.prints("Taking up");
        } else {
            lines.prints("Lead pass, begin.");
        }
        self.is_begun = true;
        lines
    }

    /// The leg that is on disk.
    fn on_disk(&self) -> u16 {
        tie_in(&self.data()).place.leg().unwrap_or(0)
    }

    /// Before the end of the pass there is room for so many presses more; else begins anew.
    fn renew(&mut self) {
        self.stood = self.on_disk();
        if self.stood + 60 > 202 {
            let disk = FailingDisk::build(self.around.path());
            std::fs::remove_dir_all(self.data()).unwrap();
            *self = Self {
                disk,
                is_begun: false,
                stood: 0,
                around: std::mem::replace(&mut self.around, TempDir::new().unwrap()),
            };
        }
    }
}

fn random(most: u64) -> u64 {
    use std::hash::{BuildHasher as _, RandomState};
    RandomState::new().hash_one(most) % most
}

#[test]
fn at_a_human_pace_no_kill_loses_a_press() {
    // The pace takes its time whatever the machine: four tyers at once.
    thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| kills_at_a_human_pace(5));
        }
    });
}

fn kills_at_a_human_pace(kills: u16) {
    let mut killed = Killed::new();
    let mut pressed_in_all = 0;
    for kill in 0..kills {
        let mut tie = killed.start();
        killed.disk.break_down(Fault::Usual);
        let presses = 1 + u16::try_from(random(3)).unwrap();
        for press in 1..=presses {
            tie.type_in("");
            tie.prints(&format!("Lead pass, leg {} of", killed.stood + press));
            // The pace is what is tried: three or four presses a second are quick hands.
            thread::sleep(Duration::from_millis(250 + random(100)));
        }
        tie.kill();
        killed.disk.mend();
        assert_eq!(killed.on_disk(), killed.stood + presses, "kill {kill}");
        pressed_in_all += presses;
        killed.renew();
    }
    assert!(pressed_in_all >= kills);
}

/// Kills the program in the middle of bursts of presses without any pause: what it has answered is on
/// disk but for one press at the most, and nothing is that was not pressed.
fn bursts(fault: Fault, kills: u16) {
    let slow = fault == Fault::Slow;
    let mut killed = Killed::new();
    let (mut answered_in_all, mut behind) = (0, 0);
    for kill in 0..kills {
        let mut tie = killed.start();
        killed.disk.break_down(fault);
        for _ in 0..50 {
            tie.type_in("");
        }
        let until = killed.stood + 1 + u16::try_from(random(if slow { 6 } else { 30 })).unwrap();
        tie.prints(&format!("Lead pass, leg {until} of"));
        let rest = tie.kill();
        killed.disk.mend();
        let told_late = rest.iter().any(|line| line.starts_with("Not saved yet"));
        let answered = rest.iter().filter_map(|line| told_leg(line)).max();
        let answered = answered.unwrap_or(until);
        let now = killed.on_disk();
        assert!(
            (answered - 1..=killed.stood + 50).contains(&now) || told_late,
            "kill {kill}: {answered} answered, {now} on disk"
        );
        behind += usize::from(now < answered);
        answered_in_all += answered - killed.stood;
        killed.renew();
    }
    assert!(answered_in_all > kills, "{answered_in_all}");
    println!("{behind} of {kills} kills found the last press not on disk");
}

#[test]
fn in_a_burst_no_kill_loses_more_than_one_press() {
    bursts(Fault::Usual, 20);
}

#[test]
fn on_a_slow_disk_no_kill_loses_more_than_what_is_not_acknowledged() {
    bursts(Fault::Slow, 10);
}
