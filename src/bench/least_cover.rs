//! How much of the ground is to be hidden at the least.

/// As near as a cover need be known.
pub(super) const ENOUGH: f64 = 1e-5;

/// How much of the ground the tyer wants hidden at the least.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, LeastCover, Millimetres, WidthRange};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let grip = Braid::new(Counts::new(5, 7, 2).unwrap(), mm(4.0), mm(28.0));
/// let widest = |least| WidthRange::of(&grip, least).map(|range| range.widest);
/// // Who asks for less to be hidden may open the knot further.
/// assert!(widest(LeastCover::OfTight(0.8)) > widest(LeastCover::OfTight(0.9)));
/// assert_eq!(widest(LeastCover::Share(1.0)), None, "no such knot hides everything");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LeastCover {
    /// A share of what the knot hides when it is drawn up tight.
    OfTight(f64),
    /// A share of the ground between the outer edges of the knot.
    Share(f64),
}

impl Default for LeastCover {
    /// Nine tenths of what the tight knot hides: *common practice, no source*.
    fn default() -> Self {
        Self::OfTight(0.9)
    }
}

impl LeastCover {
    pub(super) fn of(self, tight: f64) -> f64 {
        match self {
            Self::OfTight(share) => share * tight,
            Self::Share(share) => share,
        }
    }
}
