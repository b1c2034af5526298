//! The leg in hand, and the part of it that is being told.

use std::ops::Range;

use super::sheet_point::real;
use crate::knot::{Crossing, Laying, Leg, Nest, PassLeg, Pin, Rim};

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
    /// The part of those rows in which the cord is drawn: all of it, or as far as it has gone in.
    pub drawn: Range<f32>,
    /// The crossings of the part being told, in the order in which the cord meets them.
    pub crossings: Vec<ActiveCrossing>,
    /// Whether the cord goes against the way the leg was laid.
    pub is_backward: bool,
    /// Whether it goes no farther than what is told of it: an end is cut off there.
    pub is_cut_off: bool,
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
        let nest = laying.knot().nest_from(leg.from);
        let all: Vec<ActiveCrossing> = laying
            .crossings(pass_leg)
            .map(|crossing| ActiveCrossing {
                nth: rows_along(nest, leg, crossing.row),
                over: crossing.over,
                cords: crossing.cords,
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
                // A part without crossings, in a leg that has some, ends before the first of them.
                real(all[0].nth) - 0.5
            } else {
                between(end)
            },
        };
        Some(Self {
            pass_leg,
            leg,
            beside: laying.cords_of(leg, pass_leg),
            drawn: rows.clone(),
            rows,
            crossings: all[start..end].to_vec(),
            is_backward: false,
            is_cut_off: false,
        })
    }

    /// The same leg on its way back to the pin it came from.
    pub fn taken_back(self) -> Self {
        Self {
            is_backward: true,
            ..self
        }
    }

    /// Draws the cord no farther than half way from the last of so many crossings to the one after
    /// it. What is told stays, and where it is looked at.
    pub fn go_in(&mut self, past: usize) {
        let last = past.checked_sub(1);
        if let Some([last, next]) = last.and_then(|last| self.crossings.get(last..=past)) {
            let between = f32::midpoint(real(last.nth), real(next.nth));
            if self.is_backward {
                self.drawn.start = between;
            } else {
                self.drawn.end = between;
            }
        }
    }

    /// The pin that the cord in hand goes from, and the one it goes to.
    pub const fn ends(&self) -> [Pin; 2] {
        if self.is_backward {
            [self.leg.to, self.leg.from]
        } else {
            [self.leg.from, self.leg.to]
        }
    }

    /// An end that is tucked away along a leg, up from its bottom pin, over and under these.
    pub fn tucked(laying: &Laying, along: Leg, crossings: &[Crossing]) -> Self {
        let nest = laying.knot().nest_from(along.from);
        let is_backward = along.from.rim == Rim::Top;
        let nth = |crossing: &Crossing| rows_along(nest, along, crossing.row);
        // The end comes out from under the cord that holds it, half way to the next.
        let last = crossings.last().map_or(0.0, |crossing| real(nth(crossing)));
        let pass = laying.passes() + 1;
        let rows = if is_backward {
            last - 0.5..f32::INFINITY
        } else {
            f32::NEG_INFINITY..last + 0.5
        };
        Self {
            pass_leg: laying.pass_leg_of(pass, along),
            leg: along,
            beside: laying.passes(),
            drawn: rows.clone(),
            rows,
            crossings: crossings
                .iter()
                .map(|crossing| ActiveCrossing {
                    nth: nth(crossing),
                    over: crossing.over,
                    cords: crossing.cords,
                })
                .collect(),
            is_backward,
            is_cut_off: true,
        }
    }
}

/// So many rows from the start of a leg a row of crossings lies.
pub(super) fn rows_along(nest: Nest, leg: Leg, row: u16) -> i32 {
    let [low, high] = nest.heights.map(i32::from);
    match leg.from.rim {
        Rim::Bottom => i32::from(row) - low,
        Rim::Top => high - i32::from(row),
    }
}
