//! Which onsets are knocks, and which of those belong to one row.

use std::collections::VecDeque;

use super::onset::{Onset, Sound};
use super::tuning::Tuning;

/// Onsets that are remembered; more do not come in the second and a half that counts.
const REMEMBERED: usize = 32;
/// How long onsets tell that much is going on at once: a second and a half, in looks.
const BUSY_FOR: usize = 600;
/// Within 50 ms a second onset is the echo of the first, in looks.
const ECHO: usize = 20;
/// Within 80 ms after a knock its own ringing may swell, in looks.
const RINGING: usize = 32;

/// The row that is being knocked.
#[derive(Clone, Debug, Default)]
pub(super) struct Row {
    last: Option<Onset>,
    /// How many knocks it has.
    number: u8,
    /// When single knocks came that nothing followed, or where no row could begin.
    strays: VecDeque<usize>,
    /// When and how loud the last onsets were, knocks or not.
    recent: VecDeque<(usize, f32)>,
}

impl Row {
    /// The knock before, where one that began in this look would follow it.
    fn before(&self, at: usize, tuning: &Tuning) -> Option<&Onset> {
        let last = self.last.as_ref();
        last.filter(|last| at - last.at <= *tuning.gap.end())
    }

    /// From which look on the next onset counts after this one. An onset that is outdone at once,
    /// while a knock rings, is not the next knock, but that may follow at its heels; and so may a knock
    /// on a voice that begins.
    pub fn next_from(&self, onset: &Onset, tuning: &Tuning) -> usize {
        let rings = self
            .before(onset.at, tuning)
            .is_some_and(|last| last.rise > 12.0);
        let is_outdone = onset.stays_top < if rings { -1.5 } else { -20.0 };
        onset.at + if is_outdone { 2 } else { 12 }
    }

    /// Takes an onset, and gives which knock of its row it is if it is one.
    pub fn take(&mut self, onset: &Onset, sound: &Sound, tuning: &Tuning) -> Option<u8> {
        if onset.stays_top >= -1.5 {
            self.recent.push_back((onset.at, onset.peak));
            if self.recent.len() > REMEMBERED {
                self.recent.pop_front();
            }
        }
        let before = self.before(onset.at, tuning).copied();
        if !is_knock(onset, before.as_ref(), self.doubt(onset.at, tuning), tuning) {
            return None;
        }
        let mut number = 1;
        if let Some(last) = &before {
            let gap = onset.at - last.at;
            let louder = last.louder(onset);
            // What the knock before shook, or its echo.
            let is_of_it = (gap < *tuning.gap.end() && louder < -tuning.same_level)
                || (gap < *tuning.gap.start() && louder < 3.0);
            if is_of_it {
                return None;
            }
            if self.belongs(last, onset, sound, tuning) {
                number = self.number.saturating_add(1);
            }
        }
        if number == 1 && !self.may_begin(onset, tuning) {
            self.last = None;
            self.strays.push_back(onset.at);
            return None;
        }
        if let Some(last) = self.last.filter(|_| number == 1 && self.number == 1) {
            self.strays.push_back(last.at);
        }
        self.number = number;
        self.last = Some(*onset);
        Some(number)
    }

    /// How much louder a knock must be since others came alone lately.
    fn doubt(&mut self, at: usize, tuning: &Tuning) -> f32 {
        while self
            .strays
            .front()
            .is_some_and(|stray| stray + tuning.doubts_for < at)
        {
            self.strays.pop_front();
        }
        #[expect(clippy::cast_precision_loss, reason = "three at most")]
        let strays = self.strays.len().min(3) as f32;
        strays * tuning.doubt
    }

    /// Whether a knock comes from the same hand on the same bench as the last one.
    fn belongs(&self, last: &Onset, onset: &Onset, sound: &Sound, tuning: &Tuning) -> bool {
        let softer = last.peak.min(onset.peak);
        let room = 0.5 * last.over_floor.min(onset.over_floor);
        let lull = room.clamp(tuning.lull_least, tuning.lull);
        let second_half = sound.mean_level(usize::midpoint(last.at, onset.at), onset.at - 2);
        let something_between = self
            .recent
            .iter()
            .any(|(at, peak)| *at > last.at + RINGING && *at < onset.at && *peak > softer - 3.0);
        tuning.gap.contains(&(onset.at - last.at))
            && last.louder(onset).abs() <= tuning.same_level
            && last.unlike(onset) <= tuning.same_sound
            && !something_between
            && second_half.is_some_and(|between| softer - between >= lull)
    }

    /// Whether a knock can be the first of a row: before it there was quiet.
    fn may_begin(&self, onset: &Onset, tuning: &Tuning) -> bool {
        let lately = |long: usize, under: f32| {
            let lately = self.recent.iter().filter(|(at, peak)| {
                at + long > onset.at && at + ECHO < onset.at && *peak > onset.peak - under
            });
            lately.count()
        };
        onset.before <= -tuning.quiet
            && onset.rise >= (0.6 * onset.over_floor).min(tuning.first_rise_most)
            && lately(BUSY_FOR, 10.0) < tuning.busy
            && lately(tuning.often_for, 13.0) < tuning.often
    }
}

/// Whether an onset is a knock by itself. Behind a clear knock less is asked of the next one.
fn is_knock(onset: &Onset, before: Option<&Onset>, doubt: f32, tuning: &Tuning) -> bool {
    let clearest = before.map_or(onset.rise, |before| before.rise.max(onset.rise));
    let stays_top = tuning.stays_top - (clearest - 10.0) / 5.0;
    let swing = (onset.over_floor - onset.over_ceiling - 1.5).clamp(0.0, tuning.swing);
    let sum = onset.fall + onset.concentration + onset.stays_top;
    let is_clear = onset.over_floor > tuning.clear;
    let is_no_string = onset.fall >= tuning.clear_fall
        && sum >= tuning.clear_sum
        && onset.dullness >= tuning.clear_dullness;
    onset.rise
        >= tuning
            .rise
            .max((0.5 * onset.over_floor).min(tuning.rise_most))
        && onset.octaves_rising >= tuning.octaves_rising
        && onset.fall >= tuning.fall
        && onset.concentration >= tuning.concentration
        && onset.stays_top >= stays_top.clamp(tuning.stays_top_least, tuning.stays_top)
        && onset.over_ceiling >= tuning.over_ceiling + swing + doubt
        && onset.over_floor >= tuning.over_floor
        && onset.dullness >= tuning.dullness
        && (!is_clear || is_no_string)
}
