//! Paper and moving pictures from the window, worked by presses, by mouse and by touch: made from a tie
//! in hand, from the plan and from the shelf, into a file that the system or the tyer names.
#![cfg(feature = "window")]

use crate::desk;
use crate::hands;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::Duration;

use desk::Desk;
use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{DialogError, FileDialogs, Message, NoDialogs, OpenDialog, SaveDialog};
use marlinspeak::bench::{Cord, Millimetres, Tube};
use marlinspeak::guide::{Plan, Setup, SetupField};
use marlinspeak::settings::Settings;
use marlinspeak::words::Words;
use tempfile::TempDir;

const SPACE: Key = Key::Named(Named::Space);
const ENTER: Key = Key::Named(Named::Enter);
const DOWN: Key = Key::Named(Named::ArrowDown);
const RIGHT: Key = Key::Named(Named::ArrowRight);
const ESCAPE: Key = Key::Named(Named::Escape);

/// What the system does when it is asked.
#[derive(Clone, Debug)]
enum Manner {
    /// Somebody names this path.
    Names(PathBuf),
    /// Somebody thinks better of it.
    CallsOff,
    /// Nobody answers, until the window is taken away.
    Waits,
    /// What comes back is of no use.
    Babbles,
}

/// The windows of a system that do as they are told, and remember what they were asked.
#[derive(Debug)]
struct Windows {
    manner: Mutex<Manner>,
    saves: Mutex<Vec<SaveDialog>>,
    shown: Mutex<Vec<PathBuf>>,
    was_closed: AtomicBool,
}

impl Windows {
    fn new(manner: Manner) -> Arc<Self> {
        Arc::new(Self {
            manner: Mutex::new(manner),
            saves: Mutex::default(),
            shown: Mutex::default(),
            was_closed: AtomicBool::new(false),
        })
    }

    fn naming(path: &Path) -> Arc<Self> {
        Self::new(Manner::Names(path.to_owned()))
    }

    fn act(&self, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        let manner = self.manner.lock().unwrap().clone();
        match manner {
            Manner::Names(path) => Ok(Some(path)),
            Manner::CallsOff => Ok(None),
            Manner::Babbles => Err(DialogError::Nonsense("babble".to_owned())),
            Manner::Waits => {
                while !stop.load(Ordering::Relaxed) {
                    thread::park_timeout(Duration::from_millis(2));
                }
                self.was_closed.store(true, Ordering::Relaxed);
                // As some answer who are told to go.
                Ok(Some(PathBuf::from("/nonexistent/too-late.pdf")))
            }
        }
    }

    fn shown(&self) -> Vec<PathBuf> {
        self.shown.lock().unwrap().clone()
    }
}

impl FileDialogs for Windows {
    fn save(&self, asked: &SaveDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        self.saves.lock().unwrap().push(asked.clone());
        self.act(stop)
    }

    fn open(&self, _: &OpenDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        self.act(stop)
    }

    fn show(&self, file: &Path) -> Result<(), DialogError> {
        self.shown.lock().unwrap().push(file.to_owned());
        Ok(())
    }
}

fn plan(leads: &str, bights: &str) -> Plan {
    Plan::read(leads, bights, "1", "1").unwrap()
}

/// A tie in hand on the paper screen.
fn on_paper(folder: &TempDir, plan: Plan, dialogs: Arc<dyn FileDialogs>) -> Hands {
    let mut hands = begun(folder, plan, dialogs);
    hands.press(Key::Character("o".into()));
    hands
}

fn begun(folder: &TempDir, plan: Plan, dialogs: Arc<dyn FileDialogs>) -> Hands {
    Hands::open_among(
        Words::english(),
        &folder.path().join("ties"),
        Some(plan),
        Settings::default(),
        dialogs,
    )
}

fn begins_with(file: &Path, head: &[u8]) -> bool {
    fs::read(file).unwrap().starts_with(head)
}

/// No file but these is in a folder: no draft either.
fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| name != "ties")
        .collect();
    names.sort();
    names
}

#[test]
fn a_card_of_the_tie_in_hand_is_made_opened_and_the_tie_goes_on() {
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("card.pdf");
    let windows = Windows::naming(&file);
    let mut hands = begun(&folder, plan("5", "7"), windows.clone());
    hands.press(SPACE);
    let step = hands.last_said();
    hands.press(Key::Character("o".into()));
    assert_eq!(
        hands.last_said(),
        "On paper or as a moving picture: up and down choose, the side arrows change the kind of \
         file, the space bar makes it. Card, as a PDF file. All its figures and every leg as a table, for \
         an evening without a computer."
    );
    hands.press(ENTER);
    assert!(begins_with(&file, b"%PDF"));
    assert_eq!(windows.shown(), std::slice::from_ref(&file));
    assert!(hands.last_said().starts_with("The card is in “"));
    let asked = windows.saves.lock().unwrap()[0].clone();
    assert_eq!(asked.name, "5 lead 7 bight, Card.pdf");
    assert_eq!(asked.kind.endings, ["pdf"]);
    // O opens it once more.
    hands.press(Key::Character("o".into()));
    assert_eq!(windows.shown().len(), 2);
    hands.press(ESCAPE);
    hands.press(Key::Character("r".into()));
    assert_eq!(hands.last_said(), step);
}

