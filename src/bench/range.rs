//! From tight to open: the widths that a knot can be drawn up to.

use super::on_tube::LEAST_ANGLE;
use super::{Braid, KnotShape, Millimetres};

/// How much of the ground the tyer wants hidden at the least.
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

/// The widths of a knot, from tight to the widest that still hides enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WidthRange {
    /// As tight as it goes.
    pub tight: Millimetres,
    /// The widest that still hides enough, its legs no less than [`LEAST_ANGLE`] from the axis.
    pub widest: Millimetres,
}

/// Where in its range a knot is drawn up to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum DrawnUp {
    /// As tight as it goes, or a hand's breadth from it: the first tenth of the range.
    Tight,
    /// In the nearer half.
    Eased,
    /// In the further half.
    Open,
}

impl WidthRange {
    /// Of a knot; `None` when it hides too little even when tight, or does not go round.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Braid, Counts, LeastCover, Millimetres, WidthRange};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let braid = Braid::new(Counts::new(17, 4, 1).unwrap(), mm(4.0), mm(30.0));
    /// let range = WidthRange::of(&braid, LeastCover::default()).unwrap();
    /// assert!(range.tight < range.widest);
    /// let most = braid.tight().unwrap().cover;
    /// let open = braid.opened(range.widest).unwrap().cover;
    /// assert!((open - 0.9 * most).abs() < 1e-3);
    /// ```
    pub fn of(braid: &Braid, least: LeastCover) -> Option<Self> {
        Self::from_tight(braid, &braid.tight().ok()?, least)
    }

    /// The range of a knot whose tight shape is known.
    pub(super) fn from_tight(braid: &Braid, tight: &KnotShape, least: LeastCover) -> Option<Self> {
        let wanted = least.of(tight.cover);
        if tight.cover < wanted || tight.angle < LEAST_ANGLE {
            return None;
        }
        let steepest = braid.width_at(LEAST_ANGLE)?.max(tight.width.get());
        Some(Self {
            tight: tight.width,
            widest: Millimetres::computed(widest(braid, tight, wanted, steepest)),
        })
    }

    /// Whether a width lies within.
    pub fn contains(&self, width: Millimetres) -> bool {
        (self.tight..=self.widest).contains(&width)
    }

    /// The nearest width within.
    #[must_use]
    pub fn nearest(&self, width: Millimetres) -> Millimetres {
        if width < self.tight {
            self.tight
        } else if width > self.widest {
            self.widest
        } else {
            width
        }
    }

    /// How far open a width is, 0 for tight to 1 for the widest.
    pub fn openness(&self, width: Millimetres) -> f64 {
        let room = self.widest.get() - self.tight.get();
        if room <= 1e-9 * self.tight.get() {
            return 0.0;
        }
        ((width.get() - self.tight.get()) / room).clamp(0.0, 1.0)
    }

    /// Where in the range a width lies, in one word.
    pub fn drawn_up(&self, width: Millimetres) -> DrawnUp {
        match self.openness(width) {
            open if open <= 0.1 => DrawnUp::Tight,
            open if open <= 0.5 => DrawnUp::Eased,
            _ => DrawnUp::Open,
        }
    }
}

/// The width between tight and `steepest` at which the cover falls to `wanted`, by false position
/// in the manner of Illinois (M. Dowell and P. Jarratt, BIT 11 (1971) 168, from memory).
fn widest(braid: &Braid, tight: &KnotShape, wanted: f64, steepest: f64) -> f64 {
    /// As near as a rule can be read.
    const NEAR: f64 = 0.01;
    /// Most knots are opened no further than by this factor; those that are, by it once more.
    const STEP: f64 = 1.3;
    /// As near as a cover need be known.
    const ENOUGH: f64 = 1e-5;
    // A hair on the safe side: no less is hidden than is wanted.
    let wanted = wanted + ENOUGH / 2.0;
    let over = |width: f64| braid.cover_at(width) - wanted;
    let (mut low, mut above) = (tight.width.get(), tight.cover - wanted);
    if above <= 0.0 {
        return low;
    }
    let mut high = (STEP * low).min(steepest);
    let mut below = over(high);
    while below >= 0.0 {
        if high >= steepest {
            return steepest;
        }
        (low, above) = (high, below);
        high = (STEP * high).min(steepest);
        below = over(high);
    }
    let mut moved_low = None;
    for _ in 0..60 {
        let next = low + (high - low) * above / (above - below);
        let there = over(next);
        if there.abs() < ENOUGH / 2.0 {
            return next;
        }
        if high - low < NEAR {
            return low;
        }
        if there > 0.0 {
            (low, above) = (next, there);
            if moved_low == Some(true) {
                below /= 2.0;
            }
            moved_low = Some(true);
        } else {
            (high, below) = (next, there);
            if moved_low == Some(false) {
                above /= 2.0;
            }
            moved_low = Some(false);
        }
    }
    low
}
