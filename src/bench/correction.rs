//! What the tyer's own log says about an estimate.

use std::ops::RangeInclusive;

use super::{BenchError, Millimetres};
use crate::knot::Quantity;

/// Factors by which estimates are multiplied, and how many ties they come from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Correction {
    length: f64,
    give: f64,
    ties: u16,
}

impl Default for Correction {
    /// Nothing measured yet: both factors are 1.
    fn default() -> Self {
        Self {
            length: 1.0,
            give: 1.0,
            ties: 0,
        }
    }
}

impl Correction {
    /// The factors taken. Anything beyond points to a slip in measuring. *Common practice.*
    pub const BOUNDS: RangeInclusive<f64> = 0.5..=2.0;

    /// A factor for the cord in the knot (not its tails) and one for `k`, how close its bands come.
    ///
    /// # Errors
    /// [`BenchError::Correction`] when one is outside [`Self::BOUNDS`] or not a number.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::Correction;
    ///
    /// let correction = Correction::new(1.05, 0.9).unwrap().from_ties(3);
    /// assert_eq!(correction.ties(), 3);
    /// assert!(Correction::new(1.0, 9.0).is_err());
    /// ```
    pub fn new(length: f64, give: f64) -> Result<Self, BenchError> {
        for factor in [length, give] {
            if !Self::BOUNDS.contains(&factor) {
                return Err(BenchError::Correction { given: factor });
            }
        }
        Ok(Self {
            length,
            give,
            ties: 0,
        })
    }

    /// This correction, said to be learnt from so many ties.
    #[must_use]
    pub const fn from_ties(self, ties: u16) -> Self {
        Self { ties, ..self }
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

    /// Factor for `k`.
    pub const fn give(self) -> f64 {
        self.give
    }

    /// How many measured ties it comes from; 0 when nothing is corrected.
    pub const fn ties(self) -> u16 {
        self.ties
    }
}

/// What the log says of ties in one weave, for every number of passes.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Correction, Corrections};
///
/// // Doubled knots took a tenth more cord than was worked out; no other kind was measured.
/// let doubled = Correction::new(1.1, 1.0).unwrap().from_ties(2);
/// let corrections = Corrections::by_passes(|passes| match passes {
///     2 => doubled,
///     _ => Correction::default(),
/// });
/// assert_eq!(corrections.of(2).length(), 1.1);
/// assert_eq!(corrections.of(3), Correction::default());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Corrections {
    by_passes: [Correction; MOST_PASSES],
}

const MOST_PASSES: usize = *Quantity::Passes.bounds().end() as usize;

impl Corrections {
    /// From the correction of each number of passes.
    pub fn by_passes(correction: impl Fn(u16) -> Correction) -> Self {
        let mut passes = 0;
        Self {
            by_passes: [(); MOST_PASSES].map(|()| {
                passes += 1;
                correction(passes)
            }),
        }
    }

    /// For so many passes; nothing for a number that no knot has.
    pub fn of(&self, passes: u16) -> Correction {
        let index = usize::from(passes).checked_sub(1);
        let found = index.and_then(|index| self.by_passes.get(index));
        found.copied().unwrap_or_default()
    }
}

impl From<Correction> for Corrections {
    /// One correction for whatever number of passes.
    fn from(correction: Correction) -> Self {
        Self::by_passes(|_| correction)
    }
}
