//! What sounds in a workshop, by its physics: bodies that ring in modes, rooms that throw sound
//! back, noise.
//!
//! The figures of the bodies are from memory of what such things measure: loss factors of wood
//! 0.02 to 0.045, of sheet metal on a frame with things lying on it 0.008 to 0.02, of plastic 0.04
//! to 0.08; a knuckle lies on the bench for 0.8 to 4 ms.

use std::f64::consts::PI;

/// Chance that is the same on every run.
pub struct Dice(u64);

impl Dice {
    pub fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0xD1B5_4A32_D192_ED03)
    }

    fn next(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }

    /// From 0 to below 1.
    pub fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.unit()
    }

    /// A figure of the normal distribution.
    pub fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (2.0 * PI * self.unit()).cos()
    }

    pub fn pick(&mut self, count: usize) -> usize {
        (self.next() % count as u64) as usize
    }
}

/// What a bench is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Matter {
    Wood,
    Metal,
    Plastic,
}

pub const MATTERS: [Matter; 3] = [Matter::Wood, Matter::Metal, Matter::Plastic];

/// What a knock is made with. The figures of all but the bench are from memory.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Struck {
    /// Knuckles, or the elbow, on the bench.
    Bench,
    /// Hands that clap.
    Clap,
    /// A foot that stamps.
    Stamp,
    /// A finger on the tube.
    Tube,
}

/// One way in which a body rings.
#[derive(Clone, Copy, Debug)]
pub struct Mode {
    pub hertz: f64,
    /// Seconds in which it falls by 60 dB.
    pub t60: f64,
    pub part: f64,
}

/// A body that rings when it is struck.
pub struct Body(pub Vec<Mode>);

impl Body {
    /// A bench: the modes of a plate come about evenly, and each falls as its loss says: in
    /// 2.2 / (loss × hertz).
    pub fn bench(matter: Matter, dice: &mut Dice) -> Self {
        let (lowest, apart, loss, t60) = match matter {
            Matter::Wood => (
                dice.between(90.0, 200.0),
                dice.between(60.0, 140.0),
                dice.between(0.02, 0.045),
                (0.02, 0.2),
            ),
            Matter::Metal => (
                dice.between(120.0, 300.0),
                dice.between(50.0, 120.0),
                dice.between(0.008, 0.02),
                (0.03, 0.25),
            ),
            Matter::Plastic => (
                dice.between(110.0, 260.0),
                dice.between(80.0, 180.0),
                dice.between(0.04, 0.08),
                (0.012, 0.12),
            ),
        };
        let mut modes = Vec::new();
        let mut hertz = lowest;
        while hertz < 5000.0 && modes.len() < 48 {
            modes.push(Mode {
                hertz,
                t60: (2.2 / (loss * hertz)).clamp(t60.0, t60.1),
                part: 1.0,
            });
            hertz += apart * dice.between(0.3, 1.7) * (1.0 + modes.len() as f64 / 24.0);
        }
        Self(modes)
    }

    /// What else serves as a knock.
    fn other(struck: Struck, dice: &mut Dice) -> Self {
        // How many modes, from and to in hertz, and how long they ring, in seconds.
        let (count, hertz, t60) = match struck {
            // Hollow hands, and the air between them.
            Struck::Clap => (8, 400.0..1200.0, 0.012..0.04),
            // A floor of boards that a heel comes down on.
            Struck::Stamp => (14, 60.0..700.0, 0.05..0.2),
            // A tube of plastic or cardboard of 45 mm, held in the hand: what rings is its wall.
            Struck::Tube | Struck::Bench => (10, 300.0..1800.0, 0.02..0.08),
        };
        let mode = |_| Mode {
            hertz: dice.between(hertz.start, hertz.end),
            t60: dice.between(t60.start, t60.end),
            part: 1.0,
        };
        Self((0..count).map(mode).collect())
    }

    /// What is struck, and for how long, in seconds.
    pub fn of(struck: Struck, dice: &mut Dice) -> (Self, f64) {
        match struck {
            Struck::Bench => {
                let matter = MATTERS[dice.pick(3)];
                (Self::bench(matter, dice), dice.between(0.0008, 0.004))
            }
            Struck::Clap => (Self::other(struck, dice), dice.between(0.0008, 0.002)),
            Struck::Stamp => (Self::other(struck, dice), dice.between(0.004, 0.01)),
            Struck::Tube => (Self::other(struck, dice), dice.between(0.0008, 0.003)),
        }
    }

    /// A place on it: how much of each mode is there.
    pub fn place(&self, dice: &mut Dice) -> Vec<f64> {
        let part = |dice: &mut Dice| (PI * dice.unit()).sin() * (PI * dice.unit()).sin();
        self.0.iter().map(|_| part(dice)).collect()
    }