#[test]
fn each_of_the_four_is_made_in_each_of_its_kinds_of_file() {
    let folder = TempDir::new().unwrap();
    let tube = Tube::ringed(Millimetres::parse("45").unwrap(), &[14, 20]).unwrap();
    let setup = Setup::new(tube, Cord::new(Millimetres::parse("3").unwrap()));
    let plan = plan("3", "5").with_setup(Some(setup));
    let made = folder.path().join("made");
    fs::create_dir(&made).unwrap();
    let windows = Windows::naming(&made);
    let mut hands = on_paper(&folder, plan, windows.clone());
    let heads: [&[(&str, &[u8])]; 4] = [
        &[("pdf", b"%PDF")],
        &[("pdf", b"%PDF"), ("png", b"\x89PNG")],
        &[("png", b"\x89PNG"), ("pdf", b"%PDF")],
        &[("gif", b"GIF89a"), ("webp", b"RIFF")],
    ];
    for (kind, forms) in heads.iter().enumerate() {
        for (ending, head) in *forms {
            let file = made.join(format!("{kind}.{ending}"));
            *windows.manner.lock().unwrap() = Manner::Names(file.clone());
            hands.press(ENTER);
            let shown = windows
                .shown()
                .pop()
                .unwrap_or_else(|| panic!("{}", hands.last_said()));
            assert!(
                begins_with(&shown, head),
                "{} {}",
                shown.display(),
                hands.last_said()
            );
            hands.press(RIGHT);
        }
        hands.press(DOWN);
    }
    assert_eq!(
        names(&made),
        [
            "0.pdf", "1.pdf", "1.png", "2.pdf", "2.png", "3.gif", "3.webp"
        ]
    );
}

#[test]
fn without_a_tube_there_is_no_strip_and_it_is_said_how_to_have_one() {
    let folder = TempDir::new().unwrap();
    let windows = Windows::new(Manner::CallsOff);
    let mut hands = on_paper(&folder, plan("5", "7"), windows.clone());
    hands.press(DOWN);
    hands.press(ENTER);
    assert!(
        hands
            .last_said()
            .starts_with("A strip is as long as the tube is round")
    );
    assert!(windows.saves.lock().unwrap().is_empty());
}

#[test]
fn a_knot_of_the_plan_and_a_tie_of_the_shelf_go_on_paper_too() {
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("strip.pdf");
    let windows = Windows::naming(&file);
    let ties = folder.path().join("ties");
    let settings = Settings::default();
    let mut hands = Hands::open_among(Words::english(), &ties, None, settings, windows.clone());
    hands.press(Key::Character("p".into()));
    for (field, typed) in [
        (SetupField::Object, "30"),
        (SetupField::Cover, "36"),
        (SetupField::Cord, "3.5"),
        (SetupField::Tube, "45"),
    ] {
        hands.tell(Message::planned(field, typed));
    }
    hands.press(Named::F9);
    hands.press(DOWN);
    hands.press(ENTER);
    assert!(begins_with(&file, b"%PDF"), "{}", hands.last_said());
    // Back is where it came from, with all that was typed.
    hands.press(ESCAPE);
    hands.press(ENTER);
    assert!(hands.session().walk().is_some());
    hands.press(SPACE);
    hands.press(ESCAPE);
    hands.press(Key::Character("s".into()));
    let picture = folder.path().join("stage.png");
    *windows.manner.lock().unwrap() = Manner::Names(picture.clone());
    hands.press(Key::Character("o".into()));
    hands.press(DOWN);
    hands.press(DOWN);
    hands.press(ENTER);
    assert!(begins_with(&picture, b"\x89PNG"), "{}", hands.last_said());
    hands.press(ESCAPE);
    assert!(
        hands.last_said().starts_with("My ties."),
        "{}",
        hands.last_said()
    );
}

/// The line in which the path is typed.
fn typed(hands: &mut Hands, path: &Path) {
    hands.tell(Message::typed_on_paper(&path.display().to_string()));
}

