//! The shelf screen, the log's form and a tie that is open elsewhere, worked by presses.
#![cfg(feature = "window")]

use crate::hands;
use crate::window;

use std::fs;
use std::path::Path;

use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{self, Message};
use marlinspeak::bench::{Cord, Millimetres, TieKind};
use marlinspeak::guide::{AtOnce, Phase, Plan, Script};
use marlinspeak::session::LogField;
use marlinspeak::shelf::{Entry, Shelf, Tie, WorkTime};
use tempfile::TempDir;
use window::Pane;

const SPACE: Key = Key::Named(Named::Space);
const ENTER: Key = Key::Named(Named::Enter);
const DOWN: Key = Key::Named(Named::ArrowDown);
const ESCAPE: Key = Key::Named(Named::Escape);

fn plan(leads: u16, bights: u16) -> Plan {
    Plan::read(&leads.to_string(), &bights.to_string(), "1", "1").unwrap()
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

/// Puts a tie on the shelf that stands before a leg; 0 is the beginning, and the end comes
/// after the last.
fn put(folder: &Path, plan: &Plan, leg: u16) -> Tie {
    let script = Script::new(plan.clone(), AtOnce::default());
    let place = script
        .places()
        .find(|place| place.phase() == Phase::Lead && place.leg().unwrap_or(0) == leg);
    let shelf = Shelf::open(folder).unwrap();
    let place = place.unwrap_or(script.last());
    shelf.begin(Tie::begin(plan.clone(), place)).unwrap().tie
}

/// The app on the shelf screen of a folder.
fn at_shelf(folder: &Path) -> Hands {
    let mut hands = Hands::open(folder, None);
    hands.press(letter("s"));
    hands
}

fn type_line(hands: &mut Hands, text: &str) {
    hands.tell(Message::typed_on_shelf(text));
    hands.press(ENTER);
}

/// Goes to a field of the log's form and types.
fn fill(hands: &mut Hands, field: LogField, text: &str) {
    hands.tell(Message::typed_in_log(field, text));
}

/// However many ties there are, a press lays out as many as are in view and no more.
#[test]
fn of_hundreds_of_ties_only_those_round_the_one_in_hand_are_laid_out() {
    const TIES: usize = 240;
    let folder = TempDir::new().unwrap();
    let mut tie = Tie::begin(
        plan(3, 2),
        Script::new(plan(3, 2), AtOnce::default()).first(),
    );
    let shelf = Shelf::open(folder.path()).unwrap();
    for number in 0..TIES {
        tie.name = format!("rope {number}.");
        shelf.begin(tie.clone()).unwrap();
    }
    let mut hands = at_shelf(folder.path());
    let mut most = 0;
    for key in [Named::Home, Named::End, Named::ArrowUp] {
        hands.press(Key::Named(key));
        let said = hands.last_said();
        let mut screen = hands.screen(Size::new(1100.0, 760.0));
        let mut laid_out = Vec::new();
        for number in 0..TIES {
            let name = format!("rope {number}.");
            if screen.find(name.as_str()).is_ok() {
                laid_out.push(name);
            }
        }
        assert!(
            laid_out.iter().any(|name| said.contains(name.as_str())),
            "{said}"
        );
        most = most.max(laid_out.len());
    }
    assert!((1..=80).contains(&most), "{most} of {TIES} are laid out");
}

#[test]
fn every_tie_is_there_with_its_figures_phase_and_per_cent() {
    let folder = TempDir::new().unwrap();
    put(folder.path(), &plan(3, 2), 99);
    put(folder.path(), &plan(7, 4), 3);
    put(folder.path(), &plan(5, 6), 7);
    let mut hands = at_shelf(folder.path());
    assert_eq!(
        hands.last_said(),
        "My ties. 3 ties. Up and down move, the space bar takes one up. 1 of 3. 5 lead, 6 \
         bight, single. Lead pass, 50 per cent, touched today."
    );
    for text in [
        "5 lead 6 bight",
        "Lead pass, leg 7 of 12",
        "50 per cent, 6 of 12 legs, touched today",
        "Finished, 4 of 4 legs, touched today",
        "Not in the log yet: L writes down what was used",
    ] {
        assert!(hands.sees(text), "{text}");
    }
    hands.press(letter("l"));
    assert!(hands.last_said().starts_with("This tie is not finished."));
    hands.press(DOWN);
    assert!(
        hands
            .last_said()
            .starts_with("2 of 3. 7 lead, 4 bight, single.")
    );
    hands.press(DOWN);
    assert_eq!(
        hands.last_said(),
        "3 of 3. 3 lead, 2 bight, single. Finished, touched today."
    );
    // At the end there is nothing but to say where that is.
    hands.press(DOWN);
    assert!(hands.last_said().starts_with("3 of 3."));
    hands.press(Key::Named(Named::Home));
    assert!(hands.last_said().starts_with("1 of 3."));
    hands.press(letter("r"));
    assert!(hands.last_said().starts_with("1 of 3."));
    hands.press(DOWN);
    hands.press(SPACE);
    assert!(hands.last_said().starts_with("Taking up 7 lead, 4 bight."));
}

#[test]
fn a_name_and_a_note_are_typed_and_shown_on_both_screens() {
    let folder = TempDir::new().unwrap();
    put(folder.path(), &plan(7, 4), 0);
    put(folder.path(), &plan(5, 6), 0);
    let mut hands = at_shelf(folder.path());
    hands.press(DOWN);
    hands.press(letter("e"));
    assert_eq!(hands.last_said(), "Name of this tie");
    type_line(&mut hands, " tiller of the red dinghy ");
    // Its place among the others stays, and so does the focus.
    assert_eq!(
        hands.last_said(),
        "Renamed. 2 of 2. tiller of the red dinghy. 7 lead, 4 bight, single. Lead pass, 0 per \
         cent, touched today."
    );
    hands.press(letter("n"));
    type_line(&mut hands, "wax it");
    assert!(
        hands.last_said().ends_with("Note: wax it"),
        "{}",
        hands.last_said()
    );
    assert!(hands.sees("tiller of the red dinghy") && hands.sees("wax it"));
    // Escape leaves it as it was.
    hands.press(letter("e"));
    hands.tell(Message::typed_on_shelf("another"));
    hands.press(ESCAPE.clone());
    assert!(hands.sees("tiller of the red dinghy"));
    hands.press(ESCAPE);
    assert!(hands.sees("Go on with") && hands.sees("tiller of the red dinghy"));
}

#[test]
fn put_away_a_tie_waits_no_more_and_comes_out_again() {
    let folder = TempDir::new().unwrap();
    put(folder.path(), &plan(5, 6), 5);
    let mut hands = at_shelf(folder.path());
    hands.press(letter("a"));
    assert!(hands.last_said().starts_with("Put away. It stays here"));
    assert!(hands.sees("Put away at 33 per cent, 4 of 12 legs, touched today"));
    hands.press(ESCAPE);
    assert!(hands.last_said().starts_with("No tie is waiting."));
    hands.press(letter("s"));
    hands.press(letter("a"));
    assert!(hands.last_said().starts_with("Put out again."));
    hands.press(ESCAPE);
    assert!(
        hands
            .last_said()
            .starts_with("A tie is waiting: 5 lead, 6 bight")
    );
}

#[test]
fn the_same_tie_is_begun_again() {
    let folder = TempDir::new().unwrap();
    let mut tie = put(folder.path(), &plan(5, 6), 9);
    tie.name = "boathook".to_owned();
    tie.is_put_away = true;
    let shelf = Shelf::open(folder.path()).unwrap();
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let mut hands = at_shelf(folder.path());
    hands.press(letter("c"));
    assert_eq!(
        hands.last_said(),
        "The same tie is begun again and stands first. 1 of 2. boathook. 5 lead, 6 bight, \
         single. Lead pass, 0 per cent, touched today."
    );
    assert_eq!(hands.ties().len(), 2);
}

#[test]
fn what_is_deleted_can_be_had_back() {
    let folder = TempDir::new().unwrap();
    put(folder.path(), &plan(7, 4), 2);
    put(folder.path(), &plan(5, 6), 2);
    let before = Shelf::open(folder.path())
        .unwrap()
        .list()
        .unwrap()
        .untroubled()
        .unwrap();
    let mut hands = at_shelf(folder.path());
    hands.press(letter("u"));
    assert!(hands.last_said().starts_with("Nothing is deleted"));
    hands.press(Key::Named(Named::Delete));
    hands.press(Key::Named(Named::Delete));
    assert!(
        hands
            .last_said()
            .starts_with("Deleted. Press U to have it back.")
    );
    assert!(hands.sees(
        "Nothing is here yet: each tie that you begin stands here. Shall it be the first one?"
    ));
    // Also after the app was closed and opened again.
    drop(hands);
    let mut hands = at_shelf(folder.path());
    hands.press(letter("u"));
    hands.press(letter("u"));
    assert!(hands.last_said().starts_with("It is back."));
    assert_eq!(hands.ties(), before);
}

#[test]
fn an_empty_shelf_shows_the_first_tie_and_begins_it() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_shelf(folder.path());
    let mut screen = hands.screen(iced::Size::new(800.0, 480.0));
    for there in ["picture", "shelf-first"] {
        assert!(
            screen.find(iced_test::selector::id(there)).is_ok(),
            "{there}"
        );
    }
    drop(screen);
    hands.press(Key::Named(Named::Space));
    assert_eq!(hands.ties()[0].lesson, Some(1));
}

