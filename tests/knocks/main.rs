//! The ear on a bench of its own: knocks made by physics are taken, and nothing else is.
//!
//! The whole bench, with an hour of the program's voice: `cargo test --release --test knocks --
//! --ignored --nocapture`, for one lot alone with its number in `LOT`, and of the hours one sound alone with
//! its name in `SOUND` (`Rain`, `Voice`); `tests/data/knocks.csv` has what it came to.
#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "sound is counted in samples and in seconds"
)]

#[path = "../support/in_time.rs"]
mod in_time;

mod drawn;
mod no_knocks;
mod once;
mod physics;

use std::sync::atomic::{AtomicU64, Ordering};
use std::thread;
use std::time::Duration;

use drawn::{CHOSEN_WITH, EVERY_DAY, HELD_OUT, Knocked, Lot, ROWS, knocked, struck};
use marlinspeak::pedal::{Heard, Knock, KnockDetector, RowDetector};
use no_knocks::{PART, SOUNDS, SPEECH_RATE, Sound};
use physics::{Noise, Struck, noise};

/// What came out of the ear, and when: at the end of a block of this many seconds, as a sound card
/// hands it over.
const BLOCK: f64 = 0.02;

/// What is heard of a sound, each with the time at which it is told.
fn heard(sound: &[f32], rate: f64) -> Vec<(f64, Heard)> {
    let mut ear = RowDetector::new(rate as u32);
    let mut heard = Vec::new();
    let block = (BLOCK * rate) as usize;
    for (number, samples) in sound.chunks(block).enumerate() {
        let told = ((number * block + samples.len()) as f64) / rate;
        ear.take(samples, &mut |what| heard.push((told, what)));
    }
    heard
}

/// The knocks among it.
fn knocks(sound: &[f32], rate: f64) -> Vec<(f64, Knock)> {
    let knock = |(told, heard)| match heard {
        Heard::Knock(knock) => Some((told, knock)),
        Heard::RowOver(_) => None,
    };
    heard(sound, rate).into_iter().filter_map(knock).collect()
}

/// What comes of each of so many cases, one as independent of the others as the next, worked by as many
/// threads as there are cores.
fn of_each<Found: Send>(cases: u64, find: impl Fn(u64) -> Found + Sync) -> Vec<Found> {
    let next = AtomicU64::new(0);
    let work = || {
        let mine = std::iter::repeat_with(|| next.fetch_add(1, Ordering::Relaxed));
        let mine = mine.take_while(|case| *case < cases);
        mine.map(&find).collect::<Vec<_>>()
    };
    let cores = thread::available_parallelism().map_or(1, usize::from);
    thread::scope(|scope| {
        let workers: Vec<_> = (0..cores).map(|_| scope.spawn(work)).collect();
        let found = workers.into_iter().map(|one| one.join().expect("a worker"));
        found.flatten().collect()
    })
}

/// Noise under the knocks, in decibels.
const NOISES: [(Noise, f64); 6] = [
    (Noise::Pink, 40.0),
    (Noise::White, 20.0),
    (Noise::Pink, 12.0),
    (Noise::White, 6.0),
    (Noise::Pink, 6.0),
    (Noise::Hum, 6.0),
];

/// How many rows of `count` knocks are taken as such, of so many `rows` in each noise; and the longest
/// from the last knock to its being told.
fn rows_taken(lot: Lot, count: usize, rows: u64) -> (u64, u64, Duration) {
    let (mut taken, mut slowest) = (0, 0.0_f64);
    for (kind, under) in NOISES {
        let told_after = of_each(rows, |seed| {
            let row = knocked(lot, seed, count, under, kind);
            let told = knocks(&row.sound, row.rate);
            let numbers: Vec<usize> = told.iter().map(|(_, knock)| knock.number.into()).collect();
            let wanted: Vec<usize> = (1..=count).collect();
            let last = row.times[count - 1];
            let is_taken =
                numbers == wanted && (told[count - 1].1.at.as_secs_f64() - last).abs() < 0.03;
            is_taken.then(|| told[count - 1].0 - last)
        });
        let told_after: Vec<f64> = told_after.into_iter().flatten().collect();
        let here = told_after.len() as u64;
        slowest = told_after.into_iter().fold(slowest, f64::max);
        println!("{count} knocks, {kind:?} noise {under} dB under: {here} of {rows}");
        taken += here;
    }
    let all = rows * NOISES.len() as u64;
    println!("{count} knocks: {taken} of {all}, told after {slowest:.3} s at most");
    (taken, all, Duration::from_secs_f64(slowest))
}

