//! The sheet of a board: where its T-pins go, at true size, on as many pages as it takes.

use std::ops::ControlFlow;

use super::page::{Anchor, Paper, SheetPage, Spot};
use super::pages::{PageTaker, Sheet};
use super::strip::{EDGE, FOOT, bar, cautions, heading};
use super::strip_part::{Laid, MARGIN, OVERLAP, count, pages_over};
use crate::bench::{Board, Circle};
use crate::knot::Hand;
use crate::picture::draw::{self, Paint, Role, Weight};
use crate::picture::scene::{involutes, single};

/// Both circles of a board. Lengths in millimetres, from the middle of the board to the right and down:
/// pin 1 of the outer circle stands nearest to the tyer.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardSheet {
    /// The circles of the outer rim, from the rim towards the middle of the knot.
    pub outer: Vec<Marks>,
    /// The circles of the inner rim, likewise.
    pub inner: Vec<Marks>,
    /// The ways of the first two legs, one in and one out.
    pub ways: [Vec<Spot>; 2],
}

/// The marks of a circle of pins.
#[derive(Clone, Debug, PartialEq)]
pub struct Marks {
    /// From the middle to the pins.
    pub radius: f32,
    /// Every pin, pin 1 first.
    pub pins: Vec<Spot>,
}

/// Room round the outer circle, for its numbers.
const ROUND: f32 = 10.0;
/// Across the mark of a pin, where there is room for it. *Common practice, no source.*
const MARK: f32 = 4.0;
/// Half of a cross that two pages share.
const CROSS: f32 = 3.0;

impl BoardSheet {
    /// The circles of a board for a tyer of this hand, and the ways of the first legs, of which the one
    /// that goes in goes so far round, in radians.
    pub fn new(board: &Board, angle: f32, hand: Hand) -> Self {
        let turned = |angle: f32, radius: f32| {
            let (sin, cos) = angle.sin_cos();
            let right = match hand {
                Hand::Right => radius * sin,
                Hand::Left => -radius * sin,
            };
            (right, radius * cos)
        };
        let marks = |circle: &Circle| {
            let radius = single(circle.radius.get());
            let at = |angle: &f64| turned(single(*angle), radius);
            Marks {
                radius,
                pins: circle.angles.iter().map(at).collect(),
            }
        };
        let rows = || board.rows();
        let [outer, inner] = [&board.outer, &board.inner].map(|circle| single(circle.radius.get()));
        let leg = involutes(angle, outer, inner);
        let inwards = leg.iter().map(|&(along, radius)| turned(along, radius));
        let outwards = leg
            .iter()
            .rev()
            .map(|&(along, radius)| turned(2.0 * angle - along, radius));
        Self {
            outer: rows().map(|[outer, _]| marks(outer)).collect(),
            inner: rows().map(|[_, inner]| marks(inner)).collect(),
            ways: [inwards.collect(), outwards.collect()],
        }
    }

    /// Half of what is drawn, across.
    fn half(&self) -> f32 {
        self.outer.first().map_or(0.0, |marks| marks.radius) + ROUND
    }

    /// How many pages of this paper stand side by side, and how many one below the other.
    fn tiles(&self, paper: Paper) -> [usize; 2] {
        window(paper).map(|room| pages_over(2.0 * self.half(), room))
    }

    /// How many pages of this paper it takes.
    pub fn count(&self, paper: Paper) -> usize {
        let [across, down] = self.tiles(paper);
        across * down
    }