    /// The sound of it struck at a place by something that lies on it for `contact` seconds, at a
    /// rate in hertz. The force is half a sine; no two strokes hit the same spot, so each mode is
    /// louder or softer by some `spread` decibels.
    pub fn struck(
        &self,
        place: &[f64],
        contact: f64,
        spread: f64,
        rate: f64,
        dice: &mut Dice,
    ) -> Vec<f32> {
        let longest = self.0.iter().map(|mode| mode.t60).fold(0.0, f64::max);
        let mut sound = vec![0.0_f64; ((longest * 1.2 + contact) * rate) as usize];
        for (mode, part) in self.0.iter().zip(place.iter().cycle()) {
            let (chance, phase) = (dice.normal(), dice.between(-0.4, 0.4));
            if mode.hertz > rate * 0.47 {
                continue;
            }
            let turns = mode.hertz * contact;
            let force = if (turns - 0.5).abs() < 1e-3 {
                PI / 4.0
            } else {
                ((PI * turns).cos() / (1.0 - 4.0 * turns * turns)).abs()
            };
            let loud = mode.part * part * (force + 0.004) * 10f64.powf(spread * chance / 20.0);
            let (sine, cosine) = (2.0 * PI * mode.hertz / rate).sin_cos();
            let keeps = (-6.908 / mode.t60 / rate).exp();
            let (mut along, mut across) = (loud * phase.cos(), loud * phase.sin());
            for sample in &mut sound {
                *sample += across;
                (along, across) = (
                    keeps * (along * cosine - across * sine),
                    keeps * (along * sine + across * cosine),
                );
            }
        }
        sound.iter().map(|sample| *sample as f32).collect()
    }
}

/// A room between what sounds and the microphone: the first reflections from mirrored sources, and
/// a tail that falls as the room does.
pub struct Room {
    reflections: Vec<(f64, f64)>,
    t60: f64,
    /// The power of the tail against the sound that comes straight.
    tail: f64,
    damping: f64,
    delays: [f64; 8],
}

/// How many rooms there are in a lot.
pub const ROOMS: u64 = 20;

impl Room {
    /// One of the rooms of a lot, from dry to hard, with the microphone on the bench or beside it.
    pub fn at_the_bench(number: u64, lot: u64) -> Self {
        let mut dice = Dice::new(1000 + number * 7 + lot * 10_007);
        let distance = dice.between(0.1, 0.6);
        Self::new(number, distance, &mut dice)
    }

    /// The same room, with what sounds somewhere else in it.
    pub fn across(number: u64, lot: u64) -> Self {
        let mut dice = Dice::new(1001 + number * 7 + lot * 10_007);
        let distance = dice.between(0.5, 1.5);
        Self::new(number, distance, &mut dice)
    }

    #[allow(clippy::needless_range_loop)] // An axis has a part in four lists.
    fn new(number: u64, distance: f64, dice: &mut Dice) -> Self {
        let t60 = 0.15 + 0.85 * number as f64 / (ROOMS - 1) as f64;
        let size = [
            dice.between(2.2, 7.0),
            dice.between(2.2, 6.0),
            dice.between(2.2, 3.2),
        ];
        let [long, wide, high] = size;
        let volume = long * wide * high;
        let surface = 2.0 * (long * wide + wide * high + long * high);
        // Sabine's formula.
        let absorbs = (0.161 * volume / (surface * t60)).min(0.85);
        let reflects = (1.0 - absorbs).sqrt();
        let source = [
            dice.between(0.3, 0.7) * long,
            dice.between(0.3, 0.7) * wide,
            0.8,
        ];
        let (around, up) = (dice.between(0.0, 2.0 * PI), dice.between(0.0, 0.6));
        let microphone = [
            source[0] + distance * around.cos() * up.cos(),
            source[1] + distance * around.sin() * up.cos(),
            source[2] + distance * up.sin(),
        ];
        let mut reflections = Vec::new();
        for image in 0..27 {
            let along: [i32; 3] = [image % 3 - 1, image / 3 % 3 - 1, image / 9 - 1];
            for mirrored in 0..4 {
                let mut squared = 0.0;
                for axis in 0..3 {
                    let sign = if mirrored == axis + 1 { -1.0 } else { 1.0 };
                    let there = 2.0 * f64::from(along[axis]) * size[axis] + sign * source[axis];
                    squared += (there - microphone[axis]).powi(2);
                }
                let walls: i32 = along.iter().map(|rooms| rooms.abs()).sum();
                let walls = (2 * walls - i32::from(mirrored > 0)).abs();
                if walls <= 3 {
                    let way = squared.sqrt().max(0.1);
                    let later = ((way - distance) / 343.0).max(0.0);
                    reflections.push((later, reflects.powi(walls) * distance / way));
                }
            }
        }
        let critical = 0.057 * (volume / t60).sqrt();
        Self {
            reflections,
            t60,
            tail: (distance / critical).powi(2) * (1.0 - absorbs),
            delays: std::array::from_fn(|line| {
                0.011 + 0.0043 * line as f64 + dice.between(0.0, 0.003)
            }),
            damping: dice.between(0.15, 0.45),
        }
    }

