//! The legs of a knot on a ground that is not as thick all along: how close their bands stand for a rise,
//! and how far they rise for a distance of bands.

use std::f64::consts::{PI, TAU};

use super::leg::LEAST_ANGLE_TAN;
use super::meridian::{Meridian, packed, root_of};
use super::{Counts, Millimetres};

/// The legs of one heading on such a ground.
#[derive(Clone, Copy, Debug)]
pub(super) struct Legs {
    pub meridian: Meridian,
    /// Legs of one heading.
    pub bands: f64,
    /// Rows from rim to rim.
    pub rows: f64,
}

impl Legs {
    pub(super) fn of(counts: Counts, meridian: Meridian) -> Self {
        Self {
            meridian,
            bands: counts.bands().into(),
            rows: counts.height().into(),
        }
    }

    /// How far apart neighbouring bands of one heading stand when so many rows lie between rims with this
    /// rise; where the thinner rim holds no more than that, as far apart as it lets them.
    pub(super) fn spaced(&self, rise: f64, rows: f64) -> f64 {
        let short = |spacing: f64| {
            2.0 * self.meridian.sines(rise, packed(self.bands, spacing)) - rows * spacing
        };
        root_of(0.0, self.loosest(rise), short)
    }

    /// As far apart as bands can stand at the thinner rim.
    pub(super) fn loosest(&self, rise: f64) -> f64 {
        TAU * self.meridian.thin(rise) / self.bands
    }

    /// The rise at which so many rows of bands at such a distance lie between the rims; none when they do
    /// not, as far as the ground goes or up to `room`.
    pub(super) fn rise_of(&self, rows: f64, spacing: f64, room: f64) -> Option<f64> {
        let ring = packed(self.bands, spacing);
        let thick = self.meridian.thick();
        if ring >= thick * (1.0 - 1e-9) {
            return None;
        }
        let goal = rows * spacing / 2.0;
        let reach = self.meridian.reach(ring).min(room);
        if reach.is_nan() || reach <= 0.0 || self.meridian.sines(reach, ring) < goal {
            return None;
        }
        let sine = (1.0 - (ring / thick).powi(2)).max(1e-12).sqrt();
        let mut far = (2.0 * goal / sine).min(reach);
        while self.meridian.sines(far, ring) < goal && far < reach {
            far = (2.0 * far).min(reach);
        }
        let short = |rise: f64| goal - self.meridian.sines(rise, ring);
        Some(root_of(0.0, far, short))
    }

    /// The rise, no less than `least`, to which a knot can be opened that has so many rows between its rims
    /// at every rise: there its legs stand along the ground at the thinner rim.
    pub(super) fn reach(&self, least: f64, rows: impl Fn(f64) -> f64) -> f64 {
        // No leg is steeper that holds on to its pins.
        let round = TAU * self.meridian.thick() / self.bands;
        let most = (self.meridian.reach(0.0) * (1.0 - 1e-9))
            .min(self.rows * round / LEAST_ANGLE_TAN)
            .max(least);
        let spare =
            |rise: f64| rows(rise) * self.loosest(rise) - 2.0 * self.meridian.sines_at_most(rise);
        root_of(least, most, spare)
    }

    /// Cosine of the angle of a leg from the line along the ground, half of the way between the rims.
    pub(super) fn cosine(&self, rise: f64, spacing: f64) -> f64 {
        (packed(self.bands, spacing) / self.meridian.middle(rise)).min(1.0)
    }

    /// A leg without its overs and unders: `∫ dy / cos α`, with every row of the knot between its rims, as
    /// a leg goes round half a pitch for every row.
    pub(super) fn leg(&self, rise: f64) -> f64 {
        self.meridian.area(rise) / packed(self.bands, self.spaced(rise, self.rows))
    }

    /// Radius of a row of a mat, counted from its outer rim, whose bands stand at such a distance.
    pub(super) fn radius_at(&self, rise: f64, spacing: f64, row: f64) -> f64 {
        let ring = packed(self.bands, spacing);
        let short = |far: f64| row * spacing / 2.0 - self.meridian.sines(far, ring);
        self.meridian.rims(root_of(0.0, rise, short))[1]
    }

    /// Half of the way from a leg to the next of its heading, on a round thing with as much ground from rim
    /// to rim.
    pub(super) fn half_pitch(&self, rise: f64) -> f64 {
        PI * self.meridian.area(rise) / rise / self.bands
    }

    /// Across the circles of the two rims.
    pub(super) fn across_rims(&self, rise: f64) -> [Millimetres; 2] {
        self.meridian
            .rims(rise)
            .map(|radius| Millimetres::computed(2.0 * radius))
    }
}