#[test]
fn a_backup_goes_to_one_file_and_comes_back() {
    let (folder, other) = (TempDir::new().unwrap(), TempDir::new().unwrap());
    put(folder.path(), &plan(7, 4), 2);
    put(folder.path(), &plan(5, 6), 2);
    let file = other.path().join("all.backup");
    let path = file.display().to_string();
    let mut hands = at_shelf(folder.path());
    hands.press(letter("b"));
    type_line(&mut hands, &path);
    let said = format!("2 ties and 0 entries of the log are in {path}.");
    assert!(
        hands.last_said().starts_with(&said),
        "{}",
        hands.last_said()
    );
    // It is not overwritten.
    let before = fs::read(&file).unwrap();
    hands.press(letter("b"));
    type_line(&mut hands, &path);
    assert!(
        hands
            .last_said()
            .contains("is there already and is not overwritten")
    );
    assert_eq!(fs::read(&file).unwrap(), before);

    let ties = hands.ties();
    let mut hands = at_shelf(&other.path().join("ties"));
    hands.press(letter("i"));
    type_line(&mut hands, &path);
    let said = format!("2 ties and nothing for the log came from {path}.");
    assert!(
        hands.last_said().starts_with(&said),
        "{}",
        hands.last_said()
    );
    assert_eq!(hands.ties(), ties);
    hands.press(letter("i"));
    type_line(&mut hands, "/nowhere/to be found");
    assert!(
        hands.last_said().contains("could not be reached"),
        "{}",
        hands.last_said()
    );
}

