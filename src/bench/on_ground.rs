//! The finished knot on a ground that is not as thick all along: a taper, a ball, a mat.

use std::f64::consts::{PI, TAU};

use super::least_cover::ENOUGH;
use super::leg::LEAST_ANGLE;
use super::legs::Legs;
use super::meridian::{Meridian, packed, run_of};
use super::{Bands, Braid, Ground, KnotShape, LeastCover, Millimetres, ShapeError, crimp};

/// As near as a rise need be known, in millimetres, where a rule says how far a knot may be opened.
const NEAR: f64 = 0.01;

/// A knot on such a ground. See [`Meridian`] for the rules.
#[derive(Clone, Copy, Debug)]
pub(super) struct OnGround {
    pub braid: Braid,
    pub legs: Legs,
    /// Width of a band.
    pub band: f64,
    /// What the rims save, in rows.
    pub saved: f64,
    /// How close neighbouring bands of one heading come.
    pub spacing: f64,
    /// Rise of the tight knot.
    pub tight_rise: f64,
    /// The rise that the ground has room for.
    room: f64,
}

impl OnGround {
    /// None on a ground that is as thick all along.
    ///
    /// # Errors
    /// What does not lie there even when it is drawn up tight.
    pub(super) fn of(braid: &Braid) -> Result<Option<Self>, ShapeError> {
        let Some(meridian) = braid.around.meridian(braid.cord, braid.band()) else {
            return Ok(None);
        };
        let object = braid.around.thinnest();
        if braid.cord > object {
            let cord = braid.cord;
            return Err(ShapeError::CordThickerThanObject { cord, object });
        }
        if let Some(error) = braid.around.refuses(braid.cord) {
            return Err(error);
        }
        let open = Self::unchecked(braid, meridian);
        open.check_hole()?;
        match open.room_for_tight() {
            Some(tight_rise) => Ok(Some(Self { tight_rise, ..open })),
            None => Err(open.why_not()),
        }
    }

    /// The rise of a knot drawn up tight, when the ground has room for it.
    pub(super) fn tight_on(braid: &Braid, meridian: Meridian) -> Option<f64> {
        Self::unchecked(braid, meridian).room_for_tight()
    }

    fn unchecked(braid: &Braid, meridian: Meridian) -> Self {
        let room = match (braid.around, meridian) {
            (
                Ground::Flat {
                    hole: Some(hole), ..
                },
                Meridian::Flat { outer },
            ) => outer - hole.get() / 2.0 - braid.band().get() / 2.0,
            _ => f64::INFINITY,
        };
        Self {
            braid: *braid,
            legs: Legs::of(braid.counts, meridian),
            band: braid.band().get(),
            saved: braid.rims(),
            spacing: braid.tight_spacing().get(),
            tight_rise: 0.0,
            room,
        }
    }

    /// The rise of the tight knot: where `∫ sin α dy = (L − e)·(P − 1 + k)·w / 2`.
    fn room_for_tight(&self) -> Option<f64> {
        let rows = self.legs.rows - self.saved;
        self.legs.rise_of(rows, self.spacing, self.room)
    }

    /// The rows of the opened knot but for what the rims save: they save it where cords press on one another,
    /// and so less the more the knot is opened.
    fn rows_between(&self, rise: f64) -> f64 {
        self.legs.rows - self.saved * self.tight_rise / rise
    }

    /// The rise to which the knot can be opened: there its legs stand along the ground at the thinner
    /// rim, or it has come to a hole.
    pub(super) fn reach(&self) -> f64 {
        let reach = self
            .legs
            .reach(self.tight_rise, |rise| self.rows_between(rise));
        reach.min(self.room.max(self.tight_rise))
    }

    /// Angle of a leg from the line along the ground, half of the way between the rims.
    fn angle(&self, rise: f64) -> f64 {
        let spacing = if rise <= self.tight_rise {
            self.spacing
        } else {
            self.legs.spaced(rise, self.rows_between(rise))
        };
        self.legs.cosine(rise, spacing).acos()
    }

    /// The bands of a round thing with as much ground from rim to rim.
    fn bands(&self, rise: f64) -> Bands {
        let half_pitch = self.legs.half_pitch(rise);
        let counts = self.braid.counts;
        Bands::new(
            counts.height(),
            counts.nested(),
            half_pitch,
            self.band,
            rise + self.band,
        )
    }

    /// Those bands as they stand at either rim, and the share of the ground between them that is bare,
    /// away from the rims: the same everywhere, since bands of one heading are as far apart everywhere.
    fn at_rims(&self, rise: f64, bands: &Bands) -> ([Bands; 2], f64) {
        // Straight, the legs meet beyond the bights.
        let stretch = self.legs.rows * bands.row() / rise;
        let spacing = self.legs.spaced(rise, self.legs.rows / stretch);
        let ring = packed(self.legs.bands, spacing);
        let rim = |nth: usize| {
            let half_pitch = PI * self.legs.meridian.rims(rise)[nth] / self.legs.bands;
            // Where a leg leaves its bight.
            let radius = self.legs.meridian.inside(rise, nth, self.band);
            let cosine = (ring / radius).min(STEEPEST);
            bands.at_rim(half_pitch, cosine / (1.0 - cosine * cosine).sqrt())
        };
        let gap = (1.0 - self.band / spacing).max(0.0);
        ([rim(0), rim(1)], gap * gap * stretch)
    }

