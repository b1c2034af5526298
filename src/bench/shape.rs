//! The finished knot: how wide, how long its legs, how much it hides.

use super::{Bands, Millimetres};
#[cfg(doc)]
use super::{Braid, crimp};

/// The finished knot. See [`Braid`] for the rules.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A doubled 3 lead 5 bight of 4 mm line on a bell rope of 20 mm.
/// let bell_rope = Braid::new(Counts::new(3, 5, 2).unwrap(), mm(4.0), mm(20.0));
/// let tight = bell_rope.tight().unwrap();
/// assert!((tight.width.get() - 22.2).abs() < 0.1);
/// // Opened to 26 mm it hides less, and its legs stand nearer to the axis.
/// let opened = bell_rope.opened(mm(26.0)).unwrap();
/// assert!(tight.is_tight() && !opened.is_tight());
/// assert!(opened.cover < tight.cover && opened.angle < tight.angle);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnotShape {
    /// Overall width, from outer edge to outer edge of the bights.
    pub width: Millimetres,
    /// That width when it is drawn up as tight as it goes.
    pub tight: Millimetres,
    /// Angle of a leg from the axis in the middle of the knot, in radians.
    pub angle: f64,
    /// Way of a leg round the object, `H·C / 2AB`, where a plain knot has H = L rows and A = 1 nest; where
    /// the object is not as thick all along, what a leg of its length and rise would go round.
    pub run: Millimetres,
    /// Way of a leg along the object: between the middles of the bights of the two rims. On a ball it
    /// is measured along the curve, in the middle of the cord.
    pub rise: Millimetres,
    /// Share of the ground between the outer edges that is hidden, 0 … 1.
    pub cover: f64,
    /// How far the gap between two bights reaches in from the rim.
    pub scallop: Millimetres,
    /// Length of a leg without its overs and unders: `hypot(run, rise)`, or `∫ dy / cos α` where the
    /// object is not as thick all along.
    pub leg: Millimetres,
    /// Crossing spacing: leg / leads.
    pub spacing: Millimetres,
    /// Extra cord in a leg as a fraction, by [`crimp::crimp`].
    pub crimp: f64,
    /// The bands that cover the ground, as they are drawn: of a round thing with as much ground from rim
    /// to rim, where the object is not as thick all along.
    pub bands: Bands,
    /// Whether simulated cord bears the tight width out, as in most covers. Where not, the rule
    /// tells more than cord drawn up tight comes to: up to a fifth.
    pub is_borne_out: bool,
    /// Across the circles on which the middles of the bights lie, those of the bottom rim and those of
    /// the top rim, in the middle of the cord.
    pub rims: [Millimetres; 2],
    /// Across what the bights of a rim leave open: on a ball the bare round at each pole, of a mat the
    /// hole in its middle; nought where they close it. `None` for a knot that lies round a thing.
    pub bare: Option<Millimetres>,
}

impl KnotShape {
    /// Whether it is drawn up as tight as it goes.
    pub fn is_tight(&self) -> bool {
        self.width.get() <= self.tight.get() * (1.0 + 1e-9)
    }

    /// Cord in one leg: `leg × (1 + crimp)`.
    pub fn cord_in_leg(&self) -> Millimetres {
        Millimetres::computed(self.leg.get() * (1.0 + self.crimp))
    }

    /// Across a mat from outer edge to outer edge: the circle of the bottom rim, and half a band on
    /// either side.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Braid, Counts, Ground, Millimetres};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let mat = Ground::Flat { outer: mm(160.0), hole: None };
    /// let mat = Braid::new(Counts::new(6, 7, 2).unwrap(), mm(6.35), mat).tight().unwrap();
    /// assert!((mat.outer_edge().get() - 160.0).abs() < 1e-9);
    /// assert!(mat.bare.is_some_and(|hole| hole > mm(24.0)));
    /// ```
    pub fn outer_edge(&self) -> Millimetres {
        Millimetres::computed(self.rims[0].get() + self.bands.band())
    }

    /// Angle of a leg from the axis, in degrees.
    pub fn angle_degrees(&self) -> f64 {
        self.angle.to_degrees()
    }
}
