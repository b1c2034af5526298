//! Cord to cut.

use std::f64::consts::PI;

use super::{BenchError, Correction, Counts, Millimetres};
use crate::knot::Nest;

/// What a piece of cord has beyond what lies in the knot.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Allowances, Millimetres};
///
/// let usual = Allowances::default();
/// assert_eq!(usual.total().get(), 400.0);
/// // Who works with a needle holds on to less.
/// let holding = Millimetres::new(40.0).unwrap();
/// assert_eq!(Allowances { holding, ..usual }.total().get(), 340.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowances {
    /// The end left at the start.
    pub standing_tail: Millimetres,
    /// The end left when the last leg is laid.
    pub working_tail: Millimetres,
    /// What the tyer needs to hold while laying the last leg.
    pub holding: Millimetres,
}

impl Default for Allowances {
    /// Tails of 150 mm and 100 mm to hold: *common practice, no source*.
    fn default() -> Self {
        Self {
            standing_tail: Millimetres::computed(150.0),
            working_tail: Millimetres::computed(150.0),
            holding: Millimetres::computed(100.0),
        }
    }
}

impl Allowances {
    /// All of them together.
    pub fn total(&self) -> Millimetres {
        Millimetres::computed(
            self.standing_tail.get() + self.working_tail.get() + self.holding.get(),
        )
    }
}

/// Cord that turns at a rim, beyond the two legs that meet there.
///
/// Legs are measured from pin centre to pin centre (on the object: to the tip of the bight),
/// but the cord goes round the pin: its centre line bends by `π − 2α` on a circle of half
/// the pin and half the cord. Off the pins, `pin` is `None` and the bight closes to the
/// cord's own radius. Followers turn outside the bight on one rim and inside on the other,
/// so the first pass is their mean. *Derived from common practice, no source.*
///
/// # Examples
/// ```
/// use std::f64::consts::FRAC_PI_3;
///
/// use marlinspeak::bench::{Millimetres, bight_turn};
///
/// // Legs of 4 mm cord at 60° from the axis turn by a sixth of a circle. Round a screw of 4 mm that
/// // circle is twice as wide as where the bight has closed.
/// let four = Millimetres::new(4.0).unwrap();
/// let on_screw = bight_turn(four, Some(four), FRAC_PI_3);
/// assert!((on_screw.get() - 4.19).abs() < 0.01);
/// assert_eq!(on_screw.get(), 2.0 * bight_turn(four, None, FRAC_PI_3).get());
/// ```
pub fn bight_turn(cord: Millimetres, pin: Option<Millimetres>, angle: f64) -> Millimetres {
    let radius = f64::midpoint(cord.get(), pin.map_or(0.0, Millimetres::get));
    Millimetres::computed(radius * (PI - 2.0 * angle))
}

/// How much cord a tie takes.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Allowances, Consumption, Correction, Counts, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A doubled 5 lead 7 bight has 28 legs and as many turns at the rims: here of 60 and 4 mm.
/// let (counts, allowances) = (Counts::new(5, 7, 2).unwrap(), Allowances::default());
/// let as_estimated = Correction::default();
/// let cord = Consumption::new(counts, mm(60.0), mm(4.0), as_estimated, allowances);
/// assert_eq!(cord.in_knot().get(), 28.0 * 64.0);
/// assert_eq!(cord.to_cut().get(), 28.0 * 64.0 + allowances.total().get());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Consumption {
    counts: Counts,
    allowances: Allowances,
    /// Cord in one leg from outermost pin to outermost pin, crimp included, corrected by the tyer's log.
    pub leg: Millimetres,
    /// Cord in one turn at a rim, corrected by the tyer's log.
    pub turn: Millimetres,
}

/// A length of cord to be cut.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Allowances, Consumption, Correction, Counts, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let (counts, allowances) = (Counts::new(5, 7, 3).unwrap(), Allowances::default());
/// let as_estimated = Correction::default();
/// let cord = Consumption::new(counts, mm(60.0), mm(4.0), as_estimated, allowances);
/// // One cord for the lead pass, another for the two that follow; each has tails of its own.
/// let pieces = cord.pieces(&[1, 2]).unwrap();
/// let lengths: Vec<_> = pieces.iter().map(|piece| (piece.passes, piece.length.get())).collect();
/// assert_eq!(lengths, [(1, 896.0 + 400.0), (2, 1792.0 + 400.0)]);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CordPiece {
    /// The strand it makes, 1 … strands.
    pub strand: u16,
    /// Its place among the cords given to [`Consumption::pieces`], from 0.
    pub cord: usize,
    /// Passes it makes.
    pub passes: u16,
    /// Length to cut, tails and holding included.
    pub length: Millimetres,
}

