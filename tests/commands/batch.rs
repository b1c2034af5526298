//! Several of the same, tied one after the other: by one key and by ear, with the tube left standing;
//! how long the pieces take, and what that teaches of other knots.

use crate::terminal;

use std::path::Path;
use std::time::Duration;

use marlinspeak::bench::{Cord, Millimetres, Tube};
use marlinspeak::guide::{
    AtOnce, Order, Phase, PieceField, Plan, Presets, Script, Setup, SetupField,
};
use marlinspeak::session::{
    InHand, Keys, NextOfOrder, answer_order, lesson_tie, new_tie, next_knot, next_of_order, tied,
    unfinished_piece,
};
use marlinspeak::settings::Settings;
use marlinspeak::shelf::{Batch, Entry, Orders, Shelf, Tie};
use marlinspeak::words::Words;
use tempfile::TempDir;
use terminal::Terminal;

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// A bell rope of the loft, on a tube with rings.
fn rope() -> Tie {
    let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
    let setup = Setup::new(tube, Cord::new(mm(3.0)));
    let plan = Plan::read("3", "5", "1", "").unwrap();
    new_tie(&plan.with_setup(Some(setup)))
}

fn of(pieces: u16) -> Tie {
    let mut tie = rope();
    tie.batch = Some(Batch::first(pieces));
    tie
}

fn begin(folder: &Path, tie: Tie) -> Terminal {
    let shelf = Shelf::open(folder).unwrap();
    let in_hand = InHand::new(Some(&shelf), tie);
    Terminal::with(Words::english(), shelf, Settings::default(), in_hand)
}

fn keys(terminal: &Terminal) -> Keys {
    terminal.session().page().unwrap().keys
}

fn phase(terminal: &Terminal) -> Phase {
    terminal.session().walk().unwrap().place().phase()
}

fn in_hand(terminal: &Terminal) -> Tie {
    terminal.session().tie().unwrap().tie().clone()
}

fn number(terminal: &Terminal) -> u16 {
    in_hand(terminal).batch.unwrap().number()
}

fn last_said(terminal: &Terminal) -> String {
    terminal.said().pop().unwrap()
}

/// Presses the one key until the piece is done, every press after so many seconds.
fn tie_it(terminal: &mut Terminal, seconds: u64) {
    tie_pressing(terminal, Duration::from_secs(seconds));
}

fn tie_pressing(terminal: &mut Terminal, every: Duration) {
    for _ in 0..500 {
        if matches!(keys(terminal), Keys::Done | Keys::PieceDone) {
            return;
        }
        terminal.press_after(every, " ");
    }
    panic!("it does not come to an end");
}

/// At the second of so many pieces: the tube is asked about.
fn at_the_second(pieces: u16) -> (Terminal, TempDir) {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(folder.path(), of(pieces));
    tie_it(&mut terminal, 5);
    terminal.press(" ");
    (terminal, folder)
}

#[test]
fn three_pieces_are_tied_by_one_key_and_by_ear() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(folder.path(), of(3));
    assert!(
        terminal.said()[0].starts_with("Piece 1 of 3."),
        "{:?}",
        terminal.said()
    );
    // Each of its names begins with that, however short it is.
    let names = terminal.session().page().unwrap().tie;
    assert!(names.iter().all(|name| name.starts_with("piece 1 of 3")));
    assert_eq!(phase(&terminal), Phase::Kit);
    tie_it(&mut terminal, 5);
    assert_eq!(keys(&terminal), Keys::PieceDone);
    let said = last_said(&terminal);
    assert!(
        said.contains("Piece 1 of 3 is done, in ") && !said.contains("mean"),
        "{said}"
    );
    assert!(
        said.contains("Next begins piece 2, L writes down"),
        "{said}"
    );
    // The second: the tube is asked about, and it stands.
    terminal.press(" ");
    assert_eq!((number(&terminal), keys(&terminal)), (2, Keys::Standing));
    let said = last_said(&terminal);
    assert!(
        said.contains("Piece 2 of 3. Does the tube still stand as it was: 5 pins at each end"),
        "{said}"
    );
    terminal.press(" ");
    assert_eq!(phase(&terminal), Phase::Rig);
    assert!(
        last_said(&terminal).contains("Cut"),
        "{}",
        last_said(&terminal)
    );
    terminal.press(" ");
    assert_eq!(phase(&terminal), Phase::Lead, "only the cord was to be cut");
    tie_it(&mut terminal, 5);
    let said = last_said(&terminal);
    assert!(said.contains("The mean of 2 pieces is "), "{said}");
    // The third: nothing is asked any more.
    terminal.press(" ");
    assert_eq!((number(&terminal), keys(&terminal)), (3, Keys::Steps));
    assert_eq!(phase(&terminal), Phase::Rig);
    let said = last_said(&terminal);
    assert!(
        said.contains("Piece 3 of 3. The tube stands as it was, so there is only the cord"),
        "{said}"
    );
    tie_it(&mut terminal, 5);
    assert_eq!(keys(&terminal), Keys::Done);
    assert!(last_said(&terminal).contains("That was the last one."));
    terminal.press(" ");
    assert_eq!(number(&terminal), 3, "no fourth is begun");
    let ties = terminal.shelf().list().unwrap().untroubled().unwrap();
    let mut pieces: Vec<(u16, bool)> = ties
        .iter()
        .map(|tie| (tie.batch.as_ref().unwrap().number(), tie.plan.tube_stands))
        .collect();
    pieces.sort_unstable();
    assert_eq!(pieces, [(1, false), (2, true), (3, true)]);
}

