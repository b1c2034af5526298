//! A card of dozens of pages takes no more memory than a card of a few. Alone in its program, so that
//! nothing else takes memory meanwhile.
#![cfg(target_os = "linux")]

use std::fs;
use std::io;

use marlinspeak::bench::Prices;
use marlinspeak::guide::{Labour, Plan};
use marlinspeak::paper;
use marlinspeak::picture::sheet::{Paper, Sheet, write_pdf};
use marlinspeak::words::Words;

/// A figure of this program in kilobytes, as the kernel keeps it (`proc_pid_status(5)`).
fn kilobytes(name: &str) -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find(|line| line.starts_with(name)).unwrap();
    let figure = line.split_whitespace().nth(1).unwrap();
    figure.parse().unwrap()
}

/// Pages of the card of a knot, and by how many kilobytes more than before the program grew at most
/// while it was made.
fn made(leads: &str, bights: &str, passes: &str) -> (usize, u64) {
    let plan = Plan::read(leads, bights, passes, "").unwrap();
    paper::check_card(&plan).unwrap();
    let (words, labour) = (Words::english(), Labour::of(&plan, None, Prices::default()));
    // The greatest so far is forgotten (`proc_pid_clear_refs(5)`).
    fs::write("/proc/self/clear_refs", "5").unwrap();
    let before = kilobytes("VmRSS");
    let card = paper::card(&plan, None, &labour, Paper::A4, &words);
    write_pdf(&card, "card", io::sink(), |_, _| true).unwrap();
    (card.count(), kilobytes("VmHWM").saturating_sub(before))
}

#[test]
fn a_card_of_dozens_of_pages_takes_no_more_memory_than_one_of_a_few() {
    // What is read once, such as faces and messages, is there after the first.
    made("5", "7", "2");
    let (few, _) = made("9", "10", "3");
    let (many, grown) = made("40", "41", "9");
    assert!(few < 20 && many > 20 * few, "{few} and {many} pages");
    // What is written of each page is kept to its end. With all pages laid out before the first is written
    // it was 3,832 kB, and 1,950 without.
    assert!(grown < 2_900, "{many} pages took {grown} kB");
}
