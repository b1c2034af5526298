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

use std::f64::consts::{FRAC_PI_3, PI};

use super::Millimetres;

/// Crimp of the jammed cloth: 2π / 3√3 − 1.
pub const JAMMED: f64 = 0.209_199_576_156_145_2;

const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Crimp of a cord of this diameter that crosses others at this spacing, as a fraction of
/// the spacing: exact, and no more than [`JAMMED`].
pub fn crimp(spacing: Millimetres, cord: Millimetres) -> f64 {
    exact(spacing, cord).unwrap_or(JAMMED)
}

/// Exact crimp, or `None` closer than round cords can cross.
pub fn exact(spacing: Millimetres, cord: Millimetres) -> Option<f64> {
    weave_angle(spacing.get() / (2.0 * cord.get())).map(|angle| {
        let spacing = spacing.get() / (2.0 * cord.get());
        (length(angle) / spacing - 1.0).max(0.0)
    })
}

/// Peirce's approximation `(9/16) (w/p)²`.
pub fn approximate(spacing: Millimetres, cord: Millimetres) -> f64 {
    9.0 / 16.0 * (cord.get() / spacing.get()).powi(2)
}

/// The spacing at which a cord has this much length from crossing to crossing: the inverse
/// of `spacing × (1 + crimp)`.
pub fn spacing_holding(length_between: Millimetres, cord: Millimetres) -> Millimetres {
    let diameter = 2.0 * cord.get();
    let target = length_between.get() / diameter;
    if target <= FRAC_PI_3 {
        return Millimetres::computed(length_between.get() / (1.0 + JAMMED));
    }
    // Length is a convex function of spacing with slope cos θ, and never less than it, so
    // Newton's steps come down from `target` without overshooting.
    let mut spacing = target;
    for _ in 0..20 {
        let Some(angle) = weave_angle(spacing) else {
            break;
        };
        let step = (length(angle) - target) / angle.cos();
        spacing -= step;
        if step.abs() <= 1e-12 * target {
            break;
        }
    }
    Millimetres::computed(spacing * diameter)
}

/// θ from `spacing · sin θ + ½ cos θ = 1`; the spacing is in units of D.
fn weave_angle(spacing: f64) -> Option<f64> {
    // Rounding must not shut out the jammed cloth itself.
    if spacing < SQRT_3 / 2.0 * (1.0 - 1e-12) {
        return None;
    }
    let straight = (1.0 / spacing.hypot(0.5)).min(1.0).asin();
    Some(straight - 0.5_f64.atan2(spacing))
}

/// `l / D` at weave angle θ.
fn length(angle: f64) -> f64 {
    debug_assert!(angle > 0.0 && angle < PI / 2.0, "a weave angle: {angle}");
    angle + (angle.cos() - 0.5) / angle.sin()
}
