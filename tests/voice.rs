//! Speech over the real protocol: the program's own client of it talks to a speech service made for tests, which dies, freezes and falls dumb on command.
//!
//! The address of the service is an environment variable of the whole process. So each test starts
//! this program again as a small speaking program: it obeys lines on its input and prints its news.
#![cfg(target_os = "linux")]

#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/ssip.rs"]
mod ssip;

use std::cell::RefCell;
use std::collections::VecDeque;
use std::io::{BufRead, BufReader, Write};
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::Duration;

use marlinspeak::voice::{Speaker, SpeechSettings, SystemVoice, Timeouts};
use ssip::{Event, Service, Speech};

/// Long enough for the slowest machine, short enough for a failing test.
const DEADLINE: Duration = Duration::from_secs(30);

/// What the speaking program puts before a line of its own.
const MARK: &str = "speaking program: ";

/// Set for a speaking program whose watches are to run out.
const HURRY: &str = "SPEAKING_PROGRAM_HURRY";

/// Set for one whose watches run out at once, and that looks for the service again at once.
const RUSH: &str = "SPEAKING_PROGRAM_RUSH";

#[test]
#[ignore = "the other tests start it in a process of its own"]
fn speaking_program() {
    if std::env::var_os("SPEECHD_ADDRESS").is_none() {
        return;
    }
    let timeouts = if std::env::var_os(HURRY).is_some() {
        Timeouts {
            answer: Duration::from_secs(1),
            beginning: Duration::from_secs(1),
            ending: Duration::from_secs(1),
            ..Timeouts::default()
        }
    } else if std::env::var_os(RUSH).is_some() {
        Timeouts {
            answer: Duration::from_millis(300),
            beginning: Duration::from_secs(1),
            ending: Duration::from_secs(1),
            retry: Duration::from_millis(5),
            slow_retry: Duration::from_millis(5),
            ..Timeouts::default()
        }
    } else {
        // On a busy machine no watch may run out that the test does not wait for.
        Timeouts {
            answer: DEADLINE,
            listing: DEADLINE,
            opening: DEADLINE,
            beginning: DEADLINE,
            ending: DEADLINE,
            closing: DEADLINE,
            ..Timeouts::default()
        }
    };
    let tell = |event| println!("{MARK}{event:?}");
    let speaker = Speaker::start_with(SystemVoice::maker(), tell, timeouts).expect("a thread");
    for line in std::io::stdin().lines() {
        let line = line.expect("a line");
        let (command, rest) = line.split_once(' ').unwrap_or((&line, ""));
        let speech = match command {
            "say" => {
                let raw = rest.replace("\\0", "\0").replace("\\n", "\n");
                println!("{MARK}say {:?}", speaker.say(&raw).map(|id| id.0));
                continue;
            }
            "hush" => {
                speaker.hush();
                continue;
            }
            "voices" => {
                speaker.voices();
                continue;
            }
            "speed" => SpeechSettings {
                words_per_minute: rest.parse().expect("a number"),
                ..SpeechSettings::default()
            },
            "language" => SpeechSettings {
                language: Some(rest.to_owned()),
                ..SpeechSettings::default()
            },
            "voice" => SpeechSettings {
                voice: Some(rest.to_owned()),
                ..SpeechSettings::default()
            },
            "plain" => SpeechSettings::default(),
            _ => panic!("no such command: {line}"),
        };
        speaker.set_speech(speech);
    }
    speaker.close();
    println!("{MARK}closed");
}

/// The speaking program, started.
struct Program {
    child: Child,
    input: Option<ChildStdin>,
    lines: Receiver<String>,
    /// Lines that came before the one that was looked for.
    passed: RefCell<VecDeque<String>>,
}

impl Program {
    fn start(service: &Service) -> Self {
        Self::run(service, |command| command)
    }

    /// Started, with the first voice found, and with time limits that never run out.
    fn ready(service: &Service) -> Self {
        let program = Self::start(service);
        program.expect("Ready");
        program
    }

