//! A card, page after page.

mod ends;

use super::card::{Card, CardSection};
use super::card_sizes::{CLOSE, LARGE, REGULAR, Sizes};
use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::picture::draw::{self, Role, Weight};
use crate::picture::scene::{Scene, Viewport};

/// Pixels of a scene in a millimetre.
const SCALE: f32 = 6.0;

impl Card {
    /// The pages: as few as there can be, and as large as goes with that. `scene` is asked for in the
    /// size that is there for it; `foot` gives the line at the foot of a page from its number and how
    /// many there are.
    pub fn pages(
        &self,
        paper: Paper,
        scene: impl Fn(Viewport) -> Scene,
        foot: impl Fn(usize, usize) -> String,
    ) -> Vec<SheetPage> {
        let mut flow = CardFlow::filled(self, paper, REGULAR, &scene);
        if flow.pages.len() > 1 {
            let close = CardFlow::filled(self, paper, CLOSE, &scene);
            if close.pages.len() < flow.pages.len() {
                flow = close;
            }
        }
        flow.footed(foot)
    }

    /// The same in large type, on as many pages as that takes.
    pub fn large_pages(
        &self,
        paper: Paper,
        scene: impl Fn(Viewport) -> Scene,
        foot: impl Fn(usize, usize) -> String,
    ) -> Vec<SheetPage> {
        CardFlow::filled(self, paper, LARGE, &scene).footed(foot)
    }
}

/// Fills page after page.
struct CardFlow {
    paper: Paper,
    sizes: Sizes,
    pages: Vec<SheetPage>,
    y: f32,
    bottom: f32,
}

impl CardFlow {
    /// The pages of a card in these sizes.
    fn filled(card: &Card, paper: Paper, sizes: Sizes, scene: &impl Fn(Viewport) -> Scene) -> Self {
        let page = SheetPage::new(paper, false);
        let mut flow = Self {
            paper,
            sizes,
            bottom: page.height - sizes.margin,
            pages: vec![page],
            y: sizes.margin,
        };
        flow.first(card, scene);
        flow.table(card);
        flow.after(card);
        flow.ends(card);
        flow
    }

    /// The pages, each with its line at the foot.
    fn footed(mut self, foot: impl Fn(usize, usize) -> String) -> Vec<SheetPage> {
        let (count, sizes) = (self.pages.len(), self.sizes);
        for (nth, page) in self.pages.iter_mut().enumerate() {
            let at = (page.width - sizes.margin, page.height - sizes.margin + 4.0);
            page.write(
                &foot(nth + 1, count),
                sizes.small,
                Weight::Regular,
                Anchor::End,
                at,
            );
        }
        self.pages
    }

    fn right(&self) -> f32 {
        self.paper.size().0 - self.sizes.margin
    }

    fn page(&mut self) -> &mut SheetPage {
        if self.pages.is_empty() {
            self.pages.push(SheetPage::new(self.paper, false));
        }
        let last = self.pages.len() - 1;
        &mut self.pages[last]
    }

    fn write(&mut self, text: &str, size: f32, weight: Weight, x: f32) {
        let at = (x, self.y);
        self.page().write(text, size, weight, Anchor::Start, at);
    }

    /// A paragraph of running text at this place, so wide.
    fn paragraph(&mut self, text: &str, x: f32, width: f32) {
        let Sizes {
            text: size, step, ..
        } = self.sizes;
        for line in wrapped(text, size, Weight::Regular, width) {
            self.y += step;
            self.write(&line, size, Weight::Regular, x);
        }
    }

    /// Everything of the first page but the table: the knot, and its facts beside it.
    fn first(&mut self, card: &Card, scene: &impl Fn(Viewport) -> Scene) {
        let Sizes {
            margin,
            small,
            picture: [height, width],
            ..
        } = self.sizes;
        let corner = (margin, margin + 11.0);
        let picture = scene(Viewport::new(width * SCALE, height * SCALE));
        self.page().picture(&picture, corner, width);
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
        self.facts(card, [margin + width + 6.0, corner.1 + height]);
    }

