//! How much is made at most.

use super::class::Pupils;
use super::error::{PaperError, TooLong};
use super::pages::{board_sheet, rows_apart};
use crate::bench::{Layout, Tube};
use crate::guide::Plan;
use crate::picture::sheet::{Paper, StripSheet};

/// Crossings on a card: a few hundred pages.
const CARD: u32 = 150_000;
/// Pages of a strip.
const STRIP: u32 = 100;
/// Crossings times passes in a reel: half an hour of looking. It shows no fewer, since every pass meets
/// every crossing that it lays, and a later pass most of them twice.
const REEL: u32 = 3_000;

/// Whether a card of this plan is not too long.
///
/// # Errors
/// [`PaperError::Long`] when it is.
pub fn check_card(plan: &Plan) -> Result<(), PaperError> {
    hold(printed(plan), TooLong::Card, CARD)
}

/// Whether the cards of a class are not too long, all of them together.
///
/// # Errors
/// [`PaperError::Long`] when they are.
pub fn check_class(plan: &Plan, pupils: &Pupils) -> Result<(), PaperError> {
    hold(printed(plan) * pupils.count() as u64, TooLong::Class, CARD)
}

/// Crossings that a card of this plan prints.
fn printed(plan: &Plan) -> u64 {
    let passes = u64::from(plan.laying().passes());
    u64::from(plan.knot().crossings()) * passes * passes
}

/// Whether the strips for a tube that is pinned like this are not too long.
///
/// # Errors
/// [`PaperError::Long`] when they are.
pub fn check_strip(
    plan: &Plan,
    tube: &Tube,
    layout: &Layout,
    paper: Paper,
) -> Result<(), PaperError> {
    let pages = match board_sheet(plan, layout) {
        Some(board) => board.count(paper),
        None => StripSheet::new(tube, layout, rows_apart(plan), plan.hand).count(paper),
    };
    hold(pages as u64, TooLong::Strip, STRIP)
}

/// Whether a reel of this plan is not too long.
pub(super) fn check_reel(plan: &Plan) -> Result<(), PaperError> {
    let crossings = plan.knot().crossings() * u32::from(plan.laying().passes());
    hold(crossings.into(), TooLong::Reel, REEL)
}

fn hold(count: u64, what: TooLong, most: u32) -> Result<(), PaperError> {
    if count > u64::from(most) {
        return Err(PaperError::Long { what, most });
    }
    Ok(())
}
