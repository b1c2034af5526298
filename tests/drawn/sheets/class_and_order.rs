//! Cards for a class with the moving picture beside them, and an order on paper.

use crate::in_time::InTime as _;
use std::fs;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use marlinspeak::bench::{Correction, Prices};
use marlinspeak::guide::{Labour, Order, OrderAnswer, PieceField, Plan, Presets};
use marlinspeak::paper::{Pupils, check_class, class, order_sheet};
use marlinspeak::picture::sheet::{Paper, SheetPage};
use marlinspeak::shelf::read_order_said;
use marlinspeak::words::Words;
use serde_json::json;
use tempfile::TempDir;

use crate::laid_out;

const ROPE: [&str; 6] = ["sheet", "class", "--leads", "3", "--bights", "5"];

/// Runs the program with all that it keeps below this folder.
fn run_at(home: &Path, args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(args)
        .env("LC_ALL", "C")
        .env("HOME", home)
        .env("XDG_CONFIG_HOME", home.join("config"))
        .env("XDG_DATA_HOME", home.join("data"))
        .env("XDG_STATE_HOME", home.join("state"))
        .stdin(Stdio::null())
        .output_in_time()
}

fn printed_at(home: &Path, args: &[&str]) -> String {
    let output = run_at(home, args);
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{args:?}: {errors}");
    String::from_utf8(output.stdout).unwrap()
}

fn refused_at(home: &Path, args: &[&str]) -> (i32, String) {
    let output = run_at(home, args);
    assert!(output.stdout.is_empty());
    let errors = String::from_utf8(output.stderr).unwrap();
    (output.status.code().unwrap(), errors.trim_end().to_owned())
}

fn rope() -> Plan {
    Plan::read("3", "5", "1", "").unwrap()
}

fn cards_on(pupils: &Pupils, paper: Paper, words: &Words) -> Vec<SheetPage> {
    let plan = rope();
    let labour = Labour::of(&plan, None, Prices::default());
    laid_out::pages(&class(&plan, None, &labour, pupils, paper, words))
}

fn cards(pupils: &Pupils) -> Vec<SheetPage> {
    cards_on(pupils, Paper::A4, &Words::english())
}

fn says(page: &SheetPage, text: &str) -> bool {
    page.texts().any(|line| line == text)
}

/// Pages of a PDF, as its page tree counts them.
fn pages_of(pdf: &Path) -> usize {
    let bytes = fs::read(pdf).unwrap();
    assert!(bytes.starts_with(b"%PDF"));
    let text = String::from_utf8_lossy(&bytes);
    text.matches("/Type /Page\n").count() + text.matches("/Type/Page/").count()
}

/// Whether one of the files below this folder has the text.
fn is_kept(folder: &Path, text: &str) -> bool {
    fs::read_dir(folder).unwrap().any(|entry| {
        let path = entry.unwrap().path();
        if path.is_dir() {
            return is_kept(&path, text);
        }
        String::from_utf8_lossy(&fs::read(path).unwrap()).contains(text)
    })
}

#[test]
fn every_pupil_has_a_card_of_their_own_with_the_name_on_every_page() {
    let one = cards(&Pupils::Count(1));
    let names = ["Ada", "Ben", "Cleo"].map(str::to_owned);
    let all = cards(&Pupils::Named(names.to_vec()));
    assert_eq!(all.len(), 3 * one.len());
    for (card, name) in all.chunks(one.len()).zip(&names) {
        for (page, numbered) in card.iter().zip(&one) {
            assert!(says(page, name), "{name}");
            assert!(!says(numbered, name));
            // The same card besides.
            assert_eq!(page.texts().count(), numbered.texts().count());
        }
        // Each begins with the title of the knot on a page of its own.
        assert!(says(&card[0], &Words::english().tie_line(&rope())));
    }
    let twelve = cards(&Pupils::Count(12));
    assert_eq!(twelve.len(), 12 * one.len());
    assert!(twelve[11 * one.len()..].iter().all(|page| says(page, "12")));
}

