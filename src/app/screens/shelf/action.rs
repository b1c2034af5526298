//! What a press on the shelf comes to.

use crate::app::jobs::Job;
use crate::shelf::{Tie, TieId};
use crate::words::Spoken;

/// What a press comes to.
#[derive(Debug)]
pub(super) enum Action {
    /// Nothing.
    None,
    /// Say this.
    Say(Spoken),
    /// Say this and put the focus of the window on the line.
    Ask(Spoken),
    /// Have this done on the disk.
    Do(Job),
    /// Take a tie up.
    TakeUp(TieId),
    /// Begin the first tie.
    First,
    /// Go to the form of the log.
    Log(Box<Tie>),
    /// Make something of a tie to be taken along.
    OnPaper(Box<Tie>),
    /// Go back to the start screen.
    Leave,
}
