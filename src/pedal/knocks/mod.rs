//! Knocks on the bench: from the samples of a microphone to rows of knocks.
//!
//! Filters turn samples into levels of a few octaves, four hundred times a second; an onset is what
//! rises out of them at once, with all that is measured of it; a [`KnockDetector`] tells which of those are knocks, and how many came in a row. What it goes by
//! is data: [`Tuning`]. All of that is pure: time is counted in samples, and no sample is kept for
//! longer than a second and a half.

mod detector;
mod levels;
mod octaves;
mod onset;
mod row;
mod tuning;

pub use detector::{Heard, Knock, KnockDetector, RowDetector};
pub use tuning::Tuning;

/// The level of a power, in decibels of full scale.
fn decibels(power: f32) -> f32 {
    10.0 * power.max(SILENCE).log10()
}

/// What stands for no power at all: 140 dB below full scale, under the noise of any converter.
const SILENCE: f32 = 1e-14;
