//! A card on paper.

use std::ops::ControlFlow;

use super::card::{Card, CardParts};
use super::card_flow::{CardFlow, Columns};
use super::card_sizes::{CLOSE, LARGE, REGULAR, Sizes};
use super::page::Paper;
use super::pages::{PageTaker, Sheet};

/// A card on paper, laid out page by page.
pub struct CardSheet<P> {
    card: Card,
    parts: P,
    paper: Paper,
    sizes: Sizes,
    columns: Columns,
    count: usize,
}

impl<P: CardParts> CardSheet<P> {
    /// On as few pages as there can be, and as large as goes with that.
    pub fn new(card: Card, parts: P, paper: Paper) -> Self {
        let regular = Self::in_sizes(card, parts, paper, REGULAR);
        if regular.count < 2 {
            return regular;
        }
        let close = regular.counted(CLOSE);
        if close < regular.count {
            return Self {
                sizes: CLOSE,
                count: close,
                ..regular
            };
        }
        regular
    }

    /// In large type, on as many pages as that takes.
    pub fn large(card: Card, parts: P, paper: Paper) -> Self {
        Self::in_sizes(card, parts, paper, LARGE)
    }

    fn in_sizes(card: Card, parts: P, paper: Paper, sizes: Sizes) -> Self {
        let columns = Columns::of(&parts);
        let mut sheet = Self {
            card,
            parts,
            paper,
            sizes,
            columns,
            count: 0,
        };
        sheet.count = sheet.counted(sizes);
        sheet
    }

    /// How many pages it takes in these sizes. Each is laid out for it and forgotten: how many there are
    /// stands on every one, and where a page ends depends on all that stands on it.
    fn counted(&self, sizes: Sizes) -> usize {
        let mut count = 0;
        let counting = self.flow(sizes, 0, &mut |_| {
            count += 1;
            ControlFlow::Continue(())
        });
        debug_assert!(counting.is_continue());
        count
    }

    fn flow(&self, sizes: Sizes, count: usize, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        let told = (&self.card, &self.parts);
        let mut flow = CardFlow::new(told, (self.paper, sizes), self.columns, count, take);
        flow.before_ends()?;
        flow.ends()?;
        flow.hand_on()
    }
}

impl<P: CardParts> Sheet for CardSheet<P> {
    fn count(&self) -> usize {
        self.count
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        self.flow(self.sizes, self.count, take)
    }
}