    /// Started, with the first voice found, and with time limits that run out soon.
    fn hurried(service: &Service) -> Self {
        let program = Self::run(service, |command| command.env(HURRY, "1"));
        program.expect("Ready");
        program
    }

    fn run(service: &Service, set: impl FnOnce(&mut Command) -> &mut Command) -> Self {
        let mut command = Command::new(std::env::current_exe().expect("this program"));
        let mut child = set(&mut command)
            .args(["--exact", "speaking_program", "--ignored", "--nocapture"])
            .env("SPEECHD_ADDRESS", service.address())
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("this program runs");
        let output = BufReader::new(child.stdout.take().expect("its output"));
        let (sender, lines) = mpsc::channel();
        thread::spawn(move || {
            for line in output.lines().map_while(Result::ok) {
                if let Some((_, said)) = line.split_once(MARK) {
                    let _ = sender.send(said.to_owned());
                }
            }
        });
        Self {
            input: child.stdin.take(),
            child,
            lines,
            passed: RefCell::default(),
        }
    }

    fn tell(&mut self, command: &str) {
        let input = self.input.as_mut().expect("not closed yet");
        writeln!(input, "{command}").expect("it reads");
    }

    /// Has it say `text`, and waits for `say` to have returned.
    fn say(&mut self, text: &str, id: u64) {
        self.tell(&format!("say {text}"));
        // Its news come from another thread and may overtake it.
        let returned = format!("say Some({id})");
        loop {
            let line = self.new_line();
            if line == returned {
                return;
            }
            self.passed.borrow_mut().push_back(line);
        }
    }

    /// The next line must be this one.
    fn expect(&self, line: &str) {
        assert_eq!(self.next_line(), line);
    }

    fn expect_lost(&self, why: &str) {
        let line = self.next_line();
        assert!(line.starts_with(&format!("Lost({why}")), "{line}");
    }

    fn next_line(&self) -> String {
        let passed = self.passed.borrow_mut().pop_front();
        passed.unwrap_or_else(|| self.new_line())
    }

    fn new_line(&self) -> String {
        match self.lines.recv_timeout(DEADLINE) {
            Ok(line) => line,
            Err(error) => panic!("no further line: {error}"),
        }
    }

    /// Has it end as at the end of the program.
    fn close(mut self) {
        self.input = None;
        self.expect("closed");
        let status = in_time::end_in_time(&mut self.child);
        assert!(status.success(), "{status}");
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn told(service: &Service, wanted: &str) -> usize {
    let is_wanted = |event: &&Event| matches!(event, Event::Command(_, said) if said == wanted);
    service.events().iter().filter(is_wanted).count()
}

#[test]
fn texts_are_said_once_and_in_order() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    let texts = [
        "Rising. Bottom pin four.",
        ".",
        "..and a dot in front",
        "über drei",
    ];
    for (id, text) in (1..).zip(texts) {
        program.say(text, id);
        program.expect(&format!("Began(Utterance({id}))"));
        program.expect(&format!("Ended(Utterance({id}))"));
    }
    program.close();
    assert_eq!(service.texts(), texts);
}

#[test]
fn a_new_text_cuts_off_the_old_one() {
    let service = Service::start();
    service.set_speech(Speech::UntilTold);
    let mut program = Program::ready(&service);
    program.say("the old one", 1);
    program.expect("Began(Utterance(1))");
    program.say("the new one", 2);
    program.expect("CutOff(Utterance(1))");
    program.expect("Began(Utterance(2))");
    let speech: Vec<_> = service
        .events()
        .into_iter()
        .filter(|event| !matches!(event, Event::Connected(_) | Event::Command(..)))
        .collect();
    assert_eq!(
        speech,
        [
            Event::Text(1, "the old one".to_owned()),
            Event::Began(1),
            Event::Cancelled(1),
            Event::Text(2, "the new one".to_owned()),
            Event::Began(2),
        ]
    );
}

#[test]
fn neither_empty_texts_nor_nuls_reach_the_service() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    for nothing in ["", "  ", "\\0", "\\n \\0"] {
        program.tell(&format!("say {nothing}"));
        program.expect("say None");
    }
    program.say("pin\\0 four\\n.\\nover two", 1);
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    program.close();
    assert_eq!(service.texts(), ["pin four . over two"]);
}