/// What falls short of what is asked, told when everything is measured and printed.
#[derive(Default)]
struct Shortfalls(Vec<String>);

impl Shortfalls {
    /// So many of so many were taken, and so many in a hundred must be.
    fn asks(&mut self, what: &str, taken: u64, of: u64, least: u64) {
        println!("{what}: {taken} of {of}");
        if taken * 100 < of * least {
            self.0.push(format!("{what}: {taken} of {of}"));
        }
    }

    /// There are none.
    fn are_none(&self) {
        assert!(self.0.is_empty(), "{:#?}", self.0);
    }
}

fn two_knocks(lot: Lot, of_each: u64, short: &mut Shortfalls) {
    let (taken, all, slowest) = rows_taken(lot, 2, of_each);
    short.asks(&format!("{lot:?}, two knocks"), taken, all, 98);
    if slowest >= Duration::from_millis(120) {
        short.0.push(format!("{lot:?}: told after {slowest:?}"));
    }
}

#[test]
fn two_knocks_are_taken_in_any_room_within_120_ms_of_the_second() {
    let mut short = Shortfalls::default();
    for lot in CHOSEN_WITH {
        two_knocks(lot, 25, &mut short);
    }
    short.are_none();
}

#[test]
fn three_knocks_are_three_and_one_is_one() {
    let (taken, all, _) = rows_taken(EVERY_DAY, 3, 8);
    assert!(taken * 100 >= all * 95, "{taken} of {all}");
    let (taken, all, _) = rows_taken(EVERY_DAY, 1, 8);
    assert!(taken * 100 >= all * 95, "{taken} of {all}");
}

/// How many rows of two strokes are taken as such, of so many.
fn doubles_taken(of: u64, row: impl Fn(u64) -> Knocked + Sync) -> u64 {
    let is_taken = |seed| {
        let row = row(seed);
        let told = knocks(&row.sound, row.rate);
        let numbers: Vec<u8> = told.iter().map(|(_, knock)| knock.number).collect();

        numbers.ends_with(&[1, 2])
            && (told[told.len() - 1].1.at.as_secs_f64() - row.times[1]).abs() < 0.03
    };
    of_each(of, is_taken).into_iter().filter(|is| *is).count() as u64
}

fn other_strokes(lot: Lot, of: u64, short: &mut Shortfalls) {
    for what in [Struck::Clap, Struck::Stamp, Struck::Tube] {
        let taken = doubles_taken(of, |seed| {
            struck(lot, what, seed, 2, |length, rate, dice| {
                let hiss = noise(Noise::Pink, length, rate, dice).into_iter();
                hiss.map(|sample| sample * 0.1).collect()
            })
        });
        let what = format!("{what:?}, pink noise 20 dB under");
        short.asks(&what, taken, of, 95);
    }
}

#[test]
fn claps_stamps_and_taps_on_the_tube_serve_as_well() {
    let mut short = Shortfalls::default();
    other_strokes(EVERY_DAY, 40, &mut short);
    short.are_none();
}

/// While the voice speaks; at six decibels under the knocks so many in a hundred are taken at least,
/// which goes by the voice.
fn beside_the_voice(lot: Lot, of: u64, at_six: u64, short: &mut Shortfalls) {
    let voice = lot.voices().next().expect("an English voice");
    let voice = no_knocks::speech(&voice, 60.0, &mut lot.dice(77));
    for (under, least) in [(18.0, 95), (12.0, 85), (6.0, at_six)] {
        let taken = doubles_taken(of, |seed| drawn::over_voice(lot, seed, under, &voice));
        let what = format!("the voice {under} dB under at its loudest");
        short.asks(&what, taken, of, least);
    }
    rows_that_cut_short(lot, of, &voice, short);
}

