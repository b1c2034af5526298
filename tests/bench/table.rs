//! The computing and the painting, as lines of the table of `make bench`. What is behind each
//! figure is in the benchmarks of its own part: `cargo bench --bench knot` and so on.

#[path = "card.rs"]
mod card;
#[path = "line.rs"]
mod line;
#[path = "telling.rs"]
mod telling;

use std::hint::black_box;
use std::time::Duration;

use line::{head, line, median, run, times, worst};
use marlinspeak::bench::{FitWish, Millimetres, Object, fit};
use marlinspeak::knot::{Hand, Knot, Laying, Side, Weave};
use marlinspeak::pedal::{KnockDetector, RowDetector};
use marlinspeak::picture::{DefaultPalette, DisplayList, Moment, Painter, Scene, View, Viewport};
use telling::{count_all, interwoven, laying, tell_all};

/// From a knot that is tied in an evening to the largest there is: leads and bights.
const GROWING: [(u16, u16); 4] = [(9, 10), (99, 100), (999, 998), (998, 999)];

fn main() {
    // `cargo test --benches` asks whether it runs, not how fast.
    let runs = if std::env::args().any(|arg| arg == "--bench") {
        101
    } else {
        3
    };
    head("computing and painting");
    crossings(runs);
    interwoven_crossings(runs);
    legs(runs);
    fitting(runs);
    pictures(runs);
    cards(runs.min(21));
    ear(runs.min(21));
}

/// Ten seconds of noise in the ear, as a share of the time that a core has for them.
fn ear(runs: usize) {
    const RATE: u32 = 48_000;
    const SECONDS: u32 = 10;
    let mut chance = 1_u32;
    let noise = || {
        chance = chance.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        f32::from(u16::try_from(chance >> 16).unwrap_or_default()) / 65_536.0 - 0.5
    };
    let noise: Vec<f32> = std::iter::repeat_with(noise)
        .take((RATE * SECONDS) as usize)
        .collect();
    let mut muted = noise[..RATE as usize].to_vec();
    muted.resize(noise.len(), 0.0);
    let share = |took: Duration| took.as_secs_f64() / f64::from(SECONDS) * 100.0;
    for (what, sound) in [
        ("listening for knocks at 48 kHz, of one core", noise),
        ("  while the microphone is muted", muted),
    ] {
        let took = run(runs, |_| {
            let (mut ear, mut knocks) = (RowDetector::new(RATE), 0);
            for block in sound.chunks(960) {
                ear.take(block, &mut |_| knocks += 1);
            }
            black_box(knocks)
        });
        line(
            what,
            format!("{:.2} %", share(median(&took))),
            format!("{:.2} %", share(worst(&took))),
            "2 %",
        );
    }
}

/// A crossing, and a bare loop over as many as the floor.
fn crossings(runs: usize) {
    let mut smallest = None;
    for knot in GROWING {
        let laying = laying(knot, 1);
        let crossings = laying.knot().crossings();
        // Small knots are told again and again, until there is something to measure.
        let again = (1_000_000 / crossings).max(1);
        let each =
            |total: Duration| total.as_secs_f64() * 1e9 / f64::from(crossings) / f64::from(again);
        let told = run(runs, |_| (0..again).map(|_| tell_all(&laying)).sum::<u32>());
        let floor = run(runs, |_| {
            (0..again).map(|_| count_all(&laying)).sum::<u32>()
        });
        let middle = each(median(&told));
        let (leads, bights) = knot;
        line(
            &format!("a crossing of {leads} × {bights}, every leg in turn"),
            format!("{middle:.1}ns"),
            format!("{:.1}ns", each(worst(&told))),
            "20 ns",
        );
        line(
            "  times a bare loop over as many",
            format!("{:.0}", middle / each(median(&floor))),
            "",
            "",
        );
        let first = *smallest.get_or_insert(middle);
        line(
            "  times that of 9 × 10",
            format!("{:.2}", middle / first),
            "",
            "",
        );
    }
}

