//! The finished knot: as tight as it goes, or opened to reach a width.

use std::f64::consts::PI;

use super::bands::Measured;
use super::leg::{LEAST_ANGLE_COS, LEAST_ANGLE_TAN, diagonal};
use super::on_ground::OnGround;
use super::{
    Bands, Correction, Counts, Give, Ground, Interlacing, KnotShape, LeastCover, Millimetres,
    ShapeError, crimp,
};

/// So many rows more the rims of an interwoven knot save for every nest beyond the first: there fewer
/// cords cross. Fitted to cord drawn up as tight as it goes by simulations
/// (`tests/data/tight_widths_weaves.csv`, `tests/data/simulated_nested_widths.csv`).
const NESTED_RIMS: f64 = 1.48;

/// A knot about to be drawn up: its counts, its cord, and what it lies on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Braid {
    /// Leads, bights, passes and how they interlace.
    pub counts: Counts,
    /// Diameter of the cord, `w`.
    pub cord: Millimetres,
    /// How closely the cord lies, `k` of over one, under one.
    pub give: Give,
    /// What it lies on.
    pub around: Ground,
    /// What the tyer's log says.
    pub correction: Correction,
}

impl Braid {
    /// Of soft line, with nothing measured yet.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Braid, Counts, Give, Millimetres};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let soft = Braid::new(Counts::new(17, 4, 1).unwrap(), mm(4.0), mm(30.0));
    /// let hard = Braid { give: Give::HARD, ..soft };
    /// let width = |braid: Braid| braid.tight().unwrap().width.get();
    /// assert!((width(soft) - 58.0).abs() < 0.05);
    /// assert!((width(hard) - 67.6).abs() < 0.05);
    /// ```
    pub fn new(counts: Counts, cord: Millimetres, around: impl Into<Ground>) -> Self {
        Self {
            counts,
            cord,
            give: Give::default(),
            around: around.into(),
            correction: Correction::default(),
        }
    }

    /// Mean circumference `C = π (D + 2w)`.
    pub fn circumference(&self) -> Millimetres {
        Millimetres::computed(PI * (self.around.thickest().get() + 2.0 * self.cord.get()))
    }

    /// Width of a band, the cords that lie side by side: `P·w`.
    pub fn band(&self) -> Millimetres {
        Millimetres::computed(f64::from(self.counts.passes()) * self.cord.get())
    }

    /// `k`: that of the cord, in this weave, as far as the log has corrected it.
    pub fn closeness(&self) -> Give {
        let woven = self.give.woven(self.counts.interlacing());
        let woven = woven.nested(self.counts.nested());
        woven.corrected(self.correction.give())
    }

    /// How close neighbouring bands of one heading come, square to them: `(P − 1 + k)·w`.
    pub fn tight_spacing(&self) -> Millimetres {
        let cords = f64::from(self.counts.passes()) - 1.0 + self.closeness().get();
        Millimetres::computed(cords * self.cord.get())
    }

    /// What the rims save, in leads: fewer cords cross there. `e = 0.72 + 0.10 (P − 1)`, fitted
    /// with [`Give::HARD`] to simulated knots (`tests/data/tight_widths.csv`), and more where bights
    /// are nested.
    pub(super) fn rims(&self) -> f64 {
        let nested = f64::from(self.counts.nested()) - 1.0;
        0.72 + 0.10 * (f64::from(self.counts.passes()) - 1.0) + NESTED_RIMS * nested
    }

    /// As tight as it goes. In cord that was simulated (`tests/data/simulated_widths.csv`) the rule
    /// comes within a tenth as long as legs lie at 60° or more from the axis. Nearer to it, and where
    /// a knot of several passes has longer runs, cord lies closer than `k` says, and the rule is up
    /// to 19 % above: see [`KnotShape::is_borne_out`].
    ///
    /// `cos α = B·(P − 1 + k)·w / C`, and the rise
    /// `(L − e)·(P − 1 + k)·w / 2 sin α`.
    ///
    /// # Errors
    /// [`ShapeError::CordThickerThanObject`], or [`ShapeError::TooFull`] when the bands do not
    /// go round side by side.
    pub fn tight(&self) -> Result<KnotShape, ShapeError> {
        if let Some(ground) = OnGround::of(self)? {
            return Ok(ground.shape(ground.tight_rise));
        }
        let (spacings, leads) = (self.spacings()?, self.counts.height());
        let bands = spacings.bands(leads, spacings.tight_width(leads));
        Ok(spacings.shape(leads, bands.into()))
    }

