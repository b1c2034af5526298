//! The order screen, worked by presses: from an empty book to a knot that is tied.
#![cfg(feature = "window")]

use crate::hands;

use std::fs;
use std::path::Path;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::Message;
use marlinspeak::bench::Prices;
use marlinspeak::guide::{Order, OrderField, PieceField, SetupField};
use marlinspeak::pedal::{Intent, Press};
use marlinspeak::session::{OrderAction, OrderBook, OrderChange, OrderJob, do_order_job};
use marlinspeak::shelf::{Orders, Shelf, ShelfError};
use marlinspeak::words::Words;
use tempfile::TempDir;

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

/// The app on the order screen; the orders lie beside the ties.
fn at_orders(folder: &Path) -> Hands {
    let mut hands = Hands::open(&folder.join("ties"), None);
    hands.press(letter("o"));
    hands
}

fn kept(folder: &Path) -> Vec<Order> {
    let orders = Orders::at(folder.join("orders")).list().unwrap();
    let orders = orders.untroubled().unwrap().into_iter();
    orders.map(|kept| kept.order).collect()
}

/// Opens the line in turn, types and keeps it.
fn say(hands: &mut Hands, text: &str) {
    hands.press(Named::Enter);
    hands.tell(Message::typed_on_orders(text));
    hands.press(Named::Enter);
}

fn down(hands: &mut Hands, times: usize) {
    for _ in 0..times {
        hands.press(Named::ArrowDown);
    }
}

/// A new order with one piece that can be tied, on the page of that piece.
fn with_a_rope(hands: &mut Hands) {
    hands.press(letter("n"));
    say(hands, "the club");
    hands.press(letter("a"));
    for text in ["bell rope", "2", "3", "5", "1", "1", "3mm", "45mm"] {
        say(hands, text);
        down(hands, 1);
    }
}

#[test]
fn an_order_is_written_down_by_keys_and_said_as_it_comes_to() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    assert!(
        hands
            .last_said()
            .starts_with("No orders yet. An order is a list of knots"),
        "{}",
        hands.last_said()
    );
    assert!(hands.sees("No orders yet."));
    with_a_rope(&mut hands);
    let order = kept(folder.path()).remove(0);
    assert_eq!((&*order.name, order.pieces.len()), ("the club", 1));
    let piece = &order.pieces[0];
    assert_eq!(
        (piece.text(PieceField::Name), piece.text(PieceField::Count)),
        ("bell rope", "2")
    );
    hands.press(Named::Escape);
    assert!(
        hands.last_said().starts_with("the club: 2 knots"),
        "{}",
        hands.last_said()
    );
    assert!(
        hands
            .last_said()
            .contains("2 pieces, bell rope: 3 lead 5 bight"),
        "{}",
        hands.last_said()
    );
    // Down to what it comes to: cord to buy stands among it.
    let mut heard = Vec::new();
    for _ in 0..9 {
        down(&mut hands, 1);
        heard.push(hands.last_said());
    }
    let all = heard.join(" ");
    assert!(all.contains("All of it takes about"), "{all}");
    assert!(all.contains("Cord, 3 millimetres thick: "), "{all}");
    assert!(all.contains("2 pieces of "), "{all}");
    // The next piece begins with the cord and tube of the one before.
    hands.press(letter("a"));
    let order = kept(folder.path()).remove(0);
    let cord = PieceField::Setup(SetupField::Cord);
    assert_eq!(order.pieces[1].text(cord), "3mm");
    assert!(
        hands.last_said().starts_with("Piece 2"),
        "{}",
        hands.last_said()
    );
}

#[test]
fn what_is_wrong_stands_on_the_page_and_is_said() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    hands.press(Named::Home);
    down(&mut hands, 1);
    say(&mut hands, "a dozen");
    hands.press(Named::End);
    let wrong = "Piece 1, “bell rope”: How many of a piece is a whole number from 1 to 999 and “a \
                 dozen” is not one: give one, such as 10.";
    assert_eq!(hands.last_said(), wrong);
    assert!(hands.sees(wrong));
    hands.press(letter("b"));
    assert!(
        hands.last_said().starts_with(wrong),
        "{}",
        hands.last_said()
    );
}

