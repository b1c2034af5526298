//! The thing that the knot covers.

use std::f64::consts::PI;

use super::{Ground, Millimetres};

/// An object and how much of it the knot should cover.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, Object};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A boathook that a tape goes round in 94 mm is 30 mm thick.
/// let boathook = Object::by_girth(mm(94.25), mm(40.0));
/// assert!((boathook.diameter().get() - 30.0).abs() < 0.01);
/// assert_eq!(boathook.cover, mm(40.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Object {
    /// What it is like where the knot sits.
    pub ground: Ground,
    /// Length to be covered, from edge to edge of the knot.
    pub cover: Millimetres,
}

impl Object {
    /// An object that was measured across.
    pub fn new(ground: impl Into<Ground>, cover: Millimetres) -> Self {
        Self {
            ground: ground.into(),
            cover,
        }
    }

    /// An object measured round with a tape.
    pub fn by_girth(girth: Millimetres, cover: Millimetres) -> Self {
        Self::new(Millimetres::computed(girth.get() / PI), cover)
    }

    /// Its diameter where it is thickest.
    pub const fn diameter(&self) -> Millimetres {
        self.ground.thickest()
    }

    /// The way round it where it is thickest.
    pub fn girth(&self) -> Millimetres {
        self.ground.girth()
    }
}