/// Rows of two, so many, that cut one step of the voice after another short.
fn rows_that_cut_short(lot: Lot, of: u64, voice: &[f32], short: &mut Shortfalls) {
    for (under, least) in [(40.0, 98), (18.0, 95), (12.0, 85)] {
        let taken = rows_cut_short(lot, of / ROWS as u64, under, voice);
        let what = format!("rows of two that cut short a voice {under} dB under");
        short.asks(&what, taken, of, least);
    }
}

/// How many rows of two are taken as such, of several that follow one another so many times.
fn rows_cut_short(lot: Lot, of: u64, under: f64, voice: &[f32]) -> u64 {
    let taken = of_each(of, |seed| rows_taken_in_a_row(lot, seed, under, voice));
    taken.into_iter().sum()
}

/// How many of [`ROWS`] rows of two that follow one another are taken as such.
fn rows_taken_in_a_row(lot: Lot, seed: u64, under: f64, voice: &[f32]) -> u64 {
    of_rows_taken(&drawn::cut_short(lot, seed, under, voice))
}

/// How many rows of two that follow one another are taken as such.
fn of_rows_taken(rows: &Knocked) -> u64 {
    let told = knocks(&rows.sound, rows.rate);
    let is_taken = |row: &&[f64]| {
        let is_near = |knock: &Knock, at: f64| (knock.at.as_secs_f64() - at).abs() < 0.03;
        let pairs = told.windows(2);
        let mut pairs = pairs.map(|pair| [pair[0].1, pair[1].1]);
        pairs.any(|[one, two]| {
            [one.number, two.number] == [1, 2] && is_near(&one, row[0]) && is_near(&two, row[1])
        })
    };
    rows.times.chunks(2).filter(is_taken).count() as u64
}

#[test]
fn rows_that_ring_in_a_still_room_do_not_become_its_sound() {
    // In each of them the last rows were missed once what rang of the first had been learnt.
    for (lot, seed, least) in [(Lot(10), 8, ROWS), (Lot(2), 14, ROWS), (Lot(2), 34, 4)] {
        let voice = lot.voices().next().expect("an English voice");
        let voice = no_knocks::speech(&voice, 60.0, &mut lot.dice(77));
        let taken = rows_taken_in_a_row(lot, seed, 40.0, &voice);
        assert!(taken >= least as u64, "{lot:?}, {seed}: {taken}");
    }
}

#[test]
fn two_knocks_cut_one_step_after_another_short() {
    let voice = EVERY_DAY.voices().next().expect("an English voice");
    let voice = no_knocks::speech(&voice, 60.0, &mut EVERY_DAY.dice(77));
    let mut short = Shortfalls::default();
    rows_that_cut_short(EVERY_DAY, 40, &voice, &mut short);
    short.are_none();
}

#[test]
fn two_knocks_are_taken_while_the_program_speaks() {
    let mut short = Shortfalls::default();
    beside_the_voice(CHOSEN_WITH[0], 40, 50, &mut short);
    short.are_none();
}

#[test]
fn a_row_is_over_half_a_second_after_its_last_knock() {
    let row = knocked(CHOSEN_WITH[0], 4, 2, 40.0, Noise::Pink);
    let heard = heard(&row.sound, row.rate);
    let [.., (_, Heard::Knock(second)), (over, Heard::RowOver(2))] = heard[..] else {
        panic!("{heard:?}");
    };
    let after = over - second.at.as_secs_f64();
    assert!((0.55..0.65).contains(&after), "{after}");
}

/// False rows in a sound.
fn falsely(sound: &[f32], rate: f64) -> usize {
    let rows = knocks(sound, rate);
    rows.iter().filter(|(_, knock)| knock.number == 2).count()
}

/// False rows in so many half minutes of a sound.
fn false_rows(lot: Lot, sound: Sound, parts: u64) -> usize {
    let rows = of_each(parts, |part| {
        let (sound, rate) = drawn::half_minute(lot, sound, part);
        falsely(&sound, rate)
    });
    let rows = rows.into_iter().sum();
    println!(
        "{sound:?}: {rows} false rows in {} min",
        parts as f64 * PART / 60.0
    );
    rows
}

