//! The legs of which anything can be seen.

use super::cord_path::CordPath;
use super::knot::KnotScene;
use super::projection::Span;
use super::sheet_point::whole;
use crate::knot::{Heading, Leg, Pin};

/// A leg as it is met while looking over the sheet from left to right.
#[derive(Clone, Copy, Debug)]
pub struct VisibleLeg {
    /// The leg of the knot.
    pub leg: Leg,
    /// Half pitch of the pin it starts from, on this copy.
    pub start: i32,
    /// How many cords lie on it, the one in hand among them.
    pub cords: u16,
    /// Rows on the way that can be seen, first and last; below 1 and beyond the last row are
    /// the pins.
    pub seen: (i32, i32),
}

impl KnotScene {
    /// The copies of legs of which anything lies in `span` of the sheet and can be seen.
    pub fn visible_legs(
        &self,
        heading: Heading,
        span: Span,
    ) -> impl Iterator<Item = VisibleLeg> + '_ {
        let layout = &self.layout;
        let Span { from, to } = span;
        let first = whole(from / layout.half_pitch) - layout.leads - 2;
        let last = whole(to / layout.half_pitch) + 2;
        let shift = if heading == Heading::Rising {
            0
        } else {
            layout.stagger
        };
        let even = first + (first - shift).rem_euclid(2);
        (even..=last).step_by(2).filter_map(move |start| {
            let index = self.index(start - shift);
            let pin = u16::try_from(index + 1).ok()?;
            let leg = self.laying.knot().leg_from(match heading {
                Heading::Rising => Pin::bottom(pin),
                Heading::Falling => Pin::top(pin),
            });
            let seen = self.visible_rows(heading, start, span);
            (seen.0 <= seen.1).then(|| VisibleLeg {
                leg,
                start,
                cords: self.laid.cords(heading, index),
                seen,
            })
        })
    }

    /// The pin, counted from 0, at so many half pitches from the first of its ring.
    pub fn index(&self, half_pitches: i32) -> usize {
        usize::try_from((half_pitches / 2).rem_euclid(self.layout.bights)).unwrap_or(0)
    }

    /// The rows on the way of a leg that lie within what the projection shows, and one more each way.
    fn visible_rows(&self, heading: Heading, start: i32, across: Span) -> (i32, i32) {
        let (layout, projection) = (&self.layout, &self.projection);
        let low = whole(projection.upright.from / layout.row) - 1;
        let high = whole(projection.upright.to / layout.row) + 2;
        let rows = match heading {
            Heading::Rising => (low, high),
            Heading::Falling => (layout.leads - high, layout.leads - low),
        };
        let left = whole(across.from / layout.half_pitch) - 1 - start;
        let right = whole(across.to / layout.half_pitch) + 2 - start;
        (rows.0.max(left).max(0), rows.1.min(right).min(layout.leads))
    }

    /// The cord of one pass on a leg.
    pub fn cord_path(&self, visible: &VisibleLeg, pass: u16) -> CordPath<'_> {
        CordPath {
            layout: &self.layout,
            rising: visible.leg.heading() == Heading::Rising,
            start: visible.start,
            offset: self.layout.offset(pass),
        }
    }

    /// Which leg of its pass it is.
    pub fn leg_of_pass(&self, visible: &VisibleLeg, pass: u16) -> u16 {
        self.laying.pass_leg_of(pass, visible.leg).leg
    }
}