#[test]
fn a_tube_that_does_not_stand_is_rigged_and_the_tyer_may_think_again() {
    let (mut terminal, _folder) = at_the_second(4);
    terminal.press("ArrowLeft");
    assert_eq!(
        (phase(&terminal), keys(&terminal)),
        (Phase::Kit, Keys::Steps)
    );
    assert_eq!(in_hand(&terminal).batch.unwrap().tube_stands, Some(false));
    tie_it(&mut terminal, 5);
    // The third is packed without a question, and going back from there asks.
    terminal.press(" ");
    assert_eq!(
        (phase(&terminal), keys(&terminal)),
        (Phase::Kit, Keys::Steps)
    );
    terminal.press("ArrowLeft");
    assert_eq!(keys(&terminal), Keys::Standing);
    terminal.press(" ");
    assert_eq!(phase(&terminal), Phase::Rig);
    assert!(in_hand(&terminal).plan.tube_stands);
}

#[test]
fn the_question_and_its_answer_outlast_a_kill() {
    let (terminal, folder) = at_the_second(3);
    terminal.shelf();
    drop(terminal);
    let take_up = || Terminal::take_up(Words::english(), folder.path(), Settings::default());
    let mut terminal = take_up();
    assert_eq!((number(&terminal), keys(&terminal)), (2, Keys::Standing));
    terminal.press(" ");
    terminal.press(" ");
    terminal.shelf();
    let place = in_hand(&terminal).place;
    drop(terminal);
    let terminal = take_up();
    let tie = in_hand(&terminal);
    assert_eq!((tie.place, tie.plan.tube_stands), (place, true));
    assert_eq!(keys(&terminal), Keys::Steps);
}

#[test]
fn other_words_leave_the_question_standing() {
    let (mut terminal, _folder) = at_the_second(2);
    for key in ["1", "3", "[", "]", "2"] {
        terminal.press(key);
        assert_eq!(keys(&terminal), Keys::Standing, "{key}");
    }
}

#[test]
fn the_time_that_is_told_is_that_of_the_pieces() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(folder.path(), of(9));
    let mut minutes = Vec::new();
    for (number, milliseconds) in [(1, 40_000), (2, 30_000), (3, 20_000), (4, 300), (5, 25_000)] {
        assert_eq!(self::number(&terminal), number);
        tie_pressing(&mut terminal, Duration::from_millis(milliseconds));
        minutes.push(in_hand(&terminal).work_time.seconds() / 60.0);
        if number == 5 {
            break;
        }
        terminal.press(" ");
        if number == 1 {
            terminal.press(" ");
        }
    }
    // What was pressed through in a moment was not tied, and does not count.
    let counted = [minutes[0], minutes[1], minutes[2], minutes[4]];
    let mean = counted.iter().sum::<f64>() / 4.0;
    let said = last_said(&terminal);
    let told = |minutes: f64| format!("{} minutes", minutes.round());
    assert!(mean < 29.0, "{minutes:?}");
    assert!(
        said.contains(&format!("The mean of 4 pieces is {}.", told(mean))),
        "{said}"
    );
    // The next: the median of those whose tube stood.
    let mut stood = [minutes[1], minutes[2], minutes[4]];
    stood.sort_unstable_by(f64::total_cmp);
    assert!(
        said.contains(&format!("Another should take {}.", told(stood[1]))),
        "{said}"
    );
}

