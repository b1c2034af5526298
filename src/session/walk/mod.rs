//! Going through a tie by presses: from step to step, and off the way when something is wrong.
//!
//! A [`Walk`] knows the steps and the questions; what is spoken and saved of a press is the
//! session's affair.

mod beside;
mod presses;
mod standing_tube;

use super::asides::Aside;
use super::page::Keys;
use crate::bench::{BatchPace, TyingPace};
use crate::guide::{AtOnce, Place, Plan, Script, Search, TakeBack};
use crate::picture::Subject;
use crate::words::{Detail, Shown, Spoken, Words};

/// A tie that is being tied.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
/// use marlinspeak::pedal::Intent;
/// use marlinspeak::session::{Walk, WalkAction};
/// use marlinspeak::words::Words;
///
/// let words = Words::english();
/// let script = Script::new(Plan::read("3", "5", "1", "1").unwrap(), AtOnce::default());
/// let begin = script.first();
/// let mut walk = Walk::new(script, begin, &words);
/// assert_eq!(walk.press(Intent::Next, &words), WalkAction::Moved);
/// assert!(walk.say().as_str().starts_with("Leg 1"));
/// // One press back, and it stands where it was.
/// assert_eq!(walk.press(Intent::Back, &words), WalkAction::Moved);
/// assert_eq!(walk.place(), begin);
/// ```
#[derive(Clone, Debug)]
pub struct Walk {
    pub(in crate::session) script: Script,
    pub(in crate::session) place: Place,
    pub(in crate::session) mode: Mode,
    pub(in crate::session) shown: Shown,
    /// How deep it is told.
    depth: Detail,
    pub(in crate::session) say: Spoken,
    /// An answer that stands there until the next press.
    pub(in crate::session) answer: Option<String>,
    /// Whether that answer comes over the step: where the tyer is, or what the cord has to do.
    pub(in crate::session) is_whereabouts: bool,
    /// Whether it was just told what the cord has to do.
    pub(in crate::session) is_cord_told: bool,
    /// The tyer's pace, when known.
    pub(in crate::session) pace: Option<TyingPace>,
    pub(in crate::session) pieces: AmongPieces,
    /// How long the other pieces of its batch took.
    pub(in crate::session) piece_times: BatchPace,
}

/// What a press of next or back means now.
#[derive(Clone, Debug)]
pub(in crate::session) enum Mode {
    /// From step to step.
    Steps,
    /// Something is wrong, and the tyer says what to do about it.
    Wrong,
    /// Legs are taken back, this one now.
    TakingBack(TakeBack),
    /// The lost place is looked for.
    Searching(Box<Search>),
    /// Something else stands in the place of the step.
    Aside(Box<Aside>),
    /// Before the first step of a piece: whether the tube stands as the one before left it.
    Standing,
}

/// Where a tie stands among pieces of the same.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::session) struct AmongPieces {
    /// Whether the tube may stand as the piece before left it.
    pub follows: bool,
    /// Whether a piece of the same comes after the last step.
    pub leads: bool,
    /// What the tyer said of the tube just now.
    pub tube_stands: Option<bool>,
}

/// What a press came to.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
/// use marlinspeak::pedal::Intent;
/// use marlinspeak::session::{Walk, WalkAction};
/// use marlinspeak::words::Words;
///
/// let words = Words::english();
/// let script = Script::new(Plan::read("3", "5", "1", "1").unwrap(), AtOnce::default());
/// let begin = script.first();
/// let mut walk = Walk::new(script, begin, &words);
/// assert_eq!(walk.press(Intent::Again, &words), WalkAction::Again);
/// // Where the tyer is gets said, and the walk stays there.
/// assert!(matches!(walk.press(Intent::Where, &words), WalkAction::Say(_)));
/// assert_eq!(walk.place(), begin);
/// assert_eq!(walk.press(Intent::Leave, &words), WalkAction::Leave);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WalkAction {
    /// The step changed: say it and keep the place.
    Moved,
    /// Say what stands on the screen again.
    Again,
    /// Say this, and leave everything as it is.
    Say(Spoken),
    /// Something was noted of the tie: keep it, and say this.
    Noted(Spoken),
    /// The tyer leaves.
    Leave,
}

impl Walk {
    /// Stands at `place`, or at the place of the script nearest to it.
    pub fn new(script: Script, place: Place, words: &Words) -> Self {
        let place = script.settle(place);
        let (shown, say) = (Shown::default(), Spoken::default());
        let mut state = Self {
            script,
            place,
            mode: Mode::Steps,
            shown,
            depth: words.detail(),
            say,
            answer: None,
            is_whereabouts: false,
            is_cord_told: false,
            pace: None,
            pieces: AmongPieces::default(),
            piece_times: BatchPace::default(),
        };
        state.stand_at(place, words);
        state
    }