/// A crossing of an interwoven knot beside one of a plain knot of as many rows and legs, in turn.
fn interwoven_crossings(runs: usize) {
    let (interwoven, plain) = (interwoven((498, 499), 2), laying((998, 998), 1));
    let each = |laying: &Laying, total: Duration| {
        total.as_secs_f64() * 1e9 / f64::from(laying.knot().crossings())
    };
    let ratios = (0..runs.min(21)).map(|_| {
        let told = run(5, |_| tell_all(&interwoven)).into_iter().min();
        let beside = run(5, |_| tell_all(&plain)).into_iter().min();
        let told = each(&interwoven, told.unwrap_or_default());
        told / each(&plain, beside.unwrap_or_default())
    });
    let mut ratios: Vec<f64> = ratios.collect();
    ratios.sort_by(f64::total_cmp);
    line(
        "a crossing of 498 × 499 interwoven, times a plain one",
        format!("{:.2}", ratios[ratios.len() / 2]),
        format!("{:.2}", ratios[ratios.len() - 1]),
        "1.1",
    );
}

/// Any one leg, as after a press of *back* or the return to a saved place.
fn legs(runs: usize) {
    let laying = laying((999, 998), 9);
    let legs = run(runs, |nth| {
        // Steps of the golden section of the range scatter evenly over it.
        let place = u32::try_from(nth).unwrap_or(0).wrapping_mul(0x9E37_79B9);
        let pass_leg = laying
            .nth_leg(place % laying.legs())
            .expect("within the tie");
        laying.crossings(pass_leg).map(black_box).count()
    });
    times("any one leg of 998 crossings", &legs, "its own crossings");
    let set_up = run(runs, |_| Knot::new(999, 998, Weave::default()));
    times("setting up 999 × 998", &set_up, "1 ms");
}

/// Everything that fits a tiller, and a buoy.
fn fitting(runs: usize) {
    let mm = |millimetres| Millimetres::new(millimetres).expect("a length");
    for (what, [diameter, cover, cord]) in [
        ("a handle of 30 mm", [30.0, 30.0, 4.0]),
        ("a buoy of 1 m", [1000.0, 1000.0, 16.0]),
    ] {
        let mut wish = FitWish::new(Object::new(mm(diameter), mm(cover)), mm(cord));
        let fitted = run(runs, |_| fit(&wish));
        times(&format!("all knots that fit {what}"), &fitted, "5 ms");
        wish.filter.nested = Some(1);
        let fitted = run(runs, |_| fit(&wish));
        times("  plain ones alone", &fitted, "");
    }
}

/// 40 × 41 tripled at 1920 × 1080.
fn pictures(runs: usize) {
    let laying = laying((40, 41), 3);
    let palette = DefaultPalette::dark();
    for (view, name) in [
        (View::RolledOut, "rolled out"),
        (View::RoundTheTube, "round the tube"),
    ] {
        let list = |nth: usize| {
            let before = 200 + u32::try_from(nth % 40).unwrap_or(0);
            let pass_leg = laying.nth_leg(before).expect("a turn of this tie");
            let (side, hand) = (Side::Right, Hand::Right);
            let viewport = Viewport::new(1920.0, 1080.0);
            let moment = Moment::at(pass_leg);
            DisplayList::of(&Scene::build(view, &laying, side, hand, &moment, viewport))
        };
        let built = run(runs, list);
        times(&format!("the scene of 40 × 41 × 3 {name}"), &built, "");
        let first = run(runs, |nth| {
            Painter::new().paint(&list(nth), &palette).width()
        });
        times("  its first picture", &first, "16 ms");
        let mut painter = Painter::new();
        let next = run(runs, |nth| painter.paint(&list(nth), &palette).width());
        times("  the picture of each leg after it", &next, "8 ms");
    }
}

/// A full card at 300 dots an inch, from the knot to the bytes of its file.
fn cards(runs: usize) {
    let png = run(runs, |_| {
        let page = card::page(&card::card());
        page.image(300).png(300).expect("a PNG").len()
    });
    times("a card as PNG at 300 dots an inch", &png, "300 ms");
}
