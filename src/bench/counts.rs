//! The counts of a tie, and how often its cords change sides.

use crate::knot::{
    Knot, KnotError, Lattice, Laying, LayingOrder, Nest, Quantity, Weave, lead_tucks,
};

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
        // Of more than a hundred rows one change is less than the least there is a number for.
        Self(u8::try_from(hundredths).unwrap_or(100).clamp(1, 100))
    }

    /// That of a knot. Where bights are nested, over n under n counts by its runs, whatever is left of
    /// them at the rims.
    pub fn of_knot(knot: &Knot) -> Self {
        let weave = knot.weave();
        let run = match weave {
            Weave::Run(run) => Some(*run),
            Weave::Rows(_) => weave.twin_run(knot.rows()),
        };
        match run {
            Some(run) if knot.lattice().is_interwoven() => Self::of(&Weave::Run(run), run),
            _ => Self::of(weave, knot.rows()),
        }
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
    lattice: Lattice,
    passes: u16,
    interlacing: Interlacing,
}

impl Counts {
    /// Counts of a plain knot, in over one, under one.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when a count is out of bounds.
    pub fn new(leads: u16, bights: u16, passes: u16) -> Result<Self, KnotError> {
        Self::on(Lattice::plain(leads, bights)?, passes)
    }

    /// The same of any knot.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn on(lattice: Lattice, passes: u16) -> Result<Self, KnotError> {
        Ok(Self {
            lattice,
            passes: Quantity::Passes.check(passes)?,
            interlacing: Interlacing::PLAIN,
        })
    }

    /// Counts of this knot in so many passes.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn of(knot: &Knot, passes: u16) -> Result<Self, KnotError> {
        let interlacing = Interlacing::of_knot(knot);
        Ok(Self::on(knot.lattice(), passes)?.interlaced(interlacing))
    }

    /// The same in a weave that changes sides as often as this.
    #[must_use]
    pub const fn interlaced(self, interlacing: Interlacing) -> Self {
        Self {
            interlacing,
            ..self
        }
    }

    /// What the knot lies on.
    pub const fn lattice(self) -> Lattice {
        self.lattice
    }

    /// Cords met on a straight line from rim to rim; of an interwoven knot, leads of the first cord.
    pub const fn leads(self) -> u16 {
        self.lattice.leads()
    }

    /// Scallops along each rim, and pins in each row.
    pub const fn bights(self) -> u16 {
        self.lattice.bights()
    }

    /// Bights nested at each rim: 1 in a plain knot.
    pub const fn nested(self) -> u16 {
        self.lattice.nested()
    }

    /// Legs of one heading round the tube: bights of all nests.
    pub const fn bands(self) -> u16 {
        self.lattice.nested() * self.lattice.bights()
    }

    /// Rows from rim to rim: of a plain knot its leads.
    pub const fn height(self) -> u16 {
        self.lattice.height()
    }

    /// Trips of the cord round the whole pattern.
    pub const fn passes(self) -> u16 {
        self.passes
    }

    /// How often the cords change sides.
    pub const fn interlacing(self) -> Interlacing {
        self.interlacing
    }

    /// Closed paths: one cord, or several.
    pub const fn strands(self) -> u16 {
        self.lattice.strands()
    }

    /// Legs of all passes.
    pub fn legs(self) -> u32 {
        self.lattice.legs() * u32::from(self.passes)
    }

    /// Tucks of the whole tie in over n, under n, and in its twin: pass by pass, or of an interwoven
    /// knot cord by cord.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::Counts;
    ///
    /// // 8 of the 28 crossings of the lead pass, begun with under, and all in the second.
    /// assert_eq!(Counts::new(5, 7, 2).unwrap().tucks(1), [48, 36]);
    /// ```
    pub fn tucks(self, run: u16) -> [u32; 2] {
        let lattice = self.lattice;
        if lattice.is_interwoven()
            && let Ok(knot) = Knot::woven(lattice, Weave::Run(run))
        {
            // Followers of a cord that is finished before the next meet less.
            let order = LayingOrder::usual(&knot);
            if let Ok(laying) = Laying::new(knot, self.passes, order) {
                return [laying.tucks(), laying.with_twin().tucks()];
            }
        }
        let lead = lead_tucks(lattice, &Weave::Run(run));
        let crossings = lattice.crossings();
        let followers = (u32::from(self.passes) - 1) * crossings;
        [lead, crossings - lead].map(|lead| lead + followers)
    }

    /// Tucks of the whole tie in over one, under one (each cord by itself, where they are interwoven),
    /// begun so that they are fewest.
    pub fn fewest_tucks(self) -> u32 {
        let [one, twin] = self.tucks(self.nested());
        one.min(twin)
    }

    /// So many leads, bights and passes, with as many nests and interlaced as these; none when there is no
    /// such knot.
    pub(super) fn counting(self, leads: u16, bights: u16, passes: u16) -> Option<Self> {
        let plain = Lattice::plain(leads, bights).ok()?;
        let lattice = plain.interwoven(self.nested(), self.lattice.lands());
        let counts = Self::on(lattice.ok()?, passes).ok()?;
        Some(counts.interlaced(self.interlacing))
    }

    /// The way from rim to rim that a leg of these cords goes, as a share of the whole.
    pub fn share(self, nest: Nest) -> f64 {
        let [low, high] = nest.heights.map(f64::from);
        (high - low) / f64::from(self.height())
    }

    /// Whether the top pins stand half way between the bottom ones.
    pub const fn is_staggered(self) -> bool {
        self.lattice.is_staggered()
    }
}

impl From<&Laying> for Counts {
    fn from(laying: &Laying) -> Self {
        let knot = laying.knot();
        Self {
            lattice: knot.lattice(),
            passes: laying.passes(),
            interlacing: Interlacing::of_knot(knot),
        }
    }
}
