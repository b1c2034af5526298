//! What a tie in a terminal can do besides going through its steps: the settings, the log, the
//! course, and what was asked for on the command line before what is saved.

#[path = "support/terminal.rs"]
mod terminal;

use marlinspeak::bench::WeaveChoice;
use marlinspeak::guide::{AtOnce, COURSE, Plan, Script};
use marlinspeak::session::{InHand, Session, Setting, Wishes, inventory, lesson_tie, new_tie};
use marlinspeak::settings::{Settings, Verbosity};
use marlinspeak::shelf::{Entry, Shelf, Tie};
use marlinspeak::words::{Detail, Words};
use tempfile::TempDir;
use terminal::Terminal;

fn tie() -> Tie {
    new_tie(&Plan::read("3", "5", "1", "1").unwrap())
}

fn begin(folder: &TempDir, tie: Tie) -> Terminal {
    let shelf = Shelf::open(folder.path()).unwrap();
    let in_hand = InHand::new(Some(&shelf), tie);
    Terminal::with(Words::english(), shelf, Settings::default(), in_hand)
}

/// Goes down the lines of the settings to one, and gives it as it is printed.
fn down_to(terminal: &mut Terminal, line: &str) -> String {
    for _ in Setting::ALL {
        terminal.press("ArrowDown");
        let printed = terminal.printed().pop().unwrap();
        if printed.starts_with(line) {
            return printed;
        }
    }
    panic!("no line {line}");
}

#[test]
fn no_line_has_a_sign_that_a_braille_display_would_stumble_over() {
    let plan = Plan::read("5", "7", "2", "1").unwrap();
    for tag in ["en", "de", "es", "fr"] {
        for code in ["right", "left"] {
            let words = Words::load(Some(tag)).unwrap();
            let hand = match code {
                "left" => marlinspeak::knot::Hand::Left,
                _ => marlinspeak::knot::Hand::Right,
            };
            let plan = plan.clone().with_hand(hand);
            let script = Script::new(plan.clone(), AtOnce::default());
            for place in script.places() {
                let shown = words.show(plan.knot(), &script.step(place).unwrap());
                let line = format!("{}. {}", shown.phase, shown.in_words());
                let sign = line.find(|sign: char| "↗↘↖↙→←↑↓·•×".contains(sign) || sign == '\n');
                assert_eq!(sign, None, "{tag}: {line}");
                assert!(!line.contains(". ."), "{tag}: {line}");
            }
        }
    }
}

#[test]
fn all_keys_are_told_by_the_key_that_tells_them_in_the_window() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, tie());
    let place = terminal.session().walk().unwrap().place();
    for key in ["?", "F1"] {
        terminal.press(key);
        let said = terminal.said().pop().unwrap();
        assert!(said.starts_with("Space bar: next.") && said.contains("J: join a new cord."));
        let printed = terminal.printed().pop().unwrap();
        assert!(
            printed.starts_with("Space next, B or Page Up back"),
            "{printed}"
        );
    }
    terminal.line("?");
    let said = terminal.said().pop().unwrap();
    assert!(said.starts_with("Enter is next"), "{said}");
    assert_eq!(terminal.session().walk().unwrap().place(), place);
    terminal.press(" ");
    assert_ne!(terminal.session().walk().unwrap().place(), place);
}

#[test]
fn the_settings_are_a_list_of_lines_and_hold_at_once() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, tie());
    let step = terminal.said().pop().unwrap();
    terminal.press("t");
    let opening = terminal.printed().pop().unwrap();
    assert!(opening.contains("Pedals and keys"), "{opening}");
    // Down to the speed, one faster, and back to the tie.
    let speed = down_to(&mut terminal, "Speed of the voice");
    assert!(speed.contains("165"), "{speed}");
    terminal.press("ArrowRight");
    let speed = terminal.printed().pop().unwrap();
    assert!(speed.contains("175"), "{speed}");
    let tag = Words::english().tag().to_string();
    let speech = terminal.session().settings().speech(&tag);
    assert_eq!(speech.words_per_minute, 175);
    terminal.press("Escape");
    assert_eq!(terminal.said().pop(), Some(step));
    // A press means the tie again.
    terminal.press(" ");
    assert_eq!(
        terminal.session().page().unwrap().shown.phase,
        "Lead pass, leg 1 of 10"
    );
    assert!(!terminal.is_over());
}

