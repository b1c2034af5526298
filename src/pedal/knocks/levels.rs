//! Which levels the last seconds had.

/// How fast levels are forgotten: by a share of this each look, so that after eight seconds about
/// a third is left of what was.
const KEEPS: f32 = 1.0 - 1.0 / 3200.0;
/// The lowest level told apart, in decibels; the highest is [`STEPS`] above.
const LOWEST: f32 = -130.0;
const STEPS: usize = 140;

/// How often each level came lately, in steps of one decibel.
#[derive(Clone, Debug)]
pub(super) struct Levels {
    shares: [f32; STEPS],
    /// What the next one counts. It grows, where else all that came before would have to shrink.
    weight: f32,
    whole: f32,
}

impl Default for Levels {
    fn default() -> Self {
        Self {
            shares: [0.0; STEPS],
            weight: 1.0,
            whole: 0.0,
        }
    }
}

impl Levels {
    /// Takes in a level, in decibels.
    pub fn take(&mut self, level: f32) {
        self.weight /= KEEPS;
        if self.weight > 1e6 {
            let smaller = 1.0 / self.weight;
            self.shares.iter_mut().for_each(|share| *share *= smaller);
            self.whole *= smaller;
            self.weight = 1.0;
        }
        self.shares[step_of(level)] += self.weight;
        self.whole += self.weight;
    }

    /// Forgets a level that was taken in so many looks ago.
    pub fn forget(&mut self, level: f32, looks_ago: i32) {
        let share = &mut self.shares[step_of(level)];
        let weight = (self.weight * KEEPS.powi(looks_ago)).min(*share);
        *share -= weight;
        self.whole -= weight;
    }

    /// The level that this share of the last seconds is below.
    pub fn at(&self, share: f32) -> f32 {
        let mut sum = 0.0;
        let mut level = LOWEST + 0.5;
        for one in &self.shares {
            sum += one;
            if sum >= share * self.whole {
                break;
            }
            level += 1.0;
        }
        level
    }
}

/// The step that a level is in.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to the steps"
)]
fn step_of(level: f32) -> usize {
    (level - LOWEST).clamp(0.0, 139.0) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_share_of_the_last_seconds_is_below_its_level_and_what_was_is_forgotten() {
        let mut levels = Levels::default();
        for at in 0..4000 {
            levels.take(if at % 10 == 0 { -20.0 } else { -60.0 });
        }
        assert!((levels.at(0.5) + 60.0).abs() <= 1.0, "{}", levels.at(0.5));
        assert!((levels.at(0.95) + 20.0).abs() <= 1.0);
        // A quieter room: the old levels go in some seconds.
        (0..12_000).for_each(|_| levels.take(-80.0));
        assert!((levels.at(0.9) + 80.0).abs() <= 1.0);
        // For ever: the weights do not run out of numbers.
        (0..200_000).for_each(|_| levels.take(-50.0));
        assert!((levels.at(0.5) + 50.0).abs() <= 1.0);
    }

    #[test]
    fn what_is_forgotten_is_as_if_it_had_never_been() {
        let mut levels = Levels::default();
        (0..900).for_each(|_| levels.take(-60.0));
        (0..300).for_each(|_| levels.take(-20.0));
        (0..40).for_each(|_| levels.take(-60.0));
        assert!((levels.at(0.9) + 20.0).abs() <= 1.0, "{}", levels.at(0.9));
        (40..340).for_each(|looks_ago| levels.forget(-20.0, looks_ago));
        assert!(
            (levels.at(0.999) + 60.0).abs() <= 1.0,
            "{}",
            levels.at(0.999)
        );
        // It never takes more away than there is.
        (0..300).for_each(|_| levels.forget(-20.0, 0));
        (0..300).for_each(|_| levels.take(-20.0));
        assert!((levels.at(0.9) + 20.0).abs() <= 1.0, "{}", levels.at(0.9));
    }
}
