//! Why a tube does not take a knot, and what would.

use thiserror::Error;

use super::{Counts, Millimetres, ShapeError, Tube};

/// Why a tube cannot be rigged for a knot. The words for it that a tyer reads are made
/// elsewhere; its own are for logs and for users of the library.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigError, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Twenty screws of 4 mm round 45 mm leave 3 mm between them; two cords of 4 mm need 8.
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let error = rig(&RigJob::new(Counts::new(3, 20, 2).unwrap(), &tube, mm(4.0))).unwrap_err();
/// let RigError::PinsTooClose { gap, needed, .. } = error else {
///     panic!("{error}");
/// };
/// assert!((gap.get() - 3.0).abs() < 0.1);
/// assert_eq!(needed, mm(8.0));
/// ```
#[derive(Clone, Debug, PartialEq, Error)]
pub enum RigError {
    /// No row of holes takes so many bights.
    #[error("no row of {rows:?} holes divides by {bights} bights; the tube takes {can_take:?}")]
    NoRowDivides {
        /// Bights as given.
        bights: u16,
        /// Holes in each row.
        rows: Vec<u16>,
        /// Every number of bights the tube takes.
        can_take: Vec<u16>,
    },
    /// The rings have not as many rows for the pins as bights are nested, in line.
    #[error("of {rows:?} holes not {nested} rows in line divide by {bights} bights")]
    TooFewRows {
        /// Bights of every nest.
        bights: u16,
        /// Bights nested at each rim.
        nested: u16,
        /// Holes in each row of the tube.
        rows: Vec<u16>,
    },
    /// The rings are too narrow for the rows of pins of nested bights.
    #[error("{nested} rows of pins take rings {needed} wide, not {ring}")]
    RingTooNarrow {
        /// Width of a ring.
        ring: Millimetres,
        /// Bights nested at each rim: rows of pins.
        nested: u16,
        /// The least that would do.
        needed: Millimetres,
    },
    /// The cord is thicker than the tube.
    #[error("a cord of {cord} is thicker than the tube, {tube}")]
    CordThickerThanTube {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the tube.
        tube: Millimetres,
    },
    /// The bands leave no room to tuck.
    #[error("{bights} bights of {passes} cords leave no room to tuck; a tube of {} would do", cure.tube_at_least)]
    NoRoomToTuck {
        /// Bights as given.
        bights: u16,
        /// Passes as given.
        passes: u16,
        /// What would do.
        cure: RoomCure,
    },
    /// The bands leave no room to tuck on the thing that the knot is tied on.
    #[error(
        "{leads} leads and {bights} bights of {passes} cords leave no room to tuck where they are tied"
    )]
    NoRoomInPlace {
        /// Leads as given.
        leads: u16,
        /// Bights as given.
        bights: u16,
        /// Passes as given.
        passes: u16,
        /// The most leads that leave room with so many bights and passes, if any do.
        most_leads: Option<u16>,
        /// The most bights that leave room with so many leads and passes, if any do.
        most_bights: Option<u16>,
        /// The most passes that leave room with so many leads and bights, if any do.
        most_passes: Option<u16>,
    },
    /// The cords of a bight do not pass between the pins.
    #[error("{bights} pins leave {gap} between them, and {needed} is needed")]
    PinsTooClose {
        /// Bights as given: pins of a ring.
        bights: u16,
        /// From edge to edge of neighbouring pins.
        gap: Millimetres,
        /// What the cords of a bight take: `P·w`.
        needed: Millimetres,
        /// What would do.
        cure: RoomCure,
    },
    /// The rings do not stand far enough apart on the tube.
    #[error("the rings take up {needed} of a tube {length} long")]
    TubeTooShort {
        /// Length of the tube.
        length: Millimetres,
        /// The least that would do.
        needed: Millimetres,
    },
    /// The finished knot does not go round the object.
    #[error(transparent)]
    Shape(#[from] ShapeError),
}

impl RigError {
    /// Why the rings have no rows of holes for the pins.
    pub fn no_row(counts: Counts, tube: &Tube) -> Self {
        let rows = tube.rows().unwrap_or_default().to_vec();
        if counts.lattice().is_interwoven() {
            Self::TooFewRows {
                bights: counts.bights(),
                nested: counts.nested(),
                rows,
            }
        } else {
            Self::NoRowDivides {
                bights: counts.bights(),
                rows,
                can_take: tube.bights(),
            }
        }
    }
}

/// What makes room on a tube, each by itself.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigError, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let error = rig(&RigJob::new(Counts::new(3, 20, 2).unwrap(), &tube, mm(4.0))).unwrap_err();
/// let RigError::PinsTooClose { cure, .. } = error else {
///     panic!("{error}");
/// };
/// // Half as many bights would do, or a thicker tube; thinner pins would not.
/// assert_eq!(cure.most_bights, Some(10));
/// assert!((cure.tube_at_least.get() - 81.3).abs() < 0.1);
/// assert_eq!(cure.pin_at_most, None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomCure {
    /// The most bights that the tube takes, if any do.
    pub most_bights: Option<u16>,
    /// The most passes, if any do.
    pub most_passes: Option<u16>,
    /// A tube at least this thick.
    pub tube_at_least: Millimetres,
    /// Pins no thicker than this, if that would do.
    pub pin_at_most: Option<Millimetres>,
}