    /// What the microphone hears of a sound.
    #[allow(clippy::needless_range_loop)] // A line has a part in five lists.
    pub fn hear(&self, dry: &[f32], rate: f64) -> Vec<f32> {
        let mut heard = vec![0.0_f32; dry.len() + (self.t60 * rate) as usize];
        for (later, loud) in &self.reflections {
            add(&mut heard, *later, dry, *loud, rate);
        }
        // Eight delays that feed one another (a Householder matrix), each losing what the room
        // takes in its time.
        let mut lines = self
            .delays
            .map(|delay| vec![0.0_f32; (delay * rate) as usize]);
        let keeps = self
            .delays
            .map(|delay| 10f64.powf(-3.0 * delay / self.t60) as f32);
        let mean = self.delays.iter().sum::<f64>() / 8.0;
        let power = (self.t60 / (13.8 * mean)).max(0.01);
        let loud = ((self.tail / power).sqrt() / 8f64.sqrt()) as f32;
        let passes = 1.0 - self.damping as f32 * 0.5;
        let (mut at, mut low) = ([0_usize; 8], [0.0_f32; 8]);
        let late = (0.008 * rate) as usize;
        for (number, heard) in heard.iter_mut().enumerate() {
            let fed = number.checked_sub(late).and_then(|number| dry.get(number));
            let fed = fed.copied().unwrap_or(0.0);
            let mut out = [0.0_f32; 8];
            for line in 0..8 {
                low[line] += passes * (lines[line][at[line]] - low[line]);
                out[line] = low[line] * keeps[line];
            }
            let shared = out.iter().sum::<f32>() / 4.0;
            for line in 0..8 {
                let sign = if line % 2 == 0 { 1.0 } else { -1.0 };
                lines[line][at[line]] = fed * sign + out[line] - shared;
                at[line] = (at[line] + 1) % lines[line].len();
                *heard += loud * if line % 3 == 0 { out[line] } else { -out[line] };
            }
        }
        heard
    }
}

/// Adds a sound to another, so many seconds from its beginning.
pub fn add(to: &mut [f32], at: f64, sound: &[f32], loud: f64, rate: f64) {
    let at = ((at * rate) as usize).min(to.len());
    for (sample, more) in to[at..].iter_mut().zip(sound) {
        *sample += more * loud as f32;
    }
}

/// The level of a sound, root mean square.
pub fn level(sound: &[f32]) -> f64 {
    let power: f64 = sound.iter().map(|sample| f64::from(*sample).powi(2)).sum();
    (power / sound.len().max(1) as f64).sqrt()
}

/// The level of its loudest ten milliseconds.
pub fn loudest(sound: &[f32], rate: f64) -> f64 {
    let half = (0.005 * rate) as usize;
    let starts = (0..sound.len().saturating_sub(half)).step_by(half);
    starts
        .map(|start| level(&sound[start..(start + 2 * half).min(sound.len())]))
        .fold(0.0, f64::max)
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Noise {
    White,
    Pink,
    /// The mains, 50 Hz and its overtones, with a little hiss.
    Hum,
}

/// Noise of level 1.
pub fn noise(kind: Noise, length: usize, rate: f64, dice: &mut Dice) -> Vec<f32> {
    let mut sound = vec![0.0_f32; length];
    match kind {
        Noise::White => sound.fill_with(|| dice.normal() as f32),
        Noise::Pink => {
            // A sum of hisses, each of which changes half as often as the one before (Voss).
            let mut hisses = [0.0_f64; 14];
            for (number, sample) in sound.iter_mut().enumerate() {
                let changes = (number.trailing_zeros() as usize).min(13);
                hisses[changes] = dice.normal();
                *sample = (hisses.iter().sum::<f64>() + dice.normal()) as f32;
            }
        }
        Noise::Hum => {
            let phases: Vec<f64> = (0..12).map(|_| dice.between(0.0, 2.0 * PI)).collect();
            for (number, sample) in sound.iter_mut().enumerate() {
                let turn = 2.0 * PI * 50.0 * number as f64 / rate;
                let tones = phases.iter().zip(1..).map(|(phase, overtone)| {
                    (turn * f64::from(overtone) + phase).sin() / f64::from(overtone)
                });
                *sample = (tones.sum::<f64>() + 0.02 * dice.normal()) as f32;
            }
        }
    }
    let loud = level(&sound) as f32;
    for sample in &mut sound {
        *sample /= loud;
    }
    sound
}
