//! The finished knot: as tight as it goes, or left open to reach a width.

use std::error::Error;
use std::f64::consts::PI;
use std::fmt;

use super::{Correction, Counts, Millimetres, crimp};

/// A knot about to be drawn up: its counts, its cord, and what it lies on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Braid {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// Diameter of the cord, `w`.
    pub cord: Millimetres,
    /// Diameter of what it lies on, `D`.
    pub around: Millimetres,
    /// What the tyer's log says about finished widths.
    pub correction: Correction,
}

/// The finished knot, by the formulas of biaxial tubular braids.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// Drawn up until neighbouring cords touch.
    pub faired: bool,
    /// Angle of a leg from the axis, in radians.
    pub angle: f64,
    /// Way of a leg round the object.
    pub run: Millimetres,
    /// Way of a leg along the object: between the centre lines of the two rims.
    pub rise: Millimetres,
    /// Overall width, edge to edge, corrected by the tyer's log.
    pub width: Millimetres,
    /// Fill `F`: share of the room between parallel legs that cords take up; 1 when faired.
    pub fill: f64,
    /// Cover `K = 2F − F²`: share of the object that is hidden.
    pub cover: f64,
    /// Length of a leg measured straight: `hypot(run, rise)`.
    pub leg: Millimetres,
    /// Crossing spacing: leg / leads.
    pub spacing: Millimetres,
    /// Extra cord in a leg as a fraction, by [`crimp::crimp`].
    pub crimp: f64,
}

impl Shape {
    /// Cord in one leg: `leg × (1 + crimp)`.
    pub fn cord_in_leg(&self) -> Millimetres {
        Millimetres::computed(self.leg.get() * (1.0 + self.crimp))
    }

    /// Whether crossings lie closer than those of Peirce's jammed cloth, so that round cords
    /// have to flatten: the knot may come out wider than computed. It happens only to singles
    /// (doubled, the spacing is two diameters at the least).
    pub fn is_crowded(&self, cord: Millimetres) -> bool {
        self.spacing < crimp::jammed_spacing(cord)
    }

    /// Angle of a leg from the axis, in degrees.
    pub fn angle_degrees(&self) -> f64 {
        self.angle.to_degrees()
    }
}

/// Cover of a braid at this fill, `K = 2F − F²` (braided-shield engineering); a fill above 1
/// hides everything.
pub fn cover(fill: f64) -> f64 {
    let fill = fill.clamp(0.0, 1.0);
    fill * (2.0 - fill)
}

impl Braid {
    /// Mean circumference `C = π (D + 2w)`.
    pub fn circumference(&self) -> Millimetres {
        Millimetres::computed(PI * (self.around.get() + 2.0 * self.cord.get()))
    }

    /// Width of the cords that run side by side, `P·w`.
    pub fn band(&self) -> Millimetres {
        Millimetres::computed(f64::from(self.counts.passes()) * self.cord.get())
    }

    /// Way of a leg round the object, `L·C / 2B`.
    pub fn run(&self) -> Millimetres {
        let half_pitch = self.circumference().get() / f64::from(2 * self.counts.bights());
        Millimetres::computed(f64::from(self.counts.leads()) * half_pitch)
    }

    /// Fully faired: `cos α = B·P·w / C`, rim distance `L·P·w / 2 sin α`.
    ///
    /// # Errors
    /// [`ShapeError::CordThickerThanObject`], or [`ShapeError::TooFull`] when the cords do not
    /// go round side by side.
    pub fn faired(&self) -> Result<Shape, ShapeError> {
        let cosine = self.cosine()?;
        let run = self.run().get();
        let rise = run * cosine / (1.0 - cosine * cosine).sqrt();
        Ok(self.shape(run, rise, true))
    }

    /// Left open so that it is `width` wide overall: `tan α = run / rise`,
    /// `F = B·P·w / (C cos α)`.
    ///
    /// # Errors
    /// As [`Braid::faired`], and [`ShapeError::NarrowerThanFaired`] when the knot cannot be
    /// drawn up so narrow.
    pub fn left_open(&self, width: Millimetres) -> Result<Shape, ShapeError> {
        let faired = self.faired()?;
        if width < faired.width {
            return Err(ShapeError::NarrowerThanFaired {
                given: width,
                least: faired.width,
            });
        }
        let rise = self.rise_when_open_to(width).max(faired.rise.get());
        Ok(self.shape(faired.run.get(), rise, false))
    }

