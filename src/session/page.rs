//! Everything a face shows of the tie in hand.

use crate::guide::PhaseProgress;
use crate::words::Shown;

/// Which keys the page names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keys {
    /// Going from step to step.
    Steps,
    /// Something is wrong, or the lost place is looked for.
    Wrong,
    /// Everything is done.
    Done,
}

/// What stands before the tyer now. A window shows it as a screen, a terminal as lines.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Page {
    /// What the tyer must know besides the step, the most pressing first.
    pub notices: Vec<String>,
    /// The step, or the question that stands in its place, with its caution.
    pub shown: Shown,
    /// An answer that stands there until the next press.
    pub answer: Option<String>,
    /// The knot, and how it is told.
    pub tie: String,
    /// Which keys there are.
    pub keys: Keys,
    /// How far the part of the job in hand is.
    pub phase_progress: PhaseProgress,
}

impl Page {
    /// What a reader of lines is told of the step: first what can hurt, then where in the job
    /// it is and what is to be done, in words alone.
    ///
    /// ```
    /// use std::time::Duration;
    ///
    /// use marlinspeak::guide::Plan;
    /// use marlinspeak::session::{InHand, Session, Wishes};
    /// use marlinspeak::settings::Settings;
    /// use marlinspeak::words::Words;
    ///
    /// let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
    /// let bell_rope = Plan::read("3", "5", "1", "1").unwrap();
    /// session.take_in_hand(InHand::begun(None, &bell_rope), Duration::ZERO);
    /// let lines = session.page().unwrap().lines();
    /// assert_eq!(lines.len(), 2, "a caution about the pins, and the first step");
    /// assert!(lines[1].starts_with("Lead pass, begin."));
    /// ```
    pub fn lines(&self) -> Vec<String> {
        let step = match self.shown.phase.as_str() {
            // A question stands in the place of a step.
            "" => self.shown.in_words(),
            phase => format!("{phase}. {}", self.shown.in_words()),
        };
        self.shown.caution.iter().cloned().chain([step]).collect()
    }
}
