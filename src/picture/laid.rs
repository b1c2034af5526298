//! Which cords lie on the tube at a moment of the tie.

use std::ops::Range;

use super::Progress;
use crate::knot::{Heading, Laying, Leg, Pin, Rim, Turn};

/// The leg in hand, and the part of it that is being told.
#[derive(Clone, Debug)]
pub(super) struct InHand {
    pub turn: Turn,
    pub leg: Leg,
    /// How many cords lie already where it goes.
    pub beside: u16,
    /// Rows on the way between which the part in hand lies: a half one where two parts meet,
    /// and infinite at a pin.
    pub rows: Range<f32>,
    /// The crossings of the part in hand: number of the row on the way, whether over, how many
    /// cords.
    pub crossings: Vec<(i32, bool, u16)>,
}

/// How many cords every leg has, and what is in hand.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    /// For the rising leg from every bottom pin, and the falling leg from every top pin.
    rising: Vec<u16>,
    falling: Vec<u16>,
    pub in_hand: Option<InHand>,
    /// The pin where the cord stands, when nothing is in hand.
    pub stands_at: Option<Pin>,
    /// The cord that is being faired, and its leg.
    pub faired: Option<(Turn, Leg)>,
    /// Whether all is laid.
    pub finished: bool,
}

impl Laid {
    pub fn new(laying: &Laying, progress: &Progress) -> Self {
        let in_hand = match progress {
            Progress::At { turn, crossings } => in_hand(laying, *turn, crossings),
            Progress::Bare | Progress::Before(_) | Progress::Fairing(_) | Progress::Finished => {
                None
            }
        };
        let finished = matches!(progress, Progress::Fairing(_) | Progress::Finished);
        let count = |leg: Leg| match &in_hand {
            // The cord in hand counts: what it goes over makes room for it.
            Some(hand) => laying.cords_of(leg, hand.turn) + u16::from(hand.leg.from == leg.from),
            None => match progress {
                Progress::Before(turn) => laying.cords_of(leg, *turn),
                Progress::Fairing(_) | Progress::Finished => laying.passes(),
                Progress::Bare | Progress::At { .. } => 0,
            },
        };
        let pins = 1..=laying.knot().bights();
        let knot = laying.knot();
        Self {
            rising: pins
                .clone()
                .map(|pin| count(knot.leg_from(Pin::bottom(pin))))
                .collect(),
            falling: pins
                .map(|pin| count(knot.leg_from(Pin::top(pin))))
                .collect(),
            in_hand,
            stands_at: match progress {
                Progress::Before(turn) => laying.leg(*turn).map(|leg| leg.from),
                _ => None,
            },
            faired: match progress {
                Progress::Fairing(turn) => laying.leg(*turn).map(|leg| (*turn, leg)),
                _ => None,
            },
            finished,
        }
    }

    /// Cords on the leg that leaves pin `index`, counted from 0, the one in hand among them.
    pub fn cords(&self, heading: Heading, index: usize) -> u16 {
        let counts = match heading {
            Heading::Rising => &self.rising,
            Heading::Falling => &self.falling,
        };
        counts.get(index).copied().unwrap_or(0)
    }

    /// The most cords that any leg has.
    pub fn passes(&self) -> u16 {
        let most = |counts: &[u16]| counts.iter().copied().max().unwrap_or(0);
        most(&self.rising).max(most(&self.falling)).max(1)
    }

    /// Whether the leg from `pin` is the one in hand.
    pub fn is_in_hand(&self, pin: Pin) -> bool {
        self.in_hand
            .as_ref()
            .is_some_and(|hand| hand.leg.from == pin)
    }
}

/// The leg of `turn`, with the crossings numbered `part` in the order it meets them.
fn in_hand(laying: &Laying, turn: Turn, part: &Range<usize>) -> Option<InHand> {
    let leg = laying.leg(turn)?;
    let leads = i32::from(laying.knot().leads());
    let all: Vec<(i32, bool, u16)> = laying
        .crossings(turn)
        .map(|crossing| {
            let row = i32::from(crossing.row);
            let nth = match leg.from.rim {
                Rim::Bottom => row,
                Rim::Top => leads - row,
            };
            (nth, crossing.over, crossing.cords)
        })
        .collect();
    let end = part.end.min(all.len());
    let start = part.start.min(end);
    // Two parts meet half way between the last crossing of one and the first of the next.
    let between = |next: usize| {
        let (before, after) = (all[next - 1].0, all[next].0);
        f32::midpoint(super::gauge::real(before), super::gauge::real(after))
    };
    let rows = Range {
        start: if start == 0 {
            f32::NEG_INFINITY
        } else if start < all.len() {
            between(start)
        } else {
            f32::INFINITY
        },
        end: if end == all.len() {
            f32::INFINITY
        } else if end == 0 {
            // A part without crossings, of a leg that has some: up to the first.
            super::gauge::real(all[0].0) - 0.5
        } else {
            between(end)
        },
    };
    Some(InHand {
        turn,
        leg,
        beside: laying.cords_of(leg, turn),
        rows,
        crossings: all[start..end].to_vec(),
    })
}