#[test]
fn a_knot_of_an_order_is_tied_and_counted() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    hands.press(letter("b"));
    assert!(
        hands
            .last_said()
            .starts_with("Piece 1 of 2, order “the club”."),
        "{}",
        hands.last_said()
    );
    for _ in 0..200 {
        if hands.last_said().contains("Next begins piece 2") {
            break;
        }
        hands.press(Named::Space);
    }
    assert!(
        hands.last_said().contains("Piece 1 of 2 is done"),
        "{}",
        hands.last_said()
    );
    // Back to the order: one is tied.
    hands.press(Named::Escape);
    hands.press(letter("o"));
    hands.press(Named::Space);
    assert!(hands.sees("Name of the order: the club"));
    down(&mut hands, 1);
    assert!(
        hands.last_said().ends_with("1 of 2 tied."),
        "{}",
        hands.last_said()
    );
    hands.press(letter("b"));
    assert!(
        hands
            .last_said()
            .starts_with("Piece 2 of 2, order “the club”. Does the tube still stand"),
        "{}",
        hands.last_said()
    );
    assert!(hands.sees("Does the tube still stand as it was?"));
}

#[test]
fn what_is_deleted_comes_back() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    hands.press(Named::Escape);
    hands.press(Named::Delete);
    assert!(kept(folder.path())[0].pieces.is_empty());
    hands.press(letter("u"));
    assert_eq!(kept(folder.path())[0].pieces.len(), 1);
    hands.press(Named::Escape);
    hands.press(Named::Delete);
    assert!(kept(folder.path()).is_empty());
    assert!(
        hands.last_said().starts_with("Deleted. U brings it back."),
        "{}",
        hands.last_said()
    );
    hands.press(letter("u"));
    assert_eq!(kept(folder.path()).len(), 1);
    hands.press(letter("u"));
    assert!(
        hands.last_said().starts_with("Nothing was deleted"),
        "{}",
        hands.last_said()
    );
    hands.press(Named::Escape);
    assert!(!hands.sees("1 order."));
}

#[test]
fn what_another_program_changed_meanwhile_stays() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    let orders = Orders::beside(&Shelf::open(folder.path().join("ties")).unwrap());
    let id = orders.list().unwrap().untroubled().unwrap()[0].id.clone();
    let changed = orders.change(&id, |order| order.note = "wax it".to_owned());
    changed.unwrap().untroubled().unwrap();
    hands.press(Named::Home);
    say(&mut hands, "tiller rope");
    let order = kept(folder.path()).remove(0);
    assert_eq!(order.note, "wax it");
    assert_eq!(order.pieces[0].text(PieceField::Name), "tiller rope");
}

#[test]
fn a_removed_piece_comes_back_though_another_was_added_since() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    hands.press(Named::Escape);
    hands.press(Named::Delete);
    hands.press(letter("a"));
    assert!(hands.last_said().starts_with("Piece 2"));
    hands.press(Named::Escape);
    hands.press(letter("u"));
    let pieces = kept(folder.path()).remove(0).pieces;
    let numbers: Vec<u16> = pieces.iter().map(|piece| piece.number).collect();
    assert_eq!(numbers, [2, 1]);
    assert_eq!(pieces[1].text(PieceField::Name), "bell rope");
}

#[test]
fn a_click_on_another_line_keeps_what_was_typed() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    hands.press(Named::Home);
    hands.press(Named::Enter);
    hands.tell(Message::typed_on_orders("tiller rope"));
    hands.click("How many: 2");
    let order = kept(folder.path()).remove(0);
    assert_eq!(order.pieces[0].text(PieceField::Name), "tiller rope");
    // And the line that was clicked is typed into.
    hands.tell(Message::typed_on_orders("3"));
    hands.press(Named::Enter);
    let order = kept(folder.path()).remove(0);
    assert_eq!(order.pieces[0].text(PieceField::Count), "3");
}

#[test]
fn what_cannot_be_kept_stands_in_the_line_again() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let (mut book, words) = (OrderBook::default(), Words::english());
    let done = |job| {
        let report = do_order_job(&shelf, Prices::default(), job);
        report.untroubled().unwrap()
    };
    book.take_in(done(OrderJob::New), &words).unwrap();
    book.press(&Press::default(), Some(Intent::Next), &words);
    book.type_in("the club".to_owned());
    let OrderAction::Do(OrderJob::Change(id, change)) = book.enter() else {
        panic!("what was typed is not kept");
    };
    assert_eq!(book.typed(), None);
    let mut report = done(OrderJob::Look(Some(id)));
    (report.outcome, report.refused) = (Err(ShelfError::NoHome), Some(change));
    book.take_in(report, &words).unwrap_err();
    assert_eq!(book.typed(), Some("the club"));
}

