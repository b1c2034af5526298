//! A card, page after page.

use std::ops::ControlFlow;

use super::card::{Card, CardParts, CardRow, LegLine};
use super::card_sizes::Sizes;
use super::page::{Anchor, Paper, SheetPage, wrapped};
use super::pages::PageTaker;
use crate::picture::draw::{self, Role, Weight};
use crate::picture::scene::Viewport;

/// Pixels of a scene in a millimetre.
pub(super) const SCALE: f32 = 6.0;

/// How wide the columns of the table are, in sizes of its text.
#[derive(Clone, Copy, Debug)]
pub(super) struct Columns {
    /// The widest way from pin to pin.
    way: f32,
    /// The widest crossing.
    crossing: f32,
}

impl Columns {
    /// Wide enough for all that a card tells.
    pub fn of(parts: &impl CardParts) -> Self {
        let (mut way, mut crossing) = (0.0_f32, 0.0_f32);
        for row in parts.rows() {
            let CardRow::Leg(leg) = row else {
                continue;
            };
            way = way.max(draw::width(&leg.way, 1.0, Weight::Regular));
            for (over, word) in &leg.crossings {
                crossing = crossing.max(draw::width(word, 1.0, weight(*over)));
            }
        }
        Self { way, crossing }
    }
}

/// Fills page after page, and hands each on before the next is begun.
pub(super) struct CardFlow<'c, P> {
    pub(super) card: &'c Card,
    pub(super) parts: &'c P,
    paper: Paper,
    pub(super) sizes: Sizes,
    columns: Columns,
    /// The page in hand, which of them it is, and how many there are.
    pub(super) page: SheetPage,
    number: usize,
    count: usize,
    take: &'c mut PageTaker<'c>,
    /// How far down it is filled, and how far it can be.
    pub(super) y: f32,
    pub(super) bottom: f32,
}

impl<'c, P: CardParts> CardFlow<'c, P> {
    /// Stands before a card in these sizes, of so many pages.
    pub fn new(
        (card, parts): (&'c Card, &'c P),
        (paper, sizes): (Paper, Sizes),
        columns: Columns,
        count: usize,
        take: &'c mut PageTaker<'c>,
    ) -> Self {
        let page = SheetPage::new(paper, false);
        Self {
            card,
            parts,
            paper,
            sizes,
            columns,
            bottom: page.height - sizes.margin,
            page,
            number: 1,
            count,
            take,
            y: sizes.margin,
        }
    }

    /// Lays out all but the ends.
    pub fn before_ends(&mut self) -> ControlFlow<()> {
        self.first()?;
        self.table()?;
        self.after()
    }

    /// Hands the page in hand on, with its line at the foot, for a blank one.
    pub(super) fn hand_on(&mut self) -> ControlFlow<()> {
        let sizes = self.sizes;
        let foot = self.parts.foot(self.number, self.count);
        let page = &mut self.page;
        let at = (page.width - sizes.margin, page.height - sizes.margin + 4.0);
        page.write(&foot, sizes.small, Weight::Regular, Anchor::End, at);
        let blank = SheetPage::new(self.paper, false);
        self.number += 1;
        (self.take)(std::mem::replace(&mut self.page, blank))
    }

    pub(super) fn right(&self) -> f32 {
        self.paper.size().0 - self.sizes.margin
    }

    pub(super) fn write(&mut self, text: &str, size: f32, weight: Weight, x: f32) {
        let at = (x, self.y);
        self.page.write(text, size, weight, Anchor::Start, at);
    }

    /// A paragraph of running text at this place, so wide.
    pub(super) fn paragraph(&mut self, text: &str, x: f32, width: f32) {
        let Sizes {
            text: size, step, ..
        } = self.sizes;
        for line in wrapped(text, size, Weight::Regular, width) {
            self.y += step;
            self.write(&line, size, Weight::Regular, x);
        }
    }