#[test]
fn the_second_press_on_a_tie_open_elsewhere_is_to_look_only() {
    let folder = TempDir::new().unwrap();
    let mut first = Hands::open(folder.path(), Some(plan(5, 6)));
    for _ in 0..3 {
        first.press(SPACE);
    }
    let saved = first.shelf().list().unwrap().untroubled().unwrap();
    let mut second = Hands::open(folder.path(), None);
    second.press(SPACE);
    assert!(
        second
            .last_said()
            .starts_with("This tie is open in another window")
    );
    second.press(SPACE);
    assert!(
        second
            .last_said()
            .starts_with("Looking only. Nothing you do here is kept. Taking up"),
        "{}",
        second.last_said()
    );
    let notice = "Looking only: this tie is open in another window or terminal. Nothing done here \
                  is kept.";
    assert!(second.sees(notice));
    let steps = Script::new(plan(5, 6), AtOnce::default()).places().count();
    for _ in 0..steps {
        second.press(SPACE);
    }
    assert!(second.sees("The knot is done") && second.sees(notice));
    second.press(letter("l"));
    assert!(second.sees("The knot is done"));
    assert_eq!(second.shelf().list().unwrap().untroubled().unwrap(), saved);
    // The first one goes on as if nothing had been.
    first.press(SPACE);
    assert_ne!(first.shelf().list().unwrap().untroubled().unwrap(), saved);
    // When it is let go of, the tie can be taken up.
    second.press(ESCAPE.clone());
    first.press(ESCAPE);
    assert!(!first.shelf().is_in_use(saved[0].id()));
    second.press(SPACE);
    assert!(
        second.last_said().starts_with("Taking up"),
        "{}",
        second.last_said()
    );
    assert!(!second.sees(notice));
}