#[test]
fn a_piece_that_has_gone_meanwhile_is_said_to_have() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    let orders = Orders::at(folder.path().join("orders"));
    let id = orders.list().unwrap().untroubled().unwrap().remove(0).id;
    let changed = orders.change(&id, |order| order.pieces.clear());
    changed.unwrap().untroubled().unwrap();
    hands.press(Named::Home);
    say(&mut hands, "tiller rope");
    assert!(
        hands
            .last_said()
            .starts_with("That piece has gone from the order"),
        "{}",
        hands.last_said()
    );
}

#[test]
fn a_file_in_the_place_of_the_orders_is_said_to_be_there_and_what_was_typed_waits() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_rope(&mut hands);
    let [orders, away] = ["orders", "away"].map(|name| folder.path().join(name));
    fs::rename(&orders, &away).unwrap();
    fs::write(&orders, "in the way").unwrap();
    hands.press(Named::Home);
    say(&mut hands, "tiller rope");
    let said = hands.last_said();
    assert!(said.contains(" could not be "), "{said}");
    assert!(!said.contains("no order"), "{said}");
    fs::remove_file(&orders).unwrap();
    fs::rename(&away, &orders).unwrap();
    hands.press(Named::Enter);
    let order = kept(folder.path()).remove(0);
    assert_eq!(order.pieces[0].text(PieceField::Name), "tiller rope");
}

#[test]
fn an_order_of_which_nothing_was_said_is_not_kept() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    hands.press(letter("n"));
    assert_eq!(kept(folder.path()).len(), 1);
    hands.press(Named::Escape);
    assert!(kept(folder.path()).is_empty());
    assert!(hands.sees("No orders yet."));
    // One that is left over, since the window was closed on it, is begun instead of another.
    hands.press(letter("n"));
    drop(hands);
    let mut hands = at_orders(folder.path());
    hands.press(letter("n"));
    assert_eq!(kept(folder.path()).len(), 1);
    // One of which something was said stays.
    say(&mut hands, "the club");
    hands.press(Named::Escape);
    hands.press(Named::Escape);
    assert_eq!(kept(folder.path()).len(), 1);
}

#[test]
fn what_is_missing_leads_to_where_it_is_said() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    hands.press(letter("n"));
    // “The order has no pieces” adds one.
    hands.press(Named::End);
    assert!(
        hands.last_said().starts_with("The order has no pieces"),
        "{}",
        hands.last_said()
    );
    hands.press(Named::Enter);
    assert_eq!(kept(folder.path())[0].pieces.len(), 1);
    assert!(hands.last_said().starts_with("Piece 1"));
    // What is not said of it leads to its field, again and again, until nothing is missing.
    for text in ["3", "5", "3mm", "45mm"] {
        hands.press(Named::End);
        say(&mut hands, text);
    }
    let piece = kept(folder.path())[0].pieces[0].clone();
    let said = [
        PieceField::Leads,
        PieceField::Bights,
        PieceField::Setup(SetupField::Cord),
        PieceField::Setup(SetupField::Tube),
    ];
    assert_eq!(
        said.map(|field| piece.text(field)),
        ["3", "5", "3mm", "45mm"]
    );
    hands.press(Named::Escape);
    assert!(hands.sees("To buy:"));
}

#[test]
fn what_can_be_done_stands_on_the_page_and_is_clicked() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    hands.click("new order");
    hands.click("add a piece");
    assert_eq!(kept(folder.path())[0].pieces.len(), 1);
    assert!(hands.sees("tie the next one"));
    hands.press(Named::Escape);
    hands.press(Named::Delete);
    assert!(kept(folder.path())[0].pieces.is_empty());
    hands.click("undo");
    assert_eq!(kept(folder.path())[0].pieces.len(), 1);
}

