//! Where the tyer is.

use strum::{EnumString, IntoStaticStr, VariantNames};

use crate::knot::PassLeg;

/// A part of the job. Its name as text is that of the documents on disk and of the messages, so
/// the names of the variants stay.
///
/// ```
/// use marlinspeak::guide::{Phase, Place};
///
/// // The first pass leads, every later one follows it.
/// assert_eq!(Place::begin(1, 1).phase(), Phase::Lead);
/// assert_eq!(Place::begin(2, 1).phase().name(), "follow");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames)]
#[strum(serialize_all = "kebab-case")]
pub enum Phase {
    /// Packing what the tie needs into the bag.
    Kit,
    /// Rigging the tube: pins, rings, cord.
    Rig,
    /// The first pass: laying a strand's cord pin to pin.
    Lead,
    /// A later pass alongside the first.
    Follow,
    /// A look at what should be there, after the leg that the place names.
    Check,
    /// Taking the knot off the tube.
    Lift,
    /// Drawing the slack through.
    Fair,
    /// Hiding and sealing the ends.
    Finish,
}

impl Phase {
    /// Its name in documents and messages.
    pub fn name(self) -> &'static str {
        self.into()
    }
}

/// A place in the job that stays the same when it is told in other words or other portions.
///
/// Each phase names what it needs to be found again, and nothing else. All numbers count from
/// 1, but for the crossings.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
/// use marlinspeak::knot::PassLeg;
///
/// // In the last leg of 5 lead 7 bight, two of its four cords are crossed.
/// let pass_leg = PassLeg { pass: 1, strand: 1, leg: 14 };
/// let place = Place::Lay { pass_leg, crossing: 2 };
/// // Told two at a time that is where a part begins; told whole, the leg begins before it.
/// let script = |at_once| Plan::read("5", "7", "1", "1").map(|plan| Script::new(plan, at_once));
/// assert_eq!(script(AtOnce::UpTo(2))?.settle(place), place);
/// assert_eq!(script(AtOnce::WholeLeg)?.settle(place), Place::lay(pass_leg));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Place {
    /// A thing that goes into the bag.
    Kit {
        /// Which of the things.
        item: u16,
    },
    /// A thing to do to the tube.
    Rig {
        /// Which of the things to do.
        task: u16,
    },
    /// The beginning of a strand's pass, before its first leg.
    Begin {
        /// 1 is the lead pass.
        pass: u16,
        /// Which strand of the knot.
        strand: u16,
    },
    /// A leg, or the part of it that begins behind so many crossings.
    Lay {
        /// The leg of the pass.
        pass_leg: PassLeg,
        /// Crossings of this leg that lie behind the hand: 0 at its first part.
        crossing: u16,
    },
    /// A look at the work.
    Check {
        /// The leg laid last.
        pass_leg: PassLeg,
    },
    /// A thing to do to take the knot off the tube.
    Lift {
        /// Which of the things to do.
        task: u16,
    },
    /// A leg in a round of fairing.
    Fair {
        /// The round of fairing, through the whole knot.
        round: u16,
        /// The leg that is drawn through.
        pass_leg: PassLeg,
    },
    /// A thing to do to hide and seal the ends.
    Finish {
        /// Which of the things to do.
        task: u16,
    },
}

impl Place {
    /// The beginning of a strand's pass.
    pub const fn begin(pass: u16, strand: u16) -> Self {
        Self::Begin { pass, strand }
    }

    /// The first part of a leg.
    pub const fn lay(pass_leg: PassLeg) -> Self {
        Self::Lay {
            pass_leg,
            crossing: 0,
        }
    }

    /// The look at the work after a leg.
    pub const fn check(pass_leg: PassLeg) -> Self {
        Self::Check { pass_leg }
    }

    /// A leg in a round of fairing.
    pub const fn fair(round: u16, pass_leg: PassLeg) -> Self {
        Self::Fair { round, pass_leg }
    }

    /// The part of the job it belongs to.
    pub const fn phase(self) -> Phase {
        match self {
            Self::Kit { .. } => Phase::Kit,
            Self::Rig { .. } => Phase::Rig,
            Self::Begin { pass, .. }
            | Self::Lay {
                pass_leg: PassLeg { pass, .. },
                ..
            } => {
                if pass == 1 {
                    Phase::Lead
                } else {
                    Phase::Follow
                }
            }
            Self::Check { .. } => Phase::Check,
            Self::Lift { .. } => Phase::Lift,
            Self::Fair { .. } => Phase::Fair,
            Self::Finish { .. } => Phase::Finish,
        }
    }

    /// Which of the things to do, in a phase that is a list of them: kit, rig, lift, finish.
    pub const fn item(self) -> Option<u16> {
        match self {
            Self::Kit { item: number }
            | Self::Rig { task: number }
            | Self::Lift { task: number }
            | Self::Finish { task: number } => Some(number),
            Self::Begin { .. } | Self::Lay { .. } | Self::Check { .. } | Self::Fair { .. } => None,
        }
    }

    /// The leg of a pass that it names: laid, looked at or faired.
    pub const fn pass_leg(self) -> Option<PassLeg> {
        match self {
            Self::Lay { pass_leg, .. } | Self::Check { pass_leg } | Self::Fair { pass_leg, .. } => {
                Some(pass_leg)
            }
            Self::Kit { .. }
            | Self::Rig { .. }
            | Self::Begin { .. }
            | Self::Lift { .. }
            | Self::Finish { .. } => None,
        }
    }

    /// The pass it belongs to; none where the job is no pass of a cord.
    pub const fn pass(self) -> Option<u16> {
        match self {
            Self::Begin { pass, .. } => Some(pass),
            _ => match self.pass_leg() {
                Some(pass_leg) => Some(pass_leg.pass),
                None => None,
            },
        }
    }

    /// The strand it belongs to; none where the job is no pass of a cord.
    pub const fn strand(self) -> Option<u16> {
        match self {
            Self::Begin { strand, .. } => Some(strand),
            _ => match self.pass_leg() {
                Some(pass_leg) => Some(pass_leg.strand),
                None => None,
            },
        }
    }

    /// The number of the leg along its strand, where one is laid, looked at or faired.
    pub const fn leg(self) -> Option<u16> {
        match self.pass_leg() {
            Some(pass_leg) => Some(pass_leg.leg),
            None => None,
        }
    }

    /// The leg that is laid next here; none where the cord is not being laid.
    pub const fn laying(self) -> Option<PassLeg> {
        match self {
            Self::Begin { pass, strand } => Some(PassLeg {
                pass,
                strand,
                leg: 1,
            }),
            Self::Lay { pass_leg, .. } => Some(pass_leg),
            _ => None,
        }
    }

    /// Crossings behind the hand in the leg that is being laid: 0 where none is.
    pub const fn crossings_behind(self) -> u16 {
        match self {
            Self::Lay { crossing, .. } => crossing,
            _ => 0,
        }
    }
}
