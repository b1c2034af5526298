//! What is found for what the form says.

use crate::bench::{Counts, FitAnswer, FitSection, Misfit};
use crate::guide::{FitQuestion, KnownFit, KnownKnot, SetupError, SetupField};

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

/// A knot that the tyer has in mind, and whether a length to cover is left open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct InMind {
    pub(super) knot: KnownKnot,
    pub(super) any_width: bool,
}

/// What is asked of the search.
#[derive(Clone, Debug)]
pub struct Asked {
    pub(super) question: Box<FitQuestion>,
    pub(super) in_mind: Option<InMind>,
}

/// What the search brings back.
#[derive(Clone, Debug)]
pub struct FitOutcome {
    pub(super) question: Box<FitQuestion>,
    pub(super) answers: Vec<FitAnswer>,
    pub(super) misfits: Vec<Misfit>,
    pub(super) known: KnownFindings,
}

/// What comes of the knot that the tyer has in mind; nothing without one.
#[derive(Clone, Debug, Default)]
pub struct KnownFindings {
    /// Pass by pass.
    pub(super) fits: Vec<KnownFit>,
    /// Whether the answers are other knots, since that one does not do.
    pub(super) are_others: bool,
}

impl FitOutcome {
    /// Looks for the knots: a few milliseconds, and not for the thread of the window.
    pub fn of(Asked { question, in_mind }: Asked) -> Self {
        let (mut known, mut answers) = (KnownFindings::default(), Vec::new());
        if let Some(InMind { knot, any_width }) = in_mind {
            // Who wants one number of passes wants it of this knot too.
            let passes = question.filter.passes;
            let is_wanted = |counts: Counts| passes.is_none_or(|wanted| counts.passes() == wanted);
            known.fits = question.known(knot, any_width);
            known.fits.retain(|known| is_wanted(known.counts));
            answers = question.answers_with(knot, any_width);
            answers.retain(|answer| is_wanted(answer.counts));
            // Side by side, as one kind: they are one knot.
            for answer in &mut answers {
                answer.section = FitSection::Single;
            }
            known.are_others = answers.is_empty() && !any_width;
        }
        if in_mind.is_none() || known.are_others {
            answers = question.answers();
        }
        let misfits = if answers.is_empty() {
            question.misfits()
        } else {
            Vec::new()
        };
        Self {
            question,
            answers,
            misfits,
            known,
        }
    }
}
