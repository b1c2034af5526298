//! `marlinspeak tie`, driven in a real pseudo-terminal and by lines through a pipe.

#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/ssip.rs"]
mod ssip;

use in_time::InTime as _;
use std::io::{Read, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::{Duration, Instant};

use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::shelf::Shelf;
use marlinspeak::words::Words;
use portable_pty::{CommandBuilder, PtySize, native_pty_system};
use ssip::{Event, Service};
use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");
const DEADLINE: Duration = Duration::from_secs(60);
const KNOT: [&str; 5] = ["tie", "--leads", "3", "--bights", "4"];

fn script() -> Script {
    let plan = Plan::read("3", "4", "1", "1").unwrap();
    Script::new(plan, AtOnce::default())
}

/// Every step as its line and as it is said, and the caution that is printed before the line.
struct Told {
    caution: Option<String>,
    line: String,
    say: String,
}

fn steps() -> Vec<Told> {
    let (script, words) = (script(), Words::english());
    let step = |place| {
        let step = script.step(place).unwrap();
        let shown = words.show(script.plan().knot(), &step);
        Told {
            line: format!("{}. {}", shown.phase, shown.in_words()),
            say: words.say(&step).into(),
            caution: shown.caution,
        }
    };
    script.places().map(step).collect()
}

/// No lock-out: the hands of a test are quicker.
fn quick_settings(folder: &Path) {
    let settings = folder.join("config/marlinspeak");
    std::fs::create_dir_all(&settings).unwrap();
    let quick = r#"{ "version": 1, "presses": { "bounce_ms": 0 } }"#;
    std::fs::write(settings.join("settings.json"), quick).unwrap();
}

/// Somebody at a terminal.
struct Terminal {
    keys: Box<dyn Write + Send>,
    lines: Receiver<String>,
    child: Box<dyn portable_pty::Child + Send + Sync>,
    pair: Box<dyn portable_pty::MasterPty + Send>,
}

impl Terminal {
    fn start(folder: &Path, args: &[&str], speech: &str) -> Self {
        Self::start_in("C.UTF-8", folder, args, speech)
    }

    fn start_in(locale: &str, folder: &Path, args: &[&str], speech: &str) -> Self {
        quick_settings(folder);
        let size = PtySize {
            rows: 24,
            cols: 80,
            ..PtySize::default()
        };
        let pair = native_pty_system().openpty(size).unwrap();
        let mut command = CommandBuilder::new(PROGRAM);
        command.args(args);
        command.env("XDG_DATA_HOME", folder);
        command.env("XDG_CONFIG_HOME", folder.join("config"));
        command.env("XDG_STATE_HOME", folder.join("state"));
        command.env("SPEECHD_ADDRESS", speech);
        command.env("LC_ALL", locale);
        let child = pair.slave.spawn_command(command).unwrap();
        drop(pair.slave);
        let keys = pair.master.take_writer().unwrap();
        let mut reader = pair.master.try_clone_reader().unwrap();
        let (tell, lines) = mpsc::channel();
        thread::spawn(move || {
            let mut line = Vec::new();
            let mut byte = [0];
            // The terminal gives an error when the program is gone.
            while reader.read(&mut byte).is_ok_and(|read| read == 1) {
                match byte[0] {
                    b'\n' => {
                        let text = String::from_utf8_lossy(&line).into_owned();
                        let _ = tell.send(text.trim_end_matches('\r').to_owned());
                        line.clear();
                    }
                    other => line.push(other),
                }
            }
        });
        Self {
            keys,
            lines,
            child,
            pair: pair.master,
        }
    }

    fn press(&mut self, keys: &str) {
        self.keys.write_all(keys.as_bytes()).unwrap();
        self.keys.flush().unwrap();
    }

    fn line(&self) -> String {
        self.lines.recv_timeout(DEADLINE).expect("a line")
    }

    /// Reads the lines of a step.
    fn reads(&self, step: &Told) {
        if let Some(caution) = &step.caution {
            assert_eq!(self.line(), *caution);
        }
        assert_eq!(self.line(), step.line);
    }

    /// How the terminal treats what is typed and printed.
    fn modes(&self) -> String {
        let modes = self.pair.get_termios().expect("a terminal has modes");
        format!("{modes:?}")
    }

    /// Sends the program a signal.
    fn signal(&self, name: &str) {
        let id = self.child.process_id().unwrap().to_string();
        let sent = Command::new("kill").args(["-s", name, &id]).status();
        assert!(sent.unwrap().success());
    }

    fn ends(mut self) {
        self.waits_for_the_end();
    }

    fn waits_for_the_end(&mut self) {
        assert!(self.end().success());
    }

    /// How it ends.
    fn end(&mut self) -> portable_pty::ExitStatus {
        let until = Instant::now() + DEADLINE;
        loop {
            if let Some(status) = self.child.try_wait().unwrap() {
                return status;
            }
            assert!(Instant::now() < until, "it does not end");
            // Between two looks, not instead of one.
            thread::sleep(Duration::from_millis(5));
        }
    }
}

#[test]
fn a_whole_tie_by_single_keys_with_speech() {
    let (folder, service) = (TempDir::new().unwrap(), Service::start());
    let args = [&KNOT[..], &["--speech"]].concat();
    let mut terminal = Terminal::start(folder.path(), &args, &service.address());
    assert!(terminal.line().starts_with("Space next,"));
    assert!(
        terminal
            .line()
            .starts_with("3 lead 4 bight, one strand, 3 tucks.")
    );
    let steps = steps();
    for (index, step) in steps.iter().enumerate() {
        if index > 0 {
            terminal.press(" ");
        }
        terminal.reads(step);
        assert_eq!(
            service.next_text(DEADLINE).as_deref(),
            Some(step.say.as_str())
        );
    }
    let last = steps.len() - 1;
    for (key, at) in [
        ("r", last),
        ("\x1b[5~", last - 1),
        ("\x1b[D", last - 2),
        ("b", last - 3),
    ] {
        terminal.press(key);
        terminal.reads(&steps[at]);
    }
    terminal.press("+");
    assert_eq!(terminal.line(), "175 words a minute.");
    terminal.press("h");
    let script = script();
    let place = script.places().nth(last - 3).unwrap();
    let answer = Words::english().say_whereabouts(&script, place, None);
    assert_eq!(terminal.line(), answer.as_str());
    terminal.press("q");
    assert!(terminal.line().starts_with("The tie is kept"));
    terminal.ends();
    let kept = std::fs::read_to_string(folder.path().join("config/marlinspeak/settings.json"));
    assert!(kept.unwrap().contains("\"words_per_minute\": 175"));
}

#[test]
fn signals_end_it_as_the_key_for_leaving_does() {
    let steps = steps();
    for signal in ["INT", "TERM", "HUP", "QUIT"] {
        let folder = TempDir::new().unwrap();
        let mut terminal = Terminal::start(folder.path(), &KNOT, "unix_socket:/nonexistent");
        terminal.line();
        terminal.line();
        terminal.reads(&steps[0]);
        let while_it_runs = terminal.modes();
        terminal.press(" ");
        terminal.reads(&steps[1]);
        terminal.signal(signal);
        assert!(terminal.line().starts_with("The tie is kept"), "{signal}");
        terminal.waits_for_the_end();
        let fresh = native_pty_system().openpty(PtySize::default()).unwrap();
        let usual = format!("{:?}", fresh.master.get_termios().unwrap());
        assert_eq!(terminal.modes(), usual, "{signal}");
        assert_ne!(while_it_runs, usual, "{signal}");
        let shelf = Shelf::open(folder.path().join("marlinspeak/ties")).unwrap();
        let ties = shelf.list().unwrap().untroubled().unwrap();
        assert_eq!(Some(ties[0].place), script().places().nth(1), "{signal}");
    }
}

#[test]
fn off_the_way_when_something_is_wrong_and_back_on_it() {
    let folder = TempDir::new().unwrap();
    let steps = steps();
    let mut terminal = Terminal::start(folder.path(), &KNOT, "unix_socket:/nonexistent");
    terminal.line();
    terminal.line();
    for step in &steps[..5] {
        terminal.reads(step);
        terminal.press(" ");
    }
    terminal.reads(&steps[5]);
    terminal.press("w");
    assert_ne!(terminal.line(), steps[5].line);
    terminal.press("w");
    terminal.reads(&steps[5]);
}

#[test]
fn with_no_knot_named_it_takes_up_the_newest_tie_where_it_was_left() {
    let folder = TempDir::new().unwrap();
    let nowhere = "unix_socket:/nonexistent";
    let steps = steps();
    let mut terminal = Terminal::start(folder.path(), &KNOT, nowhere);
    for (index, step) in steps[..4].iter().enumerate() {
        if index == 0 {
            terminal.line();
            terminal.line();
        } else {
            terminal.press("\r");
        }
        terminal.reads(step);
    }
    // As Ctrl C would end any other program.
    terminal.press("\x03");
    assert!(terminal.line().starts_with("The tie is kept"));
    terminal.ends();

    let terminal = Terminal::start(folder.path(), &["tie"], nowhere);
    terminal.line();
    assert!(terminal.line().contains("3 lead, 4 bight"));
    terminal.reads(&steps[3]);
    let mut second = Terminal::start(folder.path(), &["tie"], nowhere);
    // Nothing of a key to be pressed: it has left by then.
    let refused = second.line();
    assert!(
        refused.starts_with("This tie is open in another window or terminal")
            && refused.trim_end().ends_with("or close it there first."),
        "{refused}"
    );
    assert!(!second.end().success());
}

/// Runs it with lines on its standard input and gives what it printed, line by line.
fn typed(folder: &Path, args: &[&str], lines: &str) -> Vec<String> {
    quick_settings(folder);
    let mut child = Command::new(PROGRAM)
        .args(args)
        .env("XDG_DATA_HOME", folder)
        .env("XDG_CONFIG_HOME", folder.join("config"))
        .env("XDG_STATE_HOME", folder.join("state"))
        .env("SPEECHD_ADDRESS", "unix_socket:/nonexistent")
        .env("LC_ALL", "C")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    child
        .stdin
        .take()
        .unwrap()
        .write_all(lines.as_bytes())
        .unwrap();
    let output = child.output_in_time();
    assert!(output.status.success());
    let printed = String::from_utf8(output.stdout).unwrap();
    printed.lines().map(str::to_owned).collect()
}

#[test]
fn without_a_terminal_each_line_is_a_press() {
    let folder = TempDir::new().unwrap();
    let steps = steps();
    let printed = typed(folder.path(), &KNOT, "\n\n\nb\nr\nq\n");
    let at = [0, 1, 2, 3, 2, 2];
    let lines = |at: &usize| {
        let Told { caution, line, .. } = &steps[*at];
        caution.iter().chain([line]).cloned().collect::<Vec<_>>()
    };
    let expected: Vec<String> = at.iter().flat_map(lines).collect();
    // The keys, and what is begun.
    let (told, left) = printed[2..].split_at(expected.len());
    assert_eq!(told, expected);
    assert!(left[0].starts_with("The tie is kept"));
    // The end of the input is as good as q, and loses nothing.
    let printed = typed(folder.path(), &["tie"], "\n");
    let expected: Vec<String> = [2, 3].iter().flat_map(lines).collect();
    assert_eq!(printed[2..2 + expected.len()], expected);
    let shelf = Shelf::open(folder.path().join("marlinspeak/ties")).unwrap();
    let place = shelf.list().unwrap().untroubled().unwrap()[0].place;
    assert_eq!(Some(place), script().places().nth(3));
}

/// The service speaks English as long as nobody tells it otherwise, whatever the system speaks.
#[test]
fn on_a_german_system_the_voice_is_told_that_the_words_are_german() {
    let folder = TempDir::new().unwrap();
    let service = Service::start();
    let args = [&KNOT[..], &["--speech"]].concat();
    let speech = service.address();
    let mut terminal = Terminal::start_in("de_DE.UTF-8", folder.path(), &args, &speech);
    let is_told = |event: &Event| matches!(event, Event::Command(_, said) if said.starts_with("SET SELF LANGUAGE de"));
    assert!(service.happens(DEADLINE, is_told), "{:?}", service.events());
    terminal.press("q");
    terminal.ends();
}

#[test]
fn with_nothing_to_take_up_it_says_what_to_try() {
    let folder = TempDir::new().unwrap();
    let output = Command::new(PROGRAM)
        .arg("tie")
        .env("XDG_DATA_HOME", folder.path())
        .env("XDG_CONFIG_HOME", folder.path())
        .env("XDG_STATE_HOME", folder.path().join("state"))
        .env("LC_ALL", "C")
        .stdin(Stdio::null())
        .output_in_time();
    assert_eq!(output.status.code(), Some(2));
    assert_eq!(
        String::from_utf8_lossy(&output.stderr).trim_end(),
        "No tie is waiting to be taken up: name a knot, such as “marlinspeak tie --leads 3 \
         --bights 5”."
    );
}
