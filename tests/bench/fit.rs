//! How long it takes to find every knot that covers an object. The aim is 5 ms.

use divan::{Bencher, black_box};
use marlinspeak::bench::{FitWish, Ground, Millimetres, Object, Tube, fit, why_nothing_fits};

fn main() {
    divan::main();
}

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

/// Objects from a pen to a buoy: diameter, length to cover, cord.
const OBJECTS: [[f64; 3]; 6] = [
    [9.0, 25.0, 1.6],
    [30.0, 30.0, 4.0],
    [40.0, 120.0, 3.0],
    [150.0, 200.0, 6.0],
    [300.0, 400.0, 4.0],
    [1000.0, 1000.0, 16.0],
];

#[divan::bench(args = OBJECTS)]
fn any_tube(bencher: Bencher, [diameter, cover, cord]: [f64; 3]) {
    let wish = FitWish::new(Object::new(mm(diameter), mm(cover)), mm(cord));
    bencher.bench(|| fit(black_box(&wish)));
}

#[divan::bench(args = OBJECTS)]
fn rows_of_many_divisors(bencher: Bencher, [diameter, cover, cord]: [f64; 3]) {
    let tube = Tube::ringed(mm(diameter * 1.3), &[48, 60, 36, 40]).unwrap();
    let wish = FitWish {
        tube: Some(&tube),
        ..FitWish::new(Object::new(mm(diameter), mm(cover)), mm(cord))
    };
    bencher.bench(|| fit(black_box(&wish)));
}

/// A taper, a ball and a mat as large as the round things: diameter and cord. No aim: what is not as thick all
/// along is worked out by finding roots.
#[divan::bench(args = [[30.0, 4.0], [40.0, 3.0], [150.0, 6.0], [200.0, 6.0]])]
fn other_grounds(bencher: Bencher, [across, cord]: [f64; 2]) {
    let grounds = [
        Ground::Taper {
            bottom: mm(across * 1.1),
            top: mm(across * 0.9),
            over: mm(across * 2.0),
        },
        Ground::Ball(mm(across)),
        Ground::Flat {
            outer: mm(across * 3.0),
            hole: None,
        },
    ];
    let wish = |ground| FitWish::new(Object::new(ground, mm(across * 2.0)), mm(cord));
    bencher.bench(|| grounds.map(|ground| fit(black_box(&wish(ground)))));
}

#[divan::bench]
fn nothing_fits(bencher: Bencher) {
    let wish = FitWish::new(Object::new(mm(300.0), mm(8.0)), mm(6.0));
    bencher.bench(|| why_nothing_fits(black_box(&wish)));
}