#[test]
fn bag_and_weight_stand_on_the_page_as_facts() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let (mut book, words) = (OrderBook::default(), Words::english());
    let heading = book.heading(&words);
    assert_eq!(heading.shown(), "The orders are being read.");
    let done = |job| {
        let report = do_order_job(&shelf, Prices::default(), job);
        report.untroubled().unwrap()
    };
    let rack = marlinspeak::shelf::PresetsFile::beside(&shelf);
    let tan = marlinspeak::bench::Cord {
        grams_per_metre: Some(10.0),
        ..marlinspeak::bench::Cord::new(marlinspeak::bench::Millimetres::parse("3mm").unwrap())
    };
    rack.keep_cord("tan", &tan).unwrap().untroubled().unwrap();
    let mut order = Order::default();
    let rope = order.add();
    for (field, text) in [
        (PieceField::Count, "3"),
        (PieceField::Leads, "3"),
        (PieceField::Bights, "5"),
        (PieceField::Setup(SetupField::Cord), "tan"),
        (PieceField::Setup(SetupField::Tube), "45mm"),
    ] {
        rope.say(field, text);
    }
    let kept = Orders::beside(&shelf).keep(order).unwrap();
    book.take_in(done(OrderJob::Look(Some(kept.id))), &words)
        .unwrap();
    let facts: Vec<&str> = book
        .lines()
        .iter()
        .filter(|line| line.is_fact())
        .map(|line| line.text.shown())
        .collect();
    let at = |head: &str| facts.iter().position(|fact| fact.starts_with(head));
    let (buy, bag) = (at("To buy:").unwrap(), at("In the bag").unwrap());
    let metres: u32 = {
        let line = facts[buy + 1];
        let (_, metres) = line.split_once("thick: ").unwrap();
        metres.split(' ').next().unwrap().parse().unwrap()
    };
    let weight = format!("together about {} grams", metres * 10);
    assert!(facts[buy..bag].contains(&&*weight), "{facts:?}");
    assert!(
        facts[bag..].iter().any(|fact| fact.contains("tube")),
        "{facts:?}"
    );
    assert!(
        book.lines()[0]
            .text
            .shown()
            .starts_with("Name of the order")
    );
    assert!(!book.lines()[0].is_fact());
}

/// The heading and the lines of the page that is up.
fn page(book: &OrderBook) -> String {
    let words = Words::english();
    let lines = book.lines().iter();
    let lines = lines.map(|line| line.text.shown().to_owned());
    let heading = book.heading(&words).shown().to_owned();
    std::iter::once(heading)
        .chain(lines)
        .collect::<Vec<_>>()
        .join("\n")
}

/// What the threads of two jobs find may come in the other order than it was found in.
#[test]
fn what_comes_late_takes_the_place_of_nothing_newer() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let (mut book, words) = (OrderBook::default(), Words::english());
    let done = |job| {
        let report = do_order_job(&shelf, Prices::default(), job);
        report.untroubled().unwrap()
    };
    book.take_in(done(OrderJob::New), &words).unwrap();
    let id = Orders::beside(&shelf).list().unwrap().untroubled().unwrap()[0]
        .id
        .clone();
    let named = |name: &str| {
        let change = OrderChange::Field(OrderField::Name, name.to_owned());
        OrderJob::Change(id.clone(), change)
    };
    let (late, newer) = (done(named("the club")), done(named("the yard")));
    for report in [newer, late] {
        book.take_in(report, &words).unwrap();
    }
    assert!(page(&book).contains("the yard"), "{}", page(&book));
    // Whoever has gone back to the list stays there, whatever is done in an order by then.
    let late = done(OrderJob::Change(id.clone(), OrderChange::AddPiece));
    let leave = book.press(&Press::default(), Some(Intent::Leave), &words);
    let OrderAction::Do(look) = leave else {
        panic!("{leave:?}");
    };
    book.take_in(done(look), &words).unwrap();
    let list = page(&book);
    let action = book.take_in(late, &words).unwrap();
    assert!(matches!(action, OrderAction::None), "{action:?}");
    assert_eq!((page(&book), book.depth()), (list, (false, false)));
    // And whoever has opened another one is not led to the one before it.
    let other = done(OrderJob::New).stock.unwrap().open.unwrap().kept.id;
    book.take_in(done(OrderJob::Look(None)), &words).unwrap();
    let press = |key: &str| Press {
        key: key.to_owned(),
        is_repeat: false,
    };
    let mut opened = Vec::new();
    for key in ["Home", "End"] {
        book.press(&press(key), None, &words);
        let action = book.press(&Press::default(), Some(Intent::Next), &words);
        let OrderAction::Do(OrderJob::Look(Some(id))) = action else {
            panic!("{action:?}");
        };
        opened.push(id);
    }
    assert_eq!(opened, [other.clone(), id.clone()]);
    let [first, last] = [other, id].map(|id| done(OrderJob::Look(Some(id))));
    book.take_in(last, &words).unwrap();
    assert!(page(&book).contains("the yard"), "{}", page(&book));
    book.take_in(first, &words).unwrap();
    assert!(page(&book).contains("the yard"), "{}", page(&book));
}

