//! The bands of a finished knot on the plane: how much of the ground they hide, and how deep the
//! scallops of its rims are. The pictures of finished knots draw these bands.
//!
//! A band is the cords that lie side by side. Its middle line is straight from rim to rim and
//! turns at a rim in an arc whose inner edge closes on itself. The knot reaches from the outer
//! edge of the bights of one rim to that of the other; what lies between and under no band is
//! bare. In whole cells of the braid that is a rhombus each, at a rim the scallop between two
//! bights. *Derived.*

/// Bands, and how much they hide: it takes longer to measure than they take to lay out.
#[derive(Clone, Copy, Debug)]
pub(super) struct Measured {
    pub bands: Bands,
    pub cover: f64,
}

impl From<Bands> for Measured {
    fn from(bands: Bands) -> Self {
        let cover = bands.cover();
        Self { bands, cover }
    }
}

/// The bands of a knot. Lengths in millimetres.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let braid = Braid::new(Counts::new(5, 7, 2).unwrap(), mm(4.0), mm(30.0));
/// let bands = braid.tight().unwrap().bands;
/// // A doubled knot of five leads hides about nine tenths, not all.
/// assert!((0.84..0.92).contains(&bands.cover()));
/// assert!(bands.scallop() < 8.0, "less than the band is wide");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bands {
    leads: f64,
    /// Bights nested at each rim.
    nested: f64,
    /// Half of the way from a bight to the next.
    half_pitch: f64,
    /// Width of a band.
    band: f64,
    /// Radius of the middle line of a bight.
    bend: f64,
    /// Overall width of the knot.
    width: f64,
    /// Tangent of the angle between a leg and a rim: height of a row over half a pitch.
    tangent: f64,
    /// One over the cosine of that angle.
    secant: f64,
}

impl Bands {
    /// From the rows from rim to rim (of a plain knot its leads), the bights nested there, half the
    /// pitch of the legs, the width of a band, and the overall width.
    pub(super) fn new(rows: u16, nested: u16, half_pitch: f64, band: f64, width: f64) -> Self {
        let leads = f64::from(rows);
        let rise = width - band;
        // A bight that closes on itself, as long as the legs can turn so wide.
        let bend = (band / 2.0).min(0.45 * leads * half_pitch);
        // With z = row / half pitch the straight lines of the legs meet beyond the bights, and
        // L z = η + ρ (√(1 + z²) − 1), where η is the rise and ρ twice the bend in half pitches.
        let eta = rise / half_pitch;
        let rho = 2.0 * bend / half_pitch;
        let c = eta - rho;
        let tangent = (leads * c + rho * (leads * leads + c * c - rho * rho).sqrt())
            / (leads * leads - rho * rho);
        Self {
            leads,
            nested: f64::from(nested),
            half_pitch,
            band,
            bend,
            width,
            tangent,
            // As exact as `hypot` for the angles of the bench, and several times as quick.
            secant: (1.0 + tangent * tangent).sqrt(),
        }
    }

    /// The same bands, opened or drawn up until the angle between a leg and a rim has this
    /// cosecant, more than 1.
    pub(super) fn turned_to(&self, cosecant: f64) -> Self {
        let tangent = 1.0 / (cosecant * cosecant - 1.0).sqrt();
        let secant = cosecant * tangent;
        let rise = self.leads * self.half_pitch * tangent - 2.0 * self.bend * (secant - 1.0);
        Self {
            width: rise + self.band,
            tangent,
            secant,
            ..*self
        }
    }

    /// One over the sine of the angle between a leg and a rim.
    pub(super) fn cosecant(&self) -> f64 {
        self.secant / self.tangent
    }

    /// The same bands at a rim where half the pitch of the legs and the tangent of the angle between a leg
    /// and the rim are these.
    pub(super) fn at_rim(&self, half_pitch: f64, tangent: f64) -> Self {
        Self {
            half_pitch,
            tangent,
            secant: (1.0 + tangent * tangent).sqrt(),
            ..*self
        }
    }

    /// What lies bare along a rim, for every leg of one heading.
    pub(super) fn bare_along_rim(&self) -> f64 {
        self.bare_at_rim() + self.bare_of_nests()
    }

