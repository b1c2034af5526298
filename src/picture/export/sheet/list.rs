//! A list: headings with lines below them, page after page.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::picture::draw::Weight;

/// Room left on every side, in millimetres.
const MARGIN: f32 = 18.0;
/// Size of the lines, and from one to the next, in millimetres: for reading in a shop and at the bench.
const TEXT: f32 = 4.4;
const STEP: f32 = 6.2;
/// Size of the headings.
const HEAD: f32 = 5.0;
/// Side of the box that is ticked.
const BOX: f32 = 3.6;
/// Where the text of a line begins behind its box.
const INSET: f32 = 7.0;

/// The texts of a list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ListSheet {
    /// In large letters at the top.
    pub title: String,
    /// The parts of it.
    pub parts: Vec<ListPart>,
}

/// A part of a list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ListPart {
    /// What stands over it.
    pub head: String,
    /// Its lines, each whether it is ticked off when it is done or bought.
    pub lines: Vec<(bool, String)>,
}

impl ListSheet {
    /// The pages; `foot` gives the line at the foot of a page from its number and how many there are.
    pub fn pages(&self, paper: Paper, foot: impl Fn(usize, usize) -> String) -> Vec<SheetPage> {
        let mut flow = ListFlow {
            paper,
            pages: vec![SheetPage::new(paper, false)],
            y: MARGIN,
        };
        let width = flow.right() - MARGIN;
        for line in wrapped(&self.title, 8.0, Weight::Bold, width) {
            flow.line(&line, 8.0, Weight::Bold, MARGIN, 10.0);
        }
        for part in &self.parts {
            flow.part(part);
        }
        let count = flow.pages.len();
        for (nth, page) in flow.pages.iter_mut().enumerate() {
            let at = (page.width - MARGIN, page.height - MARGIN + 6.0);
            page.write(&foot(nth + 1, count), 3.2, Weight::Regular, Anchor::End, at);
        }
        flow.pages
    }
}

/// Fills page after page.
struct ListFlow {
    paper: Paper,
    pages: Vec<SheetPage>,
    y: f32,
}

impl ListFlow {
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

    /// Goes to the next page when less than this is left of the page.
    fn make_room(&mut self, height: f32) {
        if self.y + height > self.paper.size().1 - MARGIN {
            self.pages.push(SheetPage::new(self.paper, false));
            self.y = MARGIN;
        }
    }

    fn line(&mut self, text: &str, size: f32, weight: Weight, x: f32, step: f32) {
        self.y += step;
        let at = (x, self.y);
        self.page().write(text, size, weight, Anchor::Start, at);
    }

    fn part(&mut self, part: &ListPart) {
        let width = self.right() - MARGIN;
        let head = wrapped(&part.head, HEAD, Weight::Bold, width);
        // A heading stays on one page with its first line.
        let count = head.iter().fold(2.0, |count: f32, _| count + 1.0);
        self.make_room(count * STEP + 3.0);
        self.y += 3.0;
        for line in head {
            self.line(&line, HEAD, Weight::Bold, MARGIN, STEP);
        }
        for (is_ticked, text) in &part.lines {
            let lines = wrapped(text, TEXT, Weight::Regular, width - INSET);
            let count = lines.iter().fold(0.0, |count: f32, _| count + 1.0);
            self.make_room(count * STEP);
            if *is_ticked {
                let (left, low) = (MARGIN, self.y + STEP + 0.3);
                self.page().square((left, low - BOX), BOX);
            }
            for line in lines {
                self.line(&line, TEXT, Weight::Regular, MARGIN + INSET, STEP);
            }
        }
    }
}
