//! The tube, and the rings on it.

use std::f64::consts::PI;

use super::{BenchError, Counted, Millimetres, Thread};

/// Diameter of a ring's pin whose thread is not known. *Common practice, no source.*
const SCREW: Millimetres = Millimetres::computed(4.0);

/// A tube on which knots are tied.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, Tube};
///
/// let tube = Tube::ringed(Millimetres::new(40.0).unwrap(), &[10, 14]).unwrap();
/// assert_eq!(tube.bights(), [2, 5, 7, 10, 14]);
/// assert!(tube.takes(7) && !tube.takes(6));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Tube {
    /// Outer diameter.
    pub diameter: Millimetres,
    /// Thickness of what a pin is screwed through, when known.
    pub wall: Option<Millimetres>,
    /// Length of the pins at hand, when known.
    pub pin_length: Option<Millimetres>,
    /// Thread of the pins, when known.
    pub thread: Option<Thread>,
    /// Its length, when known.
    pub length: Option<Millimetres>,
    ring_width: Option<Millimetres>,
    rows: Option<Vec<u16>>,
}

impl Tube {
    /// No pin is thinner, in millimetres. *Common practice, no source.*
    pub(super) const THINNEST_PIN: f64 = 0.5;
    /// Diameter of a pin where there are no rings, a T-pin in cork or cardboard. *Common practice,
    /// no source.*
    pub(super) const T_PIN: Millimetres = Millimetres::computed(1.0);
    /// Rows that a ring may have.
    pub const MOST_ROWS: usize = 99;
    /// Holes that a row may have.
    pub const HOLES: std::ops::RangeInclusive<u16> = 2..=1998;

    /// A tube without rings: cardboard, a bottle, the object itself.
    pub const fn plain(diameter: Millimetres) -> Self {
        Self {
            diameter,
            wall: None,
            pin_length: None,
            thread: None,
            length: None,
            ring_width: None,
            rows: None,
        }
    }

    /// A tube with two equal rings, each with these rows of evenly spaced holes.
    ///
    /// # Errors
    /// [`BenchError::OutOfRange`] for no row, more than [`Self::MOST_ROWS`], or a row whose
    /// holes are not within [`Self::HOLES`].
    pub fn ringed(diameter: Millimetres, rows: &[u16]) -> Result<Self, BenchError> {
        let check = |counted, given, least, most| {
            if (least..=most).contains(&given) {
                Ok(())
            } else {
                Err(BenchError::OutOfRange {
                    counted,
                    given,
                    least,
                    most,
                })
            }
        };
        check(Counted::Rows, rows.len(), 1, Self::MOST_ROWS)?;
        for &holes in rows {
            let (least, most) = (*Self::HOLES.start(), *Self::HOLES.end());
            check(
                Counted::Holes,
                holes.into(),
                usize::from(least),
                usize::from(most),
            )?;
        }
        Ok(Self {
            rows: Some(rows.to_vec()),
            ..Self::plain(diameter)
        })
    }

    /// Reads rows as a person types them: `14,20` or `14 20`.
    ///
    /// # Errors
    /// [`BenchError::RowsUnreadable`], or [`BenchError::OutOfRange`] as in [`Self::ringed`].
    pub fn parse_rows(text: &str) -> Result<Vec<u16>, BenchError> {
        let given = text.trim();
        let unreadable = || BenchError::RowsUnreadable {
            given: given.to_owned(),
        };
        let mut rows = Vec::new();
        for part in given.split([',', ';', ' ']).filter(|part| !part.is_empty()) {
            if !part.bytes().all(|byte| byte.is_ascii_digit()) {
                return Err(unreadable());
            }
            // A number too large to hold is out of range like any other that is too large.
            rows.push(part.parse().unwrap_or(u16::MAX));
        }
        if rows.is_empty() {
            return Err(unreadable());
        }
        Self::ringed(Millimetres::MOST, &rows).map(|_| rows)
    }

    /// Holes in each row of a ring, or `None` for a tube without rings.
    pub fn rows(&self) -> Option<&[u16]> {
        self.rows.as_deref()
    }

    /// How wide each ring is along the tube, when it has rings and that is known.
    pub const fn ring_width(&self) -> Option<Millimetres> {
        self.ring_width
    }

    /// The same tube with rings so wide; one without rings stays without.
    #[must_use]
    pub fn with_ring_width(self, ring_width: Option<Millimetres>) -> Self {
        let ring_width = ring_width.filter(|_| self.rows.is_some());
        Self { ring_width, ..self }
    }

    /// The same tube, thicker or thinner.
    pub(super) fn with_diameter(&self, diameter: Millimetres) -> Self {
        Self {
            diameter,
            ..self.clone()
        }
    }

    /// Diameter of its pins: of their thread, or of what is usual.
    pub fn pin(&self) -> Millimetres {
        let usual = if self.rows.is_some() {
            SCREW
        } else {
            Self::T_PIN
        };
        self.thread.map_or(usual, Thread::diameter)
    }

    /// The way round the outside.
    pub fn circumference(&self) -> Millimetres {
        Millimetres::computed(self.diameter.get() * PI)
    }

    /// Whether it can be pinned for this many bights. A tube without rings takes any.
    pub fn takes(&self, bights: u16) -> bool {
        self.rows()
            .is_none_or(|rows| rows.iter().any(|holes| holes.is_multiple_of(bights)))
    }

    /// Every number of bights, from 2 up, that some row divides into; empty without rings.
    pub fn bights(&self) -> Vec<u16> {
        let most = self.rows().and_then(|rows| rows.iter().max()).copied();
        (2..=most.unwrap_or(0))
            .filter(|&bights| self.takes(bights))
            .collect()
    }
}