/// The app at the last step of a tie.
fn at_the_end(folder: &Path, plan: Plan) -> Hands {
    let steps = Script::new(plan.clone(), AtOnce::default())
        .places()
        .count();
    let mut hands = Hands::open(folder, Some(plan));
    for _ in 1..steps {
        hands.press(SPACE);
    }
    hands
}

#[test]
fn what_was_used_is_written_down_and_teaches() {
    let folder = TempDir::new().unwrap();
    let photograph = folder.path().join("handle.jpg");
    image::RgbImage::new(40, 30).save(&photograph).unwrap();
    let mut hands = at_the_end(&folder.path().join("ties"), plan(5, 6));
    assert!(hands.sees("write it down"));
    hands.press(letter("l"));
    assert!(hands.last_said().starts_with("What was really used."));
    assert!(hands.last_said().ends_with("Cord, as you call it."));
    for (field, text) in [
        (LogField::CordName, "tarred marline"),
        (LogField::Cord, "4 mm"),
        (LogField::Cut, "1.5 m"),
        (LogField::LeftOver, "60 cm"),
        (LogField::Around, "30 mm"),
        (LogField::Width, "24 mm"),
        (LogField::Minutes, "45"),
        (LogField::Note, "snug"),
        (LogField::Photograph, photograph.to_str().unwrap()),
    ] {
        fill(&mut hands, field, text);
    }
    hands.press(ENTER);
    assert!(hands.last_said().starts_with("Kept. No tie is waiting."));
    assert!(hands.sees("Kept."));
    let ledger = hands.shelf().ledger().unwrap().untroubled().unwrap();
    let [entry] = ledger.entries.as_slice() else {
        panic!("{:?}", ledger.entries);
    };
    assert_eq!(entry.used(), Some(Millimetres::new(900.0).unwrap()));
    assert_eq!((entry.minutes, &*entry.note), (Some(45.0), "snug"));
    assert_eq!(entry.photograph, photograph.display().to_string());
    let cord = Cord::new(Millimetres::new(4.0).unwrap()).named("Tarred marline");
    assert_eq!(ledger.measured(&cord), (1, 1));
    let kind = TieKind::from(entry.counts);
    assert!(ledger.correction(&cord, kind).length() > 1.05);

    // On the shelf the form opens again with what was kept.
    hands.press(letter("s"));
    assert!(hands.sees("In the log"));
    assert!(hands.sees("In the log: 1 tie, 12 legs, 45 minutes, 0.9 m of cord."));
    hands.press(letter("l"));
    assert!(
        hands
            .last_said()
            .ends_with("Cord, as you call it: tarred marline.")
    );
    fill(&mut hands, LogField::Minutes, "50");
    hands.press(ENTER);
    assert_eq!(hands.entries()[0].minutes, Some(50.0));
    assert!(hands.sees("In the log: 1 tie, 12 legs, 50 minutes, 0.9 m of cord."));
}

