//! Rigging the tube for a knot.

use std::error::Error;
use std::fmt;

use super::on_tube::cosine_on_tube;
use super::pin_length::{pin_holds, pin_needed, pin_to_buy};
use super::{
    Allowances, Braid, Consumption, Correction, Counts, HexKey, Laid, Layout, Millimetres, Shape,
    ShapeError, Tube, TubeTooFull, bight_turn, crimp, pin_chord, pinning,
};

/// By how much numbering tape overlaps itself on each ring. *Common practice, no source.*
const TAPE_OVERLAP: f64 = 10.0;

/// What the knot is to be when finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finish {
    /// Diameter of the object it will sit on.
    pub around: Millimetres,
    /// Overall width to leave it open to; `None` to fair it as tight as it goes.
    pub open_to: Option<Millimetres>,
}

/// A knot to be tied on a tube.
#[derive(Clone, Debug, PartialEq)]
pub struct Job<'a> {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// The tube.
    pub tube: &'a Tube,
    /// Diameter of the cord.
    pub cord: Millimetres,
    /// The object; `None` for a knot that stays on the tube, fully faired.
    pub finish: Option<Finish>,
    /// Tails and holding.
    pub allowances: Allowances,
    /// What the tyer's log says.
    pub correction: Correction,
}

impl<'a> Job<'a> {
    /// With the usual allowances and nothing measured yet.
    pub fn new(counts: Counts, tube: &'a Tube, cord: Millimetres) -> Self {
        Self {
            counts,
            tube,
            cord,
            finish: None,
            allowances: Allowances::default(),
            correction: Correction::default(),
        }
    }
}

/// Where a strand begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Start {
    /// The strand, 1 … strands.
    pub strand: u16,
    /// The bottom pin it leaves: strand *s* starts at bottom pin *s*.
    pub bottom_pin: u16,
    /// The hole that pin stands in, on a tube with rings.
    pub hole: Option<u16>,
}

/// Something a tyer should know before starting, though the knot can be tied.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Caution {
    /// The pins at hand are too short to hold all passes.
    PinsTooShort {
        /// Their length.
        given: Millimetres,
        /// The shortest that holds.
        needed: Millimetres,
        /// How many passes they do hold.
        hold_passes: u16,
    },
    /// The object is thicker than the tube: the knot must be stretched over it.
    ObjectThickerThanTube {
        /// Diameter of the object.
        object: Millimetres,
        /// Diameter of the tube.
        tube: Millimetres,
    },
    /// Crossings lie so close that round cords have to flatten: the knot may come out wider.
    CrossingsCrowded {
        /// From crossing to crossing along a leg.
        spacing: Millimetres,
        /// The closest for round cords.
        round_cords: Millimetres,
    },
}

/// A tube rigged for a knot.
#[derive(Clone, Debug, PartialEq)]
pub struct Rig {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// Where the pins go.
    pub layout: Layout,
    /// The top pins stand half a pitch on.
    pub staggered: bool,
    /// The finished knot.
    pub shape: Shape,
    /// The knot on the tube: ring spacing and slack.
    pub laid: Laid,
    /// Between neighbouring pins in a straight line, at the surface of the tube.
    pub pin_chord: Millimetres,
    /// Pins to use: the shortest in stock that holds all passes.
    pub pin_length: Millimetres,
    /// Key for the pins, when their thread is known.
    pub hex_key: Option<HexKey>,
    /// Tape for numbers, once round each ring with an overlap.
    pub tape: Millimetres,
    /// Where each strand begins.
    pub starts: Vec<Start>,
    /// Tail to leave at each start.
    pub tail: Millimetres,
    /// Cord to cut.
    pub cord: Consumption,
    /// What to know before starting.
    pub cautions: Vec<Caution>,
}

/// Why a tube cannot be rigged for a knot. The words for it that a tyer reads are made
/// elsewhere; [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Debug, PartialEq)]
pub enum RigError {
    /// No row of holes takes so many bights.
    NoRowDivides {
        /// Bights as given.
        bights: u16,
        /// Holes in each row.
        rows: Vec<u16>,
        /// Every number of bights the tube takes.
        can_take: Vec<u16>,
    },
    /// The cord is thicker than the tube.
    CordThickerThanTube {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the tube.
        tube: Millimetres,
    },
    /// The cords leave no room on the tube.
    TubeTooFull(TubeTooFull),
    /// The finished knot does not go round the object.
    Shape(ShapeError),
}

impl fmt::Display for RigError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoRowDivides {
                bights,
                rows,
                can_take,
            } => write!(
                f,
                "no row of {rows:?} holes divides by {bights} bights; the tube takes {can_take:?}"
            ),
            Self::CordThickerThanTube { cord, tube } => {
                write!(f, "a cord of {cord} is thicker than the tube, {tube}")
            }
            Self::TubeTooFull(error) => error.fmt(f),
            Self::Shape(error) => error.fmt(f),
        }
    }
}

