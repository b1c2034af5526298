//! What rises at once out of the sound of the room, and what is measured of it.

use std::collections::VecDeque;

use super::levels::Levels;
use super::octaves::Look;
use super::tuning::{DULL, LOUD, OCTAVES, Tuning};
use super::{SILENCE, decibels};

/// Looks that are kept: a second and a quarter, longer than the longest gap with all that is
/// measured before and after it.
const KEPT: usize = 512;
/// Looks before an onset that say what it rises from: 30 ms.
const BEFORE: usize = 12;
/// The first part of an onset, in looks: 20 ms.
const HEAD: usize = 8;
/// What comes after that and is held against it, in looks: 50 ms.
const TAIL: usize = 20;
/// Within so many looks an onset comes to its top: 15 ms.
const TOP: usize = 6;
/// From so many looks after its top it has fallen, if it is a knock: 45 ms.
const FALLEN: usize = 18;
/// An onset is looked into where a look is so many times as loud as the 30 ms before: 4 dB.
const POKES_OUT: f32 = 2.5;
/// Within so many looks an onset begins where it is steepest: 20 ms.
const STEEPEST: usize = 8;
/// How late levels are learnt, in looks: after an onset was judged, which is no part of the room.
const LATE: usize = 40;
/// The course of an onset in each octave is kept in so many parts, of [`PART`] looks.
const PARTS: usize = 8;
/// A part of the course of an onset, in looks: 10 ms.
const PART: usize = 4;
/// The weights of the octaves are found anew every so many looks: ten times a second.
const WEIGH_EVERY: usize = 40;

/// A sudden rise, measured. Levels in decibels.
#[derive(Clone, Copy, Debug)]
pub(super) struct Onset {
    /// The look in which it begins, counted from the first.
    pub at: usize,
    /// Its peak, with each octave weighed by the noise in it.
    pub peak: f32,
    /// By how much the peak is over the 30 ms before.
    pub rise: f32,
    /// How many octaves rise.
    pub octaves_rising: usize,
    /// By how much it has fallen after 45 to 85 ms.
    pub fall: f32,
    /// Its first 20 ms against the 50 ms after them.
    pub concentration: f32,
    /// By how much its peak is over all that follows.
    pub stays_top: f32,
    /// Its peak over what the last seconds seldom pass.
    pub over_ceiling: f32,
    /// Its peak over what half of the last seconds are below.
    pub over_floor: f32,
    /// The lower octaves over the higher ones.
    pub dullness: f32,
    /// The loudest 20 ms of the third of a second before, against its peak.
    pub before: f32,
    octaves: [f32; OCTAVES.len()],
    clear_of_noise: [f32; OCTAVES.len()],
    /// How each octave goes on from it, and whether that is heard over what was before.
    course: [[(f32, bool); PARTS]; LOUD],
}

impl Onset {
    /// By how much another onset is louder, in the octaves in which both are heard. The peaks would not
    /// do: between two knocks a voice may begin, and octaves weigh otherwise then.
    pub fn louder(&self, other: &Self) -> f32 {
        let heard =
            |octave: &usize| self.clear_of_noise[*octave].max(other.clear_of_noise[*octave]) > 3.0;
        let power = |onset: &Self| -> f32 {
            let octaves = (0..LOUD).filter(heard);
            octaves
                .map(|octave| 10f32.powf(onset.octaves[octave] / 10.0))
                .sum()
        };
        decibels(power(other)) - decibels(power(self))
    }

    /// How far the courses of two onsets differ in the mean, apart from their loudness. A room throws back
    /// the second stroke as it did the first.
    pub fn strays_from(&self, other: &Self) -> f32 {
        let ours = self.course.iter().flatten();
        let pairs = ours.zip(other.course.iter().flatten());
        let heard = pairs.filter(|((_, is_heard), (_, other))| *is_heard || *other);
        let differences: Vec<f32> = heard.map(|(one, other)| other.0 - one.0).collect();
        mean_apart(&differences)
    }

    /// How far the octaves of two onsets differ in the mean, apart from their loudness.
    pub fn unlike(&self, other: &Self) -> f32 {
        let heard = |octave: usize| {
            let clear = self.clear_of_noise[octave].max(other.clear_of_noise[octave]);
            (clear > 3.0).then(|| other.octaves[octave] - self.octaves[octave])
        };
        let differences: Vec<f32> = (0..LOUD).filter_map(heard).collect();
        mean_apart(&differences)
    }
}