#[test]
fn what_is_wrong_in_the_form_is_said_and_nothing_is_lost() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_the_end(folder.path(), plan(3, 2));
    hands.press(letter("l"));
    for (field, text, sentence) in [
        (
            LogField::Cord,
            "thick",
            "“thick” is not a length: give a number and a unit, such as 4 mm, 5/32 in or 2.5 m.",
        ),
        (
            LogField::Cut,
            "3 ells",
            "“3 ells” has a unit that is not known here: mm, cm, m, in and ft are; try 4 mm.",
        ),
        (
            LogField::Width,
            "-3",
            "A length must be more than zero and “-3” is not: try 4 mm, or leave the field \
             empty.",
        ),
        (
            LogField::Minutes,
            "an hour",
            "Minutes must be a number from 0 to 60,000 and “an hour” is not: try 90.",
        ),
        (
            LogField::Photograph,
            "/nowhere/handle.jpg",
            "There is no file “/nowhere/handle.jpg”: choose a photograph that is there, or leave the \
             field empty.",
        ),
    ] {
        fill(&mut hands, field, text);
        hands.press(ENTER);
        assert_eq!(hands.last_said(), sentence);
        assert!(hands.sees(sentence));
        fill(&mut hands, field, "");
    }
    // What is typed is not left out without a word.
    fill(&mut hands, LogField::CordName, "blue line");
    hands.press(ENTER);
    assert!(
        hands
            .last_said()
            .starts_with("The cord has a name and no thickness")
    );
    assert!(hands.entries().is_empty());
    fill(&mut hands, LogField::CordName, "");
    fill(&mut hands, LogField::Cut, "1 m");
    fill(&mut hands, LogField::LeftOver, "100 cm");
    hands.press(ENTER);
    assert!(
        hands
            .last_said()
            .starts_with("More cord is left over than was cut")
    );
    assert!(hands.entries().is_empty());
    fill(&mut hands, LogField::LeftOver, "0");
    hands.press(ENTER);
    let entry = hands.entries().remove(0);
    assert_eq!(entry.left_over, Some(0.0));
    assert_eq!((entry.width, entry.minutes), (None, None));
}

/// In the smallest window all of the form is in sight, and what keeps it stands in the bar alone.
#[test]
fn the_form_is_whole_in_the_smallest_window_and_kept_by_one_button() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_the_end(folder.path(), plan(3, 2));
    hands.press(letter("l"));
    let mut screen = hands.screen(iced::Size::new(800.0, 480.0));
    for label in [
        "Cord, as you call it",
        "Cord left over, all together",
        "Finished width",
        "Drawn up",
        "Note",
        "Photograph, the path of the file",
        "Choose…",
    ] {
        let found = screen.find(label).unwrap();
        let bounds = found.bounds();
        let seen = found.visible_bounds().expect(label);
        let is_whole = (seen.height - bounds.height).abs() < 0.5;
        assert!(
            is_whole && seen.y + seen.height < 416.0,
            "{label}: {seen:?}"
        );
    }
    assert!(screen.find("keep").is_ok() && screen.find("Keep it").is_err());
}