    /// The script that is told.
    pub const fn script(&self) -> &Script {
        &self.script
    }

    /// Where the tyer is.
    pub const fn place(&self) -> Place {
        self.place
    }

    /// Has this answer stand there until the next press.
    pub(in crate::session) fn answer_with(&mut self, answer: String) {
        self.is_whereabouts = false;
        self.answer = Some(answer);
    }

    /// Whether this is the last step.
    pub fn is_done(&self) -> bool {
        matches!(self.mode, Mode::Steps) && self.script.next(self.place).is_none()
    }

    /// What next, back and wrong come to now.
    pub fn keys(&self) -> Keys {
        match &self.mode {
            Mode::Steps if self.is_done() && self.pieces.leads => Keys::PieceDone,
            Mode::Steps if self.is_done() => Keys::Done,
            Mode::Steps => Keys::Steps,
            Mode::Wrong if self.can_take_back() => Keys::Wrong,
            Mode::Wrong => Keys::NothingToTakeBack,
            Mode::TakingBack(_) => Keys::TakingBack,
            Mode::Searching(_) => Keys::Searching,
            Mode::Aside(aside) => aside.keys(),
            Mode::Standing => Keys::Standing,
        }
    }

    /// Whether a leg lies that could be taken back.
    fn can_take_back(&self) -> bool {
        self.script.take_back(self.place).is_some()
    }

    /// What stands on the screen.
    pub const fn shown(&self) -> &Shown {
        &self.shown
    }

    /// How deep the step is told: who learns is told plainly what the hands have.
    pub const fn depth(&self) -> Detail {
        self.depth
    }

    /// An answer that stands there until the next press.
    pub fn answer(&self) -> Option<&str> {
        self.answer.as_deref()
    }

    /// Whether that answer says where the tyer is.
    pub const fn is_whereabouts(&self) -> bool {
        self.is_whereabouts
    }

    /// What there is to see of the tie now; nothing while where it stands is the question.
    pub fn subject(&self) -> Option<Subject> {
        match &self.mode {
            Mode::Steps => self.subject_of_step(),
            // The leg that the words offer to take back, not the one that is not laid yet.
            Mode::Wrong => match self.script.take_back(self.place) {
                Some(back) => Some(Subject::taking_back(&self.script, &back)),
                None => self.subject_of_step(),
            },
            Mode::Aside(aside) => Some(aside.mark(&self.script, self.subject_of_step()?)),
            Mode::TakingBack(back) => Some(Subject::taking_back(&self.script, back)),
            Mode::Searching(_) | Mode::Standing => None,
        }
    }

    fn subject_of_step(&self) -> Option<Subject> {
        let step = self.script.step(self.place)?;
        Some(Subject::of(&self.script, &step))
    }

    /// Whether next and back answer a question now.
    pub const fn is_asking(&self) -> bool {
        matches!(
            self.mode,
            Mode::Wrong | Mode::Searching(_) | Mode::Aside(_) | Mode::Standing
        )
    }

    /// What is spoken of this step.
    pub const fn say(&self) -> &Spoken {
        &self.say
    }

    /// Whether it goes from step to step, and nothing is being mended.
    pub const fn is_telling_steps(&self) -> bool {
        matches!(self.mode, Mode::Steps)
    }

    /// The script of a plan, told as it is told now.
    pub(in crate::session) fn told_anew(
        &self,
        plan: Plan,
        at_once: AtOnce,
        words: &Words,
    ) -> Script {
        let told = &self.script;
        told.told_in(plan, at_once)
            .teaching(words.detail() == Detail::Teach)
    }

    /// Tells a round of fairing leg by leg, or once for all its legs.
    pub fn fair_by_leg(&mut self, fairs_by_leg: bool) {
        self.script = self.script.clone().fairing_by_leg(fairs_by_leg);
    }

    /// Tells every thing of bag and rigging by itself, or several on a page.
    pub fn pack_one_by_one(&mut self, one_by_one: bool) {
        self.script = self.script.clone().packing_one_by_one(one_by_one);
    }

    pub(in crate::session) fn stand_at(&mut self, place: Place, words: &Words) -> WalkAction {
        if let Some(step) = self.script.step(place) {
            self.mode = Mode::Steps;
            self.place = place;
            self.depth = words.depth_of(&step);
            self.shown = words.show(self.script.plan().knot(), &step);
            self.say = words.say(&step);
        }
        WalkAction::Moved
    }

    /// Something was wrong at this place: who learns is taught again from its leg on.
    pub(in crate::session) fn learn_again_from(&mut self, place: Place) {
        let from = place.laying().or(self.script.learns_again());
        self.script = self.script.clone().learning_again(from);
    }
}