    fn draw(&self, page: &mut SheetPage, tile: &Tile) {
        for way in &self.ways {
            tile.line(page, Role::ToCome, 0.25, way.iter().copied());
        }
        for marks in self.outer.iter().chain(&self.inner) {
            tile.circle(page, marks.radius);
            for &pin in &marks.pins {
                tile.mark(page, pin, marks);
            }
        }
        if let (Some(outer), Some(inner)) = (self.outer.first(), self.inner.first()) {
            tile.numbers(page, outer, outer.radius + 0.6 * ROUND, 6.0);
            // Within the inner circle they are as large as they have room.
            let radius = inner.radius - 6.0_f32.min(0.4 * inner.radius);
            let around = std::f32::consts::TAU * radius / count(inner.pins.len().max(1));
            let widest = draw::width(&inner.pins.len().to_string(), 1.0, Weight::Bold);
            let size = (around / widest / 1.3).min(around / 1.1).clamp(1.8, 5.0);
            tile.numbers(page, inner, radius, size);
        }
        // The middle.
        for (from, to) in [((-CROSS, 0.0), (CROSS, 0.0)), ((0.0, -CROSS), (0.0, CROSS))] {
            tile.line(page, Role::Label, 0.2, [from, to].into_iter());
        }
    }
}

/// The pages are upright, from left to right and from the top down.
impl<J, F> Sheet for Laid<BoardSheet, J, F>
where
    J: Fn(usize) -> String,
    F: Fn(usize, usize) -> String,
{
    fn count(&self) -> usize {
        self.of.count(self.paper)
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        let (paper, texts) = (self.paper, &self.texts);
        let room = window(paper);
        let tiles = self.of.tiles(paper);
        let pages = self.count();
        // All of them together have the middle of the board in their middle.
        let starts = [0, 1].map(|way| {
            let reached = room[way] + count(tiles[way] - 1) * (room[way] - OVERLAP);
            -reached / 2.0
        });
        let mut number = 0;
        for row in 0..tiles[1] {
            for column in 0..tiles[0] {
                number += 1;
                let nth = [column, row];
                let from = [0, 1].map(|way| starts[way] + count(nth[way]) * (room[way] - OVERLAP));
                let mut page = SheetPage::new(paper, false);
                heading(&mut page, texts);
                let tile = Tile { from, room };
                self.of.draw(&mut page, &tile);
                for (way, step) in [(0, 1), (1, tiles[0])] {
                    if nth[way] + 1 < tiles[way] {
                        tile.join(&mut page, way, &(self.join)(number + step));
                    }
                    for is_end in [false, true] {
                        let is_shared = if is_end {
                            nth[way] + 1 < tiles[way]
                        } else {
                            nth[way] > 0
                        };
                        if is_shared {
                            tile.crosses(&mut page, way, is_end);
                        }
                    }
                }
                cautions(&mut page, texts, EDGE + room[1] + 10.5);
                bar(&mut page, texts);
                self.write_foot(&mut page, number, pages);
                take(page)?;
            }
        }
        ControlFlow::Continue(())
    }
}

/// Millimetres of a board that a page holds, across and down.
fn window(paper: Paper) -> [f32; 2] {
    let (width, height) = paper.size();
    [width - 2.0 * MARGIN, height - EDGE - FOOT]
}

/// The part of a board that a page holds.
struct Tile {
    /// Its left and its top edge on the board.
    from: [f32; 2],
    room: [f32; 2],
}

impl Tile {
    /// Where a spot of the board is on the page.
    fn at(&self, spot: Spot) -> Spot {
        (MARGIN + spot.0 - self.from[0], EDGE + spot.1 - self.from[1])
    }

    /// Whether a spot of the board is on the page, and that much round it.
    fn has(&self, spot: Spot, round: f32) -> bool {
        [spot.0, spot.1].iter().zip(0..2).all(|(&at, way)| {
            let at = at - self.from[way];
            at >= round && at <= self.room[way] - round
        })
    }

    /// What of a line through these spots is on the page.
    fn line(
        &self,
        page: &mut SheetPage,
        role: Role,
        width: f32,
        mut spots: impl Iterator<Item = Spot>,
    ) {
        let Some(mut last) = spots.next() else {
            return;
        };
        for spot in spots {
            if self.has(last, 0.0) && self.has(spot, 0.0) {
                page.rule(role, width, self.at(last), self.at(spot));
            }
            last = spot;
        }
    }

