//! A tie as one of several pieces of the same.

use serde::{Deserialize, Serialize};

use super::{OrderId, TieId};

/// Which piece of a batch a tie is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "BatchSection", into = "BatchSection")]
pub struct Batch {
    series: String,
    number: u16,
    /// How many there are to be, when that is known.
    pub of: Option<u16>,
    /// Whether the tube stands as the piece before left it, once the tyer has said so or not.
    pub tube_stands: Option<bool>,
    /// The order that it is of, if it is of one.
    pub order: Option<OfOrder>,
}

/// Where in an order the pieces of a batch are.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct OfOrder {
    /// What the order is called; may be empty.
    pub name: String,
    /// Knots of the order that come before the first of the batch.
    pub before: u16,
    /// Knots of the order.
    pub knots: u16,
    /// Whether all of them sit on one stick.
    #[serde(default)]
    pub on_stick: bool,
}

impl Batch {
    /// The most pieces of a batch.
    pub const MOST: u16 = 999;

    /// The first of so many pieces of a tie.
    pub fn first(of: u16) -> Self {
        Self {
            series: TieId::draw().to_string(),
            number: 1,
            of: Some(of.clamp(1, Self::MOST)),
            tube_stands: None,
            order: None,
        }
    }

    /// The first piece of a piece of an order.
    pub fn of_order(order: &OrderId, piece: u16, of: u16) -> Self {
        Self {
            series: Self::series_of(order, piece),
            ..Self::first(of)
        }
    }

    /// The batch that the ties of a piece of an order are of.
    pub fn series_of(order: &OrderId, piece: u16) -> String {
        format!("{order}-{piece}")
    }

    /// The piece after this one; after a tie that was none of a batch the second one.
    pub(super) fn after(batch: Option<&Self>, tie: &TieId) -> Self {
        match batch {
            Some(batch) => {
                let number = batch.number.saturating_add(1);
                Self {
                    number,
                    of: batch.of.filter(|of| number <= *of),
                    ..batch.clone()
                }
            }
            None => Self {
                series: tie.to_string(),
                number: 2,
                of: None,
                tube_stands: None,
                order: None,
            },
        }
    }

    /// What all pieces of the batch have in common.
    pub fn series(&self) -> &str {
        &self.series
    }

    /// Which piece it is, from 1.
    pub const fn number(&self) -> u16 {
        self.number
    }

    /// The same as this piece of the batch.
    #[must_use]
    pub(super) fn numbered(self, number: u16) -> Self {
        Self {
            number,
            of: self.of.filter(|of| number <= *of),
            ..self
        }
    }

    /// Which knot of its order it is, from 1; none when it is of no order, or one too many.
    pub fn knot(&self) -> Option<u16> {
        let order = self.order.as_ref().filter(|_| self.of.is_some())?;
        let knot = order.before.saturating_add(self.number);
        (knot <= order.knots).then_some(knot)
    }

    /// Whether another piece is to follow.
    pub fn has_next(&self) -> bool {
        self.of.is_some_and(|of| self.number < of)
    }
}

/// As it stands in a document.
#[derive(Serialize, Deserialize)]
struct BatchSection {
    series: String,
    number: u16,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    of: Option<u16>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tube_stands: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    order: Option<OfOrder>,
}

impl From<Batch> for BatchSection {
    fn from(batch: Batch) -> Self {
        Self {
            series: batch.series,
            number: batch.number,
            of: batch.of,
            tube_stands: batch.tube_stands,
            order: batch.order,
        }
    }
}

impl TryFrom<BatchSection> for Batch {
    type Error = String;

    fn try_from(section: BatchSection) -> Result<Self, String> {
        let is_name = |one: char| one.is_ascii_lowercase() || one.is_ascii_digit() || one == '-';
        let series = section.series;
        if !(1..=40).contains(&series.len()) || !series.chars().all(is_name) {
            return Err(format!("{series:?} is no batch"));
        }
        if section.number == 0 || section.of.is_some_and(|of| !(1..=Self::MOST).contains(&of)) {
            return Err(format!("piece {} of {:?}", section.number, section.of));
        }
        Ok(Self {
            series,
            number: section.number,
            of: section.of,
            tube_stands: section.tube_stands,
            order: section.order,
        })
    }
}
