//! Short sounds that tell what a press did. They are worked out here, of nothing but sines.

use std::f32::consts::TAU;

/// What a sound can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Cue {
    /// On to the next step.
    Next,
    /// Back to the step before.
    Back,
    /// Something to look at.
    Check,
    /// A pass is done.
    EndOfPass,
    /// The tie is done.
    Done,
    /// There is no voice.
    VoiceLost,
}

/// How many samples a second of sound has.
pub const SAMPLE_RATE: u32 = 44_100;

/// One note: hertz, milliseconds. 0 hertz is a rest.
type Tone = (f32, u16);

impl Cue {
    /// Every sound there is.
    pub const ALL: [Self; 6] = [
        Self::Next,
        Self::Back,
        Self::Check,
        Self::EndOfPass,
        Self::Done,
        Self::VoiceLost,
    ];

    /// Rising is on, falling is back; what is rarer is longer. Each has a number of notes and a
    /// shape of its own, so that no ear for pitch is needed.
    const fn notes(self) -> &'static [Tone] {
        match self {
            Self::Next => &[(784.0, 60)],
            Self::Back => &[(523.0, 60), (392.0, 80)],
            Self::Check => &[(659.0, 60), (0.0, 50), (659.0, 60)],
            Self::EndOfPass => &[(523.0, 80), (659.0, 80), (784.0, 120)],
            Self::Done => &[(523.0, 100), (659.0, 100), (784.0, 100), (1047.0, 300)],
            Self::VoiceLost => &[(220.0, 200), (0.0, 80), (196.0, 300)],
        }
    }

    /// The sound in one channel at [`SAMPLE_RATE`], as loud as `volume` percent of the most.
    pub fn samples(self, volume: u8) -> Vec<f32> {
        // Half the percentage sounds about half as loud when the amplitude follows its square.
        let loudness = (f32::from(volume.min(100)) / 100.0).powi(2) * 0.8;
        self.notes()
            .iter()
            .flat_map(|note| tone(*note))
            .map(|sample| sample * loudness)
            .collect()
    }
}

/// A note that swells and fades in a few milliseconds, so that it does not click.
fn tone((hertz, millis): Tone) -> impl Iterator<Item = f32> {
    #[expect(clippy::cast_precision_loss, reason = "far fewer than 2^24 samples")]
    let rate = SAMPLE_RATE as f32;
    let length = SAMPLE_RATE * u32::from(millis) / 1000;
    #[expect(clippy::cast_precision_loss, reason = "far fewer than 2^24 samples")]
    (0..length).map(move |number| {
        let (at, left) = (number as f32 / rate, (length - number) as f32 / rate);
        let swell = (at / 0.006).min(left / 0.020).min(1.0);
        let wave = (TAU * hertz * at).sin() + 0.3 * (2.0 * TAU * hertz * at).sin();
        swell * wave / 1.3
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn peak(samples: &[f32]) -> f32 {
        samples
            .iter()
            .fold(0.0, |most, sample| sample.abs().max(most))
    }

    #[test]
    fn every_sound_is_heard_is_short_and_does_not_clip_or_click() {
        for cue in Cue::ALL {
            let samples = cue.samples(100);
            assert!((0.3..=1.0).contains(&peak(&samples)), "{cue:?}");
            assert!(
                samples.len() <= 700 * SAMPLE_RATE as usize / 1000,
                "{cue:?}"
            );
            let jump = samples.windows(2).map(|pair| (pair[1] - pair[0]).abs());
            assert!(jump.fold(0.0, f32::max) < 0.3, "{cue:?}");
            assert!(samples[0].abs() < 0.01 && samples[samples.len() - 1].abs() < 0.01);
        }
    }

    #[test]
    fn no_two_sounds_are_alike() {
        for (index, one) in Cue::ALL.iter().enumerate() {
            for other in &Cue::ALL[..index] {
                assert_ne!(one.samples(50), other.samples(50), "{one:?} {other:?}");
                assert_ne!(one.notes(), other.notes());
            }
        }
    }

    #[test]
    fn volume_goes_from_nothing_up() {
        let peaks = [0, 25, 50, 100].map(|volume| peak(&Cue::Next.samples(volume)));
        assert!(peaks[0] == 0.0 && peaks.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