    /// Overall width of the knot.
    pub(super) const fn width(&self) -> f64 {
        self.width
    }

    /// Half of the way from a bight to the next.
    pub const fn half_pitch(&self) -> f64 {
        self.half_pitch
    }

    /// Width of a band.
    pub const fn band(&self) -> f64 {
        self.band
    }

    /// Height of a row of crossings.
    pub fn row(&self) -> f64 {
        self.tangent * self.half_pitch
    }

    /// Radius of the middle line of a bight.
    pub const fn bend(&self) -> f64 {
        self.bend
    }

    /// Width of a band over the distance of neighbouring bands of one heading. It may be more
    /// than 1 where few leads lie so steep at the rims that their bands climb on one another.
    pub fn fill(&self) -> f64 {
        self.band / (2.0 * self.half_pitch) * self.cosecant()
    }

    /// The share of the ground between the outer edges of the bights that is hidden, 0 … 1.
    pub fn cover(&self) -> f64 {
        // The gap between two bands, along the rim, and the rhombus that four bands leave.
        let gap = (2.0 * self.half_pitch * self.tangent - self.band * self.secant).max(0.0);
        let cell = gap * gap / (2.0 * self.tangent);
        let bare = (self.leads - 1.0) * cell + 2.0 * self.bare_along_rim();
        (1.0 - bare / (2.0 * self.half_pitch * self.width)).clamp(0.0, 1.0)
    }

    /// How far the gap between two bights reaches in from the rim.
    pub fn scallop(&self) -> f64 {
        let radius = self.outer_radius();
        // Half of the way from an outermost bight to the next.
        let aside = self.nested * self.half_pitch;
        if radius * self.tangent >= aside * self.secant {
            radius - (radius * radius - aside * aside).sqrt()
        } else {
            radius * (1.0 - self.secant) + aside * self.tangent
        }
    }

    /// What the missing bands leave bare at a rim where bights are nested, for every leg of one
    /// heading: of *A* nests the *j*th begins 2 *j* rows inside, so of every *A* legs *j* are missing in
    /// two rows each, and what each of them would hide besides the others lies bare. *Derived; a
    /// little too much, since the bights hide some of it.*
    fn bare_of_nests(&self) -> f64 {
        let missing_rows = self.nested - 1.0;
        // Along a row both a rising and a falling band are missing; what the other heading hides
        // of them is hidden all the same.
        let pitch = 2.0 * self.half_pitch * self.tangent / self.secant;
        let hidden_by_other = (self.band / pitch).min(1.0);
        let length = 2.0 * missing_rows * self.half_pitch * self.secant;
        length * self.band.min(pitch) * (1.0 - hidden_by_other)
    }

    /// Radius of the outer edge of a bight.
    fn outer_radius(&self) -> f64 {
        self.bend + self.band / 2.0
    }

    /// Whether the outer edges of two neighbouring bights meet while they are still round.
    fn arcs_meet(&self) -> bool {
        self.outer_radius() * self.tangent >= self.half_pitch * self.secant
    }

    /// How far inside the rim the straight outer edges of two neighbouring bights meet: from the
    /// hub of a bight, they begin radius / cos below it in its middle.
    fn straight_edge_between(&self) -> f64 {
        self.outer_radius() * (1.0 - self.secant) + self.half_pitch * self.tangent
    }

    /// Bare ground between the middles of two neighbouring bights of one rim.
    fn bare_at_rim(&self) -> f64 {
        let (radius, half_pitch) = (self.outer_radius(), self.half_pitch);
        if self.arcs_meet() {
            let chord = (radius * radius - half_pitch * half_pitch).sqrt();
            let sector = radius * radius * (half_pitch / radius).asin();
            return 2.0 * radius * half_pitch - half_pitch * chord - sector;
        }
        let cos = 1.0 / self.secant;
        let sin = self.tangent * cos;
        let under_arc = radius * radius * (2.0 * sin - sin * cos - self.tangent.atan());
        let deep_at = [radius * (1.0 - cos), self.straight_edge_between()];
        under_arc + (half_pitch - radius * sin) * (deep_at[0] + deep_at[1])
    }
}