#[test]
fn without_a_service_the_text_waits_until_there_is_one() {
    let service = Service::absent();
    let mut program = Program::start(&service);
    program.expect_lost("NoService");
    program.say("first", 1);
    program.say("second", 2);
    program.expect("CutOff(Utterance(1))");
    service.restart();
    program.expect("Ready");
    program.expect("Began(Utterance(2))");
    program.expect("Ended(Utterance(2))");
    program.close();
    assert_eq!(service.texts(), ["second"]);
}

#[test]
fn a_service_killed_between_texts_is_found_again() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    for round in 0..3 {
        let (before, after) = (2 * round + 1, 2 * round + 2);
        program.say("before", before);
        program.expect(&format!("Began(Utterance({before}))"));
        program.expect(&format!("Ended(Utterance({before}))"));
        service.kill();
        program.say("after", after);
        program.expect_lost("Broken");
        service.restart();
        program.expect("Ready");
        program.expect(&format!("Began(Utterance({after}))"));
        program.expect(&format!("Ended(Utterance({after}))"));
    }
    program.close();
    assert_eq!(service.texts(), ["before", "after"].repeat(3));
}

#[test]
fn a_service_killed_in_mid_speech_says_the_text_anew() {
    let service = Service::start();
    service.set_speech(Speech::UntilTold);
    let mut program = Program::ready(&service);
    // Long enough to be in no danger of being taken for a speech without an end.
    let text = "over one, under one, ".repeat(20);
    let text = text.trim_end();
    program.say(text, 1);
    program.expect("Began(Utterance(1))");
    service.kill();
    program.expect_lost("Broken");
    service.restart();
    program.expect("Ready");
    program.expect("Began(Utterance(1))");
    service.end_speech();
    program.expect("Ended(Utterance(1))");
    program.close();
    assert_eq!(service.texts(), [text, text]);
}

#[test]
fn nobody_waits_for_a_frozen_service_and_it_is_taken_back_when_it_thaws() {
    let service = Service::start();
    let mut program = Program::hurried(&service);
    service.freeze();
    // That `say` returns while nothing is answered is what these lines wait for.
    program.say("old", 1);
    program.expect_lost("NoAnswer");
    program.say("new", 2);
    program.expect("CutOff(Utterance(1))");
    service.thaw();
    program.expect("Ready");
    program.expect("Began(Utterance(2))");
    program.expect("Ended(Utterance(2))");
    program.say("after", 3);
    program.expect("Began(Utterance(3))");
    program.expect("Ended(Utterance(3))");
    program.close();
    assert_eq!(service.texts().last().map(String::as_str), Some("after"));
    assert_eq!(
        service.texts().iter().filter(|text| *text == "new").count(),
        1
    );
}

#[test]
fn a_frozen_service_that_is_killed_is_found_again() {
    let service = Service::start();
    let mut program = Program::hurried(&service);
    service.freeze();
    program.say("text", 1);
    program.expect_lost("NoAnswer");
    // The next connection is made, and hangs too.
    assert!(service.happens(DEADLINE, |event| *event == Event::Connected(2)));
    service.kill();
    service.restart();
    program.expect("Ready");
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    program.close();
}

#[test]
fn the_program_ends_although_the_service_is_frozen() {
    let service = Service::start();
    let mut program = Program::hurried(&service);
    service.freeze();
    program.say("text", 1);
    program.close();
    assert_eq!(service.texts(), Vec::<String>::new());
}