    /// Opened so that it is `width` wide overall.
    ///
    /// # Errors
    /// As [`Braid::tight`], and [`ShapeError::NarrowerThanTight`] when the knot cannot be drawn
    /// up so narrow.
    pub fn opened(&self, width: Millimetres) -> Result<KnotShape, ShapeError> {
        if let Some(ground) = OnGround::of(self)? {
            return ground.opened(width);
        }
        let (spacings, leads) = (self.spacings()?, self.counts.height());
        let tight = spacings.tight_width(leads);
        // A hair narrower is the tight width, rounded.
        if width.get() < tight * (1.0 - 1e-9) {
            return Err(ShapeError::NarrowerThanTight {
                given: width,
                least: Millimetres::computed(tight),
            });
        }
        let bands = spacings.bands(leads, width.get().max(tight));
        Ok(spacings.shape(leads, bands.into()))
    }

    /// As it is when the work is done: opened to a width that is asked for, or else as tight as it goes.
    /// When no width is asked for, a mat with a hole reaches up to that, or as far as it can, and on a
    /// ball a knot reaches as far towards the poles as it hides enough for [`LeastCover::default`].
    ///
    /// # Errors
    /// As [`Braid::opened`].
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Braid, Counts, Ground, Millimetres};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let counts = Counts::new(9, 8, 2).unwrap();
    /// let knob = Braid::new(counts, mm(3.0), Ground::Ball(mm(38.0)));
    /// let (tight, finished) = (knob.tight().unwrap(), knob.finished(None).unwrap());
    /// // Drawn up as tight as it goes it would leave the poles open.
    /// assert!(finished.bare < tight.bare && finished.width > tight.width);
    /// ```
    pub fn finished(&self, open_to: Option<Millimetres>) -> Result<KnotShape, ShapeError> {
        if let Some(width) = open_to {
            return self.opened(width);
        }
        let Some(ground) = OnGround::of(self)? else {
            return self.tight();
        };
        let rise = match self.around {
            Ground::Ball(_) => ground.widest(LeastCover::default()),
            Ground::Flat { hole: Some(_), .. } => Some(ground.reach()),
            _ => None,
        };
        Ok(ground.shape(rise.unwrap_or(ground.tight_rise)))
    }

    /// That a knot round a thing that is as thick all along is not opened so wide that its legs run
    /// along it; on other grounds [`Braid::opened`] sees to it.
    ///
    /// # Errors
    /// [`ShapeError::WiderThanReach`].
    pub(super) fn check_reach(&self, open_to: Option<Millimetres>) -> Result<(), ShapeError> {
        let (Some(given), Some(_)) = (open_to, self.around.round()) else {
            return Ok(());
        };
        let (spacings, leads) = (self.spacings()?, self.counts.height());
        let most = spacings.steepest(leads).max(spacings.tight_width(leads));
        // A hair wider is what the program told, rounded.
        if given.get() > most * (1.0 + 1e-9) {
            let most = Millimetres::computed(most);
            return Err(ShapeError::WiderThanReach { given, most });
        }
        Ok(())
    }

    /// What does not depend on the leads.
    ///
    /// # Errors
    /// As [`Braid::tight`].
    pub(super) fn spacings(&self) -> Result<Spacings, ShapeError> {
        if self.cord > self.around.thinnest() {
            return Err(ShapeError::CordThickerThanObject {
                cord: self.cord,
                object: self.around.thinnest(),
            });
        }
        let circumference = self.circumference().get();
        let bights = f64::from(self.counts.bands());
        let spacing = self.tight_spacing().get();
        let cosine = bights * spacing / circumference;
        // A hair below 1, so that the sine is never nought.
        if cosine >= 1.0 - 1e-9 {
            return Err(self.too_full(bights * spacing / self.cord.get()));
        }
        let half_pitch = circumference / (2.0 * bights);
        Ok(Spacings {
            cord: self.cord,
            across: circumference / PI,
            nested: self.counts.nested(),
            half_pitch,
            least_slope: LEAST_ANGLE_TAN / half_pitch,
            band: self.band().get(),
            rims: self.rims(),
            cosine,
            lead: spacing / (2.0 * (1.0 - cosine * cosine).sqrt()),
            is_borne_out: self.is_borne_out(cosine),
        })
    }

    /// Whether simulated cord bears the tight width out, when the legs of the tight knot stand at an
    /// angle of this cosine from the axis.
    pub(super) fn is_borne_out(&self, cosine: f64) -> bool {
        cosine <= 0.5
            && self.counts.nested() <= Give::MOST_NESTS
            && (self.counts.passes() == 1 || self.counts.interlacing() == Interlacing::PLAIN)
    }

    fn too_full(&self, diameters: f64) -> ShapeError {
        let fitting = self.circumference().get() / self.cord.get() * (1.0 - 1e-9);
        let per_band = self.tight_spacing().get() / self.cord.get();
        let between = self.closeness().get() - 1.0;
        ShapeError::TooFull {
            bights: self.counts.bights(),
            passes: self.counts.passes(),
            most_bights: most(fitting / per_band / f64::from(self.counts.nested()), 2),
            most_passes: most(fitting / f64::from(self.counts.bands()) - between, 1),
            cord: self.cord,
            cord_below: (diameters > 2.0 * PI).then(|| {
                Millimetres::computed(PI * self.around.thickest().get() / (diameters - 2.0 * PI))
            }),
        }
    }
}