/// Brings the line that begins so into turn, from the first one on.
fn go_to_line(hands: &mut Hands, label: &str) {
    hands.press(Named::Home);
    for _ in 0..30 {
        if hands.last_said().starts_with(label) {
            return;
        }
        down(hands, 1);
    }
    panic!("no line says {label}: {}", hands.last_said());
}

/// Begins a piece of so many leads and bights in cord of 3 mm, on its page.
fn with_a_piece(hands: &mut Hands, leads: &str, bights: &str) {
    hands.press(letter("n"));
    hands.press(letter("a"));
    for (label, text) in [("Leads", leads), ("Bights", bights), ("Cord", "3mm")] {
        go_to_line(hands, label);
        say(hands, text);
    }
}

#[test]
fn a_ball_is_ordered_in_place_and_asks_for_no_tube() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_piece(&mut hands, "5", "4");
    go_to_line(&mut hands, "Diameter of a ball: not said");
    say(&mut hands, "38mm");
    // Lines above have gone, and the one in turn is still in turn.
    assert_eq!(hands.last_said(), "Diameter of a ball: 38mm");
    for gone in [
        "Thickness of the object",
        "Mat, from",
        "Length to be covered",
        "Gap before",
    ] {
        assert!(!hands.sees(&format!("{gone}: not said")), "{gone}");
    }
    assert!(hands.sees("Tube: not said"));
    go_to_line(&mut hands, "Slid on or tied in place: not said");
    hands.press(Named::Enter);
    assert_eq!(hands.last_said(), "Slid on or tied in place: Tied in place");
    for gone in ["Tube: not said", "Holes in each row of a ring: not said"] {
        assert!(!hands.sees(gone), "{gone}");
    }
    let order = kept(folder.path()).remove(0);
    let [ball, place] = [SetupField::Ball, SetupField::InPlace]
        .map(|field| order.pieces[0].text(PieceField::Setup(field)).to_owned());
    assert_eq!([&*ball, &*place], ["38mm", "yes"]);
    hands.press(Named::Escape);
    assert!(hands.sees("To buy:"), "{}", hands.last_said());
    hands.press(letter("b"));
    let plan = hands.ties()[0].plan.clone();
    let setup = plan.setup().unwrap();
    let ball = marlinspeak::bench::Millimetres::parse("38mm").unwrap();
    assert_eq!(setup.ground(), marlinspeak::bench::Ground::Ball(ball));
    assert!(setup.in_place);
}

#[test]
fn what_was_said_of_another_ground_stays_until_it_is_taken_back() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_piece(&mut hands, "5", "7");
    go_to_line(&mut hands, "Tube");
    say(&mut hands, "45mm");
    go_to_line(&mut hands, "Mat, from edge to edge");
    say(&mut hands, "150mm");
    // The tube is what is wrong, and can be taken back.
    assert!(hands.sees("Tube: 45mm"));
    assert!(!hands.sees("Slid on or tied in place: not said"));
    hands.press(Named::End);
    assert!(
        hands
            .last_said()
            .contains("A mat is tied flat on a board and takes no tube"),
        "{}",
        hands.last_said()
    );
    say(&mut hands, "");
    assert!(!hands.sees("Tube: 45mm") && !hands.sees("Tube: not said"));
    hands.press(Named::Escape);
    assert!(hands.sees("To buy:"));
}

#[test]
fn how_a_taper_and_a_hole_are_written_is_told_where_they_are_typed() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    with_a_piece(&mut hands, "5", "6");
    go_to_line(&mut hands, "Thickness of the object");
    hands.press(Named::Enter);
    let taper = "Thickness of the object. If it tapers, give both ends with a colon between, the \
                 bottom one first, such as 32:26 mm.";
    assert_eq!(hands.last_said(), taper);
    assert!(hands.sees(taper));
    hands.tell(Message::typed_on_orders("32:26 mm"));
    hands.press(Named::Enter);
    go_to_line(&mut hands, "Slid on");
    hands.press(Named::Enter);
    go_to_line(&mut hands, "Length to be covered");
    say(&mut hands, "60mm");
    hands.press(Named::Escape);
    assert!(hands.sees("To buy:"), "{}", hands.last_said());
    let form = kept(folder.path()).remove(0).pieces[0].setup();
    let ground = form.ground().unwrap().unwrap();
    assert!(
        matches!(ground, marlinspeak::bench::Ground::Taper { .. }),
        "{ground:?}"
    );
    hands.press(Named::Escape);
    with_a_piece(&mut hands, "5", "7");
    go_to_line(&mut hands, "Mat");
    hands.press(Named::Enter);
    assert!(
        hands.last_said().contains("such as 150:60 mm"),
        "{}",
        hands.last_said()
    );
}

