//! Rigging for a knot: the tube, the thing itself, or a board.

use std::f64::consts::PI;

use super::in_place::lay;
use super::pin_length::{pin_needed, pin_to_buy};
use super::tube_rules::{cautions, check_length, check_tube};
use super::{
    Braid, Consumption, Counts, Finish, Ground, HexKey, KnotShape, Layout, Millimetres, OnTube,
    RigCaution, RigError, RigJob, Tube, bight_turn, pin_chord, pin_gap, pinning,
};
use crate::knot::Nest;

/// By how much numbering tape overlaps itself. *Common practice, no source.*
const TAPE_OVERLAP: f64 = 10.0;

/// A scrap of tape that holds a bight at its mark: over the cord and stuck on both sides of it. *Common
/// practice, no source.*
const SCRAP: f64 = 40.0;

/// Tape that holds a printed sheet on a board, at four corners. *Common practice, no source.*
const SHEET_TAPE: f64 = 200.0;

/// Of a T-pin, the part that must stand in cork or soft wood. *Common practice, no source.*
const IN_BOARD: Millimetres = Millimetres::computed(15.0);

/// Where a strand begins.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigJob, Start, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// // 4 leads and 10 bights make two strands: the second begins one pin further, two holes on.
/// let rigged = rig(&RigJob::new(Counts::new(4, 10, 1).unwrap(), &tube, mm(3.0))).unwrap();
/// assert_eq!(rigged.starts[1], Start { strand: 2, bottom_pin: 2, hole: Some(3) });
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Start {
    /// The strand, 1 … strands.
    pub strand: u16,
    /// The bottom pin it leaves: strand *s* starts at bottom pin *s*.
    pub bottom_pin: u16,
    /// The hole that pin stands in, on a tube with rings.
    pub hole: Option<u16>,
}

/// A tube rigged for a knot.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigCaution, RigJob, Thread, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let mut tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// tube.thread = Some(Thread::parse("M4").unwrap());
/// // The tiller grip on the loft's tube: where the rings stand, what to screw in, what to cut.
/// let rigged = rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0))).unwrap();
/// assert!((rigged.laid.ring_spacing.get() - 37.3).abs() < 0.1);
/// assert_eq!(rigged.pin_length, mm(12.0));
/// assert_eq!(rigged.hex_key.map(|key| key.size), Some("2"));
/// assert!((rigged.cord.to_cut().get() - 2574.0).abs() < 1.0);
/// // Between the pins there is a little less room than is comfortable.
/// assert!(matches!(rigged.cautions[..], [RigCaution::PinsClose { .. }]));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Rig {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// Where the pins go.
    pub layout: Layout,
    /// The top pins stand half a pitch on.
    pub staggered: bool,
    /// The finished knot.
    pub shape: KnotShape,
    /// The knot on the tube: ring spacing and slack.
    pub laid: OnTube,
    /// Between neighbouring pins in a straight line, at the surface of the tube; on a board on the inner
    /// circle, in place between the marks of the thinner rim.
    pub pin_chord: Millimetres,
    /// What is left of that between the pins themselves.
    pub pin_gap: Millimetres,
    /// Pins to use: the shortest in stock that holds all passes.
    pub pin_length: Millimetres,
    /// Key for the pins, when their thread is known.
    pub hex_key: Option<HexKey>,
    /// Tape for numbers, once round with an overlap for every row of pins.
    pub tape: Millimetres,
    /// Where each strand begins.
    pub starts: Vec<Start>,
    /// Tail to leave at each start.
    pub tail: Millimetres,
    /// Cord to cut.
    pub cord: Consumption,
    /// What to know before starting.
    pub cautions: Vec<RigCaution>,
    /// Whether it is tied where it stays: on what it covers, with marks in the place of pins, or on a
    /// board. Then the whole of the cord is drawn through at every tuck.
    pub in_place: bool,
}

/// Cord for a knot of this shape laid on this tube, which has room for it. What is cut must reach
/// while the knot is on the tube, where the legs are longest.
pub(super) fn cord_on_tube(job: &RigJob, shape: &KnotShape) -> (OnTube, Consumption) {
    let laid = OnTube::new(job.counts, job.cord, job.tube, shape);
    let cord = Consumption::new(
        job.counts,
        laid.cord_in_leg,
        bight_turn(job.cord, Some(job.tube.pin()), laid.angle),
        job.correction,
        job.allowances,
    );
    (laid, cord)
}

