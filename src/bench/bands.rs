//! The bands of a finished knot on the plane: how much of the ground they hide, and how deep the
//! scallops of its rims are. The pictures of finished knots draw these bands.
//!
//! A band is the cords that lie side by side. Its middle line is straight from rim to rim and
//! turns at a rim in an arc whose inner edge closes on itself. The knot reaches from the outer
//! edge of the bights of one rim to that of the other; what lies between and under no band is
//! bare. In whole cells of the braid that is a rhombus each, at a rim the scallop between two
//! bights. *Derived.*

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
    /// Half of the way from a bight to the next.
    half_pitch: f64,
    /// Width of a band.
    band: f64,
    /// Overall width of the knot.
    width: f64,
    /// Height of a row of crossings.
    row: f64,
    /// Radius of the middle line of a bight.
    bend: f64,
    /// Cosine and sine of the angle between a leg and a rim.
    slope: (f64, f64),
}

impl Bands {
    /// From the leads, half the pitch of the bights, the distance of the two rims between the
    /// middles of their bights, and the width of a band.
    pub(super) fn new(leads: u16, half_pitch: f64, rise: f64, band: f64) -> Self {
        let leads = f64::from(leads);
        // A bight that closes on itself, as long as the legs can turn so wide.
        let bend = (band / 2.0).min(0.45 * leads * half_pitch);
        // With z = row / half pitch the straight lines of the legs meet beyond the bights, and
        // L z = η + ρ (√(1 + z²) − 1), where η is the rise and ρ twice the bend in half pitches.
        let eta = rise / half_pitch;
        let rho = 2.0 * bend / half_pitch;
        let c = eta - rho;
        let steep = (leads * c + rho * (leads * leads + c * c - rho * rho).sqrt())
            / (leads * leads - rho * rho);
        let row = steep * half_pitch;
        // As exact as `hypot` for the lengths of the bench, and several times as quick.
        let diagonal = (half_pitch * half_pitch + row * row).sqrt();
        Self {
            leads,
            half_pitch,
            band,
            width: rise + band,
            row,
            bend,
            slope: (half_pitch / diagonal, row / diagonal),
        }
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
    pub const fn row(&self) -> f64 {
        self.row
    }

    /// Radius of the middle line of a bight.
    pub const fn bend(&self) -> f64 {
        self.bend
    }

    /// Width of a band over the distance of neighbouring bands of one heading. It may be more
    /// than 1 where few leads lie so steep at the rims that their bands climb on one another.
    pub fn fill(&self) -> f64 {
        let (_, sin) = self.slope;
        self.band / (2.0 * self.half_pitch * sin)
    }

    /// The share of the ground between the outer edges of the bights that is hidden, 0 … 1.
    pub fn cover(&self) -> f64 {
        let (cos, sin) = self.slope;
        let gap = (2.0 * self.half_pitch * sin - self.band).max(0.0);
        let cell = gap * gap / (2.0 * sin * cos);
        let bare = (self.leads - 1.0) * cell + 2.0 * self.bare_at_rim();
        (1.0 - bare / (2.0 * self.half_pitch * self.width)).clamp(0.0, 1.0)
    }

    /// How far the gap between two bights reaches in from the rim.
    pub fn scallop(&self) -> f64 {
        self.edge(self.half_pitch)
    }

    /// How far the outer edge of a bight, so far from its middle, lies inside the rim.
    fn edge(&self, aside: f64) -> f64 {
        let (cos, sin) = self.slope;
        let radius = self.bend + self.band / 2.0;
        if aside < radius * sin {
            radius - (radius * radius - aside * aside).max(0.0).sqrt()
        } else {
            // The straight edge, from the hub of the bight: radius / cos below it in the middle.
            radius + aside * sin / cos - radius / cos
        }
    }

    /// Bare ground between the middles of two neighbouring bights of one rim.
    fn bare_at_rim(&self) -> f64 {
        let (_, sin) = self.slope;
        let radius = self.bend + self.band / 2.0;
        let arc = (radius * sin).min(self.half_pitch);
        let chord = (radius * radius - arc * arc).max(0.0).sqrt();
        let under_arc = radius * arc
            - f64::midpoint(
                arc * chord,
                radius * radius * (arc / radius).min(1.0).asin(),
            );
        let straight =
            (self.half_pitch - arc) * f64::midpoint(self.edge(arc), self.edge(self.half_pitch));
        2.0 * (under_arc + straight.max(0.0))
    }
}
