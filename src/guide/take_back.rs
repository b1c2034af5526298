//! Where the tyer is, and taking a leg back.

use crate::knot::{Crossing, Leg, PassLeg, Pin};

use super::{Phase, Place, Script};

/// Where the cord is, and how much is done.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
/// use marlinspeak::knot::{PassLeg, Pin};
///
/// // Before leg 8 of 5 lead 7 bight the cord stands at top pin 4 and goes to bottom pin 7.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let place = Place::lay(PassLeg { pass: 1, strand: 1, leg: 8 });
/// let here = script.whereabouts(place);
/// assert_eq!((here.at, here.next), (Pin::top(4), Some(Pin::bottom(7))));
/// assert_eq!((here.laid, here.left), (7, 7));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whereabouts {
    /// The part of the job; a look at the work belongs to the pass it looks at.
    pub phase: Phase,
    /// The pass that is being laid.
    pub pass: u16,
    /// The strand of the cord in hand.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// Legs of this pass of the strand that lie on the tube.
    pub laid: u16,
    /// Legs in one pass of a strand.
    pub legs: u16,
    /// The pin that the cord went round last, or where its tail is.
    pub at: Pin,
    /// The pin that comes next, while there is one.
    pub next: Option<Pin>,
    /// Crossings made since that pin, when the cord is on its way in a long leg.
    pub crossed: u16,
    /// Legs still to be laid in the whole tie.
    pub left: u32,
    /// The round of fairing and the leg in it, while the knot is faired.
    pub fairing: Option<(u16, PassLeg)>,
}

/// A leg to be taken out again, or as much of it as was laid.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
/// use marlinspeak::knot::PassLeg;
///
/// // Leg 6 of 5 lead 7 bight went under in row 3 and then in row 1: it comes out the other way.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let back = script.take_back(Place::lay(PassLeg { pass: 1, strand: 1, leg: 7 })).unwrap();
/// let rows: Vec<u16> = back.crossings.iter().map(|crossing| crossing.row).collect();
/// assert_eq!((back.pass_leg.leg, rows), (6, vec![1, 3]));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct TakeBack {
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// How many strands the knot has.
    pub strands: u16,
    /// That leg, from pin to pin.
    pub leg: Leg,
    /// What the tyer calls its cord.
    pub cord: Option<String>,
    /// The pin that the cord in hand must be brought back to first, when some of a leg after
    /// this one may lie there already.
    pub first_back_to: Option<Pin>,
    /// The pin whose tail must come off first: that of a cord that was just begun.
    pub tail_off: Option<Pin>,
    /// Whether it was laid to its end, so that it must come off its pin first.
    pub is_whole: bool,
    /// Its crossings in the order they are undone: the last one laid comes first.
    pub crossings: Vec<Crossing>,
    /// Where the tyer stands when it is out.
    pub place: Place,
}

impl Script {
    /// The last leg that lies whole on the tube when the tyer stands at `place`.
    pub fn laid_last(&self, place: Place) -> Option<PassLeg> {
        let laying = self.plan.laying();
        laying.nth_leg(self.progress(place).laid.checked_sub(1)?)
    }

    /// Where the tyer is at a [settled](Self::settle) place.
    pub fn whereabouts(&self, place: Place) -> Whereabouts {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let progress = self.progress(place);
        let first = PassLeg {
            pass: 1,
            strand: 1,
            leg: 1,
        };
        let (pass_leg, laid) = match place {
            Place::Kit { .. } | Place::Rig { .. } => (first, 0),
            Place::Begin { pass, strand } => (
                PassLeg {
                    pass,
                    strand,
                    leg: 1,
                },
                0,
            ),
            Place::Lay { pass_leg, .. } => (pass_leg, pass_leg.leg - 1),
            Place::Check { pass_leg } => (pass_leg, pass_leg.leg),
            Place::Lift { .. } | Place::Fair { .. } | Place::Finish { .. } => {
                let legs = knot.legs_of(knot.strands());
                let last = PassLeg {
                    pass: laying.passes(),
                    strand: knot.strands(),
                    leg: legs,
                };
                (last, legs)
            }
        };
        let leg = |pass_leg| laying.leg(pass_leg);
        // The cord stands where the leg before landed, or where this pass begins.
        let at = match laid {
            0 => leg(PassLeg { leg: 1, ..pass_leg }).map(|leg| leg.from),
            laid => leg(PassLeg {
                leg: laid,
                ..pass_leg
            })
            .map(|leg| leg.to),
        };
        let next = leg(PassLeg {
            leg: laid + 1,
            ..pass_leg
        })
        .map(|leg| leg.to);
        Whereabouts {
            phase: place.phase(),
            pass: pass_leg.pass,
            strand: pass_leg.strand,
            strands: knot.strands(),
            laid,
            legs: knot.legs_of(pass_leg.strand),
            at: at.unwrap_or(Pin::bottom(pass_leg.strand)),
            next,
            crossed: place.crossings_behind(),
            left: progress.legs - progress.laid,
            fairing: match place {
                Place::Fair { round, pass_leg } => Some((round, pass_leg)),
                _ => None,
            },
        }
    }

    /// How to take out what was laid last when the tyer stands at `place`; `None` when the
    /// tube is empty or the pins are being taken out already.
    pub fn take_back(&self, place: Place) -> Option<TakeBack> {
        if self.is_off_pins(place) {
            return None;
        }
        let laying = self.plan.laying();
        let pass_leg = match place {
            Place::Lay { pass_leg, crossing } if crossing > 0 => pass_leg,
            _ => self.laid_last(place)?,
        };
        let leg = laying.leg(pass_leg)?;
        let (is_part, laid) = match place.crossings_behind() {
            0 => (false, usize::MAX),
            crossing => (true, usize::from(crossing)),
        };
        let mut crossings: Vec<Crossing> = laying.crossings(pass_leg).take(laid).collect();
        crossings.reverse();
        // Before the first leg of a cord there is nothing of it but the tail.
        let (mut first_back_to, mut tail_off) = (None, None);
        match (place, place.laying()) {
            (_, Some(next))
                if !is_part && next.leg == 1 && self.plan.begins_a_cord(next.pass, next.strand) =>
            {
                tail_off = Some(self.plan.start_pin(next.pass, next.strand));
            }
            (Place::Lay { pass_leg, .. }, _) if !is_part => {
                first_back_to = laying.leg(pass_leg).map(|leg| leg.from);
            }
            _ => {}
        }
        Some(TakeBack {
            pass_leg,
            strands: self.plan.knot().strands(),
            leg,
            cord: self
                .plan
                .cord(pass_leg.pass, pass_leg.strand)
                .map(str::to_owned),
            first_back_to,
            tail_off,
            is_whole: !is_part,
            crossings,
            place: Place::lay(pass_leg),
        })
    }

    /// Whether the knot is being taken off its pins at this place, or is off them.
    pub fn is_off_pins(&self, place: Place) -> bool {
        match place {
            Place::Lift { task } => task > 1,
            Place::Fair { .. } | Place::Finish { .. } => true,
            _ => false,
        }
    }
}