/// Says how to rig the tube: pins, holes, ring spacing, key, tape, cord.
///
/// # Errors
/// A [`RigError`]: with the bight counts the tube takes, the tube that would do, or what the
/// object would take.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Millimetres, RigError, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let rigged = |bights| rig(&RigJob::new(Counts::new(5, bights, 2).unwrap(), &tube, mm(4.0)));
/// assert!(rigged(7).is_ok_and(|rig| rig.staggered));
/// // No row takes nine bights; what the tube does take comes along.
/// let Err(RigError::NoRowDivides { can_take, .. }) = rigged(9) else {
///     panic!("the tube has no such row");
/// };
/// assert_eq!(can_take, [2, 4, 5, 7, 10, 14, 20]);
/// ```
pub fn rig(job: &RigJob) -> Result<Rig, RigError> {
    let (counts, tube) = (job.counts, job.tube);
    let finish = job.finish.unwrap_or(Finish {
        around: tube.diameter.into(),
        open_to: None,
    });
    let is_in_place = job.in_place || finish.around.is_flat();
    if !is_in_place {
        check_tube(counts, tube, job.cord)?;
    }
    let braid = Braid {
        counts,
        cord: job.cord,
        give: job.give,
        around: finish.around,
        correction: job.correction,
    };
    let shape = braid.finished(finish.open_to)?;
    braid.check_reach(finish.open_to)?;
    if is_in_place {
        return in_place(job, finish.around, shape);
    }
    let (laid, cord) = cord_on_tube(job, &shape);
    check_length(counts, tube, job.cord, &laid)?;
    let layout = pinning(tube, counts.lattice()).ok_or_else(|| RigError::no_row(counts, tube))?;
    let needed = pin_needed(job.cord, counts.passes(), tube.wall);
    Ok(Rig {
        counts,
        staggered: counts.is_staggered(),
        shape,
        laid,
        pin_chord: pin_chord(tube.diameter, counts.bights()),
        pin_gap: pin_gap(tube, counts.bights()),
        pin_length: pin_to_buy(needed, tube.thread.map(super::Thread::system)),
        hex_key: tube.thread.map(super::Thread::hex_key),
        tape: Millimetres::computed(
            f64::from(2 * counts.nested()) * (tube.circumference().get() + TAPE_OVERLAP),
        ),
        starts: starts(counts, &layout),
        tail: job.allowances.standing_tail,
        cord,
        cautions: cautions(job, finish, &shape, &laid),
        in_place: false,
        layout,
    })
}

/// The same where it stays.
fn in_place(job: &RigJob, ground: Ground, shape: KnotShape) -> Result<Rig, RigError> {
    let counts = job.counts;
    let placed = lay(job, ground, &shape)?;
    let layout = placed
        .layout()
        .ok_or_else(|| RigError::no_row(counts, job.tube))?;
    let with_overlap = |length: Millimetres| length.get() + TAPE_OVERLAP;
    let scraps = f64::from(counts.lattice().legs()) * SCRAP;
    let (tape, across) = match &layout {
        Layout::Board(board) => (SHEET_TAPE, board.inner.across()),
        Layout::Tapes(tapes) => {
            let lengths = tapes.rows().flatten();
            let thin = tapes.bottom.length.get().min(tapes.top.length.get());
            (
                lengths.map(|tape| with_overlap(tape.length)).sum::<f64>() + scraps,
                Millimetres::computed(thin / PI),
            )
        }
        Layout::Strip(strip) => (
            f64::from(2 * counts.nested()) * with_overlap(strip.length) + scraps,
            ground.thickest(),
        ),
        Layout::Rings { .. } => (0.0, ground.thickest()),
    };
    let chord = pin_chord(across, counts.bights());
    let pin = if ground.is_flat() {
        Tube::T_PIN.get()
    } else {
        0.0
    };
    Ok(Rig {
        counts,
        staggered: counts.is_staggered(),
        pin_chord: chord,
        pin_gap: Millimetres::computed((chord.get() - pin).max(0.0)),
        pin_length: pin_needed(
            job.cord,
            counts.passes(),
            ground.is_flat().then_some(IN_BOARD),
        ),
        hex_key: None,
        tape: Millimetres::computed(tape),
        starts: starts(counts, &layout),
        tail: job.allowances.standing_tail,
        cord: placed.cord,
        laid: placed.laid,
        shape,
        layout,
        cautions: Vec::new(),
        in_place: true,
    })
}

fn starts(counts: Counts, layout: &Layout) -> Vec<Start> {
    let hole = |nest: Nest, pin: u16| match layout {
        Layout::Rings { bottom, inner, .. } => {
            let row = usize::from(nest.rows[0]).checked_sub(1);
            let ring = row.map_or(Some(bottom), |row| inner.get(row).map(|[bottom, _]| bottom));
            ring?.holes.get(usize::from(pin) - 1).copied()
        }
        Layout::Strip(_) | Layout::Tapes(_) | Layout::Board(_) => None,
    };
    let nests = counts.lattice().nests();
    let starts = nests.flat_map(|nest| {
        let pins = 1..=nest.strands;
        pins.map(move |pin| Start {
            strand: nest.before + pin,
            bottom_pin: pin,
            hole: hole(nest, pin),
        })
    });
    starts.collect()
}