    /// Everything of the first page but the table: the knot, and its facts beside it.
    fn first(&mut self) -> ControlFlow<()> {
        let card = self.card;
        let Sizes {
            margin,
            small,
            picture: [height, width],
            ..
        } = self.sizes;
        let corner = (margin, margin + 11.0);
        let frame = Viewport::new(width * SCALE, height * SCALE);
        let picture = self.parts.scene(frame);
        self.page.picture(&picture, corner, width);
        self.y = margin + 7.0;
        self.write(&card.title, 8.0, Weight::Bold, margin);
        let inside = self.right() - margin - 6.0;
        let cautions = if self.sizes.is_close {
            vec![card.cautions.join(" ")]
        } else {
            card.cautions.clone()
        };
        let cautions: Vec<String> = cautions
            .iter()
            .flat_map(|caution| wrapped(caution, small, Weight::Regular, inside))
            .collect();
        self.cautions(&card.cautions_head, &cautions);
        self.y = corner.1;
        self.facts([margin + width + 6.0, corner.1 + height])
    }

    /// The facts, from `left` on beside the picture, which ends at `low`. Where they would run into the
    /// cautions, those that do not stand beside it go below it, or to the next page.
    fn facts(&mut self, [left, low]: [f32; 2]) -> ControlFlow<()> {
        let card = self.card;
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        let [beside, below] = [left, margin].map(|left| self.right() - left);
        let high = |fact: &str, width: f32| {
            let lines = wrapped(fact, text, Weight::Regular, width);
            lines.iter().fold(0.0, |high: f32, _| high + step)
        };
        let all: f32 = card.facts.iter().map(|fact| high(fact, beside)).sum();
        let all_beside = self.y + all + 1.0 <= self.bottom;
        let mut is_beside = true;
        for fact in &card.facts {
            is_beside &= all_beside || self.y + high(fact, beside) <= low;
            if is_beside {
                self.paragraph(fact, left, beside);
                continue;
            }
            if self.number == 1 {
                self.y = self.y.max(low);
            }
            if self.y + high(fact, below) > self.bottom {
                self.next_page()?;
            }
            self.paragraph(fact, margin, below);
        }
        if self.number == 1 {
            self.y = self.y.max(low);
        }
        self.y += 1.0;
        ControlFlow::Continue(())
    }

    /// A frame at the foot of the page, and less room for the table.
    fn cautions(&mut self, head: &str, lines: &[String]) {
        let count = lines.iter().fold(1.0, |count: f32, _| count + 1.0);
        let Sizes {
            margin: left,
            small,
            small_step,
            ..
        } = self.sizes;
        let (right, low) = (self.right(), self.bottom - 1.0);
        let high = low - count * small_step - 2.5;
        let corners = [(left, high), (right, high), (right, low), (left, low)];
        for nth in 0..4 {
            self.page
                .rule(Role::Label, 0.4, corners[nth], corners[(nth + 1) % 4]);
        }
        let mut at = (left + 3.0, high + small_step);
        self.page
            .write(head, small, Weight::Bold, Anchor::Start, at);
        for line in lines {
            at.1 += small_step;
            self.page
                .write(line, small, Weight::Regular, Anchor::Start, at);
        }
        self.bottom = high - 3.0;
    }

    fn table(&mut self) -> ControlFlow<()> {
        let Sizes {
            margin,
            numbers,
            text,
            ..
        } = self.sizes;
        let way = margin + numbers;
        let (heads, parts) = (&self.card.heads, self.parts);
        let widest = draw::width(&heads[1], text, Weight::Bold).max(self.columns.way * text);
        let crossings = way + widest + 6.0;
        let cell = 8.0_f32.max(self.columns.crossing * text) + 3.0;
        let columns = [margin, way, crossings];
        // The heads stay on one page with the first pass and its first leg.
        let lines = wrapped(&heads[2], text, Weight::Bold, self.right() - crossings);
        let first = lines.iter().fold(3.0, |lines: f32, _| lines + 1.0);
        if self.y + first * self.sizes.step > self.bottom {
            self.next_page()?;
        }
        self.heads(columns);
        for row in parts.rows() {
            match row {
                CardRow::Pass(head) => self.pass(&head, columns)?,
                CardRow::Leg(leg) => self.leg(&leg, columns, cell)?,
            }
        }
        ControlFlow::Continue(())
    }

