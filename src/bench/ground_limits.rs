//! Why a knot does not lie on a taper, a ball or a mat, and what would.

use std::f64::consts::PI;

use super::meridian::{flat_rise, packed};
use super::on_ground::OnGround;
use super::{Braid, Ground, Millimetres, ShapeError};

/// The smallest ball that a cord goes round as the rules have it, in thicknesses of the cord: on smaller
/// ones simulated cord was never seen to lie in two layers (`tests/data/simulated_balls.csv`, 4 mm on 7 mm).
const LEAST_BALL: f64 = 1.75;

impl Ground {
    /// What is wrong with it whatever the knot, for a cord so thick: a taper that is no longer than it
    /// loses, a ball that is hardly thicker than the cord.
    pub(super) fn refuses(&self, cord: Millimetres) -> Option<ShapeError> {
        match *self {
            Self::Taper { bottom, top, over } => {
                let lost = (bottom.get() - top.get()).abs() / 2.0;
                (lost >= over.get()).then(|| ShapeError::TaperTooShort {
                    over,
                    least: Millimetres::computed(lost),
                })
            }
            // A hair smaller is what the program told, rounded.
            Self::Ball(ball) => (ball.get() < LEAST_BALL * cord.get() * (1.0 - 1e-9)).then(|| {
                ShapeError::BallTooSmall {
                    cord,
                    ball,
                    cord_to: Millimetres::computed(ball.get() / LEAST_BALL),
                    ball_from: Millimetres::computed(LEAST_BALL * cord.get()),
                }
            }),
            Self::Round(_) | Self::Flat { .. } => None,
        }
    }
}

impl OnGround {
    /// Why it does not lie there even when drawn up tight.
    pub(super) fn why_not(&self) -> ShapeError {
        let counts = self.braid.counts;
        let (leads, bights) = (counts.leads(), counts.bights());
        let ring = packed(self.legs.bands, self.spacing);
        let most_leads = (2..leads).rev().find(|&leads| self.takes(leads, bights));
        let most_bights = (2..bights).rev().find(|&bights| self.takes(leads, bights));
        match self.braid.around {
            Ground::Ball(ball) => ShapeError::BallFull {
                leads,
                bights,
                ball,
                ball_from: self.ball_from(),
                most_leads,
                most_bights,
            },
            Ground::Flat { outer, hole } => ShapeError::MatFull {
                leads,
                bights,
                outer,
                outer_from: self.outer_from(hole),
                most_leads,
                most_bights,
            },
            Ground::Round(_) | Ground::Taper { .. } => ShapeError::ThinEnd {
                leads,
                bights,
                thick_from: Millimetres::computed(2.0 * (ring - self.braid.cord.get()).max(0.01)),
                most_leads,
                most_bights,
            },
        }
    }

    /// That the bights of a mat go round its hole, if it has one.
    pub(super) fn check_hole(&self) -> Result<(), ShapeError> {
        let Ground::Flat {
            hole: Some(hole), ..
        } = self.braid.around
        else {
            return Ok(());
        };
        let hole_from = 2.0 * packed(self.legs.bands, self.spacing) - self.band;
        // A hair smaller is what the program told, rounded.
        if hole.get() >= hole_from * (1.0 - 1e-9) {
            return Ok(());
        }
        let counts = self.braid.counts;
        let round = PI * (hole.get() + self.band) / self.spacing / f64::from(counts.nested());
        Err(ShapeError::HoleTooSmall {
            bights: counts.bights(),
            hole,
            hole_from: Millimetres::computed(hole_from),
            most_bights: super::braid::most(round + 1e-9, 2),
        })
    }

    /// Whether a knot of so many leads and bights lies there, all else being the same.
    fn takes(&self, leads: u16, bights: u16) -> bool {
        let counts = self.braid.counts;
        let counts = counts.counting(leads, bights, counts.passes());
        counts.is_some_and(|counts| {
            let braid = Braid {
                counts,
                ..self.braid
            };
            Self::tight_on(&braid, self.legs.meridian).is_some()
        })
    }

    /// The smallest ball that takes the knot: `L − e + B = π (D + 2w) / s`.
    fn ball_from(&self) -> Millimetres {
        let round = (self.legs.rows - self.saved + self.legs.bands) * self.spacing;
        let ball = round / PI - 2.0 * self.braid.cord.get();
        Millimetres::computed(ball.max(LEAST_BALL * self.braid.cord.get()) * (1.0 + 1e-9))
    }

    /// The smallest mat that takes the knot round this hole.
    fn outer_from(&self, hole: Option<Millimetres>) -> Millimetres {
        let ring = packed(self.legs.bands, self.spacing);
        let inner = hole.map_or(0.0, |hole| f64::midpoint(hole.get(), self.band));
        let inner = inner.max(ring);
        let goal = (self.legs.rows - self.saved) * self.spacing / 2.0;
        let outer = 2.0 * (inner + flat_rise(inner, ring, goal)) + self.band;
        Millimetres::computed(outer * (1.0 + 1e-9))
    }
}
