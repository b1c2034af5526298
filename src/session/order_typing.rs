//! How long the texts are that are typed into the book of orders.

use crate::guide::OrderEntry;
use crate::shelf::{LONGEST_NAME, cut_to, longest_said};

/// A text cut to what may be said there: a line of any length would have the window wait.
pub(super) fn within(entry: OrderEntry, mut text: String) -> String {
    let most = match entry {
        OrderEntry::Of(_) => LONGEST_NAME,
        OrderEntry::Piece(_, field) => longest_said(field),
    };
    cut_to(&mut text, most);
    text
}
