//! What the ear hears: knocks and what is none, in rooms, with noise, as chance has it.

use crate::no_knocks::{self, SPEECH_RATE, Sound, Voice};
use crate::physics::{Body, Dice, Noise, ROOMS, Room, Struck, add, level, loudest, noise};

/// A lot of chances: bodies, strokes, rooms, noises, and the voices that speak.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lot(pub u64);

/// The lots that the figures of the ear were chosen with, besides 5 to 18.
pub const CHOSEN_WITH: [Lot; 5] = [Lot(0), Lot(1), Lot(2), Lot(3), Lot(4)];
/// The lot of the tests of every day: it was judged by before anybody looked at what fails in it.
pub const EVERY_DAY: Lot = CHOSEN_WITH[3];
/// Lots that none of them was chosen with: only such ones say how good they are. They were judged once, by the
/// figures of today, and nobody has looked at what fails in them; 21 and 22 are for the next change.
pub const HELD_OUT: [Lot; 2] = [Lot(19), Lot(20)];

impl Lot {
    pub fn dice(self, seed: u64) -> Dice {
        Dice::new(seed + self.0 * 1_000_003)
    }

    /// Four languages at two speeds.
    pub fn voices(self) -> impl Iterator<Item = Voice> {
        let (variation, speeds, depth) = match self.0 {
            0 => ("", [165, 260], "plain"),
            1 => ("+f3", [140, 215], "teach"),
            2 | 3 => ("+m3", [190, 300], "brief"),
            4 => ("+f4", [150, 240], "plain"),
            5 => ("+m4", [155, 280], "teach"),
            7 => ("+m2", [150, 255], "plain"),
            8 => ("+f1", [185, 280], "brief"),
            9 => ("+m6", [165, 230], "teach"),
            16 => ("+m5", [170, 265], "plain"),
            17 => ("+m8", [155, 245], "teach"),
            18 => ("+f2", [150, 230], "brief"),
            19 => ("+f3", [175, 285], "plain"),
            20 => ("+croak", [160, 240], "brief"),
            21 => ("+f4", [145, 265], "brief"),
            22 => ("+klatt4", [185, 255], "teach"),
            another => match another % 4 {
                0 => ("+m1", [175, 250], "plain"),
                1 => ("+f5", [160, 270], "teach"),
                2 => ("+m7", [145, 230], "brief"),
                _ => ("+f2", [180, 290], "teach"),
            },
        };
        let languages = ["en", "de", "es", "fr"].into_iter();
        languages.flat_map(move |tag| {
            speeds.map(|words_a_minute| Voice {
                tag,
                variation,
                words_a_minute,
                depth,
            })
        })
    }
}

/// A row of knocks in a room, and when each was.
pub struct Knocked {
    pub sound: Vec<f32>,
    pub times: Vec<f64>,
    pub rate: f64,
}

/// Somebody knocks `count` times on a bench, noise being so many decibels under each knock.
pub fn knocked(lot: Lot, seed: u64, count: usize, under: f64, kind: Noise) -> Knocked {
    struck(lot, Struck::Bench, seed, count, |length, rate, dice| {
        let hisses = 10f64.powf(-under / 20.0) as f32;
        let hiss = noise(kind, length, rate, dice).into_iter();
        hiss.map(|sample| sample * hisses).collect()
    })
}

/// Somebody strikes something `count` times, while something else sounds: of so many samples, at a
/// rate in hertz, with a level against that of the softest knock.
pub fn struck(
    lot: Lot,
    what: Struck,
    seed: u64,
    count: usize,
    beside: impl FnOnce(usize, f64, &mut Dice) -> Vec<f32>,
) -> Knocked {
    let beside = |_: &[f64], length, rate, dice: &mut Dice| beside(length, rate, dice);
    in_rows(lot, what, seed, [count, 1], PAUSES, beside)
}

/// The longest from the last stroke of a row to the first of the next one, in seconds, and the
/// shortest.
const PAUSES: [f64; 2] = [2.0, 0.8];
/// The same for who is quick: a row every second and a half, or a little sooner.
const SHORT_PAUSES: [f64; 2] = [1.2, 0.8];

/// One row of two soon after another, so many, in a room with a little noise.
pub fn quick_rows(lot: Lot, seed: u64, rows: usize) -> Knocked {
    let beside = |_: &[f64], length, rate, dice: &mut Dice| {
        let hiss = noise(Noise::Pink, length, rate, dice).into_iter();
        hiss.map(|sample| sample * 0.03).collect()
    };
    in_rows(lot, Struck::Bench, seed, [2, rows], SHORT_PAUSES, beside)
}