#[test]
fn the_program_lives_and_the_voice_comes_back_whatever_the_service_answers() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    let long = vec![b'2'; 70_000];
    let hostile: [&[u8]; 9] = [
        b"\r\n",
        b"\n",
        b"2\r\n",
        b"208\r\n",
        b"\x00\xff\x1b[2J\r\n",
        b"999 \r\n",
        b"249-Ada\r\n208 OK\r\n",
        b"300 ERR\r\n300 ERR\r\n",
        &long,
    ];
    for (id, answer) in (1..).zip(hostile) {
        service.answer_once_after(0, answer.to_vec());
        program.say("over one", id);
        let lost = program.next_line();
        assert!(lost.starts_with("Lost("), "{answer:?}: {lost}");
        program.expect("Ready");
        program.expect(&format!("Began(Utterance({id}))"));
        program.expect(&format!("Ended(Utterance({id}))"));
    }
    program.close();
}

#[test]
fn an_answer_that_comes_twice_ends_no_more_than_its_connection() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    service.answer_once_after(0, b"210 OK CANCELED\r\n210 OK CANCELED\r\n".to_vec());
    program.say("over one", 1);
    let lost = program.next_line();
    assert!(lost.starts_with("Lost("), "{lost}");
    program.expect("Ready");
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    program.close();
}

/// Numbers that look like chance and are the same at every run.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % most
    }

    /// What a service says that has lost its mind.
    fn answer(&mut self) -> Vec<u8> {
        const GOOD: [&[u8]; 6] = [
            b"208 OK CLIENT NAME SET\r\n",
            b"225-42\r\n225 OK MESSAGE QUEUED\r\n",
            b"230 OK RECEIVING DATA\r\n",
            b"210 OK CANCELED\r\n",
            b"701-1\r\n701-1\r\n701 BEGIN\r\n",
            b"249-Ada\ten-GB\tnone\r\n249 OK VOICE LIST SENT\r\n",
        ];
        let mut good = GOOD[self.below(GOOD.len())].to_vec();
        match self.below(8) {
            0 => [&b"\r\n"[..], b"\n", b"\r", b"", b" \r\n", b"-\r\n"][self.below(6)].to_vec(),
            1 => {
                good.truncate(1 + self.below(4));
                good.extend_from_slice(b"\r\n");
                good
            }
            // Cut off anywhere: what would come then never comes.
            2 => {
                good.truncate(self.below(good.len()));
                good
            }
            3 => {
                let length = 1 + self.below(200);
                let byte = |_| u8::try_from(self.below(256)).unwrap();
                (0..length).map(byte).collect()
            }
            4 => {
                let length = 1000 + self.below(150_000);
                let mut long = vec![b'2'; length];
                long.extend_from_slice(if self.below(2) == 0 { b"\r\n" } else { b"" });
                long
            }
            5 => good.repeat(2 + self.below(3)),
            6 => {
                let (at, bit) = (self.below(good.len()), self.below(8));
                good[at] ^= 1 << bit;
                good
            }
            _ => good,
        }
    }
}

/// Empty, short, long, binary, cut off at any byte, changed, more than once, and never.
#[test]
fn a_thousand_hostile_answers_end_nothing_and_the_voice_comes_back() {
    thread::scope(|scope| {
        for seed in 1..=10 {
            scope.spawn(move || hostile_answers(seed, 100));
        }
    });
}