#[test]
fn what_is_begun_again_is_the_next_piece_and_a_lesson_is_none() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    let first = shelf.begin(rope()).unwrap().tie;
    assert_eq!(first.batch, None);
    let again = |tie: &Tie| {
        let start = Script::new(tie.plan.clone(), AtOnce::default()).first();
        let copy = shelf.copy(tie.id(), start).unwrap();
        copy.untroubled().unwrap()
    };
    // From whichever piece it is begun.
    let numbers: Vec<u16> = [again(&first), again(&first), again(&first)]
        .map(|tie| tie.batch.unwrap().number())
        .to_vec();
    assert_eq!(numbers, [2, 3, 4]);
    let lesson = lesson_tie(
        marlinspeak::guide::COURSE[0],
        marlinspeak::bench::WeaveChoice::FewestTucks,
    );
    let lesson = shelf.begin(lesson.unwrap()).unwrap().tie;
    assert_eq!(again(&lesson).batch, None);
    // After the tenth of ten nobody knows how many there are to be.
    let ten = shelf.begin(of(2)).unwrap().tie;
    let of_ten: Vec<Option<u16>> = [again(&ten), again(&ten)]
        .map(|tie| tie.batch.unwrap().of)
        .to_vec();
    assert_eq!(of_ten, [Some(2), None]);
}

#[test]
fn a_batch_teaches_nothing_wrong_of_other_knots() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path()).unwrap();
    let logged = |tie: &Tie, leg: f64, minutes: f64| {
        let mut entry = Entry::of(tie);
        for _ in 0..10 {
            entry.work_time.add_leg(leg);
        }
        entry.minutes = Some(minutes);
        shelf.log(&entry).unwrap().untroubled().unwrap();
    };
    for _ in 0..4 {
        logged(&rope(), 30.0, 20.0);
    }
    let before = shelf
        .ledger()
        .unwrap()
        .untroubled()
        .unwrap()
        .pace()
        .unwrap();
    // Twenty pieces, ever quicker, with the tube left standing.
    let mut tie = of(20);
    for piece in 0..20 {
        logged(
            &tie,
            if piece < 2 { 30.0 } else { 8.0 },
            if piece == 0 { 20.0 } else { 5.0 },
        );
        tie = tie.again(tie.place);
        tie.plan = tie.plan.with_standing_tube(true);
    }
    let after = shelf
        .ledger()
        .unwrap()
        .untroubled()
        .unwrap()
        .pace()
        .unwrap();
    let all = |pace: marlinspeak::bench::TyingPace| pace.minutes(28, 36);
    assert!(
        (all(after) / all(before) - 1.0).abs() < 0.05,
        "{before:?} {after:?}"
    );
}

#[test]
fn an_order_counts_up_as_its_knots_are_tied() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let orders = Orders::beside(&shelf);
    let mut order = Order::default();
    let piece = order.add();
    for (field, text) in [
        (PieceField::Name, "bell rope"),
        (PieceField::Count, "2"),
        (PieceField::Leads, "3"),
        (PieceField::Bights, "5"),
        (PieceField::Setup(SetupField::Cord), "3mm"),
        (PieceField::Setup(SetupField::Tube), "45mm"),
    ] {
        piece.say(field, text);
    }
    let kept = orders.keep(order).unwrap();
    let read = kept.order.read(&Presets::default(), |_, _| {
        marlinspeak::bench::Correction::default()
    });
    let piece = read.unwrap().pieces.remove(0);
    let ties = || shelf.list().unwrap().untroubled().unwrap();
    let NextOfOrder::Begin(tie) = next_of_order(&ties(), &kept.id, &piece) else {
        panic!("none is begun yet");
    };
    assert_eq!(tie.name, "bell rope");
    let in_hand = InHand::new(Some(&shelf), *tie);
    let mut terminal = Terminal::with(
        Words::english(),
        shelf.clone(),
        Settings::default(),
        in_hand,
    );
    terminal.press(" ");
    terminal.shelf();
    assert_eq!(tied(&ties(), &kept.id, &piece), 0);
    let waits = next_of_order(&ties(), &kept.id, &piece);
    assert!(matches!(waits, NextOfOrder::TakeUp(_)), "{waits:?}");
    tie_it(&mut terminal, 5);
    terminal.shelf();
    assert_eq!(tied(&ties(), &kept.id, &piece), 1);
    // One press begins the second, and when that is done there is none left.
    terminal.press(" ");
    assert_eq!(number(&terminal), 2);
    terminal.press(" ");
    tie_it(&mut terminal, 5);
    terminal.shelf();
    assert_eq!(tied(&ties(), &kept.id, &piece), 2);
    let next = next_of_order(&ties(), &kept.id, &piece);
    assert!(matches!(next, NextOfOrder::AllTied), "{next:?}");
}

