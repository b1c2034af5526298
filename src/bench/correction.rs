//! What the tyer's own log says about an estimate.

use std::ops::RangeInclusive;

use super::{BenchError, Millimetres};

/// Factors by which estimates are multiplied: measured last time over estimated then.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Correction {
    length: f64,
    width: f64,
}

impl Default for Correction {
    /// Nothing measured yet: both factors are 1.
    fn default() -> Self {
        Self {
            length: 1.0,
            width: 1.0,
        }
    }
}

impl Correction {
    /// The factors taken. Anything beyond points to a slip in measuring. *Common practice.*
    pub const BOUNDS: RangeInclusive<f64> = 0.5..=2.0;

    /// A factor for the cord in the knot (not its tails) and one for the finished width.
    ///
    /// # Errors
    /// [`BenchError::Correction`] when one is outside [`Self::BOUNDS`] or not a number.
    pub fn new(length: f64, width: f64) -> Result<Self, BenchError> {
        for factor in [length, width] {
            if !Self::BOUNDS.contains(&factor) {
                return Err(BenchError::Correction { given: factor });
            }
        }
        Ok(Self { length, width })
    }

    /// The factor that a measured length shows, when it was estimated as `estimated`.
    ///
    /// # Errors
    /// [`BenchError::Correction`] when it is outside [`Self::BOUNDS`].
    pub fn factor(measured: Millimetres, estimated: Millimetres) -> Result<f64, BenchError> {
        let factor = measured.get() / estimated.get();
        Self::new(factor, 1.0).map(|_| factor)
    }

    /// Factor for the cord in the knot.
    pub const fn length(self) -> f64 {
        self.length
    }

    /// Factor for the finished width.
    pub const fn width(self) -> f64 {
        self.width
    }
}