impl Error for RigError {}

impl From<TubeTooFull> for RigError {
    fn from(error: TubeTooFull) -> Self {
        Self::TubeTooFull(error)
    }
}

impl From<ShapeError> for RigError {
    fn from(error: ShapeError) -> Self {
        Self::Shape(error)
    }
}

/// Whether the tube takes the knot, whatever it is finished to.
pub(super) fn check_tube(counts: Counts, tube: &Tube, cord: Millimetres) -> Result<(), RigError> {
    if cord > tube.diameter {
        return Err(RigError::CordThickerThanTube {
            cord,
            tube: tube.diameter,
        });
    }
    if !tube.takes(counts.bights()) {
        return Err(RigError::NoRowDivides {
            bights: counts.bights(),
            rows: tube.rows().unwrap_or_default().to_vec(),
            can_take: tube.bights(),
        });
    }
    cosine_on_tube(counts, cord, tube.diameter)?;
    Ok(())
}

/// Cord for a knot of this shape laid on this tube. What is cut must reach while the knot is
/// on the tube, where the legs are longest.
pub(super) fn cord_on_tube(job: &Job, shape: &Shape) -> Result<(Laid, Consumption), TubeTooFull> {
    let laid = Laid::new(job.counts, job.cord, job.tube.diameter, shape)?;
    let pin = job.tube.pin_diameter();
    let cord = Consumption::new(
        job.counts,
        laid.cord_in_leg,
        bight_turn(job.cord, pin, laid.angle),
        job.correction,
        job.allowances,
    );
    Ok((laid, cord))
}

/// Says how to rig the tube: pins, holes, ring spacing, key, tape, cord.
///
/// # Errors
/// A [`RigError`]: with the bight counts the tube takes, the tube that would do, or what the
/// object would take.
pub fn rig(job: &Job) -> Result<Rig, RigError> {
    let (counts, tube) = (job.counts, job.tube);
    check_tube(counts, tube, job.cord)?;
    let finish = job.finish.unwrap_or(Finish {
        around: tube.diameter,
        open_to: None,
    });
    let braid = Braid {
        counts,
        cord: job.cord,
        around: finish.around,
        correction: job.correction,
    };
    let shape = match finish.open_to {
        None => braid.faired()?,
        Some(width) => braid.left_open(width)?,
    };
    let (laid, cord) = cord_on_tube(job, &shape)?;
    let layout = pinning(tube, counts.bights(), counts.is_staggered()).ok_or_else(|| {
        RigError::NoRowDivides {
            bights: counts.bights(),
            rows: tube.rows().unwrap_or_default().to_vec(),
            can_take: tube.bights(),
        }
    })?;
    let needed = pin_needed(job.cord, counts.passes(), tube.wall);
    Ok(Rig {
        counts,
        staggered: counts.is_staggered(),
        shape,
        laid,
        pin_chord: pin_chord(tube.diameter, counts.bights()),
        pin_length: pin_to_buy(needed, tube.thread.map(super::Thread::system)),
        hex_key: tube.thread.map(super::Thread::hex_key),
        tape: Millimetres::computed(2.0 * (tube.circumference().get() + TAPE_OVERLAP)),
        starts: starts(counts, &layout),
        tail: job.allowances.standing_tail,
        cord,
        cautions: cautions(job, finish, &shape, needed),
        layout,
    })
}

fn starts(counts: Counts, layout: &Layout) -> Vec<Start> {
    let hole = |strand: u16| match layout {
        Layout::Rings { bottom, .. } => bottom.holes.get(usize::from(strand) - 1).copied(),
        Layout::Strip(_) => None,
    };
    (1..=counts.strands())
        .map(|strand| Start {
            strand,
            bottom_pin: strand,
            hole: hole(strand),
        })
        .collect()
}

fn cautions(job: &Job, finish: Finish, shape: &Shape, needed: Millimetres) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if let Some(given) = job.tube.pin_length.filter(|&length| length < needed) {
        let hold_passes = (1..job.counts.passes())
            .rev()
            .find(|&passes| pin_holds(given, job.cord, passes, job.tube.wall))
            .unwrap_or(0);
        cautions.push(Caution::PinsTooShort {
            given,
            needed,
            hold_passes,
        });
    }
    if finish.around > job.tube.diameter {
        cautions.push(Caution::ObjectThickerThanTube {
            object: finish.around,
            tube: job.tube.diameter,
        });
    }
    if shape.is_crowded(job.cord) {
        cautions.push(Caution::CrossingsCrowded {
            spacing: shape.spacing,
            round_cords: crimp::jammed_spacing(job.cord),
        });
    }
    cautions
}
