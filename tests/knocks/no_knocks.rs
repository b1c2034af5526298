//! What is no knock: strings, pins, rain, drops, keys of a keyboard; and the program's own voice.
//! Drums are not among them: a drum is knocked on.

use crate::in_time::InTime as _;
use std::fs;
use std::path::Path;
use std::process::Command;

use crate::physics::{Body, Dice, Matter, Mode, add, loudest};

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sound {
    /// Nothing but noise.
    Noise,
    /// Strings, plucked one after the other.
    Strings,
    /// Steel pins that fall on the bench and bounce.
    Pins,
    /// Rain on the roof.
    Rain,
    /// A tap that drips.
    Drips,
    /// Somebody types.
    Typing,
}

pub const SOUNDS: [Sound; 6] = [
    Sound::Noise,
    Sound::Strings,
    Sound::Pins,
    Sound::Rain,
    Sound::Drips,
    Sound::Typing,
];

/// How long a part of such a sound is, in seconds.
pub const PART: f64 = 30.0;

/// Half a minute of it.
pub fn part(sound: Sound, dice: &mut Dice, rate: f64) -> Vec<f32> {
    let mut dry = vec![0.0_f32; (PART * rate) as usize];
    match sound {
        Sound::Noise => {}
        Sound::Strings => strings(&mut dry, dice, rate),
        Sound::Pins => pins(&mut dry, dice, rate),
        Sound::Rain => rain(&mut dry, dice, rate),
        Sound::Drips => drips(&mut dry, dice, rate),
        Sound::Typing => typing(&mut dry, dice, rate),
    }
    dry
}

/// Strings, one after the other.
fn strings(dry: &mut [f32], dice: &mut Dice, rate: f64) {
    let mut at = 3.0;

    while at < PART - 1.0 {
        let lowest = 82.0 * 2f64.powf(dice.pick(36) as f64 / 12.0);
        let t60 = dice.between(0.4, 2.5);
        let modes = (1..=20).map(|overtone| {
            let overtone = f64::from(overtone);
            Mode {
                hertz: lowest * overtone * (1.0 + 2e-4 * overtone * overtone),
                t60: t60 / (1.0 + 0.08 * overtone),
                part: 1.0 / overtone,
            }
        });
        let string = Body(modes.collect());
        let place = string.place(dice);
        let note = string.struck(&place, 0.0004, 2.0, rate, dice);
        add(dry, at, &note, dice.between(0.3, 1.0), rate);
        at += [0.1375, 0.275, 0.275, 0.55, 1.1][dice.pick(5)];
    }
}

/// Pins that fall and bounce.
fn pins(dry: &mut [f32], dice: &mut Dice, rate: f64) {
    let mut at = 3.0;

    while at < PART - 3.0 {
        // A bar that is free at both ends.
        let lowest = dice.between(2800.0, 7000.0);
        let modes = [1.0, 2.76, 5.4].map(|times| Mode {
            hertz: lowest * times,
            t60: dice.between(0.08, 0.4),
            part: 1.0,
        });
        let pin = Body(modes.to_vec());
        let bench = Body::bench(Matter::Wood, dice);
        let place = bench.place(dice);
        let bounces = dice.between(0.35, 0.75);
        let height: f64 = dice.between(0.05, 0.9);
        let mut flight = 2.0 * bounces * (2.0 * height / 9.81).sqrt();
        let (mut hits, mut loud) = (at, 1.0);
        while flight > 0.012 && hits < at + 2.5 {
            let rings = pin.struck(&[1.0], 0.000_08, 4.0, rate, dice);
            add(
                dry,
                hits,
                &rings,
                loud / loudest(&rings, rate).max(1e-9),
                rate,
            );
            let thuds = bench.struck(&place, 0.0003, 2.0, rate, dice);
            add(dry, hits, &thuds, 0.15 * loud / loudest(&thuds, rate), rate);
            hits += flight;
            flight *= bounces;
            loud *= bounces * 10f64.powf(2.0 * dice.normal() / 20.0);
        }
        at += dice.between(2.0, 6.0);
    }
}

/// Rain on a roof 2.5 m above.
fn rain(dry: &mut [f32], dice: &mut Dice, rate: f64) {
    let mut at = 0.1;

    // A roof 2.5 m above, 6 m to every side, on which even light rain is some hundred drops a
    // second (from memory), as chance has them. It rains already.
    let in_a_second = dice.between(200.0, 600.0);
    while at < PART - 1.0 {
        let modes = (0..4).map(|_| Mode {
            hertz: dice.between(200.0, 5000.0),
            t60: dice.between(0.01, 0.05),
            part: 1.0,
        });
        let drop = Body(modes.collect()).struck(&[1.0], 0.0006, 3.0, rate, dice);
        let aside = 6.0 * dice.unit().sqrt();
        let far = (2.5_f64.powi(2) + aside.powi(2)).sqrt();
        add(
            dry,
            at,
            &drop,
            10f64.powf(4.0 * dice.normal() / 20.0) / far,
            rate,
        );
        at += -dice.unit().max(1e-9).ln() / in_a_second;
    }
}