#[test]
fn where_the_system_shows_no_window_the_path_is_typed_and_nothing_is_written_over_unasked() {
    let folder = TempDir::new().unwrap();
    let mut hands = on_paper(&folder, plan("5", "7"), Arc::new(NoDialogs));
    hands.press(ENTER);
    assert_eq!(
        hands.last_said(),
        "Save as: the path of the file. Enter makes it."
    );
    // Emptied, it is told what belongs there.
    typed(&mut hands, Path::new(""));
    hands.press(ENTER);
    assert!(hands.last_said().starts_with("No path is given"));
    // The ending may be left out, and what is there is asked back.
    let file = folder.path().join("card.pdf");
    fs::write(&file, "letters").unwrap();
    typed(&mut hands, &folder.path().join("card"));
    hands.press(ENTER);
    assert!(
        hands.last_said().contains("is there already"),
        "{}",
        hands.last_said()
    );
    assert_eq!(fs::read(&file).unwrap(), b"letters");
    hands.press(ENTER);
    assert!(begins_with(&file, b"%PDF"));
    // No program opens anything on such a system.
    assert!(hands.last_said().contains("no program here opened it"));

    // Another name is not the one that was asked back.
    let other = folder.path().join("other.pdf");
    fs::write(&other, "letters").unwrap();
    hands.press(ENTER);
    typed(&mut hands, &file);
    hands.press(ENTER);
    assert!(hands.last_said().contains("is there already"));
    typed(&mut hands, &other);
    hands.press(ENTER);
    assert!(hands.last_said().contains("other.pdf” is there already"));
    assert_eq!(fs::read(&other).unwrap(), b"letters");

    // A folder that is not there is told, and what was typed stands there to be mended.
    typed(&mut hands, &folder.path().join("none/card.pdf"));
    hands.press(ENTER);
    assert!(
        hands.last_said().contains("could not be written"),
        "{}",
        hands.last_said()
    );
    typed(&mut hands, &folder.path().join("third.pdf"));
    hands.press(ENTER);
    assert_eq!(names(folder.path()), ["card.pdf", "other.pdf", "third.pdf"]);
}

#[test]
fn a_window_that_never_answers_holds_nobody() {
    let folder = TempDir::new().unwrap();
    let windows = Windows::new(Manner::Waits);
    let mut hands = on_paper(&folder, plan("5", "7"), windows.clone());
    hands.press_on();
    hands.press(ENTER);
    assert!(
        hands
            .last_said()
            .starts_with("The system asks in a window of its own")
    );
    hands.press(ESCAPE);
    assert_eq!(hands.last_said(), "Nothing is made.");
    let closed = |_: &Hands| windows.was_closed.load(Ordering::Relaxed);
    hands.wait_until("the window goes", closed);
    // What it answers then is of no interest any more.
    hands.press(ENTER);
    hands.press(SPACE);
    assert!(hands.last_said().starts_with("Save as"));
    let file = folder.path().join("card.pdf");
    typed(&mut hands, &file);
    hands.press(ENTER);
    hands.wait_until("the card", |hands| {
        hands.last_said().starts_with("The card is in")
    });
    assert!(begins_with(&file, b"%PDF"));
}

#[test]
fn an_answer_of_no_use_has_the_path_typed() {
    let folder = TempDir::new().unwrap();
    let mut hands = on_paper(&folder, plan("5", "7"), Windows::new(Manner::Babbles));
    hands.press(ENTER);
    assert!(hands.last_said().starts_with("Save as"));
    hands.press(ESCAPE);
    assert_eq!(hands.last_said(), "Nothing is made.");
}

#[test]
fn a_name_without_its_ending_gets_it_and_is_asked_back_when_it_is_taken() {
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("tiller.pdf");
    fs::write(&file, "letters").unwrap();
    let windows = Windows::naming(&folder.path().join("tiller"));
    let mut hands = on_paper(&folder, plan("5", "7"), windows);
    hands.press(ENTER);
    assert!(
        hands.last_said().contains("is there already"),
        "{}",
        hands.last_said()
    );
    assert_eq!(fs::read(&file).unwrap(), b"letters");
    hands.press(ENTER);
    assert!(begins_with(&file, b"%PDF"));
}

#[test]
fn a_long_reel_tells_how_far_it_is_and_stops_without_a_trace() {
    let folder = TempDir::new().unwrap();
    let out = folder.path().join("out");
    fs::create_dir(&out).unwrap();
    let windows = Windows::naming(&out.join("reel.gif"));
    let mut hands = on_paper(&folder, plan("31", "40"), windows.clone());
    for _ in 0..3 {
        hands.press(DOWN);
    }
    hands.press_on();
    hands.press(ENTER);
    hands.wait_until("the reel begins", |hands| {
        hands.last_said() == "The moving picture is being made."
    });
    // Its first frames are made, and it is seen how many there are.
    hands.wait_until("the first frame", |hands| !hands.sees("It begins."));
    // No press is lost on it, and the window asks before it is closed.
    hands.press(DOWN);
    hands.tell(Message::Close);
    assert!(!hands.has_exited);
    assert!(
        hands
            .said()
            .iter()
            .any(|said| said.starts_with("What is being made is stopped first"))
    );
    hands.wait_until("the stop", |hands| {
        hands.last_said().starts_with("Stopped after")
    });
    assert!(names(&out).is_empty(), "{:?}", names(&out));
    assert!(windows.shown().is_empty());
    hands.tell(Message::Close);
    hands.wait_until("the end", |hands| hands.has_exited);
}

