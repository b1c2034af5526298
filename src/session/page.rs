//! Everything a face shows of the tie in hand.

use crate::words::Shown;

/// What next, back and wrong come to now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keys {
    /// Going from step to step.
    Steps,
    /// Something is wrong: take back, find the place, or leave all as it is.
    Wrong,
    /// A leg is taken back: one more, or lay it again.
    TakingBack,
    /// The lost place is looked for: yes or no.
    Searching,
    /// Everything is done.
    Done,
}

/// A part of the job, as it stands in the strip of all of them.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct PagePart {
    /// Its name.
    pub name: String,
    /// How much of it is done, in percent.
    pub percent: u8,
    /// Whether the tyer is at it.
    pub is_now: bool,
}

/// What stands before the tyer now. A window shows it as a screen, a terminal as lines.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Page {
    /// What the tyer must know besides the step, the most pressing first.
    pub notices: Vec<String>,
    /// What a lost voice means, while it is lost.
    pub voice_lost: Option<String>,
    /// The step, or the question that stands in its place, with its caution.
    pub shown: Shown,
    /// That the tie is held, while it is.
    pub pause: Option<String>,
    /// An answer that stands there until the next press.
    pub answer: Option<String>,
    /// Whether that answer says where the tyer is.
    pub is_whereabouts: bool,
    /// The knot, and how it is told.
    pub tie: String,
    /// Which keys there are.
    pub keys: Keys,
    /// The parts of the job, and how far each is.
    pub job: Vec<PagePart>,
    /// The time that is left of it; none at its end.
    pub time_left: Option<String>,
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