/// How far these are from their mean, in the mean.
fn mean_apart(differences: &[f32]) -> f32 {
    #[expect(clippy::cast_precision_loss, reason = "forty at most")]
    let count = differences.len() as f32;
    if differences.is_empty() {
        return f32::INFINITY;
    }
    let mean = differences.iter().sum::<f32>() / count;
    let apart = differences.iter().map(|one| (one - mean).abs());
    apart.sum::<f32>() / count
}

/// The last looks, and the levels of the room.
#[derive(Clone, Debug, Default)]
pub(super) struct Sound {
    looks: VecDeque<Look>,
    /// The loudness of each look.
    loudness: VecDeque<f32>,
    /// The number of the first look that is kept.
    first: usize,
    room: Levels,
    floors: [Levels; OCTAVES.len()],
    weights: Look,
    /// What comes before this look is no part of the room.
    learns_from: usize,
    /// What was learnt of the room lately: in which look, and which level.
    learnt: VecDeque<(usize, f32)>,
}

impl Sound {
    /// Takes in a look.
    pub fn take(&mut self, look: Look) {
        for (floor, power) in self.floors.iter_mut().zip(&look) {
            floor.take(decibels(*power));
        }
        if self.seen().is_multiple_of(WEIGH_EVERY) {
            self.weigh();
        }
        let loud = look[..LOUD].iter().zip(&self.weights);
        self.loudness
            .push_back(loud.map(|(power, weight)| power * weight).sum());
        self.looks.push_back(look);
        if self.looks.len() > KEPT {
            self.looks.pop_front();
            self.loudness.pop_front();
            self.first += 1;
        }
        if let Some(late) = self.looks.len().checked_sub(1 + LATE)
            && late >= HEAD
            && self.first + late >= self.learns_from
        {
            let level = decibels(self.mean(late - HEAD, late));
            self.room.take(level);
            self.learnt.push_back((self.first + late, level));
            if self.learnt.len() > KEPT {
                self.learnt.pop_front();
            }
        }
    }

    /// How many looks have come.
    pub fn seen(&self) -> usize {
        self.first + self.looks.len()
    }

    /// How loud it is now, in decibels of full scale, whatever is weighed.
    pub fn level(&self) -> f32 {
        let latest = self.looks.iter().rev().take(WEIGH_EVERY);
        let loudest = latest.map(|look| look.iter().sum()).fold(SILENCE, f32::max);
        decibels(loudest)
    }

    /// A row of knocks does not belong to the levels of the room: what was learnt since it began is forgotten,
    /// and they are learnt from another look on.
    pub fn leave_out(&mut self, from: usize, until: usize) {
        self.learns_from = until;
        let latest = self.seen().saturating_sub(1 + LATE);
        while let Some(&(look, level)) = self.learnt.back()
            && look >= from
        {
            self.learnt.pop_back();
            let looks_ago = latest.saturating_sub(look);
            self.room
                .forget(level, i32::try_from(looks_ago).unwrap_or(i32::MAX));
        }
    }

    /// Octaves that are full of noise count for less.
    fn weigh(&mut self) {
        let floors: [f32; OCTAVES.len()] =
            std::array::from_fn(|octave| 10f32.powf(self.floors[octave].at(0.4) / 10.0));
        let most = floors[..LOUD].iter().copied().fold(SILENCE, f32::max);
        let weights = floors.map(|floor| 1.0 / (floor + most * 0.01));
        let sum: f32 = weights[..LOUD].iter().sum();
        self.weights = weights.map(|weight| 5.0 * weight / sum);
    }

    #[expect(clippy::cast_precision_loss, reason = "some hundreds")]
    fn mean(&self, from: usize, to: usize) -> f32 {
        self.loudness.range(from..to).sum::<f32>() / (to - from) as f32
    }

    /// How much a stretch of so many looks has over this level in each of them, all together.
    #[expect(clippy::cast_precision_loss, reason = "a dozen")]
    fn sum_over(&self, level: f32, from: usize, long: usize) -> f32 {
        (self.mean(from, from + long) - level) * long as f32
    }