#[test]
fn another_language_holds_from_the_next_line_on() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, tie());
    terminal.press("t");
    down_to(&mut terminal, "Language");
    // Until it is German.
    for _ in 0..2 * Words::known().len() {
        if *terminal.session().words().tag() != "de" {
            terminal.press("ArrowRight");
        }
    }
    assert_eq!(*terminal.session().words().tag(), "de");
    terminal.press("Escape");
    terminal.press(" ");
    let line = terminal.printed().pop().unwrap();
    assert!(line.contains("Fuß 1 hoch und nach rechts"), "{line}");
}

#[test]
fn a_finished_tie_is_written_down_by_keys_and_by_lines() {
    for by_lines in [false, true] {
        let folder = TempDir::new().unwrap();
        let mut terminal = begin(&folder, tie());
        let id = terminal.session().tie().unwrap().tie().id().clone();
        terminal.press("l");
        assert!(!terminal.session().walk().unwrap().is_done());
        while !terminal.session().walk().unwrap().is_done() {
            terminal.press(" ");
        }
        terminal.press("l");
        let field = terminal.printed().pop().unwrap();
        assert!(field.ends_with("Cord, as you call it."), "{field}");
        // The name of the cord, its diameter, what was cut; the rest is left empty.
        for text in [
            "Tarred Marline",
            "4 mm",
            "1.5 m",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
        ] {
            if by_lines {
                terminal.line(text);
            } else {
                for letter in text.chars() {
                    terminal.press(&letter.to_string());
                }
                terminal.press("Enter");
            }
        }
        assert!(!terminal.is_over());
        if by_lines {
            terminal.line("");
        } else {
            terminal.press("Enter");
        }
        assert!(terminal.is_over(), "{:?}", terminal.printed());
        let entry = terminal
            .shelf()
            .entry(&id)
            .unwrap()
            .untroubled()
            .unwrap()
            .expect("an entry");
        let cord = entry.cord.unwrap();
        assert_eq!(cord.name.as_deref(), Some("Tarred Marline"));
        assert!((cord.diameter.get() - 4.0).abs() < 1e-9);
        assert!((entry.cut.unwrap().get() - 1500.0).abs() < 1e-9);
    }
}

/// Two cords interwoven, followed: back and on, something wrong in the second cord, left and taken up
/// there, and written down at the end.
#[test]
fn an_interwoven_tie_goes_all_the_way_to_the_log() {
    let folder = TempDir::new().unwrap();
    let plan = Plan::read_nested(["3", "4", "2", ""], "2", "").unwrap();
    let cords = ["blue", "white"].map(str::to_owned).to_vec();
    let mut terminal = begin(&folder, new_tie(&plan.with_cords(cords).unwrap()));
    let line = |terminal: &Terminal| terminal.printed().pop().unwrap();
    let phase = |terminal: &Terminal| terminal.session().page().unwrap().shown.phase.clone();
    while !phase(&terminal).starts_with("Lead pass, strand 2 of 2, “white”, leg 5") {
        terminal.press(" ");
        assert!(
            !terminal.session().walk().unwrap().is_done(),
            "{}",
            phase(&terminal)
        );
    }
    let here = line(&terminal);
    terminal.press("PageUp");
    terminal.press(" ");
    assert_eq!(line(&terminal), here);
    // One leg is taken back; its pins are named by their rows.
    terminal.press("w");
    terminal.press(" ");
    let back = line(&terminal);
    assert!(back.contains("inner") && back.contains("outer"), "{back}");
    // Back means to lay it again.
    terminal.press("PageUp");
    let left = line(&terminal);
    assert!(
        left.starts_with("Lead pass, strand 2 of 2, “white”, leg 4 of 8"),
        "{left}"
    );
    // Every press has reached the disk before it is left.
    let id = terminal.session().tie().unwrap().tie().id().clone();
    terminal.shelf();
    drop(terminal);
    let mut terminal = Terminal::take_up(Words::english(), folder.path(), Settings::default());
    assert_eq!(line(&terminal), left);
    while !terminal.session().walk().unwrap().is_done() {
        terminal.press(" ");
    }
    terminal.press("l");
    for text in [
        "Tarred Marline",
        "3 mm",
        "2.5 m",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
    ] {
        terminal.line(text);
    }
    assert!(terminal.is_over(), "{:?}", terminal.printed());
    let entry = terminal.shelf().entry(&id).unwrap().untroubled().unwrap();
    let counts = entry.expect("an entry").counts;
    assert_eq!(
        (counts.nested(), counts.strands(), counts.legs()),
        (2, 2, 32)
    );
}

