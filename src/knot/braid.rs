//! The knot itself: its counts, its strands, and any leg by number.

use strum::IntoStaticStr;

use super::{KnotError, Lattice, Nest, Pin, Rim, Weave};

/// Which way a leg goes.
///
/// ```
/// use marlinspeak::knot::{Heading, Knot, Weave};
///
/// // Rising and falling legs take turns; where one goes over, the other goes under.
/// let knot = Knot::new(3, 5, Weave::default())?;
/// assert_eq!(knot.leg(1, 1).unwrap().heading(), Heading::Rising);
/// assert_eq!(knot.leg(1, 2).unwrap().heading(), Heading::Falling);
/// assert_ne!(knot.goes_over(Heading::Rising, 2), knot.goes_over(Heading::Falling, 2));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Heading {
    /// From the bottom rim to the top rim.
    Rising,
    /// From the top rim to the bottom rim.
    Falling,
}

impl Heading {
    /// The heading of the legs that a leg of this one crosses.
    #[must_use]
    pub const fn opposite(self) -> Self {
        match self {
            Self::Rising => Self::Falling,
            Self::Falling => Self::Rising,
        }
    }
}

/// The cord between two pins on opposite rims.
///
/// ```
/// use marlinspeak::knot::{Knot, Pin, Weave};
///
/// // Leg 4 of 5 lead 7 bight: from top pin 1 down to bottom pin 4.
/// let leg = Knot::new(5, 7, Weave::default())?.leg(1, 4).unwrap();
/// assert_eq!((leg.from, leg.to), (Pin::top(1), Pin::bottom(4)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Leg {
    /// The strand it belongs to, 1 … [`Knot::strands`].
    pub strand: u16,
    /// Its number along that strand in one pass, 1 … [`Knot::legs_of`].
    pub number: u16,
    /// The pin it leaves.
    pub from: Pin,
    /// The pin it lands on.
    pub to: Pin,
}

impl Leg {
    /// Whether it rises or falls.
    pub const fn heading(self) -> Heading {
        match self.from.rim {
            Rim::Bottom => Heading::Rising,
            Rim::Top => Heading::Falling,
        }
    }
}

/// A Turk's head of so many leads and bights in a given weave, laid on pins; or several, interwoven.
///
/// ```
/// use marlinspeak::knot::{Knot, Lattice, Pin, Weave};
///
/// let knot = Knot::new(5, 7, Weave::default())?;
/// assert_eq!((knot.strands(), knot.crossings()), (1, 28));
/// // Odd leads: each top pin stands half way between two bottom pins.
/// assert!(knot.is_staggered());
///
/// // Leads and bights with a common factor need a cord for each strand.
/// assert_eq!(Knot::new(4, 6, Weave::default())?.strands(), 2);
///
/// // So do nested bights: here the first cord, from the outer bottom row, lands in the inner top row.
/// let knot = Knot::woven(Lattice::plain(3, 4)?.interwoven(2, 2)?, Weave::Run(2))?;
/// assert_eq!(knot.strands(), 2);
/// assert_eq!(knot.leg(1, 1).unwrap().to.row.number, 2);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Knot {
    pub(super) lattice: Lattice,
    weave: Weave,
    /// The cords of every bottom row, outermost first.
    pub(super) nests: Box<[Nest]>,
    /// For every bottom pin, row by row, how many rounds its strand has made before leaving it: 0,
    /// 1, …. A round is one rising and one falling leg.
    rounds: Box<[u16]>,
}

impl Knot {
    /// Builds a plain knot and its table of pins: time and memory O(bights).
    ///
    /// # Errors
    /// A [`KnotError`] when a count is out of bounds or the weave does not fit the leads.
    pub fn new(leads: u16, bights: u16, weave: Weave) -> Result<Self, KnotError> {
        Self::woven(Lattice::plain(leads, bights)?, weave)
    }

    /// Builds the knot on a lattice and its table of pins: time and memory O(nested × bights).
    ///
    /// # Errors
    /// A [`KnotError`] when the weave does not fit the rows of crossings.
    pub fn woven(lattice: Lattice, weave: Weave) -> Result<Self, KnotError> {
        let rows = lattice.rows();
        weave.check(rows).map_err(|error| {
            if lattice.is_interwoven() {
                KnotError::WeaveNested { rows }
            } else {
                error
            }
        })?;
        let bights = lattice.bights();
        let nests: Box<[Nest]> = lattice.nests().collect();
        let mut rounds = Vec::with_capacity(nests.len() * usize::from(bights));
        for nest in &nests {
            let first = rounds.len();
            rounds.resize(first + usize::from(bights), 0);
            let rounds = &mut rounds[first..];
            for strand in 0..nest.strands {
                let mut pin = strand;
                for round in 0..bights / nest.strands {
                    rounds[usize::from(pin)] = round;
                    pin = wrapped(pin + nest.leads % bights, bights);
                }
            }
        }
        Ok(Self {
            lattice,
            weave,
            nests,
            rounds: rounds.into(),
        })
    }