#[test]
fn the_cards_of_a_class_take_more_pages_and_say_all_that_the_card_says() {
    for tag in ["en", "de", "es", "fr"] {
        let words = Words::load(Some(tag)).unwrap();
        let labour = Labour::of(&rope(), None, Prices::default());
        for paper in [Paper::A4, Paper::Letter] {
            let small = marlinspeak::paper::card(&rope(), None, &labour, paper, &words);
            let small = laid_out::pages(&small);
            let large = cards_on(&Pupils::Named(vec!["Ada".to_owned()]), paper, &words);
            assert!(large.len() > small.len(), "{tag}");
            let said = |pages: &[SheetPage]| {
                let lines = pages.iter().flat_map(SheetPage::texts);
                let mut said: Vec<String> = lines
                    .flat_map(str::split_whitespace)
                    .map(str::to_owned)
                    .collect();
                said.sort();
                said.dedup();
                said
            };
            let large = said(&large);
            for word in said(&small) {
                let is_there = large.contains(&word) || word.parse::<u8>().is_ok();
                assert!(is_there, "{tag}: {word}");
            }
        }
    }
}

#[test]
fn a_class_of_a_knot_too_large_for_paper_is_refused() {
    let large = Plan::read("29", "31", "5", "").unwrap();
    assert!(check_class(&large, &Pupils::Count(1)).is_ok());
    assert!(check_class(&large, &Pupils::Count(99)).is_err());
}

#[test]
fn one_command_makes_the_cards_and_the_moving_picture_and_keeps_no_name() {
    let home = TempDir::new().unwrap();
    let pdf = home.path().join("bell rope.pdf");
    let gif = home.path().join("bell rope.gif");
    let out = pdf.to_str().unwrap();
    let args = [&ROPE[..], &["--names", "Wilhelmina, Ben", "--out", out]].concat();
    assert_eq!(printed_at(home.path(), &args), "");
    let all = cards(&Pupils::Count(2)).len();
    assert_eq!(pages_of(&pdf), all);
    let reel = fs::read(&gif).unwrap();
    assert!(reel.starts_with(b"GIF89a"));
    // Nothing is written over, whichever of the two is there.
    let (code, sentence) = refused_at(home.path(), &args);
    assert_eq!(code, 2);
    assert!(sentence.contains("bell rope.gif"), "{sentence}");
    fs::remove_file(&pdf).unwrap();
    assert_eq!(refused_at(home.path(), &args).0, 2);
    assert!(!pdf.exists(), "both or none");
    fs::remove_file(&gif).unwrap();
    fs::write(&pdf, "mine").unwrap();
    assert_eq!(refused_at(home.path(), &args).0, 2);
    assert!(!gif.exists(), "both or none");
    printed_at(home.path(), &[&args[..], &["--replace"]].concat());
    assert_eq!(pages_of(&pdf), all);
    // What was refused is in the log, the names are nowhere.
    assert!(is_kept(&home.path().join("state"), "no sheet: "));
    fs::remove_file(&pdf).unwrap();
    assert!(!is_kept(home.path(), "Wilhelmina"));
}

#[test]
fn each_thing_wrong_with_a_class_has_its_sentence() {
    let home = TempDir::new().unwrap();
    let out = home.path().join("class.pdf");
    let out = out.to_str().unwrap();
    for (more, sentence) in [
        (
            &["--out", out][..],
            "For whom are the cards? Give their number, such as --copies 12, or their names, such as \
             --names Ada,Ben.",
        ),
        (
            &["--out", out, "--copies", "2", "--names", "Ada"],
            "The cards are counted by --copies or named by --names: give one of the two.",
        ),
        (
            &["--out", out, "--copies", "0"],
            "--copies takes a whole number from 1 to 99 and “0” is not one: try --copies 12.",
        ),
        (
            &["--out", out, "--copies", "all"],
            "--copies takes a whole number from 1 to 99 and “all” is not one: try --copies 12.",
        ),
        (
            &["--out", out, "--names", "Ada,,Ben"],
            "“Ada,,Ben” is not a list of names: give up to 99 of them with a comma between, such as \
             --names Ada,Ben.",
        ),
        (
            &["--copies", "2"],
            "There is nowhere to put the cards: add --out with the name of a PDF, such as --out \
             class.pdf; the moving picture gets the same name with “.gif”.",
        ),
        (
            &["--out", "class.png", "--copies", "2"],
            "“class.png” is not the name of a PDF: let it end in “.pdf”; the moving picture gets the \
             same name with “.gif”.",
        ),
        (
            &["--out", out, "--copies", "2", "--paper", "a3"],
            "“a3” is not a choice for --paper: it takes a4, letter; try --paper a4.",
        ),
    ] {
        let refused = refused_at(home.path(), &[&ROPE[..], more].concat());
        assert_eq!(refused, (2, sentence.to_owned()));
    }
    assert!(!home.path().join("class.pdf").exists());
}

