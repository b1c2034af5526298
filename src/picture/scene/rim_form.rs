//! How the sheet is bent at a rim.

use crate::knot::Rim;

use super::layout::SceneLayout;
use super::sheet_point::real;

/// How the sheet is bent where bights lie: the surface there, laid flat, has the form of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RimForm {
    /// Pixels of the surface for a pixel of the sheet, along the rim.
    pub around: f32,
    /// The same square to the rim.
    pub along: f32,
    /// Sine of the angle between a leg and the rim, on the surface.
    pub sin: f32,
    /// Cosine of that angle.
    pub cos: f32,
}

impl SceneLayout {
    /// How the sheet is bent at a rim, so many rows inside its outermost pins.
    pub fn rim_form(&self, rim: Rim, rows_inside: i32) -> RimForm {
        let Some(meridian) = &self.meridian else {
            return RimForm {
                around: 1.0,
                along: 1.0,
                sin: self.sin,
                cos: self.cos,
            };
        };
        let unit = self.unit();
        // In the middle of a bight: it is not as large as the surface.
        let inside = real(rows_inside) * self.row + 0.5 * self.bend / self.cos;
        let [around, along] = meridian.rim(rim, inside / unit);
        let tangent = along * self.tan / around;
        let cos = 1.0 / tangent.hypot(1.0);
        RimForm {
            around,
            along,
            sin: tangent * cos,
            cos,
        }
    }

    /// The radius on which the sheet closes.
    pub fn unit(&self) -> f32 {
        self.round() / std::f32::consts::TAU
    }
}