#[test]
fn what_is_typed_wrong_in_the_log_is_told_and_nothing_is_lost() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, tie());
    while !terminal.session().walk().unwrap().is_done() {
        terminal.press(" ");
    }
    terminal.press("l");
    for text in ["x", "thick", "", "", "", "", "", "", "", "", ""] {
        terminal.line(text);
    }
    let told = terminal.printed().pop().unwrap();
    assert!(told.contains("thick"), "{told}");
    assert!(!terminal.is_over());
    // The field that is wrong is typed anew, and then it goes on from there.
    for text in ["4 mm", "", "", "", "", "", "", "", "", ""] {
        terminal.line(text);
    }
    assert!(terminal.is_over(), "{:?}", terminal.printed());
}

#[test]
fn a_lesson_is_taught_whatever_is_saved() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(
        &folder,
        lesson_tie(COURSE[0], WeaveChoice::FewestTucks).unwrap(),
    );
    let words = Words::english();
    let idea = words.lesson_idea(COURSE[0].number).to_string();
    let said = terminal.said();
    assert!(said[0].starts_with(&idea), "{said:?}");
    assert!(terminal.printed().contains(&idea));
    assert_eq!(terminal.session().words().detail(), Detail::Teach);
    // What is chosen in it is for it alone.
    terminal.press("1");
    assert_eq!(terminal.session().words().detail(), Detail::Brief);
    assert_eq!(
        terminal.session().settings().verbosity.detail,
        Detail::Plain
    );
}

#[test]
fn a_tie_that_was_put_away_does_not_wait() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    let tie = tie();
    drop(shelf.begin(tie.clone()).unwrap());
    let waiting = || {
        let found = inventory(&shelf, None, jiff::Timestamp::now()).unwrap();
        found.untroubled().unwrap().waiting
    };
    assert_eq!(waiting().len(), 1);
    shelf
        .put_away(tie.id(), true)
        .unwrap()
        .untroubled()
        .unwrap();
    assert!(waiting().is_empty());
}

#[test]
fn what_the_command_line_asks_for_comes_before_what_is_saved() {
    let saved = Settings {
        verbosity: Verbosity {
            detail: Detail::Brief,
            at_once: AtOnce::UpTo(2),
        },
        ..Settings::default()
    };
    let session = |wishes| Session::new(Words::english(), saved.clone(), wishes);
    let usual = session(Wishes::default());
    assert_eq!(usual.words().detail(), Detail::Brief);
    // The depth that is usual where nothing is saved is a wish like any other.
    let wished = session(Wishes {
        detail: Some(Detail::Plain),
        at_once: Some(AtOnce::default()),
        checks: None,
    });
    assert_eq!(wished.words().detail(), Detail::Plain);
    assert_eq!(wished.settings().verbosity.detail, Detail::Brief);
}

#[test]
fn going_back_to_the_copy_before_is_told_and_how_far_back_that_is() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, tie());
    for _ in 0..5 {
        terminal.press(" ");
        // Every press has reached the disk before the next.
        terminal.shelf();
    }
    let id = terminal.session().tie().unwrap().tie().id().clone();
    drop(terminal);
    let file = folder.path().join(format!("{id}.json"));
    let whole = std::fs::read_to_string(&file).unwrap();
    let damaged = whole.replacen("\"leg\": 5", "\"leg\": 7", 1);
    assert_ne!(damaged, whole, "{whole}");
    std::fs::write(&file, damaged).unwrap();
    let terminal = Terminal::take_up(Words::english(), folder.path(), Settings::default());
    let told = format!(
        "The file {id}.json was damaged and was put aside as {id}.damaged-1.json; the copy from \
         one press before it is used: hold the step against your work."
    );
    assert!(
        terminal.printed().contains(&told),
        "{:?}",
        terminal.printed()
    );
    let said = &terminal.said()[0];
    assert!(
        said.contains("the copy from one press before it is used"),
        "{said}"
    );
    assert_eq!(
        terminal.session().page().unwrap().shown.phase,
        "Lead pass, leg 4 of 10"
    );
}

