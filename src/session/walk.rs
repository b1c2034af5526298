//! Going through a tie by presses: from step to step, and off the way when something is wrong.
//!
//! A [`Walk`] knows the steps and the questions; what is spoken and saved of a press is the
//! session's affair.

use super::asides::Aside;
use super::page::Keys;
use super::standing_tube::AmongPieces;
use crate::bench::TyingPace;
use crate::guide::{AtOnce, Place, Plan, Script, Search, TakeBack};
use crate::pedal::Intent;
use crate::picture::Subject;
use crate::words::{Detail, Remark, Shown, Spoken, Words};

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
#[derive(Debug)]
pub struct Walk {
    pub(super) script: Script,
    pub(super) place: Place,
    pub(super) mode: Mode,
    pub(super) shown: Shown,
    /// How deep it is told.
    depth: Detail,
    pub(super) say: Spoken,
    /// An answer that stands there until the next press.
    pub(super) answer: Option<String>,
    /// Whether that answer comes over the step: where the tyer is, or what the cord has to do.
    pub(super) is_whereabouts: bool,
    /// Whether it was just told what the cord has to do.
    pub(super) is_cord_told: bool,
    /// The tyer's pace, when known.
    pub(super) pace: Option<TyingPace>,
    pub(super) pieces: AmongPieces,
}

/// What a press of next or back means now.
#[derive(Clone, Debug)]
pub(super) enum Mode {
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
    pub(super) fn answer_with(&mut self, answer: String) {
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
            Mode::Wrong => Keys::Wrong,
            Mode::TakingBack(_) => Keys::TakingBack,
            Mode::Searching(_) => Keys::Searching,
            Mode::Aside(aside) => aside.keys(),
            Mode::Standing => Keys::Standing,
        }
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
            Mode::Steps | Mode::Wrong => self.subject_of_step(),
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

    /// Does what a press asks for.
    pub fn press(&mut self, intent: Intent, words: &Words) -> WalkAction {
        self.answer = None;
        self.is_whereabouts = false;
        self.is_cord_told = false;
        match intent {
            // Speed and pause are the session's affair: what is left of them is to say it again.
            Intent::Again | Intent::Slower | Intent::Faster | Intent::Pause => {
                return WalkAction::Again;
            }
            Intent::Leave => return WalkAction::Leave,
            Intent::Where if matches!(self.mode, Mode::Wrong) => return self.name_fault(words),
            Intent::Where => {
                let minutes = self.minutes_left();
                let sentence = words.say_whereabouts(&self.script, self.place, minutes);
                self.answer = Some(sentence.to_string());
                self.is_whereabouts = true;
                return WalkAction::Say(sentence);
            }
            Intent::Wrong => return self.wrong(words),
            Intent::Next | Intent::Back => {}
        }
        let is_next = intent == Intent::Next;
        match self.mode.clone() {
            Mode::Steps => {
                let place = if is_next {
                    self.script.next(self.place)
                } else {
                    self.script.back(self.place)
                };
                // Before the first step of a piece the tyer may think again about the tube.
                let may_ask = !is_next && place.is_none() && self.pieces.follows;
                if may_ask && self.ask_standing(words) {
                    return WalkAction::Again;
                }
                // At either end there is nothing but to say where that is.
                place.map_or(WalkAction::Again, |place| self.stand_at(place, words))
            }
            Mode::Wrong if is_next => self.take_back(words),
            Mode::Wrong => {
                let search = Box::new(Search::new(&self.script, self.place));
                self.search(search, words)
            }
            Mode::TakingBack(back) => {
                self.place = back.place;
                self.lose_joins(back.pass_leg);
                self.learn_again_from(back.place);
                if is_next {
                    self.take_back(words)
                } else {
                    self.stand_at(back.place, words)
                }
            }
            Mode::Standing => self.rig_for(is_next, words),
            Mode::Searching(mut search) => {
                if is_next {
                    search.yes(&self.script);
                } else {
                    search.no();
                }
                self.search(search, words)
            }
            Mode::Aside(aside) => self.press_aside(*aside, is_next, words),
        }
    }

    /// Whether it goes from step to step, and nothing is being mended.
    pub const fn is_telling_steps(&self) -> bool {
        matches!(self.mode, Mode::Steps)
    }