/// Somebody strikes something in several rows: so many strokes in so many rows, with pauses from the longest
/// to the shortest between them. What sounds beside them is told when each stroke is.
fn in_rows(
    lot: Lot,
    what: Struck,
    seed: u64,
    [count, rows]: [usize; 2],
    pauses: [f64; 2],
    beside: impl FnOnce(&[f64], usize, f64, &mut Dice) -> Vec<f32>,
) -> Knocked {
    let mut dice = lot.dice(seed * 31 + 5);
    let rate = [16_000.0, 8_000.0, 44_100.0, 48_000.0][(seed % 4) as usize];
    let microphone = [0.5, 0.05, 0.005][(seed % 3) as usize];
    let (bench, contact) = Body::of(what, &mut dice);
    let place = bench.place(&mut dice);
    let pace = dice.between(0.17, 0.40);
    let mut at = dice.between(4.0, 6.0);
    let longest = 0.6 * (count * rows) as f64 + pauses[0] * (rows - 1) as f64;
    let mut dry = vec![0.0; ((at + longest + 1.0) * rate) as usize];
    let mut times = Vec::new();
    for number in 1..=count * rows {
        // No two strokes of a hand are the same.
        let contact = contact * (1.0 + 0.15 * dice.normal()).clamp(0.6, 1.6);
        let stroke = bench.struck(&place, contact, 2.5, rate, &mut dice);
        let loud = 10f64.powf(1.5 * dice.normal() / 20.0) / loudest(&stroke, rate);
        add(&mut dry, at, &stroke, loud, rate);
        times.push(at);
        at += if rows > 1 && number % count == 0 {
            dice.between(pauses[1], pauses[0])
        } else {
            pace * (1.0 + 0.08 * dice.normal()).clamp(0.75, 1.25)
        };
    }
    let mut sound = Room::at_the_bench((seed * 31 + 5) % ROOMS, lot.0).hear(&dry, rate);
    let softest = times.iter().map(|at| {
        let start = (at * rate) as usize;
        loudest(&sound[start..start + (0.07 * rate) as usize], rate)
    });
    let softest = softest.fold(f64::MAX, f64::min);
    let beside = beside(&times, sound.len(), rate, &mut dice);
    for (sample, beside) in sound.iter_mut().zip(beside) {
        let heard = f64::from(*sample) / softest + f64::from(beside);
        *sample = (heard * microphone) as f32;
    }
    Knocked { sound, times, rate }
}

/// How many rows of two follow one another in [`cut_short`].
pub const ROWS: usize = 5;

/// Who knows the knot: rows of two that cut one step after another short. The voice begins a
/// sixth of a second after each row, so many decibels under the knocks at its loudest, and is cut
/// off by the next row.
pub fn cut_short(lot: Lot, seed: u64, under: f64, voice: &[f32]) -> Knocked {
    let softer = 10f64.powf(-under / 20.0) / loudest(voice, SPEECH_RATE);
    in_rows(
        lot,
        Struck::Bench,
        seed,
        [2, ROWS],
        PAUSES,
        |times, length, rate, dice| {
            let mut beside: Vec<f32> = noise(Noise::Pink, length, rate, dice);
            for sample in &mut beside {
                *sample *= 0.01;
            }
            let steps = times.chunks(2).map(|row| row[1] + 0.16);
            let ends = times.chunks(2).skip(1).map(|row| row[1] + 0.11);
            for (begins, ends) in steps.zip(ends) {
                let from = dice.between(0.0, 40.0) * SPEECH_RATE;
                let (begins, ends) = ((begins * rate) as usize, (ends * rate) as usize);
                for (number, sample) in beside[begins..ends].iter_mut().enumerate() {
                    let said = voice[(from + number as f64 * SPEECH_RATE / rate) as usize];
                    *sample += said * softer as f32;
                }
            }
            beside
        },
    )
}

/// Two knocks on the bench while the voice speaks, so many decibels under them at its loudest.
pub fn over_voice(lot: Lot, seed: u64, under: f64, voice: &[f32]) -> Knocked {
    let loud = loudest(voice, SPEECH_RATE) as f32;
    struck(lot, Struck::Bench, seed, 2, |length, rate, dice| {
        let from = dice.between(0.0, 40.0) * SPEECH_RATE;
        let at = |sample: usize| (from + sample as f64 * SPEECH_RATE / rate) as usize;
        let softer = 10f32.powf(-under as f32 / 20.0) / loud;
        (0..length)
            .map(|sample| voice[at(sample)] * softer)
            .collect()
    })
}

/// A sound that is no knock, heard across a room with noise.
pub fn across_a_room(lot: Lot, dry: &[f32], number: u64, rate: f64) -> Vec<f32> {
    let mut dice = lot.dice(number + 5000);
    let mut sound = Room::across(number % ROOMS, lot.0).hear(dry, rate);
    let kind = [Noise::White, Noise::Pink, Noise::Hum][(number % 3) as usize];
    let hisses = (level(&sound) * 10f64.powf(-dice.between(10.0, 50.0) / 20.0)).max(0.0003);
    let microphone = [0.5, 0.05, 0.01][(number / 3 % 3) as usize];
    let hiss = noise(kind, sound.len(), rate, &mut dice);
    for (sample, hiss) in sound.iter_mut().zip(hiss) {
        *sample = ((f64::from(*sample) + f64::from(hiss) * hisses) * microphone) as f32;
    }
    sound
}

/// A half minute of a sound that is no knock, across a room, and its rate in hertz.
pub fn half_minute(lot: Lot, sound: Sound, number: u64) -> (Vec<f32>, f64) {
    let rate = [16_000.0, 22_050.0][(number % 2) as usize];
    let mut dice = lot.dice(number * 97 + sound as u64 * 13);
    let dry = no_knocks::part(sound, &mut dice, rate);
    (across_a_room(lot, &dry, number, rate), rate)
}

/// So many seconds of a voice with its pauses, in parts of 22 seconds: each is heard across a room of its own.
pub fn parts_of_a_voice(lot: Lot, voice: &Voice, seconds: f64) -> Vec<Vec<f32>> {
    let mut dice = lot.dice(u64::from(voice.words_a_minute));
    let sound = no_knocks::speech(voice, seconds, &mut dice);
    let in_a_part = (22.0 * SPEECH_RATE) as usize;
    sound.chunks(in_a_part).map(<[f32]>::to_vec).collect()
}
