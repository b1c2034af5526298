//! Pins and the two rims they stand on; the sides of a cord and of a tyer.

use strum::{EnumString, IntoStaticStr, VariantNames};

/// One of the two edges of the knot, with a ring of pins.
///
/// ```
/// use marlinspeak::knot::{Pin, Rim};
///
/// // A leg goes from rim to rim.
/// assert_eq!(Pin::bottom(1).rim.opposite(), Rim::Top);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Rim {
    /// The rim where the tyer begins.
    Bottom,
    /// The rim where the first leg lands.
    Top,
}

impl Rim {
    /// The rim across the knot, where a leg from this one lands.
    #[must_use]
    pub const fn opposite(self) -> Self {
        match self {
            Self::Bottom => Self::Top,
            Self::Top => Self::Bottom,
        }
    }
}

/// A row of pins at a rim, one of as many as are nested there.
///
/// ```
/// use marlinspeak::knot::{Pin, PinRow};
///
/// // A plain knot has one row at each rim, which nobody needs to name.
/// assert_eq!(Pin::bottom(3).row, PinRow::ONLY);
/// assert!(!PinRow::ONLY.is_one_of_several());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct PinRow {
    /// 1 is the outermost.
    pub number: u8,
    /// Rows at each rim.
    pub of: u8,
}

impl PinRow {
    /// The one row of a plain knot.
    pub const ONLY: Self = Self { number: 1, of: 1 };

    /// Whether there are others from which it must be told.
    pub const fn is_one_of_several(self) -> bool {
        self.of > 1
    }

    /// Counted from 0, the outermost.
    pub(super) const fn index(self) -> u8 {
        self.number - 1
    }
}

/// A pin: its rim, its row there, and its number, 1 … bights, counted the way the cord travels.
///
/// ```
/// use marlinspeak::knot::{Knot, Pin, Weave};
///
/// // The first leg of 5 lead 7 bight goes from bottom pin 1 to top pin 3.
/// let knot = Knot::new(5, 7, Weave::default())?;
/// assert_eq!(knot.leg_from(Pin::bottom(1)).to, Pin::top(3));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Pin {
    /// The ring it stands in.
    pub rim: Rim,
    /// Its row of pins there: with nested bights there are several, one inside the other.
    pub row: PinRow,
    /// Its number in that row, 1 … bights.
    pub number: u16,
}

impl Pin {
    /// A pin of the bottom ring, which has but one row.
    pub const fn bottom(number: u16) -> Self {
        Self {
            rim: Rim::Bottom,
            row: PinRow::ONLY,
            number,
        }
    }

    /// A pin of the top ring, which has but one row.
    pub const fn top(number: u16) -> Self {
        Self {
            rim: Rim::Top,
            row: PinRow::ONLY,
            number,
        }
    }

    /// The pin of the same number in this row.
    #[must_use]
    pub const fn in_row(self, row: PinRow) -> Self {
        Self { row, ..self }
    }
}

/// A side of a cord as the tyer sees it, whichever way the cord travels.
///
/// ```
/// use marlinspeak::knot::{Hand, Rim, Side};
///
/// // On the right of the first cord, a follower turns inside its bights at the top and outside
/// // them at the bottom.
/// assert!(Side::Right.turns_inside(Rim::Top, Hand::Right));
/// assert!(!Side::Right.turns_inside(Rim::Bottom, Hand::Right));
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Side {
    /// On the right-hand side of somebody walking along the cord.
    #[default]
    Right,
    /// On the left-hand side.
    Left,
}

/// Which way round the tube the tyer works.
///
/// A left-handed tyer sees the picture mirrored: the cord travels to the left and the pins
/// are numbered to the left. Their numbers, the rows, the overs and the unders stay.
///
/// ```
/// use marlinspeak::knot::{Hand, Rim, Side};
///
/// // To a left-handed tyer the picture is mirrored: on the right, it turns outside at the top.
/// assert!(!Side::Right.turns_inside(Rim::Top, Hand::Left));
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Hand {
    /// The cord travels to the right.
    #[default]
    Right,
    /// The cord travels to the left.
    Left,
}

impl Side {
    /// Whether a cord that keeps to this side of another turns *inside* the other's bight at
    /// a pin of `rim` (between it and the middle of the knot), for a tyer of this hand.
    ///
    /// Travelling to the right, the cord turns to its right at the top, so the right-hand
    /// side is the inner one there and the outer one at the bottom; mirrored, the other way.
    pub const fn turns_inside(self, rim: Rim, hand: Hand) -> bool {
        let keeps_with_hand = matches!(
            (self, hand),
            (Self::Right, Hand::Right) | (Self::Left, Hand::Left)
        );
        keeps_with_hand == matches!(rim, Rim::Top)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_right_hand_follower_turns_inside_at_the_top_and_outside_at_the_bottom() {
        assert!(Side::Right.turns_inside(Rim::Top, Hand::Right));
        assert!(!Side::Right.turns_inside(Rim::Bottom, Hand::Right));
        assert!(!Side::Left.turns_inside(Rim::Top, Hand::Right));
        assert!(Side::Left.turns_inside(Rim::Bottom, Hand::Right));
    }

    #[test]
    fn the_mirrored_tyer_turns_the_other_way_on_the_same_side() {
        for side in [Side::Right, Side::Left] {
            for rim in [Rim::Bottom, Rim::Top] {
                assert_ne!(
                    side.turns_inside(rim, Hand::Right),
                    side.turns_inside(rim, Hand::Left)
                );
            }
        }
    }
}
