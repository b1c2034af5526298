//! From samples to knocks.

use std::time::Duration;

use super::octaves::Octaves;
use super::onset::{Onset, Sound};
use super::row::{self, Row};
use super::tuning::{LOOK, Tuning};

/// A knock and what a room makes of it are no part of the levels of the room, for so many looks: 300 ms.
const RINGS_FOR: usize = 120;
/// Where it belongs to a row, for so many with each decibel that it is over the floor, if that is longer: a hard
/// room takes a second to fall by 60 dB.
const RINGS_FOR_EACH: f32 = 6.67;

/// One knock.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Knock {
    /// When it was, from the first sample.
    pub at: Duration,
    /// Which of its row it is, from 1.
    pub number: u8,
    /// By how much it was over what the room seldom passes, in decibels: with 10 or more it is taken
    /// for sure.
    pub over_room: f32,
}

/// What a stretch of sound had in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Heard {
    /// A knock.
    Knock(Knock),
    /// A row of so many knocks is over: no further one can belong to it.
    RowOver(u8),
}

/// Finds knocks in sound.
pub trait KnockDetector: Send {
    /// Takes samples of one channel, full scale being 1, as they come, and tells what was in them.
    fn take(&mut self, samples: &[f32], tell: &mut dyn FnMut(Heard));

    /// How loud it is now, in decibels of full scale.
    fn level(&self) -> f32;
}

/// Finds knocks by how they rise, fall and follow one another.
#[derive(Clone, Debug)]
pub struct RowDetector {
    tuning: Tuning,
    octaves: Octaves,
    sound: Sound,
    row: Row,
    /// From which look on the next onset counts.
    next_from: usize,
    /// When the row that is being knocked is over, in looks, and how many knocks it has.
    over_at: Option<(usize, u8)>,
}

impl RowDetector {
    /// For samples at this rate, in hertz; 8,000 to 96,000 were tried.
    pub fn new(rate: u32) -> Self {
        Self {
            tuning: Tuning::default(),
            octaves: Octaves::new(rate),
            sound: Sound::default(),
            row: Row::default(),
            next_from: 0,
            over_at: None,
        }
    }

    /// What begins in the look that can be judged now.
    fn judge(&mut self, tell: &mut dyn FnMut(Heard)) {
        let Some(ripe) = self.sound.ripe(&self.tuning) else {
            return;
        };
        if let Some((over, number)) = self.over_at
            && ripe > over
        {
            self.over_at = None;
            tell(Heard::RowOver(number));
        }
        if ripe < self.next_from {
            return;
        }
        let Some(onset) = self.sound.onset(ripe, &self.tuning) else {
            return;
        };
        self.next_from = row::next_from(&onset, &self.tuning);
        let Some(taken) = self.row.take(&onset, &self.sound, &self.tuning) else {
            return;
        };
        let begins_at = taken.first.as_ref().map_or(onset.at, |first| first.at);
        let rings_for = rings_for(&onset, taken.number);
        self.sound.leave_out(begins_at, onset.at + rings_for);
        let begins = taken.number == 1 || taken.first.is_some();
        if let Some((_, before)) = self.over_at
            && begins
        {
            tell(Heard::RowOver(before));
        }
        self.over_at = Some((onset.at + *self.tuning.gap.end(), taken.number));
        let knock = |onset: &Onset, number| {
            Heard::Knock(Knock {
                at: time_of(onset.at),
                number,
                over_room: onset.over_ceiling,
            })
        };
        if let Some(first) = &taken.first {
            tell(knock(first, 1));
        }
        tell(knock(&onset, taken.number));
    }
}

impl KnockDetector for RowDetector {
    fn take(&mut self, samples: &[f32], tell: &mut dyn FnMut(Heard)) {
        for sample in samples {
            if let Some(look) = self.octaves.take(*sample) {
                self.sound.take(look);
                self.judge(tell);
            }
        }
    }

    fn level(&self) -> f32 {
        self.sound.level()
    }
}

/// For how many looks a knock is no part of the room, by which of its row it is.
fn rings_for(onset: &Onset, number: u8) -> usize {
    if number < 2 {
        return RINGS_FOR;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a thousand at the most"
    )]
    let rings_for = (onset.over_floor * RINGS_FOR_EACH).max(0.0) as usize;
    rings_for.max(RINGS_FOR)
}

#[expect(clippy::cast_precision_loss, reason = "exact for ages")]
fn time_of(look: usize) -> Duration {
    Duration::from_secs_f64(look as f64 * LOOK)
}
