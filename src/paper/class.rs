//! A class: one card for each pupil, in large type.

use std::ops::ControlFlow;

use super::card::{PlanParts, large_card};
use crate::bench::{Layout, Tube};
use crate::guide::{Labour, Plan};
use crate::picture::sheet::{CardSheet, PageTaker, Paper, Sheet};
use crate::words::{Words, shown_name};

/// Who gets a card of a class.
///
/// ```
/// use marlinspeak::paper::Pupils;
///
/// assert_eq!(Pupils::Count(12).count(), 12);
/// assert_eq!(Pupils::Named(vec!["Ada".to_owned(), "Ben".to_owned()]).count(), 2);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pupils {
    /// So many, each with a number on every page of the card.
    Count(u16),
    /// These, each with the name on every page of the card.
    Named(Vec<String>),
}

impl Pupils {
    /// The most cards that are made at once.
    pub const MOST: u16 = 99;

    /// How many there are.
    pub fn count(&self) -> usize {
        match self {
            Self::Count(count) => usize::from(*count),
            Self::Named(names) => names.len(),
        }
    }

    /// What stands on the pages of each card.
    fn signs(&self) -> Vec<String> {
        match self {
            Self::Count(count) => (1..=*count).map(|number| number.to_string()).collect(),
            Self::Named(names) => names.iter().map(|name| shown_name(name)).collect(),
        }
    }
}

/// The cards of a class, one behind the other, each begun on a page of its own.
pub struct ClassSheet {
    card: CardSheet<PlanParts>,
    signs: Vec<String>,
}

/// The cards of a class for these pupils.
pub fn class(
    plan: &Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    pupils: &Pupils,
    paper: Paper,
    words: &Words,
) -> ClassSheet {
    ClassSheet {
        card: large_card(plan, pinned, labour, paper, words),
        signs: pupils.signs(),
    }
}

impl Sheet for ClassSheet {
    fn count(&self) -> usize {
        self.card.count() * self.signs.len()
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        for sign in &self.signs {
            self.card.lay_out(&mut |page| take(page.signed(sign)))?;
        }
        ControlFlow::Continue(())
    }
}
