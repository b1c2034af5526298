//! How long a card takes at 300 dots an inch, from the knot to the bytes of its PNG. It should
//! be there within 300 ms.

#[path = "card.rs"]
mod card;

use card::{card, page};
use divan::Bencher;
use marlinspeak::picture::sheet::write_pdf;

fn main() {
    divan::main();
}

#[divan::bench]
fn card_as_png(bencher: Bencher) {
    bencher.bench_local(|| page(&card()).image(300).png(300).expect("a PNG").len());
}

#[divan::bench]
fn card_painted(bencher: Bencher) {
    bencher.bench_local(|| page(&card()).image(300).width());
}

#[divan::bench]
fn card_as_pdf(bencher: Bencher) {
    bencher.bench_local(|| {
        let mut bytes = Vec::new();
        write_pdf(&card(), "A card", &mut bytes, |_, _| true).expect("a PDF");
        bytes.len()
    });
}
