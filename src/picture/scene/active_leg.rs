//! The leg in hand, and the part of it that is being told.

use std::ops::Range;

use super::sheet_point::real;
use crate::knot::{Laying, Leg, PassLeg, Rim};

/// The leg in hand, and the part of it that is being told.
#[derive(Clone, Debug)]
pub struct ActiveLeg {
    /// Pass, strand and number of the leg in the order of the tie.
    pub pass_leg: PassLeg,
    /// The pins it runs between.
    pub leg: Leg,
    /// How many cords lie already where it goes.
    pub beside: u16,
    /// Rows on the way between which the part being told lies: a half one where two parts meet,
    /// and infinite at a pin.
    pub rows: Range<f32>,
    /// The crossings of the part being told, in the order in which the cord meets them.
    pub crossings: Vec<ActiveCrossing>,
}

/// A crossing of the leg in hand.
#[derive(Clone, Copy, Debug)]
pub struct ActiveCrossing {
    /// The row on the way of the leg, counted from the pin it leaves.
    pub nth: i32,
    /// Whether the leg in hand goes over.
    pub over: bool,
    /// How many cords it crosses there.
    pub cords: u16,
}

impl ActiveLeg {
    /// The leg of `pass_leg`, with those of its crossings told that `part` numbers in the order in
    /// which it meets them; none for a leg that the tie does not have.
    pub fn new(laying: &Laying, pass_leg: PassLeg, part: &Range<usize>) -> Option<Self> {
        let leg = laying.leg(pass_leg)?;
        let leads = i32::from(laying.knot().leads());
        let all: Vec<ActiveCrossing> = laying
            .crossings(pass_leg)
            .map(|crossing| {
                let row = i32::from(crossing.row);
                ActiveCrossing {
                    nth: match leg.from.rim {
                        Rim::Bottom => row,
                        Rim::Top => leads - row,
                    },
                    over: crossing.over,
                    cords: crossing.cords,
                }
            })
            .collect();
        let end = part.end.min(all.len());
        let start = part.start.min(end);
        // Two parts meet half way between the last crossing of one and the first of the next.
        let between = |next: usize| f32::midpoint(real(all[next - 1].nth), real(all[next].nth));
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
                real(all[0].nth) - 0.5
            } else {
                between(end)
            },
        };
        Some(Self {
            pass_leg,
            leg,
            beside: laying.cords_of(leg, pass_leg),
            rows,
            crossings: all[start..end].to_vec(),
        })
    }
}
