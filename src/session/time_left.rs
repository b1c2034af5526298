//! How far the job is, and how long the rest of it takes.

use super::walk::Walk;
use crate::bench::{BatchPace, TyingPace};
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

    /// Knows how long the other pieces of the batch took.
    pub(super) fn set_pieces(&mut self, times: BatchPace) {
        self.piece_times = times;
    }

    /// Minutes that the rest of the job takes, as the other pieces of its batch took them, or at the
    /// tyer's pace when that is known, or else at a usual one; none when nothing is left.
    pub fn time_left(&self) -> Option<f64> {
        let pace = self.pace.unwrap_or(TyingPace::USUAL);
        let minutes = self.script.minutes_left(self.place, pace);
        (!self.is_done()).then(|| minutes * self.among_pieces_share(pace))
    }

    /// So many times as long as by the pace alone a piece of this batch takes.
    fn among_pieces_share(&self, pace: TyingPace) -> f64 {
        let all = self.script.minutes_left(self.script.first(), pace);
        let piece = self.piece_times.next(self.script.plan().tube_stands);
        piece.filter(|_| all > 0.0).map_or(1.0, |piece| piece / all)
    }

    /// Minutes until the last leg is laid at the tyer's pace, when that is known and a leg is left.
    pub(super) fn minutes_left(&self) -> Option<u32> {
        let LegsLaid { laid, legs } = self.script.progress(self.place);
        let left = Some(legs - laid).filter(|left| *left > 0)?;
        // Of the tucks there are as many left, in proportion.
        let of_all = self.script.plan().laying().tucks();
        let tucks = u64::from(of_all) * u64::from(left) / u64::from(legs);
        let tucks = u32::try_from(tucks).unwrap_or(of_all);
        let pace = self.pace?;
        let minutes = pace.laying_minutes(left, tucks) * self.among_pieces_share(pace);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate, and the time is positive"
        )]
        let minutes = minutes.round() as u32;
        Some(minutes)
    }
}
