//! Several of the same, and knots of an order, from the command line.

use super::TieOptions;
use crate::cli::complaint::Complaint;
use crate::cli::error_lines::ErrorLines;
use crate::cli::order;
use crate::session::{NextOfOrder, next_knot, tied, unfinished_piece};
use crate::shelf::{Batch, Orders, Shelf, ShelfError, Tie, TieId};
use crate::words::Words;

/// The tie that was asked for.
pub(super) enum Wanted {
    /// A new one.
    Begin(Box<Tie>),
    /// One that waits.
    TakeUp(TieId),
}

/// How many of the knot were asked for.
pub(super) fn asked_for(asked: &TieOptions, words: &Words) -> Result<Option<Batch>, Complaint> {
    if asked.piece.is_some() {
        return Err(Complaint::input(words.plainly("batch-piece-what", &[])));
    }
    let Some(given) = &asked.pieces else {
        return Ok(None);
    };
    if !asked.names_knot() {
        return Err(Complaint::input(words.plainly("batch-pieces-what", &[])));
    }
    let pieces = given.trim().parse().ok();
    pieces
        .filter(|pieces| (2..=Batch::MOST).contains(pieces))
        .map(|pieces| Some(Batch::first(pieces)))
        .ok_or_else(|| Complaint::input(words.pieces_unreadable(given)))
}

/// The next knot of the order that was named, if one was.
pub(super) fn from_order(
    asked: &TieOptions,
    opened: &Result<Shelf, ShelfError>,
    words: &Words,
) -> Result<Option<Wanted>, Complaint> {
    let Some(name) = &asked.from_order else {
        return Ok(None);
    };
    if asked.names_knot() || asked.pieces.is_some() || asked.lesson.is_some() {
        return Err(Complaint::input(words.plainly("batch-order-or-knot", &[])));
    }
    let failed = |error: &ShelfError| order::complaint(error, words);
    let shelf = opened.as_ref().map_err(failed)?;
    let id = order::id(name, words)?;
    let mut errors = ErrorLines::new(words);
    let kept = Orders::beside(shelf).look(&id);
    let kept = kept.map_err(|error| failed(&error))?.hand_on(&mut errors);
    let answer = order::answer(&kept.order, crate::bench::Prices::default(), words)?;
    let ties = shelf.list().map_err(|error| failed(&error))?;
    let ties = ties.hand_on(&mut errors);
    let piece = if let Some(given) = &asked.piece {
        let number = given.trim().parse::<u16>().ok();
        let mut pieces = answer.pieces.iter();
        pieces.find(|one| Some(one.piece.number) == number)
    } else {
        let pieces = answer.pieces.iter();
        let tied: Vec<u16> = pieces.map(|one| tied(&ties, &id, &one.piece)).collect();
        unfinished_piece(&answer.pieces, &tied)
    };
    let given = asked.piece.as_deref().unwrap_or_default();
    let none = || Complaint::input(words.order_piece_none(given, &kept.order));
    let piece = &piece.ok_or_else(none)?.piece;
    match next_knot(&ties, &kept, &answer, piece.number).ok_or_else(none)? {
        NextOfOrder::TakeUp(id) => Ok(Some(Wanted::TakeUp(id))),
        NextOfOrder::Begin(tie) => Ok(Some(Wanted::Begin(tie))),
        NextOfOrder::AllTied => Err(Complaint::input(words.all_tied(piece.number, piece.count))),
    }
}
