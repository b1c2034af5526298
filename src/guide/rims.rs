//! What the two rims of a knot are called where it is tied.

use super::{Plan, Setup};
use crate::bench::Ground;

/// What the two rims are called. The first of each pair is the bottom rim of the lattice, the second
/// its top rim; a leg that rises goes from the first to the second.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Cord, Ground, Millimetres};
/// use marlinspeak::guide::{Plan, RimNames, Setup};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let rail = Setup::in_place(Ground::Round(mm(28.0)), Cord::new(mm(4.0)));
/// let plan = Plan::read("5", "7", "2", "")?.with_setup(Some(rail));
/// assert_eq!(plan.rims(), RimNames::NearFar);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, strum::EnumIter, strum::IntoStaticStr,
)]
#[strum(serialize_all = "kebab-case")]
pub enum RimNames {
    /// Bottom and top ring: of a tube that stands upright.
    #[default]
    BottomTop,
    /// Near and far end: of a rail that the tyer stands at, and looks along.
    NearFar,
    /// Outer and inner circle: of a mat on a board, where up is in and down is out.
    OuterInner,
    /// Wrist side and fingertip side: of a knot that is tied round the hand, its palm towards the tyer.
    #[strum(serialize = "hand")]
    WristTips,
    /// Bottom and top of a ball or a knob that the knot is tied on, at marks.
    Knob,
}

impl Setup {
    /// What the rims are called.
    pub const fn rims(&self) -> RimNames {
        match self.ground() {
            Ground::Flat { .. } => RimNames::OuterInner,
            Ground::Round(_) | Ground::Taper { .. } if self.in_place => RimNames::NearFar,
            Ground::Ball(_) if self.in_place => RimNames::Knob,
            _ => RimNames::BottomTop,
        }
    }
}

impl RimNames {
    /// Whether pins hold the bights there; where there are none, marks say where they lie.
    pub const fn has_pins(self) -> bool {
        !matches!(self, Self::NearFar | Self::Knob | Self::WristTips)
    }
}

impl Plan {
    /// What the rims of the knot are called where it is tied.
    pub fn rims(&self) -> RimNames {
        if self.is_round_hand() {
            return RimNames::WristTips;
        }
        self.setup().map_or_else(RimNames::default, Setup::rims)
    }
}