fn hostile_answers(seed: u64, answers: u64) {
    /// A text that is given up, as one is whose end was missed twice, is followed by nothing.
    const GIVEN_UP: Duration = Duration::from_secs(5);

    let service = Service::start();
    service.hang_up_on_unfinished();
    let mut program = Program::run(&service, |command| command.env(RUSH, "1"));
    program.expect("Ready");
    let mut dice = Dice(seed);
    let (mut losses, mut said) = (0, 0);
    for _ in 0..answers {
        let answer = dice.answer();
        service.answer_once_after(dice.below(4), answer.clone());
        said += 1;
        program.say("over one", said);
        let mut tries = 1;
        loop {
            let passed = program.passed.borrow_mut().pop_front();
            let line = passed.map_or_else(|| program.lines.recv_timeout(GIVEN_UP), Ok);
            let Ok(line) = line else {
                tries += 1;
                assert!(tries < 6, "{seed}, {answer:?}: the voice never came back");
                said += 1;
                program.say("over one", said);
                continue;
            };
            if line == format!("Ended(Utterance({said}))") {
                break;
            }
            losses += u64::from(line.starts_with("Lost("));
            let known = ["Lost(", "Ready", "Began(", "CutOff(", "Ended("];
            let is_known = known.iter().any(|known| line.starts_with(known));
            assert!(is_known, "{seed}, {answer:?}: {line}");
        }
    }
    assert!(losses > answers / 4, "{losses}");
    program.close();
    let texts = service.texts();
    assert!(texts.len() as u64 >= answers, "{}", texts.len());
    assert!(texts.iter().all(|text| text == "over one"));
}

/// Each answer that never comes leaves a connection waiting, and there are only so many.
#[test]
fn after_any_number_of_answers_that_never_come_the_voice_comes_back() {
    let service = Service::start();
    let mut program = Program::run(&service, |command| command.env(RUSH, "1"));
    program.expect("Ready");
    for id in 1..=10 {
        service.answer_once_after(0, Vec::new());
        program.say("over one", id);
        let ended = format!("Ended(Utterance({id}))");
        while program.next_line() != ended {}
    }
    program.close();
}

#[test]
fn an_answer_is_the_same_however_it_comes_in() {
    let service = Service::start();
    service.answer_byte_by_byte();
    let mut program = Program::ready(&service);
    program.say("over one", 1);
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    program.tell("voices");
    assert!(program.next_line().starts_with("Voices([VoiceName"));
    program.close();
}

#[test]
fn a_dumb_service_is_lost_until_it_speaks() {
    let service = Service::start();
    service.set_speech(Speech::Dumb);
    let mut program = Program::hurried(&service);
    program.say("text", 1);
    program.expect_lost("NeverBegan");
    service.set_speech(Speech::Lasts(Duration::ZERO));
    program.expect("Ready");
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    program.close();
}

#[test]
fn speech_without_an_end_is_a_loss() {
    let service = Service::start();
    service.set_speech(Speech::UntilTold);
    let mut program = Program::hurried(&service);
    program.say("text", 1);
    program.expect("Began(Utterance(1))");
    program.expect_lost("NeverEnded");
    program.expect("Began(Utterance(1))");
    program.expect("CutOff(Utterance(1))");
    service.set_speech(Speech::Lasts(Duration::ZERO));
    program.say("next", 2);
    program.expect("Began(Utterance(2))");
    program.expect("Ended(Utterance(2))");
    program.expect("Ready");
    program.close();
}

#[test]
fn the_end_of_the_program_stops_the_speech() {
    let service = Service::start();
    service.set_speech(Speech::UntilTold);
    let mut program = Program::ready(&service);
    program.say("over one, under one, over one, under one, over one", 1);
    program.expect("Began(Utterance(1))");
    program.close();
    assert!(service.events().contains(&Event::Cancelled(1)));
}

#[test]
fn hush_stops_the_speech() {
    let service = Service::start();
    service.set_speech(Speech::UntilTold);
    let mut program = Program::ready(&service);
    program.say("over one, under one, over one, under one, over one", 1);
    program.expect("Began(Utterance(1))");
    program.tell("hush");
    program.expect("CutOff(Utterance(1))");
    assert!(service.happens(DEADLINE, |event| *event == Event::Cancelled(1)));
}