    /// Tells the step anew, in other words or other portions; or what stands in its place.
    pub fn retell(&mut self, at_once: AtOnce, words: &Words) {
        let is_standing = matches!(self.mode, Mode::Standing);
        self.script = self.told_anew(self.script.plan().clone(), at_once, words);
        if let Mode::Aside(aside) = &self.mode {
            self.place = self.script.settle(self.place);
            self.shown = aside.show(&self.script, words);
            self.say = aside.say(&self.script, words);
        } else if !(is_standing && self.ask_standing(words)) {
            self.stand_at(self.script.settle(self.place), words);
        }
    }

    /// The script of a plan, told as it is told now.
    pub(super) fn told_anew(&self, plan: Plan, at_once: AtOnce, words: &Words) -> Script {
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

    /// Tells what stands there in other words. The place, and what is being mended, stay.
    pub fn reword(&mut self, words: &Words) {
        self.answer = None;
        match self.mode.clone() {
            Mode::Steps => {
                self.stand_at(self.place, words);
            }
            Mode::Wrong => {
                let back = self.script.take_back(self.place);
                self.shown = words.show_wrong(back.as_ref());
                self.say = words.say_wrong(back.as_ref());
            }
            Mode::TakingBack(back) => {
                self.shown = words.show_take_back(&back);
                self.say = words.say_take_back(&back);
            }
            Mode::Searching(search) => {
                if let Some(question) = search.question() {
                    self.shown = words.show_question(&question);
                    self.say = words.say_question(&question);
                }
            }
            Mode::Aside(aside) => {
                self.shown = aside.show(&self.script, words);
                self.say = aside.say(&self.script, words);
            }
            Mode::Standing => {
                self.ask_standing(words);
            }
        }
    }

    pub(super) fn stand_at(&mut self, place: Place, words: &Words) -> WalkAction {
        if let Some(step) = self.script.step(place) {
            self.mode = Mode::Steps;
            self.place = place;
            self.depth = words.depth_of(&step);
            self.shown = words.show(self.script.plan().knot(), &step);
            self.say = words.say(&step);
        }
        WalkAction::Moved
    }

    /// Something is wrong; said once more, all is left as it is.
    fn wrong(&mut self, words: &Words) -> WalkAction {
        if !self.is_telling_steps() {
            return self.stand_at(self.place, words);
        }
        if self.script.is_off_pins(self.place) {
            let sentence = words.notice("wrong-after", &[]);
            self.answer = Some(sentence.to_string());
            return WalkAction::Say(sentence.into());
        }
        self.learn_again_from(self.place);
        let back = self.script.take_back(self.place);
        self.mode = Mode::Wrong;
        self.shown = words.show_wrong(back.as_ref());
        self.say = words.say_wrong(back.as_ref());
        WalkAction::Again
    }

    /// Something was wrong at this place: who learns is taught again from its leg on.
    pub(super) fn learn_again_from(&mut self, place: Place) {
        let from = place.laying().or(self.script.learns_again());
        self.script = self.script.clone().learning_again(from);
    }

    pub(super) fn take_back(&mut self, words: &Words) -> WalkAction {
        let is_going_on = matches!(self.mode, Mode::TakingBack(_));
        let Some(mut back) = self.script.take_back(self.place) else {
            let nothing = words.remark(Remark::TakeBackNothingSay);
            self.stand_at(self.place, words);
            self.answer = Some(nothing.to_string());
            self.say = nothing.then(&self.say);
            return WalkAction::Moved;
        };
        if is_going_on {
            // The hand has just come back there.
            back.first_back_to = None;
        }
        self.shown = words.show_take_back(&back);
        self.say = words.say_take_back(&back);
        self.mode = Mode::TakingBack(back);
        // The place so far is kept: a leg that is being taken back still lies there in part.
        WalkAction::Moved
    }

    fn search(&mut self, search: Box<Search>, words: &Words) -> WalkAction {
        if let Some(place) = search.found() {
            self.learn_again_from(place);
            self.stand_at(place, words);
            let found = words.remark(Remark::FoundSay);
            self.answer = Some(found.to_string());
            self.say = found.then(&self.say);
            return WalkAction::Moved;
        }
        if let Some(question) = search.question() {
            self.shown = words.show_question(&question);
            self.say = words.say_question(&question);
        }
        self.mode = Mode::Searching(search);
        WalkAction::Again
    }
}