#[test]
fn the_time_that_is_left_is_that_of_the_pieces_before() {
    let folder = TempDir::new().unwrap();
    let mut terminal = begin(folder.path(), of(3));
    tie_pressing(&mut terminal, Duration::from_secs(90));
    let took = in_hand(&terminal).work_time.seconds() / 60.0;
    terminal.press(" ");
    // Packed and rigged anew it should take as long as the first, whatever others take.
    terminal.press("ArrowLeft");
    let walk = terminal.session().walk().unwrap();
    assert_eq!(walk.place(), walk.script().first());
    let left = walk.time_left().unwrap();
    assert!((left - took).abs() < 1e-6, "{left} {took}");
    tie_pressing(&mut terminal, Duration::from_secs(90));
    let said = last_said(&terminal);
    let another = said.split("Another should take ").nth(1).unwrap();
    let another = another.split('.').next().unwrap().to_owned();
    terminal.press(" ");
    let page = terminal.session().page().unwrap();
    let minutes = another.split(" hour").next().unwrap();
    assert!(
        page.time_left
            .as_ref()
            .unwrap()
            .contains(minutes.split(' ').next().unwrap()),
        "{another}: {:?}",
        page.time_left
    );
}

/// Three knots on a stick, of two kinds.
fn boathook(shelf: &Shelf) -> marlinspeak::shelf::KeptOrder {
    let mut order = Order {
        name: "boathook".to_owned(),
        stick: "1m".to_owned(),
        ..Order::default()
    };
    for (count, bights) in [("1", "5"), ("2", "4")] {
        let piece = order.add();
        for (field, text) in [
            (PieceField::Count, count),
            (PieceField::Leads, "3"),
            (PieceField::Bights, bights),
            (PieceField::Setup(SetupField::Cord), "3mm"),
            (PieceField::Setup(SetupField::Tube), "45mm"),
        ] {
            piece.say(field, text);
        }
    }
    Orders::beside(shelf).keep(order).unwrap()
}

#[test]
fn a_knot_on_a_stick_is_told_by_its_place_and_its_order() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let kept = boathook(&shelf);
    let answer = answer_order(
        &kept.order,
        &Presets::default(),
        &marlinspeak::shelf::Ledger::default(),
        marlinspeak::bench::Prices::default(),
    );
    let answer = answer.unwrap();
    let ties = || shelf.list().unwrap().untroubled().unwrap();
    let tied = || -> Vec<u16> {
        let pieces = answer.pieces.iter();
        pieces
            .map(|one| marlinspeak::session::tied(&ties(), &kept.id, &one.piece))
            .collect()
    };
    let mut told = Vec::new();
    for _ in 0..2 {
        let number = unfinished_piece(&answer.pieces, &tied())
            .unwrap()
            .piece
            .number;
        let next = next_knot(&ties(), &kept, &answer, number);
        let Some(NextOfOrder::Begin(tie)) = next else {
            panic!("{next:?}");
        };
        let in_hand = InHand::new(Some(&shelf), *tie);
        let mut terminal = Terminal::with(
            Words::english(),
            shelf.clone(),
            Settings::default(),
            in_hand,
        );
        told.push(terminal.said()[0].clone());
        tie_it(&mut terminal, 5);
        told.push(last_said(&terminal));
        if number == 2 {
            terminal.press(" ");
            told.push(last_said(&terminal));
        }
        terminal.shelf();
    }
    assert!(
        told[0].starts_with("Knot 1 of 3 on the stick, order “boathook”."),
        "{told:?}"
    );
    // The one of its kind is done, and the stick is not.
    assert!(
        told[1].contains("Knot 1 of 3 on the stick is done"),
        "{told:?}"
    );
    assert!(
        told[1].contains("The order leads to its next knot."),
        "{told:?}"
    );
    assert!(told[2].starts_with("Knot 2 of 3 on the stick"), "{told:?}");
    assert!(told[3].contains("Next begins knot 3"), "{told:?}");
    assert!(told[4].starts_with("Knot 3 of 3 on the stick"), "{told:?}");
}

/// What to buy, against a sum over the knots that are tied.
#[test]
fn cords_of_interwoven_pieces_are_said_and_add_up() {
    let words = Words::english();
    let mut order = Order::default();
    let piece = order.add();
    for (field, text) in [
        (PieceField::Count, "4"),
        (PieceField::Leads, "3"),
        (PieceField::Bights, "4"),
        (PieceField::Nested, "2"),
        (PieceField::Setup(SetupField::Cord), "2mm"),
        (PieceField::Setup(SetupField::Tube), "45mm"),
    ] {
        piece.say(field, text);
    }
    let answer = answer_order(
        &order,
        &Presets::default(),
        &marlinspeak::shelf::Ledger::default(),
        marlinspeak::bench::Prices::default(),
    );
    let answer = answer.unwrap();
    let one = &answer.pieces[0];
    assert_eq!(one.cords, 2);
    let line = words.order_piece(one);
    assert!(
        line.shown().contains("of cord, in 2 cords, and about"),
        "{line}"
    );
    let bought = &answer.to_buy[0];
    assert!((bought.bare - 4.0 * one.cord).abs() < 1e-6);
    let pieces: u32 = bought.cuts.iter().map(|(pieces, _)| pieces).sum();
    assert_eq!(pieces, 8);
}
