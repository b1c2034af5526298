//! How long the picture of a large knot takes: 40 × 41 tripled, 1920 by 1080 pixels.
//!
//! The screen should have a first picture in 16 ms and each one after in 8 ms.

use divan::{Bencher, black_box};
use marlinspeak::knot::{Hand, Knot, Laying, LayingOrder, Side, Weave};
use marlinspeak::picture::{DefaultPalette, DisplayList, Moment, Painter, Scene, View, Viewport};

fn main() {
    divan::main();
}

const VIEWS: [View; 2] = [View::RolledOut, View::RoundTheTube];

fn laying() -> Laying {
    let knot = Knot::new(40, 41, Weave::default()).expect("a knot within bounds");
    Laying::new(knot, 3, LayingOrder::default()).expect("passes within bounds")
}

/// The picture in the third pass, `nth` legs into it.
fn list(view: View, laying: &Laying, nth: u32) -> DisplayList {
    let pass_leg = laying.nth_leg(200 + nth % 40).expect("a turn of this tie");
    let viewport = Viewport::new(1920.0, 1080.0);
    let (side, hand) = (Side::Right, Hand::Right);
    DisplayList::of(&Scene::build(
        view,
        laying,
        side,
        hand,
        &Moment::at(pass_leg),
        viewport,
    ))
}

#[divan::bench(args = VIEWS)]
fn build(bencher: Bencher, view: View) {
    let laying = laying();
    bencher.bench_local(|| list(view, black_box(&laying), 0));
}

#[divan::bench(args = VIEWS)]
fn first(bencher: Bencher, view: View) {
    let (laying, palette) = (laying(), DefaultPalette::dark());
    bencher.bench_local(|| {
        let mut painter = Painter::new();
        painter.paint(&list(view, &laying, 0), &palette).width()
    });
}

#[divan::bench(args = VIEWS)]
fn next(bencher: Bencher, view: View) {
    let (laying, palette) = (laying(), DefaultPalette::dark());
    let mut painter = Painter::new();
    let mut nth = 0;
    bencher.bench_local(|| {
        nth += 1;
        painter.paint(&list(view, &laying, nth), &palette).width()
    });
}
