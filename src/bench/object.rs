//! The thing that the knot covers.

use std::f64::consts::PI;

use super::Millimetres;

/// A round object and how much of it the knot should cover.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, Object};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A boathook that a tape goes round in 94 mm is 30 mm thick.
/// let boathook = Object::by_girth(mm(94.25), mm(40.0));
/// assert!((boathook.diameter.get() - 30.0).abs() < 0.01);
/// assert_eq!(boathook.cover, mm(40.0));
/// ```
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
