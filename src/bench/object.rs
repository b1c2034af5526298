//! The thing that the knot covers.

use std::f64::consts::PI;

use super::Millimetres;

/// A round object and how much of it the knot should cover.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Object {
    /// Diameter where the knot sits.
    pub diameter: Millimetres,
    /// Length to be covered, from edge to edge of the knot.
    pub cover: Millimetres,
}

impl Object {
    /// An object whose diameter is known.
    pub const fn new(diameter: Millimetres, cover: Millimetres) -> Self {
        Self { diameter, cover }
    }

    /// An object measured round with a tape.
    pub fn by_girth(girth: Millimetres, cover: Millimetres) -> Self {
        Self::new(Millimetres::computed(girth.get() / PI), cover)
    }

    /// The way round it.
    pub fn girth(&self) -> Millimetres {
        Millimetres::computed(self.diameter.get() * PI)
    }
}
