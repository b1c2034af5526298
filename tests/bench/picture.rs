//! How long the picture of a large knot takes: 40 × 41 tripled, 1920 by 1080 pixels.
//!
//! The screen should have a first picture in 16 ms and each one after in 8 ms.

use divan::{Bencher, black_box};
use marlinspeak::knot::{Hand, Knot, Laying, Order, Side, Weave};
use marlinspeak::picture::{Frame, Painter, Progress, Scene, Tones, View};

fn main() {
    divan::main();
}

const VIEWS: [View; 2] = [View::RolledOut, View::RoundTheTube];

fn laying() -> Laying {
    let knot = Knot::new(40, 41, Weave::default()).expect("a knot within bounds");
    Laying::new(knot, 3, Order::default()).expect("passes within bounds")
}

/// The picture in the third pass, `nth` legs into it.
fn scene(view: View, laying: &Laying, nth: u32) -> Scene {
    let turn = laying.turn(200 + nth % 40).expect("a turn of this tie");
    let frame = Frame::new(1920.0, 1080.0);
    Scene::build(
        view,
        laying,
        Side::Right,
        Hand::Right,
        &Progress::at(turn),
        frame,
    )
}

#[divan::bench(args = VIEWS)]
fn build(bencher: Bencher, view: View) {
    let laying = laying();
    bencher.bench_local(|| scene(view, black_box(&laying), 0));
}

#[divan::bench(args = VIEWS)]
fn first(bencher: Bencher, view: View) {
    let (laying, tones) = (laying(), Tones::dark());
    bencher.bench_local(|| {
        let mut painter = Painter::new();
        painter.paint(&scene(view, &laying, 0), &tones).width()
    });
}

#[divan::bench(args = VIEWS)]
fn next(bencher: Bencher, view: View) {
    let (laying, tones) = (laying(), Tones::dark());
    let mut painter = Painter::new();
    let mut nth = 0;
    bencher.bench_local(|| {
        nth += 1;
        painter.paint(&scene(view, &laying, nth), &tones).width()
    });
}
