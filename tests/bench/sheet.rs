//! How long a card takes at 300 dots an inch, from the knot to the bytes of its PNG. It should
//! be there within 300 ms.

#[path = "card.rs"]
mod card;

use card::{card, pages};
use divan::Bencher;
use marlinspeak::picture::sheet::pdf;

fn main() {
    divan::main();
}

#[divan::bench]
fn card_as_png(bencher: Bencher) {
    let card = card();
    bencher.bench_local(|| {
        let pages = pages(&card);
        pages[0].image(300).png(300).expect("a PNG").len()
    });
}

#[divan::bench]
fn card_painted(bencher: Bencher) {
    let card = card();
    bencher.bench_local(|| pages(&card)[0].image(300).width());
}

#[divan::bench]
fn card_as_pdf(bencher: Bencher) {
    let card = card();
    bencher.bench_local(|| pdf(&pages(&card), "A card").expect("a PDF").len());
}
