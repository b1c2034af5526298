//! The same commands on a disk that hangs at one kind of call: it is told that the disk is waited for; once
//! the disk answers the command does what it was asked to, and whoever gives it up leaves nothing broken.

use std::io::{BufRead as _, BufReader, Read};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError};
use std::thread;

use crate::DEADLINE;
use crate::commands::{Home, commands};
use crate::disk::{ANY, CALLS, Fault};
use crate::in_time::end_in_time;

const TOLD: &str = "The disk is slow to answer.";

/// A command under way, whose lines on standard error come one by one.
struct UnderWay {
    child: Child,
    errors: Receiver<String>,
}

/// What comes from a program line by line, read on a thread.
pub fn lines_of(errors: impl Read + Send + 'static) -> Receiver<String> {
    let (tell, told) = mpsc::channel();
    thread::spawn(move || {
        for line in BufReader::new(errors).lines().map_while(Result::ok) {
            let _ = tell.send(line);
        }
    });
    told
}

impl UnderWay {
    fn start(home: &Home, call: &str, args: &[&str]) -> Self {
        let mut child = home
            .command(call, args)
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let errors = lines_of(child.stderr.take().unwrap());
        Self { child, errors }
    }

    /// The next line on standard error but how far a sheet is; none where the command has ended.
    fn line(&self) -> Option<String> {
        loop {
            match self.errors.recv_timeout(DEADLINE) {
                Ok(line) if line.starts_with("Made so far: ") => {}
                Ok(line) => return Some(line),
                Err(RecvTimeoutError::Disconnected) => return None,
                Err(RecvTimeoutError::Timeout) => panic!("neither told nor ended"),
            }
        }
    }

    /// Waits for its end, and gives the exit code, where it has one.
    fn ends(mut self) -> Option<i32> {
        end_in_time(&mut self.child).code()
    }
}

#[test]
fn a_command_that_waits_for_the_disk_says_so_and_goes_on_or_is_given_up() {
    // Each waits for seconds until that is told: the kinds of calls do so at the same time.
    thread::scope(|scope| {
        for call in CALLS.into_iter().chain([ANY]) {
            for given_up in [false, true] {
                scope.spawn(move || waits(call, given_up));
            }
        }
    });
}

fn waits(call: &str, given_up: bool) {
    let home = Home::new();
    let looking = [["shelf", "list"], ["shelf", "verify"], ["order", "list"]];
    let looking = looking.map(|args| args.map(str::to_owned).to_vec());
    let (mut told, mut swept) = (0, 0);
    for command in commands(&home).into_iter().chain(looking) {
        let args: Vec<&str> = command.iter().map(String::as_str).collect();
        let made = home.made();
        home.disk.break_down(Fault::Hangs);
        let under_way = UnderWay::start(&home, call, &args);
        let line = under_way.line();
        if let Some(line) = &line {
            assert!(line.starts_with(TOLD), "{call} {args:?}: {line}");
            told += 1;
        }
        if given_up && line.is_some() {
            let number = under_way.child.id().to_string();
            // Not as Ctrl+C does it, which a shell has what it runs in the background ignore.
            let asked = Command::new("kill").args(["-TERM", &number]).status();
            assert!(asked.unwrap().success());
            let code = under_way.ends();
            assert!(
                matches!(code, None | Some(130 | 143)),
                "{call} {args:?}: {code:?}"
            );
            home.disk.mend();
        } else {
            home.disk.mend();
            assert_eq!(under_way.line(), None, "{call} {args:?}: told once");
            assert_eq!(under_way.ends(), Some(0), "{call} {args:?}");
        }
        // Whatever came of it, nothing that is kept is broken, and no file is half made.
        home.succeeds(&["shelf", "verify"]);
        let mut drafts = 0;
        for name in home.made() {
            if name.starts_with('.') {
                assert!(given_up, "{call} {args:?}: {name}");
                drafts += 1;
            } else {
                assert!(
                    !given_up || made.contains(&name) || line.is_none(),
                    "{name}"
                );
            }
        }
        if drafts > 0 {
            // Who could not finish a draft could not remove it either. The next one does.
            home.succeeds(&args);
            let left = home.made();
            assert!(!left.iter().any(|name| name.starts_with('.')), "{left:?}");
            swept += drafts;
        }
        home.renew(&args, &made);
    }
    // What is written for the first time has its name without being renamed.
    let least = match call {
        ANY => 16,
        "rename" => 4,
        _ => 6,
    };
    assert!(told >= least, "{call}: {told}");
    let leaves_drafts = given_up && ["write", "fsync"].contains(&call);
    assert!(swept > 0 || !leaves_drafts, "{call}");
}
