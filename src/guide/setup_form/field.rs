//! The fields of a setup.

use strum::{EnumCount, IntoStaticStr, VariantArray};

/// One of the things that can be said about object, cord and tube.
///
/// This is the one list of them: the command line makes an option of each, and forms and messages
/// know them by the same names.
///
/// ```
/// use marlinspeak::guide::{SetupField, SetupForm};
///
/// let mut form = SetupForm::default();
/// form.say(SetupField::RingWidth, " 12 mm ");
/// assert_eq!(form.said(SetupField::RingWidth), Some("12 mm"));
/// assert_eq!(SetupField::RingWidth.name(), "ring-width");
/// ```
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, EnumCount, IntoStaticStr, VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum SetupField {
    /// Diameter of the object; those of its two ends, bottom end first, where it tapers: 30mm:24mm.
    Object,
    /// The way round the object, instead of its diameter.
    Girth,
    /// Diameter of a ball that is covered, instead of an object.
    Ball,
    /// A mat, instead of an object: from edge to edge, and its hole too: 150mm:60mm.
    Mat,
    /// Whether it is tied on what it covers, and nothing is slid on: yes or no.
    InPlace,
    /// Length of the object to be covered; of a taper that over which it tapers.
    Cover,
    /// The cord: its diameter, a standard such as III or 550, or the name of one that is kept.
    Cord,
    /// What the cord is like: hard (round, keeps its shape), soft (braided or laid line) or flat
    /// (ribbon, hollow braid) [default: soft, or as it was kept].
    Firm,
    /// How closely two bands of the cord lie with another between them, in cord diameters, such as
    /// 1.7; instead of --firm.
    Give,
    /// The tube: its diameter, or the name of one that is kept.
    Tube,
    /// Holes in each row of a ring, such as 14,20; a tube without rings has none.
    Rows,
    /// Length of the pins.
    Pin,
    /// Thread of the pins, such as M4 or M5.
    Thread,
    /// Thickness of what the pins are screwed through.
    Wall,
    /// Width of each ring along the tube.
    RingWidth,
    /// Length of the tube.
    TubeLength,
    /// Cord at hand.
    Have,
}

impl SetupField {
    /// Its name in forms and messages.
    pub fn name(self) -> &'static str {
        self.into()
    }
}