fn the_order() -> (Order, OrderAnswer) {
    let ring = |count: u16| {
        json!({
            "name": "boathook ring", "count": count, "leads": 4, "bights": 7, "cord": "3mm",
            "tube": "45mm", "rows": "14,20",
        })
    };
    let document = json!({
        "name": "the club", "stick": "1m", "spool": "20m", "pieces": [ring(1), ring(2)],
    });
    let stored = read_order_said(document.to_string().as_bytes()).unwrap();
    let read = stored
        .order
        .read(&Presets::default(), |_, _| Correction::default());
    let answer = OrderAnswer::of(read.unwrap(), None, Prices::default());
    (stored.order, answer)
}

#[test]
fn an_order_on_paper_says_all_that_it_comes_to() {
    let (order, answer) = the_order();
    let words = Words::english();
    for paper in [Paper::A4, Paper::Letter] {
        let pages = laid_out::pages(&order_sheet(&order, &answer, paper, &words));
        let all: Vec<&str> = pages.iter().flat_map(SheetPage::texts).collect();
        let all = all.join(" ");
        assert!(all.contains("the club: 3 knots."), "{all}");
        let told = answer.pieces.iter().map(|one| words.order_piece(one));
        let told = told.chain(
            answer
                .to_buy
                .iter()
                .flat_map(|cord| words.order_cord(cord, answer.spool)),
        );
        let told = told
            .chain(words.order_stick(&answer))
            .chain([words.order_time(&answer)]);
        for sentence in told {
            assert!(
                all.contains(sentence.shown()),
                "{}: {all}",
                sentence.shown()
            );
        }
        for caution in words.card_cautions() {
            assert!(all.contains(&caution), "{caution}");
        }
    }
}

#[test]
fn a_long_order_takes_more_pages_and_loses_no_line() {
    let (mut order, _) = the_order();
    let piece = order.pieces[0].clone();
    for number in 3..60 {
        let mut another = piece.clone();
        another.number = number;
        another.say(PieceField::Name, format!("ring number {number}"));
        order.pieces.push(another);
    }
    let read = order.read(&Presets::default(), |_, _| Correction::default());
    let answer = OrderAnswer::of(read.unwrap(), None, Prices::default());
    let sheet = order_sheet(&order, &answer, Paper::A4, &Words::english());
    let pages = laid_out::pages(&sheet);
    assert!(pages.len() > 2);
    let all: Vec<&str> = pages.iter().flat_map(SheetPage::texts).collect();
    let all = all.join(" ");
    for number in 3..60 {
        assert!(all.contains(&format!("ring number {number}:")), "{number}");
    }
}

#[test]
fn an_order_is_put_on_paper_from_its_file_and_by_its_name() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("order.json");
    let order = json!({ "pieces": [{ "leads": 4, "bights": 7, "cord": 3, "tube": 45 }] });
    fs::write(&file, order.to_string()).unwrap();
    let file = file.to_str().unwrap();
    let out = |name: &str| home.path().join(name).to_str().unwrap().to_owned();
    printed_at(
        home.path(),
        &["sheet", "order", file, "--out", &out("one.pdf")],
    );
    let kept = printed_at(home.path(), &["order", "keep", file]);
    let id = kept
        .trim()
        .trim_start_matches("Kept as ")
        .trim_end_matches('.');
    printed_at(
        home.path(),
        &["sheet", "order", id, "--out", &out("two.pdf")],
    );
    printed_at(
        home.path(),
        &[
            "sheet",
            "order",
            id,
            "--out",
            &out("two.png"),
            "--dpi",
            "72",
        ],
    );
    assert_eq!(pages_of(Path::new(&out("one.pdf"))), 1);
    assert_eq!(pages_of(Path::new(&out("two.pdf"))), 1);
    assert!(fs::read(out("two.png")).unwrap().starts_with(b"\x89PNG"));
}

#[test]
fn an_order_that_there_is_not_or_that_cannot_be_tied_is_refused_in_a_sentence() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("order.json");
    let out = home.path().join("order.pdf");
    let out = out.to_str().unwrap();
    let refused = |order: &str| refused_at(home.path(), &["sheet", "order", order, "--out", out]);
    let (code, sentence) = refused("none");
    assert_eq!(code, 2);
    assert!(
        sentence.starts_with("There is no order “none”"),
        "{sentence}"
    );
    fs::write(
        &file,
        json!({ "pieces": [{ "leads": 4, "bights": 6 }] }).to_string(),
    )
    .unwrap();
    let (code, sentence) = refused(file.to_str().unwrap());
    assert_eq!((code, sentence.lines().count()), (2, 1), "{sentence}");
    assert!(sentence.starts_with("Piece 1:"), "{sentence}");
    assert!(!Path::new(out).exists());
}