#[test]
fn the_form_is_worked_by_keys_and_says_each_field() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_the_end(folder.path(), plan(3, 2));
    hands.press(letter("l"));
    let mut said = Vec::new();
    for _ in 0..11 {
        hands.press(Key::Named(Named::Tab));
        said.push(hands.last_said());
    }
    assert_eq!(said[4], "Finished width.");
    assert_eq!(said[5], "Drawn up as tight as it goes.");
    assert_eq!(said[9], "Keep it.");
    assert_eq!(said[10], "Cord, as you call it.");
    for _ in 0..6 {
        hands.press(DOWN);
    }
    hands.press(SPACE);
    assert_eq!(hands.last_said(), "Left open.");
    hands.press(ESCAPE);
    assert!(hands.last_said().starts_with("What you typed is not kept."));
    hands.press(ESCAPE);
    assert!(hands.sees("The knot is done"));
    assert!(hands.entries().is_empty());
}

#[test]
fn the_time_that_is_left_goes_by_the_tyers_own_pace() {
    let folder = TempDir::new().unwrap();
    let mut tie = put(folder.path(), &plan(5, 6), 7);
    let where_am_i = |folder: &Path| {
        let mut hands = Hands::open(folder, None);
        hands.press(SPACE);
        hands.press(letter("h"));
        hands.last_said()
    };
    let said = where_am_i(folder.path());
    assert!(
        said.contains("6 legs are still to lay") && !said.contains("minutes"),
        "{said}"
    );
    // Before anything is logged, the legs of the tie itself say it.
    let shelf = Shelf::open(folder.path()).unwrap();
    for _ in 0..6 {
        tie.work_time.add_leg(20.0);
    }
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let said = where_am_i(folder.path());
    assert!(
        said.contains("About 2 minutes to go, at your pace."),
        "{said}"
    );
    let mut work_time = WorkTime::default();
    for _ in 0..6 {
        work_time.add_leg(60.0);
    }
    let done = Tie::begin(
        plan(3, 2),
        Script::new(plan(3, 2), AtOnce::default()).last(),
    );
    let entry = Entry {
        work_time,
        ..Entry::of(&done)
    };
    shelf.log(&entry).unwrap().untroubled().unwrap();
    // Legs with a tuck in every fourth took a minute each: 48 seconds for a leg or a tuck. Of this tie
    // 6 legs with 5 of its 10 tucks are left.
    let said = where_am_i(folder.path());
    assert!(
        said.contains("About 9 minutes to go, at your pace."),
        "{said}"
    );
    // With every leg laid there is no time left to tell.
    let script = Script::new(plan(5, 6), AtOnce::default());
    let laying = script.places().filter(|place| place.phase() == Phase::Lead);
    tie.place = script.next(laying.last().unwrap()).unwrap();
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let said = where_am_i(folder.path());
    assert!(
        said.contains("No leg is still to lay") && !said.contains("minute"),
        "{said}"
    );
}

#[test]
fn the_time_at_a_tie_is_kept_with_it_and_not_with_its_copy() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6)));
    for _ in 0..6 {
        hands.press(SPACE);
    }
    let tie = hands.ties().remove(0);
    assert!(tie.work_time.seconds() > 0.0);
    // No leg can be tied so quickly: nothing is learnt from skipping through.
    assert_eq!(tie.work_time.legs_timed(), 0);
    let mut tie = tie;
    tie.work_time.add(600.0);
    for _ in 0..9 {
        tie.work_time.add_leg(20.0);
    }
    hands.press(ESCAPE);
    hands.shelf().save(&tie).unwrap().untroubled().unwrap();
    hands.press(letter("s"));
    hands.press(letter("c"));
    let ties = hands.ties();
    assert_eq!(ties[0].work_time, WorkTime::default());
    assert_eq!(ties[1].work_time.median_leg(), Some(20.0));
}

