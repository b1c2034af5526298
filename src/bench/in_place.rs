//! The knot as it is laid where it stays: on a rail, a taper or a ball, with marks on tape, or on a board
//! round two circles of T-pins.

use std::f64::consts::{PI, TAU};

use super::leg::{LEAST_ANGLE_COS, between_rows};
use super::legs::Legs;
use super::meridian::{Meridian, flat_rise, packed, root_of};
use super::on_tube::tuck_cosine;
use super::{
    Board, Circle, Consumption, Counts, Ground, KnotShape, Layout, Millimetres, OnTube, RigError,
    RigJob, RimTape, Tapes, Tube, bight_turn, crimp, pinning,
};

/// The knot as it is laid, and what holds it there.
pub(super) struct InPlace {
    counts: Counts,
    pub laid: OnTube,
    pub cord: Consumption,
    held: Held,
}

/// What a knot is laid on.
enum Held {
    /// Marks along one strip.
    Round(Tube),
    /// Marks along a tape at each rim of the bare thing.
    Tapes(Meridian),
    /// Pins on a board: the distance of the bands, the radius of the outer circle.
    Board { legs: Legs, spacing: f64 },
}

/// Whether there is room to tuck on the ground itself: bands a cord's thickness apart besides the band.
pub(super) fn has_room_in_place(counts: Counts, cord: Millimetres, ground: Ground) -> bool {
    match ground.round() {
        Some(round) => tuck_cosine(counts, cord, round) <= LEAST_ANGLE_COS * (1.0 + 1e-9),
        None => ground.is_flat() || room_on(counts, cord, ground).is_some(),
    }
}

/// The least rise with room to tuck on a taper or a ball, when there is one.
fn room_on(counts: Counts, cord: Millimetres, ground: Ground) -> Option<f64> {
    let legs = Legs::of(counts, bare(cord, ground)?);
    let spacing = tuck_spacing(counts, cord);
    let rise = legs.rise_of(legs.rows, spacing, f64::INFINITY)?;
    (legs.cosine(rise, spacing) <= LEAST_ANGLE_COS * (1.0 + 1e-9)).then_some(rise)
}

/// Neighbouring bands with room to tuck between them, for all passes.
fn tuck_spacing(counts: Counts, cord: Millimetres) -> f64 {
    (f64::from(counts.passes()) + 1.0) * cord.get()
}

/// Along the ground where there must be room: on its bare side, as on a tube; on a ball in the middle of
/// the cord, since no pin stands on it.
fn bare(cord: Millimetres, ground: Ground) -> Option<Meridian> {
    let none = Millimetres::computed(0.0);
    let cord = if matches!(ground, Ground::Ball(_)) {
        cord
    } else {
        none
    };
    ground.meridian(cord, none)
}

/// Lays a knot where it stays, when there is room.
///
/// # Errors
/// [`RigError::NoRoomInPlace`].
pub(super) fn lay(job: &RigJob, ground: Ground, shape: &KnotShape) -> Result<InPlace, RigError> {
    let (counts, cord) = (job.counts, job.cord);
    let (laid, held) = if ground.is_flat() {
        on_board(counts, cord, shape)
    } else if !has_room_in_place(counts, cord, ground) {
        return Err(no_room(counts, cord, ground));
    } else if let Some(round) = ground.round() {
        let tube = Tube::plain(round);
        (OnTube::new(counts, cord, &tube, shape), Held::Round(tube))
    } else {
        on_taper_or_ball(counts, cord, ground, shape)
            .ok_or_else(|| no_room(counts, cord, ground))?
    };
    let pin = ground.is_flat().then_some(Tube::T_PIN);
    let cord = Consumption::new(
        counts,
        laid.cord_in_leg,
        bight_turn(cord, pin, laid.angle),
        job.correction,
        job.allowances,
    );
    Ok(InPlace {
        counts,
        laid,
        cord,
        held,
    })
}

fn no_room(counts: Counts, cord: Millimetres, ground: Ground) -> RigError {
    let with = |leads, bights, passes| {
        let counts = counts.counting(leads, bights, passes);
        counts.is_some_and(|counts| has_room_in_place(counts, cord, ground))
    };
    let (leads, bights, passes) = (counts.leads(), counts.bights(), counts.passes());
    RigError::NoRoomInPlace {
        leads,
        bights,
        passes,
        most_leads: (2..leads).rev().find(|&leads| with(leads, bights, passes)),
        most_bights: (2..bights)
            .rev()
            .find(|&bights| with(leads, bights, passes)),
        most_passes: (1..passes)
            .rev()
            .find(|&passes| with(leads, bights, passes)),
    }
}

/// What a leg has to hold while it is laid: what the finished one holds, and enough more to lift one
/// crossing by a cord's diameter; see [`OnTube`].
fn to_hold(shape: &KnotShape, cord: Millimetres) -> f64 {
    let p = shape.spacing.get();
    shape.cord_in_leg().get() + 2.0 * (super::leg::diagonal(p, cord.get()) - p)
}

/// The straight way of a leg that holds so much.
fn way_holding(held: f64, rows: f64, cord: Millimetres) -> f64 {
    rows * crimp::spacing_holding(Millimetres::computed(held / rows), cord).get()
}

/// What a leg of so long a way holds, crimp included.
fn held_on(way: f64, rows: f64, cord: Millimetres) -> f64 {
    way * (1.0 + crimp::crimp(Millimetres::computed(way / rows), cord))
}

