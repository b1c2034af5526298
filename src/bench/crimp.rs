//! How much longer a cord is than the straight way, because it goes over and under.
//!
//! Peirce's plain weave of two equal sets of round cords (*Journal of the Textile Institute*
//! 28, 1937, T45). With crossing spacing `p`, cord length `l` between crossings, weave angle
//! `θ`, and `D` twice the cord diameter:
//!
//! ```text
//! p   = (l − Dθ) cos θ + D sin θ
//! D/2 = (l − Dθ) sin θ + D (1 − cos θ)
//! ```
//!
//! Put the second into the first: `p sin θ + (D/2) cos θ = D`, which has a closed solution,
//! and `dl/dp = cos θ`. The cloth is jammed at θ = 60°, where `p` is √3 cord diameters and the
//! crimp 0.2092; round cords cannot cross closer. A knot drawn tighter flattens its cords
//! instead, so there the crimp stays at the jammed figure.
//!
//! Which to use: [`crimp`] for every leg, with the spacing leg / leads. Its answer lies within
//! 0.005 of the approximation wherever a doubled or tripled knot of ordinary proportions has
//! its crossings (spacing of two diameters and more), and below that the approximation grows
//! without bound, to more than half a leg, which no cord does.

use std::f64::consts::FRAC_PI_3;

use super::Millimetres;

/// Crimp of the jammed cloth: 2π / 3√3 − 1.
pub const JAMMED: f64 = 0.209_199_576_156_145_2;

const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Crimp of a cord of this diameter that crosses others at this spacing, as a fraction of
/// the spacing: exact, and no more than [`JAMMED`].
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, crimp};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Where crossings stand three diameters apart, a cord is about a sixteenth longer.
/// assert!((crimp::crimp(mm(12.0), mm(4.0)) - 1.0 / 16.0).abs() < 0.005);
/// // Drawn tighter than round cords can cross, they flatten instead: no more goes in.
/// assert_eq!(crimp::crimp(mm(4.0), mm(4.0)), crimp::JAMMED);
/// ```
pub fn crimp(spacing: Millimetres, cord: Millimetres) -> f64 {
    exact(spacing, cord).unwrap_or(JAMMED)
}

/// Exact crimp, or `None` closer than round cords can cross.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, crimp};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Round cords of 4 mm cross no closer than √3 · 4 = 6.93 mm.
/// assert_eq!(crimp::exact(mm(6.9), mm(4.0)), None);
/// assert!(crimp::exact(mm(7.0), mm(4.0)).is_some_and(|crimp| crimp < crimp::JAMMED));
/// ```
pub fn exact(spacing: Millimetres, cord: Millimetres) -> Option<f64> {
    let spacing = spacing.get() / (2.0 * cord.get());
    Some((WeaveAngle::at(spacing)?.length() / spacing - 1.0).max(0.0))
}

/// Peirce's approximation `(9/16) (w/p)²`.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, crimp};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let off = |spacing| {
///     let (spacing, cord) = (mm(spacing), mm(4.0));
///     crimp::approximate(spacing, cord) - crimp::exact(spacing, cord).unwrap()
/// };
/// // Near enough at a spacing of two diameters and more, and too much where cords jam.
/// assert!(off(8.0).abs() < 0.005 && off(12.0).abs() < 0.005);
/// assert!(crimp::approximate(mm(4.0), mm(4.0)) > 2.0 * crimp::JAMMED);
/// ```
pub fn approximate(spacing: Millimetres, cord: Millimetres) -> f64 {
    9.0 / 16.0 * (cord.get() / spacing.get()).powi(2)
}

/// The spacing at which a cord has this much length from crossing to crossing: the inverse
/// of `spacing × (1 + crimp)`.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, crimp};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Thirteen millimetres of cord from crossing to crossing go into this much of the way.
/// let spacing = crimp::spacing_holding(mm(13.0), mm(4.0));
/// assert!((spacing.get() - 12.3).abs() < 0.1);
/// let held = spacing.get() * (1.0 + crimp::crimp(spacing, mm(4.0)));
/// assert!((held - 13.0).abs() < 1e-6);
/// ```
pub fn spacing_holding(length_between: Millimetres, cord: Millimetres) -> Millimetres {
    let diameter = 2.0 * cord.get();
    let target = length_between.get() / diameter;
    if target <= FRAC_PI_3 {
        return Millimetres::computed(length_between.get() / (1.0 + JAMMED));
    }
    // Length is a convex function of spacing with slope cos θ, and never less than it, so
    // Newton's steps come down without overshooting once they are above the answer. They begin
    // by it, where the approximation puts it.
    let mut spacing = (target - 9.0 / (64.0 * target)).max(SQRT_3 / 2.0);
    for _ in 0..20 {
        let Some(angle) = WeaveAngle::at(spacing) else {
            break;
        };
        let step = (angle.length() - target) / angle.cos;
        spacing = (spacing - step).max(SQRT_3 / 2.0);
        // The next step would be smaller than rounding.
        if step.abs() <= 1e-9 * target {
            break;
        }
    }
    Millimetres::computed(spacing * diameter)
}

/// The weave angle θ, by its sine and cosine.
struct WeaveAngle {
    sin: f64,
    cos: f64,
}

impl WeaveAngle {
    /// From `spacing · sin θ + ½ cos θ = 1`; the spacing is in units of D.
    fn at(spacing: f64) -> Option<Self> {
        // Rounding must not shut out the jammed cloth itself.
        if spacing < SQRT_3 / 2.0 * (1.0 - 1e-12) {
            return None;
        }
        let square = spacing * spacing;
        let root = (square - 0.75).max(0.0).sqrt();
        Some(Self {
            sin: (spacing - 0.5 * root) / (square + 0.25),
            cos: (0.5 + spacing * root) / (square + 0.25),
        })
    }

    /// `l / D`.
    fn length(&self) -> f64 {
        (self.sin / self.cos).atan() + (self.cos - 0.5) / self.sin
    }
}
