//! The form of a line of the table that `make bench` prints, the same in every program of it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::fmt::Display;
use std::hint::black_box;
use std::time::{Duration, Instant};

/// The names of the columns.
pub fn head(what: &str) {
    line(what, "median", "worst", "goal");
}

/// A line: what was measured, and what it should be.
pub fn line(what: &str, median: impl Display, worst: impl Display, goal: impl Display) {
    let line = format!("{what:<58}{median:>10}{worst:>10}   {goal}");
    println!("{}", line.trim_end());
}

/// A line of times.
pub fn times(what: &str, times: &[Duration], goal: impl Display) {
    line(what, short(median(times)), short(worst(times)), goal);
}

/// A line of how many times as long half of these take as half of those.
pub fn ratio(what: &str, these: &[Duration], those: &[Duration], goal: impl Display) {
    let ratio = median(these).as_secs_f64() / median(those).as_secs_f64();
    line(what, format!("{ratio:.2}"), "", goal);
}

/// Half of the times are shorter.
pub fn median(times: &[Duration]) -> Duration {
    let mut times = times.to_vec();
    times.sort();
    times[times.len() / 2]
}

/// The longest.
pub fn worst(times: &[Duration]) -> Duration {
    times.iter().max().copied().unwrap_or_default()
}

/// How long each of so many runs took.
pub fn run<T>(runs: usize, mut each: impl FnMut(usize) -> T) -> Vec<Duration> {
    let time = |nth| {
        let start = Instant::now();
        black_box(each(nth));
        start.elapsed()
    };
    (0..runs).map(time).collect()
}

/// With one decimal, and the unit that fits.
fn short(time: Duration) -> String {
    format!("{time:.1?}")
}