impl Consumption {
    /// From the cord in a leg and in a turn at a rim.
    pub fn new(
        counts: Counts,
        leg: Millimetres,
        turn: Millimetres,
        correction: Correction,
        allowances: Allowances,
    ) -> Self {
        let corrected =
            |length: Millimetres| Millimetres::computed(length.get() * correction.length());
        Self {
            counts,
            allowances,
            leg: corrected(leg),
            turn: corrected(turn),
        }
    }

    /// One pass of all strands: `2B` legs of every nest and as many turns, without tails.
    pub fn per_pass(&self) -> Millimetres {
        let nests = self.counts.lattice().nests();
        Millimetres::computed(nests.map(|nest| self.per_pass_of(nest)).sum())
    }

    /// One pass of the strands of a nest: its legs are as much shorter as its pins stand inside.
    fn per_pass_of(&self, nest: Nest) -> f64 {
        f64::from(2 * self.counts.bights()) * self.per_leg(nest)
    }

    /// Millimetres of cord that a leg of a nest takes on the tube, crimp and the turn at its end
    /// included.
    pub fn per_leg(&self, nest: Nest) -> f64 {
        self.leg.get() * self.counts.share(nest) + self.turn.get()
    }

    /// What a piece of cord has beyond what lies in the knot.
    pub const fn allowances(&self) -> Allowances {
        self.allowances
    }

    /// All passes of all strands, without tails.
    pub fn in_knot(&self) -> Millimetres {
        Millimetres::computed(f64::from(self.counts.passes()) * self.per_pass().get())
    }

    /// A piece that makes one strand of a nest in so many passes: length to cut, tails and holding
    /// included.
    pub fn piece(&self, nest: Nest, passes: u16) -> Millimetres {
        let pass = self.per_pass_of(nest) / f64::from(nest.strands);
        Millimetres::computed(f64::from(passes) * pass + self.allowances.total().get())
    }

    /// For each strand of the outermost nest, when one cord makes all its passes: length to cut.
    pub fn per_strand(&self) -> Millimetres {
        self.piece(self.counts.lattice().nest(0), self.counts.passes())
    }

    /// In all, when one cord makes all passes of a strand: length to cut.
    pub fn to_cut(&self) -> Millimetres {
        let of_nest =
            |nest: Nest| f64::from(nest.strands) * self.piece(nest, self.counts.passes()).get();
        Millimetres::computed(self.counts.lattice().nests().map(of_nest).sum())
    }

    /// The pieces to cut when the passes are shared among several cords, first to last:
    /// `&[1, 2]` is a cord for the lead pass and another for the two that follow.
    ///
    /// # Errors
    /// [`BenchError::PassesShared`] when they do not add up to the passes of the knot, or a
    /// cord makes none.
    pub fn pieces(&self, passes_by_cord: &[u16]) -> Result<Vec<CordPiece>, BenchError> {
        let shared = passes_by_cord
            .iter()
            .map(|&passes| usize::from(passes))
            .sum();
        if shared != usize::from(self.counts.passes()) || passes_by_cord.contains(&0) {
            return Err(BenchError::PassesShared {
                shared,
                passes: self.counts.passes(),
            });
        }
        let nests = self.counts.lattice().nests();
        let strands = nests.flat_map(|nest| {
            let strands = nest.before + 1..=nest.before + nest.strands;
            strands.map(move |strand| (nest, strand))
        });
        let of_strand = |(nest, strand)| {
            let piece = move |(cord, &passes): (usize, &u16)| CordPiece {
                strand,
                cord,
                passes,
                length: self.piece(nest, passes),
            };
            passes_by_cord.iter().enumerate().map(piece)
        };
        Ok(strands.flat_map(of_strand).collect())
    }
}
