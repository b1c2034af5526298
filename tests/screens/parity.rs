//! One tie, two faces: the same presses and reports of the services go into the window's driver
//! and into the terminal's, and what is said, shown, cautioned, kept and timed is the same after
//! every one of them.

#![cfg(feature = "window")]

use crate::hands;
use crate::terminal;

use std::path::Path;
use std::time::Duration;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::Message;
use marlinspeak::bench::{Cord, Ground, Millimetres, Tube};
use marlinspeak::guide::{Plan, Setup};
use marlinspeak::session::{Event, Keys, Timer, Walk};
use marlinspeak::settings::{Settings, SettingsFile};
use marlinspeak::shelf::{Batch, Shelf, ShelfError, Tie};
use marlinspeak::voice::{VoiceError, VoiceEvent};
use marlinspeak::words::{Words, bound};
use proptest::prelude::*;
use serde_json::Value;
use tempfile::TempDir;
use terminal::Terminal;

/// Something that happens to both.
#[derive(Clone, Debug)]
enum Happening {
    /// A key is pressed and let go of, so many milliseconds after the last.
    Key(&'static str, u64),
    /// A key is held down and repeats.
    Held(&'static str),
    /// The voice is lost, or there again.
    Voice(bool),
    /// The voice that was asked for is not there.
    NoSuchVoice,
    /// Time passes until a step moves on by itself.
    MovesOn,
    /// A tie could not be saved, or was.
    Kept(bool),
    /// The settings could not be saved.
    SettingsNotKept,
}

/// Every key that the README names for the tying screen, but those that leave it, and those that
/// turn and size the picture, which a terminal does not have.
const KEYS: [&str; 28] = [
    " ",
    "Enter",
    "PageDown",
    "ArrowRight",
    "F13",
    "PageUp",
    "ArrowLeft",
    "Backspace",
    "F14",
    "r",
    "F15",
    "h",
    "w",
    "1",
    "2",
    "3",
    "[",
    "]",
    "-",
    "+",
    "p",
    "R",
    "H",
    "W",
    "c",
    "j",
    "0",
    "7",
];

fn key(name: &str) -> Key {
    let named = match name {
        " " => Named::Space,
        "Enter" => Named::Enter,
        "PageDown" => Named::PageDown,
        "ArrowRight" => Named::ArrowRight,
        "F13" => Named::F13,
        "PageUp" => Named::PageUp,
        "ArrowLeft" => Named::ArrowLeft,
        "Backspace" => Named::Backspace,
        "F14" => Named::F14,
        "F15" => Named::F15,
        "Escape" => Named::Escape,
        letter => return Key::Character(letter.into()),
    };
    Key::Named(named)
}

/// A tie before a window and one before a terminal, in folders of their own.
struct Faces {
    window: Hands,
    terminal: Terminal,
    /// What the window's start screen said before there was a tie.
    before: usize,
    _folders: [TempDir; 2],
}

impl Faces {
    fn of(tie: &Tie, words: fn() -> Words, settings: &Settings) -> Self {
        let folders = [TempDir::new().unwrap(), TempDir::new().unwrap()];
        let [for_window, for_terminal] = folders.each_ref().map(TempDir::path);
        // The same document, name and all, lies on both shelves.
        for folder in [for_window, for_terminal] {
            let shelf = Shelf::open(folder).unwrap();
            drop(shelf.begin(tie.clone()).unwrap());
        }
        let mut window = Hands::open_in(words(), for_window, None, settings.clone());
        // A key that means nothing once the tie is there: no later press can be its bounce.
        window.press(Key::Character("1".into()));
        let terminal = Terminal::take_up(words(), for_terminal, settings.clone());
        Self {
            before: window.said().len() - terminal.said().len(),
            window,
            terminal,
            _folders: folders,
        }
    }

    fn happen(&mut self, happening: &Happening) {
        match happening {
            Happening::Key(name, after) => {
                let after = Duration::from_millis(*after);
                self.window.press_after(after, key(name));
                self.terminal.press_after(after, name);
            }
            Happening::Held(name) => {
                self.window.hold(key(name));
                self.terminal.hold(name);
            }
            Happening::Voice(is_there) => {
                let news = || match is_there {
                    true => VoiceEvent::Ready,
                    false => VoiceEvent::Lost(VoiceError::NoAnswer),
                };
                self.both(|| Event::Voice(news()));
            }
            Happening::NoSuchVoice => {
                self.both(|| Event::Voice(VoiceEvent::NoSuchVoice("Ada".to_owned())));
            }
            Happening::MovesOn => self.both(|| Event::Woken(Timer::AutoAdvance)),
            Happening::Kept(is_kept) => {
                let id = self
                    .window
                    .session()
                    .tie()
                    .map(|tie| tie.tie().id().clone());
                let Some(id) = id else { return };
                self.both(|| {
                    Event::Kept(if *is_kept {
                        marlinspeak::shelf::Kept::Saved {
                            id: id.clone(),
                            touched: jiff::Timestamp::UNIX_EPOCH,
                            presses: marlinspeak::shelf::Presses(u64::MAX),
                        }
                    } else {
                        marlinspeak::shelf::Kept::Failed {
                            id: id.clone(),
                            error: ShelfError::InUse { id: id.clone() },
                            attempts: 1,
                        }
                    })
                });
            }
            Happening::SettingsNotKept => self.both(|| {
                Event::Settings(marlinspeak::settings::SettingsError::Io(
                    marlinspeak::files::Reason::NoRoom,
                ))
            }),
        }
    }

    fn both(&mut self, event: impl Fn() -> Event) {
        self.window.tell(Message::event(event()));
        self.terminal.hear(event());
    }

    /// Holds the two against each other.
    fn compare(&self, after: &dyn std::fmt::Debug) {
        // All that came before was compared before.
        let (said, other) = (&self.window.said()[self.before..], self.terminal.said());
        assert_eq!(said.len(), other.len(), "how much was said after {after:?}");
        let new = said.len().saturating_sub(5);
        assert_eq!(said[new..], other[new..], "what was said after {after:?}");
        let (window, terminal) = (self.window.session(), self.terminal.session());
        let (page, other) = (window.page(), terminal.page());
        assert_eq!(page, other, "what is shown after {after:?}");
        let place = |walk: Option<&Walk>| walk.map(Walk::place);
        assert_eq!(place(window.walk()), place(terminal.walk()), "{after:?}");
        // A piece that is begun here is named by chance.
        let tie = |session: &marlinspeak::session::Session| {
            session.tie().map(|tie| {
                let tie = tie.tie();
                let piece = tie.batch.as_ref().map_or(1, Batch::number);
                let id = (piece == 1).then(|| tie.id().clone());
                (piece, id, tie.work_time.clone())
            })
        };
        assert_eq!(tie(window), tie(terminal), "working time after {after:?}");
        assert_eq!(
            self.window.sounded(),
            self.terminal.sounded(),
            "sounds after {after:?}"
        );
        assert_eq!(window.settings(), terminal.settings(), "{after:?}");
    }

    /// Holds what is painted and what is printed against the page: neither face leaves out a part
    /// of it.
    fn compare_shown(&self) {
        let Some(page) = self.window.session().page() else {
            return;
        };
        let printed = self.terminal.printed();
        let held = page.pause.iter().chain(&page.voice_lost);
        let all = page.lines();
        let all = all.iter().chain(&page.notices).chain(&page.answer);
        for line in all.chain(held) {
            assert!(
                printed.iter().any(|other| other == line),
                "not printed: {line:?} in {printed:?}"
            );
        }
        let marks = page.shown.marks.iter().map(|mark| &mark.text);
        // What is asked for comes over the step, and that it is held comes over both; the lost voice
        // has a sign.
        let answer = page.answer.iter().filter(|_| page.pause.is_none());
        let parts = page.notices.iter().chain(answer);
        if let Some(held) = &page.pause {
            // Over the step that stands in a word, above the keys that go on.
            let words = self.window.session().words();
            let short = ["paused-shown", "paused-way"].map(|id| words.plainly(id, &[]));
            let is_seen = self.window.sees(held) || short.iter().all(|text| self.window.sees(text));
            assert!(is_seen, "not seen: {held:?}");
        }
        if page.voice_lost.is_some() {
            let sign = self
                .window
                .session()
                .words()
                .plainly("voice-lost-sign", &[]);
            assert!(self.window.sees(&sign), "no sign of the lost voice");
        }
        let parts = parts.chain([&page.shown.line, &page.shown.phase]);
        for part in parts.chain(marks).chain(&page.shown.caution) {
            // What is in the bag stands in lines of its own; over the step a number stays with what it counts.
            for line in part.lines() {
                let is_seen = self.window.sees(line) || self.window.sees(&bound(line));
                assert!(is_seen, "not seen: {line:?}");
            }
        }
    }

    /// Holds the documents on both shelves against each other, but for the time they were saved.
    fn compare_kept(&self) {
        let [window, terminal] = [self.window.shelf(), self.terminal.shelf()].map(documents);
        assert_eq!(window, terminal, "what is saved");
    }
}

/// The tie, or all pieces of it in turn.
fn documents(shelf: &Shelf) -> Vec<Value> {
    let mut ties = shelf.list().unwrap().untroubled().unwrap();
    ties.sort_by_key(|tie| tie.batch.as_ref().map_or(1, Batch::number));
    assert!(!ties.is_empty(), "nothing is saved");
    let read = |tie: &Tie| {
        let file = shelf.folder().join(format!("{}.json", tie.id()));
        let mut document: Value = serde_json::from_slice(&std::fs::read(file).unwrap()).unwrap();
        let fields = document.as_object_mut().unwrap();
        // When a tie was saved, and the checksum that covers it, differ by nature; so do the name and the
        // beginning of a piece that was begun here.
        let is_begun_here = tie.batch.as_ref().is_some_and(|batch| batch.number() > 1);
        let own: &[&str] = if is_begun_here { &["id", "begun"] } else { &[] };
        for differs in ["touched", "checksum"].iter().chain(own) {
            fields.remove(*differs).unwrap();
        }
        document
    };
    ties.iter().map(read).collect()
}

fn tie(leads: &str, bights: &str, passes: &str) -> Tie {
    marlinspeak::session::new_tie(&Plan::read(leads, bights, passes, "1").unwrap())
}

fn happening() -> impl Strategy<Value = Happening> {
    prop_oneof![
        12 => Just(Happening::Key(" ", 900)),
        24 => (prop::sample::select(&KEYS[..]), 1..6000_u64)
            .prop_map(|(key, after)| Happening::Key(key, after)),
        1 => (prop::sample::select(&KEYS[..]), Just(400_000))
            .prop_map(|(key, after)| Happening::Key(key, after)),
        2 => prop::sample::select(&KEYS[..]).prop_map(Happening::Held),
        1 => any::<bool>().prop_map(Happening::Voice),
        1 => Just(Happening::NoSuchVoice),
        2 => Just(Happening::MovesOn),
        1 => any::<bool>().prop_map(Happening::Kept),
        1 => Just(Happening::SettingsNotKept),
    ]
}

fn knots() -> impl Strategy<Value = (&'static str, &'static str, &'static str)> {
    prop::sample::select(
        &[
            ("3", "5", "1"),
            ("4", "7", "1"),
            ("5", "7", "2"),
            ("4", "6", "1"),
            ("3", "2", "3"),
        ][..],
    )
}

proptest! {
    // Forty traces of a hundred and more: thousands of presses and reports.
    #![proptest_config(ProptestConfig { cases: 32, ..ProptestConfig::default() })]

    #[test]
    fn both_faces_say_show_and_keep_the_same(
        (leads, bights, passes) in knots(),
        skipped in 0..60_usize,
        happenings in prop::collection::vec(happening(), 100..160),
        pacing in any::<bool>(),
        cues in any::<bool>(),
    ) {
        let mut settings = Settings { pacing, ..Settings::default() };
        settings.cues.is_on = cues;
        let mut faces = Faces::of(&tie(leads, bights, passes), Words::english, &settings);
        for _ in 0..skipped {
            faces.happen(&Happening::Key(" ", 1500));
        }
        faces.compare(&"the beginning");
        for (number, happening) in happenings.iter().enumerate() {
            faces.happen(happening);
            faces.compare(&(number, happening));
            // Painting is slow; what is painted follows from the page.
            if number % 50 == 0 {
                faces.compare_shown();
            }
        }
        faces.compare_kept();
    }
}

/// From the first step to the last and back again, in every language and depth.
#[test]
fn a_whole_tie_is_the_same_in_both() {
    for tag in ["en", "de", "es", "fr"] {
        let words = match tag {
            "de" => || Words::load(Some("de")).unwrap(),
            "es" => || Words::load(Some("es")).unwrap(),
            "fr" => || Words::load(Some("fr")).unwrap(),
            _ => Words::english,
        };
        for depth in ["1", "2", "3"] {
            let mut faces = Faces::of(&tie("3", "5", "1"), words, &Settings::default());
            faces.happen(&Happening::Key(depth, 800));
            let mut steps = 0;
            while !faces.window.session().walk().unwrap().is_done() {
                faces.happen(&Happening::Key(" ", 2000));
                faces.compare(&(tag, depth, steps));
                steps += 1;
                if steps % 5 == 0 {
                    faces.compare_shown();
                }
            }
            assert!(steps > 20, "{steps}");
            faces.happen(&Happening::Key(" ", 2000));
            faces.compare(&"after the last step");
            faces.compare_kept();
        }
    }
}

/// A rail, a taper, a ball and a board, and the tyer's own hand: from the bag to the ends.
#[test]
fn a_whole_tie_on_every_ground_is_the_same_in_both() {
    let mm = |length| Millimetres::new(length).unwrap();
    let on = |leads, bights, passes, ground| {
        let plan = Plan::read(leads, bights, passes, "").unwrap();
        plan.with_setup(Some(Setup::in_place(ground, Cord::new(mm(4.0)))))
    };
    let taper = Ground::Taper {
        bottom: mm(36.0),
        top: mm(28.0),
        over: mm(60.0),
    };
    let mat = Ground::Flat {
        outer: mm(150.0),
        hole: None,
    };
    let hand = Plan::read("3", "5", "2", "").unwrap();
    let plans: [(Plan, fn() -> Words); 5] = [
        (on("3", "5", "1", Ground::Round(mm(28.0))), Words::english),
        (on("3", "5", "2", taper), || {
            Words::load(Some("de")).unwrap()
        }),
        (on("4", "5", "1", Ground::Ball(mm(38.0))), || {
            Words::load(Some("es")).unwrap()
        }),
        (on("3", "7", "1", mat), || Words::load(Some("fr")).unwrap()),
        (hand.with_round_hand().unwrap(), Words::english),
    ];
    for (plan, words) in plans {
        let rims = plan.rims();
        let tie = marlinspeak::session::new_tie(&plan);
        let mut faces = Faces::of(&tie, words, &Settings::default());
        let mut steps = 0;
        while !faces.window.session().walk().unwrap().is_done() {
            faces.happen(&Happening::Key(" ", 2000));
            faces.compare(&(rims, steps));
            steps += 1;
            if steps % 9 == 0 {
                faces.happen(&Happening::Key("h", 2000));
                faces.compare(&(rims, "where"));
                faces.compare_shown();
            }
        }
        assert!(steps > 20, "{rims:?}: {steps}");
        faces.compare_kept();
    }
}

/// Three bell ropes, one after the other: what is asked about the tube, every answer to it, thinking again
/// of it, and what is told when a piece is done.
#[test]
fn several_of_the_same_are_the_same_in_both() {
    let mm = |length| Millimetres::new(length).unwrap();
    let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
    let plan = Plan::read("3", "5", "1", "").unwrap();
    let plan = plan.with_setup(Some(Setup::new(tube, Cord::new(mm(3.0)))));
    for (words, answers) in [
        (
            Words::english as fn() -> Words,
            &[" ", "ArrowLeft", " "][..],
        ),
        (|| Words::load(Some("de")).unwrap(), &["ArrowLeft"][..]),
        (|| Words::load(Some("es")).unwrap(), &["r", "h", " "][..]),
        (|| Words::load(Some("fr")).unwrap(), &["3", "w", " "][..]),
    ] {
        let mut rope = marlinspeak::session::new_tie(&plan);
        rope.batch = Some(Batch::first(3));
        let mut faces = Faces::of(&rope, words, &Settings::default());
        let keys = |faces: &Faces| faces.window.session().page().unwrap().keys;
        let mut met = Vec::new();
        for number in 0..600_u16 {
            faces.compare(&number);
            let now = keys(&faces);
            if met.last() != Some(&now) {
                met.push(now);
                faces.compare_shown();
            }
            match now {
                Keys::Done => break,
                Keys::Standing => {
                    for key in answers {
                        faces.happen(&Happening::Key(key, 3000));
                        faces.compare(&(number, key));
                    }
                }
                _ => faces.happen(&Happening::Key(" ", 3000)),
            }
        }
        assert_eq!(keys(&faces), Keys::Done, "{met:?}");
        let done = met.iter().filter(|keys| **keys == Keys::PieceDone).count();
        assert!(done == 2 && met.contains(&Keys::Standing), "{met:?}");
        faces.happen(&Happening::Key(" ", 3000));
        faces.compare(&"no fourth is begun");
        faces.compare_kept();
        assert_eq!(documents(faces.terminal.shelf()).len(), 3);
    }
}

/// What a tyer can ask for in the place of a step, and how.
const ASKED_FOR: [&[&str]; 5] = [&["w"], &["w", " "], &["w", "PageUp"], &["w", "h"], &["j"]];

/// Escape goes back to the step first, and leaves the tie only from there.
#[test]
fn escape_closes_what_was_asked_for_before_it_leaves_the_tie() {
    for asked in ASKED_FOR {
        let mut faces = Faces::of(&tie("3", "5", "1"), Words::english, &Settings::default());
        for _ in 0..8 {
            faces.happen(&Happening::Key(" ", 2000));
        }
        let walk = |faces: &Faces| {
            let walk = faces.window.session().walk().unwrap();
            (walk.is_telling_steps(), walk.place(), walk.shown().clone())
        };
        let before = walk(&faces);
        for key in asked {
            faces.happen(&Happening::Key(key, 2000));
        }
        assert!(!walk(&faces).0, "{asked:?} asks nothing");
        faces.happen(&Happening::Key("Escape", 2000));
        faces.compare(&asked);
        assert_eq!(walk(&faces), before, "{asked:?}");
        assert!(!faces.terminal.is_over(), "{asked:?}");
        let step = faces.window.session().walk().unwrap().say().to_string();
        assert_eq!(faces.window.last_said(), step, "{asked:?}");
        faces.happen(&Happening::Key("Escape", 2000));
        assert!(faces.window.session().tie().is_none(), "{asked:?}");
        assert!(faces.terminal.is_over(), "{asked:?}");
    }
}

/// What is said last, with what is saved about how much is said.
fn opened(folder: &Path, settings: Settings) -> Terminal {
    Terminal::take_up(Words::english(), folder, settings)
}

#[test]
fn saved_settings_hold_in_the_terminal_too() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    drop(shelf.begin(tie("5", "7", "1")).unwrap());
    let mut settings = Settings::default();
    let plain = opened(folder.path(), settings.clone()).said();
    settings.verbosity.detail = marlinspeak::words::Detail::Teach;
    let taught = opened(folder.path(), settings).said();
    assert_ne!(plain, taught);
    assert!(SettingsFile::default_path().is_some() || cfg!(not(unix)));
}
