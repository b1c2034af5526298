//! Which knots cover an object.

use super::on_tube::LEAST_ANGLE;
use super::rig::{check_tube, cord_on_tube};
use super::{
    Allowances, BenchError, Braid, Consumption, Correction, Counts, Job, Millimetres, Object,
    Shape, Tube, bight_turn, crimp,
};

/// Leads and bights are looked for from 2 to this many.
pub const MOST_LEADS_AND_BIGHTS: u16 = 60;
/// Passes are looked for from 1 to this many.
pub const MOST_PASSES: u16 = 4;

/// Answers whose faults lie within such a step are as good as each other, and the one that
/// takes less cord goes first.
pub const FAULT_STEP: f64 = 0.02;

/// How fast the tyer works: seconds for one leg, from their own log.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pace(f64);

impl Pace {
    /// # Errors
    /// [`BenchError::Pace`] when it is not a positive, finite time of at most a day.
    pub fn new(seconds_per_leg: f64) -> Result<Self, BenchError> {
        if seconds_per_leg > 0.0 && seconds_per_leg <= 86_400.0 {
            Ok(Self(seconds_per_leg))
        } else {
            Err(BenchError::Pace {
                given: seconds_per_leg,
            })
        }
    }

    /// Hours for so many legs.
    pub fn hours(self, legs: u32) -> f64 {
        self.0 * f64::from(legs) / 3600.0
    }
}

/// What the tyer has and wants.
#[derive(Clone, Debug, PartialEq)]
pub struct Wish<'a> {
    /// What is to be covered.
    pub object: Object,
    /// Diameter of the cord.
    pub cord: Millimetres,
    /// The tube it will be tied on, if chosen: only knots it can be rigged for are offered.
    pub tube: Option<&'a Tube>,
    /// Cord in hand, if it matters: only knots it is enough for are offered.
    pub cord_at_hand: Option<Millimetres>,
    /// How far the width of a fully faired knot may miss the length to be covered.
    pub tolerance: Millimetres,
    /// The least share of the object that must be hidden, 0 … 1.
    pub least_cover: f64,
    /// Tails and holding.
    pub allowances: Allowances,
    /// What the tyer's log says.
    pub correction: Correction,
    /// The tyer's pace, when known.
    pub pace: Option<Pace>,
}

impl Wish<'_> {
    /// Any tube, any length of cord. The width may miss by half a cord's diameter, and three
    /// quarters of the object must be hidden: *common practice, no source*.
    pub fn new(object: Object, cord: Millimetres) -> Self {
        Self {
            object,
            cord,
            tube: None,
            cord_at_hand: None,
            tolerance: Millimetres::computed(cord.get() / 2.0),
            least_cover: 0.75,
            allowances: Allowances::default(),
            correction: Correction::default(),
            pace: None,
        }
    }

    pub(super) fn braid(&self, counts: Counts) -> Braid {
        Braid {
            counts,
            cord: self.cord,
            around: self.object.diameter,
            correction: self.correction,
        }
    }
}

/// A knot that covers the object.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// The finished knot; [`Shape::faired`] says whether it is left open.
    pub shape: Shape,
    /// Cord to cut for all strands, tails and holding included.
    pub cord: Millimetres,
    /// Hours of work, when the pace is known.
    pub hours: Option<f64>,
    /// What it falls short of: 0 is perfect. Answers are ranked by it.
    pub fault: f64,
}

/// Every knot that answers the wish, best first: fully faired where that comes within the
/// tolerance of the length to be covered, left open to exactly that length where the faired
/// knot is narrower.
///
/// Ranked by [`Answer::fault`] (miss of the width, object left bare, angle, several strands,
/// crowding) in steps of [`FAULT_STEP`], then by cord. Empty when nothing fits; [`super::why_nothing_fits`] says why.
pub fn fit(wish: &Wish) -> Vec<Answer> {
    let mut answers = Vec::new();
    for_each_shape(wish, |counts, shape| {
        if let Some(cord) = cord_for(wish, counts, shape)
            && wish.cord_at_hand.is_none_or(|at_hand| cord <= at_hand)
        {
            answers.push(Answer {
                counts,
                shape: *shape,
                cord,
                hours: wish.pace.map(|pace| pace.hours(counts.legs())),
                fault: fault(wish, counts, shape),
            });
        }
        true
    });
    answers.sort_unstable_by(|one, other| {
        let key = |answer: &Answer| {
            let counts = answer.counts;
            (counts.passes(), counts.leads(), counts.bights())
        };
        let step = |answer: &Answer| (answer.fault / FAULT_STEP).floor();
        step(one)
            .total_cmp(&step(other))
            .then(one.cord.get().total_cmp(&other.cord.get()))
            .then_with(|| key(one).cmp(&key(other)))
    });
    answers
}