    /// The facts, from `left` on beside the picture, which ends at `low`. Where they would run into the
    /// cautions, those that do not stand beside it go below it, or to the next page.
    fn facts(&mut self, card: &Card, [left, low]: [f32; 2]) {
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
            if self.pages.len() == 1 {
                self.y = self.y.max(low);
            }
            if self.y + high(fact, below) > self.bottom {
                self.next_page(card);
            }
            self.paragraph(fact, margin, below);
        }
        if self.pages.len() == 1 {
            self.y = self.y.max(low);
        }
        self.y += 1.0;
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
            self.page()
                .rule(Role::Label, 0.4, corners[nth], corners[(nth + 1) % 4]);
        }
        let mut at = (left + 3.0, high + small_step);
        self.page()
            .write(head, small, Weight::Bold, Anchor::Start, at);
        for line in lines {
            at.1 += small_step;
            self.page()
                .write(line, small, Weight::Regular, Anchor::Start, at);
        }
        self.bottom = high - 3.0;
    }

    fn table(&mut self, card: &Card) {
        let Sizes {
            margin,
            numbers,
            text,
            ..
        } = self.sizes;
        let way = margin + numbers;
        let ways = card.sections.iter().flat_map(|section| &section.legs);
        let widest = ways
            .map(|leg| draw::width(&leg.way, text, Weight::Regular))
            .fold(draw::width(&card.heads[1], text, Weight::Bold), f32::max);
        let crossings = way + widest + 6.0;
        let cell = card
            .sections
            .iter()
            .flat_map(|section| &section.legs)
            .flat_map(|leg| &leg.crossings)
            .map(|(over, word)| draw::width(word, text, weight(*over)))
            .fold(8.0, f32::max)
            + 3.0;
        let columns = [margin, way, crossings];
        // The heads stay on one page with the first pass and its first leg.
        let heads = wrapped(&card.heads[2], text, Weight::Bold, self.right() - crossings);
        let first = heads.iter().fold(3.0, |lines: f32, _| lines + 1.0);
        if self.y + first * self.sizes.step > self.bottom {
            self.next_page(card);
        }
        self.heads(&card.heads, columns);
        for section in &card.sections {
            self.section(section, card, columns, cell);
        }
    }

    fn heads(&mut self, heads: &[String; 3], columns: [f32; 3]) {
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        self.y += step;
        let [number, way, crossings] = heads;
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
        self.page().rule(Role::Label, 0.4, ends[0], ends[1]);
        self.y += 1.6;
    }

    fn section(&mut self, section: &CardSection, card: &Card, columns: [f32; 3], cell: f32) {
        let Sizes {
            margin, text, step, ..
        } = self.sizes;
        let width = self.right() - margin;
        let head = wrapped(&section.head, text, Weight::Bold, width);
        // A heading stays on one page with its first leg.
        let count = head.iter().fold(1.0, |count: f32, _| count + 1.0);
        self.make_room(count * step + 2.0, card, columns);
        self.y += 1.5;
        for line in head {
            self.y += step;
            self.write(&line, text, Weight::Bold, margin);
        }
        let mut per_line = 1;
        let mut x = columns[2] + 2.0 * cell;
        while x <= self.right() {
            per_line += 1;
            x += cell;
        }
        for leg in &section.legs {
            let mut lines = leg.crossings.chunks(per_line);
            let mut first = true;
            loop {
                let line = lines.next();
                if line.is_none() && !first {
                    break;
                }
                self.make_room(step, card, columns);
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
            self.page().rule(Role::Edge, 0.12, ends[0], ends[1]);
        }
    }

    /// How the knot is lifted, drawn up and finished.
    fn after(&mut self, card: &Card) {
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
                self.next_page(card);
            }
            if nth == 0 {
                self.y += head;
                self.write(&card.after_head, text, Weight::Bold, margin);
            }
            self.paragraph(sentence, margin, width);
        }
    }

    /// Goes to the next page when less than this is left of the page.
    fn make_room(&mut self, height: f32, card: &Card, columns: [f32; 3]) {
        if self.y + height <= self.bottom {
            return;
        }
        self.next_page(card);
        self.heads(&card.heads, columns);
    }

    fn next_page(&mut self, card: &Card) {
        let page = SheetPage::new(self.paper, false);
        let margin = self.sizes.margin;
        self.bottom = page.height - margin;
        self.pages.push(page);
        self.y = margin + 4.0;
        self.write(&card.title, 5.0, Weight::Bold, margin);
        self.y += 1.0;
    }
}

/// Over differs from under by its weight too.
const fn weight(over: bool) -> Weight {
    if over { Weight::Bold } else { Weight::Regular }
}
