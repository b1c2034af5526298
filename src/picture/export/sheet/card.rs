//! The card: a knot, its facts and every leg of it, for an evening without a computer.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::picture::draw::{self, Role, Weight};
use crate::picture::scene::{Scene, Subject, View, Viewport};

/// The texts of a card.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Card {
    /// The knot, in large letters at the top.
    pub title: String,
    /// What it comes to, how it is worked, where the pins go: sentences.
    pub facts: Vec<String>,
    /// The heads of the three columns: leg, way, crossings.
    pub heads: [String; 3],
    /// The table, pass by pass.
    pub sections: Vec<CardSection>,
    /// The words over the ends.
    pub ends_head: String,
    /// Where each end is tucked away, and what it looks like.
    pub ends: Vec<CardEnd>,
    /// The words over the cautions.
    pub cautions_head: String,
    /// What the tyer must mind.
    pub cautions: Vec<String>,
}

/// A pass of a strand.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CardSection {
    /// Which, and how it runs.
    pub head: String,
    /// Its legs in the order in which they are laid.
    pub legs: Vec<LegLine>,
}

/// An end that is tucked away.
#[derive(Clone, Debug, PartialEq)]
pub struct CardEnd {
    /// Where it goes, and where it is cut: sentences.
    pub text: String,
    /// The end on its way.
    pub subject: Subject,
}

/// A leg in the table.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LegLine {
    /// Which leg of its strand it is.
    pub number: String,
    /// From which pin to which.
    pub way: String,
    /// Its crossings in the order they are met: whether over, and the word.
    pub crossings: Vec<(bool, String)>,
}

/// Room left on every side.
const MARGIN: f32 = 15.0;
/// Size of running text, and from one line to the next.
const TEXT: f32 = 3.7;
const STEP: f32 = 5.2;
/// Size of the text of cautions, and from one line to the next.
const SMALL: f32 = 3.2;
const SMALL_STEP: f32 = 4.4;
/// Where the second column begins.
const WAY: f32 = MARGIN + 14.0;
/// Height of the picture, and pixels of its scene in a millimetre.
const PICTURE: f32 = 48.0;
const SCALE: f32 = 6.0;
/// Height and width of the picture of an end.
const END: [f32; 2] = [38.0, 78.0];

impl Card {
    /// The pages. `scene` is asked for in the size that is there for it; `foot` gives the line
    /// at the foot of a page from its number and how many there are.
    pub fn pages(
        &self,
        paper: Paper,
        scene: impl FnOnce(Viewport) -> Scene,
        foot: impl Fn(usize, usize) -> String,
    ) -> Vec<SheetPage> {
        let mut flow = CardFlow::new(paper);
        flow.first(self, scene);
        flow.table(self);
        flow.ends(self);
        let count = flow.pages.len();
        for (nth, page) in flow.pages.iter_mut().enumerate() {
            let at = (page.width - MARGIN, page.height - MARGIN + 5.0);
            page.write(
                &foot(nth + 1, count),
                SMALL,
                Weight::Regular,
                Anchor::End,
                at,
            );
        }
        flow.pages
    }
}

/// Fills page after page.
struct CardFlow {
    paper: Paper,
    pages: Vec<SheetPage>,
    y: f32,
    bottom: f32,
}

impl CardFlow {
    fn new(paper: Paper) -> Self {
        let page = SheetPage::new(paper, false);
        let bottom = page.height - MARGIN;
        Self {
            paper,
            pages: vec![page],
            y: MARGIN,
            bottom,
        }
    }