    /// Cover of the knot left open to `width`, which must be more than its faired width.
    pub(super) fn cover_when_open_to(&self, width: Millimetres) -> f64 {
        cover(self.fill(self.run().get(), self.rise_when_open_to(width)))
    }

    fn rise_when_open_to(&self, width: Millimetres) -> f64 {
        // The log's factor maps computed widths to measured ones; go back by it.
        width.get() / self.correction.width() - self.band().get()
    }

    /// `F = B·P·w / (C cos α)`, where cos α is rise / leg.
    fn fill(&self, run: f64, rise: f64) -> f64 {
        let cords = f64::from(self.counts.bights()) * self.band().get();
        (cords * run.hypot(rise) / (self.circumference().get() * rise)).min(1.0)
    }

    /// `B·P·w / C`, checked.
    fn cosine(&self) -> Result<f64, ShapeError> {
        if self.cord > self.around {
            return Err(ShapeError::CordThickerThanObject {
                cord: self.cord,
                object: self.around,
            });
        }
        let circumference = self.circumference().get();
        let (bights, passes) = (self.counts.bights(), self.counts.passes());
        let cords = f64::from(bights) * f64::from(passes);
        let cosine = cords * self.cord.get() / circumference;
        // A hair below 1, so that the sine is never nought.
        if cosine < 1.0 - 1e-9 {
            return Ok(cosine);
        }
        let fitting = circumference / self.cord.get() * (1.0 - 1e-9);
        Err(ShapeError::TooFull {
            bights,
            passes,
            most_bights: most(fitting / f64::from(passes), 2),
            most_passes: most(fitting / f64::from(bights), 1),
            cord: self.cord,
            cord_below: (cords > 2.0 * PI)
                .then(|| Millimetres::computed(PI * self.around.get() / (cords - 2.0 * PI))),
        })
    }

    fn shape(&self, run: f64, rise: f64, faired: bool) -> Shape {
        let leg = run.hypot(rise);
        let spacing = Millimetres::computed(leg / f64::from(self.counts.leads()));
        let fill = if faired { 1.0 } else { self.fill(run, rise) };
        let width = (rise + self.band().get()) * self.correction.width();
        Shape {
            faired,
            angle: run.atan2(rise),
            run: Millimetres::computed(run),
            rise: Millimetres::computed(rise),
            width: Millimetres::computed(width),
            fill,
            cover: cover(fill),
            leg: Millimetres::computed(leg),
            spacing,
            crimp: crimp::crimp(spacing, self.cord),
        }
    }
}

/// The largest whole number strictly below `bound`, when it is at least `least`.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and the number is positive"
)]
pub(super) fn most(bound: f64, least: u16) -> Option<u16> {
    let most = (bound.ceil() - 1.0).max(0.0) as u16;
    (most >= least).then_some(most)
}

/// Why a knot does not go round an object. The words for it that a tyer reads are made
/// elsewhere; [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShapeError {
    /// The cord is thicker than what it goes round.
    CordThickerThanObject {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the object.
        object: Millimetres,
    },
    /// Bights × passes × cord diameter is not less than the circumference.
    TooFull {
        /// Bights as given.
        bights: u16,
        /// Passes as given.
        passes: u16,
        /// The most bights that go round with so many passes, if any do.
        most_bights: Option<u16>,
        /// The most passes that go round with so many bights, if any do.
        most_passes: Option<u16>,
        /// Diameter of the cord as given.
        cord: Millimetres,
        /// A cord thinner than this goes round.
        cord_below: Option<Millimetres>,
    },
    /// Fully faired, the knot is wider than it is asked to be.
    NarrowerThanFaired {
        /// Width as given.
        given: Millimetres,
        /// Its fully faired width.
        least: Millimetres,
    },
}

impl fmt::Display for ShapeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::CordThickerThanObject { cord, object } => {
                write!(f, "a cord of {cord} is thicker than the object, {object}")
            }
            Self::TooFull {
                bights,
                passes,
                cord,
                ..
            } => write!(
                f,
                "{bights} bights of {passes} cords of {cord} do not go round side by side"
            ),
            Self::NarrowerThanFaired { given, least } => {
                write!(f, "the knot is at least {least} wide, not {given}")
            }
        }
    }
}

impl Error for ShapeError {}
