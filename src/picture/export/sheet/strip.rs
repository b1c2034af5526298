//! The strip: where the pins go, at true size, to be cut out and laid round the tube.

use std::f64::consts::TAU;
use std::ops::ControlFlow;

use super::page::{Anchor, Paper, SheetPage, wrapped};
use super::pages::{PageTaker, Sheet};
use super::strip_part::{
    Laid, MARGIN, OVERLAP, StripPart, StripRow, StripTexts, TALL, count, pages_over,
};
use crate::bench::{Layout, Millimetres, RingPins, Tube};
use crate::knot::{Hand, Rim};
use crate::picture::draw::{self, Role, Weight};
use crate::picture::scene::single;

/// Both rings' strips for a tube.
#[derive(Clone, Debug, PartialEq)]
pub struct StripSheet {
    /// Once round the tube, in millimetres; at the top ring and at the bottom ring, which are of one length
    /// unless each has a tape of its own.
    pub lengths: [f32; 2],
    /// The marks of the top ring, row by row, the outermost first.
    pub top: Vec<StripRow>,
    /// The marks of the bottom ring.
    pub bottom: Vec<StripRow>,
}

/// Top edge of the first strip of a page.
pub(super) const EDGE: f32 = 62.0;
/// From a strip to what stands below it: the next one, with its name, or the cautions.
const BELOW: [f32; 2] = [22.0, 13.0];
/// Room for the cautions and the line that is measured, at the foot of a page.
pub(super) const FOOT: f32 = 54.0;

impl StripSheet {
    /// The strips for a tube pinned like this, for a tyer of this hand. Pins are numbered the
    /// way the cord travels. Both strips begin a quarter of a pitch (or of the way from hole
    /// to hole) before the first bottom pin, so that no mark lies on the cut.
    ///
    /// Where bights are nested, `apart` is the way from a row of pins to the next; without it the
    /// outermost rows alone are drawn, with whose pins those of the others stand in line.
    pub fn new(tube: &Tube, layout: &Layout, apart: Option<Millimetres>, hand: Hand) -> Self {
        let round = tube.circumference().get();
        let lengths = match layout {
            Layout::Tapes(tapes) => {
                [&tapes.top, &tapes.bottom].map(|tape| single(tape.length.get()))
            }
            _ => [single(round); 2],
        };
        let place_on = |mark: f64, length: f32| {
            let mark = single(mark).rem_euclid(length);
            match hand {
                Hand::Right => mark,
                Hand::Left => length - mark,
            }
        };
        let place = |mark: f64| place_on(mark, lengths[0]);
        let of_row = |nth: usize, holes: Vec<f32>, pins: Vec<f32>| StripRow {
            inside: apart.map_or(0.0, |apart| count(nth) * single(apart.get())),
            holes,
            pins,
        };
        let drawn = |rows: usize| if apart.is_some() { rows } else { 1 };
        let [top, bottom] = match layout {
            Layout::Strip(strip) => [&strip.top, &strip.bottom].map(|pins| {
                let at = |pin: &Millimetres| place(pin.get() + strip.pitch.get() / 4.0);
                let pins: Vec<f32> = pins.iter().map(at).collect();
                let rows = 0..drawn(strip.nested.into());
                rows.map(|nth| of_row(nth, Vec::new(), pins.clone()))
                    .collect()
            }),
            Layout::Tapes(tapes) => [1, 0].map(|rim| {
                let rows = tapes.rows().take(drawn(usize::MAX)).enumerate();
                rows.map(|(nth, row)| {
                    let quarter = row[rim].pitch.get() / 4.0;
                    let long = single(row[rim].length.get());
                    let at = |mark: &Millimetres| place_on(mark.get() + quarter, long);
                    of_row(nth, Vec::new(), row[rim].marks.iter().map(at).collect())
                })
                .collect()
            }),
            // A board has a sheet of its own; its circles unrolled stand in the same line.
            Layout::Board(board) => [1, 0].map(|rim| {
                let rows = board.rows().take(drawn(usize::MAX)).enumerate();
                rows.map(|(nth, row)| {
                    let at = |angle: &f64| place(angle / TAU * round);
                    of_row(nth, Vec::new(), row[rim].angles.iter().map(at).collect())
                })
                .collect()
            }),
            Layout::Rings {
                bottom,
                top,
                inner,
                turn_half_hole,
            } => [Rim::Top, Rim::Bottom].map(|rim| {
                let outermost = [bottom, top];
                let inner = inner.iter().map(|[bottom, top]| [bottom, top]);
                let rows = [outermost].into_iter().chain(inner);
                let of_ring = |(nth, [bottom, top]): (usize, [&RingPins; 2])| {
                    let ring = if rim == Rim::Top { top } else { bottom };
                    let from_hole_to_hole = round / f64::from(ring.holes_in_row);
                    // Pins of one number stand in line, whatever the holes of their rows.
                    let quarter = round / f64::from(outermost[0].holes_in_row) / 4.0;
                    let turned = if rim == Rim::Top && *turn_half_hole {
                        from_hole_to_hole / 2.0
                    } else {
                        0.0
                    };
                    let at = |hole: u16| {
                        place((f64::from(hole) - 1.0) * from_hole_to_hole + turned + quarter)
                    };
                    let holes = (1..=ring.holes_in_row).map(at).collect();
                    of_row(
                        nth,
                        holes,
                        ring.holes.iter().map(|&hole| at(hole)).collect(),
                    )
                };
                let rows = rows.enumerate().map(of_ring);
                rows.take(drawn(usize::MAX)).collect()
            }),
        };
        Self {
            lengths,
            top,
            bottom,
        }
    }

