//! The lattice a knot lies on: its counts, and what follows from them alone.

use super::{KnotError, PinRow, Quantity, Weave};

/// The counts that name a knot. A plain knot has one nest: its bights lie side by side. In an
/// interwoven knot further cords are laced through the first, each with its bights nested inside
/// those of the one before; each is a Turk's head in its own right.
///
/// Of *A* nests the tube has `2 A × bights` half pitches round it. The pins of a rim stand in *A*
/// rows, one inside the other and in line; row *j* (0 is the outermost) lies `2 j` rows of crossings
/// inside. The first cord lands in top row *s*, and the knot is `A × leads + 2 s` rows high. A leg
/// from row *j* lands in row `(s − j) mod A` of the other rim, so every cord keeps to one pair of
/// rows. (*Derived.*)
///
/// ```
/// use marlinspeak::knot::Lattice;
///
/// // Two cords of 3 leads, each a 3 lead 4 bight, the second nested in the first.
/// let lattice = Lattice::plain(3, 4)?.interwoven(2, 2)?;
/// assert_eq!((lattice.strands(), lattice.rows(), lattice.crossings()), (2, 7, 32));
/// // Landing in the outermost row instead, the second cord has two leads fewer.
/// let lattice = Lattice::plain(5, 4)?.interwoven(2, 1)?;
/// assert_eq!([0, 1].map(|nest| lattice.nest(nest).leads), [5, 3]);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Lattice {
    leads: u16,
    bights: u16,
    nested: u8,
    lands: u8,
}

/// The cords of one bottom row of pins.
///
/// ```
/// use marlinspeak::knot::Lattice;
///
/// // The pins of the second cord stand two rows of crossings inside those of the first at the
/// // bottom, and two rows outside them at the top.
/// let lattice = Lattice::plain(3, 4)?.interwoven(2, 2)?;
/// let [outer, inner] = [0, 1].map(|row| lattice.nest(row));
/// assert_eq!((outer.heights, inner.heights), ([0, 6], [2, 8]));
/// // Each is one cord of three leads.
/// assert_eq!((inner.leads, inner.strands, inner.before), (3, 1, 1));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Nest {
    /// The leads that they have by themselves.
    pub leads: u16,
    /// How many cords that is: the greatest common divisor of leads and bights.
    pub strands: u16,
    /// Strands of the rows outside this one.
    pub before: u16,
    /// The row of the bottom rim, 0 the outermost, and that of the top rim.
    pub rows: [u8; 2],
    /// The height of the bottom pins and of the top pins, in rows of crossings.
    pub heights: [u16; 2],
    /// How many pins on, round the tube, a leg lands that leaves the bottom rim, and one that leaves the
    /// top rim. A leg covers its leads in half distances from pin to pin. With odd leads the top pins
    /// stand half of one on, so a rising leg lands half short of that many and a falling leg half beyond.
    pub(super) shifts: [u16; 2],
}

impl Nest {
    /// The strand of a leg that leaves bottom pin `index`, counted from 0.
    pub(super) const fn strand_at(self, index: u16) -> u16 {
        // Mostly there is one, and a division takes long.
        let own = if self.strands == 1 {
            0
        } else {
            index % self.strands
        };
        self.before + own + 1
    }

    /// Legs that each of its cords makes in one pass, of so many bights.
    pub(super) const fn legs(self, bights: u16) -> u16 {
        // Mostly there is one cord, and a division takes long.
        let rounds = if self.strands == 1 {
            bights
        } else {
            bights / self.strands
        };
        2 * rounds
    }

    /// Whether its cords pass this row of crossings between their pins.
    pub(super) const fn passes(self, row: u16) -> bool {
        self.heights[0] < row && row < self.heights[1]
    }
}

impl Lattice {
    /// A plain knot.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when a count is out of bounds.
    pub fn plain(leads: u16, bights: u16) -> Result<Self, KnotError> {
        Ok(Self {
            leads: Quantity::Leads.check(leads)?,
            bights: Quantity::Bights.check(bights)?,
            nested: 1,
            lands: 1,
        })
    }

    /// The same with so many bights nested at each rim, whose first cord lands in this top row, 1
    /// the outermost.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when a count is out of bounds, [`KnotError::LandsBeyond`] when
    /// there is no such row, [`KnotError::NoLeadsLeft`] when further cords would have none.
    pub fn interwoven(self, nested: u16, lands: u16) -> Result<Self, KnotError> {
        Quantity::Nested.check(nested)?;
        if !(1..=nested).contains(&lands) {
            return Err(KnotError::LandsBeyond {
                given: lands.to_string(),
                nested,
            });
        }
        if lands < nested && self.leads < 3 {
            return Err(KnotError::NoLeadsLeft {
                leads: self.leads,
                nested,
            });
        }
        let small = |count: u16| u8::try_from(count).unwrap_or(u8::MAX);
        Ok(Self {
            nested: small(nested),
            lands: small(lands),
            ..self
        })
    }

