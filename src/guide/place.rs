//! Where the tyer is.

use crate::knot::Turn;

/// A part of the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Phase {
    /// Packing the bag.
    Kit,
    /// Rigging the tube.
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

/// A place in the job that stays the same when it is told in other words or other portions.
///
/// In [`Phase::Lead`] and [`Phase::Follow`] leg 0 is the beginning of that strand's pass,
/// and `crossing` counts the crossings of the leg that were told before. In [`Phase::Kit`],
/// [`Phase::Rig`], [`Phase::Lift`] and [`Phase::Finish`] `leg` counts the things to do, from 1. In [`Phase::Fair`] `crossing` is the
/// round of fairing, from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Place {
    /// The part of the job.
    pub phase: Phase,
    /// 1 is the lead pass.
    pub pass: u16,
    /// 1 … strands.
    pub strand: u16,
    /// 1 … legs per strand, or 0 at the beginning.
    pub leg: u16,
    /// Crossings of this leg that lie behind the hand.
    pub crossing: u16,
}

impl Place {
    /// The beginning of a strand's pass.
    pub const fn begin(pass: u16, strand: u16) -> Self {
        Self {
            phase: Self::laying_phase(pass),
            pass,
            strand,
            leg: 0,
            crossing: 0,
        }
    }

    /// The first part of a leg.
    pub const fn lay(turn: Turn) -> Self {
        Self::at(Self::laying_phase(turn.pass), turn, 0)
    }

    /// The look at the work after a leg.
    pub const fn check(turn: Turn) -> Self {
        Self::at(Phase::Check, turn, 0)
    }

    /// A leg in a round of fairing.
    pub const fn fair(round: u16, turn: Turn) -> Self {
        Self::at(Phase::Fair, turn, round)
    }

    /// A thing to do, from 1, in a phase that is a list of them.
    pub const fn item(phase: Phase, number: u16) -> Self {
        Self::at(
            phase,
            Turn {
                pass: 1,
                strand: 1,
                leg: number,
            },
            0,
        )
    }

    /// The leg that the place names; leg 0 at the beginning of a pass.
    pub const fn turn(self) -> Turn {
        Turn {
            pass: self.pass,
            strand: self.strand,
            leg: self.leg,
        }
    }

    const fn at(phase: Phase, turn: Turn, crossing: u16) -> Self {
        let Turn { pass, strand, leg } = turn;
        Self {
            phase,
            pass,
            strand,
            leg,
            crossing,
        }
    }

    const fn laying_phase(pass: u16) -> Phase {
        if pass == 1 {
            Phase::Lead
        } else {
            Phase::Follow
        }
    }
}
