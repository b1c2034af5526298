//! What a power cut costs a tyer at the window, at three paces: nothing at a human one, one press at the
//! most in a burst, and on a slow disk no more than what the window shows not to be saved.

use std::path::PathBuf;
use std::process::Command;
use std::thread;
use std::time::{Duration, Instant};

use marlinspeak::guide::{AtOnce, Place, Plan, Script};
use marlinspeak::words::Words;
use tempfile::TempDir;

use crate::disk::{FailingDisk, Fault, folder_in_memory};
use crate::display::Display;
use crate::program::{PROGRAM, Program, heard, wait_for, without_lock_out};
use crate::ssip::Service;
use crate::{DEADLINE, random, tie_in};

/// Of so many legs that no kill comes to the second pass, which begins with a caution.
const KNOT: [&str; 6] = ["--leads", "9", "--bights", "211", "--passes", "2"];
/// So many presses stand ready in a burst.
const BURST: usize = 50;
/// What was said before the cut is heard by then.
const ECHO: Duration = Duration::from_millis(100);

/// A tie of many steps at a window, pressed and killed again and again.
struct Killed {
    display: Display,
    service: Service,
    around: TempDir,
    disk: FailingDisk,
    places: Vec<Place>,
    says: Vec<String>,
    /// Whether a caution stands at a step.
    cautions: Vec<bool>,
    /// The step that it stands at; none before it is begun.
    stood: Option<usize>,
}

impl Killed {
    fn new() -> Self {
        let around = folder_in_memory();
        let plan = Plan::read("9", "211", "2", "").unwrap();
        let script = Script::new(plan, AtOnce::default());
        let words = Words::english();
        Self {
            display: Display::start(),
            service: Service::start(),
            disk: FailingDisk::build(around.path()),
            around,
            places: script.places().collect(),
            cautions: script
                .steps()
                .map(|step| !step.cautions().is_empty())
                .collect(),
            says: script.steps().map(|step| words.say(&step).into()).collect(),
            stood: None,
        }
    }

    fn data(&self) -> PathBuf {
        self.around.path().join("data")
    }

    /// The step at which the tie on disk stands.
    fn on_disk(&self) -> usize {
        let here = tie_in(&self.data()).place;
        let step = self.places.iter().position(|place| *place == here);
        step.expect("a step of the script")
    }

    /// Starts the program with the tie in hand, and gives the step at which it stands.
    fn start(&mut self) -> (Program, usize) {
        let data = self.data();
        without_lock_out(&data);
        let mut command = Command::new(PROGRAM);
        command.envs(self.disk.environment("fsync", &data.join("marlinspeak")));
        let knot = if self.stood.is_some() {
            &[][..]
        } else {
            &KNOT[..]
        };
        let (display, service) = (&self.display, &self.service);
        let program = Program::start_by(&mut command, display, service, &data, knot);
        if self.stood.is_some() {
            assert!(heard(service).starts_with("A tie is waiting"));
            display.press("space");
            assert!(heard(service).starts_with("Taking up"));
        } else {
            assert_eq!(heard(service), self.says[0]);
            wait_for(|| {
                data.join("marlinspeak/ties")
                    .read_dir()
                    .ok()?
                    .next()
                    .map(drop)
            });
        }
        let stood = *self.stood.get_or_insert(0);
        (program, stood)
    }

    /// The step that is told, of those that a burst from here may come to.
    fn told(&self, stood: usize, text: &str) -> Option<usize> {
        (stood..=stood + BURST).rfind(|step| self.says[*step] == text)
    }

    /// Waits until a step is told that is not before this one, and gives it.
    fn hears_of(&self, stood: usize, step: usize) -> usize {
        loop {
            let text = self.service.next_text(DEADLINE).expect("a burst is told");
            if let Some(told) = self.told(stood, &text).filter(|told| *told >= step) {
                return told;
            }
        }
    }

    /// What was still told is of no interest any more.
    fn forget(&self) {
        while self.service.next_text(ECHO).is_some() {}
    }

    /// What is told stands on the screen in the frame after it, at the latest in the one after that. There
    /// are more to come: presses wait, and the leg in hand goes in.
    fn sees_another_frame(&self) {
        for _ in 0..2 {
            let seen = self.display.look();
            wait_for(|| (self.display.look() != seen).then_some(()));
        }
    }