/// Calls `found` with every knot of the right width and cover, whatever its tube and cord,
/// until it returns false.
pub(super) fn for_each_shape(wish: &Wish, mut found: impl FnMut(Counts, &Shape) -> bool) {
    for passes in 1..=MOST_PASSES {
        for bights in 2..=MOST_LEADS_AND_BIGHTS {
            // Whether the cords go round, and at what angle, does not depend on the leads.
            let faired = |leads| {
                let counts = Counts::new(leads, bights, passes).ok()?;
                wish.braid(counts).faired().ok()
            };
            let Some(narrowest) = faired(2).filter(|shape| shape.angle >= LEAST_ANGLE) else {
                break;
            };
            for leads in 2..=MOST_LEADS_AND_BIGHTS {
                // Every lead adds half the rise of two.
                let leads_more = f64::from(leads - 2);
                let wider = leads_more * narrowest.rise.get() / 2.0 * wish.correction.width();
                let miss = narrowest.width.get() + wider - wish.object.cover.get();
                if miss > wish.tolerance.get() {
                    break;
                }
                let Ok(counts) = Counts::new(leads, bights, passes) else {
                    continue;
                };
                let shape = if miss >= -wish.tolerance.get() {
                    faired(leads)
                } else {
                    left_open(wish, wish.braid(counts))
                };
                if let Some(shape) = shape
                    && shape.cover >= wish.least_cover
                    && !found(counts, &shape)
                {
                    return;
                }
            }
        }
    }
}

/// The knot left open to the length to be covered, unless that leaves too much bare.
fn left_open(wish: &Wish, braid: Braid) -> Option<Shape> {
    // The cheap question first: most knots are far too open.
    if braid.cover_when_open_to(wish.object.cover) < wish.least_cover {
        return None;
    }
    braid
        .left_open(wish.object.cover)
        .ok()
        .filter(|shape| shape.angle >= LEAST_ANGLE)
}

/// Cord to cut, or `None` when the tube does not take the knot.
pub(super) fn cord_for(wish: &Wish, counts: Counts, shape: &Shape) -> Option<Millimetres> {
    let Some(tube) = wish.tube else {
        let turn = bight_turn(wish.cord, None, shape.angle);
        let leg = shape.cord_in_leg();
        let cord = Consumption::new(counts, leg, turn, wish.correction, wish.allowances);
        return Some(cord.to_cut());
    };
    check_tube(counts, tube, wish.cord).ok()?;
    let job = Job {
        allowances: wish.allowances,
        correction: wish.correction,
        ..Job::new(counts, tube, wish.cord)
    };
    cord_on_tube(&job, shape)
        .ok()
        .map(|(_, cord)| cord.to_cut())
}

/// Weighs what a tyer minds, most first; the weights are *common practice, no source*. A miss
/// of a tenth of the width counts as much as a fifth of the object left bare, or as several
/// strands; angles between 45° and 75° are as good as each other. Crowded crossings count
/// because the knot may then come out wider than computed.
fn fault(wish: &Wish, counts: Counts, shape: &Shape) -> f64 {
    let wanted = wish.object.cover.get();
    let width = (shape.width.get() - wanted).abs() / wanted;
    let bare = 1.0 - shape.cover;
    let degrees = shape.angle_degrees();
    let angle = (45.0 - degrees).max(degrees - 75.0).max(0.0) / 90.0;
    let strands = f64::from(u8::from(counts.strands() > 1));
    let jammed = crimp::jammed_spacing(wish.cord).get();
    let crowding = (1.0 - shape.spacing.get() / jammed).max(0.0);
    2.0 * width + bare + 0.8 * angle + 0.2 * strands + 0.5 * crowding
}
