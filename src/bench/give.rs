//! How closely a cord lies when a knot is drawn up.

use std::ops::RangeInclusive;

use strum::{EnumString, IntoStaticStr, VariantArray};

use super::{BenchError, Interlacing};

/// How close two neighbouring bands come with the other family of cords passing between them,
/// from the middle of the last cord of one to the middle of the first of the next, in cord
/// diameters.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Give;
///
/// let measured = Give::new(1.75).unwrap();
/// assert!(Give::SOFT < measured && measured < Give::HARD);
/// assert!(Give::new(0.0).is_err());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Give(f64);

/// What a cord is like, for want of a measured [`Give`].
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Firmness, Give};
///
/// assert_eq!("soft".parse(), Ok(Firmness::Soft));
/// assert_eq!(Give::from(Firmness::Hard), Give::HARD);
/// // A cord that was measured lies as it lies, and needs no word for it.
/// assert_eq!(Firmness::of(Give::new(1.75).unwrap()), None);
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantArray,
)]
#[strum(serialize_all = "lowercase")]
pub enum Firmness {
    /// Round and hard: it keeps its shape where cords cross.
    Hard,
    /// Braided or laid line that gives a little where cords cross.
    #[default]
    Soft,
    /// Ribbon, or hollow braid that flattens.
    Flat,
}

/// A weave of longer runs over that of over one, under one: bands come closer by so much. From
/// cord simulated as tight as it goes (`tests/data/tight_widths_weaves.csv`): 1.62 for 1.89.
const LONG_RUNS: f64 = 1.62 / 1.89;

/// Interwoven knots of three nests over those of two, and of four over those of three: from cord
/// simulated as tight as it goes (`tests/data/simulated_nested_widths.csv`), 1.50 and 1.38 for 1.62.
const FURTHER_NEST: f64 = 0.12 / 1.62;

impl Give {
    /// The most nests that were simulated; more count as so many.
    pub(super) const MOST_NESTS: u16 = 4;
    /// The numbers taken, in cord diameters. Cords that keep their thickness cannot lie closer than
    /// 1, and none needs more than two diameters where one cord passes between.
    pub const BOUNDS: RangeInclusive<f64> = 0.8..=2.5;

    /// Hard round cord: fitted to 43 simulated knots (`tests/data/tight_widths.csv`). A square
    /// plain weave jams at √3 (Peirce, J. Text. Inst. 28 (1937) T45); crossings at a slant need
    /// more.
    pub const HARD: Self = Self(1.89);

    /// Soft braided or laid line: what Philpott's mat comes to (*The Ultimate Book of
    /// Decorative Knots*, p. 25: 6 lead 7 bight doubled of 1/4 in line, 6 in across).
    pub const SOFT: Self = Self(1.62);

    /// Ribbon and hollow braid: bands lie side by side, and the cords between flatten away.
    pub const FLAT: Self = Self(1.0);

    /// A measured one, in cord diameters.
    ///
    /// # Errors
    /// [`BenchError::Give`] when it is outside [`Self::BOUNDS`] or not a number.
    pub fn new(diameters: f64) -> Result<Self, BenchError> {
        if Self::BOUNDS.contains(&diameters) {
            Ok(Self(diameters))
        } else {
            Err(BenchError::Give {
                given: diameters.to_string(),
            })
        }
    }

    /// Reads one as a person types it: `1.7` or `1,7`.
    ///
    /// # Errors
    /// [`BenchError::Give`] with the text as given, trimmed.
    pub fn parse(text: &str) -> Result<Self, BenchError> {
        let given = text.trim();
        let unusable = || BenchError::Give {
            given: given.to_owned(),
        };
        let diameters = given.replace(',', ".").parse().map_err(|_| unusable())?;
        Self::new(diameters).map_err(|_| unusable())
    }

    /// In cord diameters.
    pub const fn get(self) -> f64 {
        self.0
    }

    /// For cords that change from over to under as often as this. Where they change at half of
    /// their crossings or at fewer, bands come closer by the same share for every cord, but never
    /// closer than side by side; in between, in proportion.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Give, Interlacing};
    /// use marlinspeak::knot::Weave;
    ///
    /// // Over two, under two, in five leads: four rows of crossings.
    /// let over_two = Interlacing::of(&Weave::Run(2), 4);
    /// assert!((Give::HARD.woven(over_two).get() - 1.62).abs() < 1e-12);
    /// assert_eq!(Give::FLAT.woven(over_two), Give::FLAT);
    /// ```
    #[must_use]
    pub fn woven(self, interlacing: Interlacing) -> Self {
        let long_runs = (2.0 * (1.0 - interlacing.share())).clamp(0.0, 1.0);
        let closer = 1.0 - long_runs * (1.0 - LONG_RUNS);
        Self((self.0 * closer).max(self.0.min(1.0)))
    }

    /// Where so many cords are interwoven, one nested in the other. Two come no closer than others that
    /// change sides as often; each further one lets bands come closer by the same share again.
    pub(super) fn nested(self, nests: u16) -> Self {
        let further = nests.clamp(2, Self::MOST_NESTS) - 2;
        let closer = 1.0 - FURTHER_NEST * f64::from(further);
        Self((self.0 * closer).max(self.0.min(1.0)))
    }

    /// Changed by what a log says, within what a cord can do.
    pub(super) fn corrected(self, factor: f64) -> Self {
        Self((self.0 * factor).clamp(*Self::BOUNDS.start(), *Self::BOUNDS.end()))
    }
}

impl From<Firmness> for Give {
    fn from(firmness: Firmness) -> Self {
        match firmness {
            Firmness::Hard => Self::HARD,
            Firmness::Soft => Self::SOFT,
            Firmness::Flat => Self::FLAT,
        }
    }
}

impl Default for Give {
    /// Soft line is what most tyers have.
    fn default() -> Self {
        Firmness::default().into()
    }
}

impl Firmness {
    /// Every kind, the usual one in the middle.
    pub const ALL: &'static [Self] = Self::VARIANTS;

    /// The kind with exactly this give, if there is one.
    pub fn of(give: Give) -> Option<Self> {
        Self::ALL
            .iter()
            .copied()
            .find(|firmness| Give::from(*firmness) == give)
    }

    /// Its name in options and documents.
    pub fn name(self) -> &'static str {
        self.into()
    }
}