#[test]
fn escape_stops_what_is_being_made() {
    let folder = TempDir::new().unwrap();
    let out = folder.path().join("out");
    fs::create_dir(&out).unwrap();
    let mut hands = on_paper(
        &folder,
        plan("31", "40"),
        Windows::naming(&out.join("reel.gif")),
    );
    for _ in 0..3 {
        hands.press(DOWN);
    }
    hands.press_on();
    hands.press(ENTER);
    hands.wait_until("the reel begins", |hands| {
        hands.last_said() == "The moving picture is being made."
    });
    hands.press(ESCAPE);
    assert!(
        hands
            .said()
            .iter()
            .any(|said| said.starts_with("What is being made is stopped."))
    );
    hands.wait_until("the stop", |hands| {
        hands.last_said().starts_with("Stopped after")
    });
    assert!(names(&out).is_empty());
}

#[test]
fn a_reel_that_nobody_would_look_at_is_refused_in_a_sentence() {
    let folder = TempDir::new().unwrap();
    let windows = Windows::naming(&folder.path().join("reel.gif"));
    let mut hands = on_paper(&folder, plan("101", "100"), windows);
    for _ in 0..3 {
        hands.press(DOWN);
    }
    hands.press(ENTER);
    assert!(
        hands
            .last_said()
            .starts_with("A moving picture of this knot would show more than 3,000"),
        "{}",
        hands.last_said()
    );
    assert!(names(folder.path()).is_empty());
}

#[test]
fn it_is_worked_by_mouse_and_by_touch_alone() {
    for by_touch in [false, true] {
        for size in [(1100.0, 760.0), (800.0, 480.0), (800.0, 1400.0)] {
            let folder = TempDir::new().unwrap();
            let file = folder.path().join("step.pdf");
            let windows = Windows::naming(&file);
            let hands = on_paper(&folder, plan("5", "7"), windows.clone());
            let mut desk = Desk::new(hands, Size::new(size.0, size.1));
            let push = |desk: &mut Desk, id: &'static str| {
                let place = desk
                    .place_of(id)
                    .unwrap_or_else(|| panic!("no {id} at {size:?}"));
                assert!(
                    place.width >= 44.0 && place.height >= 44.0,
                    "{id}: {place:?}"
                );
                if by_touch {
                    desk.touch(place.center());
                } else {
                    desk.click(place.center());
                }
            };
            push(&mut desk, "paper stage");
            push(&mut desk, "paper PDF");
            push(&mut desk, "paper Letter");
            assert_eq!(desk.hands.last_said(), "Paper: Letter.");
            push(&mut desk, "bar-next");
            assert!(begins_with(&file, b"%PDF"), "{}", desk.hands.last_said());
            push(&mut desk, "paper open");
            assert_eq!(windows.shown(), [file.clone(), file]);
            push(&mut desk, "bar-leave");
            assert!(desk.place_of("bar-wrong").is_some());
        }
    }
}

#[test]
fn the_photograph_of_a_finished_tie_is_chosen_in_a_window_of_the_system() {
    let folder = TempDir::new().unwrap();
    let photograph = folder.path().join("tiller.png");
    image::RgbImage::new(20, 10).save(&photograph).unwrap();
    let windows = Windows::naming(&photograph);
    let mut hands = begun(&folder, plan("3", "5"), windows.clone());
    while !hands
        .session()
        .walk()
        .is_some_and(|walk| walk.place() == walk.script().last())
    {
        hands.press(SPACE);
    }
    hands.press(Key::Character("l".into()));
    // By its key, and by its button.
    *windows.manner.lock().unwrap() = Manner::CallsOff;
    let before = hands.last_said();
    hands.press(Named::F2);
    assert_eq!(hands.last_said(), before);
    *windows.manner.lock().unwrap() = Manner::Babbles;
    hands.press(Named::F2);
    assert!(
        hands
            .last_said()
            .starts_with("The system shows no window for files here")
    );
    *windows.manner.lock().unwrap() = Manner::Names(photograph.clone());
    hands.click("Choose…");
    assert!(
        hands.last_said().contains("tiller.png"),
        "{}",
        hands.last_said()
    );
    hands.press(ENTER);
    assert_eq!(
        hands.entries()[0].photograph,
        photograph.display().to_string()
    );
}