    /// Height of each strip.
    fn tall(&self) -> f32 {
        TALL + self.top.last().map_or(0.0, |row| row.inside)
    }

    /// The same with the outermost rows alone, when all of them do not go on a page.
    fn within(&self, paper: Paper) -> Self {
        if EDGE + self.tall() + FOOT <= paper.size().0 {
            return self.clone();
        }
        Self {
            top: self.top[..1].to_vec(),
            bottom: self.bottom[..1].to_vec(),
            ..*self
        }
    }

    /// How many strips, one below the other, go on a page.
    fn on_a_page(&self, paper: Paper) -> usize {
        let both = EDGE + 2.0 * self.tall() + BELOW[0] + FOOT;
        if both <= paper.size().0 { 2 } else { 1 }
    }

    /// How many pages of this paper it takes.
    pub fn count(&self, paper: Paper) -> usize {
        let [top, bottom] = self.lengths.map(|length| Self::goes_over(length, paper));
        match self.within(paper).on_a_page(paper) {
            1 => top + bottom,
            _ => top.max(bottom),
        }
    }

    /// How many pages a strip of this length goes on over.
    fn goes_over(length: f32, paper: Paper) -> usize {
        pages_over(length, window(paper))
    }
}

/// Each page is on its side: both strips on each, or where they are too high for that all of the top one
/// before the bottom one.
impl<J, F> Sheet for Laid<StripSheet, J, F>
where
    J: Fn(usize) -> String,
    F: Fn(usize, usize) -> String,
{
    fn count(&self) -> usize {
        self.of.count(self.paper)
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        let (paper, texts, lengths) = (self.paper, &self.texts, self.of.lengths);
        let strips = self.of.within(paper);
        let tall = strips.tall();
        let count = self.count();
        let rims = [
            (Rim::Top, &strips.top, &texts.rings[0], lengths[0]),
            (Rim::Bottom, &strips.bottom, &texts.rings[1], lengths[1]),
        ];
        let mut number = 0;
        for together in rims.chunks(strips.on_a_page(paper)) {
            let mut from = 0.0;
            let over = |length: f32| StripSheet::goes_over(length, paper);
            let longest = together.iter().map(|(.., length)| over(*length));
            for nth in 1..=longest.max().unwrap_or(1) {
                number += 1;
                let mut page = SheetPage::new(paper, true);
                heading(&mut page, texts);
                let mut part = StripPart {
                    from,
                    to: from,
                    is_first: nth == 1,
                    is_last: false,
                    join: (self.join)(number + 1),
                    edge: EDGE,
                    tall,
                };
                for (rim, rows, name, length) in together {
                    // The tape of the thinner end comes to its end first.
                    if nth > over(*length) {
                        continue;
                    }
                    part.to = (from + window(paper)).min(*length);
                    part.is_last = nth == over(*length);
                    let at = (MARGIN, part.edge - 3.0);
                    page.write(name, 4.0, Weight::Bold, Anchor::Start, at);
                    part.draw(&mut page, *rim, rows, texts);
                    part.edge += tall + BELOW[0];
                }
                cautions(&mut page, texts, part.edge - BELOW[0] + BELOW[1]);
                bar(&mut page, texts);
                self.write_foot(&mut page, number, count);
                take(page)?;
                from += window(paper) - OVERLAP;
            }
        }
        ControlFlow::Continue(())
    }
}

/// How much of a strip a page holds.
fn window(paper: Paper) -> f32 {
    paper.size().1 - 2.0 * MARGIN
}

pub(super) fn heading(page: &mut SheetPage, texts: &StripTexts) {
    let width = page.width - 2.0 * MARGIN;
    let mut y = MARGIN + 5.0;
    let at = (MARGIN, y);
    // As large as the page has room for.
    let size = (6.0 * width / draw::width(&texts.title, 6.0, Weight::Bold)).min(6.0);
    page.write(&texts.title, size, Weight::Bold, Anchor::Start, at);
    y += 2.0;
    for line in texts
        .how
        .iter()
        .flat_map(|sentence| wrapped(sentence, 3.8, Weight::Regular, width))
    {
        y += 5.2;
        let at = (MARGIN, y);
        page.write(&line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}

/// Writes the cautions between the strips and the line that is measured.
pub(super) fn cautions(page: &mut SheetPage, texts: &StripTexts, top: f32) {
    let width = page.width - 2.0 * MARGIN;
    let lines = wrapped(&texts.cautions, 3.8, Weight::Regular, width);
    for (nth, line) in lines.iter().enumerate() {
        let at = (MARGIN, top + 5.2 * count(nth));
        page.write(line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}

/// Draws the line of known length between two upright ones.
pub(super) fn bar(page: &mut SheetPage, texts: &StripTexts) {
    let y = page.height - MARGIN - 14.0;
    let (left, right) = (MARGIN, MARGIN + f32::from(texts.bar_length) / 100.0);
    page.rule(Role::Label, 0.5, (left, y), (right, y));
    for x in [left, right] {
        page.rule(Role::Label, 0.25, (x, y - 3.0), (x, y + 3.0));
    }
    let width = page.width - right - 6.0 - MARGIN;
    for (nth, line) in wrapped(&texts.bar, 3.8, Weight::Regular, width)
        .iter()
        .enumerate()
    {
        let at = (right + 6.0, y + 1.3 + 5.2 * count(nth));
        page.write(line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}
