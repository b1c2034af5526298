//! How far the job is, and how long the rest of it takes.

use super::walk::Walk;
use crate::bench::TyingPace;
use crate::guide::{JobPart, LegsLaid};

impl Walk {
    /// Knows the tyer's pace from here on.
    pub const fn set_pace(&mut self, pace: Option<TyingPace>) {
        self.pace = pace;
    }

    /// The parts of the job, and how far each is.
    pub fn job(&self) -> Vec<JobPart> {
        self.script.job(self.place)
    }

    /// Minutes that the rest of the job takes, at the tyer's pace when that is known, or else at a
    /// usual one; none when nothing is left.
    pub fn time_left(&self) -> Option<f64> {
        let pace = self.pace.unwrap_or(TyingPace::USUAL);
        (!self.is_done()).then(|| self.script.minutes_left(self.place, pace))
    }

    /// Minutes until the last leg is laid at the tyer's pace, when that is known and a leg is left.
    pub(super) fn minutes_left(&self) -> Option<u32> {
        let LegsLaid { laid, legs } = self.script.progress(self.place);
        let left = Some(legs - laid).filter(|left| *left > 0)?;
        // Of the tucks there are as many left, in proportion.
        let of_all = self.script.plan().laying().tucks();
        let tucks = u64::from(of_all) * u64::from(left) / u64::from(legs);
        let tucks = u32::try_from(tucks).unwrap_or(of_all);
        let minutes = self.pace?.laying_minutes(left, tucks);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate, and the time is positive"
        )]
        let minutes = minutes.round() as u32;
        Some(minutes)
    }
}
