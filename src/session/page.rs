//! Everything a face shows of the tie in hand.

use crate::words::Shown;

/// What next, back and wrong come to now.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
/// use marlinspeak::pedal::Intent;
/// use marlinspeak::session::{Keys, Walk};
/// use marlinspeak::words::Words;
///
/// let words = Words::english();
/// let script = Script::new(Plan::read("3", "5", "1", "1").unwrap(), AtOnce::default());
/// let (first, last) = (script.first(), script.last());
/// assert_eq!(Walk::new(script.clone(), last, &words).keys(), Keys::Done);
/// let mut walk = Walk::new(script, first, &words);
/// for _ in 0..4 {
///     walk.press(Intent::Next, &words);
/// }
/// // Wrong asks what to do about it; said once more it leaves everything as it is.
/// walk.press(Intent::Wrong, &words);
/// assert_eq!(walk.keys(), Keys::Wrong);
/// walk.press(Intent::Wrong, &words);
/// assert_eq!(walk.keys(), Keys::Steps);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keys {
    /// Going from step to step.
    Steps,
    /// Something is wrong: take back, find the place, or leave all as it is.
    Wrong,
    /// Something is wrong, and no leg lies that could be taken back: find the place, or leave all as
    /// it is.
    NothingToTakeBack,
    /// A leg is taken back: one more, or lay it again.
    TakingBack,
    /// The lost place is looked for: yes or no.
    Searching,
    /// A number is counted: one more, or that is it.
    Counting,
    /// A number is typed: that is it, or its last digit goes.
    Typing,
    /// The leg of a fault is known: take back, or name another place.
    FaultFound,
    /// A new cord is joined, step by step.
    Joining,
    /// Whether the tube stands as the piece before left it: yes or no.
    Standing,
    /// Everything is done, and the next piece of the same can be begun.
    PieceDone,
    /// Everything is done.
    Done,
}

/// A part of the job, as it stands in the strip of all of them.
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
/// // The tyer is at the first of the parts, and none of it is done.
/// let job = session.page().unwrap().job;
/// assert_eq!((job.len(), &*job[0].name, job[0].percent), (4, "Lead", 0));
/// assert!(job[0].is_now && !job[1].is_now);
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct PagePart {
    /// What it is called, in the tyer's language.
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
    /// The knot: with how it is told, by its name alone, by that without its weave, and by its numbers for
    /// where there is little room.
    pub tie: [String; 4],
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