    fn circle(&self, page: &mut SheetPage, radius: f32) {
        let steps = 360_u16;
        let spots = (0..=steps).map(|step| {
            let (sin, cos) = (f32::from(step) / f32::from(steps) * std::f32::consts::TAU).sin_cos();
            (radius * sin, radius * cos)
        });
        self.line(page, Role::Edge, 0.15, spots);
    }

    /// The mark of a pin: a ring, and a cross whose arms run along its circle and across it.
    fn mark(&self, page: &mut SheetPage, pin: Spot, marks: &Marks) {
        let around = std::f32::consts::TAU * marks.radius / count(marks.pins.len().max(1));
        let radius = MARK.min(0.6 * around) / 2.0;
        if !self.has(pin, radius) {
            return;
        }
        page.circle(Role::Label, Paint::Stroke(0.25), self.at(pin), radius);
        let out = (pin.0 / marks.radius, pin.1 / marks.radius);
        let arm = radius + 0.8;
        for way in [out, (-out.1, out.0)] {
            let ends = [-arm, arm].map(|far| (pin.0 + way.0 * far, pin.1 + way.1 * far));
            page.rule(Role::Label, 0.2, self.at(ends[0]), self.at(ends[1]));
        }
    }

    /// The numbers of the pins of a circle, on one of this radius.
    fn numbers(&self, page: &mut SheetPage, marks: &Marks, radius: f32, size: f32) {
        let around = std::f32::consts::TAU * radius / count(marks.pins.len().max(1));
        let widest = draw::width(&marks.pins.len().to_string(), size, Weight::Bold);
        let mut every = 1;
        while count(every) * around < widest * 1.2 && every < marks.pins.len() {
            every += 1;
        }
        for (nth, &pin) in marks.pins.iter().enumerate().step_by(every) {
            let larger = radius / marks.radius;
            let spot = (pin.0 * larger, pin.1 * larger);
            if self.has(spot, 0.5 * size) {
                let (x, y) = self.at(spot);
                let number = (nth + 1).to_string();
                let at = (x, y + 0.36 * size);
                page.write(&number, size, Weight::Bold, Anchor::Middle, at);
            }
        }
    }

    /// The dashed line on which the next page is laid, to the right (0) or below (1), with its words.
    fn join(&self, page: &mut SheetPage, way: usize, words: &str) {
        let [left, high] = [MARGIN, EDGE];
        let (right, low) = (left + self.room[0], high + self.room[1]);
        let line = [right, low][way] - OVERLAP;
        let (mut from, to) = ([high, left][way], [low, right][way]);
        while from < to {
            let end = (from + 1.2).min(to);
            let ends = [from, end].map(|along| match way {
                0 => (line, along),
                _ => (along, line),
            });
            page.rule(Role::Label, 0.2, ends[0], ends[1]);
            from += 2.4;
        }
        let at = match way {
            0 => (right, high - 1.2),
            _ => (right, low + 3.6),
        };
        page.write(words, 3.0, Weight::Regular, Anchor::End, at);
    }

    /// Crosses in the middle of what two pages share, to be laid one upon the other.
    fn crosses(&self, page: &mut SheetPage, way: usize, is_end: bool) {
        let middle = if is_end {
            self.room[way] - OVERLAP / 2.0
        } else {
            OVERLAP / 2.0
        };
        for share in [0.25, 0.75] {
            let along = self.room[1 - way] * share;
            let (x, y) = match way {
                0 => (MARGIN + middle, EDGE + along),
                _ => (MARGIN + along, EDGE + middle),
            };
            page.rule(Role::Label, 0.2, (x - CROSS, y), (x + CROSS, y));
            page.rule(Role::Label, 0.2, (x, y - CROSS), (x, y + CROSS));
        }
    }
}
