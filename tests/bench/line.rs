//! The form of a line of the table that `make bench` prints, the same in every program of it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::fmt::{Debug, Display};
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
pub fn times(what: &str, mut times: Vec<Duration>, goal: impl Display) {
    times.sort();
    let [median, worst] = [times[times.len() / 2], times[times.len() - 1]].map(short);
    line(what, median, worst, goal);
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
pub fn short(time: impl Debug) -> String {
    format!("{time:.1?}")
}
