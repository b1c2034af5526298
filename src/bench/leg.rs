//! A leg: how steep it may stand, how long it is, and how far apart nested bights turn it.

use std::f64::consts::PI;

use super::{Counts, Millimetres};

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

/// From a row of pins to the next inside it, where bights are nested, at the least: a bight of all
/// passes goes round each pin. *Derived.*
pub(super) fn between_rows(counts: Counts, cord: Millimetres, pin: Millimetres) -> f64 {
    f64::from(counts.passes()) * cord.get() + pin.get()
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
