//! The card: a knot, its facts and every leg of it, for an evening without a computer.

use crate::picture::scene::{Scene, Subject, Viewport};

/// The texts of a card, but for those of which there may be any number: those are [`CardParts`].
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Card {
    /// The knot, in large letters at the top.
    pub title: String,
    /// What it comes to, how it is worked, where the pins go: sentences.
    pub facts: Vec<String>,
    /// The heads of the three columns: leg, way, crossings.
    pub heads: [String; 3],
    /// The words over what comes when all is laid.
    pub after_head: String,
    /// How the knot is lifted, drawn up and finished: sentences.
    pub after: Vec<String>,
    /// The words over the ends.
    pub ends_head: String,
    /// The words over the cautions.
    pub cautions_head: String,
    /// What the tyer must mind.
    pub cautions: Vec<String>,
}

/// What a card tells of legs and ends, one after the other and anew each time that it is asked for: all
/// legs of a large knot would be more than the page in hand.
pub trait CardParts {
    /// The table, row by row.
    fn rows(&self) -> Box<dyn Iterator<Item = CardRow> + '_>;

    /// Where each end is tucked away, and what it looks like.
    fn ends(&self) -> Box<dyn Iterator<Item = CardEnd> + '_>;

    /// The picture of the knot, in the size that is there for it.
    fn scene(&self, frame: Viewport) -> Scene;

    /// The line at the foot of a page, from its number and how many there are.
    fn foot(&self, page: usize, pages: usize) -> String;
}

/// A row of the table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CardRow {
    /// A pass of a strand begins: which, and how it runs.
    Pass(String),
    /// A leg, in the order in which legs are laid.
    Leg(LegLine),
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
