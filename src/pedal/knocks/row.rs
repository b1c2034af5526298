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
/// Within 100 ms after a knock its own ringing may swell, or the room throws it back, in looks.
const RINGING: usize = 40;

/// The row that is being knocked.
#[derive(Clone, Debug, Default)]
pub(super) struct Row {
    last: Option<Onset>,
    /// How many knocks it has.
    number: u8,
    /// When single knocks came that nothing followed, or where no row could begin.
    strays: VecDeque<usize>,
    /// The last onsets, knocks or not.
    recent: VecDeque<Recent>,
}

/// An onset that was.
#[derive(Clone, Copy, Debug)]
struct Recent {
    at: usize,
    peak: f32,
    /// Whether it was taken for a knock of a row: who knocks row after row is no rain.
    is_of_row: bool,
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
        let is_outdone = onset.stays_top < if rings { -1.5 } else { tuning.outdone };
        onset.at + if is_outdone { 2 } else { 12 }
    }

    /// Takes an onset, and gives which knock of its row it is if it is one.
    pub fn take(&mut self, onset: &Onset, sound: &Sound, tuning: &Tuning) -> Option<u8> {
        if onset.stays_top >= -1.5 {
            self.recent.push_back(Recent {
                at: onset.at,
                peak: onset.peak,
                is_of_row: false,
            });
            if self.recent.len() > REMEMBERED {
                self.recent.pop_front();
            }
        }
        if onset.at < tuning.learns_for {
            return None;
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
        if let Some(last) = self.last.filter(|_| number > 1) {
            let of_row = |one: &&mut Recent| one.at == last.at || one.at == onset.at;
            let of_row = self.recent.iter_mut().filter(of_row);
            of_row.for_each(|one| one.is_of_row = true);
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
            .any(|one| one.at > last.at + RINGING && one.at < onset.at && one.peak > softer - 3.0);
        tuning.gap.contains(&(onset.at - last.at))
            && last.louder(onset).abs() <= tuning.same_level
            && last.unlike(onset) <= tuning.same_sound
            && !something_between
            && second_half.is_some_and(|between| softer - between >= lull)
    }

    /// Whether a knock can be the first of a row: before it there was quiet.
    fn may_begin(&self, onset: &Onset, tuning: &Tuning) -> bool {
        let lately = |long: usize| {
            let lately = self.recent.iter().filter(|one| {
                let is_late = one.at + long > onset.at && one.at + ECHO < onset.at;
                is_late && one.peak > onset.peak - 10.0 && !one.is_of_row
            });
            lately.count()
        };
        onset.before <= -tuning.quiet
            && onset.rise >= (0.6 * onset.over_floor).min(tuning.first_rise_most)
            && lately(BUSY_FOR) < tuning.busy
            && lately(tuning.often_for) < tuning.often
    }
}

/// Whether an onset is a knock by itself. Behind a clear knock less is asked of the next one.
fn is_knock(onset: &Onset, before: Option<&Onset>, doubt: f32, tuning: &Tuning) -> bool {
    let clearest = before.map_or(onset.rise, |before| before.rise.max(onset.rise));
    let stays_top = tuning.stays_top - (clearest - 10.0) / 5.0;
    let apart = onset.over_floor - onset.over_ceiling;
    let swing = ((apart - tuning.swing_from) * tuning.swing_by).clamp(0.0, tuning.swing);
    let sum = onset.fall + onset.concentration + onset.stays_top;
    let is_clear = onset.over_floor > tuning.clear;
    let clear_fall = if apart > tuning.among {
        tuning.among_fall
    } else {
        tuning.clear_fall
    };
    let rise_most = before.map_or(tuning.rise_most, |_| tuning.rise_behind);
    let is_no_string = onset.fall >= clear_fall && sum >= tuning.clear_sum;
    onset.rise >= tuning.rise.max((0.5 * onset.over_floor).min(rise_most))
        && onset.octaves_rising >= tuning.octaves_rising
        && onset.fall >= tuning.fall
        && onset.concentration >= tuning.concentration
        && onset.stays_top >= stays_top.clamp(tuning.stays_top_least, tuning.stays_top)
        && onset.over_ceiling >= tuning.over_ceiling + swing + doubt
        && onset.over_floor >= tuning.over_floor
        && onset.dullness >= tuning.dullness
        && (!is_clear || is_no_string)
}
