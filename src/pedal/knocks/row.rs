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
    /// How many knocks it has; none where it is not sure yet that the last was one.
    number: u8,
    /// What the last lacks to be a knock by itself.
    lacks: f32,
    /// When single knocks came that nothing followed, or where no row could begin.
    strays: VecDeque<usize>,
    /// The last onsets, knocks or not.
    recent: VecDeque<Recent>,
}

/// A knock of a row.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taken {
    /// Which it is, from 1.
    pub number: u8,
    /// The first of the row, where only the second made that a knock.
    pub first: Option<Onset>,
}

/// An onset that was.
#[derive(Clone, Copy, Debug)]
struct Recent {
    onset: Onset,
    /// Whether it was taken for a knock of a row, or came out of the ringing of one: who knocks row after row
    /// is no rain.
    is_of_row: bool,
}

/// From which look on the next onset counts after this one. What is outdone at once may be the beginning of
/// a word, and a knock may come on its heels.
pub(super) fn next_from(onset: &Onset, tuning: &Tuning) -> usize {
    let is_outdone = onset.stays_top < tuning.outdone;
    onset.at + if is_outdone { 2 } else { 12 }
}

impl Row {
    /// The knock before, where one that began in this look would follow it.
    fn before(&self, at: usize, tuning: &Tuning) -> Option<&Onset> {
        let last = self.last.as_ref();
        last.filter(|last| at - last.at <= *tuning.gap.end())
    }

    /// Takes an onset, and gives which knock of its row it is if it is one.
    pub fn take(&mut self, onset: &Onset, sound: &Sound, tuning: &Tuning) -> Option<Taken> {
        if onset.stays_top >= -1.5 && onset.octaves_rising >= tuning.octaves_rising {
            self.recent.push_back(Recent {
                onset: *onset,
                is_of_row: self.is_echo(onset),
            });
            if self.recent.len() > REMEMBERED {
                self.recent.pop_front();
            }
        }
        if onset.at < tuning.learns_for {
            return None;
        }
        let before = self.before(onset.at, tuning).copied();
        let was_sure = self.number > 0;
        let doubt = self.doubt(onset.at, tuning);
        let belongs = before
            .as_ref()
            .is_some_and(|last| self.belongs(last, onset, sound, tuning));
        let behind = before.as_ref().filter(|_| was_sure || belongs);
        let lacks = lacks_fall(onset, behind, tuning).max(0.0) * tuning.lacks_fall
            + lacks_clearness(onset, doubt, tuning).max(0.0);
        let is_sure = lacks <= 0.0;
        if !is_clear(onset, behind, tuning) || lacks > tuning.alike {
            return None;
        }
        if let Some(last) = &before {
            let gap = onset.at - last.at;
            let louder = last.louder(onset);
            // What the knock before shook, or its echo.
            let is_of_it = (gap < *tuning.gap.end() && louder < -tuning.same_level)
                || (gap < *tuning.gap.start() && louder < 3.0);
            if was_sure && is_of_it {
                return None;
            }
            let apart =
                last.strays_from(onset) + louder.abs() * tuning.differs + lacks.max(self.lacks);
            let is_like_it = apart <= tuning.alike
                && self.lately(last, tuning.often_for, tuning) < tuning.often_alike;
            if belongs && ((is_sure && was_sure) || is_like_it) {
                return Some(self.next(last, onset));
            }
        }
        if !self.may_begin(onset, tuning) {
            // What is softer than the knock before does not part it from the next.
            let parts = before.is_none_or(|last| last.louder(onset) >= -3.0);
            if is_sure && parts {
                self.last = None;
                self.strays.push_back(onset.at);
            }
            return None;
        }
        // The parts of a word rise out of one another, the first of a row out of the room.
        let rise = (0.6 * onset.over_floor).min(tuning.first_rise_most);
        let lacks = lacks + (rise - onset.rise).max(0.0) * tuning.lacks_rise;
        if lacks > 0.0 {
            // A knock that is sure waits for its next one.
            if before.is_none() || !was_sure {
                self.last = Some(*onset);
                self.number = 0;
                self.lacks = lacks;
            }
            return None;
        }
        if let Some(last) = self.last.filter(|_| self.number == 1) {
            self.strays.push_back(last.at);
        }
        self.number = 1;
        self.last = Some(*onset);
        self.lacks = 0.0;
        Some(Taken {
            number: 1,
            first: None,
        })
    }

    /// The next knock of the row.
    fn next(&mut self, last: &Onset, onset: &Onset) -> Taken {
        let echoes = last.at..=last.at + RINGING;
        let of_row = |one: &&mut Recent| echoes.contains(&one.onset.at) || one.onset.at == onset.at;
        let of_row = self.recent.iter_mut().filter(of_row);
        of_row.for_each(|one| one.is_of_row = true);
        let first = (self.number == 0).then_some(*last);
        self.number = self.number.max(1).saturating_add(1);
        self.last = Some(*onset);
        self.lacks = 0.0;
        Taken {
            number: self.number,
            first,
        }
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
        let gap = onset.at.saturating_sub(last.at);
        let last_quarter = sound.mean_level(onset.at - gap / 4, onset.at - 2);
        let something_between = self.recent.iter().any(|Recent { onset: one, .. }| {
            one.at > last.at + RINGING && one.at < onset.at && one.peak > softer - 3.0
        });
        tuning.gap.contains(&gap)
            && last.louder(onset).abs() <= tuning.same_level
            && last.unlike(onset) <= tuning.same_sound
            && !something_between
            && (self.number > 1 || !self.is_of_a_train(last, gap, tuning))
            && last_quarter.is_some_and(|between| {
                let quieter = softer - between;
                quieter >= lull && row_lacks([last, onset], quieter, tuning) <= tuning.row_lacks
            })
    }