/// A photograph that is kept is shown on the shelf; one that can't be shown is told of, field by field,
/// and nothing that was typed is lost.
#[test]
fn a_photograph_is_dropped_on_the_form_and_shown_on_the_shelf() {
    let folder = TempDir::new().unwrap();
    let text = folder.path().join("letter.txt");
    fs::write(&text, "no picture at all").unwrap();
    let photograph = folder.path().join("grip.png");
    let red = image::Rgb([200, 30, 30]);
    image::RgbImage::from_pixel(64, 64, red)
        .save(&photograph)
        .unwrap();
    let before = fs::read(&photograph).unwrap();
    let mut hands = at_the_end(&folder.path().join("ties"), plan(3, 2));
    hands.press(letter("l"));
    fill(&mut hands, LogField::Minutes, "12");
    hands.tell(Message::Dropped(text.clone()));
    hands.press(ENTER);
    let sentence = format!(
        "“{}” is not a photograph that can be shown: choose a JPEG, PNG or WebP file.",
        text.display()
    );
    assert_eq!(hands.last_said(), sentence);
    hands.tell(Message::Dropped(photograph.clone()));
    assert!(
        hands.last_said().ends_with("grip.png."),
        "{}",
        hands.last_said()
    );
    hands.press(ENTER);
    let [entry] = &hands.entries()[..] else {
        panic!("{:?}", hands.entries());
    };
    assert_eq!(entry.minutes, Some(12.0));
    assert_eq!(entry.photograph, photograph.display().to_string());
    hands.press(letter("s"));
    let pixels = Pane::new(1100, 760).paint(hands.view(), &app::theme());
    let reds = pixels.chunks(4).filter(|pixel| pixel[..3] == [200, 30, 30]);
    assert!(reds.count() > 1_000);
    assert_eq!(
        fs::read(&photograph).unwrap(),
        before,
        "the original is written to"
    );
}

/// A picture in a list ends where the list ends: what lies beyond it is not painted over.
#[test]
fn pictures_of_a_long_list_keep_to_the_list() {
    let folder = TempDir::new().unwrap();
    for leg in 1..=8 {
        put(folder.path(), &plan(5, 7), leg);
    }
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("s"));
    let is_cord = |pixel: &&[u8]| pixel[2] > 120 && pixel[0] < 90;
    // In windows of several heights another part of a picture is cut.
    for height in (380..540).step_by(20) {
        let pixels = Pane::new(1100, height).paint(hands.view(), &app::theme());
        // The keys of the screen stand below the list, in no colour of a cord.
        let (list, foot) = pixels.split_at(4 * 1100 * (height as usize - 60));
        assert!(list.chunks(4).filter(is_cord).count() > 500, "{height}");
        assert_eq!(foot.chunks(4).filter(is_cord).count(), 0, "{height}");
    }
}

/// A photograph that was kept and has gone since does not keep the rest of the form from being kept.
#[test]
fn a_photograph_that_has_gone_stays_named_and_what_is_typed_is_kept() {
    let folder = TempDir::new().unwrap();
    let photograph = folder.path().join("grip.png");
    image::RgbImage::new(8, 8).save(&photograph).unwrap();
    let mut hands = at_the_end(&folder.path().join("ties"), plan(3, 2));
    hands.press(letter("l"));
    hands.tell(Message::Dropped(photograph.clone()));
    hands.press(ENTER);
    assert_eq!(hands.entries().len(), 1);
    fs::remove_file(&photograph).unwrap();
    hands.press(letter("s"));
    hands.press(letter("l"));
    fill(&mut hands, LogField::Minutes, "25");
    hands.press(ENTER);
    let [entry] = &hands.entries()[..] else {
        panic!("{:?}", hands.entries());
    };
    assert_eq!(entry.minutes, Some(25.0));
    assert_eq!(entry.photograph, photograph.display().to_string());
}

/// What is typed into the form is asked back before the window closes.
#[test]
fn closing_asks_once_about_a_form_that_is_half_typed() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_the_end(folder.path(), plan(3, 2));
    hands.press(letter("l"));
    fill(&mut hands, LogField::Minutes, "25");
    hands.press_ctrl("q");
    assert!(!hands.has_exited);
    assert!(hands.entries().is_empty());
    hands.press_ctrl("q");
    assert!(hands.has_exited);
}
