//! What a press does to a walk: a step on or back, an answer, or telling what stands there anew.

use super::{Mode, Walk, WalkAction};
use crate::guide::{AtOnce, Search};
use crate::pedal::Intent;
use crate::session::page::Keys;
use crate::words::{Remark, Shown, Words};

impl Walk {
    /// Does what a press asks for.
    pub fn press(&mut self, intent: Intent, words: &Words) -> WalkAction {
        self.answer = None;
        self.is_whereabouts = false;
        let was_cord_told = std::mem::take(&mut self.is_cord_told);
        match intent {
            // Speed and pause are the session's affair: what is left of them is to say it again.
            Intent::Again | Intent::Slower | Intent::Faster | Intent::Pause => {
                return WalkAction::Again;
            }
            Intent::Leave => return self.leave(words),
            Intent::Where if self.keys() == Keys::Wrong => return self.name_fault(words),
            Intent::Where => {
                let minutes = self.minutes_left();
                let sentence = words.say_whereabouts(&self.script, self.place, minutes);
                let beside = self.whereabouts_beside(words).unwrap_or_default();
                let sentence = beside.then(&sentence);
                self.answer = Some(sentence.to_string());
                self.is_whereabouts = true;
                return WalkAction::Say(sentence);
            }
            Intent::Wrong => return self.wrong(words),
            // Where something else is asked it is asked again.
            Intent::Cord | Intent::Join if !self.is_telling_steps() => return WalkAction::Again,
            Intent::Cord => return self.ask_cord(was_cord_told, words),
            Intent::Join => return self.ask_join(words),
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

    /// Tells what stands there in other words. The place, and what is being mended, stay.
    pub fn reword(&mut self, words: &Words) {
        self.answer = None;
        let words = &self.words_here(words);
        match self.mode.clone() {
            Mode::Steps => {
                self.stand_at(self.place, words);
            }
            Mode::Wrong => {
                self.tell_wrong(words);
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

    /// The words of the ground that the knot is tied on.
    pub(super) fn words_here(&self, words: &Words) -> Words {
        words.on(self.script.plan().rims())
    }

    /// What the tyer asked for in the place of the step is closed first; from the step the tie is left,
    /// and from what is asked of the tyer before there is one.
    fn leave(&mut self, words: &Words) -> WalkAction {
        match self.mode {
            Mode::Steps | Mode::Standing => WalkAction::Leave,
            Mode::Wrong | Mode::TakingBack(_) | Mode::Searching(_) | Mode::Aside(_) => {
                self.stand_at(self.place, words);
                WalkAction::Again
            }
        }
    }

    /// Something is wrong; said once more, all is left as it is.
    fn wrong(&mut self, words: &Words) -> WalkAction {
        let words = &self.words_here(words);
        if !self.is_telling_steps() {
            return self.stand_at(self.place, words);
        }
        if self.script.is_off_pins(self.place) {
            let sentence = words.notice("wrong-after", &[]);
            self.answer = Some(sentence.to_string());
            return WalkAction::Say(sentence.into());
        }
        self.learn_again_from(self.place);
        self.mode = Mode::Wrong;
        self.tell_wrong(words);
        WalkAction::Again
    }

    /// Tells what can be done when something is wrong, at the step where it was seen.
    fn tell_wrong(&mut self, words: &Words) {
        let back = self.script.take_back(self.place);
        let here = self.script.step(self.place);
        let here = here.map(|step| words.show(self.script.plan().knot(), &step));
        self.shown = Shown {
            phase: here.map(|here| here.phase).unwrap_or_default(),
            ..words.show_wrong(back.as_ref())
        };
        self.say = words.say_wrong(back.as_ref());
    }

    pub(super) fn take_back(&mut self, words: &Words) -> WalkAction {
        let words = &self.words_here(words);
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
        let words = &self.words_here(words);
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