    /// Whether what would be the first of a row goes on with what was before, the next of the row being so far
    /// off: a row comes out of a pause, one drop comes after the other.
    fn is_of_a_train(&self, first: &Onset, gap: usize, tuning: &Tuning) -> bool {
        #[expect(clippy::cast_precision_loss, reason = "some hundreds")]
        let gaps = |from: usize, until: usize| until.saturating_sub(from) as f32 / gap as f32;
        let before = self.recent.iter().rev().map(|one| &one.onset);
        let before = before.filter(|one| one.at + RINGING < first.at);
        let mut like = before.filter(|one| first.unlike(one) <= tuning.same_sound);
        let as_loud = |one: &Onset, within| first.louder(one).abs() <= within;
        let goes_on = like.clone().any(|one| {
            tuning.train_gaps.contains(&gaps(one.at, first.at)) && as_loud(one, tuning.same_level)
        });
        let mut from = first.at;
        let mut evenly = std::iter::from_fn(|| {
            let is_next = |one: &&Onset| {
                tuning.train_evenly.contains(&gaps(one.at, from))
                    && as_loud(one, tuning.train_level)
            };
            from = like.find(is_next)?.at;
            Some(from)
        });
        goes_on || evenly.nth(tuning.train - 1).is_some()
    }

    /// Whether an onset comes out of the ringing of a knock of a row.
    fn is_echo(&self, onset: &Onset) -> bool {
        let last = self.last.filter(|_| self.number > 1);
        last.is_some_and(|last| onset.at <= last.at + RINGING)
    }

    /// How many onsets were as loud as this one lately, in so many looks, but for those of rows.
    fn lately(&self, onset: &Onset, long: usize, tuning: &Tuning) -> usize {
        let lately = self.recent.iter().filter(|one| {
            let Recent {
                onset: one,
                is_of_row,
            } = one;
            let is_late = one.at + long > onset.at && one.at + ECHO < onset.at;
            is_late && one.peak > onset.peak - tuning.as_loud && !is_of_row
        });
        lately.count()
    }

    /// Whether a knock can be the first of a row: before it there was quiet.
    fn may_begin(&self, onset: &Onset, tuning: &Tuning) -> bool {
        onset.before <= -tuning.quiet
            && self.lately(onset, BUSY_FOR, tuning) < tuning.busy
            && self.lately(onset, tuning.often_for, tuning) < tuning.often
    }
}

/// What must hold of every knock, whatever the others of its row are like: it rises out of the 30 ms before
/// it, in some octaves at once, is over the floor of the room, and nothing hard was struck. What comes
/// behind the knock `before` rises out of the ringing of that one, so that it need not rise as far.
fn is_clear(onset: &Onset, before: Option<&Onset>, tuning: &Tuning) -> bool {
    let rise_most = before.map_or(tuning.rise_most, |_| tuning.rise_behind);
    onset.rise >= tuning.rise.max((0.5 * onset.over_floor).min(rise_most))
        && onset.octaves_rising >= tuning.octaves_rising
        && onset.over_floor >= tuning.over_floor
        && onset.dullness >= tuning.dullness_least
}

/// How much louder an onset would be over what the room seldom passes to be a knock by itself, in decibels.
fn lacks_clearness(onset: &Onset, doubt: f32, tuning: &Tuning) -> f32 {
    tuning.over_ceiling + swing(onset, tuning) + doubt - onset.over_ceiling
}

/// How much more is asked where the background swings, in decibels.
fn swing(onset: &Onset, tuning: &Tuning) -> f32 {
    let apart = onset.over_floor - onset.over_ceiling;
    ((apart - tuning.swing_from) * tuning.swing_by).clamp(0.0, tuning.swing)
}

/// How much two onsets, between which it is so much quieter, lack in all to be knocks of one row, in decibels.
fn row_lacks(pair: [&Onset; 2], quieter: f32, tuning: &Tuning) -> f32 {
    let least = |of: fn(&Onset) -> f32| of(pair[0]).min(of(pair[1]));
    let over_floor = least(|onset| onset.over_floor);
    let stands_out = tuning.row_stands_out.min(0.5 * over_floor);
    let rises = (stands_out - least(|onset| onset.rise)).max(0.0);
    let lulls = (stands_out - quieter).max(0.0);
    let falls = if over_floor > tuning.clear {
        (tuning.row_falls - least(|onset| onset.fall + onset.dullness)).max(0.0)
    } else {
        0.0
    };
    let swings = swing(pair[0], tuning).min(swing(pair[1], tuning));
    rises + lulls + falls + swings
}

/// How much an onset lacks in its course to be a knock by itself, in decibels: a knock comes at once, and
/// falls. Nothing, or less, where it is one.
fn lacks_fall(onset: &Onset, before: Option<&Onset>, tuning: &Tuning) -> f32 {
    let clearest = before.map_or(onset.rise, |before| before.rise.max(onset.rise));
    let stays_top = tuning.stays_top - (clearest - 10.0) / 5.0;
    let lacks = (tuning.dullness - onset.dullness)
        .max(tuning.fall - onset.fall)
        .max(tuning.concentration - onset.concentration)
        .max(stays_top.clamp(tuning.stays_top_least, tuning.stays_top) - onset.stays_top);
    if onset.over_floor <= tuning.clear {
        return lacks;
    }
    let clear_fall = if onset.over_floor - onset.over_ceiling > tuning.among {
        tuning.among_fall
    } else {
        tuning.clear_fall
    };
    let sum = onset.fall + onset.concentration + onset.stays_top;
    lacks
        .max(clear_fall - onset.fall)
        .max(tuning.clear_sum - sum)
}