#[test]
fn speed_and_language_reach_the_service_before_the_text() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    program.tell("speed 226");
    program.tell("language de-AT");
    program.say("über eins", 1);
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    assert_eq!(told(&service, "SET SELF LANGUAGE de-at"), 1);
    program.tell("speed 226");
    program.say("plain", 2);
    program.expect("Began(Utterance(2))");
    program.expect("Ended(Utterance(2))");
    assert!(told(&service, "SET SELF RATE 0") > 0);
    assert_eq!(
        service
            .events()
            .iter()
            .filter(|event| matches!(event, Event::Connected(_)))
            .count(),
        3,
        "one to look for the voices, and back to the service's own by way of a new one"
    );
    program.tell("language xx");
    program.expect("NoSuchVoice(\"xx\")");
    program.close();
}

/// An English engine is the service's own choice, as it is on a Debian where it was added.
const ENGINES: [(&str, &[(&str, &str)]); 2] = [
    ("flite", &[("kal", "en")]),
    ("espeak-ng", &[("German", "de"), ("English", "en-GB")]),
];

#[test]
fn a_language_is_spoken_by_an_engine_that_knows_it() {
    let service = Service::start();
    service.set_engines(&ENGINES);
    let mut program = Program::ready(&service);
    program.tell("language de-AT");
    program.say("über eins", 1);
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    let commands = |service: &Service| {
        let events = service.events().into_iter();
        let commands = events.filter_map(|event| match event {
            Event::Command(_, command) => Some(command),
            _ => None,
        });
        commands.collect::<Vec<_>>()
    };
    let told = commands(&service);
    let at = |wanted: &str| told.iter().position(|command| command == wanted);
    let engine = at("SET SELF OUTPUT_MODULE espeak-ng");
    assert!(engine.is_some(), "{told:?}");
    assert!(engine < at("SET SELF LANGUAGE de-at"), "{told:?}");
    // The service's own choice does for English.
    let before = told.len();
    program.tell("language en-US");
    program.say("over one", 2);
    program.expect("Began(Utterance(2))");
    program.expect("Ended(Utterance(2))");
    let told = commands(&service).split_off(before);
    let english = told
        .iter()
        .position(|command| command == "SET SELF LANGUAGE en-us");
    assert!(english.is_some(), "{told:?}");
    // Another connection asks for the voices meanwhile.
    let mut names = told.iter();
    let steps = names
        .rposition(|name| name.starts_with("SET SELF CLIENT_NAME") && name.ends_with(":steps"));
    assert!(
        steps.is_some() && steps < english,
        "a new connection has nothing set: {told:?}"
    );
    program.close();
}

#[test]
fn the_voices_of_every_engine_are_told_with_its_name() {
    let service = Service::start();
    service.set_engines(&ENGINES);
    let mut program = Program::ready(&service);
    program.tell("voices");
    program.expect(
        "Voices([VoiceName { language: \"de\", name: \"German\", engine: Some(\"espeak-ng\") }, \
         VoiceName { language: \"en\", name: \"kal\", engine: Some(\"flite\") }, \
         VoiceName { language: \"en-GB\", name: \"English\", engine: Some(\"espeak-ng\") }])",
    );
    program.close();
}

#[test]
fn a_voice_is_set_by_its_name_alone_and_told_of_when_it_is_not_there() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    program.tell("voice Ada");
    program.say("over one", 1);
    program.expect("Began(Utterance(1))");
    program.expect("Ended(Utterance(1))");
    assert_eq!(told(&service, "SET SELF SYNTHESIS_VOICE Ada"), 1);
    program.tell("voice Nobody");
    program.expect("NoSuchVoice(\"Nobody\")");
    program.close();
}

#[test]
fn the_voices_come_without_their_variations() {
    let service = Service::start();
    let mut program = Program::ready(&service);
    program.tell("voices");
    program.expect(
        "Voices([VoiceName { language: \"de\", name: \"Bruno\", engine: None }, \
         VoiceName { language: \"en-GB\", name: \"Ada\", engine: None }])",
    );
    program.close();
}
