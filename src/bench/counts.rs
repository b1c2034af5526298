//! The counts of a tie, and how often its cords change sides.

use crate::knot::{Knot, KnotError, Laying, Quantity, Weave, lead_tucks};

/// How often a cord changes from over to under, as a share of its crossings: 1 for over one,
/// under one; ½ for over two, under two.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Interlacing;
/// use marlinspeak::knot::Weave;
///
/// assert_eq!(Interlacing::of(&Weave::Run(1), 4), Interlacing::PLAIN);
/// assert_eq!(Interlacing::of(&Weave::Run(2), 4).share(), 0.5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Interlacing(u8);

impl Interlacing {
    /// Over one, under one.
    pub const PLAIN: Self = Self(100);

    /// Of a weave over so many rows of crossings (leads − 1). At a rim a cord always changes:
    /// it turns from rising to falling in one row.
    ///
    /// # Panics
    /// When a row code has fewer rows; see [`Weave::check`].
    pub fn of(weave: &Weave, rows: u16) -> Self {
        let changes = (1..rows)
            .filter(|&row| weave.rising_over(row) != weave.rising_over(row + 1))
            .count();
        let hundredths = 100 * (changes + 1) / usize::from(rows.max(1));
        Self(u8::try_from(hundredths).unwrap_or(100).min(100))
    }

    /// From hundredths, 1 … 100.
    pub fn from_hundredths(hundredths: u8) -> Option<Self> {
        (1..=100).contains(&hundredths).then_some(Self(hundredths))
    }

    /// In hundredths.
    pub const fn hundredths(self) -> u8 {
        self.0
    }

    /// As a share, 0 … 1.
    pub fn share(self) -> f64 {
        f64::from(self.0) / 100.0
    }
}

/// Leads, bights and passes, each within its bounds, and how the cords interlace.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Counts;
///
/// let counts = Counts::new(5, 7, 2).unwrap();
/// assert_eq!((counts.strands(), counts.legs()), (1, 28));
/// assert!(counts.is_staggered());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Counts {
    leads: u16,
    bights: u16,
    passes: u16,
    interlacing: Interlacing,
}

impl Counts {
    /// Over one, under one.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] for the first count outside [`Quantity::bounds`].
    pub fn new(leads: u16, bights: u16, passes: u16) -> Result<Self, KnotError> {
        Ok(Self {
            leads: Quantity::Leads.check(leads)?,
            bights: Quantity::Bights.check(bights)?,
            passes: Quantity::Passes.check(passes)?,
            interlacing: Interlacing::PLAIN,
        })
    }

    /// Of a knot in so many passes.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn of(knot: &Knot, passes: u16) -> Result<Self, KnotError> {
        let interlacing = Interlacing::of(knot.weave(), knot.rows());
        Ok(Self::new(knot.leads(), knot.bights(), passes)?.interlaced(interlacing))
    }

    /// The same counts in another weave.
    #[must_use]
    pub const fn interlaced(self, interlacing: Interlacing) -> Self {
        Self {
            interlacing,
            ..self
        }
    }

    /// Cords met on a straight line from rim to rim.
    pub const fn leads(self) -> u16 {
        self.leads
    }

    /// Scallops along each rim, and pins on each ring.
    pub const fn bights(self) -> u16 {
        self.bights
    }

    /// Trips of the cord round the whole pattern.
    pub const fn passes(self) -> u16 {
        self.passes
    }

    /// How often its cords change sides.
    pub const fn interlacing(self) -> Interlacing {
        self.interlacing
    }

    /// Closed paths in the knot: the greatest common divisor of leads and bights.
    pub const fn strands(self) -> u16 {
        let (mut one, mut other) = (self.leads, self.bights);
        while other != 0 {
            (one, other) = (other, one % other);
        }
        one
    }

    /// Legs in the whole tie: two for each bight and pass.
    pub fn legs(self) -> u32 {
        2 * u32::from(self.bights) * u32::from(self.passes)
    }

    /// Tucks of the whole tie, pass by pass, in over n, under n, and in its twin.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::Counts;
    ///
    /// // 8 of the 28 crossings of the lead pass, begun with under, and all in the second.
    /// assert_eq!(Counts::new(5, 7, 2).unwrap().tucks(1), [48, 36]);
    /// ```
    pub fn tucks(self, run: u16) -> [u32; 2] {
        let lead = lead_tucks(self.leads, self.bights, &Weave::Run(run));
        let crossings = u32::from(self.bights) * u32::from(self.leads - 1);
        let followers = (u32::from(self.passes) - 1) * crossings;
        [lead, crossings - lead].map(|lead| lead + followers)
    }

    /// Tucks of the whole tie in over one, under one, begun so that they are fewest.
    pub fn fewest_tucks(self) -> u32 {
        let [one, twin] = self.tucks(1);
        one.min(twin)
    }

    /// Whether the top pins stand half a pitch off the bottom ones: so when the leads are odd.
    pub const fn is_staggered(self) -> bool {
        !self.leads.is_multiple_of(2)
    }
}

impl From<&Laying> for Counts {
    fn from(laying: &Laying) -> Self {
        let knot = laying.knot();
        Self {
            leads: knot.leads(),
            bights: knot.bights(),
            passes: laying.passes(),
            interlacing: Interlacing::of(knot.weave(), knot.rows()),
        }
    }
}