    fn heads(&mut self, columns: [f32; 3]) {
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        self.y += step;
        let [number, way, crossings] = &self.card.heads;
        self.write(number, text, Weight::Bold, columns[0]);
        self.write(way, text, Weight::Bold, columns[1]);
        let room = self.right() - columns[2];
        let lines = wrapped(crossings, text, Weight::Bold, room);
        for (nth, line) in lines.iter().enumerate() {
            self.y += if nth == 0 { 0.0 } else { step };
            self.write(line, text, Weight::Bold, columns[2]);
        }
        let (y, right) = (self.y + 1.6, self.right());
        let ends = [(margin, y), (right, y)];
        self.page.rule(Role::Label, 0.4, ends[0], ends[1]);
        self.y += 1.6;
    }

    fn pass(&mut self, head: &str, columns: [f32; 3]) -> ControlFlow<()> {
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        let width = self.right() - margin;
        let head = wrapped(head, text, Weight::Bold, width);
        // A heading stays on one page with its first leg.
        let count = head.iter().fold(1.0, |count: f32, _| count + 1.0);
        self.make_room(count * step + 2.0, columns)?;
        self.y += 1.5;
        for line in head {
            self.y += step;
            self.write(&line, text, Weight::Bold, margin);
        }
        ControlFlow::Continue(())
    }

    fn leg(&mut self, leg: &LegLine, columns: [f32; 3], cell: f32) -> ControlFlow<()> {
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        let mut per_line = 1;
        let mut x = columns[2] + 2.0 * cell;
        while x <= self.right() {
            per_line += 1;
            x += cell;
        }
        let mut lines = leg.crossings.chunks(per_line);
        let mut first = true;
        loop {
            let line = lines.next();
            if line.is_none() && !first {
                break;
            }
            self.make_room(step, columns)?;
            self.y += step;
            if first {
                self.write(&leg.number, text, Weight::Regular, columns[0]);
                self.write(&leg.way, text, Weight::Regular, columns[1]);
            }
            let mut x = columns[2];
            for (over, word) in line.unwrap_or_default() {
                self.write(word, text, weight(*over), x);
                x += cell;
            }
            first = false;
        }
        let (y, right) = (self.y + 1.5, self.right());
        let ends = [(margin, y), (right, y)];
        self.page.rule(Role::Edge, 0.12, ends[0], ends[1]);
        ControlFlow::Continue(())
    }

    /// How the knot is lifted, drawn up and finished.
    fn after(&mut self) -> ControlFlow<()> {
        let card = self.card;
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        let width = self.right() - margin;
        for (nth, sentence) in card.after.iter().enumerate() {
            let lines = wrapped(sentence, text, Weight::Regular, width);
            let count = lines.iter().fold(0.0, |count: f32, _| count + 1.0);
            // The heading stays on one page with the first of them.
            let head = if nth == 0 { step + 1.5 } else { 0.0 };
            if self.y + head + count * step > self.bottom {
                self.next_page()?;
            }
            if nth == 0 {
                self.y += head;
                self.write(&card.after_head, text, Weight::Bold, margin);
            }
            self.paragraph(sentence, margin, width);
        }
        ControlFlow::Continue(())
    }

    /// Goes to the next page when less than this is left of the page.
    fn make_room(&mut self, height: f32, columns: [f32; 3]) -> ControlFlow<()> {
        if self.y + height > self.bottom {
            self.next_page()?;
            self.heads(columns);
        }
        ControlFlow::Continue(())
    }

    pub(super) fn next_page(&mut self) -> ControlFlow<()> {
        let margin = self.sizes.margin;
        self.hand_on()?;
        self.bottom = self.page.height - margin;
        self.y = margin + 4.0;
        self.write(&self.card.title, 5.0, Weight::Bold, margin);
        self.y += 1.0;
        ControlFlow::Continue(())
    }
}

/// Over differs from under by its weight too.
const fn weight(over: bool) -> Weight {
    if over { Weight::Bold } else { Weight::Regular }
}