    /// Leads of the first cord.
    pub const fn leads(self) -> u16 {
        self.leads
    }

    /// Bights of every nest: scallops along each rim, and pins in each row.
    pub const fn bights(self) -> u16 {
        self.bights
    }

    /// Bights nested at each rim, and so rows of pins: 1 in a plain knot.
    pub const fn nested(self) -> u16 {
        self.nested as u16
    }

    /// The top row in which the first cord lands, 1 the outermost.
    pub const fn lands(self) -> u16 {
        self.lands as u16
    }

    /// Whether there are more cords than one nest of them.
    pub const fn is_interwoven(self) -> bool {
        self.nested > 1
    }

    /// Half pitches round the tube.
    pub const fn round(self) -> u16 {
        2 * self.nested() * self.bights
    }

    /// Rows of crossings from the outermost pins of one rim to those of the other, and one more.
    pub const fn height(self) -> u16 {
        self.nested() * self.leads + 2 * (self.lands() - 1)
    }

    /// Rows of crossings between the rims.
    pub const fn rows(self) -> u16 {
        self.height() - 1
    }

    /// Whether the top pins stand half way between the bottom ones: so when the leads are odd.
    pub const fn is_staggered(self) -> bool {
        !self.leads.is_multiple_of(2)
    }

    /// The row at the other rim where a leg from this row lands, both 0 for the outermost. The same
    /// from bottom to top as from top to bottom.
    pub const fn lands_in(self, row: u8) -> u8 {
        let lands = self.lands - 1;
        if row <= lands {
            lands - row
        } else {
            lands + self.nested - row
        }
    }

    /// The cords of a bottom row, 0 the outermost.
    pub const fn nest(self, row: u8) -> Nest {
        let outer = row < self.lands;
        let leads = if outer { self.leads } else { self.leads - 2 };
        let wide = if row < self.lands { row } else { self.lands };
        let before = wide as u16 * common_divisor(self.leads, self.bights)
            + if outer {
                0
            } else {
                (row - wide) as u16 * common_divisor(leads, self.bights)
            };
        let top = self.lands_in(row);
        Nest {
            shifts: [leads / 2 % self.bights, leads.div_ceil(2) % self.bights],
            leads,
            strands: common_divisor(leads, self.bights),
            before,
            rows: [row, top],
            heights: [2 * row as u16, self.height() - 2 * top as u16],
        }
    }

    /// The cords of every bottom row, outermost first.
    pub fn nests(self) -> impl Iterator<Item = Nest> {
        (0..self.nested).map(move |row| self.nest(row))
    }

    /// Closed paths in the knot: in every nest the greatest common divisor of its leads and bights
    /// (Ashley's law of the common divisor, *The Ashley Book of Knots*, ch. 17).
    pub const fn strands(self) -> u16 {
        let last = self.nest(self.nested - 1);
        last.before + last.strands
    }

    /// Legs in one pass of all strands.
    pub fn legs(self) -> u32 {
        u32::from(self.round())
    }

    /// Crossings of the single knot.
    pub fn crossings(self) -> u32 {
        let pairs = self.nests().flat_map(|one| {
            let met = self
                .nests()
                .map(move |other| self.crossing_rows(one, other).len());
            met.map(|rows| u32::try_from(rows).unwrap_or(u32::MAX))
        });
        u32::from(self.bights) * pairs.sum::<u32>()
    }

    /// The rows in which rising legs of one nest meet falling legs of the other.
    ///
    /// A rising leg of row *j* and a falling leg that lands in row *b* can only meet where
    /// `y ≡ j + b (mod A)`.
    pub(super) fn crossing_rows(
        self,
        rising: Nest,
        falling: Nest,
    ) -> std::iter::StepBy<std::ops::Range<u16>> {
        let nested = self.nested();
        let low = rising.heights[0].max(falling.heights[0]) + 1;
        let high = rising.heights[1].min(falling.heights[1]);
        let wanted = u16::from(rising.rows[0] + falling.rows[0]) % nested;
        let first = low + (wanted + nested - low % nested) % nested;
        (first..high.max(first)).step_by(nested.into())
    }

    /// Whether overs and unders run evenly round both rims along every cord by itself; see
    /// [`Weave::is_even`].
    pub(super) fn is_even(self, weave: &Weave) -> bool {
        self.nests().all(|nest| {
            let own: Vec<bool> = self
                .crossing_rows(nest, nest)
                .map(|row| weave.rising_over(row))
                .collect();
            Weave::runs_alike(&own)
        })
    }

    /// A row of pins as it is named: the outermost is 1.
    pub(super) const fn pin_row(self, row: u8) -> PinRow {
        PinRow {
            number: row + 1,
            of: self.nested,
        }
    }
}

const fn common_divisor(mut one: u16, mut other: u16) -> u16 {
    while other != 0 {
        (one, other) = (other, one % other);
    }
    one
}
