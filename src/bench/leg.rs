//! A leg: how steep it may stand, and how long it is.

use std::f64::consts::PI;

/// The smallest angle of a leg from the axis, in radians (20°). Steeper, the bights hardly
/// hold on to their pins. *Common practice, no source.*
pub const LEAST_ANGLE: f64 = PI / 9.0;

/// Cosine and tangent of [`LEAST_ANGLE`].
pub(super) const LEAST_ANGLE_COS: f64 = 0.939_692_620_785_908_4;
pub(super) const LEAST_ANGLE_TAN: f64 = 0.363_970_234_266_202_4;

/// As exact as `hypot` for the lengths of the bench, and several times as quick.
pub(super) fn diagonal(one: f64, other: f64) -> f64 {
    (one * one + other * other).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_least_angle_is_one_angle() {
        assert!((LEAST_ANGLE.cos() - LEAST_ANGLE_COS).abs() < 1e-15);
        assert!((LEAST_ANGLE.tan() - LEAST_ANGLE_TAN).abs() < 1e-15);
    }
}
