//! The order in which cords are laid, and what a leg meets when it is.

use strum::{EnumString, IntoStaticStr, VariantNames};

use super::braid::wrapped;
use super::{Knot, KnotError, Leg, Quantity};

/// In which order the strands and passes of a knot are laid. The same for one strand.
///
/// ```
/// use marlinspeak::knot::{Knot, Laying, LayingOrder, Weave};
///
/// // Two strands, doubled, of six legs a pass: after the first pass of the first strand comes
/// // the first pass of the second, or else the second pass of the first.
/// let knot = Knot::new(4, 6, Weave::default())?;
/// let laying = Laying::new(knot, 2, LayingOrder::PassByPass)?;
/// assert_eq!(laying.nth_leg(6).map(|leg| (leg.pass, leg.strand)), Some((1, 2)));
/// let laying = laying.with_order(LayingOrder::StrandByStrand);
/// assert_eq!(laying.nth_leg(6).map(|leg| (leg.pass, leg.strand)), Some((2, 1)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
pub enum LayingOrder {
    /// The lead pass of every strand first, then the second pass of every strand, ….
    #[default]
    #[strum(serialize = "passes")]
    PassByPass,
    /// All passes of the first strand, then all of the second, ….
    #[strum(serialize = "strands")]
    StrandByStrand,
}

impl LayingOrder {
    /// The order in which a knot is laid when nobody says another: of an interwoven knot one cord is
    /// finished before the next is laced through it. *Common practice, no source.*
    pub const fn usual(knot: &Knot) -> Self {
        if knot.lattice().is_interwoven() {
            Self::StrandByStrand
        } else {
            Self::PassByPass
        }
    }
}

/// One leg of one pass: what is laid at a time.
///
/// ```
/// use marlinspeak::knot::{Knot, Laying, LayingOrder, PassLeg, Weave};
///
/// // The second pass of a doubled 5 lead 7 bight follows the fourteen legs of the lead pass.
/// let knot = Knot::new(5, 7, Weave::default())?;
/// let laying = Laying::new(knot, 2, LayingOrder::default())?;
/// let first = PassLeg { pass: 2, strand: 1, leg: 1 };
/// assert_eq!(laying.legs_before(first), 14);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct PassLeg {
    /// 1 is the lead pass.
    pub pass: u16,
    /// Which strand of the knot, 1 … [`Knot::strands`].
    pub strand: u16,
    /// Which leg of that strand's pass, in the order of laying: 1 … [`Knot::legs_of`].
    pub leg: u16,
}

impl PassLeg {
    /// The first leg of all.
    pub const FIRST: Self = Self {
        pass: 1,
        strand: 1,
        leg: 1,
    };
}

/// The cords met at one point of a leg.
///
/// ```
/// use marlinspeak::knot::{Knot, Laying, LayingOrder, PassLeg, Weave};
///
/// // Leg 6 of 5 lead 7 bight goes under one cord in row 3, then under one in row 1.
/// let knot = Knot::new(5, 7, Weave::default())?;
/// let laying = Laying::new(knot, 1, LayingOrder::default())?;
/// let met = laying.crossings(PassLeg { pass: 1, strand: 1, leg: 6 });
/// let told: Vec<_> = met.map(|met| (met.over, met.cords, met.row)).collect();
/// assert_eq!(told, [(false, 1, 3), (false, 1, 1)]);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Crossing {
    /// The row it lies in, counted from the bottom; 1 … leads − 1 in a plain knot.
    pub row: u16,
    /// Whether the leg being laid goes over.
    pub over: bool,
    /// How many cords lie there already, all crossed together.
    pub cords: u16,
    /// The leg those cords belong to, in its own direction of travel.
    pub of: Leg,
}

/// A knot, its passes, and the order of laying them.
///
/// ```
/// use marlinspeak::knot::{Knot, Laying, LayingOrder, Weave};
///
/// let knot = Knot::new(5, 7, Weave::default())?;
/// let laying = Laying::new(knot, 1, LayingOrder::default())?;
/// let met: Vec<usize> = (0..laying.legs())
///     .filter_map(|nth| laying.nth_leg(nth))
///     .map(|leg| laying.crossings(leg).count())
///     .collect();
/// // The first legs cross nothing, the last ones a cord in every row; in all, each crossing of
/// // the knot is met once.
/// assert_eq!(met, [0, 0, 0, 1, 1, 2, 2, 2, 2, 3, 3, 4, 4, 4]);
/// assert_eq!(met.iter().sum::<usize>(), 28);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Laying {
    knot: Knot,
    passes: u16,
    order: LayingOrder,
    /// For each pass, how many rounds past the strand's own pin it begins.
    starts: [u16; MOST_PASSES],
}