    /// The share of the ground between the outer edges that is hidden: what is bare is the same share
    /// `(1 − f)²` everywhere between the rims, where `f` is the width of a band over the distance of
    /// bands, and besides the scallops between the bights of either rim, taken as flat. On ground that is as
    /// thick all along that is [`Bands::cover`] to the last digits.
    fn cover(&self, rise: f64, bands: &Bands) -> f64 {
        let (rims, gaps) = self.at_rims(rise, bands);
        let cells =
            TAU * self.legs.meridian.area(rise) * gaps * (self.legs.rows - 1.0) / self.legs.rows;
        let scallops: f64 = rims.iter().map(Bands::bare_along_rim).sum();
        let all = TAU * self.legs.meridian.area_to(rise, self.band / 2.0);
        (1.0 - (cells + self.legs.bands * scallops) / all).clamp(0.0, 1.0)
    }

    /// The knot with this rise, no less than tight and no more than its reach.
    pub(super) fn shape(&self, rise: f64) -> KnotShape {
        let leg = self.legs.leg(rise);
        let spacing = Millimetres::computed(leg / self.legs.rows);
        let bands = self.bands(rise);
        let (rims, _) = self.at_rims(rise, &bands);
        let bare = match self.legs.meridian {
            // On the ball itself, which is as much smaller than where the middle of the cord lies.
            Meridian::Ball { .. } => {
                let ball = self.braid.around.thickest().get();
                let share = ball / (ball + 2.0 * self.braid.cord.get());
                Some(2.0 * share * self.legs.meridian.thin(rise + self.band))
            }
            Meridian::Flat { .. } => Some(2.0 * self.legs.meridian.thin(rise + self.band / 2.0)),
            Meridian::Taper { .. } => None,
        };
        let angle = self.angle(rise);
        KnotShape {
            width: Millimetres::computed(rise + self.band),
            tight: Millimetres::computed(self.tight_rise + self.band),
            angle,
            run: Millimetres::computed(run_of(leg, rise)),
            rise: Millimetres::computed(rise),
            cover: self.cover(rise, &bands),
            scallop: Millimetres::computed(rims[0].scallop().max(rims[1].scallop())),
            leg: Millimetres::computed(leg),
            spacing,
            crimp: crimp::crimp(spacing, self.braid.cord),
            bands,
            is_borne_out: self.braid.is_borne_out(self.angle(self.tight_rise).cos()),
            rims: self.legs.across_rims(rise),
            bare: bare.map(Millimetres::computed),
        }
    }

    /// Opened to a width.
    ///
    /// # Errors
    /// [`ShapeError::NarrowerThanTight`] and [`ShapeError::WiderThanReach`].
    pub(super) fn opened(&self, width: Millimetres) -> Result<KnotShape, ShapeError> {
        let rise = width.get() - self.band;
        let tight = self.tight_rise + self.band;
        // A hair narrower or wider is what the program told, rounded.
        if width.get() < tight * (1.0 - 1e-9) {
            let least = Millimetres::computed(tight);
            return Err(ShapeError::NarrowerThanTight {
                given: width,
                least,
            });
        }
        let reach = self.reach();
        if width.get() > (reach + self.band) * (1.0 + 1e-9) {
            let most = Millimetres::computed(reach + self.band);
            return Err(ShapeError::WiderThanReach { given: width, most });
        }
        Ok(self.shape(rise.clamp(self.tight_rise, reach)))
    }

    /// Whether it hides enough, and its legs are not too steep, when it is opened as far as it goes.
    pub(super) fn hides_at_reach(&self, least: LeastCover) -> bool {
        let cover = |rise: f64| self.cover(rise, &self.bands(rise));
        let reach = self.reach();
        self.angle(self.tight_rise) >= LEAST_ANGLE
            && self.angle(reach) >= LEAST_ANGLE
            && cover(reach) >= least.of(cover(self.tight_rise)) + ENOUGH / 2.0
    }

    /// The rise of the widest knot that hides enough; none when even the tight one does not, or its legs
    /// stand too steep.
    pub(super) fn widest(&self, least: LeastCover) -> Option<f64> {
        let cover = |rise: f64| self.cover(rise, &self.bands(rise));
        let tight = cover(self.tight_rise);
        let wanted = least.of(tight);
        if tight < wanted || self.angle(self.tight_rise) < LEAST_ANGLE {
            return None;
        }
        // A hair on the safe side: no less is hidden than is wanted.
        let goal = wanted + ENOUGH / 2.0;
        let hides = |rise: f64| cover(rise) >= goal && self.angle(rise) >= LEAST_ANGLE;
        let (mut near, mut far) = (self.tight_rise, self.reach());
        if hides(far) {
            return Some(far);
        }
        while far - near > NEAR {
            let between = f64::midpoint(near, far);
            if hides(between) {
                near = between;
            } else {
                far = between;
            }
        }
        Some(near)
    }
}

/// Cosine of the steepest angle with which the scallops of a rim are measured.
const STEEPEST: f64 = 0.995;