/// A document from elsewhere says neither yes nor no of being tied in place.
#[test]
fn what_is_neither_in_place_nor_slid_on_is_mended_where_it_is_told() {
    let folder = TempDir::new().unwrap();
    let shelf = Shelf::open(folder.path().join("ties")).unwrap();
    let mut order = Order::default();
    let rail = order.add();
    for (field, text) in [
        (PieceField::Leads, "5"),
        (PieceField::Bights, "6"),
        (PieceField::Setup(SetupField::Object), "28mm"),
        (PieceField::Setup(SetupField::InPlace), "maybe"),
        (PieceField::Setup(SetupField::Cord), "3mm"),
    ] {
        rail.say(field, text);
    }
    let kept = Orders::beside(&shelf).keep(order).unwrap();
    let (mut book, words) = (OrderBook::default(), Words::english());
    let done = |job| {
        let report = do_order_job(&shelf, Prices::default(), job);
        report.untroubled().unwrap()
    };
    let look = done(OrderJob::Look(Some(kept.id)));
    book.take_in(look, &words).unwrap();
    let press = |key: &str| Press {
        key: key.to_owned(),
        is_repeat: false,
    };
    let OrderAction::Say(wrong) = book.press(&press("End"), None, &words) else {
        panic!("nothing is said");
    };
    assert!(wrong.to_string().contains("“maybe”"), "{wrong}");
    // Nothing is typed: it becomes yes, on the page of its piece.
    let mended = book.press(&Press::default(), Some(Intent::Next), &words);
    let OrderAction::Do(job @ OrderJob::Change(..)) = mended else {
        panic!("{mended:?}");
    };
    assert_eq!((book.typed(), book.depth()), (None, (true, true)));
    let OrderAction::Say(said) = book.take_in(done(job), &words).unwrap() else {
        panic!("nothing is said");
    };
    assert_eq!(said.to_string(), "Slid on or tied in place: Tied in place");
    assert!(!page(&book).contains("maybe"), "{}", page(&book));
}

/// A book without orders says what one is, and the key that leads on everywhere begins one.
#[test]
fn an_empty_book_invites_to_the_first_order() {
    let folder = TempDir::new().unwrap();
    let mut hands = at_orders(folder.path());
    let size = iced::Size::new(1100.0, 760.0);
    for id in ["bar-next", "picture"] {
        assert!(
            hands.screen(size).find(iced_test::selector::id(id)).is_ok(),
            "{id}"
        );
    }
    assert!(kept(folder.path()).is_empty());
    hands.press(Named::Space);
    say(&mut hands, "the club");
    assert_eq!(kept(folder.path()).len(), 1);
    // Once there is one, the next press opens it and begins none.
    hands.press(Named::Escape);
    assert!(
        hands
            .screen(size)
            .find(iced_test::selector::id("picture"))
            .is_err()
    );
    hands.press(Named::Space);
    assert_eq!(kept(folder.path()).len(), 1);
}

/// Where it is high, a sentence stands above the picture, and both have all of the width; what begins an
/// order is the one button that is lit.
#[test]
fn an_empty_book_has_one_column_in_a_high_window() {
    let folder = TempDir::new().unwrap();
    let hands = at_orders(folder.path());
    let size = iced::Size::new(800.0, 1400.0);
    let mut screen = hands.screen(size);
    let picture = screen.find(iced_test::selector::id("picture")).unwrap();
    let picture = picture.bounds();
    assert!(picture.width > 700.0, "{picture:?}");
    let told = Words::english().plainly("orders-empty", &[]);
    let told = screen.find(told.as_str()).unwrap().bounds();
    assert!(told.y + told.height <= picture.y, "{told:?} {picture:?}");
    // Its name is on the button of the bar, and on no other.
    let label = Words::english().plainly("key-new-order", &[]);
    let button = screen.find(label.as_str()).unwrap().bounds();
    assert!(button.y > 1300.0, "{button:?}");
}
