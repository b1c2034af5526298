//! What a tube can do, and what to know of one that can.

use std::f64::consts::PI;

use super::leg::{LEAST_ANGLE_COS, between_rows};
use super::on_tube::tuck_cosine;
use super::pin_length::{pin_holds, pin_needed};
use super::{
    Counts, Finish, KnotShape, Millimetres, OnTube, RigError, RigJob, RoomCure, Tube, pin_chord,
    pin_gap, pinning,
};

/// Something a tyer should know before starting, though the knot can be tied.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigCaution, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let mut tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// tube.pin_length = Some(mm(10.0));
/// let rigged = rig(&RigJob::new(Counts::new(4, 7, 2).unwrap(), &tube, mm(4.0))).unwrap();
/// // The knot can be tied, but the second pass may slip off such pins.
/// let (given, needed) = (mm(10.0), mm(11.0));
/// assert_eq!(rigged.cautions[0], RigCaution::PinsTooShort { given, needed, hold_passes: 1 });
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RigCaution {
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
    /// The cords pass between the pins, but they crowd there.
    PinsClose {
        /// From edge to edge of neighbouring pins.
        gap: Millimetres,
        /// From where on it is comfortable: `2·P·w`.
        comfortable: Millimetres,
        /// What would make it so.
        cure: RoomCure,
    },
    /// The tube is so much thicker than the object that most of the work is drawing up slack.
    TubeTooThick {
        /// To be drawn out of each leg.
        slack: Millimetres,
        /// Legs of the tie.
        legs: u32,
        /// The tube with which there is least, when that helps.
        better: Option<Millimetres>,
    },
    /// The rings are so wide that they keep the rims too far apart.
    RingsTooWide {
        /// Width of a ring.
        ring: Millimetres,
        /// To be drawn out of each leg.
        slack: Millimetres,
        /// Rings no wider than this do not stand in the way.
        would_do: Millimetres,
    },
}

/// The clear room between two neighbouring pins of a row that all cords need which pass there: the
/// legs of one bight, and of nested bights the two legs of every bight outside it. *Derived.*
pub(super) fn between_pins(counts: Counts, cord: Millimetres) -> f64 {
    let bands = 2.0 * f64::from(counts.nested()) - 1.0;
    bands * f64::from(counts.passes()) * cord.get()
}

/// How wide rings must be for the rows of pins of nested bights, when these are wider.
pub(super) fn ring_needed(counts: Counts, tube: &Tube, cord: Millimetres) -> Option<Millimetres> {
    let ring = tube.ring_width().filter(|_| counts.nested() > 1)?;
    let pin = tube.pin();
    let rows = f64::from(counts.nested() - 1) * between_rows(counts, cord, pin);
    let needed = Millimetres::computed(rows + pin.get());
    (needed > ring).then_some(needed)
}

/// How a tie needs the room between pins.
#[derive(Clone, Copy)]
enum Between {
    /// Its cords just pass.
    Enough,
    /// They pass with ease.
    Comfortable,
}

impl Between {
    const fn bands(self) -> f64 {
        match self {
            Self::Enough => 1.0,
            Self::Comfortable => 2.0,
        }
    }
}

/// A tube is thick enough when it is as thick as this, its pins being what they are: for the cord,
/// for room to tuck, and for the cords to pass between the pins.
fn thick_enough(counts: Counts, tube: &Tube, cord: Millimetres, between: Between) -> f64 {
    let for_tuck = tube.diameter.get() * tuck_cosine(counts, cord, tube.diameter) / LEAST_ANGLE_COS;
    let chord = tube.pin().get() + between.bands() * between_pins(counts, cord);
    let for_pins = chord / (PI / f64::from(counts.bights())).sin();
    cord.get().max(for_tuck).max(for_pins)
}

fn has_room(counts: Counts, tube: &Tube, cord: Millimetres, between: Between) -> bool {
    // Named as enough, it is.
    thick_enough(counts, tube, cord, between) <= tube.diameter.get() * (1.0 + 1e-9)
}

/// Whether the tube takes the knot, whatever it is finished to.
pub(super) fn takes(counts: Counts, tube: &Tube, cord: Millimetres) -> bool {
    pinning(tube, counts.lattice()).is_some()
        && ring_needed(counts, tube, cord).is_none()
        && has_room(counts, tube, cord, Between::Enough)
}

/// The thinnest tube of this kind on which there is room, and the thickest pins with which there
/// is room on this one.
pub(super) fn room_needed(
    counts: Counts,
    tube: &Tube,
    cord: Millimetres,
) -> (Millimetres, Option<Millimetres>) {
    let cure = cure(counts, tube, cord, Between::Enough);
    (cure.tube_at_least, cure.pin_at_most)
}

/// Says why the tube does not take the knot, whatever it is finished to.
pub(super) fn check_tube(counts: Counts, tube: &Tube, cord: Millimetres) -> Result<(), RigError> {
    if cord > tube.diameter {
        return Err(RigError::CordThickerThanTube {
            cord,
            tube: tube.diameter,
        });
    }
    let (bights, passes) = (counts.bights(), counts.passes());
    if pinning(tube, counts.lattice()).is_none() {
        return Err(RigError::no_row(counts, tube));
    }
    if let (Some(needed), Some(ring)) = (ring_needed(counts, tube, cord), tube.ring_width()) {
        return Err(RigError::RingTooNarrow {
            ring,
            nested: counts.nested(),
            needed,
        });
    }
    if has_room(counts, tube, cord, Between::Enough) {
        return Ok(());
    }
    let cure = cure(counts, tube, cord, Between::Enough);
    let (gap, needed) = (pin_gap(tube, bights), between_pins(counts, cord));
    Err(if gap.get() < needed {
        RigError::PinsTooClose {
            bights,
            gap,
            needed: Millimetres::computed(needed),
            cure,
        }
    } else {
        RigError::NoRoomToTuck {
            bights,
            passes,
            cure,
        }
    })
}