const MOST_PASSES: usize = *Quantity::Passes.bounds().end() as usize;

impl Laying {
    /// A knot laid in so many passes, each begun at the first pin of its strand.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn new(knot: Knot, passes: u16, order: LayingOrder) -> Result<Self, KnotError> {
        Quantity::Passes.check(passes)?;
        Ok(Self {
            knot,
            passes,
            order,
            starts: [0; MOST_PASSES],
        })
    }

    /// The knot laid in this order of strands and passes.
    #[must_use]
    pub fn with_order(self, order: LayingOrder) -> Self {
        Self { order, ..self }
    }

    /// The knot laid with one pass of every strand begun at the bottom pin that its cord reaches
    /// after so many rounds: an added cord that does not begin where the others do. A start
    /// beyond the strand's rounds counts on from its first pin again.
    #[must_use]
    pub fn with_start(mut self, pass: u16, rounds: u16) -> Self {
        if let Some(start) = usize::from(pass)
            .checked_sub(1)
            .and_then(|pass| self.starts.get_mut(pass))
        {
            *start = rounds;
        }
        self
    }

    /// The same laying of the knot in the twin of its weave.
    #[must_use]
    pub fn with_twin(&self) -> Self {
        Self {
            knot: self.knot.twin(),
            ..self.clone()
        }
    }

    /// How many rounds past the strand's own pin a pass of it begins.
    pub fn start(&self, pass: u16, strand: u16) -> u16 {
        match self.asked_start(pass) {
            0 => 0,
            start => start % (self.knot.legs_of(strand) / 2),
        }
    }

    /// The same as it was asked for: it may go beyond the rounds of a strand.
    fn asked_start(&self, pass: u16) -> u16 {
        let start = self.starts.get(usize::from(pass).wrapping_sub(1));
        start.copied().unwrap_or_default()
    }

    /// The knot that is laid.
    pub const fn knot(&self) -> &Knot {
        &self.knot
    }

    /// How many times the cord goes round the whole pattern.
    pub const fn passes(&self) -> u16 {
        self.passes
    }

    /// The order of strands and passes.
    pub const fn order(&self) -> LayingOrder {
        self.order
    }

    /// Legs in the whole tie: every leg of every pass.
    pub fn legs(&self) -> u32 {
        self.knot.lattice().legs() * u32::from(self.passes)
    }

    /// The leg that is laid as `pass_leg`, or `None` when the tie has no such one.
    pub fn leg(&self, pass_leg: PassLeg) -> Option<Leg> {
        if !(1..=self.passes).contains(&pass_leg.pass) {
            return None;
        }
        let PassLeg { pass, strand, leg } = pass_leg;
        let legs = self.knot.legs_of(strand);
        if !(1..=legs).contains(&leg) {
            return None;
        }
        let number = wrapped(leg - 1 + 2 * self.start(pass, strand), legs) + 1;
        self.knot.leg(strand, number)
    }

    /// As which leg of its pass `leg` is laid.
    pub fn pass_leg_of(&self, pass: u16, leg: Leg) -> PassLeg {
        let number = match self.start(pass, leg.strand) {
            0 => leg.number,
            start => {
                let legs = self.knot.legs_of(leg.strand);
                wrapped(leg.number - 1 + legs - 2 * start, legs) + 1
            }
        };
        PassLeg {
            pass,
            strand: leg.strand,
            leg: number,
        }
    }

    /// How many legs are laid before `pass_leg`, which must be of this tie.
    pub fn legs_before(&self, pass_leg: PassLeg) -> u32 {
        self.legs_before_in(self.order, pass_leg)
    }

    /// How many legs come before `pass_leg` when all are gone through in an order, which need not be
    /// that of the laying.
    pub fn legs_before_in(&self, order: LayingOrder, pass_leg: PassLeg) -> u32 {
        let PassLeg { pass, strand, leg } = pass_leg;
        let outside = self.knot.legs_before_strand(strand);
        let trips = match order {
            LayingOrder::PassByPass => u32::from(pass - 1) * self.knot.lattice().legs() + outside,
            LayingOrder::StrandByStrand => {
                let own = u32::from(pass - 1) * u32::from(self.knot.legs_of(strand));
                outside * u32::from(self.passes) + own
            }
        };
        trips + u32::from(leg - 1)
    }

    /// The leg before which `legs_before` legs are laid, or `None` past the end of the tie.
    #[expect(
        clippy::cast_possible_truncation,
        reason = "each is below a count that fits"
    )]
    pub fn nth_leg(&self, legs_before: u32) -> Option<PassLeg> {
        if legs_before >= self.legs() {
            return None;
        }
        let in_nest = 2 * u32::from(self.knot.bights());
        // The pass, when all strands have one before the next, and what is left within it.
        let (pass, left, in_turn) = match self.order {
            LayingOrder::PassByPass => {
                let (pass, left) = divided(legs_before, self.knot.lattice().legs());
                (pass, left, 1)
            }
            LayingOrder::StrandByStrand => (0, legs_before, u32::from(self.passes)),
        };
        let (row, left) = divided(left, in_nest * in_turn);
        let nest = self.knot.nests()[row as usize];
        let legs = u32::from(nest.legs(self.knot.bights()));
        let (strand, left) = divided(left, legs * in_turn);
        let (later, left) = divided(left, legs);
        Some(PassLeg {
            pass: (pass + later) as u16 + 1,
            strand: nest.before + strand as u16 + 1,
            leg: left as u16 + 1,
        })
    }

    /// How many cords of `leg` lie on the tube just before `pass_leg` is laid.
    #[inline]
    pub fn cords_of(&self, leg: Leg, pass_leg: PassLeg) -> u16 {
        // Asked of every crossing: most passes begin where the others do, and count as the knot does.
        let laid_as = match self.asked_start(pass_leg.pass) {
            0 => leg.number,
            _ => self.pass_leg_of(pass_leg.pass, leg).leg,
        };
        let earlier_leg = laid_as < pass_leg.leg;
        match self.order {
            LayingOrder::PassByPass => {
                let earlier =
                    leg.strand < pass_leg.strand || leg.strand == pass_leg.strand && earlier_leg;
                pass_leg.pass - u16::from(!earlier)
            }
            LayingOrder::StrandByStrand if leg.strand == pass_leg.strand => {
                pass_leg.pass - u16::from(!earlier_leg)
            }
            LayingOrder::StrandByStrand if leg.strand < pass_leg.strand => self.passes,
            LayingOrder::StrandByStrand => 0,
        }
    }

    /// The crossings that the leg of `pass_leg` meets, in the order it meets them: only points
    /// where a cord lies already. Takes O(rows) in all and stores nothing.
    pub fn crossings(&self, pass_leg: PassLeg) -> impl Iterator<Item = Crossing> + '_ {
        let leg = self.leg(pass_leg);
        leg.into_iter().flat_map(move |leg| {
            let heading = leg.heading();
            self.knot.crossings_of(leg).filter_map(move |(row, of)| {
                let cords = self.cords_of(of, pass_leg);
                (cords > 0).then(|| Crossing {
                    row,
                    over: self.knot.goes_over(heading, row),
                    cords,
                    of,
                })
            })
        })
    }

    /// How many crossings the leg of `pass_leg` meets, of which [`Laying::crossings`] tells each. Where a
    /// whole pass of a plain knot lies already it is one in every row; else takes O(rows).
    pub fn met(&self, pass_leg: PassLeg) -> u16 {
        let is_plain = !self.knot.lattice().is_interwoven();
        let follows = pass_leg.pass > 1 && self.order == LayingOrder::PassByPass;
        if is_plain && follows && self.leg(pass_leg).is_some() {
            return self.knot.rows();
        }
        let met = self.crossings(pass_leg).count();
        u16::try_from(met).unwrap_or(u16::MAX)
    }
}

/// How many times `whole` goes into `number`, and what is left. Mostly it does not go into it at all,
/// and a division takes long.
const fn divided(number: u32, whole: u32) -> (u32, u32) {
    if number < whole {
        (0, number)
    } else {
        (number / whole, number % whole)
    }
}