    /// Whether a notice is to be seen: it stands in a frame, and no other line is so long and so bright.
    fn shows_a_notice(&self) -> bool {
        let dots = self.display.look();
        dots.chunk_by(|one, next| one == next).any(|line| {
            let [red, green, blue] = line[0].map(u32::from);
            line.len() > 400 && line.len() < Display::WIDTH && red + green + blue > 384
        })
    }

    /// Has one come and go that has nothing to do with the disk.
    fn tries_a_notice(&self) {
        wait_for(|| (!self.shows_a_notice()).then_some(()));
        self.display.unfocus();
        wait_for(|| self.shows_a_notice().then_some(()));
        self.display.focus("Marlinspeak");
        wait_for(|| (!self.shows_a_notice()).then_some(()));
    }

    /// Takes in where the tie stands now. Before the end of it there is room for a burst.
    fn stands(&mut self, step: usize) {
        assert!(step + 2 * BURST < self.says.len(), "a longer tie is needed");
        let next = &self.cautions[step..=step + BURST];
        assert!(
            !next.contains(&true),
            "a caution would be taken for a notice"
        );
        self.stood = Some(step);
    }
}

#[test]
fn at_a_human_pace_no_kill_of_the_window_loses_a_press() {
    // The pace takes its time whatever the machine: two tyers at once.
    thread::scope(|scope| {
        for _ in 0..2 {
            scope.spawn(|| kills_at_a_human_pace(6));
        }
    });
}

fn kills_at_a_human_pace(kills: usize) {
    let mut killed = Killed::new();
    for kill in 0..kills {
        let (program, stood) = killed.start();
        killed.disk.break_down(Fault::Usual);
        let presses = 1 + usize::try_from(random(3)).unwrap();
        for press in 1..=presses {
            // The pace is what is tried: three or four presses a second are quick hands.
            let next = Instant::now() + Duration::from_millis(250 + random(100));
            killed.display.press("space");
            assert_eq!(killed.hears_of(stood, stood + 1), stood + press);
            thread::sleep(next.saturating_duration_since(Instant::now()));
        }
        program.kill();
        killed.disk.mend();
        assert_eq!(killed.on_disk(), stood + presses, "kill {kill}");
        killed.stands(stood + presses);
    }
}

/// How often the window showed that the disk is slow, and how often more than a press was not on disk.
#[derive(Debug, Default)]
struct Found {
    shown: usize,
    behind: usize,
}

/// Kills the program in the middle of bursts without any pause. What it has answered is on disk but for one
/// press at the most, unless the window shows that more is not, and nothing is that was not pressed.
fn bursts(fault: Fault, kills: usize) -> Found {
    let mut killed = Killed::new();
    let (mut found, mut answered_in_all) = (Found::default(), 0);
    for kill in 0..kills {
        let (program, mut stood) = killed.start();
        if kill == 0 {
            // Before the first leg a caution stands in such a frame.
            killed.display.press("space");
            stood = killed.hears_of(stood, stood + 1);
            killed.tries_a_notice();
            wait_for(|| (killed.on_disk() == stood).then_some(()));
        }
        killed.disk.break_down(fault);
        killed.display.press_often("space", BURST);
        let until = stood + 1 + usize::try_from(random(20)).unwrap();
        let answered = killed.hears_of(stood, until);
        killed.sees_another_frame();
        program.freeze();
        let shown = killed.shows_a_notice();
        program.kill();
        killed.disk.mend();
        killed.forget();
        let now = killed.on_disk();
        let behind = answered.saturating_sub(now);
        assert!(
            now <= stood + BURST && (behind <= 1 || shown),
            "kill {kill}: stood at {stood}, {answered} answered, {now} on disk; shown: {shown}"
        );
        found.shown += usize::from(shown);
        found.behind += usize::from(behind > 1);
        answered_in_all += answered - stood;
        killed.stands(now);
    }
    assert!(answered_in_all > 2 * kills, "{answered_in_all}");
    found
}

#[test]
fn in_a_burst_no_kill_of_the_window_loses_more_than_one_press() {
    let found = bursts(Fault::Usual, 12);
    assert!(found.shown < 12, "{found:?}: no disk of this kind is slow");
}

#[test]
fn on_a_slow_disk_no_kill_of_the_window_loses_more_than_it_shows_not_to_be_saved() {
    let found = bursts(Fault::Slower, 8);
    assert!(found.shown > 0 && found.behind > 0, "{found:?}");
}