/// One drop after the other, at a pace.
fn drips(dry: &mut [f32], dice: &mut Dice, rate: f64) {
    let mut at = 0.1;

    // It drips already.
    let (period, tone) = (dice.between(0.15, 1.2), dice.between(400.0, 3000.0));
    while at < PART - 1.0 {
        let modes = (0..3).map(|mode| Mode {
            hertz: tone * (1.0 + 0.7 * f64::from(mode)) * dice.between(0.85, 1.15),
            t60: dice.between(0.02, 0.12),
            part: 1.0,
        });
        let drop = Body(modes.collect()).struck(&[1.0], 0.001, 2.0, rate, dice);
        add(dry, at, &drop, dice.between(0.5, 1.0), rate);
        at += period * dice.between(0.9, 1.1);
    }
}

/// Bursts of keys.
fn typing(dry: &mut [f32], dice: &mut Dice, rate: f64) {
    let mut at = 3.0;

    let desk = Body::bench(Matter::Wood, dice);
    let place = desk.place(dice);
    while at < PART - 1.0 {
        for _ in 0..4 + dice.pick(50) {
            // It goes down, and comes up again.
            for (later, loud) in [(0.0, 1.0), (dice.between(0.06, 0.12), 0.5)] {
                let modes = (0..8).map(|_| Mode {
                    hertz: dice.between(1200.0, 7000.0),
                    t60: dice.between(0.004, 0.02),
                    part: 1.0,
                });
                let key = Body(modes.collect()).struck(&[1.0], 0.0003, 3.0, rate, dice);
                let clicks = loud * dice.between(0.5, 1.0) / loudest(&key, rate).max(1e-9);
                add(dry, at + later, &key, clicks, rate);
                let thud = desk.struck(&place, 0.0012, 3.0, rate, dice);
                let thuds = 0.3 * loud * dice.between(0.5, 1.0) / loudest(&thud, rate);
                add(dry, at + later, &thud, thuds, rate);
            }
            at += dice.between(0.09, 0.30);
        }
        at += dice.between(0.6, 4.0);
    }
}

/// The rate at which espeak-ng speaks, in hertz.
pub const SPEECH_RATE: f64 = 22_050.0;

/// A voice of espeak-ng that says what the program says.
#[derive(Clone, Copy, Debug)]
pub struct Voice {
    /// The language.
    pub tag: &'static str,
    /// Which variation of its voice; nothing for the usual one.
    pub variation: &'static str,
    pub words_a_minute: u32,
    /// How much is said of a step.
    pub depth: &'static str,
}

/// About so many seconds of what the program says, with the pauses in which a tyer works.
pub fn speech(voice: &Voice, seconds: f64, dice: &mut Dice) -> Vec<f32> {
    let Voice { tag, depth, .. } = voice;
    let data = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data");
    let script = data.join(format!("scripts/5x6x2-{tag}-{depth}.txt"));
    let script = fs::read_to_string(script).expect("a script");
    let steps = script.lines().filter_map(|line| line.split_once("] "));
    let turns = fs::read_to_string(data.join(format!("languages/{tag}.txt"))).expect("turns");
    let turns = turns
        .lines()
        .filter_map(|line| line.strip_prefix(depth)?.strip_prefix(": "));
    let lines: Vec<&str> = steps.map(|(_, said)| said).chain(turns).collect();
    let mut sound = Vec::new();
    let mut at = 0;
    while (sound.len() as f64) < seconds * SPEECH_RATE {
        let lines: Vec<&str> = lines.iter().cycle().skip(at).take(40).copied().collect();
        at += 40;
        let spoken = Command::new("espeak-ng")
            .args(["-v", &format!("{tag}{}", voice.variation), "--stdout"])
            .args(["-s", &voice.words_a_minute.to_string()])
            .arg(lines.join("\n"))
            .output_in_time();
        assert!(spoken.status.success(), "{spoken:?}");
        let samples = spoken.stdout[44..].chunks_exact(2);
        sound.extend(
            samples.map(|bytes| f32::from(i16::from_le_bytes([bytes[0], bytes[1]])) / 32768.0),
        );
    }
    sound.truncate((seconds * SPEECH_RATE) as usize);
    with_pauses(&sound, dice)
}

/// Stretches some of the pauses of a voice to up to twelve seconds.
fn with_pauses(sound: &[f32], dice: &mut Dice) -> Vec<f32> {
    let mut with_pauses = Vec::new();
    let mut still = 0;
    for sample in sound {
        with_pauses.push(*sample);
        still = if sample.abs() < 0.002 { still + 1 } else { 0 };
        if still == (0.3 * SPEECH_RATE) as usize && dice.unit() < 0.4 {
            let pause = (dice.between(0.3, 12.0) * SPEECH_RATE) as usize;
            with_pauses.resize(with_pauses.len() + pause, 0.0);
        }
    }
    with_pauses
}
