//! From tight to open: the widths that a knot can be drawn up to.

use super::bands::Measured;
use super::braid::Spacings;
use super::least_cover::ENOUGH;
use super::on_ground::OnGround;
use super::{Braid, LeastCover, Millimetres};

/// The widths of a knot, from tight to the widest that still hides enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WidthRange {
    /// As tight as it goes, by the rule of [`Braid::tight`]. Where simulated cord does not bear that
    /// out it may be up to a fifth less.
    pub tight: Millimetres,
    /// The widest that still hides enough, its legs no less than [`LEAST_ANGLE`](super::LEAST_ANGLE) from the axis.
    pub widest: Millimetres,
}

/// Where in its range a knot is drawn up to.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, DrawnUp, LeastCover, Millimetres, WidthRange};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let grip = Braid::new(Counts::new(5, 7, 2).unwrap(), mm(4.0), mm(28.0));
/// let range = WidthRange::of(&grip, LeastCover::default()).unwrap();
/// assert_eq!(range.drawn_up(range.tight), DrawnUp::Tight);
/// let middle = mm(0.7 * range.tight.get() + 0.3 * range.widest.get());
/// assert_eq!(range.drawn_up(middle), DrawnUp::Eased);
/// assert_eq!(range.drawn_up(range.widest), DrawnUp::Open);
/// ```
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
        if let Some(ground) = OnGround::of(braid).ok()? {
            return Self::on_ground(&ground, least);
        }
        let spacings = braid.spacings().ok()?;
        if spacings.is_too_steep() {
            return None;
        }
        Self::spaced(&spacings, braid.counts.height(), least, None)
    }

    /// On a ground that is not as thick all along.
    pub(super) fn on_ground(ground: &OnGround, least: LeastCover) -> Option<Self> {
        let widest = ground.widest(least)?;
        let of = |rise: f64| Millimetres::computed(rise + ground.band);
        Some(Self {
            tight: of(ground.tight_rise),
            widest: of(widest),
        })
    }

    /// Of so many leads in these spacings, when their legs are not too steep; quicker when it is
    /// known how much some width hides.
    pub(super) fn spaced(
        spacings: &Spacings,
        leads: u16,
        least: LeastCover,
        known: Option<Measured>,
    ) -> Option<Self> {
        let width = spacings.tight_width(leads);
        let tight = Measured::from(spacings.bands(leads, width));
        let wanted = least.of(tight.cover);
        if tight.cover < wanted {
            return None;
        }
        // A hair on the safe side: no less is hidden than is wanted.
        let goal = wanted + ENOUGH / 2.0;
        let widest = if tight.cover > goal {
            widest(spacings, leads, tight, known, goal)
        } else {
            width
        };
        Some(Self {
            tight: Millimetres::computed(width),
            widest: Millimetres::computed(widest),
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

/// As near as a rule can be read.
const NEAR: f64 = 0.01;

/// The width from tight up to the steepest at which the cover falls to `goal`, by secants that
/// are kept between bands that are too narrow and too wide.
///
/// Away from the rims the bare share is `(1 − f)²`, where `f`, how much the bands fill, is in
/// proportion to the cosecant of the angle between leg and rim. So the root of the bare share is
/// nearly a straight line over that cosecant, and a few secants find where it reaches a share.
fn widest(
    spacings: &Spacings,
    leads: u16,
    tight: Measured,
    known: Option<Measured>,
    goal: f64,
) -> f64 {
    let steepest = spacings.steepest(leads).max(tight.bands.width());
    let at_steepest = || Measured::from(spacings.bands(leads, steepest));
    let turned_to = |cosecant: f64| {
        let bands = tight.bands.turned_to(cosecant);
        if bands.width() < steepest {
            bands.into()
        } else {
            at_steepest()
        }
    };
    let root = (1.0 - goal).max(0.0).sqrt();
    let place = |at: &Measured| {
        let bare = (1.0 - at.cover).max(0.0).sqrt();
        (at.bands.cosecant(), bare - root)
    };
    let (mut narrow, mut wide) = (tight.bands, None);
    let mut before = place(&tight);
    let known = known.filter(|known| known.bands.width() < steepest);
    let mut here = known.unwrap_or_else(|| {
        let next = before.0 + before.1 * 2.0 * narrow.half_pitch() / narrow.band();
        if next > 1.0 {
            turned_to(next)
        } else {
            at_steepest()
        }
    });
    for nth in 0..60 {
        if (here.cover - goal).abs() < ENOUGH / 2.0 {
            return here.bands.width();
        }
        if here.cover < goal {
            wide = Some(here.bands);
        } else if here.bands.width() < steepest {
            narrow = here.bands;
        } else {
            return steepest;
        }
        if wide.is_some_and(|wide| wide.width() - narrow.width() < NEAR) {
            break;
        }
        let now = place(&here);
        let next = now.0 - now.1 * (now.0 - before.0) / (now.1 - before.1);
        let least = wide.map_or(1.0, |wide| wide.cosecant());
        let is_between = least < next && next < narrow.cosecant();
        // A secant comes nearer by at least the factor by which the one before did.
        let misses_by = now.1 * now.1 / before.1.abs();
        if nth > 0 && is_between && now.1.abs() < 30.0 * ENOUGH && misses_by < ENOUGH / 5.0 {
            return tight.bands.turned_to(next).width().min(steepest);
        }
        here = match wide {
            _ if is_between => turned_to(next),
            Some(wide) => turned_to(f64::midpoint(wide.cosecant(), narrow.cosecant())),
            None => at_steepest(),
        };
        before = now;
    }
    narrow.width()
}
