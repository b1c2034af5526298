//! The knot itself: its counts, its strands, and any leg by number.

use strum::IntoStaticStr;

use super::{KnotError, Pin, Quantity, Rim, Weave};

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
    /// Its number along that strand in one pass, 1 … [`Knot::legs_per_strand`].
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

/// A Turk's head of so many leads and bights in a given weave, laid on pins.
///
/// ```
/// use marlinspeak::knot::{Knot, Weave};
///
/// let knot = Knot::new(5, 7, Weave::default())?;
/// assert_eq!((knot.strands(), knot.crossings()), (1, 28));
/// // Odd leads: each top pin stands half way between two bottom pins.
/// assert!(knot.is_staggered());
///
/// // Leads and bights with a common factor need a cord for each strand.
/// assert_eq!(Knot::new(4, 6, Weave::default())?.strands(), 2);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Knot {
    leads: u16,
    bights: u16,
    weave: Weave,
    strands: u16,
    /// For every bottom pin, how many rounds its strand has made before leaving it: 0, 1, ….
    /// A round is one rising and one falling leg.
    rounds: Box<[u16]>,
}

impl Knot {
    /// Builds the knot and its table of pins: time and memory O(bights).
    ///
    /// # Errors
    /// A [`KnotError`] when a count is out of bounds or the weave does not fit the leads.
    pub fn new(leads: u16, bights: u16, weave: Weave) -> Result<Self, KnotError> {
        Quantity::Leads.check(leads)?;
        Quantity::Bights.check(bights)?;
        weave.check(leads - 1)?;
        let strands = Self::strands_of(leads, bights);
        let mut rounds = vec![0; usize::from(bights)].into_boxed_slice();
        for strand in 0..strands {
            let mut pin = strand;
            for round in 0..bights / strands {
                rounds[usize::from(pin)] = round;
                pin = wrapped(pin + leads % bights, bights);
            }
        }
        Ok(Self {
            leads,
            bights,
            weave,
            strands,
            rounds,
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

    /// Closed paths in a knot of these counts, which must not be nought.
    pub(super) const fn strands_of(leads: u16, bights: u16) -> u16 {
        greatest_common_divisor(leads, bights)
    }

    /// Cords met on a straight line from rim to rim.
    pub const fn leads(&self) -> u16 {
        self.leads
    }

    /// Scallops along each rim, and pins on each ring.
    pub const fn bights(&self) -> u16 {
        self.bights
    }

    /// Which rows the rising legs go over.
    pub const fn weave(&self) -> &Weave {
        &self.weave
    }

    /// Closed paths in the knot: the greatest common divisor of leads and bights (Ashley's law
    /// of the common divisor, *The Ashley Book of Knots*, ch. 17).
    pub const fn strands(&self) -> u16 {
        self.strands
    }

    /// Rows of crossings between the rims: leads − 1.
    pub const fn rows(&self) -> u16 {
        self.leads - 1
    }

    /// Crossings of the single knot: bights × (leads − 1).
    pub fn crossings(&self) -> u32 {
        u32::from(self.bights) * u32::from(self.rows())
    }

    /// Legs that one strand makes in one pass.
    pub const fn legs_per_strand(&self) -> u16 {
        2 * (self.bights / self.strands)
    }

    /// Whole turns of the tube that every leg makes before it lands.
    pub const fn turns(&self) -> u16 {
        self.leads / (2 * self.bights)
    }

    /// Whether the top pins stand half a pitch off the bottom ones: so when the leads are odd.
    pub const fn is_staggered(&self) -> bool {
        !self.leads.is_multiple_of(2)
    }

    /// Whether overs and unders run evenly round both rims; see [`Weave::is_even`].
    pub fn is_even(&self) -> bool {
        self.weave.is_even(self.rows())
    }

    /// Whether a leg of this heading goes over in `row`, 1 … leads − 1.
    pub fn goes_over(&self, heading: Heading, row: u16) -> bool {
        self.weave.rising_over(row) == (heading == Heading::Rising)
    }

    /// The leg with this number along this strand, or `None` when there is no such strand or
    /// leg.
    pub fn leg(&self, strand: u16, number: u16) -> Option<Leg> {
        if !(1..=self.strands).contains(&strand) || !(1..=self.legs_per_strand()).contains(&number)
        {
            return None;
        }
        let (bights, leads) = (u32::from(self.bights), u32::from(self.leads));
        let round = u32::from((number - 1) / 2);
        #[expect(
            clippy::cast_possible_truncation,
            reason = "below `bights`, which fits"
        )]
        let bottom = ((u32::from(strand - 1) + round * leads) % bights) as u16;
        Some(if number % 2 == 1 {
            self.rising(bottom)
        } else {
            self.falling(self.lands(bottom))
        })
    }

    /// The leg that leaves `pin`, whose number must be 1 … bights.
    pub fn leg_from(&self, pin: Pin) -> Leg {
        match pin.rim {
            Rim::Bottom => self.rising(pin.number - 1),
            Rim::Top => self.falling(pin.number - 1),
        }
    }

    /// The leg that lands on `pin`, whose number must be 1 … bights.
    pub fn leg_to(&self, pin: Pin) -> Leg {
        // A leg moves as many pins on as any other of its heading, so walk back by that much.
        let from = wrapped(
            pin.number - 1 + self.bights - self.shift(pin.rim.opposite()),
            self.bights,
        );
        self.leg_from(Pin {
            rim: pin.rim.opposite(),
            number: from + 1,
        })
    }

    /// How many pins on, round the tube, a leg lands that leaves this rim.
    ///
    /// A leg covers `leads` half pitches. With odd leads the top pins stand half a pitch on,
    /// so a rising leg lands half a pitch short of that many and a falling leg half a pitch
    /// beyond.
    pub(super) const fn shift(&self, leaving: Rim) -> u16 {
        let pins = match leaving {
            Rim::Bottom => self.leads / 2,
            Rim::Top => self.leads.div_ceil(2),
        };
        pins % self.bights
    }

    /// The rising leg that leaves bottom pin `index`, counted from 0.
    pub(super) fn rising(&self, index: u16) -> Leg {
        Leg {
            strand: index % self.strands + 1,
            number: 2 * self.rounds[usize::from(index)] + 1,
            from: Pin::bottom(index + 1),
            to: Pin::top(self.lands(index) + 1),
        }
    }

    /// The falling leg that leaves top pin `index`, counted from 0.
    pub(super) fn falling(&self, index: u16) -> Leg {
        let rose_from = wrapped(index + self.bights - self.shift(Rim::Bottom), self.bights);
        Leg {
            strand: rose_from % self.strands + 1,
            number: 2 * self.rounds[usize::from(rose_from)] + 2,
            from: Pin::top(index + 1),
            to: Pin::bottom(wrapped(index + self.shift(Rim::Top), self.bights) + 1),
        }
    }

    /// The top pin, counted from 0, on which the leg from bottom pin `index` lands.
    fn lands(&self, index: u16) -> u16 {
        wrapped(index + self.shift(Rim::Bottom), self.bights)
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

const fn greatest_common_divisor(mut one: u16, mut other: u16) -> u16 {
    while other != 0 {
        (one, other) = (other, one % other);
    }
    one
}
