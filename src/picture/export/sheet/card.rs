//! The card: a knot, its facts and every leg of it, for an evening without a computer.

use crate::picture::scene::Subject;

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
    /// The words over what comes when all is laid.
    pub after_head: String,
    /// How the knot is lifted, drawn up and finished: sentences.
    pub after: Vec<String>,
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
