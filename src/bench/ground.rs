//! What a knot covers, or is tied on: how far it is round, at every point from rim to rim.

use std::f64::consts::PI;

use super::Millimetres;
use super::meridian::Meridian;
use crate::knot::Rim;

/// What a knot lies on. Its diameters are those of the bare thing, without cord.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Ground, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A tiller of the loft is 32 mm thick at one end of the grip and 26 mm at the other, 120 mm on.
/// let tiller = Ground::Taper { bottom: mm(32.0), top: mm(26.0), over: mm(120.0) };
/// assert_eq!((tiller.thickest(), tiller.thinnest()), (mm(32.0), mm(26.0)));
/// // A length alone is the diameter of a round rail.
/// assert_eq!(Ground::from(mm(28.0)), Ground::Round(mm(28.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ground {
    /// As thick all along: a handle, a rail, a ring. Its diameter.
    Round(Millimetres),
    /// Thicker at one end than at the other, changing evenly; a knot lies in the middle of it, and where
    /// it is wider than that, the taper is taken to go on.
    Taper {
        /// Diameter at the end where the bottom rim lies.
        bottom: Millimetres,
        /// Diameter at the end where the top rim lies.
        top: Millimetres,
        /// From the one end to the other, measured along its side.
        over: Millimetres,
    },
    /// A ball or a round knob. Its diameter.
    Ball(Millimetres),
    /// A flat ring: a mat on a board. The bottom rim lies outside, the top rim inside.
    Flat {
        /// Across, from outer edge to outer edge.
        outer: Millimetres,
        /// Across the hole in the middle; `None` for as small as the knot lets it be.
        hole: Option<Millimetres>,
    },
}

impl From<Millimetres> for Ground {
    fn from(diameter: Millimetres) -> Self {
        Self::Round(diameter)
    }
}

impl Ground {
    /// Its diameter, when it is as thick all along.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Ground, Millimetres};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let handle = |top| Ground::Taper { bottom: mm(30.0), top, over: mm(90.0) };
    /// assert_eq!(handle(mm(30.0)).round(), Some(mm(30.0)));
    /// assert_eq!(handle(mm(24.0)).round(), None);
    /// ```
    pub fn round(&self) -> Option<Millimetres> {
        match *self {
            Self::Round(diameter) => Some(diameter),
            Self::Taper { bottom, top, .. } => (bottom == top).then_some(bottom),
            Self::Ball(_) | Self::Flat { .. } => None,
        }
    }

    /// Along it, in the middle of a cord that lies on it, for bands so wide; none when it is as thick all
    /// along.
    pub(super) fn meridian(&self, cord: Millimetres, band: Millimetres) -> Option<Meridian> {
        Some(match *self {
            Self::Round(_) => return None,
            Self::Taper { bottom, top, .. } if bottom == top => return None,
            Self::Ball(diameter) => Meridian::Ball {
                radius: diameter.get() / 2.0 + cord.get(),
            },
            Self::Taper { bottom, top, over } => Meridian::Taper {
                middle: (bottom.get() + top.get()) / 4.0 + cord.get(),
                slope: (top.get() - bottom.get()) / 2.0 / over.get(),
            },
            Self::Flat { outer, .. } => Meridian::Flat {
                outer: (outer.get() - band.get()) / 2.0,
            },
        })
    }

    /// The diameter where it is thickest; of a mat from edge to edge.
    pub const fn thickest(&self) -> Millimetres {
        match *self {
            Self::Round(diameter) | Self::Ball(diameter) => diameter,
            Self::Taper { bottom, top, .. } => {
                if bottom.get() > top.get() {
                    bottom
                } else {
                    top
                }
            }
            Self::Flat { outer, .. } => outer,
        }
    }

    /// The diameter of a round thing where it is thinnest; of a ball and of a mat that of the whole.
    pub const fn thinnest(&self) -> Millimetres {
        match *self {
            Self::Taper { bottom, top, .. } => {
                if bottom.get() < top.get() {
                    bottom
                } else {
                    top
                }
            }
            _ => self.thickest(),
        }
    }

    /// The rim that lies at the thick end of a taper; none of what has no thicker end.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Ground, Millimetres};
    /// use marlinspeak::knot::Rim;
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let tiller = |bottom, top| Ground::Taper { bottom: mm(bottom), top: mm(top), over: mm(90.0) };
    /// assert_eq!(tiller(30.0, 24.0).thick_rim(), Some(Rim::Bottom));
    /// assert_eq!(tiller(24.0, 30.0).thick_rim(), Some(Rim::Top));
    /// assert_eq!(Ground::Ball(mm(30.0)).thick_rim(), None);
    /// ```
    pub fn thick_rim(&self) -> Option<Rim> {
        match *self {
            Self::Taper { bottom, top, .. } if bottom > top => Some(Rim::Bottom),
            Self::Taper { bottom, top, .. } if bottom < top => Some(Rim::Top),
            _ => None,
        }
    }

    /// The way round it where it is thickest.
    pub fn girth(&self) -> Millimetres {
        Millimetres::computed(self.thickest().get() * PI)
    }

    /// Whether a knot covers the whole of it: a ball from pole to pole, a mat from its edge to its hole.
    pub const fn is_whole(&self) -> bool {
        matches!(self, Self::Ball(_) | Self::Flat { .. })
    }

    /// Whether it is a board with a mat on it, and not a thing that the cord goes round.
    pub const fn is_flat(&self) -> bool {
        matches!(self, Self::Flat { .. })
    }
}