    fn right(&self) -> f32 {
        self.paper.size().0 - MARGIN
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

    /// Everything of the first page but the table.
    fn first(&mut self, card: &Card, scene: impl FnOnce(Viewport) -> Scene) {
        let width = self.right() - MARGIN;
        let corner = (MARGIN, MARGIN + 12.0);
        let picture = scene(Viewport::new(width * SCALE, PICTURE * SCALE));
        self.page().picture(&picture, corner, width);
        self.y = MARGIN + 7.0;
        self.write(&card.title, 8.0, Weight::Bold, MARGIN);
        self.y = corner.1 + PICTURE + 2.0;
        for fact in &card.facts {
            for line in wrapped(fact, TEXT, Weight::Regular, width) {
                self.y += STEP;
                self.write(&line, TEXT, Weight::Regular, MARGIN);
            }
        }
        let cautions: Vec<String> = card
            .cautions
            .iter()
            .flat_map(|caution| wrapped(caution, SMALL, Weight::Regular, width - 6.0))
            .collect();
        self.cautions(&card.cautions_head, &cautions);
        self.y += 3.0;
    }

    /// A frame at the foot of the page, and less room for the table.
    fn cautions(&mut self, head: &str, lines: &[String]) {
        let count = lines.iter().fold(1.0, |count: f32, _| count + 1.0);
        let (left, right, low) = (MARGIN, self.right(), self.bottom - 2.0);
        let high = low - count * SMALL_STEP - 5.0;
        let corners = [(left, high), (right, high), (right, low), (left, low)];
        for nth in 0..4 {
            self.page()
                .rule(Role::Label, 0.4, corners[nth], corners[(nth + 1) % 4]);
        }
        let mut at = (left + 3.0, high + SMALL_STEP + 1.0);
        self.page()
            .write(head, SMALL, Weight::Bold, Anchor::Start, at);
        for line in lines {
            at.1 += SMALL_STEP;
            self.page()
                .write(line, SMALL, Weight::Regular, Anchor::Start, at);
        }
        self.bottom = high - 3.0;
    }

    fn table(&mut self, card: &Card) {
        let ways = card.sections.iter().flat_map(|section| &section.legs);
        let widest = ways
            .map(|leg| draw::width(&leg.way, TEXT, Weight::Regular))
            .fold(draw::width(&card.heads[1], TEXT, Weight::Bold), f32::max);
        let crossings = WAY + widest + 6.0;
        let cell = card
            .sections
            .iter()
            .flat_map(|section| &section.legs)
            .flat_map(|leg| &leg.crossings)
            .map(|(over, word)| draw::width(word, TEXT, weight(*over)))
            .fold(8.0, f32::max)
            + 3.0;
        let columns = [MARGIN, WAY, crossings];
        self.heads(&card.heads, columns);
        for section in &card.sections {
            self.section(section, card, columns, cell);
        }
    }

    fn heads(&mut self, heads: &[String; 3], columns: [f32; 3]) {
        self.y += STEP;
        for (head, x) in heads.iter().zip(columns) {
            self.write(head, TEXT, Weight::Bold, x);
        }
        let (y, right) = (self.y + 1.6, self.right());
        let ends = [(MARGIN, y), (right, y)];
        self.page().rule(Role::Label, 0.4, ends[0], ends[1]);
        self.y += 1.6;
    }

    fn section(&mut self, section: &CardSection, card: &Card, columns: [f32; 3], cell: f32) {
        let width = self.right() - MARGIN;
        let head = wrapped(&section.head, TEXT, Weight::Bold, width);
        // A head stays with its first leg.
        let count = head.iter().fold(1.0, |count: f32, _| count + 1.0);
        self.make_room(count * STEP + 2.0, card, columns);
        self.y += 1.5;
        for line in head {
            self.y += STEP;
            self.write(&line, TEXT, Weight::Bold, MARGIN);
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
                self.make_room(STEP, card, columns);
                self.y += STEP;
                if first {
                    self.write(&leg.number, TEXT, Weight::Regular, columns[0]);
                    self.write(&leg.way, TEXT, Weight::Regular, columns[1]);
                }
                let mut x = columns[2];
                for (over, word) in line.unwrap_or_default() {
                    self.write(word, TEXT, weight(*over), x);
                    x += cell;
                }
                first = false;
            }
            let (y, right) = (self.y + 1.5, self.right());
            let ends = [(MARGIN, y), (right, y)];
            self.page().rule(Role::Edge, 0.12, ends[0], ends[1]);
        }
    }

    /// Every end: its sentences, and its picture beside them.
    fn ends(&mut self, card: &Card) {
        let [height, width] = END;
        let left = self.right() - width;
        for (nth, end) in card.ends.iter().enumerate() {
            // The head stays with the first.
            let head = if nth == 0 { STEP + 3.0 } else { 0.0 };
            if self.y + head + height > self.bottom {
                self.next_page(card);
            }
            if nth == 0 {
                self.y += STEP + 3.0;
                self.write(&card.ends_head, TEXT, Weight::Bold, MARGIN);
            }
            let corner = (left, self.y);
            let scene = end.subject.scene(
                View::RolledOut,
                Viewport::new(width * SCALE, height * SCALE),
            );
            // Of a knot too large for it, the words alone are left.
            if !scene.is_zoomed() {
                self.page().inset(&scene, corner, width);
            }
            for line in wrapped(&end.text, TEXT, Weight::Regular, left - MARGIN - 6.0) {
                self.y += STEP;
                self.write(&line, TEXT, Weight::Regular, MARGIN);
            }
            self.y = corner.1 + height;
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
        self.bottom = page.height - MARGIN;
        self.pages.push(page);
        self.y = MARGIN + 4.0;
        self.write(&card.title, 5.0, Weight::Bold, MARGIN);
        self.y += 1.0;
    }
}

/// Over differs from under by its weight too.
const fn weight(over: bool) -> Weight {
    if over { Weight::Bold } else { Weight::Regular }
}