    /// The same knot in the twin of its weave; see [`Weave::twin`].
    #[must_use]
    pub fn twin(&self) -> Self {
        Self {
            weave: self.weave.twin(self.rows()),
            ..self.clone()
        }
    }

    /// Its counts, and what follows from them alone.
    pub const fn lattice(&self) -> Lattice {
        self.lattice
    }

    /// Cords met on a straight line from rim to rim; of an interwoven knot, leads of the first cord.
    pub const fn leads(&self) -> u16 {
        self.lattice.leads()
    }

    /// Scallops along each rim, and pins in each row.
    pub const fn bights(&self) -> u16 {
        self.lattice.bights()
    }

    /// Bights nested one inside the other at each rim, and so rows of pins there.
    pub const fn nested(&self) -> u16 {
        self.lattice.nested()
    }

    /// Which rows the rising legs go over.
    pub const fn weave(&self) -> &Weave {
        &self.weave
    }

    /// Closed paths in the knot; see [`Lattice::strands`].
    pub const fn strands(&self) -> u16 {
        let last = self.nests[self.nests.len() - 1];
        last.before + last.strands
    }

    /// Rows of crossings between the rims: of a plain knot leads − 1.
    pub const fn rows(&self) -> u16 {
        self.lattice.rows()
    }

    /// Crossings of the single knot: of a plain one bights × (leads − 1).
    pub fn crossings(&self) -> u32 {
        self.lattice.crossings()
    }

    /// The cords of every bottom row of pins, the outermost first.
    pub const fn nests(&self) -> &[Nest] {
        &self.nests
    }

    /// The cords that this strand is one of; the innermost for a strand that there is not.
    pub fn nest_of(&self, strand: u16) -> Nest {
        let inner = self.nests.iter().rfind(|nest| nest.before < strand);
        inner.or(self.nests.first()).copied().unwrap_or_default()
    }

    /// Legs that a strand makes in one pass.
    pub fn legs_of(&self, strand: u16) -> u16 {
        self.nest_of(strand).legs(self.bights())
    }

    /// Legs of one pass that come before the first of this strand.
    pub(super) fn legs_before_strand(&self, strand: u16) -> u32 {
        let nest = self.nest_of(strand);
        let outside = u32::from(nest.rows[0]) * 2 * u32::from(self.bights());
        outside + u32::from(strand - 1 - nest.before) * u32::from(self.legs_of(strand))
    }

    /// Whole turns of the tube that a leg makes before it lands.
    pub fn turns_of(&self, leg: Leg) -> u16 {
        self.nest_from(leg.from).leads / (2 * self.bights())
    }

    /// The cords of the legs that leave a pin.
    pub fn nest_from(&self, pin: Pin) -> Nest {
        let row = pin.row.index();
        let bottom = match pin.rim {
            Rim::Bottom => row,
            Rim::Top => self.lattice.lands_in(row),
        };
        self.nests[usize::from(bottom)]
    }

    /// Whether the top pins stand half way between the bottom ones: so when the leads are odd.
    pub const fn is_staggered(&self) -> bool {
        self.lattice.is_staggered()
    }

    /// Whether overs and unders run evenly round both rims along every cord by itself; see
    /// [`Weave::is_even`].
    pub fn is_even(&self) -> bool {
        self.lattice.is_even(&self.weave)
    }

    /// Whether a leg of this heading goes over in `row`, 1 the lowest.
    pub fn goes_over(&self, heading: Heading, row: u16) -> bool {
        self.weave.rising_over(row) == (heading == Heading::Rising)
    }

    /// Every pin of a rim, row by row, the outermost first.
    pub fn pins(&self, rim: Rim) -> impl Iterator<Item = Pin> + use<> {
        let (lattice, bights) = (self.lattice, self.bights());
        (0..self.nests.len()).flat_map(move |row| {
            let row = lattice.pin_row(u8::try_from(row).unwrap_or(u8::MAX));
            (1..=bights).map(move |number| Pin { rim, row, number })
        })
    }