/// What is the same for a knot of any number of leads. Where bights are nested, the rows from rim to
/// rim stand for the leads.
#[derive(Clone, Copy, Debug)]
pub(super) struct Spacings {
    cord: Millimetres,
    /// Across the object, from the middle of the cord to the middle of the cord.
    across: f64,
    /// Bights nested at each rim.
    nested: u16,
    /// Half of the way from a leg to the next of its heading.
    half_pitch: f64,
    /// Tangent of [`LEAST_ANGLE`](super::LEAST_ANGLE) over that.
    least_slope: f64,
    /// Width of a band.
    band: f64,
    /// What the rims save, in leads.
    rims: f64,
    /// Of the angle of a leg from the axis, when the knot is tight.
    cosine: f64,
    /// Rise of a lead of the tight knot: `(P − 1 + k)·w / 2 sin α`.
    lead: f64,
    /// See [`KnotShape::is_borne_out`].
    is_borne_out: bool,
}

impl Spacings {
    fn tight_rise(&self, leads: u16) -> f64 {
        (f64::from(leads) - self.rims) * self.lead
    }

    /// Overall width of the tight knot.
    pub(super) fn tight_width(&self, leads: u16) -> f64 {
        self.tight_rise(leads) + self.band
    }

    /// How many leads make a tight knot of this width.
    pub(super) fn leads_of(&self, width: f64) -> f64 {
        (width - self.band) / self.lead + self.rims
    }

    /// Whether the legs stand steeper than [`LEAST_ANGLE`](super::LEAST_ANGLE) even when the knot is tight.
    pub(super) fn is_too_steep(&self) -> bool {
        self.cosine > LEAST_ANGLE_COS
    }

    /// The width at which legs stand at [`LEAST_ANGLE`](super::LEAST_ANGLE): solves [`Self::tangent`] for the rise.
    pub(super) fn steepest(&self, leads: u16) -> f64 {
        let saved = self.rims * self.tight_rise(leads);
        let leads = f64::from(leads);
        let root = (leads * leads - 4.0 * self.least_slope * saved)
            .max(0.0)
            .sqrt();
        (leads + root) / (2.0 * self.least_slope) + self.band
    }

    /// The bands of a knot that is so wide overall.
    pub(super) fn bands(&self, leads: u16, width: f64) -> Bands {
        Bands::new(leads, self.nested, self.half_pitch, self.band, width)
    }

    /// Tangent of the angle of a leg in the middle of a knot with this rise: run over rise, but
    /// for what the rims save. They save it where cords press on one another, and so less the
    /// more the knot is opened.
    fn tangent(&self, leads: u16, rise: f64) -> f64 {
        let saved = self.rims * self.tight_rise(leads) / rise;
        (f64::from(leads) - saved) * self.half_pitch / rise
    }

    /// The knot with these bands.
    pub(super) fn shape(&self, leads: u16, Measured { bands, cover }: Measured) -> KnotShape {
        let run = f64::from(leads) * self.half_pitch;
        let rise = bands.width() - self.band;
        let leg = diagonal(run, rise);
        let spacing = Millimetres::computed(leg / f64::from(leads));
        KnotShape {
            width: Millimetres::computed(bands.width()),
            tight: Millimetres::computed(self.tight_width(leads)),
            angle: self.tangent(leads, rise).atan(),
            run: Millimetres::computed(run),
            rise: Millimetres::computed(rise),
            cover,
            scallop: Millimetres::computed(bands.scallop()),
            leg: Millimetres::computed(leg),
            spacing,
            crimp: crimp::crimp(spacing, self.cord),
            bands,
            is_borne_out: self.is_borne_out,
            rims: [Millimetres::computed(self.across); 2],
            bare: None,
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