    /// The mean power in one octave.
    #[expect(clippy::cast_precision_loss, reason = "a dozen")]
    fn power(&self, octave: usize, from: usize, to: usize) -> f32 {
        let powers = self.looks.range(from..to).map(|look| look[octave]);
        powers.sum::<f32>() / (to - from) as f32
    }

    /// The mean loudness from one look to another, by their numbers.
    pub fn mean_level(&self, from: usize, to: usize) -> Option<f32> {
        let (from, to) = (from.checked_sub(self.first)?, to.checked_sub(self.first)?);
        (from < to && to <= self.loudness.len()).then(|| decibels(self.mean(from, to)))
    }

    /// How steeply the sound rises at a look.
    fn steepness(&self, at: usize) -> f32 {
        self.mean(at, at + 2) / self.mean(at - BEFORE, at).max(SILENCE)
    }

    /// The loudest 20 ms.
    fn loudest(&self, from: usize, to: usize) -> f32 {
        let starts = (from..).step_by(2).take_while(|start| start + HEAD <= to);
        let means = starts.map(|start| self.mean(start, start + HEAD));
        decibels(means.fold(0.0, f32::max))
    }

    /// The number of the look that can be judged now, if there is one.
    pub fn ripe(&self, tuning: &Tuning) -> Option<usize> {
        let ripe = self.seen().checked_sub(1 + tuning.judged_after);
        ripe.filter(|_| self.seen() > tuning.notices_from)
    }

    /// What begins in this look, if anything does.
    pub fn onset(&self, number: usize, tuning: &Tuning) -> Option<Onset> {
        let at = number.checked_sub(self.first)?;
        let until = at + tuning.judged_after;
        let quiet_from = at.checked_sub(tuning.quiet_for.max(BEFORE))?;
        let before = self.mean(at - BEFORE, at);
        // Nearly every look ends here.
        if until > self.loudness.len() || self.loudness[at] < before * POKES_OUT {
            return None;
        }
        // What pokes out of the noise just before a knock is no part of it: an onset begins where the
        // rise is steepest.
        let steepness = self.steepness(at);
        if (at + 1..=at + STEEPEST).any(|later| self.steepness(later) > steepness * tuning.steeper)
        {
            return None;
        }
        let top = (at..at + TOP)
            .max_by(|one, other| self.loudness[*one].total_cmp(&self.loudness[*other]))?;
        let peak = decibels(self.mean(top, top + 2).max(self.mean(top - 1, top + 1)));
        let rise = peak - decibels(before);
        if rise < tuning.rise {
            return None;
        }
        let head = self.sum_over(before, at, HEAD);
        let tail = self.sum_over(before, at + HEAD, TAIL).max(before);
        let mut octaves = [0.0; OCTAVES.len()];
        let mut clear_of_noise = octaves;
        let mut octaves_rising = 0;
        let mut course = [[(0.0, false); PARTS]; LOUD];
        let measured = octaves.iter_mut().zip(&mut clear_of_noise);
        for (octave, (level, clear)) in measured.enumerate() {
            let was = self.power(octave, at - BEFORE, at);
            let is = self.power(octave, at, at + HEAD);
            *clear = decibels(is) - decibels(was);
            *level = decibels((is - was).max(was * 0.1));
            let looks = self.looks.range(at..at + TOP);
            let top = looks.map(|look| look[octave]).fold(0.0, f32::max);
            octaves_rising += usize::from(decibels(top) - decibels(was) >= tuning.octave_rise);
            for (part, course) in course.get_mut(octave).into_iter().flatten().enumerate() {
                let from = at + part * PART;
                let is = self.power(octave, from, from + PART);
                *course = (decibels((is - was).max(was * 0.5)), is > was * 2.0);
            }
        }
        let power = |octaves: &[f32]| octaves.iter().map(|level| 10f32.powf(level / 10.0)).sum();
        Some(Onset {
            at: number,
            peak,
            rise,
            octaves_rising,
            fall: peak - decibels(self.mean(top + FALLEN, until)),
            concentration: decibels(head) - decibels(tail),
            stays_top: peak - self.loudest(at + TOP, until),
            over_ceiling: peak - self.room.at(0.9),
            over_floor: peak - self.room.at(0.5),
            dullness: decibels(power(&octaves[..DULL])) - decibels(power(&octaves[DULL..])),
            before: self.loudest(quiet_from, at) - peak,
            octaves,
            clear_of_noise,
            course,
        })
    }
}