fn on_taper_or_ball(
    counts: Counts,
    cord: Millimetres,
    ground: Ground,
    shape: &KnotShape,
) -> Option<(OnTube, Held)> {
    let for_room = room_on(counts, cord, ground)?;
    let legs = Legs::of(counts, ground.meridian(cord, cord)?);
    let hold = to_hold(shape, cord);
    let way = way_holding(hold, legs.rows, cord);
    let least = for_room.max(shape.rise.get());
    let reach = legs.reach(least, |_| legs.rows);
    let for_length = root_of(least, reach, |rise| way - legs.leg(rise));
    let apart = between_rows(counts, cord, Millimetres::computed(0.0));
    let for_rows = if counts.lattice().is_interwoven() {
        legs.rows / 2.0 * apart
    } else {
        0.0
    };
    let rise = least.max(for_length).max(for_rows).min(reach);
    let leg = legs.leg(rise);
    // On a ball a knot comes no further than the poles: what a leg must hold besides lies loose.
    let held = held_on(leg, legs.rows, cord).max(hold);
    let bare = ground.meridian(Millimetres::computed(0.0), cord)?;
    // What is measured on the thing itself.
    let along = rise * bare.thick() / legs.meridian.thick();
    let along = if matches!(ground, Ground::Ball(_)) {
        along
    } else {
        rise
    };
    let laid = laid(counts, &legs, rise, [along, leg, held], shape);
    Some((laid, Held::Tapes(bare)))
}

/// The board on which a mat is laid: bands a cord's thickness apart at the inner circle, whose pins leave
/// room for all cords of a bight; and wider as far as the legs have to hold more.
fn on_board(counts: Counts, cord: Millimetres, shape: &KnotShape) -> (OnTube, Held) {
    let rows = f64::from(counts.height());
    let bands = f64::from(counts.bands());
    let finished = shape.rims[1].get() / 2.0;
    let pins = (Tube::T_PIN.get() + super::tube_rules::between_pins(counts, cord))
        / (2.0 * (PI / f64::from(counts.bights())).sin());
    let hold = to_hold(shape, cord);
    let of = |spacing: f64| {
        let ring = packed(bands, spacing);
        let inner = finished.max(pins).max(ring / LEAST_ANGLE_COS);
        let rise = flat_rise(inner, ring, rows * spacing / 2.0);
        let meridian = Meridian::Flat {
            outer: inner + rise,
        };
        (Legs::of(counts, meridian), rise)
    };
    let held = |spacing: f64| {
        let (legs, rise) = of(spacing);
        held_on(
            legs.meridian.area(rise) / packed(bands, spacing),
            rows,
            cord,
        )
    };
    let least = tuck_spacing(counts, cord);
    let mut most = least;
    while held(most) < hold {
        most *= 2.0;
    }
    let spacing = root_of(least, most, |spacing| hold - held(spacing));
    let (legs, rise) = of(spacing);
    let leg = legs.meridian.area(rise) / packed(bands, spacing);
    let laid = laid(
        counts,
        &legs,
        rise,
        [rise, leg, held_on(leg, rows, cord)],
        shape,
    );
    (laid, Held::Board { legs, spacing })
}

fn laid(
    counts: Counts,
    legs: &Legs,
    rise: f64,
    [along, leg, held]: [f64; 3],
    shape: &KnotShape,
) -> OnTube {
    let spacing = legs.spaced(rise, legs.rows);
    let slack = (held - shape.cord_in_leg().get()).max(0.0);
    OnTube {
        ring_spacing: Millimetres::computed(along),
        rows_apart: counts
            .lattice()
            .is_interwoven()
            .then(|| Millimetres::computed(2.0 * along / legs.rows)),
        needed: Millimetres::computed(along),
        angle: legs.cosine(rise, spacing).acos(),
        leg: Millimetres::computed(leg),
        cord_in_leg: Millimetres::computed(held),
        slack: Millimetres::computed(slack),
    }
}

impl InPlace {
    /// Where the marks or the pins go; none only where a strip cannot be marked.
    pub(super) fn layout(&self) -> Option<Layout> {
        let lattice = self.counts.lattice();
        let nested = usize::from(lattice.nested());
        let on = [0.0, if lattice.is_staggered() { 0.5 } else { 0.0 }];
        let pins = lattice.bights();
        match &self.held {
            Held::Round(tube) => pinning(tube, lattice),
            Held::Tapes(bare) => {
                let rise = self.laid.ring_spacing.get();
                let apart = self.laid.rows_apart.map_or(0.0, Millimetres::get);
                let mut rows = (0..nested).map(|row| {
                    let far = apart * f64::from(u16::try_from(row).unwrap_or(u16::MAX));
                    [0, 1].map(|rim| {
                        let round = TAU * bare.inside(rise, rim, far);
                        RimTape::of(Millimetres::computed(round), pins, on[rim])
                    })
                });
                let [bottom, top] = rows.next()?;
                Some(Layout::Tapes(Tapes {
                    bottom,
                    top,
                    inner: rows.collect(),
                }))
            }
            Held::Board { legs, spacing } => {
                let rise = self.laid.ring_spacing.get();
                let mut rows = (0..nested).map(|row| {
                    let row = 2.0 * f64::from(u16::try_from(row).unwrap_or(u16::MAX));
                    [row, legs.rows - row]
                        .map(|row| legs.radius_at(rise, *spacing, row))
                        .map(Millimetres::computed)
                });
                let [outer, inner] = rows.next()?;
                let circles = |[outer, inner]: [Millimetres; 2]| {
                    [
                        Circle::of(outer, pins, on[0]),
                        Circle::of(inner, pins, on[1]),
                    ]
                };
                let [outer, inner] = circles([outer, inner]);
                Some(Layout::Board(Board {
                    outer,
                    inner,
                    nested: rows.map(circles).collect(),
                }))
            }
        }
    }
}