#[test]
fn a_damaged_entry_of_the_log_is_told_when_its_lengths_would_count() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    let done = tie();
    shelf.log(&Entry::of(&done)).unwrap().untroubled().unwrap();
    let file = folder.path().join(format!("log/{}.json", done.id()));
    let whole = std::fs::read_to_string(&file).unwrap();
    std::fs::write(&file, whole.replacen("\"leads\": 3", "\"leads\": 5", 1)).unwrap();
    let terminal = begin(&folder, tie());
    let told = terminal.printed();
    let names_it = |line: &String| line.contains(&format!("{}.json is damaged", done.id()));
    assert!(told.iter().any(names_it), "{told:?}");
    assert!(
        terminal.said()[0].contains("is damaged"),
        "{:?}",
        terminal.said()
    );
}

#[test]
fn without_a_shelf_a_tie_is_told_all_the_same() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    let in_hand = InHand::new(None, tie());
    let mut terminal = Terminal::with(Words::english(), shelf, Settings::default(), in_hand);
    terminal.press(" ");
    assert_eq!(
        terminal.session().page().unwrap().shown.phase,
        "Lead pass, leg 1 of 10"
    );
}

/// What stands before the tyer, as a terminal prints it.
fn lines(terminal: &Terminal) -> String {
    terminal.session().page().unwrap().lines().join(" ")
}

fn depth(terminal: &Terminal) -> Detail {
    terminal.session().walk().unwrap().depth()
}

#[test]
fn every_depth_prints_a_page_of_its_own() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(&folder, new_tie(&Plan::read("5", "6", "1", "1").unwrap()));
    terminal.press("3");
    // The first leg that crosses anything.
    for _ in 0..4 {
        terminal.press(" ");
    }
    // The crossing in hand, how it is made, and only then the way.
    let taught = lines(&terminal);
    assert!(
        taught.contains("OVER 1 cord. Your cord lies on top. "),
        "{taught}"
    );
    terminal.press("2");
    let plain = lines(&terminal);
    assert!(plain.contains(": OVER 1. Round"), "{plain}");
    terminal.press("1");
    let brief = lines(&terminal);
    assert!(brief.ends_with(": OVER 1"), "{brief}");
    assert!(plain.starts_with(&brief), "{plain}");
}

#[test]
fn what_the_hands_have_is_told_plainly_until_something_is_wrong() {
    let folder = TempDir::new().unwrap();
    let knot = new_tie(&Plan::read("5", "6", "2", "1").unwrap());
    let mut terminal = begin(&folder, knot);
    terminal.press("3");
    assert_eq!(depth(&terminal), Detail::Teach);
    let mut taught = 0;
    for _ in 0..40 {
        if lines(&terminal).contains("leg 9 of 12") {
            break;
        }
        taught += usize::from(lines(&terminal).contains(" 1 cord. "));
        terminal.press(" ");
    }
    assert!(taught >= 4, "{taught} crossings were taught");
    assert_eq!(depth(&terminal), Detail::Plain);
    assert!(lines(&terminal).contains(": OVER 1, under 1, OVER 1."));
    // Wrong, and wrong again: nothing is taken back, and the leg is taught.
    terminal.press("w");
    terminal.press("w");
    assert_eq!(depth(&terminal), Detail::Teach);
    let again = lines(&terminal);
    assert!(
        again.contains("leg 9 of 12, part 1 of 3. OVER 1 cord"),
        "{again}"
    );
    // A round later the hands have it again.
    for _ in 0..20 {
        if !lines(&terminal).contains("leg 11 of 12") {
            terminal.press(" ");
        }
    }
    assert_eq!(depth(&terminal), Detail::Plain);
}