#[test]
fn strings_pins_rain_drops_typing_and_noise_are_no_knocks() {
    for sound in SOUNDS {
        assert_eq!(false_rows(EVERY_DAY, sound, 8), 0, "{sound:?}");
    }
}

/// False rows in so many minutes of the program's voice, in four languages at two speeds, through
/// every room in turn.
fn in_speech(lot: Lot, minutes: f64) -> usize {
    let (mut rows, mut all) = (0, 0.0);
    for voice in lot.voices() {
        let parts = drawn::parts_of_a_voice(lot, &voice, minutes * 60.0 / 8.0);
        let heard = of_each(parts.len() as u64, |number| {
            let part = &parts[number as usize];
            let sound = drawn::across_a_room(lot, part, number, SPEECH_RATE);
            let long = sound.len() as f64 / SPEECH_RATE / 60.0;
            (falsely(&sound, SPEECH_RATE), long)
        });
        let here: usize = heard.iter().map(|(rows, _)| rows).sum();
        let long: f64 = heard.iter().map(|(_, long)| long).sum();
        println!("{voice:?}: {here} false rows in {long:.1} min");
        rows += here;
        all += long;
    }
    println!("the voice: {rows} false rows in {minutes} min, {all:.1} min with its pauses");
    rows
}

#[test]
fn the_voice_of_the_program_is_no_knock() {
    assert_eq!(in_speech(EVERY_DAY, 8.0), 0);
}

/// At most one false row in an hour of each sound, and in an hour of speech.
fn hours(lot: Lot, short: &mut Shortfalls) {
    let one = std::env::var("SOUND").ok();
    let is_asked_for = |name: &str| one.as_ref().is_none_or(|one| one == name);
    let mut judge = |name: &str, hear: &dyn Fn() -> usize| {
        let rows = is_asked_for(name).then(hear);
        if let Some(rows) = rows.filter(|rows| *rows > 1) {
            short.0.push(format!("{lot:?}, {name}: {rows} in an hour"));
        }
    };
    for sound in SOUNDS {
        judge(&format!("{sound:?}"), &|| false_rows(lot, sound, 120));
    }
    judge("Voice", &|| in_speech(lot, 60.0));
}

/// These lots, or the one whose number the environment has in `LOT`.
fn asked_for(lots: &[Lot]) -> Vec<Lot> {
    let number = std::env::var("LOT").ok();
    let is_asked_for = |lot: &Lot| {
        number
            .as_ref()
            .is_none_or(|asked| *asked == lot.0.to_string())
    };
    lots.iter().copied().filter(is_asked_for).collect()
}

#[test]
#[ignore = "it takes four minutes; `make soak` runs it"]
fn of_what_was_held_out_98_in_100_double_knocks_are_taken() {
    let (mut taken, mut all) = (0, 0);
    for lot in HELD_OUT {
        println!("{lot:?}");
        let (here, of, _) = rows_taken(lot, 2, 100);
        (taken, all) = (taken + here, all + of);
    }
    assert!(taken * 100 >= all * 98, "{taken} of {all}");
}

#[test]
#[ignore = "it takes ten minutes; `make soak` runs it"]
fn of_what_was_held_out_an_hour_has_one_false_row_at_most() {
    let mut short = Shortfalls::default();
    for lot in asked_for(&HELD_OUT) {
        println!("{lot:?}");
        hours(lot, &mut short);
    }
    short.are_none();
}

/// What 200 double knocks in each noise come to, claps, stamps and taps, rows under the voice, and an hour
/// of each sound.
fn whole_bench(lots: &[Lot]) {
    let mut short = Shortfalls::default();
    for lot in asked_for(lots) {
        println!("{lot:?}");
        two_knocks(lot, 200, &mut short);
        other_strokes(lot, 200, &mut short);
        beside_the_voice(lot, 200, 25, &mut short);
        hours(lot, &mut short);
    }
    short.are_none();
}

#[test]
#[ignore = "the whole bench takes minutes"]
fn the_whole_bench() {
    whole_bench(&CHOSEN_WITH);
}

#[test]
#[ignore = "the whole bench takes minutes"]
fn the_whole_bench_of_what_was_held_out() {
    whole_bench(&HELD_OUT);
}
