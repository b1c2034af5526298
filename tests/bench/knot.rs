//! How quickly the largest knots are told: `cargo bench --bench knot`.
//!
//! Held to: at most 20 ns a crossing when every leg is told in turn, and less than 1 ms to set a
//! knot up. First the two figures are printed beside the floor, a bare loop that counts as many
//! crossings in the same run, and a crossing of interwoven knots beside one of plain knots with as many
//! rows, of which it takes no more than a tenth longer; then the benchmarks proper.

#[path = "telling.rs"]
mod telling;

use std::hint::black_box;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use divan::Bencher;
use divan::counter::ItemsCount;
use marlinspeak::knot::{Knot, Laying, PassLeg, Weave};
use telling::{count_all, interwoven, laying, tell_all};

/// Leads and bights of the largest knots: one strand, one strand with staggered pins, many
/// strands, and long legs round few pins.
const LARGEST: [(u16, u16); 4] = [(998, 999), (999, 998), (999, 999), (999, 2)];

/// Bights nested, leads and bights of interwoven knots, and a plain knot with as many rows and legs.
const INTERWOVEN: [[u16; 5]; 3] = [
    [2, 5, 8, 9, 16],
    [2, 498, 499, 998, 998],
    [9, 109, 110, 997, 990],
];

fn main() {
    for knot in LARGEST {
        compare_with_floor(knot);
    }
    for [nested, leads, bights, plain_leads, plain_bights] in INTERWOVEN {
        compare_with_plain(nested, (leads, bights), (plain_leads, plain_bights));
    }
    divan::main();
}

fn compare_with_floor((leads, bights): (u16, u16)) {
    let laying = laying((leads, bights), 1);
    let crossings = laying.knot().crossings();
    assert_eq!(tell_all(&laying), crossings);
    assert_eq!(count_all(&laying), crossings);
    let each = |total: Duration| total.as_secs_f64() * 1e9 / f64::from(crossings);
    let told = each(quickest(|| tell_all(&laying)));
    let floor = each(quickest(|| count_all(&laying)));
    let set_up = quickest(|| Knot::new(leads, bights, Weave::default()));
    println!(
        "{leads} lead {bights} bight: {told:.2} ns a crossing, floor {floor:.2} ns, ratio {:.1}; \
         set up in {set_up:.1?}",
        told / floor
    );
}

/// Both in turn, so that what else the machine does falls on both.
fn compare_with_plain(nested: u16, knot: (u16, u16), plain: (u16, u16)) {
    let (interwoven, laying) = (interwoven(knot, nested), laying(plain, 1));
    let each = |laying: &Laying| {
        let crossings = laying.knot().crossings();
        let again = (200_000 / crossings).max(1);
        let told = quickest(|| (0..again).map(|_| tell_all(laying)).sum::<u32>());
        told.as_secs_f64() * 1e9 / f64::from(crossings) / f64::from(again)
    };
    let (mut one, mut other) = (f64::INFINITY, f64::INFINITY);
    for _ in 0..5 {
        one = one.min(each(&interwoven));
        other = other.min(each(&laying));
    }
    let (leads, bights) = knot;
    println!(
        "{leads} lead {bights} bight, {nested} nested: {one:.2} ns a crossing, plain {other:.2} ns, \
         ratio {:.2}",
        one / other
    );
}

/// The shortest of many runs, since anything else on the machine only makes one longer.
fn quickest<T>(run: impl Fn() -> T) -> Duration {
    let time = || {
        let start = Instant::now();
        black_box(run());
        start.elapsed()
    };
    (0..25).map(|_| time()).min().unwrap_or_default()
}

#[divan::bench(args = LARGEST)]
fn every_leg_in_turn(bencher: Bencher, knot: (u16, u16)) {
    let laying = laying(knot, 1);
    bencher
        .counter(ItemsCount::new(laying.knot().crossings()))
        .bench(|| tell_all(black_box(&laying)));
}

#[divan::bench(args = LARGEST)]
fn floor(bencher: Bencher, knot: (u16, u16)) {
    let laying = laying(knot, 1);
    bencher
        .counter(ItemsCount::new(laying.knot().crossings()))
        .bench(|| count_all(black_box(&laying)));
}

/// Any one leg of the last pass, as after a press of *back* or the return to a saved place.
#[divan::bench(args = LARGEST)]
fn one_leg_at_random(bencher: Bencher, knot: (u16, u16)) {
    let laying = laying(knot, 9);
    let places = AtomicU32::new(0);
    bencher
        .counter(ItemsCount::new(laying.knot().rows()))
        .with_inputs(|| {
            // Steps of the golden section of the range scatter evenly over it.
            let place = places.fetch_add(0x9E37_79B9, Ordering::Relaxed);
            let pass_leg = laying.nth_leg(place % laying.legs());
            PassLeg {
                pass: 9,
                ..pass_leg.expect("within the tie")
            }
        })
        .bench_values(|pass_leg| laying.crossings(pass_leg).map(black_box).count());
}

#[divan::bench(args = LARGEST)]
fn set_up(bencher: Bencher, (leads, bights): (u16, u16)) {
    bencher.bench(|| Knot::new(black_box(leads), black_box(bights), Weave::default()));
}
