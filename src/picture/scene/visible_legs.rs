//! The legs of which anything can be seen.

use super::cord_path::CordPath;
use super::knot::KnotScene;
use super::projection::Span;
use super::sheet_point::whole;
use crate::knot::{Heading, Leg, Rim};

/// A leg as it is met while looking over the sheet from left to right.
#[derive(Clone, Copy, Debug)]
pub struct VisibleLeg {
    /// The leg of the knot.
    pub leg: Leg,
    /// Half pitch of the pin it starts from, on this copy.
    pub start: i32,
    /// The row in which it starts, 0 that of the outermost bottom pins.
    pub base: i32,
    /// Rows from its start to its end.
    pub rows: i32,
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
        let (rim, shift) = if heading == Heading::Rising {
            (Rim::Bottom, 0)
        } else {
            (Rim::Top, layout.stagger)
        };
        let starts = self.columns(span, shift, [layout.height + 2, 2]);
        let knot = self.laying.knot();
        starts.flat_map(move |start| {
            let number = self.number(start - shift);
            (1..=knot.nested()).filter_map(move |row| {
                let leg = knot.leg_from(knot.pin(rim, row, number)?);
                let (base, rows) = self.rows_of(leg);
                let mut visible = VisibleLeg {
                    leg,
                    start,
                    base,
                    rows,
                    cords: self.laid.cords(leg),
                    seen: (0, 0),
                };
                visible.seen = self.visible_rows(&visible, span);
                (visible.seen.0 <= visible.seen.1).then_some(visible)
            })
        })
    }

    /// The row in which a leg starts, and how many rows further it lands.
    pub fn rows_of(&self, leg: Leg) -> (i32, i32) {
        let [low, high] = self
            .laying
            .knot()
            .nest_from(leg.from)
            .heights
            .map(i32::from);
        match leg.from.rim {
            Rim::Bottom => (low, high - low),
            Rim::Top => (high, high - low),
        }
    }

    /// The number of the pins so many half pitches from pin 1, which must be a pitch of pins or several.
    pub fn number(&self, half_pitches: i32) -> u16 {
        let pins = half_pitches / self.layout.pin_pitch();
        u16::try_from(pins.rem_euclid(self.layout.bights) + 1).unwrap_or(1)
    }

    /// The rows of a leg, counted from its start, that can be seen.
    fn visible_rows(&self, leg: &VisibleLeg, across: Span) -> (i32, i32) {
        let (layout, projection) = (&self.layout, &self.projection);
        let low = whole(projection.upright.from / layout.row) - 1;
        let high = whole(projection.upright.to / layout.row) + 2;
        let rows = match leg.leg.heading() {
            Heading::Rising => (low - leg.base, high - leg.base),
            Heading::Falling => (leg.base - high, leg.base - low),
        };
        let left = whole(across.from / layout.half_pitch) - 1 - leg.start;
        let right = whole(across.to / layout.half_pitch) + 2 - leg.start;
        (rows.0.max(left).max(0), rows.1.min(right).min(leg.rows))
    }

    /// The cord of one pass on a leg.
    pub fn cord_path(&self, visible: &VisibleLeg, pass: u16) -> CordPath<'_> {
        CordPath {
            layout: &self.layout,
            rising: visible.leg.heading() == Heading::Rising,
            start: visible.start,
            base: visible.base,
            rows: visible.rows,
            offset: self.layout.offset(pass),
            head: if self.has_loose_head(visible, pass) {
                self.layout.head_within_end()
            } else {
                0.0
            },
        }
    }

    /// Which leg of its pass it is.
    pub fn leg_of_pass(&self, visible: &VisibleLeg, pass: u16) -> u16 {
        self.laying.pass_leg_of(pass, visible.leg).leg
    }
}