fn cure(counts: Counts, tube: &Tube, cord: Millimetres, between: Between) -> RoomCure {
    let with = |bights, passes| {
        let counts = counts.counting(counts.leads(), bights, passes);
        counts.is_some_and(|counts| {
            pinning(tube, counts.lattice()).is_some() && has_room(counts, tube, cord, between)
        })
    };
    let (bights, passes) = (counts.bights(), counts.passes());
    let chord = pin_chord(tube.diameter, bights).get();
    let pin = chord - between.bands() * between_pins(counts, cord);
    let has_tuck = tuck_cosine(counts, cord, tube.diameter) <= LEAST_ANGLE_COS;
    let pin_would_do = (Tube::THINNEST_PIN..tube.pin().get()).contains(&pin) && has_tuck;
    let thick = thick_enough(counts, tube, cord, between);
    RoomCure {
        most_bights: (2..bights).rev().find(|&bights| with(bights, passes)),
        most_passes: (1..passes).rev().find(|&passes| with(bights, passes)),
        tube_at_least: Millimetres::computed(thick * (1.0 + 1e-9)),
        pin_at_most: pin_would_do.then(|| Millimetres::computed(pin)),
    }
}

/// Whether the rings stand on the tube.
pub(super) fn check_length(
    counts: Counts,
    tube: &Tube,
    cord: Millimetres,
    laid: &OnTube,
) -> Result<(), RigError> {
    let needed = laid.tube_needed(counts, cord, tube);
    match tube.length {
        Some(length) if length < needed => Err(RigError::TubeTooShort { length, needed }),
        _ => Ok(()),
    }
}

/// Whether the tie is one that a careful tyer would rather do on another tube: pins closer than is
/// comfortable, or more slack than is good.
pub(super) fn is_hampered(job: &RigJob, finish: Finish, laid: &OnTube) -> bool {
    is_close(job) || is_slack(job, finish, laid)
}

/// Whether the cords pass between the pins, but not with ease.
fn is_close(job: &RigJob) -> bool {
    let comfortable = 2.0 * between_pins(job.counts, job.cord);
    pin_gap(job.tube, job.counts.bights()).get() < comfortable * (1.0 - 1e-9)
}

fn is_slack(job: &RigJob, finish: Finish, laid: &OnTube) -> bool {
    let is_roomy = job.tube.diameter > finish.around.thickest() || laid.rings_touch();
    is_roomy && laid.slack_share() > OnTube::MOST_SLACK
}

/// What to know before starting.
pub(super) fn cautions(
    job: &RigJob,
    finish: Finish,
    shape: &KnotShape,
    laid: &OnTube,
) -> Vec<RigCaution> {
    let (counts, tube, cord) = (job.counts, job.tube, job.cord);
    let mut cautions = Vec::new();
    let needed = pin_needed(cord, counts.passes(), tube.wall);
    if let Some(given) = tube.pin_length.filter(|&length| length < needed) {
        let hold_passes = (1..counts.passes())
            .rev()
            .find(|&passes| pin_holds(given, cord, passes, tube.wall))
            .unwrap_or(0);
        cautions.push(RigCaution::PinsTooShort {
            given,
            needed,
            hold_passes,
        });
    }
    if finish.around.thickest() > tube.diameter {
        cautions.push(RigCaution::ObjectThickerThanTube {
            object: finish.around.thickest(),
            tube: tube.diameter,
        });
    }
    if is_close(job) {
        cautions.push(RigCaution::PinsClose {
            gap: pin_gap(tube, counts.bights()),
            comfortable: Millimetres::computed(2.0 * between_pins(counts, cord)),
            cure: cure(counts, tube, cord, Between::Comfortable),
        });
    }
    if is_slack(job, finish, laid) {
        cautions.push(too_much_slack(job, finish, shape, laid));
    }
    cautions
}

fn too_much_slack(job: &RigJob, finish: Finish, shape: &KnotShape, laid: &OnTube) -> RigCaution {
    match job.tube.ring_width() {
        Some(ring) if laid.rings_touch() => RigCaution::RingsTooWide {
            ring,
            slack: laid.slack,
            would_do: laid.needed,
        },
        _ => RigCaution::TubeTooThick {
            slack: laid.slack,
            legs: job.counts.legs(),
            better: better_tube(job, finish, shape, laid),
        },
    }
}

/// The thinner tube with which the knot has least slack, by whole millimetres, when that is
/// noticeably less.
fn better_tube(
    job: &RigJob,
    finish: Finish,
    shape: &KnotShape,
    laid: &OnTube,
) -> Option<Millimetres> {
    /// Less of a leg to draw out than this is not worth another tube.
    const NOTICEABLE: f64 = 0.03;
    let mut best = (laid.slack_share() - NOTICEABLE, None);
    let mut diameter = job.tube.diameter.get().ceil() - 1.0;
    let step = (diameter / 200.0).ceil();
    // Off a tube thinner than the thick end the knot would not go over that.
    let least = match finish.around.round() {
        Some(_) => job.cord,
        None => finish.around.thickest(),
    };
    while diameter > job.cord.get() && diameter >= least.get() {
        let tube = job.tube.with_diameter(Millimetres::computed(diameter));
        if !has_room(job.counts, &tube, job.cord, Between::Comfortable) {
            break;
        }
        let share = OnTube::new(job.counts, job.cord, &tube, shape).slack_share();
        if share < best.0 {
            best = (share, Some(tube.diameter));
        }
        diameter -= step;
    }
    best.1
}