    /// A pin of the row of its rim, 1 the outermost; none when there is no such row or number.
    pub fn pin(&self, rim: Rim, row: u16, number: u16) -> Option<Pin> {
        let is_there = (1..=self.nested()).contains(&row) && (1..=self.bights()).contains(&number);
        let row = u8::try_from(row).ok().filter(|_| is_there)?;
        Some(Pin {
            rim,
            row: self.lattice.pin_row(row - 1),
            number,
        })
    }

    /// How high a pin stands, in rows of crossings from the outermost bottom pins, and where round
    /// the tube, in half pitches from bottom pin 1.
    pub fn stands_at(&self, pin: Pin) -> (u16, u16) {
        let inside = 2 * u16::from(pin.row.index());
        let round = 2 * self.nested() * (pin.number - 1);
        match pin.rim {
            Rim::Bottom => (inside, round),
            Rim::Top => {
                let stagger = if self.is_staggered() {
                    self.nested()
                } else {
                    0
                };
                (self.lattice.height() - inside, round + stagger)
            }
        }
    }

    /// The leg with this number along this strand, or `None` when there is no such strand or
    /// leg.
    pub fn leg(&self, strand: u16, number: u16) -> Option<Leg> {
        let nest = self.nest_of(strand);
        let is_there = (1..=self.strands()).contains(&strand)
            && (1..=nest.legs(self.bights())).contains(&number);
        if !is_there {
            return None;
        }
        let (bights, leads) = (u32::from(self.bights()), u32::from(nest.leads));
        let round = u32::from((number - 1) / 2);
        #[expect(
            clippy::cast_possible_truncation,
            reason = "below `bights`, which fits"
        )]
        let bottom = ((u32::from(strand - 1 - nest.before) + round * leads) % bights) as u16;
        Some(if number % 2 == 1 {
            self.rising(nest, bottom)
        } else {
            self.falling(nest, self.lands(nest, bottom))
        })
    }

    /// The leg that leaves `pin`, which must be one of this knot.
    pub fn leg_from(&self, pin: Pin) -> Leg {
        let nest = self.nest_from(pin);
        match pin.rim {
            Rim::Bottom => self.rising(nest, pin.number - 1),
            Rim::Top => self.falling(nest, pin.number - 1),
        }
    }

    /// The leg that lands on `pin`, which must be one of this knot.
    pub fn leg_to(&self, pin: Pin) -> Leg {
        // A leg moves as many pins on as any other of its nest and heading, so walk back by that much.
        let (rim, nest) = (pin.rim.opposite(), self.nest_from(pin));
        let shift = nest.shifts[usize::from(rim == Rim::Top)];
        let from = wrapped(pin.number - 1 + self.bights() - shift, self.bights());
        match rim {
            Rim::Bottom => self.rising(nest, from),
            Rim::Top => self.falling(nest, from),
        }
    }

    /// The rising leg of this nest that leaves bottom pin `index`, counted from 0.
    pub(super) fn rising(&self, nest: Nest, index: u16) -> Leg {
        let [bottom, top] = nest.rows.map(|row| self.lattice.pin_row(row));
        Leg {
            strand: nest.strand_at(index),
            number: 2 * self.round_of(nest, index) + 1,
            from: Pin::bottom(index + 1).in_row(bottom),
            to: Pin::top(self.lands(nest, index) + 1).in_row(top),
        }
    }

    /// The falling leg of this nest that leaves top pin `index`, counted from 0.
    pub(super) fn falling(&self, nest: Nest, index: u16) -> Leg {
        let bights = self.bights();
        let rose_from = wrapped(index + bights - nest.shifts[0], bights);
        let [bottom, top] = nest.rows.map(|row| self.lattice.pin_row(row));
        let lands = wrapped(index + nest.shifts[1], bights);
        Leg {
            strand: nest.strand_at(rose_from),
            number: 2 * self.round_of(nest, rose_from) + 2,
            from: Pin::top(index + 1).in_row(top),
            to: Pin::bottom(lands + 1).in_row(bottom),
        }
    }

    /// The rounds that a strand of this nest has made before it leaves bottom pin `index`.
    fn round_of(&self, nest: Nest, index: u16) -> u16 {
        let row = usize::from(nest.rows[0]) * usize::from(self.bights());
        self.rounds[row + usize::from(index)]
    }

    /// The top pin, counted from 0, on which the leg of this nest from bottom pin `index` lands.
    fn lands(&self, nest: Nest, index: u16) -> u16 {
        wrapped(index + nest.shifts[0], self.bights())
    }
}

/// `index` brought back below `bights` when it is less than twice as much.
pub(super) const fn wrapped(index: u16, bights: u16) -> u16 {
    if index >= bights {
        index - bights
    } else {
        index
    }
}
