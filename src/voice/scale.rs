//! Our scales for speed, volume and pitch, put onto those of a speech service.

use super::speech_settings::SpeechSettings;

/// The three marks that every back end gives for each of its scales.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scale {
    pub(super) min: f32,
    pub(super) normal: f32,
    pub(super) max: f32,
}

/// Marks of a back end's speed scale with the words a minute heard at each, slowest first.
pub(super) struct SpeedCurve<const N: usize>(pub(super) [(f32, f32); N]);

impl<const N: usize> SpeedCurve<N> {
    /// The mark for a speed, on straight lines between the known marks.
    pub(super) fn mark(&self, words_per_minute: u16) -> f32 {
        let (least, most) = SpeechSettings::SPEEDS.into_inner();
        let wpm = f32::from(words_per_minute.clamp(least, most));
        let mut below = self.0[0];
        for &above in &self.0 {
            if wpm <= above.1 {
                return between(below, above, wpm);
            }
            below = above;
        }
        below.0
    }
}

/// The mark at `wpm` on the line through two known points, not before the first.
fn between(below: (f32, f32), above: (f32, f32), wpm: f32) -> f32 {
    let span = above.1 - below.1;
    if span <= 0.0 {
        return above.0;
    }
    let share = ((wpm - below.1) / span).clamp(0.0, 1.0);
    below.0 + (above.0 - below.0) * share
}

/// 0 percent is the scale's least, 100 its most.
pub(super) fn volume_mark(percent: u8, scale: Scale) -> f32 {
    let share = f32::from(percent.min(100)) / 100.0;
    scale.min + (scale.max - scale.min) * share
}

/// 0 percent is the scale's least, 50 its normal, 100 its most.
pub(super) fn pitch_mark(percent: u8, scale: Scale) -> f32 {
    let percent = f32::from(percent.min(100));
    if percent <= 50.0 {
        scale.min + (scale.normal - scale.min) * percent / 50.0
    } else {
        scale.normal + (scale.max - scale.normal) * (percent - 50.0) / 50.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCALE: Scale = Scale {
        min: -100.0,
        normal: 0.0,
        max: 100.0,
    };

    fn close(left: f32, right: f32) -> bool {
        (left - right).abs() < 1e-3
    }

    #[test]
    fn speed_follows_the_known_marks() {
        let curve = SpeedCurve([(-100.0, 100.0), (0.0, 200.0), (100.0, 400.0)]);
        for (wpm, mark) in [
            (80, -100.0),
            (100, -100.0),
            (150, -50.0),
            (200, 0.0),
            (300, 50.0),
            (450, 100.0),
        ] {
            assert!(
                close(curve.mark(wpm), mark),
                "{wpm} words a minute: {}",
                curve.mark(wpm)
            );
        }
        assert!(close(curve.mark(0), -100.0) && close(curve.mark(u16::MAX), 100.0));
    }

    #[test]
    fn volume_and_pitch_stay_on_the_scale() {
        assert!(
            close(volume_mark(0, SCALE), -100.0)
                && close(volume_mark(75, SCALE), 50.0)
                && close(volume_mark(255, SCALE), 100.0)
        );
        let lopsided = Scale {
            min: 0.5,
            normal: 1.0,
            max: 2.0,
        };
        assert!(close(pitch_mark(0, lopsided), 0.5) && close(pitch_mark(50, lopsided), 1.0));
        assert!(close(pitch_mark(75, lopsided), 1.5) && close(pitch_mark(255, lopsided), 2.0));
    }
}
