//! What is found for what the form says.

use crate::bench::{FitAnswer, Misfit};
use crate::guide::{FitQuestion, SetupError, SetupField};

/// What has come of the form so far.
pub(super) enum Findings {
    /// Something is still to be said.
    Wanting(SetupField),
    /// Something said cannot be used.
    Wrong(SetupError),
    /// Knots, best first; before the first answer comes in, none yet.
    Knots(Box<FitQuestion>, Vec<FitAnswer>),
    /// Nothing fits, and why.
    Nothing(Vec<Misfit>),
}

/// What the search brings back.
#[derive(Clone, Debug)]
pub struct FitOutcome {
    pub(super) question: Box<FitQuestion>,
    pub(super) answers: Vec<FitAnswer>,
    pub(super) misfits: Vec<Misfit>,
}

impl FitOutcome {
    /// Looks for the knots: a few milliseconds, and not for the thread of the window.
    pub fn of(question: Box<FitQuestion>) -> Self {
        let answers = question.answers();
        let misfits = if answers.is_empty() {
            question.misfits()
        } else {
            Vec::new()
        };
        Self {
            question,
            answers,
            misfits,
        }
    }
}
