//! From samples to the power in each octave, a look at a time.

use std::f64::consts::{FRAC_1_SQRT_2, PI};

use super::SILENCE;
use super::tuning::{LOOK, OCTAVES};

/// The mean power of each octave over one look.
pub(super) type Look = [f32; OCTAVES.len()];

/// The filters of the octaves, and what they have passed since the last look.
#[derive(Clone, Debug)]
pub(super) struct Octaves {
    /// None where the rate of the samples leaves nothing of an octave.
    filters: [Option<(Filter, Filter)>; OCTAVES.len()],
    samples_per_look: f64,
    due: f64,
    taken: u32,
    sum: Look,
}

impl Octaves {
    /// For samples at this rate, in hertz.
    pub fn new(rate: u32) -> Self {
        let rate = f64::from(rate);
        let filters = OCTAVES.map(|(from, to)| {
            (from < rate * 0.4).then(|| {
                let passes_below = Filter::new(rate, to.min(rate * 0.45), Passes::Below);
                (Filter::new(rate, from, Passes::Above), passes_below)
            })
        });
        Self {
            filters,
            samples_per_look: rate * LOOK,
            due: rate * LOOK,
            taken: 0,
            sum: Look::default(),
        }
    }

    /// Takes one sample, and gives a look when it is the last of one.
    pub fn take(&mut self, sample: f32) -> Option<Look> {
        for (filters, sum) in self.filters.iter_mut().zip(&mut self.sum) {
            if let Some((high, low)) = filters {
                let passed = low.take(high.take(sample));
                *sum += passed * passed;
            }
        }
        self.taken += 1;
        let taken = f64::from(self.taken);
        if taken < self.due {
            return None;
        }
        self.due += self.samples_per_look - taken;
        #[expect(clippy::cast_possible_truncation, reason = "some hundreds")]
        let look = self.sum.map(|sum| sum / taken as f32 + SILENCE);
        self.taken = 0;
        self.sum = Look::default();
        for (high, low) in self.filters.iter_mut().flatten() {
            high.settle();
            low.settle();
        }
        Some(look)
    }
}

/// What is left of a sound when nothing is, a part of full scale: 300 dB below it.
const NOTHING: f32 = 1e-15;

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Passes {
    Above,
    Below,
}

/// A Butterworth filter of the second order, by the bilinear transform.
#[derive(Clone, Copy, Debug)]
struct Filter {
    forward: [f32; 3],
    back: [f32; 2],
    state: [f32; 2],
}

impl Filter {
    fn new(rate: f64, corner: f64, passes: Passes) -> Self {
        let turn = 2.0 * PI * corner / rate;
        let (sine, cosine) = turn.sin_cos();
        let width = sine * FRAC_1_SQRT_2;
        let scale = 1.0 / (1.0 + width);
        let (outer, inner) = match passes {
            Passes::Above => (f64::midpoint(1.0, cosine), -(1.0 + cosine)),
            Passes::Below => ((1.0 - cosine) / 2.0, 1.0 - cosine),
        };
        #[expect(clippy::cast_possible_truncation, reason = "between -2 and 2")]
        let small = |value: f64| (value * scale) as f32;
        Self {
            forward: [small(outer), small(inner), small(outer)],
            back: [small(-2.0 * cosine), small(1.0 - width)],
            state: [0.0; 2],
        }
    }

    fn take(&mut self, sample: f32) -> f32 {
        let [first, second, third] = self.forward;
        let passed = first * sample + self.state[0];
        self.state[0] = second * sample - self.back[0] * passed + self.state[1];
        self.state[1] = third * sample - self.back[1] * passed;
        passed
    }

    /// Comes to rest when next to nothing is left of what it has passed. Behind a microphone that is muted
    /// it would go on with ever smaller numbers, and a processor takes many times as long for such as are
    /// smaller than 1e-38.
    fn settle(&mut self) {
        for state in &mut self.state {
            if state.abs() < NOTHING {
                *state = 0.0;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tone_is_loud_in_its_octave_at_every_rate() {
        for rate in [8_000_u32, 16_000, 22_050, 44_100, 48_000, 96_000] {
            for (octave, tone) in [(0, 175.0), (1, 350.0), (2, 700.0), (3, 1400.0), (4, 2700.0)] {
                let mut octaves = Octaves::new(rate);
                let mut last = Look::default();
                for at in 0..rate / 2 {
                    let phase = 2.0 * PI * tone * f64::from(at) / f64::from(rate);
                    #[expect(clippy::cast_possible_truncation, reason = "a sine")]
                    if let Some(look) = octaves.take(phase.sin() as f32) {
                        last = look;
                    }
                }
                let loudest = (0..5).max_by(|one, other| last[*one].total_cmp(&last[*other]));
                assert_eq!(loudest, Some(octave), "{tone} Hz at {rate}: {last:?}");
            }
        }
    }

    #[test]
    fn the_filters_come_to_rest_behind_a_muted_microphone() {
        for rate in [8_000, 48_000, 96_000] {
            let mut octaves = Octaves::new(rate);
            for at in 0..rate {
                octaves.take(if at % 7 < 3 { 0.5 } else { -0.5 });
            }
            for _ in 0..rate {
                octaves.take(0.0);
            }
            let filters = octaves.filters.iter().flatten();
            let states = filters.flat_map(|(high, low)| [high.state, low.state]);
            assert!(states.flatten().all(|state| state == 0.0), "{octaves:?}");
        }
    }

    #[test]
    fn looks_come_four_hundred_times_a_second() {
        for rate in [8_000, 11_025, 44_100, 96_000] {
            let mut octaves = Octaves::new(rate);
            let looks = (0..rate).filter(|_| octaves.take(0.1).is_some()).count();
            assert!((399..=400).contains(&looks), "{looks} at {rate}");
        }
    }
}
