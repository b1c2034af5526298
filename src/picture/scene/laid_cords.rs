//! Which cords lie on the tube at a moment of the tie.

use super::active_leg::ActiveLeg;
use super::moment::Moment;
use crate::knot::{Laying, Leg, PassLeg, Pin, Rim};

/// What is shown of the pins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShownPins {
    /// They stand in the tube.
    All,
    /// Those at the top are out, and those at the bottom stand.
    Bottom,
    /// There are none: where they would stand are marks.
    Marks,
    /// They are out, but the bights keep their numbers.
    Numbers,
    /// Nothing.
    None,
}

/// How many cords every leg has, and which leg is active.
#[derive(Clone, Debug)]
pub struct LaidCords {
    bights: u16,
    /// For the rising leg from every bottom pin, pin 1 first.
    rising: Vec<u16>,
    /// For the falling leg from every top pin, pin 1 first.
    falling: Vec<u16>,
    /// The leg in hand, if one is.
    pub active: Option<ActiveLeg>,
    /// The pin from which the leg after the one in hand goes, or the first one when none is.
    next: Option<Pin>,
    /// The pin where the cord stands, when nothing is in hand.
    pub stands_at: Option<Pin>,
    /// The leg on which a new cord is about to be laid: its tail hangs there already.
    pub tail: Option<(PassLeg, Leg)>,
    /// The cord that is looked at though none is in hand, and its leg: it is faired, or was laid last.
    pub lit: Option<(PassLeg, Leg)>,
    /// The leg that was laid last, where the work is looked at: what is told of it is what it crosses.
    pub looked_at: Option<ActiveLeg>,
    /// Whether all is laid, and every cord is to be noticed.
    pub finished: bool,
    /// What there is of pins.
    pub pins: ShownPins,
    /// Whether the ends are cut and hidden.
    pub ends_are_hidden: bool,
}

/// Whether the working end is tucked away along this leg by the time the tail is: up from the pin where
/// the last pass began, when that is the tail's own.
fn is_tucked_before(laying: &Laying, active: &ActiveLeg, leg: Leg) -> bool {
    active.is_backward
        && leg.from == active.leg.to
        && laying.pass_leg_of(laying.passes(), leg).leg == 1
}

impl LaidCords {
    /// What lies on the tube at this moment of laying the knot.
    pub fn new(laying: &Laying, moment: &Moment) -> Self {
        let active = match moment {
            Moment::At {
                pass_leg,
                crossings,
            } => ActiveLeg::new(laying, *pass_leg, crossings),
            Moment::Tucking { along, crossings } => {
                Some(ActiveLeg::tucked(laying, *along, crossings))
            }
            Moment::TakingBack {
                pass_leg,
                crossings,
            } => ActiveLeg::new(laying, *pass_leg, &(0..*crossings)).map(ActiveLeg::taken_back),
            _ => None,
        };
        // The leg after the last one laid.
        let after = |pass_leg: PassLeg| laying.nth_leg(laying.legs_before(pass_leg) + 1);
        let count = |leg: Leg| match &active {
            // The cord in hand counts: what it goes over makes room for it.
            Some(active) => {
                let laid = match moment {
                    Moment::Tucking { .. } => {
                        laying.passes() + u16::from(is_tucked_before(laying, active, leg))
                    }
                    _ => laying.cords_of(leg, active.pass_leg),
                };
                laid + u16::from(active.leg.from == leg.from)
            }
            None => match moment {
                Moment::Before(pass_leg) => laying.cords_of(leg, *pass_leg),
                Moment::Looking(pass_leg) => {
                    after(*pass_leg).map_or(laying.passes(), |next| laying.cords_of(leg, next))
                }
                Moment::Fairing(_)
                | Moment::Laid
                | Moment::TopPinsOut
                | Moment::Finished
                | Moment::Done => laying.passes(),
                Moment::Bare
                | Moment::At { .. }
                | Moment::TakingBack { .. }
                | Moment::Tucking { .. } => 0,
            },
        };
        let knot = laying.knot();
        let counts = |rim: Rim| {
            let pins = knot.pins(rim);
            pins.map(|pin| count(knot.leg_from(pin))).collect()
        };
        Self {
            bights: knot.bights(),
            rising: counts(Rim::Bottom),
            falling: counts(Rim::Top),
            next: match moment {
                Moment::Before(turn) => Some(*turn),
                Moment::At { pass_leg, .. } | Moment::Looking(pass_leg) => after(*pass_leg),
                _ => None,
            }
            .and_then(|turn| laying.leg(turn))
            .map(|leg| leg.from),
            stands_at: match moment {
                Moment::Before(pass_leg) => laying.leg(*pass_leg).map(|leg| leg.from),
                _ => None,
            },
            tail: match moment {
                // The cord of a later pass goes on from the one before.
                Moment::Before(pass_leg) if pass_leg.pass == 1 => {
                    laying.leg(*pass_leg).map(|leg| (*pass_leg, leg))
                }
                _ => None,
            },
            lit: match moment {
                Moment::Fairing(pass_leg) | Moment::Looking(pass_leg) => {
                    laying.leg(*pass_leg).map(|leg| (*pass_leg, leg))
                }
                _ => None,
            },
            looked_at: match moment {
                Moment::Looking(pass_leg) => ActiveLeg::new(laying, *pass_leg, &(0..usize::MAX)),
                _ => None,
            },
            finished: matches!(
                moment,
                Moment::Fairing(_)
                    | Moment::Laid
                    | Moment::TopPinsOut
                    | Moment::Finished
                    | Moment::Done
            ),
            pins: match moment {
                Moment::Fairing(_) | Moment::Tucking { .. } => ShownPins::Numbers,
                Moment::Finished | Moment::Done => ShownPins::None,
                Moment::TopPinsOut => ShownPins::Bottom,
                _ => ShownPins::All,
            },
            ends_are_hidden: matches!(moment, Moment::Done),
            active,
        }
    }

    /// Cords on the leg that leaves pin `index`, counted from 0, the one in hand among them.
    pub fn cords(&self, leg: Leg) -> u16 {
        self.cords_from(leg.from)
    }

    /// The same of the leg that leaves this pin.
    pub fn cords_from(&self, pin: Pin) -> u16 {
        let counts = match pin.rim {
            Rim::Bottom => &self.rising,
            Rim::Top => &self.falling,
        };
        let row = usize::from(pin.row.number - 1) * usize::from(self.bights);
        let index = row + usize::from(pin.number - 1);
        counts.get(index).copied().unwrap_or(0)
    }

    /// The leg whose crossings and pins are told: the one in hand, or the one that is looked at.
    pub fn told(&self) -> Option<&ActiveLeg> {
        self.active.as_ref().or(self.looked_at.as_ref())
    }

    /// The most cords that any leg has.
    pub fn passes(&self) -> u16 {
        let most = |counts: &[u16]| counts.iter().copied().max().unwrap_or(0);
        most(&self.rising).max(most(&self.falling)).max(1)
    }

    /// Whether it is the leg to be laid next, and no cord lies on it yet.
    pub fn is_next(&self, leg: Leg) -> bool {
        self.next == Some(leg.from) && self.cords(leg) == 0
    }

    /// Whether the leg from `pin` is the one in hand.
    pub fn is_active(&self, pin: Pin) -> bool {
        self.active
            .as_ref()
            .is_some_and(|active| active.leg.from == pin)
    }
}
