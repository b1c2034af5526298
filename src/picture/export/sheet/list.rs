//! A list: headings with lines below them, page after page.

use std::ops::ControlFlow;

use super::page::{Anchor, Paper, SheetPage, wrapped};
use super::pages::{PageTaker, Sheet};
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

/// A list on paper, laid out page by page.
pub struct ListPages<F> {
    list: ListSheet,
    paper: Paper,
    foot: F,
    count: usize,
}

impl ListSheet {
    /// The list on this paper; `foot` gives the line at the foot of a page from its number and how many
    /// there are.
    pub fn on<F: Fn(usize, usize) -> String>(self, paper: Paper, foot: F) -> ListPages<F> {
        let mut pages = ListPages {
            list: self,
            paper,
            foot,
            count: 0,
        };
        let mut count = 0;
        // Laid out and forgotten: how many there are stands on every page.
        let counting = pages.lay_out(&mut |_| {
            count += 1;
            ControlFlow::Continue(())
        });
        debug_assert!(counting.is_continue());
        pages.count = count;
        pages
    }
}

impl<F: Fn(usize, usize) -> String> Sheet for ListPages<F> {
    fn count(&self) -> usize {
        self.count
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        let (mut number, count) = (0, self.count);
        let mut flow = ListFlow {
            paper: self.paper,
            page: SheetPage::new(self.paper, false),
            y: MARGIN,
            take: &mut |mut page| {
                number += 1;
                let at = (page.width - MARGIN, page.height - MARGIN + 6.0);
                let foot = (self.foot)(number, count);
                page.write(&foot, 3.2, Weight::Regular, Anchor::End, at);
                take(page)
            },
        };
        let width = flow.right() - MARGIN;
        for line in wrapped(&self.list.title, 8.0, Weight::Bold, width) {
            flow.line(&line, 8.0, Weight::Bold, MARGIN, 10.0);
        }
        for part in &self.list.parts {
            flow.part(part)?;
        }
        flow.next_page()
    }
}

/// Fills page after page, and hands each on before the next is begun.
struct ListFlow<'t> {
    paper: Paper,
    page: SheetPage,
    y: f32,
    take: &'t mut PageTaker<'t>,
}

impl ListFlow<'_> {
    fn right(&self) -> f32 {
        self.paper.size().0 - MARGIN
    }

    fn next_page(&mut self) -> ControlFlow<()> {
        self.y = MARGIN;
        let blank = SheetPage::new(self.paper, false);
        (self.take)(std::mem::replace(&mut self.page, blank))
    }

    /// Goes to the next page when less than this is left of the page.
    fn make_room(&mut self, height: f32) -> ControlFlow<()> {
        if self.y + height > self.paper.size().1 - MARGIN {
            self.next_page()?;
        }
        ControlFlow::Continue(())
    }

    fn line(&mut self, text: &str, size: f32, weight: Weight, x: f32, step: f32) {
        self.y += step;
        let at = (x, self.y);
        self.page.write(text, size, weight, Anchor::Start, at);
    }

    fn part(&mut self, part: &ListPart) -> ControlFlow<()> {
        let width = self.right() - MARGIN;
        let head = wrapped(&part.head, HEAD, Weight::Bold, width);
        // A heading stays on one page with its first line.
        let count = head.iter().fold(2.0, |count: f32, _| count + 1.0);
        self.make_room(count * STEP + 3.0)?;
        self.y += 3.0;
        for line in head {
            self.line(&line, HEAD, Weight::Bold, MARGIN, STEP);
        }
        for (is_ticked, text) in &part.lines {
            let lines = wrapped(text, TEXT, Weight::Regular, width - INSET);
            let count = lines.iter().fold(0.0, |count: f32, _| count + 1.0);
            self.make_room(count * STEP)?;
            if *is_ticked {
                let (left, low) = (MARGIN, self.y + STEP + 0.3);
                self.page.square((left, low - BOX), BOX);
            }
            for line in lines {
                self.line(&line, TEXT, Weight::Regular, MARGIN + INSET, STEP);
            }
        }
        ControlFlow::Continue(())
    }
}
